"""Request models made from the facts of a rulebook, so that a pack that adds a fact adds it to the requests too."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Annotated, Any

from pydantic import Field, create_model

from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions import fields as f
from kilisho.questions.requests import Ask
from kilisho.questions.same import Same
from kilisho.rulebook import GROUPS_OF_FACTS, Fact, RulebookData

TOLERANCE = 0.02
# A list of substrates says what it names; by any of these facts, a farm says that this goes in beside it.
FED_BESIDE = {"human_excreta_fed": ("human_excreta_fed", "latrine_linked")}
GROUPS = ("site", "structure", "gas", "water", "feed", "digestate", "people")


def stated_facts(facts: Mapping[str, Fact]) -> type[Ask]:
    """All facts by id, each optional: the ``facts`` member of every question; made once for the same mapping."""
    return _stated_facts(Same(facts))


@lru_cache(maxsize=4)
def _stated_facts(same: Same[Mapping[str, Fact]]) -> type[Ask]:
    members = {name: (name, fact) for name, fact in same.thing.items()}
    return _model("StatedFacts", "Facts of the farm by id, for checks; see /v1/facts.", members)


def with_facts(name: str, base: type[Ask], facts: Mapping[str, Fact], **members: Any) -> type[Ask]:
    """``base`` with the optional member ``facts``, and more optional members by name."""
    parts = {"facts": stated_facts(facts), **members}
    fields: dict[str, Any] = {field: (model | None, None) for field, model in parts.items()}
    return create_model(name, __base__=base, __doc__=base.__doc__, **fields)


def fact_groups(facts: Mapping[str, Fact]) -> dict[str, type[Ask]]:
    """The facts in the groups of a safety check's body, by their name inside the group."""
    return {
        group: _model(f"{group.capitalize()}Facts", f"What is known of the {group}.", members)
        for group in GROUPS
        if (members := {fact.field: (name, fact) for name, fact in facts.items() if fact.group == group})
    }


def values_by_id(part: Ask | None) -> dict[str, Any]:
    """The stated facts of a group or of ``facts``, by fact id, in canonical units."""
    if part is None:
        return {}
    return {info.title or name: value for name, info in type(part).model_fields.items() if (value := getattr(part, name)) is not None}


def all_facts(data: RulebookData, worked_out: Mapping[str, Any], stated: Mapping[str, Any]) -> dict[str, Any]:
    """What is known of a farm: worked out and stated, with what the stated facts imply.

    Raises :class:`RefusedError` where a stated fact denies what follows from the rest of the request: neither may silently win.
    """
    beside = {name: True for name, said_by in FED_BESIDE.items() if any(stated.get(one) is True for one in said_by)}
    worked_out = {**worked_out, **beside}
    denied = [name for name, value in stated.items() if name in worked_out and not agree(value, worked_out[name])]
    if denied:
        detail = say("fault-fact_denied")
        raise RefusedError([Fault(("facts", name), "stated_twice", detail) for name in denied])
    implied = {name: value for fact in stated for name, value in data.facts[fact].implies.items()}
    facts = {**stated, **implied, **worked_out}
    kind = data.structures.get(str(facts.get("structure_kind")))
    return {**facts, "structure_kind": kind.checked_as} if kind is not None and kind.checked_as else facts


def cautions_beside(data: RulebookData, facts: Mapping[str, Any]) -> list[str]:
    """The cautions of substrates that may go in beside those of a list, as far as the facts say that they do."""
    groups = {GROUPS_OF_FACTS[name] for name in FED_BESIDE if facts.get(name) is True}
    return [name for entry in data.substrates.values() if entry.group in groups for name in entry.cautions]


def worst_of(stated: Mapping[str, Any], **planned: float) -> dict[str, Any]:
    """The stated facts, with the planned number where that is the higher one.

    What is there and what is to be built need not agree, so neither denies the other; a check on it asks the worse of the two.
    """
    return {**stated, **{name: max(value, stated.get(name, value)) for name, value in planned.items()}}


def agree(stated: Any, worked_out: Any) -> bool:
    """Whether two values of a fact are the same, numbers within ``TOLERANCE``."""
    if isinstance(stated, float | int) and isinstance(worked_out, float | int) and not isinstance(stated, bool):
        return bool(abs(stated - worked_out) <= TOLERANCE * abs(worked_out))
    return bool(stated == worked_out)


def _model(name: str, text: str, members: Mapping[str, tuple[str, Fact]]) -> type[Ask]:
    fields: dict[str, Any] = {
        field: (Annotated[Any, reader_of(fact)], Field(None, title=identifier, description=_text(fact)))
        for field, (identifier, fact) in members.items()
    }
    return create_model(name, __base__=Ask, __doc__=text, **fields)


def reader_of(fact: Fact) -> Any:
    """The field that reads a fact."""
    if fact.kind == "yes_no":
        return f.YES_NO
    if fact.kind == "structure":
        return f.STRUCTURE
    if fact.kind == "one_of":
        return f.one_of(fact.values)
    if fact.kind == "list_of":
        return f.list_of(fact.values)
    assert None not in (fact.unit, fact.at_least, fact.at_most), "the rulebook has made sure of it"
    return f.InUnit(fact.kind, str(fact.unit), float(fact.at_least or 0.0), float(fact.at_most or 0.0))


def _text(fact: Fact) -> str:
    return f"{fact.name}. {fact.description}" if fact.description else fact.name
