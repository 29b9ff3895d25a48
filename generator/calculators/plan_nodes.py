"""The plan's node number: what the crop wants against what the canopy has room for, and the crop to expect from it.

N = clamp(fruit, lo, hi) with hi = space_hi and lo = min(space_lo, hi). The vine's own capacity is a third view that is not
taken here, and the plan says so. The fruit view is no ceiling: below `lo` the nodes stay and bunches are thinned.
"""

from generator.calculators.canopy_space import CanopySpaceInputs, CanopySpaceResult, CanopySpaceValues, canopy_space
from generator.calculators.facts import Facts, Maybe, known, maybe, missing, number
from generator.calculators.nodes_for_yield import NodesForYieldResult, nodes_for_crop
from generator.calculators.plan_counts import BESIDE, LINKS, limits_of, spring_counts
from generator.calculators.plan_records import BlockPlanValues, Named, Part, choice_of, first_of, found, known_of, rests_of, status_of, waiting
from generator.calculators.plan_system import SYSTEM
from generator.calculators.say import Say

NODES: str = "node_number"
FORMING: str = "forming"
CANE: str = "cane"
SPUR_CORDON: int = 0
CANE_HEAD: int = 1
ROOM: list[str] = ["vine_spacing_m", "curtains", "tip_gap_m", "shoots_per_m_low", "shoots_per_m_high", "budburst_pct", "shoots_per_burst_node"]


def fruit_facts(facts: Facts) -> list[str]:
    """The facts of the fruit's view, in the order to ask them."""
    names = ["target_yield_t_ha"] + LINKS
    if known(facts, "bearing_vines_per_ha"):
        return ["bearing_vines_per_ha"] + names
    return ["row_spacing_m", "vine_spacing_m", "missing_vines_pct"] + names


def both_facts(facts: Facts) -> list[str]:
    """The facts of both views, each once, in the order to ask them."""
    names = fruit_facts(facts)
    return names + [fact for fact in ROOM if fact not in names]


