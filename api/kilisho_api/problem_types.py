"""The kinds of problem that the service reports. Each has a page of its own under ``/problems/``."""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType

from kilisho.messages import say


@dataclass(frozen=True)
class ProblemType:
    """One kind: the last segment of its address and its status, both constant; its words are messages."""

    slug: str
    status: int

    @property
    def title(self) -> str:
        """The same for every problem of the kind."""
        return say(f"problem-{self.slug}-title")

    @property
    def about(self) -> str:
        """What it means."""
        return say(f"problem-{self.slug}-about")

    @property
    def remedy(self) -> str:
        """What to do."""
        return say(f"problem-{self.slug}-remedy")

    @property
    def address(self) -> str:
        """Where the service explains this type."""
        return f"/problems/{self.slug}"

    def as_dict(self) -> dict[str, str | int]:
        """The type as its JSON page shows it."""
        return {"type": self.address, "status": self.status, "title": self.title, "about": self.about, "remedy": self.remedy}


_ALL = (
    ProblemType("malformed-json", 400),
    ProblemType("bad-request", 400),
    ProblemType("unauthorized", 401),
    ProblemType("not-found", 404),
    ProblemType("method-not-allowed", 405),
    ProblemType("not-acceptable", 406),
    ProblemType("request-stalled", 408),
    ProblemType("too-large", 413),
    ProblemType("unsupported-media-type", 415),
    ProblemType("invalid-request", 422),
    ProblemType("too-many-requests", 429),
    ProblemType("internal-error", 500),
    ProblemType("not-ready", 503),
    ProblemType("overloaded", 503),
    ProblemType("took-too-long", 504),
    ProblemType("no-room", 507),
)

PROBLEM_TYPES = MappingProxyType({kind.slug: kind for kind in _ALL})
BY_STATUS = MappingProxyType({kind.status: kind for kind in reversed(_ALL) if kind.slug != "malformed-json"})
