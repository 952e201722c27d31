"""The maintenance feed: per feeding and per day, balances of mass and nitrogen, urine, intervals, grit and the rule of thumb."""

from __future__ import annotations

import datetime as dt
import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import FARM, Json, ask, base, findings, like, maintenance_feeds, value

from kilisho.farm import GRAPH
from kilisho.faults import RefusedError
from kilisho.formulas.gas import moist_biogas_density
from kilisho.messages import LANGUAGES

DATA = base().data


def feed(**changes: Any) -> Json:
    return ask("maintenance-feed", like(FARM, **changes))


# The engine's balances


FLOW = st.floats(1e-3, 1e4)
SHARE = st.floats(0.001, 1)


FEEDS = st.fixed_dictionaries(
    {
        "feed_mass_per_day": FLOW,
        "total_solids": SHARE,
        "volatile_solids_share": SHARE,
        "nitrogen_share": SHARE,
        "bulk_density": st.floats(20, 2000),
        "water_to_feed_by_volume": st.floats(0, 30),
        "biogas_per_day": st.floats(0, 5),
    }
)
FIXED = {
    "water_density": 1000.0,
    "methane_share": 0.6,
    "gas_pressure": 101325.0,
    "urine_per_day": 0.0,
    **{f"urine_{name}_per_day": 0.0 for name in ("mass", "solids", "nitrogen", "carbon", "ammonium")},
}


@given(FEEDS)
def test_slurry_is_feed_and_liquid_and_digestate_is_slurry_less_gas(fed: dict[str, float]) -> None:
    mass, solids = fed["feed_mass_per_day"], fed["total_solids"]
    wanted = (
        "slurry_per_day",
        "displaced_volume_per_day",
        "liquid_per_day",
        "water_per_day",
        "slurry_mass_per_day",
        "digestate_mass_per_day",
    )
    more = (
        "biogas_mass_per_day",
        "volatile_solids_per_day",
        "ash_per_day",
        "total_solids_per_day",
        "nitrogen_per_day",
        "slurry_total_solids",
    )
    found = GRAPH.solve({**fed, **FIXED}, (*wanted, *more))
    assert found["slurry_per_day"] == pytest.approx(found["displaced_volume_per_day"] + found["liquid_per_day"], rel=1e-9)
    assert found["slurry_mass_per_day"] == pytest.approx(mass + 1000 * found["water_per_day"], rel=1e-9)
    assert found["digestate_mass_per_day"] + found["biogas_mass_per_day"] == pytest.approx(found["slurry_mass_per_day"], rel=1e-9)
    assert found["volatile_solids_per_day"] + found["ash_per_day"] == pytest.approx(mass * solids, rel=1e-9)
    assert found["nitrogen_per_day"] == pytest.approx(mass * solids * fed["nitrogen_share"], rel=1e-9)
    assert found["slurry_total_solids"] * found["slurry_mass_per_day"] == pytest.approx(mass * solids, rel=1e-9)


@given(maintenance_feeds())
def test_answers_balance_to_their_rounding(body: Json) -> None:
    try:
        answer = ask("maintenance-feed", body, explain=True)
    except RefusedError:
        return
    steps = {step["quantity"]: step["value"] for step in answer["derivation"] if "of" not in step}
    whole = steps["slurry_mass_per_day"]
    density = moist_biogas_density(value(answer, "methane_share") / 100, 25.0, 101325.0)
    gas = value(answer, "biogas_per_day") * density
    assert value(answer, "digestate_mass_per_day") + gas == pytest.approx(whole, rel=1e-4, abs=1e-2)
    fed_in = value(answer, "slurry_per_day")
    liquid = value(answer, "water_per_day") + value(answer, "urine_per_day")
    volumes = sum(step["value"] for step in answer["derivation"] if step["quantity"] == "displaced_volume_per_day") * 1000
    assert fed_in == pytest.approx(volumes + liquid, rel=1e-4, abs=1e-2)
    every = value(answer, "per_feeding.every")
    assert value(answer, "per_feeding.substrate_mass") == pytest.approx(value(answer, "feed_per_day") * every, rel=1e-4, abs=2e-2)
    parts = answer["per_feeding"]["substrates"]
    assert sum(value(part, "mass") for part in parts) == pytest.approx(value(answer, "per_feeding.substrate_mass"), rel=1e-4, abs=1e-2)


