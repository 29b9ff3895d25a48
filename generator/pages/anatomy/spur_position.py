"""A spur position before the cut, after it, and after years in which the upper cane was kept. y = 0 is the middle of the arm."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Picture, Shapes, pin, stroke
from generator.pages.drawing.wood import blend, cane, cut_face, cut_line, limb, teardrop

ARM = Spine(Point(-190, 3), Point(-60, -2), Point(60, 2), Point(190, -2))
KNOB = Spine(Point(0, 2), Point(-2, -24), Point(0, -44))
TWO_YEAR = Spine(Point(0, -34), Point(3, -66), Point(11, -98), Point(22, -128))
LOWER = Spine(Point(3, -64), Point(-18, -84), Point(-44, -126), Point(-58, -190), Point(-66, -262), Point(-70, -380))
UPPER = Spine(Point(12, -100), Point(32, -122), Point(48, -168), Point(56, -230), Point(60, -290), Point(62, -380))
NODES = [12, 46, 100, 160, 222]
LAST, OVER = 100, 118  # the second count node of the lower cane, and the cut over it
STUB = 56  # where the two-year wood is cut, over the lower cane


def draw() -> list[Picture]:
    """Before, after, and after many years."""
    return [before(), after(), crept()]


def before() -> Picture:
    """Two canes on last winter's spur, and where the two cuts go."""
    shapes: Shapes = [*cane(UPPER, NODES, 11, 8, side=-1).shapes, *cane(LOWER, NODES, 11, 8).shapes, *_old_end()]
    shapes += [*limb("two", TWO_YEAR, 18, 15, furrows=2, knots=0.05), *_arm()]
    shapes += [cut_line(TWO_YEAR, STUB, 19, 12), cut_line(LOWER, OVER, 15, -18)]
    pins = (
        pin("arm", (-120, 42), (-100, 8)),
        pin("spur_position", (-62, -36), (-6, -30)),
        pin("two_year_wood", (58, -62), TWO_YEAR.at(36)),
        pin("lower_cane", (-110, -240), LOWER.at(190)),
        pin("upper_cane", (112, -240), UPPER.at(140)),
        pin("base_bud", (-78, -84), LOWER.at(13)),
        pin("first_node", (-110, -122), LOWER.at(46)),
        pin("second_node", (-120, -172), LOWER.at(LAST)),
        pin("short_cut", (2, -196), LOWER.at(OVER).moved(9, 0)),
        pin("wood_cut", (82, -116), TWO_YEAR.at(STUB).moved(14, -2)),
    )
    return Picture("before", -150, -310, 300, 370, tuple(shapes), pins)


def after() -> Picture:
    """The lower cane is the new spur of two nodes; the upper one has gone with the wood that it stood on."""
    gone = cane(UPPER, [], 11, 8, part="gone").shapes + cane(LOWER.part(OVER, LOWER.length), [], 9, 8, part="gone").shapes
    gone += limb("gone", TWO_YEAR.part(STUB, TWO_YEAR.length), 16, 15, 0, 0.02)
    spur, stub = LOWER.part(0, OVER), TWO_YEAR.part(0, STUB)
    shapes: Shapes = [*gone, *cane(spur, NODES[:3], 11, 10).shapes, *cut_face(spur, spur.length, 10)]
    shapes += [*limb("two", stub, 18, 16, furrows=2, knots=0.05), *cut_face(stub, stub.length, 17), *_arm()]
    shapes += [stroke("measure", Point(70, -19), Point(70, -62)), *_ends(70, -19, -62)]
    pins = (
        pin("new_spur", (-104, -104), LOWER.at(70)),
        pin("first_node", (-44, -52), LOWER.at(46)),
        pin("second_node", (-110, -168), LOWER.at(LAST)),
        pin("short_cut", (0, -196), LOWER.at(OVER)),
        pin("stub", (52, -106), TWO_YEAR.at(STUB)),
        pin("upper_cane", (112, -220), UPPER.at(120)),
        pin("height", (100, -42), (71, -42)),
        pin("arm", (-120, 42), (-100, 8)),
    )
    return Picture("after", -150, -290, 300, 350, tuple(shapes), pins)


def crept() -> Picture:
    """The upper cane was kept year after year: the spur stands high on a crooked pile of old wood; a low shoot can replace it."""
    pile = Spine(Point(2, 0), Point(-2, -46), Point(16, -84), Point(8, -128), Point(30, -166), Point(26, -206))
    low = Spine(Point(-46, -10), Point(-66, -40), Point(-76, -92), Point(-80, -160), Point(-86, -380))
    top = Spine(pile.at(pile.length - 22), Point(22, -226), Point(14, -262), Point(10, -380))
    other = Spine(pile.at(pile.length - 6), Point(42, -228), Point(56, -268), Point(62, -380))
    shapes: Shapes = [*cane(other, NODES[:4], 9, 7, side=-1).shapes, *cane(top, NODES[:4], 9, 7).shapes]
    shapes += cane(low, NODES, 10, 8).shapes
    shapes += limb("old", pile, 34, 22, furrows=3, knots=0.16, seed=3)
    for s, side in ((52, 1), (98, -1), (140, 1), (176, -1)):
        scar = Spine(pile.beside(s, side * 8), pile.beside(s + 8, side * 22))
        shapes += [*limb("old", scar, 15, 13, 0, 0.02), *cut_face(scar, scar.length, 14, pith=False)]
    shapes += [*limb("old", ARM, 40, 37, furrows=5), blend(pile, 19, 34), cut_line(pile, 22, 27, 8), cut_line(low, 118, 14, -18)]
    shapes += [stroke("measure", Point(104, -19), Point(104, -206)), *_ends(104, -19, -206)]
    pins = (
        pin("old_stubs", (70, -92), pile.beside(98, -22)),
        pin("height", (130, -112), (105, -112)),
        pin("low_shoot", (-122, -200), low.at(180)),
        pin("short_cut", (-34, -150), low.at(118).moved(8, 0)),
        pin("renewing_cut", (62, -38), pile.at(22).moved(24, 0)),
        pin("arm", (-120, 42), (-100, 8)),
    )
    return Picture("crept", -150, -310, 300, 370, tuple(shapes), pins)


def _arm() -> Shapes:
    """The arm and the knob of old wood on it."""
    knob = limb("old", KNOB, 52, 23, furrows=2, knots=0.1)
    return [*knob, *limb("old", ARM, 40, 37, furrows=5), blend(KNOB, 20, 40)]


def _old_end() -> Shapes:
    """The dry end of last winter's spur, over its upper node."""
    end = TWO_YEAR.part(TWO_YEAR.length - 12, TWO_YEAR.length)
    return [*limb("two", end, 15, 14, 0, 0.02), *cut_face(end, end.length, 14), teardrop(LOWER.at(6), 120, 1)]


def _ends(x: float, low: float, high: float) -> Shapes:
    """The two ends of a measure."""
    return [stroke("measure", Point(x - 6, y), Point(x + 6, y)) for y in (low, high)]
