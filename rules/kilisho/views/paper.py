"""A drawing as SVG: black on white, in patterns and dashes instead of colours, without style, script or anything from outside.

Lengths are CSS pixels on a phone of 390 px, where the smallest text has 11 px; shown wider, a drawing grows as a whole.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import Any, NamedTuple

from kilisho.messages import Language
from kilisho.views.printable import printable

SVG = "image/svg+xml"
WIDTH = 390
MARGIN = 12
TEXT, SMALL, HEAD = 13, 11, 15
# Mean width of a letter of a sans-serif font over its size; what is wrapped by it fits with room to spare.
LETTER = 0.54
LINE = 16
Point = tuple[float, float]
# Strokes by their use: a drawing in black and white tells its lines apart by weight and dash.
STROKES: Mapping[str, Mapping[str, Any]] = MappingProxyType(
    {
        "wall": {"stroke": "#000", "stroke_width": 2.5},
        "line": {"stroke": "#000", "stroke_width": 1.5},
        "thin": {"stroke": "#000", "stroke_width": 0.8},
        "grid": {"stroke": "#999", "stroke_width": 0.6},
        "dashed": {"stroke": "#000", "stroke_width": 1.2, "stroke_dasharray": "5 3"},
        "dotted": {"stroke": "#000", "stroke_width": 1.5, "stroke_dasharray": "1.5 3"},
    }
)
# Fills by their use: background grey, and a path drawn again and again on a square of eight pixels.
FILLS: Mapping[str, tuple[str, str]] = MappingProxyType(
    {
        "slurry": ("#d9d9d9", "M0,2 H5 M4,6 H8"),
        "gas": ("#fff", "M1,1 h1 M5,5 h1"),
        "band": ("#f2f2f2", "M0,8 L8,0"),
        "water": ("#fff", "M0,4 L2,2 L4,4 L6,6 L8,4"),
    }
)


class Words(NamedTuple):
    """What a drawing is called, and what it shows for those who cannot see it."""

    title: str
    about: str


class Paper:
    """A white sheet of a fixed size on which one draws; ``prefix`` keeps its ids apart from those of other drawings on a page."""

    def __init__(self, prefix: str, size: tuple[int, float], words: Words, language: Language) -> None:
        import drawsvg

        self._library, self.language = drawsvg, language
        self.width, self.height, (title, about) = size[0], round(size[1]), words
        labels = f"{prefix}-title {prefix}-about"
        names = {"preserveAspectRatio": "xMidYMin meet", "role": "img", "aria-labelledby": labels, "lang": language.tag}
        self._drawing = drawsvg.Drawing(self.width, self.height, id_prefix=f"{prefix}-", font_family="sans-serif", **names)
        # As wide as whatever shows it: a phone gives a bare drawing a page of 980 px and shrinks that.
        self._drawing.set_render_size("100%", "100%")
        self._drawing.append(drawsvg.Title(printable(title), id=f"{prefix}-title"))
        self._drawing.append(_description(printable(about), f"{prefix}-about"))
        self._drawing.append(drawsvg.Rectangle(0, 0, self.width, self.height, fill="#fff"))
        self._fills = {name: self._pattern(*fill) for name, fill in FILLS.items()}

    def _pattern(self, ground: str, marks: str) -> Any:
        pattern = self._library.Pattern(8, 8)
        pattern.append(self._library.Rectangle(0, 0, 8, 8, fill=ground))
        pattern.append(self._library.Path(marks, stroke="#555", stroke_width=0.9, fill="none"))
        return pattern

    def line(self, points: Iterable[Point], stroke: str, name: str | None = None) -> None:
        """An open line through ``points``; ``name`` marks it for whoever reads the drawing by program."""
        marked = {} if name is None else {"class": name}
        self._drawing.append(self._library.Path(_path(points), fill="none", **STROKES[stroke], **marked))

    def area(self, points: Iterable[Point], fill: str, name: str | None = None) -> None:
        """A closed area without an outline, in one of :data:`FILLS` or a plain colour."""
        marked = {} if name is None else {"class": name}
        self._drawing.append(self._library.Path(f"{_path(points)} Z", fill=self._fills.get(fill, fill), **marked))

    def text(self, at: Point, text: str, size: int = TEXT, anchor: str = "start", weight: str = "normal") -> None:
        """One line of text; ``at`` is on its base line. It has a white edge, so that it stays readable on any fill."""
        edge = {"stroke": "#fff", "stroke_width": 3, "paint_order": "stroke", "stroke_linejoin": "round"}
        x, y = (_rounded(length) for length in at)
        self._drawing.append(self._library.Text(printable(text), size, x, y, text_anchor=anchor, font_weight=weight, fill="#000", **edge))

    def lines(self, top: float, texts: Sequence[str], size: int = TEXT) -> None:
        """Lines of text one below the other, from the left margin."""
        for place, text in enumerate(texts):
            self.text((MARGIN, top + LINE * (place + 0.75)), text, size)

    def svg(self) -> str:
        """The finished drawing as an SVG document, which may also stand inside an HTML page."""
        written: str = self._drawing.as_svg(header="", skip_js=True, skip_css=True)
        return f"{written}\n"


def headed(prefix: str, words: Words, name: str | None, height: float, language: Language) -> tuple[Paper, float]:
    """A paper with a heading and the farm's name (its first two lines), and where the room of ``height`` below them begins."""
    titles, names = wrapped(words.title, HEAD), wrapped(name)[:2] if name else []
    below = MARGIN + HEAD + LINE * (len(titles) - 1)
    paper = Paper(prefix, (WIDTH, below + LINE * (len(names) + 0.5) + height + MARGIN), words, language)
    for place, title in enumerate(titles):
        paper.text((MARGIN, MARGIN + HEAD - 2 + LINE * place), title, HEAD, weight="bold")
    paper.lines(below + 2, names)
    return paper, below + LINE * (len(names) + 0.5)


def _description(text: str, id_: str) -> Any:
    """The <desc> that a screen reader tells; the library has no class for it."""
    from drawsvg.elements import Title

    class Description(Title):  # type: ignore[misc]
        TAG_NAME = "desc"

    return Description(text, id=id_)


def wrapped(text: str, size: int = TEXT, width: float = WIDTH - 2 * MARGIN) -> list[str]:
    """``text`` in lines that are no wider than ``width``."""
    return textwrap.wrap(printable(text), int(width / (LETTER * size)), break_long_words=True) or [""]


def _path(points: Iterable[Point]) -> str:
    return "M" + " L".join(f"{_rounded(x)},{_rounded(y)}" for x, y in points)


def _rounded(length: float) -> float:
    """To a hundredth of a pixel: finer than any screen, and the same text on every machine."""
    return round(length, 2) + 0.0
