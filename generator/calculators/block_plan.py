"""The plan of one block: the parts in the order of the work, each from the facts and from the parts before it.

A part says what it can and leaves the rest open; one question at a time is asked next, in the order of a walk through
the block. There is no wiring language: this is the whole of it.
"""

from generator.calculators.facts import Facts
from generator.calculators.plan_assess import assess
from generator.calculators.plan_layout import drawing_of, forecast, lay_out
from generator.calculators.plan_nodes import node_number
from generator.calculators.plan_records import BlockPlanValues, Part, Plan, assumed_of, found, weakest_of
from generator.calculators.plan_system import choose_system
from generator.calculators.say import Say
from generator.calculators.tables import Table


def block_plan(facts: Facts, values: BlockPlanValues, tables: list[Table]) -> Plan:
    """The plan. facts hold every fact that is a number, defaults filled in; tables hold every decision, feeding ones first.
    Raises ValueError when a fact or the decision `pruning_system` is missing from them."""
    parts: list[Part] = []
    parts.append(assess(facts, values, parts))
    parts.append(choose_system(facts, values, parts, tables))
    parts.append(node_number(facts, values, parts))
    parts.append(forecast(facts, values, parts))
    parts.append(lay_out(facts, values, parts))
    return Plan(
        settled=all(part.settled for part in parts),
        ask_next=next_question(parts),
        status=weakest_of(parts),
        headline=headline_of(parts),
        parts=parts,
        assumed=assumed_of(parts, facts),
        drawing=drawing_of(facts, values, parts),
    )


def next_question(parts: list[Part]) -> str:
    """The first question of the first part that has one."""
    for part in parts:
        if part.ask_next != "":
            return part.ask_next
    return ""


def headline_of(parts: list[Part]) -> Say:
    """The plan in one line: nodes and crop once they are known, else that it is open."""
    nodes = found(parts, "nodes")
    crop = found(parts, "t_per_ha")
    if nodes.ok and crop.ok:
        return Say("plan.headline", [nodes.number, crop.number], [])
    return Say("plan.headline_open", [], [])
