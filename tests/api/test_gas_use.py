"""The use of gas over HTTP: the table by hour, the fuels and pipes of the catalogue, and refusals that point at their place."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path
from typing import Any

import httpx
import pytest
from tests.api.asking import JSON_BODY, ask, faults

CONTRACT: dict[str, Any] = json.loads((Path(__file__).parents[1] / "contract" / "gas-use.request.json").read_text())


def test_the_answer_and_its_table_say_the_same(client: httpx.Client) -> None:
    answer = ask(client, "gas-use", CONTRACT).json()
    table = client.post("/v1/gas-use", content=json.dumps(CONTRACT), headers={**JSON_BODY, "accept": "text/csv"})
    assert table.status_code == 200
    assert table.headers["content-type"].startswith("text/csv")
    rows = list(csv.DictReader(io.StringIO(table.text)))
    assert len(rows) == len(answer["cover_by_hour"]) == 24
    for row, hour in zip(rows, answer["cover_by_hour"], strict=True):
        for name in ("supply", "demand", "unmet", "vented", "stored"):
            assert float(row[f"{name} [m3]"]) == hour[name]["value"]


def test_the_derivation_comes_when_asked_for(client: httpx.Client) -> None:
    assert "derivation" not in ask(client, "gas-use", CONTRACT).json()
    assert ask(client, "gas-use", CONTRACT, explain="true").json()["derivation"]


@pytest.mark.parametrize(
    ("change", "pointer", "code"),
    [
        ({"pipe": {"length": {"value": 30, "unit": "L"}}}, "/pipe/length/unit", "unknown_unit"),
        ({"pipe": {"length": 30, "bore": 20}}, "/pipe/bore", "extra_forbidden"),
        ({"replaced_fuels": [{"fuel": "wood"}]}, "/replaced_fuels/0/fuel", "unknown_id"),
        ({"gas_demand": 2}, "", "demand_twice"),
        ({"biogas_per_day": "much"}, "/biogas_per_day", "number_expected"),
    ],
)
def test_refusals_point_at_their_place(client: httpx.Client, change: dict[str, Any], pointer: str, code: str) -> None:
    assert faults(ask(client, "gas-use", CONTRACT | change))[pointer]["code"] == code


def test_a_near_name_is_offered(client: httpx.Client) -> None:
    told = faults(ask(client, "gas-use", CONTRACT | {"replaced_fuels": [{"fuel": "fire_wood"}]}))
    assert "firewood" in told["/replaced_fuels/0/fuel"]["nearest"]


def test_fuels_and_pipes_have_pages(client: httpx.Client) -> None:
    wood = client.get("/v1/fuels/firewood").json()
    assert (wood["heating_value"]["typical"], wood["heating_value"]["unit"]) == (16, "MJ/kg")
    assert wood["emission_factor"]["basis"] == "from_memory"
    pipe = client.get("/v1/pipes/steel_half_inch").json()
    assert (pipe["inner_diameter"]["typical"], pipe["inner_diameter"]["unit"]) == (15.8, "mm")


def test_every_fuel_of_the_catalogue_can_be_asked_for(client: httpx.Client) -> None:
    names = [one["id"] for one in client.get("/v1/fuels").json()["items"]]
    told = ask(client, "gas-use", {"biogas_per_day": 1}).json()["replaced_fuels"]
    assert [one["fuel"] for one in told] == names
    shares = [{"fuel": name, "share": 1 / len(names)} for name in names]
    assert ask(client, "gas-use", {"biogas_per_day": 1, "replaced_fuels": shares}).status_code == 200
