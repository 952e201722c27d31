"""Drawings and sheets in a real browser, under the very headers that the service sends: complete, readable, asking nobody for anything."""

from __future__ import annotations

import base64
import json
import os
import re
import threading
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import cache
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from itertools import pairwise
from pathlib import Path
from typing import Any

import httpx
import pytest
from selenium import webdriver
from selenium.webdriver.common.by import By
from tests.api.running import Server
from tests.browser.conftest import Open, requested

pytestmark = pytest.mark.browser
PHONE = (390, 844)
SVG, HTML = "image/svg+xml", "text/html"
SHEETS = ("FirstCharge", "MaintenanceFeed", "FarmPlan")
LANGUAGES = ("en", "es", "fr", "sw")
CONTRACT = Path(__file__).parent.parent / "contract" / "farm-plan.request.json"
DRAWINGS = ("FirstCharge", "Sizing", "GasForecast", "BatchRotation", "GasUse")
SHOWN = [*((name, HTML) for name in SHEETS), *((name, SVG) for name in DRAWINGS)]
LONG_NAME = "Ng'ombe<b>&" + "x" * 180


@cache
def paths(url: str) -> dict[str, Any]:
    found: dict[str, Any] = httpx.get(f"{url}/openapi.json", timeout=60).json()["paths"]
    return found


def asked(server: Server, operation: str, media_type: str, language: str = "en", **changes: Any) -> httpx.Response:
    """The contract's own example, asked with some members changed."""
    path = f"/v1/{re.sub(r'(?<!^)(?=[A-Z])', '-', operation).lower()}"
    example = paths(server.url)[path]["post"]["requestBody"]["content"]["application/json"]["example"]
    return posted(f"{server.url}{path}", {**example, **changes}, media_type, language)


def posted(url: str, body: Mapping[str, Any], media_type: str, language: str) -> httpx.Response:
    answer = httpx.post(url, json=body, headers={"accept": media_type, "accept-language": language}, timeout=60)
    assert answer.status_code == 200, answer.text
    return answer


@contextmanager
def showing(answer: httpx.Response, **changed: str) -> Iterator[str]:
    """An address that answers GET with the bytes and headers that the service gave to a POST, for a browser can only navigate by GET."""
    headers = {name: answer.headers[name] for name in ("content-type", "content-security-policy", "x-content-type-options")}

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self.send_response(200)
            for name, value in {**headers, **changed, "content-length": str(len(answer.content))}.items():
                self.send_header(name, value)
            self.end_headers()
            self.wfile.write(answer.content)

        def log_message(self, *_: Any) -> None:
            pass

    with ThreadingHTTPServer(("127.0.0.1", 0), Handler) as replay:
        threading.Thread(target=replay.serve_forever, daemon=True).start()
        try:
            yield f"http://127.0.0.1:{replay.server_port}/"
        finally:
            replay.shutdown()


def complaints(browser: webdriver.Chrome) -> list[Mapping[str, Any]]:
    return [entry for entry in browser.get_log("browser") if entry["level"] in ("SEVERE", "WARNING")]


def keep_picture(browser: webdriver.Chrome, name: str) -> None:
    """Where KILISHO_PICTURES names a folder, for a person to look at."""
    if folder := os.environ.get("KILISHO_PICTURES"):
        browser.save_screenshot(str(Path(folder) / f"{name}.png"))


def printed(browser: webdriver.Chrome, name: str) -> int:
    """How many pages of paper the page takes."""
    pdf = base64.b64decode(browser.execute_cdp_cmd("Page.printToPDF", {"preferCSSPageSize": True})["data"])
    if folder := os.environ.get("KILISHO_PICTURES"):
        (Path(folder) / f"{name}.pdf").write_bytes(pdf)
    return len(re.findall(rb"/Type\s*/Page\b", pdf))


