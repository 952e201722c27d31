"""Drawings and sheets in a real browser, under the very headers that the service sends: complete, readable, asking nobody for anything."""

from __future__ import annotations

import base64
import os
import re
import threading
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import cache
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
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
SHEETS = ("FirstCharge", "MaintenanceFeed")
DRAWINGS = ("FirstCharge", "Sizing", "GasForecast", "BatchRotation", "GasUse")
SHOWN = [*((name, HTML) for name in SHEETS), *((name, SVG) for name in DRAWINGS)]
LONG_NAME = "Ng'ombe<b>&" + "x" * 180


@cache
def paths(url: str) -> dict[str, Any]:
    found: dict[str, Any] = httpx.get(f"{url}/openapi.json", timeout=60).json()["paths"]
    return found


def asked(server: Server, operation: str, media_type: str, **changes: Any) -> httpx.Response:
    """The contract's own example, asked with some members changed."""
    path = f"/v1/{re.sub(r'(?<!^)(?=[A-Z])', '-', operation).lower()}"
    example = paths(server.url)[path]["post"]["requestBody"]["content"]["application/json"]["example"]
    answer = httpx.post(f"{server.url}{path}", json={**example, **changes}, headers={"accept": media_type}, timeout=60)
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


@pytest.mark.parametrize("operation", DRAWINGS)
def test_every_text_of_a_drawing_lies_on_its_paper_and_can_be_read(server: Server, open_browser: Open, operation: str) -> None:
    browser = open_browser(*PHONE)
    with showing(asked(server, operation, SVG)) as address:
        browser.get(address)
        measured = browser.execute_script(
            "const box = document.documentElement.viewBox.baseVal;"
            "const seen = window.visualViewport.scale;"
            "return [...document.querySelectorAll('text')].map(t => { const b = t.getBBox(), c = t.getBoundingClientRect();"
            " return [t.textContent, b.x, b.x + b.width - box.width, b.y + b.height - box.height,"
            " parseFloat(t.getAttribute('font-size')) * c.width / b.width * seen]; });"
        )
    assert len(measured) > 10
    assert [one for one in measured if one[1] < 0 or one[2] > 0 or one[3] > 0] == []
    assert min(size for *_, size in measured if size) >= 10.9


@pytest.mark.parametrize("operation", SHEETS)
def test_a_sheet_fits_a_phone_and_two_pages_of_paper(server: Server, open_browser: Open, operation: str) -> None:
    browser = open_browser(*PHONE)
    with showing(asked(server, operation, HTML)) as address:
        browser.get(address)
        assert browser.execute_script("return document.documentElement.scrollWidth") <= PHONE[0]
        sizes = browser.execute_script(
            "return [...document.querySelectorAll('p, li, td, th, figcaption')].map(e => parseFloat(getComputedStyle(e).fontSize));"
        )
        assert min(sizes) >= 13
        assert 1 <= printed(browser, operation) <= 2


@pytest.mark.parametrize("operation", SHEETS)
def test_names_of_the_longest_kind_break_no_page(server: Server, open_browser: Open, operation: str) -> None:
    containers = [{"name": LONG_NAME, "volume": {"value": 20, "unit": "L"}}]
    browser = open_browser(*PHONE)
    with showing(asked(server, operation, HTML, name=LONG_NAME, containers=containers)) as address:
        browser.get(address)
        assert browser.execute_script("return document.documentElement.scrollWidth") <= PHONE[0]
        assert browser.find_element(By.CLASS_NAME, "farm").text == LONG_NAME
        assert browser.find_element(By.CSS_SELECTOR, "th.name").text.startswith(LONG_NAME)
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
