"""Keeps what a run passes through, and works out what it tells once it is over, for all days at once."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import NITROGEN_MASS
from kilisho.formulas.digester import SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.process.accounts import nitrogen_in, oxygen_demand
from kilisho.process.acidity import Equilibria, ammonia_factor, hydrogen, ph_factor, ph_of
from kilisho.process.flow import Flow
from kilisho.process.parameters import ACID_MASS, METHANE_PER_COD
from kilisho.process.run import Run
from kilisho.process.schedule import Steps, as_they_came, in_order
from kilisho.process.state import ACIDS, AMMONIA, CATIONS, INERT, METHANOGENS, State
from kilisho.process.traits import Traits

Array = npt.NDArray[np.float64]

# 60 kg of acetic acid to a kilomole of acids, 50 kg of calcium carbonate to a kilomole of charge.
_ACETIC_PER_CHARGE = 60.0 / 50.0
_EMPTY = 1e-12


class Course(NamedTuple):
    """What is known before the first day: temperature [Cel], slurry fed [m3], rows brought and gas of what sours at once, by days."""

    temperature: Array
    slurry: Array
    flow: Flow
    brought: Array
    quick_gas: Array
    constants: Equilibria
    traits: Traits


class Record:
    """Contents at the end of each day (days, rows, tanks, farms), what left with the feeds (days, rows, farms), gas (2, days, farms)."""

    def __init__(self, days: int, state: State) -> None:
        rows, tanks, farms = state.pools.shape
        self.first = state.pools.sum(axis=1)[None]
        self.pools, self.left = np.empty((days, rows, tanks, farms)), np.zeros((days, rows, farms))
        self.ions, self.gas_share = np.empty((days, tanks, farms)), np.empty((days, tanks, farms))
        self.gas = np.empty((2, days, farms))

    def feed(self, day: int, before: Array, brought: Array, after: Array) -> None:
        """A feed: contents (rows, tanks, farms) before and after it, and what came, (rows, farms)."""
        self.left[day] = (before - after).sum(axis=1) + brought

    def restore(self, order: Steps) -> None:
        """Put the farms of each day back as they came from the ``order`` in which they stood."""
        back = as_they_came(order)
        for name in ("pools", "left", "ions", "gas_share"):
            setattr(self, name, in_order(getattr(self, name), back))
        self.gas = np.stack([in_order(part, back) for part in self.gas])

    def close(self, day: int, state: State) -> None:
        """The end of a day."""
        self.pools[day], self.ions[day], self.gas_share[day] = state.pools, state.ions, state.gas_share
        state.methane.sum(axis=0, out=self.gas[0, day])
        state.carbon_dioxide.sum(axis=0, out=self.gas[1, day])


def told(record: Record, course: Course) -> Run:
    """The finished run."""
    return Run(**_flows(record, course), **_contents(record, course), **_balances(record, course), **_acidity(record, course))


def _flows(record: Record, course: Course) -> dict[str, Array]:
    methane, volume = record.gas[0], course.flow.volume
    normal = methane + record.gas[1] + course.quick_gas
    filled = np.diff(volume, axis=0, prepend=course.flow.start[None])
    return {
        "biogas": normal / np.asarray(normal_factor(course.temperature, SEA_LEVEL_PRESSURE)),
        "biogas_normal": normal,
        "methane": methane,
        "temperature": np.broadcast_to(course.temperature, volume.shape),
        "volume": volume,
        "outflow": course.slurry - filled,
    }


def _contents(record: Record, course: Course) -> dict[str, Array]:
    held, volume = record.pools.sum(axis=2), np.maximum(course.flow.volume, _EMPTY)
    strengths = {"acids": held[:, ACIDS], "methanogens": held[:, METHANOGENS], "ammonia": held[:, AMMONIA]}
    degradable = held[:, :INERT].sum(axis=1) + held[:, ACIDS]
    return {name: row / volume for name, row in strengths.items()} | {"degradable": degradable}


def _balances(record: Record, course: Course) -> dict[str, Array]:
    held, releasable = record.pools.sum(axis=2), course.traits.release[3, :, 0]
    parts = {"in": course.brought, "out": record.left, "held": held, "start": record.first}
    demand = {f"cod_{name}": oxygen_demand(rows) for name, rows in parts.items()}
    nitrogen = {f"nitrogen_{name}": nitrogen_in(rows, releasable) for name, rows in parts.items()}
    both = demand | nitrogen | {"cod_as_methane": record.gas[0] / METHANE_PER_COD, "ammonia_out": record.left[:, AMMONIA]}
    return both | {name: both[name][0] for name in ("cod_start", "nitrogen_start")}


def _acidity(record: Record, course: Course) -> dict[str, Array]:
    traits, constants, tanks = course.traits, course.constants, record.ions.shape[1]
    held = np.maximum(course.flow.volume / tanks, _EMPTY)[:, None]
    total, cations, acids = (
        record.pools[:, row] / (held * unit) for row, unit in ((AMMONIA, NITROGEN_MASS), (CATIONS, 1.0), (ACIDS, ACID_MASS))
    )
    by_kind = constants._replace(weak=np.moveaxis(constants.weak, 1, 0))
    ions = hydrogen(record.ions, np.stack([total, acids]), cations, record.gas_share, by_kind)
    ph, full = ph_of(ions), course.flow.volume > 0.0
    free = by_kind.weak[0] / (by_kind.weak[0] + ions)
    left = ph_factor(ph, traits.upper_ph, traits.lower_ph) * ammonia_factor(
        ions, total, by_kind.weak[0], traits.ammonia_need, traits.ammonia_limit
    )
    return {
        "ph": np.where(full, ph.mean(axis=1), np.nan),
        "lowest_ph": np.where(full, ph.min(axis=1), np.nan),
        "free_ammonia": (NITROGEN_MASS * total * free).max(axis=1),
        "acid_ratio": (_ACETIC_PER_CHARGE * acids / np.maximum(cations + total * (1.0 - free), _EMPTY)).max(axis=1),
        "growth_left": left.min(axis=1),
    }
