"""The interval of a crop holds as often as it says: by simulation, seeded, with the calculators' own interval.

Truth is drawn about what was counted. Independent log-normal counts and season are what the interval is made for; where counts make
up for each other, are out together, or are normal, it holds more or less often, and the guide prints how often.
"""

import math
from functools import cache

import numpy as np
import pytest
from scipy.stats import norm

from generator.calculators.nodes_for_yield import nodes_for_yield
from generator.calculators.yield_forecast import yield_forecast
from tests.calculators.cases import FORECAST, FORECAST_LIMITS, LIMITS, NODES, but, some

DRAWS = 400_000
SEED = 20_261_130
CVS = ("budburst_cv_pct", "shoots_per_burst_node_cv_pct", "bunches_per_shoot_cv_pct", "bunch_weight_cv_pct")
# the spread of budburst, shoots per burst node, bunches per shoot, bunch weight in % (None: not known); swing of the season in %
SCENARIOS = [
    ((None, None, None, None), 25),
    ((5, None, None, None), 25),
    ((None, 5, None, None), 25),
    ((None, None, 20, None), 25),
    ((None, None, None, 15), 25),
    ((5, 3, None, None), 25),
    ((None, None, 20, 15), 25),
    ((10, 5, 20, 15), 25),
    ((10, 5, 30, 25), 25),
    ((2, 2, 5, 5), 25),
    ((15, 10, 40, 30), 25),
    ((10, 10, 10, 10), 25),
    ((20, 20, 20, 20), 25),
    ((10, 5, 20, 15), 20),
    ((10, 5, 20, 15), 30),
    ((10, 5, 20, 15), 10),
    ((10, 5, 20, 15), 50),
    ((None, None, 60, None), 25),
    ((60, None, None, None), 20),
    ((0, 0, 0, 0), 25),
    ((5, 5, 50, 5), 10),
    ((30, 10, 30, 30), 40),
    ((1, 1, 60, 60), 1),
    ((8, 4, 12, 9), 25),
]
REPORTED = (10, 5, 20, 15), 25


def spreads(cvs, season_pct: float) -> np.ndarray:
    """The standard deviations on the log scale that belong to the coefficients of variation and to the season's low end."""
    season = -math.log(1 - season_pct / 100) / LIMITS.interval_z
    return np.array([math.sqrt(math.log1p(((cv or 0) / 100) ** 2)) for cv in cvs] + [season])


@cache
def draws(seed: int) -> np.ndarray:
    """Standard normal numbers: a row for each of the four counts and one for the season."""
    return np.random.default_rng(seed).standard_normal((5, DRAWS))


def correlated(pairs: dict[tuple[int, int], float]) -> np.ndarray:
    """Draws whose rows correlate pairwise as given, and else not at all."""
    matrix = np.eye(5)
    for (one, other), rho in pairs.items():
        matrix[one, other] = matrix[other, one] = rho
    return np.linalg.cholesky(matrix) @ draws(SEED)


def given(cvs) -> dict:
    """The counts' spreads as inputs."""
    return {name: some(cv) for name, cv in zip(CVS, cvs) if cv is not None}


def share_inside(cvs, season_pct: float, factor: np.ndarray) -> float:
    """In how many of a hundred cases a crop of the forecast times the factor lies in the forecast's interval."""
    found = yield_forecast(but(FORECAST, **given(cvs)), but(FORECAST_LIMITS, season_spread_pct=float(season_pct)))
    truth = found.t_per_ha * factor
    return 100 * float(np.mean((found.low <= truth) & (truth <= found.high)))


def log_normal(cvs, season_pct: float, numbers: np.ndarray) -> np.ndarray:
    """The crop as a multiple of the forecast, counts and season log-normal about what was counted."""
    return np.exp(spreads(cvs, season_pct) @ numbers)


