"""Drawings, measured: what is drawn is as long as it says, holds what it says, and asks nothing of anybody."""

from __future__ import annotations

import datetime as dt
import itertools
import json
import math
import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import FIRST_CHARGE, SIZING, Json, ask, first_charges, gas_forecasts, gas_uses, like, questions, sizings
from tests.rules.drawings import SVG, area, length, paths, points, read, revolved, scales, texts, value_at
from tests.tongues import stretched_language

from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES, Language
from kilisho.questions.sizing.dimensions import SHAPES
from kilisho.views.axes import Panel, day_marks, draw_axes, panel_of, step_of, upright
from kilisho.views.bucket_drawing import MOST_DRAWN, bucket_figure
from kilisho.views.forecast_drawing import forecast_drawing
from kilisho.views.hours_drawing import hours_drawing
from kilisho.views.paper import STROKES, WIDTH, Paper, Words, headed
from kilisho.views.paper import SVG as SVG_TYPE
from kilisho.views.printable import printable
from kilisho.views.rotation_drawing import rotation_drawing
from kilisho.views.section_drawing import PERSON, digester_drawing
from kilisho.views.sections import SECTIONS, Section, area_of, section_of
from kilisho.views.stockpile_drawing import stockpile_drawing, stockpile_figure
from kilisho.views.year_drawing import HEIGHT, year_figure

EN = LANGUAGES["en"]
STRUCTURES = ("fixed_dome", "floating_drum", "bag", "batch_tank")
HOSTILE = "<script>alert(1)</script>&\"' ]]> \x00\x1b\ud7ff"


@cache
def example(name: str) -> Json:
    return ask(name, questions()[name].example)


@cache
def sized(structure: str) -> Json:
    return ask("sizing", {**questions()["sizing"].example, "structure": structure})


DRAWN: Mapping[str, Callable[[], str]] = {
    "stockpile": lambda: stockpile_drawing(example("first-charge"), EN),
    "forecast": lambda: forecast_drawing(example("gas-forecast"), EN),
    "rotation": lambda: rotation_drawing(example("batch-rotation"), EN),
    "hours": lambda: hours_drawing(example("gas-use"), EN),
    "buckets": lambda: bucket_figure(example("farm-plan")["maintenance_feed"]["per_feeding"]["containers"][0], EN),
    "year": lambda: year_figure(example("farm-plan")["gas_forecast"], EN),
    "heap": lambda: stockpile_figure(example("first-charge"), EN),
    **{one: lambda one=one: digester_drawing(sized(one), EN) for one in STRUCTURES},  # type: ignore[misc]
}


def attempt(name: str, body: Json) -> Json | None:
    try:
        return ask(name, body)
    except RefusedError:
        return None


# ---- what every drawing keeps to ----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", DRAWN)
def test_a_drawing_needs_nothing_from_outside_and_runs_nothing(name: str) -> None:
    svg = DRAWN[name]()
    root = read(svg)
    tags = {one.tag.removeprefix(SVG) for one in root.iter()}
    assert tags <= {"svg", "defs", "pattern", "title", "desc", "rect", "path", "text"}
    attributes = {attribute for one in root.iter() for attribute in one.attrib}
    assert not [one for one in attributes if one.startswith("on") or "href" in one or one == "style"]
    assert root.get("font-family") == "sans-serif"
    ids = [one.attrib["id"] for one in root.iter() if "id" in one.attrib]
    assert set(re.findall(r"url\(([^)]*)\)", svg)) <= {f"#{one}" for one in ids}
    assert len(set(ids)) == len(ids)


@pytest.mark.parametrize("name", DRAWN)
def test_a_screen_reader_finds_a_name_and_a_description(name: str) -> None:
    root = read(DRAWN[name]())
    assert root.get("role") == "img"
    labels = root.attrib["aria-labelledby"].split()
    title, about = (next(one for one in root.iter() if one.get("id") == label) for label in labels)
    assert (title.tag, about.tag) == (f"{SVG}title", f"{SVG}desc")
    assert len(title.text or "") > 8
    assert len(about.text or "") > 35


