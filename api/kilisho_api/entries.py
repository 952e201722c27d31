"""Entries of the rulebook as the catalogue shows them: figures in the unit in which the pack states them."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from functools import cache
from typing import Any, get_args

from pydantic import BaseModel
from pydantic.fields import FieldInfo

from kilisho.rulebook import Condition, Property
from kilisho.units import from_canonical

SIGNIFICANT_DIGITS = 12


def entry(name: str, model: BaseModel) -> dict[str, Any]:
    """One entry with its id first."""
    return {"id": name, **rendered(model)}


def rendered(value: Any, kind: str | None = None) -> Any:
    """Plain JSON values. ``kind`` is the kind of quantity of every figure inside ``value``."""
    if isinstance(value, Property):
        return _figure(value, getattr(value, "kind", kind))
    if isinstance(value, Condition):
        return value.model_dump(mode="json", by_alias=True, exclude_none=True)
    if isinstance(value, BaseModel):
        return _members(value)
    if isinstance(value, Mapping):
        return {key: rendered(inner, kind) for key, inner in value.items()}
    if isinstance(value, tuple):
        return [rendered(inner, kind) for inner in value]
    return value.value if isinstance(value, Enum) else value


def _members(model: BaseModel) -> dict[str, Any]:
    kinds = _kinds(type(model))
    return {name: rendered(getattr(model, name), kinds[name]) for name in kinds}


def _figure(figure: Property, kind: str | None) -> dict[str, Any]:
    if kind is None:
        raise TypeError(f"a figure in {figure.unit} stands in a field that names no kind of quantity")
    numbers = {name: _in_unit(getattr(figure, name), kind, figure.unit) for name in ("low", "typical", "high")}
    others = {name: rendered(getattr(figure, name)) for name in type(figure).model_fields if name not in numbers}
    return {**numbers, "unit": figure.unit, **others}


def _in_unit(value: float | None, kind: str, unit: str) -> float | None:
    """Back in the author's unit; rounding takes away what the two conversions left behind the author's own digits."""
    return None if value is None else float(f"{from_canonical(value, kind, unit):.{SIGNIFICANT_DIGITS}g}")


@cache
def _kinds(model: type[BaseModel]) -> dict[str, str | None]:
    """The kind of quantity of every field, from the mark that the field's type carries."""
    return {name: _kind_of(field) or _kind_within(field.annotation) for name, field in model.model_fields.items()}


def _kind_within(annotation: Any) -> str | None:
    marks = (*getattr(annotation, "__metadata__", ()), *get_args(annotation))
    return next((kind for mark in marks if (kind := _kind_of(mark) or _kind_within(mark))), None)


def _kind_of(mark: Any) -> str | None:
    extra = mark.json_schema_extra if isinstance(mark, FieldInfo) else None
    kind = extra.get("x-kind") if isinstance(extra, dict) else None
    return kind if isinstance(kind, str) else None
