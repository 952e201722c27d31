"""The words of the contract: what a developer reads first."""

from __future__ import annotations

from kilisho.faults import CROSS_FIELD_CODES
from kilisho.units import KINDS
from kilisho_api.problem_types import PROBLEM_TYPES
from kilisho_api.settings import Settings, table

TITLE = "Kilisho API"
VERSION = "0.1.0"
SUMMARY = "Questions about biogas digesters on small farms, answered from a rulebook."
TAGS = (
    {"name": "Questions", "description": "Each takes what is known of one farm and answers with numbers, ranges, findings and cautions."},
    {"name": "Rulebook", "description": "What the answers rest on: substrates, animals, structures, checks, sources. Cacheable."},
    {"name": "Service", "description": "Health, readiness, figures for monitoring, and what each kind of problem means."},
)

# Codes of faults. The tests compare every code that they ever see with these.
CODES = {
    "missing": "a required member is absent",
    "extra_forbidden": "there is no such member here; nearest offers names close to it",
    "model_type": "an object was expected",
    "list_type": "a list was expected",
    "too_short": "the list has too few items",
    "too_long": "the list has too many items",
    "number_expected": "a number, or an object with value and unit, was expected",
    "whole_number_expected": "a whole number was expected",
    "value_and_unit": "an object with exactly value and unit was expected",
    "unit_expected": "the unit must be text",
    "unknown_unit": "the unit is not one that the member knows; nearest offers some",
    "out_of_range": "the value lies outside its meaning; the detail gives the bounds",
    "clock_expected": "a time of day as HH:MM was expected",
    "date_expected": "an existing day as YYYY-MM-DD was expected",
    "yes_no_expected": "true or false was expected",
    "text_expected": "text of a limited length was expected",
    "not_one_of": "the value is not one of those listed",
    "list_expected": "a list of the listed values, each once, was expected",
    "unknown_id": "the rulebook holds no entry with this id; nearest offers some",
    "volume_missing": "the digester states neither of its volumes",
    "amount_missing": "the offer states neither how much there is nor how much there is a day",
    "two_dilutions": "the dilution is stated in two ways",
    "too_many_parameters": "the query has more parameters than any address takes, and was not read",
    "unknown_parameter": "there is no such query parameter here",
    "table_unreadable": "the table as a whole cannot be read, or only by unpacking more than is permitted",
    "no_column": "no column of the table is known",
    "column_twice": "two columns of the table hold the same member",
    "column_type": "a column of the table has a type that it cannot have",
    "row_unreadable": "a row of a table cannot be read at all",
    "cell_unreadable": "a cell of a table cannot be read at all",
    "repeated_parameter": "the query parameter was given more than once",
}


def info(settings: Settings) -> dict[str, str]:
    """The info object of the document."""
    return {"title": TITLE, "version": VERSION, "summary": SUMMARY, "description": _description(settings)}


def _description(settings: Settings) -> str:
    return "\n\n".join((*_ABOUT, *_ANSWERS, _problems(), _ERRORS, _limits(settings), *_REST, _units(), _settings()))


_ABOUT = (
    "Kilisho answers the questions that an extension officer works out on a farm visit: how large a digester, what the first charge "
    "takes, what to feed every day, whether a site is safe. It keeps nothing: the same question to the same rulebook has the same "
    "answer, so repeating a request is always safe.",
    "**An answer does not replace local codes or licensed practice.** Gas, pits, pressure and excavation kill. Show the findings "
    "and cautions of an answer beside its numbers, and read a finding whose verdict is `unknown` as *not known to be safe*.",
    "## Asking\n\nEvery question is a POST of one JSON object as `application/json`. Members that are not part of a request are refused, "
    "so a misspelt name never goes unnoticed. Whatever is left out is taken from the rulebook and listed under `assumptions`. "
    "A member is left out, not sent as `null`.",
    "## Numbers\n\nA number with a dimension is either bare, in the unit that its schema names, or an object such as "
    '`{"value": 12, "unit": "m3"}`. Units are UCUM codes, listed below, and case matters. Answers always give `value` and `unit`, and '
    "`low` and `high` where the value is uncertain. Gas volumes are as used (moist, at 25 Cel and the pressure of the "
    "place; `gas_state` of an answer says which) unless the name ends in `_normal` (dry, 0 Cel, 101.325 kPa).",
)


def _units() -> str:
    rows = "\n".join(f"| {kind.name.replace('_', ' ')} | {', '.join(f'`{code}`' for code in kind.units)} |" for kind in KINDS.values())
    return f"## Unit codes\n\n| kind | codes |\n|---|---|\n{rows}"


