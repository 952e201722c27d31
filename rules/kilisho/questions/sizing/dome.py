"""The planned dome: its compensation tank, and how the gas pressure rises while it fills."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple

from kilisho.formulas import geometry
from kilisho.formulas.arrays import clip
from kilisho.formulas.dome_pressure import STANDARD_GRAVITY, dome_gas_pressure, level_drop
from kilisho.messages import say
from kilisho.questions.answers import Answer, in_cubic_metres, in_kilopascals, told_in
from kilisho.rulebook import Structure

DOME = "hemisphere_with_tank"
STATEMENT = say("dome-statement")
ROUNDING = 1e-9
QUARTERS = (0.0, 0.25, 0.5, 0.75, 1.0)
in_centimetres_of_water = told_in("pressure", "cm[H2O]", 1)


class Plan(NamedTuple):
    """What dimensions follow from: volumes [m3], density of the slurry [kg/m3] and the structure."""

    total: float
    working: float
    storage: float
    slurry_density: float
    structure: Structure

    def ratio(self, name: str) -> float:
        """A typical proportion of the structure."""
        return self.structure.geometry.ratios[name].typical


@dataclass(frozen=True, slots=True)
class Dome:
    """A hemisphere with a straight-walled compensation tank [m]; the tank takes ``storage`` [m3]."""

    radius: float
    gas_cap_height: float
    tank_depth: float
    storage: float

    @property
    def tank_area(self) -> float:
        """Surface of the tank [m2]."""
        return self.storage / self.tank_depth

    @property
    def most_stored(self) -> float:
        """Gas when full [m3]: what the tank takes, or the dome holds, whichever is less."""
        return min(self.storage, float(geometry.hemisphere_volume(self.radius) - geometry.cap_volume(self.radius, self.gas_cap_height)))

    def pressure(self, stored: float, slurry_density: float) -> float:
        """Gauge pressure [Pa] with ``stored`` [m3] of gas."""
        return stored and float(dome_gas_pressure(stored, self.radius, self.gas_cap_height, self.tank_area, slurry_density))


def dome_of(plan: Plan) -> Dome:
    """The dome of a plan: the tank as deep as is usual, or shallower, to the shallowest that is usual, where the pressure asks for it."""
    ratio = plan.structure.geometry.ratios["tank_depth_to_dome_radius"]
    dome = _with_tank(plan, ratio.typical)
    drop = float(level_drop(dome.most_stored, dome.radius, dome.gas_cap_height))
    # A hair below the limit, so that rounding does not fault what was made to keep it.
    allowed = (1 - ROUNDING) * plan.structure.operating_pressure.most / (plan.slurry_density * STANDARD_GRAVITY) - drop
    return _with_tank(plan, float(clip(allowed / dome.radius, ratio.least, ratio.typical)))


def _with_tank(plan: Plan, depth_to_radius: float) -> Dome:
    radius = float(geometry.hemisphere_radius(plan.total))
    return Dome(radius, float(geometry.cap_height(radius, plan.total - plan.working)), depth_to_radius * radius, plan.storage)


def lengths_of(plan: Plan) -> tuple[dict[str, float], dict[str, float]]:
    """Lengths of the dome [m], and the volumes [m3] that they reproduce."""
    dome = dome_of(plan)
    tank_radius = math.sqrt(dome.tank_area / math.pi)
    lengths = {
        "inner_diameter": 2 * dome.radius,
        "inner_height": dome.radius,
        "slurry_depth": dome.radius - dome.gas_cap_height,
        "gas_space_height": dome.gas_cap_height,
        "compensation_tank_diameter": 2 * tank_radius,
        "compensation_tank_depth": dome.tank_depth,
    }
    gas, whole = float(geometry.cap_volume(dome.radius, dome.gas_cap_height)), float(geometry.hemisphere_volume(dome.radius))
    tank = math.pi * tank_radius**2 * dome.tank_depth
    return lengths, {"total_volume": whole, "working_volume": whole - gas, "gas_storage_volume": tank}


def full_pressure(plan: Plan) -> float:
    """Gauge pressure [Pa] of the planned dome when it is full of gas."""
    dome = dome_of(plan)
    return dome.pressure(dome.most_stored, plan.slurry_density)


def gas_pressure(plan: Plan) -> Answer:
    """Stored gas against gauge pressure; the range of the pressure when full is that of the tanks that are usual."""
    dome, ratio = dome_of(plan), plan.structure.geometry.ratios["tank_depth_to_dome_radius"]
    ends = (_with_tank(plan, depth).pressure(dome.most_stored, plan.slurry_density) for depth in (ratio.least, ratio.most))
    steps = [(part * dome.most_stored, dome.pressure(part * dome.most_stored, plan.slurry_density)) for part in QUARTERS]
    return {
        "when_full": in_kilopascals(steps[-1][1], *ends),
        "limit": in_kilopascals(plan.structure.operating_pressure.most),
        "curve": [
            {
                "stored_gas": in_cubic_metres(stored),
                "gauge_pressure": in_kilopascals(pressure),
                "water_column": in_centimetres_of_water(pressure),
            }
            for stored, pressure in steps
        ],
        "statement": STATEMENT,
    }
