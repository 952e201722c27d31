"""Units: a closed table of UCUM codes for each kind of quantity.

A caller's unit is looked up here and nowhere else; no text of a caller ever reaches an expression parser. Each kind has one
canonical unit in which the engine computes (m3, kg, d, Cel, Pa ...). The factors are proved against pint by
:func:`prove_table`, which the tests run; at run time a conversion is one multiplication and one addition.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from kilisho.nearest import nearest

if TYPE_CHECKING:
    import pint


@dataclass(frozen=True, slots=True)
class Unit:
    """One UCUM code: ``canonical = value * factor + offset``; ``pint`` is its expression in pint's words."""

    code: str
    factor: float
    pint: str
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of quantity (volume, mass flow ...) with its canonical unit first in ``units``."""

    name: str
    units: MappingProxyType[str, Unit]

    @property
    def canonical(self) -> Unit:
        """The unit in which the engine computes."""
        return next(iter(self.units.values()))


class UnknownUnitError(ValueError):
    """The code is not one of the kind's units; ``nearest`` holds the closest valid codes."""

    def __init__(self, code: str, kind: Kind) -> None:
        self.code, self.kind = code, kind
        self.nearest = nearest(code, kind.units, 0.3)
        super().__init__(f"{code[:40]!r} is not a unit of {kind.name}; use one of {', '.join(kind.units)}")


_LITRE, _POUND, _GALLON_US, _GALLON_BR, _FOOT, _INCH = 1e-3, 0.45359237, 3.785411784e-3, 4.54609e-3, 0.3048, 0.0254
_CUBIC_FOOT = _FOOT**3
_YEAR, _MONTH, _WEEK, _HOUR, _MINUTE, _SECOND = 365.25, 365.25 / 12, 7.0, 1 / 24, 1 / 1440, 1 / 86400
_HECTARE, _ACRE = 1e4, 4046.872609874252

