"""A calculator whose code is not there yet, or is half written, is a problem with file, line and next step."""

import shutil
import sys
from pathlib import Path

import pytest

import generator.calculators
from generator.checks import calculator_examples, calculators
from generator.reading.read import read_rulebook
from generator.reading.scaffold import new_item
from tests.checks.test_manual_pages import SMALL

CODE = "generator/calculators/bud_count.py"
RECORDS = """from dataclasses import dataclass
from generator.calculators.say import Say

@dataclass(frozen=True)
class BudCountInputs:
    area_ha: float

@dataclass(frozen=True)
class BudCountValues:
    pass

@dataclass(frozen=True)
class BudCountResult:
    result: float
    headline: Say

"""
FUNCTION = "def bud_count(inputs: BudCountInputs, values: BudCountValues) -> BudCountResult:\n    return {}\n"


@pytest.fixture
def problems_with(tmp_path: Path, monkeypatch):
    """problems_with(code): what the two checks of calculators say of a starter with this code; None: with no code at all."""
    rules = shutil.copytree(SMALL, tmp_path / "rules")
    new_item(rules, "calculator", "bud_count")
    folder = tmp_path / "calculators"
    folder.mkdir()
    monkeypatch.setattr(generator.calculators, "__path__", [*generator.calculators.__path__, str(folder)])

    def found(code: str | None) -> list[str]:
        if code is not None:
            (folder / "bud_count.py").write_text(code)
        book, faults = read_rulebook(rules)
        assert faults == []
        return [str(problem) for problem in list(calculators.check(book)) or list(calculator_examples.check(book))]

    yield found
    sys.modules.pop("generator.calculators.bud_count", None)


def test_a_form_without_code_is_told_at_the_form(problems_with):
    """It is the next thing to write."""
    problems = problems_with(None)
    assert problems[0].splitlines() == [
        "rules/calculators/bud_count.yml:2: The calculator `bud_count` has no code.",
        f"    Write {CODE} with its records, or correct the name of this file.",
    ]


@pytest.mark.parametrize(
    ("code", "sentence"),
    [
        ("\ndef bud_count(:\n", f"{CODE}:2: Python stops here: invalid syntax."),
        ("\n\nX = nothing\n", f"{CODE}:3: Python stops here: name 'nothing' is not defined."),
        (
            "from generator.calculators.say import Said\n",
            f"{CODE}:1: Python stops here: cannot import name 'Said' from 'generator.calculators.say'.",
        ),
        (RECORDS, f"{CODE}:1: The code has no function `bud_count` of two arguments."),
        (RECORDS + "def bud_count(inputs):\n    return 1\n", f"{CODE}:1: The code has no function `bud_count` of two arguments."),
        (
            RECORDS.replace("BudCountValues", "BudValues") + FUNCTION,
            f"{CODE}:17: Python stops here: name 'BudCountValues' is not defined.",
        ),
        ("class BudCountInputs: pass\n", f"{CODE}:1: The code has no record `BudCountInputs`."),
    ],
)
def test_half_written_code_is_told_at_its_line(problems_with, code, sentence):
    """The first problem names the line of the code that Python does not get past."""
    assert problems_with(code)[0].splitlines()[0] == sentence


@pytest.mark.parametrize(
    ("result", "said"),
    [
        ("BudCountResult(1.0 / 0.0, Say('a.b', [], []))", f"Python stops in {CODE}:18: float division by zero."),
        ("BudCountResult(buds, Say('a.b', [], []))", f"Python stops in {CODE}:18: name 'buds' is not defined."),
        ("None", f"Python stops in {CODE}: 'NoneType' object has no attribute 'result'."),
    ],
)
def test_sums_that_stop_are_told_at_their_worked_example(problems_with, result, said):
    """With the line of the code that they stop at."""
    problems = problems_with(RECORDS + FUNCTION.format(result))
    assert problems[0].splitlines()[0].endswith(f": Worked example “Say here as a sentence what this shows”: {said}")


NODES = """label: Buds at node {node}
ask: How many buds are at node {node}?
observe: Count.
kind: number
unit: ha
range: [0, 4]
step: 0.01
lifetime: winter
code: J
by_node: 3
stage: assess
"""


def test_a_fact_by_node_is_a_list_in_the_code(problems_with, tmp_path):
    """The form names it once; a plain number in the code is told with the type that belongs there."""
    rules = tmp_path / "rules"
    (rules / "facts" / "buds_node.yml").write_text(NODES)
    form = rules / "calculators" / "bud_count.yml"
    form.write_text(form.read_text().replace("  - area_ha ", "  - buds_node "))
    problems = problems_with(RECORDS.replace("area_ha: float", "buds_node: float") + FUNCTION)
    assert problems[0].splitlines() == [
        "rules/calculators/bud_count.yml:2: The input `buds_node` is asked by node in the form and float in the code.",
        "    It should be list[Maybe] in the code.",
    ]
