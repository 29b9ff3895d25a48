"""The facts of the plan that a tally gives, so that nobody types them again."""

from dataclasses import dataclass

from generator.calculators.bearers import Tally
from generator.calculators.facts import Maybe

# The facts that the plan takes over, by node and by zone.
PRIMORDIA: list[str] = [
    "primordia_node_1",
    "primordia_node_2",
    "primordia_node_3",
    "primordia_node_4",
    "primordia_node_5",
    "primordia_node_6",
    "primordia_node_7",
    "primordia_node_8",
    "primordia_node_9",
    "primordia_node_10",
    "primordia_node_11",
    "primordia_node_12",
    "primordia_node_13",
    "primordia_node_14",
    "primordia_node_15",
]
SURE: list[str] = ["canes_dissected", "bud_spread", "likeness", "spur_fruit_se_pct"]
DEAD: list[str] = ["dead_primary_pct", "dead_primary_inner_pct", "dead_primary_outer_pct"]


@dataclass(frozen=True)
class FactFound:
    """A fact of the plan that the tally gives, with its number (yes is 1)."""

    fact: str
    number: float


@dataclass(frozen=True)
class Sure:
    """How sure a tally is: its canes (0 or 1: not told), the spread of primordia among buds of a node, the likeness of buds of one cane, and
    the standard error of the two-node spur's reach in % of it."""

    canes: int
    spread: Maybe
    likeness: Maybe
    spur_se_pct: Maybe


def facts_of(tally: Tally, frozen: bool, sure: Sure) -> list[FactFound]:
    """Primordia by node per live primary, the dead as they are counted, and how sure they are. What a frost after the count has made
    void is not among it. The numbers are those that the bearers are reckoned with."""
    found = [FactFound("buds_cut", 1.0)]
    for fact, one in zip(PRIMORDIA, tally.primordia):
        if one.ok:
            found.append(FactFound(fact, one.number))
    for fact, one in zip(SURE, [Maybe(sure.canes > 1, float(sure.canes)), sure.spread, sure.likeness, sure.spur_se_pct]):
        if one.ok:
            found.append(FactFound(fact, one.number))
    if frozen:
        return found
    found.append(FactFound("dead_node_pct", tally.dead_node_pct))
    for fact, one in zip(DEAD, [tally.dead_primary_pct, tally.dead_primary_inner_pct, tally.dead_primary_outer_pct]):
        if one.ok:
            found.append(FactFound(fact, one.number))
    return found
