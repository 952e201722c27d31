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
    cells, (grown, methane, nitrogen) = pools[METHANOGENS], traits.per_acids * used[0]
    pools[AMMONIA] -= nitrogen
    after = cells * pace.outlive + grown * pace.grown_outlive
    pools[SPENT] += cells + grown - after
    cells[:] = after
    carbon_dioxide = released[0] + used[1]
    state.gas_share[:] = gas_over(state.gas_share, methane, carbon_dioxide, pace.gas_held)
    state.methane += methane
    state.carbon_dioxide += carbon_dioxide


def _release(pools: Array, pace: Pace, traits: Traits, state: State) -> Array:
    """Take what degrades in the step out of the pools; returns what becomes of it, rows as ``Traits.release``."""
    formed = pools[:INERT] * (-np.expm1(-2.0 * pace.half_rate * state.forming) if state.sour else pace.formed)
    pools[:INERT] -= formed
    return _summed(traits.release * formed)


def _summed(of_substrates: Array) -> Array:
    """The sum over substrates, the second axis."""
    return of_substrates[:, 0] if of_substrates.shape[1] == 1 else np.add.reduce(of_substrates, axis=1)


def _middle(state: State, pace: Pace, traits: Traits) -> Array:
    """Look ahead to the middle of the step: sets pH and what it leaves of the rates, returns the uptake there per acids and step [1]."""
    pools = state.pools
    degradable = pools[:INERT] * state.forming if state.sour else pools[:INERT]
    early, source, waiting, nitrogen = _summed(traits.release * (degradable * pace.half_rate))
    cells, acids = pools[METHANOGENS], pools[ACIDS] + source
    left = left_over(acids, state.growth * cells * pace.half_uptake, pace.saturation)
    taken = acids - left
    late = (pools[GAS_IN_ACIDS] + waiting) * taken / np.maximum(acids, _EMPTY)
    grown, methane, bound = traits.per_acids * taken
    share = gas_over(state.gas_share, methane, early + late, pace.gas_held)
    weak = np.empty((2, *left.shape))
    np.subtract(pools[AMMONIA] + nitrogen, bound, out=weak[0])
    weak[1] = left
    hold(state, weak, share, pace, traits)
    uptake: Array = 2.0 * pace.half_uptake * state.growth * (cells * pace.half_outlive + grown) / (pace.saturation + left)
    return uptake


def hold(state: State, weak: Array, gas_share: Array, pace: Pace, traits: Traits) -> None:
    """Set pH, and what it and ammonia leave of the rates, for ammonia and acids [kg], stacked, and carbon dioxide in the gas above [1]."""
    strength = weak * pace.per_mass
    ions = hydrogen(state.ions, strength, state.pools[CATIONS] * pace.per_volume, gas_share, pace.constants)
    state.ions[:] = ions
    growth = ammonia_factor(ions, strength[0], pace.constants.weak[0], traits.ammonia_need, traits.ammonia_limit)
    was_sour, state.sour = state.sour, bool(np.maximum.reduce(ions, axis=None) > traits.harmless)
    if state.sour:
        of_methanogens, state.forming[:] = ph_factor(ph_of(ions), traits.begin, traits.end)
        growth *= of_methanogens
    elif was_sour:
        state.forming[:] = 1.0
    state.growth[:] = growth


def settle(state: State, pace: Pace, traits: Traits) -> None:
    """Bring pH of ``state``, and what it leaves of the rates, to the balance of its contents."""
    hold(state, state.pools[[AMMONIA, ACIDS]], state.gas_share, pace, traits)
