"""What a bearer (a spur or a cane of so many nodes) carries by dissection: bunches, count shoots, nodes that burst.

Node i is in one of three states that exclude each other: P primary alive, S primary dead and secondary alive, D nothing
alive. With b the share of its living buds that burst: bunches = SUM b (P f1 q) + SUM b (P d + S) s f1 q, count shoots
C = SUM b (P (1 + d) + S), burst nodes B = SUM b (P + S). f1 are primordia per LIVE primary, s the crop of a secondary
shoot as a share of a primary's, d the share of double shoots, q the inflorescences of spring for each one seen in winter.
Shares are 0 to 1. A spur is not the base of a cane: its top two nodes are end nodes, which burst well. (Evidence nf-08,
cs-11, cs-16, sys-14.)
"""

from dataclasses import dataclass

from generator.calculators.facts import Facts, Maybe, known, maybe, number, series
from generator.calculators.units import share

PRIMORDIA: list[str] = ["primordia_node_1", "primordia_node_15"]
BURST: list[str] = ["cane_budburst_node_1", "cane_budburst_node_15"]
DISSECTED: list[str] = ["secondary_share", "dissection_to_spring", "shoots_per_burst_node", "spur_budburst_pct", "budburst_pct"]


@dataclass(frozen=True)
class Buds:
    """The buds of a block by node, from node 1 as far as they are known without a gap: primordia per live primary (f1), burst
    on a cane (b), P and S, all of one length; and for every node the burst of a spur's top nodes, s, d and q."""

    primordia: list[float]
    cane_burst: list[float]
    spur_burst: float
    primary: list[float]
    secondary: list[float]
    share: float
    double: float
    spring: float


@dataclass(frozen=True)
class Bearer:
    """What one bearer gives in spring: bunches, count shoots (C), nodes that burst (B)."""

    bunches: float
    shoots: float
    burst_nodes: float


@dataclass(frozen=True)
class Tally:
    """The buds as they were counted: primordia and burst by node (burst in %; left out where not known), burst of a cane's nodes
    that were not counted apart and of a spur in %; nodes with the primary dead and the secondary alive in % (of all nodes, of
    those up to and beyond `inner_nodes` where they were counted apart), nodes with nothing alive in %; s, shoots per burst node, q."""

    primordia: list[Maybe]
    cane_burst_pct: list[Maybe]
    burst_pct: float
    spur_burst_pct: float
    dead_primary_pct: Maybe
    dead_primary_inner_pct: Maybe
    dead_primary_outer_pct: Maybe
    inner_nodes: int
    dead_node_pct: float
    secondary_share: float
    shoots_per_burst_node: float
    spring: float


def counted(by_node: list[Maybe]) -> list[float]:
    """The numbers from node 1 up to the first node that was left out."""
    found: list[float] = []
    for one in by_node:
        if not one.ok:
            return found
        found.append(one.number)
    return found


def zone_of(tally: Tally, node: int) -> Maybe:
    """Nodes with the primary dead and the secondary alive, in %, at a node: of its zone where that was counted, else of all nodes."""
    zone = tally.dead_primary_outer_pct
    if node <= tally.inner_nodes:
        zone = tally.dead_primary_inner_pct
    if zone.ok:
        return zone
    return tally.dead_primary_pct


def is_whole(tally: Tally) -> bool:
    """True when two nodes or more were dissected and it is known of each what is dead, which is at most all of it."""
    nodes = len(counted(tally.primordia))
    if nodes < 2:
        return False
    for node in range(1, nodes + 1):
        dead = zone_of(tally, node)
        if not dead.ok or share(dead.number) + share(tally.dead_node_pct) > 1.0:
            return False
    return True


def buds_counted(tally: Tally) -> Buds:
    """The buds of a tally; d is shoots per burst node less 1, which holds where few primaries are dead. Raises ValueError when it is
    not whole."""
    if not is_whole(tally):
        raise ValueError("give the primordia of two nodes or more, and what is dead: at most 100 % of the nodes")
    primordia = counted(tally.primordia)
    secondary = [share(zone_of(tally, index + 1).number) for index in range(len(primordia))]
    dead = share(tally.dead_node_pct)
    return Buds(
        primordia=primordia,
        cane_burst=burst_of_cane(tally, len(primordia)),
        spur_burst=share(tally.spur_burst_pct),
        primary=[max(0.0, 1.0 - dead - part) for part in secondary],
        secondary=secondary,
        share=tally.secondary_share,
        double=max(0.0, tally.shoots_per_burst_node - 1.0),
        spring=tally.spring,
    )


