"""Reading and layering packs: what a later layer changes, what the hash notices, and every fault with its file, line and path."""

from __future__ import annotations

import errno
import os
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml
from pydantic import ValidationError
from tests.rules.conftest import base

from kilisho import packs
from kilisho.packs import BASE_PACK, PackError, PackFault, check, load
from kilisho.rulebook import SECTIONS_OF_PRACTICE

Pack = Callable[..., Path]
HEADER = "pack: {id: hills, version: 1.2.3, title: A region for a test}\n"
TAGS = "plain YAML without tags"
FIGURE = "practice:\n  figures:\n    sludge_density:\n      typical: {}\n"
DRY_DUNG = "substrates:\n  cattle_dung:\n    total_solids: {typical: 22, unit: '%', basis: judgement}\n"


def faults(path: Path, *more: Path) -> list[PackFault]:
    found = check(path, *more)
    assert all(fault.expected and fault.file for fault in found)
    return found


def only(found: list[PackFault]) -> PackFault:
    [one] = found
    return one


def only_fault(path: Path) -> PackFault:
    found = only(faults(path))
    assert found.file == str(path)
    return found


# Layering


def test_the_base_pack_is_sound_and_frozen() -> None:
    assert check() == []
    with pytest.raises(ValidationError, match="frozen"):
        base().data.substrates["cattle_dung"].total_solids.typical = 0.5  # type: ignore[misc]


def test_a_field_is_replaced_whole(pack: Pack) -> None:
    changed = load(pack(DRY_DUNG)).data.substrates["cattle_dung"]
    before = base().data.substrates["cattle_dung"]
    assert before.total_solids.high is not None
    assert (changed.total_solids.typical, changed.total_solids.low, changed.total_solids.high) == (0.22, None, None)
    assert changed.volatile_solids == before.volatile_solids


def test_the_later_layer_wins(pack: Pack) -> None:
    wetter = pack(DRY_DUNG.replace("22", "11"), "second.yaml")
    assert load(pack(DRY_DUNG), wetter).data.substrates["cattle_dung"].total_solids.typical == pytest.approx(0.11)
    assert load(wetter, pack(DRY_DUNG)).data.substrates["cattle_dung"].total_solids.typical == pytest.approx(0.22)


def test_null_takes_an_entry_or_an_optional_field_out(pack: Pack) -> None:
    data = load(pack("appliances: {mantle_lamp: null}\nsubstrates: {cattle_dung: {phosphorus: null}}\nanimals: {not_there: null}\n")).data
    assert "mantle_lamp" not in data.appliances
    assert data.substrates["cattle_dung"].phosphorus is None
    assert len(data.appliances) == len(base().data.appliances) - 1


def test_null_for_a_required_field_is_a_fault_at_its_line(pack: Pack) -> None:
    fault = only_fault(pack("substrates:\n  cattle_dung:\n    # nobody knows\n    total_solids: null\n"))
    assert (fault.line, fault.path, fault.expected) == (4, "substrates.cattle_dung.total_solids", "this key is required")


def test_practice_is_layered_by_id(pack: Pack) -> None:
    text = "practice:\n  figures:\n    mixing_rate: {typical: 0.7, low: 0.6, high: 0.8}\n  covers: {pit: null}\n"
    practice = load(pack(text)).data.practice
    assert practice.figures["mixing_rate"].typical == 0.7
    assert practice.figures["mixing_rate"].kind == "work_rate"
    assert "pit" not in practice.covers
    assert practice.curves == base().data.practice.curves


@pytest.mark.parametrize("section", SECTIONS_OF_PRACTICE)
def test_every_section_of_practice_keeps_what_a_later_layer_does_not_name(section: str, pack: Pack) -> None:
    of_base = getattr(base().data.practice, section)
    first, *_, last = of_base
    entry = yaml.safe_load((BASE_PACK / "practice.yaml").read_text("utf-8"))["practice"][section][last]
    layer = pack(yaml.safe_dump({"practice": {section: {"of_here": entry}}}))
    layered = getattr(load(layer).data.practice, section)
    assert list(layered) == [*of_base, "of_here"]
    assert layered[first] == of_base[first]
    assert layered["of_here"] == of_base[last]


