"""Invented fleets: the same for the same seed, honest rows that look like farms, planted faults that are found, and few false alarms."""

from __future__ import annotations

from collections import Counter
from functools import cache

import numpy as np
import pyarrow as pa
import pyarrow.compute as pc
import pytest
from tests.rules.conftest import base
from tests.rules.fleets import ROW

from kilisho.fleet import validate
from kilisho.fleet.invented import FAULTY, ROWS, SIZES, invent
from kilisho.fleet.planted import FAULTS, NONE, PLANTED, UNREAD, Found, measure
from kilisho.fleet.table import NOTICE
from kilisho.questions.installation.verdicts import WORDS

SIZE = 60_000
STANDARD = list(ROW)


@cache
def invented() -> pa.Table:
    return pa.Table.from_batches(invent(SIZE, base()))


@cache
def answers() -> pa.Table:
    return pa.Table.from_batches(validate(invented().to_batches(), base()))


@cache
def found() -> Found:
    return measure(invented(), answers())


def honest() -> pa.Table:
    return invented().filter(pc.equal(invented()[PLANTED].cast(pa.string()), NONE))


# The fleet itself


def test_the_columns_are_those_of_a_standard_record_and_what_was_planted() -> None:
    assert sorted(invented().schema.names) == sorted([*STANDARD, PLANTED])


def test_it_says_that_it_is_invented() -> None:
    [first] = invent(1, base())
    assert first.schema.metadata[b"notice"].decode() == NOTICE
    assert "nvented" in NOTICE
    assert first["id"].to_pylist() == ["INV-000000001"]


@pytest.mark.parametrize("rows", [0, 1, 7, ROWS, ROWS + 1])
def test_it_has_as_many_rows_as_were_asked_for(rows: int) -> None:
    assert sum(batch.num_rows for batch in invent(rows, base())) == rows


def test_the_same_seed_gives_the_same_rows_whatever_their_number() -> None:
    few, many = pa.Table.from_batches(invent(50, base())), invented().slice(0, 50)
    assert few.to_pylist() == many.to_pylist()
    assert few.to_pylist() != pa.Table.from_batches(invent(50, base(), seed=2)).to_pylist()


def test_ids_count_on_from_batch_to_batch() -> None:
    before, after = invent(ROWS + 1, base())
    last, first = before["id"][-1].as_py(), after["id"][0].as_py()
    assert (last, first) == (f"INV-{ROWS:09}", f"INV-{ROWS + 1:09}")


def test_a_fifth_of_the_rows_bears_a_fault_each_fault_as_often() -> None:
    counts = Counter(invented()[PLANTED].to_pylist())
    assert counts.keys() == {NONE, *FAULTS}
    assert 1 - counts[NONE] / SIZE == pytest.approx(FAULTY, abs=0.01)
    assert max(counts[name] for name in FAULTS) < 1.5 * min(counts[name] for name in FAULTS)


@pytest.mark.parametrize("faulty", [0.0, 1.0])
def test_the_share_of_faults_is_the_caller_s(faulty: float) -> None:
    [batch] = invent(500, base(), faulty=faulty)
    assert (NONE in batch[PLANTED].to_pylist()) == (faulty == 0.0)


def test_honest_rows_look_like_households() -> None:
    """Sizes that are built, at least one animal, dung of the animal, water near the usual, gas of about a day's cooking."""
    rows = honest()
    volumes = set(rows["total_volume"].to_pylist())
    built = {size for entry in base().data.structures.values() for size in entry.buildable_sizes.total_volumes}
    assert volumes <= built
    assert (min(volumes), max(volumes)) >= (3.0, SIZES[1])
    assert min(rows["animal_count"].to_pylist()) >= 1
    of = {name: entry.substrate for name, entry in base().data.animals.items()}
    assert all(of[animal] == fed for animal, fed in zip(rows["animal"].to_pylist(), rows["substrate"].to_pylist(), strict=True))
    gas = np.array(rows["biogas_measured"].to_pylist())
    assert 0.4 < np.median(gas) < 2.5
    assert gas.min() > 0


def test_a_bad_structure_is_planted_under_a_name_that_no_rulebook_has() -> None:
    rows = invented().filter(pc.equal(invented()["structure"].cast(pa.string()), UNREAD))
    assert set(rows[PLANTED].to_pylist()) == {"unknown_structure"}
    assert UNREAD not in base().data.structures


# What validation finds


# Faults that cannot always be seen: a herd of one cannot shrink, and three times the water is still thick enough for dry dung.
SOMETIMES_HIDDEN = {"too_large": 0.75, "too_wet": 0.75}


@pytest.mark.parametrize("fault", FAULTS)
def test_planted_faults_are_found(fault: str) -> None:
    assert found().planted[fault] > 400
    assert found().recall(fault) >= SOMETIMES_HIDDEN.get(fault, 0.985)


def test_few_honest_installations_are_called_faulty() -> None:
    """Fewer than one in a hundred; none is refused or called dangerous."""
    assert found().honest > 40_000
    assert found().false_alarms < 0.01
    assert (found().falsely["refused"], found().falsely["danger"]) == (0, 0)


def test_as_many_honest_plants_lie_outside_the_range_of_gas_as_it_says() -> None:
    """Nine in ten lie inside: about one in twenty is told low, and one in twenty above. The meters err by 3 % on top."""
    words = Counter(answers().filter(pc.equal(invented()[PLANTED].cast(pa.string()), NONE))["gas"].to_pylist())
    total = sum(words.values())
    assert 0.03 < (words["low"] + words["below"]) / total < 0.07
    assert 0.03 < words["above"] / total < 0.08
    assert words["below"] / total < 0.005


def test_every_row_is_answered_in_its_place() -> None:
    assert answers()["id"].to_pylist() == invented()["id"].to_pylist()
    assert set(answers()["verdict"].to_pylist()) <= set(WORDS["verdict"])


def test_measuring_counts_what_it_should() -> None:
    """Answers that are swapped about find nothing: the recall is no constant."""
    swapped = answers().take(pa.array(np.roll(np.arange(SIZE), 1)))
    assert measure(invented(), swapped).recall("volume_in_litres") < 0.1
    assert measure(invented(), swapped).false_alarms > 0.1
    assert found().found["leaking"] <= found().planted["leaking"]
