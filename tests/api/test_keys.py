"""API keys: made once, kept as digests, asked for where the file of keys is set, and in no other way than the standard's."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import httpx
import orjson
import pytest
from openapi_spec_validator import OpenAPIV31SpecValidator
from tests.api.asking import JSON_BODY, OPERATIONS, ask, problem
from tests.api.running import Server, serving

from kilisho.cli import main
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api import settings
from kilisho_api.app import create_app
from kilisho_api.guard import OPEN
from kilisho_api.keys import Keys, digest_of, line_of, new_key, read_keys
from kilisho_api.openapi.document import contract
from kilisho_api.settings import Settings

KEY, OTHER = new_key(), new_key()
OPEN_PAGES = (
    "/",
    "/health",
    "/ready",
    "/openapi.json",
    "/docs",
    "/docs/reference",
    "/docs/reference.js",
    "/docs/swagger-ui.css",
    "/problems/unauthorized",
)
CLOSED = ("/metrics", "/v1/substrates", "/v1/substrates/cattle_dung", "/v1/rulebook", "/nothing", "/docs/nothing", "/problems/nothing")
# Ways round a list of closed addresses, had there been one.
AROUND = ("//v1/substrates", "/v1//substrates", "/./v1/substrates", "/v1/substrates/", "/%761/substrates", "/docs/../v1/substrates")


@dataclass(frozen=True)
class Guarded:
    """A server that asks for keys, and a client without one."""

    server: Server
    client: httpx.Client


@pytest.fixture(scope="module")
def guarded(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Guarded]:
    folder = tmp_path_factory.mktemp("keys")
    file = folder / "keys"
    file.write_text(f"# invented\n\n{line_of('app-one', KEY)}\n  {line_of('app.two', OTHER)}  \n")
    with (
        serving(folder / "log", KILISHO_API_KEYS=str(file), KILISHO_CORS_ORIGINS="https://app.example") as server,
        httpx.Client(base_url=server.url, timeout=30) as client,
    ):
        yield Guarded(server, client)
    log = (folder / "log").read_text()
    assert KEY not in log
    assert "Traceback" not in log


def bearer(key: str) -> dict[str, str]:
    return {"authorization": f"Bearer {key}"}


# ---- making and keeping -------------------------------------------------------------------------------------------------------------


def test_a_key_is_printed_once_with_the_line_that_knows_it(capsys: pytest.CaptureFixture[str]) -> None:
    from kilisho_api.key_commands import add_command

    lines = []
    for _ in range(2):
        parser_run("keys", "new", "app-one", add=add_command)
        printed = re.fullmatch(r"key:  (kilisho_[\w-]{43})\nline: (app-one:[0-9a-f]{64})\n", capsys.readouterr().out)
        assert printed is not None
        assert printed[2] == f"app-one:{hashlib.sha256(printed[1].encode()).hexdigest()}"
        lines.append(printed[2])
    assert len(set(lines)) == 2


def parser_run(*arguments: str, add: Any) -> int:
    import argparse

    parser = argparse.ArgumentParser()
    add(parser.add_subparsers())
    chosen = parser.parse_args(arguments)
    return int(chosen.run(chosen))


def test_the_command_is_one_of_kilisho(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["keys", "new", "field-office_3"]) == 0
    assert "line: field-office_3:" in capsys.readouterr().out


@pytest.mark.parametrize("name", ["App", "a b", "a:b", "", "-x", "a" * 65, "a\nb", "naïve", "\x1b[31m"])
def test_a_name_that_would_break_the_file_is_refused(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(["keys", "new", name])
    assert stopped.value.code == 2
    assert "kilisho_" not in capsys.readouterr().out


def test_keys_are_long_and_never_the_same() -> None:
    made = {new_key() for _ in range(1_000)}
    assert len(made) == 1_000
    assert all(len(key) == len("kilisho_") + 43 for key in made)  # 32 bytes in base64 without padding (RFC 4648, section 5)


def test_a_key_is_known_by_its_digest_alone() -> None:
    keys = Keys({"one": digest_of(KEY), "two": digest_of(OTHER)})
    assert (keys.holder(KEY), keys.holder(OTHER)) == ("one", "two")
    for wrong in ("", KEY[:-1], KEY + "x", KEY.upper(), digest_of(KEY), new_key(), "ключ"):
        assert keys.holder(wrong) is None
    assert digest_of(KEY) not in repr(keys)
    assert digest_of(KEY) not in repr(Settings(api_keys=keys))


def test_digests_are_compared_in_constant_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """Every known digest is compared, whether or not one has been found, and by nothing else than the library's function."""
    import hmac

    compared = []

    def noting(first: str, second: str) -> bool:
        compared.append(second)
        return hmac.compare_digest(first, second)

    monkeypatch.setattr("kilisho_api.keys.hmac", type("Noting", (), {"compare_digest": staticmethod(noting)}))
    keys = Keys({name: digest_of(name) for name in "abc"})
    assert keys.holder("a") == "a"
    assert compared == list(keys.digests.values())


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("", "at least one line"),
        ("# nobody yet\n", "at least one line"),
        (f"app:{'0' * 63}\n", "its line 1"),
        (f"app:{'G' * 64}\n", "its line 1"),
        (f"# x\n\napp:{'0' * 64}\napp:{'1' * 64}\n", "its line 4"),
        ("app\n", "its line 1"),
        (f"App:{'0' * 64}\n", "its line 1"),
        ("kilisho_secretsecret\n", "its line 1"),
        ("\udcff", "UTF-8 text"),
    ],
)
def test_a_file_that_cannot_be_used_is_told_by_its_line_and_not_by_what_it_holds(tmp_path: Path, text: str, expected: str) -> None:
    file = tmp_path / "keys"
    file.write_bytes(text.encode("utf-8", "surrogateescape"))
    with pytest.raises(settings.SettingsError) as caught:
        settings.read({"KILISHO_API_KEYS": str(file)})
    [fault] = caught.value.faults
    assert fault.startswith("KILISHO_API_KEYS: expected ")
    assert expected in fault
    assert "secretsecret" not in fault


