"""How far a crop reckoned in winter may be out: by the counts it stands on, by the season, and by both together.

On the log scale variances add: ln(1 + cv^2) for each count that came with a coefficient of variation, and
(ln(1 - swing) / z)^2 for the season, whose swing is counted downwards (25: the low end is at 75 %). The two causes are
kept apart, because a grower can count more and cannot change the season. (Evidence nf-20, es-10, es-11.)
"""

import math
from dataclasses import dataclass

from generator.calculators.exactmath import exp, log
from generator.calculators.facts import Maybe
from generator.calculators.units import PER_CENT, share


@dataclass(frozen=True)
class Limits:
    """The level of an interval (%) with its normal quantile, the swing of the season (%), and how far counts hold (%)."""

    interval_level_pct: float
    interval_z: float
    season_spread_pct: float
    extrapolation_limit_pct: float


@dataclass(frozen=True)
class Spread:
    """Factors of 1 or more: the crop may be that many times higher, or lower when divided by it, at the level of the interval.
    counts is there only where the uncertainty of some count is known; both is the season and the counts together."""

    counts: Maybe
    season: float
    both: float


@dataclass(frozen=True)
class Interval:
    """A number with its ends: by the counts alone (where known), by the season alone, and by both."""

    sampling_low: Maybe
    sampling_high: Maybe
    season_low: float
    season_high: float
    low: float
    high: float


def spread_of(cvs_pct: list[Maybe], limits: Limits) -> Spread:
    """The spread of a crop. cvs_pct are the coefficients of variation of the counts that were given (%), taken as independent of
    each other and of the season. Raises ValueError when the season's swing is 100 % or more, or z is not above zero."""
    season = season_variance(limits)
    parts = [variance_of(cv) for cv in cvs_pct if cv.ok]
    counts = exp(limits.interval_z * math.sqrt(math.fsum(parts)))
    both = exp(limits.interval_z * math.sqrt(math.fsum([season] + parts)))
    return Spread(Maybe(len(parts) > 0, counts if len(parts) > 0 else 0.0), 1.0 / (1.0 - share(limits.season_spread_pct)), both)


def interval_of(middle: float, spread: Spread) -> Interval:
    """The interval about a crop."""
    low = Maybe(False, 0.0)
    high = Maybe(False, 0.0)
    if spread.counts.ok:
        low = Maybe(True, middle / spread.counts.number)
        high = Maybe(True, middle * spread.counts.number)
    return Interval(low, high, middle / spread.season, middle * spread.season, middle / spread.both, middle * spread.both)


def share_pct(cv_pct: Maybe, cvs_pct: list[Maybe], limits: Limits) -> Maybe:
    """What one count brings to the uncertainty, in % of the variance on the log scale; left out where its spread is not known. The
    shares of all counts and of the season add up to 100. Raises ValueError as spread_of does, or when nothing is uncertain."""
    if not cv_pct.ok:
        return Maybe(False, 0.0)
    return Maybe(True, PER_CENT * variance_of(cv_pct) / whole_variance(cvs_pct, limits))


def season_share_pct(cvs_pct: list[Maybe], limits: Limits) -> float:
    """What the season brings, likewise."""
    return PER_CENT * season_variance(limits) / whole_variance(cvs_pct, limits)


def whole_variance(cvs_pct: list[Maybe], limits: Limits) -> float:
    """The variance of a crop on the log scale. Raises ValueError as season_variance does, or when it is nothing."""
    whole = math.fsum([variance_of(cv) for cv in cvs_pct] + [season_variance(limits)])
    if whole <= 0.0:
        raise ValueError("the season must swing")
    return whole


def variance_of(cv_pct: Maybe) -> float:
    """The variance on the log scale that belongs to a coefficient of variation; 0 where it is not known."""
    return log(1.0 + share(cv_pct.number) * share(cv_pct.number)) if cv_pct.ok else 0.0


def season_variance(limits: Limits) -> float:
    """The variance of the season on the log scale. Raises ValueError when its swing is 100 % or more, or z is not above zero."""
    if limits.season_spread_pct >= PER_CENT or limits.interval_z <= 0.0:
        raise ValueError("the swing of the season must be under 100 % and z above zero")
    season = log(1.0 - share(limits.season_spread_pct)) / limits.interval_z
    return season * season
