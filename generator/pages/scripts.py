"""Scripts and the style sheet: one core that every form page shares, and one script for each decision, calculator and the plan.

Scripts are classic and add to one global, so that they work from a folder on disk; data comes as a call of `Guide.add`.
"""

from functools import cache
from pathlib import Path
from typing import Any, get_type_hints

from generator.answers import encode
from generator.answers.behind import behind
from generator.answers.ends import ends
from generator.answers.plans import plan_facts, plan_tables
from generator.answers.records import plain
from generator.answers.specs import column_specs
from generator.answers.tables import feeding_order
from generator.calculators.plan_system import DECISION
from generator.compiler.script import compile_module, helpers_for, module_order
from generator.pages import canes, wording
from generator.pages.decisions import is_long
from generator.pages.packing import add, bare_candidates, bare_catalogue, bare_tables
from generator.pages.questions import of_calculator, of_decision, of_plan
from generator.pages.slimming import slim, slim_style
from generator.pages.tally import FIRST, LATER, asked, from_the_start, takes_tally, with_the_sums
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision, Outcome

ASSETS = Path(__file__).parent / "assets"
FOLDER = "assets/guide/"
SHARED = ["answer", "changes", "guard", "sides", "wording"]
WRITTEN = ["data.js", "numbers.js", "border.js", "link.js", "store.js", "dom.js", "form.js", "ask.js", "show.js", "page.js"]
SENTENCES = ["answers.", "guard."]
PLAN = "block_plan"
INFLUENCE = "plan_influence"
DRAWN = ["drawing"]
LOOKS = ["true_size.js"]
STYLES = ["guide.css", "look.css", "tally.css"]
# The ranked layouts: their page's own scripts. Large sums, as those of the plan, are files of their own, which come with the first answer.
OPTIONS, RANKED, PLAN_SUMS = "layout_options", ["drawing.js", "layout.js"], "plan.sums.js"
SUMS_LATER = [OPTIONS, "bearer_reach", "cane_choice", "injury_adjustment", "node_number", "nodes_for_yield", "spur_position", "yield_forecast"]
PLAN_SENTENCES, PLAN_WORDS = ["plan.", "node_number."], ["choice.", "term."]


compiled = cache(compile_module)


def script_files(rulebook: Rulebook) -> dict[str, str]:
    """Every script, the style sheet and the mark of the site, by path."""
    scripts = {"core.js": core(list(rulebook.calculators)), "plan.js": plan_script(rulebook)}
    scripts |= {f"d/{table.id}.js": decision_script(rulebook, table) for table in rulebook.decisions.values()}
    scripts |= {f"c/{form.id}.js": calculator_script(rulebook, form) for form in rulebook.calculators.values()}
    scripts |= {PLAN_SUMS: sums(PLAN, INFLUENCE)} | {sums_of(name): sums_later(rulebook, rulebook.calculators[name]) for name in SUMS_LATER if name in rulebook.calculators}
    tallies = [form.id for form in rulebook.calculators.values() if takes_tally(form)]
    scripts |= {sums_of(name): tally_sums(rulebook, rulebook.calculators[name]) for name in tallies}
    scripts |= {name: asset(name) for name in LOOKS}
    look = {FOLDER + name: slim_style(asset(name)) for name in STYLES} | {FOLDER + "mark.svg": asset("mark.svg")}
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
        "candidates": bare_candidates(encode.encode_candidates(rulebook, table.id)),
        "sides": weighing,
        "rows": {name: rows_page(rulebook.decisions[name], table) for name in told},
        "after": {one.id: after(one) for one in table.outcomes if one.spring or one.winters},
        "onward": onward(rulebook, table, "../"),
    }
    return "\n".join([add(data), asset("reasons.js"), asset("decision.js"), "Guide.page.decision();\n"])


def after(outcome: Outcome) -> dict[str, Any]:
    """What comes after this winter's cut: the spring's work, and the winters as [what to do, the crop in words, standing]."""
    return {"spring": outcome.spring, "winters": [[one.do, wording.crop(one.crop_pct), one.standing] for one in outcome.winters]}


