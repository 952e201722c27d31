"""A question's own example over the rulebook that is served, which may lack what the example names."""

from __future__ import annotations

import copy
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from pydantic_core import to_json

from kilisho.faults import Fault, Place, RefusedError
from kilisho.messages import Message
from kilisho.questions.asking import Answer, Question, parse

Body = dict[str, Any]
# A rulebook that takes out more than this of one example is another rulebook.
MOST_CHANGES = 12
# How far a body is from being answered: whether it cannot even be read, and how many faults it has.
_Distance = tuple[bool, int]
_ANSWERED: _Distance = (False, 0)


@dataclass(frozen=True)
class Illustration:
    """A request that fits the rulebook, and the answer to it."""

    request: Body
    answer: Answer


@dataclass(frozen=True)
class _Try:
    request: Body
    answer: Answer | None
    distance: _Distance
    fault: Fault | None = None


def illustrated(question: Question) -> Illustration | None:
    """The example as it is written where the rulebook takes it; else with what is refused exchanged or left out; None where nothing helps.

    The same for the same rulebook. What a question raises beyond a refusal goes through.
    """
    tried: _Try | None = _tried(question, question.example)
    for _ in range(MOST_CHANGES):
        if tried is None or tried.answer is not None:
            break
        tried = _better(question, tried)
    return Illustration(tried.request, tried.answer) if tried and tried.answer is not None else None


def _tried(question: Question, body: Body) -> _Try:
    unread = True
    try:
        asked = question.read(parse(to_json(body)))
        unread = False
        return _Try(body, question.tell(asked), _ANSWERED)
    except RefusedError as refused:
        return _Try(body, None, (unread, len(refused.faults)), refused.faults[0])


def _better(question: Question, than: _Try) -> _Try | None:
    """Another id in its place, in the order of the rulebook; else the body without the refused part, or without what holds it."""
    place, section = _refused(than)
    exchanged = (_with(than.request, place, name) for name in question.ids.get(section, ()))
    left_out = (_without(than.request, place[:length]) for length in range(len(place), 0, -1))
    return _nearest(question, exchanged, than) or _nearest(question, left_out, than)


def _nearest(question: Question, bodies: Iterable[Body], than: _Try) -> _Try | None:
    """The first that is answered or, where none is, the first that is nearer to an answer."""
    nearer: _Try | None = None
    for body in bodies:
        tried = _tried(question, body)
        if tried.answer is not None:
            return tried
        if nearer is None and tried.distance < than.distance:
            nearer = tried
    return nearer


def _refused(tried: _Try) -> tuple[Place, str]:
    """Where the fault is in the body, and the section of the rulebook that an id there has to be of; empty where no id is wanted."""
    if tried.fault is None:
        return (), ""
    of = tried.fault.detail.parameters if isinstance(tried.fault.detail, Message) else {}
    return _sent(tried.request, tried.fault.place), str(of.get("section", ""))


def _sent(body: Body, place: Place) -> Place:
    """As much of ``place`` as leads into ``body``: a fault may be that something is missing."""
    held: Any = body
    for depth, part in enumerate(place):
        try:
            held = held[part]
        except (LookupError, TypeError):
            return place[:depth]
    return place


def _with(body: Body, place: Place, value: Any) -> Body:
    made = copy.deepcopy(body)
    _at(made, place[:-1])[place[-1]] = value
    return made


def _without(body: Body, place: Place) -> Body:
    made = copy.deepcopy(body)
    del _at(made, place[:-1])[place[-1]]
    return made


def _at(body: Any, place: Place) -> Any:
    for part in place:
        body = body[part]
    return body
