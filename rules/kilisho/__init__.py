"""Kilisho: a rules engine for biogas digesters on small farms.

>>> from kilisho import load, open_questions
>>> answer = open_questions(load())["sizing"].ask(b'{"people_cooked_for": 5}')
"""

from kilisho.faults import Fault, MalformedError, RefusedError
from kilisho.packs import PackError, PackFault, Rulebook, check, load
from kilisho.questions import Question, open_questions

__all__ = ("Fault", "MalformedError", "PackError", "PackFault", "Question", "RefusedError", "Rulebook", "check", "load", "open_questions")