# kind: (code, factor to the canonical unit, pint expression[, offset]); the first line of a kind is canonical.
_TABLE: dict[str, list[tuple[str, float, str] | tuple[str, float, str, float]]] = {
    "number": [("1", 1.0, "dimensionless")],
    "share": [
        ("1", 1.0, "dimensionless"),
        ("%", 1e-2, "percent"),
        ("[ppth]", 1e-3, "dimensionless / 1000"),
        ("[ppm]", 1e-6, "ppm"),
        ("g/kg", 1e-3, "gram / kilogram"),
    ],
    "length": [
        ("m", 1.0, "meter"),
        ("cm", 1e-2, "centimeter"),
        ("mm", 1e-3, "millimeter"),
        ("km", 1e3, "kilometer"),
        ("[in_i]", _INCH, "inch"),
        ("[ft_i]", _FOOT, "foot"),
    ],
    "area": [("m2", 1.0, "meter**2"), ("har", _HECTARE, "hectare"), ("[acr_us]", _ACRE, "acre")],
    "volume": [
        ("m3", 1.0, "meter**3"),
        ("L", _LITRE, "liter"),
        ("mL", 1e-6, "milliliter"),
        ("[gal_us]", _GALLON_US, "gallon"),
        ("[gal_br]", _GALLON_BR, "imperial_gallon"),
        ("[cft_i]", _CUBIC_FOOT, "foot**3"),
    ],
    "mass": [("kg", 1.0, "kilogram"), ("g", 1e-3, "gram"), ("t", 1e3, "metric_ton"), ("[lb_av]", _POUND, "pound")],
    "time": [
        ("d", 1.0, "day"),
        ("h", _HOUR, "hour"),
        ("min", _MINUTE, "minute"),
        ("s", _SECOND, "second"),
        ("wk", _WEEK, "week"),
        ("mo", _MONTH, "month"),
        ("a", _YEAR, "year"),
    ],
    "mass_flow": [
        ("kg/d", 1.0, "kilogram / day"),
        ("g/d", 1e-3, "gram / day"),
        ("t/d", 1e3, "metric_ton / day"),
        ("kg/wk", 1 / _WEEK, "kilogram / week"),
        ("kg/a", 1 / _YEAR, "kilogram / year"),
        ("t/a", 1e3 / _YEAR, "metric_ton / year"),
        ("[lb_av]/d", _POUND, "pound / day"),
    ],
    "volume_flow": [
        ("m3/d", 1.0, "meter**3 / day"),
        ("L/d", _LITRE, "liter / day"),
        ("m3/a", 1 / _YEAR, "meter**3 / year"),
        ("L/h", _LITRE / _HOUR, "liter / hour"),
        ("m3/h", 1 / _HOUR, "meter**3 / hour"),
        ("[gal_us]/d", _GALLON_US, "gallon / day"),
        ("[gal_br]/d", _GALLON_BR, "imperial_gallon / day"),
        ("[cft_i]/d", _CUBIC_FOOT, "foot**3 / day"),
        ("L/a", _LITRE / _YEAR, "liter / year"),
        ("m3/a", 1 / _YEAR, "meter**3 / year"),
    ],
    "temperature": [
        ("Cel", 1.0, "degC"),
        ("K", 1.0, "kelvin", -273.15),
        ("[degF]", 5 / 9, "degF", -160 / 9),
    ],
    "temperature_difference": [("K", 1.0, "delta_degC"), ("Cel", 1.0, "delta_degC"), ("[degF]", 5 / 9, "delta_degF")],
    "pressure": [
        ("Pa", 1.0, "pascal"),
        ("kPa", 1e3, "kilopascal"),
        ("mbar", 1e2, "millibar"),
        ("bar", 1e5, "bar"),
        ("cm[H2O]", 98.0665, "centimeter_H2O"),
        ("mm[H2O]", 9.80665, "0.1 * centimeter_H2O"),
    ],
    "density": [
        ("kg/m3", 1.0, "kilogram / meter**3"),
        ("kg/L", 1e3, "kilogram / liter"),
        ("g/L", 1.0, "gram / liter"),
        ("mg/L", 1e-3, "milligram / liter"),
        ("[lb_av]/[cft_i]", _POUND / _CUBIC_FOOT, "pound / foot**3"),
    ],
    "areic_mass": [
        ("kg/m2", 1.0, "kilogram / meter**2"),
        ("kg/har", 1 / _HECTARE, "kilogram / hectare"),
        ("g/m2", 1e-3, "gram / meter**2"),
        ("t/har", 1e3 / _HECTARE, "metric_ton / hectare"),
        ("[lb_av]/[acr_us]", _POUND / _ACRE, "pound / acre"),
    ],
    "areic_volume": [
        ("m3/m2", 1.0, "meter"),
        ("m3/har", 1 / _HECTARE, "meter**3 / hectare"),
        ("L/m2", _LITRE, "liter / meter**2"),
        ("[gal_us]/[acr_us]", _GALLON_US / _ACRE, "gallon / acre"),
    ],
    "gas_yield": [
        ("m3/kg", 1.0, "meter**3 / kilogram"),
        ("L/kg", _LITRE, "liter / kilogram"),
        ("mL/g", _LITRE, "milliliter / gram"),
        ("m3/t", 1e-3, "meter**3 / metric_ton"),
    ],
    "rate": [("1/d", 1.0, "1 / day"), ("1/wk", 1 / _WEEK, "1 / week"), ("1/a", 1 / _YEAR, "1 / year")],
    "specific_flow": [("kg/kg/d", 1.0, "1 / day"), ("%/d", 1e-2, "percent / day")],
    "loading": [("kg/m3/d", 1.0, "kilogram / meter**3 / day")],
    "specific_gas_rate": [("m3/m3/d", 1.0, "1 / day")],
    "work_rate": [("m3/h", 1.0, "meter**3 / hour"), ("L/h", _LITRE, "liter / hour")],
    "working_time": [("h", 1.0, "hour"), ("min", 1 / 60, "minute"), ("d", 24.0, "day")],
    "walking_time": [("s", 1.0, "second"), ("min", 60.0, "minute")],
    "speed": [("m/s", 1.0, "meter / second"), ("km/h", 1 / 3.6, "kilometer / hour")],
    "hours_per_day": [("h/d", 1.0, "hour / day"), ("h", 1.0, "hour / day"), ("min/d", 1 / 60, "minute / day")],
    "gas_use_rate": [("m3/h", 1.0, "meter**3 / hour"), ("L/h", _LITRE, "liter / hour")],
    "power": [("MJ/h", 1.0, "megajoule / hour"), ("kW", 3.6, "kilowatt"), ("W", 3.6e-3, "watt")],
    "heat_per_day": [
        ("MJ/d", 1.0, "megajoule / day"),
        ("kW.h/d", 3.6, "kilowatt_hour / day"),
        ("kW.h/a", 3.6 / _YEAR, "kilowatt_hour / year"),
    ],
    "heat_per_volume": [("MJ/m3", 1.0, "megajoule / meter**3"), ("kW.h/m3", 3.6, "kilowatt_hour / meter**3")],
    "heat_per_mass": [("MJ/kg", 1.0, "megajoule / kilogram"), ("kW.h/kg", 3.6, "kilowatt_hour / kilogram")],
    "emission_factor": [
        ("kg/MJ", 1.0, "kilogram / megajoule"),
        ("g/MJ", 1e-3, "gram / megajoule"),
        ("kg/kW.h", 1 / 3.6, "kilogram / kilowatt_hour"),
    ],
    "slope": [("1", 1.0, "dimensionless"), ("%", 1e-2, "percent")],
    "diffusivity": [("m2/d", 1.0, "meter**2 / day"), ("m2/s", 86400.0, "meter**2 / second")],
    "price_per_mass": [("kg", 1.0, "1 / kilogram"), ("t", 1e-3, "1 / metric_ton")],
}

