"""Scripts and the style sheet: one core that every form page shares, and one script for each decision, calculator and the plan.

Scripts are classic and add to one global, so that they work from a folder on disk; data comes as a call of `Guide.add`.
"""

import json
from functools import cache
from pathlib import Path
from typing import Any, get_type_hints

from generator.answers import encode
from generator.answers.behind import behind
from generator.answers.catalogue import WORK
from generator.answers.ends import ends
from generator.answers.plans import plan_tables
from generator.answers.records import plain
from generator.answers.tables import feeding_order
from generator.calculators.plan_system import DECISION
from generator.compiler.script import compile_module, helpers_for, module_order
from generator.pages import wording
from generator.pages.questions import of_calculator, of_decision, of_plan, spare
from generator.pages.slimming import slim, slim_style
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision

ASSETS = Path(__file__).parent / "assets"
FOLDER = "assets/guide/"
SHARED = ["answer", "changes", "guard", "wording"]
WRITTEN = ["numbers.js", "border.js", "link.js", "store.js", "dom.js", "tables.js", "form.js", "ask.js", "show.js", "page.js"]
SENTENCES = ["answers.", "guard."]
PLAN = "block_plan"
INFLUENCE = "plan_influence"
SAFE = 2.0**53
DRAWN = ["drawing"]
PLAN_WORDS = ["decision.", "outcome.", "choice.", "term.", *(f"{kind}." for kind in WORK)]


compiled = cache(compile_module)


def script_files(rulebook: Rulebook) -> dict[str, str]:
    """Every script, the style sheet and the mark of the site, by path."""
    scripts = {"core.js": core(list(rulebook.calculators)), "plan.js": plan_script(rulebook)}
    scripts |= {f"d/{table.id}.js": decision_script(rulebook, table) for table in rulebook.decisions.values()}
    scripts |= {f"c/{form.id}.js": calculator_script(rulebook, form) for form in rulebook.calculators.values()}
    look = {FOLDER + name: slim_style(asset(name)) for name in ("guide.css", "look.css")} | {FOLDER + "mark.svg": asset("mark.svg")}
    return look | {FOLDER + name: slim(text) for name, text in scripts.items()}


def asset(name: str) -> str:
    """A hand-written file of assets/."""
    return (ASSETS / name).read_text(encoding="utf-8")


def core(calculators: list[str]) -> str:
    """What every page with a form needs: helpers, engine and formatter (compiled), and the hand-written page code."""
    shared = module_order(SHARED)
    everything = "".join(map(compiled, module_order([*SHARED, *calculators, PLAN, INFLUENCE])))
    return "\n".join([helpers_for(everything), *map(compiled, shared), *map(asset, WRITTEN)])


def own_modules(*names: str) -> list[str]:
    """The compiled modules that a page needs beside the core, in order."""
    shared = module_order(SHARED)
    return [module for module in module_order(list(names)) if module not in shared]


def add(data: dict[str, Any]) -> str:
    """The call that gives a page its data."""
    return f"Guide.add({json.dumps(packed(data), ensure_ascii=False, separators=(',', ':'))});"


