"""What is told to the process model: the feeding history, what is in the digester at first, and where it stands."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import CARBONATE_PER_CHARGE
from kilisho.formulas.arrays import Numeric
from kilisho.process.feedstocks import Feedstock
from kilisho.process.parameters import Parameters

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Start:
    """Slurry in the digester before the first day, nothing by default.

    Contents are a number, (farms,) for the same in every tank, or (tanks, farms).

    Attributes
    ----------
    volume : [m3], number or (farms,), 0 to the working volume.
    methanogens, acids : as chemical oxygen demand [kg/m3].
    ammonia : nitrogen [kg/m3].
    strong_cations : [mol/m3].
    degradable : chemical oxygen demand of each substrate still to be released [kg/m3], number, (substrates, farms) or
        (substrates, tanks, farms).
    gas_in_acids : carbon dioxide that the acids will still give [normal m3/m3].
    gas_share : carbon dioxide in the gas that the slurry was last under [1], 0 to 1.
    """

    volume: Numeric = 0.0
    methanogens: Numeric = 0.0
    acids: Numeric = 0.0
    ammonia: Numeric = 0.0
    strong_cations: Numeric = 0.0
    degradable: Numeric = 0.0
    gas_share: Numeric = 0.4
    gas_in_acids: Numeric = 0.0


def working_slurry(volume: Numeric, parameters: Parameters) -> Start:
    """Starter slurry [m3] from a working cattle digester; its own gas is left out."""
    return Start(
        volume=volume,
        methanogens=parameters.slurry_methanogens,
        acids=parameters.slurry_acids,
        ammonia=parameters.slurry_ammonia,
        strong_cations=parameters.slurry_fixed_alkalinity / CARBONATE_PER_CHARGE,
    )


@dataclass(frozen=True, slots=True, eq=False)
class History:
    """Feeding by days; a feed comes at the beginning of its day and pushes out as much slurry once the digester is full.

    Attributes
    ----------
    feedstock : the substrates.
    volatile_solids : fed [kg], shape (days, substrates, farms), at least 0; a last axis of 1 serves all farms.
    slurry : volume fed with water and urine [m3], shape (days, farms) or (days, 1), at least 0; above 0 on every day with solids.
    start : see :class:`Start`.
    """

    feedstock: Feedstock
    volatile_solids: Array
    slurry: Array
    start: Start = Start()


@dataclass(frozen=True, slots=True, eq=False)
class Conditions:
    """The digester and its surroundings.

    Attributes
    ----------
    working_volume : slurry when full [m3], number or (farms,), above 0.
    temperature : of the slurry [Cel], number, (days,) or (days, farms); 0 to 45.
    tanks_in_series : whole number of stirred tanks that stand for the mixing, 1 to 10, the same for all farms of a run.
    """

    working_volume: Numeric
    temperature: Numeric
    tanks_in_series: int = 1
