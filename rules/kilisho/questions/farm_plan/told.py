"""Tells a farm plan: its parts, one calendar, and what they assume, find and warn of, each once."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from kilisho.questions.answers import Answer, known
from kilisho.questions.farm_plan.parts import Plan

SHARED = ("assumptions", "findings", "cautions", "measure_first", "derivation", "rulebook", "name")
MOST_MEASURED = 6


def told(plan: Plan) -> Answer:
    """The plan as the answer tells it."""
    return {
        **{operation: {name: part for name, part in answer.items() if name not in SHARED} for operation, answer in plan.parts.items()},
        "left_out": plan.left_out,
        **known(left_over=plan.left_over),
        "calendar": calendar_of(plan),
        "measure_first": list(_first(plan)),
        "findings": findings_of(plan),
        "cautions": list(_once(plan, "cautions", "id")),
        **({"derivation": list(_derivation(plan))} if plan.explain else {}),
    }


def calendar_of(plan: Plan) -> list[Answer]:
    """Everything that is to be done, by date, or by day where no day is known; what repeats stands where it begins."""
    rows = [{**row, "operation": operation} for operation, answer in plan.parts.items() for row in answer.get("schedule", ())]
    return sorted(rows, key=lambda row: (row.get("date", "9999"), row["operation"], row["day"]))


def findings_of(plan: Plan) -> list[Answer]:
    """The findings of the safety check, which knows all that the parts found, and those of the parts that failed in them alone."""
    checked = [one for one in plan.parts.get("safety_check", {}).get("findings", ()) if one["verdict"] != "pass"]
    known = {one["check"] for one in checked if one["verdict"] == "fail"}
    own = [one for one in _once(plan, "findings", "check") if one["verdict"] == "fail" and one["check"] not in known]
    alone = {one["check"] for one in own}
    return own + [one for one in checked if one["check"] not in alone]


def _once(plan: Plan, member: str, key: str) -> Iterator[Answer]:
    """The entries of all parts, each id once: a failure before what is not known."""
    entries = [
        one for operation, answer in plan.parts.items() if operation != "safety_check" or member != "findings" for one in answer[member]
    ]
    ranked = sorted(entries, key=lambda one: one.get("verdict") != "fail")
    return iter({one[key]: one for one in reversed(ranked)}.values())


def assumptions_of(plan: Plan) -> list[Answer]:
    """What the parts assumed, each once, with the operations that did."""
    told: list[Answer] = []
    seen: dict[Any, list[tuple[Answer, Answer]]] = {}
    for operation, assumed in plan.assumptions.items():
        for one in assumed:
            alike = seen.setdefault((one["quantity"], one.get("of")), [])
            # Most are the very same in all parts, which is sooner seen than that they are equal.
            entry = next((entry for other, entry in alike if other is one or other == one), None)
            if entry is None:
                entry = {**one, "operations": []}
                alike.append((one, entry))
                told.append(entry)
            if operation not in entry["operations"]:
                entry["operations"].append(operation)
    return told


def _first(plan: Plan) -> Iterable[Answer]:
    """What is worth measuring, by how much it narrows the answer that it narrows most."""
    rows = [{**row, "operation": operation} for operation, answer in plan.parts.items() for row in answer.get("measure_first", ())]
    ranked = sorted(rows, key=lambda row: -row["narrows"]["value"])
    best = {(row["quantity"], row.get("of")): row for row in reversed(ranked)}
    return sorted(best.values(), key=lambda row: -row["narrows"]["value"])[:MOST_MEASURED]


def _derivation(plan: Plan) -> Iterator[dict[str, Any]]:
    for operation, answer in plan.parts.items():
        for step in answer.get("derivation", ()):
            yield {**step, "operation": operation}
