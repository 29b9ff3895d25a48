"""Canes in true size: an edge of a bank card and a ruler to set the screen by, thicknesses, and shapes. Lengths in mm.

The card is ISO/IEC 7810 ID-1, 85.60 x 53.98 mm, corners of 3.18 mm; its short side fits on a telephone.
"""

from generator.pages.anatomy.cane_section import face
from generator.pages.drawing.geometry import Point
from generator.pages.drawing.shapes import Picture, Shapes, patch, pin, straight

CARD, CORNER = 53.98, 3.18
WIDE = 56
# Thickness, and where its middle stands.
THICK = ((5.0, 5, 6), (6.35, 20, 6), (8.0, 37, 6), (10.0, 7, 19), (12.7, 32, 19), (15.0, 9, 38))


def draw() -> list[Picture]:
    """The card's edge, a ruler, six thicknesses, three shapes of one thickness."""
    return [_card(), _ruler(), _sizes(), _shapes()]


def _card() -> Picture:
    """The upper end of a card that stands upright."""
    left = (WIDE - CARD) / 2
    right, top, low = left + CARD, 1.0, 17.0
    turn = CORNER * 0.3
    corner = [Point(left, top + CORNER), Point(left + turn, top + turn), Point(left + CORNER, top)]
    other = [Point(right - CORNER, top), Point(right - turn, top + turn), Point(right, top + CORNER)]
    edge = patch("paper", [Point(left, low), *corner[:1]], corner, other, [*other[-1:], Point(right, low)])
    return _true("card", 18, [edge])


def _ruler() -> Picture:
    """Five centimetres with their millimetres."""
    left = 3
    ticks = [straight("tick", Point(left + k, 9), Point(left + k, 9 - (6 if k % 10 == 0 else 4.5 if k % 5 == 0 else 3))) for k in range(51)]
    return _true("ruler", 11, [straight("tick", Point(left, 9), Point(left + 50, 9)), *ticks])


def _sizes() -> Picture:
    """Six canes cut across, the thinnest first."""
    shapes: Shapes = []
    pins = []
    for place, (thick, x, y) in enumerate(THICK):
        at = Point(x, y)
        shapes += face(at, thick / 2, thick / 2, thick / 8, thick / 8)
        pins.append(pin(f"d{place + 1}", (x + thick / 2 + 3.4, y - 3), at.moved(thick * 0.3, -thick * 0.18)))
    return _true("sizes", 47, shapes, tuple(pins))


def _shapes() -> Picture:
    """Round, slightly oval and flat."""
    shapes = [*face(Point(7, 8), 4.5, 4.5, 1.1, 1.1), *face(Point(25, 8), 5.3, 3.9, 1.7, 1.0), *face(Point(46, 8), 6.8, 3.0, 3.4, 0.7)]
    pins = (pin("round", (13.6, 3.4), (9.4, 6.2)), pin("oval", (32, 3.4), (28.4, 6.4)), pin("flat", (53, 3.4), (50.4, 6.8)))
    return _true("shapes", 14, shapes, pins)


def _true(name: str, high: float, shapes: Shapes, pins: tuple = ()) -> Picture:
    """A picture that is shown as large as it says."""
    return Picture(name, 0, 0, WIDE, high, tuple(shapes), pins, half=True, true=True)
