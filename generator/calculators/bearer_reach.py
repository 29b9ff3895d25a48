"""What spurs and canes of a block can carry, by the buds that were cut open, and how far each reaches for the crop wanted.

At a reach of 1 or over the bearer alone makes the crop inside the shoot limit; see bearers.py for what a bearer carries and
reach_sums.py for the reach and its interval, which covers the cutting of buds only. (Evidence bd-11, dis-09, nf-08, sys-14.)
"""

from dataclasses import dataclass

from generator.calculators.bearers import Tally, buds_counted, tally_of, void
from generator.calculators.facts import Facts, Maybe, known, maybe, number
from generator.calculators.quantiles import t_quantile, tail_of
from generator.calculators.reach_sums import SPUR, Sampling, Wish, best, canes_of, interval_of, no_interval, spurs_of
from generator.calculators.reach_words import Told, headline_of, notes_of, working_of
from generator.calculators.say import Say
from generator.calculators.units import G_PER_KG, KG_PER_T


@dataclass(frozen=True)
class BearerReachInputs:
    """The tally by node (see bearers.Tally; shares in %), its dates (days), the canes it came from, the spread of primordia among buds of
    a node, the likeness of buds of one cane, and the two-node spur's standard error (%) where the canes themselves told it; for the
    reach also the crop wanted, bearing vines per hectare, bunch weight, and the room: spacing, curtains, shoots per metre, non-count
    shoots per vine."""

    primordia_node: list[Maybe]
    cane_budburst_node: list[Maybe]
    budburst_pct: float
    spur_budburst_pct: float
    dead_primary_pct: Maybe
    dead_node_pct: float
    dead_primary_inner_pct: Maybe
    dead_primary_outer_pct: Maybe
    inner_zone_nodes: int
    secondary_share: float
    shoots_per_burst_node: float
    dissection_to_spring: float
    tally_date: Maybe
    last_freeze_date: Maybe
    canes_dissected: Maybe
    bud_spread: float
    likeness: float
    spur_fruit_se_pct: Maybe
    target_yield_t_ha: Maybe
    bearing_vines_per_ha: Maybe
    bunch_weight_g: Maybe
    vine_spacing_m: Maybe
    curtains: int
    shoots_per_m_high: float
    noncount_shoots_kept: Maybe


@dataclass(frozen=True)
class BearerReachValues:
    """The longest spur, which is also the shortest cane (nodes); the level of the interval (%) with its normal quantile; the most canes
    that anybody would cut."""

    nodes_per_long_spur_most: float
    interval_level_pct: float
    interval_z: float
    canes_cut_most: float


@dataclass(frozen=True)
class BearerReachResult:
    """Of the two-node spur and of the cane with the most bunches for its room: bunches a node and reach (1 is the crop wanted); the
    interval of the spur's reach and the canes still to cut; by how many points primaries are dead more often further out."""

    spur_bunches_per_node: float
    spur_reach: Maybe
    spur_reach_low: Maybe
    spur_reach_high: Maybe
    cane_nodes: Maybe
    cane_bunches_per_node: Maybe
    cane_reach: Maybe
    more_canes: Maybe
    dead_primary_rise_pct: Maybe
    headline: Say
    working: list[Say]
    notes: list[Say]


def bearer_reach(inputs: BearerReachInputs, values: BearerReachValues) -> BearerReachResult:
    """The value of each bearer and the reach. Raises ValueError when the tally is void, or not whole (bearers.is_whole)."""
    if void(inputs.tally_date, inputs.last_freeze_date):
        raise ValueError("the buds were cut before the last hard frost: cut new ones and count again what is dead")
    buds = buds_counted(tally_in(inputs))
    wish = wish_of(inputs)
    longest_spur = int(values.nodes_per_long_spur_most)
    spurs = spurs_of(buds, wish, longest_spur)
    canes = canes_of(buds, wish, longest_spur)
    sampling = sampling_of(inputs, values)
    certain = interval_of(buds, wish, spurs[1], sampling) if sampling.canes >= 1.0 else no_interval()
    return result_of(Told(buds, wish, spurs, canes, certain, sampling), inputs, values)


