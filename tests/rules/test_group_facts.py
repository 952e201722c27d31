"""Facts that follow from the group of what is fed: every check that reads one can be met, by each operation that asks it."""

from __future__ import annotations

from typing import Any

import pytest
from tests.rules.conftest import Json, ask, base, findings

from kilisho.checks import test_of as holds
from kilisho.questions.feeding import Fed, feed_facts
from kilisho.rulebook import GROUPS_OF_FACTS

DATA = base().data
# Birds whatever their litter: what a pack author adds as a bird's dung belongs to them.
POULTRY = {"layer_droppings", "broiler_litter"}
WARM: Json = {"digester_temperature": 27}
DOME: Json = {"structure": "fixed_dome", "total_volume": 12}


def fed(**masses: float) -> list[Fed]:
    """Substrates with their masses [kg] and the base pack's typical total solids."""
    entries = {name: DATA.substrates[name] for name in masses}
    return [Fed(name, entry, masses[name], {"total_solids": entry.total_solids.typical}) for name, entry in entries.items()]


def test_the_groups_of_the_base_pack_by_what_gives_them() -> None:
    assert {name for name, entry in DATA.substrates.items() if entry.group == "poultry"} == POULTRY
    assert {name for name, entry in DATA.substrates.items() if entry.group == "excreta"} == {"human_excreta"}
    of_birds = {DATA.animals[bird].substrate for bird in ("layer_hen", "broiler")}
    assert of_birds == POULTRY


def test_shares_by_hand() -> None:
    facts = feed_facts(fed(cattle_dung=60, layer_droppings=30, broiler_litter=10))
    assert facts["poultry_share"] == pytest.approx(0.4)
    assert not facts["human_excreta_fed"]
    assert feed_facts(fed(goat_droppings=5, rabbit_droppings=5))["poultry_share"] == 0
    assert feed_facts(fed(cattle_dung=9, human_excreta=1))["human_excreta_fed"]
    dung, straw = (DATA.substrates[name].total_solids.typical for name in ("cattle_dung", "rice_straw"))
    assert feed_facts(fed(cattle_dung=9, rice_straw=1))["crop_residue_share"] == pytest.approx(straw / (9 * dung + straw))


@pytest.mark.parametrize("fact", GROUPS_OF_FACTS)
def test_every_check_on_a_group_can_be_met_and_not_met_by_what_the_base_pack_lets_feed(fact: str) -> None:
    values = [feed_facts(fed(**{name: 1.0}))[fact] for name in DATA.substrates]
    conditions = {name: check.must for name, check in DATA.checks.items() if check.subject == fact}
    conditions |= {f"{name} when": check.when[fact] for name, check in DATA.checks.items() if fact in check.when}
    assert conditions
    for name, condition in conditions.items():
        assert {bool(holds(condition, DATA.facts[fact])(value)) for value in values} == {True, False}, name


def test_every_structure_that_a_check_names_is_one() -> None:
    """A name that nothing has would switch its check off without a word."""
    conditions = [check.when["structure_kind"] for check in DATA.checks.values() if "structure_kind" in check.when]
    named = {name for condition in conditions for [(_, bound)] in [condition.operators] for name in _listed(bound)}
    assert named
    assert named <= DATA.structures.keys()


def _listed(bound: Any) -> tuple[str, ...]:
    return bound if isinstance(bound, tuple) else (bound,)


# ---- each operation says it ------------------------------------------------------------------------------------------------------


def blend(percent: float, whole: float, unit: Json | None = None) -> list[Json]:
    """Cattle dung with so many percent of a layer's droppings."""
    parts = {"cattle_dung": whole * (100 - percent) / 100, "layer_droppings": whole * percent / 100}
    return [{"substrate": name, "mass": mass} for name, mass in parts.items() if mass]


def maintenance_feed(percent: float) -> Json:
    return ask("maintenance-feed", {"digester": DOME, "feed": blend(percent, 80), "climate": WARM})


