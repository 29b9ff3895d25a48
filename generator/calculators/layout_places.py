"""Where along the wire the nodes of a layout stand, and how evenly its shoots will.

x is in whole mm from the trunk, negative to the left. The canopy of a vine is its spacing: half to each side of the trunk, or all
of it to the right where there is one arm only. Curtains, and wires one over the other, are laid on top of each other.
"""

from dataclasses import dataclass

from generator.calculators.cane_path import nodes_along
from generator.calculators.layout_records import CANE, NEW_ARM, VineLayoutResult
from generator.calculators.units import MM_PER_M

QUARTERS: int = 4


@dataclass(frozen=True)
class Ground:
    """Where spurs stand and where the nodes of a cane do, which many layouts of one vine share: the quarter of each spur in the order of the list
    of spurs, how many each quarter has; the wire of a cane in mm and how far along it each node stands."""

    quarters: list[int]
    room: list[int]
    wire_mm: int
    reached: list[int]


@dataclass(frozen=True)
class Standing:
    """The nodes in each quarter of the wire, and how far the outermost ones stand from the trunk to the left and to the right, in mm."""

    loads: list[int]
    left_mm: int
    right_mm: int


@dataclass(frozen=True)
class Evenness:
    """Shoots per metre in the densest and the barest quarter of the wire; the barest over the densest (1 is even, 0 leaves a
    quarter bare); the wire that nothing stands on, between the outermost nodes and the vine's own tips, in mm."""

    densest: float
    barest: float
    share: float
    bare_mm: int


def first_arm_with_spurs(layout: VineLayoutResult) -> int:
    """0, or 1 where the first arm is laid new with a cane."""
    if layout.target == NEW_ARM:
        return 1
    return 0


def goes_left(bearers: int, bearer: int) -> bool:
    """Arms and canes go left and right in turn; one alone goes to the right."""
    return bearers > 1 and bearer % 2 == 0


def spurs_on(layout: VineLayoutResult, arm: int) -> int:
    """How many of the spurs stand on an arm, when they are shared out over all arms that bear spurs."""
    first = first_arm_with_spurs(layout)
    bearing = layout.arms - first
    if arm < first:
        return 0
    return (arm - first + 1) * len(layout.spurs) // bearing - (arm - first) * len(layout.spurs) // bearing


def quarters_of_spurs(layout: VineLayoutResult, space_mm: int) -> list[int]:
    """The quarter of each spur, in the order of the list of spurs, which reads from left to right: on arms to the left from the tip to the head."""
    quarters: list[int] = []
    for k in range(layout.arms):
        own = spurs_on(layout, k)
        left = goes_left(layout.arms, k)
        for s in range(own):
            away = distance_of(layout.first_spur_mm, layout.arm_mm, own - 1 - s if left else s, own)
            quarters.append(quarter_of(-away if left else away, layout.arms, space_mm))
    return quarters


def distance_of(first_mm: int, arm_mm: int, spur: int, spurs: int) -> int:
    """How far from the head a spur stands: the first at its place, the last at the tip, the others evenly between."""
    if spurs < 2:
        return first_mm
    return first_mm + (arm_mm - first_mm) * spur // (spurs - 1)


def spacing_mm(layout: VineLayoutResult) -> int:
    """From one spur to the next on the arm that has most of them; 0 where no arm has two."""
    most = max([spurs_on(layout, k) for k in range(layout.arms)])
    if most < 2:
        return 0
    return (layout.arm_mm - layout.first_spur_mm) // (most - 1)


def ground_of(layout: VineLayoutResult, space_mm: int, longest: int) -> Ground:
    """The ground of a layout, for canes of up to `longest` nodes."""
    quarters = quarters_of_spurs(layout, space_mm)
    reached = nodes_along(layout.rise_mm, layout.wire_mm, layout.internode_mm, longest)
    return Ground(quarters, [how_many(quarters, k) for k in range(QUARTERS)], layout.wire_mm, reached)


