"""Shapes of a drawing, in whole millimetres on the real vine; a small renderer on each side turns them into SVG.

The page's sense of direction: x grows to the right with 0 at the trunk, y grows downward with 0 at the ground, so that what
stands above the ground has a negative y. Nothing here knows of pixels: strokes and colours are the style sheet's, by the
shape's class, and strokes are meant not to scale (`vector-effect: non-scaling-stroke`).

Classes (css): ground, wire, trunk, head, arm, old (wood of two years), cane, spur, renewal, node, open (a node of a renewal spur),
off (wood that goes), cut, break (wood that goes on beyond what is drawn), missing, neighbour, leader, label.
"""

import math
from dataclasses import dataclass

from generator.calculators.say import Say

LINE: str = "line"
CIRCLE: str = "circle"
TEXT: str = "text"
START: str = "start"
MIDDLE: str = "middle"
END: str = "end"


@dataclass(frozen=True)
class Point:
    """A place in mm: x to the right from the trunk, y downward from the ground."""

    x: int
    y: int


@dataclass(frozen=True)
class Shape:
    """One shape. kind `line`: an open polyline through points; `circle`: points[0] and radius; `text`: label at points[0]
    (the baseline), anchored at its start, middle or end. Only texts have a label worth wording: label.id is "" elsewhere."""

    kind: str
    css: str
    points: list[Point]
    radius: int
    anchor: str
    label: Say


@dataclass(frozen=True)
class Drawing:
    """Shapes in the order in which they are painted, the window they lie in (left, top, width, height in mm), the size of
    text in mm, and what the drawing shows in sentences. A drawing without shapes is a drawing that cannot be made yet."""

    shapes: list[Shape]
    left: int
    top: int
    width: int
    height: int
    text_mm: int
    describe: list[Say]


def no_drawing() -> Drawing:
    """The drawing that shows nothing."""
    return Drawing([], 0, 0, 0, 0, 0, [])


def line(css: str, points: list[Point]) -> Shape:
    """An open polyline."""
    return Shape(LINE, css, points, 0, START, Say("", [], []))


def circle(css: str, centre: Point, radius: int) -> Shape:
    """A filled circle."""
    return Shape(CIRCLE, css, [centre], radius, START, Say("", [], []))


def text(anchor: str, at: Point, label: Say) -> Shape:
    """A label with its baseline at a point."""
    return Shape(TEXT, "label", [at], 0, anchor, label)


def length_mm(points: list[Point]) -> float:
    """The length of a polyline in mm."""
    pieces = [piece_mm(points[k], points[k + 1]) for k in range(len(points) - 1)]
    return math.fsum(pieces)


def piece_mm(a: Point, b: Point) -> float:
    """The distance of two points in mm."""
    across = float(b.x - a.x)
    down = float(b.y - a.y)
    return math.sqrt(across * across + down * down)


def along(points: list[Point], distance_mm: float) -> Point:
    """The point of a polyline at a distance from its start; its end when the distance is longer than the polyline."""
    left = distance_mm
    for k in range(len(points) - 1):
        piece = piece_mm(points[k], points[k + 1])
        if left <= piece and piece > 0.0:
            return between(points[k], points[k + 1], left / piece)
        left = left - piece
    return points[len(points) - 1]


def between(a: Point, b: Point, part: float) -> Point:
    """The point at a part (0 to 1) of the way from a to b, in whole mm."""
    return Point(a.x + round(part * float(b.x - a.x)), a.y + round(part * float(b.y - a.y)))


def at_x(points: list[Point], x: int) -> Point:
    """The point of a polyline that runs to the right, or to the left, at an x; its nearer end when x lies outside."""
    for k in range(len(points) - 1):
        a = points[k]
        b = points[k + 1]
        if a.x != b.x and min(a.x, b.x) <= x and x <= max(a.x, b.x):
            return between(a, b, float(x - a.x) / float(b.x - a.x))
    return points[0] if abs(x) < abs(points[0].x) else points[len(points) - 1]


def cut_at(points: list[Point], distance_mm: float) -> list[Point]:
    """The first part of a polyline, up to a distance from its start."""
    kept = [points[0]]
    left = distance_mm
    for k in range(len(points) - 1):
        piece = piece_mm(points[k], points[k + 1])
        if left <= piece:
            kept.append(along(points, distance_mm))
            return kept
        kept.append(points[k + 1])
        left = left - piece
    return kept
