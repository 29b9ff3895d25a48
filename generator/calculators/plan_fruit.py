"""The plan's second part: where the fruit is, by the buds that were cut open, and what that tells the choice of the system.

What it works out (reach of two-node spurs with its interval, rise of dead primaries along the cane) is put among the
facts as computed before the tables are decided. Where no buds were cut it says so once and asks nothing further.
"""

from generator.calculators.bearer_reach import BearerReachResult, BearerReachValues, bearer_reach, inputs_of
from generator.calculators.bearers import has_buds, void
from generator.calculators.facts import COMPUTED, NOT_ASKED, Facts, Maybe, known, maybe, missing, number, place
from generator.calculators.plan_bearers import lost_at_base
from generator.calculators.plan_counts import bearing_vines
from generator.calculators.plan_records import BlockPlanValues, Named, Part, first_of, known_of, not_asked, status_of, waiting
from generator.calculators.say import Say

FIND: str = "find_fruit"
TALLY: list[str] = ["primordia_node_1", "primordia_node_2", "dead_primary_pct", "dead_node_pct"]
ASKED_FOR_REACH: list[str] = ["row_spacing_m", "vine_spacing_m", "missing_vines_pct", "target_yield_t_ha", "bunch_weight_g", "canes_dissected"]
BESIDE: list[str] = [
    "spur_budburst_pct",
    "budburst_pct",
    "secondary_share",
    "shoots_per_burst_node",
    "dissection_to_spring",
    "dead_primary_inner_pct",
    "dead_primary_outer_pct",
    "bud_spread",
    "likeness",
    "spur_fruit_se_pct",
    "curtains",
    "shoots_per_m_high",
    "noncount_shoots_kept",
    "bearing_vines_per_ha",
]


def reach_of(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> BearerReachResult:
    """What the buds tell of each bearer; has_buds must be true."""
    return bearer_reach(
        inputs_of(facts, bearing_vines(facts, earlier)),
        BearerReachValues(
            nodes_per_long_spur_most=values.nodes_per_long_spur_most,
            interval_level_pct=values.interval_level_pct,
            interval_z=values.interval_z,
            canes_cut_most=values.canes_cut_most,
        ),
    )


def with_fruit(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Facts:
    """The facts with what the buds tell; the same facts where there are none."""
    if not has_buds(facts):
        return facts
    found = reach_of(facts, values, earlier)
    told = with_computed(facts, "spur_reach_low", found.spur_reach_low)
    told = with_computed(told, "spur_reach_high", found.spur_reach_high)
    return with_computed(told, "dead_primary_rise_pct", found.dead_primary_rise_pct)


def with_computed(facts: Facts, fact: str, worked_out: Maybe) -> Facts:
    """The facts with one of them worked out; as they were where it could not be."""
    if not worked_out.ok:
        return facts
    k = place(facts, fact)
    numbers = facts.numbers[:k] + [worked_out.number] + facts.numbers[k + 1 :]
    return Facts(facts.ids, numbers, facts.statuses[:k] + [COMPUTED] + facts.statuses[k + 1 :])


def reach_moved(was: Facts, now: Facts) -> bool:
    """True when what the buds tell the tables is not the same."""
    names = ["spur_reach_low", "spur_reach_high", "dead_primary_rise_pct"]
    return any(maybe(was, name).ok != maybe(now, name).ok or maybe(was, name).number != maybe(now, name).number for name in names)


def find_fruit(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """What spurs and canes of this block can carry. Settled without buds once that was asked; with them once the reach is known."""
    if facts.statuses[place(facts, "buds_cut")] == NOT_ASKED:
        return waiting(FIND, FIND, facts, ["buds_cut"], Say("plan.buds_open", [], []))
    if not known(facts, "buds_cut") or number(facts, "buds_cut") < 1.0:
        return not_asked(FIND, FIND, facts, known_of(facts, ["buds_cut"]), Say("plan.buds_not_cut", [], []))
    if void(maybe(facts, "tally_date"), maybe(facts, "last_freeze_date")):
        return waiting(FIND, FIND, facts, ["buds_cut", "tally_date", "last_freeze_date"], Say("plan.tally_void", [], []))
    if not has_buds(facts):
        return waiting(FIND, FIND, facts, ["buds_cut"] + TALLY, Say("plan.tally_open", [], []))
    found = reach_of(facts, values, earlier)
    needs = missing(facts, [] if found.spur_reach_low.ok else ASKED_FOR_REACH)
    rests_on = known_of(facts, ["buds_cut", "tally_date", "last_freeze_date"] + TALLY + ASKED_FOR_REACH + BESIDE)
    return Part(
        id=FIND,
        stage=FIND,
        ready=True,
        settled=len(needs) == 0,
        choice="",
        possible=[],
        uses=["bearer_reach"],
        needs=needs,
        ask_next=first_of(needs),
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=found.headline,
        numbers=numbers_of(found),
        lines=found.working,
        notes=found.notes + cut_note(facts, values),
        sources=[],
        cautions=[],
    )


def cut_note(facts: Facts, values: BlockPlanValues) -> list[Say]:
    """That fruit below the cut is in the reach, where canes are cut through to dry."""
    if lost_at_base(facts, values) == 0:
        return []
    return [Say("plan.reach_below_cut", [], [])]


def numbers_of(found: BearerReachResult) -> list[Named]:
    """What each bearer carries and how far it reaches, as far as that is known."""
    numbers = [Named("spur_bunches_per_node", found.spur_bunches_per_node)]
    numbers = numbers + named("spur_reach", found.spur_reach) + named("spur_reach_low", found.spur_reach_low)
    numbers = numbers + named("spur_reach_high", found.spur_reach_high) + named("reckoned_cane_nodes", found.cane_nodes)
    numbers = numbers + named("cane_bunches_per_node", found.cane_bunches_per_node) + named("cane_reach", found.cane_reach)
    return numbers + named("more_canes", found.more_canes) + named("dead_primary_rise_pct", found.dead_primary_rise_pct)


def named(name: str, one: Maybe) -> list[Named]:
    """A number that may be left out, by name."""
    if one.ok:
        return [Named(name, one.number)]
    return []
