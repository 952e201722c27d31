"""Validating one installation's record: can it be right, does the size fit, is it fed well, is the gas what it should be, what is open."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer, known
from kilisho.questions.findings import Inspector
from kilisho.questions.installation import told
from kilisho.questions.installation.figures import OPERATION
from kilisho.questions.installation.request import EXAMPLE, InstallationRequest
from kilisho.questions.installation.shape import InstallationAnswer
from kilisho.questions.installation.single import derivation, facts_of, records_of, substrate_of, take_assumptions
from kilisho.questions.installation.verdicts import Judge
from kilisho.questions.installation.work import desk_of, work_out
from kilisho.questions.opening import Form


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    desk = desk_of(ledger.shelf)
    work = work_out(records_of(asked, desk.figures), desk)
    take_assumptions(work, ledger)
    findings = inspector.inspect(facts_of(work, asked))
    data, substrate = ledger.shelf.data, substrate_of(work)
    fed = data.substrates[substrate].cautions if substrate is not None else ()
    return {
        **known(id=asked.id),
        **told.verdict(told.verdicts_of(findings, Judge(desk.checks))),
        **told.gas(work, ledger),
        "worked_out": told.worked_out(work),
        "unanswered": told.unanswered(findings),
        "findings": told.with_slips(inspector.shown(findings), work, findings),
        "cautions": inspector.cautions(data.structures[asked.structure].cautions, fed),
        **({"derivation": derivation(work)} if explain else {}),
    }


FORM = Form(
    "installations/validate",
    OPERATION,
    "Validate an installation",
    "One installation's record as built and as it runs: whether its numbers can be right (and which unit was probably meant), whether its "
    "size fits herd and climate, how it is fed, whether the measured gas is what the feed should give, and which dangers nobody ruled out.",
    InstallationRequest,
    InstallationAnswer,
    _answer,
    EXAMPLE,
)
