"""A sentence that remembers what it says."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Self


class Message(str):
    """English text with the id and the parameters it was made from, so that it can be said again in another language.

    It is text to everything else: JSON, comparison, sorting. Text that is put together from it is plain text again and stays English,
    so a sentence takes other messages as parameters instead.
    """

    __slots__ = ("id", "parameters")
    id: str
    parameters: Mapping[str, Any]

    def __new__(cls, text: str, id: str, parameters: Mapping[str, Any] | None = None) -> Self:  # noqa: A002 - the message's id
        made = super().__new__(cls, text)
        made.id, made.parameters = id, parameters or {}
        return made

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (str(self), self.id, dict(self.parameters))
