"""All layouts of one vine that are worth a look, and the ranked choice among them.

A family is a form with its number of canes: usual spurs alike; longer ones alike; long ones among short ones; spurs with one cane or a
few; one arm laid new; one cane, two, and so on. Within a family every length of long spur and every length of cane is tried, and the best is kept: the search is
exhaustive, and small.
"""

from dataclasses import dataclass

from generator.calculators.arm_layout import lay_new_arm
from generator.calculators.facts import Maybe
from generator.calculators.layout_forms import cane_room, lay_canes, lay_spurs
from generator.calculators.layout_records import CANE, LONG_SPURS, SPUR, SPURS_WITH_CANES, VineLayoutResult, space_of
from generator.calculators.option_records import LONG_SPURS_WITH_CANES, Asked, LayoutOption, Limits
from generator.calculators.option_scores import option_of, scored
from generator.calculators.option_spread import levelled

LONG_FAMILIES: int = 3


@dataclass(frozen=True)
class Candidate:
    """A layout and the family that it belongs to."""

    family: int
    layout: VineLayoutResult


def ranked_options(asked: Asked, limits: Limits) -> list[LayoutOption]:
    """The best of each family: those that can be built first, by points; then the others, the least short first. Raises ValueError
    when the nodes are fewer than one or a length leaves no wire."""
    if asked.layout.nodes < 1:
        raise ValueError("a vine keeps at least one node")
    tried = candidates(asked, limits)
    options = [option_of(levelled(one.layout, space_of(asked.layout)), asked, limits) for one in tried]
    most = most_bunches(options)
    options = [scored(option, most, limits.weights) for option in options]
    best: list[LayoutOption] = []
    for family in range(tried[len(tried) - 1].family + 1):
        own = [options[k] for k in range(len(options)) if tried[k].family == family]
        if len(own) > 0:
            best.append(ordered(own)[0])
    return ordered(best)


def ordered(options: list[LayoutOption]) -> list[LayoutOption]:
    """By rank; equals stay in the order in which they were tried."""
    by_points = sorted(options, key=lambda option: -option.score)
    built = [option for option in by_points if option.built]
    return built + sorted([option for option in by_points if not option.built], key=lambda option: option.short_nodes)


def most_bunches(options: list[LayoutOption]) -> float:
    """The most bunches that a layout carries which can be built; 0.0 where that is not known."""
    most = 0.0
    for option in options:
        if option.built and option.bunches.ok:
            most = max(most, option.bunches.number)
    return most


def best_for(options: list[LayoutOption], target: str, canes_wanted: Maybe) -> int:
    """The place of the best option for a target: one that can be built and has the canes wanted or more; else one that can be built;
    else the least short; -1 where there is none."""
    found = [k for k, option in enumerate(options) if option.layout.target == target]
    built = [k for k in found if options[k].built]
    wanted = [k for k in built if not canes_wanted.ok or len(options[k].layout.canes) >= int(canes_wanted.number)]
    if len(wanted) > 0 and target == CANE:
        return wanted[0]
    if len(found) > 0:
        return found[0]
    return -1


def candidates(asked: Asked, limits: Limits) -> list[Candidate]:
    """Every layout that is tried, family by family."""
    inputs = asked.layout
    found = [Candidate(0, lay_spurs(inputs, limits.layout, SPUR, int(limits.layout.nodes_per_spur_most), True, []))]
    found = found + longer_alike(asked, limits, 1, []) + long_among_short(asked, limits, 2, [])
    family = LONG_FAMILIES
    for canes in range(1, int(limits.layout.canes_beside_spurs) + 1):
        found = found + beside_spurs(asked, limits, family, canes)
        family = family + 2
    found.append(Candidate(family, lay_new_arm(inputs, limits.layout)))
    most = int(limits.canes_tried)
    if inputs.canes_wanted_per_vine.ok:
        most = max(most, int(inputs.canes_wanted_per_vine.number))
    least = int(limits.nodes_per_cane_least)
    for canes in range(1, most + 1):
        layout = lay_canes(inputs, limits.layout, canes, canes)
        if canes == 1 or min(layout.canes) >= least or inputs.nodes >= canes * least:
            found.append(Candidate(family + canes, layout))
    return found


def longer_alike(asked: Asked, limits: Limits, family: int, canes: list[int]) -> list[Candidate]:
    """Spurs longer than the usual ones and as alike as the nodes allow, with these canes or without."""
    target = LONG_SPURS if len(canes) == 0 else LONG_SPURS_WITH_CANES
    layout = lay_spurs(asked.layout, limits.layout, target, int(limits.layout.nodes_per_long_spur_most), True, canes)
    if len(layout.spurs) > 0 and max(layout.spurs) > int(limits.layout.nodes_per_spur_most):
        return [Candidate(family, layout)]
    return []


def long_among_short(asked: Asked, limits: Limits, family: int, canes: list[int]) -> list[Candidate]:
    """Long spurs of every length allowed among one-node spurs, with these canes or without, where there are both."""
    found: list[Candidate] = []
    usual = int(limits.layout.nodes_per_spur_most)
    target = LONG_SPURS if len(canes) == 0 else LONG_SPURS_WITH_CANES
    for longest in range(usual + 1, int(limits.layout.nodes_per_long_spur_most) + 1):
        layout = lay_spurs(asked.layout, limits.layout, target, longest, False, canes)
        if len(layout.spurs) > 0 and max(layout.spurs) > usual and min(layout.spurs) <= usual:
            found.append(Candidate(family, layout))
    return found


def beside_spurs(asked: Asked, limits: Limits, family: int, canes: int) -> list[Candidate]:
    """Spurs with some canes of every length that finds room: usual spurs (this family) and longer ones (the next)."""
    usual: list[Candidate] = []
    longer: list[Candidate] = []
    room = cane_room(asked.layout, limits.layout)
    for each in range(int(limits.nodes_per_cane_least), room + 1):
        if each * canes < asked.layout.nodes:
            laid = [each] * canes
            layout = lay_spurs(asked.layout, limits.layout, SPURS_WITH_CANES, int(limits.layout.nodes_per_spur_most), True, laid)
            if len(layout.spurs) > 0:
                usual.append(Candidate(family, layout))
            longer = longer + longer_alike(asked, limits, family + 1, laid) + long_among_short(asked, limits, family + 1, laid)
    return usual + longer
