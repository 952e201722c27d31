"""Changes JSON and YAML where they stay JSON and YAML: most bytes changed at random end at the parser, and nothing behind it is reached."""

from __future__ import annotations

import copy
import json
import re
from collections.abc import Callable, Mapping, Sequence
from functools import cache
from random import Random
from typing import Any

import yaml
from tests.fuzz import targets

from kilisho.faults import RefusedError
from kilisho.packs import BASE_PACK
from kilisho.questions import Question

STRANGE = (None, True, False, 0, -0.0, -1, 1, 1e-300, 1e300, 10**30, 0.5, "", "x", "a" * 300, "\u0000", "\u202e", "=1+1", [], {}, [[]])
CHANGES = 3
# An entry of the base pack is put into a pack this often, and a body sent to another question.
WHOLE_ENTRY, OTHER_QUESTION = 0.3, 0.05
# Of bodies changed without thought nine in ten are refused, and the working out behind the request is hardly tried: as many are changed so
# that the question takes them, by the first of a few attempts.
TAKEN, ATTEMPTS = 0.5, 5
# Of packs, those written as YAML with a tag or a scalar that JSON lacks; of these, those with a tag, and those that keep the value.
AS_YAML, TAGGED = 0.4, 0.5
_KINDS = ("bool", "int", "float", "null", "str", "binary", "timestamp", "seq", "map", "set", "omap", "pairs", "merge", "python/name:os")
TAGS = (*(f"!!{kind}" for kind in _KINDS), "!", "!own", "!<tag:yaml.org,2002:int>")
SCALARS = (
    *("~", "yes", "OFF", "<<", "=", "''", "maybe", "0x", "0x_", "0b1", "0o7", "09", "0_", "1_0", ".5", "._", "1.", "-.inf", ".NaN"),
    *("1:59", "1:1.5", "190:20:30.15", "2027-02-30", "2027-01-01T24:00:00Z", "0001-01-01 00:00:00 +99:99", "9999-12-31T23:59:59-14:00"),
    *("0x" + "f" * 400, "1" + ":1" * 300, "1" + "0" * 400, "9" * 5000, "1." + "0" * 200, "1:" * 200 + "1.5", "-" + "9" * 99, "1e400"),
)
_VALUES = re.compile(r'"(?:[^"\\]|\\.)*"|-?\d[\d.eE+-]*|true|false|null')
NEAR = (0.1, 0.5, 0.8, 0.97, 1.03, 1.25, 2.0, 10.0)
Document = Any
Place = tuple[str | int, ...]
Vocabulary = Mapping[str, Sequence[Any]]
Change = Callable[[Document, Vocabulary, Random], Document]


def body(data: bytes, most: int, seed: int) -> bytes | None:
    """A question's name and its JSON with one to three changes, no longer than ``most``; None where there is no JSON."""
    name, _, text = data.partition(b"\n")
    random = Random(seed)
    try:
        document = json.loads(text)
    except (ValueError, RecursionError):
        return None
    if random.random() < TAKEN:
        return _fitting(_written(name.decode("latin-1"), _taken(name.decode("latin-1"), document, random)), most)
    if random.random() < OTHER_QUESTION:
        name = random.choice(list(targets.questions())).encode()
    return _fitting(_written(name.decode("latin-1"), _changed(document, words_of_bodies(), random)), most)


def _written(name: str, document: Document) -> bytes:
    return f"{name}\n{json.dumps(document)}".encode()


def _taken(name: str, document: Document, random: Random) -> Document:
    """``document`` changed gently, by the first attempt that its question takes; by the last where it takes none."""
    question, made = targets.questions().get(name), document
    for _ in range(ATTEMPTS):
        made = _times(_gently, document, words_of_bodies(), random)
        if question is not None and _is_taken(question, made):
            break
    return made


def _is_taken(question: Question, document: Document) -> bool:
    try:
        question.read(document)
    except RefusedError:
        return False
    return True


def pack(data: bytes, most: int, seed: int) -> bytes | None:
    """A pack with one to three changes, or an entry of the base pack laid into it; None where there is no YAML."""
    random = Random(seed)
    try:
        document = yaml.safe_load(data.decode())
        changed = _changed(document, words_of_packs(), random) if random.random() > WHOLE_ENTRY else _with_an_entry(document, random)
        text = json.dumps(changed, default=str)
        return _fitting((_with_a_scalar(text, random) if random.random() < AS_YAML else text).encode(), most)
    # The library lets its own slips out where a tag does not fit its value.
    except (yaml.YAMLError, ValueError, RecursionError, TypeError, LookupError, ArithmeticError, AttributeError):
        return None


def _with_a_scalar(text: str, random: Random) -> str:
    """JSON made YAML that is no JSON: one of its values gets a tag, or is exchanged for a scalar that only YAML reads."""
    values = [found for found in _VALUES.finditer(text) if text[found.end() :].lstrip()[:1] != ":"]
    if not values:
        return text
    at = random.choice(values)
    tag = random.choice(TAGS) + " " if random.random() < TAGGED else ""
    value = at[0] if random.random() < TAGGED else random.choice(SCALARS)
    return f"{text[: at.start()]}{tag}{value} {text[at.end() :]}"


