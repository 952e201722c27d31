"""The types of request fields: numbers with units, counts, dates, yes or no, ids.

Each validates in one plain function and publishes exactly what that function accepts as JSON Schema, unit by unit, so that the
contract and the code cannot differ. A field's validated value is a bare float in the canonical unit of its kind.
"""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from pydantic import GetCoreSchemaHandler
from pydantic_core import PydanticCustomError, core_schema

from kilisho.nearest import nearest
from kilisho.units import KINDS, UnknownUnitError, unit_of

Schema = dict[str, Any]


@dataclass(frozen=True, slots=True)
class _Window:
    """One unit of a field with the bounds in that unit; the same floats are published and compared."""

    factor: float
    offset: float
    least: float
    most: float


@dataclass(frozen=True)
class InUnit:
    """A number with a unit: bare in ``unit``, or ``{"value", "unit"}`` in any unit of ``kind``.

    ``least`` and ``most`` are the limits of meaning in ``unit``, both included. What would be divided by has a least above 0.
    """

    kind: str
    unit: str
    least: float
    most: float
    key: str = "unit"

    def windows(self) -> dict[str, _Window]:
        """The bounds in every unit of the kind."""
        home = unit_of(self.kind, self.unit)
        ends = [bound * home.factor + home.offset for bound in (self.least, self.most)]
        return {
            code: _Window(u.factor, u.offset, *(float(f"{(end - u.offset) / u.factor:.12g}") for end in ends))
            for code, u in KINDS[self.kind].units.items()
        }

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        schema = core_schema.no_info_plain_validator_function(self._validator())
        schema["metadata"] = {"pydantic_js_functions": [lambda _s, _h: self.json_schema()]}
        return schema

    def json_schema(self) -> Schema:
        """Bare number or value with unit, with the bounds of each unit."""
        windows = self.windows()

        def bounded(window: _Window) -> Schema:
            return {"type": "number", "minimum": window.least, "maximum": window.most}

        def stated(code: str, window: _Window) -> Schema:
            return {
                "type": "object",
                "properties": {"value": bounded(window), self.key: {"const": code}},
                "required": ["value", self.key],
                "additionalProperties": False,
            }

        bare = {**bounded(windows[self.unit]), "description": f"In {self.unit}."}
        return {"anyOf": [bare, *(stated(code, window) for code, window in windows.items())], "x-kind": self.kind, "x-unit": self.unit}

    def _validator(self) -> Callable[[Any], float]:
        windows, home, key, kind = self.windows(), self.unit, self.key, self.kind

        def read(value: Any) -> float:
            code = home
            if type(value) is dict:
                code, value = _unpack(value, key, kind)
            if type(value) is not float and type(value) is not int:
                raise PydanticCustomError("number_expected", "fault-number_in_unit", {"unit": home})
            window = windows[code]
            if not window.least <= value <= window.most:
                fitting = [c for c, w in windows.items() if c != code and w.least < value < w.most]
                raise _out_of_range(window, code, fitting)
            return value * window.factor + window.offset

        return read


def _unpack(value: dict[str, Any], key: str, kind: str) -> tuple[str, Any]:
    extra = [name for name in value if name not in ("value", key)]
    code, number = value.get(key), value.get("value")
    if extra or code is None or number is None:
        raise PydanticCustomError("value_and_unit", "fault-value_and_unit", {"key": key})
    if not isinstance(code, str):
        raise PydanticCustomError("unit_expected", "fault-unit_expected", {"key": key, "at": key})
    try:
        unit_of(kind, code)
    except UnknownUnitError as error:
        context = {"allowed": ", ".join(KINDS[kind].units), "nearest": error.nearest, "at": key}
        raise PydanticCustomError("unknown_unit", "fault-unknown_unit", context) from None
    return code, number


def _out_of_range(window: _Window, code: str, fitting: list[str]) -> PydanticCustomError:
    """The fault of a number outside its limits, with the units in which it would lie within them: a slipped unit is the usual cause."""
    context = {"least": window.least, "most": window.most, "unit": code, "nearest": fitting[:3]}
    return PydanticCustomError("out_of_range", "fault-out_of_range_mind_unit" if fitting else "fault-out_of_range_in_unit", context)


@dataclass(frozen=True)
class Checked:
    """A field validated by ``read`` and published as ``schema``."""

    read: Callable[[Any], Any]
    schema: tuple[tuple[str, Any], ...]

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        schema = core_schema.no_info_plain_validator_function(self.read)
        published = dict(self.schema)
        schema["metadata"] = {"pydantic_js_functions": [lambda _s, _h: published]}
        return schema


