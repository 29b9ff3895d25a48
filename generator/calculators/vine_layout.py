"""Where the nodes of one vine go: on the spur positions it has, or on canes with renewal spurs, on the real length of wire.

Thin on purpose: one layout for one target, not a choice between layouts. Targets are `spur`, `long_spurs`,
`spurs_with_canes` and `cane`. Renewal spurs are in the count. All lengths in whole millimetres.
"""

from dataclasses import dataclass

from generator.calculators.cane_layout import canes_of, place_canes, wire_for
from generator.calculators.facts import Maybe
from generator.calculators.layout_words import cane_notes, spur_headline, spur_notes, spur_working
from generator.calculators.say import Say
from generator.calculators.spur_layout import even_spurs, long_spurs, positions_on_new_arms, total
from generator.calculators.units import mm, mm_from_cm

SPUR: str = "spur"
LONG_SPURS: str = "long_spurs"
SPURS_WITH_CANES: str = "spurs_with_canes"
CANE: str = "cane"
TARGETS: list[str] = ["spur", "long_spurs", "spurs_with_canes", "cane"]


@dataclass(frozen=True)
class VineLayoutInputs:
    """The nodes of one vine and the target; curtains; spacing, tip gap and first spur's place in m; head below the wire and
    internode in cm; arms, their length, live spur positions and canes wanted where they are known."""

    nodes: int
    target: str
    curtains: int
    vine_spacing_m: float
    tip_gap_m: float
    first_spur_from_head_m: float
    head_below_wire_cm: float
    internode_cm: float
    cordon_arms: Maybe
    arm_length_m: Maybe
    live_spur_positions_per_vine: Maybe
    canes_wanted_per_vine: Maybe


@dataclass(frozen=True)
class VineLayoutValues:
    """Limits for spurs, long spurs and canes (nodes; canes per vine), nodes of a renewal spur, canes beside spurs, and the
    distance of spur positions on a new arm (m)."""

    nodes_per_spur_most: float
    nodes_per_long_spur_most: float
    nodes_per_cane_most: float
    canes_per_vine_most: float
    canes_beside_spurs: float
    nodes_per_renewal_spur: float
    spur_spacing_m: float


@dataclass(frozen=True)
class VineLayoutResult:
    """One vine: nodes on each spur (in the order along the arms, left to right), on each cane, on each renewal spur; how many
    nodes found no place; what each cane's wire lacks in mm; arms and their length; where the first spur stands."""

    target: str
    nodes: int
    cane_nodes: int
    spur_nodes: int
    renewal_nodes: int
    spurs: list[int]
    canes: list[int]
    renewals: list[int]
    short_nodes: int
    wire_short_mm: int
    arms: int
    arm_mm: int
    first_spur_mm: int
    wire_mm: int
    internode_mm: int
    rise_mm: int
    positions_assumed: bool
    headline: Say
    working: list[Say]
    notes: list[Say]


def vine_layout(inputs: VineLayoutInputs, values: VineLayoutValues) -> VineLayoutResult:
    """One layout. Raises ValueError for another target, or when a length leaves no wire."""
    if inputs.target not in TARGETS:
        raise ValueError("there is no layout for this target")
    if inputs.nodes < 1:
        raise ValueError("a vine keeps at least one node")
    if inputs.target == CANE:
        return lay_canes(inputs, values)
    return lay_spurs(inputs, values)


def lay_canes(inputs: VineLayoutInputs, values: VineLayoutValues) -> VineLayoutResult:
    """Canes with a renewal spur for each: the fewest canes that carry the nodes, from the number wanted upwards."""
    rise = mm_from_cm(inputs.head_below_wire_cm)
    internode = mm_from_cm(inputs.internode_cm)
    renewal = int(values.nodes_per_renewal_spur)
    first = 1
    if inputs.canes_wanted_per_vine.ok:
        first = int(inputs.canes_wanted_per_vine.number)
    most = max(first, int(values.canes_per_vine_most))
    placed = place_canes(inputs.nodes, first, most, renewal, int(values.nodes_per_cane_most), space_of(inputs), gap_of(inputs), rise, internode)
    canes = canes_of(placed)
    renewals = [renewal] * placed.canes
    laid = total(canes) + total(renewals)
    working = [
        Say("vine_layout.wire", [float(placed.wire_mm), float(rise), float(internode), float(placed.fit)], []),
        Say("vine_layout.canes", [float(total(canes)), float(placed.canes), float(max(canes))], []),
        Say("vine_layout.renewals", [float(total(renewals)), float(placed.canes), float(renewal)], []),
    ]
    return VineLayoutResult(
        target=inputs.target,
        nodes=laid,
        cane_nodes=total(canes),
        spur_nodes=0,
        renewal_nodes=total(renewals),
        spurs=[],
        canes=canes,
        renewals=renewals,
        short_nodes=placed.short_nodes,
        wire_short_mm=placed.wire_short_mm,
        arms=min(placed.canes, 2 * inputs.curtains),
        arm_mm=placed.wire_mm,
        first_spur_mm=0,
        wire_mm=placed.wire_mm,
        internode_mm=internode,
        rise_mm=rise,
        positions_assumed=False,
        headline=Say("vine_layout.headline_cane", [float(placed.canes), float(max(canes)), float(renewal), float(laid)], []),
        working=working,
        notes=cane_notes(inputs.nodes, laid, inputs.curtains, inputs.canes_wanted_per_vine, values.nodes_per_cane_most, internode, placed),
    )


