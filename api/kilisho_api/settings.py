"""What can be set from outside, read once from the environment and checked before anything starts."""

from __future__ import annotations

import os
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, fields
from typing import Any

from kilisho.nearest import nearest
from kilisho.questions.limits import Limits, range_of
from kilisho_api.addresses import read_networks
from kilisho_api.buckets import Rate, read_rate
from kilisho_api.keys import Keys, read_keys

PREFIX = "KILISHO_"


class SettingsError(ValueError):
    """One or more settings cannot be used; ``faults`` holds a line for each."""

    def __init__(self, faults: list[str]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(faults))


def whole_number(least: int, most: int) -> Callable[[str], int]:
    """A reader of whole numbers from ``least`` to ``most``; raises ValueError with what was expected."""

    def read(text: str) -> int:
        if text.startswith("tcp://"):
            raise ValueError("a number, not the address of a cluster's service link; turn service links off for this container")
        if not text.isascii() or not text.isdigit() or not least <= int(text[:20]) <= most:
            raise ValueError(f"a whole number from {least} to {most}")
        return int(text)

    return read


def _host(text: str) -> str:
    if not text or any(mark.isspace() or mark == "/" for mark in text):
        raise ValueError("a host name or an address to listen on, without scheme or path")
    return text


def _paths(text: str) -> tuple[str, ...]:
    return tuple(part for part in text.split(os.pathsep) if part)


def _folder(text: str) -> str:
    if not os.path.isdir(text) or not os.access(text, os.W_OK | os.X_OK):
        raise ValueError("a folder that is there and can be written")
    return text


def _origins(text: str) -> tuple[str, ...]:
    origins = tuple(part.strip() for part in text.split(",") if part.strip())
    if any(not origin.startswith(("http://", "https://")) or origin.count("/") != 2 for origin in origins if origin != "*"):
        raise ValueError("origins such as https://app.example, separated by commas, or *")
    return origins


def one_of(*words: str) -> Callable[[str], str]:
    """A reader of one of ``words``; raises ValueError with all of them."""

    def read(text: str) -> str:
        if text not in words:
            raise ValueError(f"{', '.join(words[:-1])} or {words[-1]}")
        return text

    return read


def _switch(text: str) -> bool:
    return one_of("on", "off")(text) == "on"


def _setting(default: Any, read: Callable[[str], Any], about: str) -> Any:
    return field(default=default, metadata={"read": read, "about": about})


