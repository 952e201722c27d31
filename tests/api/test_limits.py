"""A limit that the environment sets is in the contract and in the refusals of the service."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from litestar.testing import TestClient
from tests import invented
from tests.api.asking import faults

from kilisho import questions as package
from kilisho_api.app import create_app
from kilisho_api.settings import read, table

PATH = f"/v1/{invented.NAME}"


@pytest.fixture(params=[None, "30", "3660"])
def limit(request: pytest.FixtureRequest) -> str | None:
    found: str | None = request.param
    return found


@pytest.fixture
def there(monkeypatch: pytest.MonkeyPatch, limit: str | None) -> Iterator[TestClient[Any]]:
    monkeypatch.setattr(package, "FORMS", (*package.FORMS, invented.form))
    with TestClient(create_app(read({"KILISHO_LONGEST_FORECAST": limit} if limit else {}))) as opened:
        yield opened


def test_the_limit_in_force_is_published_and_kept(there: TestClient[Any], limit: str | None) -> None:
    most = int(limit or 1098)
    contract = there.get("/openapi.json").json()
    name = contract["paths"][PATH]["post"]["requestBody"]["content"]["application/json"]["schema"]["$ref"].rsplit("/", 1)[1]
    days = contract["components"]["schemas"][name]["properties"]["days"]
    assert (days["minimum"], days["maximum"]) == (1, most)
    assert len(there.post(PATH, json={"days": most}).json()["rows"]) == most
    fault = faults(there.post(PATH, json={"days": most + 1}))["/days"]
    assert fault == {"pointer": "/days", "code": "out_of_range", "detail": f"must be at least 1 and at most {most}"}


def test_every_setting_is_in_the_manual(there: TestClient[Any]) -> None:
    manual = there.get("/openapi.json").json()["info"]["description"]
    rows = [f"| `{name}` | {default} | {meaning} |" for name, default, meaning in table()]
    assert [row for row in rows if row not in manual] == []
    assert len(rows) >= 11