@pytest.mark.parametrize("name", DRAWN)
def test_text_can_be_read_at_the_width_of_a_phone(name: str) -> None:
    root = read(DRAWN[name]())
    width = float(root.attrib["viewBox"].split()[2])
    assert width == (300 if name == "heap" else 390)
    sizes = [float(one.attrib["font-size"]) for one in root.iter(f"{SVG}text")]
    assert min(sizes) >= 11
    assert all(0 <= float(one.attrib["x"]) <= width for one in root.iter(f"{SVG}text"))
    assert max(float(one.attrib["y"]) for one in root.iter(f"{SVG}text")) <= float(root.attrib["viewBox"].split()[3])


@pytest.mark.parametrize("name", DRAWN)
def test_a_drawing_works_in_black_and_white(name: str) -> None:
    colours = {value for one in read(DRAWN[name]()).iter() for key, value in one.attrib.items() if key in ("fill", "stroke")}
    plain = {one for one in colours if not one.startswith("url(") and one != "none"}
    # A grey has three equal parts.
    assert all(re.fullmatch(r"#(.)\1\1|#(..)\2\2", one) for one in plain)


def test_lines_differ_by_more_than_colour() -> None:
    looks = [(look["stroke_width"], look.get("stroke_dasharray")) for look in STROKES.values()]
    assert len(set(looks)) == len(looks)


@pytest.mark.parametrize("name", DRAWN)
def test_the_same_answer_is_the_same_drawing(name: str) -> None:
    assert DRAWN[name]() == DRAWN[name]()


@pytest.mark.parametrize(
    ("draw", "answer"), [(stockpile_drawing, "first-charge"), (forecast_drawing, "gas-forecast"), (digester_drawing, "sizing")]
)
def test_a_name_is_text_and_nothing_else(draw: Callable[[Json, Language], str], answer: str) -> None:
    told = example(answer)
    plain, hostile = read(draw({**told, "name": "x"}, EN)), read(draw({**told, "name": HOSTILE}, EN))
    assert {one.tag for one in plain.iter()} == {one.tag for one in hostile.iter()}
    assert "<script>alert(1)</script>" in " ".join(texts(hostile))
    assert "Highfold (invented)" in texts(read(draw(told, EN)))


def test_a_long_name_takes_two_lines_at_most() -> None:
    short, long = (read(stockpile_drawing({**example("first-charge"), "name": name}, EN)) for name in ("x", "hill " * 40))
    assert len(texts(long)) == len(texts(short)) + 1


# ---- the section of a digester ------------------------------------------------------------------------------------------------------


def test_every_shape_has_a_section() -> None:
    assert SECTIONS.keys() == SHAPES.keys()


def holds(section: Section, shape: str, lengths: Json) -> tuple[float, float]:
    """Volume of slurry and of gas that the section encloses [m3]."""
    if shape == "tube":
        return area(section.slurry[1]) * lengths["length"]["value"], area(section.gas[1]) * lengths["length"]["value"]
    return revolved(section.slurry[0]), revolved(section.gas[0])


@given(sizings())
def test_the_section_encloses_the_volumes_that_it_is_drawn_for(body: Json) -> None:
    answer = attempt("sizing", body)
    if answer is None:
        return
    told = answer["dimensions"]
    volumes = {name: one["value"] for name, one in told["reproduced"].items()}
    slurry, gas = holds(section_of(told), told["shape"], told)
    # Lengths are told in tenths of a millimetre; half a circle has 96 points.
    assert slurry == pytest.approx(volumes["working_volume"], rel=2e-3, abs=2e-3)
    if told["shape"] == "cylinder_with_drum":
        assert gas == pytest.approx(volumes["gas_storage_volume"], rel=2e-3, abs=2e-3)
    else:
        assert gas == pytest.approx(volumes["total_volume"] - volumes["working_volume"], rel=2e-3, abs=2e-3)


@given(sizings())
def test_every_drawn_length_is_as_long_as_its_number_says(body: Json) -> None:
    answer = attempt("sizing", body)
    if answer is None:
        return
    root, section = read(digester_drawing(answer, EN)), section_of(answer["dimensions"])
    [bar] = paths(root, "scale-bar")
    label = next(text for text in texts(root) if "all lengths in metres" in text)
    per_metre = (bar[2][0] - bar[1][0]) / float(label.split()[0])
    drawn = [length(path) / per_metre for path in paths(root, "dimension")]
    assert drawn == pytest.approx([one.value for one in section.dimensions], abs=0.03 / per_metre + 2e-4)
    person = [y for path in paths(root, "person") for _, y in path]
    assert (max(person) - min(person)) / per_metre == pytest.approx(PERSON, abs=0.03 / per_metre)


