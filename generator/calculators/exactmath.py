"""exp, log and power from + - * / alone, so that they are the same number in every engine, bit for bit.

The `math` functions of these names differ in the last bit from machine to machine; these differ from the true value by less than
one unit in the last place (power: by about the size of y log x times that). The method and constants of exp and log are fdlibm's:

    Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
    Developed at SunSoft, a Sun Microsystems, Inc. business.
    Permission to use, copy, modify, and distribute this software is freely granted, provided that this notice is preserved.
"""

import math

LN2_HIGH: float = 6.93147180369123816490e-01  # its last 32 bits are zero, so that whole multiples are exact
LN2_LOW: float = 1.90821492927058770002e-10
ONE_BY_LN2: float = 1.44269504088896338700
SQRT2: float = 1.41421356237309504880
EXP_LARGEST: float = 709.782712893383973096
EXP_SMALLEST: float = -745.13321910194110842
EXP_TERMS: list[float] = [
    1.66666666666666019037e-01,
    -2.77777777770155933842e-03,
    6.61375632143793436117e-05,
    -1.65339022054652515390e-06,
    4.13813679705723846039e-08,
]
LOG_TERMS: list[float] = [
    6.666666666666735130e-01,
    3.999999999940941908e-01,
    2.857142874366239149e-01,
    2.222219843214978396e-01,
    1.818357216161805012e-01,
    1.531383769920937332e-01,
    1.479819860511658591e-01,
]


def polynomial(x: float, terms: list[float]) -> float:
    """x * (terms[0] + x * (terms[1] + ...)), from the last term inward."""
    total = 0.0
    for index in range(len(terms) - 1, -1, -1):
        total = x * (terms[index] + total)
    return total


def scaled(x: float, twos: int) -> float:
    """x * 2**twos. Every step is exact unless the result is too small for a full number."""
    factor = 2.0 if twos > 0 else 0.5
    result = x
    for _ in range(abs(twos)):
        result *= factor
    return result


def exp(x: float) -> float:
    """e to the power of x; 0 below -745.13. Raises ValueError above 709.78, where the result is too large for a number."""
    if x > EXP_LARGEST:
        raise ValueError("exp of a number that is too large")
    if x < EXP_SMALLEST:
        return 0.0
    twos = math.floor(x * ONE_BY_LN2 + 0.5)
    high = x - float(twos) * LN2_HIGH
    low = float(twos) * LN2_LOW
    rest = high - low
    correction = rest - polynomial(rest * rest, EXP_TERMS)
    return scaled(1.0 - ((low - rest * correction / (2.0 - correction)) - high), twos)


def log(x: float) -> float:
    """The natural logarithm of x. Raises ValueError unless x is above 0 and finite."""
    if not 0.0 < x < 1.7976931348623157e308:
        raise ValueError("log of a number that is not above 0")
    rest = x
    twos = 0
    while rest > SQRT2:
        rest *= 0.5
        twos += 1
    while rest < SQRT2 * 0.5:
        rest *= 2.0
        twos -= 1
    f = rest - 1.0
    s = f / (2.0 + f)
    half = 0.5 * f * f
    tail = s * (half + polynomial(s * s, LOG_TERMS))
    return float(twos) * LN2_HIGH - ((half - (tail + float(twos) * LN2_LOW)) - f)


def power(x: float, y: float) -> float:
    """x to the power of y: by multiplication where y is whole and at most 100 in size, else exp(y * log(x)).

    Raises ValueError for x below 0 with a broken y, and for 0 with a y below 0.
    """
    if abs(y) <= 100.0 and y == math.floor(y):
        result = 1.0
        for _ in range(abs(int(y))):
            result *= x
        if y >= 0.0:
            return result
        if result == 0.0:
            raise ValueError("0 to a power below 0")
        return 1.0 / result
    return 0.0 if x == 0.0 and y > 0.0 else exp(y * log(x))
