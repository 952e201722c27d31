"""The parameters and feeds of a run in the form in which the steps need them."""

from __future__ import annotations

from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import NITROGEN_MASS
from kilisho.formulas.arrays import Numeric
from kilisho.process.feedstocks import Feedstock
from kilisho.process.parameters import METHANE_PER_COD, NITROGEN_IN_CELLS, Parameters

Array = npt.NDArray[np.float64]


class Traits(NamedTuple):
    """What does not change in a run; each a number or (farms,), but for five.

    ``release`` is what becomes of a kilogram of degradable chemical oxygen demand, (4, substrates, 1, farms): carbon dioxide at once
    [normal m3], acids [kg], carbon dioxide that waits in the acids [normal m3], nitrogen [kg]. ``harmless`` is the most hydrogen [mol/m3]
    that hinders nobody in any farm. ``begin`` and ``end`` are upper and lower pH of methanogens and of acidifiers, (2, 1, farms);
    ``per_acids`` has the three after it, (3, 1, farms); each may have 1 in place of farms. For a kilogram of acids taken up: cells grown
    [kg], methane [normal m3], nitrogen [kg], and the acids that a kilogram of nitrogen lets be taken up [kg]. Ammonia that halves growth
    for want of it, and free ammonia that does [mol/m3].
    """

    release: Array
    harmless: float
    begin: Array
    end: Array
    per_acids: Array
    cell_yield: Numeric
    methane: Numeric
    nitrogen: Numeric
    acids_per_nitrogen: Numeric
    ammonia_need: Numeric
    ammonia_limit: Numeric
    upper_ph: Numeric
    lower_ph: Numeric

    def at(self, farms: npt.NDArray[np.intp]) -> Traits:
        """Those of some farms."""
        return Traits._make(of_farms(part, farms) for part in self)

    def first(self, farms: int) -> Traits:
        """Those of the first farms."""
        return Traits._make(first_of(part, farms) for part in self)


def first_of(values: Any, farms: int) -> Any:
    """A view of the first farms of values whose last axis is farms; what serves all farms stays as it is."""
    return values[..., :farms] if isinstance(values, np.ndarray) else values


def of_farms(values: Any, farms: npt.NDArray[np.intp]) -> Any:
    """Some farms of values whose last axis is farms; what serves all farms stays as it is."""
    return values if not isinstance(values, np.ndarray) or values.shape[-1] == 1 else values[..., farms]


def traits_of(feedstock: Feedstock, parameters: Parameters) -> Traits:
    """The traits of a run."""
    nitrogen, methane = NITROGEN_IN_CELLS * parameters.cell_yield, METHANE_PER_COD * (1.0 - parameters.cell_yield)
    sour_below = np.maximum(parameters.upper_ph, parameters.acidifiers_upper_ph).max()
    return Traits(
        _release(feedstock, parameters),
        float(10.0 ** (3.0 - sour_below)),
        _stacked(parameters.upper_ph, parameters.acidifiers_upper_ph),
        _stacked(parameters.lower_ph, parameters.acidifiers_lower_ph),
        _stacked(parameters.cell_yield, methane, nitrogen),
        parameters.cell_yield,
        methane,
        nitrogen,
        1.0 / nitrogen,
        parameters.ammonia_need / NITROGEN_MASS,
        parameters.free_ammonia_limit / NITROGEN_MASS,
        parameters.upper_ph,
        parameters.lower_ph,
    )


def _stacked(*values: Numeric) -> Array:
    """Numbers or values of farms on one axis before that of tanks."""
    return np.stack(np.broadcast_arrays(*(np.atleast_1d(np.asarray(value, dtype=np.float64)) for value in values)))[:, None]


def _release(feedstock: Feedstock, parameters: Parameters) -> Array:
    methane = METHANE_PER_COD * (1.0 - parameters.cell_yield)
    gas = methane * (1.0 - feedstock.methane_share) / feedstock.methane_share
    some = feedstock.degradable > 0.0
    nitrogen = np.where(some, feedstock.releasable / np.where(some, feedstock.degradable, 1.0), 0.0)
    parts = parameters.early_gas_share * gas, np.ones((1, 1)), (1.0 - parameters.early_gas_share) * gas, nitrogen
    return np.stack(np.broadcast_arrays(*parts))[:, :, None]
