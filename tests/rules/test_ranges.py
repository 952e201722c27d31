"""Sampled ranges: the distribution against scipy, the strata, what is told of them, and the metamorphic relations of every answer."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy import stats
from tests.rules.conftest import Json, ask, base, like

from kilisho.farm import Ledger, Shelf
from kilisho.formulas.stockpile import Losses, Material, account, left_by_day
from kilisho.ranges import SAMPLES, Uncertain, about, certain, leading, sampled, standard_strata, strata, triangular

bounds = st.tuples(st.floats(-50, 50), st.floats(0.1, 20), st.floats(0, 1))

FARM: Json = {
    "digester": {"structure": "fixed_dome", "total_volume": 12},
    "feed": [{"substrate": "cattle_dung"}],
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "climate": {"mean_air_temperature": 22, "yearly_swing": 4},
}
SIZED: Json = {"herd": FARM["herd"], "climate": FARM["climate"]}
OPERATIONS = {"first-charge": FARM, "maintenance-feed": FARM, "sizing": SIZED}


@given(bounds)
def test_the_samples_are_scipys_triangular_distribution(shape: tuple[float, float, float]) -> None:
    """scipy.stats.triang, an independent implementation."""
    low, span, peak = shape
    typical = low + peak * span
    ours = triangular(strata("any"), low, typical, low + span)
    assert ours == pytest.approx(stats.triang(peak, low, span).ppf(strata("any")), abs=1e-9 * max(1.0, abs(low) + span))


@given(st.text(max_size=40))
def test_each_stratum_is_drawn_once(key: str) -> None:
    assert np.sort(strata(key)) == pytest.approx((np.arange(SAMPLES) + 0.5) / SAMPLES)
    order = standard_strata(key)
    assert order.sum() == pytest.approx(0, abs=1e-12)
    assert order @ order == pytest.approx(1)


def test_orders_of_different_figures_are_hardly_correlated() -> None:
    """A Latin hypercube: the correlation of two orders of 64 strata has a standard deviation of 1/8."""
    orders = np.array([standard_strata(f"substrates/{i}/total_solids") for i in range(60)])
    correlation = (orders @ orders.T)[np.triu_indices(60, 1)]
    assert np.abs(correlation).max() < 0.5
    assert correlation.std() == pytest.approx(1 / math.sqrt(SAMPLES - 1), rel=0.1)


def test_samples_cannot_be_changed_by_a_formula() -> None:
    found = sampled("a", 1, 2, 4)
    assert isinstance(found, np.ndarray)
    with pytest.raises(ValueError, match="read-only"):
        found += 1


@pytest.mark.parametrize(("low", "typical", "high"), [(2, 2, 2), (1.99, 2, 2.01), (0, 0, 0)])
def test_what_is_as_good_as_exact_is_not_sampled(low: float, typical: float, high: float) -> None:
    assert sampled("a", low, typical, high) == typical


@given(bounds)
def test_nine_in_ten_samples_lie_within_the_ends(shape: tuple[float, float, float]) -> None:
    low, span, peak = shape
    typical = low + peak * span
    assume(span > 0.02 * abs(typical))
    value, least, most = about(typical, sampled("b", low, typical, low + span))
    inside = stats.triang(peak, low, span).cdf([least, most])
    assert low <= least <= value <= most <= low + span
    assert inside[0] <= 0.06
    assert inside[1] >= 0.94


@pytest.mark.parametrize("value", [math.inf, math.nan, 3.0, 3 + 1e-12])
def test_noise_and_infinity_are_not_told_as_a_range(value: float) -> None:
    assert about(3.0, np.full(SAMPLES, value)) == (3.0,)


def test_sums_and_products_carry_the_samples() -> None:
    a, b = Uncertain(2.0, sampled("a", 1, 2, 3)), Uncertain(5.0, sampled("b", 4, 5, 7))
    both = a.by(b).plus(certain(1.0)).times(2.0)
    assert both.value == 22
    assert both.samples == pytest.approx(2 * (a.samples * b.samples + 1))
    assert certain(4.0).told == (4.0,)
    assert len(both.told) == 3


def test_the_input_that_moves_the_answer_leads() -> None:
    """For a sum of independent inputs the shares are those of the variances."""
    answer = 10 * sampled("wide", 0, 1, 2) + sampled("narrow", 0, 1, 2)
    first, *rest = leading(answer, ("narrow", "unused", "wide"))
    assert first.key == "wide"
    assert first.explains > 0.9
    assert first.narrows == pytest.approx(1 - math.sqrt(1 - first.explains))
    assert "unused" not in {one.key for one in rest}
    assert list(leading(3.0, ("wide",))) == []
    assert list(leading(answer, ())) == []


def numbers(value: Any, path: tuple[str, ...] = ()) -> dict[tuple[str, ...], Json]:
    """Every amount of an answer by its place."""
    if isinstance(value, dict):
        if {"value", "unit"} <= value.keys() and isinstance(value["value"], int | float):
            return {path: value}
        inner = value.items()
    else:
        inner = enumerate(value) if isinstance(value, list) else ()
    return {place: amount for key, part in inner for place, amount in numbers(part, (*path, str(key))).items()}


def told(operation: str, body: Json) -> dict[tuple[str, ...], Json]:
    """The amounts of an answer's own members."""
    common = ("assumptions", "findings", "cautions", "measure_first")
    return {place: amount for place, amount in numbers(ask(operation, body)).items() if place[0] not in common}


@pytest.mark.parametrize("operation", OPERATIONS)
def test_every_range_is_in_order(operation: str) -> None:
    found = [amount for amount in told(operation, OPERATIONS[operation]).values() if "low" in amount]
    assert len(found) > 8
    assert all(amount["low"] <= amount["value"] <= amount["high"] for amount in found)


