"""Mixes for tests, and an account of them that shares no code with the engine: gas, limits, and the best of a grid that zooms in."""

from __future__ import annotations

from typing import Any

import numpy as np
from hypothesis import strategies as st

from kilisho.formulas.feed_mix import WHOLE, Ingredient, Key, Mix

DUNG = Ingredient(0.16, 0.128, 0.0028, 0.056, 0.0015, 0.001, 0.128 * 0.53, 0.0093)
DROPPINGS = Ingredient(0.25, 0.185, 0.0138, 0.110, 0.0103, 0.001, 0.185 * 0.75, 0.0125, price=0.003)
STRAW = Ingredient(0.85, 0.78, 0.0055, 0.40, 0.0014, 0.001, 0.78 * 0.70, 0.0063, price=0.012, crop_residue=True)

WHOLES: dict[str, float] = {
    "least_total_solids": 0.05,
    "largest_total_solids": 0.10,
    "least_carbon_to_nitrogen": 16.0,
    "largest_carbon_to_nitrogen": 30.0,
    "largest_total_ammonia_nitrogen": 1.5,
    "largest_organic_loading_rate": 1.5,
    "least_retention_time": 45.0,
    "largest_crop_residue_share": 0.25,
    "water_available": 0.15,
}


def mix_of(
    *ingredients: Ingredient,
    available: tuple[float, ...],
    volume: float = 6.0,
    shares: dict[int, float] | None = None,
    **bounds: float | None,
) -> Mix:
    """A mix with the usual limits; ``bounds`` replace them, None takes one out."""
    limits: dict[Key, float] = {(name, WHOLE): bound for name, bound in {**WHOLES, **bounds}.items() if bound is not None}
    limits |= {("available", i): mass for i, mass in enumerate(available)}
    limits |= {("largest_share", i): share for i, share in (shares or {}).items()}
    return Mix(ingredients, volume, 1.0, 1000.0, limits)


def accounts(mix: Mix, masses: Any, water: Any) -> dict[Key, Any]:
    """Every ratio that a limit may bound, straight from its definition; masses of shape (ingredients, ...)."""

    def total(name: str, only: str | None = None) -> Any:
        return sum(getattr(one, name) * mass for one, mass in zip(mix.ingredients, masses, strict=True) if not only or getattr(one, only))

    slurry = total("displaced") + water
    with np.errstate(all="ignore"):
        solids = total("solids") / (sum(masses) + 1000.0 * water)
        ratio = total("carbon") / total("nitrogen")
        whole = {
            "least_total_solids": solids,
            "largest_total_solids": solids,
            "least_carbon_to_nitrogen": ratio,
            "largest_carbon_to_nitrogen": ratio,
            "largest_total_ammonia_nitrogen": total("ammonium") / slurry,
            "largest_organic_loading_rate": total("volatile") / mix.working_volume,
            "least_retention_time": mix.working_volume / slurry,
            "largest_crop_residue_share": total("solids", "crop_residue") / total("solids"),
            "water_available": water,
        }
        single = {("available", i): mass for i, mass in enumerate(masses)}
        parts = {("largest_share", i): one.volatile * masses[i] / total("volatile") for i, one in enumerate(mix.ingredients)}
    return {**{(name, WHOLE): value for name, value in whole.items()}, **single, **parts}


def kept(mix: Mix, masses: Any, water: Any, slack: float = 0.0) -> Any:
    """Whether all limits hold, to within a part ``slack`` of each."""
    found, good = accounts(mix, masses, water), np.asarray(True)
    for key, bound in mix.limits.items():
        least = key[0].startswith("least_")
        good = good & ((found[key] >= bound * (1 - slack)) if least else (found[key] <= bound * (1 + slack)))
    return good


def gas(mix: Mix, masses: Any, water: Any) -> Any:
    """Biogas per day of one stirred tank, first order."""
    retention = mix.working_volume / (sum(one.displaced * mass for one, mass in zip(mix.ingredients, masses, strict=True)) + water)
    parts = zip(mix.ingredients, masses, strict=True)
    return sum(one.potential * mass * one.rate * retention / (1 + one.rate * retention) for one, mass in parts)


def cost(mix: Mix, masses: Any, water: Any) -> Any:
    return sum(one.price * mass for one, mass in zip(mix.ingredients, masses, strict=True)) + mix.water_price * water


def best_of_grid(mix: Mix, score: Any, allowed: Any = None, points: int = 27, rounds: int = 5) -> float | None:
    """The best score (greatest) on a grid over all masses and water that zooms in on its best point; None where no point is allowed."""
    water = min(mix.limits.get(("water_available", WHOLE), np.inf), mix.working_volume / mix.limits["least_retention_time", WHOLE])
    tops = np.array([*(mix.limits["available", i] for i in range(len(mix.ingredients))), water])
    low, high, best = np.zeros_like(tops), tops.copy(), None
    for _ in range(rounds):
        axes = [np.linspace(a, b, points) for a, b in zip(low, high, strict=True)]
        *masses, wet = np.meshgrid(*axes, indexing="ij")
        with np.errstate(all="ignore"):
            good = kept(mix, masses, wet) & (sum(masses) > 0) & (True if allowed is None else allowed(masses, wet))
            values = np.where(good, score(masses, wet), -np.inf)
        place = np.unravel_index(int(np.argmax(values)), values.shape)
        if not np.isfinite(values[place]):
            return best
        best = max(float(values[place]), best if best is not None else -np.inf)
        here = np.array([axis[i] for axis, i in zip(axes, place, strict=True)])
        reach = (high - low) / (points - 1) * 2.5
        low, high = np.maximum(here - reach, 0.0), np.minimum(here + reach, tops)
    return best


def ingredients() -> st.SearchStrategy[Ingredient]:
    """Substrates as farms have them, and odd ones."""

    def made(  # noqa: PLR0917
        solids: float, ash: float, nitrogen: float, ratio: float, share: float, yields: float, rate: float, price: float
    ) -> Ingredient:
        volatile = solids * (1 - ash)
        of_nitrogen = solids * nitrogen
        carbon = of_nitrogen * ratio
        return Ingredient(solids, volatile, of_nitrogen, carbon, of_nitrogen * share, 0.001, volatile * yields, rate, price=price)

    floats = st.floats
    return st.builds(
        made,
        floats(0.06, 0.9),
        floats(0.05, 0.4),
        floats(0.005, 0.05),
        floats(8, 60),
        floats(0.1, 0.8),
        floats(0.2, 0.9),
        floats(0.004, 0.06),
        floats(0, 0.02),
    )


def mixes(count: int = 2) -> st.SearchStrategy[Mix]:
    """Mixes of ``count`` substrates in digesters of 1 to 20 m3, with limits that may or may not leave room."""
    amounts = st.tuples(*[st.floats(2, 150)] * count)
    bounds = st.fixed_dictionaries(
        {
            "least_carbon_to_nitrogen": st.floats(8, 18),
            "largest_carbon_to_nitrogen": st.floats(22, 60),
            "largest_total_ammonia_nitrogen": st.floats(0.8, 4),
            "largest_total_solids": st.floats(0.07, 0.15),
            "water_available": st.floats(0.02, 0.4),
        }
    )
    return st.builds(
        lambda parts, there, volume, own: mix_of(*parts, available=there, volume=volume, **own),
        st.tuples(*[ingredients()] * count),
        amounts,
        st.floats(1, 20),
        bounds,
    )
