"""The gas forecast over HTTP: as a table for a spreadsheet, with the limit in force, and without holding up others."""

from __future__ import annotations

import csv
import io
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import httpx
import orjson
import pytest
from tests.api.asking import JSON_BODY, ask, faults

REQUEST: dict[str, Any] = orjson.loads((Path(__file__).parents[1] / "contract" / "gas-forecast.request.json").read_bytes())


def test_a_year_of_days_comes_as_a_table(client: httpx.Client) -> None:
    answer = client.post("/v1/gas-forecast", json=REQUEST, headers={"accept": "text/csv"})
    assert answer.headers["content-type"] == "text/csv; charset=utf-8; header=present"
    rows = list(csv.DictReader(io.StringIO(answer.text)))
    told = ask(client, "gas-forecast", REQUEST).json()
    assert [row["date"] for row in rows] == [day["date"] for day in told["series"]]
    assert [float(row["gas [m3/d]"]) for row in rows] == [day["gas"]["value"] for day in told["series"]]
    assert set(rows[0]) >= {"day", "gas low [m3/d]", "gas high [m3/d]", "methane [m3/d]", "temperature [Cel]", "acid_risk"}


@pytest.mark.parametrize("days", [18_250, 1_099, -1, 1.5, "365"])
def test_days_beyond_the_limit_are_refused_in_one_clear_sentence(client: httpx.Client, days: Any) -> None:
    fault = faults(ask(client, "gas-forecast", {**REQUEST, "days": days}))["/days"]
    assert fault["code"] in ("out_of_range", "whole_number_expected")


def test_others_are_answered_while_forecasts_are_worked_out(client: httpx.Client) -> None:
    body = orjson.dumps({**REQUEST, "days": 1_098})
    with ThreadPoolExecutor(3) as pool:
        slow = [pool.submit(client.post, "/v1/gas-forecast", content=body, headers=JSON_BODY, timeout=60) for _ in range(3)]
        quick = [client.get("/health").status_code for _ in range(5)]
        assert quick == [200] * 5
        assert {one.result().status_code for one in slow} == {200}