def test_a_layer_replaces_how_one_quantity_is_measured_and_keeps_the_others(pack: Pack) -> None:
    told = base().data.practice.measurements
    layer = pack("practice: {measurements: {total_solids: {text: Ask the dairy (invented).}, phosphorus: null}}")
    measurements = load(layer).data.practice.measurements
    assert measurements["total_solids"].text == "Ask the dairy (invented)."
    assert set(measurements) == set(told) - {"phosphorus"}
    assert measurements["bulk_density"] == told["bulk_density"]


def test_a_folder_is_read_in_order_of_names(tmp_path: Path) -> None:
    (tmp_path / "1-first.yaml").write_text(DRY_DUNG, "utf-8")
    (tmp_path / "2-second.yaml").write_text(DRY_DUNG.replace("22", "19"), "utf-8")
    (tmp_path / "readme.txt").write_text("not a pack", "utf-8")
    assert load(tmp_path).data.substrates["cattle_dung"].total_solids.typical == pytest.approx(0.19)


def test_header_ids_are_joined_and_the_topmost_version_counts(pack: Pack) -> None:
    farm = pack(HEADER.replace("hills", "farm-7").replace("1.2.3", "4.5.6"), "farm.yaml")
    assert load(pack(HEADER)).identity["id"] == "base_hills"
    identity = load(pack(HEADER), farm).identity
    assert (identity["id"], identity["version"]) == ("base_hills_farm-7", "4.5.6")
    assert load(pack(DRY_DUNG, "plain.yaml")).identity["id"] == "base"


def test_units_are_converted_to_canonical_ones(pack: Pack) -> None:
    text = "animals:\n  dairy_cow:\n    live_weight: {low: 661.387, typical: 881.849, high: 1102.311, unit: '[lb_av]', basis: judgement}\n"
    weight = load(pack(text)).data.animals["dairy_cow"].live_weight
    assert (weight.low, weight.typical, weight.high) == pytest.approx((300, 400, 500), rel=1e-5)
    assert weight.unit == "[lb_av]"


# The hash


def test_the_hash_is_the_same_for_the_same_packs(pack: Pack) -> None:
    assert load().hash == base().hash
    assert load(pack(DRY_DUNG)).hash == load(pack(DRY_DUNG, "elsewhere.yaml")).hash
    assert len(base().hash) == 64


def test_the_hash_ignores_comments_and_the_order_of_keys(pack: Pack) -> None:
    shuffled = (
        "# a remark\nsubstrates:\n  cattle_dung:\n    total_solids:\n      basis: judgement # why\n      unit: '%'\n      typical: 22\n"
    )
    assert load(pack(shuffled)).hash == load(pack(DRY_DUNG, "plain.yaml")).hash


@pytest.mark.parametrize(
    "text",
    [
        DRY_DUNG,
        DRY_DUNG.replace("typical: 22", "low: 12, typical: 15, high: 18.000001"),
        "substrates: {cattle_dung: {starts_unaided: false}}",
        "practice: {figures: {mixing_rate: {typical: 0.351}}}",
        "cautions: {floating_feed: {signal: notice}}",
        "sources: {sasse-1988: {year: 1989}}",
        "structures: {fixed_dome: {tanks_in_series: 2}}",
        HEADER,
    ],
)
def test_the_hash_changes_with_any_figure(text: str, pack: Pack) -> None:
    assert load(pack(text)).hash != base().hash


def test_a_figure_in_another_unit_is_the_same_figure_but_not_the_same_pack(pack: Pack) -> None:
    per_mille = load(pack(DRY_DUNG.replace("22, unit: '%'", "220, unit: 'g/kg'"), "other.yaml"))
    assert per_mille.data.substrates["cattle_dung"].total_solids.typical == pytest.approx(0.22)
    assert per_mille.hash != load(pack(DRY_DUNG)).hash


