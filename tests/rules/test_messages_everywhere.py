"""Every sentence is a message: those of any answer, those that the code says, and those of the message files."""

from __future__ import annotations

import ast
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from jinja2 import Environment, nodes
from tests.rules.conftest import REQUESTS, Json, base, questions
from tests.tongues import sentences, stretched_language

import kilisho
import kilisho_api
from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES, Amount, Language, Message, say, told_in
from kilisho.messages.fluent import read, references_of, source_of, stamp_of
from kilisho.translations import english_of

ENGLISH = LANGUAGES["en"].entries
OPERATIONS = tuple(sorted(REQUESTS))
SOURCES = sorted(path for package in (kilisho, kilisho_api) for path in Path(package.__path__[0]).rglob("*.py"))
TEMPLATES = sorted((Path(kilisho.__path__[0]) / "views" / "templates").glob("*.jinja"))
# How a figure came about is for developers: formulas, their inputs and where they hold.
OF_DEVELOPERS = frozenset({"derivation"})


# Answers


@cache
def english() -> dict[str, str]:
    return english_of(base())


def untold(name: str, body: Json) -> Json | None:
    """The answer before it is told in a language; None where the request is refused."""
    question = questions()[name]
    try:
        return question.answer(question.read(body), True)
    except RefusedError:
        return None


def texts(value: Any, path: str = "") -> Iterator[tuple[str, str]]:
    """Every text of an answer with its path, messages as they are."""
    if isinstance(value, str):
        yield path, value
    elif isinstance(value, dict):
        for name, inner in value.items():
            yield from texts(inner, f"{path}/{name}") if name not in OF_DEVELOPERS else ()
    elif isinstance(value, list | tuple):
        for inner in value:
            yield from texts(inner, f"{path}/*")


def plain_sentences(answer: Json, body: Json) -> dict[str, str]:
    """Texts with a blank that are no messages, by path, but for those that the caller sent and rows of ids."""
    own = {text for _, text in texts(body)}
    return {
        path: text
        for path, text in texts(answer)
        if " " in text and not isinstance(text, Message) and text not in own and not set(text.split(", ")) <= base().data.facts.keys()
    }


def wrong_messages(answer: Json) -> list[str]:
    """Messages that do not say what their id says in English, or carry other parameters than it has."""
    return [f"{path}: {text.id}" for path, text in texts(answer) if isinstance(text, Message) and not says_itself(text)]


def says_itself(message: Message) -> bool:
    if message.id not in ENGLISH:
        return english().get(message.id) == stamp_of(str(message)) and not message.parameters
    wanted = references_of(ENGLISH[message.id].message)
    return {f"${name}" for name in message.parameters} == wanted and say(message.id, **message.parameters) == message


# The members that hold sentences or names: all others are for programs, which compare them, and are the same in every language.
SENTENCES = frozenset(
    {
        *("clean_feed", "do", "handling", "how", "in_words", "left_out", "name", "note", "remedy", "seen", "statement", "steps"),
        *("carried_in", "text", "title", "why"),
    }
)
# Endings of members that hold one: the name of an entry that stands beside its id, a reason.
SENTENCE_ENDINGS = ("_is", "_name", "_text", "_unknown", "_why")


def members_for_people(name: str) -> bool:
    return name in SENTENCES or name.endswith(SENTENCE_ENDINGS)


def changed_for_programs(answer: Json, told: Any, path: str = "") -> Iterator[str]:
    """Places of members for programs that a language changes."""
    if isinstance(answer, dict):
        shared = [name for name in answer if name != "language" and not members_for_people(name)]
        for name in shared:
            yield from changed_for_programs(answer[name], told[name], f"{path}/{name}")
    elif isinstance(answer, list | tuple):
        for here, there in zip(answer, told, strict=True):
            yield from changed_for_programs(here, there, f"{path}/*")
    elif answer != told:
        yield path


def nameless_events(answer: Json) -> set[str]:
    """Events of schedules that have no words of their own."""
    rows = [*answer.get("schedule", ()), *answer.get("calendar", ()), *answer.get("recharge_dates", ())]
    return {row["event"] for row in rows if f"event-{row['event']}" not in ENGLISH}


@pytest.fixture(scope="module")
def everywhere(tmp_path_factory: pytest.TempPathFactory) -> Language:
    """A language in which every sentence of code and rulebook is translated."""
    return stretched_language(tmp_path_factory.mktemp("language"))


