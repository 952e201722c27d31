"""The languages: each says messages by id, and writes numbers, amounts and dates as its speakers do."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cache, cached_property, lru_cache
from importlib.resources import files
from typing import Any

from babel import Locale, UnknownLocaleError
from babel.dates import format_date
from babel.numbers import format_decimal
from fluent.runtime import FluentBundle
from fluent.runtime.resolver import Pattern
from fluent.syntax import ast

from kilisho.messages.amounts import Amount, Day, Listed, Number, Parameter
from kilisho.messages.fluent import Entry, File, MessageFileError, read, references_of, source_of, stamp_of
from kilisho.messages.formats import Format, format_of
from kilisho.messages.message import Message

DEFAULT = "en"
TAGS = (DEFAULT, "es", "fr", "sw")
SIGNIFICANT = 3
# Digits (or a sign and two) that need no separator of thousands.
LONGEST_UNGROUPED = 3
# Dates and plurals that were worked out lately; babel reads its pattern anew each time.
KEPT = 4096
Told = Mapping[str, Any]
SYMBOLS = {"1": "", "Cel": "°C", "[degF]": "°F", "har": "ha", "m3": "m³", "m2": "m²"}
# Units that are words; the others are symbols and stand as they are.
UNITS = {
    "a": "unit-years",
    "d": "unit-days",
    "h": "unit-hours",
    "kg/d": "unit-kilograms_a_day",
    "kg/m3/d": "unit-kilograms_a_cubic_metre_and_day",
    "L/d": "unit-litres_a_day",
    "m3/d": "unit-cubic_metres_a_day",
    "m3/h": "unit-cubic_metres_an_hour",
}


@dataclass(frozen=True)
class Language:
    """One language: its tag, and files of messages beside its own, later ones over earlier ones."""

    tag: str
    overlays: tuple[File, ...] = field(default=())

    @cached_property
    def locale(self) -> Locale:
        """What numbers, dates and plurals look like; as in English for a language of which Unicode's CLDR knows nothing."""
        try:
            return Locale.parse(self.tag)
        except UnknownLocaleError:
            return Locale.parse(DEFAULT)

    @cached_property
    def entries(self) -> Mapping[str, Entry]:
        """Every message by id."""
        return dict(read([*_own_files(self.tag), *self.overlays]))

    @cached_property
    def _formats(self) -> Mapping[str, Format | None]:
        return {name: format_of(entry.message) for name, entry in self.entries.items()}

    @cached_property
    def _bundle(self) -> FluentBundle:
        bundle = FluentBundle([self.tag, DEFAULT], use_isolating=False)
        bundle.add_resource(ast.Resource([entry.message for entry in self.entries.values()]))
        return bundle

    def say(self, name: str, /, **parameters: Parameter) -> str:
        """The message ``name``, in English where this language lacks it; raises KeyError where English does too, ValueError for a
        parameter that the message wants and does not get."""
        if self.tag == DEFAULT:
            return self._write(name, parameters)
        found = self.translation(name, stamp_of_english(name))
        return LANGUAGES[DEFAULT].say(name, **parameters) if found is None else self._write(name, parameters)

    def tell(self, message: Message) -> tuple[str, Entry | None]:
        """The message in this language, with its entry; the English and None where there is no translation of just that English."""
        found = self.entry_of(message)
        return (str(message), None) if found is None else (self._write(message.id, message.parameters), found)

    def entry_of(self, message: Message) -> Entry | None:
        """The translation of just the English that the message says."""
        return self.translation(message.id, stamp_of_english(message.id) or stamp_of(str(message)))

    def translation(self, name: str, stamp: str | None) -> Entry | None:
        """The translation of the English whose stamp is given."""
        found = self.entries.get(name)
        return found if found is not None and found.stamp == stamp else None

    def word(self, group: str, name: str) -> str:
        """An id as words: ``word("event", "flame_test")`` is "Flame test"."""
        known = f"{group}-{name}" in LANGUAGES[DEFAULT].entries
        return self.say(f"{group}-{name}") if known else name.replace("_", " ").capitalize()

    def _write(self, name: str, parameters: Mapping[str, Any]) -> str:
        plain = self._formats.get(name)
        if plain is None:
            return self._by_fluent(name, {key: self._shown(value) for key, value in parameters.items()})
        try:
            return self._form(plain, parameters).format_map({key: self._text(value) for key, value in parameters.items()})
        except KeyError as lacking:
            raise ValueError(f"{self.tag} {name}: no parameter {lacking}") from None

    def _form(self, plain: Format, parameters: Mapping[str, Any]) -> str:
        count = None if plain.by is None else parameters[plain.by]
        if not isinstance(count, (int, float, Decimal)):
            return plain.usual
        return plain.forms.get(_plural(self.locale, float(count) if isinstance(count, Decimal) else count), plain.usual)

    def _text(self, value: Any) -> str:
        """A parameter as it stands in a sentence."""
        write = _WRITERS.get(type(value))
        return self._as_text(self._shown(value)) if write is None else write(self, value)

    def _as_text(self, value: str | float) -> str:
        if isinstance(value, str):
            return value
        return f"{value:,}" if self.tag == DEFAULT and isinstance(value, int) else str(format_decimal(value, locale=self.locale))

    def _said(self, message: Message) -> str:
        # The English of the code is what the message already says; a pack's English may say it otherwise.
        return str(message) if self.tag == DEFAULT and not self.overlays else self.tell(message)[0]

    def _by_fluent(self, name: str, shown: dict[str, Any]) -> str:
        written, faults = self._bundle.format_pattern(self._pattern(name), shown)
        if faults:
            raise ValueError(f"{self.tag} {name}: {faults[0]}")
        return str(written)

    def _pattern(self, name: str) -> Pattern:
        pattern = self._bundle.get_message(name).value
        if pattern is None:
            raise KeyError(name)
        return pattern

    def _shown(self, value: Any) -> str | int | float:
        match value:
            case Message():
                return self._said(value)
            case str() | int() | Decimal():
                return float(value) if isinstance(value, Decimal) else value  # Fluent knows no plural of decimals
            case Number(number, decimals):
                return self.number(number, decimals)
            case Amount():
                return self.amount(value)
            case Day(date):
                return self.long_date(date)
            case Listed(items):
                return "; ".join(str(self._shown(item)) for item in items)
        raise TypeError(f"a message takes no {type(value).__name__}")

    def number(self, value: float, decimals: int | None = None) -> str:
        """A finite number with at most three digits that mean something: 3556.9 is "3,560"; with ``decimals``, with just so many."""
        return self._grouped(_rounded(value, decimals))

    def _grouped(self, digits: str) -> str:
        if self.tag == DEFAULT:
            return f"{Decimal(digits):,f}" if len(digits.partition(".")[0]) > LONGEST_UNGROUPED else digits
        whole, places = self.locale.decimal_formats[None].pattern.partition(".")[0], len(digits.partition(".")[2])
        return str(format_decimal(Decimal(digits), f"{whole}.{'0' * places}" if places else whole, self.locale))

    def amount(self, told: Told | Amount) -> str:
        """An amount with its unit, and with its range where it is uncertain: "34 days (22 to 46)"."""
        amount = told if isinstance(told, Amount) else Amount.of(told)
        shown = self._with_unit(amount)
        if amount.low is None or amount.high is None:
            return shown
        low, high = (self.number(one, amount.decimals) for one in (amount.low, amount.high))
        return shown if low == high else self.say("amount-range", amount=shown, low=low, high=high)

    def typical(self, told: Told) -> str:
        """An amount with its unit, whatever its range."""
        return self.amount(Amount(told["value"], told["unit"]))

    def _with_unit(self, amount: Amount) -> str:
        digits = _rounded(amount.value, amount.decimals)
        shown, name = self._grouped(digits), UNITS.get(amount.unit)
        if name is None:
            return f"{shown} {SYMBOLS.get(amount.unit, amount.unit)}".rstrip()
        count = Decimal(digits)
        return self.say(name, shown=shown, count=int(count) if count == int(count) else count)

    def long_date(self, day: dt.date | str) -> str:
        """A date with its weekday: "Wed 3 Feb 2027"."""
        return _dated(_date(day), "EEE d MMM y", self.locale)

    def short_date(self, day: dt.date | str) -> str:
        """A date within a known year: "3 Feb"."""
        return _dated(_date(day), "d MMM", self.locale)

    def month(self, day: dt.date | str) -> str:
        """A month of a year: "Feb 2027"."""
        return _dated(_date(day), "MMM y", self.locale)