@given(sizings())
def test_every_length_of_the_answer_stands_in_the_drawing(body: Json) -> None:
    answer = attempt("sizing", body)
    if answer is None:
        return
    told, shown = answer["dimensions"], " ".join(texts(read(digester_drawing(answer, EN))))
    for name, one in told.items():
        if isinstance(one, dict) and "value" in one:
            assert EN.number(one["value"]) in shown or f"{one['value']:.2f}" in shown, name


@pytest.mark.parametrize("structure", STRUCTURES)
def test_areas_on_paper_are_areas_in_metres(structure: str) -> None:
    answer = sized(structure)
    root, section = read(digester_drawing(answer, EN)), section_of(answer["dimensions"])
    drawn = paths(root, "dimension")[0]
    per_metre = length(drawn) / section.dimensions[0].value
    for name, wanted in (("slurry", section.slurry), ("gas", section.gas)):
        found = [area(path) / per_metre**2 for path in paths(root, name)]
        assert found == pytest.approx([area_of(path) for path in wanted], rel=5e-3)


@pytest.mark.parametrize("structure", STRUCTURES)
def test_nothing_is_drawn_beyond_the_paper(structure: str) -> None:
    root = read(digester_drawing(sized(structure), EN))
    height = float(root.attrib["viewBox"].split()[3])
    for name in ("dimension", "person", "slurry", "gas", "wall", "dashed", "level", "scale-bar"):
        for path in paths(root, name):
            assert all(0 <= x <= WIDTH and 0 <= y <= height for x, y in path), name


@pytest.mark.parametrize("structure", STRUCTURES)
def test_slurry_and_gas_meet_at_the_level_that_is_told(structure: str) -> None:
    told = sized(structure)["dimensions"]
    section = section_of(told)
    for slurry, gas in zip(section.slurry, section.gas, strict=True):
        assert max(y for _, y in slurry) == pytest.approx(min(y for _, y in gas), abs=1e-3)
    floor = min(y for _, y in section.slurry[0])
    assert max(y for _, y in section.slurry[0]) - floor == pytest.approx(told["slurry_depth"]["value"], abs=1e-3)


def test_the_tank_of_a_dome_stands_on_the_level_at_rest_and_takes_what_the_gas_pushes_out() -> None:
    told = sized("fixed_dome")["dimensions"]
    section, lengths = section_of(told), {name: one["value"] for name, one in told.items() if isinstance(one, dict) and "value" in one}
    tank = section.walls[1]
    assert min(y for _, y in tank) == lengths["slurry_depth"]
    assert max(y for _, y in tank) - min(y for _, y in tank) == pytest.approx(lengths["compensation_tank_depth"])
    assert max(x for x, _ in tank) - min(x for x, _ in tank) == pytest.approx(lengths["compensation_tank_diameter"])
    # Slurry between the two levels in the dome is what fills the tank: a slice of a sphere, by the handbook's formula.
    pushed, radius = section.dashed[2], lengths["inner_height"]
    low, high = pushed[0][1], lengths["slurry_depth"]
    a, b = math.sqrt(radius**2 - low**2), math.sqrt(radius**2 - high**2)
    slice_ = math.pi * (high - low) / 6 * (3 * a * a + 3 * b * b + (high - low) ** 2)
    assert slice_ == pytest.approx(told["reproduced"]["gas_storage_volume"]["value"], rel=1e-3)


def test_a_dome_that_cannot_hold_its_store_shows_no_full_level() -> None:
    told = json.loads(json.dumps(sized("fixed_dome")["dimensions"]))
    told["reproduced"]["gas_storage_volume"]["value"] = 17.9
    assert len(section_of(told).dashed) == len(section_of(sized("fixed_dome")["dimensions"]).dashed) - 2


@pytest.mark.parametrize("structure", STRUCTURES)
def test_it_says_that_it_is_no_structural_design(structure: str) -> None:
    root = read(digester_drawing(sized(structure), EN))
    about = next(one.text or "" for one in root.iter(f"{SVG}desc"))
    shown = " ".join(texts(root))
    for told in (about, shown):
        assert "no structural design" in told
        assert "licensed engineer" in told


