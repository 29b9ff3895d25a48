"""Where along the wire the nodes of a layout stand, and how evenly its shoots will.

x is in whole mm from the trunk, negative to the left. The canopy of a vine is its spacing: half to each side of the trunk, or all
of it to the right where there is one arm only. Curtains, and wires one over the other, are laid on top of each other.
"""

from dataclasses import dataclass

from generator.calculators.cane_path import path_to_right
from generator.calculators.drawing_shapes import along
from generator.calculators.layout_records import CANE, NEW_ARM, VineLayoutResult
from generator.calculators.units import MM_PER_M

QUARTERS: int = 4


@dataclass(frozen=True)
class SpurPlace:
    """A spur: the arm it stands on (0 is the first to the left, or the only one), its distance from the head along the wire in mm,
    its nodes."""

    arm: int
    distance_mm: int
    nodes: int


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


def spur_places(layout: VineLayoutResult) -> list[SpurPlace]:
    """The spurs shared out over the arms, on each from the first place to the tip. The list of spurs reads from left to right:
    on arms to the left from the tip to the head."""
    first = first_arm_with_spurs(layout)
    arms = layout.arms - first
    places: list[SpurPlace] = []
    for k in range(arms):
        low = k * len(layout.spurs) // arms
        own = layout.spurs[low : (k + 1) * len(layout.spurs) // arms]
        left = goes_left(layout.arms, k + first)
        for s in range(len(own)):
            nodes = own[len(own) - 1 - s] if left else own[s]
            places.append(SpurPlace(k + first, distance_of(layout.first_spur_mm, layout.arm_mm, s, len(own)), nodes))
    return places


def distance_of(first_mm: int, arm_mm: int, spur: int, spurs: int) -> int:
    """How far from the head a spur stands: the first at its place, the last at the tip, the others evenly between."""
    if spurs < 2:
        return first_mm
    return first_mm + (arm_mm - first_mm) * spur // (spurs - 1)


def spacing_mm(layout: VineLayoutResult) -> int:
    """From one spur to the next on the arm that has most of them; 0 where no arm has two."""
    places = spur_places(layout)
    closest = 0
    for k in range(len(places) - 1):
        if places[k].arm == places[k + 1].arm:
            apart = places[k + 1].distance_mm - places[k].distance_mm
            closest = apart if closest == 0 else min(closest, apart)
    return closest


def node_places(layout: VineLayoutResult) -> list[int]:
    """The x of every node: of a spur where it stands, of a cane along its way, of a renewal spur beside the trunk."""
    places: list[int] = []
    for spur in spur_places(layout):
        x = -spur.distance_mm if goes_left(layout.arms, spur.arm) else spur.distance_mm
        for k in range(spur.nodes):
            places.append(x)
    longest = max(layout.canes) if len(layout.canes) > 0 else 0
    way = path_to_right(layout.rise_mm, layout.wire_mm, 0)
    reached = [along(way, float((node + 1) * layout.internode_mm)).x for node in range(longest)]
    for k, nodes in enumerate(layout.canes):
        left = goes_left(layout.arms, k)
        for x in reached[:nodes]:
            places.append(-x if left else x)
    for k, nodes in enumerate(layout.renewals):
        for node in range(nodes):
            places.append(-1 if goes_left(layout.arms, k) else 1)
    return places


def evenness(layout: VineLayoutResult, space_mm: int, gap_mm: int, curtains: int, shoots_per_node: float) -> Evenness:
    """How evenly the shoots of a layout will stand, if every node gives as many. space_mm and gap_mm are above zero or zero. Curtains are laid on
    top of each other; where canes cannot fill them alike the barest is less by that."""
    places = node_places(layout)
    alike = 1.0
    quarters = [quarter_of(x, layout.arms, space_mm) for x in places]
    counts = [how_many(quarters, k) for k in range(QUARTERS)]
    quarter_m = float(space_mm) / MM_PER_M / float(QUARTERS) * float(curtains)
    most = max(counts)
    share = float(min(counts)) / float(most) if most > 0 else 0.0
    if layout.target == CANE:
        alike = curtain_share(len(layout.canes), curtains)
    bare = bare_of(places, layout.arms == 1, space_mm - gap_mm)
    barest = float(min(counts)) * alike * shoots_per_node / quarter_m
    return Evenness(float(most) * shoots_per_node / quarter_m, barest, share * alike, bare)


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


def bare_of(places: list[int], one_way: bool, wire_mm: int) -> int:
    """The wire beyond the outermost nodes, up to the vine's own tips, in mm."""
    right = max(0, max(places)) if len(places) > 0 else 0
    left = max(0, -min(places)) if len(places) > 0 else 0
    if one_way:
        return max(0, wire_mm - right)
    return max(0, wire_mm // 2 - left) + max(0, wire_mm // 2 - right)
