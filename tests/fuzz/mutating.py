"""Changes JSON where it stays JSON: most bytes changed at random are refused by the parser, and nothing behind it is reached."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from random import Random
from typing import Any

from tests.fuzz import targets

STRANGE = (None, True, False, 0, -0.0, -1, 1, 1e-300, 1e300, 10**30, 0.5, "", "x", "a" * 300, "\u0000", "\u202e", "=1+1", [], {}, [[]])
CHANGES = 3
Document = Any
Place = tuple[str | int, ...]


def mutated(data: bytes, most: int, seed: int) -> bytes | None:
    """``data`` with one to three changes inside its JSON, no longer than ``most``; None when it holds none."""
    name, _, body = data.partition(b"\n")
    try:
        document = json.loads(body)
    except (ValueError, RecursionError):
        return None
    random = Random(seed)
    for _ in range(random.randint(1, CHANGES)):
        document = changed(document, random)
    if random.random() < 0.05:
        name = random.choice(list(targets.questions())).encode()
    found = name + b"\n" + json.dumps(document).encode()
    return found if len(found) <= most else None


def changed(document: Document, random: Random) -> Document:
    """``document`` with one part replaced, left out, doubled or put elsewhere."""
    place = random.choice(list(_places(document)))
    if not place:
        return document if isinstance(document, dict) and document else random.choice(list(_examples()))
    holder = _at(document, place[:-1])
    match random.randrange(5):
        case 0:
            del holder[place[-1]]
        case 1:
            holder[place[-1]] = _other(holder[place[-1]], place, random)
        case 2:
            holder[place[-1]] = random.choice(STRANGE)
        case 3 if isinstance(holder, list):
            holder.extend([holder[place[-1]]] * random.choice((1, 2, 50)))
        case _:
            name = random.choice(list(_vocabulary()))
            if isinstance(holder, dict):
                holder[name] = random.choice(_vocabulary()[name])
    return document


def _other(value: Any, place: Place, random: Random) -> Any:
    """Another value of the same member or, of a number, a number near or far."""
    if isinstance(value, int | float) and not isinstance(value, bool) and random.random() < 0.7:
        return random.choice((value * 2, value / 7, -value, value * 1000, value + 1, round(value), value * 1e-6))
    names = [part for part in place if isinstance(part, str)]
    return random.choice(_vocabulary().get(names[-1] if names else "", STRANGE))


def _places(value: Document, place: Place = ()) -> Iterator[Place]:
    yield place
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, part in inner:
        yield from _places(part, (*place, key))


def _at(document: Document, place: Place) -> Any:
    for key in place:
        document = document[key]
    return document


def _examples() -> Iterator[Document]:
    return (json.loads(json.dumps(question.example)) for question in targets.questions().values())


@cache
def _vocabulary() -> Mapping[str, Sequence[Any]]:
    """Values by the name of their member: from the examples, and the ids and choices of the published schemas."""
    found: dict[str, list[Any]] = {}
    for example in _examples():
        _gather(example, found)
    for question in targets.questions().values():
        schema = question.request.model_json_schema(mode="validation")
        for part in (schema, *schema.get("$defs", {}).values()):
            for name, member in part.get("properties", {}).items():
                found.setdefault(name, []).extend(_choices(member, question))
    return {name: [*values, *STRANGE[:4]] for name, values in found.items()}


def _gather(value: Document, into: dict[str, list[Any]]) -> None:
    if isinstance(value, dict):
        for name, inner in value.items():
            into.setdefault(name, []).append(inner)
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        _gather(inner, into)


def _choices(member: Any, question: Any) -> list[Any]:
    parts = [member, *member.get("anyOf", ()), member.get("items", {})]
    ids = [one for part in parts if "x-ids-of" in part for one in list(question.ids.get(part["x-ids-of"], ()))[:20]]
    return ids + [choice for part in parts for choice in part.get("enum", ())]
