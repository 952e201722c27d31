"""A rulebook hangs together: every reference leads somewhere, and every check asks what its fact can answer."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml
from tests.rules.conftest import base

from kilisho.coherence import incoherences
from kilisho.packs import check

FACTS: dict[str, Any] = {
    "dogs": {"name": "A dog is on the farm", "group": "site", "field": "dogs", "kind": "yes_no"},
    "fence": {"name": "Kind of fence", "group": "site", "field": "fence", "kind": "one_of", "values": ["none", "wire", "hedge"]},
    "tools": {"name": "Tools at hand", "group": "site", "field": "tools", "kind": "list_of", "values": ["spade", "hoe"]},
    "shade": {"name": "Shade length", "group": "site", "field": "shade", "kind": "length", "unit": "m", "at_least": 0, "at_most": 99},
    "flocks": {"name": "Number of flocks", "group": "site", "field": "flocks", "kind": "number", "unit": "1", "at_least": 0, "at_most": 9},
}


def rule(subject: str, must: dict[str, Any], when: dict[str, Any] | None = None) -> dict[str, Any]:
    return {
        "title": "A rule for a test",
        "topic": "siting",
        "subject": subject,
        "must": must,
        "when": when or {},
        "severity": "notice",
        "why": "Because.",
        "do": "Do it.",
        "basis": "judgement",
    }


def faults(pack: Callable[..., Path], **checks: dict[str, Any]) -> dict[str, str]:
    """What was expected, by path, of a pack with these checks."""
    found = check(pack(json.dumps({"facts": FACTS, "checks": checks})))
    assert all(fault.line > 0 and fault.file.endswith("layer.yaml") for fault in found)
    return {path: "; ".join(fault.expected for fault in found if fault.path == path) for path in [fault.path for fault in found]}


def test_the_base_pack_hangs_together() -> None:
    assert list(incoherences(base().data)) == []


FITTING: list[tuple[str, dict[str, Any]]] = [
    ("dogs", {"is": True}),
    ("dogs", {"is": False}),
    ("fence", {"is": "wire"}),
    ("fence", {"one_of": ["wire", "hedge"]}),
    ("fence", {"none_of": ["none"]}),
    ("tools", {"includes_none_of": ["hoe"]}),
    ("shade", {"at_least": 2, "unit": "m"}),
    ("shade", {"between": [20, 200], "unit": "cm"}),
    ("flocks", {"less_than": 3}),
]


def test_operators_that_fit_their_facts(pack: Callable[..., Path]) -> None:
    in_must = {f"must-{i}": rule(*one) for i, one in enumerate(FITTING)}
    in_when = {f"when-{i}": rule("dogs", {"is": True}, {subject: must}) for i, (subject, must) in enumerate(FITTING)}
    assert faults(pack, **in_must, **in_when) == {}


@pytest.mark.parametrize(
    ("subject", "must", "expected"),
    [
        ("cats", {"is": True}, "not 'cats'"),
        ("dogs", {"at_least": 1}, "an operator that fits a yes_no fact, not at_least"),
        ("dogs", {"includes_none_of": ["x"]}, "an operator that fits a yes_no fact"),
        ("dogs", {"is": "yes"}, "is: true or is: false"),
        ("fence", {"at_most": 3}, "an operator that fits a one_of fact"),
        ("fence", {"is": "wall"}, "values among none, wire, hedge"),
        ("fence", {"one_of": ["wire", "wall"]}, "values among none, wire, hedge"),
        ("fence", {"includes_none_of": ["wire"]}, "an operator that fits a one_of fact"),
        ("tools", {"is": "hoe"}, "an operator that fits a list_of fact"),
        ("tools", {"includes_none_of": ["axe"]}, "values among spade, hoe"),
        ("shade", {"is": 3}, "a bound such as at_least"),
        ("shade", {"at_least": 3}, "a unit of length, such as m"),
        ("shade", {"at_least": 3, "unit": "kg"}, "not a unit of length"),
    ],
)
def test_an_operator_that_does_not_fit_is_a_fault_in_must_and_in_when(
    subject: str, must: dict[str, Any], expected: str, pack: Callable[..., Path]
) -> None:
    found = faults(pack, first=rule(subject, must), second=rule("dogs", {"is": True}, {subject: must}))
    where = "subject" if subject == "cats" else "must"
    assert set(found) == {f"checks.first.{where}", f"checks.second.when.{subject}"}
    assert all(expected in fault for fault in found.values())


@pytest.mark.parametrize("must", [{}, {"is": True, "one_of": [True]}, {"at_least": 1, "at_most": 2, "unit": "m"}, {"unit": "m"}])
def test_a_condition_holds_exactly_one_operator(must: dict[str, Any], pack: Callable[..., Path]) -> None:
    assert "exactly one operator" in faults(pack, mine=rule("shade", must))["checks.mine.must"]


@pytest.mark.parametrize(
    "change",
    [
        {"kind": "one_of", "values": []},
        {"kind": "list_of"},
        {"kind": "colour"},
        {"kind": "length"},
        {"kind": "length", "unit": "kg", "at_least": 0, "at_most": 1},
        {"kind": "length", "unit": "m", "at_least": 0},
    ],
)
def test_a_fact_says_what_may_be_said(change: dict[str, Any], pack: Callable[..., Path]) -> None:
    text = yaml.safe_dump({"facts": {"mine": {"name": "A fact", "group": "site", "field": "mine", **change}}})
    [fault] = check(pack(text))
    assert fault.path == "facts.mine"
    assert "fact needs values, or a known kind" in fault.expected


@pytest.mark.parametrize("section", ["structures", "substrates", "cautions", "checks", "facts", "appliances", "animals"])
def test_a_source_is_looked_for_in_every_section(section: str, pack: Callable[..., Path]) -> None:
    """A figure anywhere that cites nobody is a fault at the place that cites."""
    cited: dict[str, Any] = {
        "structures": {"bag": {"fill_share": {"typical": 0.75, "unit": "1", "basis": "published", "source": ["nobody"]}}},
        "substrates": {"whey": {"dilution": {"basis": "published", "source": ["nobody"]}}},
        "cautions": {"floating_feed": {"source": ["nobody"]}},
        "checks": {"first_flame_distance": {"source": ["nobody"]}},
        "appliances": {"mantle_lamp": {"gas_per_hour": {"typical": 0.1, "unit": "m3/h", "basis": "published", "source": ["nobody"]}}},
        "animals": {"goat": {"dung_per_day": {"typical": 1, "unit": "kg/d", "basis": "published", "source": ["nobody"]}}},
    }
    if section == "facts":
        assert not hasattr(base().data.facts["entry_planned"], "source"), "facts cite nobody"
        return
    [fault] = check(pack(yaml.safe_dump({section: cited[section]})))
    assert fault.path.startswith(section)
    assert fault.path.endswith("source")
    assert "'nobody'" in fault.expected


def test_a_caution_that_substrates_need_cannot_be_taken_out(pack: Callable[..., Path]) -> None:
    found = check(pack("cautions: {pathogens_manure: null}\n"))
    assert "substrates.cattle_dung.cautions" in [fault.path for fault in found]
