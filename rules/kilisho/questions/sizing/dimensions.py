"""Dimensions of a digester from its volumes: each shape gives lengths from which the volumes come out again."""

from __future__ import annotations

import math
from collections.abc import Callable

from kilisho.formulas import geometry
from kilisho.messages import say
from kilisho.questions.answers import Answer, in_cubic_metres, in_metres
from kilisho.questions.sizing import dome
from kilisho.questions.sizing.dome import Plan

STATEMENT = say("dimensions-statement")
Lengths = dict[str, float]
Shape = Callable[[Plan], tuple[Lengths, Lengths]]


def dimensions_of(plan: Plan) -> Answer:
    """Lengths of the structure for its total, working and gas storage volume, and the volumes that they reproduce.

    Planning dimensions for comparing sites and materials, not a drawing: wall thickness, foundations and reinforcement belong
    to a licensed engineer or mason and the local code.
    """
    shape = plan.structure.geometry.shape
    lengths, volumes = SHAPES[shape](plan)
    return {
        "shape": shape,
        **{name: in_metres(value) for name, value in lengths.items()},
        "reproduced": {name: in_cubic_metres(value) for name, value in volumes.items()},
        "statement": STATEMENT,
    }


def _cylinder_with_drum(plan: Plan) -> tuple[Lengths, Lengths]:
    ratio, clearance = plan.ratio("pit_height_to_diameter"), plan.ratio("drum_clearance")
    diameter = (4 * plan.working / (math.pi * ratio)) ** (1 / 3)
    drum = max(diameter - 2 * clearance, diameter / 2)
    drum_height = plan.storage / (math.pi * drum**2 / 4)
    lengths = {"pit_diameter": diameter, "slurry_depth": ratio * diameter, "drum_diameter": drum, "drum_gas_height": drum_height}
    slurry, gas = math.pi * diameter**2 / 4 * ratio * diameter, math.pi * drum**2 / 4 * drum_height
    return lengths, {
        "total_volume": slurry + gas + max(0.0, plan.total - plan.working - plan.storage),
        "working_volume": slurry,
        "gas_storage_volume": gas,
    }


def _tube(plan: Plan) -> tuple[Lengths, Lengths]:
    ratio = plan.ratio("length_to_diameter")
    diameter = (4 * plan.total / (math.pi * ratio)) ** (1 / 3)
    depth = float(geometry.tube_fill_height(diameter / 2, plan.working / plan.total))
    lengths = {"diameter": diameter, "circumference": math.pi * diameter, "length": ratio * diameter, "slurry_depth": depth}
    whole = math.pi * diameter**2 / 4 * ratio * diameter
    slurry = float(geometry.tube_segment_area(diameter / 2, depth)) * ratio * diameter
    return lengths, {"total_volume": whole, "working_volume": slurry, "gas_storage_volume": min(plan.storage, whole - slurry)}


def _cylinder(plan: Plan) -> tuple[Lengths, Lengths]:
    ratio = plan.ratio("height_to_diameter")
    diameter = (4 * plan.total / (math.pi * ratio)) ** (1 / 3)
    area = math.pi * diameter**2 / 4
    lengths = {"diameter": diameter, "height": ratio * diameter, "slurry_depth": plan.working / area}
    return lengths, {
        "total_volume": area * ratio * diameter,
        "working_volume": plan.working,
        "gas_storage_volume": min(plan.storage, plan.total - plan.working),
    }


SHAPES: dict[str, Shape] = {
    dome.DOME: dome.lengths_of,
    "cylinder_with_drum": _cylinder_with_drum,
    "tube": _tube,
    "cylinder": _cylinder,
}
