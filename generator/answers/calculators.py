"""The answer of a calculator, as data."""

from dataclasses import fields, replace
from typing import Any, get_type_hints

from generator.answers.border import from_number
from generator.answers.catalogue import catalogue
from generator.answers.decisions import cited, shown_reason, work
from generator.answers.encode import calculator_class, calculator_module, compared_values, value_ids, values_record
from generator.answers.given import BadInput, Given, given
from generator.answers.link import link
from generator.answers.records import opened, plain
from generator.answers.rows import ROWS, read_rows, without_rows
from generator.answers.shared import cautions, rests, sources, stamp, value_used, with_texts
from generator.answers.specs import fact_spec
from generator.calculators.answer import STATUS_NAMES, rest
from generator.calculators.facts import ASSUMED, Facts, Maybe, maybe, number, weakest
from generator.calculators.say import Say
from generator.calculators.wording import Catalogue, worded
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm

LISTS = ("options", "compared", "canes", "vines")
RECORDS = ("rows", "groups", "paired", "bearers")  # of a calculator that takes rows: numbers without sentences


def calculate(rulebook: Rulebook, name: str, inputs: dict[str, Any]) -> dict:
    """Computes one calculator; see compute() for the shape. Raises BadInput."""
    form = rulebook.calculators[name]
    facts = taken(rulebook, form, inputs)
    result = run(rulebook, form, facts)
    return _as_data(rulebook, form, facts, result)


def taken(rulebook: Rulebook, form: CalculatorForm, inputs: dict[str, Any]) -> Given:
    """The inputs of a calculator: its facts, and its rows where it takes some. Raises BadInput with every fault of both."""
    required = [one.fact for one in form.inputs if not one.optional]
    rows, wrong = read_rows(rulebook, form, inputs) if form.rows else ((), [])
    try:
        facts = given(rulebook, [one.fact for one in form.inputs], by_fact(form, without_rows(form, inputs)), required)
    except BadInput as bad:
        raise BadInput([*bad.faults, *wrong]) from None
    if wrong:
        raise BadInput(wrong)
    return replace(facts, rows=rows)


def by_fact(form: CalculatorForm, inputs: dict[str, Any]) -> dict[str, Any]:
    """The inputs under the ids of their facts, where a second name was used; a fact given by both keeps both, and one is refused."""
    facts = {one.also: one.fact for one in form.inputs if one.also and one.fact not in inputs}
    return {facts.get(name, name): x for name, x in inputs.items()}


def run(rulebook: Rulebook, form: CalculatorForm, facts: Given) -> Any:
    """The calculator's own Result. facts hold every required input. Raises BadInput when the calculator refuses the numbers."""
    inputs = _record(calculator_class(form.id, "Inputs"), form, facts)
    try:
        return getattr(calculator_module(form.id), form.id)(inputs, values_record(rulebook, form.id))
    except ValueError as refused:
        raise BadInput([f"{form.id}: {refused}"]) from None


def outputs(form: CalculatorForm, result: Any) -> dict[str, Any]:
    """The named outputs: numbers unrounded; one that was left open is left out, as no word or number may pretend to be it."""
    found = {output.id: getattr(result, output.id) for output in form.outputs}
    there = {name: x for name, x in found.items() if not isinstance(x, Maybe) or x.ok}
    return {name: x.number if isinstance(x, Maybe) else x for name, x in there.items()}


def _record(kind: Any, form: CalculatorForm, facts: Given) -> Any:
    """The calculator's Inputs, each field of the type it declares; a list holds the facts that are asked by node under its name."""
    hints = get_type_hints(kind)
    listed = {ROWS: list(facts.rows)} if form.rows else {}
    return kind(**listed, **{name: _input(hints[name], name, form, facts.facts) for name in hints if name not in listed})


def _input(wanted: Any, name: str, form: CalculatorForm, facts: Facts) -> Any:
    """One field of a calculator's Inputs."""
    if wanted == list[Maybe]:
        return [maybe(facts, one.fact) for one in form.inputs if one.series == name]
    return maybe(facts, name) if wanted is Maybe else wanted(number(facts, name))


