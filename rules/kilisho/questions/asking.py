"""A question: what may be asked, how it is read, and how it is answered. The API and the command line both go through here."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import Any

import jiter
from pydantic import BaseModel, ValidationError

from kilisho.faults import MalformedError, Place, RefusedError, faults_of
from kilisho.messages import DEFAULT, LANGUAGES, Language, told_in

Answer = dict[str, Any]
Representations = Mapping[str, Callable[[Answer, Language], str]]


def never(_asked: Any) -> bool:
    """Of no request."""
    return False


@dataclass(frozen=True)
class Question:
    """One operation, bound to a rulebook.

    ``answer`` takes the validated request and whether the derivation is wanted; it raises :class:`RefusedError` for faults
    that only show between members. ``ids`` are the rulebook's ids by section, against which those of a request are read.
    ``representations`` write an answer as another media type than JSON; one that lacks something for it raises :class:`RefusedError` at
    the member of the request that would have given it. A ``slow`` question may compute for a second, unless the request is ``quick``:
    whoever serves it keeps other answers from waiting for it. ``answer`` is in English, its sentences messages; ``tell`` and ``write``
    take a language by its tag in ``languages``.
    """

    name: str
    title: str
    description: str
    request: type[BaseModel]
    response: type[BaseModel]
    answer: Callable[[Any, bool], Answer]
    example: dict[str, Any]
    ids: Mapping[str, Collection[str]]
    representations: Representations = field(default_factory=dict)
    slow: bool = False
    quick: Callable[[Any], bool] = never
    languages: Mapping[str, Language] = field(default_factory=lambda: LANGUAGES)

    def takes_long(self, asked: Any) -> bool:
        """Whether a validated request may compute for long enough to hold up others."""
        return self.slow and not self.quick(asked)

    @cached_property
    def members(self) -> tuple[str, ...]:
        """All member names that the request knows at any depth, for suggestions."""
        return tuple(sorted(_members(self.request, set())))

    def ask(self, body: bytes, explain: bool = False, language: str = DEFAULT) -> Answer:
        """Answer the JSON document ``body``; raises :class:`MalformedError` or :class:`RefusedError`."""
        return self.tell(self.read(parse(body)), explain, language)

    def tell(self, asked: BaseModel, explain: bool = False, language: str = DEFAULT) -> Answer:
        """The answer to a validated request in one of ``languages``."""
        return told_in(self.languages[language], self.answer(asked, explain))

    def read(self, document: Any) -> BaseModel:
        """The validated request."""
        try:
            return self.request.model_validate(document, context=self.ids)
        except ValidationError as error:
            raise RefusedError(faults_of(error, self.members)) from None

    def write(self, asked: BaseModel, explain: bool, media_type: str, language: str = DEFAULT) -> str:
        """The answer to a validated request in one of the media types of ``representations`` and one of ``languages``."""
        answer = self.tell(asked, explain, language)
        try:
            return self.representations[media_type](answer, self.languages[language])
        except RefusedError as refused:
            raise RefusedError(replace(one, place=_within(asked, one.place)) for one in refused.faults) from None


def parse(body: bytes) -> Any:
    """The JSON document in ``body``, refusing doubled keys, NaN and infinity; raises :class:`MalformedError`."""
    try:
        return jiter.from_json(body, allow_inf_nan=False, catch_duplicate_keys=True, cache_mode="keys")
    except ValueError as error:
        raise MalformedError(f"the body is not one JSON document: {error}") from None


def _within(asked: Any, place: Place) -> Place:
    """``place`` up to the first member that the request leaves out, so that it leads into what was sent."""
    for depth, name in enumerate(place, start=1):
        if name not in asked.model_fields_set:
            return place[:depth]
        asked = getattr(asked, str(name))
    return place


def _members(model: type[BaseModel], seen: set[type]) -> set[str]:
    seen.add(model)
    names = {member.alias or name for name, member in model.model_fields.items()}
    for member in model.model_fields.values():
        for inner in _models_in(member.annotation):
            if inner not in seen:
                names |= _members(inner, seen)
    return names


def _models_in(annotation: Any) -> list[type[BaseModel]]:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return [annotation]
    return [model for part in getattr(annotation, "__args__", ()) for model in _models_in(part)]
