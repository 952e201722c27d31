"""What the digester holds between two steps, and what a feed puts into it."""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric
from kilisho.process.feedstocks import Feedstock
from kilisho.process.history import Start

Array = npt.NDArray[np.float64]

# Rows of the pools after one row of degradable chemical oxygen demand [kg] for each substrate: chemical oxygen demand [kg] of inert matter,
# spent cells, methanogens and acids, the carbon dioxide that the acids will still give [normal m3], nitrogen [kg] as ammonia and bound, and
# strong cations [mol].
INERT, SPENT, METHANOGENS, ACIDS, GAS_IN_ACIDS, AMMONIA, BOUND, CATIONS = range(-8, 0)
EXTRA_ROWS = 8


@dataclass(slots=True)
class State:
    """Contents at one moment: ``pools`` (rows, tanks, farms), the rest (tanks, farms).

    ``ions`` are hydrogen ions [mol/m3]; ``gas_share`` is carbon dioxide in the gas over the slurry [1]; ``growth`` and ``forming`` are the
    parts of the methanogens' and acidifiers' rates that acidity and ammonia leave [1], as of the last look; ``methane`` and
    ``carbon_dioxide`` have been given off since the day began [normal m3]. Where nothing is ``sour``, ``forming`` is 1 everywhere.
    """

    pools: Array
    ions: Array
    gas_share: Array
    growth: Array
    forming: Array
    methane: Array
    carbon_dioxide: Array
    sour: bool = True

    def first(self, farms: int) -> State:
        """Views of the first farms: what is written into them is written here."""
        return State(*(getattr(self, name)[..., :farms] for name in _NAMES))

    def reorder(self, order: npt.NDArray[np.intp]) -> None:
        """Put the farms into another order."""
        for name in _NAMES:
            values = getattr(self, name)
            values[:] = values[..., order]


_NAMES = tuple(field.name for field in fields(State) if field.name != "sour")


def first_state(start: Start, farms: int, tanks: int, substrates: int) -> State:
    """The digester before the first feed; pH is found with the first step."""
    pools = np.zeros((substrates + EXTRA_ROWS, tanks, farms))
    held = np.broadcast_to(np.asarray(start.volume, dtype=np.float64), (farms,)) / tanks
    degradable = np.asarray(start.degradable, dtype=np.float64)
    pools[:INERT] = (degradable[:, None] if degradable.ndim == 2 else degradable) * held
    for row, strength in (
        (ACIDS, start.acids),
        (GAS_IN_ACIDS, start.gas_in_acids),
        (METHANOGENS, start.methanogens),
        (AMMONIA, start.ammonia),
        (CATIONS, start.strong_cations),
    ):
        pools[row] = strength * held
    one = np.ones((tanks, farms))
    return State(pools, 1e-4 * one, start.gas_share * one, one, one.copy(), 0.0 * one, 0.0 * one)


def brought_by(solids: Array, feedstock: Feedstock, release: Array, farms: int) -> tuple[Array, Array]:
    """What the solids of every day [kg], (days, substrates, farms), put into the pools, and the gas of what sours at once.

    ``release`` as in :class:`kilisho.process.reactions.Traits`. Returns rows (days, rows, farms) and carbon dioxide [normal m3],
    (days, farms).
    """
    days, substrates, _ = solids.shape
    rows = np.zeros((days, substrates + EXTRA_ROWS, farms))
    degradable = solids * feedstock.degradable
    quick = degradable * feedstock.quick_share
    gas, acids, late, nitrogen = (_summed(quick, part[:, 0]) for part in release)
    rows[:, :INERT] = degradable - quick
    rows[:, METHANOGENS], rows[:, INERT] = _summed(solids, feedstock.methanogens), _summed(solids, feedstock.inert)
    rows[:, ACIDS], rows[:, GAS_IN_ACIDS] = acids, late
    rows[:, AMMONIA] = _summed(solids, feedstock.ammonia) + nitrogen
    rows[:, BOUND], rows[:, CATIONS] = _summed(solids, feedstock.bound), _summed(solids, feedstock.strong_cations)
    return rows, np.broadcast_to(gas, (days, farms))


def _summed(amounts: Array, per_amount: Numeric) -> Array:
    total: Array = (amounts * per_amount).sum(axis=1)
    return total
