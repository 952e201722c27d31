"""Reads a drawing back, by nothing but the XML that a browser gets."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from xml.etree import ElementTree as ET

Point = tuple[float, float]
SVG = "{http://www.w3.org/2000/svg}"
GRID = "#999"


def read(svg: str) -> ET.Element:
    """The root of a well-formed drawing."""
    return ET.fromstring(svg)


def paths(root: ET.Element, name: str) -> list[list[Point]]:
    """The points of every line or area that carries a name."""
    return [points(one.attrib["d"]) for one in root.iter(f"{SVG}path") if one.get("class") == name]


def points(path: str) -> list[Point]:
    """The points of a path of straight lines."""
    assert re.fullmatch(r"M[-\d., L]+( Z)?", path), path
    return [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+),(-?[\d.]+)", path)]


def length(path: Sequence[Point]) -> float:
    """From the first point to the last."""
    return math.dist(path[0], path[-1])


def texts(root: ET.Element) -> list[str]:
    """Every line of text in order."""
    return [one.text or "" for one in root.iter(f"{SVG}text")]


def area(path: Sequence[Point]) -> float:
    """Area of a closed path."""
    return abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(path, [*path[1:], path[0]], strict=True))) / 2


def revolved(path: Sequence[Point]) -> float:
    """Volume that the right half of a section sweeps around the axis x = 0, by Pappus on its trapezia."""
    right = [(max(x, 0.0), y) for x, y in path]
    swept = 0.0
    for (x0, y0), (x1, y1) in zip(right, [*right[1:], right[0]], strict=True):
        swept += math.pi / 3 * (x0 * x0 + x0 * x1 + x1 * x1) * (y1 - y0)
    return abs(swept)


def scales(root: ET.Element) -> list[dict[float, float]]:
    """For each panel the numbers at its level lines, by the pixel of the line."""
    found: list[dict[float, float]] = []
    last = math.inf
    for line, label in _levels(root):
        if not found or abs(line[0][1] - last) > 100 or line[0][1] > last:
            found.append({})
        found[-1][line[0][1]] = label
        last = line[0][1]
    return found


def _levels(root: ET.Element) -> Iterator[tuple[list[Point], float]]:
    children = list(root)
    for one, following in pairwise(children):
        if one.get("stroke") == GRID:
            yield points(one.attrib["d"]), float((following.text or "").replace(",", ""))


def value_at(scale: dict[float, float], pixel: float) -> float:
    """The value that a pixel stands for, read off the two outermost level lines as a reader would with a ruler."""
    low, high = max(scale), min(scale)
    return scale[low] + (low - pixel) / (low - high) * (scale[high] - scale[low])
