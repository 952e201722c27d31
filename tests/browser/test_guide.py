"""The guide at /docs in a real browser: complete, readable in light and dark, on a desk and a phone, needing nothing but the service."""

from __future__ import annotations

import os
from itertools import pairwise
from pathlib import Path

import httpx
import pytest
from selenium import webdriver
from selenium.webdriver.common.by import By
from tests.api.running import Server
from tests.browser.conftest import Open, requested

pytestmark = pytest.mark.browser
DESK, PHONE = (1280, 900), (360, 740)
LEAST_CONTRAST = 4.5  # WCAG 2.2, success criterion 1.4.3
CONTRAST = """
const light = c => { const [r, g, b] = c.match(/[\\d.]+/g).map(Number).map(v => v / 255)
    .map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
const ground = e => { for (; e; e = e.parentElement) { const c = getComputedStyle(e).backgroundColor;
    if (c !== 'rgba(0, 0, 0, 0)') return c; } return 'rgb(255, 255, 255)'; };
return [...document.querySelectorAll('h1, h2, h3, p, li, a, code, dt, dd, th, td, summary')].map(e => {
    const [a, b] = [light(getComputedStyle(e).color), light(ground(e))].sort((x, y) => y - x);
    return [e.tagName + ' ' + e.textContent.slice(0, 40), (a + 0.05) / (b + 0.05)]; });
"""


def visit(browser: webdriver.Chrome, server: Server, scheme: str = "light") -> None:
    browser.execute_cdp_cmd("Emulation.setEmulatedMedia", {"features": [{"name": "prefers-color-scheme", "value": scheme}]})
    browser.get(f"{server.url}/docs")
    if folder := os.environ.get("KILISHO_PICTURES"):
        width = browser.execute_script("return window.innerWidth")
        browser.save_screenshot(str(Path(folder) / f"guide-{width}-{scheme}.png"))


@pytest.mark.parametrize("size", [DESK, PHONE], ids=["desk", "phone"])
def test_it_fits_without_a_complaint_or_a_script_and_asks_nobody_else(server: Server, open_browser: Open, size: tuple[int, int]) -> None:
    browser = open_browser(*size)
    visit(browser, server)
    addresses = {one for one in requested(browser) if not one.startswith("data:")}
    assert {f"{server.url}/docs", f"{server.url}/docs/guide.css"} <= addresses
    assert [one for one in addresses if not one.startswith(f"{server.url}/")] == []
    assert [entry for entry in browser.get_log("browser") if entry["level"] in ("SEVERE", "WARNING")] == []
    assert browser.find_elements(By.TAG_NAME, "script") == []
    browser.find_element(By.TAG_NAME, "summary").click()
    assert browser.execute_script("return document.documentElement.scrollWidth") <= size[0]
    assert browser.find_element(By.CSS_SELECTOR, "details table").is_displayed()


def test_both_colour_schemes_can_be_read(server: Server, open_browser: Open) -> None:
    browser, papers = open_browser(*DESK), set()
    for scheme in ("light", "dark"):
        visit(browser, server, scheme)
        papers.add(browser.execute_script("return getComputedStyle(document.body).backgroundColor"))
        measured = browser.execute_script(CONTRAST)
        assert len(measured) > 100
        assert [one for one in measured if one[1] < LEAST_CONTRAST] == []
    assert len(papers) == 2


def test_headings_descend_and_parts_are_named_and_reached(server: Server, open_browser: Open) -> None:
    browser = open_browser(*DESK)
    visit(browser, server)
    levels = [int(one.tag_name[1]) for one in browser.find_elements(By.CSS_SELECTOR, "h1, h2, h3, h4, h5, h6")]
    assert levels.count(1) == 1
    assert levels[0] == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))
    assert browser.find_element(By.TAG_NAME, "html").get_attribute("lang") == "en"
    assert all(section.accessible_name for section in browser.find_elements(By.TAG_NAME, "section"))
    assert all(one.get_attribute("scope") == "col" for one in browser.find_elements(By.TAG_NAME, "th"))
    for link in browser.find_elements(By.CSS_SELECTOR, "nav a"):
        _, _, place = str(link.get_attribute("href")).partition("#")
        assert browser.find_elements(By.ID, place)


def test_every_link_leads_somewhere_on_the_service(server: Server, open_browser: Open) -> None:
    browser = open_browser(*DESK)
    visit(browser, server)
    links = {str(link.get_attribute("href")).partition("#")[0] for link in browser.find_elements(By.TAG_NAME, "a")}
    assert f"{server.url}/docs/reference" in links
    assert {link: httpx.get(link, timeout=60).status_code for link in links} == dict.fromkeys(links, 200)
