"""Intervals of a share that was counted.

Wilson's interval: E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209-212. It stays within 0 and 1 and
says something honest when none or all of a few buds were dead.
"""

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Span:
    """The ends of an interval, as shares from 0 to 1."""

    low: float
    high: float


def wilson(successes: float, trials: float, z: float) -> Span:
    """Wilson's interval of successes among trials; z is the normal quantile of the wanted level (two-sided). Broken counts
    are allowed, for trials that a design effect has divided. Raises ValueError unless 0 <= successes <= trials, trials > 0 and z >= 0."""
    if not trials > 0.0:
        raise ValueError("a share needs at least one trial")
    if not 0.0 <= successes <= trials:
        raise ValueError("successes must lie between none and all of the trials")
    if not z >= 0.0:
        raise ValueError("z must not be below 0")
    p = successes / trials
    spread = z * z / trials
    middle = (p + spread / 2.0) / (1.0 + spread)
    half = z * math.sqrt(p * (1.0 - p) / trials + spread / trials / 2.0 / 2.0) / (1.0 + spread)
    return Span(max(0.0, middle - half) if successes > 0.0 else 0.0, min(1.0, middle + half) if successes < trials else 1.0)
