"""Digestate: how much there is, what it feeds, how far it reaches, how it is kept and how long to wait before harvest."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.digestate.land import trace_of_land
from kilisho.questions.digestate.nutrients import containers, fertiliser, nitrogen, phosphorus, potassium
from kilisho.questions.digestate.request import EXAMPLE, DigestateRequest
from kilisho.questions.digestate.shape import DigestateAnswer
from kilisho.questions.digestate.storing import storage
from kilisho.questions.digestate.told import flows, hygiene, land
from kilisho.questions.digestate.work import Work, work_out
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.findings import Inspector
from kilisho.questions.gas import trace_of
from kilisho.questions.gas_state import gas_state
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.questions.stated_facts import cautions_beside

# Cautions of a store for which a hole is dug.
DIGGING = ("excavation_collapse",)


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger, inspector)
    vessels = containers(work)
    return {
        **flows(work),
        "gas_state": gas_state(ledger),
        "nitrogen": nitrogen(work, vessels),
        "phosphorus": phosphorus(work, vessels),
        "potassium": potassium(work, vessels),
        **land(work, vessels),
        **hygiene(work),
        "storage": storage(work.store, ledger),
        "fertiliser": fertiliser(work),
        "measure_first": measure_first(ledger, **_ranges(work)),
        "findings": inspector.shown(inspector.inspect(work.facts), _denied(work)),
        "cautions": inspector.cautions(
            DIGGING if work.digs else (), cautions_beside(inspector.data, work.facts), *(one.entry.cautions for one in work.fed)
        ),
        **({"derivation": _derivation(work)} if explain else {}),
    }


def _ranges(work: Work) -> dict[str, Any]:
    """The samples of the answers that a measurement would narrow."""
    told = [name for name in ("nitrogen", "phosphorus", "potassium") if not work.unknown.get(name)]
    samples = {name: work.ledger.uncertain(f"digestate_{name}_per_day").samples for name in told}
    return {**samples, "area_served": work.land.served.samples}


def _denied(work: Work) -> list[Any]:
    return digester_contradictions(work.structure, work.ledger) if work.asked.digester is not None else []


def _derivation(work: Work) -> list[dict[str, Any]]:
    return [*trace_of(work.fed, work.ledger), *work.ledger.trace(), *trace_of_land(work.land, work.ledger)]


FORM = Form(
    "digestate",
    "digestate",
    "Use the digestate",
    "Digestate, solids left and nutrients per day, year, cubic metre and container; losses in store and field; how far it reaches crop by "
    "crop; the store for the time without a crop; waits before harvest and what must not be promised; bought fertiliser it stands for.",
    DigestateRequest,
    DigestateAnswer,
    _answer,
    EXAMPLE,
)