def _date(day: dt.date | str) -> dt.date:
    return dt.date.fromisoformat(day) if isinstance(day, str) else day


@lru_cache(maxsize=KEPT)
def _dated(day: dt.date, pattern: str, locale: Locale) -> str:
    return str(format_date(day, pattern, locale))


@lru_cache(maxsize=KEPT, typed=True)
def _plural(locale: Locale, count: float) -> str:
    return str(locale.plural_form(count))


def _rounded(value: float, decimals: int | None) -> str:
    """The digits that are shown, ungrouped: rounded to ``decimals``, or to three digits without trailing zeros; never "-0"."""
    if decimals is not None:
        return f"{value:z.{decimals}f}"
    if value == 0:
        return "0"
    places = SIGNIFICANT - 1 - math.floor(math.log10(abs(value)))
    if places <= 0:
        return f"{round(value, places):.0f}"
    return f"{value:.{places}f}".rstrip("0").rstrip(".")


_WRITERS: Mapping[type, Callable[[Language, Any], str]] = {
    str: lambda _, text: text,
    Message: Language._said,
    Amount: Language.amount,
    Number: lambda language, number: language.number(number.value, number.decimals),
    Day: lambda language, day: language.long_date(day.date),
}


@cache
def _own_files(tag: str) -> tuple[File, ...]:
    folder = files("kilisho.messages") / tag
    if not folder.is_dir():
        return ()
    return tuple(sorted((one for one in folder.iterdir() if one.name.endswith(".ftl")), key=lambda one: one.name))


