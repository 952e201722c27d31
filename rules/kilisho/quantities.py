"""The graph of named quantities: one name, one unit, one formula.

A formula is a function whose parameters are names of other quantities. :class:`Graph` builds the edges from those names,
refuses cycles and unknown names when it is built, compiles one straight-line function for each set of given and wanted
names, and keeps it. Whatever is given replaces its derivation. At run time formulas get bare floats or NumPy arrays in
canonical units; :func:`prove_units` runs each formula on pint quantities and compares.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from types import MappingProxyType, ModuleType
from typing import Any, TypeVar

from kilisho.units import KINDS, registry

Formula = TypeVar("Formula", bound=Callable[..., Any])
Values = Mapping[str, Any]
# Callers choose what they state, and each choice may need a plan of its own, of some 10 kB. Requests of one app take a few dozen shapes.
MOST_PLANS = 1024


@dataclass(frozen=True)
class Quantity:
    """A named quantity. Without ``formula`` it can only be given."""

    name: str
    kind: str
    description: str
    formula: Callable[..., Any] | None = None
    inputs: tuple[str, ...] = ()
    source: tuple[str, ...] = ()
    empirical: str | None = None

    @property
    def unit(self) -> str:
        """The canonical unit of the quantity's kind."""
        return KINDS[self.kind].canonical.code


class GraphError(ValueError):
    """The set of formulas is not a graph: a cycle, an unknown name, or a name defined twice."""


class MissingQuantityError(LookupError):
    """A wanted quantity cannot be derived from what is given; ``missing`` names what would be needed."""

    def __init__(self, wanted: str, missing: tuple[str, ...]) -> None:
        self.wanted, self.missing = wanted, missing
        super().__init__(f"{wanted} needs {', '.join(missing)}")


def quantity(kind: str, *, source: str | tuple[str, ...] = (), empirical: str | None = None) -> Callable[[Formula], Formula]:
    """Mark a function as the formula of the quantity that bears its name.

    Parameters
    ----------
    kind : a key of :data:`kilisho.units.KINDS`; the result is in its canonical unit.
    source : ids of the sources the formula comes from; empty for conservation of mass and plain definitions.
    empirical : for a formula whose coefficients hide units, what they are and where it is valid. Its units are not proved.
    """

    def mark(function: Formula) -> Formula:
        summary = (inspect.getdoc(function) or "").split("\n\n")[0].replace("\n", " ")
        sources = (source,) if isinstance(source, str) else source
        inputs = tuple(inspect.signature(function).parameters)
        function.__quantity__ = Quantity(function.__name__, kind, summary, function, inputs, sources, empirical)  # type: ignore[attr-defined]
        return function

    return mark


def given(name: str, kind: str, description: str) -> Quantity:
    """A quantity that has no formula: it is stated by the caller or assumed from the rulebook."""
    return Quantity(name, kind, description)


def collect(*modules: ModuleType) -> list[Quantity]:
    """The marked formulas of ``modules``, in the order in which they are written, and their ``GIVEN`` quantities."""
    found: list[Quantity] = []
    for module in modules:
        found += getattr(module, "GIVEN", ())
        found += [
            f.__quantity__ for f in vars(module).values() if callable(f) and hasattr(f, "__quantity__") and f.__module__ == module.__name__
        ]
    return found


@dataclass(frozen=True)
class Plan:
    """A compiled route from given names to wanted names. ``steps`` are the derived names in order."""

    run: Callable[[Values], dict[str, Any]]
    steps: tuple[str, ...]
    needs: tuple[str, ...]
    source: str


