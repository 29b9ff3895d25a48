"""The rows that a calculator takes: a list of records from JSON or from a CSV file; in each column a whole number, or a fact asked of each row.

The columns stand in the calculator's form; its code has the record and `row_faults`, which says what is wrong between the columns. What
may be left out is `Maybe` there, unless it counts 0 or the fact has a default.
"""

import json
from dataclasses import replace
from typing import Any, get_args, get_type_hints

from generator.answers.border import UNKNOWN_WORD, BadValue, from_number, to_number, written
from generator.answers.catalogue import catalogue
from generator.answers.encode import calculator_class, calculator_module
from generator.answers.specs import column_specs
from generator.calculators.facts import Maybe
from generator.calculators.guard import faults_of
from generator.calculators.specs import FactSpec
from generator.calculators.wording import Catalogue, worded
from generator.reading.near import nearest
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm

ROWS = "rows"


class Reader:
    """Turns plain rows, column by name, into the records of one calculator. A column that is left out or null counts 0, or as the fact
    assumes, or is not known, unless no row may leave it out."""

    def __init__(self, rulebook: Rulebook, form: CalculatorForm) -> None:
        self.specs = {spec.id: spec for spec in column_specs(rulebook, form)}
        self._form = form
        self._record = record_of(form)
        self._types = get_type_hints(self._record)
        self._words: Catalogue = catalogue(rulebook)
        self._words = replace(self._words, facts=[*self._words.facts, *(spec for spec in self.specs.values() if spec.word.startswith("column."))])

    def needed(self) -> list[str]:
        """The columns that no row may leave out."""
        return [name for name, spec in self.specs.items() if not spec.default.ok and self._types[name] is not Maybe]

    def unknown(self, name: Any) -> str:
        """The fault of a column that there is not, with the nearest that there is."""
        near = nearest(str(name), [*self.specs])
        return f"{written(name)} is no column, {f'did you mean {near}?' if near else 'allowed are ' + ', '.join(self.specs) + '.'}"

    def record(self, row: dict[str, Any]) -> tuple[Any, list[str]]:
        """The record of one row, or None with what is wrong: `column: what is wrong, what is allowed`."""
        wrong = [self.unknown(name) for name in row if name not in self.specs]
        found: dict[str, Any] = {}
        for spec in self.specs.values():
            fault = self._take(spec, row.get(spec.id), found)
            wrong += [f"{spec.id}: {fault}"] if fault else []
        if wrong:
            return None, wrong
        record = self._record(**found)
        says = calculator_module(self._form.id).row_faults(record)
        return (None, [worded(self._words, one, "si") for one in says]) if says else (record, [])

    def _take(self, spec: FactSpec, raw: Any, found: dict[str, Any]) -> str:
        """Puts one number where it belongs, or says what is wrong with it."""
        wanted = self._types[spec.id]
        if wanted is Maybe and raw in (None, "", UNKNOWN_WORD):
            found[spec.id] = Maybe(False, 0.0)
            return ""
        if raw is None or raw == "":
            if not spec.default.ok:
                return "is missing, every row needs it"
            found[spec.id] = wanted(spec.default.number)
            return ""
        try:
            x = to_number(spec, raw)
        except BadValue as bad:
            return str(bad)
        faults = faults_of(spec, x)
        if faults:
            return worded(self._words, faults[0].says, "si")
        found[spec.id] = Maybe(True, x) if wanted is Maybe else wanted(x)
        return ""


def read_rows(rulebook: Rulebook, form: CalculatorForm, inputs: dict[str, Any]) -> tuple[tuple[Any, ...], list[str]]:
    """The records of the rows among the inputs, and what is wrong with them, row by row from 1."""
    raw = inputs.get(ROWS)
    if raw is None:
        return (), [f"{ROWS}: is missing, this calculator needs a list of rows"]
    if not isinstance(raw, list) or not raw:
        return (), [f"{ROWS}: {written(raw)} will not do, allowed is a list of rows such as {_sample(rulebook, form)}"]
    reader = Reader(rulebook, form)
    records, wrong = [], []
    for number, row in enumerate(raw, 1):
        if not isinstance(row, dict):
            wrong.append(f"{ROWS}: row {number}: {written(row)} is no row, allowed is {_sample(rulebook, form)}")
            continue
        record, faults = reader.record(row)
        records.append(record)
        wrong += [f"{ROWS}: row {number}: {fault}" for fault in faults]
    return tuple(records), wrong


def without_rows(form: CalculatorForm, inputs: dict[str, Any]) -> dict[str, Any]:
    """The inputs that are facts."""
    return {name: raw for name, raw in inputs.items() if not form.rows or name != ROWS}


def record_of(form: CalculatorForm) -> Any:
    """The record that the code of a calculator has for a row."""
    return get_args(get_type_hints(calculator_class(form.id, "Inputs"))[ROWS])[0]


def columns_described(rulebook: Rulebook, form: CalculatorForm) -> list[dict]:
    """The columns as `compute --describe` prints them."""
    types = get_type_hints(record_of(form))
    return [_described(rulebook, spec, types[spec.id] is Maybe, form) for spec in column_specs(rulebook, form)]


def _described(rulebook: Rulebook, spec: FactSpec, optional: bool, form: CalculatorForm) -> dict[str, Any]:
    """One column."""
    found: dict[str, Any] = {"id": spec.id, "label": spec.label, "observe": observed(rulebook, form, spec.id), "type": spec.kind}
    found |= {"choices": spec.choices} if spec.choices else {"range": [from_number(spec, end) for end in (spec.low, spec.high)]}
    found |= {"unit": spec.unit} if spec.kind == "number" else {}
    default = {"default": from_number(spec, spec.default.number)} if spec.default.ok and not optional else {}
    return found | {"optional": optional or spec.default.ok} | default


def observed(rulebook: Rulebook, form: CalculatorForm, column: str) -> str:
    """How to find out what stands in a column."""
    one = next(one for one in form.rows if one.id == column)
    return rulebook.facts[column].observe if one.fact else one.observe


def _sample(rulebook: Rulebook, form: CalculatorForm) -> str:
    """A row of this calculator, as JSON."""
    return json.dumps({spec.id: from_number(spec, max(1.0, spec.low)) for spec in column_specs(rulebook, form)[:3]})