def result_of(told: Told, inputs: BearerReachInputs, values: BearerReachValues) -> BearerReachResult:
    """The outputs, with the best cane where one is long enough to be a cane."""
    nothing = Maybe(False, 0.0)
    cane_nodes = nothing
    per_node = nothing
    cane_reach = nothing
    if len(told.canes) > 0:
        cane = best(told.canes)
        cane_nodes = Maybe(True, float(cane.nodes))
        per_node = Maybe(True, cane.bunches / cane.nodes)
        cane_reach = cane.reach
    spur = told.spurs[1]
    return BearerReachResult(
        spur_bunches_per_node=spur.bunches / SPUR,
        spur_reach=spur.reach,
        spur_reach_low=Maybe(told.certain.ok, told.certain.low),
        spur_reach_high=Maybe(told.certain.ok, told.certain.high),
        cane_nodes=cane_nodes,
        cane_bunches_per_node=per_node,
        cane_reach=cane_reach,
        more_canes=told.certain.more,
        dead_primary_rise_pct=rise_of(inputs),
        headline=headline_of(told),
        working=working_of(told, wish_lines(inputs, told.wish)),
        notes=notes_of(
            told, values.interval_level_pct, values.nodes_per_long_spur_most, counted_anywhere(inputs), rise_of(inputs)
        ),
    )


def tally_in(inputs: BearerReachInputs) -> Tally:
    """The tally of the inputs."""
    return Tally(
        primordia=inputs.primordia_node,
        cane_burst_pct=inputs.cane_budburst_node,
        burst_pct=inputs.budburst_pct,
        spur_burst_pct=inputs.spur_budburst_pct,
        dead_primary_pct=inputs.dead_primary_pct,
        dead_primary_inner_pct=inputs.dead_primary_inner_pct,
        dead_primary_outer_pct=inputs.dead_primary_outer_pct,
        inner_nodes=inputs.inner_zone_nodes,
        dead_node_pct=inputs.dead_node_pct,
        secondary_share=inputs.secondary_share,
        shoots_per_burst_node=inputs.shoots_per_burst_node,
        spring=inputs.dissection_to_spring,
    )


def kg_wanted(inputs: BearerReachInputs) -> float:
    """Kilograms wanted from one bearing vine; 0 where that is not known."""
    if not inputs.target_yield_t_ha.ok or not inputs.bearing_vines_per_ha.ok or inputs.bearing_vines_per_ha.number <= 0.0:
        return 0.0
    return inputs.target_yield_t_ha.number * KG_PER_T / inputs.bearing_vines_per_ha.number


def wish_of(inputs: BearerReachInputs) -> Wish:
    """Bunches wanted from one bearing vine and the room for their shoots; none where a part of either is not known."""
    kg = kg_wanted(inputs)
    weight = inputs.bunch_weight_g
    if kg <= 0.0 or not weight.ok or weight.number <= 0.0 or not inputs.vine_spacing_m.ok:
        return Wish(False, 0.0, 0.0)
    room = inputs.shoots_per_m_high * inputs.curtains * inputs.vine_spacing_m.number - others_kept(inputs)
    return Wish(True, kg * G_PER_KG / weight.number, max(0.0, room))


def others_kept(inputs: BearerReachInputs) -> float:
    """Non-count shoots kept per vine; 0 where nobody said."""
    return inputs.noncount_shoots_kept.number if inputs.noncount_shoots_kept.ok else 0.0


