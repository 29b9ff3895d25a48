"""Cuts the range of a fact at the boundaries that tables use.

A stretch is a part of the range on which every cell gives the same answer throughout; one point stands for it.
"""

import math
from collections.abc import Iterable
from decimal import Decimal

from generator.calculators.specs import FactSpec
from generator.reading.tables import Cell, Span

FAR = 1e299


def inside(spans: Iterable[Span], x: float) -> bool:
    """True when x lies in one of the spans."""
    return any((s.low < x or (s.low_in and s.low == x)) and (x < s.high or (s.high_in and x == s.high)) for s in spans)


def boundaries(cells: Iterable[Cell]) -> list[float]:
    """The finite ends of all spans, ascending, each once."""
    ends = {end for cell in cells for span in cell.spans for end in (span.low, span.high)}
    return sorted(end for end in ends if abs(end) < FAR)


def stretches(spec: FactSpec, cells: list[Cell]) -> list[list[float]]:
    """The stretches of the fact's range that the cells tell apart, ascending; each as the points tried in it, ascending.

    For choices every choice is a stretch of its own. For whole numbers and dates only whole points are tried.
    """
    if spec.kind in ("choice", "yes_no"):
        return [[float(k)] for k in range(len(spec.choices))]
    found: list[list[float]] = []
    last: list[bool] = []
    for x in _tried(spec, boundaries(cells)):
        pattern = [inside(cell.spans, x) for cell in cells]
        if found and pattern == last:
            found[-1].append(x)
        else:
            found.append([x])
        last = pattern
    return found


def points(spec: FactSpec, cells: list[Cell]) -> list[float]:
    """One point for each stretch: the middle one of those tried."""
    return [tried[len(tried) // 2] for tried in stretches(spec, cells)]


def _tried(spec: FactSpec, ends: list[float]) -> list[float]:
    """Points of the range that meet every stretch: ends of the range, boundaries, and what lies between them."""
    if spec.kind != "number":
        near = {f(end) + step for end in ends for f in (math.floor, math.ceil) for step in (-1, 0, 1)}
        return sorted(float(x) for x in near | {spec.low, spec.high} if spec.low <= x <= spec.high)
    marks = sorted({x for x in [*ends, spec.low, spec.high] if spec.low <= x <= spec.high})
    between = [low + (high - low) / 2 for low, high in zip(marks, marks[1:])]
    return sorted([*marks, *between])


def worth_trying(spec: FactSpec, cells: list[Cell]) -> list[float]:
    """Both sides of every boundary on the fact's step and inside its range, ascending; for choices every choice."""
    if spec.kind in ("choice", "yes_no"):
        return [float(k) for k in range(len(spec.choices))]
    step = Decimal(repr(spec.step)) if spec.kind == "number" else Decimal(1)
    found: set[float] = set()
    for end in boundaries(cells):
        whole = math.floor(Decimal(repr(end)) / step)
        near = [float((whole + k) * step) for k in (-1, 0, 1)]
        found.update(x for x in near if spec.low <= x <= spec.high)
    return sorted(found)