# Faults of reading


@pytest.mark.parametrize(
    ("text", "line", "path", "expected"),
    [
        ("substrates:\n  a: {}\nsubstrates: {}\n", 3, "substrates", "each key once"),
        ("substrates:\n  cattle_dung:\n    name: Some dung\n    name: Other dung\n", 4, "substrates.cattle_dung.name", "each key once"),
        ("substrates:\n  ? [a, b]\n  : 1\n", 2, "substrates.", "plain text"),
        ("animals: &herd {}\nsubstrates: *herd\n", 1, "substrates", "no YAML alias"),
        ("substrates:\n\tcattle_dung: 1\n", 2, "", "YAML: "),
        ("substrates: [1, 2\n", 2, "", "YAML: "),
        ("- one\n- two\n", 1, "", "a mapping of sections"),
        ("just words\n", 1, "", "a mapping of sections"),
        ("checks:\n  x: !!python/name:os.system ''\n", 2, "checks.x", TAGS),
        ("pack:\n  title: !!bool maybe\n", 2, "pack.title", TAGS),
        ("pack:\n  title: !!timestamp soon\n", 2, "pack.title", TAGS),
        ("pack:\n  title: !!float ''\n", 2, "pack.title", TAGS),
        ("pack:\n  title: !!int ''\n", 2, "pack.title", TAGS),
        # Harmless ones too: one rule, whatever the reader would make of the tag.
        ("pack:\n  title: !!str hills\n", 2, "pack.title", TAGS),
        ("pack:\n  version: ! 1.2\n", 2, "pack.version", TAGS),
        ("pack: !hills {}\n", 1, "pack", TAGS),
        ("pack:\n  cautions: !!seq []\n", 2, "pack.cautions", TAGS),
        ("!!map\npack: {}\n", 1, "", TAGS),
        ("# Übersicht!\npack:\n  !!str title: x\n", 3, "pack.title", "plain text"),
        (FIGURE.format("0x" + "F" * 400), 4, "practice.figures.sludge_density.typical", "at most 100 characters"),
        (FIGURE.format("1" + ":1" * 300), 4, "practice.figures.sludge_density.typical", "at most 100 characters"),
        (FIGURE.format("1" + "0" * 5000), 4, "practice.figures.sludge_density.typical", "at most 100 characters"),
        (FIGURE.format("2027-02-30"), 4, "practice.figures.sludge_density.typical", "a plain value"),
        (FIGURE.format("="), 4, "practice.figures.sludge_density.typical", "a plain value"),
        (FIGURE.format("0x_"), 4, "practice.figures.sludge_density.typical", "a plain value"),
    ],
)
def test_yaml_that_cannot_be_read_as_a_pack(text: str, line: int, path: str, expected: str, pack: Pack) -> None:
    fault = only_fault(pack(text))
    assert (fault.line, fault.path) == (line, path)
    assert expected in fault.expected


def test_text_may_be_long_and_have_exclamation_marks(pack: Pack) -> None:
    title = "Hills! " * 20
    assert load(pack(f"pack: {{id: hills, version: 1.2.3, title: '{title}'}}\n")).data.pack.title == title


