"""The two plain forms of a layout: canes with renewal spurs, and spurs on the live positions, with canes beside them or without.

Renewal spurs are in the count. All lengths in whole millimetres.
"""

from generator.calculators.cane_layout import canes_of, place_canes
from generator.calculators.layout_records import (
    CANE,
    VineLayoutInputs,
    VineLayoutResult,
    VineLayoutValues,
    arm_length_of,
    arms_of,
    cane_limit,
    gap_of,
    poorly_ripe,
    space_of,
)
from generator.calculators.layout_words import cane_notes, spur_headline, spur_notes, spur_working
from generator.calculators.say import Say
from generator.calculators.spur_layout import even_spurs, long_spurs, positions_on_new_arms, total
from generator.calculators.units import mm, mm_from_cm


def lay_canes(inputs: VineLayoutInputs, values: VineLayoutValues, first: int, most: int) -> VineLayoutResult:
    """Canes with a renewal spur for each: the fewest canes that carry the nodes, from `first` to `most`."""
    rise = mm_from_cm(inputs.head_below_wire_cm)
    internode = mm_from_cm(inputs.internode_cm)
    renewal = int(values.nodes_per_renewal_spur)
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
        target=CANE,
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
        positions=0,
        wire_mm=placed.wire_mm,
        internode_mm=internode,
        rise_mm=rise,
        positions_assumed=False,
        headline=Say("vine_layout.headline_cane", [float(placed.canes), float(max(canes)), float(renewal), float(laid)], []),
        working=working,
        notes=ripe_notes(inputs, values) + cane_notes(inputs.nodes, laid, inputs.curtains, inputs.canes_wanted_per_vine, float(cane_limit(inputs, values)), internode, placed),
    )


def lay_spurs(inputs: VineLayoutInputs, values: VineLayoutValues, target: str, longest: int, alike: bool, canes: list[int]) -> VineLayoutResult:
    """Spurs of up to `longest` nodes on the live positions, with these canes beside them: all as alike as the nodes allow, or long ones among
    one-node spurs."""
    arms = arms_of(inputs)
    arm_mm = arm_length_of(inputs, arms)
    first_mm = min(mm(inputs.first_spur_from_head_m), arm_mm)
    assumed = not inputs.live_spur_positions_per_vine.ok
    most = int(values.nodes_per_spur_most)
    positions = min(arms * positions_on_new_arms(arm_mm, first_mm, mm(values.spur_spacing_m)), (inputs.nodes + most - 1) // most)
    if not assumed:
        positions = int(inputs.live_spur_positions_per_vine.number)
    wanted = max(0, inputs.nodes - total(canes))
    spurs = even_spurs(wanted, positions, longest) if alike else long_spurs(wanted, positions, longest)
    laid = total(spurs) + total(canes)
    return VineLayoutResult(
        target=target,
        nodes=laid,
        cane_nodes=total(canes),
        spur_nodes=total(spurs),
        renewal_nodes=0,
        spurs=spurs,
        canes=canes,
        renewals=[],
        short_nodes=max(0, inputs.nodes - laid),
        wire_short_mm=0,
        arms=arms,
        arm_mm=arm_mm,
        first_spur_mm=first_mm,
        positions=positions,
        wire_mm=arm_mm,
        internode_mm=mm_from_cm(inputs.internode_cm),
        rise_mm=mm_from_cm(inputs.head_below_wire_cm),
        positions_assumed=assumed,
        headline=spur_headline(spurs, canes, laid),
        working=spur_working(inputs.nodes, spurs, canes, positions),
        notes=spur_notes(inputs.nodes, positions, assumed, spurs, canes, not alike),
    )


def ripe_notes(inputs: VineLayoutInputs, values: VineLayoutValues) -> list[Say]:
    """That poorly ripe wood carries less."""
    if poorly_ripe(inputs):
        return [Say("vine_layout.unripe", [float(cane_limit(inputs, values))], [])]
    return []


def canes_beside(inputs: VineLayoutInputs, values: VineLayoutValues) -> list[int]:
    """Canes laid beside the spurs: together half of the nodes, as far as they find room."""
    number = int(values.canes_beside_spurs)
    each = min(cane_room(inputs, values), inputs.nodes // (2 * number))
    if each < 1:
        return []
    return [each] * number


def cane_room(inputs: VineLayoutInputs, values: VineLayoutValues) -> int:
    """The nodes that find room on one cane beside spurs: along an arm, and up to the limit."""
    along_arm = arm_length_of(inputs, arms_of(inputs)) // mm_from_cm(inputs.internode_cm)
    return min(cane_limit(inputs, values), max(1, along_arm))
