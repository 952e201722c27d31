"""Whole containers of feed, water and urine of one feeding as buckets to count, as an SVG drawing for a sheet."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from kilisho.messages import Language
from kilisho.views.paper import WIDTH, Paper, Point, Words
from kilisho.views.sections import arc

# Printed at two thirds of a page, the smallest type has 11 pt and the numbers 22.
LABEL, COUNT = 12, 24
HEIGHT, PITCH = 62, 30
# From the left edge of a group to its first bucket; more digits of a number take more.
FIRST, DIGIT = 12, 14
# More than so many would be too small to count: one stands for all.
MOST_DRAWN = 12
FILLS = {"substrate": "slurry", "water": "water", "urine": "band"}
Answer = Mapping[str, Any]


def bucket_figure(container: Answer, language: Language) -> str:
    """A group for each kind: its number large, its buckets, and what they hold; urine only where there is any."""
    labels = {
        "substrate": language.say("sheet-dung-or-feed"),
        "water": language.say("sheet-water"),
        "urine": language.say("sheet-urine"),
    }
    groups = [(kind, container.get(kind, 0), label) for kind, label in labels.items() if kind != "urine" or container.get(kind)]
    told = "; ".join(language.say("sheet-pair", name=label, value=language.number(count)) for _, count, label in groups)
    about = f"{told}. {language.say('sheet-container-of', name=container['name'], volume=language.typical(container['volume']))}."
    paper = Paper("buckets", (WIDTH, HEIGHT), Words(language.say("drawing-buckets-title"), about), language)
    for place, (kind, count, label) in enumerate(groups):
        _group(paper, (WIDTH / len(groups) * place, WIDTH / len(groups)), count, label, FILLS[kind])
    return paper.svg()


def _group(paper: Paper, room: tuple[float, float], count: int, label: str, fill: str) -> None:
    (left, wide), bottom, shown = room, HEIGHT - 3, paper.language.number(count, 0)
    first = left + FIRST + DIGIT * len(shown)
    paper.text((left, LABEL + 2), label, LABEL)
    paper.text((first - FIRST / 2, bottom - 3), shown, COUNT, "end", "bold")
    drawn = count if count <= MOST_DRAWN else 1
    pitch = min(PITCH, (left + wide - first - FIRST / 2) / max(drawn, 1))
    for place in range(drawn):
        _bucket(paper, (first + pitch * place, bottom), 0.86 * pitch, fill)


def _bucket(paper: Paper, corner: Point, width: float, fill: str) -> None:
    """A bucket seen from the side, full to the brim, its handle up."""
    (x, y), foot, height = corner, 0.12 * width, 0.95 * width
    body = [(x, y - height), (x + foot, y), (x + width - foot, y), (x + width, y - height)]
    paper.area(body, fill, "bucket")
    paper.line([*body, body[0]], "line")
    handle = arc((0, 0), width / 2, 0, math.pi)
    paper.line([(x + width / 2 + dx, y - height - 0.45 * dy) for dx, dy in handle], "thin")
