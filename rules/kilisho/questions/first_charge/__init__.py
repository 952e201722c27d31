"""First charge: how much dung and water fill a new digester, from when to gather it, what is short, and how it is started."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer, in_cubic_metres, in_kilograms, in_number, in_percent, known
from kilisho.questions.carrying import containers_of
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.findings import Inspector
from kilisho.questions.first_charge import shape
from kilisho.questions.first_charge.heaps import days_of, purchases_for
from kilisho.questions.first_charge.labour import labour_of
from kilisho.questions.first_charge.request import EXAMPLE, FirstChargeRequest
from kilisho.questions.first_charge.start_up import fill_text, first_flame_of, schedule, start_up
from kilisho.questions.first_charge.stockpile import stockpile
from kilisho.questions.first_charge.work import Work, animal_days, facts_of, work_out
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.views.calendars import CALENDAR, Layout, calendar_of
from kilisho.views.paper import SVG
from kilisho.views.sheets import HTML, sheet_of
from kilisho.views.stockpile_drawing import stockpile_drawing

CALENDAR_LAYOUT = Layout(
    "first-charge",
    ("digester_ready_on",),
    {
        "start_collecting": ["hygiene"],
        "confirm_tests": ["fill_after_curing_and_tests"],
        "fill": ["fill_after_curing_and_tests", "never_enter", "loads"],
        "first_gas": ["first_gas", "no_flame_no_smoking"],
        "flame_test": ["first_flame", "first_gas"],
    },
)


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    purchases, lacking = purchases_for(work.piles, asked.purchases, work.main.id)
    containers = containers_of(asked.containers, ledger)
    bought = sum(one["mass"]["value"] for one in purchases)
    labour, flame = labour_of(work, containers[0], bought), first_flame_of(work)
    facts = facts_of(work, labour.get("mass_per_person_and_day", {}).get("value"))
    confirmations, fill_days = shape.confirmations(work.structure, ledger.shelf, facts), labour.get("days", 1)
    imported = ("animal_disease_import",) if purchases or asked.starter_slurry else ()
    return {
        **_amounts(work),
        "stockpile": stockpile(work, purchases, lacking),
        "containers": [shape.container(name, volume, ledger.values) for name, volume in containers],
        "labour": labour,
        "confirm_before_filling": confirmations,
        "start_up": start_up(work, flame, fill_days),
        "measure_first": measure_first(ledger, substrate_mass=ledger.uncertain("substrate_mass").samples, **days_of(work.piles)),
        "schedule": schedule(work, flame, fill_days, fill_text(confirmations, complete=not any(lacking.values()))),
        "findings": inspector.shown(inspector.inspect(facts), digester_contradictions(work.structure, ledger)),
        "cautions": inspector.cautions(work.structure.cautions, imported, *(one.entry.cautions for one in work.fed)),
        **({"derivation": ledger.trace()} if explain else {}),
    }


def _amounts(work: Work) -> Answer:
    of, days = work.ledger.of, animal_days(work)
    total = work.ledger.uncertain("substrate_mass")
    return {
        "slurry_volume": in_cubic_metres(*of("slurry_volume")),
        "substrate_mass": in_kilograms(*of("substrate_mass")),
        "substrate_volume": in_cubic_metres(*of("substrate_volume")),
        "water_volume": in_cubic_metres(*of("water_volume")),
        "starter_slurry": in_kilograms(work.asked.starter_slurry),
        "slurry_total_solids": in_percent(*of("first_charge_total_solids")),
        "substrates": [shape.substrate(one, total) for one in work.fed],
        **known(animal_days=None if days is None else in_number(*days)),
    }


FORM = Form(
    "first-charge",
    "first_charge",
    "Plan the first charge",
    "Slurry, substrate and water that fill a new digester; the stockpile by date, what is short and how to close it; containers, "
    "labour, what to confirm before filling, and the start-up until full feeding.",
    FirstChargeRequest,
    shape.FirstChargeAnswer,
    _answer,
    EXAMPLE,
    {CALENDAR: calendar_of(CALENDAR_LAYOUT), SVG: stockpile_drawing, HTML: sheet_of("first-charge")},
)
