"""The day's gas of a mix at steady feeding, its range, and how it came about."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from kilisho.farm import GRAPH, Ledger
from kilisho.formulas.arrays import least, most
from kilisho.formulas.digester import REFERENCE_TEMPERATURE
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.kinetics import chen_hashimoto_cattle_parameter, chen_hashimoto_share, chen_hashimoto_swine_parameter
from kilisho.questions.feeding import PER_DAY, Fed, sampled

GAS = ("biogas_per_day", "share_of_potential", "rate_at_temperature")
CONDITIONS = ("hydraulic_retention_time", "digester_temperature", "tanks_in_series", "gas_pressure")
# Where the growth kinetics were measured: 20 to 60 Cel, up to 100 kg volatile solids per cubic metre.
LEAST_GROWTH_TEMPERATURE, MOST_SOLIDS_CONCENTRATION = 20.0, 100.0
GROWTH_PARAMETERS = {"cattle": chen_hashimoto_cattle_parameter, "swine": chen_hashimoto_swine_parameter}


def take_gas(fed: Sequence[Fed], ledger: Ledger) -> None:
    """Put biogas per day, its methane share, the share of the potential and the mean rate into the ledger, with their samples.

    The typical value is first-order decay fitted to the handbooks' yields, which promises too little for warm, well run plants. So where
    the growth kinetics of Chen and Hashimoto hold and give more, the samples reach some way towards them (``growth_model_weight``).
    """
    ledger.put(**gas_of(fed, {name: ledger.values[name] for name in CONDITIONS}))
    ledger.sample(**sampled_gas(fed, {name: ledger.uncertain(name).samples for name in CONDITIONS}, ledger))


def sampled_gas(fed: Sequence[Fed], conditions: Mapping[str, Any], ledger: Ledger) -> dict[str, Any]:
    """What ``take_gas`` samples, under sampled conditions; the ledger has samples of the volatile solids and the slurry of a day.

    Conditions and samples of the ledger may have the shape (cases, samples).
    """
    return _towards_growth(fed, gas_of(sampled(fed), conditions), conditions, ledger)


def gas_of(fed: Sequence[Fed], conditions: Mapping[str, Any]) -> dict[str, Any]:
    """Biogas of the mix per day, its methane share, the share of the potential that is released, and the rate of the mix by its gas."""
    gas: Any = 0.0
    methane: Any = 0.0
    potential: Any = 0.0
    fading: Any = 0.0
    for one in fed:
        found = GRAPH.solve({**one.values, **conditions, "feed_mass_per_day": one.mass}, GAS)
        gas = gas + found["biogas_per_day"]
        methane = methane + found["biogas_per_day"] * one.values["methane_share"]
        potential = potential + _over(found["biogas_per_day"], found["share_of_potential"])
        fading = fading + found["biogas_per_day"] * found["rate_at_temperature"]
    shares = {"methane_share": _over(methane, gas), "share_of_potential": _over(gas, potential), "mean_rate": _over(fading, gas)}
    return {"biogas_per_day": gas, **shares}


def _over(part: Any, whole: Any) -> Any:
    """The ratio, 0 where there is no whole."""
    if isinstance(whole, np.ndarray):
        return np.divide(part, whole, out=np.zeros_like(whole), where=whole > 0.0)
    return part / whole if whole else 0.0


def growth_reach(fed: Sequence[Fed], ledger: Ledger) -> Any:
    """Samples of the day's gas in the ledger over that of first-order decay: how far each reaches towards the growth kinetics [1]."""
    conditions = {name: ledger.uncertain(name).samples for name in CONDITIONS}
    return _over(ledger.uncertain("biogas_per_day").samples, gas_of(sampled(fed), conditions)["biogas_per_day"])


def _towards_growth(fed: Sequence[Fed], gas: dict[str, Any], conditions: Mapping[str, Any], ledger: Ledger) -> dict[str, Any]:
    """The sampled gas, moved towards the growth kinetics as far as they hold, are known, and no potential was measured."""
    if np.max(conditions["digester_temperature"]) < LEAST_GROWTH_TEMPERATURE or any(_yield_is_known(one) for one in fed):
        return gas
    reach, weight = (ledger.figure("figures", name, name).samples for name in ("growth_model_reach", "growth_model_weight"))
    spare = weight * most(reach * _grown_gas(sampled(fed), conditions, ledger) - gas["biogas_per_day"], 0.0)
    spare = np.where(np.less(conditions["digester_temperature"], LEAST_GROWTH_TEMPERATURE), 0.0, spare)
    grown = gas["biogas_per_day"] + spare
    share = least(gas["share_of_potential"] * _over(grown, gas["biogas_per_day"]), 1.0)
    return {**gas, "biogas_per_day": grown, "share_of_potential": share}


def _grown_gas(fed: Sequence[Fed], conditions: Mapping[str, Any], ledger: Ledger) -> Any:
    """Biogas as used per day by the growth kinetics."""
    solids, slurry = (ledger.uncertain(name).samples for name in ("volatile_solids_per_day", "slurry_per_day"))
    concentration = least(solids / slurry, MOST_SOLIDS_CONCENTRATION)
    return sum(_grown(one, conditions, concentration, ledger) for one in fed)


def _yield_is_known(one: Fed) -> bool:
    """Whether a measured yield or potential, or the lack of a growth model, leaves no room for the growth kinetics."""
    measured = not isinstance(sampled([one])[0].values["biogas_yield"], np.ndarray) or "biogas_potential" in one.values
    return measured or one.entry.growth_model is None


def _grown(one: Fed, conditions: Mapping[str, Any], concentration: Any, ledger: Ledger) -> Any:
    temperature, retention = conditions["digester_temperature"], conditions["hydraulic_retention_time"]
    share = chen_hashimoto_share(temperature, retention, GROWTH_PARAMETERS[str(one.entry.growth_model)](concentration))
    solids = one.mass * one.values["total_solids"] * one.values["volatile_solids_share"]
    potential = ledger.figure("substrates", one.id, "methane_potential").samples
    return solids * potential * share / one.values["methane_share"] / normal_factor(REFERENCE_TEMPERATURE, conditions["gas_pressure"])


def trace_of(fed: Sequence[Fed], ledger: Ledger) -> list[dict[str, Any]]:
    """How each substrate's own quantities came about."""
    conditions = {name: ledger.values[name] for name in (*CONDITIONS, "water_density")}
    return [
        {**step, "of": one.id}
        for one in fed
        for step in GRAPH.trace({**one.values, **conditions, "feed_mass_per_day": one.mass}, (*PER_DAY, *GAS))
    ]
