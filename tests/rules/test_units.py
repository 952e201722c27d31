"""The closed table of units: proved against pint, round trips, and no text of a caller near a parser."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import ask, like, value

from kilisho import units
from kilisho.faults import RefusedError
from kilisho.units import KINDS, UnknownUnitError, from_canonical, prove_table, to_canonical, unit_of

CODES = [(kind.name, code) for kind in KINDS.values() for code in kind.units]
SIZED: dict[str, Any] = {"digester": {"total_volume": 12}, "feed": [{"substrate": "cattle_dung"}]}


def test_the_table_agrees_with_pint() -> None:
    assert prove_table() == []


def test_the_proof_can_fail(monkeypatch: pytest.MonkeyPatch) -> None:
    wrong = units.Kind("length", {"m": units.Unit("m", 1.0, "meter"), "[ft_i]": units.Unit("[ft_i]", 0.3, "foot")})  # type: ignore[arg-type]
    monkeypatch.setattr(units, "KINDS", {"length": wrong})
    assert [fault.split(" is ")[0] for fault in prove_table()] == ["length: 3 [ft_i]"]


@pytest.mark.parametrize("kind", KINDS)
def test_the_first_unit_of_a_kind_is_canonical(kind: str) -> None:
    canonical = KINDS[kind].canonical
    assert (canonical.factor, canonical.offset) == (1.0, 0.0)
    assert all(unit.code == code for code, unit in KINDS[kind].units.items())


@given(st.sampled_from(CODES), st.floats(-1e9, 1e9))
def test_conversions_undo_each_other(unit: tuple[str, str], number: float) -> None:
    kind, code = unit
    there = to_canonical(number, kind, code)
    assert from_canonical(there, kind, code) == pytest.approx(number, rel=1e-12, abs=1e-9)


@pytest.mark.parametrize(
    ("number", "kind", "code", "canonical"),
    [
        (1000, "volume", "L", 1.0),
        (100, "volume", "[gal_us]", 0.3785411784),
        (100, "volume", "[gal_br]", 0.454609),
        (100, "mass", "[lb_av]", 45.359237),
        (77, "temperature", "[degF]", 25.0),
        (298.15, "temperature", "K", 25.0),
        (9, "temperature_difference", "[degF]", 5.0),
        (100, "pressure", "cm[H2O]", 9806.65),
        (5, "price_per_mass", "t", 0.005),
        (24, "time", "h", 1.0),
        (1200, "share", "[ppm]", 0.0012),
    ],
)
def test_known_conversions(number: float, kind: str, code: str, canonical: float) -> None:
    assert to_canonical(number, kind, code) == pytest.approx(canonical, rel=1e-12)


@pytest.mark.parametrize(("code", "nearest"), [("cm[H20]", "cm[H2O]"), ("kpa", "kPa"), ("bars", "bar")])
def test_an_unknown_code_names_the_nearest(code: str, nearest: str) -> None:
    with pytest.raises(UnknownUnitError) as caught:
        unit_of("pressure", code)
    assert nearest in caught.value.nearest
    assert nearest in str(caught.value)


def test_a_unit_of_another_kind_is_unknown() -> None:
    with pytest.raises(UnknownUnitError):
        to_canonical(1, "volume", "kg")


HOSTILE = [
    "9**9**9 kg",
    "m**9**9**9",
    "nan",
    "__import__('os')",
    "m3; kg",
    "M3",
    " m3",
    "m3 ",
    "",
    "meter**3",
    "x" * 100_000,
    "\u0000",
    "m³",
]


@pytest.mark.parametrize("code", HOSTILE)
def test_a_callers_text_is_refused_at_its_place(code: str) -> None:
    with pytest.raises(RefusedError) as caught:
        ask("maintenance-feed", like(SIZED, digester={"total_volume": {"value": 12, "unit": code}}))
    [fault] = caught.value.faults
    assert (fault.pointer, fault.code) == ("/digester/total_volume/unit", "unknown_unit")
    assert len(fault.detail) < 500, "the caller's text is not repeated at length"


ASK_HOSTILE = """
import json, sys
from kilisho.faults import RefusedError
from kilisho.packs import load
from kilisho.questions import open_questions
asked = open_questions(load())["maintenance-feed"]
for code in json.load(sys.stdin):
    try:
        asked.ask(json.dumps({"digester": {"total_volume": {"value": 12, "unit": code}}}).encode())
        sys.exit(f"accepted {code[:40]!r}")
    except RefusedError:
        pass
print("pint" in sys.modules)
"""


def test_a_callers_text_never_reaches_pint() -> None:
    """A fresh process that has refused every hostile unit has not even imported pint; the time limit catches a hang."""
    done = subprocess.run(
        [sys.executable, "-c", ASK_HOSTILE],
        input=json.dumps(HOSTILE),
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
        env=path_to_rules(),
    )
    assert (done.stdout.strip(), done.returncode) == ("False", 0), done.stderr


def path_to_rules() -> dict[str, str]:
    return {**os.environ, "PYTHONPATH": str(Path(units.__file__).parents[1])}


@pytest.mark.parametrize("number", ["12", None, True, [12], {}, "NaN"])
def test_only_a_number_is_a_number(number: Any) -> None:
    for said in (number, {"value": number, "unit": "m3"}):
        if said is None:
            continue
        with pytest.raises(RefusedError) as caught:
            ask("maintenance-feed", like(SIZED, digester={"total_volume": said}))
        assert [fault.pointer.startswith("/digester/total_volume") for fault in caught.value.faults] == [True]


@pytest.mark.parametrize("unit", KINDS["volume"].units)
def test_a_volume_in_any_unit_is_the_same_digester(unit: str) -> None:
    stated = from_canonical(12.0, "volume", unit)
    answer = ask("maintenance-feed", like(SIZED, digester={"total_volume": {"value": stated, "unit": unit}}))
    usual = ask("maintenance-feed", SIZED)
    for name in ("hydraulic_retention_time", "feed_per_day", "biogas_per_day"):
        assert value(answer, name) == pytest.approx(value(usual, name), rel=2e-6)
