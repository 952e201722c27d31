"""The contents of a digester that has long been fed evenly, in closed form: where a run begins that knows nothing of the years before."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import NITROGEN_MASS
from kilisho.formulas.arrays import Numeric
from kilisho.formulas.kinetics import temperature_corrected_rate
from kilisho.process.acidity import ammonia_factor, equilibria, hydrogen, ph_factor, ph_of
from kilisho.process.feedstocks import Feedstock
from kilisho.process.flow import Flow, flow_of
from kilisho.process.history import Start
from kilisho.process.parameters import ACID_MASS, NITROGEN_IN_CELLS, Parameters, growth_rate
from kilisho.process.state import ACIDS, AMMONIA, CATIONS, GAS_IN_ACIDS, INERT, METHANOGENS, brought_by
from kilisho.process.traits import Traits, traits_of

Array = npt.NDArray[np.float64]

_ROUNDS = 20
_NOTHING = 1e-15


@dataclass(frozen=True, slots=True, eq=False)
class Routine:
    """The same feed every day into a full digester.

    Attributes
    ----------
    feedstock : the substrates.
    volatile_solids : fed a day [kg], (substrates, farms), at least 0.
    slurry : volume fed a day with water and urine [m3], (farms,), above 0.
    working_volume : slurry in the digester [m3], number or (farms,), above 0.
    temperature : of the slurry [Cel], number or (farms,), 0 to 45.
    tanks_in_series : as in :class:`kilisho.process.Conditions`.
    """

    feedstock: Feedstock
    volatile_solids: Array
    slurry: Array
    working_volume: Numeric
    temperature: Numeric
    tanks_in_series: int = 1


class _Tank(NamedTuple):
    """What flows from tank to tank, (farms,): acids and the gas that waits in them, methanogens, ammonia [kg/m3]; carbon dioxide [1]."""

    acids: Array
    waiting: Array
    methanogens: Array
    ammonia: Array
    gas_share: Array


class _Rates(NamedTuple):
    """Renewals of one tank a day, greatest growth, decay [1/d], half saturation [kg/m3]."""

    renewal: Array
    growth: Array
    decay: Array
    half_saturation: Numeric


def steady_start(routine: Routine, parameters: Parameters) -> Start:
    """Contents at the end of a day of the routine, as the start of a run; its fields are (tanks, farms).

    Notes
    -----
    Degradable matter is exact for one feed a day. Acids, methanogens and ammonia are those of an even stream: per tank their balances and
    Monod's law make one quadratic equation. The hold of pH and ammonia on growth is found by turns. A routine that the digester cannot
    bear ends in sour slurry without methanogens, as it would in truth; the forming of acids is taken as unhindered.

    Any day of years to come is within 2 % of the first, or 4 % where a first tank is renewed about as fast as methanogens grow. Where much
    sours on the day of feeding, the gas of the first week is up to 8 % off, since the acids are those of the mean of a day.
    """
    farms, tanks = routine.slurry.shape[0], routine.tanks_in_series
    volume = np.broadcast_to(np.asarray(routine.working_volume, dtype=np.float64), (farms,))
    traits, flow = traits_of(routine.feedstock, parameters), flow_of(routine.slurry[None], volume, volume, tanks)
    fed = brought_by(routine.volatile_solids[None], routine.feedstock, traits.release, farms)[0][0] / routine.slurry
    rate = np.asarray(temperature_corrected_rate(routine.feedstock.rate, routine.temperature))
    degradable = _degradable(fed[:INERT] * (routine.slurry / volume * tanks), rate, flow)
    growth = np.asarray(growth_rate(routine.temperature, parameters.growth_factor)) + np.zeros(farms)
    rates = _Rates(routine.slurry / volume * tanks, growth, parameters.decay_share * growth, parameters.half_saturation)
    formed = degradable * np.expm1(rate)[:, None]
    reached = _Tank(fed[ACIDS], fed[GAS_IN_ACIDS], fed[METHANOGENS], fed[AMMONIA], np.zeros(farms))
    through = []
    for tank in range(tanks):
        reached = _tank(reached, (traits.release[:, :, 0] * formed[:, tank]).sum(axis=1), fed[CATIONS], rates, routine, traits)
        through.append(reached)
    told = _Tank(*(np.stack(part) for part in zip(*through, strict=True)))
    return Start(
        volume=volume, methanogens=told.methanogens, acids=told.acids, ammonia=told.ammonia, strong_cations=fed[CATIONS],
        degradable=degradable, gas_share=told.gas_share, gas_in_acids=told.waiting,
    )  # fmt: skip


def _degradable(fed: Array, rate: Array, flow: Flow) -> Array:
    """Degradable matter at the end of a day [kg/m3], (substrates, tanks, farms), for a feed of ``fed`` per volume of a tank."""
    kept, moved, spread = np.exp(-rate), flow.moved[0], flow.spread[0]
    tanks: list[Array] = []
    for tank in range(moved.shape[0]):
        entering = fed * spread[tank] + sum(moved[tank - before] * held for before, held in enumerate(tanks))
        tanks.append(kept * entering / (1.0 - kept * moved[0]))
    return np.stack(tanks, axis=1)


def _tank(entering: _Tank, released: Array, cations: Array, rates: _Rates, routine: Routine, traits: Traits) -> _Tank:  # noqa: PLR0913, PLR0917
    """One tank, from what enters it [kg/m3] and what its solids release a day, (4, farms) as ``Traits.release``."""
    left, found = np.ones_like(cations), entering
    for _ in range(_ROUNDS):
        found = _balanced(entering, released, left, rates, traits)
        left = 0.5 * (left + _hold(found, cations, routine.temperature, traits))
    return found


def _balanced(entering: _Tank, released: Array, left: Array, rates: _Rates, traits: Traits) -> _Tank:
    """Contents at which all balances close, for the part of the growth that pH and ammonia leave."""
    early, formed, late, nitrogen = released
    renewal, dying = rates.renewal, rates.renewal + rates.decay
    # A feed that sours nothing leaves nothing to divide by.
    source, cells = np.maximum(renewal * entering.acids + formed, _NOTHING), renewal * entering.methanogens
    uptake = rates.growth * left / traits.cell_yield
    square = renewal * (dying - rates.growth * left)
    linear = uptake * (cells + traits.cell_yield * source) - dying * (source - rates.half_saturation * renewal)
    constant = dying * rates.half_saturation * source
    root = np.sqrt(np.maximum(linear * linear + 4.0 * square * constant, 0.0))
    # The same root in the two forms that lose no digits.
    acids = np.where(linear > 0.0, 2.0 * constant / (linear + root + _NOTHING), (root - linear) / (2.0 * np.maximum(square, _NOTHING)))
    taken = source - renewal * acids
    waiting = acids * (renewal * entering.waiting + late) / source
    carbon_dioxide, methane = early + late + renewal * (entering.waiting - waiting), traits.methane * taken
    return _Tank(
        acids,
        waiting,
        (cells + traits.cell_yield * taken) / dying,
        entering.ammonia + (nitrogen - NITROGEN_IN_CELLS * traits.cell_yield * taken) / renewal,
        carbon_dioxide / np.maximum(carbon_dioxide + methane, 1e-12),
    )


def _hold(tank: _Tank, cations: Array, temperature: Numeric, traits: Traits) -> Array:
    """Part of the growth that pH and ammonia leave [1]."""
    constants = equilibria(np.asarray(temperature) + np.zeros_like(cations))
    strength = np.stack([np.maximum(tank.ammonia, 0.0) / NITROGEN_MASS, tank.acids / ACID_MASS])
    ions = hydrogen(np.full_like(cations, 1e-4), strength, cations, tank.gas_share, constants)
    by_ammonia = ammonia_factor(ions, strength[0], constants.weak[0], traits.ammonia_need, traits.ammonia_limit)
    return by_ammonia * ph_factor(ph_of(ions), traits.upper_ph, traits.lower_ph)
