"""A whole vine in winter, seen from the alley: roots, trunk, arms on the wire, spur positions. y = 0 is the ground, x = 0 the trunk.

Wood is drawn about twice as thick as it is, so that it can be seen at the size of a page. Lengths in mm."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Shapes, blob, stroke
from generator.pages.drawing.wood import Grown, cane, cut_face, limb, spaced

WIRE = -850
HEAD = -800
GRAFT = -95
STEP = 58  # an internode as drawn
TRUNK = Spine(Point(0, 95), Point(-7, -200), Point(9, -480), Point(0, HEAD))
ROOTS = (
    ((-14, 60), (-90, 120), (-230, 150), (-420, 210)),
    ((14, 60), (110, 110), (260, 170), (430, 190)),
    ((-10, 80), (-60, 180), (-150, 270), (-210, 370)),
    ((10, 80), (70, 190), (130, 280), (220, 360)),
    ((0, 80), (8, 190), (-14, 300), (6, 400)),
)
ROOTLETS = (((-150, 138), (-230, 230), (-320, 270)), ((150, 130), (230, 240), (330, 300)), ((-2, 260), (50, 330), (70, 400)))


def ground(left: float, right: float, y: float = 0) -> Shapes:
    """The surface, with a few strokes of soil below it."""
    step = 60
    count = int((right - left) / step)
    surface = stroke("ground", *(Point(left + k * step, y + (5 if k % 2 else -4)) for k in range(count + 2)))
    marks = [(left + 30 + k * 74, y + 22 + 17 * (k * 7 % 4)) for k in range(int((right - left) / 74))]
    return [surface, *(stroke("soil", Point(x, low), Point(x + 26, low + 3)) for x, low in marks)]


def roots() -> Shapes:
    """Five roots with finer ones."""
    fine = [limb("root", Spine(*(Point(*at) for at in way)), 11, 3, 0) for way in ROOTLETS]
    coarse = [limb("root", Spine(*(Point(*at) for at in way)), 40, 7, 1, seed=k) for k, way in enumerate(ROOTS)]
    return [shape for group in (*fine, *coarse) for shape in group]


def trunk() -> Shapes:
    """The trunk with its graft union, from the roots to the head."""
    around = ((-58, 0), (-42, -32), (34, -34), (56, -4), (44, 28), (-40, 30))
    union = blob("old", *(Point(x, GRAFT + y) for x, y in around))
    lines = [stroke("bark", Point(x, GRAFT - 22), Point(x * 1.35, GRAFT), Point(x, GRAFT + 20)) for x in (-28, -8, 12, 32)]
    return [*limb("old", TRUNK, 80, 60, furrows=4), union, *lines, Oval("joined_old", Point(0, 92), 34, 12)]


def arm(side: int, tip: float = 660) -> Spine:
    """The way of an arm, to the right (1) or left (-1)."""
    return Spine(*(Point(side * x, y) for x, y in ((0, HEAD + 30), (50, WIRE + 34), (130, WIRE + 2), (300, WIRE), (tip, WIRE))))


def arms(*sides: int) -> Shapes:
    """Arms on the wire, and the head where they begin."""
    shapes: Shapes = []
    for side in sides:
        shapes += limb("old", arm(side), 54, 36, furrows=3, seed=side + 1)
    head = Oval("joined_old", Point(0, HEAD + 6), 40, 30)
    return [*shapes, head]


def wire(left: float, right: float, y: float = WIRE) -> Shapes:
    """A wire."""
    return [stroke("wire", Point(left, y), Point(right, y))]


def neighbours(left: float, right: float, tip: float, y: float = WIRE) -> Shapes:
    """The ends of the neighbours' arms on both sides."""
    shapes = limb("neighbour", Spine(Point(left, y), Point(left + 40, y - 2), Point(-tip, y)), 34, 30, 0)
    return shapes + limb("neighbour", Spine(Point(right, y), Point(right - 40, y - 2), Point(tip, y)), 34, 30, 0)


def stub(x: float, y: float = WIRE) -> Spine:
    """Last winter's spur on an arm."""
    return Spine(Point(x, y - 8), Point(x + 2, y - 34), Point(x + 7, y - 62))


def found_cane(x: float, upper: bool, high: float, y: float = WIRE, part: str = "cane") -> Grown:
    """One of the two canes on last winter's spur, as it is found: the lower leans left, the upper right."""
    two, side = stub(x, y), 1 if upper else -1
    base = two.at(48 if upper else 24)
    way = Spine(base, base.moved(side * 22, -40), base.moved(side * 30, -0.45 * high), base.moved(side * 34, -high))
    nodes = [s for s in spaced(32, STEP, 20, 0.7) if s < way.length - 20]
    return cane(way, nodes, 15, 6, side=side, part=part)


def full_position(x: float, high: float = 440, y: float = WIRE) -> Shapes:
    """A spur position as it is found in winter: two canes on last winter's spur."""
    canes = found_cane(x, False, high, y).shapes + found_cane(x, True, high * 0.96, y).shapes
    return [*canes, *limb("two", stub(x, y), 22, 19, 0, 0.04)]


def gone_position(x: float, high: float, y: float = WIRE) -> Shapes:
    """What is cut away at a spur position, as broken lines."""
    canes = found_cane(x, False, high, y, "gone").shapes + found_cane(x, True, high * 0.96, y, "gone").shapes
    return [*canes, *limb("gone", stub(x, y), 22, 19, 0, 0.04)]


def pruned_position(x: float, y: float = WIRE, nodes: int = 2) -> Shapes:
    """A spur position after the cut: the lower cane, cut to two nodes."""
    two = stub(x, y).part(0, 36)
    base = two.at(22)
    way = Spine(base, base.moved(-16, -30), base.moved(-24, -42 - 50 * nodes))
    shapes = [*cane(way, [34 + 48 * k for k in range(nodes)], 16, 14).shapes, *cut_face(way, way.length, 14, pith=False)]
    return [*shapes, *limb("two", two, 22, 20, 0, 0.04), *cut_face(two, two.length, 19, pith=False)]
