"""The planned digester in section, to scale, as an SVG drawing."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from kilisho.messages import Amount, Language, say
from kilisho.views.paper import LETTER, LINE, MARGIN, SMALL, TEXT, WIDTH, Paper, Point, Words, headed, wrapped
from kilisho.views.sections import Dimension, Path, Section, arc, section_of

PERSON = 1.7
PERSON_WIDTH = 0.6
MOST_HEIGHT = 380
# Room for one step aside of an upright and of a level dimension line, with its number.
UPRIGHT_STEP, LEVEL_STEP = 52, 20
LEGEND_STEP = 96
TICK = 4
SCALE_BARS = (0.5, 1, 2, 5, 10, 20)
VOLUMES = {
    "total_volume": say("drawing-section-total-volume"),
    "working_volume": say("drawing-section-working-volume"),
    "gas_storage_volume": say("drawing-section-gas-storage-volume"),
}


@dataclass(frozen=True)
class Scale:
    """Where a point in metres lies on the paper: ``per_metre`` pixels a metre, the point (0, 0) at ``origin``."""

    per_metre: float
    origin: Point

    def on_paper(self, point: Point) -> Point:
        """The pixel of a point in metres."""
        return self.origin[0] + point[0] * self.per_metre, self.origin[1] - point[1] * self.per_metre

    def path(self, points: Path) -> list[Point]:
        """The pixels of a path in metres."""
        return [self.on_paper(point) for point in points]


def digester_drawing(answer: Mapping[str, Any], language: Language) -> str:
    """An answer's ``dimensions`` as a section with levels, dimension lines in metres, scale bar and a person of 1.7 m for scale."""
    dimensions = answer["dimensions"]
    section = section_of(dimensions)
    title = language.say("drawing-section-title", shape=section.title, volume=language.typical(answer["total_volume"]))
    words = Words(title, _about(section, dimensions, language))
    notes, scale = _notes(section, dimensions, language), _scale_of(section)
    height = scale.origin[1] + 2 * LEVEL_STEP + 4 * LINE + LINE * len(notes)
    paper, top = headed("section", words, answer.get("name"), height, language)
    scale = replace(scale, origin=(scale.origin[0], scale.origin[1] + top))
    _section(paper, scale, section)
    below = scale.origin[1] + 2 * LEVEL_STEP + LINE
    _scale_bar(paper, scale, below)
    _legend(paper, below + 1.5 * LINE, (language.say("drawing-section-slurry"), language.say("drawing-section-gas")))
    paper.lines(below + 3 * LINE, notes)
    return paper.svg()


def _section(paper: Paper, scale: Scale, section: Section) -> None:
    """The digester itself with its dimension lines, and the person beside it."""
    _fill(paper, scale, section)
    for dimension in section.dimensions:
        _measure(paper, scale, dimension)
    _person(paper, scale, section)


def _about(section: Section, dimensions: Mapping[str, Any], language: Language) -> str:
    lengths = "; ".join(_length(one, language) for one in section.dimensions)
    say = language.say
    return f"{say('drawing-section-about')} {lengths}. {say('drawing-section-no-structural-design')} {dimensions['statement']}"


def _length(dimension: Dimension, language: Language) -> str:
    measure = language.amount(Amount(dimension.value, "m"))
    return language.say("drawing-section-measure", name=dimension.name, measure=measure)


def _scale_of(section: Section) -> Scale:
    """As large as the width allows below a heading that ends at 0, with room for the person on the left and for the numbers."""
    (left, bottom), (right, top) = section.extent
    asides = [one.aside * (one.start[0] == one.end[0]) for one in section.dimensions]
    before, after = UPRIGHT_STEP * -min(0, *asides), UPRIGHT_STEP * max(0, *asides)
    tall = max(top, PERSON) - bottom
    per_metre = min((WIDTH - 2 * MARGIN - before - after) / (right - left + PERSON_WIDTH), MOST_HEIGHT / tall)
    wide = before + after + (right - left + PERSON_WIDTH) * per_metre
    start = (WIDTH - wide) / 2 + before + PERSON_WIDTH * per_metre
    return Scale(per_metre, (start - left * per_metre, 2 * LEVEL_STEP + max(top, PERSON) * per_metre))


