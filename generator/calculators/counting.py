"""Whole numbers of things that people count or cut."""

import math

# So many parts of one are told apart: what floats leave beside a whole number is far less than one part.
PARTS: int = 1000000000


def half_up(number: float) -> int:
    """The nearest whole number; exactly half goes up (2.5 is 3, -2.5 is -2)."""
    below = math.floor(number)
    if number - below >= 1.0 / 2.0:
        return below + 1
    return below


def up(number: float) -> int:
    """The smallest whole number that is not below; 30.000000000000004 is a 30 that floats have touched, and stays 30."""
    near = half_up(number)
    if number > float(near) and (number - float(near)) * float(PARTS) <= 1.0:
        return near
    return math.ceil(number)


def down(number: float) -> int:
    """The largest whole number that is not above, with the same grace for floats: 11.999999999999998 is 12."""
    return -up(-number)
