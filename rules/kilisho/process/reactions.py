"""One step of the reactions: solids to acids, acids to methane and cells, and the pH that comes with it.

The scheme is of second order. A half step with the last known hold of pH and ammonia gives acids, cells and pH at the middle of the step:
an implicit step of Monod's law, which is a quadratic equation with one root at or above 0. With these fixed, hydrolysis, uptake and decay
are exact exponentials. It is stable however fast the acids are used up, and nothing falls below 0. The tests hold it against scipy's Radau.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from kilisho.process.acidity import ammonia_factor, hydrogen, ph_factor, ph_of
from kilisho.process.pace import Pace
from kilisho.process.state import ACIDS, AMMONIA, CATIONS, GAS_IN_ACIDS, INERT, METHANOGENS, SPENT, State
from kilisho.process.traits import Traits
from kilisho.process.uptake import gas_over, left_over, used_up

Array = npt.NDArray[np.float64]

_EMPTY = 1e-12


def react(state: State, pace: Pace, traits: Traits) -> None:
    """Move ``state`` on by one step; the gas given off is added to that of the day."""
    spread = _middle(state, pace, traits)
    pools = state.pools
    released = _release(pools, pace, traits, state)
    used = used_up(pools[ACIDS:AMMONIA], released[1:3], spread)
    pools[ACIDS : AMMONIA + 1] += released[1:]
    # Without nitrogen there are no cells to grow, and acids wait.
    used *= np.minimum(pools[AMMONIA] * traits.acids_per_nitrogen / np.maximum(used[0], _EMPTY), 1.0)
    pools[ACIDS:AMMONIA] -= used
    taken, late = used
    cells, grown = pools[METHANOGENS], taken * traits.cell_yield
    pools[AMMONIA] -= taken * traits.nitrogen
    after = cells * pace.outlive + grown * pace.grown_outlive
    pools[SPENT] += cells + grown - after
    pools[METHANOGENS] = after
    methane, carbon_dioxide = traits.methane * taken, released[0] + late
    state.gas_share = gas_over(state.gas_share, methane, carbon_dioxide, pace.gas_held)
    state.methane += methane
    state.carbon_dioxide += carbon_dioxide


def _release(pools: Array, pace: Pace, traits: Traits, state: State) -> Array:
    """Take what degrades in the step out of the pools; returns what becomes of it, rows as ``Traits.release``."""
    formed = pools[:INERT] * (-np.expm1(-2.0 * pace.half_rate * state.forming) if state.sour else pace.formed)
    pools[:INERT] -= formed
    released: Array = np.add.reduce(traits.release * formed, axis=1)
    return released


def _middle(state: State, pace: Pace, traits: Traits) -> Array:
    """Look ahead to the middle of the step: sets pH and what it leaves of the rates, returns the uptake there per acids and step [1]."""
    pools = state.pools
    early, source, waiting, nitrogen = np.add.reduce(traits.release * (pools[:INERT] * state.forming * pace.half_rate), axis=1)
    cells, acids = pools[METHANOGENS], pools[ACIDS] + source
    left = left_over(acids, state.growth * cells * pace.half_uptake, pace.saturation)
    taken = acids - left
    late = (pools[GAS_IN_ACIDS] + waiting) * taken / np.maximum(acids, _EMPTY)
    share = gas_over(state.gas_share, traits.methane * taken, early + late, pace.gas_held)
    hold(state, np.array([pools[AMMONIA] + nitrogen - traits.nitrogen * taken, left]), share, pace, traits)
    living = cells * pace.half_outlive + traits.cell_yield * taken
    uptake: Array = 2.0 * pace.half_uptake * state.growth * living / (pace.saturation + left)
    return uptake


def hold(state: State, weak: Array, gas_share: Array, pace: Pace, traits: Traits) -> None:
    """Set pH, and what it and ammonia leave of the rates, for ammonia and acids [kg], stacked, and carbon dioxide in the gas above [1]."""
    strength = weak * pace.per_mass
    ions = state.ions = hydrogen(state.ions, strength, state.pools[CATIONS] * pace.per_volume, gas_share, pace.constants)
    state.growth = ammonia_factor(ions, strength[0], pace.constants.weak[0], traits.ammonia_need, traits.ammonia_limit)
    was_sour, state.sour = state.sour, bool(np.maximum.reduce(ions, axis=None) > traits.harmless)
    if state.sour:
        ph = ph_of(ions)
        state.growth *= ph_factor(ph, traits.upper_ph, traits.lower_ph)
        state.forming = ph_factor(ph, traits.acidifiers_upper_ph, traits.acidifiers_lower_ph)
    elif was_sour:
        state.forming = np.ones_like(ions)


def settle(state: State, pace: Pace, traits: Traits) -> None:
    """Bring pH of ``state``, and what it leaves of the rates, to the balance of its contents."""
    hold(state, state.pools[[AMMONIA, ACIDS]], state.gas_share, pace, traits)