def whole_number(least: int, most: int) -> Checked:
    """A whole number from ``least`` to ``most``; 3.0 counts as 3, text and true do not."""

    def read(value: Any) -> int:
        if type(value) is not int and (type(value) is not float or not value.is_integer()):
            raise PydanticCustomError("whole_number_expected", "fault-whole_number")
        if not least <= value <= most:
            raise PydanticCustomError("out_of_range", "fault-out_of_range", {"least": least, "most": most})
        return int(value)

    return Checked(read, (("type", "integer"), ("minimum", least), ("maximum", most)))


def plain_number(least: float, most: float) -> Checked:
    """A pure number from ``least`` to ``most``."""

    def read(value: Any) -> float:
        if type(value) is not float and type(value) is not int:
            raise PydanticCustomError("number_expected", "fault-plain_number")
        if not least <= value <= most:
            raise PydanticCustomError("out_of_range", "fault-out_of_range", {"least": least, "most": most})
        return float(value)

    return Checked(read, (("type", "number"), ("minimum", least), ("maximum", most)))


def _read_date(value: Any) -> dt.date:
    if isinstance(value, str) and re.fullmatch(_DATE_PATTERN, value):
        try:
            day = dt.date.fromisoformat(value)
        except ValueError:
            pass
        else:
            return day
    raise PydanticCustomError("date_expected", "fault-date_expected", {"first": str(FIRST_YEAR), "last": str(LAST_YEAR)})


def _read_yes_no(value: Any) -> bool:
    if value is True or value is False:
        return value
    raise PydanticCustomError("yes_no_expected", "fault-yes_no_expected")


def _read_label(value: Any) -> str:
    if isinstance(value, str) and 0 < len(value) <= LONGEST_LABEL:
        return value
    raise PydanticCustomError("text_expected", "fault-text_expected", {"longest": LONGEST_LABEL})


def clock(pattern: str) -> Checked:
    """A time of day on the 24 h clock as text, read as hours from midnight."""

    def read(value: Any) -> float:
        if not isinstance(value, str) or not re.fullmatch(pattern, value, re.ASCII):
            raise PydanticCustomError("clock_expected", "fault-clock_expected")
        return int(value[:2]) + int(value[3:]) / 60

    return Checked(read, (("type", "string"), ("pattern", pattern)))


FIRST_YEAR, LAST_YEAR = 1990, 2150
LONGEST_IDENTIFIER, LONGEST_LABEL = 64, 200
_DATE_PATTERN = r"^(199\d|20\d\d|21[0-4]\d|2150)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$"

DAY = Checked(_read_date, (("type", "string"), ("format", "date"), ("pattern", _DATE_PATTERN)))
YES_NO = Checked(_read_yes_no, (("type", "boolean"),))
CLOCK_START = clock(r"^([01]\d|2[0-3]):[0-5]\d$")
CLOCK_END = clock(r"^(([01]\d|2[0-3]):[0-5]\d|24:00)$")
LABEL = Checked(_read_label, (("type", "string"), ("minLength", 1), ("maxLength", LONGEST_LABEL)))


@dataclass(frozen=True)
class Identifier:
    """The id of an entry of a section of the rulebook.

    Which ids there are is known only with a rulebook, so the validation context holds them by section; the published schema
    lists those of the rulebook that is served.
    """

    section: str

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        schema = core_schema.with_info_plain_validator_function(self._read)
        published = {"type": "string", "minLength": 1, "maxLength": LONGEST_IDENTIFIER, "x-ids-of": self.section}
        schema["metadata"] = {"pydantic_js_functions": [lambda _s, _h: published]}
        return schema

    def _read(self, value: Any, info: core_schema.ValidationInfo[Any]) -> str:
        if not isinstance(value, str) or not 0 < len(value) <= LONGEST_IDENTIFIER:
            raise PydanticCustomError("text_expected", "fault-id_expected", {"longest": LONGEST_IDENTIFIER})
        # Without a context (models built by hand) there is no rulebook to hold the id against.
        known = info.context[self.section] if info.context else (value,)
        if value not in known:
            close = nearest(value, known) or list(known)[:12]
            raise PydanticCustomError("unknown_id", "fault-unknown_id", {"section": self.section, "nearest": close})
        return value


