"""The kinds of problem that the service reports. Each has a page of its own under ``/problems/``."""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType


@dataclass(frozen=True)
class ProblemType:
    """One kind: the last segment of its address, its status and title (both constant), what it means and what to do."""

    slug: str
    status: int
    title: str
    about: str
    remedy: str

    @property
    def address(self) -> str:
        """Where the service explains this type."""
        return f"/problems/{self.slug}"

    def as_dict(self) -> dict[str, str | int]:
        """The type as its JSON page shows it."""
        return {"type": self.address, "status": self.status, "title": self.title, "about": self.about, "remedy": self.remedy}


_ALL = (
    ProblemType(
        "malformed-json",
        400,
        "The body is not JSON",
        "The body could not be read as one JSON document in UTF-8, names a member twice, or nests too deeply. NaN is not JSON.",
        "Send one JSON object. The detail says at which line and column reading stopped.",
    ),
    ProblemType(
        "bad-request",
        400,
        "The request cannot be read",
        "A part of the request other than its body breaks the rules of HTTP.",
        "Check the address and the headers.",
    ),
    ProblemType(
        "not-found",
        404,
        "There is nothing at this address",
        "No operation and no entry of the rulebook has this address.",
        "GET / lists the addresses; an entry's id is listed by its collection, and near misses are listed under errors.",
    ),
    ProblemType(
        "method-not-allowed",
        405,
        "This address does not take this method",
        "The address exists but answers other methods.",
        "Use a method that the Allow header lists.",
    ),
    ProblemType(
        "not-acceptable",
        406,
        "No representation fits the Accept header",
        "The address does not offer any of the media types that the Accept header admits.",
        "Leave the Accept header out, or admit the media type that the detail names.",
    ),
    ProblemType(
        "too-large",
        413,
        "The body is too large",
        "The body has more bytes than the service takes.",
        "Ask about one farm at a time and leave out what is not needed.",
    ),
    ProblemType(
        "unsupported-media-type",
        415,
        "The body is not sent as application/json",
        "The Content-Type header is missing or names another type, another character set than UTF-8, or the body is compressed.",
        "Send Content-Type: application/json and the body as it is.",
    ),
    ProblemType(
        "invalid-request",
        422,
        "The request cannot be answered as it stands",
        "The body is JSON, but members are missing, unknown or outside their meaning; or a query parameter is. All faults are listed.",
        "Go through errors: each points at its place (a JSON Pointer, or the name of the query parameter), and says what was expected.",
    ),
    ProblemType(
        "internal-error",
        500,
        "The service failed",
        "The fault is ours and has been logged under the request's id.",
        "Report the instance of the answer to whoever runs the service.",
    ),
    ProblemType(
        "not-ready",
        503,
        "The service is not ready",
        "The service cannot recompute its own examples and should not be asked.",
        "Try again later; whoever runs the service finds the reason in its log.",
    ),
    ProblemType(
        "overloaded",
        503,
        "Too many requests of this kind wait",
        "The operation computes for long, and as many requests as the service takes wait already. Others are answered meanwhile.",
        "Send the request again after as many seconds as the Retry-After header says.",
    ),
)

PROBLEM_TYPES = MappingProxyType({kind.slug: kind for kind in _ALL})
BY_STATUS = MappingProxyType({kind.status: kind for kind in reversed(_ALL) if kind.slug != "malformed-json"})
