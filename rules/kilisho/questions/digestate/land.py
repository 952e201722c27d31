"""How far the digestate reaches: what each field needs and gets, in the order in which the fields are stated."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from kilisho.farm import GRAPH, Ledger
from kilisho.questions.digestate.waiting import Waiting, waiting_of
from kilisho.questions.findings import Inspector
from kilisho.ranges import Uncertain, certain
from kilisho.rulebook import Crop
from kilisho.units import to_canonical

YEAR = to_canonical(1.0, "time", "a")


@dataclass(slots=True)
class Field:
    """One field with what it gets a year. Volumes [m3], areas [m2], ``rate`` and ``nitrogen`` (total) per area and year."""

    id: str
    entry: Crop
    area: float | None
    need: Uncertain
    rate: Uncertain
    nitrogen: Uncertain
    limited_by: str
    wanted: Uncertain | None
    given: Uncertain
    served: Uncertain
    facts: dict[str, bool]
    waiting: Waiting


@dataclass(slots=True)
class Land:
    """All fields; the digestate [m3] that is left over in a year, and the area [m2] that all of it would serve."""

    fields: list[Field]
    surplus: Uncertain
    served: Uncertain


def share_out(asked: Any, ledger: Ledger, inspector: Inspector, feed: Mapping[str, Any]) -> Land:
    """Give each field its need in turn, as far as the year's digestate goes; a field without an area takes what is left.

    Where a crop must not get digestate at all, it gets none. ``served`` counts what is left over on more of the last crop that may.
    """
    left, fields = ledger.uncertain("digestate_per_day").times(YEAR), list[Field]()
    for item in asked.crops:
        field = _field(item, ledger, inspector, feed, left)
        left = left.less(field.given)
        fields.append(field)
    served = certain(0.0)
    for field in fields:
        served = served.plus(field.served)
    takers = [field for field in fields if not field.waiting.never]
    return Land(fields, left, served.plus(left.over(takers[-1].rate)) if takers else served)


def _field(item: Any, ledger: Ledger, inspector: Inspector, feed: Mapping[str, Any], left: Uncertain) -> Field:
    entry = ledger.shelf.data.crops[item.crop]
    facts = _facts(item, entry, ledger)
    waiting = waiting_of(inspector, {**feed, **facts})
    need = certain(item.nitrogen_need) if item.nitrogen_need is not None else ledger.figure("crops", item.crop, "nitrogen_need")
    rate, limited_by = _rate(need, asked_limit(ledger), ledger)
    wanted = None if item.area is None else rate.times(item.area)
    given = certain(0.0) if waiting.never else left if wanted is None else left.at_most(wanted)
    nitrogen = rate.by(ledger.uncertain("spread_nitrogen_concentration"))
    return Field(item.crop, entry, item.area, need, rate, nitrogen, limited_by, wanted, given, given.over(rate), facts, waiting)


def _facts(item: Any, entry: Crop, ledger: Ledger) -> dict[str, bool]:
    """What checks ask about the crop: as stated, else as the rulebook has it, which is listed as an assumption."""
    raw, soil = item.eaten_raw, item.edible_part_touches_soil
    if raw is None:
        raw = entry.eaten_raw
        _assume("eaten_raw", item.crop, raw, ledger)
    if soil is None:
        soil = entry.edible_part_touches_soil
        if raw:
            _assume("edible_part_touches_soil", item.crop, soil, ledger)
    return {"digestate_on_raw_crops": raw, "edible_part_touches_soil": soil, "digestate_on_fodder": entry.fodder}


def _assume(what: str, crop: str, said: bool, ledger: Ledger) -> None:
    ledger.assumptions.append({"quantity": what, "of": crop, "choice": "yes" if said else "no", "basis": "judgement", "source": []})


def asked_limit(ledger: Ledger) -> float | None:
    """The local limit of manure nitrogen [kg/m2], where it is stated."""
    return ledger.stated.get("nitrogen_limit")


def _rate(need: Uncertain, limit: float | None, ledger: Ledger) -> tuple[Uncertain, str]:
    """Digestate a year and area [m3/m2] by the stricter rule, and which one that is."""
    available = ledger.uncertain("available_nitrogen_concentration")
    by_need = Uncertain(*(_by_need(n, c) for n, c in ((need.value, available.value), (need.samples, available.samples))))
    if limit is None:
        return by_need, "nitrogen_need"
    by_limit = certain(limit).over(ledger.uncertain("spread_nitrogen_concentration"))
    return by_need.at_most(by_limit), "nitrogen_limit" if by_limit.value < by_need.value else "nitrogen_need"


def _by_need(need: Any, concentration: Any) -> Any:
    given = {"nitrogen_need": need, "available_nitrogen_concentration": concentration}
    return GRAPH.solve(given, ("digestate_per_area",))["digestate_per_area"]


def land_facts(land: Land) -> dict[str, Any]:
    """Facts of all fields together: what holds of any of them, and the most nitrogen that one of those that get digestate gets."""
    names = ("digestate_on_raw_crops", "edible_part_touches_soil", "digestate_on_fodder")
    held = {name: any(field.facts[name] for field in land.fields) for name in names}
    most = max((field.nitrogen.value for field in land.fields if field.given.value > 0), default=None)
    return {**held, **({} if most is None else {"nitrogen_per_area": most})}


def trace_of_land(land: Land, ledger: Ledger) -> list[dict[str, Any]]:
    """How the digestate per area of each crop came about."""
    available = ledger.values["available_nitrogen_concentration"]
    return [
        {**step, "of": field.id}
        for field in land.fields
        for step in GRAPH.trace({"nitrogen_need": field.need.value, "available_nitrogen_concentration": available}, ("digestate_per_area",))
    ]
