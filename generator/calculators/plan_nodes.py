"""The plan's node number: what the crop wants against what the canopy has room for.

N = clamp(fruit, lo, hi) by reconcile.py, as in the calculator node_number. The vine's own capacity is a third view that is not
taken here, and the plan says so. The fruit view is no ceiling: below `lo` the nodes stay and bunches are thinned. It stands either
on buds cut open, bearer by bearer, or on spring counts; never on both, and the plan says on which.
"""

from generator.calculators.bearers import has_buds
from generator.calculators.canopy_space import Room
from generator.calculators.facts import Facts, known, missing, number
from generator.calculators.layout_records import CANE
from generator.calculators.nodes_for_yield import nodes_for_crop
from generator.calculators.plan_bearers import borne_with, most_of, within_room
from generator.calculators.plan_by_buds import choices_by_buds, fruit_by_buds, reckons_by_buds, room_of
from generator.calculators.plan_counts import BESIDE, LINKS, limits_of, spring_counts
from generator.calculators.plan_records import BlockPlanValues, Fruit, Named, Part, first_of, known_of, not_asked, rests_of, status_of, waiting
from generator.calculators.plan_room import BURST, WIRE, room_fault, room_numbers, room_view
from generator.calculators.plan_system import FORMING, NONE, SYSTEM, target_of
from generator.calculators.plan_vine import LENGTHS, MEASURED
from generator.calculators.reconcile import ROOM_HIGH, ROOM_LOW, Ceiling, Held, hold, limit_of
from generator.calculators.say import Say

NODES: str = "node_number"
# What the forecast says of the number that is chosen is not said of the one that the crop asks for.
FORECAST_SAYS: list[str] = [
    "yield_chain.covers_both",
    "yield_chain.covers_season",
    "yield_chain.measured_where",
    "yield_chain.extrapolated",
    "yield_chain.within_reach",
]
SPUR_CORDON: int = 0
CANE_HEAD: int = 1


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
    """The facts of both views, each once, in the order to ask them."""
    names = fruit_facts(facts, by_buds)
    return names + [fact for fact in room_facts(by_buds) if fact not in names]


