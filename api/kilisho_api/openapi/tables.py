"""The operation of tables: its media types, the rows of each, the summary, and examples that are worked out like any table."""

from __future__ import annotations

import tempfile
from typing import Any, get_args

import orjson

from kilisho.packs import Rulebook
from kilisho.questions.installation.verdicts import REFUSED, WORDS
from kilisho.questions.installation.work import ASSUMED
from kilisho.rulebook import Slipping
from kilisho_api.encoding import encode
from kilisho_api.http_rules import JSON
from kilisho_api.openapi import responses
from kilisho_api.openapi.responses import Part
from kilisho_api.openapi.schemas import Components
from kilisho_api.openapi.walk import PLACE
from kilisho_api.settings import Settings
from kilisho_api.table_types import ARROW, CSV, NDJSON, PARQUET, TABLES, TEXTS
from kilisho_api.tables import RULEBOOK, UNREAD

ROW, TOLD_ROW, SUMMARY = "InstallationRow", "InstallationRowTold", "InstallationTableSummary"
# Members of a single record that a table does not have. Facts are columns of their own; where a cell may be an object, so may ``facts``.
NO_COLUMNS = ("name",)
EXAMPLES = {
    NDJSON: '{"id":"INV-1","structure":"fixed_dome","total_volume":9,"animal":"dairy_cow","animal_count":4,"feed_mass":40,'
    '"water_volume":40,"feeding_interval":1,"biogas_measured":{"value":1200,"unit":"L/d"},"mean_air_temperature":22}\n'
    '{"id":"INV-2","structure":"igloo","total_volume":9}\n',
    CSV: "id,structure,total_volume,feed_mass,water_volume,biogas_measured [L/d],mean_air_temperature\r\n"
    "INV-1,fixed_dome,9,40,40,1200,22\r\nINV-2,igloo,9,,,,\r\n",
}
_COUNT = {"type": "integer", "minimum": 0}
_COUNTS = {"type": "object", "additionalProperties": _COUNT}
_TEXT = {"type": "string"}
_FAULT = {
    "type": "object",
    "description": "One thing that is wrong with a row.",
    "properties": {
        "column": {**_TEXT, "description": "The member; empty where the row as a whole cannot be read."},
        "code": {**_TEXT, "description": "As in the errors of a problem."},
        "detail": {**_TEXT, "description": "What was expected."},
    },
    "required": ["column", "code", "detail"],
}
_LISTS = {
    "failed": "Checks that failed, the most urgent first.",
    "unknown": "Checks below danger level that cannot be answered.",
    "open_dangers": "Checks of danger level that cannot be answered: not known to be safe.",
}
DESCRIPTION = (
    "One record a row in, one row out for each, in the same order: the same figures, formulas and checks as `installations/validate`, at "
    "tens of thousands of rows a second. `Content-Type` says what is sent and `Accept` what comes back, by default the same.\n\n"
    "A column has the name of a member of a record, or of a fact (`/v1/facts`); a number is in the unit of the member, or in the one "
    "that the name of its column states (`total_volume [L]`, `total_volume (L)`) "
    'or, in NDJSON, the cell itself (`{{"value": 9000, "unit": "L"}}`). '
    "An Arrow or Parquet field may state it as metadata `unit`. An empty cell says nothing. In NDJSON a row may also have `facts`, as the "
    "single request does: its members are columns of the row, and one that is a column too must be the same there. Empty lines are no "
    "rows. CSV is that of RFC 4180, parted by comma, semicolon or tab: whichever parts the first row into most cells. A list in it stands "
    "between semicolons. "
    "A row has at most 1 MiB and, in CSV, 101 lines.\n\n"
    "**A row that cannot be read is answered in its place**, with the verdict `refused` and its `faults`, in the language that "
    "`Accept-Language` likes best. Columns that nothing is read from are passed over and named in `Kilisho-Unread-Columns`: look "
    "there for misspelt names. The file as a whole is refused with 422 where it is not of its media type, is cut off, has no known "
    "column or lacks one that every row needs, has one twice, one of a wrong type or an unknown unit, or explodes when unpacked.\n\n"
    "`Accept: application/json` gives a summary instead of rows: counts by verdict, aspect, check and fault, and the first rows that "
    "are refused; what refused rows state of dangers was not judged, so no danger is ruled out in them. The footer of a Parquet answer "
    "holds the same as `kilisho.summary`. A last row or a trailer would be lost on most clients.\n\n"
    "Compressed bodies are refused; Parquet and Arrow may be compressed inside, up to 128 MiB unpacked for a record batch or for the "
    "pages that are open at once. At most {bytes} bytes and {rows} rows; each process takes {at_once} tables at a time and answers "
    "503 beyond. "
    "An answer that fails on the way ends without its last chunk: check that your client reports that."
)


def add(components: Components, rulebook: Rulebook, settings: Settings) -> Part:
    """The operation; its schemas are put into ``components``, which hold those of the single record already."""
    row, told_row = components.put(ROW, _row(components)), components.put(TOLD_ROW, _told_row())
    summary = components.put(SUMMARY, _summary())
    limits = {"bytes": settings.largest_table, "rows": settings.longest_table, "at_once": settings.tables_at_once}
    answer = responses.success("A row for a row, or a summary.", JSON, summary, answered(rulebook, NDJSON, JSON))
    content = {kind: _content(kind, told_row, answered(rulebook, kind, kind) if kind in TEXTS else None) for kind in TABLES}
    answer["content"] = {**content, **answer["content"]}
    answer["headers"] |= {name.decode().title(): _header(text) for name, text in _HEADERS.items()}
    return {
        "operationId": "askInstallationsValidateTable",
        "tags": ["Questions"],
        "summary": "Validate a table of installations",
        "description": DESCRIPTION.format(**limits),
        "parameters": [{"$ref": "#/components/parameters/RequestId"}],
        "requestBody": {"required": True, "content": {kind: _content(kind, row, EXAMPLES.get(kind)) for kind in TABLES}},
        "responses": {"200": answer, **responses.problems(*REFUSALS)},
    }


