"""Means and shares of a tally by node and over a stretch of nodes, each with its interval, and basal against distal cane by cane.

At one node every cane gives one bud: se = sd / sqrt(n), and the interval is that of Student's t. Over several nodes the buds of a
cane are alike, so there each cane is left out in turn (the jackknife): se2 = (n - 1) / n SUM (mean without cane c - their mean)2,
t on canes - 1. Shares have Wilson's interval. Over several nodes it is that of fewer buds, n / design effect x (z / t)2, where the design
effect is the variance by leaving out canes over that of single buds, at least 1 (Korn and Graubard 1998). Intervals cover the cutting of
buds alone, neither the season nor the losses.
"""

import math
from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.proportions import wilson
from generator.calculators.quantiles import normal_quantile, t_quantile
from generator.calculators.tally_counts import TallyRow, between, dissected, live, part, per, primordia, squares, without
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class Stretch:
    """The buds of the nodes from `node` to `last_node`. buds could be read, live of them have a live primary. mean: primordia for each
    bud read, mean_live for each live primary, with the latter's se, low and high. fruitful_pct: buds with one primordium or more;
    dead_primary_pct: primary dead, a secondary alive; dead_node_pct: nothing alive; each in % of the buds read. dead_effective: single buds
    that would tell as much of dead primaries, where the canes show it."""

    node: int
    last_node: int
    buds: int
    live: int
    unreadable: int
    mean: Maybe
    mean_live: Maybe
    se: Maybe
    low: Maybe
    high: Maybe
    fruitful_pct: Maybe
    fruitful_low_pct: Maybe
    fruitful_high_pct: Maybe
    dead_primary_pct: Maybe
    dead_primary_low_pct: Maybe
    dead_primary_high_pct: Maybe
    dead_effective: Maybe
    dead_node_pct: Maybe


@dataclass(frozen=True)
class Around:
    """A number with its standard error and the ends of its interval; left out where they cannot be told."""

    middle: Maybe
    se: Maybe
    low: Maybe
    high: Maybe


@dataclass(frozen=True)
class Paired:
    """Distal less basal primordia for each live primary, within canes that have both; canes are how many do."""

    canes: int
    difference: Around


def bare(middle: Maybe) -> Around:
    """A number of which nobody can say how sure it is."""
    none = Maybe(False, 0.0)
    return Around(middle, none, none, none)


def around(middle: float, se: float, count: int, tail: float) -> Around:
    """The interval of Student's t about a number, from so many canes or buds (two or more)."""
    half = t_quantile(tail, float(count - 1)) * se
    return Around(Maybe(True, middle), Maybe(True, se), Maybe(True, middle - half), Maybe(True, middle + half))


def spread_of(total: int, squared: int, count: int) -> float:
    """The standard deviation of whole numbers from their sum, the sum of their squares and how many there are (two or more)."""
    return math.sqrt(float(count * squared - total * total) / (float(count) * (count - 1)))


def at_node(row: TallyRow, tail: float) -> Stretch:
    """One node: row is its sum."""
    count = live(row)
    sure = bare(per(primordia(row), count))
    if count > 1:
        se = spread_of(primordia(row), squares(row), count) / math.sqrt(float(count))
        sure = around(float(primordia(row)) / count, se, count, tail)
    return stretch(row, row.node, row.node, sure, [], tail)


