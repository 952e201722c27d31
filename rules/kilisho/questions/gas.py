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


def highest_gas(fed: Sequence[Fed], conditions: dict[str, float], ledger: Ledger) -> dict[str, float]:
    """The high end of the gas: all properties high, or what the growth kinetics give where that is more.

    First-order decay fitted to handbook yields promises too little for warm, well run plants; growth kinetics with the highest usual
    methane potential, less what an unstirred digester does not reach, bound the answer from above.
    """
    high = gas_of(fed, conditions, "high")
    grown = _grown_gas(fed, conditions, ledger)
    if grown <= high["biogas_per_day"]:
        return high
    return {**high, "biogas_per_day": grown, "share_of_potential": min(1.0, high["share_of_potential"] * grown / high["biogas_per_day"])}


def _grown_gas(fed: Sequence[Fed], conditions: dict[str, float], ledger: Ledger) -> float:
    """Biogas as used per day by the growth kinetics; 0 where they are not valid or not known for every substrate."""
    temperature, retention = conditions["digester_temperature"], conditions["hydraulic_retention_time"]
    if temperature < LEAST_GROWTH_TEMPERATURE or any(one.entry.growth_model is None for one in fed):
        return 0.0
    reach = ledger.practice("growth_model_reach")
    concentration = min(ledger.values["volatile_solids_per_day"] / ledger.values["slurry_per_day"], MOST_SOLIDS_CONCENTRATION)
    return float(sum(reach * _grown(one, temperature, retention, concentration) for one in fed))


def _grown(one: Fed, temperature: float, retention: float, concentration: float) -> float:
    parameter = GROWTH_PARAMETERS[str(one.entry.growth_model)](concentration)
    share = chen_hashimoto_share(temperature, retention, parameter)
    solids = one.mass * one.values["total_solids"] * one.values["volatile_solids_share"]
    methane = solids * one.entry.methane_potential.most * share
    return float(methane / one.values["methane_share"] / normal_factor(temperature, SEA_LEVEL_PRESSURE))


def trace_of(fed: Sequence[Fed], ledger: Ledger) -> list[dict[str, Any]]:
    """How each substrate's own quantities came about."""
    conditions = {name: ledger.values[name] for name in ("hydraulic_retention_time", "digester_temperature", "tanks_in_series")}
    return [
        {**step, "of": one.id}
        for one in fed
        for step in GRAPH.trace({**one.values, **conditions, "feed_mass_per_day": one.mass}, (*PER_DAY, *GAS))
    ]
