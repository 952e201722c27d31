"""Work that several parts of one request need: done once, and laid into the ledger of each part."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import wraps
from inspect import signature
from typing import Any, Concatenate, ParamSpec, TypeVar

from kilisho.farm import Ledger

Subject = TypeVar("Subject")
More = ParamSpec("More")
Result = TypeVar("Result")


@dataclass(frozen=True, slots=True)
class Done:
    """A piece of work: what it gave and what it put into a ledger. ``subject`` is kept, so that nothing else takes on its identity."""

    subject: Any
    result: Any
    ledger: Ledger


def once(work: Callable[Concatenate[Subject, Ledger, More], Result]) -> Callable[Concatenate[Subject, Ledger, More], Result]:
    """Mark a function of a part of a request and a ledger as the same in all parts that share their work.

    It must take nothing from the ledger but the shelf, and whoever gets its result must leave it as it is. The first part that asks has it
    done; the others get its result, and in their ledgers the same values, samples and assumptions. A ledger that shares with no other has
    it done as it stands. Parts of a request are told apart by identity, further arguments by value.
    """

    _, _, *others = signature(work).parameters.values()
    usual = {one.name: one.default for one in others}

    @wraps(work)
    def shared(subject: Subject, ledger: Ledger, /, *more: More.args, **named: More.kwargs) -> Result:
        if ledger.shared is None:
            return work(subject, ledger, *more, **named)
        key = (work, id(subject), *(usual | dict(zip(usual, more, strict=False)) | named).values())
        done = ledger.shared.get(key)
        if done is None:
            own = Ledger(ledger.shelf)
            done = ledger.shared[key] = Done(subject, work(subject, own, *more, **named), own)
        ledger.take(done.ledger)
        result: Result = done.result
        return result

    return shared
