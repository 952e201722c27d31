"""The range of the expected gas of an installation, cheap enough for a table of a hundred million.

Sampling every row 64 times is too dear, and the ends of all figures taken together would give a range that no farm ever sees. But the low
and the high end, taken over the typical gas, hang on little: on the substrate, on the kind of digester, on its temperature and on its
retention, and on whether temperature and water are known. So they are sampled once on a grid of temperatures and retentions for each
pair of substrate and kind, with the same samples and formulas as a maintenance feed, and read between the points of the grid by
straight lines in both directions. One installation and a table of them read the same grid.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from kilisho.check_columns import Array, Codes
from kilisho.farm import GRAPH, Ledger, Shelf
from kilisho.formulas.arrays import most
from kilisho.formulas.digester import SEA_LEVEL_PRESSURE
from kilisho.questions.feeding import Fed
from kilisho.questions.gas import gas_of, sampled_gas
from kilisho.questions.installation.figures import Figures
from kilisho.ranges import SAMPLES, Numeric, ends_of, sampled

COLDEST, WARMEST, TEMPERATURES = 5.0, 45.0, 33
# Retentions stand at even steps of retention / (retention + this), which crowds the points where the gas changes most [d].
MIDDLE_RETENTION, RETENTIONS = 60.0, 21
LEAST_PLACE, MOST_PLACE = 0.05, 0.95
# Whether the temperature is known, and whether the water is: four cases to a pair of substrate and structure.
CASES = 4
UNKNOWN_TEMPERATURE, UNKNOWN_WATER = 1, 2
_POINTS = TEMPERATURES * RETENTIONS
_NEARLY = 1e-9


@dataclass
class GasRange:
    """Low and high end of the gas over its typical value, worked out for a pair and case when it is first asked for."""

    figures: Figures
    _low: Array = field(init=False, repr=False)
    _high: Array = field(init=False, repr=False)
    _known: Any = field(init=False, repr=False)

    def __post_init__(self) -> None:
        groups = len(self.figures.substrates) * len(self.figures.structures) * CASES
        self._low, self._high = np.full((2, groups * _POINTS), np.nan)
        self._known = np.zeros(groups, bool)

    def group(self, substrate: Codes, structure: Codes, case: Any) -> Codes:
        """The number of a pair and case; an unknown substrate counts as the first, since it has no gas to take a share of."""
        found: Codes = (np.maximum(substrate, 0) * len(self.figures.structures) + np.maximum(structure, 0)) * CASES + case
        return found

    def shares(self, group: Codes, temperature: Any, retention: Any) -> tuple[Array, Array]:
        """Low and high end over the typical gas, at a temperature [Cel] and retention [d]; beyond the grid as at its edge."""
        self._make_known(group)
        row, above = _place((temperature - COLDEST) * ((TEMPERATURES - 1) / (WARMEST - COLDEST)), TEMPERATURES)
        place = (retention / (retention + MIDDLE_RETENTION) - LEAST_PLACE) * ((RETENTIONS - 1) / (MOST_PLACE - LEAST_PLACE))
        column, beyond = _place(place, RETENTIONS)
        corner = group * _POINTS + row * RETENTIONS + column
        corners = [corner, corner + 1, corner + RETENTIONS, corner + (RETENTIONS + 1)]
        both = above * beyond
        weights = [1.0 - above - beyond + both, beyond - both, above - both, both]
        low, high = (_weighed([table.take(at) for at in corners], weights) for table in (self._low, self._high))
        return low, high

    def _make_known(self, group: Codes) -> None:
        if self._known.take(group).all():
            return
        for one in np.unique(group[~self._known.take(group)]).tolist():
            pair, case = divmod(one, CASES)
            substrate, structure = divmod(pair, len(self.figures.structures))
            here = slice(one * _POINTS, (one + 1) * _POINTS)
            self._low[here], self._high[here] = _sampled_shares(
                self.figures, self.figures.substrates[substrate], self.figures.structures[structure], case
            )
            # Set last: whoever sees it finds the grid filled.
            self._known[one] = True


def _place(position: Any, points: int) -> tuple[Codes, Array]:
    """The point below a position on the grid, and the part of the way to the next; NaN counts as the first point."""
    held = np.fmin(np.fmax(position, 0.0), points - 1 - _NEARLY)
    below = held.astype(np.intp)
    return below, held - below


def _weighed(corners: list[Array], weights: list[Array]) -> Array:
    found = corners[0] * weights[0]
    for corner, weight in zip(corners[1:], weights[1:], strict=True):
        found += corner * weight
    return found


def grid() -> tuple[Array, Array]:
    """Temperature [Cel] and retention [d] of every point, in the order of the tables."""
    places = np.linspace(LEAST_PLACE, MOST_PLACE, RETENTIONS)
    temperatures, retentions = np.meshgrid(
        np.linspace(COLDEST, WARMEST, TEMPERATURES), MIDDLE_RETENTION * places / (1 - places), indexing="ij"
    )
    return temperatures.ravel(), retentions.ravel()


def _sampled_shares(figures: Figures, substrate: str, structure: str, case: int) -> tuple[Array, Array]:
    """Ends over the typical gas on the grid, from the samples of everything that is uncertain."""
    shelf, (temperature, retention) = figures.shelf, grid()
    fed = _fed(shelf, substrate)
    typical = _conditions(shelf, structure, temperature, retention)
    expected = gas_of([fed], typical)["biogas_per_day"]
    wavering = _wavering(shelf, structure, case)
    sampled_conditions = {
        **typical,
        "digester_temperature": wavering.temperature(temperature[:, np.newaxis]),
        "hydraulic_retention_time": retention[:, np.newaxis] * wavering.volume * _thinner(figures, fed, case),
    }
    ledger = _concentration(shelf, fed, figures, case)
    samples = sampled_gas([fed], sampled_conditions, ledger)["biogas_per_day"]
    low, high = ends_of(expected, np.broadcast_to(samples, (expected.size, SAMPLES)))
    with np.errstate(invalid="ignore", divide="ignore"):
        return low / expected, high / expected


def _fed(shelf: Shelf, substrate: str) -> Fed:
    """A kilogram of the substrate a day, with its samples."""
    values, entry = shelf.substrates[substrate], shelf.data.substrates[substrate]
    return Fed(substrate, entry, 1.0, values.typical, Fed(substrate, entry, 1.0, values.sampled))


def _conditions(shelf: Shelf, structure: str, temperature: Array, retention: Array) -> dict[str, Any]:
    tanks = float(shelf.data.structures[structure].tanks_in_series)
    return {
        "digester_temperature": temperature,
        "hydraulic_retention_time": retention,
        "tanks_in_series": tanks,
        "gas_pressure": SEA_LEVEL_PRESSURE,
    }


@dataclass(frozen=True)
class _Wavering:
    """How temperature [Cel] and working volume (over its typical value) waver."""

    temperature: Callable[[Array], Array]
    volume: Numeric


def _wavering(shelf: Shelf, structure: str, case: int) -> _Wavering:
    fill = shelf.reading("structures", structure, "fill_share")
    if case & UNKNOWN_TEMPERATURE:
        guess = shelf.reading("figures", "unknown_digester_temperature", "digester_temperature").samples
        return _Wavering(lambda typical: typical * 0.0 + guess, fill.samples / fill.typical)
    offset = shelf.reading("figures", "soil_offset", "soil_offset")
    return _Wavering(lambda typical: typical + (offset.samples - offset.typical), fill.samples / fill.typical)


def _slurry(figures: Figures, fed: Fed, case: int) -> tuple[float, Numeric]:
    """Slurry of a kilogram with its usual water, typical and sampled [m3]."""
    place = figures.substrates.index(fed.id)
    usual = float(figures.of_substrate["usual_water_to_feed"][place])
    given = {"feed_mass_per_day": 1.0, "water_density": figures.water_density}
    typical = {**fed.values, **given, "liquid_per_day": usual / fed.values["bulk_density"]}
    assert fed.sampled is not None
    samples = {**fed.sampled.values, **given, "liquid_per_day": typical["liquid_per_day"]}
    if case & UNKNOWN_WATER:
        samples["liquid_per_day"] = _water_samples(fed, given) / samples["bulk_density"]
    found = [GRAPH.solve(one, ("slurry_per_day",))["slurry_per_day"] for one in (typical, samples)]
    return found[0], found[1]


def _water_samples(fed: Fed, given: dict[str, float]) -> Numeric:
    """Samples of the volumes of water per volume of feed, from the practice of dilution."""
    rule, key = fed.entry.dilution, f"substrates/{fed.id}/dilution"
    if rule.water_to_feed_by_volume is not None:
        ratio = rule.water_to_feed_by_volume
        return sampled(key, ratio.least, ratio.typical, ratio.most)
    if rule.target_total_solids is None:
        return 0.0
    target = rule.target_total_solids
    assert fed.sampled is not None
    values = {**fed.sampled.values, **given, "target_total_solids": sampled(key, target.least, target.typical, target.most)}
    return most(GRAPH.solve(values, ("water_to_feed_for_target",))["water_to_feed_for_target"], 0.0)


def _thinner(figures: Figures, fed: Fed, case: int) -> Numeric:
    """Typical slurry over sampled slurry: what the retention changes by."""
    typical, samples = _slurry(figures, fed, case)
    return typical / samples


def _concentration(shelf: Shelf, fed: Fed, figures: Figures, case: int) -> Ledger:
    """A ledger with the samples of volatile solids and slurry, which the growth kinetics ask for."""
    ledger = Ledger(shelf)
    typical, samples = _slurry(figures, fed, case)
    assert fed.sampled is not None
    solids = [
        GRAPH.solve({**one.values, "feed_mass_per_day": 1.0}, ("volatile_solids_per_day",))["volatile_solids_per_day"]
        for one in (fed, fed.sampled)
    ]
    ledger.put(slurry_per_day=typical, volatile_solids_per_day=solids[0])
    ledger.sample(slurry_per_day=samples, volatile_solids_per_day=solids[1])
    return ledger