@pytest.mark.parametrize("path", ["nowhere", ".", "\0", "x" * 5_000])
def test_a_file_that_is_not_there_is_told(path: str) -> None:
    with pytest.raises(ValueError, match="can be read"):
        read_keys(path)


# ---- asking -------------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("page", OPEN_PAGES)
def test_what_watches_and_explains_the_service_needs_no_key(guarded: Guarded, page: str) -> None:
    assert guarded.client.get(page).status_code == 200
    assert guarded.client.head(page).status_code == 200
    assert page in OPEN


@pytest.mark.parametrize("page", [*CLOSED, *AROUND])
def test_everything_else_needs_one(guarded: Guarded, page: str) -> None:
    for method in ("GET", "HEAD", "OPTIONS", "PUT", "TRACE"):
        answer = guarded.client.request(method, guarded.server.url + page)
        assert answer.status_code == 401, (method, page)
        assert answer.headers["www-authenticate"] == 'Bearer realm="kilisho"'
        assert answer.headers["cache-control"] == "no-store"
        assert answer.headers["x-content-type-options"] == "nosniff"


@pytest.mark.parametrize("operation", OPERATIONS)
def test_a_question_without_a_key_is_not_even_read(guarded: Guarded, operation: str) -> None:
    told = problem(ask(guarded.client, operation, b"\xff not read"), 401, "unauthorized")
    assert told["detail"] == "The request shows no key."
    assert "errors" not in told


def test_a_large_body_without_a_key_is_turned_away(guarded: Guarded) -> None:
    problem(ask(guarded.client, "sizing", b" " * 900_000), 401, "unauthorized")


@pytest.mark.parametrize("key", [KEY, OTHER], ids=["one", "another"])
@pytest.mark.parametrize("scheme", ["Bearer", "bearer", "BEARER "])
def test_whoever_shows_a_key_is_answered(guarded: Guarded, questions: Mapping[str, Question], key: str, scheme: str) -> None:
    shown = {"authorization": f"{scheme} {key}"}
    answer = guarded.client.post("/v1/sizing", json=questions["sizing"].example, headers=JSON_BODY | shown)
    assert answer.status_code == 200
    assert guarded.client.get("/metrics", headers=shown).status_code == 200


WRONG = {
    "another": f"Bearer {new_key()}",
    "cut": f"Bearer {KEY[:-1]}",
    "its digest": f"Bearer {digest_of(KEY)}",
    "no scheme": KEY,
    "basic": f"Basic {KEY}",
    "empty": "Bearer",
    "two": f"Bearer {KEY} {KEY}",
    "listed": f"Bearer {KEY}, Bearer {OTHER}",
    "long": "Bearer " + "a" * 20_000,
    "letters beyond ASCII": b"Bearer \xc3\xa9\xff",
    "null": f"Bearer {KEY}%00",
}


