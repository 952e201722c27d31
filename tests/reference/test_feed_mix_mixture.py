"""Mixtures by hand: carbon to nitrogen of dung, droppings and straw, the straw that lifts it, and the ammonia of droppings.

The formulas are the trade's (carbon-weighted mixture; straw to a target), as mass balances; the worked numbers were set down beside them in
the project's formula reference and are its own arithmetic, not a publication. The ratios of the substrates are those of handbooks.
"""

import numpy as np
from tests.reference.record import check

from kilisho.formulas.feed_mix import WHOLE, Ingredient, Mix, limits_of
from kilisho.formulas.feed_mix_program import Program
from kilisho.formulas.feed_mix_search import best

SOURCE = "Mass balance of carbon and nitrogen (own arithmetic)"


def ingredient(solids: float, carbon: float, ratio: float, **more: float) -> Ingredient:
    """From total solids, carbon in them and the carbon to nitrogen ratio."""
    potential = more.get("potential", 0.06)
    return Ingredient(
        solids,
        0.8 * solids,
        solids * carbon / ratio,
        solids * carbon,
        more.get("ammonium", 0.0),
        0.001,
        potential,
        0.01,
        more.get("price", 0.0),
    )


DUNG, POULTRY, STRAW = ingredient(0.18, 0.40, 24), ingredient(0.25, 0.35, 8), ingredient(0.89, 0.42, 80)


def mix(*parts: Ingredient, available: tuple[float, ...], **bounds: float) -> Mix:
    limits = {("least_total_solids", WHOLE): 0.001, ("least_retention_time", WHOLE): 1.0}
    limits |= {(name, WHOLE): bound for name, bound in bounds.items()} | {("available", i): mass for i, mass in enumerate(available)}
    return Mix(parts, 100.0, 1.0, 1000.0, limits)


def reached(asked: Mix, unknowns: list[float]) -> dict[str, float]:
    return {limit.key[0]: limit.reached(np.array(unknowns)) for limit in limits_of(asked) if limit.key[1] == WHOLE}


def test_carbon_to_nitrogen_of_a_mixture() -> None:
    three = mix(DUNG, POULTRY, STRAW, available=(10.0, 5.0, 2.0), least_carbon_to_nitrogen=20.0)
    found = reached(three, [10.0, 5.0, 2.0, 0.02])
    check("C:N of 10 kg dung, 5 kg droppings, 2 kg straw", found["least_carbon_to_nitrogen"], 20.26, 5e-4, "1", SOURCE)


def test_the_straw_that_lifts_the_ratio_is_the_least_that_the_program_takes() -> None:
    """m_s = m_b N_b (CN_t - CN_b) / (N_s (CN_s - CN_t)): droppings with the least straw that brings them to 20."""
    costly = ingredient(0.89, 0.42, 80, potential=0.0, price=1.0)
    asked = mix(POULTRY, costly, available=(5.0, 50.0), least_carbon_to_nitrogen=20.0)
    search = best(Program(asked, "cheapest", 0.05))
    assert search.best is not None
    droppings, straw, _ = search.best.unknowns.tolist()
    by_formula = droppings * POULTRY.nitrogen * (20 - 8) / (STRAW.nitrogen * (80 - 20))
    check("straw that brings droppings to a C:N of 20", straw, by_formula, 1e-6, "kg/d", SOURCE)


def test_ammonia_of_droppings_at_equal_parts_of_water() -> None:
    """25 % total solids with 4.5 % nitrogen, three quarters of it mineralised, in an equal part of water: some 4.2 g/L."""
    droppings = ingredient(0.25, 0.36, 8, ammonium=0.25 * 0.045 * 0.75)
    asked = mix(droppings, available=(10.0,), largest_total_ammonia_nitrogen=1.5, largest_total_solids=1.0)
    found = reached(asked, [10.0, 0.01])
    check("ammonia nitrogen of droppings with equal water", found["largest_total_ammonia_nitrogen"], 4.2, 0.01, "kg/m3", SOURCE)
    check("total solids of droppings with equal water", found["largest_total_solids"], 0.125, 1e-9, "1", SOURCE)


def test_water_that_the_trade_adds_to_dung() -> None:
    """m_w = m_f (TS_f - TS_t) / TS_t: 10 kg at 16 % to 8 % take 10 kg of water; 150 kg at 12 % to 7 % take 107.1 kg."""
    for mass, solids, target, water in ((10.0, 0.16, 0.08, 10.0), (150.0, 0.12, 0.07, 107.14)):
        asked = mix(ingredient(solids, 0.4, 24), available=(mass,), largest_total_solids=target)
        found = best(Program(asked, "most_gas")).best
        assert found is not None
        check(f"water for {mass:.0f} kg at {solids:.0%} to {target:.0%}", 1000 * float(found.unknowns[-1]), water, 2e-4, "kg", SOURCE)