def onward(rulebook: Rulebook, table: Decision, root: str) -> list[dict[str, Any]]:
    """The pages that go on from outcomes of a table: what they are called, the way there, and the outcomes."""
    found: list[dict[str, Any]] = []
    for name in dict.fromkeys(one.onward for one in table.outcomes if one.onward):
        page = rulebook.decisions[name] if name in rulebook.decisions else rulebook.calculators[name]
        kind = "d" if name in rulebook.decisions else "c"
        outcomes = [one.id for one in table.outcomes if one.onward == name]
        found.append({"title": page.title, "page": f"{root}{kind}/{name}.html", "outcomes": outcomes})
    return found


def rows_page(shown: Decision, here: Decision | None) -> str:
    """The page that shows the rows of a table, as linked from a decision's page; "" where it is that page itself. here is None
    elsewhere."""
    beside = f"{shown.id}.more.html" if is_long(shown) else f"{shown.id}.html"
    return "" if here is not None and beside == f"{here.id}.html" else beside


def sums_of(name: str) -> str:
    """The file with the sums of a calculator whose page loads them later."""
    return f"c/{name}.sums.js"


def sums_later(rulebook: Rulebook, form: CalculatorForm) -> str:
    """What comes with the first answer of such a calculator: the tables that it asks, and its sums."""
    nothing = {"forms": [], "words": [], "facts": [], "units": []}
    late = canes.with_the_sums(calculator_data(rulebook, form)) if canes.takes_facts(form) else nothing
    tables = [add({"later": True, "catalogue": late, **asked_tables(rulebook, form)})] if form.tables else []
    return "\n".join([*tables, sums(form.id), *(map(asset, canes.SAID) if canes.takes_facts(form) else [])])


def calculator_script(rulebook: Rulebook, form: CalculatorForm) -> str:
    """The script of a calculator's page: the calculator compiled, unless its sums come later, its form's data and its values."""
    data = calculator_data(rulebook, form)
    onward = [*([asset("reasons.js")] if form.tables else []), *([asset("uses.js")] if form.used_in else [])]
    end = [*onward, asset("sums.js"), asset("calculator.js"), "Guide.page.calculator();\n"]
    if takes_tally(form):
        return "\n".join([add(from_the_start(data) | {"sums": FOLDER + sums_of(form.id)}), *by_node(data), *map(asset, FIRST), *end])
    shown = RANKED if form.id == OPTIONS else canes.BOARD if canes.takes_facts(form) else draws(form)
    if form.id in SUMS_LATER:
        data = canes.from_the_start(data) if canes.takes_facts(form) else data
        return "\n".join([add(data | {"sums": FOLDER + sums_of(form.id)}), *by_node(data), *map(asset, shown), *end])
    return "\n".join([*map(compiled, own_modules(form.id)), add(data), *by_node(data), *map(asset, shown), *end])


def draws(form: CalculatorForm) -> list[str]:
    """The script that shows the drawing of a calculator which gives one."""
    return ["drawing.js"] if "drawing" in get_type_hints(encode.calculator_class(form.id, "Result")) else []


def tally_sums(rulebook: Rulebook, form: CalculatorForm) -> str:
    """What comes with the first answer of a tally: its sums, what is said of them, and what shows them."""
    return "\n".join([add(with_the_sums(rulebook, calculator_data(rulebook, form))), sums(form.id), *map(asset, LATER)])


