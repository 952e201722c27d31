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


class Lockstep(NamedTuple):
    """How the farms of a run step through their days together: those that take more steps stand before those that take fewer.

    ``order`` has the farms of each day as they stand, (days, farms); None where they stand as they came. ``turns`` has for each day how
    many steps the first so many farms take together, one after the other until the day is over: pairs of steps and farms.
    """

    order: Steps | None
    turns: list[list[tuple[int, int]]]


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


def scaled(steps: Steps, substeps: int) -> Steps:
    """Steps of each day where the liveliest day takes ``substeps`` of them; 8 takes those given, others as many times more or fewer."""
    return np.maximum(steps * substeps // USUAL, 1)


def lockstep_of(steps: Steps, farms: int) -> Lockstep:
    """How so many farms go through their ``steps``, (days, farms) or (days, 1)."""
    levels = np.unique(steps)
    wide = (steps[:, None, :] >= levels[:, None]).sum(axis=2) * (farms // steps.shape[1])
    further = np.diff(levels, prepend=0).tolist()
    turns = [[(times, width) for times, width in zip(further, row, strict=True) if width] for row in wide.tolist()]
    return Lockstep(_order_of(steps), turns)


def _order_of(steps: Steps) -> Steps | None:
    """Farms by falling steps, moved from one day to the next only as far as the steps ask for it."""
    if (steps == steps[:, :1]).all():
        return None
    order, standing = np.empty_like(steps), np.arange(steps.shape[1])
    for day, row in enumerate(-steps):
        mine = row[standing]
        if (mine[1:] < mine[:-1]).any():
            standing = standing[np.argsort(mine, kind="stable")]
        order[day] = standing
    return order


def moves_of(order: Steps | None) -> dict[int, Steps]:
    """The days on which farms change places, with the places in which they stood until then."""
    if order is None:
        return {}
    before = np.concatenate([np.arange(order.shape[1])[None], order[:-1]])
    return {int(day): np.argsort(before[day])[order[day]] for day in np.flatnonzero((before != order).any(axis=1))}


def in_order(values: Array, order: Steps) -> Array:
    """Values of days and farms (days, ..., farms) with the farms of each day in an ``order``; what serves all farms stays as it is."""
    if values.shape[-1] == 1:
        return values
    return np.take_along_axis(values, order.reshape(order.shape[0], *[1] * (values.ndim - 2), order.shape[1]), axis=-1)


def as_they_came(order: Steps) -> Steps:
    """The order that undoes ``order``."""
    return np.argsort(order, axis=1)