@pytest.mark.parametrize("name", OPERATIONS)
@given(data=st.data())
@settings(max_examples=20)
def test_every_sentence_of_any_answer_is_a_message_that_can_be_told_in_another_language(everywhere: Language, name: str, data: Any) -> None:
    body = data.draw(REQUESTS[name]())
    answer = untold(name, body)
    assume(answer is not None)
    assert answer is not None
    assert plain_sentences(answer, body) == {}
    assert wrong_messages(answer) == []
    assert nameless_events(answer) == set()
    told = told_in(everywhere, answer)
    assert told["language"]["untranslated"] == 0
    assert set(changed_for_programs(answer, told)) == set()


@pytest.mark.parametrize("name", OPERATIONS)
def test_every_sentence_of_the_examples_is_a_message_that_can_be_told_in_another_language(everywhere: Language, name: str) -> None:
    body = questions()[name].example
    answer = untold(name, body)
    assert answer is not None
    assert plain_sentences(answer, body) == {}
    assert wrong_messages(answer) == []
    assert nameless_events(answer) == set()
    told = told_in(everywhere, answer)
    assert told["language"]["untranslated"] == 0
    assert set(changed_for_programs(answer, told)) == set()


def closed_members(schema: Any) -> Iterator[str]:
    """Members of a schema that promise a closed set, a pattern or a form, themselves or their items."""
    if isinstance(schema, dict):
        for name, member in schema.get("properties", {}).items():
            if any(CLOSED & one.keys() for one in _alternatives(member)):
                yield name
        for inner in schema.values():
            yield from closed_members(inner)
    elif isinstance(schema, list):
        for inner in schema:
            yield from closed_members(inner)


CLOSED = {"enum", "const", "pattern", "format"}


def _alternatives(member: Any) -> Iterator[Json]:
    yield member
    for inner in (*member.get("anyOf", ()), *([member["items"]] if "items" in member else ())):
        yield from _alternatives(inner)


@pytest.mark.parametrize("name", OPERATIONS)
def test_a_member_that_promises_a_closed_set_holds_no_sentence(name: str) -> None:
    found = set(closed_members(questions()[name].response.model_json_schema(mode="serialization")))
    assert found
    assert [member for member in found if members_for_people(member)] == []


def test_what_a_language_changes_for_programs_is_found() -> None:
    untold: Json = {"verdict": "sound", "kind": ["a", "b"], "text": "Good.", "parts": [{"method": "by share", "name": "Cow"}], "days": 3}
    told = {**untold, "verdict": "salama", "kind": ["a", "c"], "text": "Nzuri.", "parts": [{"method": "sehemu", "name": "Ng'ombe"}]}
    assert list(changed_for_programs(untold, told)) == ["/verdict", "/kind/*", "/parts/*/method"]
    assert list(changed_for_programs(untold, {**untold, "language": {"tag": "sw"}})) == []
    schema = {"properties": {"a": {"enum": ["x"]}, "b": {"anyOf": [{"type": "null"}, {"items": {"const": 1}}]}, "c": {"type": "string"}}}
    assert set(closed_members({"$defs": {"D": schema}})) == {"a", "b"}


def test_what_is_no_message_is_found() -> None:
    good, name = say("stockpile-enough"), "Highfold (invented)"
    answer: Json = {
        "name": name,
        "schedule": [{"event": "flame_test", "text": good}, {"event": "paint_gate", "text": str(good)}],
        "in_words": f"{good}",
        "id": "cattle_dung",
        "of": "structure_kind, gas_pressure",
        "derivation": [{"formula": "a times b"}],
        "wrong": Message("That is plenty.", "stockpile-enough"),
        "loose": Message("That is enough.", "stockpile-enough", {"days": 3}),
        "foreign": Message("That is enough.", "checks-nowhere-why"),
    }
    assert plain_sentences(answer, {"name": name}) == {"/schedule/*/text": str(good), "/in_words": str(good)}
    assert wrong_messages(answer) == ["/wrong: stockpile-enough", "/loose: stockpile-enough", "/foreign: checks-nowhere-why"]
    assert nameless_events(answer) == {"paint_gate"}


# What the code says


@dataclass(frozen=True)
class Saying:
    """A message said by its literal id; ``known`` are the parameters that can be read there, ``whole`` says whether these are all."""

    place: str
    id: str
    known: frozenset[str]
    whole: bool