def calculator_data(rulebook: Rulebook, form: CalculatorForm) -> dict[str, Any]:
    """What a calculator's page is given."""
    groups = asked(rulebook, form) if takes_tally(form) else of_calculator(rulebook, form)
    facts = [question.id for group in groups for question in group.questions]
    drawn = [*DRAWN, "vine_layout"] if form.id == OPTIONS else []
    sentences = [*SENTENCES, *(f"{name}." for name in [*own_modules(form.id), *drawn])]
    named = [f"choice.{name}." for name in facts] + [f"figure.{name}." for name in encode.compared_values(form.id)]
    catalogue = encode.encode_catalogue(rulebook, sentences, named, facts)
    hints = get_type_hints(encode.calculator_class(form.id, "Inputs"))
    return {
        **page_data(rulebook, form.id, "../"),
        "groups": plain(groups),
        "catalogue": bare_catalogue(catalogue),
        "inputs": [{"id": name, "type": kind.__name__} for name, kind in hints.items()],
        "required": [needed.fact for needed in form.inputs if not needed.optional],
        "outputs": [{"id": one.id, "label": one.label, "unit": one.unit, "digits": one.digits} for one in form.outputs],
        **({"rows": [{"id": one.id, "high": one.high} for one in form.rows]} if takes_tally(form) else {}),
        **(canes.board(rulebook, form) if canes.takes_facts(form) else {}),
        **({"uses": uses(rulebook, form)} if form.used_in else {}),
        "values": encode.encode_numbers(rulebook, form.id),
        **(asked_tables(rulebook, form) if form.tables and form.id not in SUMS_LATER else {}),
    }


def asked_tables(rulebook: Rulebook, form: CalculatorForm) -> dict[str, Any]:
    """The tables that a calculator asks with all that they say, and the pages that show their rows."""
    tables = plain(encode.asked_tables(rulebook, form.id))
    names = [table["id"] for table in tables]
    rows = {name: f"../d/{rows_page(rulebook.decisions[name], None)}" for name in names}
    comes = {name: {one.id: after(one) for one in rulebook.decisions[name].outcomes if one.spring or one.winters} for name in names}
    sides = {name: list(rulebook.decisions[name].sides) for name in names if rulebook.decisions[name].sides}
    return {"tables": bare_tables(rulebook, tables, set(names), sourced=False), "rows": rows, "sides": sides, "after": comes}


def uses(rulebook: Rulebook, form: CalculatorForm) -> list[dict[str, Any]]:
    """The pages that its answer leads to: address from the root, name, the facts that they ask, and which output fills which fact."""
    takers = [(use, rulebook.calculators[use.calculator]) for use in form.used_in if use.calculator in rulebook.calculators]
    return [
        {"page": f"c/{taker.id}.html", "title": taker.title, "asks": [one.fact for one in taker.inputs], "gives": use.gives}
        for use, taker in takers
    ]


def by_node(data: dict[str, Any]) -> list[str]:
    """The script of questions that are asked by node, where a form has one."""
    return [asset("series.js")] if any(question["series"] for group in data["groups"] for question in group["questions"]) else []


def plan_script(rulebook: Rulebook) -> str:
    """The plan compiled, with every table, fact and word that it may need."""
    modules = own_modules(PLAN, INFLUENCE)
    tables = plain(plan_tables(rulebook))
    sentences = [*SENTENCES, *PLAN_SENTENCES, *(f"{name}." for name in [*modules, *DRAWN])]
    named = [*PLAN_WORDS, *(f"figure.{name}." for name in encode.compared_values(PLAN))]
    data = {
        **page_data(rulebook, PLAN, ""),
        "groups": plain(of_plan(rulebook)),
        "stages": {stage.id: {"number": stage.number, "title": stage.title} for stage in rulebook.stages.values()},
        "catalogue": bare_catalogue(encode.encode_catalogue(rulebook, sentences, named, plan_facts(rulebook))),
        "tables": bare_tables(rulebook, tables, {table["id"] for table in tables}),
        "main": DECISION,
        "ends": plain(ends(rulebook)),
        "candidates": bare_candidates(encode.encode_candidates(rulebook, DECISION)),
        "values": encode.encode_values(rulebook, PLAN),
        "behind": behind(rulebook, PLAN),
        "sums": FOLDER + PLAN_SUMS,
        "onward": onward(rulebook, rulebook.decisions[DECISION], ""),
    }
    return "\n".join([add(data), *by_node(data), asset("drawing.js"), asset("sums.js"), asset("plan.js"), "Guide.page.plan();\n"])