def _fill(paper: Paper, scale: Scale, section: Section) -> None:
    for name, paths in (("slurry", section.slurry), ("gas", section.gas)):
        for path in paths:
            paper.area(scale.path(path), name, name)
    for stroke, paths in (("dashed", section.dashed), ("wall", section.walls)):
        for path in paths:
            paper.line(scale.path(path), stroke, stroke)
    for path in section.slurry:
        level = max(y for _, y in path)
        paper.line(scale.path(tuple(point for point in path if level - point[1] < 1e-9)), "line", "level")


def _measure(paper: Paper, scale: Scale, dimension: Dimension) -> None:
    """A dimension line with ticks at its ends and its number in metres beside it."""
    upright = dimension.start[0] == dimension.end[0]
    (x0, y0), (x1, y1) = scale.on_paper(dimension.start), scale.on_paper(dimension.end)
    if upright:
        x = x0 + dimension.aside * 0.25 * UPRIGHT_STEP
        line, across = [(x, y0), (x, y1)], [[(x - TICK, y), (x + TICK, y)] for y in (y0, y1)]
        at, anchor = (x - TICK if dimension.aside < 0 else x + TICK, (y0 + y1) / 2 + TICK), "end" if dimension.aside < 0 else "start"
    else:
        y = y0 - dimension.aside * 0.6 * LEVEL_STEP
        line, across = [(x0, y), (x1, y)], [[(x, y - TICK), (x, y + TICK)] for x in (x0, x1)]
        at, anchor = ((x0 + x1) / 2, y + (TEXT if dimension.aside < 0 else -TICK)), "middle"
    paper.line(line, "thin", "dimension")
    for tick in across:
        paper.line(tick, "thin")
    paper.text(at, paper.language.number(dimension.value), anchor=anchor)


def _person(paper: Paper, scale: Scale, section: Section) -> None:
    """The outline of a person, left of everything and on the floor's height, for scale only."""
    (left, bottom), _ = section.extent
    asides = [one.aside for one in section.dimensions if one.start[0] == one.end[0]]
    shift = UPRIGHT_STEP * -min(0, *asides) / scale.per_metre
    x = left - shift - PERSON_WIDTH / 2
    for path in _figure(x, bottom):
        paper.line(scale.path(path), "line", "person")


def _figure(x: float, floor: float) -> Iterable[Path]:
    """Head and body of a person of :data:`PERSON` metres."""
    half = [(0, 0.75), (0.03, 0), (0.13, 0), (0.15, 0.78), (0.24, 0.78), (0.24, 1.32), (0.18, 1.41), (0.05, 1.43)]
    yield tuple((x + dx, floor + dy) for dx, dy in [*half, *((-dx, dy) for dx, dy in reversed(half))])
    yield arc((x, floor + PERSON - 0.12), 0.12, 0, 2 * math.pi)


def _scale_bar(paper: Paper, scale: Scale, top: float) -> None:
    """A bar of a round length, a third of the paper at most."""
    fitting = [length for length in SCALE_BARS if length * scale.per_metre <= WIDTH / 3]
    length = fitting[-1] if fitting else SCALE_BARS[0]
    end = MARGIN + length * scale.per_metre
    paper.line([(MARGIN, top - TICK), (MARGIN, top), (end, top), (end, top - TICK)], "line", "scale-bar")
    paper.text((end + 2 * TICK, top), paper.language.say("drawing-section-scale", length=Amount(length, "m")), SMALL)


def _legend(paper: Paper, top: float, labels: Sequence[str]) -> None:
    x = float(MARGIN)
    for name, label in zip(("slurry", "gas"), labels, strict=True):
        paper.area([(x, top), (x + 24, top), (x + 24, top + TEXT), (x, top + TEXT)], name)
        paper.line([(x, top), (x + 24, top), (x + 24, top + TEXT), (x, top + TEXT), (x, top)], "thin")
        paper.text((x + 30, top + TEXT - 2), label)
        x += max(LEGEND_STEP, 48 + len(label) * LETTER * TEXT)


def _notes(section: Section, dimensions: Mapping[str, Any], language: Language) -> list[str]:
    told, name_it = dimensions["reproduced"], partial(language.say, "drawing-section-measure")
    volumes = [name_it(name=label, measure=language.typical(told[name])) for name, label in VOLUMES.items()]
    lengths = [_length(one, language) for one in section.dimensions]
    figure = language.say("drawing-section-person", height=Amount(PERSON, "m"))
    remarks = [language.tell(one)[0] for one in section.remarks]
    texts = [*remarks, figure, language.say("drawing-section-no-structural-design"), dimensions["statement"]]
    return [*(line for text in (*volumes, *lengths) for line in wrapped(text)), "", *(line for text in texts for line in wrapped(text))]
