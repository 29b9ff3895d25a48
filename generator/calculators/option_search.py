"""All layouts of one vine that are worth a look, and the ranked choice among them.

A family is a form with its number of canes: usual spurs alike; longer ones alike; long ones among short ones; spurs with one cane or a
few; one arm laid new; one cane, two, and so on. Within a family every length of long spur and every length of cane is tried, and the best is kept: the search is
exhaustive, and small.
"""

from dataclasses import dataclass

from generator.calculators.arm_layout import lay_new_arm
from generator.calculators.layout_forms import cane_room, lay_canes, lay_spurs
from generator.calculators.layout_places import ground_of
from generator.calculators.layout_records import CANE, LONG_SPURS, SPUR, SPURS_WITH_CANES, VineLayoutResult, cane_limit, space_of
from generator.calculators.option_records import LONG_SPURS_WITH_CANES, Asked, LayoutOption, Limits, Weighed
from generator.calculators.option_scores import option_of, score_of, scored, weighed


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
    shared = ground_of(tried[0].layout, space_of(asked.layout), cane_limit(asked.layout, limits.layout))
    found = [weighed(one.layout, asked, limits, shared) for one in tried]
    most = most_bunches(found)
    found = [scored(one, most, limits.weights) for one in found]
    best: list[Weighed] = []
    for family in range(tried[len(tried) - 1].family + 1):
        own = [found[k] for k in range(len(found)) if tried[k].family == family]
        if len(own) > 0:
            best.append(ordered(own)[0])
    return [option_of(one, asked, limits) for one in ordered(best)]


def ordered(layouts: list[Weighed]) -> list[Weighed]:
    """By rank; equals stay in the order in which they were tried."""
    by_points = sorted(layouts, key=lambda one: -score_of(one.off))
    built = [one for one in by_points if len(one.faults) == 0]
    return built + sorted([one for one in by_points if len(one.faults) > 0], key=lambda one: one.layout.short_nodes)


def most_bunches(layouts: list[Weighed]) -> float:
    """The most bunches that a layout carries which can be built; 0.0 where that is not known."""
    most = 0.0
    for one in layouts:
        if len(one.faults) == 0 and one.bunches.ok:
            most = max(most, one.bunches.number)
    return most


def candidates(asked: Asked, limits: Limits) -> list[Candidate]:
    """Every layout that is tried, family by family."""
    inputs = asked.layout
    found = [Candidate(0, lay_spurs(inputs, limits.layout, SPUR, int(limits.layout.nodes_per_spur_most), True, []))]
    family = 2
    found = found + longer_alike(asked, limits, 1, []) + long_among_short(asked, limits, family, [])
    for canes in range(1, int(limits.layout.canes_beside_spurs) + 1):
        found = found + beside_spurs(asked, limits, family + 1, canes)
        family = family + 2
    family = family + 1
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
