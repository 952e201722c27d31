"""What the cold season does: facts of the coldest and the warmest month, as far as the climate is known."""

from __future__ import annotations

from collections.abc import Sequence

from kilisho.farm import Ledger
from kilisho.questions.climate import Warmth
from kilisho.questions.feeding import Fed
from kilisho.questions.gas import CONDITIONS, gas_of


def season_facts(fed: Sequence[Fed], warmth: Warmth, ledger: Ledger) -> dict[str, float]:
    """Facts of the season that checks read; what does not follow from stated values is left out, and so is unknown."""
    facts = temperature_facts(warmth)
    if warmth.ground is None or not warmth.season_known:
        return facts
    usual, cold = (
        _gas_at(warmth.ground.air + warmth.ground.offset, fed, ledger),
        _gas_at(facts["coldest_slurry_temperature"], fed, ledger),
    )
    return {**facts, **({"cold_season_gas_share": cold / usual} if usual else {})}


def temperature_facts(warmth: Warmth) -> dict[str, float]:
    """The coldest month's air, and the slurry's coldest and warmest month [Cel], as far as they follow from stated values."""
    air = {} if warmth.coldest_air is None else {"coldest_month_air_temperature": warmth.coldest_air}
    if warmth.ground is None or not warmth.season_known:
        return air
    mean, amplitude = warmth.ground.air + warmth.ground.offset, warmth.ground.amplitude
    return {**air, "coldest_slurry_temperature": mean - amplitude, "warmest_slurry_temperature": mean + amplitude}


def _gas_at(temperature: float, fed: Sequence[Fed], ledger: Ledger) -> float:
    """Gas of the feed at steady feeding at a temperature, everything else as in the ledger."""
    conditions = {name: ledger.values[name] for name in CONDITIONS}
    return float(gas_of(fed, {**conditions, "digester_temperature": temperature})["biogas_per_day"])
