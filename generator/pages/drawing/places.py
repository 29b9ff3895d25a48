"""Outlines written as pairs of numbers: the drawings with much detail name their curves as tables."""

from generator.pages.drawing.geometry import Point
from generator.pages.drawing.shapes import Shape, patch, stroke

Curve = tuple[tuple[float, float], ...]


def places(curve: Curve, side: float = 1, x: float = 0, y: float = 0) -> list[Point]:
    """The places of a curve, mirrored for side -1, moved by x and y."""
    return [Point(x + side * across, y + down) for across, down in curve]


def outline(part: str, *curves: Curve, side: float = 1, x: float = 0, y: float = 0) -> Shape:
    """A closed outline of curves with corners between them."""
    return patch(part, *(places(curve, side, x, y) for curve in curves))


def curve_of(part: str, curve: Curve, side: float = 1, x: float = 0, y: float = 0) -> Shape:
    """An open curve."""
    return stroke(part, *places(curve, side, x, y))
