"""A spur position from the side, before the cut and after it, in whole millimetres: y = 0 is the arm.

Two panels of equal width stand side by side, each with one label over it and one under it, all at the left edge of their own panel: so no
two of them can meet, however long the words become. The lower cane leans to the left, the one above it to the right, a third stands
between them; the cane from the arm is at the far left. A position higher than TALLEST is drawn shorter, and the caption says so.
"""

from dataclasses import dataclass

from generator.calculators.drawing_shapes import START, Drawing, Point, Shape, along, circle, cut_at, line, no_drawing, text
from generator.calculators.say import Say
from generator.calculators.spur_canes import LOW, LOWER, TOP, UPPER, Canes, stands
from generator.calculators.spur_choosing import Chosen, highest_kept
from generator.calculators.units import mm_from_cm

PANEL: int = 180
LETTERS: int = 13
LOWEST: int = 14
TALLEST: int = 160
STEP: int = 34
GROWN: int = 150
FIRST: int = 34
INTERNODE: int = 44
OVER: int = 14
HALF: int = 8
DOT: int = 4
LEAN: int = 40


@dataclass(frozen=True)
class Wood:
    """The old wood of a position: its top in one panel, and the ends of the wood of last winter's spur."""

    foot: Point
    top: Point
    tip: Point


