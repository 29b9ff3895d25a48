"""What the anatomy drawings are made of: outlines named after the part of the vine that they show, pins for numbers, pictures.

Measures are mm of the real thing. Colours and line weights are the style sheet's (assets/look.css), by the name of the part.
"""

from dataclasses import dataclass

from generator.pages.drawing.geometry import Point

FULL, HALF = 360, 180  # widths of pictures in units of the picture, in which line weights and numbers are measured


@dataclass(frozen=True)
class Shape:
    """An outline: each run of points is drawn as a smooth curve, runs are joined by straight lines.

    closed: painted inside. loop: the one run goes round without a corner."""

    part: str
    runs: tuple[tuple[Point, ...], ...]
    closed: bool = False
    loop: bool = False


@dataclass(frozen=True)
class Oval:
    """An ellipse: its middle, half its width and height in mm, and by how many degrees it is turned anticlockwise."""

    part: str
    middle: Point
    across: float
    down: float
    turn: float = 0.0


@dataclass(frozen=True)
class Pin:
    """Where the number of a mark stands (`disc`) and the places on the drawing that it names; a line leads to each."""

    mark: str
    disc: Point
    places: tuple[Point, ...]


@dataclass(frozen=True)
class Picture:
    """A picture: shapes in the order of painting, pins, and the window they lie in (mm). half: two of them stand side by side. true: it is
    shown as large as it is, on paper, and on a screen that was set."""

    id: str
    left: float
    top: float
    width: float
    height: float
    shapes: tuple[Shape | Oval, ...]
    pins: tuple[Pin, ...]
    half: bool = False
    true: bool = False

    @property
    def units(self) -> int:
        """The width of the picture in units."""
        return HALF if self.half else FULL


Shapes = list[Shape | Oval]


def stroke(part: str, *points: Point) -> Shape:
    """An open smooth line."""
    return Shape(part, (points,))


def straight(part: str, *points: Point) -> Shape:
    """An open line with corners."""
    return Shape(part, tuple((point,) for point in points))


def patch(part: str, *runs: list[Point]) -> Shape:
    """A closed outline of smooth runs with corners between them."""
    return Shape(part, tuple(tuple(run) for run in runs), closed=True)


def blob(part: str, *points: Point) -> Shape:
    """A closed smooth outline without corners."""
    return Shape(part, (points,), closed=True, loop=True)


def pin(mark: str, disc: tuple[float, float], *places: Point | tuple[float, float]) -> Pin:
    """The number of a mark at a place, with lines to what it names."""
    named = tuple(place if isinstance(place, Point) else Point(*place) for place in places)
    return Pin(mark, Point(*disc), named)
