"""What a layout says: its headline, its working, and what does not fit."""

from generator.calculators.cane_layout import CanePlace
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.spur_layout import total


def spur_headline(spurs: list[int], canes: list[int], laid: int) -> Say:
    """The layout in one line."""
    most = max(spurs) if len(spurs) > 0 else 0
    if len(canes) > 0:
        numbers = [float(len(spurs)), float(total(spurs)), float(len(canes)), float(canes[0]), float(laid)]
        return Say("vine_layout.headline_both", numbers, [])
    if len(spurs) > 0 and min(spurs) == most:
        return Say("vine_layout.headline_spurs_alike", [float(len(spurs)), float(most), float(laid)], [])
    return Say("vine_layout.headline_spurs", [float(len(spurs)), float(most), float(laid)], [])


def spur_working(nodes: int, spurs: list[int], canes: list[int], positions: int) -> list[Say]:
    """How the nodes are shared out, and how many spurs there are of each length."""
    lines: list[Say] = []
    if len(canes) > 0:
        lines.append(Say("vine_layout.canes_share", [float(nodes), float(len(canes)), float(canes[0]), float(total(canes))], []))
    lines.append(Say("vine_layout.shared_out", [float(nodes - total(canes)), float(positions)], []))
    most = max(spurs) if len(spurs) > 0 else 0
    for k in range(most):
        number = len([length for length in spurs if length == most - k])
        if number > 0:
            lines.append(Say("vine_layout.spurs_of", [float(number), float(most - k)], []))
    return lines


def spur_notes(nodes: int, positions: int, assumed: bool, spurs: list[int], canes: list[int], long: bool) -> list[Say]:
    """What does not fit, and what was assumed."""
    notes: list[Say] = []
    short = nodes - total(spurs) - total(canes)
    if assumed:
        notes.append(Say("vine_layout.new_arms", [float(positions)], []))
    if short > 0:
        notes.append(Say("vine_layout.too_few_positions", [float(short), float(nodes)], []))
    if positions > len(spurs):
        notes.append(Say("vine_layout.positions_left", [float(positions - len(spurs))], []))
    if long:
        notes.append(Say("vine_layout.long_beside_short", [], []))
    elif len(spurs) > 0 and max(spurs) > min(spurs):
        notes.append(Say("vine_layout.strong_gets_more", [], []))
    if len(canes) > 0:
        notes.append(Say("vine_layout.half_on_canes", [], []))
    return notes


def cane_notes(
    nodes: int, laid: int, curtains: int, wanted: Maybe, nodes_per_cane_most: float, internode_mm: int, placed: CanePlace
) -> list[Say]:
    """What does not fit, bare wire, a second wire, and nodes that are more than planned."""
    notes: list[Say] = []
    if placed.bare_mm >= 2 * internode_mm:
        notes.append(Say("vine_layout.wire_bare", [float(placed.bare_mm), float(placed.canes)], []))
    if placed.short_nodes > 0 and placed.wire_short_mm > 0:
        numbers = [float(placed.short_nodes), float(placed.wire_short_mm), float(placed.canes)]
        notes.append(Say("vine_layout.wire_too_short", numbers, []))
    elif placed.short_nodes > 0:
        notes.append(Say("vine_layout.canes_too_long", [float(placed.short_nodes), nodes_per_cane_most, float(placed.canes)], []))
    if wanted.ok and placed.canes > int(wanted.number):
        notes.append(Say("vine_layout.more_canes", [float(placed.canes), wanted.number], []))
    if placed.canes > 2 * curtains:
        notes.append(Say("vine_layout.second_wire", [float(placed.canes)], []))
    if laid > nodes:
        notes.append(Say("vine_layout.renewals_add", [float(laid), float(nodes)], []))
    return notes


def new_arm_headline(spurs: list[int], cane: int, renewal: int, laid: int) -> Say:
    """One arm laid new, and what stays on the others."""
    if len(spurs) > 0:
        return Say("vine_layout.headline_new_arm", [float(cane), float(renewal), float(len(spurs)), float(total(spurs)), float(laid)], [])
    return Say("vine_layout.headline_only_arm", [float(cane), float(renewal), float(laid)], [])


def new_arm_working(nodes: int, spurs: list[int], cane: int, renewal: int, arm_mm: int) -> list[Say]:
    """The cane that becomes the arm, its renewal spur, and the rest."""
    return [
        Say("vine_layout.new_arm_cane", [float(cane), float(arm_mm)], []),
        Say("vine_layout.renewals", [float(renewal), 1.0, float(renewal)], []),
        Say("vine_layout.new_arm_rest", [float(max(0, nodes - cane - renewal)), float(len(spurs))], []),
    ]


def new_arm_notes(nodes: int, laid: int, positions: int, assumed: bool, spurs: list[int], bare_mm: int, internode_mm: int) -> list[Say]:
    """What does not fit, bare wire, and how the new arm goes on."""
    notes: list[Say] = []
    if assumed and positions > 0:
        notes.append(Say("vine_layout.new_arms", [float(positions)], []))
    if nodes > laid:
        notes.append(Say("vine_layout.too_few_positions", [float(nodes - laid), float(nodes)], []))
    if positions > len(spurs):
        notes.append(Say("vine_layout.positions_left", [float(positions - len(spurs))], []))
    if bare_mm >= 2 * internode_mm:
        notes.append(Say("vine_layout.wire_bare", [float(bare_mm), 1.0], []))
    notes.append(Say("vine_layout.new_arm_next", [], []))
    return notes
