"""Works out a mix: the farm's figures as a program, its best recipe, and what the recipe does to the digester."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from kilisho.farm import GRAPH, Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.feed_mix import Array, Ingredient, Mix, gas_of_mix
from kilisho.formulas.feed_mix_program import Program
from kilisho.formulas.feed_mix_search import Search, best, gap
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.acidity import state_ph, take_slurry_ph
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.feed_mix.limits import limits_for
from kilisho.questions.feed_mix.supply import Stores, stores_of
from kilisho.questions.feeding import NO_URINE, Fed, take_totals
from kilisho.questions.gas import take_gas
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.requests import Digester
from kilisho.rulebook import GROUPS_OF_FACTS, Structure

OF_A_KILOGRAM = (
    "total_solids_per_day",
    "volatile_solids_per_day",
    "nitrogen_per_day",
    "carbon_per_day",
    "ammonium_nitrogen_per_day",
    "displaced_volume_per_day",
    "biogas_potential",
    "rate_at_temperature",
    "gas_volume_factor",
)
BALANCES = (
    "water_per_day",
    "slurry_per_day",
    "slurry_mass_per_day",
    "slurry_total_solids",
    "hydraulic_retention_time",
    "organic_loading_rate",
    "carbon_to_nitrogen",
    "total_ammonia_nitrogen",
)
# Less gas than this part of what all there is could give at the most is none.
NO_GAS = 1e-7


@dataclass(slots=True)
class Work:
    """A mix before it is told. Where ``feasible`` is false there is no recipe, and ``most`` is the most gas within the limits."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    warmth: Warmth
    stores: Stores
    mix: Mix
    search: Search
    most: float
    gap: float
    feasible: bool
    fed: list[Fed]

    @property
    def demand(self) -> float:
        """Gas that the program had to give [m3/d]; 0 where it had none to meet."""
        return self.search.program.gas_demand

    @property
    def recipe(self) -> Array:
        """Fresh mass of each substrate [kg/d], then water [m3/d]."""
        return self.search.best.unknowns if self.search.best is not None else np.zeros(len(self.stores.items) + 1)


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one mix; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    digester = asked.digester or Digester.model_construct(working_volume=asked.working_volume)
    structure_id, structure = take_digester(digester, ledger)
    if structure.operation == "batch":
        raise RefusedError([Fault(("digester", "structure"), "not_fed_daily", say("fault-not_fed_daily"))])
    ledger.practice("water_density")
    state_ph(asked.slurry_ph, asked.facts, ledger)
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id, digester.depth)
    stores = stores_of(asked, ledger)
    bounds = limits_for(asked, stores.fed, stores.available, warmth.mean, ledger)
    mix = mix_of(asked, stores, bounds, ledger)
    most_gas, search, feasible = _sought(asked, mix, ledger)
    proof = gap(search) if feasible else 0.0
    most = gas_of_mix(mix, most_gas.best.unknowns) if most_gas.best is not None else 0.0
    work = Work(asked, ledger, structure_id, structure, warmth, stores, mix, search, most, proof, feasible, [])
    if feasible:
        _take_recipe(work)
    return work


def mix_of(asked: Any, stores: Stores, bounds: Any, ledger: Ledger) -> Mix:
    """The farm as plain numbers for the search."""
    values = ledger.values
    ingredients = tuple(_ingredient(one, item, ledger) for one, item in zip(stores.fed, stores.items, strict=True))
    density = values["water_density"]
    price = (asked.water_price or 0.0) * density
    return Mix(ingredients, values["working_volume"], values["tanks_in_series"], density, bounds, price)


