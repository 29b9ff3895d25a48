"""What a layout is short of that cannot be built, and by how much."""

from generator.calculators.hand_work import CANE_HEAD
from generator.calculators.layout_records import LONG_SPURS, NEW_ARM, SPUR, SPURS_WITH_CANES, VineLayoutResult, cane_limit
from generator.calculators.option_records import LONG_SPURS_WITH_CANES, Asked, Limits
from generator.calculators.say import Say
from generator.calculators.spur_layout import positions_on_new_arms
from generator.calculators.units import MM_PER_M, mm

ON_SPURS: list[str] = [SPUR, LONG_SPURS, SPURS_WITH_CANES, LONG_SPURS_WITH_CANES]


def faults_of(layout: VineLayoutResult, asked: Asked, limits: Limits) -> list[Say]:
    """What is short, and by how much; nothing where the layout can be built."""
    faults: list[Say] = []
    if layout.target in ON_SPURS or layout.target == NEW_ARM:
        faults = spur_faults(layout, asked, limits)
    else:
        faults = cane_faults(layout, asked, limits)
    canes = len(layout.canes)
    if asked.good_canes.ok and int(asked.good_canes.number) < canes:
        good = asked.good_canes.number
        faults.append(Say("layout_options.too_few_canes", [float(canes) - good, float(canes), good], []))
    return faults


def spur_faults(layout: VineLayoutResult, asked: Asked, limits: Limits) -> list[Say]:
    """What a layout on spur positions lacks."""
    if asked.structure.ok and int(asked.structure.number) == CANE_HEAD:
        return [Say("layout_options.no_cordon", [], [])]
    if layout.target == NEW_ARM and layout.arms < 2:
        return [Say("layout_options.no_second_arm", [], [])]
    if layout.target == NEW_ARM and float(layout.canes[0]) < limits.nodes_per_cane_least:
        return [Say("layout_options.cane_too_short", [float(min(layout.canes)), limits.nodes_per_cane_least], [])]
    if layout.short_nodes == 0:
        return []
    longest = limits.layout.nodes_per_spur_most
    if layout.target == LONG_SPURS or layout.target == LONG_SPURS_WITH_CANES:
        longest = limits.layout.nodes_per_long_spur_most
    most = int(longest)
    wanted = layout.spur_nodes + layout.short_nodes
    needed = (wanted + most - 1) // most
    short = Say("layout_options.too_few_positions", [float(layout.short_nodes), float(wanted), longest, float(needed), float(layout.positions)], [])
    return [short] + gaps_of(layout, limits)


def gaps_of(layout: VineLayoutResult, limits: Limits) -> list[Say]:
    """The positions that the arms have room for at the ideal spacing and the vine has not."""
    spacing = mm(limits.layout.spur_spacing_m)
    room = layout.arms * positions_on_new_arms(layout.arm_mm, layout.first_spur_mm, spacing)
    if layout.target == NEW_ARM or layout.positions_assumed or room <= layout.positions:
        return []
    return [Say("layout_options.gaps", [float(room), float(spacing) / MM_PER_M, float(room - layout.positions)], [])]


def cane_faults(layout: VineLayoutResult, asked: Asked, limits: Limits) -> list[Say]:
    """What a layout on canes lacks: wire, length of cane, or nodes enough to make canes of."""
    faults: list[Say] = []
    canes = float(len(layout.canes))
    if layout.short_nodes > 0 and layout.wire_short_mm > 0:
        faults.append(Say("layout_options.wire_too_short", [float(layout.short_nodes), float(layout.wire_short_mm), canes], []))
    elif layout.short_nodes > 0:
        most = float(cane_limit(asked.layout, limits.layout))
        faults.append(Say("layout_options.canes_too_long", [float(layout.short_nodes), most, canes], []))
    if float(min(layout.canes)) < limits.nodes_per_cane_least:
        faults.append(Say("layout_options.cane_too_short", [float(min(layout.canes)), limits.nodes_per_cane_least], []))
    return faults
