"""The parameters of the process model as data: complete, layered, ordered, and free to vary by farm."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields, replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.process_cases import CATTLE, KITCHEN, PARAMETERS, cattle, charge, of, run_of

from kilisho.farm import Shelf
from kilisho.packs import check, load
from kilisho.process import Conditions, History, Parameters, Start, simulate, working_slurry
from kilisho.rulebook import Process, Property

BASE = load().data
NAMES = [field.name for field in fields(Parameters)]
Layer = Callable[[str], Path]


@pytest.fixture
def layer(tmp_path: Path) -> Layer:
    """Writes one pack file."""

    def write(text: str) -> Path:
        file = tmp_path / "layer.yaml"
        file.write_text(text, encoding="utf-8")
        return file

    return write


def test_the_pack_knows_every_parameter_and_no_other() -> None:
    assert list(Process.model_fields) == NAMES


@pytest.mark.parametrize("name", NAMES)
def test_every_parameter_has_a_range_and_the_shelf_has_its_typical_value(name: str) -> None:
    figure: Property = getattr(BASE.process, name)
    assert figure.low is not None
    assert figure.high is not None
    assert figure.note
    assert getattr(PARAMETERS, name) == figure.typical


def test_strong_cations_of_working_slurry_are_its_fixed_alkalinity() -> None:
    """50 g of calcium carbonate stand for one mole of charge."""
    assert working_slurry(1.0, PARAMETERS).strong_cations == pytest.approx(15.0)


def test_two_molecules_of_three_come_early() -> None:
    assert PARAMETERS.early_gas_share == 2 / 3


def test_a_layer_replaces_one_parameter_whole(layer: Layer) -> None:
    process = load(layer("process:\n  cell_yield: {typical: 6, unit: '%', basis: judgement}\n")).data.process
    assert process.cell_yield.typical == pytest.approx(0.06)
    assert process.cell_yield.low is None
    assert process.half_saturation == BASE.process.half_saturation


@pytest.mark.parametrize(
    ("text", "path", "words"),
    [
        ("process:\n  cell_yield: null\n", "process.cell_yield", "required"),
        ("process:\n  cell_yield: {typical: 0.05, unit: kg/m3, basis: judgement}\n", "process.cell_yield", "not a unit"),
        ("process:\n  cell_yield: {typical: 1, unit: '1', basis: judgement}\n", "process.cell_yield", "must lie from"),
        ("process:\n  cell_yield: {unit: '1', basis: judgement}\n", "process.cell_yield.typical", "required"),
        ("process:\n  half_saturation: {typical: 0, unit: kg/m3, basis: judgement}\n", "process.half_saturation", "must lie from"),
        ("process:\n  mystery: {typical: 1, unit: '1', basis: judgement}\n", "process.mystery", "no such key"),
        ("process:\n  upper_ph: {typical: 6.1, unit: '1', basis: judgement}\n", "process.upper_ph", "highest of lower_ph"),
        ("process:\n  gas_held: {typical: 1, unit: '1', basis: published, source: [nobody]}\n", "process.gas_held.source", "nobody"),
        ("process: 7\n", "process", ""),
    ],
)
def test_a_fault_of_a_parameter_is_told_where_it_stands(text: str, path: str, words: str, layer: Layer) -> None:
    [fault] = check(layer(text))
    assert fault.path == path
    assert words in fault.expected
    assert fault.file.endswith("layer.yaml")


QUICK = {"kitchen_waste", "vegetable_waste", "whey", "cassava_peel", "potato_peel", "banana_stem", "coffee_pulp"}


def test_what_sours_at_once_is_told_for_the_feeds_of_sugar_and_starch() -> None:
    told = {name for name, substrate in BASE.substrates.items() if substrate.quick_share is not None}
    assert told == QUICK
    assert max(told, key=lambda name: BASE.substrates[name].quick_share.typical) == "whey"  # type: ignore[union-attr]


def test_whey_sours_at_once_by_the_milk_sugar_in_it() -> None:
    """Whey powder has 70 to 75 % of milk sugar in its dry matter (fact of the trade, from memory)."""
    whey = BASE.substrates["whey"]
    assert whey.quick_share is not None
    assert whey.quick_share.least <= 0.72 / whey.volatile_solids.typical <= whey.quick_share.most


@given(seed=st.integers(0, 2**32 - 1))
def test_one_parameter_a_farm_is_each_farm_with_its_own(seed: int) -> None:
    rng = np.random.default_rng(seed)
    drawn = {name: rng.triangular(*_range(name)) for name in NAMES}
    solids, slurry = charge(30, 4.0)
    alone = [
        run_of((solids, slurry), 25.0, Start(), of(CATTLE, parameters=one), parameters=one)
        for one in (PARAMETERS, replace(PARAMETERS, **drawn))
    ]
    both = Parameters(**{name: np.array([getattr(PARAMETERS, name), value]) for name, value in drawn.items()})
    together = simulate(History(of(CATTLE, parameters=both), solids, slurry), Conditions(6.0, 25.0), both, substeps=8)
    for farm, run in enumerate(alone):
        assert together.biogas[:, farm] == pytest.approx(run.biogas[:, 0], rel=1e-9)
        assert together.ph[:, farm] == pytest.approx(run.ph[:, 0], rel=1e-9)


def _range(name: str) -> tuple[float, float, float]:
    figure: Property = getattr(BASE.process, name)
    return figure.least, figure.typical, figure.most


@pytest.mark.parametrize(
    ("change", "later"),
    [
        ({"growth_factor": 0.7}, True), ({"growth_factor": 1.3}, False), ({"cell_yield": 0.08}, True),
        ({"free_ammonia_limit": 0.1}, True), ({"decay_share": 0.1}, True), ({"half_saturation": 0.15}, False),
    ],
)  # fmt: skip
def test_each_parameter_moves_the_start_the_way_it_must(change: dict[str, float], later: bool) -> None:
    """Ten days of methane of a first charge at 25 Cel."""
    usual, changed = (
        run_of(charge(10, 6.0), feed=cattle(parameters=one), parameters=one).methane.sum()
        for one in (PARAMETERS, replace(PARAMETERS, **change))
    )
    assert (changed < usual) == later


def test_more_that_sours_at_once_leaves_the_yield_and_hastens_the_acid() -> None:
    slow, quick = (of(KITCHEN, quick_share=share) for share in (0.0, 0.5))
    runs = [run_of(charge(3, 1.0, 20.0), 25.0, working_slurry(5.0, PARAMETERS), feed) for feed in (slow, quick)]
    assert runs[1].acids[0, 0] > 2 * runs[0].acids[0, 0]
    assert runs[1].cod_held[-1, 0] + runs[1].cod_as_methane.sum() == pytest.approx(runs[1].cod_in.sum() + runs[1].cod_start[0])


def test_the_shelf_of_a_layered_rulebook_has_the_layers_value(layer: Layer) -> None:
    data = load(layer("process:\n  growth_factor: {typical: 0.9, unit: '1', basis: judgement}\n")).data
    assert Shelf(data).process.growth_factor == 0.9
