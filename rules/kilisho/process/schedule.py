"""How many steps each day takes.

Acids that pile up and are caught up with need short steps; a digester in its routine does with one a day. Which is which is told from the
feeds and the temperature alone, so that no farm's result hangs on the others of its run. The tests hold days against halved steps.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.kinetics import temperature_corrected_rate
from kilisho.process.history import History
from kilisho.process.parameters import Parameters, growth_rate

Array = npt.NDArray[np.float64]
Steps = npt.NDArray[np.intp]

# All found by halving steps until days moved by about a thousandth. A charge is a feed of that much of the slurry, or of that
# much chemical oxygen demand in it [kg/m3]; methanogens have caught up with it after so many foldings by e of their greatest growth, and
# are in their routine after so many; in between, steps halve with every two foldings.
CHARGE_SHARE, CHARGE_STRENGTH, FOLDINGS_TO_CATCH_UP, FOLDINGS_TO_ROUTINE = 0.3, 15.0, 5.0, 9.5
# The first days of a run and of a charge, at most so many and so many foldings.
FRESH_DAYS, FRESH_FOLDINGS = 4, 0.8
# Acids that a feed yields on its first day, beyond what is usual [kg/m3], from which on 2, 4 and 8 steps are taken. Usual is the mean of
# so many days before, but a share of the dose always counts.
DOSES, USUAL_DAYS, LEAST_SHARE = (0.011, 0.05, 0.18), 7, 0.4
# Steps for a rate of growth of 1/d while acids are caught up with: 8 a day at 30 Cel. Numbers of steps are powers of two, so that farms
# of much the same pace step together.
STEPS_PER_GROWTH, USUAL = 30.0, 8


class Share(NamedTuple):
    """Farms that take so many steps on a day; None for all."""

    steps: int
    farms: npt.NDArray[np.intp] | None


def steps_of(history: History, volume: Array, temperature: Array, parameters: Parameters, tanks: int) -> Steps:
    """Steps of each day, (days, farms) or (days, 1) for all farms.

    ``volume`` is the slurry after the day's feed [m3], (days, farms), ``temperature`` [Cel], (days, farms) or (days, 1).
    """
    growth = np.asarray(growth_rate(temperature, parameters.growth_factor))
    foldings = np.cumsum(growth, axis=0)
    slow, quick = _doses(history, np.maximum(volume, 1e-12), temperature)
    charged = _charged(history.slurry, volume, slow[0] + quick)
    age = foldings - np.maximum.accumulate(np.where(charged, foldings - growth, -np.inf), axis=0)
    days = np.arange(volume.shape[0])[:, None]
    since = days - np.maximum.accumulate(np.where(charged, days, 0), axis=0)
    easier = 2.0 ** (0.5 * np.minimum(FOLDINGS_TO_CATCH_UP - age, 0.0))
    catching_up = np.where(age <= FOLDINGS_TO_ROUTINE, _power_of_two(STEPS_PER_GROWTH * growth * easier), 1)
    fresh = np.where((since < FRESH_DAYS) & (np.minimum(age, foldings) <= FRESH_FOLDINGS), USUAL, 1)
    fed = 2 ** np.searchsorted(DOSES, _remembered(tanks * _unusual(slow[1] + quick), foldings), side="right")
    return _shared(np.maximum(np.maximum(catching_up, fresh), fed))


def _doses(history: History, volume: Array, temperature: Array) -> tuple[tuple[Array, Array], Array]:
    """Of each day's feed: what degrades slowly and what of it does on the first day, and what sours at once [kg/m3]."""
    feed = history.feedstock
    demand = history.volatile_solids * feed.degradable
    rate = np.asarray(temperature_corrected_rate(feed.rate, temperature[:, None]))
    slow = demand * (1.0 - feed.quick_share)
    whole, first_day, quick = (part.sum(axis=1) / volume for part in (slow, slow * rate, demand * feed.quick_share))
    return (whole, first_day), quick


def _charged(slurry: Array, volume: Array, strength: Array) -> npt.NDArray[np.bool_]:
    return (slurry >= CHARGE_SHARE * volume) & (slurry > 0.0) | (strength >= CHARGE_STRENGTH)


def _unusual(dose: Array) -> Array:
    """The part of each dose that the days before it did not bring."""
    summed = np.cumsum(np.concatenate([np.zeros_like(dose[:1]), dose]), axis=0)[:-1]
    before = np.concatenate([np.zeros_like(dose[:USUAL_DAYS]), summed])[: dose.shape[0]]
    unusual: Array = np.maximum(dose - (summed - before) / USUAL_DAYS, LEAST_SHARE * dose)
    return unusual


def _remembered(dose: Array, foldings: Array) -> Array:
    """The greatest dose so far, each less by what the growth since makes up for."""
    tiny = np.finfo(np.float64).tiny
    greatest = np.maximum.accumulate(np.log(np.maximum(dose, tiny)) + foldings, axis=0)
    remembered: Array = np.exp(greatest - foldings)
    return remembered


def _power_of_two(number: Array) -> Steps:
    return np.asarray(2 ** np.ceil(np.log2(np.maximum(number, 2.0))), dtype=np.intp)


def _shared(steps: Steps) -> Steps:
    return steps[:, :1] if (steps == steps[:, :1]).all() else steps


def shares_of(steps: Steps, substeps: int) -> list[list[Share]]:
    """The farms of each day by their number of steps; ``substeps`` of 8 takes those given, others as many times more or fewer."""
    steps = np.maximum(steps * substeps // USUAL, 1)
    same = (steps == steps[:, :1]).all(axis=1)
    return [[Share(int(row[0]), None)] if alike else _shares(row) for row, alike in zip(steps, same, strict=True)]


def _shares(row: Steps) -> list[Share]:
    return [Share(int(steps), np.flatnonzero(row == steps)) for steps in np.unique(row)]
