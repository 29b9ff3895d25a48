"""The vine and its parts in winter: the left arm as it is found, the right one pruned."""

from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.shapes import Picture, Shapes, pin
from generator.pages.drawing.vine import (
    GRAFT,
    HEAD,
    TRUNK,
    WIRE,
    arms,
    found_cane,
    full_position,
    ground,
    neighbours,
    pruned_position,
    roots,
    stub,
    trunk,
    wire,
)
from generator.pages.drawing.wood import cane, spaced

PLACES = (150, 275, 400, 525, 640)
WATERSHOOT = Spine(Point(20, -420), Point(70, -470), Point(120, -560), Point(140, -690))
SUCKER = Spine(Point(-36, -34), Point(-110, -90), Point(-150, -200), Point(-164, -330))


def draw() -> list[Picture]:
    """One picture."""
    shapes: Shapes = [*ground(-800, 800), *roots(), *wire(-800, 800), *wire(-800, 800, WIRE - 330), *neighbours(-800, 800, 745)]
    shapes += cane(SUCKER, spaced(40, 70, 4), 15, 8, side=-1).shapes + cane(WATERSHOOT, spaced(36, 60, 4), 15, 9).shapes
    for x in PLACES:
        shapes += full_position(-x) + pruned_position(x)
    shapes += [*trunk(), *arms(-1, 1)]
    return [Picture("whole", -800, -1370, 1600, 1800, tuple(shapes), _pins())]


def _pins() -> tuple:
    """The numbers, from the roots up."""
    right, found = stub(400), found_cane(-275, False, 440).nodes
    return (
        pin("roots", (-520, 300), (-260, 164)),
        pin("rootstock", (330, 40), (28, -30)),
        pin("graft_union", (330, GRAFT - 30), (50, GRAFT)),
        pin("sucker", (-330, -200), (-150, -200)),
        pin("trunk", (-200, -440), TRUNK.at(480).moved(-12, 0)),
        pin("watershoot", (300, -560), (121, -560)),
        pin("head", (-210, -650), (-8, HEAD + 14)),
        pin("arm", (-470, -690), (-460, WIRE + 4)),
        pin("wire", (690, -1290), (690, WIRE - 330), (700, WIRE)),
        pin("spur_position", (330, -700), right.at(4)),
        pin("spur", (520, -1080), Point(380, WIRE - 130)),
        pin("cane", (-700, -1310), Point(-562, WIRE - 300)),
        pin("node", (-150, -1290), found[4]),
        pin("internode", (-20, -1180), Point(-236, WIRE - 258)),
        pin("two_year_wood", (-620, -700), Point(-523, WIRE - 40)),
        pin("neighbour", (730, -740), (775, WIRE + 6)),
    )
