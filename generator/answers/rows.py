"""The rows that a calculator takes: a list of records, one whole number in each column, from JSON or from a CSV file.

The columns stand in the calculator's form; its code has the record and `row_faults`, which says what is wrong between the columns.
"""

from collections.abc import Iterator
from dataclasses import replace
from typing import Any, get_args, get_type_hints

from generator.answers.border import BadValue, to_number, written
from generator.answers.catalogue import catalogue
from generator.answers.encode import calculator_class, calculator_module
from generator.answers.specs import column_specs
from generator.calculators.guard import faults_of
from generator.calculators.specs import FactSpec
from generator.calculators.wording import Catalogue, worded
from generator.reading.near import nearest
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm

ROWS = "rows"


class Reader:
    """Turns plain rows, column by name, into the records of one calculator. A column that is left out or null counts 0, unless no row may
    leave it out."""

    def __init__(self, rulebook: Rulebook, form: CalculatorForm) -> None:
        self.specs = {spec.id: spec for spec in column_specs(form)}
        self._form = form
        self._record = record_of(form)
        self._words: Catalogue = catalogue(rulebook)
        self._words = replace(self._words, facts=[*self._words.facts, *self.specs.values()])

    def unknown(self, name: Any) -> str:
        """The fault of a column that there is not, with the nearest that there is."""
        near = nearest(str(name), [*self.specs])
        return f"{written(name)} is no column, {f'did you mean {near}?' if near else 'allowed are ' + ', '.join(self.specs) + '.'}"

    def record(self, row: dict[str, Any]) -> tuple[Any, list[str]]:
        """The record of one row, or None with what is wrong: `column: what is wrong, what is allowed`."""
        wrong = [self.unknown(name) for name in row if name not in self.specs]
        numbers: dict[str, int] = {}
        for spec in self.specs.values():
            fault = self._take(spec, row.get(spec.id), numbers)
            wrong += [f"{spec.id}: {fault}"] if fault else []
        if wrong:
            return None, wrong
        record = self._record(**numbers)
        says = calculator_module(self._form.id).row_faults(record)
        return (None, [worded(self._words, one, "si") for one in says]) if says else (record, [])

    def _take(self, spec: FactSpec, raw: Any, numbers: dict[str, int]) -> str:
        """Puts one number where it belongs, or says what is wrong with it."""
        if raw is None or raw == "":
            if not spec.default.ok:
                return "is missing, every row needs it"
            raw = spec.default.number
        try:
            x = to_number(spec, raw)
        except BadValue as bad:
            return str(bad)
        faults = faults_of(spec, x)
        if faults:
            return worded(self._words, faults[0].says, "si")
        numbers[spec.id] = int(x)
        return ""


def read_rows(rulebook: Rulebook, form: CalculatorForm, inputs: dict[str, Any]) -> tuple[tuple[Any, ...], list[str]]:
    """The records of the rows among the inputs, and what is wrong with them, row by row from 1."""
    raw = inputs.get(ROWS)
    if raw is None:
        return (), [f"{ROWS}: is missing, this calculator needs a list of rows"]
    if not isinstance(raw, list) or not raw:
        return (), [f"{ROWS}: {written(raw)} will not do, allowed is a list of rows such as {_sample(form)}"]
    reader = Reader(rulebook, form)
    records, wrong = [], []
    for number, row in enumerate(raw, 1):
        if not isinstance(row, dict):
            wrong.append(f"{ROWS}: row {number}: {written(row)} is no row, allowed is {_sample(form)}")
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


def columns_described(form: CalculatorForm) -> list[dict]:
    """The columns as `compute --describe` prints them."""
    return [_described(one, form) for one in column_specs(form)]


def _described(spec: FactSpec, form: CalculatorForm) -> dict[str, Any]:
    """One column."""
    observe = next(one.observe for one in form.rows if one.id == spec.id)
    found = {"id": spec.id, "label": spec.label, "observe": observe, "type": spec.kind, "range": [int(spec.low), int(spec.high)]}
    return found | {"optional": spec.default.ok} | ({"default": 0} if spec.default.ok else {})


def _sample(form: CalculatorForm) -> str:
    """A row of this calculator, as JSON."""
    inner: Iterator[str] = (f'"{one.id}": {max(1, one.low)}' for one in form.rows[:3])
    return "{" + ", ".join(inner) + "}"

