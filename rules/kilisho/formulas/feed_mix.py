"""A daily mix of substrates and water: what it is made of, and the limits that it keeps.

Everything here is plain numbers in canonical units. The unknowns of a mix are the fresh mass of each ingredient [kg/d] and, last, the
water [m3/d]. Every limit is a ratio of two sums over them (dry matter over mass, carbon over nitrogen ...) against a bound, so it is linear
in the unknowns once it is multiplied out.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt

from kilisho.formulas.kinetics import mixed_share

Array = npt.NDArray[np.float64]
# A limit by name, and by the place of its ingredient where it is one ingredient's; otherwise WHOLE.
Key = tuple[str, int]
WHOLE = -1


@dataclass(frozen=True, slots=True)
class Ingredient:
    """One substrate: what a kilogram of its fresh mass brings.

    solids, volatile, nitrogen, carbon, ammonium : kg in a kilogram.
    displaced : room in slurry [m3/kg]; potential : ultimate biogas [m3/kg]; rate : of its decay in this digester [1/d]; price per kg.
    crop_residue : whether it floats as straw does.
    """

    solids: float
    volatile: float
    nitrogen: float
    carbon: float
    ammonium: float
    displaced: float
    potential: float
    rate: float
    price: float = 0.0
    crop_residue: bool = False


@dataclass(frozen=True, slots=True)
class Mix:
    """What may be mixed for a digester, and the bounds.

    ``limits`` holds the bounds that count: those named in :func:`limits_of`; ``available`` of every ingredient, ``least_total_solids``
    and ``least_retention_time`` must be there. working_volume [m3]; tanks_in_series [1]; water_density [kg/m3]; water_price per m3.
    """

    ingredients: tuple[Ingredient, ...]
    working_volume: float
    tanks_in_series: float
    water_density: float
    limits: Mapping[Key, float]
    water_price: float = 0.0

    def with_limit(self, key: Key, bound: float) -> Mix:
        """The same with another bound."""
        return replace(self, limits={**self.limits, key: bound})

    def each(self, name: str, water: float = 0.0) -> Array:
        """A property of all ingredients, and that of water: the coefficients of its sum over a mix."""
        return np.array([*(float(getattr(one, name)) for one in self.ingredients), water])

    def most_slurry(self) -> float:
        """Slurry [m3/d] that no mix within the limits exceeds: by retention, and by the water that thins all that there is."""
        available = np.array([self.limits["available", i] for i in range(len(self.ingredients))])
        thinnest = self.each("solids")[:-1] / (self.limits["least_total_solids", WHOLE] * self.water_density)
        made = float(available @ (self.each("displaced")[:-1] + thinnest))
        return min(made, self.working_volume / self.limits["least_retention_time", WHOLE])


@dataclass(frozen=True, slots=True)
class Sum:
    """A sum over a mix, ``coefficients @ unknowns + constant``."""

    coefficients: Array
    constant: float = 0.0

    def of(self, unknowns: Array) -> float:
        """Its value."""
        return float(self.coefficients @ unknowns) + self.constant


@dataclass(frozen=True, slots=True)
class Limit:
    """``top / bottom`` at most (``sense`` 1) or at least (-1) ``bound``."""

    key: Key
    top: Sum
    bottom: Sum
    sense: int
    bound: float

    def reached(self, unknowns: Array) -> float:
        """The ratio in a mix; 0 where there is nothing to divide by."""
        bottom = self.bottom.of(unknowns)
        return self.top.of(unknowns) / bottom if bottom else 0.0

    def row(self, margin: float = 0.0) -> Sum:
        """What must not exceed 0: ``top - bound * bottom`` or its negative; ``margin`` makes the bound stricter by that part of it."""
        bound = self.bound * (1 - self.sense * margin)
        coefficients = self.sense * (self.top.coefficients - bound * self.bottom.coefficients)
        return Sum(coefficients, self.sense * (self.top.constant - bound * self.bottom.constant))


def limits_of(mix: Mix) -> Iterator[Limit]:
    """The limits of a mix that have a bound."""
    for name, (sense, top, bottom) in _whole(mix).items():
        if (name, WHOLE) in mix.limits:
            yield Limit((name, WHOLE), top, bottom, sense, mix.limits[name, WHOLE])
    for place in range(len(mix.ingredients)):
        for name, (top, bottom) in _single(mix, place).items():
            if (name, place) in mix.limits:
                yield Limit((name, place), top, bottom, 1, mix.limits[name, place])


def slurry_of(mix: Mix) -> Array:
    """Coefficients of the slurry that a mix makes [m3/d]."""
    return mix.each("displaced", 1.0)


def _whole(mix: Mix) -> dict[str, tuple[int, Sum, Sum]]:
    solids, volatile, nitrogen, carbon = (Sum(mix.each(name)) for name in ("solids", "volatile", "nitrogen", "carbon"))
    mass = Sum(np.array([*[1.0] * len(mix.ingredients), mix.water_density]))
    slurry, volume = Sum(slurry_of(mix)), Sum(np.zeros(len(mix.ingredients) + 1), mix.working_volume)
    residue = Sum(solids.coefficients * mix.each("crop_residue"))
    return {
        "least_total_solids": (-1, solids, mass),
        "largest_total_solids": (1, solids, mass),
        "least_carbon_to_nitrogen": (-1, carbon, nitrogen),
        "largest_carbon_to_nitrogen": (1, carbon, nitrogen),
        "largest_total_ammonia_nitrogen": (1, Sum(mix.each("ammonium")), slurry),
        "largest_organic_loading_rate": (1, volatile, volume),
        "least_retention_time": (-1, volume, slurry),
        "largest_crop_residue_share": (1, residue, solids),
        "water_available": (1, _one(mix, WHOLE), _nothing_but(mix, 1.0)),
    }


def _single(mix: Mix, place: int) -> dict[str, tuple[Sum, Sum]]:
    volatile = mix.each("volatile")
    own = Sum(volatile * _one(mix, place).coefficients)
    return {"available": (_one(mix, place), _nothing_but(mix, 1.0)), "largest_share": (own, Sum(volatile))}


def _one(mix: Mix, place: int) -> Sum:
    coefficients = np.zeros(len(mix.ingredients) + 1)
    coefficients[place] = 1.0
    return Sum(coefficients)


def _nothing_but(mix: Mix, constant: float) -> Sum:
    return Sum(np.zeros(len(mix.ingredients) + 1), constant)


def gas_at(mix: Mix, slurry: float) -> Array:
    """Coefficients of the gas that a mix gives per day [m3/d] when ``slurry`` [m3/d] is let in; all of the potential at none."""
    potential, rate = mix.each("potential"), mix.each("rate")
    if slurry <= 0.0:
        return potential
    given: Array = potential * mixed_share(rate, mix.working_volume / slurry, mix.tanks_in_series)
    return given


def gas_of_mix(mix: Mix, unknowns: Array) -> float:
    """Gas that a mix gives per day [m3/d] at the retention that it makes."""
    return float(gas_at(mix, float(slurry_of(mix) @ unknowns)) @ unknowns)
