"""Means and shares of a tally by node and over a stretch of nodes, each with its interval, and basal against distal cane by cane.

At one node every cane gives one bud: se = sd / sqrt(n), and the interval is that of Student's t. Over several nodes the buds of a
cane are alike, so there each cane is left out in turn (the jackknife): se2 = (n - 1) / n SUM (mean without cane c - their mean)2,
t on canes - 1. Shares have Wilson's interval. Intervals cover the cutting of buds alone, neither the season nor the losses.
"""

import math
from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.proportions import wilson
from generator.calculators.quantiles import normal_quantile, t_quantile
from generator.calculators.tally_counts import TallyRow, between, dissected, live, part, per, primordia, squares, without
from generator.calculators.units import PER_CENT, share


@dataclass(frozen=True)
class Stretch:
    """The buds of the nodes from `node` to `last_node`. buds could be read, live of them have a live primary. mean: primordia for each
    bud read, mean_live for each live primary, with the latter's se, low and high. fruitful_pct: buds with one primordium or more;
    dead_primary_pct: primary dead, a secondary alive; dead_node_pct: nothing alive; each in % of the buds read."""

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


def tail_of(confidence_pct: float) -> float:
    """The probability below the upper end of a two-sided interval. Raises ValueError unless the level is above 0 and below 100 %."""
    if not 0.0 < confidence_pct < PER_CENT:
        raise ValueError("the level of an interval lies between 0 and 100 %")
    return 1.0 - (1.0 - share(confidence_pct)) / 2.0


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
    return stretch(row, row.node, row.node, sure, tail)


def stretch(row: TallyRow, first: int, last: int, sure: Around, tail: float) -> Stretch:
    """A stretch of nodes: row is its sum, sure its mean of live primaries. An interval ends at 0 primordia."""
    buds = dissected(row)
    fruitful = row.buds_1 + row.buds_2 + row.buds_3
    in_fruit = wilson_of(fruitful, buds, tail)
    dead = wilson_of(row.dead_primary, buds, tail)
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
        dead_node_pct=part(row.dead_node, buds),
    )


def wilson_of(count: int, whole: int, tail: float) -> Around:
    """A share with Wilson's interval, in %."""
    if whole <= 0:
        return bare(Maybe(False, 0.0))
    ends = wilson(float(count), float(whole), normal_quantile(tail))
    return Around(part(count, whole), Maybe(False, 0.0), Maybe(True, PER_CENT * ends.low), Maybe(True, PER_CENT * ends.high))


def over_nodes(rows: list[TallyRow], canes: list[list[TallyRow]], first: int, last: int, tail: float) -> Stretch:
    """The nodes from first to last. canes are the rows of each cane; none where not all of them are numbered."""
    total = between(rows, first, last)
    whole = per(primordia(total), live(total))
    sure = bare(whole)
    left: list[float] = []
    for cane in canes:
        own = between(cane, first, last)
        rest = without(total, own)
        if live(own) > 0 and live(rest) > 0:
            left.append(float(primordia(rest)) / live(rest))
    if len(left) > 1:
        sure = around(whole.number, jackknifed(left), len(left), tail)
    return stretch(total, first, last, sure, tail)


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
