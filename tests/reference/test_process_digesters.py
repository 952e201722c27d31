"""The process model against measured digesters: nothing is fitted to these figures. Predicted, measured and error, with typical dung:

====================================================================  =========  ========  ======
case                                                                  predicted  measured   error
====================================================================  =========  ========  ======
Castano 2014, unheated dome, Ohio, 129 d above 20 Cel, 25 d [m3/d]        0.361     0.842   -57 %
the same, pack's highest yield and rate                                   0.542     0.842   -36 %
Marti-Herrero 2014, unheated bag, Altiplano [m3/kg]                       0.189     0.23    -18 %
Alvarez 2006, laboratory, 11 Cel, 50 d, indigenous cattle [m3/kg]         0.0296    0.0336  -12 %
Alvarez 2006, the same at 35 Cel [m3/kg]                                  0.151     0.131   +15 %
Arikan 2015, 22 Cel over 35 Cel, 17 d [1]                                 0.36      0.70    -49 %
Arikan 2015, 28 Cel over 35 Cel, 17 d [1]                                 0.61      0.87    -30 %
====================================================================  =========  ========  ======

What was printed and what was taken. Castano: 1.14 m3, 60 kg/m3 of volatile solids, up to 2.43 kg/m3/d (taken as the load of the period;
it agrees with the 0.168 m3/kg of methane at 55 %), hence 24.7 d; above 20 and up to 27.9 Cel, taken as 24. Marti-Herrero: 0.26 kg/m3/d;
temperature and retention were not in what was read and are taken as 17 Cel and 90 d. Alvarez: methane 6.4 to 33.6 L/kg at 11 Cel and
49.6 to 131.3 at 35 Cel for 20 and 50 d and three strengths; the upper ends are taken as 50 d. Arikan: 17 d, separated manure.

The tolerances are the departures found, rounded up, so that nothing gets worse unseen; they are no aims. Dairy manure of well fed cows
digests two to three times faster than the handbooks' dung, and less of its rate is lost to cold than 1.106 per kelvin. A promise made
with the pack's typical figures is safe on this side; for storage and venting use the high end of :mod:`kilisho.formulas.kinetics`.
"""

import numpy as np
import pytest
from tests.reference.process_runs import fed_steadily, of_pack, yield_of
from tests.reference.record import check, note

from kilisho.formulas.gas import biogas_density, normal_factor

CASTANO = "Castano, Martin and Ciotola 2014 (as printed; temperature taken), process model"
ALTIPLANO = "Marti-Herrero et al. 2014 (as printed; temperature and retention taken), process model"
ALVAREZ = "Alvarez, Villca and Liden 2006 (as printed; retention of the extremes taken), process model"
ARIKAN = "Arikan, Mulbry and Lansing 2015 (as printed), process model"
VOLUME, LOADING, RETENTION, SOLIDS = 1.14, 2.43, 60.0 / 2.43, 60.0


def gas_of_the_dome(temperature: float, **changes: float) -> float:
    """Daily gas of the dome of Ohio [m3/d]."""
    run = fed_steadily(of_pack("cattle_dung", **changes), temperature, RETENTION, SOLIDS)
    return yield_of(run, RETENTION, SOLIDS) * LOADING * VOLUME


def test_unheated_dome_in_ohio() -> None:
    check("daily gas, typical dung", gas_of_the_dome(24.0), 0.842, 0.58, "m3/d", CASTANO)
    high = gas_of_the_dome(24.0, biogas_yield=0.31, degradation_rate=0.020)
    check("daily gas, the pack's highest yield and rate", high, 0.842, 0.37, "m3/d", CASTANO)
    note(CASTANO, f"at the highest temperature seen, 27.9 Cel, typical dung gives {gas_of_the_dome(27.9):.2f} m3/d.")


def test_solids_destroyed_in_ohio() -> None:
    """With the rate fitted to the gas, the solids that leave as gas follow from its mass alone: an independent measurement, 36 %."""
    rates = [0.02, 0.03, 0.04, 0.05]
    gas = [gas_of_the_dome(24.0, biogas_yield=0.53 * _share(rate), degradation_rate=rate) for rate in rates]
    rate = float(np.interp(0.842, gas, rates))
    normal = 0.842 / (LOADING * VOLUME) * float(normal_factor(24.0, 101325.0))
    destroyed = normal * float(biogas_density(0.55, 0.0, 101325.0))
    check("volatile solids that left as gas", destroyed, 0.36, 0.08, "1", CASTANO)
    note(CASTANO, f"with the pack's ultimate yield its gas asks for a rate of {rate:.3f} 1/d at 20 Cel; the pack's highest is 0.020.")
    assert 0.02 < rate < 0.05


def _share(rate: float) -> float:
    """Part of the ultimate gas at the yield's reference state."""
    exposure = rate * 1.106**5 * 60
    return exposure / (1 + exposure)


def test_the_dome_loses_its_methanogens_only_where_it_is_colder_than_it_was() -> None:
    """Measured, it soured below 20 Cel. The model slows there but does not sour: it knows no shock of cooling. A known limit."""
    run = fed_steadily(of_pack("cattle_dung"), 16.0, RETENTION, SOLIDS)
    assert run.lowest_ph[-1, 0] > 6.8
    assert run.acids[-1, 0] > 2 * fed_steadily(of_pack("cattle_dung"), 24.0, RETENTION, SOLIDS).acids[-1, 0]
    note(CASTANO, "it soured when it cooled below 20 Cel at a retention of 25 d; the model shows more acid there and no souring.")


def test_unheated_bag_on_the_altiplano() -> None:
    run = fed_steadily(of_pack("cattle_dung"), 17.0, 90.0, 0.26 * 90.0)
    check("gas, 17 Cel, 90 d", yield_of(run, 90.0, 0.26 * 90.0), 0.23, 0.20, "m3/kg", ALTIPLANO)


@pytest.mark.parametrize(("temperature", "methane"), [(11.0, 0.0336), (35.0, 0.1313)])
def test_dung_of_the_altiplano_in_the_laboratory(temperature: float, methane: float) -> None:
    run = fed_steadily(of_pack("local_cattle_dung"), temperature, 50.0, 40.0)
    ours = yield_of(run, 50.0, 40.0, normal_methane=True)
    check(f"methane, indigenous cattle, {temperature:g} Cel, 50 d", ours, methane, 0.20, "m3/kg", ALVAREZ)


@pytest.mark.parametrize(("temperature", "share", "tolerance"), [(22.0, 0.70, 0.50), (28.0, 0.87, 0.31)])
def test_cooler_field_digesters(temperature: float, share: float, tolerance: float) -> None:
    ours = [yield_of(fed_steadily(of_pack("cattle_dung"), t, 17.0, 25.0), 17.0, 25.0, normal_methane=True) for t in (temperature, 35.0)]
    check(f"methane at {temperature:g} over 35 Cel, 17 d", ours[0] / ours[1], share, tolerance, "1", ARIKAN)