@pytest.mark.parametrize("shown", WRONG.values(), ids=WRONG)
def test_whatever_is_no_known_key_is_refused_alike(guarded: Guarded, shown: str | bytes) -> None:
    answer = guarded.client.get("/v1/rulebook", headers={b"authorization": shown if isinstance(shown, bytes) else shown.encode()})  # type: ignore[dict-item]
    told = problem(answer, 401, "unauthorized")
    assert answer.headers["www-authenticate"] == 'Bearer realm="kilisho", error="invalid_token"'
    assert told["detail"] == "The Authorization header holds no key that the service knows."
    assert KEY[10:] not in answer.text


def test_a_key_counts_in_its_header_alone(guarded: Guarded) -> None:
    for query, headers in (({"access_token": KEY}, {}), ({"key": KEY}, {}), ({}, {"x-api-key": KEY}), ({}, {"cookie": f"key={KEY}"})):
        assert guarded.client.get("/v1/rulebook", params=query, headers=headers).status_code == 401


def test_two_authorization_headers_are_none(guarded: Guarded) -> None:
    """A proxy may look at the first and the service at the last; so neither counts."""
    twice = [("authorization", f"Bearer {KEY}"), ("authorization", f"Bearer {OTHER}")]
    assert guarded.client.get("/v1/rulebook", headers=twice).status_code == 401


def test_what_a_key_opened_stays_out_of_shared_caches(guarded: Guarded, client: httpx.Client) -> None:
    """RFC 9111, section 3.5: ``public`` lets a shared cache hand out what came with an Authorization header."""
    assert guarded.client.get("/v1/checks", headers=bearer(KEY)).headers["cache-control"] == "private, max-age=3600"
    assert guarded.client.get("/docs/reference.js").headers["cache-control"].startswith("public")
    assert client.get("/v1/checks").headers["cache-control"] == "public, max-age=3600"


def test_a_page_of_a_named_origin_may_send_a_key(guarded: Guarded) -> None:
    origin = {"origin": "https://app.example"}
    asked = {"access-control-request-method": "POST", "access-control-request-headers": "authorization"}
    ahead = guarded.client.options("/v1/sizing", headers=origin | asked)
    assert ahead.status_code == 204
    assert "authorization" in ahead.headers["access-control-allow-headers"]
    refused = guarded.client.get("/v1/checks", headers=origin)
    assert (refused.status_code, refused.headers["access-control-allow-origin"]) == (401, "https://app.example")
    assert "www-authenticate" in refused.headers["access-control-expose-headers"]


def test_the_refusal_is_told_in_the_language_asked_for(guarded: Guarded) -> None:
    assert guarded.client.get("/v1/checks", headers={"accept-language": "sw"}).headers["content-language"] == "sw"


def test_workers_all_know_the_keys(tmp_path: Path) -> None:
    file = tmp_path / "keys"
    file.write_text(line_of("app", KEY))
    with serving(tmp_path / "log", "--workers", "2", KILISHO_API_KEYS=str(file)) as server:
        told = [httpx.get(f"{server.url}/v1/rulebook", headers=headers).status_code for headers in ({}, bearer(KEY)) * 6]
    assert told == [401, 200] * 6


# ---- the contract -------------------------------------------------------------------------------------------------------------------


def test_the_contract_speaks_of_keys_only_where_they_are_asked_for(rulebook: Rulebook, questions: Mapping[str, Question]) -> None:
    plain, keyed = (
        orjson.loads(contract(rulebook, questions, one)) for one in (Settings(), Settings(api_keys=Keys({"app": digest_of(KEY)})))
    )
    assert "securitySchemes" not in plain["components"]
    assert not any("401" in one["responses"] or "security" in one for item in plain["paths"].values() for one in item.values())
    OpenAPIV31SpecValidator(keyed).validate()
    [scheme] = keyed["components"]["securitySchemes"].items()
    assert (scheme[0], scheme[1]["type"], scheme[1]["scheme"]) == ("ApiKey", "http", "bearer")
    for path, item in keyed["paths"].items():
        for operation in item.values():
            closed = path.startswith("/v1/") or path == "/metrics"
            assert operation.get("security") == ([{"ApiKey": []}] if closed else None), path
            assert ("401" in operation["responses"]) == closed or path == "/problems/{slug}", path
    assert "Authorization: Bearer KEY" in keyed["info"]["description"]
    assert "Authorization: Bearer KEY" not in plain["info"]["description"]


def test_no_key_set_means_no_layer_at_all() -> None:
    from litestar.testing import TestClient

    with TestClient(create_app(Settings())) as anybody:
        assert anybody.get("/v1/rulebook", headers={"authorization": "Bearer whatever"}).status_code == 200
