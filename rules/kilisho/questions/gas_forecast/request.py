"""What a gas forecast is asked with: the digester, its first charge, its feeds by date, and the climate."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.limits import Limits
from kilisho.questions.requests import LONGEST_FEED, Ask, Climate, Date, Digester, Dilution, Enquiry, FeedItem, Herd

LONGEST_PLAN, LONGEST_DEVIATIONS, MOST_SUBSTRATES = 24, 100, 12


class DoseItem(FeedItem):
    """A substrate of the first charge or of one feeding."""

    mass: Annotated[float | None, f.CHARGED_MASS] = Field(
        None,
        description="Fresh mass in one feeding; what the herd gives in that time when absent. In a first charge: what fills the digester.",
    )


Dose = Annotated[list[DoseItem], Field(min_length=1, max_length=LONGEST_FEED)]


class FirstCharge(Ask):
    """What fills a new digester on its first day."""

    on: Annotated[Date, f.DAY] = Field(description="Day of filling; day 0 of the forecast.")
    feed: Dose
    water: Annotated[float | None, f.CHARGED_WATER] = Field(None, description="Water mixed in; by the dilution when absent.")
    starter_slurry: Annotated[float, f.STORED_MASS] = Field(0.0, description="Digested slurry from a working digester.")


class FeedingPlan(Ask):
    """An even feed from one day to another."""

    from_: Annotated[Date, f.DAY] = Field(alias="from", description="Day of the first feeding.")
    until: Annotated[Date | None, f.DAY] = Field(None, description="Last day; until the next plan begins when absent.")
    every: Annotated[float, f.INTERVAL] = Field(1.0, description="Time between feedings.")
    feed: Dose
    water: Annotated[float | None, f.CHARGED_WATER] = Field(None, description="Water in one feeding; by the dilution when absent.")


class Deviation(Ask):
    """Days on which the feed differed from the plan: missed, halved, doubled."""

    from_: Annotated[Date, f.DAY] = Field(alias="from", description="First such day.")
    until: Annotated[Date | None, f.DAY] = Field(None, description="Last such day; the same day when absent.")
    share_of_feed: Annotated[float, f.plain_number(0, 5)] = Field(0.0, description="What was fed against the plan: 0 missed, 2 doubled.")


class GasForecastRequest(Enquiry):
    """A digester and its feeding history or plan. With a first charge it starts new; without one it has worked evenly on its first plan."""

    digester: Digester
    first_charge: FirstCharge | None = Field(None, description="Absent for a digester that has long been working.")
    maintenance_feed: list[FeedingPlan] = Field([], max_length=LONGEST_PLAN, description="Feeds by date, without overlap.")
    deviations: list[Deviation] = Field([], max_length=LONGEST_DEVIATIONS, description="Days on which the plan was not kept.")
    herd: Herd = Field([], description="Animals of the farm, for feeds without a stated mass.")
    dilution: Dilution | None = Field(None, description="For feeds without stated water; the substrates' practice when absent.")
    climate: Climate | None = None
    interval: Annotated[str, f.one_of(("day", "week", "month"))] = Field("day", description="Length of the steps that are told.")


def request_under(limits: Limits) -> type[GasForecastRequest]:
    """The request with the longest forecast that is in force."""

    class GasForecastQuestion(GasForecastRequest):
        days: Annotated[int, f.whole_number(1, limits.forecast_days)] = Field(365, description="Days of the forecast.")

    GasForecastQuestion.__doc__ = GasForecastRequest.__doc__
    GasForecastQuestion.__name__ = "GasForecastRequest"
    return GasForecastQuestion


def example_under(limits: Limits) -> dict[str, Any]:
    """The example, cut to the longest forecast that is in force; without the feed where it would begin too late."""
    cut = {**_EXAMPLE, "days": min(_EXAMPLE["days"], limits.forecast_days)}
    return cut if limits.forecast_days > _FEED_BEGINS else {name: part for name, part in cut.items() if name != "maintenance_feed"}


_FEED_BEGINS = 26
_EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}},
    "first_charge": {
        "on": "2027-02-03",
        "feed": [{"substrate": "cattle_dung", "mass": {"value": 4000, "unit": "kg"}}],
        "water": {"value": 4000, "unit": "L"},
    },
    "maintenance_feed": [
        {
            "from": "2027-03-01",
            "feed": [{"substrate": "cattle_dung", "mass": {"value": 100, "unit": "kg"}}],
            "water": {"value": 100, "unit": "L"},
        }
    ],
    "deviations": [{"from": "2027-08-02", "until": "2027-08-08"}],
    "climate": {"monthly_air_temperature": {"values": [19, 20, 20, 19, 18, 17, 16, 17, 18, 19, 19, 19], "unit": "Cel"}},
    "days": 365,
    "interval": "month",
}
