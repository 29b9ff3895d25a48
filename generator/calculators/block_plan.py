"""The plan of one block: the parts in the order of the work, each from the facts and from the parts before it.

A part says what it can and leaves the rest open; one question at a time is asked next, in the order of a walk through
the block. There is no wiring language: this is the whole of it.
"""

from generator.calculators.facts import NOT_ASKED, Facts
from generator.calculators.plan_assess import assess
from generator.calculators.plan_forecast import forecast
from generator.calculators.plan_fruit import find_fruit, with_fruit
from generator.calculators.plan_layout import drawings_of, lay_out
from generator.calculators.plan_nodes import node_number
from generator.calculators.plan_records import BlockPlanValues, Part, Plan, assumed_of, found, is_settled, part_named, weakest_of
from generator.calculators.plan_system import FORMING, NONE, SYSTEM, choose_system, target_of
from generator.calculators.say import Say
from generator.calculators.tables import Table


def block_plan(facts: Facts, values: BlockPlanValues, tables: list[Table]) -> Plan:
    """The plan. facts hold every fact that is a number, in the order of a walk through the block, defaults filled in; tables hold every
    decision, feeding ones first. Raises ValueError when a fact or the decision `pruning_system` is missing from them."""
    parts: list[Part] = [assess(facts, values, [])]
    told = with_fruit(facts, values, parts)
    parts.append(find_fruit(told, values, parts))
    parts.append(choose_system(told, values, parts, tables))
    parts.append(node_number(told, values, parts))
    parts.append(forecast(told, values, parts))
    parts.append(lay_out(told, values, parts))
    drawings = drawings_of(told, values, parts)
    return Plan(
        settled=all(part.settled for part in parts),
        ask_next=next_question(parts, told),
        status=weakest_of(parts),
        headline=headline_of(parts),
        parts=parts,
        assumed=assumed_of(parts, told),
        before=drawings[0],
        drawing=drawings[1],
    )


def next_question(parts: list[Part], facts: Facts) -> str:
    """The first fact of the walk that a part needs and nobody was asked yet, else the first that was asked and is not known."""
    asked_in_vain = ""
    for index, fact in enumerate(facts.ids):
        if any(fact in part.needs for part in parts):
            if facts.statuses[index] == NOT_ASKED:
                return fact
            if asked_in_vain == "":
                asked_in_vain = fact
    return asked_in_vain


def headline_of(parts: list[Part]) -> Say:
    """The plan in one line: nodes and crop once they are known, those that find a place on the vine; the answer on the system where
    it asks for none; else that it is open."""
    nodes = found(parts, "nodes")
    crop = found(parts, "t_per_ha")
    laid = found(parts, "nodes_laid")
    if nodes.ok and crop.ok and not is_settled(parts, SYSTEM):
        return Say("plan.headline_system_open", [nodes.number, crop.number], [])
    if nodes.ok and laid.ok and laid.number < nodes.number:
        return Say("plan.headline_short", [laid.number, nodes.number, found(parts, "t_per_ha_laid").number], [])
    if nodes.ok and crop.ok:
        return Say("plan.headline", [nodes.number, crop.number], [])
    if target_of(parts) in [FORMING, NONE]:
        return part_named(parts, SYSTEM).headline
    return Say("plan.headline_open", [], [])