def wish_lines(inputs: BearerReachInputs, wish: Wish) -> list[Say]:
    """How the bunches wanted and the room were reckoned; none without a crop wish."""
    if not wish.ok:
        return []
    weight = inputs.bunch_weight_g.number
    wanted = [inputs.target_yield_t_ha.number, inputs.bearing_vines_per_ha.number, kg_wanted(inputs), weight, wish.bunches]
    room = [inputs.shoots_per_m_high, float(inputs.curtains), inputs.vine_spacing_m.number, others_kept(inputs), wish.shoots]
    return [Say("bearer_reach.wanted", wanted, []), Say("bearer_reach.room", room, [])]


def sampling_of(inputs: BearerReachInputs, values: BearerReachValues) -> Sampling:
    """How the buds were sampled; 0 canes where nobody said how many."""
    canes = inputs.canes_dissected.number if inputs.canes_dissected.ok else 0.0
    told = inputs.spur_fruit_se_pct
    if told.ok and canes > 1.0:
        t = t_quantile(tail_of(values.interval_level_pct), canes - 1.0)
        return Sampling(canes, inputs.bud_spread, inputs.likeness, told, t, values.canes_cut_most)
    return Sampling(canes, inputs.bud_spread, inputs.likeness, Maybe(False, 0.0), values.interval_z, values.canes_cut_most)


def counted_anywhere(inputs: BearerReachInputs) -> bool:
    """True when burst was counted at some node of the canes."""
    return any(one.ok for one in inputs.cane_budburst_node)


def rise_of(inputs: BearerReachInputs) -> Maybe:
    """By how many points of 100 primaries are dead more often beyond the inner nodes; left out where the two were not counted apart."""
    if not inputs.dead_primary_inner_pct.ok or not inputs.dead_primary_outer_pct.ok:
        return Maybe(False, 0.0)
    return Maybe(True, inputs.dead_primary_outer_pct.number - inputs.dead_primary_inner_pct.number)


def inputs_of(facts: Facts, bearing_vines_per_ha: Maybe) -> BearerReachInputs:
    """The inputs among a block's facts, for which has_buds is true. Curtains or a shoot limit that are unknown leave no crop wish;
    without the spread or the likeness of the buds it is not known how sure the reach is."""
    tally = tally_of(facts)
    room = known(facts, "curtains") and known(facts, "shoots_per_m_high")
    spread = known(facts, "bud_spread") and known(facts, "likeness")
    return BearerReachInputs(
        primordia_node=tally.primordia,
        cane_budburst_node=tally.cane_burst_pct,
        budburst_pct=tally.burst_pct,
        spur_budburst_pct=tally.spur_burst_pct,
        dead_primary_pct=tally.dead_primary_pct,
        dead_node_pct=tally.dead_node_pct,
        dead_primary_inner_pct=tally.dead_primary_inner_pct,
        dead_primary_outer_pct=tally.dead_primary_outer_pct,
        inner_zone_nodes=tally.inner_nodes,
        secondary_share=tally.secondary_share,
        shoots_per_burst_node=tally.shoots_per_burst_node,
        dissection_to_spring=tally.spring,
        tally_date=maybe(facts, "tally_date"),
        last_freeze_date=maybe(facts, "last_freeze_date"),
        canes_dissected=maybe(facts, "canes_dissected") if spread else Maybe(False, 0.0),
        bud_spread=number(facts, "bud_spread") if spread else 0.0,
        likeness=number(facts, "likeness") if spread else 0.0,
        spur_fruit_se_pct=maybe(facts, "spur_fruit_se_pct"),
        target_yield_t_ha=maybe(facts, "target_yield_t_ha"),
        bearing_vines_per_ha=bearing_vines_per_ha,
        bunch_weight_g=maybe(facts, "bunch_weight_g"),
        vine_spacing_m=maybe(facts, "vine_spacing_m") if room else Maybe(False, 0.0),
        curtains=int(number(facts, "curtains")) if room else 1,
        shoots_per_m_high=number(facts, "shoots_per_m_high") if room else 1.0,
        noncount_shoots_kept=maybe(facts, "noncount_shoots_kept"),
    )
