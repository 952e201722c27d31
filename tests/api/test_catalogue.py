"""The catalogue shows exactly what the packs state, in the units in which they state it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import httpx
import pytest
import yaml
from tests.api.asking import problem

from kilisho.farm import GRAPH
from kilisho.packs import BASE_PACK, Rulebook
from kilisho.units import KINDS

SECTIONS = (
    "substrates",
    "animals",
    "appliances",
    "structures",
    "fuels",
    "pipes",
    "crops",
    "facts",
    "checks",
    "cautions",
    "symptoms",
    "causes",
    "tests",
    "sources",
)
ENGLISH = {"tag": "en", "reviewed": True, "untranslated": 0}
PARTS = ("containers", "covers", "slurry_stores", "spreadings", "manure_managements", "curves", "figures", "measurements")


def _authored() -> dict[str, Any]:
    """The base pack as its authors wrote it, read by nothing of ours."""
    merged: dict[str, Any] = {}
    for file in sorted(BASE_PACK.glob("*.yaml")):
        for section, entries in yaml.safe_load(file.read_text("utf-8")).items():
            if section == "practice":
                for part, rows in entries.items():
                    merged.setdefault(part, {}).update(rows)
            else:
                merged.setdefault(section, {}).update(entries)
    return merged


def _figures(value: Any, path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], dict[str, Any]]]:
    """Every {low, typical, high, unit} below ``value``, by its path."""
    if isinstance(value, dict):
        if "typical" in value and "unit" in value:
            yield path, value
        for key, inner in value.items():
            yield from _figures(inner, (*path, key))


@pytest.fixture(scope="module")
def authored() -> dict[str, Any]:
    return _authored()


def _served(client: httpx.Client, section: str) -> dict[str, Any]:
    if section in PARTS:
        return {item["id"]: item for item in client.get(f"/v1/practice/{section}").json()["entries"]}
    return {item["id"]: item for item in client.get(f"/v1/{section}").json()["items"]}


@pytest.mark.parametrize("section", [*SECTIONS, *PARTS])
def test_a_collection_lists_every_entry_in_order(client: httpx.Client, authored: dict[str, Any], section: str) -> None:
    assert list(_served(client, section)) == list(authored[section])


@pytest.mark.parametrize("section", ["substrates", "animals", "appliances", "structures", "fuels", "pipes", "crops", *PARTS[:-1]])
def test_every_figure_is_shown_as_its_author_wrote_it(client: httpx.Client, authored: dict[str, Any], section: str) -> None:
    served, seen = _served(client, section), 0
    for path, figure in _figures(authored[section]):
        shown: Any = served
        for key in path:
            shown = shown[key]
        for name in ("low", "typical", "high"):
            assert shown[name] == _twelve_digits(figure.get(name)), (path, name)
        assert (shown["unit"], shown["basis"]) == (figure["unit"], figure["basis"])
        assert shown["source"] == list(figure.get("source", ()))
        assert "note" in shown
        seen += 1
    assert seen >= len(served) or section == "curves"


def test_how_to_measure_is_shown_as_its_author_wrote_it(client: httpx.Client, authored: dict[str, Any]) -> None:
    served = _served(client, "measurements")
    assert {name: one["text"] for name, one in served.items()} == {name: one["text"] for name, one in authored["measurements"].items()}


def _twelve_digits(number: float | None) -> float | None:
    return None if number is None else float(f"{number:.12g}")


@pytest.mark.parametrize("section", SECTIONS)
def test_every_entry_has_a_page_of_its_own(client: httpx.Client, rulebook: Rulebook, section: str) -> None:
    for name, item in _served(client, section).items():
        assert client.get(f"/v1/{section}/{name}").json() == {**item, "rulebook": rulebook.identity, "language": ENGLISH}


@pytest.mark.parametrize("section", [*SECTIONS, "practice", "quantities"])
def test_a_collection_names_its_rulebook_and_has_one_page(client: httpx.Client, rulebook: Rulebook, section: str) -> None:
    body = client.get(f"/v1/{section}").json()
    assert body["next"] is None
    assert body["rulebook"] == rulebook.identity
    assert list(body) == ["items", "next", "rulebook", "language"]


def test_an_unknown_id_is_answered_with_the_nearest(client: httpx.Client) -> None:
    told = problem(client.get("/v1/substrates/catle_dung"), 404, "not-found")
    assert "cattle_dung" in told["errors"][0]["nearest"]
    problem(client.get("/v1/substrates/" + "x" * 5_000), 404, "not-found")


def test_a_check_shows_its_condition_and_nothing_empty_in_it(client: httpx.Client, authored: dict[str, Any]) -> None:
    for name, check in _served(client, "checks").items():
        assert check["must"] == authored["checks"][name]["must"]
        assert check["when"] == authored["checks"][name].get("when", {})


def test_every_quantity_of_the_graph_is_listed_with_what_it_needs(client: httpx.Client) -> None:
    items = _served(client, "quantities")
    assert list(items) == list(GRAPH.quantities)
    for name, item in items.items():
        quantity = GRAPH.quantities[name]
        assert item["unit"] == KINDS[item["kind"]].canonical.code
        assert item["inputs"] == list(quantity.inputs)
        assert set(item["inputs"]) <= items.keys()
        assert item["description"]
        assert item["validity"] == quantity.empirical
        assert client.get(f"/v1/quantities/{name}").json()["id"] == name


def test_every_source_that_is_cited_is_listed(client: httpx.Client) -> None:
    sources = set(_served(client, "sources"))
    for section in ("substrates", "animals", "structures", "fuels", "pipes", "checks", "causes", "tests", "quantities"):
        assert set(_cited(list(_served(client, section).values()))) <= sources


def _cited(value: Any) -> Iterator[str]:
    if isinstance(value, dict):
        yield from value.get("source") or ()
        for inner in value.values():
            yield from _cited(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _cited(inner)


def test_the_rulebook_page_counts_what_the_collections_hold(client: httpx.Client, rulebook: Rulebook) -> None:
    about = client.get("/v1/rulebook").json()
    assert {name: about[name] for name in ("id", "version", "hash")} == rulebook.identity
    for name, count in about["entries"].items():
        assert len(client.get(f"/v1/{name}").json()["items"]) == count


def test_the_home_page_leads_everywhere(client: httpx.Client) -> None:
    answer = client.get("/")
    home = answer.json()
    for address in (*home["catalogue"], home["contract"], home["manual"], home["health"], home["ready"], home["metrics"]):
        assert client.get(address).status_code == 200
    assert set(home["operations"]) == {path for path, item in client.get(home["contract"]).json()["paths"].items() if "post" in item}
    assert 'rel="service-desc"' in answer.headers["link"]
