"""The shape of a diagnosis."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.gas_state import GasState


class Alarm(Told):
    """Something that calls for action before any cause is looked for."""

    alarm: str = Field(description="Id of the symptom or of the check.")
    kind: Literal["symptom", "check"]
    name: str
    signal: str = Field(description="danger, warning, caution or notice. Treat a word you do not know as danger.")
    do: list[str] = Field(description="What to do at once, in this order.")
    cautions: list[str] = Field(description="Ids of the cautions that say so.")


class GasTold(Told):
    """What gas this feed should give in this digester, and what was measured."""

    verdict: Literal["below", "inside", "above", "not_measured", "unknown"] = Field(description="Measured gas against the expected range.")
    text: str
    expected: Amount | None = Field(None, description="As used; see gas_state. Absent where digester or feed is not known.")
    measured: Amount | None = Field(None, description="As stated; taken as metered in the state of gas_state.")
    gas_ratio: Amount | None = Field(None, description="Measured over expected.")
    gas_state: GasState | None = None
    missing: list[str] | None = Field(None, description="Members of the request that would tell the expected gas.")


class ClueTold(Told):
    """Something stated that speaks for or against a cause."""

    kind: Literal["symptom", "not_seen", "reading"]
    of: str = Field(description="Id of the symptom, or of the facts.")
    name: str = Field(description="What people call the symptom, or the facts.")
    strength: str = Field(description="strong, some or weak; the figures evidence_... of practice say what each multiplies.")
    when: dict[str, Any] | None = Field(None, description="For a reading: the conditions that the facts meet.")
    values: dict[str, Any] | None = Field(None, description="For a reading: the facts as stated, measured or worked out.")


class TestTold(Told):
    """A test on the farm."""

    test: str = Field(description="Id; look it up under /v1/tests.")
    name: str
    effort: str = Field(description="look, by_hand, instrument or trained (leave it to a trained team).")
    how: str
    cautions: list[str]


class OutcomeTold(Told):
    """What a test may show, and what that means for the leading causes."""

    seen: str
    points_to: list[str]
    rules_out: list[str]


class SeparatingTest(TestTold):
    """A test that parts the leading causes."""

    settles: Amount = Field(description="Part of the doubt between the leading causes that it is expected to settle.")
    outcomes: list[OutcomeTold]


class CauseTold(Told):
    """A cause in its place, with what speaks for and against it, how to make sure, and how to put it right."""

    cause: str = Field(description="Id; look it up under /v1/causes.")
    rank: int
    name: str
    group: str
    share: Amount = Field(description="Its part of the weight of these causes and something_else; a judgement, no measured probability.")
    leading: bool = Field(description="Among the few that are worth telling apart first.")
    how_common: str
    speaks_for: list[ClueTold]
    speaks_against: list[ClueTold]
    test: TestTold
    remedy: str
    urgency: str = Field(description="at_once, today, this_week or when_convenient.")
    cautions: list[str]
    basis: str
    source: list[str]


class OtherCause(Told):
    """A cause that nothing stated speaks for."""

    cause: str
    name: str
    speaks_against: list[ClueTold]


class DiagnosisAnswer(Common):
    """Alarms first; then the likeliest causes, the tests that tell them apart, and the gas against what the feed should give."""

    alarms: list[Alarm] = Field(description="What calls for action at once, before any cause; show it above everything else.")
    in_words: str
    causes: list[CauseTold] = Field(description="Causes that something stated speaks for, the likeliest first.")
    something_else: Amount = Field(description="Share of whatever is not among the causes, counted like a common cause without a sign.")
    other_causes: list[OtherCause] = Field(description="Causes that nothing stated speaks for; they are not ruled out by that.")
    tests: list[SeparatingTest] = Field(description="The few tests that part the leading causes best, the easiest and most harmless first.")
    gas: GasTold
    statement: str
