"""What has changed between two contracts in a way that breaks a program written for the older one.

The rules are those of closed requests and open answers. A request may only be asked for less than before: no new required member, no member
or value taken away, no narrower bound, no other type. An answer may only promise more: no member gone, none that was always there become
optional, no type that a reader did not expect. Whatever a request newly takes, or an answer newly holds, breaks nobody.
Descriptions, examples and order are not compared. Where a schema is composed in a way that this does not understand, a change is told
as a fault: it is for a person to judge.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from typing import Any

Part = dict[str, Any]
METHODS = ("get", "post", "put", "patch", "delete")
LOWER = ("minimum", "exclusiveMinimum", "minLength", "minItems", "minProperties")
UPPER = ("maximum", "exclusiveMaximum", "maxLength", "maxItems", "maxProperties")
CHOICES = ("anyOf", "oneOf")
SAID = ("description", "title", "example", "examples", "default", "deprecated", "x-kind", "x-unit", "x-units", "$comment")
EXACT = ("pattern", "format", "const", "not", "if", "then", "multipleOf", "uniqueItems", "prefixItems")
UNKNOWN = object()


def breaks(old: Part, new: Part) -> list[str]:
    """Every breaking change, each with its place; empty when a program for ``old`` works with ``new``."""
    return list(dict.fromkeys(_operations(old, new)))


def _operations(old: Part, new: Part) -> Iterator[str]:
    for path, item in old["paths"].items():
        for method in METHODS:
            if method in item:
                place, now = f"{method.upper()} {path}", new["paths"].get(path, {}).get(method)
                yield from [f"{place}: the operation is gone"] if now is None else _operation(place, item[method], now, old, new)


def _operation(place: str, was: Part, now: Part, old: Part, new: Part) -> Iterator[str]:
    if was["operationId"] != now["operationId"]:
        yield f"{place}: operationId was {was['operationId']} and is {now['operationId']}"
    yield from _parameters(place, _named(was, old), _named(now, new), old, new)
    yield from _bodies(f"{place} request", was.get("requestBody"), now.get("requestBody"), Comparison(old, new, True))
    for status, answer in was["responses"].items():
        yield from _answer(f"{place} {status}", answer, now["responses"].get(status), old, new)


def _named(operation: Part, document: Part) -> dict[tuple[str, str], Part]:
    found = (resolved(one, document) for one in operation.get("parameters", ()))
    return {(one["in"], one["name"]): one for one in found}


def _parameters(place: str, was: Mapping[Any, Part], now: Mapping[Any, Part], old: Part, new: Part) -> Iterator[str]:
    compare = Comparison(old, new, True)
    for key, parameter in was.items():
        if key not in now:
            yield f"{place}: the {key[0]} parameter {key[1]} is gone"
        else:
            yield from compare.schemas(f"{place} {key[1]}", parameter["schema"], now[key]["schema"])
    for key, parameter in now.items():
        if parameter.get("required") and not was.get(key, {}).get("required"):
            yield f"{place}: the {key[0]} parameter {key[1]} is now required"


def _answer(place: str, was: Part, now: Part | None, old: Part, new: Part) -> Iterator[str]:
    if now is None:
        # A refusal that no longer happens breaks nobody; an answer does.
        yield from [f"{place}: the answer is gone"] if place.endswith(" 200") else ()
        return
    was, now = resolved(was, old), resolved(now, new)
    yield from (f"{place}: the header {name} is gone" for name in was.get("headers", {}) if name not in now.get("headers", {}))
    yield from _bodies(place, was, now, Comparison(old, new, False))


def _bodies(place: str, was: Part | None, now: Part | None, compare: Comparison) -> Iterator[str]:
    before, after = (one or {} for one in (was, now))
    if compare.asked and after.get("required") and not before.get("required"):
        yield f"{place}: a body is now required"
    for media_type, content in before.get("content", {}).items():
        if media_type not in after.get("content", {}):
            yield f"{place}: {media_type} is gone"
        else:
            yield from compare.schemas(place, content["schema"], after["content"][media_type]["schema"])


class Comparison:
    """Compares schemas of an old and a new contract, as parts of requests (``asked``) or of answers."""

    def __init__(self, old: Part, new: Part, asked: bool) -> None:
        self.old, self.new, self.asked = old, new, asked
        self._seen: set[str] = set()

    def schemas(self, place: str, was: Any, now: Any) -> Iterator[str]:
        """The breaking changes between two schemas, each pair of named ones once."""
        key = json.dumps([was, now], sort_keys=True)
        if key in self._seen:
            return
        self._seen.add(key)
        if isinstance(was, bool) or isinstance(now, bool):
            yield from [f"{place}: {was} became {now}"] if was != now else ()
            return
        yield from self._resolved(place, merged(was, self.old), merged(now, self.new))

    def _resolved(self, place: str, was: Part, now: Part) -> Iterator[str]:
        if any(name in one for name in CHOICES for one in (was, now)):
            yield from self._choices(place, was, now)
            return
        for rule in (_types, _enums, _bounds, _exact):
            yield from (f"{place}: {change}" for change in rule(was, now, self.asked))
        yield from self._members(place, was, now)
        yield from self._inner(place, was, now)

    def _members(self, place: str, was: Part, now: Part) -> Iterator[str]:
        before, after = was.get("properties", {}), now.get("properties", {})
        required, demanded = set(was.get("required", ())), set(now.get("required", ()))
        for name in before:
            if name in after:
                yield from self.schemas(f"{place}/{name}", before[name], after[name])
            elif not self.asked or now.get("additionalProperties") is False:
                yield f"{place}/{name}: the member is gone"
        if self.asked:
            yield from (f"{place}/{name}: the member is now required" for name in sorted(demanded - required))
            if now.get("additionalProperties") is False and was.get("additionalProperties") is not False and "properties" in was:
                yield f"{place}: the request is now closed"
        else:
            yield from (f"{place}/{name}: the member is no longer always there" for name in sorted(required - demanded) if name in after)

    def _inner(self, place: str, was: Part, now: Part) -> Iterator[str]:
        for name in ("items", "additionalProperties"):
            before, after = was.get(name), now.get(name)
            if isinstance(before, dict) and isinstance(after, dict):
                yield from self.schemas(f"{place}/*", before, after)
            elif isinstance(before if self.asked is False else after, dict):
                yield f"{place}: {name} was {before} and is {after}"

    def _choices(self, place: str, was: Part, now: Part) -> Iterator[str]:
        """Every way that may come must be a way that is known: what was asked still fits, what is told fits what was read."""
        before, after = alternatives(was), alternatives(now)
        may_come, known = (before, after) if self.asked else (after, before)
        for way in may_come:
            if not any(self._fits(way, other) for other in known):
                yield f"{place}: {'no longer takes' if self.asked else 'newly tells'} {_short(way)}"

    def _fits(self, way: Part, other: Part) -> bool:
        was, now = (way, other) if self.asked else (other, way)
        inner = Comparison(self.old, self.new, self.asked)
        inner._seen = set(self._seen)
        return not list(inner.schemas("", was, now))


def resolved(part: Part, document: Part) -> Part:
    """``part``, or what its reference leads to with the members beside the reference laid over."""
    if "$ref" not in part:
        return part
    found: Any = document
    for step in part["$ref"].removeprefix("#/").split("/"):
        found = found[step.replace("~1", "/").replace("~0", "~")]
    return {**resolved(found, document), **{key: value for key, value in part.items() if key != "$ref"}}


def merged(schema: Part, document: Part) -> Part:
    """``schema`` with its reference followed and the parts of its ``allOf`` laid together."""
    whole = {key: value for key, value in resolved(schema, document).items() if key not in SAID}
    for part in whole.pop("allOf", ()):
        more = merged(part, document)
        for key in ("properties", "required"):
            if key in whole and key in more:
                more[key] = {**whole[key], **more[key]} if key == "properties" else [*whole[key], *more[key]]
        whole |= more
    return whole


def alternatives(schema: Part) -> list[Part]:
    """The ways in which a value can fit; a list of types is a way each."""
    for name in CHOICES:
        if name in schema:
            rest = {key: value for key, value in schema.items() if key != name}
            return [{**rest, **way} for way in schema[name]]
    types = schema.get("type")
    return [{**schema, "type": one} for one in types] if isinstance(types, list) else [schema]


def _short(way: Part) -> str:
    return json.dumps(way, sort_keys=True)[:160]


def _set(value: Any) -> set[Any]:
    return set(value) if isinstance(value, list) else {value}


def _types(was: Part, now: Part, asked: bool) -> Iterator[str]:
    before, after = (_set(one.get("type", "any")) for one in (was, now))
    may_come, known = (before, after) if asked else (after, before)
    known = known | {"integer"} if "number" in known else known
    if "any" not in known and not may_come <= known:
        yield f"the type was {_told(before)} and is {_told(after)}"


def _told(types: set[Any]) -> str:
    return " or ".join(sorted(types))


def _enums(was: Part, now: Part, asked: bool) -> Iterator[str]:
    before, after = was.get("enum"), now.get("enum")
    if asked and after is not None:
        gone = [one for one in before or () if one not in after]
        yield from [f"no longer takes {', '.join(map(str, gone))}"] if gone else []
        yield from ["newly takes listed values only"] if before is None else []
    if not asked and before is not None and after is None:
        yield "newly tells values that are not listed"


def _bounds(was: Part, now: Part, asked: bool) -> Iterator[str]:
    if not asked:
        return
    for names, narrower in ((LOWER, _above), (UPPER, _below)):
        for name in names:
            if name in now and (name not in was or narrower(now[name], was[name])):
                yield f"{name} was {was.get(name, 'absent')} and is {now[name]}"


def _above(now: float, was: float) -> bool:
    return now > was


def _below(now: float, was: float) -> bool:
    return now < was


def _exact(was: Part, now: Part, asked: bool) -> Iterator[str]:
    for name in EXACT:
        before, after = was.get(name, UNKNOWN), now.get(name, UNKNOWN)
        # What is no longer asked for, and what is newly promised, breaks nobody.
        freed = after is UNKNOWN if asked else before is UNKNOWN
        if before != after and not freed:
            yield f"{name} has changed"
