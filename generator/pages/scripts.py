"""Scripts and the style sheet: one core that every form page shares, and one script for each decision, calculator and the plan.

Scripts are classic and add to one global, so that they work from a folder on disk; data comes as a call of `Guide.add`.
"""

import json
import re
from pathlib import Path
from typing import Any, get_type_hints

from generator.answers import encode
from generator.answers.plans import plan_tables
from generator.answers.records import plain
from generator.answers.tables import feeding_order
from generator.compiler.script import compile_module, helpers_script, module_order
from generator.pages import wording
from generator.pages.cites import resolve
from generator.pages.paths import page_path
from generator.pages.questions import of_calculator, of_decision, of_plan
from generator.reading.items import Cite
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision

ASSETS = Path(__file__).parent / "assets"
FOLDER = "assets/guide/"
SHARED = ["answer", "changes", "guard", "wording", "drawing_shapes"]
WRITTEN = ["numbers.js", "border.js", "link.js", "store.js", "dom.js", "drawing.js", "form.js", "ask.js", "show.js", "page.js"]
SENTENCES = ["answers.", "guard."]
PLAN = "block_plan"
DRAWN = ["drawing"]
PLAN_WORDS = ["fact.", "decision.", "outcome.", "choice.", "term."]
BLOCK_COMMENT = re.compile(r"^[ \t]*/\*\*.*?\*/[ \t]*\n", re.DOTALL | re.MULTILINE)
LINE_COMMENT = re.compile(r"^[ \t]*//.*\n|^[ \t]*\n", re.MULTILINE)


def script_files(rulebook: Rulebook) -> dict[str, str]:
    """Every script, the style sheet and the mark of the site, by path."""
    scripts = {"core.js": core(list(rulebook.calculators)), "plan.js": plan_script(rulebook)}
    scripts |= {f"d/{table.id}.js": decision_script(rulebook, table) for table in rulebook.decisions.values()}
    scripts |= {f"c/{form.id}.js": calculator_script(rulebook, form) for form in rulebook.calculators.values()}
    look = {FOLDER + name: asset(name) for name in ("guide.css", "mark.svg")}
    return look | {FOLDER + name: slim(text) for name, text in scripts.items()}


def slim(script: str) -> str:
    """A script without its comments and empty lines, which stay in the sources; a licence notice is kept."""
    without = BLOCK_COMMENT.sub(lambda comment: comment[0] if "Copyright" in comment[0] else "", script)
    return LINE_COMMENT.sub("", without)


def asset(name: str) -> str:
    """A hand-written file of assets/."""
    return (ASSETS / name).read_text(encoding="utf-8")


def core(calculators: list[str]) -> str:
    """What every page with a form needs: helpers, engine and formatter (compiled), and the hand-written page code."""
    shared = module_order(SHARED)
    everything = module_order([*SHARED, *calculators, PLAN])
    parts = [helpers_script(everything), *(compile_module(name) for name in shared), *(asset(name) for name in WRITTEN)]
    return "\n".join(parts)


def own_modules(name: str) -> list[str]:
    """The compiled modules that a page needs beside the core, in order."""
    shared = module_order(SHARED)
    return [module for module in module_order([name]) if module not in shared]


def add(data: dict[str, Any]) -> str:
    """The call that gives a page its data."""
    return f"Guide.add({json.dumps(data, ensure_ascii=False, separators=(',', ':'))});"


def page_data(rulebook: Rulebook, name: str, root: str, cites: list[str], cautions: list[str]) -> dict[str, Any]:
    """What every page with a form knows: rules and edition, words for standings, sources and cautions it may show."""
    return {
        "name": name,
        "root": root,
        "rules": rulebook.version,
        "edition": {"id": rulebook.edition.id, "name": rulebook.edition.name, "by": rulebook.edition.by},
        "standings": wording.STANDING,
        "sources": {cite: sources(rulebook, cite) for cite in dict.fromkeys(cites)},
        "cautions": {one: caution(rulebook, one) for one in dict.fromkeys(cautions) if one in rulebook.cautions},
    }


def sources(rulebook: Rulebook, cite: str) -> list[dict[str, str]]:
    """The sources behind one citation: what to call each and where its page stands, from the root of the site."""
    found = resolve(rulebook, (Cite(cite),))
    return [{"name": one.name, "href": page_path("source", one.source.id).removesuffix("md") + "html" + one.anchor} for one in found]


