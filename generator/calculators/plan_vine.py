"""The plan's vine: what a layout of so many nodes asks of the facts, and the layout itself, for the number and for the drawing."""

from generator.calculators.facts import Facts, Maybe, maybe, missing, number
from generator.calculators.layout_records import TARGETS, VineLayoutInputs, VineLayoutResult, VineLayoutValues
from generator.calculators.plan_records import BlockPlanValues
from generator.calculators.vine_layout import vine_layout

LENGTHS: list[str] = ["vine_spacing_m", "curtains", "tip_gap_m", "internode_cm", "head_below_wire_cm", "first_spur_from_head_m", "wire_height_m"]
MEASURED: list[str] = ["live_spur_positions_per_vine", "cordon_arms", "arm_length_m", "canes_wanted_per_vine", "nodes_per_cane_wanted", "canes_well_ripe"]


def can_be_laid(facts: Facts, target: str) -> bool:
    """True when the target has a layout and all lengths are known and leave a wire."""
    if target not in TARGETS or len(missing(facts, LENGTHS)) > 0:
        return False
    return number(facts, "tip_gap_m") < number(facts, "vine_spacing_m")


def vine_of(facts: Facts, values: BlockPlanValues, target: str, nodes: int, longest: int) -> VineLayoutResult:
    """The layout of so many nodes, with no bearer longer than `longest`. can_be_laid must be true."""
    wanted = maybe(facts, "nodes_per_cane_wanted")
    inputs = VineLayoutInputs(
        nodes=nodes,
        target=target,
        curtains=int(number(facts, "curtains")),
        vine_spacing_m=number(facts, "vine_spacing_m"),
        tip_gap_m=number(facts, "tip_gap_m"),
        first_spur_from_head_m=number(facts, "first_spur_from_head_m"),
        head_below_wire_cm=number(facts, "head_below_wire_cm"),
        internode_cm=number(facts, "internode_cm"),
        cordon_arms=maybe(facts, "cordon_arms"),
        arm_length_m=maybe(facts, "arm_length_m"),
        live_spur_positions_per_vine=maybe(facts, "live_spur_positions_per_vine"),
        canes_wanted_per_vine=maybe(facts, "canes_wanted_per_vine"),
        nodes_per_cane_wanted=Maybe(wanted.ok, min(wanted.number, float(longest))),
        canes_well_ripe=maybe(facts, "canes_well_ripe"),
    )
    return vine_layout(
        inputs,
        VineLayoutValues(
            nodes_per_spur_most=min(values.nodes_per_spur_most, float(longest)),
            nodes_per_long_spur_most=min(values.nodes_per_long_spur_most, float(longest)),
            nodes_per_cane_most=min(values.nodes_per_cane_most, float(longest)),
            nodes_per_unripe_cane_most=values.nodes_per_unripe_cane_most,
            canes_per_vine_most=values.canes_per_vine_most,
            canes_beside_spurs=values.canes_beside_spurs,
            nodes_per_renewal_spur=values.nodes_per_renewal_spur,
            spur_spacing_m=values.spur_spacing_m,
        ),
    )
