"""The vine as it stands in winter, to scale: last summer's shoots as canes, drawn short with a break mark where they leave the picture;
what goes is dashed, what stays is drawn through, and each cut is a stroke across the wood.

A cordon has two canes on each live position, the lower and the upper one; a head has last year's canes along the wire with a cane on
every node, and two canes on last winter's renewal spurs. Real vines have more and other wood; the drawing says what is done with it.
"""

from generator.calculators.drawing_frame import Label, frame_of, framed, ground_and_wire
from generator.calculators.drawing_shapes import Drawing, Point, Shape, along, circle, cut_at, length_mm, line, no_drawing
from generator.calculators.drawing_vine import from_head, head_of, margin_mm, renewal_foot, slot_at
from generator.calculators.drawing_wood import (
    TALL,
    UPRIGHT,
    break_mark,
    cross_mm,
    cut_mark,
    grown_shapes,
    leaning,
    missing_shapes,
    neighbour_shapes,
    renewal_tip,
    spur_height,
    ways_of,
)
from generator.calculators.drawing_words import describe_standing
from generator.calculators.hand_work import hand_work
from generator.calculators.layout_places import first_arm_with_spurs, goes_left
from generator.calculators.layout_records import CANE, NEW_ARM, VineLayoutResult
from generator.calculators.say import Say
from generator.calculators.vine_stand import Slot, Stand, nodes_at, slots_on