def node_number(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Nodes per bearing vine. A vine that is still being formed, or is not pruned for a crop, has no node number."""
    target = target_of(earlier)
    if target == FORMING or target == NONE:
        says = "plan.nodes_not_asked" if target == FORMING else "plan.nodes_none"
        return not_asked(NODES, NODES, facts, rests_of(earlier, SYSTEM), Say(says, [], []))
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


def from_spring(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, fruit_known: bool, room_known: bool) -> Part:
    """The number by spring counts, as far as they are known; room and fruit are never both unknown here."""
    asked = both_facts(facts, False)
    if not room_known:
        return one_view(facts, asked, fruit_by_spring(facts, values, earlier, target))
    room = room_view(facts, target, number(facts, "budburst_pct"), number(facts, "shoots_per_burst_node"))
    if room.nodes_high < 1:
        return waiting(NODES, NODES, facts, asked, Say("plan.no_room", [], []))
    if not fruit_known:
        return one_view(facts, asked, room_alone(room))
    fruit = fruit_by_spring(facts, values, earlier, target)
    held = hold(float(fruit.nodes), float(room.nodes_low), [Ceiling(ROOM_HIGH, float(room.nodes_high))], 1.0)
    exact = hold(fruit.exact, room.nodes_low_exact, [Ceiling(ROOM_HIGH, room.nodes_high_exact)], 0.0)
    return reconciled(facts, asked, fruit, room, held, exact.nodes)


def from_buds(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str, fruit_known: bool, room_known: bool) -> Part:
    """The number by buds cut open. The room is that of the bearers which the fruit asks for, of all that the vine could carry
    where no crop is named."""
    asked = both_facts(facts, True)
    choices = choices_by_buds(facts, values, target)
    most = most_of(choices)
    if most.bunches <= 0.0:
        return waiting(NODES, NODES, facts, asked, Say("plan.barren", [], []))
    if not room_known:
        return one_view(facts, asked, fruit_by_buds(facts, values, earlier, target, choices))
    if not fruit_known:
        room = room_of(facts, target, most)
        return waiting(NODES, NODES, facts, asked, Say("plan.no_room", [], [])) if room.nodes_high < 1 else one_view(facts, asked, room_alone(room))
    fruit = fruit_by_buds(facts, values, earlier, target, choices)
    wanted = borne_with(choices, fruit.nodes)
    room = room_of(facts, target, wanted)
    if room.nodes_high < 1:
        return waiting(NODES, NODES, facts, asked, Say("plan.no_room", [], []))
    each = wanted.shoots / float(wanted.nodes)
    laid = within_room(choices, wanted, room.nodes_low_exact * each, room.nodes_high_exact * each)
    nodes = float(laid.nodes)
    on_these = room_of(facts, target, laid)
    high = float(on_these.nodes_high)
    held = Held(nodes, min(float(on_these.nodes_low), high), high, limit_of(float(fruit.nodes), nodes, ROOM_HIGH))
    return reconciled(facts, asked + LENGTHS + MEASURED, fruit, on_these, held, nodes)


def fruit_by_spring(facts: Facts, values: BlockPlanValues, earlier: list[Part], target: str) -> Fruit:
    """The nodes that the crop wanted asks for, by spring counts."""
    found = nodes_for_crop(number(facts, "target_yield_t_ha"), spring_counts(facts, earlier), limits_of(values))
    notes = [Say("plan.by_spring_counts", [], [])]
    if has_buds(facts):
        notes = [Say("plan.by_spring_though_cut", [], [])]
    return Fruit(
        nodes=found.nodes,
        exact=found.nodes_exact,
        low=found.low,
        high=found.high,
        uses=["nodes_for_yield"],
        headline=found.headline,
        numbers=[],
        lines=found.working,
        notes=notes + form_notes(facts, target) + [note for note in found.notes if note.id not in FORECAST_SAYS],
    )


def form_notes(facts: Facts, target: str) -> list[Say]:
    """A warning where the vine changes its form: burst and bunches were counted on the other kind of bearer."""
    if not known(facts, "present_structure") or target == "":
        return []
    now = int(number(facts, "present_structure"))
    if (now == SPUR_CORDON and target == CANE) or (now == CANE_HEAD and target != CANE):
        return [Say("plan.counts_of_other_form", [], [])]
    return []


def room_alone(room: Room) -> Fruit:
    """The room's view told alone, in the place of the fruit's."""
    return Fruit(0, 0.0, 0.0, 0.0, ["canopy_space"], room.headline, room_numbers(room), room.working, room.notes)


def one_view(facts: Facts, asked: list[str], view: Fruit) -> Part:
    """The part while the other view is not known."""
    numbers = view.numbers
    if view.nodes > 0:
        numbers = fruit_numbers(view)
    notes = [Say("plan.one_view", [], [])] + view.notes
    return part_of(facts, "", view.uses, missing(facts, asked), known_of(facts, asked + BESIDE), view.headline, numbers, view.lines, notes)


def fruit_numbers(fruit: Fruit) -> list[Named]:
    """The nodes that the crop asks for, and what they stand on."""
    return [Named("fruit_nodes", float(fruit.nodes)), Named("fruit_nodes_exact", fruit.exact)] + fruit.numbers


def reconciled(facts: Facts, asked: list[str], fruit: Fruit, room: Room, held: Held, exact: float) -> Part:
    """Both views: the fruit's number, held inside the room; which view limits, and what to do about it."""
    numbers = [Named("nodes", held.nodes), Named("nodes_exact", exact), Named("low", held.low), Named("high", held.high)]
    verdict = Say("plan.fruit_fits", [float(fruit.nodes), held.low, held.high], [])
    if held.limit == ROOM_HIGH:
        verdict = Say("plan.room_limits", [float(fruit.nodes), held.high, held.nodes], [])
    elif held.limit == ROOM_LOW:
        verdict = Say("plan.keep_and_thin", [float(fruit.nodes), held.low, held.nodes], [])
    return part_of(
        facts,
        held.limit,
        fruit.uses + ["canopy_space"],
        [],
        known_of(facts, asked + BESIDE + ["cordon_arms", "arm_length_m"]),
        Say("plan.nodes", [held.nodes, fruit.low, fruit.high], []),
        numbers + fruit_numbers(fruit) + room_numbers(room),
        [Say("plan.fruit_view", [], [])] + fruit.lines + [Say("plan.room_view", [], [])] + room.working,
        [verdict, Say("plan.capacity_not_taken", [], [])] + fruit.notes + room.notes,
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
