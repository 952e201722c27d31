"""Carrying: whole containers, trips and hours."""

from __future__ import annotations

import math

from kilisho.formulas.arrays import Numeric


def whole_containers(volume: float, container_volume: float) -> int:
    """Containers of ``container_volume`` [m3] that hold ``volume`` [m3], rounded up (a rounding error is not a container)."""
    return math.ceil(volume / container_volume - 1e-9)


def carrying_hours(trips: Numeric, distance: Numeric, speed: Numeric, handling_time: Numeric) -> Numeric:
    """Person-hours for ``trips`` return trips over ``distance`` [m] at ``speed`` [m/s] with ``handling_time`` [s] each."""
    return trips * (2 * distance / speed + handling_time) / 3600
