"""The plan of one block: the parts in the order of the work, each from the facts and from the parts before it.

A part says what it can and leaves the rest open; one question at a time is asked next, in the order of a walk through
the block. There is no wiring language: this is the whole of it.
"""

from generator.calculators.facts import NOT_ASKED, Facts, place
from generator.calculators.plan_assess import assess
from generator.calculators.plan_forecast import forecast
from generator.calculators.plan_layout import drawing_of, lay_out
from generator.calculators.plan_nodes import node_number
from generator.calculators.plan_records import BlockPlanValues, Part, Plan, assumed_of, found, headline_of_part, weakest_of
from generator.calculators.plan_system import FORMING, NONE, SYSTEM, choose_system, target_of
from generator.calculators.say import Say
from generator.calculators.tables import Table


def block_plan(facts: Facts, values: BlockPlanValues, tables: list[Table], walk: list[str]) -> Plan:
    """The plan. facts hold every fact that is a number, defaults filled in; tables hold every decision, feeding ones first; walk is
    the order in which facts are asked. Raises ValueError when a fact or the decision `pruning_system` is missing from them."""
    parts: list[Part] = [assess(facts, values, [])]
    parts.append(choose_system(facts, values, parts, tables))
    parts.append(node_number(facts, values, parts))
    parts.append(forecast(facts, values, parts))
    parts.append(lay_out(facts, values, parts))
    return Plan(
        settled=all(part.settled for part in parts),
        ask_next=next_question(parts, facts, walk),
        status=weakest_of(parts),
        headline=headline_of(parts),
        parts=parts,
        assumed=assumed_of(parts, facts),
        drawing=drawing_of(facts, values, parts),
    )


def next_question(parts: list[Part], facts: Facts, walk: list[str]) -> str:
    """The first fact of the walk that a part needs and nobody was asked yet; then the first that was asked and is not known; then one
    that the walk does not pass."""
    asked_in_vain = ""
    for fact in walk:
        if any(fact in part.needs for part in parts):
            if facts.statuses[place(facts, fact)] == NOT_ASKED:
                return fact
            if asked_in_vain == "":
                asked_in_vain = fact
    if asked_in_vain != "":
        return asked_in_vain
    for part in parts:
        if part.ask_next != "":
            return part.ask_next
    return ""


def headline_of(parts: list[Part]) -> Say:
    """The plan in one line: nodes and crop once they are known; the answer on the system where it asks for none; else that it is open."""
    nodes = found(parts, "nodes")
    crop = found(parts, "t_per_ha")
    if nodes.ok and crop.ok:
        return Say("plan.headline", [nodes.number, crop.number], [])
    if target_of(parts) in [FORMING, NONE]:
        return headline_of_part(parts, SYSTEM)
    return Say("plan.headline_open", [], [])
