"""GET /v1/...: the rulebook, page by page. Every body is encoded when the service starts."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from litestar import Request, Response, get
from litestar.handlers import HTTPRouteHandler

from kilisho.messages import say, told_in
from kilisho.nearest import nearest
from kilisho.packs import Rulebook
from kilisho.quantities import Graph, Quantity
from kilisho.rulebook import SECTIONS, SECTIONS_OF_PRACTICE
from kilisho_api.documents import Document, Spoken, page
from kilisho_api.encoding import encode
from kilisho_api.entries import entry, rendered
from kilisho_api.http_rules import admit
from kilisho_api.problems import ProblemError

Item = dict[str, Any]
NAMES = (*SECTIONS, "practice", "quantities", "rulebook")


def collections(rulebook: Rulebook, graph: Graph) -> dict[str, list[Item]]:
    """All collections by the last segment of their address; items in the order of the packs."""
    data = rulebook.data
    found = {section: [entry(name, model) for name, model in getattr(data, section).items()] for section in SECTIONS}
    found["practice"] = [{"id": part, "entries": _entries(getattr(data.practice, part))} for part in SECTIONS_OF_PRACTICE]
    found["quantities"] = [_quantity(item) for item in graph.quantities.values()]
    return found


def rulebook_page(rulebook: Rulebook, counts: Mapping[str, int]) -> Item:
    """What the rulebook is: its identity, its title and how much it holds."""
    header = rulebook.data.pack
    return {**rulebook.identity, "title": header.title, "region": header.region, "entries": dict(counts)}


def handlers(rulebook: Rulebook, graph: Graph, max_age: int) -> list[HTTPRouteHandler]:
    """The handlers of all collections, their items, and the rulebook's own page."""
    found = collections(rulebook, graph)
    about = rulebook_page(rulebook, {name: len(items) for name, items in found.items()})
    routes = [page("/v1/rulebook", Document(encode(about), max_age=max_age))]
    for name, items in found.items():
        listing = {"items": items, "next": None, "rulebook": rulebook.identity}
        routes.append(page(f"/v1/{name}", _spoken(listing, rulebook, max_age)))
        documents = {item["id"]: _spoken({**item, "rulebook": rulebook.identity}, rulebook, max_age) for item in items}
        routes.append(_item_handler(f"/v1/{name}", documents))
    return routes


def _spoken(page_: Item, rulebook: Rulebook, max_age: int) -> Spoken:
    return Spoken(lambda language: encode(told_in(language, page_)), rulebook.languages, max_age=max_age)


def _item_handler(path: str, documents: Mapping[str, Spoken]) -> HTTPRouteHandler:
    @get(f"{path}/{{id:str}}", sync_to_thread=False)
    def handle(request: Request[Any, Any, Any]) -> Response[Any]:
        admit(request)
        name = request.path_params["id"]
        document = documents.get(name)
        if document is None:
            raise ProblemError("not-found", say("detail-no_entry"), [_unknown(name, documents)])
        return document.answer(request)

    return handle


def _unknown(name: str, known: Iterable[str]) -> dict[str, Any]:
    return {"parameter": "id", "code": "unknown_id", "detail": say("detail-no_entry_of_collection"), "nearest": nearest(name, known)}


def _entries(part: Mapping[str, Any]) -> list[Item]:
    return [entry(name, model) for name, model in part.items()]


def _quantity(item: Quantity) -> Item:
    return {
        "id": item.name,
        "kind": item.kind,
        "unit": item.unit,
        "description": item.description,
        "inputs": list(item.inputs),
        "source": rendered(item.source),
        "validity": item.empirical,
    }
