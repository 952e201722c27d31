"""Chen, Y. R., Hashimoto, A. G. 1978, 1980: steady-state methane yield from Contois growth kinetics.

The originals were not at hand, so the closed form is checked against the equations it was derived from: a stirred tank with Contois
growth, run to its steady state by scipy. Tolerance 1e-6 is the integrator's. The washout retentions (recalled, to be confirmed) follow
from 0.013 T - 0.129; half of the last digit.
"""

import pytest
from scipy.integrate import solve_ivp
from tests.reference.record import check

from kilisho.formulas.kinetics import (
    chen_hashimoto_cattle_parameter,
    chen_hashimoto_share,
    chen_hashimoto_swine_parameter,
    greatest_growth_rate,
)

SCIPY = "scipy.integrate, Contois tank to steady state (general library)"
RECALLED = "Chen and Hashimoto 1980 (recalled, to be confirmed)"
GROWTH_YIELD = 0.05


def share_by_integration(growth_rate: float, retention: float, parameter: float, feed: float) -> float:
    """Volatile solids converted at steady state; Contois' constant is K over the growth yield."""
    contois = parameter / GROWTH_YIELD

    def change(_time: float, state: tuple[float, float]) -> tuple[float, float]:
        solids, cells = state
        growth = growth_rate * solids / (contois * cells + solids)
        return (feed - solids) / retention - growth * cells / GROWTH_YIELD, (growth - 1 / retention) * cells

    end = solve_ivp(change, (0.0, 200 * retention), (feed, 0.01 * feed), method="LSODA", rtol=1e-10, atol=1e-12).y[0, -1]
    return float(1 - end / feed)


@pytest.mark.parametrize(("temperature", "retention", "feed"), [(25.0, 20.0, 60.0), (35.0, 15.0, 40.0), (20.0, 40.0, 80.0)])
def test_share_is_the_steady_state_of_contois_growth(temperature: float, retention: float, feed: float) -> None:
    for animal, parameter in (("cattle", chen_hashimoto_cattle_parameter(feed)), ("pig", chen_hashimoto_swine_parameter(feed))):
        expected = share_by_integration(float(greatest_growth_rate(temperature)), retention, float(parameter), feed)
        ours = chen_hashimoto_share(temperature, retention, parameter)
        check(f"{animal} manure, {temperature:g} Cel, {retention:g} d, {feed:g} kg/m3", float(ours), expected, 1e-6, "1", SCIPY)


def test_no_gas_at_and_below_washout() -> None:
    assert chen_hashimoto_share(20.0, 1 / 0.131, 0.8) == pytest.approx(0.0, abs=1e-12)
    assert chen_hashimoto_share(20.0, 5.0, 0.8) == 0.0
    assert chen_hashimoto_share(5.0, 60.0, 0.8) == 0.0


@pytest.mark.parametrize(("temperature", "days"), [(20.0, 7.63), (30.0, 3.83), (35.0, 3.07)])
def test_washout_retention(temperature: float, days: float) -> None:
    check(f"washout retention, {temperature:g} Cel", 1 / float(greatest_growth_rate(temperature)), days, 0.002, "d", RECALLED)
