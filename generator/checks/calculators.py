"""The form of a calculator and its code ask and give the same.

A form in rules/calculators/ lists inputs, values and outputs for the page; the module of the same name in
generator/calculators/ has the records `<Name>Inputs`, `<Name>Values` and `<Name>Result`. An input may be left out in
both or in neither (`optional: true` there, `Maybe` here); a number is a float, a whole number or a choice an int, yes
or no a bool."""

from collections.abc import Iterator
from dataclasses import fields
from typing import get_type_hints

from generator.answers.encode import calculator_class, value_ids
from generator.calculators.facts import Maybe
from generator.checks.shape import Check, at, listed
from generator.problems import Problem
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm

TYPES = {"number": float, "date": float, "whole": int, "choice": int, "yes_no": bool}


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each difference between a form and its code, and for each form without code."""
    for form in rulebook.calculators.values():
        try:
            inputs = get_type_hints(calculator_class(form.id, "Inputs"))
            values = value_ids(form.id)
            results = [field.name for field in fields(calculator_class(form.id, "Result"))]
        except (ModuleNotFoundError, AttributeError) as missing:
            step = f"Write generator/calculators/{form.id}.py with its records, or correct the name of the file."
            yield at(form, f"The calculator `{form.id}` has no code: {missing}.", step)
            continue
        yield from _differences(form, "input", [one.fact for one in form.inputs], list(inputs))
        yield from _differences(form, "value", list(form.values), values)
        yield from _differences(form, "output", [output.id for output in form.outputs], results, all_of_code=False)
        yield from _types(rulebook, form, inputs)


def _differences(
    form: CalculatorForm, kind: str, asked: list[str], used: list[str], all_of_code: bool = True
) -> Iterator[Problem]:
    """What the form lists and the code lacks, and the other way round."""
    extra = [name for name in asked if name not in used]
    lacking = [name for name in used if name not in asked] if all_of_code else []
    if extra:
        yield at(
            form,
            f"The form has the {kind} {listed([f'`{name}`' for name in extra])}, which the code does not have.",
            "Take it out, or add it to the code.",
        )
    if lacking:
        yield at(
            form,
            f"The code has the {kind} {listed([f'`{name}`' for name in lacking])}, which the form does not list.",
            "List it in the form.",
        )


def _types(rulebook: Rulebook, form: CalculatorForm, inputs: dict[str, type]) -> Iterator[Problem]:
    """Inputs whose type in the code does not fit the fact."""
    for one in form.inputs:
        fact, has = rulebook.facts.get(one.fact), inputs.get(one.fact)
        if fact is None or has is None:
            continue
        wanted = Maybe if one.optional else TYPES.get(fact.kind)
        if has is not wanted:
            sentence = f"The input `{one.fact}` is {'optional' if one.optional else fact.kind} in the form and {has.__name__} in the code."
            yield at(
                form, sentence, f"It should be {wanted.__name__} in the code." if wanted else "No calculator takes a text."
            )


CHECK = Check("calculators", "The form of a calculator and its code ask and give the same.", check)
