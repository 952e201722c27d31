"""What is worth measuring first: the inputs whose measurement would narrow an answer most."""

from __future__ import annotations

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer, in_whole_percent, known
from kilisho.ranges import Numeric


def measure_first(ledger: Ledger, **answers: Numeric) -> list[Answer]:
    """For each answer, given by name with its samples, the few inputs that a farm can measure and that narrow it most."""
    texts = ledger.shelf.data.practice.measurements
    return [
        {
            "quantity": reading.quantity,
            **({"of": reading.of} if reading.of else {}),
            "answer": answer,
            "explains": in_whole_percent(share.explains),
            "narrows": in_whole_percent(share.narrows),
            "how": texts[reading.quantity].text,
            **known(stated_as=texts[reading.quantity].stated_as),
        }
        for answer, found in zip(answers, ledger.leading(*answers.values()), strict=True)
        for reading, share in found
    ]
