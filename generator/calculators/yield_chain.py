"""The short form of the yield chain, shared by the calculators that run it forwards and backwards.

kg per vine = N x burst x h x u x w + Z x u0 x w0, from spring counts of the block itself: burst is the share of kept nodes
with a shoot, h the count shoots per burst node, u the bunches per count shoot (barren shoots included), w the bunch
weight; Z are the non-count shoots kept, u0 and w0 the bunches on them and their weight. Losses by necrosis, injury or
secondary buds are inside burst, h and u already: nothing further may be multiplied in. (Evidence yc-29, yc-18.)
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import G_PER_KG, PER_CENT, share
from generator.calculators.yield_spread import Limits


@dataclass(frozen=True)
class Counts:
    """What the chain stands on: bearing vines per hectare; budburst (%), count shoots per burst node, bunches per count shoot and
    bunch weight (g); what the non-count shoots add; the node number at which it was counted; the spread of each count (cv in %)."""

    bearing_vines_per_ha: float
    budburst_pct: float
    shoots_per_burst_node: float
    bunches_per_shoot: float
    bunch_weight_g: float
    noncount_shoots_kept: Maybe
    bunches_per_noncount_shoot: Maybe
    noncount_bunch_weight_g: Maybe
    nodes_left: Maybe
    budburst_cv_pct: Maybe
    shoots_per_burst_node_cv_pct: Maybe
    bunches_per_shoot_cv_pct: Maybe
    bunch_weight_cv_pct: Maybe


@dataclass(frozen=True)
class Chain:
    """What a vine gives for each node kept, and beside its count shoots: shoots, bunches, kg; all for one bearing vine."""

    shoots_per_node: float
    bunches_per_node: float
    kg_per_node: float
    other_bunches: float
    other_kg: float


def chain(counts: Counts) -> Chain:
    """The chain for one node, and the crop beside it. Non-count shoots without a bunch count bear nothing; their
    bunches weigh like the others unless a weight is given. Raises ValueError when budburst is over 100 %."""
    if counts.budburst_pct > PER_CENT:
        raise ValueError("budburst is the share of kept nodes with a shoot: at most 100 %")
    shoots = share(counts.budburst_pct) * counts.shoots_per_burst_node
    bunches = shoots * counts.bunches_per_shoot
    other = amount(counts.noncount_shoots_kept) * amount(counts.bunches_per_noncount_shoot)
    other_weight = counts.bunch_weight_g
    if counts.noncount_bunch_weight_g.ok:
        other_weight = counts.noncount_bunch_weight_g.number
    return Chain(shoots, bunches, bunches * counts.bunch_weight_g / G_PER_KG, other, other * other_weight / G_PER_KG)


def cvs_of(counts: Counts) -> list[Maybe]:
    """The spreads of the four links, in the chain's order."""
    return [counts.budburst_cv_pct, counts.shoots_per_burst_node_cv_pct, counts.bunches_per_shoot_cv_pct, counts.bunch_weight_cv_pct]


def amount(given: Maybe) -> float:
    """A number that may be left out, nothing counted as 0."""
    if given.ok:
        return given.number
    return 0.0


def chain_working(links: Chain, counts: Counts) -> list[Say]:
    """The lines that both directions share: shoots, bunches and kg for one node, and the crop of the other shoots if there is one."""
    lines = [
        Say("yield_chain.shoots_per_node", [counts.budburst_pct, counts.shoots_per_burst_node, links.shoots_per_node], []),
        Say("yield_chain.bunches_per_node", [links.shoots_per_node, counts.bunches_per_shoot, links.bunches_per_node], []),
        Say("yield_chain.kg_per_node", [links.bunches_per_node, counts.bunch_weight_g, links.kg_per_node], []),
    ]
    if links.other_bunches > 0.0:
        lines.append(Say("yield_chain.other_kg", [links.other_bunches, links.other_kg], []))
    return lines


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


def covers_note(sampled: bool, limits: Limits) -> Say:
    """What an interval covers: the season alone, or the counts as well."""
    covers = "yield_chain.covers_both" if sampled else "yield_chain.covers_season"
    return Say(covers, [limits.interval_level_pct, limits.season_spread_pct], [])
