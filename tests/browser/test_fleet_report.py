"""The report on a fleet in a real browser: complete at a phone's width and on paper, without colour, asking nobody for anything."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

import pytest
from selenium import webdriver
from selenium.webdriver.common.by import By
from tests.browser.conftest import Open, requested
from tests.browser.test_views import LANGUAGES, PAPER_WIDTH, PHONE, complaints, keep_picture, printed
from tests.rules.fleets import row

from kilisho.cli import main

pytestmark = pytest.mark.browser
LONG = "Ng'ombe<b>&" + "x" * 90
PLACES = ("North (invented)", "South (invented)", LONG, "")
# What goes wrong in registers: another unit, another word, a day that is none, an empty cell, an animal that died, a danger.
SLIPS: tuple[dict[str, Any], ...] = (
    {},
    {"total_volume": 9000},
    {"mean_air_temperature": 72},
    {"animal_count": 0},
    {"visited_on": "2026-13-02"},
    {"structure": "Fixed Dome"},
    {"feed_mass": "NA"},
    {"biogas_measured": None},
    {"gas_smell_indoors": "true"},
    {"feed_mass": 8, "biogas_measured": 0.2},
)
NOTICE = "Invented installations: no row is a real one."


def installations(rows: int) -> list[dict[str, Any]]:
    """Invented rows, each with something that registers get wrong, in turn."""
    slipped = [
        {"id": f"INV-{number:04}", "district": PLACES[number % 4], "notice": NOTICE, **SLIPS[number % len(SLIPS)]} for number in range(rows)
    ]
    return [{**row(), **one} for one in slipped]


def report(folder: Path, language: str, rows: int = 60) -> str:
    """The address of a report that the command has written, as somebody opens it who was sent it."""
    table, page = folder / "fleet (invented).csv", folder / f"report-{language}.html"
    names = list(dict.fromkeys(name for one in installations(rows) for name in one))
    with table.open("w", newline="", encoding="utf-8") as stream:
        writer = csv.DictWriter(stream, names)
        writer.writeheader()
        writer.writerows(installations(rows))
    out = ["-o", str(folder / f"answers-{language}.csv"), "--workers", "1"]
    assert main(["validate", str(table), *out, "--report", str(page), "--by", "district", "--language", language]) == 0
    return page.as_uri()


OVERFLOWING = """
const wide = document.documentElement.clientWidth;
return [...document.querySelectorAll('main *, header *, footer *')].filter(one => {
  const box = one.getBoundingClientRect();
  return box.width && (box.right > wide + 0.5 || box.left < -0.5 || one.scrollWidth > one.clientWidth + 1 && one.clientWidth);
}).map(one => one.tagName + ': ' + one.textContent.slice(0, 40));
"""
SIZES = "return [...document.querySelectorAll(arguments[0])].map(e => parseFloat(getComputedStyle(e).fontSize));"
COLOURS = """
const grey = text => { const [r, g, b] = text.match(/[0-9.]+/g); return r === g && g === b; };
return [...document.querySelectorAll('body, body *')].flatMap(one => {
  const style = getComputedStyle(one);
  return [style.color, style.backgroundColor, style.borderTopColor];
}).filter(one => !grey(one));
"""
SPLIT = """
const range = document.createRange(), found = [];
const walk = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
for (let node = walk.nextNode(); node; node = walk.nextNode()) {
  for (const word of node.data.matchAll(/[^\\s-]+/g)) {
    if (word[0].length > 12) continue;
    range.setStart(node, word.index); range.setEnd(node, word.index + word[0].length);
    const rows = new Set([...range.getClientRects()].map(box => Math.round(box.top)));
    if (rows.size > 1) found.push(word[0]);
  }
}
return found;
"""


def texts(browser: webdriver.Chrome, selector: str) -> list[str]:
    return [one.text for one in browser.find_elements(By.CSS_SELECTOR, selector)]


@pytest.mark.parametrize("language", LANGUAGES)
def test_it_fits_a_phone_and_asks_nobody(tmp_path: Path, open_browser: Open, language: str) -> None:
    address, browser = report(tmp_path, language), open_browser(*PHONE)
    browser.get(address)
    keep_picture(browser, f"fleet-{language}")
    assert complaints(browser) == []
    assert {one for one in requested(browser) if not one.startswith("data:")} == {address}
    assert browser.execute_script("return document.documentElement.scrollWidth") == PHONE[0]
    assert browser.execute_script(OVERFLOWING) == []
    assert browser.execute_script(SPLIT) == []
    sizes = browser.execute_script(
        "return [...document.querySelectorAll('p, li, td, th')].map(e => parseFloat(getComputedStyle(e).fontSize));"
    )
    assert min(sizes) >= 13


@pytest.mark.parametrize("language", LANGUAGES)
def test_it_fits_paper(tmp_path: Path, open_browser: Open, language: str) -> None:
    address, browser = report(tmp_path, language), open_browser(PAPER_WIDTH, 1000)
    browser.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": "print"})
    browser.get(address)
    assert browser.execute_script("return document.documentElement.scrollWidth") == PAPER_WIDTH
    assert browser.execute_script(OVERFLOWING) == []
    assert browser.execute_script(SPLIT) == []
    assert min(browser.execute_script(SIZES, "main *")) * 72 / 96 == pytest.approx(8.5, abs=0.01)
    assert 2 <= printed(browser, f"fleet-{language}") <= 5


def test_it_needs_no_colour(tmp_path: Path, open_browser: Open) -> None:
    """Black, white and greys alone, and each severity is a word."""
    browser = open_browser(*PHONE)
    browser.get(report(tmp_path, "en"))
    assert browser.execute_script(COLOURS) == []
    words = {one.lower() for one in texts(browser, ".signal")}
    assert {"danger", "warning"} <= words <= {"danger", "warning", "caution", "notice"}


def test_it_says_what_is_invented_and_each_number_its_unit(tmp_path: Path, open_browser: Open) -> None:
    browser = open_browser(*PHONE)
    browser.get(report(tmp_path, "en"))
    page = browser.find_element(By.TAG_NAME, "body").text
    assert "These installations are invented; no row is a real one." in page
    [litres] = [one for one in texts(browser, "table[aria-labelledby=slips] tbody tr") if one.startswith("total_volume")]
    assert litres.split() == ["total_volume", "L", "6", "10.0", "%"]
    assert "structure: not an id of the rulebook" in page
    assert all(" %" in one for one in texts(browser, "#unstated ~ .two td.figure"))
    assert LONG in page.replace("\n", "")
    assert browser.find_elements(By.TAG_NAME, "b") == []


@pytest.mark.parametrize("width", [PHONE[0], PAPER_WIDTH])
def test_places_stay_a_table_for_those_who_hear_it(tmp_path: Path, open_browser: Open, width: int) -> None:
    """On a phone each place is a list with the names of its counts; what is seen and what is heard are the same numbers."""
    browser = open_browser(width, 844)
    browser.get(report(tmp_path, "en"))
    tree = browser.execute_cdp_cmd("Accessibility.getFullAXTree", {})["nodes"]
    roles = [one["role"]["value"] for one in tree if not one.get("ignored")]
    assert roles.count("table") == len(browser.find_elements(By.TAG_NAME, "table"))
    north = browser.find_element(By.XPATH, "//table[contains(@class, 'by')]/tbody/tr[th[contains(., 'North')]]")
    counts = json.loads(browser.execute_script("return JSON.stringify([...arguments[0].cells].map(e => e.textContent.trim()))", north))
    assert counts[1] == "15"
    assert sum(int(one.split()[0]) for one in counts[2:]) >= 15
    shown = [one.text for one in north.find_elements(By.TAG_NAME, "td") if one.is_displayed()]
    assert (len(shown) < 10) == (width == PHONE[0])
    assert shown[0].endswith("15")