@dataclass(frozen=True)
class Graph:
    """All quantities, checked when built; plans are compiled on first use and cached."""

    quantities: MappingProxyType[str, Quantity]
    _plans: dict[tuple[frozenset[str], tuple[str, ...]], Plan] = field(default_factory=dict, repr=False)
    _behind: dict[tuple[str, ...], frozenset[str]] = field(default_factory=dict, repr=False)

    @classmethod
    def of(cls, quantities: Iterable[Quantity]) -> Graph:
        """Build and check: raises :class:`GraphError` for a double or unknown name, or a cycle."""
        table: dict[str, Quantity] = {}
        for item in quantities:
            if item.name in table:
                raise GraphError(f"{item.name} is defined twice")
            table[item.name] = item
        for item in table.values():
            unknown = [name for name in item.inputs if name not in table]
            if unknown:
                raise GraphError(f"{item.name} uses unknown quantities: {', '.join(unknown)}")
        _refuse_cycles(table)
        return cls(MappingProxyType(table))

    def plan(self, given_names: Iterable[str], wanted: tuple[str, ...]) -> Plan:
        """The compiled plan; raises :class:`MissingQuantityError` when something wanted cannot be reached."""
        # What is given besides changes no route, so it makes no further plan.
        key = (self._names_behind(wanted).intersection(given_names), wanted)
        found = self._plans.get(key)
        if found is None:
            if len(self._plans) >= MOST_PLANS:
                # Threads may share this: whoever finds its plan cleared away holds what it has read or compiled, never reads it again.
                self._plans.clear()
            found = self._plans[key] = self._compile(*key)
        return found

    def _names_behind(self, wanted: tuple[str, ...]) -> frozenset[str]:
        """``wanted`` and all from which it may be derived."""
        found = self._behind.get(wanted)
        if found is None:
            if len(self._behind) >= MOST_PLANS:
                self._behind.clear()  # like the plans
            found = self._behind[wanted] = frozenset(self._back_from(wanted))
        return found

    def _back_from(self, wanted: tuple[str, ...]) -> set[str]:
        found, ahead = set[str](), list(wanted)
        while ahead:
            name = ahead.pop()
            if name not in found:
                found.add(name)
                ahead += self.quantities[name].inputs if name in self.quantities else ()
        return found

    def solve(self, values: Values, wanted: tuple[str, ...]) -> dict[str, Any]:
        """Values of the wanted quantities from the given ones."""
        return self.plan(values, wanted).run(values)

    def reachable(self, given_names: Iterable[str]) -> frozenset[str]:
        """All names that can be derived from the given ones, and the given ones themselves."""
        have = {name for name in given_names if name in self.quantities}
        grew = True
        while grew:
            new = {q.name for q in self.quantities.values() if q.formula and q.name not in have and have.issuperset(q.inputs)}
            have |= new
            grew = bool(new)
        return frozenset(have)

    def trace(self, values: Values, wanted: tuple[str, ...]) -> list[dict[str, Any]]:
        """How each wanted quantity came about: every step with its formula, inputs and sources."""
        plan = self.plan(values, wanted)
        everything = {**values, **self.plan(values, plan.steps).run(values)}
        return [self._step(name, everything) for name in plan.steps]

    def contradictions(self, stated: Values, low: Values, high: Values, tolerance: float = 0.02) -> list[Contradiction]:
        """Stated values that their own formula denies.

        A stated quantity is derived once more without itself, from the other stated values and the rulebook's ``low`` and
        ``high``; if it lies outside what comes out (widened by ``tolerance``), the statements contradict each other.
        """
        found = []
        for name in stated:
            rest = {key: value for key, value in stated.items() if key != name}
            if not self._depends_on(name, rest, low):
                continue
            ends = [self.solve({**side, **rest}, (name,))[name] for side in (low, high)]
            least, most = min(ends) * (1 - tolerance), max(ends) * (1 + tolerance)
            if not least <= stated[name] <= most:
                found.append(Contradiction(name, stated[name], min(ends), max(ends), self.quantities[name].inputs))
        return found

    def _depends_on(self, name: str, rest: Values, assumed: Values) -> bool:
        item = self.quantities.get(name)
        if item is None or item.formula is None:
            return False
        try:
            plan = self.plan((set(rest) | set(assumed)) - {name}, (name,))
        except MissingQuantityError:
            return False
        return any(needed in rest for needed in plan.needs)

    def _step(self, name: str, values: Values) -> dict[str, Any]:
        item = self.quantities[name]
        return {
            "quantity": name,
            "value": values[name],
            "unit": item.unit,
            "formula": item.description,
            "inputs": {i: values[i] for i in item.inputs},
            "input_units": {i: self.quantities[i].unit for i in item.inputs},
            "source": list(item.source),
            **({"validity": item.empirical} if item.empirical else {}),
        }

    def _compile(self, have: frozenset[str], wanted: tuple[str, ...]) -> Plan:
        steps, needs = self._order(have, wanted)
        lines = ["def plan(given):"]
        lines += [f"    {name} = given[{name!r}]" for name in needs]
        lines += [f"    {name} = formula_{name}({', '.join(self.quantities[name].inputs)})" for name in steps]
        lines.append("    return {" + ", ".join(f"{name!r}: {name}" for name in wanted) + "}")
        scope: dict[str, Any] = {f"formula_{name}": self.quantities[name].formula for name in steps}
        text = "\n".join(lines)
        exec(compile(text, "<plan>", "exec"), scope)  # noqa: S102 built from identifiers that Graph.of has checked, never from a caller's text
        return Plan(scope["plan"], steps, needs, text)

    def _order(self, have: frozenset[str], wanted: tuple[str, ...]) -> tuple[tuple[str, ...], tuple[str, ...]]:
        steps: dict[str, None] = {}
        needs: dict[str, None] = {}

        def visit(name: str) -> list[str]:
            if name in have:
                needs[name] = None
                return []
            item = self.quantities.get(name)
            if item is None or item.formula is None:
                return [name]
            if name in steps:
                return []
            missing = [lack for source in item.inputs for lack in visit(source)]
            steps[name] = None
            return missing

        for name in wanted:
            missing = visit(name)
            if missing:
                raise MissingQuantityError(name, tuple(dict.fromkeys(missing)))
        return tuple(steps), tuple(needs)


