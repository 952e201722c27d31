"""What will go says so, in headers and in the contract; shown with invented entries, as nothing is deprecated yet."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from datetime import UTC, date, datetime
from email.utils import parsedate_to_datetime
from pathlib import Path

import httpx
import pytest
from openapi_spec_validator import OpenAPIV31SpecValidator
from tests.api.running import listening

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api import app, deprecation
from kilisho_api.deprecation import DEPRECATED, NOTICE, Deprecation, marked
from kilisho_api.guide import deprecated
from kilisho_api.settings import Settings

CONTRACT = Path(__file__).resolve().parents[2] / "openapi" / "openapi.json"
SINCE, SUNSET = date(2027, 1, 4), date(2028, 3, 1)
OPERATION = Deprecation("POST", "/v1/sizing", SINCE, SUNSET, "Use /v2/sizing (invented).")
ENTRY = Deprecation("GET", "/v1/substrates/{id}", SINCE, date(2029, 1, 1), "Use /v2/substrates (invented).")
MEMBER = Deprecation("POST", "/v1/first-charge", SINCE, SUNSET, "State working_volume (invented).", "Digester.total_volume")
TABLE = (ENTRY, OPERATION, MEMBER)


@pytest.fixture
def address(monkeypatch: pytest.MonkeyPatch, rulebook: Rulebook, questions: Mapping[str, Question]) -> Iterator[str]:
    monkeypatch.setattr(app, "with_deprecations", lambda inner: deprecation.with_deprecations(inner, TABLE))
    with listening(app.assemble(Settings(cors_origins=("https://farm.example",)), rulebook, questions)) as url:
        yield url


def test_every_answer_of_a_deprecated_operation_says_so(address: str, questions: Mapping[str, Question]) -> None:
    for body, status in ((questions["sizing"].example, 200), ({"no_such_member": 1}, 422)):
        answer = httpx.post(f"{address}/v1/sizing", json=body, headers={"origin": "https://farm.example"}, timeout=30)
        assert answer.status_code == status
        # RFC 9745, section 2.1: a structured date, seconds after an at sign. RFC 8594, section 3: an HTTP date.
        assert answer.headers["deprecation"] == f"@{int(datetime(2027, 1, 4, tzinfo=UTC).timestamp())}"
        assert parsedate_to_datetime(answer.headers["sunset"]) == datetime(2028, 3, 1, tzinfo=UTC)
        assert answer.headers["sunset"].endswith("GMT")
        assert {link["rel"]: link["url"] for link in answer.links.values()} == {"deprecation": "/docs#versions", "sunset": "/docs#versions"}
        assert {"deprecation", "sunset", "link"} <= set(answer.headers["access-control-expose-headers"].split(", "))


def test_an_entry_with_a_parameter_holds_for_every_value_and_for_head(address: str) -> None:
    for answer in (httpx.get(f"{address}/v1/substrates/cattle_dung"), httpx.head(f"{address}/v1/substrates/nothing")):
        assert parsedate_to_datetime(answer.headers["sunset"]).year == 2029


@pytest.mark.parametrize("path", ["/v1/substrates", "/v1/animals/dairy_cow", "/v1/substrates/a/b", "/health", "/docs"])
def test_other_addresses_say_nothing(address: str, path: str) -> None:
    answer = httpx.get(f"{address}{path}")
    assert {"deprecation", "sunset"} & answer.headers.keys() == set()


def test_a_deprecated_member_shows_on_its_operation(address: str, questions: Mapping[str, Question]) -> None:
    answer = httpx.post(f"{address}/v1/first-charge", json=questions["first-charge"].example, timeout=30)
    assert answer.headers["deprecation"].startswith("@")


def test_the_contract_marks_what_will_go_and_stays_valid() -> None:
    document = marked(json.loads(CONTRACT.read_bytes()), TABLE)
    operation = document["paths"]["/v1/sizing"]["post"]
    member = document["components"]["schemas"]["Digester"]["properties"]["total_volume"]
    for part, entry in ((operation, OPERATION), (member, MEMBER)):
        assert part["deprecated"] is True
        assert part["description"].endswith(f"Deprecated since 2027-01-04; goes after 2028-03-01. {entry.instead}")
    assert "deprecated" not in document["paths"]["/v1/first-charge"]["post"]
    assert [error.message for error in OpenAPIV31SpecValidator(document).iter_errors()] == []


@pytest.mark.parametrize(("path", "member"), [("/v1/sising", ""), ("/v1/sizing", "Digester.no_member"), ("/v1/sizing", "Nothing.at_all")])
def test_an_entry_for_what_is_not_there_stops_the_contract(path: str, member: str) -> None:
    wrong = Deprecation("POST", path, SINCE, SUNSET, "Nothing.", member)
    with pytest.raises(KeyError):
        marked(json.loads(CONTRACT.read_bytes()), [wrong])


def test_notice_is_a_year() -> None:
    assert NOTICE.days == 365
    with pytest.raises(ValueError, match="at least 365 days"):
        Deprecation("POST", "/v1/sizing", SINCE, date(2027, 12, 31), "Nothing.")


def test_the_guide_lists_what_will_go() -> None:
    text = deprecated(TABLE)
    assert text.count("<li>") == 3
    assert "2028-03-01" in text
    assert "Digester.total_volume" in text
    assert "nothing is deprecated" in deprecated(())


def test_the_table_and_the_served_contract_agree(client: httpx.Client) -> None:
    served = client.get("/openapi.json", timeout=60).text
    assert served.count('"deprecated": true') == len(DEPRECATED)
    assert marked({"paths": {}}, ()) == {"paths": {}}