@pytest.mark.parametrize(("cvs", "season_pct"), SCENARIOS)
def test_the_forecast_covers_what_it_says(cvs, season_pct):
    """Nine in ten, within one point: the Monte Carlo error of 400 000 draws is a twentieth of a point."""
    assert share_inside(cvs, season_pct, log_normal(cvs, season_pct, draws(SEED))) == pytest.approx(90, abs=1)


@pytest.mark.parametrize(("cvs", "season_pct"), SCENARIOS[::4])
def test_the_nodes_cover_what_they_say(cvs, season_pct):
    """The nodes that would have borne the crop wanted lie inside the range of nodes as often."""
    found = nodes_for_yield(but(NODES, **given(cvs)), but(LIMITS, season_spread_pct=float(season_pct)))
    needed = found.nodes_exact / log_normal(cvs, season_pct, draws(SEED + 1))
    assert 100 * float(np.mean((found.low <= needed) & (needed <= found.high))) == pytest.approx(90, abs=1)


@pytest.mark.parametrize("level", [50, 80, 95, 99])
def test_other_levels_cover_what_they_say(level):
    """With the quantile of another level, the interval holds at that level (scipy)."""
    z = float(norm.ppf(0.5 + level / 200))
    cvs, season_pct = REPORTED
    found = yield_forecast(but(FORECAST, **given(cvs)), but(FORECAST_LIMITS, interval_level_pct=float(level), interval_z=z))
    spread = spreads(cvs, 0)
    spread[4] = -math.log(1 - season_pct / 100) / z
    truth = found.t_per_ha * np.exp(spread @ draws(SEED + 2))
    assert 100 * float(np.mean((found.low <= truth) & (truth <= found.high))) == pytest.approx(level, abs=1)


def test_counts_that_make_up_for_each_other_are_covered_more_often_as_printed(rulebook):
    """Bunches and their weight at -0.6: the range is wider than it says, by as much as the value says."""
    factor = log_normal(*REPORTED, correlated({(2, 3): -0.6}))
    assert share_inside(*REPORTED, factor) == pytest.approx(rulebook.values["coverage_compensating_pct"].number, abs=0.3)


def test_counts_that_are_out_together_are_covered_less_often_as_printed(rulebook):
    """All four at +0.5: the range is too narrow, by as much as the value says."""
    pairs = {(one, other): 0.5 for one in range(4) for other in range(one)}
    assert share_inside(*REPORTED, log_normal(*REPORTED, correlated(pairs))) == pytest.approx(rulebook.values["coverage_together_pct"].number, abs=0.3)


def test_normal_counts_are_covered_as_printed(rulebook):
    """Counts and season normal about what was counted, cut off at nothing."""
    cvs, season_pct = REPORTED
    spread = np.array([*cvs, 0]) / 100
    spread[4] = season_pct / 100 / LIMITS.interval_z
    factor = np.prod(np.maximum(0, 1 + spread[:, None] * draws(SEED + 3)), axis=0)
    assert share_inside(cvs, season_pct, factor) == pytest.approx(rulebook.values["coverage_normal_pct"].number, abs=0.3)


def test_the_mean_of_a_sample_in_the_place_of_the_median_hardly_matters():
    """Counts are means: the truth then lies lower by half a variance on the log scale, and the interval still holds within one point."""
    cvs, season_pct = REPORTED
    spread = spreads(cvs, season_pct)
    shift = float(np.sum(spread[:4] ** 2)) / 2
    factor = np.exp(spread @ draws(SEED + 4) - shift)
    assert share_inside(cvs, season_pct, factor) == pytest.approx(90, abs=1)


def test_wide_normal_counts_break_the_interval():
    """The limit of the promise: normal counts known to half only are covered clearly less often than nine in ten."""
    factor = np.prod(np.maximum(0, 1 + np.array([0.1, 0.05, 0.5, 0.5, 0.152])[:, None] * draws(SEED + 5)), axis=0)
    assert share_inside((10, 5, 50, 50), 25, factor) < 89
