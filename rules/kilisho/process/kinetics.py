"""The parameters of the process model, each with its unit, source, basis and range, and the growth rate of the methanogens."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from kilisho.formulas.arrays import Numeric
from kilisho.formulas.kinetics import greatest_growth_rate

# Normal cubic metres of methane for one kilogram of chemical oxygen demand: 22.4 m3/kmol over 64 kg/kmol.
METHANE_PER_COD = 0.35
# C5H7NO2: 14 kg of nitrogen to 160 kg of chemical oxygen demand.
NITROGEN_IN_CELLS = 14.0 / 160.0
ACID_MASS = 0.064
NITROGEN_MASS = 0.014
LINE_ENDS = 15.0


@dataclass(frozen=True, slots=True, eq=False)
class Kinetics:
    """Rates and limits of the methanogens; each a number or one number a farm.

    ADM1 is Batstone et al. 2002, the anaerobic digestion model of the International Water Association; AM2 is Bernard et al. 2001.

    Attributes
    ----------
    growth_factor : multiplies ``greatest_growth_rate`` (Hashimoto 1981: 0.013 T - 0.129, 1/d) [1]; range 0.7 to 1.3. From memory.
        Below 15 Cel the line is carried on as an exponential with the same value and slope (judgement): 0.025 1/d at 10 Cel.
    cell_yield : cells grown per acids taken up, both as chemical oxygen demand [1]; ADM1 0.05, range 0.03 to 0.08. From memory.
    half_saturation : acids at half the growth [kg/m3 of chemical oxygen demand]; AM2 9.28 mmol/L, 0.6; ADM1 0.15 for acetate alone.
        From memory.
    decay_share : decay as a share of the greatest growth rate [1]; ADM1 0.02 over 0.4 1/d, 0.05; range 0.02 to 0.1. Derived.
    free_ammonia_limit : free ammonia nitrogen that halves growth [kg/m3]; 0.26 (Angelidaki et al. 1993, from memory); ADM1 has 0.025 for
        cultures that never met ammonia, adapted ones bear 0.8.
    upper_ph, lower_ph : pH at which growth begins to fall, and at which 5 % of it is left [1]; ADM1 7 and 6 (from memory). 6.8 is where
        practice sees the first harm and 6.0 where it gives the charge up, which a lumped population bears out better (common practice).
    acidifiers_upper_ph, acidifiers_lower_ph : the same for the forming of acids [1]; ADM1 5.5 and 4. From memory.
    ammonia_need : ammonia nitrogen that halves growth for want of it [kg/m3]; ADM1 0.0014. From memory.
    early_gas_share : part of the carbon dioxide that comes as acids are formed [1]; two of three molecules for glucose by way of acetate
        and hydrogen. Derived; range 0.3 to 0.7.
    gas_held : gas volume of carbon dioxide dissolved per volume of slurry under that gas [1]; 0.8 at 25 Cel. From memory.
    """

    growth_factor: Numeric = 1.0
    cell_yield: Numeric = 0.05
    half_saturation: Numeric = 0.6
    decay_share: Numeric = 0.05
    free_ammonia_limit: Numeric = 0.26
    upper_ph: Numeric = 6.8
    lower_ph: Numeric = 6.0
    acidifiers_upper_ph: Numeric = 5.5
    acidifiers_lower_ph: Numeric = 4.0
    ammonia_need: Numeric = 0.0014
    early_gas_share: Numeric = 2.0 / 3.0
    gas_held: Numeric = 0.8


def growth_rate(temperature: Numeric, kinetics: Kinetics) -> Numeric:
    """Greatest growth rate of the methanogens [1/d] at a temperature [Cel], 0 to 45; above 0 and rising with it."""
    at_end = greatest_growth_rate(LINE_ENDS)
    slope = greatest_growth_rate(LINE_ENDS + 1.0) - at_end
    tail = at_end * np.exp(slope / at_end * np.minimum(np.subtract(temperature, LINE_ENDS), 0.0))
    line = greatest_growth_rate(np.maximum(temperature, LINE_ENDS))
    rate: Numeric = kinetics.growth_factor * np.where(np.less(temperature, LINE_ENDS), tail, line)
    return rate