@given(st.floats(0.5, 4), st.floats(0.5, 4))
def test_a_larger_digester_is_drawn_larger_than_the_person(small: float, times: float) -> None:
    """Doubling a digester on paper halves the person beside it, not the other way round."""
    told = sized("batch_tank")
    shares = []
    for factor in (small, small * (1 + times)):
        dimensions = json.loads(json.dumps(told["dimensions"]))
        for name in ("diameter", "height", "slurry_depth"):
            dimensions[name]["value"] *= factor
        root = read(digester_drawing({**told, "dimensions": dimensions}, EN))
        person = [y for path in paths(root, "person") for _, y in path]
        shares.append((max(person) - min(person)) / length(paths(root, "dimension")[0]))
    assert shares[1] == pytest.approx(shares[0] / (1 + times), rel=0.02)


# ---- the stockpile ------------------------------------------------------------------------------------------------------------------


@given(first_charges())
def test_heaps_needs_and_ranges_stand_where_the_axis_says(body: Json) -> None:
    answer = attempt("first-charge", body)
    if answer is None:
        return
    root, heaps = read(stockpile_drawing(answer, EN)), answer["stockpile"]["heaps"]
    panels = scales(root)
    assert len(panels) == len(heaps)
    lines = {name: paths(root, name) for name in ("heap", "need", "need-range", "heap-range")}
    for place, (heap, scale) in enumerate(zip(heaps, panels, strict=True)):
        room = 1e-3 * max(scale.values()) + 1e-6
        drawn = [value_at(scale, y) for _, y in lines["heap"][place]]
        assert drawn == pytest.approx(heap["account"]["on_heap"], abs=room)
        assert value_at(scale, lines["need"][place][0][1]) == pytest.approx(heap["needed"]["value"], abs=room)
        ends = sorted(value_at(scale, y) for _, y in lines["need-range"][place])
        assert (ends[0], ends[-1]) == pytest.approx(_range(heap["needed"]), abs=room)
        ends = sorted(value_at(scale, y) for _, y in lines["heap-range"][place])
        assert (ends[0], ends[-1]) == pytest.approx(_range(heap["on_heap"]), abs=room)


def _range(told: Json) -> tuple[float, float]:
    return told.get("low", told["value"]), told.get("high", told["value"])


def test_days_are_evenly_spaced_and_end_at_filling() -> None:
    root = read(stockpile_drawing(example("first-charge"), EN))
    xs = [x for x, _ in paths(root, "heap")[0]]
    gaps = [later - sooner for sooner, later in itertools.pairwise(xs)]
    assert gaps == pytest.approx([gaps[0]] * 30, abs=0.02)
    assert paths(root, "day")[0][0][0] == pytest.approx(xs[-1], abs=0.02)
    assert "filling, 3 Feb: 3,560 kg" in texts(root)
    assert {"4 Jan", "14 Jan", "24 Jan", "3 Feb", "needed 4,000 kg"} <= set(texts(root))


def test_a_plan_without_dates_counts_days() -> None:
    answer = ask("first-charge", like(FIRST_CHARGE, stockpile={"cover": "sheet"}, digester_ready_on=None))
    shown = texts(read(stockpile_drawing(answer, EN)))
    assert any(text.startswith("filling day: ") for text in shown)
    assert "day 0" in shown


def test_the_words_of_the_answer_stand_below_the_picture() -> None:
    answer = example("first-charge")
    assert answer["stockpile"]["in_words"] in " ".join(texts(read(stockpile_drawing(answer, EN))))


# ---- the forecast -------------------------------------------------------------------------------------------------------------------


def check_forecast(answer: Json) -> None:
    root = read(forecast_drawing(answer, EN))
    for name, scale in zip(("gas", "temperature"), scales(root), strict=True):
        told = [one[name] for one in answer["series"]]
        [line], [hatched] = paths(root, name), paths(root, f"{name}-range")
        room = 1e-3 * (max(scale.values()) - min(scale.values())) + 1e-6
        for drawn, end in ((line, "value"), (hatched[: len(line)], "low"), (hatched[len(line) :][::-1], "high")):
            values = [value_at(scale, y) for _, y in drawn]
            assert values[::2] == values[1::2] == pytest.approx([one.get(end, one["value"]) for one in told], abs=room)
    assert len(paths(root, "risk")) == sum(one["acid_risk"] != "low" for one in answer["series"])


