"""A head in winter with the canes to choose from, and the same head when the choice is made. y = 0 is the ground."""

from generator.pages.anatomy.cane_head import HEAD, head
from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Picture, Shapes, pin
from generator.pages.drawing.vine import WIRE, wire
from generator.pages.drawing.wood import Grown, cane, cut_face, cut_line, limb, spaced

TOP = -1330
SPUR = Spine(Point(-12, HEAD + 14), Point(-26, HEAD - 30), Point(-32, HEAD - 86))
LAST = Spine(Point(22, HEAD + 14), Point(66, HEAD - 46), Point(122, HEAD - 99), Point(205, WIRE), Point(420, WIRE + 2), Point(690, WIRE))


def draw() -> list[Picture]:
    """What stands there, and what is left."""
    return [_before(), _after()]


def _before() -> Picture:
    """Canes from the renewal spur, from last year's cane and from old wood."""
    grown = [_low(), _upper(), _base(), _standing(330, 8, 46), _standing(460, 27, 112), _standing(620, 16, 70), _shoot()]
    shapes: Shapes = [*wire(-520, 760), *(shape for one in grown for shape in one.shapes), *_two_year(), *head()]
    pins = (
        pin("upper", (-70, -1240), grown[1].nodes[5]),
        pin("low", (-330, -1090), grown[0].nodes[4]),
        pin("base", (60, -1110), grown[2].nodes[3]),
        pin("thin", (270, -1240), grown[3].nodes[6]),
        pin("bull", (550, -1240), grown[4].nodes[3]),
        pin("far", (720, -1100), grown[5].nodes[3]),
        pin("watershoot", (-330, -700), grown[6].nodes[1]),
        pin("last_spur", (-180, -860), SPUR.at(60)),
        pin("last_cane", (560, -760), LAST.at(620)),
    )
    return Picture("before", -520, TOP + 20, 1280, 790, tuple(shapes), pins)


def _after() -> Picture:
    """One cane laid, the lower one cut to a renewal spur, one left standing in reserve, the rest taken off."""
    bend = ((-32, HEAD - 76), (-44, WIRE - 14), (-92, WIRE - 44), (-160, WIRE - 26), (-240, WIRE), (-360, WIRE + 2), (-490, WIRE))
    way = Spine(*(Point(*at) for at in bend))
    laid = cane(way, [s for s in spaced(70, 78, 8, 0.8) if s < way.length - 24], 18, 14, side=1)
    low = Spine(Point(-24, HEAD - 22), Point(-80, HEAD - 46), Point(-134, HEAD - 92))
    spur = cane(low, [50, 106], 16, 15, side=1)
    kept = Spine(*LAST.points[:24])
    shapes: Shapes = [*wire(-520, 760), *limb("two", SPUR, 24, 20, 0, 0.03), *limb("two", kept, 22, 20, 0, 0.02), *cut_face(kept, kept.length, 20)]
    shapes += [*spur.shapes, *cut_face(low, low.length, 15, pith=False), *_base().shapes, *laid.shapes, *cut_face(way, way.length, 14, pith=False), *head()]
    shapes += [cut_line(kept, kept.length + 12, 34)]
    pins = (
        pin("laid", (-330, -1000), way.at(300)),
        pin("spur", (-220, -740), spur.nodes[1]),
        pin("reserve", (200, -1110), _base().nodes[3]),
        pin("taken_off", (330, -760), kept.at(kept.length)),
    )
    return Picture("after", -520, TOP + 20, 1280, 790, tuple(shapes), pins)


def _two_year() -> Shapes:
    """Last winter's renewal spur and last year's cane on the wire."""
    return [*limb("two", LAST, 22, 17, 0, 0.02), *limb("two", SPUR, 24, 20, 0, 0.03)]


def _low() -> Grown:
    """The lower cane of the renewal spur."""
    way = Spine(Point(-26, HEAD - 34), Point(-70, HEAD - 90), Point(-130, HEAD - 250), Point(-190, TOP + 60))
    return _grown(way, 44, 74, 16, 11, 1)


def _upper() -> Grown:
    """The upper cane of the renewal spur."""
    way = Spine(Point(-32, HEAD - 80), Point(-38, HEAD - 200), Point(-30, TOP + 60))
    return _grown(way, 44, 74, 18, 13)


def _base() -> Grown:
    """The cane from the lowest node of last year's cane."""
    foot = LAST.at(120)
    way = Spine(foot, Point(foot.x + 34, foot.y - 120), Point(foot.x + 30, TOP + 70))
    return _grown(way, 44, 74, 17, 12)


def _standing(x: float, thick: float, step: float) -> Grown:
    """A cane from farther out on last year's cane."""
    way = Spine(Point(x, WIRE + 8), Point(x + 12, WIRE - 160), Point(x + 4, TOP + 60))
    return _grown(way, 40, step, thick, thick * 0.72)


def _shoot() -> Grown:
    """A watershoot from the old wood of the trunk."""
    way = Spine(Point(-28, HEAD + 84), Point(-120, HEAD + 40), Point(-210, HEAD - 90), Point(-270, TOP + 130))
    return _grown(way, 60, 82, 15, 10, -1)


def _grown(way: Spine, first: float, step: float, thick: float, thin: float, side: int = 1) -> Grown:
    """A whole cane with its nodes as far as it reaches."""
    return cane(way, [s for s in spaced(first, step, 12) if s < way.length - 20], thick, thin, side=side)
