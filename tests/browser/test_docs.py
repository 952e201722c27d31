"""The reference at /docs/reference in a real browser: complete, usable, and needing nothing but the service itself."""

from __future__ import annotations

import json
import os
from pathlib import Path

import httpx
import pytest
from selenium import webdriver
from selenium.webdriver.common.by import By
from selenium.webdriver.support.ui import WebDriverWait
from tests.api.running import Server
from tests.browser.conftest import Open, requested

pytestmark = pytest.mark.browser
SECONDS = 20
DESK, PHONE = (1280, 900), (360, 740)


def _visit(browser: webdriver.Chrome, server: Server) -> int:
    """Open the page and wait until every operation stands there; returns how many there are."""
    paths = httpx.get(f"{server.url}/openapi.json").json()["paths"]
    expected = sum(len(item) for item in paths.values())
    browser.get(f"{server.url}/docs/reference")
    WebDriverWait(browser, SECONDS).until(lambda b: len(b.find_elements(By.CSS_SELECTOR, ".opblock")) == expected)
    return expected


def _keep_picture(browser: webdriver.Chrome, name: str) -> None:
    """Where KILISHO_PICTURES names a folder, for a person to look at."""
    if folder := os.environ.get("KILISHO_PICTURES"):
        browser.save_screenshot(str(Path(folder) / f"{name}.png"))


@pytest.mark.parametrize("size", [DESK, PHONE], ids=["desk", "phone"])
def test_the_page_shows_every_operation_and_asks_nobody_else(server: Server, open_browser: Open, size: tuple[int, int]) -> None:
    browser = open_browser(*size)
    assert _visit(browser, server) > 20
    _keep_picture(browser, f"docs-{size[0]}")
    addresses = requested(browser)
    assert f"{server.url}/openapi.json" in addresses
    assert [address for address in addresses if not address.startswith((server.url, "data:"))] == []
    assert [entry for entry in browser.get_log("browser") if entry["level"] in ("SEVERE", "WARNING")] == []


@pytest.mark.parametrize("size", [DESK, PHONE], ids=["desk", "phone"])
def test_the_page_fits_the_screen(server: Server, open_browser: Open, size: tuple[int, int]) -> None:
    browser = open_browser(*size)
    _visit(browser, server)
    _open_operation(browser, "askFirstCharge")
    _keep_picture(browser, f"operation-{size[0]}")
    assert browser.execute_script("return document.documentElement.scrollWidth") <= size[0]


def test_a_question_can_be_asked_on_the_page(server: Server, open_browser: Open) -> None:
    browser = open_browser(*DESK)
    _visit(browser, server)
    block = _open_operation(browser, "askSizing")
    body = block.find_element(By.CSS_SELECTOR, "textarea.body-param__text").get_attribute("value")
    assert "invented" in json.loads(body or "{}")["name"]
    block.find_element(By.CSS_SELECTOR, "button.execute").click()
    WebDriverWait(browser, SECONDS).until(lambda b: block.find_elements(By.CSS_SELECTOR, ".live-responses-table .response-col_status"))
    assert block.find_element(By.CSS_SELECTOR, ".live-responses-table tbody .response-col_status").text.startswith("200")
    assert "working_volume" in block.find_element(By.CSS_SELECTOR, ".live-responses-table tbody").text
    assert [address for address in requested(browser) if not address.startswith((server.url, "data:"))] == []


def test_a_page_of_a_problem_is_readable(server: Server, open_browser: Open) -> None:
    browser = open_browser(*PHONE)
    browser.get(f"{server.url}/problems/invalid-request")
    assert browser.find_element(By.TAG_NAME, "h1").text == "The request cannot be answered as it stands"
    assert browser.execute_script("return document.documentElement.scrollWidth") <= PHONE[0]


def _open_operation(browser: webdriver.Chrome, operation: str) -> webdriver.remote.webelement.WebElement:
    block = browser.find_element(By.CSS_SELECTOR, f"[id$='-{operation}']")
    button = block.find_element(By.CSS_SELECTOR, "button.opblock-summary-control")
    browser.execute_script("arguments[0].scrollIntoView()", button)
    button.click()
    WebDriverWait(browser, SECONDS).until(lambda _: block.find_elements(By.CSS_SELECTOR, "button.execute"))
    return block