@given(maintenance_feeds())
def test_more_does_not_come_out_than_went_in(body: Json) -> None:
    """Gas is made of organic matter; it can weigh no more than what was fed of it and the water that it takes up and carries."""
    try:
        answer = ask("maintenance-feed", body)
    except RefusedError:
        return
    assert value(answer, "digestate_mass_per_day") >= 0
    assert 0 <= value(answer, "share_of_potential") <= 100
    gas = answer["biogas_per_day"]
    assert gas.get("low", gas["value"]) <= gas["value"] <= gas.get("high", gas["value"])


# By hand


def test_eight_cows_on_twelve_cubic_metres() -> None:
    answer = feed()
    assert value(answer, "feed_per_day") == 120
    assert value(answer, "water_per_day") == 120
    assert value(answer, "slurry_per_day") == 240
    assert value(answer, "hydraulic_retention_time") == pytest.approx(8 / 0.24, abs=1e-3)
    assert value(answer, "organic_loading_rate") == pytest.approx(120 * 0.15 * 0.8 / 8, abs=1e-3)
    assert value(answer, "slurry_total_solids") == pytest.approx(7.5, abs=1e-3)
    assert value(answer, "carbon_to_nitrogen") == pytest.approx(20)
    assert value(answer, "nitrogen_per_day") == pytest.approx(120 * 0.15 * 0.018, abs=1e-3)


def test_a_mix_is_the_sum_of_its_parts() -> None:
    dung, droppings = {"substrate": "cattle_dung", "mass": 80}, {"substrate": "layer_droppings", "mass": 20}
    body = {"digester": {"working_volume": 8}, "dilution": {"water_to_feed_by_volume": 1}, "climate": {"digester_temperature": 25}}
    mixed, first, second = (ask("maintenance-feed", {**body, "feed": items}) for items in ([dung, droppings], [dung], [droppings]))
    for name in ("feed_per_day", "slurry_per_day", "nitrogen_per_day", "organic_loading_rate"):
        assert value(mixed, name) == pytest.approx(value(first, name) + value(second, name), abs=2e-3), name
    assert value(first, "carbon_to_nitrogen") > value(mixed, "carbon_to_nitrogen") > value(second, "carbon_to_nitrogen")


def test_the_herd_fills_in_for_a_mass_that_is_not_stated() -> None:
    answer = feed(feed=[{"substrate": "cattle_dung"}, {"substrate": "whey", "mass": 10}])
    assert {part["substrate"]: value(part, "mass") for part in answer["per_feeding"]["substrates"]} == {"cattle_dung": 120, "whey": 10}


def test_without_herd_or_mass_the_digester_decides() -> None:
    answer = feed(herd=[], climate={"digester_temperature": 25})
    assert value(answer, "hydraulic_retention_time") == pytest.approx(57.5)
    assert value(answer, "feed_per_day") == pytest.approx(8 / 57.5 / 2 * 1000, abs=1e-2)


@pytest.mark.parametrize("target", [0.05, 0.08, 0.12])
def test_a_target_of_total_solids_is_met(target: float) -> None:
    assert value(feed(dilution={"target_total_solids": target}), "slurry_total_solids") == pytest.approx(100 * target, abs=1e-2)


def test_a_target_above_the_feed_adds_no_water() -> None:
    answer = feed(dilution={"target_total_solids": 0.4})
    assert value(answer, "water_per_day") == 0
    assert value(answer, "slurry_total_solids") == pytest.approx(15)


