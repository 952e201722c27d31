"""Properties that hold of any request: robustness, finiteness, invariances, scaling, additivity and monotony."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from tests.rules.conftest import (
    FIRST_CHARGE,
    REQUESTS,
    SIZING,
    Json,
    answer_or_refusal,
    ask,
    containers,
    herds,
    like,
    numbers,
    questions,
    value,
)

from kilisho.faults import RefusedError
from kilisho.messages import DEFAULT, LANGUAGES, Language, told_in
from kilisho.units import KINDS, from_canonical

EVERY = pytest.mark.parametrize("name", sorted(REQUESTS))
PLANNED = pytest.mark.parametrize("name", ["first-charge", "maintenance-feed", "sizing"])
FEEDING: Json = {name: FIRST_CHARGE[name] for name in ("digester", "feed", "dilution", "herd", "climate")}
USUAL = {"first-charge": FIRST_CHARGE, "maintenance-feed": FEEDING, "sizing": SIZING}


@EVERY
@given(data=st.data())
@settings(max_examples=120)
def test_any_valid_request_is_answered_soundly_or_refused_with_reasons(name: str, data: Any) -> None:
    answer_or_refusal(name, data.draw(REQUESTS[name]()))


@EVERY
@given(data=st.data())
@settings(max_examples=25)
def test_explaining_changes_no_number_and_asking_again_changes_nothing(name: str, data: Any) -> None:
    body = data.draw(REQUESTS[name]())
    answer = answer_or_refusal(name, body)
    assume(answer is not None)
    assert answer is not None
    plain = ask(name, body)
    assert {key: told for key, told in answer.items() if key != "derivation"} == plain == ask(name, body)


@EVERY
@given(data=st.data())
@settings(max_examples=25)
def test_the_name_is_given_back_and_matters_nowhere_else(name: str, data: Any) -> None:
    body = data.draw(REQUESTS[name]())
    answer = answer_or_refusal(name, body)
    assume(answer is not None)
    assert answer is not None
    assert ask(name, {**body, "name": "Ferny Bottom (invented)"}, True) == {**answer, "name": "Ferny Bottom (invented)"}


def same(first: Json, second: Json, rel: float = 1e-4, least: float = 2e-3) -> None:
    """All numbers of two answers agree within rounding; whole counts within one, since a rounding error may fill a container."""
    others = dict(numbers(second))
    for path, number in numbers(first):
        if not any(part in path for part in ("/assumptions", "/findings", "/cautions")):
            slack = 1 if path.endswith(("/substrate", "/water", "/urine", "/trips")) else 0
            assert number == pytest.approx(others[path], rel=rel, abs=max(least, slack)), path


# Units


def in_unit(number: float, kind: str, code: str) -> Json:
    return {"value": from_canonical(number, kind, code), "unit": code}


def farm_said_with(said: Callable[[float, str], Json], name: str) -> Json:
    """A farm that states as much as it can in units, each number through ``said``."""
    body: Json = {
        "herd": [{"animal": "dairy_cow", "count": 8, "dung_per_day": said(14, "mass_flow"), "live_weight": said(310, "mass")}],
        "feed": [{"substrate": "cattle_dung", "total_solids": said(0.14, "share"), "bulk_density": said(990, "density")}],
        "dilution": {"target_total_solids": said(0.08, "share")},
        "climate": {"mean_air_temperature": said(19, "temperature"), "yearly_swing": said(5, "temperature_difference")},
        "water_available": said(0.09, "volume_flow"),
    }
    if name != "sizing":
        body |= {"digester": {"total_volume": said(12, "volume")}, "containers": [{"name": "bucket", "volume": said(0.0207, "volume")}]}
    if name == "first-charge":
        stock = {"starts_on": "2027-01-04", "cover": "sheet", "on_hand": said(300, "mass")}
        body |= {"stockpile": stock, "digester_ready_on": "2027-02-03", "water_distance": said(80, "length")}
    if name == "maintenance-feed":
        body |= {"urine": {"volume": said(0.011, "volume_flow")}, "feeding": {"every": said(2, "time")}}
    return body


@PLANNED
@given(data=st.data())
@settings(max_examples=30)
def test_units_do_not_matter(name: str, data: Any) -> None:
    def in_any(number: float, kind: str) -> Json:
        return in_unit(number, kind, data.draw(st.sampled_from(sorted(KINDS[kind].units))))

    def in_canonical(number: float, kind: str) -> Json:
        return in_unit(number, kind, KINDS[kind].canonical.code)

    same(ask(name, farm_said_with(in_any, name)), ask(name, farm_said_with(in_canonical, name)))


@given(st.floats(-20, 40), st.floats(0, 40))
def test_a_temperature_in_fahrenheit_or_kelvin_is_the_same_temperature(mean: float, swing: float) -> None:
    def climate(code: str) -> Json:
        return {"mean_air_temperature": in_unit(mean, "temperature", code), "yearly_swing": in_unit(swing, "temperature_difference", code)}

    celsius = ask("maintenance-feed", like(FEEDING, climate=climate("Cel")))
    for code in ("[degF]", "K"):
        same(ask("maintenance-feed", like(FEEDING, climate=climate(code))), celsius)


@given(st.lists(st.floats(-20, 40), min_size=12, max_size=12))
def test_monthly_temperatures_in_any_unit(months: list[float]) -> None:
    def climate(code: str) -> Json:
        return {"monthly_air_temperature": {"values": [from_canonical(m, "temperature", code) for m in months], "unit": code}}

    celsius = ask("sizing", like(SIZING, climate=climate("Cel")))
    for code in ("[degF]", "K"):
        same(ask("sizing", like(SIZING, climate=climate(code))), celsius, rel=1e-3)


# Order and splitting


@PLANNED
@given(data=st.data())
@settings(max_examples=40)
def test_the_order_of_the_herd_does_not_matter(name: str, data: Any) -> None:
    herd = data.draw(herds())
    shuffled = data.draw(st.permutations(herd))
    # The first of the feed stays the main one, so it is stated; otherwise the herd's first animal would decide it.
    body = like(USUAL[name], feed=[{"substrate": "cattle_dung", "mass": 50}])
    first, second = (answer_or_refusal(name, like(body, herd=order)) for order in (herd, shuffled))
    assert (first is None) is (second is None)
    if first is not None and second is not None:
        same(first, second)


@given(containers(), st.randoms(use_true_random=False))
def test_the_order_of_containers_changes_only_their_order(vessels: list[Json], random: Any) -> None:
    shuffled = random.sample(vessels, len(vessels))
    first, second = (ask("maintenance-feed", like(FEEDING, containers=order)) for order in (vessels, shuffled))
    key = str
    assert sorted(first["per_feeding"]["containers"], key=key) == sorted(second["per_feeding"]["containers"], key=key)


@PLANNED
@given(count=st.integers(1, 40), part=st.floats(0, 1))
@settings(max_examples=30)
def test_a_herd_line_may_be_split_in_two(name: str, count: int, part: float) -> None:
    some = int(count * part)
    cow = {"animal": "dairy_cow", "housing": "stall"}
    whole = ask(name, like(USUAL[name], herd=[{**cow, "count": count}]))
    split = ask(name, like(USUAL[name], herd=[{**cow, "count": some}, {**cow, "count": count - some}]))
    same(whole, split)


# Scaling


@given(st.floats(0.5, 40), st.integers(1, 40), st.integers(2, 8))
@settings(max_examples=40)
def test_a_digester_and_herd_n_times_as_large(volume: float, count: int, times: int) -> None:
    def asked(n: int) -> Json:
        herd = [{"animal": "dairy_cow", "count": n * count}]
        return ask("maintenance-feed", like(FEEDING, digester={"structure": "fixed_dome", "total_volume": n * volume}, herd=herd))

    once, scaled = asked(1), asked(times)
    for name in ("feed_per_day", "water_per_day", "slurry_per_day", "biogas_per_day", "digestate_mass_per_day", "nitrogen_per_day"):
        assert value(scaled, name) == pytest.approx(times * value(once, name), rel=2e-3, abs=2e-2), name
    for name in ("hydraulic_retention_time", "organic_loading_rate", "share_of_potential", "carbon_to_nitrogen", "total_ammonia_nitrogen"):
        assert value(scaled, name) == pytest.approx(value(once, name), rel=1e-3, abs=1e-3), name


@given(st.floats(0.5, 40), st.integers(2, 8))
@settings(max_examples=40)
def test_a_first_charge_n_times_as_large(volume: float, times: int) -> None:
    def asked(n: int) -> Json:
        herd = [{"animal": "dairy_cow", "count": n * 3}]
        return ask("first-charge", like(FIRST_CHARGE, digester={"structure": "fixed_dome", "total_volume": n * volume}, herd=herd))

    once, scaled = asked(1), asked(times)
    for name in ("slurry_volume", "substrate_mass", "water_volume", "stockpile.collected", "stockpile.on_heap", "animal_days"):
        assert value(scaled, name) == pytest.approx(times * value(once, name), rel=1e-4, abs=2e-2), name
    assert once["start_up"]["days_to_first_burnable_gas"] == scaled["start_up"]["days_to_first_burnable_gas"]
    assert once["stockpile"]["days_needed"] == scaled["stockpile"]["days_needed"]


# Monotony

COLDER_AND_WARMER = st.tuples(st.floats(-10, 34.5), st.floats(-10, 34.5)).map(sorted)


@given(COLDER_AND_WARMER, st.sampled_from(["cattle_dung", "pig_manure", "maize_stover", "kitchen_waste"]))
def test_a_warmer_digester_gives_no_less_gas(degrees: list[float], substrate: str) -> None:
    cold, warm = (
        ask("maintenance-feed", like(FEEDING, feed=[{"substrate": substrate, "mass": 40}], climate={"digester_temperature": t}))
        for t in degrees
    )
    for path in ("biogas_per_day", "biogas_per_day.low", "biogas_per_day.high", "share_of_potential"):
        assert value(warm, path) >= value(cold, path) - 1e-6, path
    assert value(warm, "free_ammonia") >= value(cold, "free_ammonia") - 1e-6


@given(COLDER_AND_WARMER)
def test_a_warmer_start_is_no_slower_and_a_warmer_digester_no_larger(degrees: list[float]) -> None:
    cold, warm = (ask("first-charge", like(FIRST_CHARGE, climate={"digester_temperature": t}))["start_up"] for t in degrees)
    never = dict.fromkeys(("value", "low", "high"), math.inf)
    for end in never:
        assert warm.get("days_to_first_burnable_gas", never)[end] <= cold.get("days_to_first_burnable_gas", never)[end] + 1e-6
        assert warm["in_practice"][end] <= cold["in_practice"][end] + 1e-6
    small, large = (ask("sizing", like(SIZING, climate={"digester_temperature": t})) for t in reversed(degrees))
    assert value(small, "design_retention_time") <= value(large, "design_retention_time") + 1e-6
    assert value(small, "total_volume") <= value(large, "total_volume")


@given(st.integers(1, 60), st.integers(1, 60))
def test_a_bigger_herd_need_not_start_earlier(few: int, many: int) -> None:
    few, many = sorted((few, many))
    small, big = (ask("first-charge", like(FIRST_CHARGE, herd=[{"animal": "dairy_cow", "count": n}]))["stockpile"] for n in (few, many))
    assert value(big, "collected") >= value(small, "collected")
    assert value(big, "shortfall") <= value(small, "shortfall") + 1e-6
    if small["start_by"] is not None:
        assert big["start_by"] >= small["start_by"]


@given(st.floats(0.5, 100), st.floats(0.5, 100))
def test_a_longer_retention_releases_no_smaller_share(first: float, second: float) -> None:
    short, long = (
        ask("maintenance-feed", like(FEEDING, digester={"structure": "fixed_dome", "total_volume": v})) for v in sorted((first, second))
    )
    assert value(long, "hydraulic_retention_time") >= value(short, "hydraulic_retention_time")
    assert value(long, "share_of_potential") >= value(short, "share_of_potential") - 1e-6
    assert value(long, "biogas_per_day") >= value(short, "biogas_per_day") - 1e-6
    assert value(long, "organic_loading_rate") <= value(short, "organic_loading_rate") + 1e-6


@given(st.floats(0, 10), st.floats(0, 10))
def test_more_water_thins_the_slurry_and_shortens_the_stay(first: float, second: float) -> None:
    thick, thin = (ask("maintenance-feed", like(FEEDING, dilution={"water_to_feed_by_volume": ratio})) for ratio in sorted((first, second)))
    assert value(thin, "slurry_total_solids") <= value(thick, "slurry_total_solids") + 1e-6
    assert value(thin, "hydraulic_retention_time") <= value(thick, "hydraulic_retention_time") + 1e-6
    assert value(thin, "total_ammonia_nitrogen") <= value(thick, "total_ammonia_nitrogen") + 1e-6


# Views


@pytest.mark.parametrize("name", sorted(name for name in REQUESTS if questions()[name].representations))
@given(data=st.data())
@settings(max_examples=20)
def test_any_answer_can_be_written_in_every_media_type_or_says_what_it_lacks(name: str, data: Any) -> None:
    question = questions()[name]
    answer = answer_or_refusal(name, data.draw(REQUESTS[name]()), explain=False)
    for write in question.representations.values() if answer is not None else ():
        assert written_or_refused(write, answer)


def written_or_refused(write: Callable[[Any, Language], str], answer: Any) -> bool:
    """Whether there is text, or else every fault says where and why."""
    try:
        return isinstance(write(told_in(LANGUAGES[DEFAULT], answer), LANGUAGES[DEFAULT]), str)
    except RefusedError as refused:
        return all(fault.place and fault.detail for fault in refused.faults)