def stretch(row: TallyRow, first: int, last: int, sure: Around, rest: list[TallyRow], tail: float) -> Stretch:
    """A stretch of nodes: row is its sum, sure its mean of live primaries; rest are the sums without each cane, none where each bud stands
    for itself. An interval ends at 0 primordia."""
    buds = dissected(row)
    fruitful = fruitful_in(row)
    fruit_buds = telling(fruitful, buds, [share_of(fruitful_in(one), dissected(one)) for one in rest], tail)
    dead_buds = telling(row.dead_primary, buds, [share_of(one.dead_primary, dissected(one)) for one in rest], tail)
    in_fruit = wilson_of(fruitful, buds, fruit_buds, tail)
    dead = wilson_of(row.dead_primary, buds, dead_buds, tail)
    return Stretch(
        node=first,
        last_node=last,
        buds=buds,
        live=live(row),
        unreadable=row.unreadable,
        mean=per(primordia(row), buds),
        mean_live=sure.middle,
        se=sure.se,
        low=Maybe(sure.low.ok, max(0.0, sure.low.number)),
        high=sure.high,
        fruitful_pct=part(fruitful, buds),
        fruitful_low_pct=in_fruit.low,
        fruitful_high_pct=in_fruit.high,
        dead_primary_pct=part(row.dead_primary, buds),
        dead_primary_low_pct=dead.low,
        dead_primary_high_pct=dead.high,
        dead_effective=Maybe(len(rest) > 1 and dead_buds > 0.0, dead_buds),
        dead_node_pct=part(row.dead_node, buds),
    )


def fruitful_in(row: TallyRow) -> int:
    """Buds with one primordium or more."""
    return row.buds_1 + row.buds_2 + row.buds_3


def share_of(count: int, whole: int) -> float:
    """A share of one, from a whole above 0."""
    return float(count) / whole


def telling(count: int, whole: int, rest: list[float], tail: float) -> float:
    """How many single buds tell as much of a share as these do; rest is the share without each cane. All of them where nobody can say: no
    canes to leave out, or the share is 0 or all."""
    if len(rest) < 2 or count <= 0 or count >= whole:
        return float(whole)
    p = float(count) / whole
    error = jackknifed(rest)
    effect = max(1.0, error * error * whole / (p * (1.0 - p)))
    narrower = normal_quantile(tail) / t_quantile(tail, float(len(rest) - 1))
    return whole / effect * min(1.0, narrower * narrower)


def wilson_of(count: int, whole: int, as_many: float, tail: float) -> Around:
    """A share with Wilson's interval from so many single buds, in %."""
    if whole <= 0:
        return bare(Maybe(False, 0.0))
    ends = wilson(as_many * count / whole, as_many, normal_quantile(tail))
    return Around(part(count, whole), Maybe(False, 0.0), Maybe(True, PER_CENT * ends.low), Maybe(True, PER_CENT * ends.high))


def over_nodes(rows: list[TallyRow], canes: list[list[TallyRow]], first: int, last: int, tail: float) -> Stretch:
    """The nodes from first to last. canes are the rows of each cane; none where not all of them are numbered."""
    total = between(rows, first, last)
    whole = per(primordia(total), live(total))
    sure = bare(whole)
    own = [between(cane, first, last) for cane in canes]
    rest = [without(total, one) for one in own if dissected(one) > 0]
    lived = [without(total, one) for one in own if live(one) > 0]
    left = [float(primordia(one)) / live(one) for one in lived if live(one) > 0]
    if len(left) > 1:
        sure = around(whole.number, jackknifed(left), len(left), tail)
    return stretch(total, first, last, sure, [one for one in rest if dissected(one) > 0], tail)


def jackknifed(left: list[float]) -> float:
    """The standard error of a number from its values without each cane in turn (two or more)."""
    count = len(left)
    middle = math.fsum(left) / count
    apart = math.fsum([(one - middle) * (one - middle) for one in left])
    return math.sqrt(apart * (count - 1) / count)


def paired(canes: list[list[TallyRow]], basal_last: int, distal_last: int, tail: float) -> Paired:
    """Distal less basal, cane by cane: basal are the nodes from 1 to basal_last, distal those from there to distal_last."""
    found: list[float] = []
    for cane in canes:
        basal = between(cane, 1, basal_last)
        distal = between(cane, basal_last + 1, distal_last)
        if live(basal) > 0 and live(distal) > 0:
            found.append(float(primordia(distal)) / live(distal) - float(primordia(basal)) / live(basal))
    count = len(found)
    if count == 0:
        return Paired(0, bare(Maybe(False, 0.0)))
    middle = math.fsum(found) / count
    if count == 1:
        return Paired(1, bare(Maybe(True, middle)))
    apart = math.fsum([(one - middle) * (one - middle) for one in found])
    return Paired(count, around(middle, math.sqrt(apart / (count - 1) / count), count, tail))