def listed(words: Catalogue, result: Any) -> dict[str, Any]:
    """With their sentences, what a calculator gives besides numbers: the options it ranks, the best first, and the rules of several
    authors that it compares; nothing for the others."""
    return {name: with_texts(words, plain(getattr(result, name))) for name in LISTS if hasattr(result, name)}


def recorded(rulebook: Rulebook, form: CalculatorForm, result: Any) -> dict[str, Any]:
    """Of a calculator that takes rows: its records without what was left out, and the facts that it gives, ready to be asked of others."""
    if not form.rows:
        return {}
    facts = {one.fact: from_number(fact_spec(rulebook, rulebook.facts[one.fact]), one.number) for one in getattr(result, "facts", [])}
    return {name: opened(getattr(result, name)) for name in RECORDS if hasattr(result, name)} | ({"facts": facts} if facts else {})


def values_used(rulebook: Rulebook, name: str, result: Any) -> list[dict]:
    """The values that an answer reckoned with. Where the calculator takes every author's figure, those figures that the answer names, in
    each value where they stand (figures of the same id are one rule); where it names none, those that it compares. An answer that neither
    names nor compares any has used none."""
    compared = getattr(result, "compared", [])
    used = figures_named([result.headline, *result.working, *result.notes]) or figures_named([line.who for line in compared])
    every = compared_values(name) if used or not compared else []
    found: list[dict] = []
    for value in value_ids(name):
        if value in every:
            found += [value_used(rulebook, value, figure) for figure in rulebook.values[value].figures if figure.id in used]
        else:
            found.append(value_used(rulebook, value))
    return found


def figures_named(says: list[Say]) -> set[str]:
    """The ids of the figures whose authors the sentences name."""
    words = [word.split(".") for say in says for word in say.words]
    return {word[2] for word in words if word[0] == "figure"}


def _as_data(rulebook: Rulebook, form: CalculatorForm, facts: Given, result: Any) -> dict:
    """The result in words."""
    words, reasons = catalogue(rulebook), getattr(result, "reasons", [])
    told = list(dict.fromkeys((one.table, one.outcome) for one in reasons))
    values = values_used(rulebook, form.id, result)
    used = [fact for fact, status in zip(facts.facts.ids, facts.facts.statuses) if status >= ASSUMED]
    rests_on = rests(words, facts.specs, [rest(facts.specs, facts.facts, fact) for fact in used])
    return {
        "name": form.id,
        "kind": "calculator",
        "headline": worded(words, result.headline, "si"),
        "settled": True,
        "outputs": outputs(form, result),
        "ask_next": "",
        "status": STATUS_NAMES[weakest(facts.facts, used)],
        "reasons": [shown_reason(rulebook, words, one) for one in reasons],
        **({"work": [{"table": table, "outcome": name, **work(rulebook, table, name)} for table, name in told]} if form.tables else {}),
        **({"steps": [worded(words, say, "si") for say in result.steps]} if hasattr(result, "steps") else {}),
        "rests_on": rests_on,
        "assumed": [one["fact"] for one in rests_on if one["status"] == "assumed"],
        "would_change": [],
        **({"limits": result.limits} if hasattr(result, "limits") else {}),
        **listed(words, result),
        **recorded(rulebook, form, result),
        "working": [worded(words, say, "si") for say in result.working],
        "notes": [worded(words, say, "si") for say in result.notes],
        "values": values,
        "sources": sources(rulebook, [*(cite.id for cite in form.cites), *(name for value in values for name in value["sources"]), *(name for one in reasons for name in one.sources), *(name for pair in told for name in cited(rulebook, *pair))]),
        "cautions": cautions(rulebook, [*form.cautions, *(name for one in reasons for name in one.cautions)]),
        **stamp(rulebook),
        "link": link(rulebook, f"c/{form.id}.html", facts),
    }
