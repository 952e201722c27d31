"""Settings from the environment: read once, checked at once, all faults told together."""

from __future__ import annotations

import dataclasses
import os
from pathlib import Path

import pytest

from kilisho.questions import Limits
from kilisho_api.buckets import Rate
from kilisho_api.keys import Keys
from kilisho_api.settings import Settings, SettingsError, read, table


def test_nothing_set_gives_the_defaults() -> None:
    assert read({}) == Settings()


def test_everything_can_be_set(tmp_path: Path) -> None:
    keys = tmp_path / "keys"
    keys.write_text(f"app:{'a' * 64}\n")
    environment = {
        "KILISHO_HOST": "0.0.0.0",
        "KILISHO_PORT": " 9000 ",
        "KILISHO_WORKERS": "4",
        "KILISHO_PACKS": os.pathsep.join(("a.yaml", "b")),
        "KILISHO_LARGEST_BODY": "2000",
        "KILISHO_CORS_ORIGINS": "https://app.example, http://localhost:3000",
        "KILISHO_CATALOGUE_MAX_AGE": "0",
        "KILISHO_LONGEST_FORECAST": "366",
        "KILISHO_SLOW_AT_ONCE": "2",
        "KILISHO_SLOW_WAITING": "0",
        "KILISHO_LOG_LEVEL": "warning",
        "KILISHO_LOG_FORMAT": "json",
        "KILISHO_ACCESS_LOG": "on",
        "KILISHO_DRAIN_SECONDS": "5",
        "KILISHO_GRACE_SECONDS": "20",
        "KILISHO_OPENTELEMETRY": "on",
        "KILISHO_API_KEYS": str(keys),
        "KILISHO_RATE_LIMIT": "120/minute",
        "KILISHO_TRUSTED_PROXIES": "10.0.0.7, 10.1.0.0/16",
        "KILISHO_LONGEST_ANSWER": "20",
        "KILISHO_MOST_WAITING": "30",
        "OTHER": "ignored",
    }
    origins = ("https://app.example", "http://localhost:3000")
    first = ("0.0.0.0", 9000, 4, ("a.yaml", "b"), 2000, origins, 0, 366, 2, 0, "warning")
    running = {"log_format": "json", "access_log": True, "drain_seconds": 5, "grace_seconds": 20, "opentelemetry": True}
    guarding = {
        "api_keys": Keys({"app": "a" * 64}),
        "rate_limit": Rate(120, 60),
        "trusted_proxies": ("10.0.0.7/32", "10.1.0.0/16"),
        "longest_answer": 20,
        "most_waiting": 30,
    }
    assert read(environment) == Settings(*first, **running, **guarding)
    assert read(environment).limits == Limits(forecast_days=366)


@pytest.mark.parametrize(
    ("variable", "text", "expected"),
    [
        ("PORT", "", "a whole number from 1 to 65535"),
        ("PORT", "0", "a whole number from 1 to 65535"),
        ("PORT", "65536", "a whole number from 1 to 65535"),
        ("PORT", "8o00", "a whole number from 1 to 65535"),
        ("PORT", "-1", "a whole number from 1 to 65535"),
        ("PORT", "9" * 5000, "a whole number from 1 to 65535"),
        ("PORT", "٣", "a whole number from 1 to 65535"),
        ("PORT", "tcp://10.0.0.1:8000", "turn service links off"),
        ("WORKERS", "0", "a whole number from 1 to 64"),
        ("HOST", "http://x", "a host name"),
        ("HOST", "", "a host name"),
        ("LARGEST_BODY", "10", "a whole number from 1000"),
        ("CORS_ORIGINS", "app.example", "origins such as"),
        ("CORS_ORIGINS", "https://app.example/path", "origins such as"),
        ("CATALOGUE_MAX_AGE", "1e3", "a whole number from 0"),
        ("LONGEST_FORECAST", "0", "a whole number from 1 to 3660"),
        ("LONGEST_FORECAST", "3661", "a whole number from 1 to 3660"),
        ("SLOW_AT_ONCE", "0", "a whole number from 1 to 16"),
        ("SLOW_WAITING", "1001", "a whole number from 0 to 1000"),
        ("API_KEYS", "", "a file that can be read"),
        ("RATE_LIMIT", "100", "such as 120/minute"),
        ("TRUSTED_PROXIES", "*", "no host names and no *"),
        ("LONGEST_ANSWER", "0", "a whole number from 1 to 3600"),
        ("MOST_WAITING", "0", "a whole number from 1 to 10000"),
        ("LOG_LEVEL", "loud", "debug, info, warning or error"),
        ("LOG_FORMAT", "xml", "text or json"),
        ("ACCESS_LOG", "yes", "on or off"),
        ("DRAIN_SECONDS", "601", "a whole number from 0 to 600"),
        ("GRACE_SECONDS", "0", "a whole number from 1 to 600"),
        ("OPENTELEMETRY", "1", "on or off"),
        ("LOG_LEVLE", "info", "a setting that there is such as KILISHO_LOG_LEVEL"),
        ("X", "", "a setting that there is"),
    ],
)
def test_a_setting_that_cannot_be_used_is_named_with_what_was_expected(variable: str, text: str, expected: str) -> None:
    with pytest.raises(SettingsError) as caught:
        read({f"KILISHO_{variable}": text})
    [fault] = caught.value.faults
    assert fault.startswith(f"KILISHO_{variable}: expected ")
    assert expected in fault


def test_all_faults_are_told_together() -> None:
    with pytest.raises(SettingsError) as caught:
        read({"KILISHO_PORT": "x", "KILISHO_WORKERS": "x", "KILISHO_LOG_LEVEL": "x"})
    assert len(caught.value.faults) == 3


def test_what_a_clusters_service_links_set_is_told_as_such() -> None:
    with pytest.raises(SettingsError) as caught:
        read({"KILISHO_PORT": "tcp://10.0.0.1:80", "KILISHO_PORT_80_TCP_ADDR": "10.0.0.1", "KILISHO_SERVICE_HOST": "10.0.0.1"})
    assert sum("service link" in fault for fault in caught.value.faults) == 3


def test_switches_are_shown_as_they_are_set() -> None:
    assert {default for name, default, _ in table() if name in ("KILISHO_ACCESS_LOG", "KILISHO_OPENTELEMETRY")} == {"off"}


def test_every_setting_is_documented() -> None:
    names = {f"KILISHO_{field.name.upper()}" for field in dataclasses.fields(Settings)}
    assert {name for name, _, _ in table()} == names
    assert all(about.endswith(".") for _, _, about in table())
    assert Settings.__doc__ is not None
    assert all(f"    {field.name} : " in Settings.__doc__ for field in dataclasses.fields(Settings))
