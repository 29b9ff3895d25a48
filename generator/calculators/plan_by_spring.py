"""The fruit's view of the node number by spring counts of the block."""

from generator.calculators.bearers import has_buds
from generator.calculators.facts import Facts, known, number
from generator.calculators.layout_records import CANE
from generator.calculators.nodes_for_yield import nodes_for_crop
from generator.calculators.plan_counts import limits_of, spring_counts
from generator.calculators.plan_records import BlockPlanValues, Fruit, Part
from generator.calculators.say import Say

# What the forecast says of the number that is chosen is not said of the one that the crop asks for.
FORECAST_SAYS: list[str] = [
    "yield_chain.covers_both",
    "yield_chain.covers_season",
    "yield_chain.measured_where",
    "yield_chain.extrapolated",
    "yield_chain.within_reach",
]
DEAD: list[str] = ["dead_primary_pct", "dead_node_pct"]
SPUR_CORDON: int = 0
CANE_HEAD: int = 1


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
        notes=notes + injury_notes(facts) + form_notes(facts, target) + [note for note in found.notes if note.id not in FORECAST_SAYS],
    )


def injury_notes(facts: Facts) -> list[Say]:
    """The way on where buds died this winter: spring counts hold the deaths of ordinary winters only."""
    if any(known(facts, name) and number(facts, name) > 0.0 for name in DEAD):
        return [Say("plan.injury_next", [], [])]
    return []


def form_notes(facts: Facts, target: str) -> list[Say]:
    """A warning where the vine changes its form: burst and bunches were counted on the other kind of bearer."""
    if not known(facts, "present_structure") or target == "":
        return []
    now = int(number(facts, "present_structure"))
    if (now == SPUR_CORDON and target == CANE) or (now == CANE_HEAD and target != CANE):
        return [Say("plan.counts_of_other_form", [], [])]
    return []