_ANSWERS = (
    "## Answers\n\nEvery answer carries `assumptions` (what the rulebook supplied, with how it is known), `findings` (how each check "
    "ended: fail, or unknown with what is missing), `cautions`, and `rulebook`. Answers are open: take no offence at members that you "
    "do not know, and treat a signal word that you do not know as a warning.",
    "`?explain=true` adds `derivation`: every derived quantity with its formula, inputs and source.",
    "## Rulebook versions\n\n`rulebook` names the id, version and content hash of what an answer rests on. Store it with the answer. The "
    "same hash gives the same numbers; a changed figure changes the hash and the version. An operator may lay packs of a region or a "
    "programme over the base pack: ids and figures are then those of the rulebook that is served, listed under /v1.",
)


def _problems() -> str:
    rows = "\n".join(f"| {kind.status} | [{kind.slug}]({kind.address}) | {kind.title} |" for kind in PROBLEM_TYPES.values())
    return (
        "## Problems\n\nEvery refusal is `application/problem+json` (RFC 9457). `type` is an address that this service serves, `instance` "
        f"carries the request's id.\n\n| status | type | title |\n|---|---|---|\n{rows}"
    )


_ERRORS = (
    "All faults of a request come at once under `errors`, up to 100. Each has a `code`, a `detail`, and a `pointer` (RFC 6901) into the "
    "body or the name of the query `parameter`; `nearest` offers valid names. "
    "\n\n| code | meaning |\n|---|---|\n" + "\n".join(f"| `{code}` | {meaning} |" for code, meaning in CODES.items()) + "\n\n"
    "Some faults lie between members (a ready date before the first day of collection), where no schema can rule them out: "
    + ", ".join(f"`{code}`" for code in sorted(CROSS_FIELD_CODES))
    + "."
)


def _limits(settings: Settings) -> str:
    return (
        f"## Limits\n\nA body has at most {settings.largest_body} bytes. Lists, texts and numbers have the limits that their schemas "
        f"state. Each process lets {settings.most_waiting} requests wait for their turn; beyond, it answers 503, and `Retry-After` says "
        "after how many seconds to try again. A question that lists a 504 response may compute for a second: each process works on "
        f"{settings.slow_at_once} such at a time and lets {settings.slow_waiting} wait; beyond, it answers 503 as well. An answer that "
        f"takes longer than {settings.longest_answer} s is given up with 504."
        f" A table has at most {settings.largest_table} bytes and {settings.longest_table} rows, and each process takes "
        f"{settings.tables_at_once} at a time." + _guard(settings)
    )


def _guard(settings: Settings) -> str:
    """Sentences on keys and rates, where there are any."""
    rate = settings.rate_limit
    shown = (
        ""
        if rate is None
        else (
            f" Each process answers {rate.requests} requests of a caller in {rate.seconds:g} s, as many at once after a pause, then 429 "
            "with `Retry-After`."
        )
    )
    keys = " Send your API key as `Authorization: Bearer KEY`; without one, what is asked under /v1 is answered with 401."
    return shown + (keys if settings.api_keys is not None else "")


def _settings() -> str:
    rows = "\n".join(f"| `{name}` | {default} | {meaning} |" for name, default, meaning in table())
    head = "| variable | default | meaning |\n|---|---|---|"
    return f"## Settings\n\nWhoever runs the service sets these environment variables.\n\n{head}\n{rows}"


_REST = (
    "## Media types\n\nEvery answer can be had as JSON; tables of installations have types of their own. Where an operation lists "
    "more media types under its 200 response, `Accept` "
    "chooses; JSON comes when nothing else is preferred. A table (`text/csv`, RFC 4180) has a header; a number's column names its UCUM "
    "unit in brackets, its range stands beside it (`gas [m3/d]`, `gas low [m3/d]`, `gas high [m3/d]`), and text that a spreadsheet "
    "would run as a formula has an apostrophe before it. A calendar (`text/calendar`, RFC 5545) holds the schedule as events of whole "
    "days; the same plan of the same farm `name` keeps its event ids when dates move, so importing it again moves its events, and a "
    "request without the date to count from is refused (`date_needed`). A drawing (`image/svg+xml`) is black and white, 390 px wide, "
    "with a name and a description for screen readers. A sheet (`text/html`) prints on A4, cautions of danger first. Drawings and "
    "sheets need nothing from outside, and every text of a request is escaped in them. "
    "Refusals are problem documents whatever was accepted.",
    "## Caching\n\nAll pages under /v1 that are read with GET carry a strong `ETag`; send it back in `If-None-Match` and get 304 while "
    "nothing has changed. HEAD works wherever GET does.",
    "## Request ids\n\nSend a UUID as `X-Request-Id` and it comes back, in the header and in `instance`; otherwise one is made.",
    "## Changes\n\nWithin /v1 no member of a request becomes required, none disappears from an answer, and no meaning changes.",
)
