"""A real browser without a window."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import pytest
from selenium import webdriver
from selenium.webdriver.chrome.options import Options
from selenium.webdriver.chrome.service import Service

BROWSERS = ("chromium", "chromium-browser", "google-chrome")
FLAGS = (
    *("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-dev-shm-usage"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars"),
)
Open = Callable[[int, int], webdriver.Chrome]


@pytest.fixture
def open_browser(tmp_path: Path) -> Iterator[Open]:
    """Opens a browser of a given width and height, with a profile of its own; all are closed afterwards."""
    program, driver = next(filter(None, map(shutil.which, BROWSERS)), None), shutil.which("chromedriver")
    if program is None or driver is None:
        pytest.skip("needs chromium and chromedriver")
    with ExitStack() as opened:

        def open_one(width: int, height: int) -> webdriver.Chrome:
            options = Options()
            options.binary_location = str(program)
            for flag in (*FLAGS, f"--user-data-dir={tmp_path / f'profile-{width}'}"):
                options.add_argument(flag)
            options.add_experimental_option("mobileEmulation", {"deviceMetrics": {"width": width, "height": height, "pixelRatio": 1.0}})
            options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
            browser = webdriver.Chrome(options=options, service=Service(driver))
            opened.callback(browser.quit)
            return browser

        yield open_one


def requested(browser: webdriver.Chrome) -> list[str]:
    """Every address that the browser has asked for, answered or not; its own start page aside."""
    events: list[dict[str, Any]] = [json.loads(entry["message"])["message"] for entry in browser.get_log("performance")]
    urls = [event["params"]["request"]["url"] for event in events if event["method"] == "Network.requestWillBeSent"]
    return [url for url in urls if not url.startswith("chrome://")]
