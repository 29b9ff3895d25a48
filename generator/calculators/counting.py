"""Whole numbers of things that people count or cut."""

import math

# What is left of a whole number by rounding in floats lies far below the ninth digit.
DIGITS: int = 9


def half_up(number: float) -> int:
    """The nearest whole number; exactly half goes up (2.5 is 3, -2.5 is -2)."""
    below = math.floor(number)
    if number - below >= 1.0 / 2.0:
        return below + 1
    return below


def up(number: float) -> int:
    """The smallest whole number that is not below; 30.000000000000004 is a 30 that floats have touched, and stays 30."""
    return math.ceil(round(number, DIGITS))
