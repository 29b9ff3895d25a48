"""Quantiles of the normal and of t, and Wilson's interval, against scipy to 1e-9; errors; what must hold of any quantile."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from generator.calculators.proportions import wilson
from generator.calculators.quantiles import normal_quantile, t_quantile

PROBABILITIES = [1e-6, 1e-5, 0.001, 0.025, 0.05, 0.1, 0.25, 0.4, 0.499, 0.4999999, 0.5, 0.5000001, 0.6, 0.8, 0.9, 0.95, 0.975, 0.995, 0.9999, 1 - 1e-6]
DEGREES = [1, 1.5, 2, 3, 4, 4.7, 5, 9, 10, 19, 29.5, 30, 49, 60, 99, 120, 250, 299, 300, 301, 500, 1000, 3000, 7000, 1e5, 1e9]
probabilities = st.one_of(st.floats(1e-6, 1 - 1e-6), st.floats(-13.8, -0.7).map(lambda x: 2.718281828**x))


def near(ours, theirs):
    """Equal to 1e-9: of the size where it is over 1, else of 1."""
    return abs(ours - theirs) <= 1e-9 * max(1.0, abs(theirs))


@given(probabilities)
def test_normal_quantile_equals_scipy(p):
    """Every probability from one in a million up."""
    assert near(normal_quantile(p), stats.norm.ppf(p))


@pytest.mark.parametrize("df", DEGREES)
def test_t_quantile_equals_scipy_at_the_levels_in_use(df):
    """Both sides of every place where the method changes, and the levels that people ask for."""
    assert all(near(t_quantile(p, df), stats.t.ppf(p, df)) for p in PROBABILITIES)


@given(probabilities, st.one_of(st.floats(1.0, 1000.0), st.integers(1, 1000).map(float), st.floats(1e3, 1e12)))
def test_t_quantile_equals_scipy(p, df):
    """Whole and broken degrees of freedom."""
    assert near(t_quantile(p, df), stats.t.ppf(p, df))


@given(st.floats(0.001, 0.999), st.floats(0.1, 1.0))
def test_t_quantile_below_one_degree_of_freedom(p, df):
    """Long tails: relative to the size."""
    assert near(t_quantile(p, df), stats.t.ppf(p, df))


@given(st.floats(0.5, 1 - 1e-6), st.floats(1.0, 1000.0))
def test_quantiles_are_mirrored(p, df):
    """Exactly, since 1 - p is exact from a half on."""
    assert normal_quantile(1.0 - p) == -normal_quantile(p) and t_quantile(1.0 - p, df) == -t_quantile(p, df)


def test_t_comes_down_to_the_normal_quantile():
    """More buds never widen an interval, and with a million million t is the normal."""
    ladder = [t_quantile(0.975, df) for df in DEGREES]
    assert all(later < earlier for earlier, later in itertools.pairwise(ladder))
    assert near(t_quantile(0.975, 1e12), normal_quantile(0.975))


@pytest.mark.parametrize("p", [0.0, 1.0, -0.1, 1.1, float("nan")])
def test_a_probability_outside_is_an_error(p):
    """No number stays below nothing, nor surely."""
    with pytest.raises(ValueError, match="between 0 and 1"):
        normal_quantile(p)
    with pytest.raises(ValueError, match="between 0 and 1"):
        t_quantile(p, 5.0)


@pytest.mark.parametrize("df", [0.0, -1.0, float("nan")])
def test_degrees_of_freedom_must_be_above_zero(df):
    """One cane has no spread."""
    with pytest.raises(ValueError, match="above 0"):
        t_quantile(0.9, df)


def test_a_quantile_without_end_is_an_error():
    """With a hundredth of a degree of freedom it has 600 figures."""
    with pytest.raises(ValueError, match="too few degrees of freedom"):
        t_quantile(1e-6, 0.01)


@given(st.integers(1, 3000).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))), st.floats(0.5, 0.9999))
def test_wilson_equals_scipy(counted, level):
    """Any count at any level."""
    dead, buds = counted
    theirs = stats.binomtest(dead, buds).proportion_ci(level, "wilson")
    ours = wilson(float(dead), float(buds), normal_quantile(0.5 + level / 2))
    assert near(ours.low, theirs.low) and near(ours.high, theirs.high)


@given(st.floats(0.01, 500.0), st.floats(0.0, 1.0), st.floats(0.0, 5.0))
def test_wilson_solves_its_own_equation(trials, share, z):
    """Broken counts too: each end p satisfies (share - p)^2 = z^2 p (1 - p) / trials."""
    ends = wilson(share * trials, trials, z)
    assert 0.0 <= ends.low <= ends.high <= 1.0
    for p in (ends.low, ends.high):
        assert (share - p) ** 2 == pytest.approx(z * z * p * (1 - p) / trials, abs=1e-9)


@pytest.mark.parametrize("case", [(0.0, 0.0, 1.96), (1.0, -1.0, 1.96), (-1.0, 5.0, 1.96), (6.0, 5.0, 1.96), (1.0, 5.0, -1.0)])
def test_what_cannot_be_counted_is_an_error(case):
    """No trials, more successes than trials, fewer than none, a level below nothing."""
    with pytest.raises(ValueError):
        wilson(*case)