@dataclass(frozen=True)
class Contradiction:
    """A stated value that the other statements deny: they give ``least`` to ``most`` (canonical units)."""

    name: str
    stated: float
    least: float
    most: float
    inputs: tuple[str, ...]


def _refuse_cycles(table: Mapping[str, Quantity]) -> None:
    done: set[str] = set()

    def visit(name: str, path: tuple[str, ...]) -> None:
        if name in path:
            raise GraphError("a quantity depends on itself: " + " <- ".join((*path[path.index(name) :], name)))
        if name in done:
            return
        for source in table[name].inputs:
            visit(source, (*path, name))
        done.add(name)

    for name in table:
        visit(name, ())


_SAMPLES = (2.0, 3.0, 5.0, 7.0, 11.0, 13.0, 17.0)


def prove_units(graph: Graph) -> list[str]:
    """Run every formula that is not empirical on pint quantities and on bare floats; list what disagrees."""
    return [fault for item in graph.quantities.values() if item.formula and not item.empirical for fault in _prove(item, graph)]


def _prove(item: Quantity, graph: Graph) -> list[str]:
    assert item.formula is not None
    kinds = [graph.quantities[name].kind for name in item.inputs]
    numbers = [_SAMPLES[i % len(_SAMPLES)] / 20 for i in range(len(kinds))]
    try:
        with_units = item.formula(*(n * _pint_unit(k) for n, k in zip(numbers, kinds, strict=True)))
        expected = (with_units / (1 * _pint_unit(item.kind))).to("dimensionless").magnitude
    except Exception as error:  # pint raises several unrelated types; the proof reports them all as a fault
        return [f"{item.name}: {type(error).__name__}: {error}"]
    bare = item.formula(*numbers)
    return [] if abs(expected - bare) <= 1e-9 * max(1.0, abs(bare)) else [f"{item.name}: {bare} bare, {expected} with units"]


@lru_cache
def _pint_unit(kind: str) -> Any:
    expression = KINDS[kind].canonical.pint
    return (
        registry().Quantity(1, "delta_degC")
        if kind == "temperature"
        else registry().parse_expression(expression) * registry().Quantity(1, "")
    )
