"""A tally of dissected buds becomes fruitfulness by node with its intervals, what every bearer carries, and the facts of the plan.

See tally_counts.py for the states of a bud, tally_means.py for means and intervals, tally_bearers.py for spurs and canes, and
bearers.py for the chain. Intervals cover the cutting of buds alone. (Evidence bd-02, bd-07, bd-11, nf-05, pbn-06.)
"""

from dataclasses import dataclass

from generator.calculators.bearer_reach import BearerReachInputs, counted_anywhere, tally_in, wish_of
from generator.calculators.bearers import void
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, Figure
from generator.calculators.quantiles import tail_of
from generator.calculators.reach_sums import SPUR, best
from generator.calculators.say import Say
from generator.calculators.tally_bearers import BearerFound, Sampled, Weighed, nothing_weighed, tally_from, weigh
from generator.calculators.tally_counts import TallyRow, all_numbered, between, by_cane, by_node, dissected, last_node, most_at_a_node, row_faults, secondaries_everywhere
from generator.calculators.tally_facts import FactFound, Sure, facts_of
from generator.calculators.tally_means import Paired, Stretch, at_node, over_nodes, paired
from generator.calculators.tally_secondary import by_share
from generator.calculators.tally_spread import bud_spread, likeness
from generator.calculators.tally_words import Heard, counted_share, headline_of, notes_of, working_of

@dataclass(frozen=True)
class BudFruitfulnessInputs:
    """The tally row by row, the level of all intervals (%), s, and what the chain takes besides (see BearerReachInputs)."""

    rows: list[TallyRow]
    confidence_pct: float
    secondary_share: float
    cane_budburst_node: list[Maybe]
    budburst_pct: float
    spur_budburst_pct: float
    inner_zone_nodes: int
    shoots_per_burst_node: float
    dissection_to_spring: float
    tally_date: Maybe
    last_freeze_date: Maybe
    target_yield_t_ha: Maybe
    bearing_vines_per_ha: Maybe
    bunch_weight_g: Maybe
    vine_spacing_m: Maybe
    curtains: int
    shoots_per_m_high: float
    noncount_shoots_kept: Maybe


@dataclass(frozen=True)
class BudFruitfulnessValues:
    """The last basal node, the last distal one that is compared with them, the longest spur, which is also the shortest cane (nodes);
    the most canes that anybody would cut; the primordia for each bud below which something has to change; the canes
    from which on it is told how alike the buds of a cane are; every author's share of a secondary shoot."""

    basal_node_last: float
    distal_node_last: float
    nodes_per_long_spur_most: float
    canes_cut_most: float
    primordia_low: float
    canes_for_likeness_least: float
    secondary_share_usual: list[Figure]


@dataclass(frozen=True)
class BudFruitfulnessResult:
    """The whole tally in numbers; rows by node; groups: all nodes from 1, the basal and the distal ones; distal less basal within canes;
    every bearer; the facts that the plan takes over; the two-node spur by each author's share of a secondary. Bearers and deaths are left out of a tally that a frost has made void."""

    buds: int
    canes: Maybe
    mean: Maybe
    mean_live: Maybe
    mean_live_low: Maybe
    mean_live_high: Maybe
    dead_primary_pct: Maybe
    dead_primary_low_pct: Maybe
    dead_primary_high_pct: Maybe
    dead_node_pct: Maybe
    secondary_counted_share: Maybe
    basal_mean: Maybe
    distal_mean: Maybe
    difference: Maybe
    difference_low: Maybe
    difference_high: Maybe
    spur_bunches_per_node: Maybe
    cane_nodes: Maybe
    cane_bunches_per_node: Maybe
    spur_reach: Maybe
    spur_reach_low: Maybe
    spur_reach_high: Maybe
    cane_reach: Maybe
    more_canes: Maybe
    rows: list[Stretch]
    groups: list[Stretch]
    paired: Paired
    bearers: list[BearerFound]
    facts: list[FactFound]
    compared: list[Compared]
    headline: Say
    working: list[Say]
    notes: list[Say]


def bud_fruitfulness(inputs: BudFruitfulnessInputs, values: BudFruitfulnessValues) -> BudFruitfulnessResult:
    """What the tally says. Raises ValueError when no bud beyond the base bud could be read, when a row counts more
    secondaries than buds with something alive, or when the level is no percentage."""
    if any(len(row_faults(row)) > 0 for row in inputs.rows):
        raise ValueError("a row counts more secondaries than buds with something alive")
    tail = tail_of(inputs.confidence_pct)
    last = last_node(inputs.rows)
    if last < 1:
        raise ValueError("the tally holds no bud of node 1 or beyond that could be read")
    basal = int(values.basal_node_last)
    distal = max(basal + 1, int(values.distal_node_last))
    canes = by_cane(inputs.rows) if all_numbered(inputs.rows) else []
    sampled = Sampled(inputs.rows, canes, tail)
    groups = [
        over_nodes(inputs.rows, canes, 1, last, tail),
        over_nodes(inputs.rows, canes, 1, basal, tail),
        over_nodes(inputs.rows, canes, basal + 1, distal, tail),
    ]
    reach = as_reach(inputs)
    weighed = nothing_weighed()
    if not void(inputs.tally_date, inputs.last_freeze_date):
        weighed = weigh(sampled, tally_in(reach), wish_of(reach), int(values.nodes_per_long_spur_most), values.canes_cut_most)
    heard = Heard(
        rows=[at_node(row, tail) for row in by_node(inputs.rows, last) if dissected(row) + row.unreadable > 0],
        groups=groups,
        total=between(inputs.rows, 1, last),
        canes=len(canes),
        batched=most_at_a_node(inputs.rows) > 1,
        secondaries_everywhere=secondaries_everywhere(inputs.rows),
        pairs=paired(canes, basal, distal, tail),
        weighed=weighed,
        wished=wish_of(reach).ok,
        void=void(inputs.tally_date, inputs.last_freeze_date),
        burst_counted=counted_anywhere(reach),
        share=inputs.secondary_share,
        confidence_pct=inputs.confidence_pct,
        shortest_cane=values.nodes_per_long_spur_most,
        most=values.canes_cut_most,
        low_fruit=values.primordia_low,
    )
    alike = likeness(inputs.rows, canes, int(values.canes_for_likeness_least))
    sure = Sure(heard.canes, bud_spread(inputs.rows), alike, weighed.spur_se_pct)
    facts = facts_of(tally_from(by_node(inputs.rows, last), tally_in(reach)), heard.void, sure)
    return result_of(heard, facts, by_share(weighed.buds, wish_of(reach), values.secondary_share_usual))


