"""What each bearer carries by a tally, and how sure that is.

The counts become the figures that bearers.py reckons with: once of all canes, and once without each cane (the jackknife of
tally_means.py). So the interval covers primordia and deaths alike, and that the buds of a cane resemble each other. Which cane is
the best one is settled by all canes together.
"""

from dataclasses import dataclass

from generator.calculators.bearers import Buds, Tally, buds_counted, is_whole
from generator.calculators.facts import Maybe
from generator.calculators.reach_sums import SPUR, Carried, Wish, best, canes_of, canes_until_apart, carried, spurs_of
from generator.calculators.tally_counts import TallyRow, between, by_node, dissected, last_node, live, part, per, primordia, without
from generator.calculators.tally_means import Around, around, bare, jackknifed
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class Sampled:
    """The rows of a tally, those of each cane (none where not all canes have a number), and the probability below the upper end of an
    interval."""

    rows: list[TallyRow]
    canes: list[list[TallyRow]]
    tail: float


@dataclass(frozen=True)
class BearerFound:
    """A spur or a cane of so many nodes: bunches and count shoots in spring, bunches for each node, and its reach where a crop is
    wanted (see bearer_reach.py); low and high where there are canes enough to tell, and the canes still to cut until it is settled whether it
    makes the crop (0 where it is; left out where no reasonable number would do)."""

    on_cane: bool
    nodes: int
    bunches: float
    shoots: float
    per_node: float
    per_node_low: Maybe
    per_node_high: Maybe
    reach: Maybe
    reach_low: Maybe
    reach_high: Maybe
    more_canes: Maybe


@dataclass(frozen=True)
class Versus:
    """How two figures differ, and the canes still to cut until the interval no longer holds 0 (0 where it does not; left out where no
    reasonable number would do)."""

    difference: Around
    more: Maybe


@dataclass(frozen=True)
class Weighed:
    """All bearers: as bearers.py reckons them (spurs, then canes), with their intervals, and the best cane against the two-node spur in
    bunches for each node; the standard error of the two-node spur's reach in % of it, which is the same for every crop wanted. Empty lists
    where the chain cannot be reckoned."""

    buds: list[Buds]
    spurs: list[Carried]
    canes: list[Carried]
    found: list[BearerFound]
    cane_less_spur: Versus
    spur_less_wish: Versus
    spur_se_pct: Maybe


def tally_from(sums: list[TallyRow], given: Tally) -> Tally:
    """The sums by node from 0 as the figures of the chain; all that is not counted under the lens is as given. The dead are counted
    apart near the base and further out where both were looked at and it fits with the nodes that are dead altogether."""
    last = len(sums) - 1
    everywhere = between(sums, 1, last)
    inner = between(sums, 1, given.inner_nodes)
    outer = between(sums, given.inner_nodes + 1, last)
    dead = part(everywhere.dead_node, dissected(everywhere)).number
    near = part(inner.dead_primary, dissected(inner))
    far = part(outer.dead_primary, dissected(outer))
    apart = near.ok and far.ok and max(near.number, far.number) + dead <= PER_CENT
    return Tally(
        primordia=[per(primordia(row), live(row)) for row in sums if row.node > 0],
        cane_burst_pct=given.cane_burst_pct,
        burst_pct=given.burst_pct,
        spur_burst_pct=given.spur_burst_pct,
        dead_primary_pct=part(everywhere.dead_primary, dissected(everywhere)),
        dead_primary_inner_pct=Maybe(apart, near.number),
        dead_primary_outer_pct=Maybe(apart, far.number),
        inner_nodes=given.inner_nodes,
        dead_node_pct=dead,
        secondary_share=given.secondary_share,
        shoots_per_burst_node=given.shoots_per_burst_node,
        spring=given.spring,
    )


def weigh(sampled: Sampled, given: Tally, wish: Wish, longest_spur: int, most: float) -> Weighed:
    """Every bearer that the tally reaches. most are the canes that anybody would cut."""
    sums = by_node(sampled.rows, last_node(sampled.rows))
    tally = tally_from(sums, given)
    if not is_whole(tally):
        return nothing_weighed()
    buds = buds_counted(tally)
    rest = without_each(sums, sampled.canes, given)
    spurs = spurs_of(buds, wish, longest_spur)
    canes = canes_of(buds, wish, longest_spur)
    found = [found_of(one, rest, wish, sampled, most) for one in spurs + canes]
    spur = spurs[SPUR - 1]
    against = no_versus()
    if len(canes) > 0:
        against = cane_less_spur(spur, best(canes), rest, wish, sampled, most)
    less_wish = versus_wish(spur, again(spur, rest, wish), wish, sampled, most)
    return Weighed([buds], spurs, canes, found, against, less_wish, spur_se_pct(spur, rest, wish, sampled))


