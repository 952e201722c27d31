"""The day's gas of a mix: typical, the low and high ends, and how it came about."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from kilisho.farm import GRAPH, Ledger
from kilisho.formulas.digester import SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.kinetics import chen_hashimoto_cattle_parameter, chen_hashimoto_share, chen_hashimoto_swine_parameter
from kilisho.questions.feeding import PER_DAY, Fed

GAS = ("biogas_per_day", "share_of_potential")
RANGED = ("biogas_per_day", "share_of_potential")
RATE = "degradation_rate"
CONDITIONS = ("hydraulic_retention_time", "digester_temperature", "tanks_in_series")
# Where the growth kinetics were measured: 20 to 60 Cel, up to 100 kg volatile solids per cubic metre.
LEAST_GROWTH_TEMPERATURE, MOST_SOLIDS_CONCENTRATION = 20.0, 100.0
GROWTH_PARAMETERS = {"cattle": chen_hashimoto_cattle_parameter, "swine": chen_hashimoto_swine_parameter}


def gas_of(fed: Sequence[Fed], conditions: dict[str, float], side: str = "values") -> dict[str, float]:
    """Biogas of the mix per day, its methane share, and the share of the potential that the conditions release.

    ``side`` picks typical values or the low or high end of every uncertain property at once, which bounds the answer.
    """
    gas = methane = potential = 0.0
    for one in fed:
        given = {**getattr(one, side), **conditions, "feed_mass_per_day": one.mass}
        found = GRAPH.solve(given, GAS)
        gas += found["biogas_per_day"]
        methane += found["biogas_per_day"] * given["methane_share"]
        potential += found["biogas_per_day"] / found["share_of_potential"] if found["share_of_potential"] else 0.0
    return {
        "biogas_per_day": gas,
        "methane_share": methane / gas if gas else 0.0,
        "share_of_potential": gas / potential if potential else 0.0,
    }


def gas_range(
    fed: Sequence[Fed], conditions: dict[str, float], ledger: Ledger, temperatures: tuple[float, float]
) -> tuple[dict[str, float], dict[str, float]]:
    """The low and high end of the gas and of the share of the potential, around the typical values in the ledger.

    Low has every property and the temperature at its low end, high at its high end; the rate is tried at both, since a slow
    substrate whose yield is measured at 25 Cel and 60 d has the more left to give in a warmer or longer retention. Where the growth
    kinetics give more than that, they are the high end: first-order decay fitted to handbook yields promises too little for warm, well
    run plants.
    """
    cold, warm = ({**conditions, "digester_temperature": temperature} for temperature in temperatures)
    low = [gas_of(_with_rate(fed, rate), cold, "low") for rate in ("low", "high")]
    high = [gas_of(_with_rate(fed, rate), warm, "high") for rate in ("low", "high")]
    lowest = {name: min([ledger.values[name], *(one[name] for one in low)]) for name in RANGED}
    highest = {name: max([ledger.values[name], *(one[name] for one in high)]) for name in RANGED}
    grown = _grown_gas(fed, warm, ledger)
    if grown > highest["biogas_per_day"] > 0:
        share = min(1.0, highest["share_of_potential"] * grown / highest["biogas_per_day"])
        highest = {"biogas_per_day": grown, "share_of_potential": share}
    return lowest, highest


def _with_rate(fed: Sequence[Fed], side: str) -> list[Fed]:
    """The substrates with their degradation rate at one end, whichever end is asked of the other properties."""
    rates = [{RATE: getattr(one, side)[RATE]} for one in fed]
    return [Fed(one.id, one.entry, one.mass, one.values, one.low | rate, one.high | rate) for one, rate in zip(fed, rates, strict=True)]


def _grown_gas(fed: Sequence[Fed], conditions: dict[str, float], ledger: Ledger) -> float:
    """Biogas as used per day by the growth kinetics; 0 where they are not valid, not known, or a potential was measured."""
    temperature, retention = conditions["digester_temperature"], conditions["hydraulic_retention_time"]
    if temperature < LEAST_GROWTH_TEMPERATURE or any(_yield_is_known(one) for one in fed):
        return 0.0
    reach = ledger.practice("growth_model_reach")
    concentration = min(ledger.values["volatile_solids_per_day"] / ledger.values["slurry_per_day"], MOST_SOLIDS_CONCENTRATION)
    return float(sum(reach * _grown(one, temperature, retention, concentration) for one in fed))


def _yield_is_known(one: Fed) -> bool:
    """Whether a measured yield or potential, or the lack of a growth model, leaves no room for the growth kinetics."""
    measured = one.low["biogas_yield"] == one.high["biogas_yield"] or "biogas_potential" in one.values
    return measured or one.entry.growth_model is None


def _grown(one: Fed, temperature: float, retention: float, concentration: float) -> float:
    parameter = GROWTH_PARAMETERS[str(one.entry.growth_model)](concentration)
    share = chen_hashimoto_share(temperature, retention, parameter)
    solids = one.mass * one.values["total_solids"] * one.values["volatile_solids_share"]
    methane = solids * one.entry.methane_potential.most * share
    return float(methane / one.values["methane_share"] / normal_factor(temperature, SEA_LEVEL_PRESSURE))


def trace_of(fed: Sequence[Fed], ledger: Ledger) -> list[dict[str, Any]]:
    """How each substrate's own quantities came about."""
    conditions = {name: ledger.values[name] for name in (*CONDITIONS, "water_density")}
    return [
        {**step, "of": one.id}
        for one in fed
        for step in GRAPH.trace({**one.values, **conditions, "feed_mass_per_day": one.mass}, (*PER_DAY, *GAS))
    ]
