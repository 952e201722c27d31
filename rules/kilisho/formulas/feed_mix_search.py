"""The best mix over all amounts of slurry, with a proof of how near to the best it is.

With the share of the potential taken at the most slurry that is let in, the best program over all such amounts is the best mix: at the
slurry of the best mix the share is its own. So one number is searched, the slurry, with a program solved at each (:func:`best`).
Between two amounts of slurry no mix beats the program with the share at the lesser; halving the worst interval until its bound
comes near the best found proves how near that is (branch and bound in one dimension).
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from kilisho.formulas.feed_mix import slurry_of
from kilisho.formulas.feed_mix_program import Found, Program

# The search begins at these amounts between a 64th of the usual slurry and the most.
COARSE, WIDEST = 13, 64.0
# Relative precision of the slurry, and the gap to the best possible at which the proof is content.
PRECISION, ROUGH, CONTENT = 1e-5, 1e-3, 0.01
MOST_HALVINGS = 60
IMPOSSIBLE = 1e3


@dataclass(slots=True)
class Search:
    """A program with the best mix found so far, and the slurry that it was counted at."""

    program: Program
    best: Found | None = None
    slurry: float = 0.0

    def try_at(self, slurry: float) -> float:
        """The score at an amount of slurry, kept if it is the best so far."""
        found = self.program.at(slurry)
        if found is None:
            return IMPOSSIBLE
        if self.best is None or found.score < self.best.score:
            self.best, self.slurry = found, slurry
        return found.score

    def narrow(self, low: float, high: float, precision: float = PRECISION) -> None:
        """Look for the best score between two amounts of slurry."""
        from scipy.optimize import minimize_scalar

        ends = (math.log(low), math.log(high))
        minimize_scalar(lambda x: self.try_at(math.exp(x)), bounds=ends, method="bounded", options={"xatol": precision, "maxiter": 30})
        if self.best is not None:
            # What is let in may be less than was allowed: counted at its own slurry the mix is no worse.
            own = float(slurry_of(self.program.mix) @ self.best.unknowns)
            if 0.0 < own < self.slurry * (1 - PRECISION):
                self.try_at(own)


def best(program: Program, seeds: Iterable[float] = (), most: float | None = None, precision: float = PRECISION) -> Search:
    """Search all amounts of slurry up to ``most`` [m3/d]; ``seeds`` are amounts that are worth trying."""
    search, top = Search(program), most or program.mix.most_slurry()
    if top <= 0.0:
        return search
    low = min(program.usual_slurry, top) / WIDEST
    places = sorted({*np.geomspace(low, top, COARSE).tolist(), *(seed for seed in seeds if 0.0 < seed <= top)})
    scores = [search.try_at(place) for place in places]
    middle = min(range(len(places)), key=scores.__getitem__)
    if search.best is not None:
        search.narrow(places[max(0, middle - 1)], places[min(len(places) - 1, middle + 1)], precision)
    return search


def near(program: Program, slurry: float) -> Search:
    """Search around an amount of slurry, for a program that hardly differs from the one whose best mix it belongs to."""
    search, top = Search(program), program.mix.most_slurry()
    search.try_at(min(slurry, top))
    search.narrow(min(slurry, top) * 0.8, min(slurry * 1.25, top))
    return search


def gap(search: Search) -> float:
    """The part by which no mix beats the best found [1]; the search is bettered where the proof comes upon a better mix."""
    top = search.program.mix.most_slurry()
    open_ones = [(search.program.between(0.0, top), 0.0, top)]
    for _ in range(MOST_HALVINGS):
        if search.best is None or _lead(search.best, open_ones[0][0]) <= CONTENT:
            break
        _, low, high = heapq.heappop(open_ones)
        middle = math.sqrt(low * high) if low else high / 2
        search.try_at(middle)
        for ends in ((low, middle), (middle, high)):
            heapq.heappush(open_ones, (search.program.between(*ends), *ends))
    return 0.0 if search.best is None else _lead(search.best, open_ones[0][0])


def _lead(found: Found, bound: float) -> float:
    return max(0.0, found.score - bound) / max(abs(found.score), 1e-12)
