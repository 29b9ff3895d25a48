"""Text typed by a person becomes the number that was meant, or a question; never another number."""

import json

import pytest


@pytest.fixture
def read(core):
    """read(text): what the page makes of a typed number."""
    return lambda text: json.loads(core(f"JSON.stringify(Guide.page.numbers.read({json.dumps(text)}))"))


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("2.4", 2.4),
        ("2,4", 2.4),
        ("1,5", 1.5),
        ("15", 15),
        (" 15 ", 15),
        ("0,500", 0.5),
        (",5", 0.5),
        ("-3", -3),
        ("\u22123,5", -3.5),
        ("+2", 2),
        ("10 000", 10000),
        ("10\u202f000,5", 10000.5),
        ("1,234.5", 1234.5),
        ("1.234,5", 1234.5),
        ("1,234,567", 1234567),
        ("1.5000", 1.5),
        ("007", 7),
        ("-0", 0),
    ],
)
def test_a_number_is_read_as_it_was_meant(read, text, number):
    """Decimal comma and point both count; groups of three may be set apart."""
    assert read(text) == {"ok": True, "number": number, "why": "", "readings": []}


@pytest.mark.parametrize(
    ("text", "readings"),
    [("1,500", ["1500", "1.5000"]), ("1.500", ["1500", "1.5000"]), ("-2,125", ["-2125", "-2.1250"])],
)
def test_what_can_be_read_in_two_ways_is_asked(read, text, readings):
    """One thousand five hundred, or one and a half: the page asks, and both offers are plain."""
    found = read(text)
    assert (found["why"], found["readings"]) == ("two readings", readings)
    assert [read(one)["ok"] for one in readings] == [True, True]


@pytest.mark.parametrize("text", ["abc", "1e3", "0x10", "1_000", "nan", "Infinity", "1,2,3", "5.", "1 5", "10 00", "2.4 m", "--1", "1..2"])
def test_what_is_no_number_is_refused(read, text):
    """Nothing but digits in one of the known patterns counts."""
    assert read(text)["why"] == "no number"


@pytest.mark.parametrize("text", ["", "   "])
def test_nothing_is_not_zero(read, text):
    """An empty field has no answer."""
    assert read(text)["why"] == "empty"


def test_a_number_put_in_a_field_is_read_back_the_same(read, core):
    """Also where its digits could be read in two ways."""
    numbers = [0.1, 1.5, 2.375, 125.125, 1500, 0.001, -2.125, 12345.678, 1e-7]
    texts = [core(f"Guide.page.numbers.write({number!r})") for number in numbers[:-1]]
    assert [read(text)["number"] for text in texts] == numbers[:-1]


@pytest.mark.parametrize(("text", "days"), [("1970-01-01", 0), ("2026-11-25", 20782), ("2024-02-29", 19782), ("1969-12-31", -1)])
def test_a_date_is_counted_in_days(core, text, days):
    """ISO dates only, reckoned without the browser's own parser."""
    assert core(f"Guide.page.numbers.days('{text}')") == days


@pytest.mark.parametrize("text", ["2026-02-29", "2026-13-01", "25.11.2026", "2026-1-1", ""])
def test_a_date_that_is_none_is_refused(core, text):
    """A day that the calendar does not have is not moved to another."""
    assert core(f"isNaN(Guide.page.numbers.days('{text}'))") is True
