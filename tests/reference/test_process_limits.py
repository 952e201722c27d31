"""Outer limits of the process model: methane from oxygen demand, washout of the methanogens, free ammonia.

Buswell's yield against oxygen demand times 0.35 m3/kg: real methane takes 22.36 L/mol and the round 0.35 stands for 22.4; tolerance 0.5 %.

Washout (Chen and Hashimoto, recalled): a buffered feed of acids alone, without methanogens, at retentions around 1 / growth rate, the hold
of ammonia left out. The model lets them go at retentions 5 to 7 % longer: 5 % of the growth is decay and they never grow at the greatest
rate quite; tolerance 10 %.

Chen and Hashimoto's table (35 Cel, cattle, ultimate 0.24 m3/kg, 60 kg/m3; recalled): the rate of first order is fitted to the one yield at
35 Cel and 20 d (calibration); the other retentions at 35 Cel come out within 2 %, tolerance 3 %. With the temperature factor of the
handbooks the same rate is up to 13 % low at 20 Cel and short retentions: their growth rate falls less with cold; tolerance 15 %.

Free ammonia (Emerson et al. 1975, as printed in tables of the share): the share at the pH that the model finds; tolerance 1 %.
"""

from dataclasses import replace

import numpy as np
import pytest
from tests.reference.process_runs import PARAMETERS, fed_steadily, of_pack, yield_of
from tests.reference.record import check

from kilisho.formulas.kinetics import chen_hashimoto_cattle_parameter, chen_hashimoto_share
from kilisho.formulas.theoretical_yield import buswell
from kilisho.process import Conditions, Feedstock, History, simulate, working_slurry
from kilisho.process.parameters import METHANE_PER_COD

BUSWELL = "Buswell and Mueller 1952 (recalled, to be confirmed), process model"
WASHOUT = "Chen and Hashimoto 1980 (recalled, to be confirmed), process model"
TABLE = "Chen and Hashimoto 1978, 1980, table for cattle (recalled, to be confirmed), process model"
EMERSON = "Emerson et al. 1975, table of shares (recalled, to be confirmed), process model"
ATOMS = {"glucose": (6, 12, 6, 0), "cellulose": (6, 10, 5, 0), "protein": (5, 7, 2, 1), "fat": (57, 104, 6, 0)}


@pytest.mark.parametrize("substance", ATOMS)
def test_methane_from_oxygen_demand(substance: str) -> None:
    carbon, hydrogen, oxygen, nitrogen = ATOMS[substance]
    mass = 12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen + 14.007 * nitrogen
    demand = (carbon + hydrogen / 4 - oxygen / 2 - 3 * nitrogen / 4) * 31.998 / mass
    printed = float(buswell(*map(float, ATOMS[substance])).methane_yield_normal)
    check(f"methane from {substance}", METHANE_PER_COD * demand, printed, 0.005, "m3/kg", BUSWELL)


@pytest.mark.parametrize(("temperature", "days"), [(20.0, 7.63), (30.0, 3.83), (35.0, 3.07)])
def test_washout(temperature: float, days: float) -> None:
    retention = days * np.linspace(0.9, 1.4, 51)
    one, long = np.ones((1, 1)), 300
    feed = Feedstock(one, one, one, 0.6 * one, 0 * one, 0.02 * one, 0 * one, 0 * one, 20 * one, 0 * one)
    slurry = np.repeat(1 / retention[None, :], long, axis=0)
    history = History(feed, 30.0 * slurry[:, None, :], slurry, working_slurry(1.0, PARAMETERS))
    run = simulate(history, Conditions(1.0, temperature), replace(PARAMETERS, free_ammonia_limit=1e6))
    lives = run.cod_as_methane[-1] > 0.1 * run.cod_in[-1]
    assert not lives[0]
    assert lives[-1]
    check(f"washout retention, {temperature:g} Cel", float(retention[lives.argmax()]), days, 0.10, "d", WASHOUT)


@pytest.mark.parametrize("temperature", [20.0, 25.0, 35.0])
@pytest.mark.parametrize("retention", [15.0, 30.0, 60.0])
def test_table_of_chen_and_hashimoto(temperature: float, retention: float) -> None:
    at_20_days = float(chen_hashimoto_share(35.0, 20.0, chen_hashimoto_cattle_parameter(60.0)))
    rate = at_20_days / (1 - at_20_days) / 20.0 / 1.106**15
    degradable = np.full((1, 1), 0.24 / METHANE_PER_COD / 0.95)
    feed = replace(of_pack("cattle_dung"), degradable=degradable, rate=np.full((1, 1), rate))
    ours = yield_of(fed_steadily(feed, temperature, retention, 60.0), retention, 60.0, normal_methane=True)
    printed = 0.24 * float(chen_hashimoto_share(temperature, retention, chen_hashimoto_cattle_parameter(60.0)))
    tolerance = 0.03 if temperature == 35.0 else 0.15
    check(f"methane from cattle manure, {temperature:g} Cel, {retention:g} d", ours, printed, tolerance, "m3/kg", TABLE)


@pytest.mark.parametrize(("temperature", "percent"), [(20.0, 0.394), (25.0, 0.564), (30.0, 0.796)])
def test_free_ammonia(temperature: float, percent: float) -> None:
    """The table's share at pH 7.0 is carried to the model's pH by the law of mass action."""
    run = fed_steadily(of_pack("cattle_dung"), temperature, 60.0, 60.0)
    ph, share = run.ph[-1, 0], run.free_ammonia[-1, 0] / run.ammonia[-1, 0]
    at_seven = 1 / (1 + (1 / share - 1) * 10 ** (ph - 7.0))
    check(f"free ammonia at pH 7, {temperature:g} Cel", 100 * at_seven, percent, 0.01, "%", EMERSON)
