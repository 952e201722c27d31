"""The graph of quantities: edges from names, refusals, compiled plans, traces, contradictions and the proof of units."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given as vary
from hypothesis import strategies as st

from kilisho.farm import GRAPH
from kilisho.quantities import Graph, GraphError, MissingQuantityError, Quantity, collect, given, prove_units, quantity

POSITIVE = st.floats(0.01, 1000)


@quantity("volume", source="a-handbook")
def water(tank: Any, fill: Any) -> Any:
    """Water in the tank.

    A second paragraph that no summary shows.
    """
    return tank * fill


@quantity("time")
def lasts(water: Any, use: Any) -> Any:
    """Days until the tank is empty."""
    return water / use


GIVENS = [given("tank", "volume", "Size."), given("fill", "share", "How full."), given("use", "volume_flow", "Water used.")]


def marked(function: Any) -> Quantity:
    found: Quantity = function.__quantity__
    return found


def tank_graph() -> Graph:
    return Graph.of([*GIVENS, marked(water), marked(lasts)])


VALUES = {"tank": 10.0, "fill": 0.5, "use": 0.25}


def test_parameter_names_are_the_edges() -> None:
    assert tank_graph().quantities["lasts"].inputs == ("water", "use")
    assert tank_graph().solve(VALUES, ("lasts",)) == {"lasts": 20.0}


def test_a_given_value_replaces_its_derivation() -> None:
    graph = tank_graph()
    assert graph.solve({**VALUES, "water": 1.0}, ("lasts",)) == {"lasts": 4.0}
    assert graph.plan({"water", "use"}, ("lasts",)).needs == ("water", "use")


def test_a_wanted_name_that_is_given_comes_back_unchanged() -> None:
    assert tank_graph().solve({"water": 3.0}, ("water",)) == {"water": 3.0}


def test_cycles_are_refused() -> None:
    first = Quantity("first", "number", "", lambda second: second, ("second",))
    second = Quantity("second", "number", "", lambda first: first, ("first",))
    with pytest.raises(GraphError, match="depends on itself: first <- second <- first"):
        Graph.of([first, second])


def test_unknown_names_are_refused() -> None:
    with pytest.raises(GraphError, match="lasts uses unknown quantities: use"):
        Graph.of([*GIVENS[:2], marked(water), marked(lasts)])


def test_a_name_twice_is_refused() -> None:
    with pytest.raises(GraphError, match="tank is defined twice"):
        Graph.of([*GIVENS, GIVENS[0]])


def test_what_is_missing_is_named() -> None:
    with pytest.raises(MissingQuantityError) as caught:
        tank_graph().solve({"tank": 10.0}, ("lasts",))
    assert caught.value.wanted == "lasts"
    assert set(caught.value.missing) == {"fill", "use"}


def test_plans_are_kept() -> None:
    graph = tank_graph()
    assert graph.plan(["tank", "fill", "use"], ("lasts",)) is graph.plan(["use", "fill", "tank"], ("lasts",))
    assert graph.plan(["water", "use"], ("lasts",)) is not graph.plan(["tank", "fill", "use"], ("lasts",))


def test_each_step_stands_once_and_in_order() -> None:
    assert tank_graph().plan(VALUES, ("lasts", "water")).steps == ("water", "lasts")


def test_reachable_follows_the_formulas() -> None:
    assert tank_graph().reachable(["tank", "fill"]) == {"tank", "fill", "water"}
    assert tank_graph().reachable(["tank", "fill", "use", "nothing"]) == {"tank", "fill", "use", "water", "lasts"}


@vary(st.lists(st.tuples(POSITIVE, POSITIVE, POSITIVE), min_size=1, max_size=20))
def test_arrays_and_floats_agree(rows: list[tuple[float, float, float]]) -> None:
    graph = tank_graph()
    columns = dict(zip(("tank", "fill", "use"), np.array(rows).T, strict=True))
    together = graph.solve(columns, ("lasts",))["lasts"]
    alone = [graph.solve(dict(zip(columns, row, strict=True)), ("lasts",))["lasts"] for row in rows]
    np.testing.assert_allclose(together, alone, rtol=1e-12)


def test_a_trace_names_formula_inputs_units_and_source() -> None:
    first, second = tank_graph().trace(VALUES, ("lasts",))
    assert first == {
        "quantity": "water",
        "value": 5.0,
        "unit": "m3",
        "formula": "Water in the tank.",
        "inputs": {"tank": 10.0, "fill": 0.5},
        "input_units": {"tank": "m3", "fill": "1"},
        "source": ["a-handbook"],
    }
    assert (second["quantity"], second["value"], second["source"]) == ("lasts", 20.0, [])


@pytest.mark.parametrize(("stated", "denied"), [(5.0, []), (7.4, []), (7.6, []), (7.7, ["water"]), (3.0, ["water"])])
def test_contradictions_only_outside_what_the_rest_allows(stated: float, denied: list[str]) -> None:
    # The tank of 10 is between 0.4 and 0.75 full, so 4 to 7.5 are possible, widened by a fiftieth.
    found = tank_graph().contradictions({"tank": 10.0, "water": stated}, {"fill": 0.4}, {"fill": 0.75})
    assert [one.name for one in found] == denied
    for one in found:
        assert (one.stated, one.least, one.most, one.inputs) == (stated, 4.0, 7.5, ("tank", "fill"))


def test_nothing_stated_contradicts_the_rulebook_alone() -> None:
    assert tank_graph().contradictions({"water": 100.0}, {"fill": 0.4, "tank": 10.0}, {"fill": 0.5, "tank": 10.0}) == []


def test_every_formula_of_the_farm_keeps_its_units() -> None:
    assert prove_units(GRAPH) == []


def test_the_proof_covers_most_formulas() -> None:
    formulas = [item for item in GRAPH.quantities.values() if item.formula]
    proved = [item for item in formulas if not item.empirical]
    assert len(proved) > 0.75 * len(formulas)
    assert all(item.empirical is None or len(item.empirical) > 20 for item in formulas), "an exception says why and where it is valid"


def test_a_formula_with_wrong_units_is_caught() -> None:
    @quantity("volume")
    def wet(tank: Any, use: Any) -> Any:
        """Adds a flow to a volume."""
        return tank + use

    [fault] = prove_units(Graph.of([*GIVENS, marked(wet)]))
    assert fault.startswith("wet: DimensionalityError")


def test_a_formula_in_the_wrong_kind_is_caught() -> None:
    @quantity("mass")
    def heavy(tank: Any, fill: Any) -> Any:
        """Says kilograms and gives cubic metres."""
        return tank * fill

    assert len(prove_units(Graph.of([*GIVENS, marked(heavy)]))) == 1


def test_a_hidden_factor_is_caught() -> None:
    litres = Quantity("litres", "volume", "", lambda tank: tank if hasattr(tank, "units") else 1000 * tank, ("tank",))
    assert len(prove_units(Graph.of([*GIVENS, litres]))) == 1


def test_collect_takes_formulas_and_givens_of_a_module() -> None:
    from kilisho.formulas import first_fill

    names = [item.name for item in collect(first_fill)]
    assert names[:1] == ["first_fill_share"]
    assert "slurry_volume" in names
    assert "Numeric" not in names
    assert len(names) == len(set(names))
