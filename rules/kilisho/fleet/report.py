"""The report on a fleet as an answer: what its counts say, in sentences and in the words of the checks, for people who decide.

What nobody stated stands as prominently as what failed: an installation of which little is known is not a safe one. Nor is one whose row
could not be read: a cell that states a danger is not judged while another one of its row is refused, so it counts as not ruled out.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from kilisho.fleet import Fleet
from kilisho.fleet.counting import GROUPS, Counts, by_frequency
from kilisho.fleet.planted import PLANTED
from kilisho.messages import LANGUAGES, Amount, Message, Number, say
from kilisho.messages.languages import SYMBOLS
from kilisho.packs import Rulebook
from kilisho.questions.installation.slips import DECIMAL_POINT, home_of, written_as
from kilisho.questions.installation.told import TEXTS
from kilisho.questions.installation.verdicts import FAULTS, REFUSED, WORDS
from kilisho.questions.installation.work import CODES, NUMBERS
from kilisho.rulebook import Severity

NAMES = {
    "dangerous": say("report-dangerous"),
    "doubtful": say("report-doubtful"),
    "mis_sized": say("report-mis_sized"),
    "starved": say("report-starved"),
    "fed_wrongly": say("report-fed_wrongly"),
    "underperforming": say("report-underperforming"),
    "unknown": say("report-unknown"),
    "refused": say("report-refused"),
    "sound": say("report-sound"),
}
# Codes of faults that have words; a code that has none stands as it is.
IN_WORDS = frozenset(name.removeprefix("report-fault-") for name in LANGUAGES["en"].entries if name.startswith("report-fault-"))
RECORD = (*NUMBERS, *CODES, "commissioned_on", "visited_on")
MOST_CHECKS, MOST_DANGERS, MOST_PLACES, MOST_FAULTS, MOST_SLIPS = 12, 8, 40, 10, 10
Report = dict[str, Any]


def report_of(counts: Counts, fleet: Fleet, rulebook: Rulebook, name: str, by: str | None = None) -> Report:
    """The report on a fleet that is called ``name``, from its counts."""
    rows, checks = counts["rows"], _checks(fleet)
    dangers = {name for name, check in checks.items() if check.severity is Severity.danger}
    return {
        "name": name,
        "rows": rows,
        "invented": _invented(counts["invented"], rows),
        "groups": [{"group": group, "text": NAMES[group], **_share(_in_group(counts, group), rows)} for group in GROUPS],
        "verdicts": _verdicts(counts),
        "dangers": [_failed(checks, *one, rows) for one in _most(counts["failed"], MOST_DANGERS, dangers)],
        "open": _open(counts, checks),
        "failed": [_failed(checks, *one, rows) for one in _most(counts["failed"], MOST_CHECKS, checks.keys() - dangers)],
        "worst": [_one(number, entry, checks) for number, entry in enumerate(counts["worst"], start=1)],
        "by": by,
        "places": _places(counts["places"]) if by else [],
        "slips": [_read_as(*one, rows) for one in by_frequency(counts["slips"])[:MOST_SLIPS]],
        "faults": [_fault(*one, rows) for one in by_frequency(counts["faults"])[:MOST_FAULTS]],
        "unstated": _unstated(counts, fleet),
        "unread": list(counts["unread"]),
        "misnamed": _misnamed(counts, fleet),
        "rulebook": rulebook.identity,
    }


def _checks(fleet: Fleet) -> Mapping[str, Any]:
    return {check.compiled.id: check.compiled.check for check in fleet.desk.checks}


def _share(count: int, rows: int) -> dict[str, Any]:
    return {"count": count, "share": count / rows if rows else 0.0}


def _in_group(counts: Counts, group: str) -> int:
    column, words = GROUPS[group]
    return sum(counts["words"].get(column, {}).get(word, 0) for word in words)


def refused_in(counts: Counts) -> int:
    """The rows that could not be read, of whose dangers nothing is known whatever they state."""
    return int(counts["words"].get("verdict", {}).get(REFUSED, 0))


def _open(counts: Counts, checks: Mapping[str, Any]) -> dict[str, Any]:
    """In how many rows a check of danger level has no answer, and which have none; in a row that is refused none has one."""
    rows, unjudged = counts["rows"], refused_in(counts)
    return {
        **_share(counts["words"].get("safety", {}).get("open", 0) + unjudged, rows),
        "unjudged": unjudged,
        "checks": [_check(checks, name, count + unjudged, rows) for name, count in _most(counts["open_dangers"], MOST_DANGERS)],
        "others": max(0, len(counts["open_dangers"]) - MOST_DANGERS),
    }


def _verdicts(counts: Counts) -> list[dict[str, Any]]:
    found = counts["words"].get("verdict", {})
    told = {**TEXTS, "refused": say("report-verdict-refused")}
    return [{"verdict": word, "text": told[word], **_share(found.get(word, 0), counts["rows"])} for word in WORDS["verdict"]]


def _most(counts: Mapping[str, int], most: int, among: Iterable[str] | None = None) -> list[tuple[str, int]]:
    """The commonest, in the order of their names where they are as common."""
    chosen = counts.items() if among is None else [(name, counts[name]) for name in set(among) & counts.keys()]
    return sorted(chosen, key=lambda one: (-one[1], one[0]))[:most]


def _check(checks: Mapping[str, Any], name: str, count: int, rows: int) -> dict[str, Any]:
    return {**_named(checks, name), **_share(count, rows)}


def _failed(checks: Mapping[str, Any], name: str, count: int, rows: int) -> dict[str, Any]:
    return {**_denied(checks, name), **_share(count, rows)}


def _named(checks: Mapping[str, Any], name: str) -> dict[str, Any]:
    check = checks[name]
    return {"check": name, "title": check.title, "severity": str(check.severity), "do": check.do}


def _denied(checks: Mapping[str, Any], name: str) -> dict[str, Any]:
    """A check that failed: its title says what should hold, and does not."""
    return {**_named(checks, name), "title": say("report-not-so", title=checks[name].title)}


def _one(number: int, entry: list[Any], checks: Mapping[str, Any]) -> dict[str, Any]:
    """One of the worst: which it is, its verdict, and the failed check that gave it with what to do."""
    *_, row, about = entry
    name = _deciding(about["verdict"], about["failed"], checks)
    told = {"number": number, "row": int(row) + 1, "others": len(about["failed"]) - 1, "slip": _slip(about["slips"])}
    return {**_denied(checks, name), **told, **{member: about[member] for member in ("id", "place", "verdict")}}


def _deciding(verdict: str, failed: list[str], checks: Mapping[str, Any]) -> str:
    """The failed check that gave the verdict. They stand by severity, so a lesser one of another aspect may stand before it."""
    gives = {"doubtful": frozenset({"doubtful"}), "faulty": FAULTS}.get(verdict, frozenset())
    return next((name for name in failed if checks[name].finds in gives), failed[0])


def _slip(slips: list[Mapping[str, Any]]) -> Message | None:
    """How a number that cannot be right is read probably."""
    if not slips:
        return None
    member, number, read_as = (slips[0][name] for name in ("member", "value", "read_as"))
    value = Amount(number, home_of(member).code)
    if read_as == DECIMAL_POINT:
        return say("report-slip-decimal_point", member=member, value=value)
    return say("report-slip", member=member, value=value, written=Amount(written_as(member, number, read_as), read_as))


def _read_as(member: str, code: str, count: int, rows: int) -> dict[str, Any]:
    """In how many rows a column's number is probably in another unit, or its decimal point elsewhere."""
    text = say("report-slips-point") if code == DECIMAL_POINT else SYMBOLS.get(code, code.replace("m3", "m³"))
    return {"member": member, "read_as": code, "text": text, **_share(count, rows)}


