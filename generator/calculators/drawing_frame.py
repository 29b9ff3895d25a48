"""What every drawing of a vine has around the vine: ground, wire, labels, and the window.

At most four labels: two over the vine, each on a line of its own, the upper one at the left edge and the lower at the right; two under
the wire beside the trunk, one at each edge. So they cannot run into each other however long the words become, each leader stays on
its own side, and none crosses the ground. Where there is no room under the wire, those two are left to the description.
"""

from dataclasses import dataclass

from generator.calculators.drawing_shapes import END, START, Drawing, Point, Shape, line, text
from generator.calculators.say import Say

LINES_OF_TEXT: int = 26
MARGIN: int = 8
TALLEST: int = 7
WIDEST: int = 6
ROOM_UNDER: int = 4


@dataclass(frozen=True)
class Label:
    """A label, whether it stands over the vine or under the wire, at the left edge or the right, and the point its leader goes to."""

    says: Say
    over: bool
    at_left: bool
    target: Point


@dataclass(frozen=True)
class Frame:
    """The part of the row that is shown: left and right edge, the size of text, how high the wire is, and between what
    the labels under the wire stand: the edges, or the trunk and the neighbour's where the vine goes one way. All mm."""

    left: int
    right: int
    text_mm: int
    wire_mm: int
    under_left: int
    under_right: int


def frame_of(one_way: bool, space_mm: int, wire_mm: int, highest_mm: int, margin_mm: int) -> Frame:
    """The vine and a piece of each neighbour, at least so wide that a tall vine stays legible. Text is one twenty-sixth of the width.
    one_way: the vine goes to the right only; highest_mm: how high its wood reaches; margin_mm: what must at least show of a neighbour."""
    width = max(space_mm + 2 * max(margin_mm, space_mm // MARGIN), highest_mm * WIDEST // TALLEST)
    margin = (width - space_mm) // 2
    size = width // LINES_OF_TEXT
    if one_way:
        return Frame(-margin, width - margin, size, wire_mm, size, space_mm - size)
    left = -(space_mm // 2) - margin
    return Frame(left, left + width, size, wire_mm, left + size // 2, left + width - size // 2)


def ground_and_wire(frame: Frame) -> list[Shape]:
    """The ground from edge to edge, and the wire."""
    return [line("ground", [Point(frame.left, 0), Point(frame.right, 0)]), wire_at(frame, -frame.wire_mm)]


def wire_at(frame: Frame, y: int) -> Shape:
    """A wire from edge to edge."""
    return line("wire", [Point(frame.left, y), Point(frame.right, y)])


def label_shapes(frame: Frame, label: Label, highest: int) -> list[Shape]:
    """A label at its edge, and the leader from its near end to the part. highest is the y of the highest wood."""
    size = frame.text_mm
    baseline = under_line(frame, label)
    leader_y = baseline - size
    if label.over:
        baseline = highest - (2 * size + size // 2 if label.at_left else size)
        leader_y = baseline + size // ROOM_UNDER
    edge = frame.under_left if label.at_left else frame.under_right
    if label.over:
        edge = frame.left + size // 2 if label.at_left else frame.right - size // 2
    inward = size if label.at_left else -size
    leader = line("leader", [Point(edge + inward, leader_y), label.target])
    return [leader, text(START if label.at_left else END, Point(edge, baseline), label.says)]


def under_line(frame: Frame, label: Label) -> int:
    """The baseline of a label under the wire: lower than its part, so that the leader goes up."""
    return max(-frame.wire_mm + 2 * frame.text_mm + frame.text_mm // 2, label.target.y + 2 * frame.text_mm)


def framed(frame: Frame, shapes: list[Shape], labels: list[Label], highest: int, describe: list[Say]) -> Drawing:
    """The drawing with its labels and its window."""
    painted = shapes
    for label in labels:
        if label.over or under_line(frame, label) < -frame.text_mm:
            painted = painted + label_shapes(frame, label, highest)
    top = highest - ROOM_UNDER * frame.text_mm
    return Drawing(painted, frame.left, top, frame.right - frame.left, frame.text_mm - top, frame.text_mm, describe)