def test_gas_and_temperature_stand_where_the_axes_say() -> None:
    check_forecast(example("gas-forecast"))


@settings(max_examples=8)
@given(gas_forecasts())
def test_any_forecast_can_be_drawn(body: Json) -> None:
    answer = attempt("gas-forecast", body)
    if answer is not None:
        check_forecast(answer)


def test_each_step_is_as_wide_as_its_month() -> None:
    answer = example("gas-forecast")
    [line] = paths(read(forecast_drawing(answer, EN)), "gas")
    widths = [line[place + 1][0] - line[place][0] for place in range(0, len(line), 2)]
    days = [one.get("days", 1) for one in answer["series"]]
    assert [one / sum(widths) for one in widths] == pytest.approx([one / sum(days) for one in days], abs=1e-3)


def test_the_first_burnable_gas_is_marked_on_its_day() -> None:
    answer = example("gas-forecast")
    root = read(forecast_drawing(answer, EN))
    [line], [mark] = paths(root, "gas"), paths(root, "day")
    share = (mark[0][0] - line[0][0]) / (line[-1][0] - line[0][0])
    assert share * answer["days"] == pytest.approx(answer["first_burnable_gas_day"]["value"], abs=0.05)


def test_a_digester_that_has_long_been_working_has_no_first_gas_to_mark() -> None:
    told = {name: one for name, one in example("gas-forecast").items() if name not in ("first_burnable_gas_day", "starts")}
    root = read(forecast_drawing(told, EN))
    assert paths(root, "day") == []
    assert "burnable" not in " ".join(texts(root))


# ---- a charge of a rotation, and the hours of a day ---------------------------------------------------------------------------------


def test_the_gas_of_a_charge_stands_where_the_axes_say() -> None:
    answer = example("batch-rotation")
    root = read(rotation_drawing(answer, EN))
    for name, scale in zip(("gas", "gas_so_far"), scales(root), strict=True):
        [line], [hatched] = paths(root, name), paths(root, f"{name}-range")
        room = 1e-3 * max(scale.values())
        for drawn, end in ((line, "value"), (hatched[: len(line)], "low"), (hatched[len(line) :][::-1], "high")):
            assert [value_at(scale, y) for _, y in drawn][::2] == pytest.approx([one[name][end] for one in answer["gas_curve"]], abs=room)
    [usable] = paths(root, "usable")
    values = [value_at(scales(root)[0], y) for _, y in usable][::2]
    assert values == pytest.approx([one["usable_gas"]["value"] for one in answer["gas_curve"]], abs=5e-3)


def test_the_day_of_recharging_is_marked_in_both_panels() -> None:
    answer = example("batch-rotation")
    root = read(rotation_drawing(answer, EN))
    [line], marks = paths(root, "gas"), paths(root, "day")
    share = (marks[0][0][0] - line[0][0]) / (line[-1][0] - line[0][0])
    assert share * len(answer["gas_curve"]) == pytest.approx(answer["retention"]["value"], abs=0.05)
    assert len(marks) == 2
    assert EN.amount(answer["gas_of_charge"]) in " ".join(texts(root))
    later = {**answer, "retention": {"value": 1e3, "unit": "d"}}
    assert paths(read(rotation_drawing(later, EN)), "day") == []


def test_a_charge_without_dates_counts_days() -> None:
    answer = ask("batch-rotation", like(questions()["batch-rotation"].example, first_charge_on=None))
    assert "day 0" in texts(read(rotation_drawing(answer, EN)))


def check_hours(answer: Json) -> None:
    root, hours = read(hours_drawing(answer, EN)), answer["cover_by_hour"]
    upper, lower = scales(root)
    for name, scale in (("supply", upper), ("stored", lower)):
        drawn = [value_at(scale, y) for _, y in paths(root, name)[0]][::2]
        assert drawn == pytest.approx([one[name]["value"] for one in hours], abs=1e-3 * max(scale.values()))
    wanted = [one["demand"]["value"] for one in hours if one["demand"]["value"] > 0]
    tops = [max(value_at(upper, y) for _, y in path) for path in paths(root, "wanted")]
    assert tops == pytest.approx(wanted, abs=1e-3 * max(upper.values()))
    missing = [one["unmet"]["value"] for one in hours if one["unmet"]["value"] > 0]
    heights = [value_at(upper, min(y for _, y in path)) - value_at(upper, max(y for _, y in path)) for path in paths(root, "missing")]
    assert heights == pytest.approx(missing, abs=2e-3 * max(upper.values()))


