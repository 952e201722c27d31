"""pH from the balance of charges, and how far acidity and ammonia hold the microbes back."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.acid_base import ammonium_constant, carbonic_constant, water_constant
from kilisho.formulas.arrays import Numeric

Array = npt.NDArray[np.float64]

_LARGEST_STEP, _CLOSE_ENOUGH, _MOST_ROUNDS = 2.0, 4e-3, 60


class Equilibria(NamedTuple):
    """Constants of acids and bases in the slurry at its temperature, in mol/m3.

    ``weak`` are those of ammonium and of acetic acid, stacked along the first axis; ``carbonic`` is bicarbonate times hydrogen at 1 atm.
    """

    weak: Array
    carbonic: Numeric
    water: Numeric


def equilibria(temperature: Numeric) -> Equilibria:
    """Constants at a temperature [Cel], 0 to 50.

    Those of ``kilisho.formulas.acid_base``, and acetic acid's pK 4.76 (ADM1, Batstone et al. 2002, from memory).
    """
    ammonium = np.asarray(ammonium_constant(temperature))
    weak = np.stack([ammonium, np.full_like(ammonium, 10.0 ** (3.0 - 4.76))])
    return Equilibria(weak, carbonic_constant(temperature), water_constant(temperature))


def hydrogen(guess: Array, strength: Array, cations: Array, gas_share: Array, constants: Equilibria) -> Array:
    """Hydrogen ions [mol/m3] at which the charges balance.

    Parameters
    ----------
    guess : [mol/m3], above 0; a near one saves rounds.
    strength : total ammonia and acids [mol/m3], stacked along the first axis, at least 0.
    cations : strong cations [mol/m3], at least 0.
    gas_share : carbon dioxide in the gas over the slurry [1], 0 to 1.

    Notes
    -----
    The balance rises all the way with the logarithm of hydrogen, so there is one root; Newton's method in that logarithm with held steps
    finds it; a last step below 0.004 leaves half its square, 0.000004 of pH. The tests hold it against scipy's bracketing solver.
    """
    pull, weak = strength * constants.weak, constants.carbonic * gas_share + constants.water
    positive, found, moving = strength[0] + cations, guess, None
    for _ in range(_MOST_ROUNDS):
        all_forms = found + constants.weak
        bases, anions = pull / all_forms, weak / found
        gap = positive + found - anions - (bases[0] + bases[1])
        bases /= all_forms
        step = gap / ((bases[0] + bases[1] + 1.0) * found + anions)
        if moving is not None:
            step *= moving
        size = np.abs(step)
        furthest = np.maximum.reduce(size, axis=None)
        if furthest > _LARGEST_STEP:
            step = np.clip(step, -_LARGEST_STEP, _LARGEST_STEP)
        found = found / np.exp(step)
        if furthest < _CLOSE_ENOUGH:
            break
        # Who has arrived stays, so that nobody's digits hang on the others of an array.
        moving = size >= _CLOSE_ENOUGH
    return found


def ph_of(ions: Array) -> Array:
    """pH [1] of hydrogen ions [mol/m3]."""
    return 3.0 - np.log10(ions)


def ph_factor(ph: Array, upper: Numeric, lower: Numeric) -> Array:
    """Part of a rate that an acid slurry leaves [1]: 1 from ``upper``, 5 % at ``lower`` (ADM1's form, from memory)."""
    below = np.minimum((ph - upper) / np.subtract(upper, lower), 0.0)
    return np.exp(-3.0 * below * below)


def ammonia_factor(ions: Array, ammonia: Array, ammonium: Numeric, need: Numeric, limit: Numeric) -> Array:
    """Part of the growth that free ammonia and want of nitrogen leave [1].

    Hydrogen ions, total ammonia, the constant of ammonium, the ammonia that halves growth for want of it and the free ammonia that halves
    it, all [mol/m3].
    """
    free = ammonia * ammonium / (ammonium + ions)
    part: Array = ammonia / ((ammonia + need) * (1.0 + free / limit))
    return part
