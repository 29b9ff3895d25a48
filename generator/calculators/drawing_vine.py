"""The pruned vine to scale: a cordon with spurs (and canes beside them), or a head with canes and renewal spurs.

One vine seen from the alley, with the tips of its neighbours. Seen so, two curtains lie behind each other; one is drawn.
"""

from generator.calculators.cane_path import mirrored, path_to_right
from generator.calculators.drawing_frame import Frame, Label, frame_of, framed, ground_and_wire
from generator.calculators.drawing_shapes import Drawing, Point, Shape, along, circle, cut_at, length_mm, line
from generator.calculators.drawing_wood import cane_shapes, neighbour_shapes, spur_shapes, spur_tip
from generator.calculators.layout_records import VineLayoutResult
from generator.calculators.say import Say
from generator.calculators.units import MM_PER_M

UPRIGHT: int = 3
OUTWARD: int = 1


def draw_vine(layout: VineLayoutResult, wire_height_mm: int, space_mm: int, gap_mm: int) -> Drawing:
    """The drawing of a layout. Lengths in whole mm: height of the wire, spacing, gap between the tips."""
    wire_y = -wire_height_mm
    frame = frame_for(layout, wire_y, space_mm)
    shapes = ground_and_wire(frame, wire_y) + neighbour_shapes(layout.arms, wire_y, layout.rise_mm, space_mm, gap_mm, frame.left, frame.right)
    if len(layout.renewals) > 0:
        return draw_head(layout, frame, shapes, wire_y, gap_mm)
    return draw_cordon(layout, frame, shapes, wire_y, gap_mm)


