"""What does not change within a day of steps of one length, worked out for all days and farms of a run at once."""

from __future__ import annotations

from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import NITROGEN_MASS
from kilisho.formulas.kinetics import temperature_corrected_rate
from kilisho.process.acidity import Equilibria, equilibria
from kilisho.process.parameters import ACID_MASS, Parameters, growth_rate
from kilisho.process.schedule import Steps, in_order

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
        return self._with([part[day] for part in self._parts])

    def first(self, farms: int) -> Pace:
        """That of the first farms; what serves all farms has but one to take."""
        return self._with([part[..., :farms] for part in self._parts])

    def ordered(self, order: Steps) -> Pace:
        """That of a run with the farms of each day in an ``order``, (days, farms)."""
        return self._with([in_order(part, order) for part in self._parts])

    @property
    def _parts(self) -> tuple[Any, ...]:
        return *self[:-1], *self.constants

    @staticmethod
    def _with(parts: list[Any]) -> Pace:
        *own, weak, carbonic, water = parts
        return Pace._make([*own, Equilibria(weak, carbonic, water)])


def pace_of(steps: Steps, temperature: Array, volume: Array, tanks: int, rate: Array, parameters: Parameters) -> Pace:  # noqa: PLR0913, PLR0917
    """The pace of all days, for as many ``steps`` as each day takes, (days, farms) or (days, 1).

    ``temperature`` [Cel], (days, farms) or (days, 1), ``volume`` of the slurry [m3], (days, farms), ``rate`` as in ``Feedstock``.
    """
    warmth, step = temperature[:, None, :], (1.0 / steps)[:, None, :]
    growth = np.asarray(growth_rate(warmth, parameters.growth_factor))
    decay, uptake = parameters.decay_share * growth, growth / parameters.cell_yield
    degraded = np.asarray(temperature_corrected_rate(rate, warmth))[:, :, None, :]
    outlive, held = np.exp(-decay * step), np.maximum(volume / tanks, _EMPTY)[:, None, :]
    return Pace(
        0.5 * step[:, None] * degraded,
        -np.expm1(-step[:, None] * degraded),
        0.5 * step * uptake,
        1.0 - 0.5 * step * decay,
        outlive,
        (1.0 - outlive) / (decay * step),
        parameters.half_saturation * held,
        parameters.gas_held * held,
        np.stack([1.0 / (held * NITROGEN_MASS), 1.0 / (held * ACID_MASS)], axis=1),
        1.0 / held,
        constants_of(temperature),
    )


def constants_of(temperature: Array) -> Equilibria:
    """Constants of acids and bases for ``temperature`` [Cel], (days, farms) or (days, 1), with days as the first axis of all."""
    found = equilibria(temperature[:, None, :])
    return Equilibria(np.moveaxis(found.weak, 0, 1), found.carbonic, found.water)
