"""What is told beside a node number and beside a crop: which count the range hangs on, when the range is too narrow or too wide, and
numbers of nodes that no vine has carried. How often a range holds when its assumption does not was simulated; see the values."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.yield_spread import Limits, season_share_pct, share_pct

LINKS: list[str] = ["fact.budburst_pct", "fact.shoots_per_burst_node", "fact.bunches_per_shoot", "fact.bunch_weight_g"]


@dataclass(frozen=True)
class Coverage:
    """In how many of a hundred cases a range of the guide held in simulation: bunches and their weight make up for each other, all
    counts are out in the same direction, all are normal and not log-normal."""

    compensating_pct: float
    together_pct: float
    normal_pct: float


@dataclass(frozen=True)
class Most:
    """The most nodes that a vine in print carried, and the most shoots on a metre of leaf wall that a trial left on purpose."""

    nodes: float
    shoots_per_m: float


def spread_notes(cvs_pct: list[Maybe], limits: Limits, coverage: Coverage) -> list[Say]:
    """What the uncertainty hangs on most, and when the range is not what it says. cvs_pct are the spreads of the chain's links in their
    order; nothing is told where the season is alone in the range."""
    season = season_share_pct(cvs_pct, limits)
    largest = -1.0
    link = ""
    for name, cv in zip(LINKS, cvs_pct):
        one = share_pct(cv, cvs_pct, limits)
        if one.ok and one.number > largest:
            largest = one.number
            link = name
    if link == "":
        return []
    notes = [Say("yield_told.season_largest", [season, largest], [link])]
    if largest > season:
        notes = [Say("yield_told.count_largest", [largest, season], [link])]
    numbers = [limits.interval_level_pct, coverage.compensating_pct, coverage.together_pct, coverage.normal_pct]
    return notes + [Say("yield_told.if_not_independent", numbers, [])]


def absurd_notes(nodes: float, shoots: float, canopy_m: Maybe, most: Most) -> list[Say]:
    """A warning where no vine carries so many nodes: by their shoots on a metre of leaf wall where its metres on one vine are known, else by
    the most nodes in print."""
    if canopy_m.ok and canopy_m.number > 0.0 and shoots > most.shoots_per_m * canopy_m.number:
        return [Say("yield_told.shoots_absurd", [nodes, shoots / canopy_m.number, most.shoots_per_m], [])]
    if nodes > most.nodes:
        return [Say("yield_told.nodes_absurd", [nodes, most.nodes], [])]
    return []
