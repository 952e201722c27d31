"""What the digester holds between two steps, and what a feed puts into it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.process.acidity import Equilibria, growth_factor, hydrogen, ph_factor, ph_of
from kilisho.process.feedstocks import Feedstock
from kilisho.process.history import Start
from kilisho.process.parameters import ACID_MASS, METHANE_PER_COD, NITROGEN_MASS, Parameters

Array = npt.NDArray[np.float64]

# Rows of the pools after one row of degradable chemical oxygen demand [kg] for each substrate: chemical oxygen demand [kg] of acids,
# methanogens, spent cells and inert matter, nitrogen [kg] as ammonia and bound, strong cations [mol], and the carbon dioxide that the
# acids will still give [normal m3].
ACIDS, METHANOGENS, SPENT, INERT, AMMONIA, BOUND, CATIONS, GAS_IN_ACIDS = range(-8, 0)
EXTRA_ROWS = 8
_EMPTY = 1e-12


class Contents(NamedTuple):
    """Figures of the substrates as the steps need them, each (substrates, farms) or (substrates, 1)."""

    rate: Array
    carbon_dioxide: Array
    nitrogen: Array


@dataclass(slots=True)
class State:
    """Contents at one moment: ``pools`` (rows, tanks, farms), ``volume`` (farms,), the rest (tanks, farms).

    ``ions`` are hydrogen ions [mol/m3]; ``gas_share`` is carbon dioxide in the gas over the slurry [1]; ``growth`` and ``forming`` are the
    parts of the methanogens' and acidifiers' rates that acidity and ammonia leave [1], as of the last look.
    """

    pools: Array
    volume: Array
    ions: Array
    gas_share: Array
    growth: Array
    forming: Array

    def charges(self, acids: Array) -> tuple[Array, Array, Array]:
        """Total ammonia, strong cations and acids [mol/m3], for the mass of acids given [kg]."""
        held = np.maximum(self.volume / self.pools.shape[1], _EMPTY)
        return self.pools[AMMONIA] / (held * NITROGEN_MASS), self.pools[CATIONS] / held, acids / (held * ACID_MASS)


def contents(feedstock: Feedstock, parameters: Parameters) -> Contents:
    """Rate, carbon dioxide [normal m3/kg] and nitrogen [kg/kg] for the chemical oxygen demand of each substrate as it degrades."""
    methane = METHANE_PER_COD * (1.0 - parameters.cell_yield)
    carbon_dioxide = methane * (1.0 - feedstock.methane_share) / feedstock.methane_share
    nitrogen = feedstock.releasable / np.where(feedstock.degradable > 0.0, feedstock.degradable, 1.0)
    return Contents(feedstock.rate, carbon_dioxide, np.where(feedstock.degradable > 0.0, nitrogen, 0.0))


def first_state(start: Start, farms: int, tanks: int, feedstock: Feedstock) -> State:
    """The digester before the first feed; pH is found with the first step."""
    substrates = feedstock.rate.shape[0]
    pools = np.zeros((substrates + EXTRA_ROWS, tanks, farms))
    volume = np.broadcast_to(np.asarray(start.volume, dtype=np.float64), (farms,)).copy()
    held = volume / tanks
    pools[:substrates] = (np.broadcast_to(np.asarray(start.degradable, dtype=np.float64), (substrates, farms)) * held)[:, None, :]
    for row, strength in (
        (ACIDS, start.acids),
        (METHANOGENS, start.methanogens),
        (AMMONIA, start.ammonia),
        (CATIONS, start.strong_cations),
    ):
        pools[row] = strength * held
    one = np.ones((tanks, farms))
    return State(pools, volume, 1e-4 * one, start.gas_share * one, one, one)


def brought_by(solids: Array, feedstock: Feedstock, figures: Contents, parameters: Parameters, farms: int) -> tuple[Array, Array]:
    """Rows that one day's solids [kg], (substrates, farms), put in, and the carbon dioxide [normal m3] of what sours at once."""
    substrates = solids.shape[0]
    rows = np.zeros((substrates + EXTRA_ROWS, farms))
    degradable = solids * feedstock.degradable
    quick = degradable * feedstock.quick_share
    gas = quick * figures.carbon_dioxide
    rows[:substrates] = degradable - quick
    rows[ACIDS] = quick.sum(axis=0)
    rows[METHANOGENS] = (solids * feedstock.methanogens).sum(axis=0)
    rows[INERT] = (solids * feedstock.inert).sum(axis=0)
    rows[AMMONIA] = (solids * feedstock.ammonia + quick * figures.nitrogen).sum(axis=0)
    rows[BOUND] = (solids * feedstock.bound).sum(axis=0)
    rows[CATIONS] = (solids * feedstock.strong_cations).sum(axis=0)
    rows[GAS_IN_ACIDS] = gas.sum(axis=0) * (1.0 - parameters.early_gas_share)
    return rows, np.broadcast_to(gas.sum(axis=0) * parameters.early_gas_share, (farms,))


def settle(state: State, constants: Equilibria, parameters: Parameters) -> None:
    """Bring pH of ``state``, and what it leaves of the rates, to the balance of its contents."""
    charges = state.charges(state.pools[ACIDS])
    state.ions = hydrogen(state.ions, charges, state.gas_share, constants)
    hold(state, charges[0], constants, parameters)


def hold(state: State, total_ammonia: Array, constants: Equilibria, parameters: Parameters) -> None:
    """Set what pH and total ammonia [mol/m3] leave of the rates."""
    ph = ph_of(state.ions)
    state.growth = growth_factor(ph, state.ions, total_ammonia, constants, parameters)
    state.forming = ph_factor(ph, parameters.acidifiers_upper_ph, parameters.acidifiers_lower_ph)
