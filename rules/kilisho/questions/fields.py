"""The types of request fields: numbers with units, counts, dates, yes or no, ids.

Each validates in one plain function and publishes exactly what that function accepts as JSON Schema, unit by unit, so that the
contract and the code cannot differ. A field's validated value is a bare float in the canonical unit of its kind.
"""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import PydanticCustomError, core_schema

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

    ``least`` and ``most`` are the limits of meaning in ``unit``; ``above`` makes the lower one exclusive.
    """

    kind: str
    unit: str
    least: float
    most: float
    above: bool = False
    key: str = "unit"

    def windows(self) -> dict[str, _Window]:
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
        lower = "exclusiveMinimum" if self.above else "minimum"

        def bounded(window: _Window) -> Schema:
            return {"type": "number", lower: window.least, "maximum": window.most}

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
        windows, home, above, key, kind = self.windows(), self.unit, self.above, self.key, self.kind

        def read(value: Any) -> float:
            code = home
            if type(value) is dict:
                code, value = _unpack(value, key, kind)
            if type(value) is not float and type(value) is not int:
                raise PydanticCustomError("number_expected", "a number in {unit}, or an object with value and unit", {"unit": home})
            window = windows[code]
            if not (window.least < value if above else window.least <= value) or not value <= window.most:
                raise _out_of_range(window, code, above)
            return value * window.factor + window.offset

        return read


def _unpack(value: dict[str, Any], key: str, kind: str) -> tuple[str, Any]:
    extra = [name for name in value if name not in ("value", key)]
    code, number = value.get(key), value.get("value")
    if extra or code is None or number is None:
        raise PydanticCustomError("value_and_unit", "an object with exactly value and {key}", {"key": key})
    if not isinstance(code, str):
        raise PydanticCustomError("unit_expected", "{key} must be a UCUM code, as text", {"key": key, "at": key})
    try:
        unit_of(kind, code)
    except UnknownUnitError as error:
        context = {"allowed": ", ".join(KINDS[kind].units), "nearest": error.nearest, "at": key}
        raise PydanticCustomError("unknown_unit", "not a unit that this field knows; use one of {allowed}", context) from None
    return code, number


def _out_of_range(window: _Window, code: str, above: bool) -> PydanticCustomError:
    context = {"least": window.least, "most": window.most, "unit": code, "lower": "more than" if above else "at least"}
    return PydanticCustomError("out_of_range", "must be {lower} {least} and at most {most} {unit}", context)


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
        if type(value) not in (int, float) or not math.isfinite(value) or value != int(value):
            raise PydanticCustomError("whole_number_expected", "a whole number")
        if not least <= value <= most:
            raise PydanticCustomError("out_of_range", "must be at least {least} and at most {most}", {"least": least, "most": most})
        return int(value)

    return Checked(read, (("type", "integer"), ("minimum", least), ("maximum", most)))


def plain_number(least: float, most: float) -> Checked:
    """A pure number from ``least`` to ``most``."""

    def read(value: Any) -> float:
        if type(value) is not float and type(value) is not int:
            raise PydanticCustomError("number_expected", "a number without a unit")
        if not least <= value <= most:
            raise PydanticCustomError("out_of_range", "must be at least {least} and at most {most}", {"least": least, "most": most})
        return float(value)

    return Checked(read, (("type", "number"), ("minimum", least), ("maximum", most)))


def _read_date(value: Any) -> dt.date:
    if isinstance(value, str) and len(value) == 10:
        try:
            day = dt.date.fromisoformat(value)
        except ValueError:
            pass
        else:
            if FIRST_YEAR <= day.year <= LAST_YEAR:
                return day
    raise PydanticCustomError("date_expected", "an existing day as YYYY-MM-DD, from {first} to {last}", {"first": FIRST_YEAR, "last": LAST_YEAR})


def _read_yes_no(value: Any) -> bool:
    if value is True or value is False:
        return value
    raise PydanticCustomError("yes_no_expected", "true or false")


def _read_identifier(value: Any) -> str:
    if isinstance(value, str) and 0 < len(value) <= LONGEST_IDENTIFIER:
        return value
    raise PydanticCustomError("text_expected", "an id as text of at most {longest} characters", {"longest": LONGEST_IDENTIFIER})


def _read_label(value: Any) -> str:
    if isinstance(value, str) and 0 < len(value) <= LONGEST_LABEL:
        return value
    raise PydanticCustomError("text_expected", "text of 1 to {longest} characters", {"longest": LONGEST_LABEL})


FIRST_YEAR, LAST_YEAR = 1990, 2150
LONGEST_IDENTIFIER, LONGEST_LABEL = 64, 200
_DATE_PATTERN = r"^(199\d|20\d\d|21[0-4]\d|2150)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$"

Day = Annotated[dt.date, Checked(_read_date, (("type", "string"), ("format", "date"), ("pattern", _DATE_PATTERN)))]
YesNo = Annotated[bool, Checked(_read_yes_no, (("type", "boolean"),))]
Label = Annotated[str, Checked(_read_label, (("type", "string"), ("minLength", 1), ("maxLength", LONGEST_LABEL)))]


def identifier(section: str) -> Checked:
    """An id of a section of the rulebook. The published schema lists the ids of the rulebook that is served."""
    return Checked(_read_identifier, (("type", "string"), ("maxLength", LONGEST_IDENTIFIER), ("x-ids-of", section)))


SubstrateId = Annotated[str, identifier("substrates")]
AnimalId = Annotated[str, identifier("animals")]
StructureId = Annotated[str, identifier("structures")]
ApplianceId = Annotated[str, identifier("appliances")]
CoverId = Annotated[str, identifier("covers")]

TotalVolume = Annotated[float, InUnit("volume", "m3", 0.1, 1000)]
WorkingVolume = Annotated[float, InUnit("volume", "m3", 0.05, 1000)]
GasStorageVolume = Annotated[float, InUnit("volume", "m3", 0, 1000)]
ContainerVolume = Annotated[float, InUnit("volume", "L", 0.5, 20_000)]
StoredMass = Annotated[float, InUnit("mass", "kg", 0, 1e6)]
LiveWeight = Annotated[float, InUnit("mass", "kg", 0.02, 2000)]
DailyMass = Annotated[float, InUnit("mass_flow", "kg/d", 0, 1e5)]
DailyWater = Annotated[float, InUnit("volume_flow", "L/d", 0, 1e6)]
DailyGas = Annotated[float, InUnit("volume_flow", "m3/d", 0, 1e3)]
DungPerHead = Annotated[float, InUnit("mass_flow", "kg/d", 0, 200)]
Distance = Annotated[float, InUnit("length", "m", 0, 500_000)]
Temperature = Annotated[float, InUnit("temperature", "Cel", -40, 70)]
TemperatureSwing = Annotated[float, InUnit("temperature_difference", "K", 0, 60)]
Interval = Annotated[float, InUnit("time", "d", 0.25, 60)]
Age = Annotated[float, InUnit("time", "d", 0, 36_525)]
Solids = Annotated[float, InUnit("share", "1", 0, 1, above=True)]
MassShare = Annotated[float, InUnit("share", "1", 0, 1)]
BulkDensity = Annotated[float, InUnit("density", "kg/m3", 20, 2000)]
Yield = Annotated[float, InUnit("gas_yield", "m3/kg", 0, 2)]
CarbonToNitrogen = Annotated[float, plain_number(0.1, 1000)]
WaterToFeed = Annotated[float, plain_number(0, 30)]
HoursPerDay = Annotated[float, InUnit("hours_per_day", "h/d", 0, 24)]
SlurryPh = Annotated[float, plain_number(0, 14)]
PricePerMass = Annotated[float, InUnit("price_per_mass", "kg", 0, 1e6, key="per")]
