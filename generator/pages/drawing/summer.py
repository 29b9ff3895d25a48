"""What grows from the wood in spring and summer: shoots, leaves, bunches. Lengths in mm."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Shape, Shapes, patch, stroke

HALF = ((0.0, 0.06), (-0.12, 0.3), (0.16, 0.3), (0.38, 0.56), (0.46, 0.28), (0.74, 0.3))
LOBES = (*HALF, (1.0, 0.0), *((along, -across) for along, across in HALF[::-1]))


FEWER = ((0.0, 0.0), (0.3, 0.5), (0.55, 0.28), (1.0, 0.0), (0.55, -0.28), (0.3, -0.5))


def leaf(foot: Point, angle: float, size: float, fine: bool = True) -> Shape:
    """A vine leaf, pointing in a direction from its foot; without its lobes when it is too small for them."""
    lobes = LOBES if fine else FEWER
    return patch("leaf", *([foot.away(angle, size * along).away(angle + 90, size * across)] for along, across in lobes))


def shoot(base: Point, angle: float, long: float, thick: float, size: float, sway: float = 6, fine: bool = True) -> Shapes:
    """A green shoot with a leaf at each node, left and right in turn, smaller to the tip."""
    way = Spine(base, base.away(angle + sway, long * 0.4), base.away(angle, long))
    count = max(1, round(long / (size * 0.62)))
    shapes: Shapes = []
    for k in range(count):
        side, part = 1 if k % 2 else -1, (k + 1) / (count + 0.6)
        shapes.append(leaf(way.at(way.length * part), way.heading(way.length * part) + side * 58, size * (1 - 0.45 * part), fine))
    tip = leaf(way.at(way.length), way.heading(way.length), size * 0.42, fine)
    edges = [[way.beside(way.length * part, side * thick * (0.5 - 0.2 * part)) for part in (0, 0.4, 1)] for side in (1, -1)]
    return [patch("stem", edges[0], edges[1][::-1]), *shapes, tip]


def bunch(top: Point, size: float) -> Shapes:
    """A bunch hanging from a place."""
    rows = ((0.18, (-0.26, 0.0, 0.26)), (0.4, (-0.15, 0.14)), (0.62, (0.0,)))
    berries = [Oval("bunch", top.moved(size * x, size * y), size * 0.155, size * 0.155) for y, row in rows for x in row]
    return [stroke("stalk", top.moved(0, -size * 0.12), top.moved(0, size * 0.2)), *berries]
