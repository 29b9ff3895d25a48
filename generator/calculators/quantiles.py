"""Quantiles of the normal and of Student's t distribution, from + - * /, square roots and exactmath alone.

Sources: M. J. Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37 (1988) 477-484, for the normal one. The t quantile is
found by Newton's method on ln(upper tail) against ln t, a bent line that the method descends without turning; the tail is the
incomplete beta function as a continued fraction (Abramowitz and Stegun 26.5.8, 26.7.1). With many degrees of freedom the
expansion about the normal quantile takes over (Abramowitz and Stegun 26.7.5).
"""

import math

from generator.calculators.exactmath import exp, log
from generator.calculators.units import PER_CENT, share

MIDDLE: float = 0.425
MIDDLE_SQUARED: float = 0.180625
FAR: float = 5.0
SHIFT: float = 1.6
MIDDLE_OVER: list[float] = [
    3.3871328727963666080e0,
    1.3314166789178437745e2,
    1.9715909503065514427e3,
    1.3731693765509461125e4,
    4.5921953931549871457e4,
    6.7265770927008700853e4,
    3.3430575583588128105e4,
    2.5090809287301226727e3,
]
MIDDLE_UNDER: list[float] = [
    1.0,
    4.2313330701600911252e1,
    6.8718700749205790830e2,
    5.3941960214247511077e3,
    2.1213794301586595867e4,
    3.9307895800092710610e4,
    2.8729085735721942674e4,
    5.2264952788528545610e3,
]
TAIL_OVER: list[float] = [
    1.42343711074968357734e0,
    4.63033784615654529590e0,
    5.76949722146069140550e0,
    3.64784832476320460504e0,
    1.27045825245236838258e0,
    2.41780725177450611770e-1,
    2.27238449892691845833e-2,
    7.74545014278341407640e-4,
]
TAIL_UNDER: list[float] = [
    1.0,
    2.05319162663775882187e0,
    1.67638483018380384940e0,
    6.89767334985100004550e-1,
    1.48103976427480074590e-1,
    1.51986665636164571966e-2,
    5.47593808499534494600e-4,
    1.05075007164441684324e-9,
]
FAR_OVER: list[float] = [
    6.65790464350110377720e0,
    5.46378491116411436990e0,
    1.78482653991729133580e0,
    2.96560571828504891230e-1,
    2.65321895265761230930e-2,
    1.24266094738807843860e-3,
    2.71155556874348757815e-5,
    2.01033439929228813265e-7,
]
FAR_UNDER: list[float] = [
    1.0,
    5.99832206555887937690e-1,
    1.36929880922735805310e-1,
    1.48753612908506148525e-2,
    7.86869131145613259100e-4,
    1.84631831751005468180e-5,
    1.42151175831644588870e-7,
    2.04426310338993978564e-15,
]
NEARLY_NORMAL: float = 300.0  # times 1 + z^2: from there on the fifth term of the expansion is below 1e-14
MANY: float = 30.0  # from there on the sixth term of the ratio of gamma functions is below 1e-17
LARGEST_LOG_T: float = 300.0  # t itself squared must stay a number
CLOSE: float = 1e-15
CLOSE_STEP: float = 1e-13  # Newton doubles the figures that hold, so the step after it would be lost
TINY: float = 1e-300
NEWTON_STEPS: int = 60
FRACTION_STEPS: int = 400
PI: float = 3.141592653589793


def tail_of(confidence_pct: float) -> float:
    """The probability below the upper end of a two-sided interval. Raises ValueError unless the level is above 0 and below 100 %."""
    if not 0.0 < confidence_pct < PER_CENT:
        raise ValueError("the level of an interval lies between 0 and 100 %")
    return 1.0 - (1.0 - share(confidence_pct)) / 2.0


def normal_quantile(p: float) -> float:
    """The number that a standard normal one stays below with probability p. Raises ValueError unless p is between 0 and 1."""
    if not 0.0 < p < 1.0:
        raise ValueError("a quantile needs a probability between 0 and 1")
    middle = p - 0.5
    if abs(middle) <= MIDDLE:
        rest = MIDDLE_SQUARED - middle * middle
        return middle * rising(MIDDLE_OVER, rest) / rising(MIDDLE_UNDER, rest)
    far = math.sqrt(-log(min(p, 1.0 - p)))
    size = rising(TAIL_OVER, far - SHIFT) / rising(TAIL_UNDER, far - SHIFT)
    if far > FAR:
        size = rising(FAR_OVER, far - FAR) / rising(FAR_UNDER, far - FAR)
    return size if middle > 0.0 else -size


