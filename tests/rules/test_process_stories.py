"""What practice knows: the lag of a start, souring and recovery, missed and doubled feeds, poultry alone, cold, the first gas."""

from __future__ import annotations

import numpy as np
import pytest
from tests.rules.process_cases import CATTLE, KITCHEN, LAYERS, SOLIDS, both, cattle, charge, healthy, run_of, steady

from kilisho.process import Run, Start
from kilisho.process.headspace import WEAK, first_burnable_day, gas_space
from kilisho.process.run import ACID_RATIO_STOP, ACID_RATIO_WATCH


def kitchen_flood(days_of_flood: int, loading: float) -> Run:
    """A healthy cattle digester gets kitchen waste from day 20 on, then nothing for 60 days, then dung again."""
    solids, slurry = np.zeros((200, 2, 1)), np.full((200, 1), 0.1)
    solids[:, 0] = SOLIDS * 0.1
    end = 20 + days_of_flood
    solids[20:end, 1] = 6.0 * loading
    slurry[20:end] += 6.0 * loading / 100.0
    solids[end : end + 60], slurry[end : end + 60] = 0.0, 0.0
    return run_of((solids, slurry), 25.0, healthy(), both(CATTLE, KITCHEN))


def test_overfeeding_sours_and_stopping_in_time_heals() -> None:
    short, long = kitchen_flood(3, 5.0), kitchen_flood(6, 5.0)
    assert short.lowest_ph[20:30].min() < 6.8
    assert short.acid_ratio.max() > ACID_RATIO_STOP
    assert short.methane_share[22:26].min() < 0.55
    assert short.ph[60] > 7.0
    assert short.acid_ratio[60] < ACID_RATIO_WATCH
    assert short.biogas[-1] == pytest.approx(kitchen_flood(0, 0.0).biogas[-1], rel=0.05)
    assert long.lowest_ph.min() < 5.0
    assert long.biogas[100] < 0.3 * short.biogas[100]
    assert np.nanmin(long.methane_share) < 0.05


def test_the_same_kitchen_waste_in_small_amounts_does_no_harm() -> None:
    run = kitchen_flood(40, 1.0)
    assert run.lowest_ph.min() > 6.9
    assert run.acid_ratio.max() < ACID_RATIO_WATCH
    assert run.biogas[55] > 2 * run.biogas[19]


def test_a_missed_and_a_doubled_feed_are_small_ripples() -> None:
    regular = run_of(steady(150, 6.0, 60.0), 25.0, healthy()).biogas[:, 0]
    for times in (0.0, 2.0):
        solids, slurry = steady(150, 6.0, 60.0)
        solids[70] *= times
        slurry[70] *= times
        run = run_of((solids, slurry), 25.0, healthy())
        change = (run.biogas[:, 0] - regular) / regular
        assert np.abs(change).max() < 0.03
        assert np.abs(change[140:]).max() < 0.01
        assert (change[71:100] * (times - 1.0) > 0).all()


def test_cattle_dung_starts_alone_and_other_dung_does_not() -> None:
    """Layer droppings without starter: hardly any methane in 40 days; a fifth of them in cattle dung starts (BaniHani et al. 2015)."""
    methane = {}
    for layers in (0.0, 0.2, 1.0):
        solids, slurry = charge(40, 6.0)
        parts = np.concatenate([solids * (1 - layers), solids * layers], axis=1)
        methane[layers] = run_of((parts, slurry), 30.0, Start(), both(CATTLE, LAYERS)).methane.sum()
    assert methane[0.2] > methane[0.0] > 20 * methane[1.0]


def test_ammonia_of_poultry_alone_holds_growth_back_and_a_mixture_does_not() -> None:
    growth, free, total = {}, {}, {}
    for layers in (0.0, 0.2, 1.0):
        solids, slurry = steady(400, 6.0, 60.0, 100.0)
        parts = np.concatenate([solids * (1 - layers), solids * layers], axis=1)
        run = run_of((parts, slurry), 32.0, healthy(), both(CATTLE, LAYERS))
        growth[layers], free[layers], total[layers] = (x[-1, 0] for x in (run.growth_left, run.free_ammonia, run.ammonia))
    assert growth[1.0] < 0.5
    assert 0.7 < growth[0.2] < growth[0.0]
    # The gates of the rulebook: 0.25 kg/m3 of free ammonia nitrogen and 5 of total are red, 0.1 and 3 are amber.
    assert free[1.0] > 0.25
    assert free[0.2] < 0.1
    assert total[1.0] > 5.0
    assert total[0.2] < 3.0


def test_cold_slows_the_start_and_deep_cold_forbids_it() -> None:
    days = [first_burnable_day(run_of(charge(200, 6.0), warmth), 2.0)[0] for warmth in (10.0, 15.0, 20.0, 25.0, 30.0)]
    assert np.isinf(days[0])
    assert (np.diff(days[1:]) < 0).all()
    assert 8 < days[1] < 40
    assert 2 < days[3] < 14


def test_starter_slurry_shortens_the_start() -> None:
    days = []
    for share in (0.0, 0.1, 0.3):
        run = run_of(charge(100, 6.0 * (1 - share)), 22.0, healthy(6.0 * share), cattle(starts_unaided=False))
        days.append(first_burnable_day(run, 2.0)[0])
    assert np.isinf(days[0])
    assert days[1] > 1.5 * days[2]


def test_first_gas_is_air_then_carbon_dioxide_then_methane() -> None:
    run = run_of(charge(60, 6.0), 25.0)
    space = gas_space(run, 2.0)
    assert space.methane[0, 0] < 0.30 < space.air[0, 0]
    assert (1 - space.methane - space.air)[1, 0] > space.methane[1, 0]
    assert (np.diff(space.air[:, 0]) < 0).all()
    assert space.methane[-1, 0] == pytest.approx(0.60, abs=0.02)
    weak, reliable = first_burnable_day(run, 2.0, WEAK)[0], first_burnable_day(run, 2.0)[0]
    assert 0 < weak < reliable
    assert space.methane[int(reliable) - 1, 0] < 0.5 <= space.methane[int(reliable), 0]
    assert first_burnable_day(run, 20.0)[0] > reliable


@pytest.mark.parametrize("call", [lambda run: gas_space(run, 0.0), lambda run: first_burnable_day(run, 1.0, 0.0)])
def test_the_gas_space_refuses_nonsense(call: object) -> None:
    with pytest.raises(ValueError, match="above 0"):
        call(run_of(charge(3, 6.0)))  # type: ignore[operator]