def bare(tables: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The engine's tables without what follows from ids, and a span that is one point as its number; tables.js makes them whole."""
    return [
        without(table, "word")
        | {"rows": [bare_row(row) for row in table["rows"]]}
        | {"outcomes": [without(one, "says", "word", *WORK) for one in table["outcomes"]]}
        for table in tables
    ]


def bare_row(row: dict[str, Any]) -> dict[str, Any]:
    """A row without the id of its reason; its cells as [column, spans]."""
    return without(row, "because") | {"cells": [[cell["column"], list(map(bare_span, cell["spans"]))] for cell in row["cells"]]}


def without(record: dict[str, Any], *names: str) -> dict[str, Any]:
    """The record without some of its fields."""
    return {name: part for name, part in record.items() if name not in names}


def bare_span(span: dict[str, Any]) -> float | list:
    """A span as its number where it is one point, else as [low, low_in, high, high_in]."""
    return span["low"] if span["low"] == span["high"] else list(span.values())


def packed(data: Any) -> Any:
    """The data with each list of like records as one list of names and a list of values for each; `Guide.add` unpacks it.
    A whole number is written without its `.0`, which JavaScript does not tell from it."""
    if isinstance(data, float) and data.is_integer() and abs(data) < SAFE:
        return int(data)
    if isinstance(data, dict):
        return {name: packed(part) for name, part in data.items()}
    if not isinstance(data, list):
        return data
    if len(data) > 1 and all(isinstance(one, dict) for one in data) and len({tuple(one) for one in data}) == 1:
        return {"$": list(data[0]), "_": [[packed(part) for part in one.values()] for one in data]}
    return [packed(one) for one in data]


def page_data(rulebook: Rulebook, name: str, root: str) -> dict[str, Any]:
    """What every page with a form knows: itself, the way to the root of the site, rules and edition, words for standings."""
    edition = rulebook.edition
    return {
        "name": name,
        "root": root,
        "rules": rulebook.version,
        "edition": {"id": edition.id, "name": edition.name, "by": edition.by},
        "standings": wording.STANDING,
    }


def decision_script(rulebook: Rulebook, table: Decision) -> str:
    """The data of a decision: its table and the tables that feed it. What the page itself says (reasons, sources, cautions)
    is not said twice: the script takes it from there."""
    names = feeding_order(rulebook, table.id)
    facts = encode.decision_facts(rulebook, table.id)
    besides = [f"action.{name}." for name in names if name != table.id]
    data = {
        **page_data(rulebook, table.id, "../"),
        "groups": plain(of_decision(rulebook, table)),
        "outcomes": {one.id: {"action": one.action, "target": one.target, "years": one.years} for one in table.outcomes if one.action},
        "catalogue": used_units(encode.encode_catalogue(rulebook, [*SENTENCES, f"{table.id}.says."], words_for([], names) + besides, facts)),
        "tables": bare(encode.encode_tables(rulebook, table.id)),
        "candidates": encode.encode_candidates(rulebook, table.id),
    }
    return "\n".join([add(data), asset("decision.js"), "Guide.page.decision();\n"])


def used_units(catalogue: dict[str, Any]) -> dict[str, Any]:
    """The catalogue with only those units that its facts and sentences use."""
    used = {fact["unit"] for fact in catalogue["facts"]}
    used |= {number["unit"] for form in catalogue["forms"] for number in form["numbers"]}
    return {**catalogue, "units": [unit for unit in catalogue["units"] if unit["id"] in used or unit["id"] == ""]}


def words_for(facts: list[str], decisions: list[str]) -> list[str]:
    """The prefixes of the words that choices and decisions are named with; facts name themselves (page.js)."""
    return [f"choice.{name}." for name in facts] + [f"{kind}.{name}" for name in decisions for kind in ("decision", "outcome")]


def calculator_script(rulebook: Rulebook, form: CalculatorForm) -> str:
    """A calculator compiled, its form's data, its values."""
    facts = [needed.fact for needed in form.inputs]
    modules = own_modules(form.id)
    sentences = [*SENTENCES, *(f"{name}." for name in modules)]
    outputs = [{"id": one.id, "label": one.label, "unit": one.unit, "digits": one.digits} for one in form.outputs]
    catalogue = encode.encode_catalogue(rulebook, sentences, words_for(facts, []), facts)
    hints = get_type_hints(encode.calculator_class(form.id, "Inputs"))
    data = {
        **page_data(rulebook, form.id, "../"),
        "groups": plain(of_calculator(rulebook, form)),
        "catalogue": catalogue,
        "inputs": [{"id": name, "type": kind.__name__} for name, kind in hints.items()],
        "required": [needed.fact for needed in form.inputs if not needed.optional],
        "outputs": outputs,
        "values": encode.encode_values(rulebook, form.id),
    }
    return "\n".join([*map(compiled, modules), add(data), asset("calculator.js"), "Guide.page.calculator();\n"])


def plan_script(rulebook: Rulebook) -> str:
    """The plan compiled, with every table, fact and word that it may need."""
    modules = own_modules(PLAN, INFLUENCE)
    decisions = list(rulebook.decisions)
    tables = plain(plan_tables(rulebook))
    data = {
        **page_data(rulebook, PLAN, ""),
        "groups": plain(of_plan(rulebook)),
        "stages": {stage.id: {"number": stage.number, "title": stage.title} for stage in rulebook.stages.values()},
        "catalogue": encode.encode_catalogue(
            rulebook, [*SENTENCES, "plan.", *(f"{name}." for name in [*modules, *decisions, *DRAWN])], PLAN_WORDS, list(rulebook.facts)
        ),
        "tables": bare(tables),
        "main": DECISION,
        "spare": spare(rulebook),
        "ends": plain(ends(rulebook)),
        "candidates": encode.encode_candidates(rulebook, DECISION),
        "values": encode.encode_values(rulebook, PLAN),
        "behind": behind(rulebook, PLAN),
    }
    return "\n".join([*map(compiled, modules), add(data), asset("drawing.js"), asset("plan.js"), "Guide.page.plan();\n"])