def draw_before(layout: VineLayoutResult, stand: Stand, wire_mm: int, space_mm: int, gap_mm: int) -> Drawing:
    """The drawing of the vine that gets this layout. Lengths in whole mm as for the drawing after. No shapes where the form of the vine
    is not known, or where spurs are planned on a vine that has no cordon or positions yet."""
    no_cordon = layout.target != CANE and (not stand.on_cordon or layout.positions_assumed and not stand.assumed)
    if not stand.known or no_cordon or (stand.on_cordon and stand.positions == 0):
        return no_drawing()
    highest = wire_mm + TALL * layout.internode_mm
    one_way = stand.arms == 1 if stand.on_cordon else layout.arms == 1
    frame = frame_of(one_way, space_mm, wire_mm, highest, margin_mm(layout))
    head = head_of(layout, wire_mm)
    if stand.on_cordon:
        head = Point(0, max(0, layout.rise_mm) - wire_mm)
    shapes = ground_and_wire(frame) + neighbour_shapes(frame, one_way, layout.rise_mm, space_mm, gap_mm)
    shapes = shapes + [line("trunk", [Point(0, 0), head]), circle("head", head, layout.internode_mm // 2)]
    work = hand_work(layout, stand.arms if stand.on_cordon else 0)
    if stand.on_cordon:
        slots = slots_on(stand.arms, 0, stand.positions, stand.missing, min(layout_first(layout, stand), stand.arm_mm), stand.arm_mm)
        ways = ways_of(stand.arms, layout.rise_mm, stand.arm_mm, -wire_mm)
        shapes = shapes + standing_cordon(layout, slots, ways, -highest, cross_mm(layout.internode_mm, frame))
        labels = before_labels(slots, ways, -highest)
        return framed(frame, shapes, labels, -highest, describe_standing(layout, stand, stand.missing, 0, work))
    ways = [from_head(head, way) for way in ways_of(layout.arms, layout.rise_mm, layout.wire_mm, -wire_mm)]
    shapes = shapes + standing_head(layout, ways, head, -highest)
    cane = cut_at(ways[0], float(layout.canes[0] * layout.internode_mm))
    last = cane[len(cane) - 1]
    labels = [
        Label(Say("drawing.old_cane", [], []), False, not one_way, along(cane, length_mm(cane) * 2.0 / (2.0 + 1.0))),
        Label(Say("drawing.summer", [], []), True, not one_way, Point(last.x, (2 * -highest + last.y) // (2 + 1))),
    ]
    return framed(frame, shapes, labels, -highest, describe_standing(layout, stand, 0, len(layout.canes), work))


def layout_first(layout: VineLayoutResult, stand: Stand) -> int:
    """Where the first position stands, in mm: as the layout has it, or an even share of the arm where canes take its place."""
    if layout.first_spur_mm > 0:
        return layout.first_spur_mm
    return stand.arm_mm * stand.arms // max(1, stand.positions + stand.missing)


def standing_cordon(layout: VineLayoutResult, slots: list[Slot], ways: list[list[Point]], top: int, mark_mm: int) -> list[Shape]:
    """The arms with two canes on every live position. Which spur each position is to carry decides what is cut."""
    shapes: list[Shape] = []
    first = first_arm_with_spurs(layout)
    for k, way in enumerate(ways):
        goes = layout.target == CANE or k < first
        shapes.append(line("arm off" if goes else "arm", way))
        if goes:
            shapes.append(cut_mark(along(way, float(max(0, layout.rise_mm) + layout.internode_mm)), layout.internode_mm))
    shapes = shapes + canes_that_stay(layout, ways, top)
    kept = [slot for slot in slots if slot.live and slot.arm >= first and layout.target != CANE]
    nodes = nodes_at(kept, layout.spurs)
    seen = 0
    for slot in slots:
        stays = slot.arm >= first and layout.target != CANE
        if slot.arm < len(ways):
            base = slot_at(ways, slot)
            if not slot.live:
                shapes = shapes + missing_shapes(base, mark_mm)
            else:
                shapes = shapes + position_shapes(layout, base, nodes[seen] if stays else 0, stays, top)
        if slot.live and stays:
            seen += 1
    return shapes


def canes_that_stay(layout: VineLayoutResult, ways: list[list[Point]], top: int) -> list[Shape]:
    """On a cordon: the canes that will be laid, one on each side at most in sight, with their renewal spurs where they get one. On an arm
    that is laid new the cane stands on its side."""
    shapes: list[Shape] = []
    for k in range(min(2, len(layout.canes))):
        left = goes_left(min(len(ways), max(layout.arms, len(layout.canes))), k)
        if len(layout.renewals) > 0:
            shapes = shapes + from_the_head(layout, ways[0][0], left, top)
        else:
            shapes = shapes + cane_to_lay(layout, ways[0][0], left, top)
    return shapes


def cane_to_lay(layout: VineLayoutResult, head: Point, left: bool, top: int) -> list[Shape]:
    """A cane near the head that stays, drawn short, and the cut to its length."""
    internode = layout.internode_mm
    kept = leaning(head, head.y - top, left)
    return [line("cane", [head, kept]), break_mark(kept, internode // UPRIGHT), cut_mark(Point(kept.x, kept.y + internode), internode // UPRIGHT)]


def position_shapes(layout: VineLayoutResult, base: Point, nodes: int, on_kept_arm: bool, top: int) -> list[Shape]:
    """A live position: last winter's spur with its lower and its upper cane. The lower is cut to its nodes, the upper goes with the wood it
    stands on; where no spur is to stay one cut takes both, and on an arm that goes none is needed."""
    internode = layout.internode_mm
    left = base.x < 0
    low = Point(base.x, base.y - internode // 2)
    high = Point(base.x, base.y - internode)
    if nodes == 0:
        gone = [line("old off", [base, high])] + grown_shapes("cane off", low, top, left, internode) + grown_shapes("cane off", high, top, not left, internode)
        if on_kept_arm:
            gone.append(cut_mark(Point(base.x, base.y - internode // UPRIGHT), internode // UPRIGHT))
        return gone
    height = spur_height(nodes, internode)
    tip = leaning(low, height, left)
    shapes = [line("old", [base, low]), line("old off", [low, high]), line("spur", [low, tip])]
    shapes = shapes + grown_shapes("cane off", tip, top, left, internode) + grown_shapes("cane off", high, top, not left, internode)
    return shapes + [cut_mark(tip, internode // UPRIGHT), cut_mark(Point(base.x, (low.y + high.y) // 2), internode // UPRIGHT)]


def standing_head(layout: VineLayoutResult, ways: list[list[Point]], head: Point, top: int) -> list[Shape]:
    """Last year's canes along the wire with a cane on every node, and on each side of the head the two canes of a renewal spur: one stays as
    the new cane, the other is cut to the new renewal spur."""
    internode = layout.internode_mm
    shapes: list[Shape] = []
    for k, way in enumerate(ways):
        left = goes_left(len(ways), k)
        nodes = layout.canes[min(k, len(layout.canes) - 1)]
        cane = cut_at(way, float(nodes * internode))
        shapes.append(line("arm off", cane))
        shapes.append(cut_mark(along(cane, float(internode // 2)), internode // UPRIGHT))
        for node in range(2, nodes + 1):
            shapes = shapes + grown_shapes("cane off", along(cane, float(node * internode)), top, left, internode * 2)
        shapes = shapes + from_the_head(layout, head, left, top)
    return shapes


def from_the_head(layout: VineLayoutResult, head: Point, left: bool, top: int) -> list[Shape]:
    """Two canes near the head on one side: the upper stays, cut to its length, as the new cane; the lower is cut to the renewal spur."""
    internode = layout.internode_mm
    outward = left or layout.arms == 1
    foot = renewal_foot(layout, head, 0 if outward else 1)
    tip = renewal_tip(foot, layout.renewals[0], internode, outward)
    shapes = [line("renewal", [foot, tip])] + grown_shapes("cane off", tip, top, not outward, internode)
    return shapes + [cut_mark(tip, internode // UPRIGHT)] + cane_to_lay(layout, head, left, top)


def before_labels(slots: list[Slot], ways: list[list[Point]], top: int) -> list[Label]:
    """Last summer's canes, and a missing position; each from the side that the vine goes to first."""
    side = -1 if len(ways) > 1 else 1
    labels: list[Label] = []
    live = outermost([slot for slot in slots if slot.live and slot.arm < len(ways)], ways, side)
    for at in live:
        labels.append(Label(Say("drawing.summer", [], []), True, side < 0, Point(at.x, (2 * top + at.y) // (2 + 1))))
    for at in outermost([slot for slot in slots if not slot.live and slot.arm < len(ways)], ways, side):
        left = at.x < 0 and side < 0
        labels.append(Label(Say("drawing.missing", [float(len([slot for slot in slots if not slot.live]))], []), False, left, at))
    return labels


def outermost(slots: list[Slot], ways: list[list[Point]], side: int) -> list[Point]:
    """The place of the slot that stands furthest to one side; none where there is no slot."""
    found: list[Point] = []
    for slot in slots:
        at = slot_at(ways, slot)
        if len(found) == 0 or side * at.x > side * found[0].x:
            found = [at]
    return found
