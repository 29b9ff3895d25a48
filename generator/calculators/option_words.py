"""Why a layout that can be built is ranked where it is: what speaks for it and against it."""

from generator.calculators.facts import Maybe
from generator.calculators.hand_work import HandWork
from generator.calculators.layout_places import Evenness, curtain_share
from generator.calculators.layout_records import CANE, NEW_ARM, SPUR, VineLayoutResult, cane_limit, poorly_ripe
from generator.calculators.option_records import Asked, Limits
from generator.calculators.say import Say


def merits_of(
    layout: VineLayoutResult, asked: Asked, limits: Limits, bunches: Maybe, even: Evenness, work: HandWork, gives_up: bool, unrenewed: int
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
    says = says + cane_merits(layout, asked, limits)
    if layout.positions_assumed and layout.target != CANE:
        says.append(Say("layout_options.positions_assumed", [float(layout.positions)], []))
    elif layout.positions > len(layout.spurs):
        says.append(Say("layout_options.positions_left", [float(layout.positions - len(layout.spurs)), float(layout.positions)], []))
    if gives_up:
        says.append(Say("layout_options.cordon_goes", [], []))
    says.append(Say("layout_options.work", [float(work.cuts), float(work.ties)], []))
    return says + next_winter(layout, unrenewed)


def next_winter(layout: VineLayoutResult, unrenewed: int) -> list[Say]:
    """What next winter finds on the vine, and what it does not."""
    if layout.target == NEW_ARM:
        return [Say("layout_options.next_arm", [], [])]
    if layout.target == CANE:
        return [Say("layout_options.next_canes", [], [])]
    if unrenewed > 0:
        return [Say("layout_options.next_unrenewed", [float(unrenewed)], [])]
    if layout.target == SPUR:
        return [Say("layout_options.next_spurs", [], [])]
    return [Say("layout_options.next_short", [], [])]


def cane_merits(layout: VineLayoutResult, asked: Asked, limits: Limits) -> list[Say]:
    """Whether there are canes enough, ripe enough, a wire for each and room at the head."""
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
    if layout.target == CANE and curtain_share(canes, asked.layout.curtains) < 1.0:
        says.append(Say("layout_options.curtains_unlike", [float(canes), float(asked.layout.curtains)], []))
    if layout.target == CANE and canes > int(limits.layout.canes_per_vine_most):
        says.append(Say("layout_options.head_crowded", [limits.layout.canes_per_vine_most], []))
    if poorly_ripe(asked.layout):
        says.append(Say("layout_options.unripe", [float(cane_limit(asked.layout, limits.layout))], []))
    return says