def sayings(tree: ast.AST, place: str) -> Iterator[Saying]:
    """The literal ``say("id", name=value)`` of a module, with a name for it or as a method."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and node.args and _called(node.func) == "say":
            names = frozenset(f"${one.arg}" for one in node.keywords if one.arg is not None)
            for name in _literals(node.args[0]):
                yield Saying(f"{place}:{node.lineno}", name, names, all(one.arg is not None for one in node.keywords))


def _called(function: ast.expr) -> str | None:
    return function.attr if isinstance(function, ast.Attribute) else function.id if isinstance(function, ast.Name) else None


def _literals(node: ast.expr) -> list[str]:
    if isinstance(node, ast.IfExp):
        return _literals(node.body) + _literals(node.orelse)
    return [node.value] if isinstance(node, ast.Constant) and isinstance(node.value, str) else []


def template_sayings(tree: nodes.Template, place: str) -> Iterator[Saying]:
    """The same of a template."""
    for call in tree.find_all(nodes.Call):
        if isinstance(call.node, nodes.Name) and call.node.name == "say":
            names = frozenset(f"${one.key}" for one in call.kwargs)
            for name in _template_literals(call.args[0]):
                yield Saying(f"{place}:{call.lineno}", name, names, call.dyn_kwargs is None)


def _template_literals(node: nodes.Node | None) -> list[str]:
    if isinstance(node, nodes.CondExpr):
        return _template_literals(node.expr1) + _template_literals(node.expr2)
    return [node.value] if isinstance(node, nodes.Const) and isinstance(node.value, str) else []


@cache
def modules() -> dict[str, ast.Module]:
    return {str(path): ast.parse(path.read_text("utf-8")) for path in SOURCES}


@cache
def templates() -> dict[str, nodes.Template]:
    return {str(path): Environment(autoescape=True).parse(path.read_text("utf-8")) for path in TEMPLATES}


def all_sayings() -> list[Saying]:
    code = [one for place, tree in modules().items() for one in sayings(tree, place)]
    return code + [one for place, tree in templates().items() for one in template_sayings(tree, place)]


def mistaken(found: Iterator[Saying] | list[Saying]) -> list[str]:
    """Sayings of ids that English lacks, and of parameters that are not just those of the pattern."""
    return [f"{one.place} {one.id} {sorted(one.known)}" for one in found if not _fits(one)]


def _fits(one: Saying) -> bool:
    if one.id not in ENGLISH:
        return False
    wanted = references_of(ENGLISH[one.id].message)
    return one.known == wanted if one.whole else one.known <= wanted


def test_whatever_the_code_says_is_in_english_with_just_its_parameters() -> None:
    found = all_sayings()
    assert len(found) > 200
    assert mistaken(found) == []


def test_mistakes_in_saying_are_found() -> None:
    source = """
say("remedy-purchase", bought=a)
language.say("remedy-wait" if long else "remedy-never", days=2)
say("remedy-purchase")
say("nobody-says-this")
say(name, count=1)
say("remedy-wait", **more)
say("remedy-wait", late=1, **more)
"""
    assert mistaken(sayings(ast.parse(source), "x")) == [
        "x:3 remedy-wait ['$days']",
        "x:3 remedy-never ['$days']",
        "x:4 remedy-purchase []",
        "x:5 nobody-says-this []",
        "x:8 remedy-wait ['$late']",
    ]
    page = '{{ say("remedy-purchase", bought=a) }}\n{{ say("remedy-never" if a == "b" else "remedy-wait") }}{{ say("c", d=1) }}'
    found = template_sayings(Environment(autoescape=True).parse(page), "y")
    assert mistaken(found) == ["y:2 remedy-wait []", "y:2 c ['$d']"]


# What the message files hold


@cache
def used() -> set[str]:
    """English ids that stand as a text in code or template, are made there (``f"problem-{slug}-title"``), or are words of a group."""
    constants = {node.value for tree in modules().values() for node in ast.walk(tree) if isinstance(node, ast.Constant)}
    constants |= {node.value for tree in templates().values() for node in tree.find_all(nodes.Const)}
    patterns = [made for tree in modules().values() for node in ast.walk(tree) if (made := pattern_of(node)) is not None]
    return {name for name in ENGLISH if name in constants or any(one.fullmatch(name) for one in patterns)}


def pattern_of(node: ast.AST) -> re.Pattern[str] | None:
    """The ids that an expression can make: by a text with braces that begins with an id, or is said and has a word of its own; or by
    ``language.word("event", id)``.
    """
    if isinstance(node, ast.JoinedStr) and re.match(r"[a-z_]+-", _fixed(node.values[0])):
        return _of_text(node)
    if isinstance(node, ast.Call) and node.args:
        name, first = _called(node.func), node.args[0]
        if name == "say" and isinstance(first, ast.JoinedStr) and re.search("[a-z]", "".join(map(_fixed, first.values))):
            return _of_text(first)
        if name == "word" and _literals(first):
            return re.compile(f"{_literals(first)[0]}-[a-z0-9_]+")
    return None


def _fixed(part: ast.expr) -> str:
    return str(part.value) if isinstance(part, ast.Constant) else ""


def _of_text(made: ast.JoinedStr) -> re.Pattern[str]:
    return re.compile("".join(re.escape(_fixed(one)) or "[a-z_-]+" for one in made.values))


def test_every_english_message_is_said_somewhere() -> None:
    words = tuple(f"{group.value}-" for tree in templates().values() for call in tree.find_all(nodes.Call) for group in _groups(call))
    assert [name for name in ENGLISH if name not in used() and not name.startswith(words)] == []


def _groups(call: nodes.Call) -> list[nodes.Const]:
    """The group of words that a template's ``word("signal", id)`` draws on."""
    of_word = isinstance(call.node, nodes.Name) and call.node.name == "word"
    return [one for one in call.args[:1] if of_word and isinstance(one, nodes.Const)]


