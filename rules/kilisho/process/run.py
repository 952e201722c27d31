"""What a run of the process model tells."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]

# Volatile acids over alkalinity, acetic acid against calcium carbonate by mass: 0.1 to 0.25 is usual, feeding stops above 0.4 (published).
ACID_RATIO_WATCH, ACID_RATIO_STOP = 0.3, 0.4


@dataclass(frozen=True, slots=True, eq=False)
class Run:
    """Results by day and farm, shape (days, farms): flows over the day, contents at its end.

    Attributes
    ----------
    biogas : moist gas as used, at the temperature of the slurry and 101325 Pa [m3/d].
    biogas_normal, methane : dry gas at 0 Cel and 101325 Pa [m3/d].
    acids, methanogens : mean of the tanks, as chemical oxygen demand [kg/m3].
    ph, lowest_ph : mean and most acid tank [1]; NaN in an empty digester.
    ammonia, free_ammonia : nitrogen [kg/m3], mean, and that of the tank with most free ammonia.
    acid_ratio : acids (as acetic acid) over alkalinity (as calcium carbonate), worst tank [1]; see ``ACID_RATIO_WATCH``.
    growth_left : part of the methanogens' growth that pH and ammonia leave, worst tank [1].
    temperature : [Cel]. volume : slurry in the digester [m3]. outflow : slurry that left [m3/d].
    degradable : chemical oxygen demand still to be degraded, acids included [kg].
    cod_in, cod_as_methane, cod_out, cod_held : balance of chemical oxygen demand [kg, flows a day]; ``cod_start`` before the first day.
    nitrogen_in, nitrogen_out, nitrogen_held : balance of nitrogen [kg, flows a day]; ``nitrogen_start`` before the first day.
    ammonia_out : ammonia nitrogen in the slurry that left [kg/d].
    """

    biogas: Array
    biogas_normal: Array
    methane: Array
    acids: Array
    methanogens: Array
    ph: Array
    lowest_ph: Array
    ammonia: Array
    free_ammonia: Array
    acid_ratio: Array
    growth_left: Array
    temperature: Array
    volume: Array
    outflow: Array
    degradable: Array
    cod_in: Array
    cod_as_methane: Array
    cod_out: Array
    cod_held: Array
    nitrogen_in: Array
    nitrogen_out: Array
    nitrogen_held: Array
    ammonia_out: Array
    cod_start: Array
    nitrogen_start: Array

    @property
    def methane_share(self) -> Array:
        """Methane in the gas of the day [1]; NaN on a day without gas."""
        made = self.biogas_normal > 0.0
        return np.where(made, self.methane / np.where(made, self.biogas_normal, 1.0), np.nan)


def cod_gap(run: Run) -> Array:
    """What the balance of chemical oxygen demand leaves open after each day, as a share of all that came in [1]."""
    flows = run.cod_in - run.cod_as_methane - run.cod_out
    return _gap(run.cod_start, flows, run.cod_held, run.cod_in)


def nitrogen_gap(run: Run) -> Array:
    """What the balance of nitrogen leaves open after each day, as a share of all that came in [1]."""
    return _gap(run.nitrogen_start, run.nitrogen_in - run.nitrogen_out, run.nitrogen_held, run.nitrogen_in)


def _gap(start: Array, flows: Array, held: Array, entered: Array) -> Array:
    total = np.maximum(start + np.cumsum(entered, axis=0), 1e-12)
    gap: Array = np.abs(start + np.cumsum(flows, axis=0) - held) / total
    return gap
