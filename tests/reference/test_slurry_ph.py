"""pH of slurry in good health, against scipy's bracketing solver on the whole balance, recalled constants, and a chart of the trade.

Plummer and Busenberg 1982 (Geochim. Cosmochim. Acta 46) fitted the constants of carbon dioxide in water; their coefficients are recalled,
to be confirmed. Ours carry the values at 25 Cel on with a fixed heat, so they part from theirs by 0.02 of the logarithm where digesters
work and by 0.08 at freezing point, the bound asserted here.

The chart of bicarbonate alkalinity, carbon dioxide and pH that handbooks of sludge digestion print gives pH 7.0 for some 2,500 mg/L as
calcium carbonate under 30 to 35 % of carbon dioxide at 35 Cel (recalled, to be confirmed; read to a tenth).
"""

from math import log10

import pytest
from scipy.optimize import brentq
from tests.reference.record import check, note

from kilisho.formulas import acid_base

PLUMMER = "Plummer and Busenberg 1982 (recalled, to be confirmed)"
CHART = "Chart of alkalinity, carbon dioxide and pH in digesters (recalled, to be confirmed)"
WHOLE = "scipy brentq on the whole balance of charges (own arithmetic)"
SEA_LEVEL = 101325.0
ACETIC = 10.0 ** (3.0 - 4.76)


def plummer(temperature: float) -> tuple[float, float, float]:
    """Decimal logarithms of Henry's constant [mol/L/atm] and of the two constants of carbonic acid [mol/L]."""
    kelvin = temperature + 273.15
    terms = (1.0, kelvin, 1.0 / kelvin, log10(kelvin), 1.0 / kelvin**2)
    fits = (
        (108.3865, 0.01985076, -6919.53, -40.45154, 669365.0),
        (-356.3094, -0.06091964, 21834.37, 126.8339, -1684915.0),
        (-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9),
    )
    henry, first, second = (sum(part * term for part, term in zip(fit, terms, strict=True)) for fit in fits)
    return henry, first, second


@pytest.mark.parametrize(
    ("temperature", "apart"), [(0.0, 0.08), (10.0, 0.05), (15.0, 0.035), (25.0, 0.025), (35.0, 0.025), (45.0, 0.035), (50.0, 0.04)]
)
def test_bicarbonate_under_carbon_dioxide(temperature: float, apart: float) -> None:
    henry, first, _ = plummer(temperature)
    ours = log10(float(acid_base.carbonic_constant(temperature))) - 6.0
    published = henry + first
    check(f"logarithm of bicarbonate times hydrogen at 1 atm, {temperature:g} Cel", ours, published, apart / abs(published), "1", PLUMMER)


def whole_balance(ammonia: float, cations: float, share: float, temperature: float, acids: float) -> float:
    """pH at which all charges balance, carbonate, acetate and hydrogen with them; amounts in mol/m3."""
    ammonium, water = float(acid_base.ammonium_constant(temperature)), float(acid_base.water_constant(temperature))
    bicarbonate, second = float(acid_base.carbonic_constant(temperature)) * share, 10.0 ** (3.0 + plummer(temperature)[2])

    def gap(ph: float) -> float:
        ions = 10.0 ** (3.0 - ph)
        positive = ammonia * ions / (ions + ammonium) + cations + ions
        return positive - (bicarbonate + water) / ions - 2.0 * bicarbonate * second / ions**2 - acids * ACETIC / (ions + ACETIC)

    return float(brentq(gap, 2.0, 12.0, xtol=1e-10))


@pytest.mark.parametrize(
    ("ammonia", "cations", "share", "temperature", "apart"),
    [
        (58.0, 63.0, 0.40, 25.0, 0.01),  # dairy dung and water
        (58.0, 15.0, 0.40, 25.0, 0.01),  # the same with the least alkalinity
        (400.0, 76.0, 0.40, 30.0, 0.006),  # layer droppings and water
        (600.0, 200.0, 0.40, 35.0, 0.008),  # urine alone
        (100.0, 1000.0, 0.30, 35.0, 0.015),  # far beyond any slurry
        (10.0, 5.0, 0.45, 25.0, 0.05),  # straw: hardly any buffer
        (0.0, 0.0, 0.40, 25.0, 0.001),  # water without any base
    ],
)
def test_what_the_closed_form_leaves_out(ammonia: float, cations: float, share: float, temperature: float, apart: float) -> None:
    """Carbonate, and the acids of a healthy digester, 0.1 kg/m3 as oxygen demand (0.064 kg/mol); none where no base holds them."""
    acids = 0.1 / 0.064 if ammonia else 0.0
    published = whole_balance(ammonia, cations, share, temperature, acids)
    anions = acid_base.carbonic_constant(temperature) * share + acid_base.water_constant(temperature)
    ours = float(acid_base.buffered_ph(ammonia, cations, anions, acid_base.ammonium_constant(temperature)))
    assert ours >= published - 1e-5, "what is left out is acid"
    check(f"pH, {ammonia:g} ammonia and {cations:g} mol/m3 fixed, {temperature:g} Cel", ours, published, apart / published, "1", WHOLE)


@pytest.mark.parametrize("share", [0.30, 0.325, 0.35])
@pytest.mark.parametrize(("nitrogen", "fixed"), [(0.0, 2.5), (0.70, 0.0)])
def test_chart_of_digesters(share: float, nitrogen: float, fixed: float) -> None:
    """Whether lime or ammonium (14 kg to 50 kg of calcium carbonate) holds the bicarbonate."""
    ours = float(acid_base.slurry_ph(nitrogen, fixed, share, SEA_LEVEL, 35.0, 0.0))
    what = f"pH, 2500 mg/L of {'ammonium' if nitrogen else 'fixed'} alkalinity, {share:.1%} carbon dioxide, 35 Cel"
    check(what, ours, 7.0, 0.15 / 7.0, "1", CHART)
    note(CHART, "read to a tenth; our ideal solution lies 0.04 to 0.11 above it, as salts would have it.")
