"""Changes made to a schema and to every schema inside it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

Schema = dict[str, Any]
PLACE = "#/components/schemas/"


def mapped(value: Any, change: Callable[[Schema], Schema]) -> Any:
    """``value`` with ``change`` applied to every schema in it, the inner ones first."""
    if isinstance(value, dict):
        return change({key: mapped(inner, change) for key, inner in value.items()})
    return [mapped(inner, change) for inner in value] if isinstance(value, list) else value


def opened(schema: Schema) -> Schema:
    """An answer's schema: a client must take members that it does not know."""
    opened: Schema = mapped(schema, _open)
    return opened


def _open(part: Schema) -> Schema:
    return {key: value for key, value in part.items() if (key, value) != ("additionalProperties", False)}


def renamed(part: Schema, names: Mapping[str, str]) -> Schema:
    """``part`` with its reference, if it has one, leading to the new name."""
    reference = part.get("$ref")
    if not isinstance(reference, str) or reference.removeprefix(PLACE) not in names:
        return part
    return {**part, "$ref": PLACE + names[reference.removeprefix(PLACE)]}


def listed(part: Schema) -> Schema:
    """``part``, and if it is a tuple, with the schema that all its places have in common: most generators read ``items`` only."""
    places = part.get("prefixItems")
    if not isinstance(places, list) or "items" in part:
        return part
    return {**part, "items": places[0] if all(place == places[0] for place in places) else {}}


def conditioned(part: Schema) -> Schema:
    """``part`` with "one of these members" said as a condition: generators take an ``anyOf`` beside ``properties`` for a union."""
    ways = part.get("anyOf", ())
    if "properties" not in part or len(ways) != 2 or any(way.keys() != {"required"} for way in ways):
        return part
    return {**{key: value for key, value in part.items() if key != "anyOf"}, "if": {"not": ways[0]}, "then": ways[1]}
