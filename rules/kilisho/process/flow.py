"""Slurry that comes in and pushes slurry out: exact for stirred tanks in series."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]


class Flow(NamedTuple):
    """What the feeds of every day do.

    ``start`` is the slurry in the digester before the first day [m3], (farms,), ``volume`` that after the feed [m3], (days, farms); the
    tanks share it evenly. ``moved`` is the part of a tank's
    contents that the feed leaves in it, moves to the next tank, and so on [1], and ``spread`` the part of the feed that ends in each tank
    [1], both (days, tanks, farms).
    """

    start: Array
    volume: Array
    moved: Array
    spread: Array


def flow_of(slurry: Array, start: Array, working_volume: Array, tanks: int) -> Flow:
    """Flow for feeds [m3], (days, farms) at least 0, into a digester that holds ``start`` [m3] of a ``working_volume`` [m3], (farms,).

    While the digester fills, the feed spreads over all tanks and nothing leaves. What comes after flows through: a steady stream through
    stirred tanks has a closed form in the volumes that have passed (the terms of a Poisson distribution), so any volume is exact.
    """
    volume = np.minimum(start + np.cumsum(slurry, axis=0), working_volume)
    filling = np.minimum(np.diff(volume, axis=0, prepend=np.broadcast_to(start, volume[:1].shape)), slurry)
    share = filling / np.where(slurry > 0.0, slurry, 1.0)
    passed = (slurry - filling) * tanks / np.where(volume > 0.0, volume, 1.0)
    terms = [np.exp(-passed)]
    for order in range(1, tanks):
        terms.append(terms[-1] * passed / order)
    moved = np.stack(terms, axis=1)
    still = np.cumsum(moved, axis=1)
    beyond = np.concatenate([-np.expm1(-passed)[:, None], 1.0 - still[:, :-1] - moved[:, 1:]], axis=1)
    entered = np.where(slurry > 0.0, 1.0 - share, 0.0) / np.where(passed > 0.0, passed, 1.0)
    return Flow(start, volume, moved, entered[:, None] * beyond + (share / tanks)[:, None] * still)


def pour(pools: Array, brought: Array, moved: Array, spread: Array) -> Array:
    """Contents (rows, tanks, farms) after a feed of ``brought`` (rows, farms); ``moved`` and ``spread`` are those of the day."""
    after: Array = pools * moved[0] + brought[:, None] * spread
    for step in range(1, pools.shape[1]):
        after[:, step:] += pools[:, :-step] * moved[step]
    return after
