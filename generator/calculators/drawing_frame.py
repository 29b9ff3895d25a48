"""What every drawing of a vine has around the vine: ground, wire, neighbours, labels on their own lines, and the window.

Labels stand on lines of their own above and below the vine, at the left or the right edge, each with a leader to its part; so they
cannot run into each other however long the words become.
"""

from dataclasses import dataclass

from generator.calculators.drawing_shapes import END, START, Drawing, Point, Shape, line, text
from generator.calculators.say import Say

LINES_OF_TEXT: int = 26
NECK: int = 4


@dataclass(frozen=True)
class Label:
    """A label, the edge it stands at, and the point of the vine that its leader goes to."""

    says: Say
    at_left: bool
    target: Point


@dataclass(frozen=True)
class Frame:
    """The part of the row that is shown: left and right edge, how high the vine reaches (negative y), the size of text. All mm."""

    left: int
    right: int
    highest: int
    text_mm: int


def frame_of(left: int, right: int, highest: int) -> Frame:
    """The frame; text is one twenty-sixth of its width, which is legible on a narrow screen."""
    return Frame(left, right, highest, (right - left) // LINES_OF_TEXT)


def ground_and_wire(frame: Frame, wire_y: int) -> list[Shape]:
    """The ground from edge to edge, and the wire."""
    ground = line("ground", [Point(frame.left, 0), Point(frame.right, 0)])
    return [ground, line("wire", [Point(frame.left, wire_y), Point(frame.right, wire_y)])]


def labels_above(frame: Frame, labels: list[Label]) -> list[Shape]:
    """Labels over the vine, the first uppermost."""
    shapes: list[Shape] = []
    for k, label in enumerate(labels):
        baseline = frame.highest - (2 * (len(labels) - k) - 1) * frame.text_mm
        shapes = shapes + label_shapes(frame, label, baseline, baseline + frame.text_mm // NECK)
    return shapes


def labels_below(frame: Frame, labels: list[Label]) -> list[Shape]:
    """Labels under the ground, the first lowest."""
    shapes: list[Shape] = []
    for k, label in enumerate(labels):
        baseline = 2 * (len(labels) - k) * frame.text_mm
        shapes = shapes + label_shapes(frame, label, baseline, baseline - frame.text_mm)
    return shapes


def label_shapes(frame: Frame, label: Label, baseline: int, leader_y: int) -> list[Shape]:
    """One label at an edge, and its leader from the word's near end to the part."""
    edge = frame.left + frame.text_mm // 2
    if not label.at_left:
        edge = frame.right - frame.text_mm // 2
    anchor = START if label.at_left else END
    inward = 2 * frame.text_mm if label.at_left else -2 * frame.text_mm
    leader = line("leader", [Point(edge + inward, leader_y), label.target])
    return [leader, text(anchor, Point(edge, baseline), label.says)]


def framed(frame: Frame, shapes: list[Shape], above: list[Label], below: list[Label], describe: list[Say]) -> Drawing:
    """The drawing with its labels and its window."""
    top = frame.highest - (2 * len(above) + 1) * frame.text_mm
    bottom = (2 * len(below) + 1) * frame.text_mm
    painted = shapes + labels_above(frame, above) + labels_below(frame, below)
    return Drawing(painted, frame.left, top, frame.right - frame.left, bottom - top, frame.text_mm, describe)
