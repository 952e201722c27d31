"""What is wrong with a request: every fault at once, each with a JSON Pointer, a stable code and what was expected."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from pydantic import ValidationError

from kilisho.messages import say
from kilisho.nearest import LONGEST, nearest

Place = tuple[str | int, ...]
# Looking for near names is slow; a body of thousands of unknown members must not hold a worker.
MOST_SUGGESTIONS = 20

# Faults between members of a request, which its JSON Schema cannot say.
CROSS_FIELD_CODES = frozenset(
    {
        "hours_needed",
        "date_needed",
        "dates_disordered",
        "demand_missing",
        "demand_twice",
        "feed_gives_no_gas",
        "fuel_twice",
        "mass_expected",
        "limits_disordered",
        "not_fed_daily",
        "not_manure",
        "nothing_to_charge",
        "nothing_to_forecast",
        "nothing_to_mix",
        "outside_forecast",
        "plans_overlap",
        "too_many_substrates",
        "gas_exceeds_feed",
        "amount_unknown",
        "mass_and_share",
        "mass_for_some",
        "month_out_of_range",
        "nothing_to_diagnose",
        "nothing_to_size_for",
        "nothing_to_use",
        "shares_disordered",
        "starter_fills_digester",
        "stated_twice",
        "substrate_twice",
        "symptom_twice",
        "use_overlaps",
        "use_without_length",
        "volume_impossible",
        "volume_unstated",
        "water_and_dilution",
        "volume_twice",
    }
)


@dataclass(frozen=True)
class Fault:
    """One fault. ``detail`` never repeats what the caller sent; ``nearest`` offers valid names close to it."""

    place: Place
    code: str
    detail: str
    nearest: Sequence[str] = field(default=())

    @property
    def pointer(self) -> str:
        """The place as an RFC 6901 JSON Pointer."""
        return "".join("/" + str(part).replace("~", "~0").replace("/", "~1") for part in self.place)

    def as_dict(self) -> dict[str, Any]:
        """The fault as a member of a problem's ``errors``."""
        out: dict[str, Any] = {"pointer": self.pointer, "code": self.code, "detail": self.detail}
        return {**out, "nearest": list(self.nearest)} if self.nearest else out


class MalformedError(ValueError):
    """The body is not one JSON document (HTTP 400)."""


class RefusedError(ValueError):
    """The body is JSON but not an acceptable request (HTTP 422); ``faults`` holds everything that is wrong."""

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("; ".join(f"{fault.pointer or '/'}: {fault.detail}" for fault in self.faults))


class TooManyRowsError(ValueError):
    """A table has more rows than the limit in force (HTTP 413)."""


def faults_of(error: ValidationError, known_fields: Iterable[str] = ()) -> list[Fault]:
    """pydantic's errors as faults. Neither the input nor pydantic's addresses are passed on."""
    known = tuple(known_fields)
    errors = error.errors(include_url=False, include_input=False)
    return [_fault(item, known if place < MOST_SUGGESTIONS else ()) for place, item in enumerate(errors)]


# pydantic's own kinds of error; ours carry the id of their message where pydantic has its words.
_MESSAGES = {
    "too_short": "fault-too_few_items",
    "too_long": "fault-too_many_items",
    "missing": "fault-missing",
    "extra_forbidden": "fault-no_such_member",
    "model_type": "fault-object_expected",
    "dict_type": "fault-object_expected",
    "model_attributes_type": "fault-object_expected",
    "list_type": "fault-list_expected",
    "tuple_type": "fault-list_expected",
}
_PLACING = frozenset({"at", "nearest"})
TWELVE_DIGITS = ".12g"


def _fault(item: Any, known: tuple[str, ...]) -> Fault:
    context = item.get("ctx", {})
    place = tuple(item["loc"]) + ((context["at"],) if "at" in context else ())
    meant = context.get("nearest", ())
    if item["type"] == "extra_forbidden":
        meant = _near(str(place[-1])[:LONGEST], known)
    return Fault(place, item["type"], _detail(item), tuple(meant))


@lru_cache(maxsize=4096)  # some 400 bytes each
def _near(name: str, known: tuple[str, ...]) -> tuple[str, ...]:
    """Kept, since an app that misspells a member does so in every request, and looking costs as much as an answer."""
    return tuple(nearest(name, known, 0.6))


def _detail(item: Any) -> str:
    known = _MESSAGES.get(item["type"], item["msg"])
    if not known.startswith("fault-"):
        return str(known)
    told = {} if item["type"] in _MESSAGES else {name: value for name, value in item.get("ctx", {}).items() if name not in _PLACING}
    return say(known, **{name: value if isinstance(value, str) else f"{value:{TWELVE_DIGITS}}" for name, value in told.items()})
