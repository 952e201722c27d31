"""Writes most messages several times faster than Fluent's own resolver does: those of text and parameters, with at most one choice.

Answers say dozens of sentences each, and all of ours are so; a translation that chooses twice is left to the resolver. The tests hold
what is written here against it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fluent.syntax import ast

Element = ast.TextElement | ast.Placeable


@dataclass(frozen=True, slots=True)
class Format:
    """A message as texts for ``str.format_map``: ``forms`` by the plural form of the parameter ``by``, or ``usual`` alone."""

    usual: str
    by: str | None
    forms: Mapping[str, str]


def format_of(message: ast.Message) -> Format | None:
    """The message's texts; None where it is more than text and parameters with one choice of a plural around them."""
    if message.value is None:
        return None
    elements = message.value.elements
    match elements:
        case [ast.Placeable(expression=ast.SelectExpression(selector=ast.VariableReference(id=by), variants=variants))]:
            return _choice(by.name, variants)
    text = _text(elements)
    return None if text is None else Format(text, None, {})


def _choice(by: str, variants: Sequence[ast.Variant]) -> Format | None:
    forms: dict[str, str] = {}
    usual = ""
    for variant in variants:
        text = _text(variant.value.elements)
        if text is None or not isinstance(variant.key, ast.Identifier):
            return None
        forms[variant.key.name] = text
        usual = text if variant.default else usual
    return Format(usual, by, forms)


def _text(elements: Sequence[Element]) -> str | None:
    parts = [_part(element) for element in elements]
    return None if None in parts else "".join(map(str, parts))


def _part(element: Element) -> str | None:
    match element:
        case ast.TextElement(value=text):
            return text.replace("{", "{{").replace("}", "}}")
        case ast.Placeable(expression=ast.VariableReference(id=name)):
            return f"{{{name.name}}}"
    return None
