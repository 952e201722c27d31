"""Invented digesters and feeding histories for the tests of the process model, and the model's equations written anew for scipy."""

from __future__ import annotations

from typing import Any

import numpy as np
import numpy.typing as npt
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from kilisho.farm import Shelf
from kilisho.formulas.ammonia import ammonia_pka
from kilisho.packs import load
from kilisho.process import Conditions, Feedstock, History, Parameters, Run, Start, feedstock, mixed, simulate, working_slurry

Array = npt.NDArray[np.float64]

PARAMETERS = Shelf(load().data).process
SOLIDS = 60.0
CATTLE: dict[str, Any] = {
    "biogas_yield": 0.25, "degradation_rate": 0.009, "methane_share": 0.60, "nitrogen": 0.0225, "ammonium_share": 0.60,
    "potassium": 0.01375, "starts_unaided": True, "of_dung": True,
}  # fmt: skip
LAYERS: dict[str, Any] = {
    "biogas_yield": 0.42, "degradation_rate": 0.0078, "methane_share": 0.60, "nitrogen": 0.0743, "ammonium_share": 0.78,
    "potassium": 0.031, "starts_unaided": False, "of_dung": True,
}  # fmt: skip
KITCHEN: dict[str, Any] = {
    "biogas_yield": 0.65, "degradation_rate": 0.0126, "methane_share": 0.60, "nitrogen": 0.030, "ammonium_share": 0.60,
    "potassium": 0.0115, "starts_unaided": False, "of_dung": False, "quick_share": 0.4,
}  # fmt: skip


def of(figures: dict[str, Any], **changes: Any) -> Feedstock:
    """A substrate of these figures, with changes."""
    return feedstock(**{"parameters": PARAMETERS, **figures, **changes})


def cattle(**changes: Any) -> Feedstock:
    """Dairy cattle dung of the base pack, with changes."""
    return of(CATTLE, **changes)


def steady(days: int, volume: float, retention: float, solids: float = SOLIDS) -> tuple[Array, Array]:
    """Solids (days, 1, 1) and slurry (days, 1) of an even daily feed."""
    slurry = np.full((days, 1), volume / retention)
    return solids * slurry[:, None, :], slurry


def charge(days: int, volume: float, solids: float = SOLIDS) -> tuple[Array, Array]:
    """Solids and slurry of one charge on the first day."""
    slurry = np.zeros((days, 1))
    slurry[0] = volume
    return solids * slurry[:, None, :], slurry


def healthy(volume: float = 6.0) -> Start:
    """A full digester in good health, without gas of its own left."""
    return working_slurry(volume, PARAMETERS)


def run_of(  # noqa: PLR0917
    feeds: tuple[Array, Array], temperature: Any = 25.0, start: Start | None = None, feed: Feedstock | None = None, tanks: int = 1,
    substeps: int = 8, volume: Any = 6.0, parameters: Parameters = PARAMETERS,
) -> Run:  # fmt: skip
    """A run of the model on invented conditions."""
    history = History(feed or cattle(), *feeds, start or Start())
    return simulate(history, Conditions(volume, temperature, tanks), parameters, substeps)


def both(first: dict[str, Any], second: dict[str, Any]) -> Feedstock:
    """Two substrates."""
    return mixed(of(first), of(second))


# The equations once more, for one stirred tank and one substrate, as a plain system for scipy: degradable, acids, methanogens, ammonia,
# gas in acids, methane, carbon dioxide, and the share of carbon dioxide in the gas over the slurry.


def hydrogen_by_bracketing(temperature: float, amounts: tuple[float, float, float], gas_share: float) -> float:
    """Hydrogen ions [mol/m3] from the balance of charges by scipy's bracketing solver."""
    nitrogen, cations, acids = amounts
    kelvin = temperature + 273.15
    inverse = 1 / 298.15 - 1 / kelvin
    ammonium = 10 ** (3 - ammonia_pka(temperature))
    carbonic = 35.0 * 1.01325 * np.exp(-19410 / 8.314462618 * inverse) * 10**-3.35 * np.exp(7646 / 8.314462618 * inverse)
    water = 1e-8 * np.exp(55900 / 8.314462618 * inverse)
    acetic = 10**-1.76

    def balance(logarithm: float) -> float:
        ions = np.exp(logarithm)
        return (
            nitrogen * ions / (ions + ammonium) + cations + ions - (carbonic * gas_share + water) / ions - acids * acetic / (ions + acetic)
        )

    return float(np.exp(brentq(balance, -40.0, 12.0, xtol=1e-13)))


def _limit(ph: float, upper: float, lower: float) -> float:
    return float(np.exp(-3 * (min(ph - upper, 0.0) / (upper - lower)) ** 2))


class Reference:
    """One tank, one substrate, one farm by scipy's Radau with tight tolerances."""

    def __init__(self, feed: Feedstock, volume: float, temperature: float, parameters: Parameters) -> None:
        self.feed, self.volume, self.temperature, self.parameters = feed, volume, temperature, parameters
        self.rate = float(feed.rate[0, 0]) * 1.106 ** (temperature - 20)
        self.growth = 0.013 * temperature - 0.129 if temperature >= 15 else 0.066 * np.exp(0.013 / 0.066 * (temperature - 15))
        share = float(feed.methane_share[0, 0])
        self.gas = 0.35 * (1 - parameters.cell_yield) * (1 - share) / share
        self.released = float(feed.releasable[0, 0] / feed.degradable[0, 0])

    def change(self, _time: float, state: Array, cations: float) -> list[float]:
        degradable, acids, cells, ammonia, waiting, _methane, _carbon, over = state
        parameters, held = self.parameters, self.volume
        nitrogen = ammonia / held / 0.014
        ions = hydrogen_by_bracketing(self.temperature, (nitrogen, cations, max(acids, 0.0) / held / 0.064), over)
        ph = 3 - np.log10(ions)
        ammonium = 10 ** (3 - ammonia_pka(self.temperature))
        free = ammonia / held * ammonium / (ammonium + ions)
        forming = self.rate * _limit(ph, 5.5, 4.0) * degradable
        left = _limit(ph, 6.8, 6.0) * nitrogen / (nitrogen + parameters.ammonia_need / 0.014) / (1 + free / parameters.free_ammonia_limit)
        taken = self.growth / parameters.cell_yield * left * cells * acids / (parameters.half_saturation * held + acids)
        grown, gas = parameters.cell_yield * taken, self.gas * forming
        late = waiting * taken / max(acids, 1e-12)
        methane, carbon = 0.35 * (1 - parameters.cell_yield) * taken, gas * 2 / 3 + late
        moved = (carbon - over * (methane + carbon)) / (parameters.gas_held * held)
        decay = parameters.decay_share * self.growth
        released = self.released * forming - 14 / 160 * grown
        return [-forming, forming - taken, grown - decay * cells, released, gas / 3 - late, methane, carbon, moved]

    def days(self, state: Array, cations: float, days: int) -> Array:
        """States at the end of each day without feeding, (days, 8)."""
        told = np.arange(1.0, days + 1.0)
        done = solve_ivp(self.change, (0.0, days), state, "Radau", told, args=(cations,), rtol=1e-8, atol=1e-10)
        assert done.success
        end: Array = done.y.T
        return end
