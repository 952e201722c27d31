"""What a kilogram of volatile solids of each substrate brings into the digester."""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import POTASSIUM_MASS
from kilisho.formulas.arrays import Numeric
from kilisho.formulas.digester import REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE, reference_share
from kilisho.formulas.gas import normal_factor
from kilisho.process.parameters import METHANE_PER_COD, Parameters

Array = npt.NDArray[np.float64]
# Below this [kg/kg] a feed does not degrade.
NOTHING = 1e-9


@dataclass(frozen=True, slots=True, eq=False)
class Feedstock:
    """Contents of one kilogram of volatile solids; every field has the shape (substrates, farms), or (substrates, 1) for all farms.

    Attributes
    ----------
    degradable : chemical oxygen demand that ends as gas and cells [kg/kg], at least 0.
    quick_share : part of it that turns to acids on the day of feeding (sugar, starch) [1], 0 to 1; 0 keeps to the first-order yield.
    rate : first-order rate at 20 Cel [1/d], at least 0.
    methane_share : methane in the gas of this substrate [1], above 0 to 1.
    inert : chemical oxygen demand that passes through [kg/kg], at least 0.
    ammonia, releasable, bound : nitrogen as ammonia at feeding, set free with the degradable part, and never set free [kg/kg].
    strong_cations : positive charge that makes alkalinity beside ammonia [mol/kg].
    methanogens : living methanogens as chemical oxygen demand [kg/kg], at least 0.
    """

    degradable: Array
    quick_share: Array
    rate: Array
    methane_share: Array
    inert: Array
    ammonia: Array
    releasable: Array
    bound: Array
    strong_cations: Array
    methanogens: Array


def feedstock(  # noqa: PLR0913 -- one argument a property of the pack
    *,
    biogas_yield: Numeric,
    degradation_rate: Numeric,
    methane_share: Numeric,
    nitrogen: Numeric,
    ammonium_share: Numeric,
    potassium: Numeric,
    starts_unaided: bool,
    of_dung: bool,
    parameters: Parameters,
    quick_share: Numeric = 0.0,
) -> Feedstock:
    """One substrate from the properties that packs give, for one farm or one value a farm.

    Parameters
    ----------
    biogas_yield : moist gas as used at 25 Cel and 60 d per volatile solids [m3/kg]; divided by the share that this state releases
        (``biogas_potential`` of the graph when nothing is quick).
    degradation_rate, methane_share, ammonium_share : as in packs [1/d, 1, 1].
    nitrogen, potassium : per volatile solids, not per total solids [kg/kg].
    starts_unaided : brings the methanogens of a rumen. of_dung : has the lime of dung (packs: group ``dung``).
    parameters : cell yield, oxygen demand, methanogens, base and early ammonium are read; see :class:`Parameters`.
    quick_share : see :class:`Feedstock`.

    Returns
    -------
    Fields of shape (1, farms) or (1, 1); join several with :func:`mixed`.
    """
    share = quick_share + (1.0 - quick_share) * reference_share(degradation_rate)
    normal = biogas_yield / share * normal_factor(REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE)
    degradable = normal * methane_share / METHANE_PER_COD / (1.0 - parameters.cell_yield)
    early = nitrogen * ammonium_share * parameters.early_ammonium_share
    # What does not degrade sets no nitrogen free, and there is nothing to divide it by.
    degradable = np.where(np.less(degradable, NOTHING), 0.0, degradable)
    set_free = np.minimum((nitrogen * ammonium_share - early) / share, nitrogen - early)
    releasable = np.where(degradable > 0.0, set_free, 0.0)
    cations = potassium / POTASSIUM_MASS * (parameters.base_of_dung if of_dung else parameters.base_of_others)
    inert = np.maximum(parameters.oxygen_demand - degradable, 0.0)
    methanogens = parameters.methanogens_of_ruminants if starts_unaided else parameters.methanogens_of_others
    bound = nitrogen - early - releasable
    values = (degradable, quick_share, degradation_rate, methane_share, inert, early, releasable, bound, cations, methanogens)
    return Feedstock(*(np.atleast_1d(np.asarray(value, dtype=np.float64))[None, :] for value in values))


def mixed(*substrates: Feedstock) -> Feedstock:
    """Several substrates as one, stacked along the first axis in the order given."""
    columns = ([getattr(one, field.name) for one in substrates] for field in fields(Feedstock))
    return Feedstock(*(np.concatenate([np.broadcast_to(part, _shape(parts)) for part in parts]) for parts in columns))


def _shape(parts: list[Array]) -> tuple[int, int]:
    return 1, max(part.shape[1] for part in parts)
