"""Where the nodes of one vine go: on the spur positions it has, or on canes with renewal spurs, on the real length of wire.

One layout for one target; the choice between layouts is layout_options.py. Targets are `spur`, `long_spurs`, `spurs_with_canes`,
`lay_new_arm` (one full cane in the place of one arm) and `cane`. Renewal spurs are in the count. All lengths in whole millimetres.
"""

from generator.calculators.cane_layout import canes_of, place_canes
from generator.calculators.cane_path import nodes_on, path_to_right
from generator.calculators.drawing_shapes import length_mm
from generator.calculators.layout_records import (
    CANE,
    LONG_SPURS,
    NEW_ARM,
    SPURS_WITH_CANES,
    TARGETS,
    VineLayoutInputs,
    VineLayoutResult,
    VineLayoutValues,
    arm_length_of,
    arms_of,
    cane_limit,
    gap_of,
    space_of,
)
from generator.calculators.layout_words import cane_notes, new_arm_headline, new_arm_notes, new_arm_working, spur_headline, spur_notes, spur_working
from generator.calculators.say import Say
from generator.calculators.spur_layout import even_spurs, long_spurs, positions_on_new_arms, total
from generator.calculators.units import mm, mm_from_cm


def vine_layout(inputs: VineLayoutInputs, values: VineLayoutValues) -> VineLayoutResult:
    """One layout. Raises ValueError for another target, or when a length leaves no wire."""
    if inputs.target not in TARGETS:
        raise ValueError("there is no layout for this target")
    if inputs.nodes < 1:
        raise ValueError("a vine keeps at least one node")
    if inputs.target == CANE:
        return lay_canes(inputs, values)
    if inputs.target == NEW_ARM:
        return lay_new_arm(inputs, values)
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
    placed = place_canes(inputs.nodes, first, most, renewal, cane_limit(inputs, values), space_of(inputs), gap_of(inputs), rise, internode)
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
        notes=cane_notes(inputs.nodes, laid, inputs.curtains, inputs.canes_wanted_per_vine, float(cane_limit(inputs, values)), internode, placed),
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


def canes_beside(inputs: VineLayoutInputs, values: VineLayoutValues, arm_mm: int, internode_mm: int) -> list[int]:
    """Canes laid beside the spurs: together half of the nodes, as far as they find room."""
    number = int(values.canes_beside_spurs)
    fit = min(cane_limit(inputs, values), max(1, arm_mm // internode_mm))
    each = min(fit, inputs.nodes // (2 * number))
    if each < 1:
        return []
    return [each] * number


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
        target=inputs.target,
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
