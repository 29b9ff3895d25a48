"""One cane after the other: what the tables say of it, and how many nodes it can be cut to.

Agronomy, section 4 (K1 to K17, K24). The rows stand in rules/decisions/; here facts are gathered for them, and nodes and wire are reckoned.
A cane's way goes up to the wire and along it (cane_path.py). Evidence: hg-05, bp-30, bp-32.
"""

import math
from dataclasses import dataclass

from generator.calculators.answer import Reason
from generator.calculators.cane_path import nodes_on, path_to_right
from generator.calculators.facts import Facts, Maybe
from generator.calculators.table_answers import Told, ask, given, given_yes, joined, no_facts
from generator.calculators.tables import Table
from generator.calculators.units import mm_from_cm

SORTING: list[str] = ["cane_sound", "cane_suspect", "cane_thickness", "cane_internodes", "cane_place"]
VERDICT: str = "cane_verdict"
RANK: str = "cane_rank"
LENGTH: str = "cane_length"
KEEP: str = "keep"
RESERVE: str = "reserve"
REJECT: str = "reject"
SHORT: str = "short"
ODD: list[str] = ["slim", "thick", "weak", "over"]
ALIVE: list[str] = ["sound", "shorten", "spur_only"]
HAILED: str = "K2_hail"
LOW_ENOUGH: list[str] = ["right", "low"]


@dataclass(frozen=True)
class CandidateCane:
    """One cane as it was looked at: mm and cm as measured, choices by their places, the base in cm under the wire and out from the trunk."""

    cane_diameter_mm: float
    cane_ripe_nodes: int
    cane_origin: int
    internode_cm: Maybe
    cane_section: int
    cane_side: int
    cane_base_below_wire_cm: Maybe
    cane_base_out_cm: float
    cane_light: int
    cane_laterals: int
    cane_damage: int
    cane_double_nodes: bool
    cane_green: bool


@dataclass(frozen=True)
class Wire:
    """The wire of one cane (mm, from the trunk), the head under it and the internode (cm) where a cane's own were not measured, the share
    of dead primaries (%), the most nodes of a ripe cane and of a poorly ripened or slim one, and the nodes of a spur."""

    length_mm: int
    head_cm: float
    internode_cm: float
    dead_primary_pct: float
    most: float
    most_poor: float
    spur_nodes: int


@dataclass(frozen=True)
class Judged:
    """One cane with its base under the wire (cm), what the tables said of it, its points, the nodes that there is room for on its wire,
    those it would keep when it is laid (0: no more than a spur, so it is not laid), the part of its wire that it fills, and all rows that spoke, the verdict's first."""

    number: int
    cane: CandidateCane
    base_cm: float
    verdict: Told
    told: list[Told]
    points: float
    fit: int
    nodes: int
    fills: float
    length: Told
    reasons: list[Reason]


def judged(tables: list[Table], number: int, cane: CandidateCane, wire: Wire) -> Judged:
    """What is said of one cane."""
    internode = cane.internode_cm.number if cane.internode_cm.ok else wire.internode_cm
    base = cane.cane_base_below_wire_cm.number if cane.cane_base_below_wire_cm.ok else wire.head_cm
    fit = room_for(wire.length_mm, base, cane.cane_base_out_cm, internode)
    fills = float(cane.cane_ripe_nodes) / float(max(1, fit))
    facts = given(given(given(facts_of(cane, base, internode), "dead_primary_pct", wire.dead_primary_pct), "cane_fill_ratio", fills), "cane_ripe_nodes", float(cane.cane_ripe_nodes))
    told = [ask(tables, name, facts) for name in SORTING]
    verdict = ask(tables, VERDICT, facts)
    rank = ask(tables, RANK, facts)
    length = ask(tables, LENGTH, facts)
    most = wire.most_poor if length.outcome == SHORT else wire.most
    reasons = verdict.reasons
    for one in told:
        reasons = joined(reasons, one)
    if verdict.outcome != REJECT:
        reasons = joined(reasons, rank)
    points = math.fsum([reason.weight for reason in rank.reasons])
    nodes = min(cane.cane_ripe_nodes, fit, math.floor(most))
    return Judged(number, cane, base, verdict, told, points, fit, nodes if nodes > wire.spur_nodes else 0, fills, length, reasons)


def facts_of(cane: CandidateCane, base_cm: float, internode_cm: float) -> Facts:
    """What the tables ask of a cane, as far as it was looked at."""
    facts = given(given_yes(no_facts(), "cane_green", cane.cane_green), "cane_origin", float(cane.cane_origin))
    facts = given(given(facts, "cane_damage", float(cane.cane_damage)), "cane_section", float(cane.cane_section))
    facts = given(given_yes(facts, "cane_double_nodes", cane.cane_double_nodes), "cane_diameter_mm", cane.cane_diameter_mm)
    facts = given(given(facts, "internode_cm", internode_cm), "cane_base_out_cm", cane.cane_base_out_cm)
    facts = given(given(facts, "cane_base_below_wire_cm", base_cm), "cane_light", float(cane.cane_light))
    return given(facts, "cane_laterals", float(cane.cane_laterals))


def room_for(wire_mm: int, base_cm: float, out_cm: float, internode_cm: float) -> int:
    """The nodes that fit between the base of a cane and the end of its wire: up to the wire, and along what is left of it from where the
    cane begins. Raises ValueError when the internode is not above zero."""
    left = max(0, wire_mm - mm_from_cm(out_cm))
    return nodes_on(path_to_right(mm_from_cm(base_cm), left, 0), mm_from_cm(internode_cm))


def can_be_laid(one: Judged) -> bool:
    """True for a cane that is kept or in reserve and keeps more nodes than a spur when it is laid."""
    return (one.verdict.outcome == KEEP or one.verdict.outcome == RESERVE) and one.nodes > 0


def good_wood(one: Judged) -> bool:
    """True when neither its thickness nor its internodes keep a cane in reserve; then only its place can."""
    return not any(told.outcome in ODD for told in one.told)


def can_be_spur(one: Judged) -> bool:
    """True for a cane that may be cut to a spur."""
    return one.verdict.outcome != REJECT


def last_resort(one: Judged) -> bool:
    """True for wood that is rejected as too thin, for its shape, or for hail beyond its first sound nodes: it is never laid, and is better
    than a vine without a node."""
    sound = one.told[0].outcome in ALIVE or (one.told[0].row == HAILED and one.cane.cane_ripe_nodes > 0)
    return one.verdict.outcome == REJECT and sound


def above_wire(one: Judged) -> bool:
    """True for a cane that begins above the wire."""
    return one.base_cm < 0.0


def low_enough(one: Judged) -> bool:
    """True for a cane that begins no farther out, and no closer to the wire, than a cane should."""
    return one.told[-1].outcome in LOW_ENOUGH


def better(one: Judged, other: Judged) -> bool:
    """True when one is to be laid before the other: kept before reserve, then by points; of equals the first."""
    if (one.verdict.outcome == KEEP) != (other.verdict.outcome == KEEP):
        return one.verdict.outcome == KEEP
    return one.points > other.points