@pytest.mark.parametrize("reader", ["CSafeLoader", "SafeLoader"])
@pytest.mark.parametrize("text", ["a: " + "[" * 100_000, "{a: " * 900 + "1" + "}" * 900, "- " * 100_000 + "1"])
def test_nesting_beyond_what_the_reader_can_follow_is_refused(text: str, reader: str, pack: Pack, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(packs, "_Loader", getattr(yaml, reader))
    with pytest.raises(PackError, match=r"level|depth"):
        load_alone(pack(text))


def load_alone(file: Path) -> None:
    """The reading of one file, without the base pack, which the reader in Python takes some seconds for."""
    packs._read(file, str(file))


def test_deep_nesting_is_refused(pack: Pack) -> None:
    assert "at most 30 levels" in only_fault(pack("substrates: " + "{a: " * 40 + "1" + "}" * 40)).expected


def test_an_alias_bomb_is_refused_at_once(pack: Pack) -> None:
    rows = ["a0: &a0 [x, x]"] + [f"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]" for i in range(1, 40)]
    assert all("no YAML alias" in fault.expected for fault in faults(pack("\n".join(rows))))


def test_a_path_that_is_not_there(tmp_path: Path) -> None:
    fault = only_fault(tmp_path / "missing.yaml")
    assert "existing" in fault.expected


def test_an_empty_folder(tmp_path: Path) -> None:
    assert "at least one .yaml file" in only_fault(tmp_path).expected


def test_an_empty_file_changes_nothing(pack: Pack) -> None:
    assert load(pack("# nothing yet\n")).hash == base().hash


def test_text_that_is_not_utf_8(tmp_path: Path) -> None:
    path = tmp_path / "latin.yaml"
    path.write_bytes("substrates: {a: {name: Süß}}".encode("latin-1"))
    assert "UTF-8" in only_fault(path).expected


def test_dot_files_are_not_read(tmp_path: Path) -> None:
    """An editor leaves them: a link to nowhere that says who writes, or a copy of what was there before."""
    (tmp_path / "a.yaml").write_text(HEADER)
    (tmp_path / ".#a.yaml").symlink_to("user@host.1234")
    (tmp_path / ".b.yaml").write_text("broken")
    (tmp_path / ".#farm.sw.ftl").symlink_to("user@host.1234")
    assert load(tmp_path).data.pack.title == "A region for a test"
    assert [file.name for file in packs.files_of(tmp_path)] == ["a.yaml"]


@pytest.mark.parametrize("name", ["b.yaml", "farm.sw.ftl"])
def test_what_cannot_be_opened_is_a_fault_of_its_file(name: str, tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text(HEADER)
    (tmp_path / name).symlink_to("nowhere")
    fault = only(faults(tmp_path))
    assert (fault.file, fault.expected) == (str(tmp_path / name), "a file that can be read (No such file or directory)")
    (tmp_path / name).unlink()
    (tmp_path / name).mkdir()
    fault = only(faults(tmp_path))
    assert (fault.file, fault.expected) == (str(tmp_path / name), "a file that can be read (Is a directory)")


def test_a_folder_that_one_may_not_look_into_is_a_fault(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The tests may run as root, whom no permission stops."""

    def closed(folder: Path) -> None:
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES), str(folder))

    monkeypatch.setattr(Path, "iterdir", closed)
    monkeypatch.setattr(packs, "BASE_PACK", tmp_path)
    assert only(faults(tmp_path)) == PackFault(str(tmp_path), 0, "", "a file that can be read (Permission denied)")


def test_messages_of_other_packs_in_the_folder_are_nobodys_business(tmp_path: Path) -> None:
    for name in ("hills.yaml", "hills.sw.ftl", "plains.sw.ftl"):
        (tmp_path / name).write_text("")
    assert [file.name for file in packs.files_of(tmp_path / "hills.yaml")] == ["hills.yaml", "hills.sw.ftl"]


def test_a_file_that_is_too_large(tmp_path: Path) -> None:
    path = tmp_path / "large.yaml"
    path.write_bytes(b"#" * (packs.LARGEST_FILE + 1))
    assert str(packs.LARGEST_FILE) in only_fault(path).expected


# Faults of content


@pytest.mark.parametrize(
    ("text", "line", "path", "expected"),
    [
        ("substrate:\n  a: 1\n", 1, "substrate", "no such key"),
        (DRY_DUNG + "    colour: brown\n", 4, "substrates.cattle_dung.colour", "no such key"),
        (DRY_DUNG.replace("'%'", "kg"), 3, "substrates.cattle_dung.total_solids", "not a unit of share"),
        (DRY_DUNG.replace("22", "122"), 3, "substrates.cattle_dung.total_solids", "from 0.001 to 100.0 %"),
        (DRY_DUNG.replace("22", "twenty"), 3, "substrates.cattle_dung.total_solids.typical", "valid number"),
        (DRY_DUNG.replace("22", ".nan"), 3, "substrates.cattle_dung.total_solids", "from 0.001 to 100.0 %"),
        (DRY_DUNG.replace("22", ".inf"), 3, "substrates.cattle_dung.total_solids", "from 0.001 to 100.0 %"),
        (DRY_DUNG.replace("typical: 22", "low: 23, typical: 22, high: 24"), 3, "substrates.cattle_dung.total_solids", "must rise"),
        (DRY_DUNG.replace("typical: 22", "low: 12, typical: 22, high: 21"), 3, "substrates.cattle_dung.total_solids", "must rise"),
        (DRY_DUNG.replace("typical: 22", "low: 12"), 3, "substrates.cattle_dung.total_solids.typical", "required"),
        (DRY_DUNG.replace("judgement", "published"), 3, "substrates.cattle_dung.total_solids", "must name its source"),
        (DRY_DUNG.replace("judgement", "hearsay"), 3, "substrates.cattle_dung.total_solids.basis", "published"),
        (
            DRY_DUNG.replace("judgement", "published, source: [nobody-1900]"),
            3,
            "substrates.cattle_dung.total_solids.source",
            "'nobody-1900'",
        ),
        ("animals:\n  goat:\n    substrate: goat_dropping\n", 3, "animals.goat.substrate", "'goat_dropping'"),
        ("structures:\n  bag:\n    cautions: [no_such]\n", 3, "structures.bag.cautions", "'no_such'"),
        ("substrates:\n  whey:\n    cautions: [no_such]\n", 3, "substrates.whey.cautions", "'no_such'"),
        ("structures:\n  bag:\n    confirm_before_filling: [no_such]\n", 3, "structures.bag.confirm_before_filling", "'no_such'"),
        ("animals:\n  Big Cow: {}\n", 2, "animals.Big Cow", ""),
        ("pack: {id: hills, version: '1.2', title: A region}\n", 1, "pack.version", "match"),
        ("practice:\n  figures:\n    mixing_rate: {kind: flow, typical: 1}\n", 3, "practice.figures.mixing_rate", "kind must be one of"),
        ("practice:\n  figures:\n    mixing_rate: {unit: kg}\n", 3, "practice.figures.mixing_rate", "not a unit of work_rate"),
        (
            "practice:\n  curves:\n    feed_step:\n      points:\n        - {at: 20, low: 1, typical: 2, high: 3}\n"
            "        - {at: 20, low: 1, typical: 2, high: 3}\n",
            3,
            "practice.curves.feed_step",
            "must rise",
        ),
        ("substrates: 7\n", 1, "substrates", "valid dictionary"),
        ("animals:\n", 1, "animals", "valid dictionary"),
        ("practice:\n  figures: 7\n", 2, "practice.figures", "valid dictionary"),
        ("practice:\n  no_such: 7\n", 2, "practice.no_such", "no such key"),
    ],
)
def test_a_fault_of_content_names_line_path_and_expectation(text: str, line: int, path: str, expected: str, pack: Pack) -> None:
    found = [fault for fault in faults(pack(text)) if fault.path.startswith(path)]
    assert found, faults(pack(text))
    assert found[0].line == line
    assert found[0].file.endswith("layer.yaml")
    assert expected in found[0].expected


def test_all_faults_are_listed_at_once(pack: Pack) -> None:
    text = "substrates:\n  whey:\n    cautions: [nothing]\nanimals:\n  goat:\n    substrate: nothing\n"
    assert {fault.line for fault in faults(pack(text))} == {3, 6}


def test_loading_raises_what_checking_lists(pack: Pack) -> None:
    path = pack(DRY_DUNG + "    colour: brown\n")
    with pytest.raises(PackError, match="no such key here") as caught:
        load(path)
    assert list(caught.value.faults) == faults(path) != []


def test_a_fault_reads_as_file_line_path_and_expectation(pack: Pack) -> None:
    path = pack(DRY_DUNG + "    colour: brown\n")
    assert str(only_fault(path)) == f"{path}:4: substrates.cattle_dung.colour: no such key here"


@pytest.mark.parametrize(
    ("below", "above", "path"),
    [
        ("pack: 7", HEADER, "pack"),
        ("substrates: 7", DRY_DUNG, "substrates"),
        ("practice: 7", "practice: {figures: {}}", "practice"),
        ("practice: {figures: 7}", "practice: {figures: {mixing_rate: {typical: 0.7}}}", "practice.figures"),
        ("practice: {no_such: 7}", "practice: {no_such: {}}", "practice.no_such"),
        ("process: 7", "process: {}", "process"),
    ],
)
def test_what_is_no_mapping_is_told_also_when_a_later_layer_lies_over_it(below: str, above: str, path: str, pack: Pack) -> None:
    fault = only(faults(pack(below, "below.yaml"), pack(above)))
    assert (Path(fault.file).name, fault.line, fault.path) == ("below.yaml", 1, path)


@pytest.mark.parametrize("when", ["7", "[{}]"])
def test_conditions_that_a_later_layer_puts_right_may_have_been_anything(when: str, pack: Pack) -> None:
    check = "{title: A test, topic: siting, subject: distance_to_well, must: {at_least: 50, unit: m}, severity: danger, "
    check += "why: For a test., do: Nothing., basis: judgement, absolute: true}"
    below = pack(f"checks: {{here: {check.replace('why:', f'when: {when}, why:')}}}", "below.yaml")
    assert [fault.path for fault in faults(below, pack("checks: {here: {when: null}}"))] == ["checks.here"]


def test_a_fault_in_the_second_layer_is_not_blamed_on_the_first(pack: Pack) -> None:
    second = pack("substrates:\n  cattle_dung:\n    total_solids: {typical: 22, unit: kg, basis: judgement}\n", "second.yaml")
    [fault] = faults(pack(DRY_DUNG), second)
    assert (fault.file, fault.line) == (str(second), 3)


# Absolute checks

ABSOLUTE = sorted(name for name, entry in base().data.checks.items() if entry.absolute)


@pytest.mark.parametrize("change", ["null", "{severity: notice}", "{absolute: false}", "{asked_in: []}", "7"])
def test_no_layer_changes_an_absolute_check(change: str, pack: Pack) -> None:
    found = faults(pack("checks:\n" + "".join(f"  {name}: {change}\n" for name in ABSOLUTE)))
    for line, name in enumerate(ABSOLUTE, 2):
        assert (line, f"checks.{name}") in [(fault.line, fault.path) for fault in found]


def test_no_entry_is_among_the_absolute_checks() -> None:
    assert {"no_entry", "no_flame_at_digester", "first_flame_not_at_digester"} <= set(ABSOLUTE)


def test_a_fact_that_an_absolute_check_reads_cannot_be_taken_out(pack: Pack) -> None:
    paths = [fault.path for fault in faults(pack("facts:\n  entry_planned: null\n"))]
    assert "checks.no_entry.subject" in paths


def test_other_checks_may_be_changed_or_taken_out(pack: Pack) -> None:
    data = load(pack("checks:\n  first_flame_outdoors: null\n  first_flame_distance: {must: {at_least: 12, unit: m}}\n")).data
    assert "first_flame_outdoors" not in data.checks
    assert data.checks["first_flame_distance"].must.at_least == 12


def test_a_layer_may_add_its_own_absolute_check_which_then_holds_for_later_layers(pack: Pack) -> None:
    own: dict[str, Any] = yaml.safe_load((BASE_PACK / "checks-gas.yaml").read_text("utf-8"))["checks"]["no_entry"]
    first = pack(yaml.safe_dump({"checks": {"no_entry_here_either": own}}), "first.yaml")
    assert load(first).data.checks["no_entry_here_either"].absolute
    [fault] = faults(first, pack("checks: {no_entry_here_either: null}", "second.yaml"))
    assert fault.file.endswith("second.yaml")
