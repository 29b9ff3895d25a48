"""Scripts and the style sheet: one core that every form page shares, and one script for each decision, calculator and the plan.

Scripts are classic and add to one global, so that they work from a folder on disk; data comes as a call of `Guide.add`.
"""

from functools import cache
from pathlib import Path
from typing import Any, get_type_hints

from generator.answers import encode
from generator.answers.behind import behind
from generator.answers.ends import ends
from generator.answers.plans import plan_tables
from generator.answers.records import plain
from generator.answers.specs import column_specs
from generator.answers.tables import feeding_order
from generator.calculators.plan_system import DECISION
from generator.compiler.script import compile_module, helpers_for, module_order
from generator.pages import wording
from generator.pages.decisions import is_long
from generator.pages.packing import add, bare_catalogue, bare_tables
from generator.pages.questions import of_calculator, of_decision, of_plan
from generator.pages.slimming import slim, slim_style
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision

ASSETS = Path(__file__).parent / "assets"
FOLDER = "assets/guide/"
SHARED = ["answer", "changes", "guard", "sides", "wording"]
WRITTEN = ["data.js", "numbers.js", "border.js", "link.js", "store.js", "dom.js", "form.js", "ask.js", "show.js", "page.js"]
SENTENCES = ["answers.", "guard."]
PLAN = "block_plan"
INFLUENCE = "plan_influence"
DRAWN = ["drawing"]
# The ranked layouts: their page's own scripts. Their sums and those of the plan are large: files of their own, which come with the first answer.
OPTIONS, RANKED, OPTIONS_SUMS, PLAN_SUMS = "layout_options", ["drawing.js", "layout.js"], "c/layout_options.sums.js", "plan.sums.js"
PLAN_WORDS = ["choice.", "term."]


compiled = cache(compile_module)


def script_files(rulebook: Rulebook) -> dict[str, str]:
    """Every script, the style sheet and the mark of the site, by path."""
    scripts = {"core.js": core(list(rulebook.calculators)), "plan.js": plan_script(rulebook)}
    scripts |= {f"d/{table.id}.js": decision_script(rulebook, table) for table in rulebook.decisions.values()}
    scripts |= {f"c/{form.id}.js": calculator_script(rulebook, form) for form in rulebook.calculators.values()}
    scripts |= {OPTIONS_SUMS: sums(OPTIONS), PLAN_SUMS: sums(PLAN, INFLUENCE)}
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


def sums(*names: str) -> str:
    """The compiled modules of a page in a file of their own."""
    return "\n".join(map(compiled, own_modules(*names)))


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
    """The data of a decision: its table and the tables that feed it, and the sentences of those whose reasons are shown: its own
    and those that weigh. Sources stand where the rows stand."""
    names = feeding_order(rulebook, table.id)
    weighing = {name: list(rulebook.decisions[name].sides) for name in names if rulebook.decisions[name].policy == "collect"}
    told = [table.id, *(name for name in weighing if name != table.id)]
    facts = encode.decision_facts(rulebook, table.id)
    data = {
        **page_data(rulebook, table.id, "../"),
        "groups": plain(of_decision(rulebook, table)),
        "catalogue": bare_catalogue(encode.encode_catalogue(rulebook, SENTENCES, [], facts)),
        "tables": bare_tables(rulebook, encode.encode_tables(rulebook, table.id), set(told), sourced=False),
        "candidates": encode.encode_candidates(rulebook, table.id),
        "sides": weighing,
        "rows": {name: rows_page(rulebook.decisions[name], table) for name in told},
    }
    return "\n".join([add(data), asset("reasons.js"), asset("decision.js"), "Guide.page.decision();\n"])


def rows_page(shown: Decision, here: Decision) -> str:
    """The page that shows the rows of a table, as linked from a decision's page; "" where it is that page itself."""
    beside = f"{shown.id}.more.html" if is_long(shown) else f"{shown.id}.html"
    return "" if beside == f"{here.id}.html" else beside


def calculator_script(rulebook: Rulebook, form: CalculatorForm) -> str:
    """A calculator compiled, its form's data, its values."""
    facts = [needed.fact for needed in form.inputs]
    modules = own_modules(form.id)
    sentences = [*SENTENCES, *(f"{name}." for name in [*modules, *([*DRAWN, "vine_layout"] if form.id == OPTIONS else [])])]
    outputs = [{"id": one.id, "label": one.label, "unit": one.unit, "digits": one.digits} for one in form.outputs]
    named = [f"choice.{name}." for name in facts] + [f"figure.{name}." for name in encode.compared_values(form.id)]
    named += [f"column.{form.id}."] if form.rows else []
    catalogue = encode.encode_catalogue(rulebook, sentences, named, facts)
    hints = get_type_hints(encode.calculator_class(form.id, "Inputs"))
    data = {
        **page_data(rulebook, form.id, "../"),
        "groups": plain(of_calculator(rulebook, form)),
        "catalogue": bare_catalogue(catalogue),
        "inputs": [{"id": name, "type": kind.__name__} for name, kind in hints.items()],
        "required": [needed.fact for needed in form.inputs if not needed.optional],
        "outputs": outputs,
        **({"rows": plain(column_specs(form))} if form.rows else {}),
        "values": encode.encode_values(rulebook, form.id),
    }
    if form.id == OPTIONS:
        return "\n".join([add(data | {"sums": FOLDER + OPTIONS_SUMS}), *by_node(data), *map(asset, RANKED), asset("calculator.js"), "Guide.page.calculator();\n"])
    return "\n".join([*map(compiled, modules), add(data), *by_node(data), asset("calculator.js"), "Guide.page.calculator();\n"])


def by_node(data: dict[str, Any]) -> list[str]:
    """The script of questions that are asked by node, where a form has one."""
    return [asset("series.js")] if any(question["series"] for group in data["groups"] for question in group["questions"]) else []


def plan_script(rulebook: Rulebook) -> str:
    """The plan compiled, with every table, fact and word that it may need."""
    modules = own_modules(PLAN, INFLUENCE)
    tables = plain(plan_tables(rulebook))
    sentences = [*SENTENCES, "plan.", *(f"{name}." for name in [*modules, *DRAWN])]
    data = {
        **page_data(rulebook, PLAN, ""),
        "groups": plain(of_plan(rulebook)),
        "stages": {stage.id: {"number": stage.number, "title": stage.title} for stage in rulebook.stages.values()},
        "catalogue": bare_catalogue(encode.encode_catalogue(rulebook, sentences, PLAN_WORDS, list(rulebook.facts))),
        "tables": bare_tables(rulebook, tables, {table["id"] for table in tables}),
        "main": DECISION,
        "ends": plain(ends(rulebook)),
        "candidates": encode.encode_candidates(rulebook, DECISION),
        "values": encode.encode_values(rulebook, PLAN),
        "behind": behind(rulebook, PLAN),
        "sums": FOLDER + PLAN_SUMS,
    }
    return "\n".join([add(data), *by_node(data), asset("drawing.js"), asset("plan.js"), "Guide.page.plan();\n"])