# What is decided or told to be done is exact for the decision; these places hold decisions, or counts of what is decided.
DECIDED = {
    "purchases", "remedies", "containers", "schedule", "ramp", "mass_per_person_and_day", "rule_of_thumb", "from_supply", "from_demand",
    "coldest_month", "dimensions", "account", "keeps_for", "oldest", "gas_pressure",
}  # fmt: skip


@pytest.mark.parametrize("operation", OPERATIONS)
@pytest.mark.parametrize("field", ["total_solids", "bulk_density", "volatile_solids", "biogas_yield"])
def test_whatever_a_property_moves_has_a_range(operation: str, field: str) -> None:
    """The property is stated at the low and at the high end of the rulebook; each number that differs must carry a range."""
    figure = getattr(base().data.substrates["cattle_dung"], field)
    body = OPERATIONS[operation]
    ends = [told(operation, like(body, feed=[{"substrate": "cattle_dung", field: end}])) for end in (figure.least, figure.most)]
    ranged = told(operation, body)
    for place in ranged.keys() & ends[0].keys() & ends[1].keys():
        low, high = ends[0][place]["value"], ends[1][place]["value"]
        if abs(high - low) > 0.03 * abs(ranged[place]["value"]) and not DECIDED & set(place):
            assert "low" in ranged[place], place


@pytest.mark.parametrize("operation", OPERATIONS)
def test_the_same_request_gives_the_same_ranges(operation: str) -> None:
    assert ask(operation, OPERATIONS[operation]) == ask(operation, OPERATIONS[operation])


def test_measuring_narrows_and_the_measured_is_no_longer_proposed() -> None:
    before = ask("maintenance-feed", FARM)
    first = before["measure_first"][0]
    assert (first["quantity"], first["of"]) == ("dung_per_day", "dairy_cow")
    weighed = like(FARM, herd=[{"animal": "dairy_cow", "count": 8, "dung_per_day": 15}])
    after = ask("maintenance-feed", weighed)
    width = [one["biogas_per_day"]["high"] - one["biogas_per_day"]["low"] for one in (before, after)]
    assert width[1] < width[0]
    assert "dung_per_day" not in {one["quantity"] for one in after["measure_first"]}
    assert all(one["how"] and one["answer"] == "biogas_per_day" for one in after["measure_first"])


def test_a_fully_measured_charge_has_no_range() -> None:
    body = {
        "digester": {"total_volume": 12, "working_volume": 8, "gas_storage_volume": 2},
        "feed": [{"substrate": "cattle_dung", "total_solids": 0.15, "bulk_density": 1000}],
        "dilution": {"water_to_feed_by_volume": 1},
    }
    answer = ask("first-charge", body)
    for name in ("slurry_volume", "substrate_mass", "water_volume", "slurry_total_solids"):
        assert "low" not in answer[name], name


@pytest.mark.parametrize("name", ["substrate_mass", "water_volume"])
def test_twice_the_digester_is_twice_the_range(name: str) -> None:
    once, twice = (ask("first-charge", like(FARM, digester={"total_volume": size}))[name] for size in (10, 20))
    for end in ("value", "low", "high"):
        assert twice[end] == pytest.approx(2 * once[end], rel=1e-6)


def test_the_sampled_heap_is_the_heap_of_each_sample() -> None:
    """Against the account of one farm, sample by sample."""
    shelf = Shelf(base().data)
    ledger, values = Ledger(shelf), shelf.substrates["cattle_dung"].sampled
    losses = Losses(*(ledger.figure("covers", "roof", f"{name}_loss").samples for name in ("volatile_solids", "nitrogen", "moisture")))
    solids = values["total_solids"]
    organic = solids * values["volatile_solids_share"]
    material = Material(1 - solids, organic, solids - organic, solids * values["nitrogen_share"])
    left = left_by_day(material, losses)
    for i in (0, 17, 63):
        alone = Material(*(float(part[i]) for part in (material.water, material.volatile_solids, material.ash, material.nitrogen)))
        lost = Losses(*(float(part[i]) for part in (losses.volatile_solids, losses.nitrogen, losses.moisture)))
        heap = account(alone, lost, 80.0, 300.0, 60)
        assert 80 * left.of_daily[45, i] + 300 * left.of_start[45, i] == pytest.approx(heap.on_heap[45])
        assert left.days_until(2000.0, 80.0, 300.0)[i] == heap.days_until(2000.0)  # type: ignore[index]
        nitrogen = 80 * left.nitrogen_lost_of_daily(45) + 300 * left.nitrogen_lost_of_start(45)
        assert nitrogen[i] == pytest.approx(heap.nitrogen_lost[45])  # type: ignore[index]


def test_more_animals_need_fewer_days_at_both_ends() -> None:
    few, many = (ask("first-charge", like(FARM, herd=[{"animal": "dairy_cow", "count": n}]))["stockpile"]["days_needed"] for n in (4, 8))
    assert many["low"] <= few["low"]
    assert many["high"] < few["high"]


def test_an_input_that_is_only_drawn_alike_is_not_named() -> None:
    """Among 400 orders some correlate with the cause by more than the least share; none of them is taken for a second cause."""
    cause = sampled("cause", 0, 1, 2)
    keys = ("cause", *(f"bystander {i}" for i in range(400)))
    alike = [key for key in keys if (standard_strata(key) @ standard_strata("cause")) ** 2 > 0.05]
    assert len(alike) > 10
    assert [one.key for one in leading(3 * cause + 1, keys)] == ["cause"]
