"""Reads packs: YAML files to one frozen, hashed :class:`Rulebook`.

A pack is a folder of YAML files or a single file. Later packs lie over earlier ones: sections and ids are merged, a field of
an entry is replaced whole (so that a new ``typical`` never mixes with an old ``high``), and ``null`` takes an entry out.
Every fault names file, line, path and what was expected.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any

import yaml
from pydantic import ValidationError

from kilisho.coherence import incoherences
from kilisho.messages import LANGUAGES, Language, with_overlays
from kilisho.messages.fluent import MessageFileError, beside, message_files
from kilisho.rulebook import SECTIONS, SECTIONS_OF_PRACTICE, RulebookData
from kilisho.sentences import with_messages

BASE_PACK = Path(__file__).parent / "packs" / "base"
LARGEST_FILE = 2_000_000
DEEPEST_NESTING = 30
# Of a value that is no text. No figure needs more; 0x and 300 digits are beyond any float, and base 60 takes time that grows as a square.
LONGEST_VALUE = 100
READABLE = "a file that can be read"

# How many steps of a path lead to what a layer replaces whole: section, id, field.
_FIELD_DEPTHS: dict[str | int, int] = {"practice": 4, "process": 2}

Path_ = tuple[str | int, ...]


@dataclass(frozen=True)
class PackFault:
    """One thing wrong in a pack: where it stands and what was expected."""

    file: str
    line: int
    path: str
    expected: str

    def __str__(self) -> str:
        return f"{self.file}:{self.line}: {self.path or 'the file'}: {self.expected}"


class PackError(ValueError):
    """The packs do not make a rulebook; ``faults`` lists everything that is wrong."""

    def __init__(self, faults: Sequence[PackFault]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(map(str, self.faults)))


@dataclass(frozen=True)
class Rulebook:
    """What we know, frozen. ``identity`` goes into every answer so that it can be reproduced."""

    data: RulebookData
    hash: str
    languages: Mapping[str, Language] = field(default_factory=lambda: LANGUAGES)

    @cached_property
    def identity(self) -> dict[str, str]:
        """Id, version and hash, for every answer."""
        return {"id": self.data.pack.id, "version": self.data.pack.version, "hash": self.hash}


@dataclass
class _Layer:
    """A file's content with the line of every path in it."""

    file: str
    content: dict[str, Any]
    lines: dict[Path_, int] = field(default_factory=dict)


def load(*packs: str | Path) -> Rulebook:
    """The base pack with ``packs`` laid over it in order; raises :class:`PackError`."""
    layers = [layer for pack in (BASE_PACK, *map(Path, packs)) for layer in _read_pack(pack)]
    return _assemble(layers, _languages(map(Path, packs)))


def check(*packs: str | Path) -> list[PackFault]:
    """Everything wrong with ``packs`` when laid over the base pack; empty when they are sound."""
    try:
        load(*packs)
    except PackError as error:
        return list(error.faults)
    return []


def _assemble(layers: list[_Layer], languages: Mapping[str, Language]) -> Rulebook:
    shapeless = [fault for layer in layers for fault in _shapeless(layer)]
    if shapeless:
        raise PackError(shapeless)
    merged = _merge([layer.content for layer in layers])
    try:
        data = RulebookData.model_validate(merged)
    except ValidationError as error:
        raise PackError([_located(layers, tuple(e["loc"]), _words(e)) for e in error.errors(include_url=False)]) from None
    faults = [_located(layers, path, expected) for path, expected in (*incoherences(data), *_softened(layers))]
    if faults:
        raise PackError(faults)
    canonical = json.dumps(data.model_dump(mode="json", by_alias=True, exclude_none=True), sort_keys=True, separators=(",", ":"))
    return Rulebook(with_messages(data), hashlib.sha256(canonical.encode()).hexdigest(), languages)


@contextmanager
def told_of(file: Path | str) -> Iterator[None]:
    """Raise what the system refuses inside as a :class:`PackError` about ``file``, or about the file that the system names."""
    try:
        yield
    except OSError as error:
        raise PackError([PackFault(str(error.filename or file), 0, "", f"{READABLE} ({error.strerror or error})")]) from None


def files_of(pack: Path) -> list[Path]:
    """The files that a pack is read from: its YAML, and the messages beside it; raises :class:`PackError` where one cannot look."""
    with told_of(pack):
        return [*_yaml_files(pack), *message_files(pack)]


def _yaml_files(pack: Path) -> list[Path]:
    """Without dot files: they are what editors leave while they work, and what mounted folders are kept in."""
    if pack.is_dir():
        return sorted(file for file in pack.iterdir() if file.suffix == ".yaml" and not file.name.startswith("."))
    return [pack] if pack.exists() else []


def _read_pack(pack: Path) -> Iterator[_Layer]:
    with told_of(pack):
        files, is_there = _yaml_files(pack), pack.exists()
    if not files:
        expected = "at least one .yaml file in the folder" if is_there else "an existing YAML file or a folder of YAML files"
        raise PackError([PackFault(str(pack), 0, "", expected)])
    for file in files:
        with told_of(file):
            yield _read(file, file.name if pack == BASE_PACK else str(file))