def _fault(column: str, code: str, count: int, rows: int) -> dict[str, Any]:
    """How many rows hold a fault: its column, where it has one, and its code."""
    text = say(f"report-fault-{code}") if code in IN_WORDS else code
    return {"fault": f"{column}: {code}" if column else code, "column": column, "text": text, **_share(count, rows)}


def _invented(count: int, rows: int) -> Message | None:
    """That rows are invented, where they say so themselves."""
    if not count:
        return None
    return say("report-invented") if count == rows else say("report-invented-some", total=Number(count))


def _places(places: Mapping[str, Mapping[str, int]]) -> list[dict[str, Any]]:
    """Each place with its counts, the largest first; the smallest together where there are many."""
    ordered = sorted(places.items(), key=lambda one: (-one[1]["rows"], one[0]))
    found = [_place(name or say("report-no-place"), counts) for name, counts in ordered[:MOST_PLACES]]
    rest = [counts for _, counts in ordered[MOST_PLACES:]]
    if rest:
        together = {group: sum(one[group] for one in rest) for group in rest[0]}
        found.append(_place(say("report-other-places", count=len(rest)), together))
    return found


def _place(name: str, counts: Mapping[str, int]) -> dict[str, Any]:
    return {"place": name, "rows": counts["rows"], "groups": {group: _share(counts[group], counts["rows"]) for group in GROUPS}}


def _misnamed(counts: Counts, fleet: Fleet) -> list[dict[str, Any]]:
    """Columns that were not read although their names are close to others: a misspelt one blinds a check in every row."""
    near = {name: fleet.columns.nearest(name) for name in counts["unread"] if name != PLANTED or not counts["invented"]}
    told = {name: say("fault-nearest", fault=name, nearest=", ".join(meant)) for name, meant in near.items() if meant}
    return [{"column": name, "nearest": near[name], "text": text} for name, text in told.items()]


def _unstated(counts: Counts, fleet: Fleet) -> dict[str, Any]:
    """What share of the rows leaves each member of the record out, and how many facts beside it no row states."""
    rows, stated = counts["rows"], counts["stated"]
    members = [{"member": name, **_share(rows - stated.get(name, 0), rows)} for name in RECORD]
    facts = [name for name in fleet.members if name not in RECORD]
    left_out = sum(one["count"] for one in members)
    return {
        "members": sorted(members, key=lambda one: (-one["count"], one["member"])),
        "record": _share(left_out, rows * len(RECORD)),
        "facts": len(facts),
        "facts_never_stated": sum(not stated.get(name) for name in facts),
    }
