"""What a batch rotation is asked with: one digester, its charge, the gas wanted, the climate and the first day."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION, MOST_DIGESTERS, SHORTEST_RETENTION
from kilisho.questions.requests import LONGEST_FEED, Climate, Date, Digester, Dilution, Enquiry, FeedItem


class BatchDigester(Digester):
    """One of the digesters, all alike. State its total volume, its working volume, or both."""

    structure: Annotated[str | None, f.STRUCTURE] = Field(
        None, description="Kind of digester; the rulebook's first batch structure is assumed when absent."
    )


class BatchItem(FeedItem):
    """A substrate of the charge."""

    mass: Annotated[float | None, f.CHARGED_MASS] = Field(
        None, description="Fresh mass in each charge of one digester; what fills it when absent."
    )


class BatchRotationRequest(Enquiry):
    """A batch digester and its charge. Without a demand the answer tells the even supply that several such digesters give."""

    digester: BatchDigester
    feed: list[BatchItem] = Field(min_length=1, max_length=LONGEST_FEED, description="Substrates of a charge.")
    dilution: Dilution | None = None
    gas_demand: Annotated[float | None, f.DAILY_GAS] = Field(None, description="Biogas wanted on every day, as used.")
    climate: Climate | None = None
    first_charge_on: Annotated[Date | None, f.DAY] = Field(None, description="Day of the first charge; days without dates when absent.")
    starter_share: Annotated[float | None, f.InUnit("share", "1", 0, 0.9)] = Field(
        None,
        description="Old slurry that is left in the digester as starter, share of the working volume. When absent: none for feed that "
        "starts unaided, else the rulebook's.",
    )
    starter_slurry: Annotated[float | None, f.STORED_MASS] = Field(
        None, description="Digested slurry from elsewhere for each digester's first charge; as much as is later left in it when absent."
    )
    retention: Annotated[float | None, f.InUnit("time", "d", SHORTEST_RETENTION, LONGEST_RETENTION)] = Field(
        None, description="Days that a charge stays, in whole days; worked out when absent."
    )
    turn_round: Annotated[float | None, f.InUnit("time", "d", 0, 60)] = Field(
        None, description="Time to empty, clean and refill, in whole days rounded up; the rulebook's when absent."
    )
    digesters: Annotated[int | None, f.whole_number(1, MOST_DIGESTERS)] = Field(None, description="Digesters that the farm has.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "digester": {"structure": "batch_tank", "total_volume": {"value": 6, "unit": "m3"}},
    "feed": [{"substrate": "cattle_dung", "share": 0.9}, {"substrate": "vegetable_waste", "share": 0.1}],
    "dilution": {"water_to_feed_by_volume": 1},
    "gas_demand": {"value": 1.2, "unit": "m3/d"},
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}, "yearly_swing": {"value": 5, "unit": "K"}, "warmest_month": 2},
    "starter_share": {"value": 20, "unit": "%"},
    "first_charge_on": "2027-02-01",
}
