"""The views of the node number, whoever took them, held against each other.

In exact nodes of one bearing vine. A ceiling is a view in whole nodes (nearest; of the law never more). See reconcile.py for the rule.
"""

from dataclasses import dataclass

from generator.calculators.capacity import CapacityRules, Grape, capacity_view, chosen_notes, named
from generator.calculators.counting import down, half_up
from generator.calculators.facts import Maybe
from generator.calculators.reconcile import CAPACITY, FRUIT, LEGAL, ROOM_HIGH, Ceiling, hold, lowest
from generator.calculators.say import Say
from generator.calculators.units import KG_PER_T
from generator.calculators.yield_chain import Chain, Counts, chain


@dataclass(frozen=True)
class View:
    """One view: there or not, its low end, its number (for the crop; else the high end) and its high end, in exact nodes, and the lines
    that say how it was reckoned."""

    ok: bool
    low: float
    nodes: float
    high: float
    lines: list[Say]


@dataclass(frozen=True)
class Bearing:
    """Where the crop was reckoned here: bearing vines per hectare, what a node gives, and the nodes at which it was counted."""

    ok: bool
    vines_per_ha: float
    links: Chain
    nodes_left: Maybe


@dataclass(frozen=True)
class Weighed:
    """What the vine's view is taken from: its prunings (kg), the rule chosen by hand (a choice), what rules are made for, and the rules."""

    pruning_weight_kg: Maybe
    formula: Maybe
    grape: Grape
    rules: CapacityRules


@dataclass(frozen=True)
class Views:
    """The views in exact nodes, and what a node bears."""

    fruit: View
    capacity: View
    room: View
    law: View
    bearing: Bearing


@dataclass(frozen=True)
class Chosen:
    """The number: ok where the crop's view is known; whole and exact; bounded where some ceiling is known: lo and hi in whole nodes; the
    view that limits."""

    ok: bool
    nodes: float
    exact: float
    bounded: bool
    low: float
    high: float
    limit: str


def no_view() -> View:
    """A view that cannot be taken."""
    return View(False, 0.0, 0.0, 0.0, [])


def no_bearing(nodes_left: Maybe) -> Bearing:
    """Where the crop cannot be reckoned."""
    return Bearing(False, 0.0, Chain(0.0, 0.0, 0.0, 0.0, 0.0), nodes_left)


def bearing_of(counts: Counts) -> Bearing:
    """What a node gives by these counts."""
    return Bearing(True, counts.bearing_vines_per_ha, chain(counts), counts.nodes_left)


def tonnes(bearing: Bearing, nodes: float) -> Maybe:
    """What so many nodes give in t/ha; left out where that cannot be reckoned."""
    if not bearing.ok:
        return Maybe(False, 0.0)
    return Maybe(True, (nodes * bearing.links.kg_per_node + bearing.links.other_kg) * bearing.vines_per_ha / KG_PER_T)


def by_prunings(vine: Weighed) -> View:
    """The nodes that the vine carries, by its prunings and the rules followed for its grape."""
    if not vine.pruning_weight_kg.ok:
        return no_view()
    weight = vine.pruning_weight_kg.number
    found = capacity_view(weight, vine.grape, vine.rules, named(vine.rules, vine.formula))
    lines = [
        Say("node_number.by_prunings", [weight, found.low], [found.low_who]),
        Say("node_number.by_prunings", [weight, found.high], [found.high_who]),
    ]
    return View(True, found.low, found.high, found.high, lines if found.low_who != found.high_who else lines[1:])


def rule_notes(vine: Weighed) -> list[Say]:
    """What to know of a rule that was chosen by hand."""
    if not vine.pruning_weight_kg.ok:
        return []
    return chosen_notes(vine.rules, vine.grape, vine.pruning_weight_kg.number, named(vine.rules, vine.formula))


def by_law(per_vine: Maybe, per_ha: Maybe, vines_per_ha: Maybe) -> View:
    """The most nodes of a vine by law, where a limit was entered; of two the lower one holds. vines_per_ha counts planting places. Raises
    ValueError when a limit per hectare stands without them."""
    if not per_ha.ok:
        most = per_vine.number
        return View(per_vine.ok, most, most, most, [Say("node_number.law_vine", [most], [])] if per_vine.ok else [])
    if not vines_per_ha.ok:
        raise ValueError("a legal limit per hectare needs the row spacing and the vine spacing")
    most = per_ha.number / vines_per_ha.number
    lines = [Say("node_number.law_ha", [per_ha.number, vines_per_ha.number, most], [])]
    if per_vine.ok:
        lines.append(Say("node_number.law_vine", [per_vine.number], []))
        most = min(most, per_vine.number)
    return View(True, most, most, most, lines)


def ceilings_of(views: Views, whole: bool) -> list[Ceiling]:
    """The ceilings that are known, in whole nodes (nearest; of the law never more) or exact."""
    found: list[Ceiling] = []
    if views.capacity.ok:
        found.append(Ceiling(CAPACITY, float(half_up(views.capacity.high)) if whole else views.capacity.high))
    if views.room.ok:
        found.append(Ceiling(ROOM_HIGH, float(half_up(views.room.high)) if whole else views.room.high))
    if views.law.ok:
        found.append(Ceiling(LEGAL, float(down(views.law.high)) if whole else views.law.high))
    return found


def most_of_a_vine(views: Views) -> Maybe:
    """The most nodes of any single vine: the room on its wire and the law. What it can carry differs from vine to vine."""
    limits = [one for one in ceilings_of(views, True) if one.view != CAPACITY]
    if len(limits) == 0:
        return Maybe(False, 0.0)
    return Maybe(True, max(1.0, lowest(limits).nodes))


def chosen_of(views: Views) -> Chosen:
    """The number held between the views that are known."""
    whole = ceilings_of(views, True)
    fruit = float(half_up(views.fruit.nodes))
    if len(whole) == 0:
        return Chosen(True, max(1.0, fruit), views.fruit.nodes, False, 0.0, 0.0, FRUIT)
    low = float(half_up(views.room.low))
    held = hold(fruit, low, whole, 1.0)
    if not views.fruit.ok:
        return Chosen(False, 0.0, 0.0, True, held.low, held.high, "")
    exact = hold(views.fruit.nodes, views.room.low, ceilings_of(views, False), 0.0)
    return Chosen(True, held.nodes, exact.nodes, True, held.low, held.high, held.limit)
