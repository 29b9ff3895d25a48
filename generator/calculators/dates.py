"""Dates are whole days since 1970-01-01; here they become year, month and day (Gregorian calendar, exact integers).

The calendar repeats every 400 years of 146 097 days; years are reckoned from March, so that the leap day comes last and
months follow the pattern of 153 days in five months. Holds for days from -719 468 (0000-03-01) on.
"""

from dataclasses import dataclass

FROM_MARCH_0000: int = 719468
DAYS_IN_ERA: int = 146097
YEARS_IN_ERA: int = 400
DAYS_IN_CENTURY: int = 36524
DAYS_IN_FOUR_YEARS: int = 1460
DAYS_IN_YEAR: int = 365
DAYS_IN_FIVE_MONTHS: int = 153
FIVE: int = 5
FOUR: int = 4
MARCH: int = 3
MONTHS_TO_YEAR_END: int = 10
TWELVE: int = 12


@dataclass(frozen=True)
class Civil:
    """A date of the calendar: month from 1 to 12, day from 1."""

    year: int
    month: int
    day: int


def civil(days: int) -> Civil:
    """The date of a day number. Raises ValueError before 0000-03-01."""
    if days < -FROM_MARCH_0000:
        raise ValueError("the date is too early")
    since = days + FROM_MARCH_0000
    era = since // DAYS_IN_ERA
    in_era = since - era * DAYS_IN_ERA
    leap_days = in_era // DAYS_IN_FOUR_YEARS - in_era // DAYS_IN_CENTURY + in_era // (DAYS_IN_ERA - 1)
    year_of_era = (in_era - leap_days) // DAYS_IN_YEAR
    in_year = in_era - (DAYS_IN_YEAR * year_of_era + year_of_era // FOUR - year_of_era // 100)
    from_march = (FIVE * in_year + 2) // DAYS_IN_FIVE_MONTHS
    day = in_year - (DAYS_IN_FIVE_MONTHS * from_march + 2) // FIVE + 1
    month = from_march + MARCH if from_march < MONTHS_TO_YEAR_END else from_march + MARCH - TWELVE
    year = year_of_era + era * YEARS_IN_ERA
    return Civil(year + 1 if month <= 2 else year, month, day)
