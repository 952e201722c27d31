"""The rulebook's figures by code are those of the pack, and the last one answers for the unknown."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from tests.rules.conftest import ask, base, value

from kilisho.questions.feeding import Fed, feed_facts
from kilisho.questions.installation.figures import HOUSINGS, Figures, Lines, column, water_of
from kilisho.questions.installation.work import UNKNOWN, desk_of, known_where, or_else
from kilisho.questions.opening import shelf_of

DATA = base().data


def figures() -> Figures:
    return desk_of(shelf_of(DATA)).figures


def test_the_desk_of_a_rulebook_is_made_once() -> None:
    assert desk_of(shelf_of(DATA)) is desk_of(shelf_of(DATA))


@pytest.mark.parametrize("name", sorted(DATA.structures))
def test_a_structure_s_figures(name: str) -> None:
    entry, place = DATA.structures[name], figures().structures.index(name)
    found = {key: float(table[place]) for key, table in figures().of_structure.items()}
    assert found["smallest_built"] == min(entry.buildable_sizes.total_volumes)
    assert found["largest_built"] == max(entry.buildable_sizes.total_volumes)
    assert found["gas_storage_share"] == entry.gas_storage_share.typical
    assert found["highest_operating_pressure"] == entry.operating_pressure.most
    assert np.isnan(found["fill_share"]) == (entry.operation == "batch")
    assert figures().kinds[place] == (entry.checked_as or name)


@pytest.mark.parametrize("name", sorted(DATA.substrates))
def test_a_substrate_s_figures(name: str) -> None:
    entry, place = DATA.substrates[name], figures().substrates.index(name)
    found = {key: float(table[place]) for key, table in figures().of_substrate.items()}
    assert (found["total_solids"], found["volatile_solids_share"]) == (entry.total_solids.typical, entry.volatile_solids.typical)
    assert (found["bulk_density"], found["degradation_rate"]) == (entry.bulk_density.typical, entry.degradation_rate.typical)
    assert found["biogas_potential"] >= entry.biogas_yield.typical


@pytest.mark.parametrize("name", sorted(DATA.substrates))
def test_the_usual_water_is_that_of_a_maintenance_feed_that_is_not_told_any(name: str) -> None:
    plan = ask("maintenance-feed", {"digester": {"total_volume": 9}, "feed": [{"substrate": name, "mass": 30}]})
    place, density = figures().substrates.index(name), DATA.substrates[name].bulk_density.typical
    usual = float(figures().of_substrate["usual_water_to_feed"][place]) * 30 / density * 1000
    assert usual == pytest.approx(value(plan, "water_per_day"), abs=1e-3)


def test_the_most_water_is_at_least_the_usual_and_unknown_where_practice_adds_none() -> None:
    usual, wettest = figures().of_substrate["usual_water_to_feed"][:-1], figures().of_substrate["wettest_water_to_feed"][:-1]
    known = ~np.isnan(wettest)
    assert (wettest[known] >= usual[known]).all()
    assert [name for name, one in zip(figures().substrates, known, strict=True) if not one] == ["cattle_urine"]


def test_water_of_a_ratio_and_of_a_target() -> None:
    """Dung of 15 % at a ratio of 1, at most 2.5; stover of 80 % and 80 kg/m3 to 8 % takes nine times its mass."""
    dung = shelf_of(DATA).substrates["cattle_dung"].typical | {"water_density": 1000.0}
    assert water_of(DATA.substrates["cattle_dung"], dung) == (1.0, 2.5)
    stover = shelf_of(DATA).substrates["maize_stover"].typical | {"water_density": 1000.0}
    usual, wettest = water_of(DATA.substrates["maize_stover"], stover)
    assert usual == pytest.approx((0.80 - 0.08) / 0.08 * 0.08)
    assert wettest == pytest.approx((0.80 - 0.06) / 0.06 * 0.08)


@pytest.mark.parametrize("name", sorted(DATA.animals))
@pytest.mark.parametrize("housing", HOUSINGS)
def test_a_head_gives_what_it_gives_in_a_maintenance_feed(name: str, housing: str) -> None:
    place = figures().animals.index(name) * len(HOUSINGS) + HOUSINGS.index(housing)
    found = {key: float(table[place]) for key, table in figures().of_animal.items()}
    animal = DATA.animals[name]
    gathered = getattr(animal.collectable, housing)
    assert found["dung_per_head"] == pytest.approx(animal.dung_per_day.typical * gathered.typical)
    assert found["most_dung_per_head"] >= found["dung_per_head"] or np.isnan(found["most_dung_per_head"])
    if found["dung_per_head"]:
        herd = [{"animal": name, "count": 40, "housing": housing}]
        plan = ask("maintenance-feed", {"digester": {"total_volume": 900}, "herd": herd})
        assert 40 * found["dung_per_head"] == pytest.approx(value(plan, "feed_per_day"), rel=1e-6)
        assert 40 * found["slurry_per_head"] * 1000 == pytest.approx(value(plan, "slurry_per_day"), abs=1e-4)


@pytest.mark.parametrize("table", ["of_structure", "of_substrate", "of_animal"])
def test_the_last_figure_is_unknown(table: str) -> None:
    tables: dict[str, Any] = getattr(figures(), table)
    assert all(np.isnan(one[-1]) for one in tables.values())


def test_the_unknown_animal_gives_the_unknown_substrate() -> None:
    assert figures().substrate_of_animal[-1] == -1
    for name, code in zip(figures().animals, figures().substrate_of_animal, strict=False):
        assert figures().substrates[code] == DATA.animals[name].substrate


@pytest.mark.parametrize("temperature", [5.0, 12.5, 16.0, 22.5, 24.9, 31.0, 60.0])
def test_the_design_retention_is_read_as_the_curve_is(temperature: float) -> None:
    found = [float(values[0]) for values in figures().design_retention.read(np.array([temperature]))]
    assert found == pytest.approx(list(shelf_of(DATA).curve("design_retention", temperature)))


def test_lines_are_numpy_s_own() -> None:
    lines = Lines(np.array([0.0, 1.0, 4.0]), np.array([[2.0, 8.0, -1.0], [0.0, 0.0, 3.0]]))
    places = np.array([-5.0, 0.0, 0.25, 1.0, 3.9, 4.0, 99.0])
    for found, values in zip(lines.read(places), lines.values, strict=True):
        assert found == pytest.approx(np.interp(places, lines.at, values))
    assert all(np.isnan(found).all() for found in lines.read(np.array([np.nan])))


def test_facts_that_follow_from_the_substrate() -> None:
    """The same as of a feed of that substrate alone."""
    for place, name in enumerate(figures().substrates):
        values = shelf_of(DATA).substrates[name].typical
        of_feed = feed_facts([Fed(name, DATA.substrates[name], 10.0, values)])
        assert {fact: table[place] for fact, table in figures().facts_of_substrate.items()} == {
            fact: of_feed[fact] for fact in figures().facts_of_substrate
        }
    assert figures().facts_of_substrate["human_excreta_fed"][figures().substrates.index("human_excreta")] is True


# Columns of what is known


def test_a_column_ends_with_the_unknown() -> None:
    found = column([1.0, None])
    assert (found[0], np.isnan(found[1]), np.isnan(found[2])) == (1.0, True, True)


def test_or_else_takes_the_first_where_it_is_known() -> None:
    first = np.array([1.0, np.nan])
    assert or_else(first, 7.0).tolist() == [1.0, 7.0]
    assert or_else(None, 7.0) == 7.0
    whole = np.array([1.0, 2.0])
    assert or_else(whole, 7.0) is whole


def test_known_where_all_that_is_needed_is_known() -> None:
    value_, needed = np.array([1.0, 2.0]), np.array([np.nan, 3.0])
    found = known_where(value_, needed)
    assert np.isnan(np.asarray(found)[0])
    assert np.asarray(found)[1] == 2.0
    assert np.isnan(known_where(value_, None))
    assert known_where(value_, np.array([1.0, 1.0])) is value_
    assert np.isnan(UNKNOWN)