def node_number(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Nodes per bearing vine. A vine that is still being formed has no node number."""
    if choice_of(earlier, SYSTEM) == FORMING:
        return not_asked(facts, earlier)
    asked = both_facts(facts)
    fruit_known = len(missing(facts, fruit_facts(facts))) == 0
    room_known = len(missing(facts, ROOM)) == 0
    if not fruit_known and not room_known:
        return waiting(NODES, NODES, facts, asked, Say("plan.nodes_open", [], []))
    if fruit_known and number(facts, "bunches_per_shoot") <= 0.0:
        return waiting(NODES, NODES, facts, asked, Say("plan.barren", [], []))
    if room_known and room_fault(facts):
        return waiting(NODES, NODES, facts, asked, Say("plan.room_fault", [], []))
    if room_known and room_view(facts, earlier).nodes_high < 1:
        return waiting(NODES, NODES, facts, asked, Say("plan.no_room", [], []))
    if fruit_known and room_known:
        return reconciled(facts, earlier, fruit_view(facts, values, earlier), room_view(facts, earlier))
    needs = missing(facts, asked)
    rests_on = known_of(facts, asked + BESIDE)
    alone = [Say("plan.one_view", [], [])]
    if fruit_known:
        fruit = fruit_view(facts, values, earlier)
        return part_of(
            facts, "", ["nodes_for_yield"], needs, rests_on, fruit.headline, fruit_numbers(fruit), fruit.working, alone + fruit.notes
        )
    room = room_view(facts, earlier)
    return part_of(facts, "", ["canopy_space"], needs, rests_on, room.headline, room_numbers(room), room.working, alone + room.notes)


def not_asked(facts: Facts, earlier: list[Part]) -> Part:
    """The node number of a vine that is not cropped yet: none, and settled."""
    says = Say("plan.nodes_not_asked", [], [])
    return part_of(facts, "", [], [], rests_of(earlier, SYSTEM), says, [], [], [])


def form_notes(facts: Facts, target: str) -> list[Say]:
    """A warning where the vine changes its form: burst and bunches were counted on the other kind of bearer."""
    if not known(facts, "present_structure") or target == "":
        return []
    now = int(number(facts, "present_structure"))
    if (now == SPUR_CORDON and target == CANE) or (now == CANE_HEAD and target != CANE):
        return [Say("plan.counts_of_other_form", [], [])]
    return []


def room_fault(facts: Facts) -> bool:
    """True when the room cannot be reckoned: fewest shoots over most, or a gap as wide as the spacing."""
    swapped = number(facts, "shoots_per_m_low") > number(facts, "shoots_per_m_high")
    return swapped or number(facts, "tip_gap_m") >= number(facts, "vine_spacing_m")


def fruit_view(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> NodesForYieldResult:
    """The nodes that the crop wanted asks for."""
    return nodes_for_crop(number(facts, "target_yield_t_ha"), spring_counts(facts, earlier), limits_of(values))


def room_view(facts: Facts, earlier: list[Part]) -> CanopySpaceResult:
    """The nodes that the canopy has room for: on the arms there are, or on canes and arms that fill the spacing."""
    curtains = int(number(facts, "curtains"))
    spacing = number(facts, "vine_spacing_m")
    gap = number(facts, "tip_gap_m")
    arms = 2 * curtains
    arm_m = (spacing - gap) / 2.0
    measured = known(facts, "cordon_arms") and known(facts, "arm_length_m")
    if measured and choice_of(earlier, SYSTEM) != CANE:
        arms = int(number(facts, "cordon_arms"))
        arm_m = number(facts, "arm_length_m")
    inputs = CanopySpaceInputs(
        curtains,
        arm_m,
        arms,
        Maybe(True, spacing),
        Maybe(True, gap),
        number(facts, "shoots_per_m_low"),
        number(facts, "shoots_per_m_high"),
        number(facts, "budburst_pct"),
        number(facts, "shoots_per_burst_node"),
        maybe(facts, "noncount_shoots_kept"),
    )
    return canopy_space(inputs, CanopySpaceValues())


def fruit_numbers(fruit: NodesForYieldResult) -> list[Named]:
    """The nodes that the crop asks for."""
    return [Named("fruit_nodes", float(fruit.nodes)), Named("fruit_nodes_exact", fruit.nodes_exact)]


def room_numbers(room: CanopySpaceResult) -> list[Named]:
    """The room in whole nodes, and the canopy."""
    return [Named("room_low", float(room.nodes_low)), Named("room_high", float(room.nodes_high)), Named("canopy_m", room.canopy_m)]


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


def reconciled(facts: Facts, earlier: list[Part], fruit: NodesForYieldResult, room: CanopySpaceResult) -> Part:
    """Both views: the fruit's number, held inside the room; which view limits, and what to do about it."""
    high = room.nodes_high
    low = min(room.nodes_low, high)
    nodes = max(1, min(max(fruit.nodes, low), high))
    exact = min(max(fruit.nodes_exact, room.nodes_low_exact), room.nodes_high_exact)
    numbers = [Named("nodes", float(nodes)), Named("nodes_exact", exact), Named("low", float(low)), Named("high", float(high))]
    verdict = Say("plan.fruit_fits", [float(fruit.nodes), float(low), float(high)], [])
    limit = "fruit"
    if fruit.nodes > high:
        verdict = Say("plan.room_limits", [float(fruit.nodes), float(high)], [])
        limit = "room_high"
    elif fruit.nodes < low:
        verdict = Say("plan.keep_and_thin", [float(fruit.nodes), float(low)], [])
        limit = "room_low"
    rests_on = known_of(facts, both_facts(facts) + BESIDE + ["cordon_arms", "arm_length_m"])
    return part_of(
        facts,
        limit,
        ["nodes_for_yield", "canopy_space"],
        [],
        rests_on,
        Say("plan.nodes", [float(nodes), fruit.low, fruit.high], []),
        numbers + fruit_numbers(fruit) + room_numbers(room),
        [verdict, Say("plan.fruit_view", [], [])] + fruit.working + [Say("plan.room_view", [], [])] + room.working,
        [Say("plan.capacity_not_taken", [], [])] + form_notes(facts, choice_of(earlier, SYSTEM)) + fruit.notes + room.notes,
    )
