"""pH from the balance of charges, and how far acidity and ammonia hold the microbes back."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.ammonia import ammonia_pka
from kilisho.formulas.arrays import Numeric
from kilisho.formulas.gas import GAS_CONSTANT
from kilisho.process.parameters import NITROGEN_MASS, Parameters

Array = npt.NDArray[np.float64]

_AT_25 = 298.15
_STANDARD_PRESSURE = 101325.0
_LARGEST_STEP, _CLOSE_ENOUGH, _MOST_ROUNDS = 2.0, 1e-3, 60
_LN10 = 2.302585092994046


class Equilibria(NamedTuple):
    """Constants of acids and bases in the slurry at its temperature, in mol/m3; ``carbonic`` is bicarbonate times hydrogen at 1 atm."""

    ammonium: Numeric
    carbonic: Numeric
    acids: float
    water: Numeric


def equilibria(temperature: Numeric) -> Equilibria:
    """Constants at a temperature [Cel], 0 to 50.

    Ammonium after Emerson et al. 1975. Carbon dioxide at 25 Cel: 0.035 mol/L/bar and pK 6.35, heats -19.41 and 7.646 kJ/mol; water pK 14,
    55.9 kJ/mol; acetic acid pK 4.76 (ADM1, Batstone et al. 2002, from memory). Without corrections for dissolved salts.
    """
    inverse = 1.0 / _AT_25 - 1.0 / (np.add(temperature, 273.15))
    henry = 35.0 * np.exp(-19410.0 / GAS_CONSTANT * inverse) * _STANDARD_PRESSURE / 1e5
    first = 10.0 ** (3.0 - 6.35) * np.exp(7646.0 / GAS_CONSTANT * inverse)
    water = 10.0 ** (6.0 - 14.0) * np.exp(55900.0 / GAS_CONSTANT * inverse)
    return Equilibria(10.0 ** (3.0 - np.asarray(ammonia_pka(temperature))), henry * first, 10.0 ** (3.0 - 4.76), water)


def hydrogen(guess: Array, charges: tuple[Array, Array, Array], gas_share: Array, constants: Equilibria) -> Array:
    """Hydrogen ions [mol/m3] at which the charges balance.

    Parameters
    ----------
    guess : [mol/m3], above 0; a near one saves rounds.
    charges : total ammonia, strong cations and acids [mol/m3], each at least 0.
    gas_share : carbon dioxide in the gas over the slurry [1], 0 to 1.

    Notes
    -----
    The balance rises all the way with the logarithm of hydrogen, so there is one root; Newton's method in that logarithm with held steps
    finds it; a last step below 0.001 leaves an error of its square, a millionth. The tests hold it against scipy's bracketing solver.
    """
    total, cations, acids = charges
    weak, strong = constants.carbonic * gas_share + constants.water, acids * constants.acids
    found = guess
    for _ in range(_MOST_ROUNDS):
        base, acid = 1.0 / (found + constants.ammonium), 1.0 / (found + constants.acids)
        ammonium, anions, weak_ions = total * found * base, strong * acid, weak / found
        slope = ammonium * constants.ammonium * base + found * (1.0 + anions * acid) + weak_ions
        step = (ammonium + cations + found - weak_ions - anions) / slope
        furthest = np.abs(step).max()
        if furthest > _LARGEST_STEP:
            step = np.clip(step, -_LARGEST_STEP, _LARGEST_STEP)
        found = found * np.exp(-step)
        if furthest < _CLOSE_ENOUGH:
            break
    return found


def ph_of(ions: Array) -> Array:
    """pH [1] of hydrogen ions [mol/m3]."""
    return 3.0 - np.log10(ions)


def ph_factor(ph: Array, upper: Numeric, lower: Numeric) -> Array:
    """Part of a rate that an acid slurry leaves [1]: 1 from ``upper``, 5 % at ``lower`` (ADM1's form, from memory)."""
    below = np.minimum((ph - upper) / np.subtract(upper, lower), 0.0)
    return np.exp(-3.0 * below * below) if below.any() else np.ones_like(ph)


def growth_factor(ph: Array, ions: Array, total_ammonia: Array, constants: Equilibria, parameters: Parameters) -> Array:
    """Part of the methanogens' growth that pH, free ammonia and want of nitrogen leave [1]; ``ions`` belong to ``ph``, ammonia [mol/m3]."""
    free = total_ammonia * NITROGEN_MASS * constants.ammonium / (constants.ammonium + ions)
    need = parameters.ammonia_need / NITROGEN_MASS
    ammonia = total_ammonia / (total_ammonia + need) / (1.0 + free / parameters.free_ammonia_limit)
    return ph_factor(ph, parameters.upper_ph, parameters.lower_ph) * ammonia
