"""Which offers close a shortfall at least cost, and among equal costs with the least haulage."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

SMALLEST_MASS = 1e-6
COST_SLACK = 1e-9
# Seconds; the solver then gives the best plan found so far. Whole loads of many nearly equal offers can keep it busy for long.
LONGEST_SOLVE = 0.1


@dataclass(frozen=True, slots=True)
class Offer:
    """What one source offers: at most ``available`` [kg] at ``price`` per kg over ``distance`` [m], in whole loads [kg] where stated."""

    available: float
    price: float
    distance: float
    load: float | None = None


def buy(offers: Sequence[Offer], wanted: float) -> list[float]:
    """Mass [kg] to take from each offer so that the sum reaches ``wanted`` [kg], or all there is if it cannot.

    Where any amount can be bought, taking the offers in order of price and distance is the exact optimum of this problem
    with one constraint. Where whole loads are sold it is a mixed-integer problem, which scipy's HiGHS solves; the tests hold
    both ways against each other.
    """
    possible = [_whole(offer, offer.available) for offer in offers]
    if wanted <= SMALLEST_MASS:
        return [0.0] * len(offers)
    if sum(possible) <= wanted:
        return possible
    if all(offer.load is None for offer in offers):
        return _in_order(offers, wanted)
    return _by_solver(offers, wanted)


def _whole(offer: Offer, mass: float) -> float:
    return mass if offer.load is None else offer.load * int(mass / offer.load + 1e-9)


def _in_order(offers: Sequence[Offer], wanted: float) -> list[float]:
    bought = [0.0] * len(offers)
    for index in sorted(range(len(offers)), key=lambda i: (offers[i].price, offers[i].distance, i)):
        bought[index] = min(offers[index].available, wanted)
        wanted -= bought[index]
    return bought


def _by_solver(offers: Sequence[Offer], wanted: float) -> list[float]:
    """Least cost first; then, at that cost, least mass times distance. Proved the best unless the time limit ends the search."""
    cost = [offer.price * (offer.load or 1.0) for offer in offers]
    haulage = [offer.distance * (offer.load or 1.0) for offer in offers]
    cheapest = _minimise(cost, offers, wanted, [])
    total = sum(c * n for c, n in zip(cost, cheapest, strict=True))
    nearest = _minimise(haulage, offers, wanted, [(cost, total * (1 + COST_SLACK) + COST_SLACK)])
    return [count * (offer.load or 1.0) for count, offer in zip(nearest, offers, strict=True)]


def _minimise(
    weights: Sequence[float], offers: Sequence[Offer], wanted: float, at_most: list[tuple[Sequence[float], float]]
) -> list[float]:
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp

    units = [offer.load or 1.0 for offer in offers]
    limits = [_whole(offer, offer.available) / unit for offer, unit in zip(offers, units, strict=True)]
    constraints = [LinearConstraint(np.array([units]), wanted, np.inf)]
    constraints += [LinearConstraint(np.array([row]), -np.inf, bound) for row, bound in at_most]
    whole = [0 if offer.load is None else 1 for offer in offers]
    found = milp(
        np.array(weights), constraints=constraints, bounds=Bounds(0, limits), integrality=whole, options={"time_limit": LONGEST_SOLVE}
    )
    if found.x is None:
        return limits  # nothing found in time: all there is, which buy() has made sure suffices
    return [round(n) if w else float(n) for n, w in zip(found.x, whole, strict=True)]
