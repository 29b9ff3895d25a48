"""The words of cells: what each says of the number line, and what is told of those that cannot be read."""

import pytest

from generator.reading.cells import FAR, BadCell, Column, day_number, parse_cell
from generator.reading.tables import Span

NUMBER = Column("number", (), 0.0, 10.0)
CHOICE = Column("choice", ("cool", "warm", "hot"))
DATE = Column("date")


@pytest.mark.parametrize(
    ("words", "span"),
    [
        ("under 3", Span(-FAR, False, 3.0, False)),
        ("up to 3", Span(-FAR, False, 3.0, True)),
        ("over 3", Span(3.0, False, FAR, False)),
        ("3 or more", Span(3.0, True, FAR, False)),
        ("3 to 5", Span(3.0, True, 5.0, True)),
        ("3 to under 5", Span(3.0, True, 5.0, False)),
        ("over 3 to 5", Span(3.0, False, 5.0, True)),
        ("over 3 to under 5.5", Span(3.0, False, 5.5, False)),
        ("3", Span(3.0, True, 3.0, True)),
        ("  3   to 5 ", Span(3.0, True, 5.0, True)),
    ],
)
def test_numbers(words: str, span: Span) -> None:
    """Each way of writing a stretch of numbers says which ends belong to it."""
    assert parse_cell(NUMBER, words) == (span,)


@pytest.mark.parametrize(
    ("words", "kept"),
    [("cool", [0]), ("warm or hot", [1, 2]), ("hot or cool", [0, 2]), ("not warm", [0, 2]), ("not warm or hot", [0])],
)
def test_choices(words: str, kept: list[int]) -> None:
    """Choices stand for their places in the list, ascending however they are named."""
    assert parse_cell(CHOICE, words) == tuple(Span(float(place), True, float(place), True) for place in kept)


def test_yes_is_one_and_no_is_nought() -> None:
    """Yes or no is a choice of no, yes."""
    column = Column("yes_no")
    assert [parse_cell(column, word)[0].low for word in ("no", "yes")] == [0.0, 1.0]


def test_days_count_from_1970() -> None:
    """Day numbers agree on both sides of the border: 1970-01-01 is 0, a leap day counts."""
    assert [day_number(day) for day in ("1970-01-01", "1969-12-31", "2024-03-01")] == [0.0, -1.0, 19783.0]


@pytest.mark.parametrize(
    ("words", "span"),
    [
        ("before 1970-01-03", Span(-FAR, False, 2.0, False)),
        ("from 1970-01-03", Span(2.0, True, FAR, False)),
        ("1970-01-02 to 1970-01-03", Span(1.0, True, 2.0, True)),
    ],
)
def test_dates(words: str, span: Span) -> None:
    """Dates are whole days; both days of a stretch belong to it."""
    assert parse_cell(DATE, words) == (span,)


@pytest.mark.parametrize("column", [NUMBER, CHOICE, DATE, Column("yes_no")])
def test_any_restricts_nothing(column: Column) -> None:
    """`any` is the same as leaving the fact out."""
    assert parse_cell(column, "any") == ()


@pytest.mark.parametrize(
    ("words", "write"),
    [
        ("< 3", "`under 3`"),
        ("<= 3", "`up to 3`"),
        ("≥3", "`3 or more`"),
        (">3", "`over 3`"),
        ("3+", "`3 or more`"),
        ("3 or less", "`up to 3`"),
        ("at most 3", "`up to 3`"),
        ("more than 3", "`over 3`"),
        ("between 3 and 5", "`3 to 5`"),
        ("3–5", "`3 to 5`"),
        ("under 3 m", "`under 3`"),
        ("under 2,5", "`under 2.5`"),
        ("= 3", "`3`"),
    ],
)
def test_other_ways_of_writing_get_the_right_one(words: str, write: str) -> None:
    """Signs, other words, units and decimal commas are answered with the cell to write."""
    with pytest.raises(BadCell) as bad:
        parse_cell(NUMBER, words)
    assert write in bad.value.next_step


@pytest.mark.parametrize("words", ["5 to 3", "3 to under 3", "over 3 to 3", "11", "under 0", "over 10", "-1 or more"])
def test_cells_that_fit_nothing_are_refused(words: str) -> None:
    """Upside down, empty, or outside the range of the fact."""
    with pytest.raises(BadCell):
        parse_cell(NUMBER, words)


@pytest.mark.parametrize("words", ["up to 0", "10 or more", "0 to 10"])
def test_the_ends_of_the_range_are_inside(words: str) -> None:
    """A range includes both its ends."""
    assert parse_cell(NUMBER, words)
