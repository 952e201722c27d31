"""The gas that this feed should give in this digester, and the measured gas against it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions.acidity import state_ph, take_slurry_ph
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.feeding import NO_URINE, Fed, Menu, feed_facts, menu_of, take_totals, water_to_feed
from kilisho.questions.gas import take_gas
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.herd import supply_of
from kilisho.questions.requests import Climate
from kilisho.questions.seasons import season_facts
from kilisho.ranges import Uncertain

FLOWS = ("slurry_per_day", "hydraulic_retention_time", "organic_loading_rate", "slurry_total_solids", "carbon_to_nitrogen")
AMMONIA = ("total_ammonia_nitrogen", "free_ammonia")


@dataclass(frozen=True, slots=True)
class Expectation:
    """The fed digester as worked out; its gas is ``biogas_per_day`` of the ledger."""

    fed: list[Fed]
    warmth: Warmth

    def facts(self, ledger: Ledger) -> dict[str, Any]:
        """The facts that follow from feed, digester and climate."""
        values = ledger.values
        design = ledger.shelf.curve("design_retention", self.warmth.mean)[1]
        return {
            **feed_facts(self.fed),
            **{name: values[name] for name in (*FLOWS[1:], *AMMONIA)},
            "fed_share_of_design": design / values["hydraulic_retention_time"],
            **({"digester_temperature": self.warmth.mean} if self.warmth.known else {}),
            **season_facts(self.fed, self.warmth, ledger),
        }


@dataclass(frozen=True, slots=True)
class Compared:
    """Measured gas over expected gas [1], over the low end of the expected range [1], and where it lies: below, inside or above."""

    ratio: Uncertain
    to_low: float | None
    verdict: str


def lacking(asked: Any) -> list[str]:
    """Members without which no gas can be expected."""
    fed = any(item.mass is not None for item in asked.feed) or bool(asked.herd)
    return [name for name, there in (("digester", asked.digester is not None), ("feed", fed)) if not there]


def expect(asked: Any, ledger: Ledger, structure_id: str) -> Expectation | None:
    """Feed, slurry and gas of a day in the ledger, beside the digester; None where the feed is not stated."""
    if lacking(asked):
        return None
    climate = _climate_now(asked)
    take_gas_state(climate, ledger)
    warmth = warmth_of(climate, ledger, structure_id, asked.digester.depth)
    menu = menu_of(asked.feed, supply_of(asked.herd, ledger), ledger)
    if not menu.known:
        return None
    _take_water(asked, menu, ledger)
    take_totals(menu.fed, ledger)
    ledger.put(**NO_URINE)
    ledger.solve(*FLOWS)
    take_gas(menu.fed, ledger)
    if wanted := [name for name in AMMONIA if name not in ledger.stated]:
        take_slurry_ph(menu.fed, ledger)
        ledger.solve(*wanted)
    return Expectation(menu.fed, warmth)


def take_known_digester(asked: Any, ledger: Ledger) -> str:
    """Put the digester's volumes, what its slurry is known to be, and the water's density into the ledger; gives its structure's id."""
    structure_id, _ = take_digester(asked.digester, ledger)
    ledger.practice("water_density")
    state_ph(asked.readings.ph, asked.facts, ledger)
    for name in AMMONIA:
        if (measured := getattr(asked.readings, name)) is not None:
            ledger.state(name, measured)
    return structure_id


def _climate_now(asked: Any) -> Climate | None:
    """The climate, with the slurry's measured temperature in it."""
    now, climate = asked.readings.slurry_temperature, asked.climate
    if now is None:
        return climate  # type: ignore[no-any-return]
    return (climate or Climate()).model_copy(update={"digester_temperature": now})


def _take_water(asked: Any, menu: Menu, ledger: Ledger) -> None:
    if asked.water is None:
        water_to_feed(menu.fed, asked.dilution, ledger)
        return
    ledger.state("water_to_feed_by_volume", asked.water / sum(one.volume for one in menu.fed))


def compare(measured: float | None, expectation: Expectation | None, ledger: Ledger) -> Compared | None:
    """The measured gas against the expected one; None where either is not known.

    Raises :class:`RefusedError` where gas was measured of a feed that gives none.
    """
    if measured is None or expectation is None:
        return None
    expected = ledger.uncertain("biogas_per_day")
    if expected.value <= 0:
        raise RefusedError([Fault(("feed",), "feed_gives_no_gas", say("fault-gas_from_nothing"))])
    value, *ends = expected.told
    low, high = ends if len(ends) == 2 else (value, value)
    verdict = "below" if measured < low else "above" if measured > high else "inside"
    ratio = Uncertain(measured / value, measured / expected.samples)
    return Compared(ratio, measured / low if low > 0 else None, verdict)