def test_the_hours_stand_where_the_axes_say() -> None:
    check_hours(example("gas-use"))
    shown = " ".join(texts(read(hours_drawing(example("gas-use"), EN))))
    for spell in example("gas-use")["without_gas"]:
        assert f"{spell['from']} to {spell['to']}" in shown


@given(gas_uses())
def test_any_day_whose_hours_are_known_can_be_drawn(body: Json) -> None:
    answer = attempt("gas-use", body)
    if answer is None:
        return
    if "cover_by_hour" in answer:
        check_hours(answer)
    else:
        with pytest.raises(RefusedError, match="clock hours"):
            hours_drawing(answer, EN)


@pytest.mark.parametrize(
    ("changes", "pointer"),
    [({"biogas_per_day": None}, "/biogas_per_day"), ({"appliances": None, "people_cooked_for": 5}, "/appliances")],
)
def test_unknown_hours_are_refused_at_what_is_missing(changes: Json, pointer: str) -> None:
    question = questions()["gas-use"]
    with pytest.raises(RefusedError) as refused:
        question.write(question.read(like(question.example, **changes)), False, SVG_TYPE)
    assert [(one.pointer, one.code) for one in refused.value.faults] == [(pointer, "hours_needed")]


# ---- figures of sheets --------------------------------------------------------------------------------------------------------------


def container(substrate: int, water: int, urine: int = 0) -> Json:
    volume = {"value": 20, "unit": "L"}
    return {"name": "bucket", "volume": volume, "substrate": substrate, "water": water, "urine": urine}


@pytest.mark.parametrize(("feed", "water", "urine"), [(6, 6, 0), (1, 0, 0), (12, 11, 3), (0, 4, 1)])
def test_buckets_can_be_counted(feed: int, water: int, urine: int) -> None:
    root = read(bucket_figure(container(feed, water, urine), EN))
    assert len(paths(root, "bucket")) == feed + water + urine
    assert all(0 <= x <= WIDTH for path in paths(root, "bucket") for x, _ in path)
    assert texts(root) == ["Dung or feed", str(feed), "Water", str(water), *(["Urine", str(urine)] if urine else [])]


def test_buckets_of_a_row_stand_apart() -> None:
    for count in range(2, MOST_DRAWN + 1):
        row = paths(read(bucket_figure(container(count, 0, 1), EN)), "bucket")[:count]
        assert all(left[-1][0] < right[0][0] for left, right in itertools.pairwise(row))


def test_more_buckets_than_can_be_counted_are_one_bucket_and_a_number() -> None:
    root = read(bucket_figure(container(MOST_DRAWN + 1, 1250), EN))
    assert len(paths(root, "bucket")) == 2
    assert {str(MOST_DRAWN + 1), "1,250"} <= set(texts(root))


def test_buckets_are_told_to_those_who_cannot_see_them() -> None:
    about = next(one.text for one in read(bucket_figure(container(6, 5, 1), EN)).iter(f"{SVG}desc"))
    assert about == "Dung or feed: 6; Water: 5; Urine: 1. bucket, 20 L."


def test_bars_are_as_high_as_the_gas_of_their_month() -> None:
    series = example("farm-plan")["gas_forecast"]["series"]
    root = read(year_figure(example("farm-plan")["gas_forecast"], EN))
    highs = [one["gas"]["high"] for one in series]
    per_pixel = max(highs) / HEIGHT
    bars = [(path[0][1] - path[1][1]) * per_pixel for path in paths(root, "month")]
    assert bars == pytest.approx([one["gas"]["value"] for one in series], abs=0.02 * per_pixel)
    for end, place in (("low", 0), ("high", 1)):
        ends = [
            (bar[0][1] - path[place][1]) * per_pixel for bar, path in zip(paths(root, "month"), paths(root, "month-range"), strict=True)
        ]
        assert ends == pytest.approx([one["gas"][end] for one in series], abs=0.02 * per_pixel)
    assert [text for text in texts(root) if "." in text] == [f"{one['gas']['value']:.1f}" for one in series]


