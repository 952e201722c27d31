"""Slurry that comes in and pushes slurry out: exact for stirred tanks in series."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]


def pour(pools: Array, volume: Array, brought: Array, slurry: Array, working_volume: Array) -> tuple[Array, Array, Array]:
    """Add one feed.

    Parameters
    ----------
    pools : contents of every tank, shape (rows, tanks, farms).
    volume : slurry in the digester [m3], (farms,); the tanks share it evenly.
    brought : contents of the feed, (rows, farms).
    slurry : volume of the feed [m3], (farms,), at least 0.
    working_volume : volume when full [m3], (farms,).

    Returns
    -------
    New pools, new volume, and what has left, (rows, farms).

    Notes
    -----
    While the digester fills, the feed spreads over all tanks and nothing leaves. What comes after flows through: a steady stream through
    stirred tanks has a closed form in the volumes that have passed (the terms of a Poisson distribution), so any volume is exact.
    """
    filling = np.minimum(slurry, working_volume - volume)
    through = slurry - filling
    share = filling / np.where(slurry > 0.0, slurry, 1.0)
    tanks = pools.shape[1]
    filled = pools + (brought * share / tanks)[:, None, :]
    volume = volume + filling
    if not through.any():
        return filled, volume, np.zeros_like(brought)
    passed = through * tanks / np.where(volume > 0.0, volume, 1.0)
    moved = _flushed(filled, brought * (1.0 - share), passed)
    return moved, volume, filled.sum(axis=1) + brought * (1.0 - share) - moved.sum(axis=1)


def _flushed(pools: Array, entering: Array, passed: Array) -> Array:
    """Pools after ``passed`` tank volumes have flowed through; what enters does so at an even strength."""
    tanks = pools.shape[1]
    terms = [np.exp(-passed)]
    for order in range(1, tanks):
        terms.append(terms[-1] * passed / order)
    strength = entering / np.where(passed > 0.0, passed, 1.0)
    moved, reached = np.empty_like(pools), -np.expm1(-passed)
    for tank in range(tanks):
        reached = reached - terms[tank] if tank else reached
        moved[:, tank] = strength * reached + sum(terms[tank - origin] * pools[:, origin] for origin in range(tank + 1))
    return moved
