"""Young vines: cut back to two nodes, a shoot from below the graft, trunk and first arm, the second arm. y = 0 is the ground; mm."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Oval, Picture, Shapes, blob, pin, stroke
from generator.pages.drawing.vine import WIRE, ground, wire
from generator.pages.drawing.wood import cane, cut_face, cut_line, limb, spaced

FOOT = Spine(Point(0, 30), Point(-3, -40), Point(2, -84))
UNION = -44
THIN = Spine(Point(6, -72), Point(22, -110), Point(20, -190), Point(28, -360))
OTHER = Spine(Point(-8, -66), Point(-40, -110), Point(-52, -190), Point(-64, -360))
SUCKER = Spine(Point(-10, -8), Point(-52, -30), Point(-76, -110), Point(-84, -360))
NODES = [16, 52, 108, 166, 224]
BEND = Point(0, WIRE + 110)
LAID = Spine(Point(0, 10), Point(8, -260), Point(-6, -520), BEND, Point(40, WIRE + 26), Point(140, WIRE - 2), Point(420, WIRE), Point(1010, WIRE))
TRUNK = Spine(Point(0, 20), Point(8, -260), Point(-6, -520), BEND)
FIRST = Spine(BEND, Point(40, WIRE + 26), Point(140, WIRE - 2), Point(640, WIRE))
SECOND = Spine(Point(-6, WIRE + 150), Point(-44, WIRE + 60), Point(-150, WIRE), Point(-640, WIRE))
END = Spine(Point(632, WIRE - 2), Point(760, WIRE), Point(1000, WIRE))
STRONG = 1500  # along the cane: from here it is thinner than a pencil
PLACES = (170, 290, 410, 530)


def draw() -> list[Picture]:
    """Two at the foot, two at the wire."""
    return [_thin(), _foot(), _trunk(), _arms()]


def _stump(*canes: Shapes) -> Shapes:
    """The foot of a young vine with its graft union, in front of its canes."""
    union = blob("old", *(Point(x, UNION + y) for x, y in ((-24, 2), (-16, -15), (14, -16), (24, 0), (17, 15), (-16, 16))))
    lines = [stroke("bark", Point(x, UNION - 10), Point(x * 1.3, UNION), Point(x, UNION + 9)) for x in (-10, 1, 12)]
    return [*ground(-150, 150), *(shape for group in canes for shape in group), *limb("old", FOOT, 30, 24, 3), union, *lines]


def _thin() -> Picture:
    """All canes are thinner than a pencil."""
    thin = cane(THIN, NODES, 7, 4)
    shapes = [*_stump(cane(OTHER, NODES, 6, 4, side=-1).shapes, thin.shapes), cut_line(THIN, 122, 15), cut_line(OTHER, 5, 17)]
    pins = (
        pin("graft_union", (-100, -40), (-20, UNION)),
        pin("thin", (84, -270), THIN.at(200)),
        pin("two_nodes", (84, -120), thin.nodes[1], thin.nodes[2]),
        pin("back_cut", (84, -190), THIN.at(122).moved(10, -2)),
        pin("off", (-112, -110), OTHER.at(8)),
    )
    return Picture("thin", -150, -320, 300, 370, tuple(shapes), pins, half=True)


def _foot() -> Picture:
    """The strongest shoot comes from below the graft."""
    good = cane(THIN, NODES, 9, 7)
    shapes = [*_stump(cane(SUCKER, [30, 84, 144, 206, 270], 13, 10, side=-1).shapes, good.shapes), cut_line(SUCKER, 8, 19, 0)]
    pins = (
        pin("graft_union", (96, -40), (20, UNION)),
        pin("rootstock_shoot", (-124, -210), SUCKER.at(210)),
        pin("heel", (-100, 30), SUCKER.at(8).moved(-6, 6)),
        pin("scion", (84, -200), THIN.at(130)),
    )
    return Picture("foot", -150, -320, 300, 370, tuple(shapes), pins, half=True)


def _at_foot(thick: float) -> Shapes:
    """The graft union of a trunk, seen from the alley."""
    return [blob("old", *(Point(x * thick, -70 + y) for x, y in ((-0.9, 0), (-0.6, -24), (0.6, -24), (0.9, 0), (0.6, 22), (-0.6, 22))))]


def _trunk() -> Picture:
    """One cane is the trunk and, as far as it is strong, the first arm."""
    strong, gone = LAID.part(0, STRONG), LAID.part(STRONG, LAID.length)
    way = Spine(*(LAID.at(STRONG * k / 30) for k in range(31)))
    grown = cane(way, [s for s in spaced(60, 74, 24, 0.8) if s < STRONG - 20], 30, 16)
    shapes: Shapes = [*ground(-420, 1020), stroke("neighbour", Point(-26, 30), Point(-26, WIRE - 30)), *wire(-420, 1020)]
    shapes += [*cane(gone, [], 14, 8, part="gone").shapes, *grown.shapes, *_at_foot(36)]
    shapes += [Oval("tie", Point(-10, y), 26, 9) for y in (-300, -600)]
    shapes += [Oval("tie", LAID.at(s), 6, 20) for s in (980, STRONG - 40)]
    shapes += [stroke("measure", Point(-110, y), Point(-80, y)) for y in (WIRE, BEND.y)]
    shapes += [stroke("measure", Point(-95, WIRE), Point(-95, BEND.y)), cut_line(LAID, strong.length, 34)]
    pins = (
        pin("trunk", (150, -420), LAID.at(430)),
        pin("stake", (-170, -460), (-26, -460)),
        pin("graft_union", (150, -110), (26, -74)),
        pin("bend", (-200, -795), (-95, (WIRE + BEND.y) / 2)),
        pin("arm_wood", (440, -990), LAID.at(1200)),
        pin("arm_cut", (LAID.at(STRONG).x, -990), LAID.at(STRONG).moved(0, -24)),
        pin("thin_end", (900, -990), LAID.at(LAID.length - 100)),
        pin("end_tie", (600, -700), LAID.at(STRONG - 40)),
        pin("spared", (-250, -640), way.at(660).moved(-14, 0)),
    )
    return Picture("trunk", -420, -1060, 1440, 1130, tuple(shapes), pins)


def _spur(x: float) -> Shapes:
    """A first spur of two nodes on top of the arm."""
    way = Spine(Point(x, WIRE - 8), Point(x - 4, WIRE - 60), Point(x - 2, WIRE - 126))
    return [*cane(way, [34, 92], 15, 13).shapes, *cut_face(way, way.length, 13, pith=False)]


def _arms() -> Picture:
    """A winter later: spurs on the first arm, its end lengthened, the second arm laid."""
    second = cane(SECOND, [s for s in spaced(50, 72, 12, 0.8) if s < SECOND.length - 24], 24, 15, side=-1)
    end = cane(END.part(0, 250), [60, 130, 200], 17, 14)
    shapes: Shapes = [*ground(-760, 1040), *wire(-760, 1040), *cane(END.part(250, END.length), [], 13, 8, part="gone").shapes]
    shapes += [shape for x in PLACES for shape in _spur(x)]
    shapes += [*end.shapes, *second.shapes, *limb("two", FIRST, 34, 26, 2, 0.04), *limb("two", TRUNK, 46, 34, 2, 0.04), *_at_foot(46)]
    shapes += [Oval("tie", Point(x, WIRE), 6, 22) for x in (-600, 590, 860)] + [cut_line(END, 250, 30)]
    low = Spine(Point(-10, -600), Point(-60, -650), Point(-78, -690))
    shapes += [*cane(low, [30, 80], 14, 13, side=-1).shapes, *cut_face(low, low.length, 13, pith=False)]
    pins = (
        pin("first_spur", (290, -1090), (290, WIRE - 110)),
        pin("first_arm", (330, -690), FIRST.at(440)),
        pin("arm_cut", (END.at(250).x, -1000), END.at(250).moved(0, -22)),
        pin("longer", (760, -690), END.at(130)),
        pin("second_arm", (-420, -1000), SECOND.at(520)),
        pin("second_start", (-210, -720), SECOND.at(40)),
        pin("renewal_spur", (-230, -580), low.at(60)),
        pin("trunk", (160, -400), TRUNK.at(400)),
    )
    return Picture("arms", -760, -1160, 1800, 1240, tuple(shapes), pins)
