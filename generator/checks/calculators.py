"""The form of a calculator and its code ask and give the same.

A form in rules/calculators/ lists inputs, values and outputs for the page; the module of the same name in
generator/calculators/ has the records `<Name>Inputs`, `<Name>Values` and `<Name>Result`. An input may be left out in
both or in neither (`optional: true` there, `Maybe` here); a number is a float, a whole number or a choice an int, yes
or no a bool; a fact that is asked by node is listed once and is a `list[Maybe]`, node 1 first; `rows:` lists
the columns of a record, facts or its own, and the code takes `rows: list[ThatRecord]`; `used_in:` names calculators that ask the facts
it gives; with `tables:` the record of values has `tables: list[Table]`. In the example, the code takes the area as one that may be left out.

Wrong:

    # calculators/vine_density.yml
    title: Vines per hectare
    question: How many vines stand on a hectare?
    why: Every figure of the plan is for one vine.
    stage: assess
    inputs: [row_spacing_m, vine_spacing_m, area_ha, missing_vines_pct]
    outputs:
      - {id: vines_per_ha, label: Vines on a hectare, unit: per_ha, digits: 1}
    examples:
      - {name: Wide rows, inputs: {row_spacing_m: 3, vine_spacing_m: 1, missing_vines_pct: 0}, expect: {vines_per_ha: 3333.3}}

Right:

    # calculators/vine_density.yml
    title: Vines per hectare
    question: How many vines stand on a hectare?
    why: Every figure of the plan is for one vine.
    stage: assess
    inputs: [row_spacing_m, vine_spacing_m, {fact: area_ha, optional: true}, missing_vines_pct]
    outputs:
      - {id: vines_per_ha, label: Vines on a hectare, unit: per_ha, digits: 1}
    examples:
      - {name: Wide rows, inputs: {row_spacing_m: 3, vine_spacing_m: 1, missing_vines_pct: 0}, expect: {vines_per_ha: 3333.3}}
"""

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from typing import Any, get_args, get_origin, get_type_hints

from generator.answers.encode import TABLES, asks_tables, calculator_class, calculator_module, value_ids
from generator.answers.rows import ROWS, record_of
from generator.answers.specs import column_specs
from generator.calculators.facts import Maybe
from generator.checks.calculator_code import code_faults
from generator.checks.shape import Check, at, listed
from generator.problems import Problem
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Input

TYPES = {"number": float, "date": float, "whole": int, "choice": int, "yes_no": bool}


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each difference between a form and its code, and for each form whose code cannot answer."""
    for form in rulebook.calculators.values():
        faults = list(code_faults(form))
        if faults:
            yield from faults
            continue
        inputs = get_type_hints(calculator_class(form.id, "Inputs"))
        values = value_ids(form.id)
        results = [field.name for field in fields(calculator_class(form.id, "Result"))]
        yield from _differences(form, "input", [*_fields(form), *([ROWS] if form.rows else [])], list(inputs))
        yield from _differences(form, "value", list(form.values), values)
        yield from _differences(form, "list of", [TABLES] if form.tables else [], [TABLES] if asks_tables(form.id) else [])
        yield from _differences(form, "output", [output.id for output in form.outputs], results, all_of_code=False)
        yield from _types(rulebook, form, inputs)
        if form.rows and ROWS in inputs:
            yield from _rows(rulebook, form, inputs[ROWS])
        yield from _used_in(rulebook, form)
        yield from _needs(form)


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


def _types(rulebook: Rulebook, form: CalculatorForm, inputs: dict[str, Any]) -> Iterator[Problem]:
    """Inputs whose type in the code does not fit the fact."""
    for name, one in _fields(form).items():
        fact, has = rulebook.facts.get(one.fact), inputs.get(name)
        if fact is None or has is None:
            continue
        wanted = list[Maybe] if one.series else Maybe if one.optional else TYPES.get(fact.kind)
        if has != wanted:
            in_form = "asked by node" if one.series else "optional" if one.optional else fact.kind
            yield at(form, f"The input `{name}` is {in_form} in the form and {type_words(has)} in the code.", _mend(name, has, wanted))


def _rows(rulebook: Rulebook, form: CalculatorForm, has: Any) -> Iterator[Problem]:
    """What the columns of the form and the record of the code do not have in common."""
    if get_origin(has) is not list or not is_dataclass(get_args(has)[0]):
        yield at(form, "The form names columns, and the input `rows` is no list of records in the code.", "Write `rows: list[SomeRecord]`.")
        return
    types = get_type_hints(record_of(form))
    yield from _differences(form, "column", [one.id for one in form.rows], list(types))
    for spec in column_specs(rulebook, form):
        wanted, column = TYPES[spec.kind], types.get(spec.id)
        if column not in (None, wanted, Maybe):
            yield at(form, f"The column `{spec.id}` is {spec.kind} in the form and {type_words(column)} in the code.", f"It should be {wanted.__name__} or Maybe in the code.")
    if not callable(getattr(calculator_module(form.id), "row_faults", None)):
        step = "Write `def row_faults(row: SomeRecord) -> list[Say]`, which gives [] for a row that can be."
        yield at(form, "The code has no function `row_faults`.", step)


def _used_in(rulebook: Rulebook, form: CalculatorForm) -> Iterator[Problem]:
    """Where its answer leads: a calculator that there is, facts that it asks, outputs of this form."""
    for use in form.used_in:
        taker = rulebook.calculators.get(use.calculator)
        if taker is None:
            yield at(form, f"Its answer leads to `{use.calculator}`, which is no calculator.", "Name one in rules/calculators/.")
            continue
        asked, given = {one.fact for one in taker.inputs}, {output.id for output in form.outputs}
        for fact in use.where:
            if fact not in rulebook.facts:
                yield at(form, f"The way to `{taker.id}` is shown where `{fact}` is known, which is no fact.", "Name one in rules/facts/.")
        for fact in use.anew:
            if fact not in asked:
                yield at(form, f"It lets `{taker.id}` ask `{fact}` anew, which is not asked there.", "Name a fact that is asked there.")
        for fact, output in use.gives.items():
            if fact not in asked:
                yield at(form, f"It gives `{fact}` to `{taker.id}`, which does not ask it.", "Name a fact that is asked there.")
            if output not in given:
                yield at(form, f"It gives `{output}` to `{taker.id}`, and no output has this name.", "Name an output of this form.")


def _needs(form: CalculatorForm) -> Iterator[Problem]:
    """An output can only need what the form asks."""
    for output in form.outputs:
        if output.needs and output.needs not in {one.fact for one in form.inputs}:
            yield at(form, f"The output `{output.id}` needs `{output.needs}`, which the form does not ask.", "Name one of its inputs.")


def _fields(form: CalculatorForm) -> dict[str, Input]:
    """The inputs as the form lists them, by name: those of a fact that is asked by node once, under its name."""
    found: dict[str, Input] = {}
    for one in form.inputs:
        found.setdefault(one.series or one.fact, one)
    return found


def type_words(has: Any) -> str:
    """A type as the code writes it; `float | None` is no class and has no name of its own."""
    return "list[Maybe]" if has == list[Maybe] else has.__name__ if isinstance(has, type) else str(has)


def _mend(fact: str, has: Any, wanted: Any) -> str:
    """The next step for an input whose type does not fit."""
    if wanted is None:
        return "No calculator takes a text."
    if has is Maybe and wanted != list[Maybe]:
        return f"Write `{{fact: {fact}, optional: true}}`, or make it {type_words(wanted)} in the code."
    return f"It should be {type_words(wanted)} in the code."


CHECK = Check("calculators", "The form of a calculator and its code ask and give the same.", check)
