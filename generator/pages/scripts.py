"""Scripts and the style sheet: one core that every form page shares, and one script for each decision, calculator and the plan.

Scripts are classic and add to one global, so that they work from a folder on disk; data comes as a call of `Guide.add`. Each page has
its form from the start; what answers stands in files of its own, which come when the form is first touched.
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
from generator.pages import cards, wording
from generator.pages.decisions import is_long
from generator.pages.halves import answering, asking
from generator.pages.packing import add, bare_candidates, bare_catalogue, bare_tables
from generator.pages.questions import of_calculator, of_decision, of_plan
from generator.pages.slimming import slim, slim_style
from generator.pages.tally import FIRST, LATER, asked, of_tally, takes_tally
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision, Outcome, UsedIn

ASSETS = Path(__file__).parent / "assets"
FOLDER = "assets/guide/"
FORM, ANSWER = ["guard", "wording"], ["answer", "changes", "sides"]
SHARED = [*FORM, *ANSWER]
WRITTEN = ["data.js", "numbers.js", "border.js", "link.js", "store.js", "dom.js", "form.js", "ask.js", "reckon.js", "page.js"]
OPEN = "Guide.page.open();"
ANSWERS, ANSWERING = "answers.js", ["tables.js", "show.js"]
SENTENCES = ["answers.", "guard."]
PLAN = "block_plan"
INFLUENCE = "plan_influence"
DRAWN = ["drawing"]
LOOKS = ["true_size.js"]
STYLES = ["guide.css", "look.css", "hands.css", "tally.css", "sheet.css"]
# The ranked layouts: their page's own scripts.
OPTIONS, RANKED = "layout_options", ["drawing.js", "field_card.js", "layout.js"]
PLAN_SENTENCES, PLAN_WORDS = ["plan.", "node_number."], ["choice.", "term."]


compiled = cache(compile_module)


def script_files(rulebook: Rulebook) -> dict[str, str]:
    """Every script, the style sheet and the mark of the site, by path."""
    scripts = {"core.js": core(list(rulebook.calculators)), ANSWERS: answers()} | plan_scripts(rulebook)
    for table in rulebook.decisions.values():
        scripts |= decision_scripts(rulebook, table)
    for form in rulebook.calculators.values():
        scripts |= calculator_scripts(rulebook, form)
    scripts |= {name: asset(name) for name in LOOKS}
    look = {FOLDER + name: slim_style(asset(name)) for name in STYLES} | {FOLDER + "mark.svg": asset("mark.svg")}
    return look | {FOLDER + name: slim(text) for name, text in scripts.items()}


def asset(name: str) -> str:
    """A hand-written file of assets/."""
    return (ASSETS / name).read_text(encoding="utf-8")


def core(calculators: list[str]) -> str:
    """What every page with a form needs: helpers, what checks and words its facts (compiled), and the hand-written page code."""
    everything = "".join(map(compiled, module_order([*SHARED, *calculators, PLAN, INFLUENCE])))
    return "\n".join([helpers_for(everything), *map(compiled, module_order(FORM)), *map(asset, WRITTEN)])


def answers() -> str:
    """What every answer needs beside the core: the engine, and what shows an answer."""
    modules = [name for name in module_order(ANSWER) if name not in module_order(FORM)]
    return "\n".join([*map(compiled, modules), *map(asset, ANSWERING)])


def halves(name: str, data: dict[str, Any], form: list[str], answer: list[str], start: str = OPEN) -> dict[str, str]:
    """The two scripts of a page: its form with the scripts that it needs, and what answers, by their paths below FOLDER."""
    later = f"{name}.answer.js"
    asks = asking(data, [FOLDER + ANSWERS, FOLDER + later])
    return {
        f"{name}.js": "\n".join([add(asks), *by_node(data), *form, f"{start}\n"]),
        later: "\n".join([add(answering(data)), *answer]),
    }


def own_modules(*names: str) -> list[str]:
    """The compiled modules that a page needs beside the core, in order."""
    shared = module_order(SHARED)
    return [module for module in module_order(list(names)) if module not in shared]


def sums(*names: str) -> str:
    """The compiled modules of a page."""
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


def decision_scripts(rulebook: Rulebook, table: Decision) -> dict[str, str]:
    """The scripts of a decision. Its data: its table and the tables that feed it, and the sentences of those whose reasons are shown,
    its own and those that weigh. Sources stand where the rows stand."""
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
    return halves(f"d/{table.id}", data, [], [asset("reasons.js"), asset("decision.js"), "Guide.page.decision();\n"])


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


def calculator_scripts(rulebook: Rulebook, form: CalculatorForm) -> dict[str, str]:
    """The scripts of a calculator. What answers: its sums, the tables that it asks, its sentences and values, and what shows them."""
    data, listed = calculator_data(rulebook, form), bool(form.rows)
    first, shown = [], RANKED if form.id == OPTIONS else draws(form)
    if takes_tally(form):
        data, first, shown = data | of_tally(rulebook, data), FIRST, LATER
    elif form.each:
        first, shown = cards.BOARD, cards.SAID
    onward = [*(["reasons.js"] if form.tables else []), *(["uses.js"] if form.used_in else [])]
    answer = [sums(form.id), *map(asset, [*shown, *onward, "calculator.js"]), "Guide.page.calculator();\n"]
    return halves(f"c/{form.id}", data, list(map(asset, first)), answer, f"{OPEN}\nGuide.page.opened();" if listed else OPEN)


def draws(form: CalculatorForm) -> list[str]:
    """The script that shows the drawing of a calculator which gives one."""
    return ["drawing.js"] if "drawing" in get_type_hints(encode.calculator_class(form.id, "Result")) else []


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
        **({"also": also} if (also := {one.also: one.fact for one in form.inputs if one.also}) else {}),
        "outputs": [{"id": one.id, "label": one.label, "unit": one.unit, "digits": one.digits, "needs": one.needs} for one in form.outputs],
        **({"rows": [{"id": one.id, "high": one.high} for one in form.rows]} if takes_tally(form) else {}),
        **(cards.board(rulebook, form) if form.each else {}),
        **({"uses": uses(rulebook, form)} if form.used_in else {}),
        "values": encode.encode_numbers(rulebook, form.id),
        **(asked_tables(rulebook, form) if form.tables else {}),
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
        {"page": f"c/{taker.id}.html", "title": taker.title, "asks": taken_along(use, taker), "gives": use.gives, "where": list(use.where)}
        for use, taker in takers
    ]


def taken_along(use: UsedIn, taker: CalculatorForm) -> list[str]:
    """The facts that a page asks and may be given: all but those that it is to ask anew."""
    return [one.fact for one in taker.inputs if one.fact not in use.anew]


def by_node(data: dict[str, Any]) -> list[str]:
    """The script of questions that are asked by node, where a form has one."""
    return [asset("series.js")] if any(question["series"] for group in data["groups"] for question in group["questions"]) else []


def plan_scripts(rulebook: Rulebook) -> dict[str, str]:
    """The scripts of the plan: the plan compiled, with every table, fact and word that it may need."""
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
        "onward": onward(rulebook, rulebook.decisions[DECISION], ""),
    }
    answer = [sums(PLAN, INFLUENCE), asset("drawing.js"), asset("field_card.js"), asset("plan.js"), "Guide.page.plan();\n"]
    return halves("plan", data, [asset("plan_form.js")], answer, "Guide.page.planForm();")
