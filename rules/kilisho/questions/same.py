"""A thing as the key of a cache: the very same thing, whatever it holds."""

from __future__ import annotations

from typing import Generic, TypeVar

Thing = TypeVar("Thing")


class Same(Generic[Thing]):
    """Equal to another one only where both hold one object. It keeps the object alive, so that its id stays its own."""

    __slots__ = ("thing",)

    def __init__(self, thing: Thing) -> None:
        self.thing = thing

    def __hash__(self) -> int:
        return id(self.thing)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Same) and other.thing is self.thing