def test_a_measured_methane_potential_replaces_the_yield() -> None:
    def gas(**measured: float) -> float:
        return value(feed(feed=[{"substrate": "cattle_dung", **measured}]), "biogas_per_day")

    assert gas(methane_potential=0.4) == pytest.approx(2 * gas(methane_potential=0.2), rel=1e-3)
    assert gas(methane_potential=0.2, biogas_yield=1.0) == pytest.approx(gas(methane_potential=0.2))
    assert gas(methane_potential=0) == 0


# Urine


def test_urine_stands_in_for_water_litre_for_litre() -> None:
    with_urine, without = feed(urine={"collected": True, "volume": 5}), feed()
    assert value(with_urine, "urine_per_day") == pytest.approx(5)
    assert with_urine["urine"]["limited_by"] == "gathered"
    assert value(with_urine, "water_per_day") == pytest.approx(value(without, "water_per_day") - 5)
    assert value(with_urine, "slurry_per_day") == value(without, "slurry_per_day")
    assert value(with_urine, "nitrogen_per_day") > value(without, "nitrogen_per_day")
    assert value(with_urine, "carbon_to_nitrogen") < value(without, "carbon_to_nitrogen")
    assert value(with_urine, "total_ammonia_nitrogen") > value(without, "total_ammonia_nitrogen")


def test_urine_is_limited_by_the_carbon_to_nitrogen_ratio() -> None:
    answer = feed(urine={"collected": True, "volume": 1000})
    least = DATA.practice.figures["least_carbon_to_nitrogen_with_urine"].typical
    assert answer["urine"]["limited_by"] == "carbon_to_nitrogen"
    assert value(answer, "carbon_to_nitrogen") == pytest.approx(least, abs=0.02)


def test_urine_is_at_most_its_share_of_the_liquid() -> None:
    stover = [{"substrate": "maize_stover", "mass": 20, "carbon_to_nitrogen": 400}]
    answer = feed(herd=[], feed=stover, dilution={"target_total_solids": 0.08}, urine={"collected": True, "volume": 1000})
    largest = DATA.practice.figures["largest_urine_share"].typical
    assert answer["urine"]["limited_by"] == "largest_share_of_liquid"
    liquid = value(answer, "urine_per_day") + value(answer, "water_per_day")
    assert value(answer, "urine_per_day") == pytest.approx(largest * liquid, rel=1e-4)


@pytest.mark.parametrize("urine", [None, {"collected": False}, {"collected": True, "volume": 0}, {"collected": False, "volume": 50}])
def test_no_urine(urine: Json | None) -> None:
    assert value(feed(urine=urine), "urine_per_day") == 0


def test_the_herds_own_urine_is_counted() -> None:
    cow = DATA.animals["dairy_cow"]
    answer = feed(urine={})
    assert value(answer, "urine.gathered") == pytest.approx(8 * 1000 * cow.urine_per_day.typical * cow.urine_collectable.stall.typical)


# Intervals and upkeep


@pytest.mark.parametrize(
    ("every", "kind"),
    [(0.25, "regular"), (0.5, "regular"), (1, "regular"), (7, "regular"), (7.01, "irregular"), (14, "batch_like"), (60, "batch_like")],
)
def test_which_intervals_are_regular(every: float, kind: str) -> None:
    answer = feed(feeding={"every": every})
    assert answer["operation"]["kind"] == kind
    assert value(answer, "per_feeding.substrate_mass") == pytest.approx(120 * every, abs=1e-2)
    assert value(answer, "feed_per_day") == 120
    assert value(answer, "storing.oldest") == (every if every > 1 else 0)


def test_missed_feedings_are_made_up_slowly() -> None:
    extra = DATA.practice.figures["catch_up_share"].typical
    answer = feed(feeding={"every": 1, "missed": 3})["catching_up"]
    assert value(answer, "largest_feeding") == pytest.approx(120 * (1 + extra))
    assert answer["feedings_to_make_up"] == math.ceil(3 / extra)
    assert feed()["catching_up"]["feedings_to_make_up"] == 0