REFUSALS = (*(slug for slug in responses.OF_EVERY_POST if slug != "malformed-json"), *responses.OF_TABLES, "overloaded", "took-too-long")
_HEADERS = {
    RULEBOOK: "Id, version and hash of the rulebook, with slashes between them.",
    UNREAD: "Columns that nothing is read from, percent-encoded; absent where there are none.",
}


def _header(text: str) -> Part:
    return {"description": text, "schema": _TEXT}


def _content(kind: str, row: Part, example: Any) -> Part:
    about = {NDJSON: "An object a line.", CSV: "RFC 4180 with a header.", ARROW: "Arrow's streaming format.", PARQUET: "Parquet."}
    form = {} if kind in TEXTS else {"format": "binary"}
    schema = {**_TEXT, **form, "description": f"{about[kind]} x-row is the schema of a row.", "x-row": row}
    return {"schema": schema, **({} if example is None else {"example": example})}


def answered(rulebook: Rulebook, sent: str, wanted: str) -> Any:
    """What the service answers to the example in one media type, in another."""
    from kilisho.fleet.exchange import FORMATS, SummaryWriter, Terms, told

    writer = SummaryWriter(encode) if wanted == JSON else FORMATS[wanted].writer(encode)
    with tempfile.TemporaryFile(buffering=0) as file:
        file.write(EXAMPLES[sent].encode())
        body = b"".join(told(file, FORMATS[sent].read, writer, Terms(rulebook, 10, encode)).chunks)
    return orjson.loads(body) if wanted == JSON else body.decode()


def _row(components: Components) -> Part:
    """The members of a record and the facts, side by side; open, since a register holds more than we read."""
    record, facts = components.schemas["InstallationQuestion"], components.schemas["StatedFacts"]
    members = {name: schema for name, schema in record["properties"].items() if name not in NO_COLUMNS}
    return {
        "type": "object",
        "description": "A row of a table of installations.",
        "properties": {**facts["properties"], **members},
        "required": record["required"],
    }


def _told_row() -> Part:
    from kilisho.fleet.answers import NUMBERS

    words = {name: {**_TEXT, "enum": list(words)} for name, words in WORDS.items()}
    numbers = {name: {"type": "number", "description": f"In {unit}.", "x-unit": unit} for name, (_, _, unit) in NUMBERS.items()}
    texts = {"type": "array", "items": _TEXT}
    slip = {"member": {**_TEXT, "enum": list(get_args(Slipping))}, "value": {"type": "number"}, "read_as": _TEXT}
    return {
        "type": "object",
        "description": f"The answer to a row. Of a row with the verdict {REFUSED} only id and faults are there; what is not known "
        "is left out "
        "(null in Arrow and Parquet, empty in CSV).",
        "properties": {
            "id": {"type": ["string", "integer"], "description": "As in the table; text beyond 200 characters is cut or replaced."},
            **words,
            **{name: {**texts, "description": text} for name, text in _LISTS.items()},
            "slips": {"type": "array", "items": {"type": "object", "properties": slip, "required": list(slip)}},
            "assumed": {"type": "array", "items": {**_TEXT, "enum": list(ASSUMED)}},
            **numbers,
            "faults": {"type": "array", "items": _FAULT},
        },
        "required": ["verdict"],
    }


def _summary() -> Part:
    slip = {"member": _TEXT, "read_as": _TEXT, "rows": _COUNT}
    fault = {"column": _TEXT, "code": _TEXT, "rows": _COUNT}
    refused = {"row": {**_COUNT, "minimum": 1}, "id": {"type": ["string", "integer"]}, "faults": {"type": "array", "items": _FAULT}}
    unread = {"column": _TEXT, "nearest": {"type": "array", "items": _TEXT}}
    properties: Part = {
        "rows": _COUNT,
        "refused": {
            **_COUNT,
            "description": "Rows that cannot be read. What they state of dangers was not judged: none is ruled out there.",
        },
        "verdicts": {**_COUNTS, "description": "Rows by verdict."},
        "aspects": _counted(name for name in WORDS if name != "verdict"),
        "checks": _counted(_LISTS),
        "slips": _listed(slip, slip),
        "faults": _listed(fault, fault),
        "first_refused": {**_listed(refused, ("row", "faults")), "description": "The first ten; rows are counted from 1."},
        "unread_columns": _listed(unread, ("column",)),
        "rulebook": {"$ref": PLACE + "RulebookIdentity"},
    }
    return {"type": "object", "description": "What a whole table says.", "properties": properties, "required": list(properties)}


def _counted(names: Any) -> Part:
    return {"type": "object", "properties": dict.fromkeys(names, _COUNTS)}


def _listed(properties: Part, required: Any) -> Part:
    return {"type": "array", "items": {"type": "object", "properties": properties, "required": list(required)}}
