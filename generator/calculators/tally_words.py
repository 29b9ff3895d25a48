"""What bud_fruitfulness says: its headline, the working line by line, and the notes with how sure it is."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.reach_sums import SPUR, best
from generator.calculators.reach_words import bearer_line
from generator.calculators.say import Say
from generator.calculators.tally_bearers import Versus, Weighed, versus
from generator.calculators.tally_counts import TallyRow, live, per, primordia
from generator.calculators.tally_means import Paired, Stretch

# More, less, not settled yet, too close to be settled by cutting.
PAIRS: list[str] = [
    "bud_fruitfulness.pairs_more",
    "bud_fruitfulness.pairs_less",
    "bud_fruitfulness.pairs_unsettled",
    "bud_fruitfulness.pairs_too_close",
]
BEARERS: list[str] = [
    "bud_fruitfulness.bearers_more",
    "bud_fruitfulness.bearers_less",
    "bud_fruitfulness.bearers_unsettled",
    "bud_fruitfulness.bearers_too_close",
]


@dataclass(frozen=True)
class Heard:
    """All that was found, for the sentences: groups are all nodes, the basal and the distal ones; total is the sum over all nodes from 1;
    canes 0 where not all are numbered; batched when one row holds several buds; the best cane and the wish in weighed; share is s; low_fruit are
    the primordia for each bud below which it is time to change something."""

    rows: list[Stretch]
    groups: list[Stretch]
    total: TallyRow
    canes: int
    batched: bool
    secondaries_everywhere: bool
    pairs: Paired
    weighed: Weighed
    wished: bool
    void: bool
    burst_counted: bool
    share: float
    confidence_pct: float
    shortest_cane: float
    most: float
    low_fruit: float


def counted_share(total: TallyRow, everywhere: bool) -> Maybe:
    """Primordia in a secondary as a share of those in a live primary, where any were found in secondaries: of all buds with something
    alive, or of those with a dead primary alone."""
    looked_at = live(total) + total.dead_primary if everywhere else total.dead_primary
    secondary = per(total.secondary_1 + 2 * total.secondary_2, looked_at)
    primary = per(primordia(total), live(total))
    if not secondary.ok or not primary.ok or secondary.number <= 0.0 or primary.number <= 0.0:
        return Maybe(False, 0.0)
    return Maybe(True, secondary.number / primary.number)


def headline_of(heard: Heard) -> Say:
    """What two-node spurs reach of the crop wanted, where that is known with its range: bearers decide, and not single nodes. Else basal
    and distal buds side by side, and whether they can be told apart; or else the mean of all that were read."""
    if heard.wished and not heard.void and len(heard.weighed.buds) > 0 and heard.weighed.spur_less_wish.difference.se.ok:
        return headline_reach(heard)
    basal = heard.groups[1]
    distal = heard.groups[2]
    everywhere = heard.groups[0]
    if basal.mean_live.ok and distal.mean_live.ok:
        numbers = [basal.mean_live.number, float(basal.last_node), distal.mean_live.number, float(distal.node), float(distal.last_node)]
        apart = heard.pairs.difference
        told_apart = apart.se.ok and (apart.low.number > 0.0 or apart.high.number < 0.0)
        return Say("bud_fruitfulness.headline" if told_apart else "bud_fruitfulness.headline_open", numbers, [])
    if everywhere.mean_live.ok:
        return Say("bud_fruitfulness.headline_all", [everywhere.mean_live.number, float(everywhere.live)], [])
    return Say("bud_fruitfulness.headline_dead", [float(everywhere.buds)], [])


def headline_reach(heard: Heard) -> Say:
    """The reach of two-node spurs with its range: enough, not enough, or not settled by this sample."""
    spur = heard.weighed.found[SPUR - 1]
    numbers = [spur.reach.number, spur.reach_low.number, spur.reach_high.number]
    if spur.reach_low.number >= 1.0:
        return Say("bud_fruitfulness.headline_enough", numbers, [])
    if spur.reach_high.number < 1.0:
        return Say("bud_fruitfulness.headline_short", numbers, [])
    return Say("bud_fruitfulness.headline_unsettled", numbers, [])


def working_of(heard: Heard) -> list[Say]:
    """How means, intervals and bearers are reckoned, and each with its numbers."""
    lines = [Say("bud_fruitfulness.formula", [], []), Say("bud_fruitfulness.formula_interval", [heard.confidence_pct], [])]
    lines = lines + [node_line(one) for one in heard.rows if one.buds > 0]
    if heard.canes > 1:
        lines.append(Say("bud_fruitfulness.formula_groups", [], []))
    lines = lines + [group_line(one) for one in heard.groups if one.mean_live.ok and len(heard.rows) > 1]
    if heard.pairs.difference.se.ok:
        pairs = heard.pairs.difference
        numbers = [float(heard.pairs.canes), pairs.middle.number, pairs.se.number, pairs.low.number, pairs.high.number]
        lines.append(Say("bud_fruitfulness.pairs", numbers, []))
    lines = lines + dead_lines(heard.groups[0])
    if len(heard.weighed.buds) > 0:
        lines = lines + [Say("bearer_reach.formula", [], []), Say("bud_fruitfulness.secondaries_reckoned", [heard.share], [])]
    return lines + [bearer_line(one) for one in heard.weighed.spurs + heard.weighed.canes]


def node_line(one: Stretch) -> Say:
    """One node: its buds and its mean, with the interval where there is one."""
    numbers = [float(one.node), float(one.buds), float(one.live)]
    if one.se.ok:
        return Say("bud_fruitfulness.node", numbers + [one.mean_live.number, one.se.number, one.low.number, one.high.number], [])
    if one.mean_live.ok:
        return Say("bud_fruitfulness.node_single", numbers + [one.mean_live.number], [])
    return Say("bud_fruitfulness.node_dead", [float(one.node), float(one.buds)], [])


def group_line(one: Stretch) -> Say:
    """A stretch of nodes."""
    numbers = [float(one.node), float(one.last_node), float(one.live), one.mean_live.number]
    if one.se.ok:
        return Say("bud_fruitfulness.group", numbers + [one.se.number, one.low.number, one.high.number], [])
    return Say("bud_fruitfulness.group_bare", numbers, [])


def dead_lines(one: Stretch) -> list[Say]:
    """Deaths over all nodes, with Wilson's interval, and for how many buds it is."""
    dead = [one.dead_primary_pct.number, one.dead_primary_low_pct.number, one.dead_primary_high_pct.number]
    line = Say("bud_fruitfulness.dead", [float(one.buds)] + dead + [one.dead_node_pct.number], [])
    if one.dead_effective.ok:
        return [line, Say("bud_fruitfulness.dead_canes", [float(one.buds), one.dead_effective.number], [])]
    return [line, Say("bud_fruitfulness.dead_alone", [], [])]