def test_containers_of_each_thing_are_whole() -> None:
    answer = feed(containers=[{"name": "bucket", "volume": 17}], urine={"volume": 9})
    [one] = answer["per_feeding"]["containers"]
    assert (one["substrate"], one["water"], one["urine"]) == (math.ceil(120 / 17), math.ceil(value(answer, "water_per_day") / 17), 1)


def test_grit_fills_its_share_in_the_stated_time() -> None:
    """Ash times the settling share, half of it held in the mixing tank, at the sludge's density, against a fifth of 8 m3."""
    figures, dung = DATA.practice.figures, DATA.substrates["cattle_dung"]
    ash = 120 * 0.15 * 0.2 * dung.settling_share.typical
    sludge = ash * (1 - figures["grit_held_in_mixing_tank"].typical) / figures["sludge_density"].typical
    grit = feed()["grit"]
    assert value(grit, "sludge_per_year") == pytest.approx(sludge * 365.25 * 1000, rel=1e-3)
    assert value(grit, "desludging_interval") == pytest.approx(figures["sludge_allowance"].typical * 8 / sludge / 365.25, rel=1e-2)
    assert len(grit["clean_feed"]) >= 3


def test_a_feed_without_ash_leaves_no_grit() -> None:
    grit = feed(feed=[{"substrate": "cattle_dung", "volatile_solids": 1}])["grit"]
    assert value(grit, "sludge_per_year") == 0
    assert "desludging_interval" not in grit


def test_the_schedule_is_dated_from_the_first_feeding() -> None:
    answer = feed(feeding={"every": 0.5, "starts_on": "2027-03-01"})
    rows = {one["event"]: one for one in answer["schedule"]}
    assert rows["feed"]["date"] == "2027-03-01"
    assert value(rows["feed"], "repeats_every") == 0.5
    for one in rows.values():
        assert one["date"] == (dt.date(2027, 3, 1) + dt.timedelta(days=one["day"])).isoformat()
    assert "Nobody enters" in rows["desludging_due"]["text"]
    assert all("date" not in one for one in feed()["schedule"])


# Beside the model


def test_the_rule_of_thumb_stands_beside_the_model_with_its_reason() -> None:
    rule = feed(climate={"digester_temperature": 27})["rule_of_thumb"]
    assert value(rule, "biogas_per_day") == 4
    assert rule["within_range"] is True
    assert "27 °C" in rule["why"]
    assert feed(climate={"digester_temperature": 13})["rule_of_thumb"]["within_range"] is False


def test_the_rule_of_thumb_says_what_it_holds_for_and_whether_it_fits() -> None:
    temperate = feed(climate={"digester_temperature": 13})
    stay = LANGUAGES["en"].number(temperate["hydraulic_retention_time"]["value"], 0)
    assert temperate["rule_of_thumb"]["why"] == (
        "The trade's gas per head holds for a warm digester, plentiful dung and a long retention; here the slurry is at 13 °C and stays "
        f"{stay} days. It lies outside the model's range: plan with the model's figure."
    )
    assert feed(climate={"digester_temperature": 27})["rule_of_thumb"]["why"].endswith("It lies within the model's range.")


@pytest.mark.parametrize(
    ("every", "kind", "text"),
    [
        (1, "regular", "Regular feeding: the same amount each time."),
        (10, "irregular", "More than 7 days between feedings is no longer regular feeding; gas will rise and fall."),
        (45, "batch_like", "At 45 days between feedings this is batch feeding: expect gas in waves."),
    ],
)
def test_the_interval_in_words(every: float, kind: str, text: str) -> None:
    assert feed(feeding={"every": every})["operation"] == {"kind": kind, "text": text}