def _languages(packs: Iterable[Path]) -> Mapping[str, Language]:
    """The languages, with the message files that lie beside packs."""
    try:
        with told_of("a file of messages"):
            return with_overlays([one for pack in packs for one in beside(pack)])
    except MessageFileError as error:
        raise PackError([PackFault(error.file, 0, "", error.expected)]) from None


def _read(file: Path, shown: str) -> _Layer:
    if file.stat().st_size > LARGEST_FILE:
        raise PackError([PackFault(shown, 0, "", f"a file of at most {LARGEST_FILE} bytes")])
    try:
        text = file.read_text("utf-8")
        node, tagged = yaml.compose(text, Loader=_Loader), _tagged(text)
    except UnicodeDecodeError:
        raise PackError([PackFault(shown, 0, "", "UTF-8 text")]) from None
    except RecursionError:  # of the reader in Python; the one in C has a limit of its own
        raise PackError([PackFault(shown, 0, "", f"at most {DEEPEST_NESTING} levels")]) from None
    except yaml.YAMLError as error:
        mark = getattr(error, "problem_mark", None)
        raise PackError(
            [PackFault(shown, mark.line + 1 if mark else 0, "", f"YAML: {getattr(error, 'problem', None) or 'not readable'}")]
        ) from None
    layer = _Layer(shown, {})
    reader = _Reader(layer, tagged)
    content = reader.value(node, ()) if node is not None else {}
    if not isinstance(content, dict) and not reader.faults:
        reader.faults.append(PackFault(shown, 1, "", "a mapping of sections such as substrates: or checks:"))
    if reader.faults:
        raise PackError(reader.faults)
    layer.content.update(content)
    return layer


def _tagged(text: str) -> frozenset[_Node]:
    """The nodes of ``text`` that have a tag of their own; a composed node no longer says whether its tag was written or guessed."""
    if "!" not in text:
        return frozenset()
    events: Iterator[Any] = yaml.parse(text, Loader=_Loader)
    return frozenset((event.start_mark.index, _NODES[type(event)]) for event in events if getattr(event, "tag", None))


def _place(node: Any) -> _Node:
    return node.start_mark.index, node.id


_Loader: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
# A node by where it begins and what it is: a mapping begins where its first key does.
_Node = tuple[int, str]
_NODES = {yaml.ScalarEvent: "scalar", yaml.SequenceStartEvent: "sequence", yaml.MappingStartEvent: "mapping"}


class _Reader:
    """Turns composed YAML into plain data, noting lines and refusing tags, doubled keys, aliases and deep nesting."""

    def __init__(self, layer: _Layer, tagged: frozenset[_Node]) -> None:
        self.layer, self.faults, self._seen, self._tagged = layer, list[PackFault](), set[int](), tagged
        self._scalars = yaml.constructor.SafeConstructor()

    def value(self, node: Any, path: Path_) -> Any:
        self.layer.lines[path] = node.start_mark.line + 1
        if id(node) in self._seen or len(path) > DEEPEST_NESTING:
            self._fault(path, f"no YAML alias, and at most {DEEPEST_NESTING} levels")
            return None
        self._seen.add(id(node))
        if _place(node) in self._tagged:
            self._fault(path, "plain YAML without tags")
            return None
        if isinstance(node, yaml.MappingNode):
            return self._mapping(node, path)
        if isinstance(node, yaml.SequenceNode):
            return [self.value(item, (*path, i)) for i, item in enumerate(node.value)]
        return self._scalar(node, path)

    def _mapping(self, node: Any, path: Path_) -> dict[str, Any]:
        out: dict[str, Any] = {}
        for key_node, value_node in node.value:
            key = str(key_node.value) if isinstance(key_node, yaml.ScalarNode) else ""
            if not key or key in out or _place(key_node) in self._tagged:
                self.layer.lines[(*path, key)] = key_node.start_mark.line + 1
                self._fault((*path, key), "each key once, as plain text")
                continue
            out[key] = self.value(value_node, (*path, key))
            self.layer.lines[(*path, key)] = key_node.start_mark.line + 1
        return out

    def _scalar(self, node: Any, path: Path_) -> Any:
        """Text, a number, a date, yes or no, or nothing."""
        is_text = node.tag == "tag:yaml.org,2002:str"
        try:
            if is_text or len(node.value) <= LONGEST_VALUE:
                return self._scalars.construct_object(node)
        except Exception:  # noqa: S110 - the reader raises what it stumbles over, an IndexError for an empty number; the fault below says it
            pass
        self._fault(path, f"a plain value, of at most {LONGEST_VALUE} characters unless it is text")
        return None

    def _fault(self, path: Path_, expected: str) -> None:
        self.faults.append(PackFault(self.layer.file, self.layer.lines[path], ".".join(map(str, path)), expected))


