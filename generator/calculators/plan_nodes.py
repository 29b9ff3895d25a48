"""The plan's node number: what the crop wants against what the vine carries, what the canopy has room for, and the law.

N = clamp(fruit, lo, hi) by reconcile.py, as in the calculator node_number. What the vine carries by its prunings and what the law
allows are ceilings where they are known; that the prunings were not weighed is said. The fruit view is no ceiling: below `lo` the
nodes stay and bunches are thinned. It stands either on buds cut open, bearer by bearer, or on spring counts; never on both, and the
plan says on which.
"""

from generator.calculators.bearers import has_buds
from generator.calculators.canopy_space import Room
from generator.calculators.facts import Facts, known, maybe, missing, number
from generator.calculators.node_words import conflict_notes, law_notes, raising, working_of
from generator.calculators.plan_bearers import borne_with, most_of
from generator.calculators.plan_by_buds import against_wish, chain_counts, choices_by_buds, fruit_by_buds, held_by_buds, reckons_by_buds, room_of
from generator.calculators.plan_by_spring import fruit_by_spring
from generator.calculators.plan_counts import BESIDE, LINKS
from generator.calculators.plan_kinds import MIX, Kinds, kinds_of, placed_of
from generator.calculators.plan_records import BlockPlanValues, Fruit, Named, Part, first_of, known_of, not_asked, rests_of, status_of, waiting
from generator.calculators.plan_room import BURST, WIRE, room_fault, room_numbers, room_view
from generator.calculators.plan_system import FORMING, NONE, SYSTEM, target_of
from generator.calculators.plan_vine import LENGTHS, MEASURED
from generator.calculators.plan_vine_and_law import beside_facts, beside_numbers, beside_uses, law_facts, law_view, views_of, vine_view, weighed
from generator.calculators.reconcile import ROOM_LOW
from generator.calculators.say import Say
from generator.calculators.views import Chosen, Views, bearing_of, chosen_of, no_bearing, rule_notes

NODES: str = "node_number"


def fruit_facts(facts: Facts, by_buds: bool) -> list[str]:
    """The facts of the fruit's view, in the order to ask them."""
    vines = ["row_spacing_m", "vine_spacing_m", "missing_vines_pct"]
    if known(facts, "bearing_vines_per_ha"):
        vines = ["bearing_vines_per_ha"]
    if by_buds:
        return vines + ["target_yield_t_ha", "bunch_weight_g"]
    return vines + ["target_yield_t_ha"] + LINKS


def room_facts(by_buds: bool) -> list[str]:
    """The facts of the room's view."""
    return WIRE if by_buds else WIRE + BURST


def both_facts(facts: Facts, by_buds: bool) -> list[str]:
    """The facts of both views and of a legal limit, each once, in the order to ask them."""
    names = fruit_facts(facts, by_buds)
    for fact in room_facts(by_buds) + law_facts(facts):
        if fact not in names:
            names = names + [fact]
    return names


