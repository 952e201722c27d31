"""What does not change within a day of steps of one length, worked out for all days of a run at once."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.kinetics import temperature_corrected_rate
from kilisho.process.acidity import Equilibria, equilibria
from kilisho.process.parameters import ACID_MASS, NITROGEN_MASS, Parameters, growth_rate
from kilisho.process.traits import of_farms

Array = npt.NDArray[np.float64]

_EMPTY = 1e-12


class Pace(NamedTuple):
    """Figures of a day, (tanks, farms) but for those of substrates, (substrates, tanks, farms); with an axis of days before them for a run.

    Degraded in half a step, in first approximation, and in a step unhindered [1]; acids that unlimited cells take up in half a step per
    cells [1]; part of the cells left after half a step, and after a step, of those there before and of those grown in it [1]. Acids at half
    the growth [kg], gas volume that the slurry holds [m3], mol/m3 for a kilogram of ammonia nitrogen and of acids (stacked along the first
    axis), and for a mole of cations.
    """

    half_rate: Array
    formed: Array
    half_uptake: Array
    half_outlive: Array
    outlive: Array
    grown_outlive: Array
    saturation: Array
    gas_held: Array
    per_mass: Array
    per_volume: Array
    constants: Equilibria

    def on(self, day: int) -> Pace:
        """That of one day."""
        return self._each(lambda part: part[day])

    def at(self, farms: npt.NDArray[np.intp]) -> Pace:
        """That of some farms."""
        return self._each(lambda part: of_farms(part, farms))

    def _each(self, pick: Callable[[Any], Any]) -> Pace:
        return Pace._make([*map(pick, self[:-1]), Equilibria._make(map(pick, self.constants))])


class Paces:
    """The paces of a run by the number of steps a day, each made when it is first asked for."""

    def __init__(self, temperature: Array, volume: Array, tanks: int, rate: Array, parameters: Parameters) -> None:
        warmth = temperature[:, None, :]
        growth = np.asarray(growth_rate(warmth, parameters.growth_factor))
        self._decay = parameters.decay_share * growth
        self._uptake = growth / parameters.cell_yield
        self._rate = np.asarray(temperature_corrected_rate(rate, warmth))[:, :, None, :]
        held = np.maximum(volume / tanks, _EMPTY)[:, None, :]
        self._volumes = (
            parameters.half_saturation * held,
            parameters.gas_held * held,
            np.stack([1.0 / (held * NITROGEN_MASS), 1.0 / (held * ACID_MASS)], axis=1),
            1.0 / held,
        )
        found = equilibria(warmth)
        self.constants = Equilibria(np.moveaxis(found.weak, 0, 1), found.carbonic, found.water)
        self._made: dict[int, Pace] = {}

    def of(self, steps: int) -> Pace:
        """The pace of all days in so many steps a day."""
        found = self._made.get(steps)
        if found is None:
            found = self._made[steps] = self._make(1.0 / steps)
        return found

    def _make(self, step: float) -> Pace:
        outlive = np.exp(-self._decay * step)
        return Pace(
            0.5 * step * self._rate,
            -np.expm1(-step * self._rate),
            0.5 * step * self._uptake,
            1.0 - 0.5 * step * self._decay,
            outlive,
            (1.0 - outlive) / (self._decay * step),
            *self._volumes,
            self.constants,
        )