def draw_spur(canes: Canes, chosen: Chosen, height_cm: float) -> Drawing:
    """The drawing; none while the choice is open or the arm comes first."""
    if not chosen.known:
        return no_drawing()
    height = max(LOWEST, min(TALLEST, mm_from_cm(height_cm)))
    before = wood_of(PANEL // 2, height, canes)
    after = wood_of(PANEL + PANEL // 2, height, canes)
    cuts = cut_shapes(before, canes, chosen)
    shapes = arm_at(before) + standing(before, canes) + cuts + arm_at(after) + left_over(after, canes, chosen)
    top = before.tip.y - GROWN - LETTERS * 2
    bottom = LETTERS * 2 + HALF
    labels = [
        text(START, Point(HALF, top + LETTERS), Say("spur_position.before", [], [])),
        text(START, Point(PANEL + HALF, top + LETTERS), Say("spur_position.after", [], [])),
        text(START, Point(HALF, bottom), Say("spur_position.high", [height_cm], [])),
        text(START, Point(PANEL + HALF, bottom), Say("spur_position.stay", [stay(chosen)], [])),
    ]
    describe = describe_spur(canes, chosen, height_cm, len(cuts))
    return Drawing(shapes + labels, 0, top, 2 * PANEL, bottom + HALF - top, LETTERS, describe)


def stay(chosen: Chosen) -> float:
    """All nodes that stay as spurs."""
    return chosen.nodes[LOWER] + chosen.nodes[UPPER] + chosen.nodes[TOP] + chosen.nodes[LOW]


def wood_of(x: int, height: int, canes: Canes) -> Wood:
    """The old wood of a panel whose middle is at x; last winter's spur reaches up to the highest cane."""
    higher = 2 if stands(canes, TOP) else 1 if stands(canes, UPPER) else 0
    top = Point(x, -height)
    return Wood(Point(x, 0), top, Point(x + higher * HALF, -height - higher * STEP - HALF))


def pile(wood: Wood, foot: Point) -> list[Point]:
    """The old wood from a foot to its top; that of many winters is crooked."""
    if wood.foot.y - wood.top.y > 2 * STEP:
        return [foot, Point(wood.foot.x + HALF, wood.top.y // 2), wood.top]
    return [foot, wood.top]


def arm_at(wood: Wood) -> list[Shape]:
    """The piece of arm that the position stands on."""
    return [line("arm", [Point(wood.foot.x - PANEL // 2 + 2 * HALF, 0), Point(wood.foot.x + PANEL // 2 - 2 * HALF, 0)])]


def way(wood: Wood, place: int) -> list[Point]:
    """The way of a cane from its base."""
    if place == LOW:
        foot = Point(wood.foot.x - LEAN - HALF, 0)
        return [foot, Point(foot.x - HALF, -STEP), Point(foot.x - 2 * HALF, -GROWN)]
    if place == LOWER:
        return [wood.top, Point(wood.top.x - 2 * HALF, wood.top.y - STEP), Point(wood.top.x - LEAN + HALF, wood.top.y - GROWN)]
    if place == UPPER:
        base = Point(wood.top.x + HALF, wood.top.y - STEP)
        return [base, Point(base.x + LEAN - 2 * HALF, base.y - STEP), Point(base.x + LEAN, base.y - GROWN)]
    base = Point(wood.top.x + 2 * HALF, wood.top.y - 2 * STEP)
    return [base, Point(base.x, base.y - GROWN)]


def standing(wood: Wood, canes: Canes) -> list[Shape]:
    """Everything before the cut."""
    shapes = [line("old", pile(wood, wood.foot) + [wood.tip])]
    for k in [TOP, UPPER, LOWER, LOW]:
        if stands(canes, k):
            shapes.append(line("cane", way(wood, k)))
            for node in range(2):
                shapes.append(circle("node", along(way(wood, k), float(FIRST + node * INTERNODE)), DOT))
    return shapes


def cut_shapes(wood: Wood, canes: Canes, chosen: Chosen) -> list[Shape]:
    """Where the cuts go: over the last node of a cane that stays, through the old wood over it, at the base of a cane that goes alone."""
    shapes: list[Shape] = []
    for k in [LOW, LOWER, UPPER, TOP]:
        if chosen.nodes[k] > 0.0:
            shapes.append(across(along(way(wood, k), kept_mm(chosen.nodes[k]))))
        elif stands(canes, k) and k != chosen.laid and (k == LOW or keeps_above(chosen, k)):
            shapes.append(across(along(way(wood, k), float(OVER))))
    return shapes + [across(point) for point in old_cuts(wood, canes, chosen)]


def across(at: Point) -> Shape:
    """A cut through a point, slanted."""
    return line("cut", [Point(at.x - OVER, at.y + HALF // 2), Point(at.x + OVER, at.y - HALF // 2)])


def kept_mm(nodes: float) -> float:
    """How much of a cane stays for so many nodes."""
    return float(FIRST) + (nodes - 1.0) * float(INTERNODE) + float(OVER)


def keeps_above(chosen: Chosen, place: int) -> bool:
    """True where a cane above this one stays, so that this one is cut off at its own base."""
    return highest_kept(chosen) > place


def old_cuts(wood: Wood, canes: Canes, chosen: Chosen) -> list[Point]:
    """Where older wood is cut: over the highest cane that stays, else low on the position."""
    highest = highest_kept(chosen)
    if highest < LOWER:
        return [Point(wood.foot.x, low_cut(wood))]
    if wood.tip.y < wood.top.y - highest * STEP - 2 * HALF:
        return [Point(wood.top.x + highest * HALF + 2, wood.top.y - highest * STEP - 2 * HALF)]
    return []


def low_cut(wood: Wood) -> int:
    """Where a position that goes is cut: a stub over the arm."""
    return max(wood.top.y, -STEP + LOWEST)


def left_over(wood: Wood, canes: Canes, chosen: Chosen) -> list[Shape]:
    """What is left after the cut, and in broken lines what has gone."""
    shapes = old_left(wood, canes, chosen)
    for k in [TOP, UPPER, LOWER, LOW]:
        points = way(wood, k)
        if k == chosen.laid:
            end = Point(wood.foot.x + PANEL // 2 - HALF, points[0].y - HALF)
            shapes.append(line("cane", [points[0], Point(points[0].x + 2 * HALF, points[0].y - 2 * HALF), end]))
        elif stands(canes, k):
            shapes.append(line("cane off", points))
            if chosen.nodes[k] > 0.0:
                shapes.append(line("spur", cut_at(points, kept_mm(chosen.nodes[k]))))
                for node in range(int(chosen.nodes[k])):
                    shapes.append(circle("node", along(points, float(FIRST + node * INTERNODE)), DOT))
    return shapes


def old_left(wood: Wood, canes: Canes, chosen: Chosen) -> list[Shape]:
    """The older wood: what stays, and in broken lines what has gone."""
    cuts = old_cuts(wood, canes, chosen)
    if len(cuts) == 0:
        return [line("old", pile(wood, wood.foot) + [wood.tip])]
    if cuts[0].y >= wood.top.y:
        return [line("old off", pile(wood, cuts[0]) + [wood.tip]), line("old", [wood.foot, cuts[0]])]
    return [line("old off", [cuts[0], wood.tip]), line("old", pile(wood, wood.foot) + [cuts[0]])]


def describe_spur(canes: Canes, chosen: Chosen, height_cm: float, cuts: int) -> list[Say]:
    """What the drawing shows, in sentences."""
    carried = len([k for k in [LOWER, UPPER, TOP] if stands(canes, k)])
    says = [Say("spur_position.drawn_before", [height_cm, float(carried)], [])]
    if stands(canes, LOW):
        says.append(Say("spur_position.drawn_low", [], []))
    if cuts > 0:
        says.append(Say("spur_position.drawn_cuts", [float(cuts)], []))
    says.append(Say("spur_position.drawn_after", [stay(chosen)], []))
    if mm_from_cm(height_cm) > TALLEST:
        says.append(Say("spur_position.drawn_shortened", [], []))
    return says