def test_every_event_has_words_of_its_own() -> None:
    """Each ``event-`` message is the id with blanks, as titles of calendars were before; its id is one that the code makes."""
    made = {node.value for tree in modules().values() for node in ast.walk(tree) if isinstance(node, ast.Constant)}
    events = [name.removeprefix("event-") for name in ENGLISH if name.startswith("event-")]
    assert len(events) > 15
    assert [one for one in events if LANGUAGES["en"].word("event", one) != one.replace("_", " ").capitalize()] == []
    assert [one for one in events if one not in made and not re.fullmatch("feed_(25|50|75|100)_per_cent", one)] == []


def test_ids_that_are_made_are_found() -> None:
    def of(source: str) -> str | None:
        found = pattern_of(ast.parse(source, mode="eval").body)
        return found and found.pattern

    assert of('f"problem-{kind.slug}-title"') == r"problem\-[a-z_-]+\-title"
    assert of('language.word("event", row["event"])') == "event-[a-z0-9_]+"
    assert of('f"{group}-{name}"') is None
    assert of('f"by {name}"') is None
    assert of('say(f"{what}_at", line=2)') == "[a-z_-]+_at"
    assert of('say(f"{group}-{name}")') is None
    assert of("word(group, name)") is None


# Faults tell a developer or officer what to send, descriptions of the catalogue what an id means in a request.
OF_CALLERS = re.compile("fault-.*|.*-description")
IDENTIFIER = re.compile(r"[a-z0-9]+_[a-z0-9_]+")


def of_the_contract(pattern: str) -> list[str]:
    """Ids and names of members that a sentence shows; what stands in braces are parameters."""
    return IDENTIFIER.findall(re.sub(r"\{[^{}]*\}", "", pattern))


def test_no_sentence_for_a_farm_names_a_member_of_the_contract() -> None:
    told = {name: text for name, text in sentences() if not OF_CALLERS.fullmatch(name)}
    assert len(told) > 1000
    assert {name: named for name, text in told.items() if (named := of_the_contract(text))} == {}
    assert of_the_contract("state it as working_volume, not { $soil_depth }") == ["working_volume"]


@pytest.mark.parametrize("tag", [tag for tag in LANGUAGES if tag != "en"])
def test_no_translation_for_a_farm_names_a_member_of_the_contract(tag: str) -> None:
    told = {name: source_of(one.message) for name, one in LANGUAGES[tag].entries.items() if not OF_CALLERS.fullmatch(name)}
    assert len(told) > 1000
    assert {name: named for name, text in told.items() if (named := of_the_contract(text))} == {}


def test_what_was_measured_is_stated_as_a_member_that_some_request_has() -> None:
    members = set().union(*(question.members for question in questions().values()))
    measured = base().data.practice.measurements
    named = {quantity: one.stated_as for quantity, one in measured.items() if one.stated_as}
    assert named["fill_share"] == "working_volume"
    assert set(named.values()) <= members
    assert [quantity for quantity, member in named.items() if quantity == member] == []


def test_no_id_stands_in_english_twice() -> None:
    folder = files("kilisho.messages") / "en"
    counted = Counter(name for file in folder.iterdir() if file.name.endswith(".ftl") for name, _ in read([file]))
    assert counted.total() > 200
    assert [name for name, count in counted.items() if count > 1] == []


@pytest.mark.parametrize("tag", [tag for tag in LANGUAGES if tag != "en"])
def test_translations_show_just_what_the_english_shows(tag: str) -> None:
    entries = LANGUAGES[tag].entries
    wanted = {name: references_of(ENGLISH[name].message) if name in ENGLISH else frozenset[str]() for name in entries}
    assert [name for name, entry in entries.items() if references_of(entry.message) != wanted[name]] == []
    assert [name for name, entry in entries.items() if entry.message.value is None] == []


def test_units_that_are_words_have_their_message() -> None:
    for code in ("a", "d", "h", "kg/d", "kg/m3/d", "L/d", "m3/d", "m3/h"):
        assert code not in LANGUAGES["en"].amount(Amount(2, code)).split()
