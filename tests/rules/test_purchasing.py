"""Buying what is short: the simple way equals the solver's, whole loads stay whole, and a shortage takes all there is."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kilisho.formulas import purchasing
from kilisho.formulas.purchasing import Offer, buy

AMOUNT, PRICE, DISTANCE = st.integers(0, 3000).map(float), st.sampled_from([0.0, 0.005, 0.01, 2.0]), st.integers(0, 9000).map(float)
loose = st.builds(Offer, AMOUNT, PRICE, DISTANCE)
any_offer = st.builds(Offer, AMOUNT, PRICE, DISTANCE, st.none() | st.sampled_from([50.0, 80.0, 300.0, 1000.0]))


def cost(offers: Sequence[Offer], masses: Sequence[float]) -> float:
    return sum(offer.price * mass for offer, mass in zip(offers, masses, strict=True))


def haulage(offers: Sequence[Offer], masses: Sequence[float]) -> float:
    return sum(offer.distance * mass for offer, mass in zip(offers, masses, strict=True))


def most(offer: Offer) -> float:
    return offer.available if offer.load is None else offer.load * (offer.available // offer.load)


@given(st.lists(loose, min_size=1, max_size=6), st.floats(0.01, 8000))
def test_in_order_equals_the_solver(offers: list[Offer], wanted: float) -> None:
    if sum(offer.available for offer in offers) <= wanted:
        assert buy(offers, wanted) == [offer.available for offer in offers]
        return
    simple = purchasing._in_order(offers, wanted)
    solved = purchasing._by_solver(offers, wanted)
    assert buy(offers, wanted) == simple
    assert sum(simple) == pytest.approx(wanted, rel=1e-9)
    assert cost(offers, simple) == pytest.approx(cost(offers, solved), rel=1e-6, abs=1e-6)
    assert haulage(offers, simple) == pytest.approx(haulage(offers, solved), rel=1e-5, abs=1e-2)


@given(st.lists(any_offer, min_size=1, max_size=4), st.floats(0.01, 6000))
def test_loads_stay_whole_and_within_what_is_offered(offers: list[Offer], wanted: float) -> None:
    masses = buy(offers, wanted)
    for offer, mass in zip(offers, masses, strict=True):
        assert -1e-9 <= mass <= offer.available * (1 + 1e-9)
        if offer.load is not None:
            assert mass / offer.load == pytest.approx(round(mass / offer.load), abs=1e-9)
    possible = sum(most(offer) for offer in offers)
    assert sum(masses) >= min(wanted, possible) * (1 - 1e-9)
    if possible <= wanted:
        assert masses == pytest.approx([most(offer) for offer in offers])


@given(
    st.lists(st.builds(Offer, st.integers(0, 400).map(float), PRICE, DISTANCE, st.sampled_from([50.0, 80.0])), min_size=1, max_size=3),
    st.floats(1, 900),
)
@settings(max_examples=40)
def test_whole_loads_are_bought_at_least_cost(offers: list[Offer], wanted: float) -> None:
    """Against every combination of loads there is."""
    counts = [range(int(offer.available // offer.load) + 1) for offer in offers if offer.load]
    ways = [[n * offer.load for n, offer in zip(way, offers, strict=True) if offer.load] for way in itertools.product(*counts)]
    enough = [way for way in ways if sum(way) >= wanted]
    if not enough:
        return
    cheapest = min(cost(offers, way) for way in enough)
    nearest = min(haulage(offers, way) for way in enough if cost(offers, way) <= cheapest + 1e-9)
    found = buy(offers, wanted)
    assert cost(offers, found) == pytest.approx(cheapest, abs=1e-6)
    assert haulage(offers, found) == pytest.approx(nearest, rel=1e-9, abs=1e-3)


@pytest.mark.parametrize("wanted", [0.0, -5.0, 1e-7])
def test_nothing_wanted_buys_nothing(wanted: float) -> None:
    assert buy([Offer(100, 0, 0), Offer(100, 0, 0, 50)], wanted) == [0.0, 0.0]


def test_nobody_offers_anything() -> None:
    assert buy([], 100) == []


def test_price_goes_before_distance_and_distance_before_order() -> None:
    offers = [Offer(100, 0.01, 10), Offer(100, 0.0, 5000), Offer(100, 0.0, 100)]
    assert buy(offers, 150) == [0.0, 50.0, 100.0]


def test_a_loose_offer_fills_up_what_whole_loads_leave() -> None:
    assert buy([Offer(1000, 0.001, 0, 300), Offer(1000, 0.01, 0)], 650) == pytest.approx([900, 0])
    assert buy([Offer(1000, 0.001, 0, 300), Offer(1000, 0.0011, 0)], 650) == pytest.approx([600, 50])


@given(st.lists(loose, min_size=1, max_size=6), st.floats(0.01, 8000))
def test_enough_on_offer_is_enough_bought(offers: list[Offer], wanted: float) -> None:
    """Not one rounding error short, or a plan would say that something is still missing."""
    if sum(offer.available for offer in offers) > wanted:
        assert sum(buy(offers, wanted)) >= wanted - purchasing.SMALLEST_MASS


def test_loose_dung_and_whole_loads_are_weighed_by_the_kilogram() -> None:
    loose, loads = Offer(100, 1.5, 900), Offer(100, 2.0, 100, 50)
    assert buy([loose, loads], 100) == pytest.approx([100, 0])
    assert buy([Offer(100, 2.5, 900), loads], 100) == pytest.approx([0, 100])
    # At one price the nearer wins, loose or not.
    assert buy([Offer(100, 2.0, 150), Offer(100, 2.0, 200, 50)], 100) == pytest.approx([100, 0])
    assert buy([Offer(100, 2.0, 250), Offer(100, 2.0, 200, 50)], 100) == pytest.approx([0, 100])
