"""Whole numbers of things that people count or cut."""

import math


def half_up(number: float) -> int:
    """The nearest whole number; exactly half goes up (2.5 is 3, -2.5 is -2)."""
    below = math.floor(number)
    if number - below >= 1.0 / 2.0:
        return below + 1
    return below