@cache
def stamp_of_english(name: str) -> str | None:
    """The stamp of an English message of the code; none for a message of a rulebook, whose English is the message itself."""
    found = LANGUAGES[DEFAULT].entries.get(name)
    return stamp_of(source_of(found.message)) if found is not None else None


LANGUAGES: Mapping[str, Language] = {tag: Language(tag) for tag in TAGS}


def with_overlays(overlays: Iterable[tuple[str, File]]) -> Mapping[str, Language]:
    """The languages with further files of messages by tag; a tag that is new is a language of its own.

    Raises :class:`MessageFileError` for a file that is no Fluent, and for a message that could not be told.
    """
    files_of: dict[str, tuple[File, ...]] = dict.fromkeys(TAGS, ())
    for tag, file in overlays:
        _refuse_untellable(file)
        files_of[tag] = (*files_of.get(tag, ()), file)
    return {tag: Language(tag, more) if more else LANGUAGES[tag] for tag, more in files_of.items()}


def _refuse_untellable(file: File) -> None:
    """A message has a text, and its braces hold nothing but parameters of its English; a rulebook's sentences have none."""
    english = LANGUAGES[DEFAULT].entries
    for name, entry in read([file]):
        allowed = references_of(english[name].message) if name in english else frozenset[str]()
        if entry.message.value is None or not references_of(entry.message) <= allowed:
            raise MessageFileError(file, f"{name}: a text whose braces hold {', '.join(sorted(allowed)) or 'nothing'}")
