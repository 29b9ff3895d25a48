"""How far the buds of a tally differ, and how alike those of one cane are: what the plan reckons the surety of other bearers with.

The spread is pooled over nodes, each about its own mean: sd2 = SUM (x - mean of its node)2 / SUM (buds of a node - 1). Likeness is the
mean product of two such differences on one cane, over all pairs and canes, divided by the mean square of them all: the intraclass
correlation by pairs, kept between 0 and 1. The means are taken from both alike, so that what they cost cancels.
"""

import math

from generator.calculators.facts import Maybe
from generator.calculators.tally_counts import TallyRow, by_node, last_node, live, primordia, squares


def bud_spread(rows: list[TallyRow]) -> Maybe:
    """The standard deviation of primordia among living primaries of one node; left out where no node has two, or all are the same."""
    apart = 0.0
    free = 0
    for row in by_node(rows, last_node(rows)):
        if row.node > 0 and live(row) > 1:
            apart += apart_from(row, mean_of(row))
            free += live(row) - 1
    if free < 1 or apart <= 0.0:
        return Maybe(False, 0.0)
    return Maybe(True, math.sqrt(apart / free))


def likeness(rows: list[TallyRow], canes: list[list[TallyRow]], least: int) -> Maybe:
    """The correlation of buds of one cane; left out where fewer canes than `least` have two living primaries or more, or all buds are the
    same."""
    means = [mean_of(row) for row in by_node(rows, last_node(rows))]
    square = 0.0
    together = 0.0
    buds = 0
    pairs = 0
    telling = 0
    for cane in canes:
        counted = [row for row in cane if row.node > 0]
        own = sum([live(row) for row in counted])
        apart = math.fsum([primordia(row) - live(row) * means[row.node] for row in counted])
        squared = math.fsum([apart_from(row, means[row.node]) for row in counted])
        square += squared
        together += apart * apart - squared
        buds += own
        pairs += own * (own - 1)
        telling += 1 if own > 1 else 0
    if telling < max(1, least) or square <= 0.0:
        return Maybe(False, 0.0)
    return Maybe(True, min(1.0, max(0.0, together / pairs / (square / buds))))


def mean_of(row: TallyRow) -> float:
    """Primordia for each living primary; 0 where there is none."""
    return float(primordia(row)) / live(row) if live(row) > 0 else 0.0


def apart_from(row: TallyRow, mean: float) -> float:
    """The sum of the squares of primordia less a mean, over living primaries."""
    return squares(row) - 2.0 * mean * primordia(row) + mean * mean * live(row)