def notes_of(heard: Heard) -> list[Say]:
    """What is settled and what is not, how many more canes would settle it, and what a count of buds cannot show."""
    return pairs_notes(heard) + bearer_notes(heard) + count_notes(heard) + [Say("bud_fruitfulness.season", [], []), Say("bearer_reach.cannot_see", [], [])]


def pairs_notes(heard: Heard) -> list[Say]:
    """Basal against distal, cane by cane."""
    basal = heard.groups[1]
    distal = heard.groups[2]
    if not basal.mean_live.ok or not distal.mean_live.ok:
        return []
    if not heard.pairs.difference.se.ok:
        return [Say("bud_fruitfulness.no_pairs", [], [])]
    against = versus(heard.pairs.difference, heard.pairs.canes, heard.most)
    return told(PAIRS, against, [float(distal.node), float(distal.last_node), float(basal.last_node)], heard)


def told(ways: list[str], against: Versus, about: list[float], heard: Heard) -> list[Say]:
    """One comparison in the one of four ways that fits."""
    apart = against.difference
    ends = [apart.middle.number, apart.low.number, apart.high.number, heard.confidence_pct]
    if not against.more.ok:
        return [Say(ways[-1], about + ends + [heard.most], [])]
    if against.more.number > 0.0:
        return [Say(ways[2], about + ends + [against.more.number], [])]
    if apart.middle.number > 0.0:
        return [Say(ways[0], about + ends, [])]
    return [Say(ways[1], about + [-apart.middle.number, -apart.high.number, -apart.low.number, heard.confidence_pct], [])]


