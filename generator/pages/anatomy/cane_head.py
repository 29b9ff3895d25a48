"""A head-trained vine with one, two and four canes and their renewal spurs. y = 0 is the ground, the head stands below the wire."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shapes, blob, pin, stroke
from generator.pages.drawing.vine import WIRE, wire
from generator.pages.drawing.wood import cane, cut_face, limb, spaced

HEAD = -735
UPPER = WIRE - 150
STEM = Spine(Point(0, -480), Point(5, -600), Point(0, HEAD + 10))
NODE = 78


def draw() -> list[Picture]:
    """One cane to one side, two canes to both sides, four on two wires."""
    return [_one(), _two(), _four()]


def _one() -> Picture:
    """One cane that reaches the next vine, and one renewal spur."""
    shapes: Shapes = [*wire(-300, 1100), *_next_head(1000), *renewal(-1), *_laid(1, 900, 10), *head()]
    pins = (
        pin("head", (-180, -590), (-22, HEAD + 14)),
        pin("renewal_spur", (-130, -990), (-26, HEAD - 100)),
        pin("cane", (420, -1010), (430, WIRE - 6)),
        pin("first_node", (150, -980), _way(1, 900, WIRE).at(70)),
        pin("tie", (800, -1000), (886, WIRE)),
        pin("wire", (-210, -790), (-240, WIRE)),
        pin("head_height", (250, -700), (150, (WIRE + HEAD) / 2)),
        pin("old_cut", (120, -600), (50, HEAD + 17)),
        pin("neighbour", (920, -640), (998, HEAD + 20)),
    )
    measure = _measure(150, WIRE, HEAD)
    return Picture("one", -300, -1060, 1400, 580, (*shapes, *measure), pins)


def _two() -> Picture:
    """One cane to each side and two renewal spurs."""
    tips = [*next_tip(-800, -735), *next_tip(800, 735)]
    shapes: Shapes = [*wire(-800, 800), *tips, *renewal(-1), *renewal(1), *_laid(-1, 690, 7), *_laid(1, 690, 7), *head()]
    pins = (
        pin("head", (-170, -590), (-22, HEAD + 14)),
        pin("renewal_spur", (0, -1020), (-26, HEAD - 100), (26, HEAD - 100)),
        pin("cane", (-430, -1010), (-430, WIRE - 6)),
        pin("last_node", (560, -1010), _way(1, 690, WIRE).at(612)),
        pin("tip_gap", (712, -700), (712, WIRE + 2)),
        pin("old_cut", (170, -600), (50, HEAD + 17)),
    )
    return Picture("two", -800, -1070, 1600, 590, tuple(shapes), pins)


def _four() -> Picture:
    """Two canes to each side on two wires, and two renewal spurs."""
    shapes: Shapes = [*wire(-800, 800), *wire(-800, 800, UPPER), *next_tip(-800, -735), *next_tip(800, 735)]
    shapes += [*next_tip(-800, -735, UPPER), *next_tip(800, 735, UPPER), *renewal(-1), *renewal(1)]
    for side in (-1, 1):
        shapes += _laid(side, 690, 8, UPPER) + _laid(side, 690, 7)
    pins = (
        pin("renewal_spur", (0, -1150), (-26, HEAD - 100), (26, HEAD - 100)),
        pin("cane", (-430, -700), (-430, WIRE + 6)),
        pin("upper_cane", (-430, -1150), (-430, UPPER - 6)),
        pin("wire", (752, -1148), (715, UPPER), (715, WIRE)),
        pin("head", (-170, -590), (-22, HEAD + 14)),
    )
    return Picture("four", -800, -1200, 1600, 720, (*shapes, *head()), pins)


def _way(side: int, tip: float, y: float) -> Spine:
    """The way of a cane from the head over to a wire and along it."""
    up = y - HEAD
    bend = [(22, HEAD + 14), (66, HEAD + up * 0.4), (122, HEAD + up * 0.86), (205, y), (tip * 0.6, y + 2), (tip, y)]
    return Spine(*(Point(side * x, at) for x, at in bend))


def _laid(side: int, tip: float, nodes: int, y: float = WIRE) -> Shapes:
    """A cane laid along a wire and tied at its end; it is cut through the node after the last one."""
    way = _way(side, tip, y)
    grown = cane(way, [s for s in spaced(70, NODE, nodes + 3, 0.8) if s < way.length - 30], 19, 14, side=-side)
    ties = [Oval("tie", way.at(s), 6, 17) for s in (230, way.length - 24)]
    return [*grown.shapes, *ties, *cut_face(way, way.length, 14, pith=False)]


def renewal(side: int) -> Shapes:
    """A renewal spur of two nodes, low on the head and near its middle."""
    way = Spine(Point(side * 12, HEAD + 12), Point(side * 22, HEAD - 30), Point(side * 26, HEAD - 90), Point(side * 32, HEAD - 150))
    return [*cane(way, [64, 124], 18, 15, side=-side).shapes, *cut_face(way, way.length, 15, pith=False)]


def head() -> Shapes:
    """The trunk's top: a knob of old wood with the faces where older canes were taken off."""
    around = ((-34, 62), (-46, 30), (-40, -2), (-16, -22), (14, -20), (38, -4), (46, 28), (34, 62))
    knob = blob("old", *(Point(x, HEAD + y) for x, y in around))
    lines = [stroke("bark", Point(x, HEAD + 56), Point(x * 1.3, HEAD + 24), Point(x * 0.8, HEAD - 6)) for x in (-24, -8, 9, 25)]
    old = Spine(Point(30, HEAD + 28), Point(52, HEAD + 16))
    other = Spine(Point(-30, HEAD + 44), Point(-42, HEAD + 40))
    face = [*limb("two", old, 26, 24, 0, 0.03), *cut_face(old, old.length, 23), *cut_face(other, 10, 20)]
    return [*limb("old", STEM, 66, 58, furrows=4), knob, Oval("joined_old", Point(0, HEAD + 60), 27, 12), *lines, *face]


def next_tip(end: float, tip: float, y: float = WIRE) -> Shapes:
    """The end of a neighbour's cane."""
    return limb("neighbour", Spine(Point(end, y), Point((end + tip) / 2, y), Point(tip, y)), 14, 14, 0, 0.02)


def _next_head(x: float) -> Shapes:
    """The next vine in the row."""
    stem = Spine(Point(x, -480), Point(x + 3, -600), Point(x, HEAD))
    way = Spine(Point(x, HEAD), Point(x + 40, HEAD - 60), Point(x + 100, WIRE + 2))
    return [*limb("neighbour", way, 16, 14, 0, 0.02), *limb("neighbour", stem, 60, 64, 0, 0.06)]


def _measure(x: float, high: float, low: float) -> Shapes:
    """How far the head stands below the wire."""
    ends = [stroke("measure", Point(x - 22, y), Point(x + 22, y)) for y in (high, low)]
    return [stroke("measure", Point(x, high), Point(x, low)), *ends]
