"""What bearer_reach says: its headline, the working line by line, and the notes."""

from dataclasses import dataclass

from generator.calculators.bearers import Buds, bunches_at, burst_at
from generator.calculators.facts import Maybe
from generator.calculators.reach_sums import SPUR, Carried, Interval, Sampling, Wish, best, fits
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class Told:
    """All that was reckoned: spurs from one node, canes up to the nodes known, the interval of the two-node spur and the sampling
    behind it (canes 0 where it is not known how many were cut open)."""

    buds: Buds
    wish: Wish
    spurs: list[Carried]
    canes: list[Carried]
    certain: Interval
    sampling: Sampling


def headline_of(told: Told) -> Say:
    """The reach of the two-node spur and of the best cane; without a crop wish the bunches on their nodes."""
    spur = told.spurs[1]
    if len(told.canes) == 0:
        if told.wish.ok:
            return Say("bearer_reach.headline_spur", [spur.reach.number], [])
        return Say("bearer_reach.headline_spur_value", [spur.bunches / SPUR], [])
    cane = best(told.canes)
    if told.wish.ok:
        return Say("bearer_reach.headline", [spur.reach.number, float(cane.nodes), cane.reach.number], [])
    return Say("bearer_reach.headline_value", [spur.bunches / SPUR, float(cane.nodes), cane.bunches / cane.nodes], [])


def working_of(told: Told, wish_lines: list[Say]) -> list[Say]:
    """The formula, the two-node spur and the best cane node by node, every bearer, and the reach of those two; wish_lines say how the
    crop wanted and the room were reckoned."""
    lines = [Say("bearer_reach.formula", [], []), Say("bearer_reach.the_spur", [], [])] + nodes_of(told.buds, told.spurs[1])
    if len(told.canes) > 0:
        cane = best(told.canes)
        lines = lines + [Say("bearer_reach.the_cane", [float(cane.nodes)], [])] + nodes_of(told.buds, cane)
    lines = lines + wish_lines + [bearer_line(one) for one in told.spurs + told.canes]
    if not told.wish.ok:
        return lines
    lines = lines + [Say("bearer_reach.reach_formula", [], []), reach_line(told.wish, told.spurs[1])]
    if len(told.canes) > 0:
        lines.append(reach_line(told.wish, best(told.canes)))
    if told.certain.ok:
        lines.append(interval_line(told))
    return lines


def nodes_of(buds: Buds, one: Carried) -> list[Say]:
    """A line for each node of a bearer."""
    return [node_line(buds, index + 1, burst_at(buds, index + 1, one.nodes, one.on_cane)) for index in range(one.nodes)]


def node_line(buds: Buds, node: int, burst: float) -> Say:
    """The bunches of one node, with its numbers put in."""
    primary = buds.primary[node - 1]
    others = primary * buds.double + buds.secondary[node - 1]
    numbers = [float(node), burst * PER_CENT, primary, buds.share, others, buds.primordia[node - 1], buds.spring]
    return Say("bearer_reach.node", numbers + [bunches_at(buds, node, burst)], [])


def bearer_line(one: Carried) -> Say:
    """A bearer as a whole: its bunches, its shoots, the bunches on each node, and its reach where a crop is wanted."""
    numbers = [float(one.nodes), one.bunches, one.shoots, one.bunches / one.nodes]
    if one.reach.ok:
        return Say("bearer_reach.cane_reach" if one.on_cane else "bearer_reach.spur_reach", numbers + [one.reach.number], [])
    return Say("bearer_reach.cane" if one.on_cane else "bearer_reach.spur", numbers, [])


def reach_line(wish: Wish, one: Carried) -> Say:
    """The reach of a bearer with its numbers put in."""
    shoots = one.shoots / one.nodes
    numbers = [float(one.nodes), wish.shoots, shoots, fits(wish, shoots), one.bunches / one.nodes, wish.bunches, one.reach.number]
    return Say("bearer_reach.reach_of_cane" if one.on_cane else "bearer_reach.reach_of_spur", numbers, [])


def interval_line(told: Told) -> Say:
    """How wide the interval is, and why: by the canes of the tally themselves, or by spread and likeness of the buds."""
    sampling = told.sampling
    half = told.certain.high - told.spurs[1].reach.number
    if sampling.spur_se_pct.ok:
        return Say("bearer_reach.interval_counted", [sampling.canes, sampling.spur_se_pct.number, sampling.width, half], [])
    return Say("bearer_reach.interval_width", [sampling.sd, sampling.canes, sampling.likeness, sampling.width, half], [])


def notes_of(told: Told, level_pct: float, shortest_cane: float, burst_counted: bool, rise: Maybe) -> list[Say]:
    """How sure it is, what would make it surer, and what cut buds cannot show."""
    notes: list[Say] = certainty(told, level_pct)
    if len(told.canes) == 0:
        notes.append(Say("bearer_reach.no_cane", [float(len(told.buds.primordia)), shortest_cane], []))
    elif not burst_counted:
        notes.append(Say("bearer_reach.burst_not_counted", [], []))
    if rise.ok and rise.number > 0.0:
        notes.append(Say("bearer_reach.rise", [rise.number], []))
    notes.append(Say("bearer_reach.end_nodes", [], []))
    notes.append(Say("bearer_reach.cannot_see", [], []))
    return notes


def certainty(told: Told, level_pct: float) -> list[Say]:
    """The interval and what it covers, or why there is none; how many more canes would tell."""
    if not told.wish.ok:
        return [Say("bearer_reach.no_wish", [], [])]
    if told.sampling.canes < 1.0:
        return [Say("bearer_reach.no_canes", [], [])]
    if not told.certain.ok:
        return [Say("bearer_reach.too_few_alive", [], [])]
    notes = [Say("bearer_reach.interval", [told.certain.low, told.certain.high, level_pct], [])]
    if not told.certain.more.ok:
        notes.append(Say("bearer_reach.too_close", [told.sampling.most], []))
    elif told.certain.more.number > 0.0:
        notes.append(Say("bearer_reach.more_canes", [told.certain.more.number], []))
    return notes
