"""Acids and bases in the slurry: their constants by temperature, and the pH of a digester in good health from its balance of charges."""

from __future__ import annotations

from kilisho.formulas.ammonia import ammonia_pka
from kilisho.formulas.arrays import Numeric, exp, log, most, sqrt
from kilisho.formulas.gas import GAS_CONSTANT
from kilisho.formulas.temperature import saturation_vapour_pressure
from kilisho.quantities import given, quantity

# Kilograms a mole: nitrogen, potassium, and half a mole of calcium carbonate for one of charge.
NITROGEN_MASS, POTASSIUM_MASS, CARBONATE_PER_CHARGE = 0.014, 0.0391, 0.050
STANDARD_PRESSURE = 101325.0
_AT_25 = 298.15
_LN10 = 2.302585092994046
# First constant of carbonic acid at 25 Cel [mol/m3].
_FIRST_AT_25: float = 10.0 ** (3.0 - 6.35)

GIVEN = (
    given("fixed_alkalinity_per_day", "mass_flow", "Alkalinity beside ammonia's that comes with the feed, as calcium carbonate."),
    given("urine_alkalinity_per_day", "mass_flow", "Alkalinity beside ammonia's that comes with the urine, as calcium carbonate."),
    given("slurry_ph_against_balance", "number", "pH of the slurry less that of the ideal balance of its charges."),
)


def ammonium_constant(temperature: Numeric) -> Numeric:
    """Free ammonia times hydrogen over ammonium [mol/m3] at a temperature [Cel], 0 to 50; Emerson et al. 1975."""
    return exp(_LN10 * (3.0 - ammonia_pka(temperature)))


def carbonic_constant(temperature: Numeric) -> Numeric:
    """Bicarbonate times hydrogen under carbon dioxide of 1 atm [mol2/m6] at a temperature [Cel], 0 to 50.

    At 25 Cel 0.035 mol/L/bar and pK 6.35, heats -19.41 and 7.646 kJ/mol (ADM1, Batstone et al. 2002, from memory). Without corrections
    for dissolved salts.
    """
    inverse = _against_25(temperature)
    henry: Numeric = 35.0 * exp(-19410.0 / GAS_CONSTANT * inverse) * STANDARD_PRESSURE / 1e5
    first: Numeric = _FIRST_AT_25 * exp(7646.0 / GAS_CONSTANT * inverse)
    return henry * first


def water_constant(temperature: Numeric) -> Numeric:
    """Hydroxide times hydrogen [mol2/m6] at a temperature [Cel], 0 to 50: pK 14 at 25 Cel, 55.9 kJ/mol (ADM1, from memory)."""
    return 1e-8 * exp(55900.0 / GAS_CONSTANT * _against_25(temperature))


def _against_25(temperature: Numeric) -> Numeric:
    return 1.0 / _AT_25 - 1.0 / (temperature + 273.15)


def buffered_ph(ammonia: Numeric, cations: Numeric, anions: Numeric, ammonium: Numeric) -> Numeric:
    """pH [1] at which ammonium and fixed cations balance bicarbonate and hydroxide, in closed form.

    Parameters
    ----------
    ammonia : total, ammonium and free [mol/m3], at least 0.
    cations : fixed, less the anions of strong acids [mol/m3], at least 0.
    anions : bicarbonate and hydroxide times hydrogen [mol2/m6], above 0.
    ammonium : constant of ammonium [mol/m3].

    Notes
    -----
    Volatile acids, carbonate and hydrogen itself are left out. The acids of a healthy digester would lower pH by 0.01, by 0.05 in a slurry
    of hardly any buffer (pH 6.3); carbonate by 0.002 at pH 7.5 and 0.012 at pH 8.4. Where there is next to no base, hydrogen stands in: no
    slurry is more acid than pure water under the same gas.
    """
    base, linear = most(ammonia + cations, sqrt(anions)), cations * ammonium - anions
    hydrogen = (sqrt(linear * linear + 4.0 * base * anions * ammonium) - linear) / (2.0 * base)
    return 3.0 - log(hydrogen) / _LN10


@quantity("share")
def carbon_dioxide_share(methane_share: Numeric) -> Numeric:
    """Carbon dioxide in the dry biogas, what is not methane [1, of a share in 1]."""
    return 1.0 - methane_share


@quantity("density")
def fixed_alkalinity(fixed_alkalinity_per_day: Numeric, urine_alkalinity_per_day: Numeric, slurry_per_day: Numeric) -> Numeric:
    """Alkalinity of the slurry beside ammonia's, as calcium carbonate, at steady feeding [kg/m3, of flows in kg/d and m3/d]."""
    return (fixed_alkalinity_per_day + urine_alkalinity_per_day) / slurry_per_day


@quantity(
    "number",
    source=("emerson-1975", "adm1-2002"),
    empirical="balance of ammonium, fixed alkalinity and bicarbonate, ideal solution, gas at the pressure of the place; a digester in good "
    "health at steady feeding, 0-50 Cel",
)
def slurry_ph(  # noqa: PLR0913, PLR0917 -- one argument a quantity
    total_ammonia_nitrogen: Numeric,
    fixed_alkalinity: Numeric,
    carbon_dioxide_share: Numeric,
    gas_pressure: Numeric,
    digester_temperature: Numeric,
    slurry_ph_against_balance: Numeric,
) -> Numeric:
    """pH of the slurry in a digester in good health, from its ammonium and fixed alkalinity under its own gas [1].

    The gas's pressure is taken as that of the place [Pa]; a dome's own pressure, a tenth of it at the most, lowers pH by up to 0.04.
    """
    dry = gas_pressure - saturation_vapour_pressure(digester_temperature)
    bicarbonate = carbonic_constant(digester_temperature) * carbon_dioxide_share * dry / STANDARD_PRESSURE
    ideal = buffered_ph(
        total_ammonia_nitrogen / NITROGEN_MASS,
        fixed_alkalinity / CARBONATE_PER_CHARGE,
        bicarbonate + water_constant(digester_temperature),
        ammonium_constant(digester_temperature),
    )
    return ideal + slurry_ph_against_balance
