"""The parameters of the process model, the growth rate of the methanogens, and the constants of chemistry that no one chooses."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from kilisho.formulas.arrays import Numeric
from kilisho.formulas.kinetics import greatest_growth_rate

# Normal cubic metres of methane for one kilogram of chemical oxygen demand: 22.4 m3/kmol over 64 kg/kmol.
METHANE_PER_COD = 0.35
# C5H7NO2: 14 kg of nitrogen to 160 kg of chemical oxygen demand.
NITROGEN_IN_CELLS = 14.0 / 160.0
# Kilograms of oxygen demand a mole of acetic acid.
ACID_MASS = 0.064
LINE_ENDS = 15.0


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Parameters:
    """What the model must be told of microbes and feeds; each a number or one number a farm, (farms,), all at least 0.

    The base pack's section ``process`` holds their values with range, basis and source under the same names.

    Attributes
    ----------
    growth_factor : multiplies ``greatest_growth_rate`` [1], above 0.
    cell_yield : cells grown per acids taken up, both as chemical oxygen demand [1], above 0, below 1.
    half_saturation : acids at half the growth [kg/m3 of chemical oxygen demand], above 0.
    decay_share : decay as a share of the greatest growth rate [1], above 0.
    free_ammonia_limit : free ammonia nitrogen that halves growth [kg/m3], above 0.
    upper_ph, lower_ph : pH at which growth begins to fall, and at which 5 % of it is left [1]; the upper is the higher.
    acidifiers_upper_ph, acidifiers_lower_ph : the same for the forming of acids [1]; not above those of growth.
    ammonia_need : ammonia nitrogen that halves growth for want of it [kg/m3].
    early_gas_share : part of the carbon dioxide that comes as acids are formed [1], 0 to 1.
    gas_held : gas volume of carbon dioxide dissolved per volume of slurry under that gas [1], above 0.
    oxygen_demand : chemical oxygen demand of volatile solids [kg/kg]; only sets what passes through undigested.
    methanogens_of_ruminants, methanogens_of_others : in the volatile solids of fresh feed, as chemical oxygen demand [kg/kg].
    base_of_dung, base_of_others : positive charge that no chloride or sulphate balances, over that of potassium [1].
    early_ammonium_share : ammonium in the nitrogen of the fresh feed over that after digestion [1], 0 to 1.
    slurry_methanogens, slurry_acids : in working cattle slurry, as chemical oxygen demand [kg/m3].
    slurry_ammonia : nitrogen as ammonia in it [kg/m3].
    slurry_fixed_alkalinity : alkalinity in it that is not ammonia's, as calcium carbonate [kg/m3].
    """

    growth_factor: Numeric
    cell_yield: Numeric
    half_saturation: Numeric
    decay_share: Numeric
    free_ammonia_limit: Numeric
    upper_ph: Numeric
    lower_ph: Numeric
    acidifiers_upper_ph: Numeric
    acidifiers_lower_ph: Numeric
    ammonia_need: Numeric
    early_gas_share: Numeric
    gas_held: Numeric
    oxygen_demand: Numeric
    methanogens_of_ruminants: Numeric
    methanogens_of_others: Numeric
    base_of_dung: Numeric
    base_of_others: Numeric
    early_ammonium_share: Numeric
    slurry_methanogens: Numeric
    slurry_acids: Numeric
    slurry_ammonia: Numeric
    slurry_fixed_alkalinity: Numeric


def growth_rate(temperature: Numeric, growth_factor: Numeric) -> Numeric:
    """Greatest growth rate of the methanogens [1/d] at a temperature [Cel], 0 to 45; above 0 and rising with it.

    ``growth_factor`` times ``greatest_growth_rate``; below 15 Cel that line is carried on as an exponential with the same value and slope
    (judgement), which leaves 0.025 1/d at 10 Cel.
    """
    at_end = greatest_growth_rate(LINE_ENDS)
    slope = greatest_growth_rate(LINE_ENDS + 1.0) - at_end
    tail = at_end * np.exp(slope / at_end * np.minimum(np.subtract(temperature, LINE_ENDS), 0.0))
    line = greatest_growth_rate(np.maximum(temperature, LINE_ENDS))
    rate: Numeric = growth_factor * np.where(np.less(temperature, LINE_ENDS), tail, line)
    return rate
