"""The pruned vine to scale: a cordon with spurs, a head with canes, or both.

One vine seen from the alley, with the ends of its neighbours. Two curtains lie behind each other; the front one is drawn. More canes
than one each way stand on further wires over the first.
"""

from generator.calculators.drawing_frame import Frame, Label, frame_of, framed, ground_and_wire, wire_at
from generator.calculators.drawing_shapes import Drawing, Point, Shape, along, at_x, circle, cut_at, length_mm, line
from generator.calculators.drawing_wood import (
    DOT,
    UPRIGHT,
    cane_shapes,
    cross_mm,
    leaning,
    missing_shapes,
    neighbour_shapes,
    renewal_tip,
    spur_height,
    spur_shapes,
    ways_of,
)
from generator.calculators.drawing_words import describe_pruned
from generator.calculators.layout_places import goes_left
from generator.calculators.layout_records import CANE, NEW_ARM, VineLayoutResult
from generator.calculators.say import Say
from generator.calculators.units import MM_PER_M
from generator.calculators.vine_stand import Slot, Stand, nodes_at, slots_of


def draw_vine(layout: VineLayoutResult, stand: Stand, wire_mm: int, space_mm: int, gap_mm: int) -> Drawing:
    """The drawing of a layout. Lengths in whole mm: height of the wire, spacing, gap between the tips."""
    highest = highest_of(layout, wire_mm)
    frame = frame_of(layout.arms == 1, space_mm, wire_mm, highest, margin_mm(layout))
    head = head_of(layout, wire_mm)
    shapes = ground_and_wire(frame) + neighbour_shapes(frame, layout.arms == 1, layout.rise_mm, space_mm, gap_mm)
    shapes = shapes + [line("trunk", [Point(0, 0), head])]
    slots = slots_of(layout, stand)
    side = gone_side(layout, slots)
    labels = [Label(Say("drawing.gap", [float(gap_mm) / MM_PER_M], []), False, side > 0, gap_at(layout, wire_mm, space_mm, gap_mm, side))]
    if layout.target != CANE:
        shapes = shapes + cordon_shapes(layout, slots, wire_mm, cross_mm(layout.internode_mm, frame))
        labels = labels + cordon_labels(layout, slots, wire_mm)
    shapes = shapes + canes_in_sight(layout, frame) + renewal_shapes(layout, head)
    labels = labels + cane_labels(layout, head, wire_mm)
    shapes.append(circle("head", head, layout.internode_mm // 2))
    return framed(frame, shapes, labels, -highest, describe_pruned(layout, len([slot for slot in slots if not slot.live])))


def margin_mm(layout: VineLayoutResult) -> int:
    """Room beside the trunk for a renewal spur, or beside the tip for a long spur that leans out."""
    longest = max(layout.spurs) if len(layout.spurs) > 0 else 0
    renewal = max(layout.renewals) if len(layout.renewals) > 0 else 0
    return spur_height(max(longest // 2, renewal), layout.internode_mm) + layout.internode_mm


def head_of(layout: VineLayoutResult, wire_mm: int) -> Point:
    """The head: below the wire or, where canes are laid down from it, above. A cordon lies on the wire however its trunk was measured."""
    if layout.target == CANE:
        return Point(0, layout.rise_mm - wire_mm)
    return Point(0, max(0, layout.rise_mm) - wire_mm)


def highest_of(layout: VineLayoutResult, wire_mm: int) -> int:
    """How high the wood reaches over the ground, in mm: the longest spur on the wire, or the highest wire with a cane."""
    longest = max(layout.spurs) if len(layout.spurs) > 0 else 0
    renewal = max(layout.renewals) if len(layout.renewals) > 0 else 0
    over = max(spur_height(longest, layout.internode_mm) + layout.internode_mm // 2, spur_height(renewal, layout.internode_mm) - min(0, layout.rise_mm))
    return wire_mm + max(over, tier_mm(layout, max(0, tiers_of(layout) - 1)) + layout.internode_mm // 2)


def tier_mm(layout: VineLayoutResult, tier: int) -> int:
    """How high over the first wire a pair of canes is tied: beside spurs over their tips, each further pair two internodes higher."""
    base = 0
    if layout.target != CANE and layout.target != NEW_ARM:
        longest = max(layout.spurs) if len(layout.spurs) > 0 else 0
        base = spur_height(longest, layout.internode_mm) + layout.internode_mm
    return base + 2 * tier * layout.internode_mm


def cordon_shapes(layout: VineLayoutResult, slots: list[Slot], wire_mm: int, mark_mm: int) -> list[Shape]:
    """The arms, the spurs at their positions, and crosses of a size where positions are missing. An arm laid new is not drawn here."""
    ways = ways_of(layout.arms, layout.rise_mm, layout.arm_mm, -wire_mm)
    shapes = [line("arm", ways[k]) for k in range(len(ways)) if layout.target != NEW_ARM or k > 0]
    nodes = nodes_at(slots, layout.spurs)
    for k, slot in enumerate(slots):
        if slot.arm < len(ways):
            base = slot_at(ways, slot)
            if not slot.live:
                shapes = shapes + missing_shapes(base, mark_mm)
            elif nodes[k] > 0:
                foot = Point(base.x, base.y - layout.internode_mm // 2)
                shapes.append(line("old", [base, foot]))
                shapes = shapes + spur_shapes("spur", "node", foot, nodes[k], layout.internode_mm, base.x < 0)
    return shapes


def slot_at(ways: list[list[Point]], slot: Slot) -> Point:
    """Where a position stands on the arm in sight."""
    way = ways[slot.arm]
    side = -1 if goes_left(len(ways), slot.arm) else 1
    return at_x(way, side * slot.distance_mm)


def cane_ways(layout: VineLayoutResult, wire_mm: int) -> list[list[Point]]:
    """The ways of the canes in sight, in pairs from the first wire upwards; a vine that goes one way has one on each wire."""
    ways: list[list[Point]] = []
    for tier in range(tiers_of(layout)):
        lift = tier_mm(layout, tier)
        pair = ways_of(layout.arms, layout.rise_mm + lift, layout.wire_mm, -wire_mm - lift)
        ways = ways + [from_head(head_of(layout, wire_mm), way) for way in pair]
    return ways[: len(layout.canes)]


def tiers_of(layout: VineLayoutResult) -> int:
    """The wires that carry canes, one over the other: two canes on each, or one where the vine goes one way."""
    each = 1 if layout.arms == 1 else 2
    return (len(layout.canes) + each - 1) // each


def from_head(head: Point, way: list[Point]) -> list[Point]:
    """The same way, down from a head that stands above it."""
    if head.y >= way[0].y:
        return way
    end = way[len(way) - 1]
    drop = min(way[0].y - head.y, abs(end.x) // 2)
    return [head, Point(-drop if end.x < 0 else drop, way[0].y), end]


def canes_in_sight(layout: VineLayoutResult, frame: Frame) -> list[Shape]:
    """The canes, and the further wires that they are tied to."""
    shapes: list[Shape] = []
    for k, way in enumerate(cane_ways(layout, frame.wire_mm)):
        lift = tier_mm(layout, k if layout.arms == 1 else k // 2)
        if lift > 0 and (layout.arms == 1 or k % 2 == 0):
            shapes.append(wire_at(frame, -frame.wire_mm - lift))
        shapes = shapes + cane_shapes(way, layout.canes[k], layout.internode_mm)
    return shapes


def renewal_shapes(layout: VineLayoutResult, head: Point) -> list[Shape]:
    """Two renewal spurs at most are in sight, one leaning each way, their nodes as open rings."""
    shapes: list[Shape] = []
    for k in range(min(2, len(layout.renewals))):
        foot = renewal_foot(layout, head, k)
        shapes.append(line("renewal", [foot, renewal_tip(foot, layout.renewals[k], layout.internode_mm, k % 2 == 0)]))
        for node in range(layout.renewals[k]):
            up = (node + 1) * (layout.internode_mm // 2)
            shapes.append(circle("open", Point(foot.x - up if k % 2 == 0 else foot.x + up, foot.y - up), layout.internode_mm // DOT))
    return shapes


def renewal_foot(layout: VineLayoutResult, head: Point, k: int) -> Point:
    """Where a renewal spur stands: on the shoulder of the trunk just under the head, the first to the left."""
    part = layout.internode_mm // UPRIGHT
    return Point(head.x - part if k % 2 == 0 else head.x + part, head.y + layout.internode_mm // 2)


def gone_side(layout: VineLayoutResult, slots: list[Slot]) -> int:
    """The side on which a missing position is labelled: -1 left, 1 right where only the arm to the right misses one, 0 none (and on a vine
    that goes one way, where the label stands beside the trunk)."""
    gone = [slot for slot in slots if not slot.live and slot.arm < 2]
    if len(gone) == 0 or layout.arms == 1:
        return 0
    return -1 if any(goes_left(layout.arms, slot.arm) for slot in gone) else 1


def gap_at(layout: VineLayoutResult, wire_mm: int, space_mm: int, gap_mm: int, side: int) -> Point:
    """The middle of the gap to the neighbour on the right, or on the left where the right side has another label."""
    if layout.arms == 1:
        return Point(space_mm - gap_mm // 2, -wire_mm)
    return Point(-(space_mm // 2) if side > 0 else space_mm // 2, -wire_mm)


def cordon_labels(layout: VineLayoutResult, slots: list[Slot], wire_mm: int) -> list[Label]:
    """A spur, from the left or, where canes are laid as well, from the right (where the vine goes one way the first spur, from the left); and
    a missing position, or else the arm's length."""
    ways = ways_of(layout.arms, layout.rise_mm, layout.arm_mm, -wire_mm)
    nodes = nodes_at(slots, layout.spurs)
    labels: list[Label] = []
    one_way = len(ways) == 1
    at_left = len(layout.canes) == 0 or one_way
    bearing = [k for k in range(len(slots)) if nodes[k] > 0 and slots[k].arm < len(ways)]
    mine = [k for k in bearing if one_way or goes_left(len(ways), slots[k].arm) == at_left]
    if len(mine) > 0:
        k = mine[0] if one_way else mine[len(mine) - 1]
        base = slot_at(ways, slots[k])
        tip = leaning(Point(base.x, base.y - layout.internode_mm // 2), spur_height(nodes[k], layout.internode_mm), base.x < 0)
        labels.append(Label(Say("drawing.spur", [float(nodes[k])], []), True, at_left, tip))
    gone = [slot for slot in slots if not slot.live and slot.arm < len(ways)]
    if len(gone) > 0:
        number = float(len([slot for slot in slots if not slot.live]))
        labels.append(Label(Say("drawing.missing", [number], []), False, gone_side(layout, slots) < 1, slot_at(ways, gone[0])))
    elif layout.target != NEW_ARM:
        labels.append(Label(Say("drawing.arm", [float(layout.arm_mm) / MM_PER_M], []), False, True, along(ways[0], length_mm(ways[0]) / 2.0)))
    return labels


def cane_labels(layout: VineLayoutResult, head: Point, wire_mm: int) -> list[Label]:
    """A cane, and a renewal spur."""
    labels: list[Label] = []
    ways = cane_ways(layout, wire_mm)
    if len(ways) == 0:
        return labels
    way = ways[0]
    cane = cut_at(way, float(layout.canes[0] * layout.internode_mm))
    alone_right = way[len(way) - 1].x > 0
    labels.append(Label(Say("drawing.cane", [float(layout.canes[0])], []), True, not alone_right, along(cane, length_mm(cane) * 2.0 / (2.0 + 1.0))))
    if len(layout.renewals) > 0 and layout.target == CANE:
        tip = renewal_tip(renewal_foot(layout, head, 0), layout.renewals[0], layout.internode_mm, True)
        labels.append(Label(Say("drawing.renewal", [float(layout.renewals[0])], []), alone_right, True, tip))
    return labels