def rising(terms: list[float], x: float) -> float:
    """terms[0] + x * (terms[1] + x * ...)."""
    total = 0.0
    for index in range(len(terms) - 1, -1, -1):
        total = total * x + terms[index]
    return total


def t_quantile(p: float, df: float) -> float:
    """The number that Student's t with df degrees of freedom (above 0, also broken) stays below with probability p.

    Raises ValueError unless p is between 0 and 1 and df above 0, and where so few degrees of freedom give a quantile without end.
    """
    if not df > TINY:
        raise ValueError("degrees of freedom must be above 0")
    z = normal_quantile(p)
    if z == 0.0:
        return 0.0
    if df >= NEARLY_NORMAL * (1.0 + z * z):
        return near_normal(z, df)
    size = t_of_tail(min(p, 1.0 - p), abs(z), df)
    return size if z > 0.0 else -size


def near_normal(z: float, df: float) -> float:
    """The t quantile beside the normal quantile z, by the first four terms of its expansion in 1 / df."""
    y = z * z
    first = (y + 1.0) / 4.0
    second = ((5.0 * y + 16.0) * y + 3.0) / 96.0
    third = (((3.0 * y + 19.0) * y + 17.0) * y - 15.0) / 384.0
    fourth = ((((79.0 * y + 776.0) * y + 1482.0) * y - 1920.0) * y - 945.0) / 92160.0
    return z * (1.0 + (first + (second + (third + fourth / df) / df) / df) / df)


def t_of_tail(tail: float, start: float, df: float) -> float:
    """The t above 0 with so large an upper tail (under a half). start is below it, as the normal quantile always is."""
    wanted = log(tail)
    at = log(start)
    for _ in range(NEWTON_STEPS):
        t = exp(min(at, LARGEST_LOG_T))
        peak = t * t_density(t, df)
        if at > LARGEST_LOG_T or peak == 0.0:
            raise ValueError("the quantile is too large: too few degrees of freedom for so rare a case")
        now = upper_tail(t, peak, df)
        step = (log(now) - wanted) * now / peak
        at += step
        if abs(step) <= CLOSE_STEP:
            break
    return exp(at)


def upper_tail(t: float, peak: float, df: float) -> float:
    """The share of Student's t above t (above 0); peak is t times the density there."""
    outside = df / (df + t * t)
    if outside < (df + 2.0) / (df + 5.0):
        return peak / df * beta_fraction(df / 2.0, 0.5, outside)
    return 0.5 - peak * beta_fraction(0.5, df / 2.0, t * t / (df + t * t))


def t_density(t: float, df: float) -> float:
    """The density of Student's t."""
    return gamma_ratio(df / 2.0) / math.sqrt(df * PI) * exp(-0.5 * (df + 1.0) * log(1.0 + t * t / df))


def gamma_ratio(x: float) -> float:
    """Gamma(x + 1/2) / Gamma(x) for x above 0: stepped up to where its expansion in 1 / x is exact to the last places."""
    factor = 1.0
    at = x
    while at < MANY:
        factor *= at / (at + 0.5)
        at += 1.0
    y = 1.0 / (at * at)
    return factor * math.sqrt(at) * exp((-1.0 / 8.0 + (1.0 / 192.0 + (-1.0 / 640.0 + (17.0 / 14336.0 - 31.0 / 18432.0 * y) * y) * y) * y) / at)


def beta_fraction(a: float, b: float, x: float) -> float:
    """The continued fraction of the incomplete beta function, by Lentz's method. Quick for x below (a + 1) / (a + b + 2)."""
    over = 1.0
    under = 1.0 / away_from_zero(1.0 - (a + b) * x / (a + 1.0))
    result = under
    for step in range(1, FRACTION_STEPS):
        m = float(step)
        even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m))
        odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0))
        under = 1.0 / away_from_zero(1.0 + even * under)
        over = away_from_zero(1.0 + even / over)
        result *= under * over
        under = 1.0 / away_from_zero(1.0 + odd * under)
        over = away_from_zero(1.0 + odd / over)
        result *= under * over
        if abs(under * over - 1.0) <= CLOSE:
            break
    return result


def away_from_zero(x: float) -> float:
    """x, or a number next to zero where x is zero: a fraction of the method may be passed through, not divided by."""
    return x if abs(x) > TINY else TINY