def _ingredient(one: Fed, item: Any, ledger: Ledger) -> Ingredient:
    conditions = {name: ledger.values[name] for name in ("water_density", "digester_temperature", "gas_pressure")}
    of = GRAPH.solve({**one.values, **conditions, "feed_mass_per_day": 1.0}, OF_A_KILOGRAM)
    return Ingredient(
        solids=of["total_solids_per_day"],
        volatile=of["volatile_solids_per_day"],
        nitrogen=of["nitrogen_per_day"],
        carbon=of["carbon_per_day"],
        ammonium=of["ammonium_nitrogen_per_day"],
        displaced=of["displaced_volume_per_day"],
        potential=of["volatile_solids_per_day"] * of["biogas_potential"] * of["gas_volume_factor"],
        rate=of["rate_at_temperature"],
        price=item.price or 0.0,
        crop_residue=one.entry.group == GROUPS_OF_FACTS["crop_residue_share"],
    )


def _sought(asked: Any, mix: Mix, ledger: Ledger) -> tuple[Search, Search, bool]:
    """The search for the most gas, the search for what is wished, and whether there is such a mix."""
    most_gas = best(Program(mix, "most_gas"))
    most = gas_of_mix(mix, most_gas.best.unknowns) if most_gas.best is not None else 0.0
    scale = sum(one.potential * mix.limits["available", i] for i, one in enumerate(mix.ingredients))
    if asked.wish == "most_gas":
        return most_gas, most_gas, most > NO_GAS * scale
    demand = asked.gas_demand or most * ledger.figure("figures", "gas_kept_when_even", "gas_kept_when_even").value
    search = (
        best(Program(mix, asked.wish, demand), (most_gas.slurry,)) if most > NO_GAS * scale else Search(Program(mix, asked.wish, demand))
    )
    return most_gas, search, search.best is not None and bool(search.best.unknowns[:-1].any())


def _take_recipe(work: Work) -> None:
    """Put the recipe's balances and gas into the ledger, with their samples."""
    *masses, water = work.recipe.tolist()
    pairs = [(one, mass) for one, mass in zip(work.stores.fed, masses, strict=True) if mass > 0.0]
    work.fed = [_with_mass(one, mass) for one, mass in pairs]
    take_totals(work.fed, work.ledger)
    work.ledger.put(liquid_per_day=water, **NO_URINE)
    work.ledger.solve(*BALANCES)
    take_gas(work.fed, work.ledger)
    take_slurry_ph(work.fed, work.ledger)
    work.ledger.solve("biogas_per_day_normal", "free_ammonia")


def _with_mass(one: Fed, mass: float) -> Fed:
    return replace(one, mass=mass, sampled=replace(one.sampled, mass=mass) if one.sampled else None)


def _refuse(asked: Any) -> None:
    faults = [*_faults_of_volume(asked), *refusals.faults_of_months(asked.climate), *_faults_of_limits(asked.limits)]
    if len({item.substrate for item in asked.on_hand}) < len(asked.on_hand):
        faults.append(Fault(("on_hand",), "substrate_twice", say("fault-substrate_twice")))
    if asked.wish == "cheapest" and asked.gas_demand is None:
        faults.append(Fault(("gas_demand",), "demand_missing", say("fault-demand_missing")))
    if faults:
        raise RefusedError(faults)


def _faults_of_volume(asked: Any) -> list[Fault]:
    if asked.digester is None:
        missing = asked.working_volume is None
        return [Fault((), "volume_unstated", say("fault-volume_unstated"))] if missing else []
    twice = asked.working_volume is not None
    doubled = [Fault(("working_volume",), "volume_twice", say("fault-volume_twice"))] if twice else []
    return [*doubled, *refusals.faults_of_digester(asked.digester)]


def _faults_of_limits(limits: Any) -> list[Fault]:
    """A lower limit that is not below its upper one leaves no room."""
    faults = []
    for name in ("total_solids", "carbon_to_nitrogen") if limits is not None else ():
        least, most = getattr(limits, f"least_{name}"), getattr(limits, f"largest_{name}")
        if None not in (least, most) and least > most * (1 - 1e-4):
            faults.append(Fault(("limits", f"least_{name}"), "limits_disordered", say("fault-limits_disordered", other=f"largest_{name}")))
    return faults
