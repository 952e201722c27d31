"""The gas curve of a batch charge over HTTP: as JSON and as a table, in agreement."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from typing import Any

import httpx
from tests.api.asking import JSON_BODY, ask, problem

from kilisho.questions import Question

NAME = "batch-rotation"


def table(answer: httpx.Response) -> list[dict[str, str]]:
    assert answer.headers["content-type"].startswith("text/csv")
    return list(csv.DictReader(io.StringIO(answer.text)))


def posted(client: httpx.Client, body: Any, accept: str) -> httpx.Response:
    return client.post(f"/v1/{NAME}", json=body, headers=JSON_BODY | {"accept": accept}, timeout=60)


def test_the_table_holds_the_curve_of_the_answer(client: httpx.Client, questions: Mapping[str, Question]) -> None:
    body = questions[NAME].example
    told = ask(client, NAME, body).json()["gas_curve"]
    rows = table(posted(client, body, "text/csv"))
    assert len(rows) == len(told)
    for row, day in zip(rows, told, strict=True):
        assert (int(row["day"]), row["date"]) == (day["day"], day["date"])
        assert float(row["gas [m3/d]"]) == day["gas"]["value"]
        assert float(row["usable_gas [m3/d]"]) == day["usable_gas"]["value"]
        assert float(row["temperature [Cel]"]) == day["temperature"]["value"]


def test_a_refusal_is_a_problem_whatever_was_wanted(client: httpx.Client) -> None:
    for accept in ("text/csv", "application/json"):
        told = problem(posted(client, {"digester": {"total_volume": 9}, "feed": []}, accept), 422, "invalid-request")
        assert [error["pointer"] for error in told["errors"]] == ["/feed"]


def test_a_charge_without_gas_is_a_table_too(client: httpx.Client) -> None:
    body = {"digester": {"total_volume": 9}, "feed": [{"substrate": "cattle_dung", "biogas_yield": 0}]}
    rows = table(posted(client, body, "text/csv"))
    assert len(rows) == 300
    assert {float(row["usable_gas [m3/d]"]) for row in rows} == {0.0}
    assert not any(row.get("date") for row in rows)
