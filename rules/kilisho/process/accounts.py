"""Chemical oxygen demand and nitrogen in the rows of the pools."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from kilisho.process.parameters import NITROGEN_IN_CELLS
from kilisho.process.state import AMMONIA, BOUND, GAS_IN_ACIDS, INERT, METHANOGENS, SPENT

Array = npt.NDArray[np.float64]


def oxygen_demand(rows: Array) -> Array:
    """Chemical oxygen demand [kg] of contents (days, rows, farms)."""
    total: Array = rows[:, :GAS_IN_ACIDS].sum(axis=1)
    return total


def nitrogen_in(rows: Array, releasable: Array) -> Array:
    """Nitrogen [kg] of contents (days, rows, farms) in all its forms: to be released, as ammonia, bound, and in cells living and spent.

    ``releasable`` is what the degradable part of each substrate holds [kg/kg], (substrates, farms).
    """
    cells = NITROGEN_IN_CELLS * (rows[:, METHANOGENS] + rows[:, SPENT])
    total: Array = (rows[:, :INERT] * releasable).sum(axis=1) + rows[:, AMMONIA] + rows[:, BOUND] + cells
    return total