def node_number(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Nodes per bearing vine. A vine that is still being formed, or is not pruned for a crop, has no node number."""
    target = target_of(earlier)
    if target == FORMING:
        return not_asked(NODES, NODES, facts, rests_of(earlier, SYSTEM), Say("plan.nodes_not_asked", [], []))
    if target == NONE:
        return without_layout(facts, values, earlier)
    by_buds = reckons_by_buds(facts, target)
    if has_buds(facts) and not by_buds and len(missing(facts, LINKS)) > 0:
        return waiting(NODES, NODES, facts, fruit_facts(facts, True) + LENGTHS, Say("plan.buds_wait", [], []))
    asked = both_facts(facts, by_buds)
    fruit_known = len(missing(facts, fruit_facts(facts, by_buds))) == 0
    room_known = len(missing(facts, room_facts(by_buds))) == 0
    if not fruit_known and not room_known:
        return waiting(NODES, NODES, facts, asked, Say("plan.nodes_open", [], []))
    if room_known and room_fault(facts):
        return waiting(NODES, NODES, facts, asked, Say("plan.room_fault", [], []))
    if by_buds:
        return from_buds(facts, values, earlier, target, fruit_known, room_known)
    if fruit_known and number(facts, "bunches_per_shoot") <= 0.0:
        return waiting(NODES, NODES, facts, asked, Say("plan.barren", [], []))
    return from_spring(facts, values, earlier, target, fruit_known, room_known)


def without_layout(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Vines that are renewed, or whose form has no layout here, get no number: what they had last winter, and what vine and law say."""
    vine = vine_view(facts, values)
    law = law_view(facts)
    before = maybe(facts, "nodes_left")
    notes = [Say("plan.nodes_as_before", [before.number], []) if before.ok else Say("plan.nodes_to_count", [], [])]
    notes.append(Say("plan.nodes_by_prunings", [vine.high], []) if vine.ok else Say("plan.nodes_weigh", [], []))
    if law.ok:
        notes = notes + law.lines + [Say("node_number.not_advice", [], [])]
    rests_on = rests_of(earlier, SYSTEM)
    for fact in known_of(facts, ["nodes_left"]) + beside_facts(facts):
        if fact not in rests_on:
            rests_on = rests_on + [fact]
    says = Say("plan.nodes_none", [], [])
    return part_of(facts, "", beside_uses(vine), [], rests_on, says, beside_numbers(vine, law), vine.lines, notes + rule_notes(weighed(facts, values)))


def from_spring(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, fruit_known: bool, room_known: bool) -> Part:
    """The number by spring counts, as far as they are known; room and fruit are never both unknown here."""
    asked = both_facts(facts, False)
    if not room_known:
        return one_view(facts, values, asked, fruit_by_spring(facts, values, earlier, target))
    room = room_view(facts, target, number(facts, "budburst_pct"), number(facts, "shoots_per_burst_node"))
    if room.nodes_high < 1:
        return waiting(NODES, NODES, facts, asked, Say("plan.no_room", [], []))
    if not fruit_known:
        return one_view(facts, values, asked, room_alone(room))
    fruit = fruit_by_spring(facts, values, earlier, target)
    views = views_of(facts, values, fruit, room, bearing_of(chain_counts(facts, values, earlier, target, fruit.nodes)))
    chosen = chosen_of(views)
    placed = placed_of(facts, values, target, chosen.nodes)
    kinds = kinds_of(facts, values, target, placed, views)
    return reconciled(facts, asked, fruit, room, views, chosen, placed, kinds, rule_notes(weighed(facts, values)))


def from_buds(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, fruit_known: bool, room_known: bool) -> Part:
    """The number by buds cut open. The room is that of the bearers which the fruit asks for, of all that the vine could carry
    where no crop is named."""
    asked = both_facts(facts, True)
    choices = choices_by_buds(facts, values, target)
    most = most_of(choices)
    if most.bunches <= 0.0:
        return waiting(NODES, NODES, facts, asked, Say("plan.barren", [], []))
    if not room_known:
        return one_view(facts, values, asked, fruit_by_buds(facts, values, earlier, target, choices))
    fruit = fruit_by_buds(facts, values, earlier, target, choices) if fruit_known else room_alone(room_of(facts, target, most))
    wanted = borne_with(choices, fruit.nodes) if fruit_known else most
    if room_of(facts, target, wanted).nodes_high < 1:
        return waiting(NODES, NODES, facts, asked, Say("plan.no_room", [], []))
    if not fruit_known:
        return one_view(facts, values, asked, fruit)
    laid = held_by_buds(facts, target, choices, wanted, vine_view(facts, values), law_view(facts))
    counts = chain_counts(facts, values, earlier, target, laid.borne.nodes)
    # Where the number was raised, the bunches to thin are told by those of the bearers.
    bearing = bearing_of(counts) if laid.chosen.limit != ROOM_LOW else no_bearing(counts.nodes_left)
    views = views_of(facts, values, fruit, laid.room, bearing)
    kinds = kinds_of(facts, values, target, laid.chosen.nodes, views)
    notes = laid.notes + against_wish(facts, counts, laid, most) + rule_notes(weighed(facts, values))
    return reconciled(facts, asked + LENGTHS + MEASURED, fruit, laid.room, views, laid.chosen, laid.chosen.nodes, kinds, notes)


def room_alone(room: Room) -> Fruit:
    """The room's view told alone, in the place of the fruit's."""
    return Fruit(0, 0.0, 0.0, 0.0, ["canopy_space"], room.headline, room_numbers(room), room.working, room.notes)


def one_view(facts: Facts, values: BlockPlanValues, asked: list[str], view: Fruit) -> Part:
    """The part while the crop's view or the room's is not known."""
    numbers = view.numbers
    if view.nodes > 0:
        numbers = fruit_numbers(view)
    vine = vine_view(facts, values)
    law = law_view(facts)
    rests_on = known_of(facts, asked + BESIDE) + beside_facts(facts)
    uses = view.uses + beside_uses(vine)
    lines = view.lines + vine.lines + law.lines
    notes = [Say("plan.one_view", [], [])] + rule_notes(weighed(facts, values)) + view.notes
    return part_of(facts, "", uses, missing(facts, asked), rests_on, view.headline, numbers + beside_numbers(vine, law), lines, notes)


def fruit_numbers(fruit: Fruit) -> list[Named]:
    """The nodes that the crop asks for, and what they stand on."""
    return [Named("fruit_nodes", float(fruit.nodes)), Named("fruit_nodes_exact", fruit.exact)] + fruit.numbers


def reconciled(
    facts: Facts, asked: list[str], fruit: Fruit, room: Room, views: Views, chosen: Chosen, placed: float, kinds: Kinds, own: list[Say]
) -> Part:
    """All views: the crop's number, held between the others; the numbers of weak and strong vines; which view limits, what to do about
    it, and what of that the bearers can do."""
    numbers = [Named("nodes", chosen.nodes), Named("nodes_exact", chosen.exact), Named("low", chosen.low), Named("high", chosen.high)]
    said = own + conflict_notes(views, chosen, maybe(facts, "target_yield_t_ha"), placed) + kinds.notes + raising(views, chosen) + law_notes(views)
    if any(note.id == "plan.buds_fall_short" for note in fruit.notes):
        said = [note for note in said if note.id != "node_number.agree"]
    of_fruit = [note for note in fruit.notes if note.id != "nodes_for_yield.no_ceiling"]  # the other views have had their say
    return part_of(
        facts,
        chosen.limit,
        fruit.uses + ["canopy_space"] + beside_uses(views.capacity),
        missing(facts, law_facts(facts)),
        known_of(facts, asked + BESIDE + ["cordon_arms", "arm_length_m"] + MIX) + beside_facts(facts),
        Say("plan.nodes", [chosen.nodes, fruit.low, fruit.high], []) if fruit.low < fruit.high else Say("plan.nodes_alone", [chosen.nodes], []),
        numbers + kinds.numbers + fruit_numbers(fruit) + room_numbers(room) + beside_numbers(views.capacity, views.law),
        working_of(views, chosen),
        said + of_fruit + room.notes,
    )


def part_of(
    facts: Facts,
    limit: str,
    uses: list[str],
    needs: list[str],
    rests_on: list[str],
    headline: Say,
    numbers: list[Named],
    lines: list[Say],
    notes: list[Say],
) -> Part:
    """The part, settled when nothing is needed any more."""
    return Part(
        id=NODES,
        stage=NODES,
        ready=True,
        settled=len(needs) == 0,
        choice=limit,
        possible=[],
        uses=uses,
        needs=needs,
        ask_next=first_of(needs),
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=headline,
        numbers=numbers,
        lines=lines,
        notes=notes,
        sources=[],
        cautions=[],
    )
