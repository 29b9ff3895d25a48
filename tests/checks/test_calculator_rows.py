"""The columns of a form and the record of its code are the same, told where they are not."""

from dataclasses import dataclass, replace

import pytest

from generator.calculators import bud_fruitfulness, cane_choice
from generator.checks import calculators

NAME = "bud_fruitfulness"


@pytest.fixture
def problems_with(rulebook):
    """problems_with(rows): what the check says of the tally's form with these columns."""

    def found(rows):
        book = replace(rulebook, calculators={NAME: replace(rulebook.calculators[NAME], rows=tuple(rows))})
        return [problem.sentence for problem in calculators.check(book)]

    return found


def test_the_same_columns_are_no_problem(rulebook, problems_with):
    """The form as it is."""
    assert problems_with(rulebook.calculators[NAME].rows) == []


def test_a_column_that_only_one_side_has_is_told(rulebook, problems_with):
    """Taken away, or named otherwise."""
    rows = rulebook.calculators[NAME].rows
    assert problems_with(rows[:-1]) == ["The code has the column `unreadable`, which the form does not list."]
    told = problems_with([*rows[:-1], replace(rows[-1], id="lost")])
    assert told[0] == "The form has the column `lost`, which the code does not have."


def test_rows_that_the_form_does_not_name_are_told(problems_with):
    """Without columns nobody could enter a row."""
    assert problems_with([]) == ["The code has the input `rows`, which the form does not list."]


@dataclass(frozen=True)
class OneNumber:
    """Inputs whose rows are a number."""

    rows: int


def test_rows_that_are_no_records_are_told(rulebook, problems_with, monkeypatch):
    """Before anything tries to read one."""
    monkeypatch.setattr(bud_fruitfulness, "BudFruitfulnessInputs", OneNumber)
    told = problems_with(rulebook.calculators[NAME].rows)
    assert "The form names columns, and the input `rows` is no list of records in the code." in told


def test_a_calculator_that_judges_no_row_is_told(rulebook, problems_with, monkeypatch):
    """Rows that cannot be must not reach the sums."""
    monkeypatch.delattr(bud_fruitfulness, "row_faults")
    assert problems_with(rulebook.calculators[NAME].rows) == ["The code has no function `row_faults`."]


@dataclass(frozen=True)
class WholeCane:
    """A cane whose thickness is a whole number."""

    cane_diameter_mm: int


@dataclass(frozen=True)
class WholeCanes:
    """Inputs of such canes."""

    rows: list[WholeCane]


def test_a_column_of_another_type_than_its_fact_is_told(rulebook, monkeypatch):
    """A number stays a number, or may be left out."""
    monkeypatch.setattr(cane_choice, "CaneChoiceInputs", WholeCanes)
    form = rulebook.calculators["cane_choice"]
    book = replace(rulebook, calculators={form.id: replace(form, rows=form.rows[:1])})
    told = [problem.sentence for problem in calculators.check(book)]
    assert "The column `cane_diameter_mm` is number in the form and int in the code." in told