def _fitting(found: bytes, most: int) -> bytes | None:
    return found if len(found) <= most else None


def _changed(document: Document, words: Vocabulary, random: Random) -> Document:
    return _times(_once, document, words, random)


def _times(change: Change, document: Document, words: Vocabulary, random: Random) -> Document:
    """A copy of ``document`` with one to three changes."""
    made = copy.deepcopy(document)
    for _ in range(random.randint(1, CHANGES)):
        made = change(made, words, random)
    return made


def _gently(document: Document, words: Vocabulary, random: Random) -> Document:
    """``document`` with a number moved, a part exchanged for another of the same member, an entry doubled or a part left out."""
    place = random.choice(_places(document))
    if not place:
        return document
    holder, key = _at(document, place[:-1]), place[-1]
    value = holder[key]
    if isinstance(value, int | float) and not isinstance(value, bool):
        holder[key] = type(value)(value * random.choice(NEAR))
    elif isinstance(holder, list):
        holder.append(copy.deepcopy(value))
    elif random.random() < TAKEN:
        holder[key] = copy.deepcopy(random.choice([one for one in words.get(str(key), ()) if type(one) is type(value)] or [value]))
    else:
        del holder[key]
    return document


def _once(document: Document, words: Vocabulary, random: Random) -> Document:
    """``document`` with one part replaced, left out, doubled or put elsewhere."""
    place = random.choice(_places(document))
    if not place:
        return document or {}
    holder, key = _at(document, place[:-1]), place[-1]
    match random.randrange(5):
        case 0:
            del holder[key]
        case 1:
            holder[key] = _other(holder[key], place, words, random)
        case 2:
            holder[key] = copy.deepcopy(random.choice(STRANGE))
        case 3 if isinstance(holder, list):
            holder.extend([holder[key]] * random.choice((1, 2, 50)))
        case _ if isinstance(holder, dict):
            name = random.choice(list(words))
            holder[name] = copy.deepcopy(random.choice(words[name]))
    return document


def _other(value: Any, place: Place, words: Vocabulary, random: Random) -> Any:
    """Another value of the same member or, of a number, a number near or far."""
    if isinstance(value, int | float) and not isinstance(value, bool) and random.random() < 0.7:
        return random.choice((value * 2, value / 7, -value, value * 1000, value + 1, value - 1, value * 1e-6))
    names = [part for part in place if isinstance(part, str)]
    return copy.deepcopy(random.choice(words.get(names[-1] if names else "", STRANGE)))


def _places(document: Document) -> list[Place]:
    """Every place, each holder before what it holds."""
    found, ahead = list[Place](), [((), document)]
    while ahead:
        place, value = ahead.pop()
        found.append(place)
        inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
        ahead += [((*place, key), part) for key, part in inner][::-1]
    return found


def _at(document: Document, place: Place) -> Any:
    for key in place:
        document = document[key]
    return document


@cache
def words_of_bodies() -> Vocabulary:
    """Values by the name of their member: from the examples, and the ids and choices of the published schemas."""
    found: dict[str, list[Any]] = {}
    for question in targets.questions().values():
        _gather(question.example, found)
        schema = question.request.model_json_schema(mode="validation")
        for part in (schema, *schema.get("$defs", {}).values()):
            for name, member in part.get("properties", {}).items():
                found.setdefault(name, []).extend(_choices(member, question))
    return {name: [*values, *STRANGE[:4]] for name, values in found.items()}


@cache
def words_of_packs() -> Vocabulary:
    """Values by the name of their member in the base pack."""
    found: dict[str, list[Any]] = {}
    _gather(_base(), found)
    return found


@cache
def _base() -> Document:
    merged: dict[str, Any] = {}
    for file in sorted(BASE_PACK.glob("*.yaml")):
        for section, entries in json.loads(json.dumps(yaml.safe_load(file.read_text("utf-8")), default=str)).items():
            merged[section] = {**merged.get(section, {}), **entries}
    return merged


def _with_an_entry(document: Document, random: Random) -> Document:
    section = random.choice(list(_base()))
    name = random.choice(list(_base()[section]))
    laid = document if isinstance(document, dict) else {}
    held = laid.get(section)
    return {**laid, section: {**(held if isinstance(held, dict) else {}), name: copy.deepcopy(_base()[section][name])}}


def _gather(value: Document, into: dict[str, list[Any]]) -> None:
    if isinstance(value, dict):
        for name, inner in value.items():
            into.setdefault(name, []).append(inner)
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        _gather(inner, into)


def _choices(member: Any, question: Question) -> list[Any]:
    parts = [member, *member.get("anyOf", ()), member.get("items", {})]
    ids = [one for part in parts if "x-ids-of" in part for one in list(question.ids.get(part["x-ids-of"], ()))[:20]]
    return ids + [choice for part in parts for choice in part.get("enum", ())]