KINDS: MappingProxyType[str, Kind] = MappingProxyType(
    {name: Kind(name, MappingProxyType({row[0]: Unit(row[0], row[1], row[2], *row[3:]) for row in rows})) for name, rows in _TABLE.items()}
)


def unit_of(kind: str, code: str) -> Unit:
    """The unit ``code`` of ``kind``; raises :class:`UnknownUnitError` naming the nearest valid codes."""
    try:
        return KINDS[kind].units[code]
    except KeyError:
        raise UnknownUnitError(code, KINDS[kind]) from None


def to_canonical(value: float, kind: str, code: str) -> float:
    """``value`` in ``code``, expressed in the canonical unit of ``kind``."""
    unit = unit_of(kind, code)
    return value * unit.factor + unit.offset


def from_canonical(value: float, kind: str, code: str) -> float:
    """A canonical value expressed in ``code``."""
    unit = unit_of(kind, code)
    return (value - unit.offset) / unit.factor


@cache
def registry() -> pint.UnitRegistry[Any]:
    """The one pint registry of the process, built when a proof first needs it (0.4 s, so never on the request path)."""
    import pint

    return pint.UnitRegistry(autoconvert_offset_to_baseunit=True, cache_folder=None)


def prove_table() -> list[str]:
    """Compare every factor and offset with pint; the list of disagreements is empty when the table is right."""
    reg = registry()
    faults = []
    for kind in KINDS.values():
        target = reg.parse_expression(kind.canonical.pint)
        for unit in kind.units.values():
            expected = _through_pint(reg, 3.0, unit.pint, target)
            ours = 3.0 * unit.factor + unit.offset
            if abs(expected - ours) > 1e-9 * max(1.0, abs(expected)):
                faults.append(f"{kind.name}: 3 {unit.code} is {expected} by pint and {ours} by the table")
    return faults


def _through_pint(reg: pint.UnitRegistry[Any], value: float, expression: str, target: Any) -> float:
    if expression.startswith("deg") or expression == "kelvin":
        return float(reg.Quantity(value, reg.parse_units(expression)).to(target.units).magnitude)
    return float((value * reg.parse_expression(expression)).to(target.units).magnitude / target.magnitude)
