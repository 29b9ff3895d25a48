"""The border: what an author or a JSON file writes becomes a number, and back; what does not fit is told in plain words."""

from datetime import date

import pytest

from generator.answers.border import BadValue, from_number, to_number, to_text
from generator.answers.specs import fact_spec
from tests import made_tables as made

BOOK = made.rulebook({}, {})
SPECS = {kind: fact_spec(BOOK, made.fact("alpha", kind, 3)) for kind in made.KINDS}


@pytest.mark.parametrize(
    ("kind", "raw", "number"),
    [
        ("number", 2, 2.0),
        ("number", 2.5, 2.5),
        ("number", "2.5", 2.5),
        ("number", "-1e-3", -0.001),
        ("whole", 3, 3.0),
        ("choice", "alpha_2", 2.0),
        ("yes_no", True, 1.0),
        ("yes_no", "no", 0.0),
        ("date", "1970-01-01", 0.0),
        ("date", "2026-02-28", 20512.0),
        ("date", date(2026, 2, 28), 20512.0),
    ],
)
def test_values_that_fit(kind, raw, number):
    """Numbers, choices by id, yes and no, ISO dates."""
    assert to_number(SPECS[kind], raw) == number


@pytest.mark.parametrize(
    ("kind", "raw", "fault"),
    [
        ("number", "two", "`two` is not a number, allowed is a number such as 2.5"),
        ("number", "1_000", "`1_000` is not a number, allowed is a number such as 2.5"),
        ("number", "", "nothing is not a number, allowed is a number such as 2.5"),
        ("number", True, "`true` is not a number, allowed is a number such as 2.5"),
        ("number", None, "`null` is not a number, allowed is a number such as 2.5"),
        ("number", float("nan"), "`NaN` is not a number, allowed is a number such as 2.5"),
        ("number", float("inf"), "the number is too large, allowed is a number such as 2.5"),
        ("number", {"a": "b"}, "a mapping is not a number, allowed is a number such as 2.5"),
        ("number", 10**400, "the number is too large, allowed is a number such as 2.5"),
        (
            "choice",
            "alpa_2",
            "`alpa_2` is not one of its choices, allowed are alpha_0, alpha_1, alpha_2 (did you mean alpha_2?)",
        ),
        ("choice", 2, "`2` is not one of its choices, allowed are alpha_0, alpha_1, alpha_2"),
        ("choice", ["alpha_1"], "a list is not one of its choices, allowed are alpha_0, alpha_1, alpha_2"),
        ("yes_no", "maybe", "`maybe` is neither yes nor no, allowed are yes and no"),
        ("yes_no", 1, "`1` is neither yes nor no, allowed are yes and no"),
        ("date", "28.2.2026", "`28.2.2026` is not a date, allowed is a date such as 2026-03-01"),
        ("date", "2026-02-29", "`2026-02-29` is not a date, allowed is a date such as 2026-03-01"),
    ],
)
def test_values_that_do_not_fit(kind, raw, fault):
    """What is wrong and what is allowed, in the words of the file and never in those of Python."""
    with pytest.raises(BadValue) as caught:
        to_number(SPECS[kind], raw)
    assert str(caught.value) == fault


@pytest.mark.parametrize(
    ("kind", "raw"), [("number", 2.5), ("whole", 3), ("choice", "alpha_1"), ("yes_no", "yes"), ("date", "2024-02-29")]
)
def test_there_and_back(kind, raw):
    """What comes back is what was written."""
    assert from_number(SPECS[kind], to_number(SPECS[kind], raw)) == raw


def test_text_is_text():
    """A block's name is kept as typed; a number or an empty line is not a name."""
    assert to_text("Upper block") == "Upper block"
    with pytest.raises(BadValue, match="`7` is not text"):
        to_text(7)
    with pytest.raises(BadValue):
        to_text("  ")
