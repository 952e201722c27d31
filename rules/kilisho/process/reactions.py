"""One step of the reactions: solids to acids, acids to methane and cells, and the pH that comes with it.

The scheme is of second order. A half step with the last known hold of pH and ammonia gives acids, cells and pH at the middle of the step:
an implicit step of Monod's law, which is a quadratic equation with one root at or above 0. With these fixed, hydrolysis, uptake and decay
are exact exponentials. It is stable however fast the acids are used up, and nothing falls below 0. The tests hold it against scipy's Radau.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric
from kilisho.formulas.kinetics import temperature_corrected_rate
from kilisho.process.acidity import Equilibria, equilibria, hydrogen
from kilisho.process.parameters import METHANE_PER_COD, NITROGEN_IN_CELLS, Parameters, growth_rate
from kilisho.process.state import ACIDS, AMMONIA, GAS_IN_ACIDS, METHANOGENS, SPENT, Contents, State, hold
from kilisho.process.uptake import gas_over, left_over, used_up

Array = npt.NDArray[np.float64]

_EMPTY = 1e-12


class Day(NamedTuple):
    """What does not change within a day.

    Step [d]; rate of hydrolysis and what it leaves undone in a step unhindered; greatest uptake of acids per cells [1/d]; decay of cells
    [1/d], the part of them that outlives a step, and that part of cells grown evenly over it; constants of the slurry.
    """

    step: float
    rate: Array
    formed: Array
    uptake: Numeric
    decay: Numeric
    outlive: Numeric
    grown_outlive: Numeric
    constants: Equilibria


def day_of(temperature: Array, figures: Contents, parameters: Parameters, step: float) -> Day:
    """A day at a temperature [Cel], (farms,) or (1,), in steps of ``step`` days."""
    growth = growth_rate(temperature, parameters.growth_factor)
    rate = np.asarray(temperature_corrected_rate(figures.rate, temperature))[:, None]
    decay: Numeric = parameters.decay_share * growth
    outlive = np.exp(-decay * step)
    grown = (1.0 - outlive) / (decay * step)
    return Day(step, rate, -np.expm1(-step * rate), growth / parameters.cell_yield, decay, outlive, grown, equilibria(temperature))


def react(state: State, day: Day, figures: Contents, parameters: Parameters) -> tuple[Array, Array]:
    """Move ``state`` on by one step; returns methane and carbon dioxide given off [normal m3], (tanks, farms)."""
    held = np.maximum(state.volume / state.pools.shape[1], _EMPTY)
    uptake = _middle(state, day, figures, parameters, held)
    degradable, before = state.pools[:ACIDS], state.pools[ACIDS].copy()
    hindered = state.forming.min() < 1.0
    formed = degradable * (-np.expm1(-day.step * day.rate * state.forming) if hindered else day.formed)
    degradable -= formed
    state.pools[AMMONIA] += (figures.nitrogen[:, None] * formed).sum(axis=0)
    gas, source = (figures.carbon_dioxide[:, None] * formed).sum(axis=0), formed.sum(axis=0)
    affordable = state.pools[AMMONIA] / (NITROGEN_IN_CELLS * parameters.cell_yield)
    taken = np.minimum(used_up(before, source, day.step * uptake), affordable)
    _grow(state, taken * parameters.cell_yield, day)
    acids = before + source
    state.pools[ACIDS] = acids - taken
    waiting = state.pools[GAS_IN_ACIDS] + (1.0 - parameters.early_gas_share) * gas
    late = waiting * taken / np.maximum(acids, _EMPTY)
    state.pools[GAS_IN_ACIDS] = waiting - late
    methane = METHANE_PER_COD * (1.0 - parameters.cell_yield) * taken
    carbon_dioxide = parameters.early_gas_share * gas + late
    state.gas_share = gas_over(state.gas_share, methane, carbon_dioxide, parameters.gas_held * held)
    return methane, carbon_dioxide


def _grow(state: State, grown: Array, day: Day) -> None:
    """Cells grow evenly over the step and die as they live."""
    before = state.pools[METHANOGENS].copy()
    after = before * day.outlive + grown * day.grown_outlive
    state.pools[SPENT] += before + grown - after
    state.pools[METHANOGENS] = after
    state.pools[AMMONIA] -= NITROGEN_IN_CELLS * grown


def _middle(state: State, day: Day, figures: Contents, parameters: Parameters, held: Array) -> Array:
    """Look ahead to the middle of the step: sets pH and what it leaves of the rates, returns the uptake there per mass of acids [1/d]."""
    half, most = 0.5 * day.step, day.uptake
    forming = half * day.rate * state.forming * state.pools[:ACIDS]
    cells, acids = state.pools[METHANOGENS], state.pools[ACIDS] + forming.sum(axis=0)
    saturation = parameters.half_saturation * held
    left = left_over(acids, half * most * state.growth * cells, saturation)
    taken = acids - left
    early = (figures.carbon_dioxide[:, None] * forming).sum(axis=0) * parameters.early_gas_share
    late = state.pools[GAS_IN_ACIDS] * taken / np.maximum(acids, _EMPTY)
    methane = METHANE_PER_COD * (1.0 - parameters.cell_yield) * taken
    share = gas_over(state.gas_share, methane, early + late, parameters.gas_held * held)
    charges = state.charges(left)
    state.ions = hydrogen(state.ions, charges, share, day.constants)
    hold(state, charges[0], day.constants, parameters)
    uptake: Array = most * state.growth * (cells + parameters.cell_yield * taken - half * day.decay * cells) / (saturation + left)
    return uptake
