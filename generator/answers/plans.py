"""The plan of a block, as data: the same on the command line and on the page, to the last digit."""

from typing import Any

from generator.answers.behind import behind, picked
from generator.answers.catalogue import catalogue
from generator.answers.decisions import shown_change
from generator.answers.encode import calculator_class, calculator_module, value_ids
from generator.answers.given import Given, given
from generator.answers.link import link
from generator.answers.records import plain
from generator.answers.shared import shown, stamp, with_texts
from generator.answers.tables import candidates_for, tables_for
from generator.calculators import tables as engine
from generator.calculators.changes import would_change
from generator.calculators.plan_system import DECISION
from generator.reading.rulebook import Rulebook

PLAN = "block_plan"
PAGE = "plan.html"


def plan(rulebook: Rulebook, block: dict[str, Any]) -> dict:
    """The plan of a block, given as facts by id in authors' values. Raises BadInput.

    {name, rules, edition: {id, name, by}, link (to the page that shows it), texts: {fact: text}, facts: {fact: {status, value as an
    author writes it}}, plan: block_plan.Plan, would_change: what would give another system, as a decision says it, values, sources and
    cautions: see behind.py}; a fact that was not asked is not there, one that is unknown has no value; every Say in the plan has its
    sentence beside it as `text`.
    """
    facts = given(rulebook, list(rulebook.facts), block)
    values = calculator_class(PLAN, "Values")(*(float(rulebook.values[value].number) for value in value_ids(PLAN)))
    found = calculator_module(PLAN).block_plan(facts.facts, values, plan_tables(rulebook), walk(rulebook))
    data = {
        "name": PLAN,
        **stamp(rulebook),
        "link": link(rulebook, PAGE, facts),
        "texts": facts.texts,
        "facts": shown(facts.specs, facts.facts),
        "plan": plain(found),
        "would_change": _changes(rulebook, facts),
        **picked(behind(rulebook, PLAN), found.parts),
    }
    return with_texts(catalogue(rulebook), data)


def _changes(rulebook: Rulebook, facts: Given) -> list[dict]:
    """What would give another answer on the system: each fact it rests on changed alone; none while it is open."""
    candidates = candidates_for(rulebook, DECISION)
    found = would_change(tables_for(rulebook, DECISION), facts.specs, facts.facts, candidates, DECISION)
    return [shown_change(catalogue(rulebook), facts.specs, change) for change in found]


def walk(rulebook: Rulebook) -> list[str]:
    """The facts in the order of a walk through the block: as the stages ask them, one by one where a stage asks by node."""
    stages = sorted(rulebook.stages.values(), key=lambda stage: stage.number)
    by_series: dict[str, list[str]] = {}
    for fact in rulebook.facts.values():
        by_series.setdefault(fact.series, []).append(fact.id)
    return [fact for stage in stages for name in stage.asks for fact in by_series.get(name, [name])]


def plan_tables(rulebook: Rulebook) -> list[engine.Table]:
    """The tables of all decisions, feeding tables first: what block_plan takes, here and on the page. The main decision's come
    first, so that what led to it stands in the order in which it asks."""
    found: dict[str, engine.Table] = {}
    main = [name for name in rulebook.decisions if name == DECISION]
    for decision in [*main, *rulebook.decisions]:
        found |= {table.id: table for table in tables_for(rulebook, decision)}
    return list(found.values())
