"""The answer of a calculator, as data."""

from dataclasses import fields
from typing import Any, get_type_hints

from generator.answers.catalogue import catalogue
from generator.answers.encode import calculator_class, calculator_module, value_ids
from generator.answers.given import BadInput, Given, given
from generator.answers.shared import cautions, rests, sources, stamp
from generator.calculators.answer import STATUS_NAMES, rest
from generator.calculators.facts import ASSUMED, Maybe, maybe, number, weakest
from generator.calculators.wording import worded
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm


def calculate(rulebook: Rulebook, name: str, inputs: dict[str, Any]) -> dict:
    """Computes one calculator; see compute() for the shape. Raises BadInput."""
    form = rulebook.calculators[name]
    facts = given(rulebook, [one.fact for one in form.inputs], inputs)
    result = run(rulebook, form, facts)
    return _as_data(rulebook, form, facts, result)


def run(rulebook: Rulebook, form: CalculatorForm, facts: Given) -> Any:
    """The calculator's own Result. Raises BadInput when a required input is missing or the calculator refuses the numbers."""
    _no_required_missing(form, facts)
    inputs = _record(calculator_class(form.id, "Inputs"), facts)
    values = calculator_class(form.id, "Values")(*(float(rulebook.values[value].number) for value in value_ids(form.id)))
    try:
        return getattr(calculator_module(form.id), form.id)(inputs, values)
    except ValueError as refused:
        raise BadInput([f"{form.id}: {refused}"]) from None


def outputs(form: CalculatorForm, result: Any) -> dict[str, Any]:
    """The named outputs: numbers unrounded; None for one that was left open."""
    found = {output.id: getattr(result, output.id) for output in form.outputs}
    return {name: (x.number if x.ok else None) if isinstance(x, Maybe) else x for name, x in found.items()}


def _no_required_missing(form: CalculatorForm, facts: Given) -> None:
    """Raises BadInput naming every required input without a number."""
    required = [one.fact for one in form.inputs if not one.optional and one.fact in facts.facts.ids]
    status = dict(zip(facts.facts.ids, facts.facts.statuses))
    wrong = [fact for fact in required if status[fact] < ASSUMED]
    if wrong:
        raise BadInput([f"{fact}: is missing, this calculator needs it" for fact in wrong])


def _record(kind: Any, facts: Given) -> Any:
    """The calculator's Inputs, each field of the type it declares."""
    hints = get_type_hints(kind)
    values = {}
    for field in fields(kind):
        wanted = hints[field.name]
        values[field.name] = maybe(facts.facts, field.name) if wanted is Maybe else wanted(number(facts.facts, field.name))
    return kind(**values)


def _as_data(rulebook: Rulebook, form: CalculatorForm, facts: Given, result: Any) -> dict:
    """The result in words."""
    words = catalogue(rulebook)
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
        "reasons": [],
        "rests_on": rests_on,
        "assumed": [one["fact"] for one in rests_on if one["status"] == "assumed"],
        "would_change": [],
        "working": [worded(words, say, "si") for say in result.working],
        "notes": [worded(words, say, "si") for say in result.notes],
        "values": [_value(rulebook, name) for name in value_ids(form.id)],
        "sources": sources(rulebook, [cite.id for cite in form.cites]),
        "cautions": cautions(rulebook, list(form.cautions)),
        **stamp(rulebook),
    }


def _value(rulebook: Rulebook, name: str) -> dict:
    """A value that a calculator used, with its standing."""
    value = rulebook.values[name]
    figure = value.followed
    cites = [cite.id for cite in figure.cites]
    return {
        "id": name,
        "label": value.label,
        "number": value.number,
        "unit": value.unit,
        "standing": figure.standing,
        "who": figure.who,
        "sources": cites,
    }