def nothing_weighed() -> Weighed:
    """No bearer can be reckoned."""
    return Weighed([], [], [], [], no_versus(), no_versus(), Maybe(False, 0.0))


def without_each(sums: list[TallyRow], canes: list[list[TallyRow]], given: Tally) -> list[Buds]:
    """The buds without each cane in turn; fewer than the canes where one of them is needed to reckon at all."""
    found: list[Buds] = []
    for cane in canes:
        own = by_node(cane, len(sums) - 1)
        tally = tally_from([without(total, one) for total, one in zip(sums, own)], given)
        if is_whole(tally):
            found.append(buds_counted(tally))
    return found


def again(one: Carried, rest: list[Buds], wish: Wish) -> list[Carried]:
    """A bearer reckoned without each cane; fewer than the canes where its nodes are then not all known."""
    return [carried(buds, wish, one.nodes, one.on_cane) for buds in rest if one.nodes <= len(buds.primordia)]


def sure_of(middle: float, rest: list[float], sampled: Sampled) -> Around:
    """A figure with its interval, where it could be reckoned without each of two canes or more."""
    if len(sampled.canes) < 2 or len(rest) < len(sampled.canes):
        return bare(Maybe(True, middle))
    return around(middle, jackknifed(rest), len(rest), sampled.tail)


def found_of(one: Carried, rest: list[Buds], wish: Wish, sampled: Sampled, most: float) -> BearerFound:
    """A bearer with its intervals, which end at 0."""
    others = again(one, rest, wish)
    per_node = sure_of(one.bunches / one.nodes, [other.bunches / other.nodes for other in others], sampled)
    reach = bare(one.reach)
    if wish.ok:
        reach = sure_of(one.reach.number, [other.reach.number for other in others], sampled)
    return BearerFound(
        on_cane=one.on_cane,
        nodes=one.nodes,
        bunches=one.bunches,
        shoots=one.shoots,
        per_node=one.bunches / one.nodes,
        per_node_low=Maybe(per_node.low.ok, max(0.0, per_node.low.number)),
        per_node_high=per_node.high,
        reach=one.reach,
        reach_low=Maybe(reach.low.ok, max(0.0, reach.low.number)),
        reach_high=reach.high,
        more_canes=versus_wish(one, others, wish, sampled, most).more,
    )


def no_versus() -> Versus:
    """Nothing to compare."""
    return Versus(bare(Maybe(False, 0.0)), Maybe(False, 0.0))


def versus(difference: Around, canes: int, most: float) -> Versus:
    """A difference from so many canes, and how many more would settle its sign."""
    if not difference.se.ok:
        return Versus(difference, Maybe(False, 0.0))
    if difference.low.number > 0.0 or difference.high.number < 0.0:
        return Versus(difference, Maybe(True, 0.0))
    half = difference.high.number - difference.middle.number
    return Versus(difference, canes_until_apart(difference.middle.number, half, float(canes), most))


def cane_less_spur(spur: Carried, cane: Carried, rest: list[Buds], wish: Wish, sampled: Sampled, most: float) -> Versus:
    """Bunches for each node: a cane less a spur."""
    spurs = again(spur, rest, wish)
    canes = again(cane, rest, wish)
    apart = [one.bunches / one.nodes - other.bunches / other.nodes for one, other in zip(canes, spurs)]
    middle = cane.bunches / cane.nodes - spur.bunches / spur.nodes
    return versus(sure_of(middle, apart, sampled), len(sampled.canes), most)


def versus_wish(one: Carried, others: list[Carried], wish: Wish, sampled: Sampled, most: float) -> Versus:
    """The reach of a bearer less 1, the crop wanted; others is the bearer without each cane."""
    if not wish.ok:
        return no_versus()
    return versus(sure_of(one.reach.number - 1.0, [other.reach.number - 1.0 for other in others], sampled), len(sampled.canes), most)


def spur_se_pct(spur: Carried, rest: list[Buds], wish: Wish, sampled: Sampled) -> Maybe:
    """The standard error of the spur's reach in % of it. A reach is bunches for each shoot times what is wanted and the room, so it needs
    neither of those; left out where the spur bears nothing."""
    others = [one.bunches / one.shoots for one in again(spur, rest, wish) if one.shoots > 0.0]
    if spur.bunches <= 0.0 or spur.shoots <= 0.0:
        return Maybe(False, 0.0)
    sure = sure_of(spur.bunches / spur.shoots, others, sampled)
    return Maybe(sure.se.ok and sure.se.number > 0.0, PER_CENT * sure.se.number * spur.shoots / spur.bunches)
