"""Which of the assumed facts matter most: what each would do to the plan, were it otherwise.

First those that would give another system. Then the others by how far they move the node number or the crop (the larger of the
two, in % of the plan's) when they are put at the lowest and at the highest figure that the sources print for their value, or at the
ends of its range where one figure is all there is. An end at which there is no number is not counted. It takes many
plans, so it is reckoned after the plan is shown.
"""

from dataclasses import dataclass

from generator.calculators.changes import Change, with_number
from generator.calculators.facts import Facts
from generator.calculators.plan_assess import assess
from generator.calculators.plan_forecast import forecast
from generator.calculators.plan_fruit import reach_moved, with_fruit
from generator.calculators.plan_kinds import MIX
from generator.calculators.plan_nodes import node_number
from generator.calculators.plan_records import BlockPlanValues, Part, Plan, found, part_named
from generator.calculators.plan_system import DECISION, SYSTEM, choose_system, outcome_of_system
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, spec_of
from generator.calculators.tables import Table, table_of
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class Ends:
    """The numbers (SI) at which an assumed fact is tried."""

    fact: str
    numbers: list[float]


@dataclass(frozen=True)
class Influence:
    """An assumed fact, the id of the outcome that it would give if it were otherwise ("" when the system stays), how far it moves
    the node number or the crop in %, and the sentence that says so."""

    fact: str
    flips: str
    moves_pct: float
    says: Say


def influences(
    plan: Plan, specs: list[FactSpec], facts: Facts, values: BlockPlanValues, tables: list[Table], ends: list[Ends], changes: list[Change]
) -> list[Influence]:
    """The assumed facts of a plan, the most influential first; changes are those of its main decision (see changes.py)."""
    said = [influence_of(plan, spec_of(specs, fact), facts, values, tables, numbers_of(ends, fact), changes) for fact in plan.assumed]
    ordered = sorted(said, key=lambda one: -one.moves_pct)
    return [one for one in ordered if one.flips != ""] + [one for one in ordered if one.flips == ""]


def numbers_of(ends: list[Ends], fact: str) -> list[float]:
    """The numbers at which a fact is tried; none when it has no entry."""
    for one in ends:
        if one.fact == fact:
            return one.numbers
    return []


def influence_of(
    plan: Plan, spec: FactSpec, facts: Facts, values: BlockPlanValues, tables: list[Table], tried: list[float], changes: list[Change]
) -> Influence:
    """What one assumed fact does: the answer that it would give, or how far it moves the numbers."""
    nodes = 0.0
    crop = 0.0
    flips = ""
    says = Say("plan.assumed_moves_nothing", [], [spec.word])
    for x in tried:
        parts = parts_again(plan, facts, with_number(facts, spec.id, x), values, tables)
        nodes = max(nodes, moved(plan.parts, parts, "nodes"))
        crop = max(crop, moved(plan.parts, parts, "t_per_ha"))
        other = outcome_of_system(parts)
        if flips == "" and other != "" and other != outcome_of_system(plan.parts):
            flips = other
            says = Say("plan.assumed_flips", [x], [spec.word, word_of(table_of(tables, DECISION), other)])
    for change in changes:
        if flips == "" and change.fact == spec.id:
            flips = change.outcome
            says = change.says
    weighed = part_named(plan.parts, SYSTEM).rests_on
    if flips == "" and outcome_of_system(plan.parts) == "" and spec.id in weighed:
        says = Say("plan.assumed_system_open", [], [spec.word])
    elif flips == "" and not found(plan.parts, "nodes").ok:
        says = Say("plan.assumed_no_number", [], [spec.word])
    elif flips == "" and nodes > crop:
        says = Say("plan.assumed_moves_nodes", [tried[0], tried[len(tried) - 1], nodes], [spec.word])
    elif flips == "" and crop > 0.0:
        says = Say("plan.assumed_moves_crop", [tried[0], tried[len(tried) - 1], crop], [spec.word])
    elif flips == "" and spec.id in MIX:
        says = Say("plan.assumed_moves_kinds", [], [spec.word])
    return Influence(spec.id, flips, max(nodes, crop), says)


def parts_again(plan: Plan, was: Facts, now: Facts, values: BlockPlanValues, tables: list[Table]) -> list[Part]:
    """The parts up to the crop with one fact changed. The answer on the system is taken over, unless what the buds tell has moved:
    other facts that move it are among the changes."""
    parts = [assess(now, values, [])]
    facts = with_fruit(now, values, parts)
    if reach_moved(with_fruit(was, values, plan.parts[:1]), facts):
        parts.append(choose_system(facts, values, parts, tables))
    else:
        parts.append(part_named(plan.parts, SYSTEM))
    parts.append(node_number(facts, values, parts))
    parts.append(forecast(facts, values, parts))
    return parts


def moved(before: list[Part], after: list[Part], name: str) -> float:
    """How far a number moved, in % of what it was; 0 when it is not in both."""
    was = found(before, name)
    now = found(after, name)
    if not was.ok or not now.ok or was.number <= 0.0:
        return 0.0
    return abs(now.number - was.number) * PER_CENT / was.number


def word_of(table: Table, outcome: str) -> str:
    """The word of an outcome of a table."""
    for one in table.outcomes:
        if one.id == outcome:
            return one.word
    return ""