def frame_for(layout: VineLayoutResult, wire_y: int, space_mm: int) -> Frame:
    """The vine, a piece of each neighbour, and room above for the longest spur."""
    half = space_mm // 2
    margin = half // 2
    longest = 2
    for spur in layout.spurs + layout.renewals:
        longest = max(longest, spur)
    highest = wire_y - (longest + 2) * (layout.internode_mm // 2)
    if layout.arms == 1:
        return frame_of(-margin, space_mm + margin, highest)
    return frame_of(-half - margin, half + margin, highest)


def arms_drawn(layout: VineLayoutResult, wire_y: int) -> list[list[Point]]:
    """The ways of the arms in sight, left one first: one alone goes to the right."""
    right = path_to_right(layout.rise_mm, layout.arm_mm, wire_y)
    if layout.arms == 1:
        return [right]
    return [mirrored(right), right]


def trunk(layout: VineLayoutResult, wire_y: int) -> Shape:
    """The trunk from the ground to the head."""
    return line("trunk", [Point(0, 0), Point(0, wire_y + max(0, layout.rise_mm))])


def draw_cordon(layout: VineLayoutResult, frame: Frame, around: list[Shape], wire_y: int, gap_mm: int) -> Drawing:
    """A cordon: arms on the wire, spurs on them, canes beside the spurs if there are any."""
    ways = arms_drawn(layout, wire_y)
    shapes = around + [trunk(layout, wire_y)] + [line("arm", way) for way in ways]
    shown = layout.spurs[: (len(layout.spurs) * len(ways) + layout.arms - 1) // layout.arms]
    on_first = len(shown) // len(ways)
    tip = Point(0, wire_y)
    for k, way in enumerate(ways):
        spurs = shown[on_first:] if k > 0 else shown[: len(shown) - on_first * (len(ways) - 1)]
        if k == 0 and len(ways) > 1:
            spurs = [spurs[len(spurs) - 1 - s] for s in range(len(spurs))]
        for s, nodes in enumerate(spurs):
            base = along(way, place_of(layout, way, s, len(spurs)))
            shapes = shapes + spur_shapes("spur", base, nodes, layout.internode_mm // 2, UPRIGHT, s % 2 == 0)
            tip = spur_tip(base, nodes, layout.internode_mm // 2, UPRIGHT, s % 2 == 0)
        if k < len(layout.canes):
            shapes = shapes + beside(layout, way, layout.canes[k])
    arm = ways[0]
    above = [Label(Say("drawing.arm", [float(layout.arm_mm) / MM_PER_M], []), True, along(arm, length_mm(arm) / 2.0))]
    if len(layout.spurs) > 0:
        above.append(Label(Say("drawing.spur", [float(max(layout.spurs))], []), False, tip))
    below = [gap_label(layout, wire_y, gap_mm)]
    return framed(frame, shapes, above, below, describe_cordon(layout))


def place_of(layout: VineLayoutResult, way: list[Point], spur: int, spurs: int) -> float:
    """How far along an arm a spur stands: the first at its place, the last at the tip, the others evenly between."""
    rise = length_mm(way) - float(layout.arm_mm)
    first = float(layout.first_spur_mm) + max(0.0, rise)
    if spurs < 2:
        return first
    return first + (length_mm(way) - first) * float(spur) / float(spurs - 1)


def beside(layout: VineLayoutResult, way: list[Point], nodes: int) -> list[Shape]:
    """A cane beside the spurs, tied a little over the arm."""
    lifted = [Point(point.x, point.y - layout.internode_mm) for point in way]
    return cane_shapes([way[0]] + lifted, nodes, layout.internode_mm)


def draw_head(layout: VineLayoutResult, frame: Frame, around: list[Shape], wire_y: int, gap_mm: int) -> Drawing:
    """A head with canes, one each way in sight, and renewal spurs."""
    ways = arms_drawn(layout, wire_y)
    head = Point(0, wire_y + max(0, layout.rise_mm))
    shapes = around + [trunk(layout, wire_y)]
    for k, way in enumerate(ways):
        if k < len(layout.canes):
            shapes = shapes + cane_shapes(way, layout.canes[k], layout.internode_mm)
    tip = head
    for k in range(min(len(layout.renewals), 2)):
        leans_left = k % 2 == 0
        base = Point(head.x, head.y + layout.internode_mm // 2)
        shapes = shapes + spur_shapes("renewal", base, layout.renewals[k], layout.internode_mm // 2, OUTWARD, leans_left)
        tip = spur_tip(base, layout.renewals[k], layout.internode_mm // 2, OUTWARD, leans_left)
    shapes.append(circle("head", head, layout.internode_mm // 2))
    cane = cut_at(ways[0], float(layout.canes[0] * layout.internode_mm))
    above = [Label(Say("drawing.cane", [float(layout.canes[0])], []), True, along(cane, length_mm(cane) * 2.0 / (2.0 + 1.0)))]
    below = [Label(Say("drawing.renewal", [float(layout.renewals[0])], []), True, tip), gap_label(layout, wire_y, gap_mm)]
    return framed(frame, shapes, above, below, describe_head(layout))


def gap_label(layout: VineLayoutResult, wire_y: int, gap_mm: int) -> Label:
    """The gap between this vine's tip and the next one's, to the right."""
    return Label(Say("drawing.gap", [float(gap_mm) / MM_PER_M], []), False, Point(layout.arm_mm + gap_mm // 2, wire_y))


def describe_cordon(layout: VineLayoutResult) -> list[Say]:
    """What the drawing of a cordon shows, for those who do not see it."""
    says = [Say("drawing.describe_arms", [float(layout.arms), float(layout.arm_mm) / MM_PER_M], [])]
    if len(layout.spurs) > 0 and max(layout.spurs) == min(layout.spurs):
        says.append(Say("drawing.describe_spurs_alike", [float(len(layout.spurs)), float(layout.spurs[0])], []))
    elif len(layout.spurs) > 0:
        says.append(Say("drawing.describe_spurs", [float(len(layout.spurs)), float(min(layout.spurs)), float(max(layout.spurs))], []))
    if len(layout.canes) > 0:
        says.append(Say("drawing.describe_canes", [float(len(layout.canes)), float(max(layout.canes))], []))
    return says + out_of_sight(layout)


def describe_head(layout: VineLayoutResult) -> list[Say]:
    """What the drawing of a head with canes shows, for those who do not see it."""
    says = [
        Say("drawing.describe_head", [float(max(0, layout.rise_mm)) / MM_PER_M], []),
        Say("drawing.describe_canes", [float(len(layout.canes)), float(max(layout.canes))], []),
        Say("drawing.describe_renewals", [float(len(layout.renewals)), float(layout.renewals[0])], []),
    ]
    return says + out_of_sight(layout)


def out_of_sight(layout: VineLayoutResult) -> list[Say]:
    """That more arms or canes stand behind those drawn."""
    if layout.arms > 2 or len(layout.canes) > 2:
        return [Say("drawing.behind", [], [])]
    return []
