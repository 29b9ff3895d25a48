"""A cane laid flat, one bent in an arch, and one kinked at the head, with their ties. y = 0 is the ground; lengths in mm."""

from generator.pages.anatomy.cane_head import HEAD, head, next_tip, renewal
from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.places import places
from generator.pages.drawing.shapes import Oval, Picture, Shapes, patch, pin, stroke
from generator.pages.drawing.vine import WIRE, wire
from generator.pages.drawing.wood import cane, cut_face, cut_line, spaced

UPPER = -1090
TIP = 830
NODE = 74
CREST = 420  # along the arch, where it lies on the upper wire
FLAT = Spine(*places(((22, HEAD + 14), (66, HEAD - 46), (122, WIRE + 16), (205, WIRE), (480, WIRE + 2), (TIP, WIRE))))
ARCH = Spine(
    *places(((22, HEAD + 14), (74, -815), (140, -940), (235, UPPER + 20), (345, UPPER - 14), (480, UPPER + 38), (640, -950), (730, WIRE), (TIP, WIRE - 6)))
)
CORNER = Point(78, -838)
SPLINTERS = (((68, -848), (82, -838)), ((78, -854), (84, -838)), ((88, -852), (86, -840)))


def draw() -> list[Picture]:
    """Flat, arched, and what not to do."""
    return [_flat(), _arched(), _kinked()]


def _flat() -> Picture:
    """Ten nodes along one wire: a loose tie past the bend, a firm one at the end."""
    shapes, nodes = _tied(FLAT, 10, (240,))
    pins = (
        pin("head", (-180, -600), (-22, HEAD + 14)),
        pin("renewal_spur", (-130, -990), (-26, HEAD - 100)),
        pin("bend", (190, -680), FLAT.at(140)),
        pin("loose_tie", (250, -1000), FLAT.at(240)),
        pin("wire", (-250, -760), (-270, WIRE)),
        pin("last_node", (590, -700), nodes[-1]),
        pin("end_tie", (700, -1000), FLAT.at(_end(nodes))),
        pin("tip_gap", (895, -720), (890, WIRE)),
    )
    return Picture("flat", -330, -1060, 1400, 560, (*wire(-330, 1070), *next_tip(1070, 950), *renewal(-1), *shapes, *head()), pins)


def _arched() -> Picture:
    """Fourteen nodes over the wire above and down again."""
    shapes, nodes = _tied(ARCH, 14, (CREST,))
    pins = (
        pin("bend", (240, -850), ARCH.at(130)),
        pin("upper_wire", (-230, -1170), (-250, UPPER)),
        pin("crest", (560, -1200), ARCH.at(470)),
        pin("loose_tie", (250, -1220), ARCH.at(CREST)),
        pin("end_tie", (620, -740), ARCH.at(_end(nodes, ARCH))),
        pin("low_end", (860, -1000), (TIP, WIRE - 6)),
        pin("wire", (-230, -930), (-250, WIRE)),
    )
    wires = [*wire(-330, 1070), *wire(-330, 1070, UPPER)]
    return Picture("arched", -330, -1280, 1400, 780, (*wires, *next_tip(1070, 950), *renewal(-1), *shapes, *head()), pins)


def _kinked() -> Picture:
    """A corner close to the head, open on its outside; the shears go between head and corner."""
    base = Spine(Point(22, HEAD + 14), Point(40, -770), Point(62, -808), CORNER)
    gone = Spine(CORNER, Point(150, WIRE + 6), Point(250, WIRE), Point(420, WIRE))
    low, rest = cane(base, [58], 19, 18, side=-1), cane(gone, spaced(60, NODE, 4, 0.9), 18, 15)
    torn = patch("cut", places(((64, -846), (76, -856), (94, -852))), places(((88, -840), (80, -834), (70, -838))))
    splinters = [stroke("hair", *places(way)) for way in SPLINTERS]
    pins = (
        pin("head", (-90, -640), (-22, HEAD + 14)),
        pin("kink", (150, -930), CORNER.moved(0, -12)),
        pin("rescue", (150, -740), base.at(86)),
    )
    shapes = (*wire(-180, 380), *low.shapes, *rest.shapes, torn, *splinters, *renewal(-1), *head(), cut_line(base, 86, 26))
    return Picture("kinked", -180, -980, 560, 380, shapes, pins)


def _tied(way: Spine, count: int, loose: tuple[float, ...]) -> tuple[Shapes, list[Point]]:
    """A cane with so many nodes, cut past its last one, with its ties; and where its nodes are."""
    step = (way.length - 110) / (count - 0.6)
    nodes = spaced(70, step, count, 0.9)
    grown = cane(way, nodes, 19, 14, side=-1)
    ties = [Oval("tie", way.at(s), 6, 17, way.heading(s)) for s in loose]
    last = nodes[-1] - step / 3
    ends = [Oval("tie", way.at(last + off), 6, 17, way.heading(last)) for off in (-6, 6)]
    return [*grown.shapes, *ties, *ends, *cut_face(way, way.length, 14, pith=False)], grown.nodes


def _end(nodes: list[Point], way: Spine = FLAT) -> float:
    """How far along the way the end tie stands: before the last node."""
    return way.length - (way.at(way.length).x - nodes[-1].x) - (nodes[-1].x - nodes[-2].x) / 3
