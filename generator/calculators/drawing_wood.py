"""Wood drawn to scale: spurs, canes, what is cut off, what is missing, and the neighbours."""

from generator.calculators.cane_path import mirrored, path_to_right
from generator.calculators.drawing_frame import Frame
from generator.calculators.drawing_shapes import Point, Shape, along, circle, cut_at, line

DOT: int = 5
UPRIGHT: int = 4
TALL: int = 6
STEEP: int = 10


def leaning(base: Point, height: int, left: bool) -> Point:
    """The end of a piece of wood of a height that leans out by one part in four."""
    lean = height // UPRIGHT
    return Point(base.x - lean if left else base.x + lean, base.y - height)


def renewal_tip(foot: Point, nodes: int, internode_mm: int, left: bool) -> Point:
    """The end of a renewal spur: it leans out as far as it rises, to stay clear of the cane over it."""
    height = spur_height(nodes, internode_mm)
    return Point(foot.x - height if left else foot.x + height, foot.y - height)


def spur_height(nodes: int, internode_mm: int) -> int:
    """How high a spur reaches over its base: internodes at the base of a cane are about half of those further out; half of one more over
    the top node."""
    return nodes * (internode_mm // 2) + internode_mm // UPRIGHT


def spur_shapes(css: str, dot: str, base: Point, nodes: int, internode_mm: int, left: bool) -> list[Shape]:
    """A spur and its nodes."""
    height = spur_height(nodes, internode_mm)
    shapes = [line(css, [base, leaning(base, height, left)])]
    for k in range(nodes):
        shapes.append(circle(dot, leaning(base, (k + 1) * (internode_mm // 2), left), internode_mm // DOT))
    return shapes


def cane_shapes(way: list[Point], nodes: int, internode_mm: int) -> list[Shape]:
    """A cane along its way with a node every internode, cut just over the last one."""
    length = nodes * internode_mm
    shapes = [line("cane", cut_at(way, float(length + internode_mm // DOT)))]
    for k in range(nodes):
        shapes.append(circle("node", along(way, float((k + 1) * internode_mm)), internode_mm // DOT))
    return shapes


def grown_shapes(css: str, base: Point, top: int, left: bool, internode_mm: int) -> list[Shape]:
    """A cane of last summer from its base up to the y where the drawing leaves it, with the break mark there."""
    height = max(internode_mm, base.y - top)
    tip = Point(base.x - height // STEEP if left else base.x + height // STEEP, base.y - height)
    return [line(css, [base, tip]), break_mark(tip, internode_mm // UPRIGHT)]


def break_mark(at: Point, size: int) -> Shape:
    """A wave across the end of wood that goes on beyond what is drawn."""
    half = size // 2
    return line("break", [Point(at.x - size, at.y + half), Point(at.x - half, at.y - half), Point(at.x + half, at.y + half), Point(at.x + size, at.y - half)])


def cut_mark(at: Point, size: int) -> Shape:
    """A cut: a slanted stroke across the wood."""
    return line("cut", [Point(at.x - size, at.y + size // 2), Point(at.x + size, at.y - size // 2)])


def cross_mm(internode_mm: int, frame: Frame) -> int:
    """Half the width of a cross where a position is missing: half an internode, or more where the whole row is small."""
    return max(internode_mm // 2, frame.text_mm // UPRIGHT)


def missing_shapes(at: Point, size: int) -> list[Shape]:
    """A position that is missing: a cross over the arm."""
    low = at.y - size // 2
    return [
        line("missing", [Point(at.x - size, low), Point(at.x + size, low - 2 * size)]),
        line("missing", [Point(at.x - size, low - 2 * size), Point(at.x + size, low)]),
    ]


def ways_of(arms: int, rise_mm: int, reach_mm: int, wire_y: int) -> list[list[Point]]:
    """The ways of the arms or canes in sight, left one first: one alone goes to the right."""
    right = path_to_right(rise_mm, reach_mm, wire_y)
    if arms == 1:
        return [right]
    return [mirrored(right), right]


def neighbour_shapes(frame: Frame, one_way: bool, rise_mm: int, space_mm: int, gap_mm: int) -> list[Shape]:
    """What is seen of the neighbours: their ends at the gap, and their trunks where the window reaches so far."""
    y = -frame.wire_mm
    head = y + max(0, rise_mm)
    shapes: list[Shape] = []
    tip = space_mm - gap_mm if one_way else (space_mm - gap_mm) // 2
    to_left = -space_mm + tip
    if to_left > frame.left:
        shapes.append(line("neighbour", [Point(max(frame.left, -space_mm), y), Point(to_left, y)]))
    to_right = space_mm if one_way else space_mm - tip
    if to_right < frame.right and not one_way:
        shapes.append(line("neighbour", [Point(to_right, y), Point(min(frame.right, space_mm), y)]))
    if one_way:
        bend = [Point(point.x + space_mm, point.y) for point in path_to_right(rise_mm, frame.right - space_mm, y)]
        shapes.append(line("neighbour", bend))
    for x in [-space_mm, space_mm]:
        if frame.left < x and x < frame.right:
            shapes.append(line("neighbour", [Point(x, 0), Point(x, head)]))
    return shapes
