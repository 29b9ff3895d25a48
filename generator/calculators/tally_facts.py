"""The facts of the plan that a tally gives, so that nobody types them again."""

from dataclasses import dataclass

from generator.calculators.bearers import Tally

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
DEAD: list[str] = ["dead_primary_pct", "dead_primary_inner_pct", "dead_primary_outer_pct"]


@dataclass(frozen=True)
class FactFound:
    """A fact of the plan that the tally gives, with its number (yes is 1)."""

    fact: str
    number: float


def facts_of(tally: Tally, frozen: bool, canes: int) -> list[FactFound]:
    """Primordia by node per live primary, the dead as they are counted, and from how many canes (0 or 1: not told). What a frost after
    the count has made void is not among it. The numbers are those that the bearers are reckoned with."""
    found = [FactFound("buds_cut", 1.0)]
    for fact, one in zip(PRIMORDIA, tally.primordia):
        if one.ok:
            found.append(FactFound(fact, one.number))
    if canes > 1:
        found.append(FactFound("canes_dissected", float(canes)))
    if frozen:
        return found
    found.append(FactFound("dead_node_pct", tally.dead_node_pct))
    for fact, one in zip(DEAD, [tally.dead_primary_pct, tally.dead_primary_inner_pct, tally.dead_primary_outer_pct]):
        if one.ok:
            found.append(FactFound(fact, one.number))
    return found
