"""Chemical oxygen demand and nitrogen in the rows of the pools."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from kilisho.process.parameters import NITROGEN_IN_CELLS
from kilisho.process.state import ACIDS, AMMONIA, BOUND, METHANOGENS, SPENT, Contents

Array = npt.NDArray[np.float64]


def oxygen_demand(rows: Array) -> Array:
    """Chemical oxygen demand [kg] of rows, summed over all but the last axis."""
    part = rows[:AMMONIA]
    total: Array = part.reshape(-1, part.shape[-1]).sum(axis=0)
    return total


def nitrogen_in(rows: Array, figures: Contents) -> Array:
    """Nitrogen [kg] of rows (rows, farms) in all its forms: to be released, as ammonia, bound, and in cells living and spent."""
    cells = NITROGEN_IN_CELLS * (rows[METHANOGENS] + rows[SPENT])
    released: Array = (rows[:ACIDS] * figures.nitrogen).sum(axis=0)
    total: Array = released + rows[AMMONIA] + rows[BOUND] + cells
    return total
