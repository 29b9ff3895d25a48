"""What a layout of one vine takes and gives, and the lengths that every layout reckons with, in whole millimetres."""

from dataclasses import dataclass

from generator.calculators.cane_layout import wire_for
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import mm

SPUR: str = "spur"
LONG_SPURS: str = "long_spurs"
SPURS_WITH_CANES: str = "spurs_with_canes"
CANE: str = "cane"
NEW_ARM: str = "lay_new_arm"
TARGETS: list[str] = ["spur", "long_spurs", "spurs_with_canes", "lay_new_arm", "cane"]


@dataclass(frozen=True)
class VineLayoutInputs:
    """The nodes of one vine and the target; curtains; spacing, tip gap and first spur's place in m; head below the wire and
    internode in cm; arms, their length, live spur positions, canes wanted and nodes on each, whether the canes are well ripe (1 or 0)
    where they are known."""

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
    nodes_per_cane_wanted: Maybe
    canes_well_ripe: Maybe


@dataclass(frozen=True)
class VineLayoutValues:
    """Limits for spurs, long spurs, canes and poorly ripe canes (nodes; canes per vine), nodes of a renewal spur, canes beside spurs, and
    the distance of spur positions on a new arm (m)."""

    nodes_per_spur_most: float
    nodes_per_long_spur_most: float
    nodes_per_cane_most: float
    nodes_per_unripe_cane_most: float
    canes_per_vine_most: float
    canes_beside_spurs: float
    nodes_per_renewal_spur: float
    spur_spacing_m: float


@dataclass(frozen=True)
class VineLayoutResult:
    """One vine: nodes on each spur (in the order along the arms, left to right), on each cane, on each renewal spur; how many
    nodes found no place; what each cane's wire lacks in mm; arms and their length; where the first spur stands; the live
    positions that the spurs are chosen from (0 without spurs)."""

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
    positions: int
    wire_mm: int
    internode_mm: int
    rise_mm: int
    positions_assumed: bool
    headline: Say
    working: list[Say]
    notes: list[Say]


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


def cane_limit(inputs: VineLayoutInputs, values: VineLayoutValues) -> int:
    """The most nodes on one cane: as wanted, or the guide's limit; on poorly ripe wood no more than that bears (evidence bp-30)."""
    most = int(values.nodes_per_cane_most)
    if inputs.nodes_per_cane_wanted.ok:
        most = max(1, int(inputs.nodes_per_cane_wanted.number))
    if poorly_ripe(inputs):
        return min(most, int(values.nodes_per_unripe_cane_most))
    return most


def poorly_ripe(inputs: VineLayoutInputs) -> bool:
    """True when it was said that the canes are not well ripe."""
    return inputs.canes_well_ripe.ok and inputs.canes_well_ripe.number < 1.0
