"""Places and ways in mm: x to the right, y downward, as in the drawing of the plan. Angles in degrees, 0 to the right, 90 up."""

import math
from bisect import bisect_right
from dataclasses import dataclass

STEPS = 10  # straight pieces between two points of a way


@dataclass(frozen=True)
class Point:
    """A place in mm."""

    x: float
    y: float

    def moved(self, x: float, y: float) -> "Point":
        """The place x to the right and y downward of this one."""
        return Point(self.x + x, self.y + y)

    def away(self, angle: float, length: float) -> "Point":
        """The place at a distance in a direction."""
        turn = math.radians(angle)
        return Point(self.x + length * math.cos(turn), self.y - length * math.sin(turn))


def bends(points: list[Point]) -> list[tuple[Point, Point, Point]]:
    """A smooth curve through points (Catmull-Rom) as the Bézier pieces after the first point: two handles and the end of each."""
    pieces = []
    for k in range(len(points) - 1):
        before, a, b, after = points[max(k - 1, 0)], points[k], points[k + 1], points[min(k + 2, len(points) - 1)]
        first = Point(a.x + (b.x - before.x) / 6, a.y + (b.y - before.y) / 6)
        second = Point(b.x - (after.x - a.x) / 6, b.y - (after.y - a.y) / 6)
        pieces.append((first, second, b))
    return pieces


class Spine:
    """A smooth way through points, known by the distance from its start in mm."""

    def __init__(self, *points: Point) -> None:
        """points: at least two, in the order of growth."""
        self.points = [points[0]]
        for start, piece in zip(points, bends(list(points)), strict=False):
            self.points += [_on(start, *piece, step / STEPS) for step in range(1, STEPS + 1)]
        self.lengths = [0.0]
        for a, b in zip(self.points, self.points[1:], strict=False):
            self.lengths.append(self.lengths[-1] + math.hypot(b.x - a.x, b.y - a.y))

    @property
    def length(self) -> float:
        """The whole length."""
        return self.lengths[-1]

    def at(self, distance: float) -> Point:
        """The place at a distance from the start; beyond an end it goes straight on."""
        k = min(max(bisect_right(self.lengths, distance) - 1, 0), len(self.points) - 2)
        part = (distance - self.lengths[k]) / ((self.lengths[k + 1] - self.lengths[k]) or 1.0)
        a, b = self.points[k], self.points[k + 1]
        return Point(a.x + part * (b.x - a.x), a.y + part * (b.y - a.y))

    def heading(self, distance: float) -> float:
        """The direction of the way at a distance from its start."""
        reach = self.length / 200
        a, b = self.at(distance - reach), self.at(distance + reach)
        return math.degrees(math.atan2(a.y - b.y, b.x - a.x))

    def beside(self, distance: float, off: float) -> Point:
        """The place beside the way at a distance from its start; a positive off lies to the left of one who walks it."""
        return self.at(distance).away(self.heading(distance) + 90, off)

    def part(self, start: float, end: float) -> "Spine":
        """The piece of the way between two distances."""
        count = 4
        return Spine(*(self.at(start + (end - start) * k / count) for k in range(count + 1)))


def _on(start: Point, first: Point, second: Point, end: Point, part: float) -> Point:
    """The place on a Bézier piece."""
    a, b, c, d = (1 - part) ** 3, 3 * part * (1 - part) ** 2, 3 * part * part * (1 - part), part**3
    return Point(
        a * start.x + b * first.x + c * second.x + d * end.x,
        a * start.y + b * first.y + c * second.y + d * end.y,
    )
