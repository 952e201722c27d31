"""The section of a planned digester in metres: what the drawing shows, before it is drawn.

Every shape stands on its floor at height 0, with its axis at 0; x runs to the right, y up.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Any

from kilisho.formulas.geometry import cap_height, cap_volume
from kilisho.messages import Amount, Message, say

Point = tuple[float, float]
Path = tuple[Point, ...]
# Points along half a circle: the drawn area then falls short by less than 0.05 %.
ARC_POINTS = 96
# Room between digester and compensation tank, and between the two views of a tube [m for a body of 1 m].
GAP = 0.15


@dataclass(frozen=True)
class Dimension:
    """One measured length: it runs from ``start`` to ``end`` and is shown ``aside`` steps away, left or below when negative."""

    name: Message
    value: float
    start: Point
    end: Point
    aside: int


@dataclass(frozen=True)
class Section:
    """What a section shows: filled areas, walls, and lines that show a state or a part without a size."""

    title: Message
    slurry: tuple[Path, ...]
    gas: tuple[Path, ...]
    walls: tuple[Path, ...]
    dashed: tuple[Path, ...]
    dimensions: tuple[Dimension, ...]
    remarks: tuple[Message, ...] = field(default=())

    @property
    def extent(self) -> tuple[Point, Point]:
        """Lower left and upper right corner of everything."""
        points = [point for group in (self.slurry, self.gas, self.walls, self.dashed) for path in group for point in path]
        xs, ys = [x for x, _ in points], [y for _, y in points]
        return (min(xs), min(ys)), (max(xs), max(ys))


def section_of(dimensions: Mapping[str, Any]) -> Section:
    """The section of an answer's ``dimensions``; raises KeyError for a shape that is not known."""
    lengths = {name: told["value"] for name, told in dimensions.items() if isinstance(told, Mapping) and "value" in told}
    volumes = {name: told["value"] for name, told in dimensions["reproduced"].items()}
    return SECTIONS[dimensions["shape"]](lengths, volumes)


def _box(left: float, bottom: float, right: float, top: float) -> Path:
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def arc(centre: Point, radius: float, start: float, end: float) -> Path:
    """Points of an arc from one angle [rad] to another, both ends exact."""
    angles = [start + (end - start) * step / ARC_POINTS for step in range(ARC_POINTS + 1)]
    return tuple((centre[0] + radius * math.cos(angle), centre[1] + radius * math.sin(angle)) for angle in angles)


def _upright(name: Message, value: float, x: float, bottom: float, aside: int) -> Dimension:
    return Dimension(name, value, (x, bottom), (x, bottom + value), aside)


def _level(name: Message, value: float, y: float, left: float, aside: int) -> Dimension:
    return Dimension(name, value, (left, y), (left + value, y), aside)


def _dome(lengths: Mapping[str, float], volumes: Mapping[str, float]) -> Section:
    """A hemisphere on its floor, its slurry at rest level with the floor of the compensation tank."""
    radius, depth = lengths["inner_height"], lengths["slurry_depth"]
    tank_width, tank_depth = lengths["compensation_tank_diameter"], lengths["compensation_tank_depth"]
    rise = math.asin(min(1.0, depth / radius))
    left = radius * (1 + GAP)
    tank = _box(left, depth, left + tank_width, depth + tank_depth)
    return Section(
        say("drawing-section-dome"),
        slurry=((*arc((0, 0), radius, 0, rise), *arc((0, 0), radius, math.pi - rise, math.pi)),),
        gas=(arc((0, 0), radius, rise, math.pi - rise),),
        walls=((*arc((0, 0), radius, 0, math.pi), (radius, 0)), (tank[3], tank[0], tank[1], tank[2])),
        dashed=(*_passages(radius, depth, left), *_full_of_gas(radius, lengths["gas_space_height"], volumes, tank)),
        dimensions=(
            _level(say("drawing-section-inner-diameter"), lengths["inner_diameter"], 0, -radius, -1),
            _upright(say("drawing-section-inner-height"), radius, -left, 0, -1),
            _upright(say("drawing-section-slurry-depth-at-rest"), depth, 0, 0, 0),
            _upright(say("drawing-section-gas-space-height-at-rest"), lengths["gas_space_height"], 0, depth, 0),
            _level(say("drawing-section-compensation-tank-diameter"), tank_width, depth + tank_depth, left, 1),
            _upright(say("drawing-section-compensation-tank-depth"), tank_depth, left + tank_width / 2, depth, 0),
        ),
        remarks=(say("drawing-section-dome-dashed"),),
    )


def _passages(radius: float, depth: float, tank: float) -> tuple[Path, ...]:
    """Inlet and outlet as lines without a size: low through the wall, up to the level."""
    low = 0.3 * depth
    wall = math.sqrt(radius**2 - low**2)
    return ((wall, low), (tank, depth)), ((-wall, low), (-tank, depth + 0.3 * radius))


