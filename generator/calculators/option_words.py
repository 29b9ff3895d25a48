"""Why a layout is ranked where it is: what it lacks, or what speaks for and against it."""

from generator.calculators.facts import Maybe
from generator.calculators.hand_work import CANE_HEAD, HandWork
from generator.calculators.layout_places import Evenness
from generator.calculators.layout_records import CANE, LONG_SPURS, NEW_ARM, SPUR, SPURS_WITH_CANES, VineLayoutResult, cane_limit
from generator.calculators.option_records import LONG_SPURS_WITH_CANES, Asked, Limits
from generator.calculators.say import Say

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
    if asked.structure.ok and int(asked.structure.number) == CANE_HEAD and layout.positions_assumed:
        return [Say("layout_options.no_cordon", [], [])]
    if layout.target == NEW_ARM and layout.arms < 2:
        return [Say("layout_options.no_second_arm", [], [])]
    if layout.nodes > asked.layout.nodes:
        return [Say("layout_options.cane_too_short", [float(min(layout.canes)), limits.nodes_per_cane_least], [])]
    if layout.short_nodes == 0:
        return []
    longest = limits.layout.nodes_per_spur_most
    if layout.target == LONG_SPURS or layout.target == LONG_SPURS_WITH_CANES:
        longest = limits.layout.nodes_per_long_spur_most
    most = int(longest)
    wanted = layout.spur_nodes + layout.short_nodes
    needed = (wanted + most - 1) // most
    return [Say("layout_options.too_few_positions", [float(layout.short_nodes), float(wanted), longest, float(needed), float(layout.positions)], [])]


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


def merits_of(
    layout: VineLayoutResult, asked: Asked, bunches: Maybe, even: Evenness, work: HandWork, gives_up: bool
) -> list[Say]:
    """What speaks for a layout that can be built, and what against it."""
    says = [Say("layout_options.fits", [float(layout.nodes)], [])]
    if bunches.ok:
        says.append(Say("layout_options.bunches", [bunches.number], []))
    elif len(asked.buds) > 0:
        says.append(Say("layout_options.bunches_open", [float(len(asked.buds[0].primordia))], []))
    says.append(Say("layout_options.evenness", [even.barest, even.densest], []))
    if even.bare_mm >= 2 * layout.internode_mm:
        says.append(Say("layout_options.wire_bare", [float(even.bare_mm)], []))
    else:
        says.append(Say("layout_options.wire_full", [], []))
    says = says + cane_merits(layout, asked)
    if layout.positions_assumed and layout.target != CANE:
        says.append(Say("layout_options.positions_assumed", [float(layout.positions)], []))
    elif layout.positions > len(layout.spurs):
        says.append(Say("layout_options.positions_left", [float(layout.positions - len(layout.spurs)), float(layout.positions)], []))
    if gives_up and layout.target == CANE:
        says.append(Say("layout_options.cordon_goes", [], []))
    elif gives_up:
        says.append(Say("layout_options.head_goes", [], []))
    says.append(Say("layout_options.work", [float(work.cuts), float(work.ties)], []))
    return says


def cane_merits(layout: VineLayoutResult, asked: Asked) -> list[Say]:
    """Whether there are canes enough, and a wire for each."""
    canes = len(layout.canes)
    if canes == 0:
        return []
    says: list[Say] = []
    if not asked.good_canes.ok:
        says.append(Say("layout_options.canes_asked", [float(canes)], []))
    elif int(asked.good_canes.number) == canes:
        says.append(Say("layout_options.no_spare", [float(canes)], []))
    else:
        says.append(Say("layout_options.canes_enough", [float(canes), asked.good_canes.number], []))
    if canes > 2 * asked.layout.curtains:
        says.append(Say("layout_options.second_wire", [float(canes)], []))
    return says
