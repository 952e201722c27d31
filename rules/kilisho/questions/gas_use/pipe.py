"""The gas pipe: what pressure it loses at the busiest hour, the smallest size that will do, and what reaches the appliance."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Any

from kilisho.farm import Ledger
from kilisho.formulas.digester import REFERENCE_TEMPERATURE
from kilisho.formulas.gas import moist_biogas_density, moist_biogas_viscosity
from kilisho.formulas.gas_pipe import LAMINAR, length_with_fittings, mean_velocity, pressure_drop, reynolds_number
from kilisho.messages import Message, say
from kilisho.questions.answers import (
    Answer,
    in_litres_per_hour,
    in_metres,
    in_metres_per_second,
    in_millimetres,
    in_number,
    in_pascals,
    known,
)
from kilisho.questions.gas_use.demand import FlowFrom
from kilisho.ranges import Uncertain, applied, certain

FLOWS_IN_WORDS: dict[FlowFrom, Message] = {
    "stated_hours": say("use-busiest-hour"),
    "all_at_once": say("use-all-at-once"),
    "cooking_hours": say("use-cooking-hours"),
}


@dataclass(frozen=True, slots=True)
class Line:
    """What a pipe's loss follows from: flow [m3/h], the gas's density [kg/m3] and viscosity [Pa.s], the wall's roughness [m]."""

    asked: Any
    flow: Uncertain
    flow_from: FlowFrom
    density: Uncertain
    viscosity: Uncertain
    roughness: Uncertain
    fittings: Uncertain

    def length(self, bore: Uncertain) -> Uncertain:
        """Straight pipe [m] that loses as much as the pipe with its fittings."""
        if self.asked.fittings is None:
            return self.fittings.plus(certain(1.0)).times(self.asked.length)
        return applied(partial(length_with_fittings, self.asked.length, float(self.asked.fittings)), self.fittings, bore)

    def drop(self, bore: Uncertain) -> Uncertain:
        """Pressure [Pa] that a pipe of inner diameter [m] loses."""
        return applied(pressure_drop, self.flow, self.length(bore), bore, self.roughness, self.density, self.viscosity)


@dataclass(frozen=True, slots=True)
class Sized:
    """A size of pipe of the rulebook: id, bore [m] and the pressure that it would lose [Pa]."""

    id: str
    name: str
    bore: Uncertain
    drop: Uncertain

    @property
    def most_lost(self) -> float:
        """High end of the drop [Pa]."""
        return self.drop.told[-1]


@dataclass(frozen=True, slots=True)
class PipeWork:
    """The pipe worked out: limit [Pa], sizes, the smallest that keeps it, the drop of the bore in question, the least pressure needed."""

    line: Line
    limit: float
    sizes: list[Sized]
    recommended: Sized | None
    drop: Uncertain | None
    needed_pressure: float | None

    def appliance_pressure(self, gas_pressure: float | None) -> Uncertain | None:
        """Gauge pressure [Pa] that reaches the appliance; None where the plant's pressure or a drop is not known."""
        if gas_pressure is None or self.drop is None:
            return None
        return certain(gas_pressure).plus(self.drop.times(-1.0))


def line_of(asked: Any, flow: Uncertain, flow_from: FlowFrom, ledger: Ledger) -> Line:
    """The pipe with the gas that flows in it; its material is galvanised steel where nobody says so."""
    material = asked.material or ledger.choose("pipe_material", "galvanised_steel", say("use-pipe-material-unknown"))
    name = "fittings_of_length" if asked.fittings is None else "fitting_in_diameters"
    roughness = ledger.figure("figures", f"pipe_roughness_{material}", f"pipe_roughness_{material}")
    methane, state = ledger.uncertain("methane_share"), {"temperature": REFERENCE_TEMPERATURE, "pressure": ledger.values["gas_pressure"]}
    density, viscosity = (applied(partial(found, **state), methane) for found in (moist_biogas_density, moist_biogas_viscosity))
    return Line(asked, flow, flow_from, density, viscosity, roughness, ledger.figure("figures", name, name))


def work_out_pipe(line: Line, gas_pressure: float | None, appliances: list[str], ledger: Ledger) -> PipeWork:
    """Drop and size; a size keeps the limit with the high end of its drop, since a pipe is laid once."""
    needed = _needed_pressure(appliances, ledger)
    limit = ledger.figure("figures", "pipe_drop_limit", "pipe_drop_limit").value
    if gas_pressure is not None and needed is not None and 0 < gas_pressure - needed < limit:
        limit = gas_pressure - needed
    sizes = _sizes(line, ledger)
    recommended = next((size for size in sizes if size.most_lost <= limit), None)
    if recommended is not None:
        ledger.use(ledger.shelf.reading("pipes", recommended.id, "inner_diameter"))
    stated = line.asked.inner_diameter
    drop = line.drop(certain(stated)) if stated is not None else recommended.drop if recommended is not None else None
    return PipeWork(line, limit, sizes, recommended, drop, needed)