def test_texts_that_follow_from_figures_of_practice() -> None:
    answer, extra = feed(), DATA.practice.figures["catch_up_share"].typical * 100
    assert answer["catching_up"]["text"] == (
        f"Never feed at once what was missed: at most {extra:.0f} % more than usual; pause if the gas falls or sours."
    )
    assert len(answer["grit"]["clean_feed"]) == 4
    assert (answer["storing"]["text"], feed(feeding={"every": 3})["storing"]["text"]) == (
        "Feed it fresh.",
        "Keep dung shaded and covered until it is fed, oldest first; feed each time the same amount.",
    )


def test_rows_carry_the_name_of_their_substrate() -> None:
    rows = feed(feed=[{"substrate": "cattle_dung"}, {"substrate": "goat_droppings", "mass": 2}])["per_feeding"]["substrates"]
    assert [one["name"] for one in rows] == [DATA.substrates[one["substrate"]].name for one in rows]


def test_no_rule_of_thumb_where_the_trade_has_none() -> None:
    unruled = next(name for name, animal in DATA.animals.items() if animal.rule_of_thumb_gas is None)
    assert feed(herd=[{"animal": unruled, "count": 4}], feed=[]).get("rule_of_thumb") is None


@pytest.mark.parametrize(
    ("change", "check", "how"),
    [
        ({"digester": {"total_volume": 4}}, "retention_below_25", "fail"),
        ({"digester": {"total_volume": 40}}, "retention_below_25", None),
        ({"water_available": 50}, "water_enough", "fail"),
        ({"water_available": 500}, "water_enough", None),
        ({}, "water_enough", "unknown"),
    ],
)
def test_findings_follow_the_feed(change: Json, check: str, how: str | None) -> None:
    assert findings(feed(**change)).get(check) == how


# Between two feedings


def test_the_swing_between_feedings_is_the_closed_form_of_first_order_decay() -> None:
    """Twelve cubic metres at 25 Cel: k is 0.009 times 1.106 to the fifth; the swing is x / (1 - e^-x) with x = k E."""
    answer = feed(feeding={"every": 7}, climate={"digester_temperature": 25})
    x = 0.009 * 1.106**5 * 7
    told, mean = answer["between_feedings"], value(answer, "biogas_per_day")
    assert value(told, "greatest_gas") == pytest.approx(mean * x / (1 - math.exp(-x)), rel=1e-5)
    assert value(told, "least_gas") == pytest.approx(mean * x / (1 - math.exp(-x)) * math.exp(-x), rel=1e-5)
    assert value(told, "storage_needed") == pytest.approx(mean * 7 * x / 8, rel=0.03)


def test_seldom_feeding_swings_more_and_needs_more_storage() -> None:
    swings = [feed(feeding={"every": every})["between_feedings"] for every in (1, 3, 7, 14)]
    assert [value(one, "storage_needed") for one in swings] == sorted(value(one, "storage_needed") for one in swings)
    assert [value(one, "greatest_gas") for one in swings] == sorted(value(one, "greatest_gas") for one in swings)
    assert value(swings[0], "storage_needed") < 0.01


def test_nobody_carries_what_drains_in_from_a_latrine() -> None:
    """Common practice, and the caution: the latrine drains straight in. It counts in mass and slurry, not in buckets or their load."""
    dung, latrine = {"substrate": "cattle_dung", "mass": 60}, {"substrate": "human_excreta", "mass": 15}
    changes: Json = {"containers": [{"name": "bucket", "volume": 10}], "dilution": {"water_to_feed_by_volume": 1}}
    alone, joined = feed(feed=[dung], **changes)["per_feeding"], feed(feed=[dung, latrine], **changes)["per_feeding"]
    assert value(joined, "substrate_mass") == pytest.approx(75)
    assert [value(one, "mass") for one in joined["substrates"]] == pytest.approx([60, 15])
    for name in ("substrate", "load"):
        assert joined["containers"][0][name] == alone["containers"][0][name]
    only = feed(feed=[latrine], **changes)["per_feeding"]
    assert only["containers"][0]["substrate"] == 0