@pytest.mark.parametrize(("operation", "media_type"), SHOWN)
def test_a_view_shows_without_a_complaint_and_asks_nobody(server: Server, open_browser: Open, operation: str, media_type: str) -> None:
    browser = open_browser(*PHONE)
    with showing(asked(server, operation, media_type)) as address:
        browser.get(address)
        keep_picture(browser, f"{operation}-{media_type[:5].replace('/', '-')}")
        assert complaints(browser) == []
        # The browser's own start page draws itself from data addresses.
        assert {one for one in requested(browser) if not one.startswith("data:")} <= {address, f"{address}favicon.ico"}


MEASURE_TEXTS = """
const box = document.documentElement.viewBox.baseVal, seen = window.visualViewport.scale;
return [...document.querySelectorAll('text')].map(text => {
  const drawn = text.getBBox(), shown = text.getBoundingClientRect();
  const size = parseFloat(text.getAttribute('font-size')) * shown.width / drawn.width * seen;
  return [text.textContent, drawn.x, drawn.x + drawn.width - box.width, drawn.y + drawn.height - box.height, size];
});
"""


@pytest.mark.parametrize("operation", DRAWINGS)
def test_every_text_of_a_drawing_lies_on_its_paper_and_can_be_read_in_every_language(
    server: Server, open_browser: Open, operation: str
) -> None:
    browser = open_browser(*PHONE)
    for language in LANGUAGES:
        with showing(asked(server, operation, SVG, language)) as address:
            browser.get(address)
            keep_picture(browser, f"{operation}-{language}-drawing")
            measured = browser.execute_script(MEASURE_TEXTS)
        assert len(measured) > 10
        assert [one for one in measured if one[1] < 0 or one[2] > 0 or one[3] > 0] == [], language
        assert min(size for *_, size in measured if size) >= 10.9


@pytest.mark.parametrize("operation", DRAWINGS)
def test_no_mark_of_an_axis_runs_into_the_next(server: Server, open_browser: Open, operation: str) -> None:
    browser = open_browser(*PHONE)
    for language in LANGUAGES:
        with showing(asked(server, operation, SVG, language)) as address:
            browser.get(address)
            boxes = browser.execute_script(
                "return [...document.querySelectorAll('text[text-anchor=middle]')].map(t => { const b = t.getBBox();"
                " return [b.y, b.x, b.x + b.width, t.textContent]; });"
            )
        rows = {y: sorted(box[1:] for box in boxes if box[0] == y) for y, *_ in boxes}
        clashes = [(left, right) for row in rows.values() for left, right in pairwise(row) if left[1] >= right[0]]
        assert (language, clashes) == (language, [])


@pytest.mark.parametrize("operation", SHEETS)
def test_a_sheet_fits_a_phone_and_two_pages_of_paper_in_every_language(server: Server, open_browser: Open, operation: str) -> None:
    browser = open_browser(*PHONE)
    for language in LANGUAGES:
        with showing(asked(server, operation, HTML, language)) as address:
            browser.get(address)
            keep_picture(browser, f"{operation}-{language}")
            assert browser.execute_script("return document.documentElement.scrollWidth") <= PHONE[0]
            sizes = browser.execute_script(
                "return [...document.querySelectorAll('p, li, td, th, figcaption')].map(e => parseFloat(getComputedStyle(e).fontSize));"
            )
            assert min(sizes) >= 13
            assert 1 <= printed(browser, f"{operation}-{language}") <= 2
            assert complaints(browser) == []


def test_another_farm_s_plan_prints_on_two_pages_in_every_language(server: Server, open_browser: Open) -> None:
    browser, body = open_browser(*PHONE), json.loads(CONTRACT.read_text("utf-8"))
    for language in LANGUAGES:
        with showing(posted(f"{server.url}/v1/farm-plan", body, HTML, language)) as address:
            browser.get(address)
            assert 1 <= printed(browser, f"contract-{language}") <= 2