def burst_of_cane(tally: Tally, nodes: int) -> list[float]:
    """Burst by node on a cane as shares. A node that was not counted bursts like the nearest counted one below it, the first
    ones like the first counted; where none was counted, all burst as the block does."""
    given = [one.number for one in tally.cane_burst_pct if one.ok]
    last = given[0] if len(given) > 0 else tally.burst_pct
    found: list[float] = []
    for index in range(nodes):
        if index < len(tally.cane_burst_pct) and tally.cane_burst_pct[index].ok:
            last = tally.cane_burst_pct[index].number
        found.append(share(last))
    return found


def grown(buds: Buds, node: int, burst: float) -> float:
    """Bunches in spring for each primordium in the living primary of a node (1 is the lowest): on primary and on other shoots.
    Raises ValueError when the node is not known."""
    if node < 1 or node > len(buds.primordia):
        raise ValueError("the buds of this node are not known")
    primary = buds.primary[node - 1]
    others = (primary * buds.double + buds.secondary[node - 1]) * buds.share
    return burst * (primary + others) * buds.spring


def bunches_at(buds: Buds, node: int, burst: float) -> float:
    """Bunches from one node (1 is the lowest) whose living buds burst with this share. Raises ValueError when it is not known."""
    return grown(buds, node, burst) * buds.primordia[node - 1]


def burst_at(buds: Buds, node: int, length: int, on_cane: bool) -> float:
    """The burst of a node on a bearer of so many nodes: on a cane its own, at the top two nodes of a spur that of spurs."""
    if on_cane or node <= length - 2:
        return buds.cane_burst[node - 1]
    return buds.spur_burst


def bearer(buds: Buds, length: int, on_cane: bool) -> Bearer:
    """What a cane or a spur of so many nodes gives. Raises ValueError when it is longer than the nodes that are known."""
    if length < 1 or length > len(buds.primordia):
        raise ValueError("a bearer has from one node to as many as are known")
    bunches = 0.0
    shoots = 0.0
    burst_nodes = 0.0
    for node in range(1, length + 1):
        burst = burst_at(buds, node, length, on_cane)
        primary = buds.primary[node - 1]
        secondary = buds.secondary[node - 1]
        bunches += bunches_at(buds, node, burst)
        shoots += burst * (primary * (1.0 + buds.double) + secondary)
        burst_nodes += burst * (primary + secondary)
    return Bearer(bunches, shoots, burst_nodes)


def void(tally_date: Maybe, last_freeze_date: Maybe) -> bool:
    """True when the buds were cut before the last freeze, or on its day: what was alive then may be dead now."""
    return tally_date.ok and last_freeze_date.ok and tally_date.number <= last_freeze_date.number


def tally_of(facts: Facts) -> Tally:
    """The tally among the facts. Raises ValueError when a fact is not known that has a default, or the dead nodes."""
    return Tally(
        primordia=series(facts, PRIMORDIA[0], PRIMORDIA[1]),
        cane_burst_pct=series(facts, BURST[0], BURST[1]),
        burst_pct=number(facts, "budburst_pct"),
        spur_burst_pct=number(facts, "spur_budburst_pct"),
        dead_primary_pct=maybe(facts, "dead_primary_pct"),
        dead_primary_inner_pct=maybe(facts, "dead_primary_inner_pct"),
        dead_primary_outer_pct=maybe(facts, "dead_primary_outer_pct"),
        inner_nodes=int(number(facts, "inner_zone_nodes")),
        dead_node_pct=number(facts, "dead_node_pct"),
        secondary_share=number(facts, "secondary_share"),
        shoots_per_burst_node=number(facts, "shoots_per_burst_node"),
        spring=number(facts, "dissection_to_spring"),
    )


def has_buds(facts: Facts) -> bool:
    """True when buds were cut, after the last freeze, and the tally tells enough to reckon with: see is_whole."""
    if not known(facts, "buds_cut") or number(facts, "buds_cut") < 1.0:
        return False
    if void(maybe(facts, "tally_date"), maybe(facts, "last_freeze_date")):
        return False
    if not all(known(facts, name) for name in DISSECTED + ["dead_node_pct", "inner_zone_nodes"]):
        return False
    return is_whole(tally_of(facts))


def buds_of(facts: Facts) -> Buds:
    """The buds of a block for which has_buds is true. Raises ValueError otherwise."""
    if not has_buds(facts):
        raise ValueError("there is no tally of buds to reckon with")
    return buds_counted(tally_of(facts))
