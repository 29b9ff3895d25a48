"""Buds as they were counted under the lens, cane by cane and node by node, and what their sums are.

Every bud that could be read is in one of six states that exclude each other: its primary alive with no, one, two, three or more
primordia; the primary dead and a secondary alive; nothing alive. What a secondary holds stands beside these states. A death is therefore counted once. (Evidence bd-02, bd-08, nf-20.)
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT

OR_MORE: int = 3  # what a bud with three primordia or more counts for


@dataclass(frozen=True)
class TallyRow:
    """Buds of one cane at one node, counted by state; in sums over canes or nodes the cane or the node is 0.

    cane is 0 where its number is not known; node 1 is the lowest count node, 0 the base bud. buds_0 to buds_3: live primaries with
    so many primordia (3: three or more); dead_primary: primary dead, a secondary alive; dead_node: nothing alive; secondary_1 and
    secondary_2: buds whose secondary holds one, or two or more, counted either beside dead primaries alone or at every bud with something
    alive; unreadable: in no state at all.
    """

    cane: int
    node: int
    buds_0: int
    buds_1: int
    buds_2: int
    buds_3: int
    dead_primary: int
    dead_node: int
    secondary_1: int
    secondary_2: int
    unreadable: int


def summed(rows: list[TallyRow], node: int) -> TallyRow:
    """The sum of rows, under a node."""
    return TallyRow(
        cane=0,
        node=node,
        buds_0=sum([row.buds_0 for row in rows]),
        buds_1=sum([row.buds_1 for row in rows]),
        buds_2=sum([row.buds_2 for row in rows]),
        buds_3=sum([row.buds_3 for row in rows]),
        dead_primary=sum([row.dead_primary for row in rows]),
        dead_node=sum([row.dead_node for row in rows]),
        secondary_1=sum([row.secondary_1 for row in rows]),
        secondary_2=sum([row.secondary_2 for row in rows]),
        unreadable=sum([row.unreadable for row in rows]),
    )


def without(total: TallyRow, row: TallyRow) -> TallyRow:
    """A sum with a part of it taken out again."""
    return TallyRow(
        cane=total.cane,
        node=total.node,
        buds_0=total.buds_0 - row.buds_0,
        buds_1=total.buds_1 - row.buds_1,
        buds_2=total.buds_2 - row.buds_2,
        buds_3=total.buds_3 - row.buds_3,
        dead_primary=total.dead_primary - row.dead_primary,
        dead_node=total.dead_node - row.dead_node,
        secondary_1=total.secondary_1 - row.secondary_1,
        secondary_2=total.secondary_2 - row.secondary_2,
        unreadable=total.unreadable - row.unreadable,
    )


def live(row: TallyRow) -> int:
    """Buds with a live primary."""
    return row.buds_0 + row.buds_1 + row.buds_2 + row.buds_3


def dissected(row: TallyRow) -> int:
    """Buds that could be read, dead ones included."""
    return live(row) + row.dead_primary + row.dead_node


def primordia(row: TallyRow) -> int:
    """Primordia in live primaries; three or more count as three."""
    return row.buds_1 + 2 * row.buds_2 + OR_MORE * row.buds_3


def squares(row: TallyRow) -> int:
    """The sum of the squares of the primordia in each live primary."""
    return row.buds_1 + 2 * 2 * row.buds_2 + OR_MORE * OR_MORE * row.buds_3


def row_faults(row: TallyRow) -> list[Say]:
    """What is wrong between the counts of one row, or nothing."""
    if row.secondary_1 + row.secondary_2 > live(row) + row.dead_primary:
        return [Say("bud_fruitfulness.secondaries_too_many", [], [])]
    return []


def secondaries_everywhere(rows: list[TallyRow]) -> bool:
    """True when secondaries were counted beside living primaries too: in some row they are more than the dead primaries."""
    return any(row.secondary_1 + row.secondary_2 > row.dead_primary for row in rows)


def by_node(rows: list[TallyRow], last: int) -> list[TallyRow]:
    """The sums at each node from 0 to the last; rows beyond it are left out."""
    return [between(rows, node, node) for node in range(0, last + 1)]


def between(rows: list[TallyRow], first: int, last: int) -> TallyRow:
    """The sum over the nodes from first to last; its node is the first of them."""
    return summed([row for row in rows if first <= row.node <= last], first)


def last_node(rows: list[TallyRow]) -> int:
    """The furthest node at which a bud could be read; 0 where there is none."""
    last = 0
    for row in rows:
        if dissected(row) > 0:
            last = max(last, row.node)
    return last


def by_cane(rows: list[TallyRow]) -> list[list[TallyRow]]:
    """The rows of each cane that has a number and a bud that could be read, by number."""
    canes: list[list[TallyRow]] = []
    own: list[TallyRow] = []
    for row in sorted([row for row in rows if row.cane > 0 and dissected(row) > 0], key=lambda row: row.cane):
        if len(own) > 0 and own[0].cane != row.cane:
            canes.append(own)
            own = []
        own.append(row)
    if len(own) > 0:
        canes.append(own)
    return canes


def all_numbered(rows: list[TallyRow]) -> bool:
    """True when it is known of every bud that could be read which cane it comes from."""
    return all(row.cane > 0 or dissected(row) == 0 for row in rows)


def most_at_a_node(rows: list[TallyRow]) -> int:
    """The most buds that one row holds of a cane with a number: more than one is no single cane."""
    most = 0
    for row in rows:
        if row.cane > 0:
            most = max(most, dissected(row))
    return most


def part(count: int, whole: int) -> Maybe:
    """A share as a percentage; left out where there is nothing to share."""
    if whole <= 0:
        return Maybe(False, 0.0)
    return Maybe(True, PER_CENT * count / whole)


def per(count: int, whole: int) -> Maybe:
    """A mean; left out where there is nothing to take it of."""
    if whole <= 0:
        return Maybe(False, 0.0)
    return Maybe(True, float(count) / whole)