def gas_forecast(percent: float) -> Json:
    plan = [{"from": "2027-03-01", "every": 1, "feed": blend(percent, 60), "water": 60}]
    charge = {"on": "2027-02-01", "feed": [{"substrate": "cattle_dung", "mass": 3000}], "water": 3000}
    return ask("gas-forecast", {"digester": DOME, "first_charge": charge, "maintenance_feed": plan, "climate": WARM, "days": 60})


def diagnosis(percent: float) -> Json:
    return ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "digester": DOME, "feed": blend(percent, 80), "water": 80})


def feed_mix(percent: float) -> Json:
    """Limits wide enough, and all that there is needed for the gas, so that the recipe is what is at hand."""
    on_hand = [{"substrate": one["substrate"], "available": one["mass"]} for one in blend(percent, 10)]
    limits = {"least_carbon_to_nitrogen": 3, "largest_total_ammonia_nitrogen": 9, "largest_organic_loading_rate": 9}
    return ask("feed-mix", {"on_hand": on_hand, "working_volume": 12, "climate": WARM, "limits": limits, "wish": "most_gas"})


USUAL, MOST = "poultry_share_usual", "poultry_share_most"


@pytest.mark.parametrize("operation", [maintenance_feed, gas_forecast, diagnosis, feed_mix])
@pytest.mark.parametrize(("percent", "usual", "most"), [(10, None, None), (35, "fail", None), (70, "fail", "fail")])
def test_a_feed_is_judged_by_its_poultry_droppings(operation: Any, percent: float, usual: str | None, most: str | None) -> None:
    """What is met is only counted in an answer, and not listed."""
    found = findings(operation(percent))
    assert (found.get(USUAL), found.get(MOST)) == (usual, most)


def test_a_record_of_an_installation_is_judged_too() -> None:
    record = {"structure": "fixed_dome", "total_volume": 12, "feed_mass": 30, "water_volume": 60}
    for substrate, verdict in (("broiler_litter", "fail"), ("cattle_dung", None), ("goat_droppings", None)):
        found = findings(ask("installations/validate", {**record, "substrate": substrate}))
        assert found.get(MOST) == verdict


@pytest.mark.parametrize(("starter", "percent", "verdict"), [(0, 30, "fail"), (0, 10, None), (3500, 30, None)])
def test_a_first_charge_of_poultry_droppings_wants_starter(starter: float, percent: float, verdict: str | None) -> None:
    """Yang et al. (2018) forbid it without ample starter: with a third of the slurry as starter the check has nothing to say."""
    answer = ask(
        "first-charge",
        {
            "digester": DOME,
            "feed": [{"substrate": "layer_droppings", "share": percent / 100}, {"substrate": "cattle_dung"}],
            "stockpile": {"starts_on": "2027-01-04"},
            "digester_ready_on": "2027-02-03",
            "starter_slurry": starter,
            "climate": WARM,
        },
    )
    assert findings(answer).get("no_poultry_start_without_starter") == verdict


def test_a_farm_plan_tells_it_of_its_first_charge_and_of_its_daily_feed() -> None:
    plan = ask("farm-plan", {"structure": "fixed_dome", "herd": [{"animal": "layer_hen", "count": 400}], "climate": WARM})
    failed = {one["check"] for one in plan["findings"] if one["verdict"] == "fail"}
    assert {USUAL, MOST, "no_poultry_start_without_starter"} <= failed


@pytest.mark.parametrize(("percent", "sign"), [(10, False), (39, False), (41, True), (70, True)])
def test_a_diagnosis_reads_the_share_as_a_sign_of_ammonia(percent: float, sign: bool) -> None:
    [cause] = [one for one in diagnosis(percent)["causes"] if one["cause"] == "ammonia_from_droppings"]
    assert ("poultry_share" in {one["of"] for one in cause["speaks_for"]}) == sign
