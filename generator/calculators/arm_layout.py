"""One arm laid new: a full cane in the place of an arm that goes, and spurs on the arms that stay."""

from generator.calculators.cane_path import nodes_on, path_to_right
from generator.calculators.drawing_shapes import length_mm
from generator.calculators.layout_records import NEW_ARM, VineLayoutInputs, VineLayoutResult, VineLayoutValues, arm_length_of, arms_of, cane_limit
from generator.calculators.layout_words import new_arm_headline, new_arm_notes, new_arm_working
from generator.calculators.spur_layout import even_spurs, positions_on_new_arms, total
from generator.calculators.units import mm, mm_from_cm


def lay_new_arm(inputs: VineLayoutInputs, values: VineLayoutValues) -> VineLayoutResult:
    """One full cane in the place of one arm, its renewal spur at the head, and spurs alike on the positions of the other arms."""
    rise = mm_from_cm(inputs.head_below_wire_cm)
    internode = mm_from_cm(inputs.internode_cm)
    arms = arms_of(inputs)
    arm_mm = arm_length_of(inputs, arms)
    first_mm = min(mm(inputs.first_spur_from_head_m), arm_mm)
    renewal = int(values.nodes_per_renewal_spur)
    fit = min(cane_limit(inputs, values), max(1, nodes_on(path_to_right(rise, arm_mm, 0), internode)))
    cane = min(fit, max(1, inputs.nodes - renewal))
    positions = positions_beside(inputs, values, arms, arm_mm, first_mm)
    spurs = even_spurs(max(0, inputs.nodes - renewal - cane), positions, int(values.nodes_per_spur_most))
    laid = total(spurs) + cane + renewal
    bare = max(0, round(length_mm(path_to_right(rise, arm_mm, 0))) - cane * internode)
    return VineLayoutResult(
        target=NEW_ARM,
        nodes=laid,
        cane_nodes=cane,
        spur_nodes=total(spurs),
        renewal_nodes=renewal,
        spurs=spurs,
        canes=[cane],
        renewals=[renewal],
        short_nodes=max(0, inputs.nodes - laid),
        wire_short_mm=0,
        arms=arms,
        arm_mm=arm_mm,
        first_spur_mm=first_mm,
        positions=positions,
        wire_mm=arm_mm,
        internode_mm=internode,
        rise_mm=rise,
        positions_assumed=not inputs.live_spur_positions_per_vine.ok,
        headline=new_arm_headline(spurs, cane, renewal, laid),
        working=new_arm_working(inputs.nodes, spurs, cane, renewal, arm_mm),
        notes=new_arm_notes(inputs.nodes, laid, positions, not inputs.live_spur_positions_per_vine.ok, spurs, bare, internode),
    )


def positions_beside(inputs: VineLayoutInputs, values: VineLayoutValues, arms: int, arm_mm: int, first_mm: int) -> int:
    """Live positions on the arms that stay when one is laid new: their share of those counted, or those of a new arm each."""
    if inputs.live_spur_positions_per_vine.ok:
        return int(inputs.live_spur_positions_per_vine.number) * (arms - 1) // arms
    return (arms - 1) * positions_on_new_arms(arm_mm, first_mm, mm(values.spur_spacing_m))