def caution(rulebook: Rulebook, name: str) -> dict[str, str]:
    """A caution as the page shows it."""
    found = rulebook.cautions[name]
    return {"label": found.label, "text": found.text, "defer": found.defer}


def decision_script(rulebook: Rulebook, table: Decision) -> str:
    """The data of a decision: its table, the tables that feed it, and the words for them."""
    names = feeding_order(rulebook, table.id)
    tables = [rulebook.decisions[name] for name in names]
    facts = encode.decision_facts(rulebook, table.id)
    cites = [cite.id for one in tables for row in one.rows for cite in row.cites]
    always = [name for one in tables for name in one.cautions]
    cautions = always + [name for one in tables for row in one.rows for name in row.cautions]
    data = {
        **page_data(rulebook, table.id, "../", cites, cautions),
        "always": always,
        "groups": plain(of_decision(rulebook, table)),
        "outcomes": {one.id: {"action": one.action, "target": one.target, "years": one.years} for one in table.outcomes if one.action},
        "catalogue": encode.encode_catalogue(
            rulebook, [*SENTENCES, *(f"{name}." for name in names)], words_for(facts, names), facts
        ),
        "tables": encode.encode_tables(rulebook, table.id),
        "candidates": encode.encode_candidates(rulebook, table.id),
    }
    return "\n".join([add(data), asset("decision.js"), "Guide.page.decision();\n"])


def words_for(facts: list[str], decisions: list[str]) -> list[str]:
    """The prefixes of the words that facts and decisions are named with."""
    return [f"fact.{name}" for name in facts] + [f"{kind}.{name}" for name in decisions for kind in ("decision", "outcome")]


def calculator_script(rulebook: Rulebook, form: CalculatorForm) -> str:
    """A calculator compiled, its form's data, its values."""
    facts = [needed.fact for needed in form.inputs]
    modules = own_modules(form.id)
    cites = [cite.id for cite in form.cites]
    hints = get_type_hints(encode.calculator_class(form.id, "Inputs"))
    data = {
        **page_data(rulebook, form.id, "../", cites, list(form.cautions)),
        "always": list(form.cautions),
        "always_sources": cites,
        "groups": plain(of_calculator(rulebook, form)),
        "catalogue": encode.encode_catalogue(rulebook, [*SENTENCES, *(f"{name}." for name in modules)], words_for(facts, []), facts),
        "inputs": [{"id": name, "type": kind.__name__} for name, kind in hints.items()],
        "required": [needed.fact for needed in form.inputs if not needed.optional],
        "outputs": [{"id": one.id, "label": one.label, "unit": one.unit, "digits": one.digits} for one in form.outputs],
        "values": encode.encode_values(rulebook, form.id),
    }
    compiled = [compile_module(name) for name in modules]
    return "\n".join([*compiled, add(data), asset("calculator.js"), "Guide.page.calculator();\n"])


def plan_script(rulebook: Rulebook) -> str:
    """The plan compiled, with every table, fact and word that it may need."""
    modules = own_modules(PLAN)
    decisions = list(rulebook.decisions)
    tables = plain(plan_tables(rulebook))
    data = {
        **page_data(rulebook, PLAN, "", [], plan_cautions(rulebook)),
        "always": plan_cautions(rulebook),
        "groups": plain(of_plan(rulebook)),
        "stages": {stage.id: {"number": stage.number, "title": stage.title} for stage in rulebook.stages.values()},
        "catalogue": encode.encode_catalogue(
            rulebook, [*SENTENCES, "plan.", *(f"{name}." for name in [*modules, *decisions, *DRAWN])], PLAN_WORDS, list(rulebook.facts)
        ),
        "tables": tables,
        "values": encode.encode_values(rulebook, PLAN),
    }
    compiled = [compile_module(name) for name in modules]
    return "\n".join([*compiled, add(data), asset("plan.js"), "Guide.page.plan();\n"])


def plan_cautions(rulebook: Rulebook) -> list[str]:
    """The cautions of every decision and calculator that a plan goes through, each once."""
    parts = [*rulebook.decisions.values(), *rulebook.calculators.values()]
    return list(dict.fromkeys(name for part in parts for name in part.cautions))
