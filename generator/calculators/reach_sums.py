"""How far a bearer reaches for the crop wanted, and how sure that is for the number of canes that were cut open.

reach = bunches of a node x nodes that fit / bunches wanted; nodes that fit = shoots that fit / shoots of a node of this bearer.
The interval is that of sampling buds: n canes give one bud at each node, the primordia of a living primary spread by `sd`, and
buds of one cane are alike by `likeness`, so var = sd2 / n (SUM k2 / P + likeness SUM k k') with k the bunches that one
primordium becomes. Where a tally told the standard error itself (tally_bearers.py), that takes the place of the formula. It is plain and not on a log scale: the reach is a weighted sum of means of many buds, close to normal from
twenty canes on, and a barren base (reach 0) has an interval too. sd is the same for all nodes, which is wide for barren ones.
"""

import math
from dataclasses import dataclass

from generator.calculators.bearers import Buds, bearer, burst_at, grown
from generator.calculators.facts import Maybe
from generator.calculators.units import share

SPUR: int = 2


@dataclass(frozen=True)
class Wish:
    """What is wanted of one bearing vine: bunches, inside room for so many shoots; ok where the crop wish is known."""

    ok: bool
    bunches: float
    shoots: float


@dataclass(frozen=True)
class Carried:
    """A bearer of so many nodes: the bunches and count shoots it gives, and its reach where a crop is wanted."""

    on_cane: bool
    nodes: int
    bunches: float
    shoots: float
    reach: Maybe


@dataclass(frozen=True)
class Sampling:
    """How the buds were sampled: canes cut open, spread of primordia among buds of a node, likeness of buds of one cane (0 to 1), the
    standard error of what the two-node spur bears (%) where the canes themselves told it, the level's width in standard errors, and the
    most canes that anybody would cut."""

    canes: float
    sd: float
    likeness: float
    spur_se_pct: Maybe
    width: float
    most: float


@dataclass(frozen=True)
class Interval:
    """The interval of a reach; ok where there is one. more: whole canes still to cut until 1 lies outside (0 where it does already);
    left out where no reasonable number would do."""

    ok: bool
    low: float
    high: float
    more: Maybe


def fits(wish: Wish, shoots_per_node: float) -> float:
    """Nodes of a bearer whose shoots fit; 0 where there is no room or nothing grows."""
    if shoots_per_node <= 0.0:
        return 0.0
    return max(0.0, wish.shoots / shoots_per_node)


def carried(buds: Buds, wish: Wish, nodes: int, on_cane: bool) -> Carried:
    """What a spur or a cane of so many nodes carries. Raises ValueError when it is longer than the nodes that are known."""
    one = bearer(buds, nodes, on_cane)
    reach = Maybe(False, 0.0)
    if wish.ok:
        reach = Maybe(True, one.bunches / nodes * fits(wish, one.shoots / nodes) / wish.bunches)
    return Carried(on_cane, nodes, one.bunches, one.shoots, reach)


def spurs_of(buds: Buds, wish: Wish, longest: int) -> list[Carried]:
    """Spurs of one node up to the longest, as far as the nodes are known."""
    return [carried(buds, wish, nodes, False) for nodes in range(1, min(longest, len(buds.primordia)) + 1)]


def canes_of(buds: Buds, wish: Wish, shortest: int) -> list[Carried]:
    """Canes of the shortest length up to all the nodes that are known."""
    return [carried(buds, wish, nodes, True) for nodes in range(shortest, len(buds.primordia) + 1)]


def best(canes: list[Carried]) -> Carried:
    """The cane with the most bunches for the same room (of equals the shortest). Raises ValueError when there is none."""
    found = canes[0]
    for one in canes:
        if one.bunches * found.shoots > found.bunches * one.shoots:
            found = one
    return found


def no_interval() -> Interval:
    """Nothing is known of how sure the reach is."""
    return Interval(False, 0.0, 0.0, Maybe(False, 0.0))


def interval_of(buds: Buds, wish: Wish, spur: Carried, sampling: Sampling) -> Interval:
    """The interval of the two-node spur's reach. None where no crop is wanted or hardly a living primary was seen at one of the nodes."""
    if not spur.reach.ok:
        return no_interval()
    if sampling.spur_se_pct.ok:
        return about(spur.reach.number, sampling.width * share(sampling.spur_se_pct.number) * spur.reach.number, sampling)
    if sampling.canes * min(buds.primary[0], buds.primary[1]) < 1.0:
        return no_interval()
    lower = grown(buds, 1, burst_at(buds, 1, SPUR, False))
    upper = grown(buds, 2, burst_at(buds, 2, SPUR, False))
    apart = lower * lower / buds.primary[0] + upper * upper / buds.primary[1]
    together = 2.0 * sampling.likeness * lower * upper
    error = sampling.sd * math.sqrt((apart + together) / sampling.canes)
    return about(spur.reach.number, sampling.width * error / SPUR * fits(wish, spur.shoots / SPUR) / wish.bunches, sampling)


def about(reach: float, half: float, sampling: Sampling) -> Interval:
    """An interval so wide to either side, which ends at 0."""
    return Interval(True, max(0.0, reach - half), reach + half, more_canes(reach, half, sampling))


def more_canes(reach: float, half: float, sampling: Sampling) -> Maybe:
    """Canes still to cut, rounded up, until 1 lies outside the interval, if its middle stays."""
    if reach - half >= 1.0 or reach + half < 1.0:
        return Maybe(True, 0.0)
    return canes_until_apart(reach - 1.0, half, sampling.canes, sampling.most)


def canes_until_apart(gap: float, half: float, canes: float, most: float) -> Maybe:
    """Canes still to cut, at least one, until an interval of half this width is narrower than the gap: n (half / gap)2 in all. Left out
    where there is no gap or more canes than `most` would be needed."""
    needed = canes * half * half
    if gap * gap <= 0.0 or needed > most * gap * gap:
        return Maybe(False, 0.0)
    return Maybe(True, float(max(1, math.ceil(needed / (gap * gap) - canes))))