def _full_of_gas(radius: float, cap: float, volumes: Mapping[str, float], tank: Path) -> tuple[Path, ...]:
    """Levels in dome and tank once the whole gas store is in the dome; nothing where the dome cannot hold it."""
    gas = float(cap_volume(radius, cap)) + volumes["gas_storage_volume"]
    if gas >= volumes["total_volume"]:
        return ()
    level = radius - float(cap_height(radius, gas))
    half = math.sqrt(radius**2 - level**2)
    return ((-half, level), (half, level)), (tank[3], tank[2])


def _pit_with_drum(lengths: Mapping[str, float], volumes: Mapping[str, float]) -> Section:
    """A pit with its drum risen; what neither slurry nor gas fills is the pit's wall above the slurry."""
    half, depth = lengths["pit_diameter"] / 2, lengths["slurry_depth"]
    drum, height = lengths["drum_diameter"] / 2, lengths["drum_gas_height"]
    spare = volumes["total_volume"] - volumes["working_volume"] - volumes["gas_storage_volume"]
    rim = depth + max(0.0, spare) / (math.pi * half**2)
    skirt = min(0.3 * height, depth)
    return Section(
        say("drawing-section-drum"),
        slurry=(_box(-half, 0, half, depth),),
        gas=(_box(-drum, depth, drum, depth + height),),
        walls=(
            ((-half, rim), (-half, 0), (half, 0), (half, rim)),
            ((-drum, depth), (-drum, depth + height), (drum, depth + height), (drum, depth)),
        ),
        dashed=(((-drum, depth), (-drum, depth - skirt)), ((drum, depth), (drum, depth - skirt))),
        dimensions=(
            _level(say("drawing-section-pit-diameter"), lengths["pit_diameter"], 0, -half, -1),
            _upright(say("drawing-section-slurry-depth"), depth, -half, 0, -1),
            _level(say("drawing-section-drum-diameter"), lengths["drum_diameter"], depth + height, -drum, 1),
            _upright(say("drawing-section-gas-height-in-full-drum"), height, half, depth, 1),
        ),
        remarks=(say("drawing-section-drum-dashed"),),
    )


def _tube(lengths: Mapping[str, float], _volumes: Mapping[str, float]) -> Section:
    """A lying tube along its length, and below it across."""
    diameter, length, depth = lengths["diameter"], lengths["length"], lengths["slurry_depth"]
    radius, above = diameter / 2, diameter * (1 + 3 * GAP)
    turn = math.asin(max(-1.0, min(1.0, depth / radius - 1)))
    return Section(
        say("drawing-section-bag"),
        slurry=(_box(-length / 2, above, length / 2, above + depth), arc((0, radius), radius, math.pi - turn, 2 * math.pi + turn)),
        gas=(
            _box(-length / 2, above + depth, length / 2, above + diameter),
            arc((0, radius), radius, turn, math.pi - turn),
        ),
        walls=(
            (*_box(-length / 2, above, length / 2, above + diameter), (-length / 2, above)),
            arc((0, radius), radius, 0, 2 * math.pi),
        ),
        dashed=(),
        dimensions=(
            _level(say("drawing-section-length"), length, above + diameter, -length / 2, 1),
            _level(say("drawing-section-diameter"), diameter, 0, -radius, -1),
            _upright(say("drawing-section-slurry-depth"), depth, radius, 0, 1),
        ),
        remarks=(say("drawing-section-bag-film", length=Amount(lengths["circumference"], "m", decimals=2)),),
    )


def _tank(lengths: Mapping[str, float], _volumes: Mapping[str, float]) -> Section:
    """An upright cylinder with gas over its slurry."""
    half, height, depth = lengths["diameter"] / 2, lengths["height"], lengths["slurry_depth"]
    return Section(
        say("drawing-section-cylinder"),
        slurry=(_box(-half, 0, half, depth),),
        gas=(_box(-half, depth, half, height),),
        walls=((*_box(-half, 0, half, height), (-half, 0)),),
        dashed=(),
        dimensions=(
            _level(say("drawing-section-diameter"), lengths["diameter"], 0, -half, -1),
            _upright(say("drawing-section-height"), height, -half, 0, -1),
            _upright(say("drawing-section-slurry-depth"), depth, half, 0, 1),
        ),
    )


def area_of(path: Sequence[Point]) -> float:
    """Area of a closed path [m2]."""
    return abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairwise((*path, path[0])))) / 2


SECTIONS: dict[str, Callable[[Mapping[str, float], Mapping[str, float]], Section]] = {
    "hemisphere_with_tank": _dome,
    "cylinder_with_drum": _pit_with_drum,
    "tube": _tube,
    "cylinder": _tank,
}