def test_a_year_names_its_months_and_the_years_that_begin() -> None:
    shown = texts(read(year_figure(example("farm-plan")["gas_forecast"], EN)))
    assert [text for text in shown if len(text) == 1] == list("FMAMJJASONDJF")
    assert [text for text in shown if len(text) == 4] == ["2027", "2028"]


def test_much_gas_is_told_without_decimals_and_none_can_be_drawn() -> None:
    rows = [{"day": 0, "gas": {"value": value, "unit": "m3/d"}} for value in (12.34, 0.0)]
    shown = texts(read(year_figure({"first_day": "2027-02-08", "series": rows[:1]}, EN)))
    assert "12" in shown
    assert "0.0" in texts(read(year_figure({"first_day": "2027-02-08", "series": rows[1:]}, EN)))


# ---- other languages ----------------------------------------------------------------------------------------------------------------

QUESTIONS_DRAWN = {
    "sizing": digester_drawing,
    "first-charge": stockpile_drawing,
    "gas-forecast": forecast_drawing,
    "batch-rotation": rotation_drawing,
    "gas-use": hours_drawing,
}


@pytest.mark.parametrize("tag", [tag for tag in LANGUAGES if tag != "en"])
@pytest.mark.parametrize("name", QUESTIONS_DRAWN)
def test_what_is_drawn_is_the_same_in_every_language(name: str, tag: str) -> None:
    """Lines and areas keep their shape; only as many lines of text stand between them as the language takes."""
    told = questions()[name].ask(json.dumps(questions()[name].example).encode(), language=tag)
    root, plain = (read(QUESTIONS_DRAWN[name](answer, LANGUAGES[one])) for answer, one in ((told, tag), (example(name), "en")))
    assert (root.get("lang"), plain.get("lang")) == (tag, "en")
    shapes = [[points_of(one) for one in drawing.iter(f"{SVG}path") if one.get("class")] for drawing in (root, plain)]
    assert [len(one) for one in shapes[0]] == [len(one) for one in shapes[1]]
    for drawn, wanted in zip(*shapes, strict=True):
        assert moved_to_origin(drawn) == pytest.approx(moved_to_origin(wanted), abs=0.03)


def points_of(path: ET.Element) -> list[tuple[float, float]]:
    return points(path.attrib["d"])


def moved_to_origin(path: list[tuple[float, float]]) -> list[float]:
    return [part for x, y in path for part in (x - path[0][0], y - path[0][1])]


@pytest.mark.parametrize("name", QUESTIONS_DRAWN)
def test_no_word_of_a_drawing_escapes_its_language(name: str, tmp_path: Path) -> None:
    """Told in stretched English, no line is as it was in English but the farm's name."""
    tongue = stretched_language(tmp_path)
    question = replace(questions()[name], languages={**LANGUAGES, "sw": tongue})
    told = question.ask(json.dumps(question.example).encode(), language="sw")
    plain, other = (read(QUESTIONS_DRAWN[name](answer, one)) for answer, one in ((example(name), EN), (told, tongue)))
    same = {line for line in said_in(plain) & said_in(other) if re.search(r"[^\W\d_]{4,}", line)}
    assert same == {question.example["name"]}


def said_in(root: ET.Element) -> set[str]:
    about = [one.text or "" for tag in ("title", "desc") for one in root.iter(f"{SVG}{tag}")]
    return {*texts(root), *about}


def test_months_on_an_axis_are_those_of_the_language() -> None:
    marks = {tag: [text for _, text in day_marks(dt.date(2027, 9, 15), 300, LANGUAGES[tag])] for tag in ("es", "fr", "sw")}
    assert marks == {
        "es": ["nov 2027", "ene 2028", "mar", "may", "jul"],
        "fr": ["nov. 2027", "janv. 2028", "mars", "mai", "juil."],
        "sw": ["Nov 2027", "Jan 2028", "Mac", "Mei", "Jul"],
    }