def bearer_notes(heard: Heard) -> list[Say]:
    """The best cane against the two-node spur, and the spur's reach against the crop wanted."""
    if heard.void:
        return [Say("bud_fruitfulness.void", [], [])]
    weighed = heard.weighed
    if len(weighed.buds) == 0:
        return [Say("bud_fruitfulness.no_bearers", [], [])]
    if heard.canes < 2:
        return [Say("bud_fruitfulness.no_canes", [], [])] + wish_notes(heard)
    if len(weighed.canes) == 0:
        known = float(len(weighed.buds[0].primordia))
        return [Say("bearer_reach.no_cane", [known, heard.shortest_cane], [])] + wish_notes(heard)
    about = [float(best(weighed.canes).nodes), float(SPUR)]
    if not weighed.cane_less_spur.difference.se.ok:
        return [Say("bud_fruitfulness.bearers_single", about, [])] + wish_notes(heard)
    return told(BEARERS, weighed.cane_less_spur, about, heard) + wish_notes(heard)


def wish_notes(heard: Heard) -> list[Say]:
    """The spur's reach with its interval, and whether it is settled; where no crop is wanted, what that needs."""
    notes: list[Say] = []
    if not heard.burst_counted:
        notes.append(Say("bearer_reach.burst_not_counted", [], []))
    if not heard.wished:
        return notes + [Say("bearer_reach.no_wish", [], [])]
    against = heard.weighed.spur_less_wish
    spur = heard.weighed.found[SPUR - 1]
    if not against.difference.se.ok:
        return notes
    notes.append(Say("bearer_reach.interval", [spur.reach_low.number, spur.reach_high.number, heard.confidence_pct], []))
    if not against.more.ok:
        notes.append(Say("bearer_reach.too_close", [heard.most], []))
    elif against.more.number > 0.0:
        notes.append(Say("bearer_reach.more_canes", [against.more.number], []))
    return notes


def count_notes(heard: Heard) -> list[Say]:
    """What is to be known of the counts themselves: deaths as others count them, secondaries, buds left out, rows of several buds."""
    total = heard.total
    everywhere = heard.groups[0]
    notes: list[Say] = []
    if everywhere.mean.number < heard.low_fruit:
        notes.append(Say("bud_fruitfulness.low_fruit", [everywhere.mean.number, heard.low_fruit], []))
    if total.dead_primary + total.dead_node > 0:
        both = everywhere.dead_primary_pct.number + everywhere.dead_node_pct.number
        notes.append(Say("bud_fruitfulness.deaths", [both], []))
    counted = counted_share(total, heard.secondaries_everywhere)
    if counted.ok:
        notes.append(Say("bud_fruitfulness.secondaries_counted", [counted.number, heard.share], []))
    if total.unreadable > 0:
        notes.append(Say("bud_fruitfulness.unreadable", [float(total.unreadable)], []))
    if total.buds_3 > 0:
        notes.append(Say("bud_fruitfulness.three_or_more", [float(total.buds_3)], []))
    if any(one.se.ok and one.se.number <= 0.0 for one in heard.rows):
        notes.append(Say("bud_fruitfulness.alike", [], []))
    if heard.batched:
        notes.append(Say("bud_fruitfulness.batched", [], []))
    return notes