def one_of(values: tuple[str, ...]) -> Checked:
    """One of a closed set of words."""

    def read(value: Any) -> str:
        if isinstance(value, str) and value in values:
            return value
        close = nearest(str(value), values)
        raise PydanticCustomError("not_one_of", "fault-not_one_of", {"allowed": ", ".join(values), "nearest": close})

    return Checked(read, (("type", "string"), ("enum", list(values))))


def list_of(values: tuple[str, ...]) -> Checked:
    """A list of words from a closed set; an empty list says that none of them is there."""
    single = one_of(values)

    def read(value: Any) -> tuple[str, ...]:
        if not isinstance(value, list) or len(value) > len(values):
            raise PydanticCustomError("list_expected", "fault-list_of", {"most": len(values), "allowed": ", ".join(values)})
        return tuple(single.read(item) for item in value)

    item = dict(single.schema)
    return Checked(read, (("type", "array"), ("items", item), ("maxItems", len(values))))


SUBSTRATE = Identifier("substrates")
ANIMAL = Identifier("animals")
STRUCTURE = Identifier("structures")
APPLIANCE = Identifier("appliances")
FUEL = Identifier("fuels")
COVER = Identifier("covers")
PIPE_MATERIAL = one_of(("galvanised_steel", "plastic"))
CROP = Identifier("crops")
SLURRY_STORE = Identifier("slurry_stores")
SPREADING = Identifier("spreadings")
MANURE_MANAGEMENT = Identifier("manure_managements")
CARRIED_BY = one_of(("hand", "head", "barrow", "cart", "animal", "vehicle"))
HOUSING = one_of(("stall", "night_pen", "grazing"))

TOTAL_VOLUME = InUnit("volume", "m3", 0.1, 1000)
WORKING_VOLUME = InUnit("volume", "m3", 0.05, 1000)
GAS_STORAGE_VOLUME = InUnit("volume", "m3", 0, 1000)
CONTAINER_VOLUME = InUnit("volume", "L", 0.5, 20_000)
STORED_MASS = InUnit("mass", "kg", 0, 1e6)
CHARGED_MASS = InUnit("mass", "kg", 0.001, 1e6)
LOAD_MASS = InUnit("mass", "kg", 1, 1e5)
LIVE_WEIGHT = InUnit("mass", "kg", 0.02, 2000)
DAILY_MASS = InUnit("mass_flow", "kg/d", 0.001, 1e5)
CHARGED_WATER = InUnit("volume", "L", 0, 1e6)
DAILY_WATER = InUnit("volume_flow", "L/d", 0, 1e6)
DAILY_GAS = InUnit("volume_flow", "m3/d", 0.001, 1e3)
GAS_GIVEN = InUnit("volume_flow", "m3/d", 0, 1e3)
PIPE_LENGTH = InUnit("length", "m", 0.1, 2000)
BORE = InUnit("length", "mm", 3, 500)
GAUGE_PRESSURE = InUnit("pressure", "Pa", 0, 100_000)
DUNG_PER_HEAD = InUnit("mass_flow", "kg/d", 0.001, 200)
DISTANCE = InUnit("length", "m", 0, 500_000)
DEPTH = InUnit("length", "m", 0, 20)
ALTITUDE = InUnit("length", "m", -400, 5500)
TEMPERATURE = InUnit("temperature", "Cel", -40, 70)
TEMPERATURE_SWING = InUnit("temperature_difference", "K", 0, 60)
INTERVAL = InUnit("time", "d", 0.25, 60)
AGE = InUnit("time", "d", 0, 36_525)
SOLIDS = InUnit("share", "1", 0.001, 1)
MASS_SHARE = InUnit("share", "1", 0, 1)
NITROGEN = InUnit("share", "1", 0.0001, 0.6)
METHANE_SHARE = InUnit("share", "1", 0.05, 0.95)
BULK_DENSITY = InUnit("density", "kg/m3", 20, 2000)
GAS_YIELD = InUnit("gas_yield", "m3/kg", 0, 2)
HOURS_PER_DAY = InUnit("hours_per_day", "h/d", 0.1, 24)
PRICE_PER_MASS = InUnit("price_per_mass", "kg", 0, 1e6, key="per")
CARBON_TO_NITROGEN = plain_number(0.1, 1000)
WATER_TO_FEED = plain_number(0, 30)
SLURRY_PH = plain_number(0, 14)
