"""The views of the node number as bars over one line of nodes, and the number that stays as a stroke through each of them.

Units of the drawing are its own, no lengths of a vine: 360 across, so that words of 16 stay legible on a phone. Each bar has its words above it,
and differs by nothing but its place: the drawing reads the same in black and white.
"""

from dataclasses import dataclass

from generator.calculators.drawing_shapes import END, MIDDLE, START, Drawing, Point, Shape, circle, line, no_drawing, text
from generator.calculators.facts import Maybe
from generator.calculators.say import Say

ACROSS: int = 360
EDGE: int = 12
LETTERS: int = 16
BAR: int = 44
TICK: int = 5
DOT: int = 4
TICKS: int = 6
FIVE: int = 5
TEN: int = 10
MOST_SHOWN: int = 10000


@dataclass(frozen=True)
class Row:
    """One view: its ends in nodes, the words above its bar, and the sentence for those who do not see it."""

    low: float
    high: float
    says: Say
    told: Say


def draw_views(rows: list[Row], nodes: Maybe) -> Drawing:
    """The drawing; without a row none."""
    if len(rows) == 0:
        return no_drawing()
    end = end_of(rows, nodes)
    floor = top_of(len(rows))
    shapes: list[Shape] = []
    for k, row in enumerate(rows):
        shapes = shapes + bar(row, top_of(k), end)
    shapes = axis(floor, end) + shapes
    describe = [Say("node_number.drawn", [], [])] + [row.told for row in rows]
    if nodes.ok:
        shapes = shapes + mark(nodes.number, len(rows), end)
        describe.append(Say("node_number.drawn_mark", [nodes.number], []))
    return Drawing(shapes, 0, 0, ACROSS, floor + LETTERS * 2 + TICK, LETTERS, describe)


def end_of(rows: list[Row], nodes: Maybe) -> int:
    """The node number at the right end of the line: over every end by a little, at least ten."""
    most = float(TEN)
    for row in rows:
        most = max(most, min(row.high, float(MOST_SHOWN)))
    if nodes.ok:
        most = max(most, min(nodes.number, float(MOST_SHOWN)))
    return int(most) + max(1, int(most) // TEN)


def top_of(row: int) -> int:
    """Where a row begins: words, then the bar under them."""
    return LETTERS * 2 + row * BAR


def place(nodes: float, end: int) -> int:
    """Where a node number stands across."""
    part = min(1.0, max(0.0, nodes / float(end)))
    return EDGE + round(part * float(ACROSS - 2 * EDGE))


def middle_of(top: int) -> int:
    """The middle of a row's bar."""
    return top + LETTERS + LETTERS // 2


def bar(row: Row, top: int, end: int) -> list[Shape]:
    """A view's words and its bar, with a stroke at each end; a view of one number is a dot."""
    y = middle_of(top)
    low = place(row.low, end)
    high = place(row.high, end)
    words = text(START, Point(EDGE, top + LETTERS // 2), row.says)
    if high - low < 2 * DOT:
        return [circle("node", Point((low + high) // 2, y), DOT), words]
    ends = [line("span_end", [Point(x, y - TICK), Point(x, y + TICK)]) for x in [low, high]]
    return [line("span", [Point(low, y), Point(high, y)])] + ends + [words]


def step_of(end: int) -> int:
    """The step from one numbered stroke of the line to the next: 1, 2 or 5 times a power of ten."""
    unit = 1
    while end > TICKS * FIVE * unit:
        unit = unit * TEN
    if end <= TICKS * unit:
        return unit
    if end <= TICKS * 2 * unit:
        return 2 * unit
    return FIVE * unit


def axis(y: int, end: int) -> list[Shape]:
    """The line of nodes with its numbers."""
    shapes = [line("ground", [Point(EDGE, y), Point(ACROSS - EDGE, y)])]
    step = step_of(end)
    for k in range(end // step + 1):
        x = place(float(k * step), end)
        shapes.append(line("wire", [Point(x, y), Point(x, y + TICK)]))
        shapes.append(text(MIDDLE, Point(x, y + TICK + LETTERS), Say("node_number.tick", [float(k * step)], [])))
    return shapes


def mark(nodes: float, rows: int, end: int) -> list[Shape]:
    """The number that stays: a stroke through each bar and through the line, none through words; its own words on top, inside the drawing
    wherever it stands."""
    x = place(nodes, end)
    anchor = MIDDLE
    at = x
    if x < ACROSS // TICKS:
        anchor = START
        at = EDGE
    if x > ACROSS - ACROSS // TICKS:
        anchor = END
        at = ACROSS - EDGE
    middles = [middle_of(top_of(k)) for k in range(rows)]
    strokes = [line("chosen", [Point(x, y - 2 * DOT), Point(x, y + 2 * DOT)]) for y in middles]
    strokes.append(line("chosen", [Point(x, top_of(rows) - 2 * DOT), Point(x, top_of(rows))]))
    return strokes + [text(anchor, Point(at, LETTERS), Say("node_number.mark", [nodes], []))]
