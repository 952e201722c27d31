"""Whoever adds a substrate, a fact or a check edits YAML only: a pack made here works over HTTP at once."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import httpx
import pytest
from tests.api.running import serving

PACK = """\
pack: {id: testland, version: 1.2.3, title: "Testland (invented)"}
substrates:
  sunflower_stalk:
    name: Sunflower stalk, chopped
    group: crop_residue
    total_solids: {low: 80, typical: 86, high: 90, unit: "%", basis: judgement}
    volatile_solids: {low: 88, typical: 92, high: 95, unit: "%", basis: judgement}
    bulk_density: {typical: 90, unit: kg/m3, basis: judgement}
    nitrogen: {typical: 0.8, unit: "%", basis: judgement}
    carbon_to_nitrogen: {typical: 55, unit: "1", basis: judgement}
    biogas_yield: {low: 0.15, typical: 0.22, high: 0.3, unit: m3/kg, basis: judgement}
    methane_share: {typical: 54, unit: "%", basis: judgement}
    methane_potential: {typical: 0.18, unit: m3/kg, basis: judgement}
    degradation_rate: {typical: 0.006, unit: 1/d, basis: judgement}
    settling_share: {typical: 2, unit: "%", basis: judgement}
    dilution: {target_total_solids: {typical: 8, unit: "%", basis: judgement}, basis: judgement}
    retention_factor: {typical: 1.5, unit: "1", basis: judgement}
    starts_unaided: false
facts:
  distance_to_school:
    {name: Distance to the school, group: site, field: distance_to_school, kind: length, unit: m, at_least: 0, at_most: 9999}
checks:
  school_distance:
    title: The plant is at least 40 m from the school
    topic: siting
    subject: distance_to_school
    must: {at_least: 40, unit: m}
    severity: danger
    why: Children play there.
    do: Move the plant.
    basis: judgement
"""


@pytest.fixture(scope="module")
def there(tmp_path_factory: pytest.TempPathFactory) -> Iterator[httpx.Client]:
    folder: Path = tmp_path_factory.mktemp("packs")
    (folder / "testland.yaml").write_text(PACK, "utf-8")
    with serving(folder / "log", "--packs", str(folder / "testland.yaml")) as server, httpx.Client(base_url=server.url) as client:
        yield client


def test_the_new_substrate_is_in_the_catalogue_and_the_contract(there: httpx.Client) -> None:
    assert there.get("/v1/substrates/sunflower_stalk").json()["total_solids"]["typical"] == 86
    assert "sunflower_stalk" in there.get("/openapi.json").text
    assert there.get("/v1/rulebook").json()["version"] == "1.2.3"


def test_the_new_substrate_can_be_charged(there: httpx.Client) -> None:
    feed = [{"substrate": "cattle_dung", "share": 0.9}, {"substrate": "sunflower_stalk", "share": 0.1}]
    answer = there.post("/v1/first-charge", json={"digester": {"total_volume": 9}, "feed": feed}).json()
    masses = {part["substrate"]: part["mass"]["value"] for part in answer["substrates"]}
    assert masses["sunflower_stalk"] == pytest.approx(masses["cattle_dung"] / 9, rel=1e-4)  # told to the gram
    assert answer["rulebook"]["id"] == "base_testland"


@pytest.mark.parametrize(
    ("body", "verdict"),
    [
        ({"site": {"distance_to_school": 39}}, "fail"),
        ({"site": {"distance_to_school": {"value": 4000, "unit": "cm"}}}, "pass"),
        ({"facts": {"distance_to_school": 41}}, "pass"),
        ({}, "unknown"),
    ],
)
def test_the_new_check_judges_the_new_fact(there: httpx.Client, body: dict[str, object], verdict: str) -> None:
    answer = there.post("/v1/safety-check", json=body).json()
    [finding] = [one for one in answer["findings"] if one["check"] == "school_distance"]
    assert finding["verdict"] == verdict
    assert (answer["verdict"] == "danger") == (verdict == "fail")


def test_the_base_pack_alone_knows_nothing_of_it(client: httpx.Client) -> None:
    assert client.get("/v1/substrates/sunflower_stalk").status_code == 404
    refused = client.post("/v1/safety-check", json={"site": {"distance_to_school": 39}})
    assert refused.status_code == 422
    assert refused.json()["errors"][0]["pointer"] == "/site/distance_to_school"