def _shapeless(layer: _Layer) -> Iterator[PackFault]:
    """What is no mapping where entries are to be laid over others, so that layers can be merged before they are validated."""
    for section in (*SECTIONS, "practice", "process", "pack"):
        if not isinstance(layer.content.get(section, {}), dict):
            yield _located([layer], (section,), "a valid dictionary: a mapping of names to what they hold")
    practice = layer.content.get("practice")
    for part, rows in practice.items() if isinstance(practice, dict) else ():
        if not isinstance(rows, dict):
            expected = "a valid dictionary: a mapping of ids to entries" if part in SECTIONS_OF_PRACTICE else "no such key here"
            yield _located([layer], ("practice", part), expected)


def _merge(contents: Sequence[dict[str, Any]]) -> dict[str, Any]:
    merged: dict[str, Any] = {name: {} for name in SECTIONS} | {"practice": {name: {} for name in SECTIONS_OF_PRACTICE}}
    for content in contents:
        for section, entries in content.items():
            if section == "pack":
                merged["pack"] = _header(merged.get("pack"), entries)
            elif section in SECTIONS:
                _merge_entries(merged[section], entries)
            elif section == "practice":
                for part, rows in entries.items():
                    _merge_entries(merged["practice"].setdefault(part, {}), rows)
            elif section == "process":
                _merge_entries(merged, {"process": entries})
            else:
                merged[section] = entries
    return merged


def _header(under: dict[str, Any] | None, over: dict[str, Any]) -> dict[str, Any]:
    """A layered rulebook bears the ids of its layers, joined, and the version of the topmost."""
    return over if under is None else {**over, "id": f"{under['id']}_{over.get('id', 'unnamed')}"[:64]}


def _merge_entries(into: dict[str, Any], entries: Mapping[str, Any]) -> None:
    for name, entry in entries.items():
        if entry is None:
            into.pop(name, None)
        elif isinstance(entry, dict) and isinstance(into.get(name), dict):
            into[name] = {k: v for k, v in {**into[name], **entry}.items() if v is not None}
        else:
            into[name] = entry


def _located(layers: Sequence[_Layer], path: Path_, expected: str) -> PackFault:
    """The fault at the file that has the last word on the field, at the line of the longest part of ``path`` that it states."""
    field_depth = _FIELD_DEPTHS.get(path[0] if path else "", 3)
    for depth in range(min(field_depth, len(path)), 0, -1):
        for layer in reversed(layers):
            if path[:depth] in layer.lines:
                return PackFault(layer.file, _line(layer, path), ".".join(map(str, path)), expected)
    return PackFault(layers[-1].file, 0, ".".join(map(str, path)), expected)


def _line(layer: _Layer, path: Path_) -> int:
    return next(layer.lines[path[:length]] for length in range(len(path), 0, -1) if path[:length] in layer.lines)


def _words(error: Any) -> str:
    if error["type"] == "extra_forbidden":
        return "no such key here"
    if error["type"] == "missing":
        return "this key is required"
    return str(error["msg"])


def _softened(layers: Sequence[_Layer]) -> Iterator[tuple[Path_, str]]:
    """What later layers may not change: absolute checks and their facts, cautions of danger, alarms, confirmations before filling."""
    guarded = {("checks", name) for name in _absolute(layers)} | {("facts", name) for name in _facts_of_absolute(layers)}
    stated: dict[Path_, Any] = {}
    for layer in layers:
        for section in ("checks", "facts", "cautions", "symptoms", "structures"):
            entries = layer.content.get(section)
            for name, entry in entries.items() if isinstance(entries, dict) else ():
                path = (section, name)
                if path in stated and (path in guarded or _is_danger(section, stated[path])):
                    yield path, "left as it is; no pack may change an absolute check, the facts it reads, a caution of danger, or an alarm"
                if section == "structures" and path in stated and not _keeps_confirmations(stated[path], entry):
                    yield (*path, "confirm_before_filling"), "at least the confirmations that it had"
                stated.setdefault(path, entry)


def _absolute(layers: Sequence[_Layer]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for layer in layers:
        checks = layer.content.get("checks")
        for name, entry in checks.items() if isinstance(checks, dict) else ():
            if isinstance(entry, dict) and entry.get("absolute"):
                found.setdefault(name, entry)
    return found


def _facts_of_absolute(layers: Sequence[_Layer]) -> set[str]:
    checks = _absolute(layers).values()
    return {str(check.get("subject")) for check in checks} | {name for check in checks for name in _named(check.get("when"))}


def _is_danger(section: str, entry: Any) -> bool:
    return isinstance(entry, dict) and (
        (section == "cautions" and entry.get("signal") == "danger") or (section == "symptoms" and bool(entry.get("alarm")))
    )


def _keeps_confirmations(before: Any, after: Any) -> bool:
    if not isinstance(before, dict) or not isinstance(after, dict) or "confirm_before_filling" not in after:
        return True
    return _named(before.get("confirm_before_filling")) <= _named(after["confirm_before_filling"])


def _named(value: Any) -> set[str]:
    """The texts in ``value``, which nobody has validated: a later layer may have replaced what was wrong with it."""
    return {one for one in value if isinstance(one, str)} if isinstance(value, dict | list) else set()
