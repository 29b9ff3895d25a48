"""The plan of a block, as data: the same on the command line and on the page, to the last digit."""

from typing import Any

from generator.answers.behind import behind, in_plan, picked
from generator.answers.catalogue import catalogue
from generator.answers.decisions import shown_change
from generator.answers.ends import ends
from generator.answers.encode import calculator_module, values_record
from generator.answers.given import given
from generator.answers.link import link
from generator.answers.records import plain
from generator.answers.shared import shown, stamp, with_texts
from generator.answers.tables import candidates_for, tables_for
from generator.calculators import tables as engine
from generator.calculators.changes import Change, would_change
from generator.calculators.facts import Facts
from generator.calculators.plan_fruit import with_fruit
from generator.calculators.plan_influence import influences
from generator.calculators.plan_system import DECISION
from generator.calculators.specs import FactSpec
from generator.calculators.wording import worded
from generator.reading.rulebook import Rulebook, kept

PLAN = "block_plan"
PAGE = "plan.html"


def plan(rulebook: Rulebook, block: dict[str, Any]) -> dict:
    """The plan of a block, given as facts by id in authors' values. Raises BadInput.

    {name, rules, edition: {id, name, by}, link (to the page that shows it), texts: {fact: text}, facts: {fact: {status, value as an
    author writes it}}, plan: block_plan.Plan, would_change: what would give another system, as a decision
    says it, assumed: the assumed facts, the most influential first, values, sources and
    cautions: see behind.py}; a fact that was not asked is not there, one that is unknown has no value; every Say in the plan has its
    sentence beside it as `text`.
    """
    wanted = plan_facts(rulebook)
    listed = f"one of the {len(rulebook.facts)} facts; `python3 -m generator compute block_plan --describe` lists them"
    facts = given(rulebook, [fact for fact in rulebook.facts if fact in wanted or fact in block], block, listed=listed)
    values = values_record(rulebook, PLAN)
    found = calculator_module(PLAN).block_plan(facts.facts, values, plan_tables(rulebook))
    told = with_fruit(facts.facts, values, found.parts[:1])
    changes = _changes(rulebook, facts.specs, told)
    assumed = influences(found, facts.specs, facts.facts, values, plan_tables(rulebook), ends(rulebook), changes)
    words = catalogue(rulebook)
    data = {
        "name": PLAN,
        **stamp(rulebook),
        "link": link(rulebook, PAGE, facts),
        "texts": facts.texts,
        "facts": shown(facts.specs, told),
        "plan": plain(found),
        "would_change": [shown_change(words, facts.specs, change) for change in changes],
        "assumed": [{"fact": one.fact, "flips": one.flips, "moves_pct": one.moves_pct, "text": worded(words, one.says, "si")} for one in assumed],
        **picked(behind(rulebook, PLAN), found.parts),
    }
    return with_texts(words, data)


def _changes(rulebook: Rulebook, specs: list[FactSpec], facts: Facts) -> list[Change]:
    """What would give another answer on the system: each fact it rests on changed alone; none while it is open."""
    candidates = candidates_for(rulebook, DECISION)
    return would_change(tables_for(rulebook, DECISION), specs, facts, candidates, DECISION)


@kept
def plan_tables(rulebook: Rulebook) -> list[engine.Table]:
    """The tables of all decisions of the stages that a plan asks about, feeding tables first: what block_plan takes, here and on the page.
    The main decision's come first, so that what led to it stands in the order in which it asks."""
    found: dict[str, engine.Table] = {}
    main = [name for name in rulebook.decisions if name == DECISION]
    for decision in [*main, *(name for name, table in rulebook.decisions.items() if in_plan(rulebook, table.stage))]:
        found |= {table.id: table for table in tables_for(rulebook, decision)}
    return list(found.values())


def plan_facts(rulebook: Rulebook) -> list[str]:
    """The facts that a plan can need: those of the stages that it asks about, and what its tables ask besides."""
    asked = {column.fact for table in plan_tables(rulebook) for column in table.columns}
    return [fact.id for fact in rulebook.facts.values() if in_plan(rulebook, fact.stage) or fact.id in asked]
