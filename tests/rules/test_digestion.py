"""From a farm to the columns of the process model: what stands in which column, and that nothing is lost on the way."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import base

from kilisho.farm import Ledger, Shelf
from kilisho.formulas.digester import reference_share
from kilisho.formulas.gas import normal_factor
from kilisho.process import Conditions, History, cod_gap, nitrogen_gap, simulate, working_slurry
from kilisho.process.parameters import METHANE_PER_COD
from kilisho.questions.digestion import (
    Columns,
    ends_of,
    feedstock_of,
    parameters_of,
    samples_of,
    typical_of,
    volatile_solids_of,
)
from kilisho.questions.feeding import Fed, resolve
from kilisho.questions.requests import FeedItem
from kilisho.ranges import SAMPLES, Uncertain, certain, sampled, strata

SHELF = Shelf(base().data)
NEVER_FED = 1e-12


def fed(substrate: str = "cattle_dung", mass: float = 100.0, **measured: float) -> tuple[Fed, Ledger]:
    ledger = Ledger(SHELF)
    return resolve(FeedItem(substrate=substrate, **measured), certain(mass), ledger), ledger  # type: ignore[arg-type]


@given(value=st.floats(-10, 10), variants=st.integers(0, 6))
def test_the_typical_farm_and_the_variants_are_typical_and_the_samples_lie_between(value: float, variants: int) -> None:
    columns = Columns(variants)
    laid = columns.laid(Uncertain(value, value + strata("any")))
    assert laid.shape == (columns.count,) == (1 + SAMPLES + variants,)
    assert typical_of(laid) == value
    assert (laid[1 + SAMPLES :] == value).all()
    assert samples_of(laid) == pytest.approx(value + strata("any"))


def test_a_certain_value_is_the_same_in_every_column() -> None:
    assert (Columns(2).laid(certain(7.0)) == 7.0).all()


def test_the_ends_of_a_column_are_those_of_its_samples() -> None:
    figure = Uncertain(2.0, sampled("ends", 1, 2, 4))
    assert ends_of(Columns(3).laid(figure)) == figure.told


def test_the_samples_of_a_column_stay_with_those_of_the_ledger() -> None:
    """Sample by sample the same farm: column and ledger draw one figure in one order."""
    _, ledger = fed()
    columns = Columns()
    parameters = parameters_of(ledger, columns)
    reading = SHELF.reading("process", "cell_yield", "cell_yield")
    assert samples_of(np.asarray(parameters.cell_yield)) == pytest.approx(reading.samples)
    assert typical_of(np.asarray(parameters.cell_yield)) == base().data.process.cell_yield.typical
    assert "process/cell_yield" in {key.rsplit("/", 1)[0] for key in ledger.inputs}


def test_every_parameter_is_listed_as_an_assumption() -> None:
    _, ledger = fed()
    parameters_of(ledger, Columns())
    listed = {one["quantity"] for one in ledger.assumptions}
    assert set(type(base().data.process).model_fields) <= listed


@pytest.mark.parametrize("substrate", sorted(base().data.substrates))
def test_the_degradable_part_is_the_ultimate_gas_of_the_closed_form(substrate: str) -> None:
    """Methane of the degradable oxygen demand, less what goes into cells, is the potential that the graph reckons with."""
    one, ledger = fed(substrate)
    columns = Columns()
    parameters = parameters_of(ledger, columns)
    stock = feedstock_of([one], parameters, columns)
    entry = base().data.substrates[substrate]
    quick = entry.quick_share.typical if entry.quick_share else 0.0
    share = quick + (1 - quick) * reference_share(entry.degradation_rate.typical)
    ultimate = entry.biogas_yield.typical / share * normal_factor(25.0, 101325.0) * entry.methane_share.typical
    made = stock.degradable[0, 0] * METHANE_PER_COD * (1 - base().data.process.cell_yield.typical)
    assert made == pytest.approx(ultimate, rel=1e-9)
    assert stock.rate[0, 0] == entry.degradation_rate.typical
    assert stock.quick_share[0, 0] == quick


def test_nitrogen_of_total_solids_becomes_nitrogen_of_volatile_solids() -> None:
    one, ledger = fed(total_solids=0.2, volatile_solids=0.5, nitrogen=0.02)
    columns = Columns()
    stock = feedstock_of([one], parameters_of(ledger, columns), columns)
    nitrogen = stock.ammonia + stock.releasable + stock.bound
    assert nitrogen == pytest.approx(np.full_like(nitrogen, 0.04))
    solids = volatile_solids_of(one, columns)
    assert solids == pytest.approx(np.full(columns.count, 100 * 0.2 * 0.5))
    assert (nitrogen[0] * solids)[0] == pytest.approx(100 * 0.2 * 0.02)


def test_a_measured_potential_replaces_the_yield() -> None:
    measured, ledger = fed(methane_potential=0.2, methane_share=0.6)
    columns = Columns()
    stock = feedstock_of([measured], parameters_of(ledger, columns), columns)
    cell_yield = base().data.process.cell_yield.typical
    assert stock.degradable[0, 0] * METHANE_PER_COD * (1 - cell_yield) == pytest.approx(0.2, rel=1e-9)


def test_a_run_of_all_columns_closes_its_balances_in_each_of_them() -> None:
    one, ledger = fed(mass=500.0)
    columns = Columns()
    parameters = parameters_of(ledger, columns)
    days = 40
    solids, slurry = np.zeros((days, 1, columns.count)), np.zeros((days, columns.count))
    solids[0, 0], slurry[0] = volatile_solids_of(one, columns), 1.0
    history = History(feedstock_of([one], parameters, columns), solids, slurry, working_slurry(0.0, parameters))
    run = simulate(history, Conditions(1.0, 25.0), parameters)
    assert cod_gap(run).max() < 1e-9
    assert nitrogen_gap(run).max() < 1e-9
    alone = Columns()
    assert run.methane[:, 0].sum() > 0
    assert run.methane.shape == (days, alone.count)


def test_a_column_does_not_know_its_neighbours() -> None:
    """The typical farm gives the same gas alone as beside its samples."""
    one, ledger = fed(mass=500.0)
    columns = Columns()
    parameters = parameters_of(ledger, columns)
    days = 60
    solids, slurry = np.zeros((days, 1, columns.count)), np.zeros((days, columns.count))
    solids[::7, 0], slurry[::7] = volatile_solids_of(one, columns) / 20, 0.05
    start = working_slurry(1.0, parameters)
    together = simulate(History(feedstock_of([one], parameters, columns), solids, slurry, start), Conditions(1.0, 22.0), parameters)
    single = SHELF.process
    typical = Fed(one.id, one.entry, one.mass, one.values)
    stock = feedstock_of([typical], single, Columns())
    alone = simulate(
        History(stock, solids[:, :, :1].repeat(columns.count, axis=2), slurry, working_slurry(1.0, single)), Conditions(1.0, 22.0), single
    )
    assert together.methane[:, 0] == pytest.approx(alone.methane[:, 0], rel=1e-9, abs=NEVER_FED)
