"""Asks the other questions on behalf of a farm plan, each with what the farm states and what the parts before it found."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from functools import cache
from types import SimpleNamespace
from typing import Any, TypeVar

from pydantic import BaseModel

from kilisho.checks import Finding
from kilisho.farm import Ledger
from kilisho.faults import Place, RefusedError
from kilisho.messages import Listed, Message, say
from kilisho.questions.answers import Answer
from kilisho.questions.findings import Inspector
from kilisho.questions.opening import Form
from kilisho.questions.requests import Ask, FeedItem, MeasuredSubstrate

Item = TypeVar("Item", bound=MeasuredSubstrate)
# Members of other questions that stand elsewhere in a farm.
STANDS_IN: dict[Place, Place] = {("digester_ready_on",): ("construction", "digester_ready_on")}


@dataclass(slots=True)
class Plan:
    """A farm, the answers found so far by operation, what each assumed, and what was left out with the reason.

    ``shared`` is the work that the parts have in common: see :mod:`kilisho.questions.sharing`. ``facts`` is what the parts found,
    ``facts_stated`` what the farm states. ``left_over`` is what there is beyond the daily feed, as the answer tells it.
    """

    asked: Any
    ledger: Ledger
    inspector: Inspector
    explain: bool
    parts: dict[str, Answer] = field(default_factory=dict)
    assumptions: dict[str, list[dict[str, Any]]] = field(default_factory=dict)
    left_out: list[Answer] = field(default_factory=list)
    facts: dict[str, Any] = field(default_factory=dict)
    shared: dict[Any, Any] = field(default_factory=dict)
    facts_stated: Ask | None = None
    left_over: Answer | None = None

    def ask(self, form: Form, **values: Any) -> Answer | None:
        """Ask one question; its faults are the farm's where they lie in a member of the farm, and a reason to leave it out where not."""
        ledger = Ledger(self.ledger.shelf, self.shared)
        try:
            asked = stand_in(form, self.asked, {"facts": self.facts_stated, **values})
            answer = form.answer(asked, ledger, self._listening(form.operation), self.explain)
        except RefusedError as refused:
            faults = [replace(fault, place=self._place_of(fault.place)) for fault in refused.faults]
            own = [fault for fault in faults if fault.place and hasattr(self.asked, str(fault.place[0]))]
            if own:
                raise RefusedError(own) from None
            self.leave_out(form.operation, say("plan-refused", faults=Listed([fault.detail for fault in refused.faults])))
            return None
        self.parts[form.operation], self.assumptions[form.operation] = answer, ledger.assumptions
        return answer

    def _place_of(self, place: Place) -> Place:
        """Where in the farm's request a part's member stands."""
        if len(place) == 2 and place[0] == "facts" and getattr(self.asked.facts, str(place[1]), None) is None:
            fact = self.ledger.shelf.data.facts[str(place[1])]
            return fact.group, fact.field
        return STANDS_IN.get(place, place)

    def _listening(self, operation: str) -> Any:
        """The operation's inspector, which also passes on what the part found out."""
        return _Listener(self.inspector.of(operation), self.facts)

    def leave_out(self, operation: str, because: Message) -> None:
        """Note a part that is not answered."""
        self.left_out.append({"operation": operation, "because": because})


@dataclass(frozen=True, slots=True)
class _Listener:
    """An inspector that notes the facts on which it is asked to run its checks."""

    inspector: Inspector
    heard: dict[str, Any]

    def inspect(self, facts: Mapping[str, Any]) -> list[Finding]:
        """As the inspector."""
        self.heard.update(facts)
        return self.inspector.inspect(facts)

    def __getattr__(self, name: str) -> Any:
        return getattr(self.inspector, name)


def stand_in(form: Form, asked: Any, values: Mapping[str, Any]) -> SimpleNamespace:
    """A request of another question: defaults, then the farm's members of the same name, then ``values``."""
    shared = {name: getattr(asked, name) for name in form.request.model_fields if hasattr(asked, name)}
    return SimpleNamespace(**{**_defaults(form.request), **shared, **values})


@cache
def _defaults(request: type[BaseModel]) -> dict[str, Any]:
    """What stands for the members of a request that are not stated; nothing changes it, so all plans share it."""
    return {name: one.get_default(call_default_factory=True) for name, one in request.model_fields.items() if not one.is_required()}


def as_item(kind: type[Item], item: FeedItem, **changes: Any) -> Item:
    """A feed item as another kind of feed item, with everything that was measured on it."""
    measured = {name: getattr(item, name) for name in item.model_fields_set if name in kind.model_fields and name not in ("mass", "share")}
    made: Item = _blank(kind).model_copy(update={**measured, **changes})
    return made


@cache
def _blank(kind: type[Any]) -> Any:
    """A feed item of which nothing is stated."""
    return kind.model_construct()


def number(answer: Answer, *path: str) -> float:
    """The value of an amount of an answer; units are those in which it is told."""
    for part in path:
        answer = answer[part]
    return float(answer["value"])
