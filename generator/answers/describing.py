"""What can be computed, and what each of them takes and gives."""

from typing import Any

from generator.answers.border import from_number
from generator.answers.encode import value_ids
from generator.answers.plans import PLAN
from generator.answers.rows import columns_described
from generator.answers.shared import stamp
from generator.answers.specs import fact_spec
from generator.answers.tables import base_facts, feeding_order
from generator.calculators.specs import FactSpec
from generator.reading.rulebook import Rulebook


def names(rulebook: Rulebook) -> list[str]:
    """Every name that compute() takes, sorted."""
    return sorted({*rulebook.calculators, *rulebook.decisions, PLAN})


def describe(rulebook: Rulebook, name: str) -> dict:
    """{name, kind, title, question, inputs: [{id, label, type, unit, range, choices, default, default_value,
    default_standing, optional}], rows (the columns, of a calculator that takes
    some), values (those used, then those that are defaults), outputs, rules, edition}.

    Raises KeyError for a name that names() does not list.
    """
    form = rulebook.decisions.get(name) or rulebook.calculators.get(name)
    if form is None and name != PLAN:
        raise KeyError(name)
    inputs = _inputs(rulebook, name)
    return {
        "name": name,
        "kind": "decision" if name in rulebook.decisions else "calculator",
        "title": form.title if form else "Block plan",
        "question": form.question if form else "What is to be done in this block?",
        "inputs": inputs,
        **({"rows": columns_described(rulebook, form)} if name in rulebook.calculators and form.rows else {}),
        "values": [_value(rulebook, value) for value in _values(rulebook, name, inputs)],
        "outputs": _outputs(rulebook, name),
        **stamp(rulebook),
    }


def _inputs(rulebook: Rulebook, name: str) -> list[dict]:
    """The facts asked; those of a decision and of the plan may all be left out."""
    also: dict[str, str] = {}
    if name in rulebook.calculators and name != PLAN:
        asked = {one.fact: one.optional for one in rulebook.calculators[name].inputs}
        also = {one.fact: one.also for one in rulebook.calculators[name].inputs}
    elif name in rulebook.decisions:
        asked = dict.fromkeys(base_facts(rulebook, feeding_order(rulebook, name)), True)
    else:
        asked = dict.fromkeys(rulebook.facts, True)
    found = [_input(rulebook, fact_spec(rulebook, rulebook.facts[fact]), optional) for fact, optional in asked.items()]
    return [one | ({"also": also[one["id"]]} if also.get(one["id"]) else {}) for one in found]


def _input(rulebook: Rulebook, spec: FactSpec, optional: bool) -> dict:
    """One fact as an input; a default with the value that it comes from and how sure that is."""
    found = {"id": spec.id, "label": spec.label, "type": spec.kind, "optional": optional or spec.default.ok}
    if spec.kind in ("number", "whole"):
        found |= {"unit": spec.unit, "range": [spec.low, spec.high]}
    if spec.choices:
        found["choices"] = spec.choices
    if spec.default.ok:
        fact = rulebook.facts[spec.id]
        found["default"] = from_number(spec, spec.default.number)
        if fact.assumed:
            found |= {"default_standing": fact.assumed.standing, "default_because": fact.assumed.because}
        else:
            value = rulebook.values[fact.default_value]
            found |= {"default_value": value.id, "default_standing": value.followed.standing}
    return found


def _values(rulebook: Rulebook, name: str, inputs: list[dict]) -> list[str]:
    """The values that a calculator or the plan uses, then those that are defaults of the inputs."""
    used = [] if name in rulebook.decisions else value_ids(name)
    return list(dict.fromkeys([*used, *(one["default_value"] for one in inputs if "default_value" in one)]))


def _value(rulebook: Rulebook, name: str) -> dict:
    """One value."""
    value = rulebook.values[name]
    return {"id": name, "label": value.label, "number": value.number, "unit": value.unit, "standing": value.followed.standing}


def _outputs(rulebook: Rulebook, name: str) -> list[dict[str, Any]]:
    """What comes out: the outcomes of a decision, the outputs of a calculator."""
    if name in rulebook.decisions:
        return [{"id": one.id, "label": one.label} for one in rulebook.decisions[name].outcomes]
    if name in rulebook.calculators:
        return [
            {"id": one.id, "label": one.label, "unit": one.unit, "digits": one.digits}
            for one in rulebook.calculators[name].outputs
        ]
    return [{"id": "plan", "label": "The plan"}]
