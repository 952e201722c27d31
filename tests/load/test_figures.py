"""What is made of samples: a straight line, and how sure its slope is. Against another library, and against what is known of made noise."""

from __future__ import annotations

import math

import numpy as np
import numpy.typing as npt
import pytest
from scipy import stats
from tests.load.figures import LEAST_SAMPLES, Slope, independent, slope_of

Floats = npt.NDArray[np.float64]
TIMES = np.arange(360.0)


def alternating(random: np.random.Generator, number: int) -> Floats:
    """Noise each of which leans against the one before it, so that no sample repeats another."""
    return np.abs(random.normal(0, 2, number)) * np.where(np.arange(number) % 2, 1.0, -1.0)


def repeating(random: np.random.Generator, number: int, share: float) -> Floats:
    """Noise each of which keeps ``share`` of the one before it: an autoregressive process of the first order."""
    found = random.normal(0, 1, number)
    for place in range(1, number):
        found[place] += share * found[place - 1]
    return found


def test_a_slope_and_its_interval_are_those_of_another_library_where_no_sample_repeats_another() -> None:
    values = 100 + 0.25 * TIMES + alternating(np.random.default_rng(1), TIMES.size)
    fitted = stats.linregress(TIMES, values)
    half = stats.t.ppf(0.975, TIMES.size - 2) * fitted.stderr
    told = slope_of(TIMES, values)
    assert (told.rise, told.low, told.high) == pytest.approx((fitted.slope, fitted.slope - half, fitted.slope + half))
    assert not told.none


@pytest.mark.parametrize("share", [0.0, 0.3, 0.6, 0.9])
def test_samples_count_as_the_theory_of_such_noise_has_it(share: float) -> None:
    """The correlation of an autoregressive process with itself one step on is its share, so n (1 - share) / (1 + share) are left."""
    counts = [independent(repeating(np.random.default_rng(seed), 4_000, share)) for seed in range(5)]
    assert np.mean(counts) == pytest.approx(4_000 * (1 - share) / (1 + share), rel=0.1)


def test_no_sample_counts_more_than_once() -> None:
    assert independent(alternating(np.random.default_rng(2), 50)) == 50
    assert independent(np.zeros(50)) == 50


@pytest.mark.parametrize("share", [0.0, 0.5, 0.9])
def test_an_interval_holds_the_true_slope_about_as_often_as_it_says(share: float) -> None:
    random = np.random.default_rng(3)
    held = [slope_of(TIMES, repeating(random, TIMES.size, share)).none for _ in range(300)]
    assert 0.89 < np.mean(held) < 0.99


def test_lines_through_noise_that_repeats_itself_would_look_far_surer_than_they_are() -> None:
    random = np.random.default_rng(4)

    def surely_none(values: Floats) -> bool:
        fitted = stats.linregress(TIMES, values)
        return bool(abs(fitted.slope) < stats.t.ppf(0.975, TIMES.size - 2) * fitted.stderr)

    assert np.mean([surely_none(repeating(random, TIMES.size, 0.9)) for _ in range(300)]) < 0.6


def test_memory_that_stays_has_no_slope_and_memory_that_grows_has_one() -> None:
    noise = np.random.default_rng(5).normal(0, 1, TIMES.size)
    assert slope_of(TIMES, 150 + noise).none
    grown = slope_of(TIMES, 150 + 0.02 * TIMES + noise)
    assert grown.low < 0.02 < grown.high
    assert not grown.none


def test_memory_that_grows_by_pages_is_found_to_grow() -> None:
    """A process takes memory in steps; several of them are a slope, however flat each is."""
    assert not slope_of(TIMES, 120 + 0.25 * np.floor(TIMES / 40)).none


def test_one_step_is_too_little_to_tell() -> None:
    told = slope_of(TIMES, 120 + (TIMES > 180))
    assert told.none
    assert told.low < 0 < told.rise < told.high


def test_what_never_changes_has_no_slope_and_no_doubt() -> None:
    assert slope_of(TIMES, np.full(TIMES.size, 120.3)) == Slope(0.0, 0.0, 0.0)


def test_of_samples_that_all_repeat_each_other_nothing_is_told() -> None:
    assert independent(np.linspace(-1, 1, 200)) < LEAST_SAMPLES
    told = slope_of(TIMES[:60], np.sin(TIMES[:60] / 15))
    assert (told.low, told.high) == (-math.inf, math.inf)


def test_a_slope_is_told_over_other_units() -> None:
    assert Slope(1, -2, 3).times(10) == Slope(10, -20, 30)
