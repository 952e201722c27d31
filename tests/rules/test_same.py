"""One shelf and one model of facts for all questions of a rulebook, and never those of another rulebook."""

from __future__ import annotations

from kilisho.packs import load
from kilisho.questions import open_questions
from kilisho.questions.same import Same
from kilisho.questions.stated_facts import stated_facts


def test_only_one_and_the_same_thing_is_the_same() -> None:
    first, second = {"a": 1}, {"a": 1}
    assert Same(first) == Same(first)
    assert hash(Same(first)) == hash(Same(first))
    assert Same(first) != Same(second)
    assert Same(first) != first


def test_the_facts_of_a_rulebook_are_one_model_and_those_of_another_another() -> None:
    one, other = load().data, load().data
    assert stated_facts(one.facts) is stated_facts(one.facts)
    assert stated_facts(one.facts) is not stated_facts(other.facts)
    assert stated_facts(one.facts).model_fields.keys() == stated_facts(other.facts).model_fields.keys() == one.facts.keys()


def test_all_questions_of_a_rulebook_share_their_ids() -> None:
    opened = open_questions(load())
    assert len({id(question.ids) for question in opened.values()}) == 1