def result_of(heard: Heard, facts: list[FactFound], shares: list[Compared]) -> BudFruitfulnessResult:
    """The outputs of what was found."""
    everywhere = heard.groups[0]
    pairs = heard.pairs.difference
    nothing = Maybe(False, 0.0)
    spur = bearer_in(heard.weighed, False, SPUR)
    cane: list[BearerFound] = []
    if len(heard.weighed.canes) > 0:
        cane = bearer_in(heard.weighed, True, best(heard.weighed.canes).nodes)
    return BudFruitfulnessResult(
        buds=everywhere.buds,
        canes=Maybe(heard.canes > 0, float(heard.canes)),
        mean=everywhere.mean,
        mean_live=everywhere.mean_live,
        mean_live_low=everywhere.low,
        mean_live_high=everywhere.high,
        dead_primary_pct=everywhere.dead_primary_pct,
        dead_primary_low_pct=everywhere.dead_primary_low_pct,
        dead_primary_high_pct=everywhere.dead_primary_high_pct,
        dead_node_pct=everywhere.dead_node_pct,
        secondary_counted_share=counted_share(heard.total, heard.secondaries_everywhere),
        basal_mean=heard.groups[1].mean_live,
        distal_mean=heard.groups[2].mean_live,
        difference=pairs.middle,
        difference_low=pairs.low,
        difference_high=pairs.high,
        spur_bunches_per_node=Maybe(True, spur[0].per_node) if len(spur) > 0 else nothing,
        cane_nodes=Maybe(True, float(cane[0].nodes)) if len(cane) > 0 else nothing,
        cane_bunches_per_node=Maybe(True, cane[0].per_node) if len(cane) > 0 else nothing,
        spur_reach=spur[0].reach if len(spur) > 0 else nothing,
        spur_reach_low=spur[0].reach_low if len(spur) > 0 else nothing,
        spur_reach_high=spur[0].reach_high if len(spur) > 0 else nothing,
        cane_reach=cane[0].reach if len(cane) > 0 else nothing,
        more_canes=heard.weighed.spur_less_wish.more if heard.wished else heard.weighed.cane_less_spur.more,
        rows=heard.rows,
        groups=heard.groups,
        paired=heard.pairs,
        bearers=heard.weighed.found,
        facts=facts,
        compared=shares,
        headline=headline_of(heard),
        working=working_of(heard),
        notes=notes_of(heard),
    )


def bearer_in(weighed: Weighed, on_cane: bool, nodes: int) -> list[BearerFound]:
    """The bearer of a kind and length; none where it was not reckoned."""
    return [one for one in weighed.found if one.on_cane == on_cane and one.nodes == nodes]


def as_reach(inputs: BudFruitfulnessInputs) -> BearerReachInputs:
    """The inputs as bearer_reach takes them, before anything is counted."""
    nothing = Maybe(False, 0.0)
    return BearerReachInputs(
        primordia_node=[],
        cane_budburst_node=inputs.cane_budburst_node,
        budburst_pct=inputs.budburst_pct,
        spur_budburst_pct=inputs.spur_budburst_pct,
        dead_primary_pct=nothing,
        dead_node_pct=0.0,
        dead_primary_inner_pct=nothing,
        dead_primary_outer_pct=nothing,
        inner_zone_nodes=inputs.inner_zone_nodes,
        secondary_share=inputs.secondary_share,
        shoots_per_burst_node=inputs.shoots_per_burst_node,
        dissection_to_spring=inputs.dissection_to_spring,
        tally_date=inputs.tally_date,
        last_freeze_date=inputs.last_freeze_date,
        canes_dissected=nothing,
        bud_spread=0.0,
        likeness=0.0,
        spur_fruit_se_pct=nothing,
        target_yield_t_ha=inputs.target_yield_t_ha,
        bearing_vines_per_ha=inputs.bearing_vines_per_ha,
        bunch_weight_g=inputs.bunch_weight_g,
        vine_spacing_m=inputs.vine_spacing_m,
        curtains=inputs.curtains,
        shoots_per_m_high=inputs.shoots_per_m_high,
        noncount_shoots_kept=inputs.noncount_shoots_kept,
    )
