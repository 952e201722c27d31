"""Runs of the process model for the outside checks, with the typical figures of the base pack and nothing fitted."""

from __future__ import annotations

from functools import cache

import numpy as np

from kilisho.farm import Shelf
from kilisho.packs import load
from kilisho.process import Conditions, Feedstock, History, Run, feedstock, simulate, working_slurry

PARAMETERS = Shelf(load().data).process


@cache
def of_pack(substrate: str, **changes: float) -> Feedstock:
    """A substrate of the base pack at its typical figures, with changes."""
    entry = load().data.substrates[substrate]
    figure = {name: getattr(entry, name).typical for name in ("biogas_yield", "degradation_rate", "methane_share", "ammonium_share")}
    for name in ("nitrogen", "potassium"):
        figure[name] = getattr(entry, name).typical / entry.volatile_solids.typical
    return feedstock(**{**figure, **changes}, starts_unaided=entry.starts_unaided, of_dung=entry.group == "dung", parameters=PARAMETERS)


def fed_steadily(feed: Feedstock, temperature: float, retention: float, solids: float, tanks: int = 1) -> Run:
    """One cubic metre of slurry, fed evenly for seven retentions and at least 400 days, volatile solids of the feed in kg/m3."""
    days = int(max(7 * retention, 400))
    slurry = np.full((days, 1), 1.0 / retention)
    history = History(feed, solids * slurry[:, None, :], slurry, working_slurry(1.0, PARAMETERS))
    return simulate(history, Conditions(1.0, temperature, tanks), PARAMETERS)


def yield_of(run: Run, retention: float, solids: float, *, normal_methane: bool = False) -> float:
    """Gas of the last day per volatile solids fed [m3/kg]: moist biogas as used, or dry methane at the normal state."""
    return float((run.methane if normal_methane else run.biogas)[-1, 0] * retention / solids)