@dataclass(frozen=True)
class Settings:
    """All settings. Each is read from the environment variable of its name in capitals after ``KILISHO_``.

    host : address to listen on.
    port : port to listen on, 1 to 65535.
    workers : processes that answer, 1 to 64.
    packs : packs laid over the base pack, in order; in the environment separated like a search path.
    largest_body : largest request body, in bytes, 1 kB to 100 MB.
    cors_origins : web origins that may call from a browser; empty means none, ``*`` all.
    catalogue_max_age : seconds that a client may keep a catalogue page, 0 to 1 year.
    longest_forecast : days that a forecast may cover, 1 to 3660.
    slow_at_once : slow requests that each process works on at a time, 1 to 16.
    slow_waiting : slow requests that each process lets wait, 0 to 1000.
    log_level : debug, info, warning or error.
    log_format : text or json.
    access_log : whether every request is logged.
    drain_seconds : seconds between SIGTERM and the end of listening, 0 to 600.
    grace_seconds : seconds that open requests then have to end, 1 to 600.
    opentelemetry : whether spans are sent to a collector.
    api_keys : keys of which a caller must show one; in the environment the file that holds their digests. None means open to all.
    rate_limit : requests that each caller may send in a time, per process; None means any number.
    trusted_proxies : addresses and networks of proxies whose X-Forwarded-For is believed; empty means none.
    longest_answer : seconds that a slow request, or a piece of a table, may be worked on, 1 to 3600.
    largest_table : bytes of a table, 1000 to 100 GB.
    longest_table : rows of a table, 1 to 1000 million.
    tables_at_once : tables that each process takes at a time, 1 to 16.
    table_folder : where tables are kept while they are worked on; None means the system's folder for temporary files.
    table_patience : seconds in which something of a table or of its answer must move, 1 to 3600.
    table_least_rate : bytes a second at which a table must come in the mean, once a minute is over, 0 to 100 million; 0 means any.
    most_waiting : requests that each process lets wait for their turn, 1 to 10000.
    """

    host: str = _setting("127.0.0.1", _host, "Address to listen on; 0.0.0.0 inside a container.")
    port: int = _setting(8080, whole_number(1, 65_535), "Port to listen on.")
    workers: int = _setting(1, whole_number(1, 64), "Processes that answer; one for each core is a good start.")
    packs: tuple[str, ...] = _setting((), _paths, "Packs laid over the base pack, in order, separated like a search path.")
    largest_body: int = _setting(1_000_000, whole_number(1_000, 100_000_000), "Largest request body in bytes.")
    cors_origins: tuple[str, ...] = _setting((), _origins, "Web origins that may call from a browser, separated by commas; * for all.")
    catalogue_max_age: int = _setting(3_600, whole_number(0, 31_536_000), "Seconds that a client may keep a catalogue page unasked.")
    longest_forecast: int = _setting(Limits.forecast_days, whole_number(*range_of("forecast_days")), "Days that a forecast may cover.")
    slow_at_once: int = _setting(1, whole_number(1, 16), "Slow requests that each process works on at a time.")
    slow_waiting: int = _setting(8, whole_number(0, 1_000), "Slow requests that each process lets wait before it answers 503.")
    log_level: str = _setting(
        "info", one_of("debug", "info", "warning", "error"), "Least severity that is logged: debug, info, warning or error."
    )
    log_format: str = _setting("text", one_of("text", "json"), "How the log is written: text, or json for one object a line.")
    access_log: bool = _setting(False, _switch, "on to log every request, by the pattern of its address.")
    drain_seconds: int = _setting(0, whole_number(0, 600), "Seconds after SIGTERM in which /ready answers 503 and all else is answered.")
    grace_seconds: int = _setting(30, whole_number(1, 600), "Seconds that open requests then have to end.")
    opentelemetry: bool = _setting(
        False, _switch, "on to send a span for each request; the OTEL_ variables say where. Needs the extra otel."
    )
    api_keys: Keys | None = _setting(None, read_keys, "File of API keys, a line `name:digest` each; without, all may ask.")  # noqa: RUF009
    rate_limit: Rate | None = _setting(None, read_rate, "Requests of each caller in each process, such as 120/minute.")  # noqa: RUF009
    trusted_proxies: tuple[str, ...] = _setting((), read_networks, "Addresses or networks of proxies whose X-Forwarded-For is believed.")
    longest_answer: int = _setting(60, whole_number(1, 3_600), "Seconds that a slow request may be worked on before it gets 504.")
    largest_table: int = _setting(1_000_000_000, whole_number(1_000, 100_000_000_000), "Largest table in bytes.")
    longest_table: int = _setting(20_000_000, whole_number(1, 1_000_000_000), "Most rows of a table.")
    tables_at_once: int = _setting(2, whole_number(1, 16), "Tables that each process takes at a time; beyond, it answers 503.")
    table_folder: str | None = _setting(
        None,
        _folder,
        "Folder for tables while they are worked on; without, the one for temporary files. Needs tables_at_once times largest_table.",
    )
    table_patience: int = _setting(60, whole_number(1, 3_600), "Seconds in which something of a table must move, up or down.")
    table_least_rate: int = _setting(
        10_000, whole_number(0, 100_000_000), "Bytes a second at which a table must come in the mean after its first minute; 0 for any."
    )
    most_waiting: int = _setting(
        100, whole_number(1, 10_000), "Requests of any kind that each process lets wait for their turn before it answers 503."
    )

    @property
    def limits(self) -> Limits:
        """What one request may ask for."""
        return Limits(forecast_days=self.longest_forecast)


_NAMES = tuple(item.name for item in fields(Settings))


def read(environment: Mapping[str, str]) -> Settings:
    """The settings in ``environment``; raises :class:`SettingsError` with everything that is wrong."""
    values, faults = dict[str, Any](), list[str]()
    for item in fields(Settings):
        text = environment.get(variable(item.name))
        if text is None:
            continue
        try:
            values[item.name] = item.metadata["read"](text.strip())
        except ValueError as error:
            faults.append(f"{variable(item.name)}: expected {error}")
    faults += [_unknown(name) for name in sorted(environment) if name.startswith(PREFIX) and name not in map(variable, _NAMES)]
    if faults:
        raise SettingsError(faults)
    return Settings(**values)


def _unknown(name: str) -> str:
    """A misspelt setting must not be one that is left at its default without a word."""
    meant = nearest(name, map(variable, _NAMES), 0.6, most=1)
    hint = f" such as {meant[0]}" if meant else ""
    return f"{name}: expected a setting that there is{hint}; a cluster's service links set others, turn them off for this container"


def variable(name: str) -> str:
    """The environment variable of the setting ``name``."""
    return PREFIX + name.upper()


def table() -> list[tuple[str, str, str]]:
    """Variable, default and meaning of every setting, for the manual."""
    return [(variable(item.name), _shown(item.default), item.metadata["about"]) for item in fields(Settings)]


def _shown(default: Any) -> str:
    if default is None or default == ():
        return "(none)"
    return ("off", "on")[default] if isinstance(default, bool) else str(default)
