"""Writes down the days of a run as they pass."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from kilisho.formulas.digester import SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.process.accounts import nitrogen_in, oxygen_demand
from kilisho.process.acidity import Equilibria, ph_of
from kilisho.process.parameters import METHANE_PER_COD, NITROGEN_MASS, Parameters
from kilisho.process.run import Run
from kilisho.process.state import ACIDS, AMMONIA, METHANOGENS, Contents, State, settle

Array = npt.NDArray[np.float64]

# 60 kg of acetic acid to a kilomole of acids, 50 kg of calcium carbonate to a kilomole of charge.
_ACETIC_PER_CHARGE = 60.0 / 50.0
_EMPTY = 1e-12
_DERIVED = ("biogas", "temperature", "cod_as_methane", "cod_start", "nitrogen_start")


class Record:
    """Arrays (days, farms) of one run that fill up day by day."""

    def __init__(self, temperature: Array, farms: int, figures: Contents, parameters: Parameters, state: State) -> None:
        self._parameters = parameters
        self._days = {name: np.zeros((temperature.shape[0], farms)) for name in Run.__slots__ if name not in _DERIVED}
        self._temperature, self._figures = np.broadcast_to(temperature, (temperature.shape[0], farms)), figures
        held, self._first_volume = state.pools.sum(axis=1), state.volume
        self._start = oxygen_demand(held), nitrogen_in(held, figures)

    def feed(self, day: int, brought: Array, left: Array, slurry: Array) -> None:
        """A feed: rows (rows, farms) that came and that left, and its volume; ``close`` turns that into what ran out."""
        days = self._days
        days["cod_in"][day], days["cod_out"][day] = oxygen_demand(brought), oxygen_demand(left)
        days["nitrogen_in"][day], days["nitrogen_out"][day] = nitrogen_in(brought, self._figures), nitrogen_in(left, self._figures)
        days["ammonia_out"][day], days["outflow"][day] = left[AMMONIA], slurry

    def close(self, day: int, state: State, constants: Equilibria, methane: Array, carbon_dioxide: Array) -> None:
        """The end of a day, with its gas [normal m3], (farms,)."""
        settle(state, constants, self._parameters)
        days, held = self._days, state.pools.sum(axis=1)
        volume = np.maximum(state.volume, _EMPTY)
        days["methane"][day], days["biogas_normal"][day], days["volume"][day] = methane, methane + carbon_dioxide, state.volume
        for name, row in (("acids", ACIDS), ("methanogens", METHANOGENS), ("ammonia", AMMONIA)):
            days[name][day] = held[row] / volume
        days["degradable"][day] = held[: ACIDS + 1].sum(axis=0)
        days["cod_held"][day], days["nitrogen_held"][day] = oxygen_demand(held), nitrogen_in(held, self._figures)
        days["growth_left"][day] = state.growth.min(axis=0)
        self._acidity(day, state, constants)

    def _acidity(self, day: int, state: State, constants: Equilibria) -> None:
        total, cations, acids = state.charges(state.pools[ACIDS])
        free = constants.ammonium / (constants.ammonium + state.ions)
        alkalinity = cations + total * (1.0 - free)
        ph, full = ph_of(state.ions), state.volume > 0.0
        days = self._days
        days["ph"][day], days["lowest_ph"][day] = np.where(full, ph.mean(axis=0), np.nan), np.where(full, ph.min(axis=0), np.nan)
        days["free_ammonia"][day] = (NITROGEN_MASS * total * free).max(axis=0)
        days["acid_ratio"][day] = (_ACETIC_PER_CHARGE * acids / np.maximum(alkalinity, _EMPTY)).max(axis=0)

    def told(self) -> Run:
        """The finished run."""
        days, temperature = self._days, self._temperature
        volume = days["volume"]
        before = np.concatenate([volume[:1] * 0.0 + self._first_volume, volume[:-1]])
        days["outflow"] += before - volume
        biogas = days["biogas_normal"] / np.asarray(normal_factor(temperature, SEA_LEVEL_PRESSURE))
        cod_start, nitrogen_start = self._start
        methane = days["methane"] / METHANE_PER_COD
        return Run(
            biogas=biogas, temperature=temperature, cod_as_methane=methane, cod_start=cod_start, nitrogen_start=nitrogen_start, **days
        )
