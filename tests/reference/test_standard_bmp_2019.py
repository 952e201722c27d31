"""Standard BMP Methods, document 201 (Hafner et al. 2020), and open data of Hafner et al. 2019 (Water 11, 2431). As printed.

Document 201, worked example: vapour pressure at 30 Cel 4.237 kPa; 81.3 mL at 30 Cel, 101.325 kPa -> 77.88 mL dry -> 70.17 mL normal; a
dry 124.8 mL -> 112.4 mL. Slip: the measured volume stands as 73.6 mL, but 73.6 mL would be 70.5 mL dry; 124.8 mL dry comes from 130.2
mL. We test with the corrected 130.2 mL. Half of the last printed digit, 0.05 %.

Open data, experiment 1A (methane from a feed mixture and cellulose; bottles at 20 Cel, 1.01325 bar): volumes normalised by their
authors. They use another vapour-pressure equation, 0.5 % higher at 20 Cel, hence 0.013 %; tolerance 0.02 %.

Batch curves, the same data, mean of bottles, mL methane per gram of volatile solids: our curves are fitted (scipy) to the ten points
and compared with four of them. A single rate cannot follow a substrate with an easy and a slow part: it runs over the points at a week
and under the last one. Tolerance 5 % is that departure; the scatter between bottles is 2 to 4 %. The first two days are left out: first
order knows no lag (it is 20 % high on day 1). Cellulose by Gompertz: day 3 is on the steepest part, near 100 mL/g a day, where a fifth
of a day is 12 %, its tolerance; later the curve levels off more sharply than a substrate with a slow tail and runs 6 % over the point
at a week, the tolerance of the others.
"""

import numpy as np
import numpy.typing as npt
import pytest
from scipy.optimize import curve_fit
from tests.reference.record import check, note

from kilisho.formulas.gas import normal_volume
from kilisho.formulas.kinetics import batch_share, gompertz
from kilisho.formulas.temperature import saturation_vapour_pressure

DOCUMENT = "Standard BMP Methods 201, 2020 (as printed)"
DATA = "Hafner et al. 2019, open data, experiment 1A (as printed)"
NORMAL = 101325.0
DAYS = np.array([0, 1.0, 1.8, 3.0, 4.6, 6.8, 11.1, 14.8, 20.1, 31.1])
FEED = np.array([0, 118.3, 233.6, 295.4, 328.6, 349.7, 367.4, 374.6, 382.2, 389.0])
CELLULOSE = np.array([0, 8.7, 35.8, 183.7, 268.2, 317.5, 343.2, 350.3, 358.8, 367.3])


def test_worked_example() -> None:
    check("vapour pressure, 30 Cel", float(saturation_vapour_pressure(30.0)) / 1000, 4.237, 1.2e-4, "kPa", DOCUMENT)
    check("81.3 mL at 30 Cel", float(normal_volume(81.3, 30.0, NORMAL)), 70.17, 5e-4, "mL", DOCUMENT)
    corrected = 124.8 * 101.325 / (101.325 - 4.237)
    check("130.2 mL at 30 Cel (printed 73.6 mL, slip)", float(normal_volume(corrected, 30.0, NORMAL)), 112.4, 5e-4, "mL", DOCUMENT)
    note(DOCUMENT, "the measured volume is printed as 73.6 mL; the dry and normal volumes that follow belong to 130.2 mL.")


@pytest.mark.parametrize(("measured", "normal"), [(790.0, 719.061210), (449.0, 408.681624), (184.0, 167.477548), (1010.0, 919.306104)])
def test_open_data_volumes(measured: float, normal: float) -> None:
    check(f"{measured:g} mL at 20 Cel", float(normal_volume(measured, 20.0, NORMAL)), normal, 2e-4, "mL", DATA)


def test_first_order_follows_an_easily_started_substrate() -> None:
    def curve(days: npt.NDArray[np.float64], potential: float, rate: float) -> npt.NDArray[np.float64]:
        return np.asarray(potential * batch_share(rate, days))

    fitted, _ = curve_fit(curve, DAYS, FEED, p0=(400.0, 0.3))
    for index in (3, 5, 7, 9):
        check(f"feed mixture, day {DAYS[index]:g}, first order", float(curve(DAYS, *fitted)[index]), FEED[index], 0.05, "mL/g", DATA)


def test_gompertz_follows_a_substrate_with_a_lag_and_first_order_does_not() -> None:
    fitted, _ = curve_fit(lambda days, p, r, lag: gompertz(p, r, lag, days), DAYS, CELLULOSE, p0=(350.0, 90.0, 1.0))
    ours = np.asarray(gompertz(*fitted, DAYS))
    for index, tolerance in ((3, 0.12), (5, 0.06), (7, 0.06), (9, 0.06)):
        check(f"cellulose, day {DAYS[index]:g}, Gompertz", float(ours[index]), CELLULOSE[index], tolerance, "mL/g", DATA)
    first, _ = curve_fit(lambda days, p, k: p * batch_share(k, days), DAYS, CELLULOSE, p0=(400.0, 0.2))
    worse = first[0] * batch_share(first[1], DAYS) - CELLULOSE
    assert np.sqrt(np.mean(worse**2)) > 2 * np.sqrt(np.mean((ours - CELLULOSE) ** 2))
