"""Dimensions of a digester from its volumes: each shape gives lengths from which the volumes come out again."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping

from kilisho.formulas import geometry
from kilisho.questions.answers import Answer, in_cubic_metres, in_metres
from kilisho.rulebook import Structure

STATEMENT = (
    "Inner planning dimensions. Structural design, excavation and materials belong to a licensed engineer or mason and the local code."
)
Lengths = dict[str, float]
Shape = Callable[[float, float, float, Mapping[str, float]], tuple[Lengths, Lengths]]


def dimensions_of(structure: Structure, total: float, working: float, storage: float) -> Answer:
    """Lengths of the structure for its total, working and gas storage volume [m3], and the volumes that they reproduce.

    Planning dimensions for comparing sites and materials, not a drawing: wall thickness, foundations and reinforcement belong
    to a licensed engineer or mason and the local code.
    """
    ratios = {name: figure.typical for name, figure in structure.geometry.ratios.items()}
    lengths, volumes = SHAPES[structure.geometry.shape](total, working, storage, ratios)
    return {
        "shape": structure.geometry.shape,
        **{name: in_metres(value) for name, value in lengths.items()},
        "reproduced": {name: in_cubic_metres(value) for name, value in volumes.items()},
        "statement": STATEMENT,
    }


def _hemisphere_with_tank(total: float, working: float, storage: float, ratios: Mapping[str, float]) -> tuple[Lengths, Lengths]:
    radius = float(geometry.hemisphere_radius(total))
    gas_height = float(geometry.cap_height(radius, total - working))
    tank_depth = ratios["tank_depth_to_dome_radius"] * radius
    tank_radius = math.sqrt(storage / (math.pi * tank_depth))
    lengths = {
        "inner_diameter": 2 * radius,
        "inner_height": radius,
        "slurry_depth": radius - gas_height,
        "gas_space_height": gas_height,
        "compensation_tank_diameter": 2 * tank_radius,
        "compensation_tank_depth": tank_depth,
    }
    gas = float(geometry.cap_volume(radius, gas_height))
    whole = float(geometry.hemisphere_volume(radius))
    return lengths, {"total_volume": whole, "working_volume": whole - gas, "gas_storage_volume": math.pi * tank_radius**2 * tank_depth}


def _cylinder_with_drum(total: float, working: float, storage: float, ratios: Mapping[str, float]) -> tuple[Lengths, Lengths]:
    ratio, clearance = ratios["pit_height_to_diameter"], ratios["drum_clearance"]
    diameter = (4 * working / (math.pi * ratio)) ** (1 / 3)
    drum = max(diameter - 2 * clearance, diameter / 2)
    drum_height = storage / (math.pi * drum**2 / 4)
    lengths = {"pit_diameter": diameter, "slurry_depth": ratio * diameter, "drum_diameter": drum, "drum_gas_height": drum_height}
    slurry, gas = math.pi * diameter**2 / 4 * ratio * diameter, math.pi * drum**2 / 4 * drum_height
    return lengths, {
        "total_volume": slurry + gas + max(0.0, total - working - storage),
        "working_volume": slurry,
        "gas_storage_volume": gas,
    }


def _tube(total: float, working: float, storage: float, ratios: Mapping[str, float]) -> tuple[Lengths, Lengths]:
    ratio = ratios["length_to_diameter"]
    diameter = (4 * total / (math.pi * ratio)) ** (1 / 3)
    depth = float(geometry.tube_fill_height(diameter / 2, working / total))
    lengths = {"diameter": diameter, "circumference": math.pi * diameter, "length": ratio * diameter, "slurry_depth": depth}
    whole = math.pi * diameter**2 / 4 * ratio * diameter
    slurry = float(geometry.tube_segment_area(diameter / 2, depth)) * ratio * diameter
    return lengths, {"total_volume": whole, "working_volume": slurry, "gas_storage_volume": min(storage, whole - slurry)}


def _cylinder(total: float, working: float, storage: float, ratios: Mapping[str, float]) -> tuple[Lengths, Lengths]:
    ratio = ratios["height_to_diameter"]
    diameter = (4 * total / (math.pi * ratio)) ** (1 / 3)
    area = math.pi * diameter**2 / 4
    lengths = {"diameter": diameter, "height": ratio * diameter, "slurry_depth": working / area}
    return lengths, {
        "total_volume": area * ratio * diameter,
        "working_volume": working,
        "gas_storage_volume": min(storage, total - working),
    }


SHAPES: dict[str, Shape] = {
    "hemisphere_with_tank": _hemisphere_with_tank,
    "cylinder_with_drum": _cylinder_with_drum,
    "tube": _tube,
    "cylinder": _cylinder,
}
