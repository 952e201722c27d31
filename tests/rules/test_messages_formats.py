"""The quick way of writing messages against Fluent's own resolver, for every message of every language and for made-up ones."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Any

import pytest
from fluent.runtime import FluentBundle
from fluent.syntax import FluentParser, ast
from hypothesis import given
from hypothesis import strategies as st

from kilisho.messages import LANGUAGES, Language
from kilisho.messages.fluent import references_of
from kilisho.messages.formats import Format, format_of

EVERY = pytest.mark.parametrize("tag", list(LANGUAGES))
COUNTS = (0, 1, 2, 3, 5, 11, 100, 1234, 1_000_000, 0.5, 1.5)


@cache
def bundle(tag: str) -> FluentBundle:
    made = FluentBundle([tag], use_isolating=False)
    made.add_resource(ast.Resource([entry.message for entry in LANGUAGES[tag].entries.values()]))
    return made


def resolved(made: FluentBundle, name: str, parameters: dict[str, Any]) -> str:
    pattern = made.get_message(name).value
    assert pattern is not None
    text, faults = made.format_pattern(pattern, parameters)
    assert faults == []
    return str(text)


@EVERY
@pytest.mark.parametrize("count", COUNTS)
def test_every_message_is_written_as_the_resolver_writes_it(tag: str, count: float) -> None:
    language = LANGUAGES[tag]
    for name, entry in language.entries.items():
        wanted = [one.removeprefix("$") for one in references_of(entry.message)]
        texts = {one: f"{{{one}}}" for one in wanted}
        for parameters in (texts, dict.fromkeys(wanted, count)):
            assert written(language, name, parameters) == resolved(bundle(tag), name, parameters), name


def written(language: Language, name: str, parameters: dict[str, Any]) -> str:
    """As the language writes it, from parameters that are shown already."""
    plain = format_of(language.entries[name].message)
    assert plain is not None, name
    return language._form(plain, parameters).format_map({key: language._as_text(value) for key, value in parameters.items()})


def read(source: str) -> ast.Message:
    message = FluentParser().parse_entry(f"some = {source}\n")
    assert isinstance(message, ast.Message)
    return message


@pytest.mark.parametrize(
    ("source", "found"),
    [
        ("Stop.", Format("Stop.", None, {})),
        ("{ $a } of { $b-c }.", Format("{a} of {b-c}.", None, {})),
        ("A } brace", None),
        ("{ $n ->\n    [one] One { $x }\n   *[other] { $n }\n}", Format("{n}", "n", {"one": "One {x}", "other": "{n}"})),
        ("{ $n ->\n   *[one] One\n    [few] Few\n}", Format("One", "n", {"one": "One", "few": "Few"})),
        ("Before { $n ->\n    [one] One\n   *[other] More\n}", None),
        ("{ $n ->\n    [0] None\n   *[other] More\n}", None),
        ("{ $n ->\n    [one] { $m ->\n        [one] a\n       *[other] b\n    }\n   *[other] More\n}", None),
        ("{ NUMBER($n) ->\n    [one] One\n   *[other] More\n}", None),
        ('{ "{" } { $a }', None),
        ("{ -term }", None),
        ("{ other.part }", None),
        ("\n    .attribute = only this", None),
    ],
)
def test_what_is_written_the_quick_way(source: str, found: Format | None) -> None:
    if source == "A } brace":
        assert isinstance(FluentParser().parse_entry(f"some = {source}\n"), ast.Junk)
    else:
        assert format_of(read(source)) == found


TEXT = st.text(st.characters(codec="ascii", exclude_characters="{}\\\r\n"), min_size=1, max_size=12).map(lambda text: f"x{text}x")
PART = TEXT | st.sampled_from(["{ $a }", "{ $b }"])
LINE = st.lists(PART, min_size=1, max_size=4).map(" ".join)
NAMES = st.sets(st.sampled_from(["zero", "one", "two", "few", "many"])).map(sorted)
FORMS = NAMES.flatmap(lambda names: st.fixed_dictionaries(dict.fromkeys((*names, "other"), LINE)))


def choosing(forms: dict[str, str]) -> str:
    """The source of a message with these forms by the parameter ``n``."""
    lines = [f"\n   {'*' if name == 'other' else ' '}[{name}] {text}" for name, text in forms.items()]
    return f"{{ $n ->{''.join(lines)}\n}}"


@EVERY
@given(LINE | FORMS.map(choosing), st.integers(0, 2_000_000) | st.sampled_from(COUNTS), st.text(max_size=8))
def test_made_up_messages_are_written_as_the_resolver_writes_them(tag: str, source: str, count: float, text: str) -> None:
    made = FluentBundle([tag], use_isolating=False)
    message = read(source)
    made.add_resource(ast.Resource([message]))
    plain = format_of(message)
    assert plain is not None
    shown: dict[str, Any] = {"a": text, "b": count, "n": count}
    language = LANGUAGES[tag]
    quick = language._form(plain, shown).format_map({key: language._as_text(value) for key, value in shown.items()})
    assert quick == resolved(made, "some", shown)


def test_what_chooses_twice_is_left_to_the_resolver(tmp_path: Path) -> None:
    file = tmp_path / "x.en.ftl"
    file.write_text("twice = { $n ->\n    [0] none\n   *[other] { $n } or { $m ->\n        [one] one\n       *[other] more\n    }\n}\n")
    language = Language("en", (file,))
    assert format_of(language.entries["twice"].message) is None
    assert [language.say("twice", n=n, m=m) for n, m in ((0, 1), (3, 1), (3, 4))] == ["none", "3 or one", "3 or more"]
    with pytest.raises(ValueError, match="en twice"):
        language.say("twice", n=3)


def test_braces_in_texts_stay_as_they_are(tmp_path: Path) -> None:
    file = tmp_path / "x.en.ftl"
    file.write_text("brace = So: { $text }\n")
    assert Language("en", (file,)).say("brace", text="{text} {0} {{") == "So: {text} {0} {{"
