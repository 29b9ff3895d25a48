"""What keeps the code of a calculator from answering at all, told at its own line.

An author begins with the form and writes the code later, bit by bit. On the way it may lack records, or Python may
stop in the middle of it; that is a problem like any other, never a traceback.
"""

import re
import traceback
from collections.abc import Iterator
from dataclasses import is_dataclass
from importlib.util import find_spec
from inspect import signature
from types import ModuleType
from typing import get_type_hints

from generator.answers.encode import calculator_module, camel
from generator.checks.shape import at
from generator.problems import Problem
from generator.reading.tables import CalculatorForm

RECORDS = ("Inputs", "Values", "Result")
PLACE = re.compile(r" \([^()]*\.py[^()]*\)")  # where Python says that a fault is: the problem says it already


def code_path(calculator: str) -> str:
    """The file of a calculator's code, relative to the project's root."""
    return f"generator/calculators/{calculator}.py"


def code_faults(form: CalculatorForm) -> Iterator[Problem]:
    """Problems of a form's code: not there, not to be read, or without its records or its function."""
    path = code_path(form.id)
    if find_spec(f"generator.calculators.{form.id}") is None:
        step = f"Write {path} with its records, or correct the name of this file."
        yield at(form, f"The calculator `{form.id}` has no code.", step)
        return
    try:
        module = calculator_module(form.id)
        lacking = list(_lacking(form, module))
        if not lacking:
            get_type_hints(getattr(module, f"{camel(form.id)}Inputs"))
    except Exception as fault:  # noqa: BLE001  (whatever a half-written module does)
        yield Problem(path, line_of(fault, form.id), f"Python stops here: {words_of(fault)}.", "Mend the line.")
        return
    yield from (Problem(path, 1, sentence, step) for sentence, step in lacking)


def line_of(fault: Exception, calculator: str) -> int:
    """The last line of the calculator's code that Python was at, or 0."""
    if isinstance(fault, SyntaxError):
        return fault.lineno or 0
    frames = traceback.extract_tb(fault.__traceback__)
    lines = [frame.lineno for frame in frames if frame.filename.endswith(f"/calculators/{calculator}.py")]
    return (lines[-1] if lines else 0) or 0


def words_of(fault: Exception) -> str:
    """What Python says of a fault, without the place and without a full stop."""
    said = fault.msg if isinstance(fault, SyntaxError) else str(fault)
    return PLACE.sub("", said).strip().rstrip(".") or type(fault).__name__


def _lacking(form: CalculatorForm, module: ModuleType) -> Iterator[tuple[str, str]]:
    """What the code must have and has not: sentence and next step."""
    for record in (f"{camel(form.id)}{suffix}" for suffix in RECORDS):
        if not is_dataclass(getattr(module, record, None)):
            yield f"The code has no record `{record}`.", "Write it as a class under `@dataclass(frozen=True)`."
    function = getattr(module, form.id, None)
    if not callable(function) or len(signature(function).parameters) != len(("inputs", "values")):
        sentence = f"The code has no function `{form.id}` of two arguments."
        yield sentence, f"Write `def {form.id}(inputs: {camel(form.id)}Inputs, values: {camel(form.id)}Values)`."
