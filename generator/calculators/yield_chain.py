"""The short form of the yield chain, shared by the calculators that run it forwards and backwards.

kg per vine = N x burst x h x u x w + Z x u0 x w0, from spring counts of the block itself: burst is the share of kept nodes
with a shoot, h the count shoots per burst node, u the bunches per count shoot (barren shoots included), w the bunch
weight; Z are the non-count shoots kept, u0 and w0 the bunches on them and their weight. Losses by necrosis, injury or
secondary buds are inside burst, h and u already: nothing further may be multiplied in. (Evidence yc-29, yc-18.)
"""

import math
from dataclasses import dataclass

from generator.calculators.exactmath import exp, log
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import G_PER_KG, PER_CENT, share


@dataclass(frozen=True)
class Chain:
    """What a vine gives for each node kept, and beside its count shoots: shoots, bunches, kg; all for one bearing vine."""

    shoots_per_node: float
    bunches_per_node: float
    kg_per_node: float
    other_bunches: float
    other_kg: float


def chain(
    budburst_pct: float,
    shoots_per_burst_node: float,
    bunches_per_shoot: float,
    bunch_weight_g: float,
    noncount_shoots: Maybe,
    bunches_per_noncount_shoot: Maybe,
    noncount_bunch_weight_g: Maybe,
) -> Chain:
    """The chain for one node, and the crop beside it. Non-count shoots without a bunch count bear nothing; their
    bunches weigh like the others unless a weight is given. Raises ValueError when budburst is over 100 %."""
    if budburst_pct > PER_CENT:
        raise ValueError("budburst is the share of kept nodes with a shoot: at most 100 %")
    shoots = share(budburst_pct) * shoots_per_burst_node
    bunches = shoots * bunches_per_shoot
    other = amount(noncount_shoots) * amount(bunches_per_noncount_shoot)
    other_weight = bunch_weight_g
    if noncount_bunch_weight_g.ok:
        other_weight = noncount_bunch_weight_g.number
    return Chain(shoots, bunches, bunches * bunch_weight_g / G_PER_KG, other, other * other_weight / G_PER_KG)


def amount(given: Maybe) -> float:
    """A number that may be left out, nothing counted as 0."""
    if given.ok:
        return given.number
    return 0.0


def chain_working(links: Chain, budburst_pct: float, shoots_per_burst_node: float, bunches_per_shoot: float, bunch_weight_g: float) -> list[Say]:
    """The lines that both directions share: shoots, bunches and kg for one node, and the crop of the other shoots if there is one."""
    lines = [
        Say("yield_chain.shoots_per_node", [budburst_pct, shoots_per_burst_node, links.shoots_per_node], []),
        Say("yield_chain.bunches_per_node", [links.shoots_per_node, bunches_per_shoot, links.bunches_per_node], []),
        Say("yield_chain.kg_per_node", [links.bunches_per_node, bunch_weight_g, links.kg_per_node], []),
    ]
    if links.other_bunches > 0.0:
        lines.append(Say("yield_chain.other_kg", [links.other_bunches, links.other_kg], []))
    return lines


def spread_factor(cvs_pct: list[Maybe], season_spread_pct: float, z: float) -> float:
    """The factor (1 or more) by which the crop may be higher, or lower when divided by it, at the level z belongs to.

    cvs_pct are the coefficients of variation of the components that were given, taken as independent of each other;
    season_spread_pct is the half-width of the season's own swing at that level, counted downwards (25: the low end is at
    75 %). On the log scale variances add: ln(1 + cv^2) for a component, (ln(1 - swing) / z)^2 for the season.
    Raises ValueError when the season's swing is 100 % or more, or z is not above zero.
    """
    if season_spread_pct >= PER_CENT or z <= 0.0:
        raise ValueError("the swing of the season must be under 100 % and z above zero")
    season = log(1.0 - share(season_spread_pct)) / z
    parts = [season * season]
    for cv in cvs_pct:
        if cv.ok:
            one = share(cv.number)
            parts.append(log(1.0 + one * one))
    return exp(z * math.sqrt(math.fsum(parts)))


def any_given(cvs_pct: list[Maybe]) -> bool:
    """True when at least one component came with a coefficient of variation."""
    return any(cv.ok for cv in cvs_pct)


def is_extrapolated(nodes: float, nodes_left: Maybe, limit_pct: float) -> bool:
    """True when nodes lies further than limit_pct from the node number at which the components were measured."""
    if not nodes_left.ok:
        return False
    return abs(nodes - nodes_left.number) * PER_CENT > limit_pct * nodes_left.number


def measured_note(nodes: float, nodes_left: Maybe, limit_pct: float) -> Say:
    """Whether the answer stands on the node number at which the components were counted."""
    if not nodes_left.ok:
        return Say("yield_chain.measured_where", [limit_pct], [])
    if is_extrapolated(nodes, nodes_left, limit_pct):
        return Say("yield_chain.extrapolated", [nodes, nodes_left.number, limit_pct], [])
    return Say("yield_chain.within_reach", [nodes, nodes_left.number, limit_pct], [])
