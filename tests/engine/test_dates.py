"""Days become dates exactly, as the standard library has them."""

from datetime import date, timedelta

import pytest

from generator.calculators.dates import civil

EPOCH = date(1970, 1, 1)


def test_every_day_of_four_centuries_is_the_library_s(told):
    """1900-01-01 to 2300-01-01 holds every kind of leap year."""
    first = (date(1900, 1, 1) - EPOCH).days
    for days in range(first, first + 146_097):
        day = EPOCH + timedelta(days=days)
        found = civil(days)
        assert (found.year, found.month, found.day) == (day.year, day.month, day.day)
    told(146_097, "days, dated as the standard library dates them")


def test_the_first_day_that_holds():
    """0000-03-01 is day -719 468; the day before is refused."""
    first = civil(-719_468)
    assert (first.year, first.month, first.day) == (0, 3, 1)
    with pytest.raises(ValueError, match="too early"):
        civil(-719_469)
