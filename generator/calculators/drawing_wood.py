"""Wood of one year drawn to scale: spurs, canes, and the neighbours' ends."""

from generator.calculators.cane_path import path_to_right
from generator.calculators.drawing_shapes import Point, Shape, along, circle, cut_at, line

DOT: int = 5


def spur_tip(base: Point, nodes: int, internode_mm: int, steep: int, left: bool) -> Point:
    """The end of a spur: half an internode over its top node, leaning out by one part in `steep`."""
    height = nodes * internode_mm + internode_mm // 2
    lean = height // steep
    return Point(base.x - lean if left else base.x + lean, base.y - height)


def spur_shapes(css: str, base: Point, nodes: int, internode_mm: int, steep: int, left: bool) -> list[Shape]:
    """A spur and its nodes. Internodes at the base of a cane are short: about half of those further out."""
    stem = [base, spur_tip(base, nodes, internode_mm, steep, left)]
    height = float(nodes * internode_mm + internode_mm // 2)
    shapes = [line(css, stem)]
    for k in range(nodes):
        part = float((k + 1) * internode_mm) / height
        at = Point(base.x + round(part * float(stem[1].x - base.x)), base.y + round(part * float(stem[1].y - base.y)))
        shapes.append(circle("node", at, internode_mm // DOT))
    return shapes


def cane_shapes(way: list[Point], nodes: int, internode_mm: int) -> list[Shape]:
    """A cane along its way with a node every internode, cut just over the last one."""
    length = nodes * internode_mm
    shapes = [line("cane", cut_at(way, float(length + internode_mm // DOT)))]
    for k in range(nodes):
        shapes.append(circle("node", along(way, float((k + 1) * internode_mm)), internode_mm // (2 * 2)))
    return shapes


def neighbour_shapes(arms: int, wire_y: int, rise_mm: int, space_mm: int, gap_mm: int, left: int, right: int) -> list[Shape]:
    """What is seen of the neighbours: their tips at the gap, or the head of the one that a single arm reaches."""
    if arms == 1:
        shapes = [line("neighbour", [Point(left, wire_y), Point(-gap_mm, wire_y)])]
        head = wire_y + max(0, rise_mm)
        shapes.append(line("neighbour", [Point(space_mm, 0), Point(space_mm, head)]))
        bend = [Point(point.x + space_mm, point.y) for point in path_to_right(rise_mm, right - space_mm, wire_y)]
        shapes.append(line("neighbour", bend))
        return shapes
    tip = (space_mm + gap_mm) // 2
    return [
        line("neighbour", [Point(left, wire_y), Point(-tip, wire_y)]),
        line("neighbour", [Point(tip, wire_y), Point(right, wire_y)]),
    ]