def _needed_pressure(appliances: list[str], ledger: Ledger) -> float | None:
    """The highest of the least pressures of the appliances that state one [Pa]."""
    stating = [name for name in dict.fromkeys(appliances) if ledger.shelf.data.appliances[name].least_pressure is not None]
    return max((ledger.figure("appliances", name, "least_pressure").value for name in stating), default=None)


def _sizes(line: Line, ledger: Ledger) -> list[Sized]:
    """The rulebook's sizes of the pipe's material, the narrowest first."""
    material = line.asked.material or "galvanised_steel"
    found = []
    for name, pipe in ledger.shelf.data.pipes.items():
        if pipe.material == material:
            reading = ledger.shelf.reading("pipes", name, "inner_diameter")
            bore = Uncertain(reading.typical, reading.samples)
            found.append(Sized(name, pipe.name, bore, line.drop(bore)))
    return sorted(found, key=lambda size: size.bore.value)


def told_pipe(work: PipeWork, gas_pressure: float | None) -> Answer:
    """The pipe as an answer tells it."""
    line, stated = work.line, work.line.asked.inner_diameter
    at_appliance = work.appliance_pressure(gas_pressure)
    best = work.recommended
    return {
        "busiest_flow": in_litres_per_hour(*line.flow.told),
        "busiest_flow_from": line.flow_from,
        "busiest_flow_is": FLOWS_IN_WORDS[line.flow_from],
        "pressure_drop_limit": in_pascals(work.limit),
        **(_as_laid(line, certain(stated)) if stated is not None else {}),
        "sizes": [_size(size, work.limit) for size in work.sizes],
        **known(recommended=None if best is None else _size(best, work.limit)),
        **known(
            plant_pressure=None if gas_pressure is None else in_pascals(gas_pressure),
            appliance_pressure=None if at_appliance is None else in_pascals(*at_appliance.told),
            least_appliance_pressure=None if work.needed_pressure is None else in_pascals(work.needed_pressure),
        ),
        "text": _text(work),
    }


def _as_laid(line: Line, bore: Uncertain) -> Answer:
    velocity = float(mean_velocity(line.flow.value, bore.value))
    reynolds = float(reynolds_number(velocity, bore.value, line.density.value, line.viscosity.value))
    return {
        "inner_diameter": in_millimetres(bore.value),
        "equivalent_length": in_metres(*line.length(bore).told),
        "velocity": in_metres_per_second(velocity),
        "reynolds_number": in_number(reynolds),
        "flow": "laminar" if reynolds <= LAMINAR else "turbulent",
        "pressure_drop": in_pascals(*line.drop(bore).told),
    }


def _size(size: Sized, limit: float) -> Answer:
    return {
        "pipe": size.id,
        "name": size.name,
        "inner_diameter": in_millimetres(*size.bore.told),
        "pressure_drop": in_pascals(*size.drop.told),
        "keeps_limit": size.most_lost <= limit,
    }


def _text(work: PipeWork) -> str:
    if work.recommended is None:
        return say("use-no-pipe-serves")
    return say("use-pipe-at-least", size=work.recommended.name)


def pipe_step(work: PipeWork) -> list[dict[str, Any]]:
    """The step of the derivation that the graph of formulas does not know."""
    line, stated = work.line, work.line.asked.inner_diameter
    bore = certain(stated) if stated is not None else work.recommended.bore if work.recommended is not None else None
    if bore is None or work.drop is None:
        return []
    inputs = {
        "flow": (line.flow, "m3/h"),
        "length": (line.length(bore), "m"),
        "inner_diameter": (bore, "m"),
        "roughness": (line.roughness, "m"),
        "density": (line.density, "kg/m3"),
        "viscosity": (line.viscosity, "Pa.s"),
    }
    return [
        {
            "quantity": "pipe_pressure_drop",
            "value": work.drop.value,
            "unit": "Pa",
            "formula": "Hagen and Poiseuille up to a Reynolds number of 2300, Darcy and Weisbach with Haaland's friction factor above.",
            "inputs": {name: float(part.value) for name, (part, _) in inputs.items()},
            "input_units": {name: unit for name, (_, unit) in inputs.items()},
            "source": [],
        }
    ]