def lay_spurs(inputs: VineLayoutInputs, values: VineLayoutValues) -> VineLayoutResult:
    """Spurs on the live positions, alike or long ones among short ones, with canes beside them where the target says so."""
    rise = mm_from_cm(inputs.head_below_wire_cm)
    internode = mm_from_cm(inputs.internode_cm)
    arms = arms_of(inputs)
    arm_mm = arm_length_of(inputs, arms)
    first_mm = min(mm(inputs.first_spur_from_head_m), arm_mm)
    assumed = not inputs.live_spur_positions_per_vine.ok
    most = int(values.nodes_per_spur_most)
    positions = min(arms * positions_on_new_arms(arm_mm, first_mm, mm(values.spur_spacing_m)), (inputs.nodes + most - 1) // most)
    if not assumed:
        positions = int(inputs.live_spur_positions_per_vine.number)
    canes: list[int] = []
    if inputs.target == SPURS_WITH_CANES:
        canes = canes_beside(inputs, values, arm_mm, internode)
    wanted = inputs.nodes - total(canes)
    if inputs.target == LONG_SPURS:
        spurs = long_spurs(wanted, positions, int(values.nodes_per_long_spur_most))
    else:
        spurs = even_spurs(wanted, positions, most)
    laid = total(spurs) + total(canes)
    return VineLayoutResult(
        target=inputs.target,
        nodes=laid,
        cane_nodes=total(canes),
        spur_nodes=total(spurs),
        renewal_nodes=0,
        spurs=spurs,
        canes=canes,
        renewals=[],
        short_nodes=inputs.nodes - laid,
        wire_short_mm=0,
        arms=arms,
        arm_mm=arm_mm,
        first_spur_mm=first_mm,
        wire_mm=arm_mm,
        internode_mm=internode,
        rise_mm=rise,
        positions_assumed=assumed,
        headline=spur_headline(spurs, canes, laid),
        working=spur_working(inputs.nodes, spurs, canes, positions),
        notes=spur_notes(inputs.nodes, positions, assumed, spurs, canes, inputs.target == LONG_SPURS),
    )


def space_of(inputs: VineLayoutInputs) -> int:
    """The spacing in mm."""
    return mm(inputs.vine_spacing_m)


def gap_of(inputs: VineLayoutInputs) -> int:
    """The gap between neighbours' tips in mm; half of it is each vine's."""
    return mm(inputs.tip_gap_m)


def arms_of(inputs: VineLayoutInputs) -> int:
    """Arms of one vine: as counted, or one each way for each curtain."""
    if inputs.cordon_arms.ok:
        return max(1, int(inputs.cordon_arms.number))
    return 2 * inputs.curtains


def arm_length_of(inputs: VineLayoutInputs, arms: int) -> int:
    """The length of one arm in mm: as measured, or what the spacing leaves."""
    if inputs.arm_length_m.ok:
        return min(mm(inputs.arm_length_m.number), space_of(inputs))
    return wire_for(arms, space_of(inputs), gap_of(inputs))


def canes_beside(inputs: VineLayoutInputs, values: VineLayoutValues, arm_mm: int, internode_mm: int) -> list[int]:
    """Canes laid beside the spurs: together half of the nodes, as far as they find room."""
    number = int(values.canes_beside_spurs)
    fit = min(int(values.nodes_per_cane_most), max(1, arm_mm // internode_mm))
    each = min(fit, inputs.nodes // (2 * number))
    if each < 1:
        return []
    return [each] * number
