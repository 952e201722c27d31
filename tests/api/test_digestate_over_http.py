"""The question on digestate over HTTP: the contract's request, its land units, and refusals that point at what is wrong."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import httpx
import orjson
import pytest
from tests.api.asking import ask, faults

REQUEST: dict[str, Any] = orjson.loads((Path(__file__).parents[1] / "contract" / "digestate.request.json").read_bytes())


def crops(**changes: Any) -> dict[str, Any]:
    return {**REQUEST, "crops": [{**REQUEST["crops"][0], **changes}]}


def test_the_contract_s_request(client: httpx.Client) -> None:
    answer = ask(client, "digestate", REQUEST)
    assert answer.status_code == 200
    told = answer.json()
    for name in ("digestate_per_day", "nitrogen", "phosphorus", "potassium", "area_served", "waiting_time"):
        assert told[name]["value"] > 0
        assert told[name]["unit"]
    assert told["area_served"]["unit"] == "har"
    assert "derivation" not in told
    explained = ask(client, "digestate", REQUEST, explain="true").json()
    assert {key: part for key, part in explained.items() if key != "derivation"} == told


@pytest.mark.parametrize("area", [{"value": 8000, "unit": "m2"}, {"value": 0.8, "unit": "har"}, 0.8])
def test_land_in_hectares_or_square_metres(client: httpx.Client, area: Any) -> None:
    told = ask(client, "digestate", crops(area=area)).json()
    assert told["crops"][0]["area"] == {"value": 0.8, "unit": "har"}
    assert told["area_served"] == ask(client, "digestate", REQUEST).json()["area_served"]


def test_refusals_point_at_what_is_wrong(client: httpx.Client) -> None:
    assert faults(ask(client, "digestate", crops(area={"value": 2, "unit": "ha"})))["/crops/0/area/unit"]["code"] == "unknown_unit"
    need = faults(ask(client, "digestate", crops(nitrogen_need={"value": 90, "unit": "kg"})))
    assert need["/crops/0/nitrogen_need/unit"]["code"] == "unknown_unit"
    assert faults(ask(client, "digestate", crops(eaten_raw="no")))["/crops/0/eaten_raw"]["code"] == "yes_no_expected"
    wrong = faults(ask(client, "digestate", crops(crop="napier")))["/crops/0/crop"]
    assert (wrong["code"], wrong["nearest"][0]) == ("unknown_id", "napier_grass")
    both = faults(ask(client, "digestate", {**REQUEST, "digester": {"total_volume": 9}}))
    assert both["/hydraulic_retention_time"]["code"] == "stated_twice"
    assert faults(ask(client, "digestate", {**REQUEST, "spreading": "sprayed"}))["/spreading"]["code"] == "unknown_id"


def test_a_feed_that_nobody_weighed_is_refused(client: httpx.Client) -> None:
    refused = faults(ask(client, "digestate", {**REQUEST, "feed": [{"substrate": "cattle_dung"}]}))
    assert refused["/feed"]["code"] == "amount_unknown"


def test_crops_are_in_the_catalogue(client: httpx.Client) -> None:
    listed = client.get("/v1/crops").json()["items"]
    assert len(listed) >= 12
    assert {"maize", "beans", "napier_grass", "banana", "coffee", "potato", "leafy_vegetables"} <= {crop["id"] for crop in listed}
    maize = client.get("/v1/crops/maize").json()
    assert maize["nitrogen_need"]["unit"] == "kg/har"
    assert maize["nitrogen_need"]["basis"] == "from_memory"
    for part, least in (("spreadings", 3), ("slurry_stores", 2)):
        assert len(client.get(f"/v1/practice/{part}").json()["entries"]) >= least
