"""The ledger of one farm: what was stated, assumed and derived; curves; volumes that contradict each other."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import FARM, ask, assumed, base, findings, like, value

from kilisho.farm import GRAPH, SUBSTRATE_QUANTITIES, Ledger, Shelf, describe, plain, read_curve
from kilisho.rulebook import Property

SHELF = Shelf(base().data)
CURVES = base().data.practice.curves


def test_the_graph_holds_every_substrate_quantity() -> None:
    assert set(SUBSTRATE_QUANTITIES.values()) <= set(GRAPH.quantities)


def test_an_assumption_is_told_in_the_packs_own_unit() -> None:
    figure = base().data.substrates["cattle_dung"].total_solids
    told = describe("total_solids", "cattle_dung", figure)
    assert figure.unit == "%"
    assert told["value"] == pytest.approx(100 * figure.typical)
    assert (told["low"], told["high"]) == pytest.approx((100 * figure.least, 100 * figure.most))
    assert told["basis"] == str(figure.basis)
    assert told["source"] == list(figure.source)


def test_a_figure_without_a_range_tells_none() -> None:
    figure = Property(typical=3.0, unit="d", kind="time", basis="judgement")  # type: ignore[arg-type]
    assert describe("age", None, figure) == {"quantity": "age", "value": 3.0, "unit": "d", "basis": "judgement", "source": []}


def test_plain_takes_off_the_noise_of_a_conversion() -> None:
    assert plain(0.1 + 0.2) == 0.3
    assert plain(1 / 3) == pytest.approx(1 / 3, rel=1e-11)


@given(st.sampled_from(sorted(CURVES)), st.floats(-40, 70))
def test_a_curve_stays_between_its_neighbouring_points(name: str, temperature: float) -> None:
    points = CURVES[name].points
    low, typical, high = read_curve(CURVES[name], temperature)
    assert low <= typical <= high
    around = [p for p in points if p.at <= temperature][-1:] + [p for p in points if p.at > temperature][:1]
    assert min(p.typical for p in around) - 1e-9 <= typical <= max(p.typical for p in around) + 1e-9


@pytest.mark.parametrize("name", sorted(CURVES))
def test_a_curve_goes_through_its_points_and_is_flat_beyond(name: str) -> None:
    points = CURVES[name].points
    for point in points:
        assert read_curve(CURVES[name], point.at) == pytest.approx((point.low, point.typical, point.high))
    assert read_curve(CURVES[name], -273.0) == read_curve(CURVES[name], points[0].at)
    assert read_curve(CURVES[name], 99.0) == pytest.approx(read_curve(CURVES[name], points[-1].at))


def test_the_middle_between_two_points_is_their_mean() -> None:
    first, second = CURVES["design_retention"].points[:2]
    middle = read_curve(CURVES["design_retention"], (first.at + second.at) / 2)
    assert middle[1] == pytest.approx((first.typical + second.typical) / 2)


def test_a_stated_figure_of_practice_is_not_assumed() -> None:
    ledger = Ledger(SHELF)
    ledger.state("mixing_rate", 0.9)
    assert ledger.practice("mixing_rate") == 0.9
    assert ledger.assumptions == []
    assert Ledger(SHELF).practice("mixing_rate") == base().data.practice.figures["mixing_rate"].typical


def test_the_ledger_traces_what_it_derived_from_what_it_was_given() -> None:
    ledger = Ledger(SHELF)
    ledger.state("total_volume", 12.0)
    ledger.put(fill_share=0.5, slurry_per_day=0.2)
    ledger.solve("working_volume")
    ledger.solve("hydraulic_retention_time")
    assert ledger.values["hydraulic_retention_time"] == pytest.approx(30)
    steps = {step["quantity"]: step for step in ledger.trace()}
    assert set(steps) == {"working_volume", "hydraulic_retention_time"}
    assert steps["hydraulic_retention_time"]["inputs"] == {"working_volume": 6.0, "slurry_per_day": 0.2}


def digester(**volumes: float) -> dict[str, object]:
    return {"structure": "fixed_dome", **volumes}


@pytest.mark.parametrize(
    ("volumes", "denied"),
    [
        ({"total_volume": 12}, False),
        ({"total_volume": 12, "working_volume": 8}, False),
        ({"total_volume": 12, "working_volume": 10.2}, False),
        ({"total_volume": 12, "working_volume": 3}, True),
        ({"total_volume": 12, "working_volume": 11.9}, True),
        ({"total_volume": 12, "gas_storage_volume": 2.4}, False),
        ({"total_volume": 12, "gas_storage_volume": 6}, True),
        ({"working_volume": 8, "gas_storage_volume": 2.4}, False),
    ],
)
def test_volumes_that_deny_each_other_are_a_finding(volumes: dict[str, float], denied: bool) -> None:
    answer = ask("maintenance-feed", like(FARM, digester=digester(**volumes)))
    assert (findings(answer).get("stated_values_agree") == "fail") is denied


def test_a_contradiction_tells_both_sides_and_the_stated_value_is_used() -> None:
    answer = ask("maintenance-feed", like(FARM, digester=digester(total_volume=12, working_volume=3)))
    [told] = [one for one in answer["findings"] if one["check"] == "stated_values_agree"]
    fill = base().data.structures["fixed_dome"].fill_share
    assert told["value"] == {"value": 3.0, "unit": "m3"}
    assert told["must"]["between"] == pytest.approx([12 * fill.least, 12 * fill.most])
    assert value(answer, "hydraulic_retention_time") == pytest.approx(3 / 0.24)


def test_a_stated_working_volume_replaces_the_structures_share() -> None:
    answer = ask("maintenance-feed", like(FARM, digester=digester(working_volume=8)))
    by_total = ask("maintenance-feed", like(FARM, digester=digester(total_volume=12)))
    assert value(answer, "hydraulic_retention_time") == pytest.approx(value(by_total, "hydraulic_retention_time"))
    both = ask("maintenance-feed", like(FARM, digester=digester(total_volume=12, working_volume=8)))
    assert ("fill_share", "fixed_dome") not in assumed(both)
    assert ("fill_share", "fixed_dome") in assumed(by_total)


def test_what_is_not_stated_is_listed_as_assumed_and_what_is_measured_is_not() -> None:
    usual = assumed(ask("maintenance-feed", FARM))
    assert {("total_solids", "cattle_dung"), ("dung_per_day", "dairy_cow"), ("soil_offset", None)} <= usual
    measured = like(FARM, feed=[{"substrate": "cattle_dung", "total_solids": 0.12}], climate={"digester_temperature": 24})
    assert not {("total_solids", "cattle_dung"), ("soil_offset", None)} & assumed(ask("maintenance-feed", measured))
    assert ("dung_per_day", "dairy_cow") not in assumed(
        ask("maintenance-feed", like(FARM, herd=[{"animal": "dairy_cow", "count": 8, "dung_per_day": 14}]))
    )


def test_nothing_but_a_volume_is_enough_and_every_choice_is_owned_up_to() -> None:
    answer = ask("maintenance-feed", {"digester": {"total_volume": 12}})
    chosen = {one["quantity"] for one in answer["assumptions"] if one.get("choice")}
    assert {"structure", "substrate"} <= chosen
    assert answer["digester_temperature"]["known"] is False