@pytest.mark.parametrize("day", [0, 3, 10, 17, 20])
def test_a_long_mark_of_a_day_is_broken_into_lines_that_stay_on_the_paper(day: float) -> None:
    paper, panel = Paper("x", (WIDTH, 300), Words("a title", "about it"), EN), panel_of(40, 100, 20, [1, 2], from_zero=True)
    upright(paper, panel, day, "the day on which whatever is needed for the first filling lies there at last")
    root = read(paper.svg())
    assert len(texts(root)) > 1
    for one in root.iter(f"{SVG}text"):
        x, wide = float(one.attrib["x"]), len(one.text or "") * float(one.attrib["font-size"]) * 0.54
        start, end = (x, x + wide) if one.get("text-anchor") == "start" else (x - wide, x)
        assert 0 <= start <= end <= WIDTH


def test_a_long_title_and_a_long_label_take_more_lines() -> None:
    words = Words("A title that has far more words than one line of a phone can hold", "about it")
    paper, top = headed("x", words, "Highfold (invented)", 200, EN)
    panel = panel_of(top + 40, 100, 20, [1, 2], from_zero=True)
    draw_axes(paper, panel, "A label above the panel that has more words than there is room for in one line", [])
    lines = list(read(paper.svg()).iter(f"{SVG}text"))
    sizes = [one.attrib["font-size"] for one in lines]
    assert sizes.count("15") == 2
    assert sizes.count("13") == 3
    heights = [float(one.attrib["y"]) for one in lines if one.attrib["font-size"] != "11"]
    assert heights == sorted(set(heights))


# ---- axes ---------------------------------------------------------------------------------------------------------------------------


@given(st.floats(1e-6, 1e9), st.integers(2, 10))
def test_a_step_is_round_and_goes_in_often_enough(span: float, most: int) -> None:
    step = step_of(span, most)
    assert round(step / 10 ** math.floor(math.log10(step) + 1e-9), 6) in (1, 2, 5)
    assert span / step <= most * (1 + 1e-6)
    assert span / step > most / 2.6


@given(st.lists(st.floats(-40, 1e6), min_size=1, max_size=5), st.booleans())
def test_a_panel_holds_its_values(values: list[float], from_zero: bool) -> None:
    values = [abs(one) for one in values] if from_zero else values
    panel = panel_of(10, 100, 5, values, from_zero)
    assert panel.low - 1e-6 <= min(values) <= max(values) <= panel.high * (1 + 1e-9) + 1e-6
    assert panel.low < panel.high
    assert not from_zero or panel.low == 0


def test_a_panel_of_nothing_but_nought_can_be_drawn() -> None:
    assert panel_of(0, 100, 1, [0.0, 0.0], from_zero=True).high > 0


@given(st.dates(dt.date(1990, 1, 1), dt.date(2150, 12, 31)), st.integers(0, 4000))
def test_day_marks_are_few_in_order_and_inside(first: dt.date, days: int) -> None:
    marks = day_marks(first, days, EN)
    assert 1 <= len(marks) <= 7 or days > 100
    assert len(marks) <= 7
    assert all(0 <= day <= days for day, _ in marks)
    assert [day for day, _ in marks] == sorted({day for day, _ in marks})


def test_months_tell_their_year_where_it_is_new() -> None:
    assert [text for _, text in day_marks(dt.date(2027, 9, 15), 300, EN)] == ["Nov 2027", "Jan 2028", "Mar", "May", "Jul"]


def test_pixels_run_left_to_right_and_upwards() -> None:
    panel = Panel(10, 100, 20, 0, 4)
    assert panel.at(0, 4)[1] == 10
    assert panel.at(0, 0)[1] == panel.bottom == 110
    assert panel.at(20, 0)[0] > panel.at(10, 0)[0] > panel.at(0, 0)[0]


# ---- text of a caller ---------------------------------------------------------------------------------------------------------------


@given(st.text())
def test_nothing_that_xml_forbids_is_printed(text: str) -> None:
    assert read(f"<a>{printable(text).replace('&', '').replace('<', '')}</a>") is not None
    assert len(printable(text)) == len(text)


def test_drawings_are_offered_by_their_questions() -> None:
    offering = {name for name, one in questions().items() if SVG_TYPE in one.representations}
    assert offering == {"sizing", "first-charge", "gas-forecast", "batch-rotation", "gas-use"}
    for name in offering:
        question: Any = questions()[name]
        assert read(question.write(question.read(question.example), False, SVG_TYPE)).tag == f"{SVG}svg"


def test_a_sizing_of_the_tests_can_be_drawn() -> None:
    assert "Fixed dome with its tank, " in texts(read(digester_drawing(ask("sizing", SIZING), EN)))[0]