def ground_for(layout: VineLayoutResult, space_mm: int, shared: Ground) -> Ground:
    """The shared ground where it is this layout's too, else its own."""
    longest = max(layout.canes) if len(layout.canes) > 0 else 0
    spurs = layout.target != NEW_ARM and len(layout.spurs) == len(shared.quarters) or len(layout.spurs) == 0
    if spurs and longest <= len(shared.reached) and (longest == 0 or layout.wire_mm == shared.wire_mm):
        return shared
    return ground_of(layout, space_mm, longest)


def standing_beside(layout: VineLayoutResult, reached: list[int], space_mm: int) -> Standing:
    """The nodes of canes, which stand so far along the wire, and of renewal spurs, which stand beside the trunk."""
    if len(layout.canes) == 0:
        return Standing([0] * QUARTERS, 0, 0)
    quarters: list[int] = []
    left_mm = 0
    right_mm = 0
    for k, nodes in enumerate(layout.canes):
        left = goes_left(layout.arms, k)
        quarters = quarters + [quarter_of(-x if left else x, layout.arms, space_mm) for x in reached[:nodes]]
        tip = reached[nodes - 1] if nodes > 0 else 0
        left_mm = max(left_mm, tip if left else 0)
        right_mm = max(right_mm, 0 if left else tip)
    for k, nodes in enumerate(layout.renewals):
        quarters = quarters + [quarter_of(-1 if goes_left(layout.arms, k) else 1, layout.arms, space_mm)] * nodes
    return Standing([how_many(quarters, k) for k in range(QUARTERS)], left_mm, right_mm)


def evenness(layout: VineLayoutResult, beside: Standing, loads: list[int], space_mm: int, gap_mm: int, curtains: int, shoots_per_node: float) -> Evenness:
    """How evenly the shoots of a layout will stand with so many nodes in each quarter, if every node gives as many. Lengths are above zero or
    zero. Curtains are laid on top of each other; where canes cannot fill them alike the barest is less by that."""
    alike = 1.0
    if layout.target == CANE:
        alike = curtain_share(len(layout.canes), curtains)
    quarter_m = float(space_mm) / MM_PER_M / float(QUARTERS) * float(curtains)
    most = max(loads)
    share = float(min(loads)) / float(most) if most > 0 else 0.0
    barest = float(min(loads)) * alike * shoots_per_node / quarter_m
    return Evenness(float(most) * shoots_per_node / quarter_m, barest, share * alike, bare_of(layout, beside, space_mm - gap_mm))


def curtain_share(canes: int, curtains: int) -> float:
    """How alike canes can be shared out over curtains, one each way on each: fewest on a curtain's side over most. One curtain alone can be
    filled by one cane or by an odd number, and its quarters tell."""
    sides = 2 * curtains
    if curtains == 1:
        return 1.0
    return float(canes // sides) / float((canes + sides - 1) // sides)


def quarter_of(x: int, arms: int, space_mm: int) -> int:
    """The quarter of the vine's wire in which an x lies, 0 the first to the left; beyond the ends the nearest."""
    start = 0 if arms == 1 else -(space_mm // 2)
    return min(QUARTERS - 1, max(0, (x - start) * QUARTERS // space_mm))


def how_many(numbers: list[int], number: int) -> int:
    """How often a number stands in a list."""
    return len([one for one in numbers if one == number])


def bare_of(layout: VineLayoutResult, beside: Standing, wire_mm: int) -> int:
    """The wire beyond the outermost nodes, up to the vine's own tips, in mm."""
    left = beside.left_mm
    right = beside.right_mm
    for k in range(layout.arms):
        own = spurs_on(layout, k)
        tip = distance_of(layout.first_spur_mm, layout.arm_mm, own - 1, own) if own > 0 else 0
        if goes_left(layout.arms, k):
            left = max(left, tip)
        else:
            right = max(right, tip)
    if layout.arms == 1:
        return max(0, wire_mm - right)
    return max(0, wire_mm // 2 - left) + max(0, wire_mm // 2 - right)
