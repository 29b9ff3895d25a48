"""The way of a cane or an arm: up from the head, over in a bend, and along the wire.

The head stands below the wire, so the first part of a cane is not on the wire: about two nodes sit between head and wire. A
bend of height h takes h of the wire's length (all of it when the wire is shorter) and is about 1.6 h long, which is where the
extra nodes find their place.
"""

from generator.calculators.drawing_shapes import Point, along, length_mm

PIECES: int = 8


def path_to_right(rise_mm: int, reach_mm: int, wire_y: int) -> list[Point]:
    """The points from the head (x = 0, rise_mm under the wire) to the place reach_mm along the wire, which lies at y = wire_y.

    A head level with the wire or above it (rise_mm not above zero) has no bend.
    """
    points: list[Point] = []
    rise = max(0, rise_mm)
    run = min(rise, reach_mm)
    if rise > 0:
        points = [bend_point(run, rise, k, wire_y) for k in range(PIECES)]
    points.append(Point(run, wire_y))
    if reach_mm > run:
        points.append(Point(reach_mm, wire_y))
    return points


def bend_point(run: int, rise: int, piece: int, wire_y: int) -> Point:
    """A point of the bend, a parabola that leaves the head straight up and meets the wire flat."""
    done = float(piece) / float(PIECES)
    left = 1.0 - done
    return Point(round(float(run) * done * done), wire_y + round(float(rise) * left * left))


def nodes_on(path: list[Point], internode_mm: int) -> int:
    """How many nodes a cane on this way has room for: the first is one internode from the head. Raises ValueError when
    the internode is not above zero."""
    if internode_mm <= 0:
        raise ValueError("the internode must be above zero")
    return round(length_mm(path)) // internode_mm


def nodes_along(rise_mm: int, reach_mm: int, internode_mm: int, nodes: int) -> list[int]:
    """How far along the wire each node of a cane stands, in mm: on the bend where it is, and on the wire an internode from the one before."""
    way = path_to_right(rise_mm, reach_mm, 0)
    bend = way[: PIECES + 1] if rise_mm > 0 else way[:1]
    bend_mm = round(length_mm(bend))
    start = bend[len(bend) - 1].x
    reached: list[int] = []
    for node in range(nodes):
        grown = (node + 1) * internode_mm
        if grown < bend_mm:
            reached.append(along(bend, float(grown)).x)
        else:
            reached.append(min(reach_mm, start + grown - bend_mm))
    return reached


def mirrored(points: list[Point]) -> list[Point]:
    """The same way to the left of the trunk."""
    return [Point(-point.x, point.y) for point in points]
