"""The process model on batches: open laboratory series, and the trade's rule of three quarters.

Hafner et al. 2019, data of experiment 1A, means of bottles (as printed): normal litres of methane from a kilogram of volatile solids for
three animal feeds, with ample inoculum. Potential and rate are fitted to the first week (calibration); days 11 to 31 are validation.
They come out right at first and up to 6 % low in the end: a week does not show the slow part that one rate leaves out. Tolerance 7 %.
Cellulose is left out: its microbes lag at hydrolysis, which this model does not know. The temperature was not read; the fitted rate
takes it up.

Three quarters of a 60-day batch's gas in 30 days holds for cattle dung with a third of starter at about 34 Cel; within 5 points.
"""

import numpy as np
import numpy.typing as npt
import pytest
from scipy.optimize import curve_fit
from tests.reference.process_runs import PARAMETERS, of_pack
from tests.reference.record import check, note

from kilisho.formulas.kinetics import batch_share
from kilisho.process import Conditions, Feedstock, History, Run, Start, simulate, working_slurry
from kilisho.process.parameters import METHANE_PER_COD

HAFNER = "Hafner et al. 2019, experiment 1A (as printed), process model"
TRADE = "Fact of the trade (common practice, no source), process model"
DAYS = np.array([0.0, 1.0, 1.8, 3.0, 4.6, 6.8, 11.1, 14.8, 20.1, 31.1])
SERIES = {
    "first": (0.0, 118.3, 233.6, 295.4, 328.6, 349.7, 367.4, 374.6, 382.2, 389.0),
    "second": (0.0, 125.7, 248.3, 307.2, 337.0, 351.8, 364.5, 369.3, 375.8, 381.9),
    "third": (0.0, 131.6, 245.3, 347.1, 414.0, 454.2, 490.1, 504.2, 522.5, 537.2),
}
FIRST_WEEK = slice(0, 6)
WARM = 37.0


def bottle(potential: float, rate: float) -> npt.NDArray[np.float64]:
    """Methane in time [L/kg], by the model, for a feed with this potential [L/kg] and rate at the temperature of the bottle [1/d]."""
    one = np.ones((1, 1))
    degradable = potential / 1000 / METHANE_PER_COD / 0.95
    at_20 = rate / 1.106 ** (WARM - 20)
    feed = Feedstock(degradable * one, 0 * one, at_20 * one, 0.6 * one, 0 * one, 0.01 * one, 0.01 * one, 0 * one, 0 * one, 0 * one)
    solids, slurry = np.zeros((32, 1, 1)), np.zeros((32, 1))
    slurry[0], solids[0] = 0.5, 5.0
    start = Start(volume=0.5, methanogens=8.0, ammonia=1.0, strong_cations=40.0)
    run = simulate(History(feed, solids, slurry, start), Conditions(1.0, WARM), PARAMETERS)
    return np.interp(DAYS, np.arange(33.0), np.concatenate([[0.0], np.cumsum(run.methane[:, 0])])) / 5.0 * 1000


@pytest.mark.parametrize("name", SERIES)
def test_laboratory_series(name: str) -> None:
    measured = np.array(SERIES[name])
    fit, _ = curve_fit(lambda t, p, k: p * batch_share(k, t), DAYS[FIRST_WEEK], measured[FIRST_WEEK], p0=(400.0, 0.4))
    ours = bottle(*fit)
    for place in range(6, 10):
        check(f"methane, {name} feed, day {DAYS[place]:g}", ours[place], measured[place], 0.07, "L/kg", HAFNER)
    # Inside the calibration the model adds its own delay of about half a day, which is what waits as acids.
    assert np.abs(ours[FIRST_WEEK] - measured[FIRST_WEEK]).max() < 0.15 * measured[-1]


def batches(warm: npt.NDArray[np.float64]) -> Run:
    """A batch of typical cattle dung with a third of starter slurry at each temperature [Cel]."""
    solids, slurry = np.zeros((60, 1, warm.size)), np.zeros((60, warm.size))
    slurry[0], solids[0] = 2 / 3, 60.0 * 2 / 3
    history = History(of_pack("cattle_dung"), solids, slurry, working_slurry(np.full(warm.size, 1 / 3), PARAMETERS))
    return simulate(history, Conditions(1.0, np.repeat(warm[None, :], 60, axis=0)), PARAMETERS)


def test_three_quarters_of_a_batch_in_the_first_half() -> None:
    warm = np.array([20.0, 25.0, 30.0, 34.0, 38.0])
    gas = np.cumsum(batches(warm).biogas, axis=0)
    share = gas[29] / gas[59]
    check("share of a 60-day batch in 30 days, 34 Cel", float(share[3]), 0.75, 0.05 / 0.75, "1", TRADE)
    holds = float(np.interp(0.75, share, warm))
    told = ", ".join(f"{s:.0%} at {t:g} Cel" for t, s in zip(warm, share, strict=True))
    note(TRADE, f"three quarters in 30 of 60 days holds at {holds:.1f} Cel for cattle dung with a third of starter: {told}.")
    assert 32 < holds < 36
    assert (np.diff(share) > 0).all()
