"""A spur-pruned bilateral cordon before and after pruning, with one missing spur position. y = 0 is the ground."""

from generator.pages.drawing.geometry import Point
from generator.pages.drawing.shapes import Picture, Pin, Shapes, pin, stroke
from generator.pages.drawing.vine import HEAD, WIRE, arms, found_cane, full_position, neighbours, pruned_position, stub, trunk, wire

PLACES = (-650, -530, -410, -285, -160, 160, 285, 530, 650)
EMPTY = 410
TIP, NEXT = 690, 745


def draw() -> list[Picture]:
    """Before and after."""
    return [_picture("before", _found(), _pins_before(), -1390), _picture("after", _pruned(), _pins_after(), -1200)]


def _picture(name: str, wood: Shapes, pins: tuple[Pin, ...], top: float) -> Picture:
    """The vine in its place on the wire, with the given wood on its arms."""
    behind = [*wire(-800, 800), *wire(-800, 800, WIRE - 290), *neighbours(-800, 800, NEXT)]
    shapes = [*behind, *wood, *trunk(), *arms(-1, 1)]
    return Picture(name, -800, top, 1600, -540 - top, tuple(shapes), pins)


def _found() -> Shapes:
    """Two canes on every spur of last winter; one place is bare."""
    return [shape for k, x in enumerate(PLACES) for shape in full_position(x, 420 + 40 * (k * 5 % 3) / 2)]


def _pruned() -> Shapes:
    """One spur of two nodes at each live position, and the measures of spacing and of the gap."""
    spurs = [shape for x in PLACES for shape in pruned_position(x)]
    return [*spurs, *_measure(-650, -530, WIRE - 250), *_measure(TIP - 20, NEXT, WIRE - 60)]


def _measure(left: float, right: float, y: float) -> Shapes:
    """A measure between two places."""
    ends = [stroke("measure", Point(x, y - 16), Point(x, y + 16)) for x in (left, right)]
    return [stroke("measure", Point(left, y), Point(right, y)), *ends]


def _pins_before() -> tuple[Pin, ...]:
    """What is found."""
    return (
        pin("head", (-150, -640), (-6, HEAD + 10)),
        pin("arm", (-340, -700), (-350, WIRE + 6)),
        pin("spur_position", (-560, -700), (-530, WIRE - 12)),
        pin("last_spur", (-700, -690), stub(-650).at(30)),
        pin("lower_cane", (240, -1330), found_cane(285, False, 430).nodes[5]),
        pin("upper_cane", (480, -1332), found_cane(530, True, 420).nodes[4]),
        pin("empty", (400, -700), (EMPTY, WIRE - 14)),
        pin("wire", (40, -1300), (40, WIRE - 290)),
        pin("neighbour", (720, -700), (775, WIRE + 4)),
    )


def _pins_after() -> tuple[Pin, ...]:
    """What is left."""
    return (
        pin("spur", (-330, -1130), (-310, WIRE - 130)),
        pin("stub", (-190, -1100), (-153, WIRE - 44)),
        pin("spacing", (-590, -1148), (-590, WIRE - 250)),
        pin("empty", (400, -700), (EMPTY, WIRE - 14)),
        pin("tip_gap", (700, -1040), ((TIP - 20 + NEXT) / 2, WIRE - 60)),
        pin("arm", (-340, -700), (-350, WIRE + 6)),
        pin("head", (-150, -640), (-6, HEAD + 10)),
    )