MEASURE_PRINT = """
const points = pixels => pixels * 72 / 96, size = one => points(parseFloat(getComputedStyle(one).fontSize));
const words = [...document.querySelectorAll('main *, footer *')].filter(one => !one.closest('svg'));
const isFine = one => one.closest('.fine, .english, figcaption') !== null;
const drawn = [...document.querySelectorAll('svg text')].map(text => {
  const svg = text.ownerSVGElement;
  return points(parseFloat(text.getAttribute('font-size')) * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width);
});
return {fine: words.filter(isFine).map(size), body: words.filter(one => !isFine(one)).map(size), drawn,
  counts: [...document.querySelectorAll('td.count')].map(size)};
"""
PAPER_WIDTH = round((210 - 2 * 7) / 25.4 * 96)


@pytest.mark.parametrize("operation", SHEETS)
def test_type_is_large_on_paper(server: Server, open_browser: Open, operation: str) -> None:
    browser = open_browser(PAPER_WIDTH, 1000)
    browser.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": "print"})
    for language in LANGUAGES:
        with showing(asked(server, operation, HTML, language)) as address:
            browser.get(address)
            assert browser.execute_script("return document.documentElement.scrollWidth") == PAPER_WIDTH
            found = browser.execute_script(MEASURE_PRINT)
        assert min(found["fine"]) == pytest.approx(9.5, abs=0.01)
        assert min(found["body"]) == pytest.approx(10.5, abs=0.01)
        assert min(found["drawn"], default=10) >= 9.5
        assert max(found["drawn"]) >= 14 if operation == "FarmPlan" else min(found["counts"]) >= 14


@pytest.mark.parametrize("operation", SHEETS)
def test_names_of_the_longest_kind_break_no_page(server: Server, open_browser: Open, operation: str) -> None:
    containers = [{"name": LONG_NAME, "volume": {"value": 20, "unit": "L"}}]
    browser = open_browser(*PHONE)
    with showing(asked(server, operation, HTML, name=LONG_NAME, containers=containers)) as address:
        browser.get(address)
        assert browser.execute_script("return document.documentElement.scrollWidth") <= PHONE[0]
        assert browser.find_element(By.CLASS_NAME, "farm").text == LONG_NAME
        assert LONG_NAME in browser.find_element(By.TAG_NAME, "main").text.replace("\n", "")
        assert browser.find_elements(By.TAG_NAME, "b") == []


def test_the_policy_lets_the_sheets_own_style_through_and_no_other(server: Server, open_browser: Open) -> None:
    answer = asked(server, "MaintenanceFeed", HTML)
    browser = open_browser(*PHONE)
    with showing(answer) as address:
        browser.get(address)
        border = "return getComputedStyle(document.querySelector('.danger')).borderTopWidth"
        assert browser.execute_script(border) != "0px"
        # A style that somebody smuggles in stays without effect, and so does a script; the browser says so.
        browser.execute_script(
            "const s = document.createElement('style'); s.textContent = '.danger {display: none}'; document.body.append(s)"
        )
        assert browser.find_element(By.CLASS_NAME, "danger").is_displayed()
        assert complaints(browser)
    changed = answer.headers["content-security-policy"].replace("sha256-", "sha256-A")
    with showing(answer, **{"content-security-policy": changed}) as address:
        browser.get(address)
        assert browser.execute_script(border) == "0px"


@pytest.mark.parametrize("operation", SHEETS)
def test_headings_run_from_one_to_two_and_every_part_has_a_name(server: Server, open_browser: Open, operation: str) -> None:
    browser = open_browser(*PHONE)
    with showing(asked(server, operation, HTML)) as address:
        browser.get(address)
        levels = [one.tag_name for one in browser.find_elements(By.CSS_SELECTOR, "h1, h2, h3, h4")]
        assert levels[0] == "h1"
        assert set(levels[1:]) == {"h2"}
        assert browser.find_element(By.TAG_NAME, "html").get_attribute("lang") == "en"
        for section in browser.find_elements(By.TAG_NAME, "section"):
            assert section.accessible_name
        for drawing in browser.find_elements(By.TAG_NAME, "svg"):
            assert (drawing.aria_role, bool(drawing.accessible_name)) == ("image", True)
