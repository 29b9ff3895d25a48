"""Canes cut across: round, oval and flat, poorly ripened, dead, and scratched. Lengths in mm."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Pin, Shapes, blob, pin, stroke
from generator.pages.drawing.wood import cane

MIDDLE = Point(0, 0)


def draw() -> list[Picture]:
    """Six small pictures."""
    round_pins = (
        pin("bark", (6.2, -6.4), (3.2, -3.15)),
        pin("green_layer", (-6.4, -6.2), (-2.9, -2.85)),
        pin("wood", (-6.6, 5.6), (-1.9, 1.9)),
        pin("pith", (6.6, 5.8), (0.4, 0.4)),
    )
    return [
        _cut("round", 4.6, 4.6, 1.15, 1.15, round_pins),
        _cut("oval", 5.4, 4.0, 1.7, 1.0, (pin("oval", (6.4, -6.4), (3.9, -2.75)),)),
        _cut("flat", 6.8, 3.0, 3.4, 0.7, (pin("flat", (6.4, -6.4), (3.9, -2.45)),)),
        _cut("unripe", 4.2, 4.2, 2.5, 2.5, (pin("wide_pith", (6.4, -6.2), (1.2, -1.2)),), "soft_pith"),
        _cut("dead", 4.5, 4.5, 1.2, 1.2, (pin("dead_wood", (6.4, -6.2), (2.1, -2.1)),), alive=False),
        _scratched(),
    ]


def _cut(
    name: str,
    across: float,
    down: float,
    pith_across: float,
    pith_down: float,
    pins: tuple[Pin, ...],
    pith: str = "heart",
    alive: bool = True,
) -> Picture:
    """A picture of one face."""
    shapes = face(MIDDLE, across, down, pith_across, pith_down, pith, alive)
    if not alive:
        shapes.append(stroke("crack", Point(-3, -1), Point(-1.4, 0.4), Point(-0.2, 2.8)))
        shapes.append(stroke("crack", Point(1.3, -2.9), Point(2, -0.6), Point(3, 0.6)))
    return Picture(name, -8, -8, 16, 16, tuple(shapes), pins, half=True)


def face(at: Point, across: float, down: float, pith_across: float, pith_down: float, pith: str = "heart", alive: bool = True) -> Shapes:
    """A cane cut across: bark, green layer, wood with its rays, pith; half the width and height of the cane and of its pith."""
    shapes: Shapes = [Oval("rind", at, across, down), Oval("green" if alive else "dead", at, across - 0.42, down - 0.42)]
    shapes += [Oval("wood" if alive else "brown", at, across - 0.85, down - 0.85)]
    for k in range(0, 360, 15):
        way = MIDDLE.away(k, 1)
        inner = at.moved(way.x * (pith_across + 0.25), way.y * (pith_down + 0.25))
        shapes.append(stroke("ray", inner, at.moved(way.x * (across - 1.05), way.y * (down - 1.05))))
    return [*shapes, Oval(pith, at, pith_across, pith_down)]


def _scratched() -> Picture:
    """A living cane from the side, scratched with the nail at its second node."""
    way = Spine(Point(-10, 3.6), Point(0, 0.2), Point(10, -2.6))
    grown = cane(way, [8.6], 5.6, 5.2, bud=5)
    around = ((11.6, 0.5), (13.4, 1.2), (16.4, 1), (18, 0.3), (15.8, -0.4), (13, -0.3))
    mark = blob("green", *(way.beside(s, off) for s, off in around))
    fine = [stroke("hair", way.beside(s, off), way.beside(s + 4, off)) for s, off in ((1.5, 1), (3, -1.2), (13, -1.6), (1, -0.2))]
    pins = (pin("scratch", (5.8, -6.4), way.beside(15, 0.5)),)
    return Picture("scratched", -8, -8, 16, 16, (*grown.shapes, *fine, mark), pins, half=True)
