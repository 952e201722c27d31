"""The linear program of a mix at a given slurry per day, solved by scipy's HiGHS.

How much gas a kilogram gives depends on how long it stays, so gas is not linear in the unknowns. At a fixed share of the potential it is:
:meth:`Program.at` takes the share at the most slurry that is let in, which promises no more than the mix gives; :meth:`Program.between`
takes it at the least, which no mix in between exceeds. The search stands on both.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, Literal

import numpy as np

from kilisho.deadline import keep_to_time
from kilisho.formulas.feed_mix import WHOLE, Array, Key, Limit, Mix, gas_at, limits_of, slurry_of

Wish = Literal["most_gas", "cheapest", "most_even", "least_relaxation"]
# Part by which ratios are kept stricter than their bounds, so that rounding in the solver never breaks a limit.
MARGIN = 1e-6
# Kept as they are, to the solver's tolerance: amounts, and a ratio that one substrate alone may meet to the last digit.
EXACT = ("available", "water_available", "least_carbon_to_nitrogen", "largest_carbon_to_nitrogen")
# Weight of the mass to be carried: it decides between mixes that are otherwise equally good.
LIGHTER = 1e-6
LEAST_COEFFICIENT = 1e-12
GAS_DEMAND: Key = ("gas_demand", WHOLE)
# No limit of operation is offered more than so many times as wide; what there is and what is asked for may change at will.
WIDEST_RELAXED = 4.0


def _most_relaxed(key: Key) -> float:
    if key[0] in ("available", "water_available"):
        return float("inf")
    return 1.0 - 1.0 / WIDEST_RELAXED if key[0].startswith("least_") else 1.0 if key == GAS_DEMAND else WIDEST_RELAXED - 1.0


@dataclass(frozen=True, slots=True)
class Found:
    """A mix: its unknowns (fresh masses [kg/d], then water [m3/d]), the score (the less the better), and relaxations by limit."""

    unknowns: Array
    score: float
    relaxed: dict[Key, float] = field(default_factory=dict)


@dataclass
class Program:
    """The program of one mix and wish.

    gas_demand : gas that is asked for [m3/d], if any. volatile_demand : volatile solids that must be fed [kg/d].
    elastic : limits that may give way, each at a cost of the part by which it does; only ``least_relaxation`` minimises that.
    tighten : whether those limits may also become stricter than their bounds, at a gain.
    """

    mix: Mix
    wish: Wish
    gas_demand: float = 0.0
    volatile_demand: float = 0.0
    elastic: Collection[Key] = ()
    tighten: bool = False

    def at(self, slurry: float) -> Found | None:
        """The best mix of no more slurry than this [m3/d], with gas counted as at this much; None where there is none."""
        found = self._solve(slurry, 0.0, slurry)
        if found is None or found.x is None:
            return None
        columns = found.x * self._scales
        relaxed = dict(zip(self._may_relax, columns[self._width - len(self._may_relax) :].tolist(), strict=True))
        return Found(self._tidy(columns[: self._count + 1]), float(found.fun), relaxed)

    def between(self, least: float, most: float) -> float:
        """A score that no mix with slurry from ``least`` to ``most`` [m3/d] beats; infinite where there is none."""
        found = self._solve(least, least, most)
        if found is None:
            return float("inf")
        return float(found.fun)

    # Columns: masses of the ingredients, water, the largest use, relaxations.

    @cached_property
    def _count(self) -> int:
        return len(self.mix.ingredients)

    @cached_property
    def _limits(self) -> list[Limit]:
        return list(limits_of(self.mix))

    @cached_property
    def _may_relax(self) -> list[Key]:
        demand = [GAS_DEMAND] if GAS_DEMAND in self.elastic else []
        return [limit.key for limit in self._limits if limit.key in self.elastic] + demand

    @cached_property
    def _width(self) -> int:
        return self._count + 2 + len(self._may_relax)

    @cached_property
    def _available(self) -> Array:
        return np.array([self.mix.limits["available", i] for i in range(self._count)])

    @cached_property
    def usual_slurry(self) -> float:
        """The most slurry; for a demand that is small against all that there is, some tenfold of the slurry that may meet it [m3/d].

        It is the size of the program's units: a demand in much larger ones would drown in the solver's tolerance.
        """
        most = self.mix.most_slurry()
        if not self.gas_demand or self.elastic:
            return most
        there = np.append(np.minimum(self._available, self.mix.water_density * most), 0.0)
        potential = float(self.mix.each("potential") @ there)
        return most * min(1.0, 10.0 * self.gas_demand / potential) if potential > 0.0 else most

    @cached_property
    def _scales(self) -> Array:
        """Size of a column's unit, so that the program is the same for farms that differ in size only."""
        scales, most = np.ones(self._width), self.usual_slurry
        usual = np.minimum(self._available, self.mix.water_density * most)
        scales[: self._count] = np.where(usual > 0.0, usual, 1.0)
        scales[self._count] = most
        return scales

    def _row(self, coefficients: Array) -> Array:
        row = np.zeros(self._width)
        row[: len(coefficients)] = coefficients
        return row

    @cached_property
    def _usual(self) -> Array:
        """A mix of all that there is with water to some 8 % total solids: by it relaxations of different limits are weighed."""
        masses = np.append(self._available, 0.0)
        solids = float(self.mix.each("solids") @ masses)
        masses[-1] = max(0.0, solids / 0.08 - float(masses.sum())) / self.mix.water_density
        return masses / max(float(slurry_of(self.mix) @ masses), LEAST_COEFFICIENT)

    @cached_property
    def _fixed(self) -> tuple[Array, Array]:
        """Rows that hold whatever slurry is let in, and what they must not exceed."""
        rows = [self._limit_row(limit) for limit in self._limits]
        rows += [self._use_row(i) for i in range(self._count) if self.wish == "most_even"]
        bounds = [-limit.row(self._margin(limit)).constant for limit in self._limits] + [0.0] * (len(rows) - len(self._limits))
        if self.volatile_demand:
            rows, bounds = [*rows, self._row(-self.mix.each("volatile"))], [*bounds, -self.volatile_demand]
        return np.array(rows), np.array(bounds)

    @staticmethod
    def _margin(limit: Limit) -> float:
        return 0.0 if limit.key[0] in EXACT else MARGIN

    def _limit_row(self, limit: Limit) -> Array:
        row = self._row(limit.row(self._margin(limit)).coefficients)
        if limit.key in self._may_relax:
            column = self._width - len(self._may_relax) + self._may_relax.index(limit.key)
            row[column] = -limit.bound * abs(limit.bottom.of(self._usual * self.usual_slurry))
        return row

    def _use_row(self, i: int) -> Array:
        row = self._row(np.eye(self._count + 1)[i])
        row[self._count + 1] = -self._available[i]
        return row

    def _demand_row(self, gas: Array) -> Array:
        row = self._row(-gas)
        if GAS_DEMAND in self._may_relax:
            row[-1] = -self.gas_demand
        return row

    @cached_property
    def _unit(self) -> float:
        """Size of the objective's unit, the same whatever slurry is let in, so that scores can be compared."""
        if self.wish in ("least_relaxation", "most_even"):
            return 1.0
        each = gas_at(self.mix, 0.0) if self.wish == "most_gas" else self._prices
        return float((each * self._scales[: self._count + 1]).max()) or 1.0

    @cached_property
    def _prices(self) -> Array:
        return np.append([one.price for one in self.mix.ingredients], self.mix.water_price)

    def _weights(self, gas: Array) -> Array:
        weights = np.zeros(self._width)
        if self.wish == "least_relaxation":
            weights[self._width - len(self._may_relax) :] = 1.0
        elif self.wish == "most_even":
            weights[self._count + 1] = 1.0
        else:
            weights[: self._count + 1] = -gas if self.wish == "most_gas" else self._prices
        weights = weights * self._scales / self._unit
        mass = np.append(np.ones(self._count), self.mix.water_density) * self._scales[: self._count + 1]
        weights[: self._count + 1] += LIGHTER * mass / (self.mix.water_density * self.usual_slurry)
        return weights

    def _solve(self, gas_slurry: float, least: float, most: float) -> Any:
        from scipy.optimize import LinearConstraint, milp

        keep_to_time()
        gas, slurry = gas_at(self.mix, gas_slurry), self._row(slurry_of(self.mix))
        rows, bounds = self._fixed
        rows, bounds = np.vstack([rows, slurry, -slurry]), np.append(bounds, [most, -least])
        if self.gas_demand:
            rows, bounds = np.vstack([rows, self._demand_row(gas)]), np.append(bounds, -self.gas_demand * (1 + MARGIN))
        rows = rows * self._scales
        sizes = np.maximum(np.abs(rows).max(axis=1), LEAST_COEFFICIENT)
        rows, bounds = rows / sizes[:, None], bounds / sizes
        constraint = LinearConstraint(rows, -np.inf, bounds)
        found = milp(self._weights(gas), constraints=constraint, bounds=self._ends)
        return None if found.status in (2, 3, 4) and found.x is None else found

    @cached_property
    def _ends(self) -> Any:
        from scipy.optimize import Bounds

        bottoms, tops = np.zeros(self._width), np.full(self._width, np.inf)
        tops[self._width - len(self._may_relax) :] = [_most_relaxed(key) for key in self._may_relax]
        if self.tighten:
            bottoms[self._width - len(self._may_relax) :] = -np.inf
        return Bounds(bottoms, tops)

    def _tidy(self, unknowns: Array) -> Array:
        """Without the solver's noise: nothing below 0 or beyond what there is, traces none."""
        most = np.append(self._available, self.mix.limits.get(("water_available", WHOLE), np.inf))
        if not self.elastic:
            unknowns = np.minimum(unknowns, most)
        traces = MARGIN / 10 * np.append(np.full(self._count, self.mix.water_density), 1.0) * self.usual_slurry
        kept: Array = np.where(unknowns > np.minimum(traces, MARGIN * np.where(most > 0.0, most, np.inf)), unknowns, 0.0)
        return kept
