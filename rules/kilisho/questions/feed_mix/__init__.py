"""Feed mix: how much of what is on hand to feed each day, with how much water, and what holds the mix back."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.feed_mix.binding import binding_limits
from kilisho.questions.feed_mix.facts import facts_of
from kilisho.questions.feed_mix.relaxing import relaxation
from kilisho.questions.feed_mix.request import EXAMPLE, FeedMixRequest
from kilisho.questions.feed_mix.shape import FeedMixAnswer
from kilisho.questions.feed_mix.told import limits_told, told
from kilisho.questions.feed_mix.work import Work, work_out
from kilisho.questions.findings import Inspector
from kilisho.questions.gas import trace_of
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form

BROUGHT_IN = "animal_disease_import"


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    gas = {"biogas_per_day": ledger.uncertain("biogas_per_day").samples} if work.feasible else {}
    return {
        "feasible": work.feasible,
        "wish": asked.wish,
        **(told(work) if work.feasible else {"recipe": [], "relax": relaxation(work)}),
        "limits": limits_told(work),
        "binding_limits": binding_limits(work) if work.feasible else [],
        "digester_temperature": work.warmth.told(),
        "measure_first": measure_first(ledger, **gas),
        "findings": inspector.shown(inspector.inspect(facts_of(work)), digester_contradictions(work.structure, ledger)),
        "cautions": _cautions(work, inspector),
        **({"derivation": [*(trace_of(work.fed, ledger) if work.feasible else ()), *ledger.trace()]} if explain else {}),
    }


def _cautions(work: Work, inspector: Inspector) -> list[Answer]:
    """Those of the structure and of what is fed; where nothing can be, of all that is on hand."""
    shown = work.fed or work.stores.fed
    ids = {one.id for one in shown}
    imported = any(item.brought_in and item.substrate in ids for item in work.stores.items)
    disease = (BROUGHT_IN,) if imported and BROUGHT_IN in inspector.data.cautions else ()
    return inspector.cautions(work.structure.cautions, disease, *(one.entry.cautions for one in shown))


FORM = Form(
    "feed-mix",
    "feed_mix",
    "Mix what is on hand",
    "The daily recipe of substrates and water that gives the most gas, costs the least for the gas that is wanted, or lasts the longest, "
    "within limits of solids, carbon to nitrogen, ammonia, retention, loading, floating matter and water; what holds it back, and what to "
    "relax where nothing keeps all limits.",
    FeedMixRequest,
    FeedMixAnswer,
    _answer,
    EXAMPLE,
    slow=True,
)
