"""The yield chain forwards and backwards, and its interval."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import norm

from generator.calculators.counting import half_up
from generator.calculators.nodes_for_yield import nodes_for_yield
from generator.calculators.yield_forecast import yield_forecast
from tests.calculators.cases import FORECAST, FORECAST_LIMITS, LIMITS, NODES, but, ids, some


def wanted(**changes):
    """Nodes for the crop of the plain block with some inputs changed."""
    return nodes_for_yield(but(NODES, **changes), LIMITS)


def expected(**changes):
    """The forecast for the plain block with some inputs changed."""
    return yield_forecast(but(FORECAST, **changes), FORECAST_LIMITS)


CROPS = st.floats(0.5, 60.0)
CVS = st.floats(0.0, 60.0)


@given(CROPS, CROPS)
def test_more_yield_wanted_never_means_fewer_nodes(a, b):
    """Nodes rise with the crop wanted."""
    small, large = sorted([a, b])
    assert wanted(target_yield_t_ha=small).nodes <= wanted(target_yield_t_ha=large).nodes


@given(CROPS, st.floats(10.0, 100.0), st.floats(1.0, 1.4), st.floats(0.1, 4.0), st.floats(20.0, 2000.0), st.floats(0.0, 10.0))
def test_nodes_and_forecast_invert_each_other(crop, burst, h, u, weight, others):
    """The crop of the nodes for a crop is that crop, other shoots included, unless those bear it alone."""
    parts = dict(
        budburst_pct=burst,
        shoots_per_burst_node=h,
        bunches_per_shoot=some(u),
        bunch_weight_g=weight,
        noncount_shoots_kept=some(others),
        bunches_per_noncount_shoot=some(0.3),
    )
    nodes = wanted(target_yield_t_ha=crop, **parts).nodes_exact
    t_per_ha = expected(nodes=nodes, **parts).t_per_ha
    assert t_per_ha == pytest.approx(crop) if nodes > 0 else t_per_ha >= crop * (1 - 1e-12)


@given(CVS, CVS)
def test_the_interval_contains_the_forecast_and_never_is_narrower_than_the_season(burst, weight):
    """Low <= forecast <= high, at least 25 % to each side, whatever the counts' own uncertainty."""
    result = expected(budburst_cv_pct=some(burst), bunch_weight_cv_pct=some(weight))
    assert result.low <= 0.75 * result.t_per_ha * (1 + 1e-12)
    assert result.high >= 1.25 * result.t_per_ha


@given(CVS, CVS)
def test_less_sure_counts_never_narrow_the_interval(a, b):
    """A larger uncertainty of one component gives an interval at least as wide."""
    sure, unsure = sorted([a, b])
    assert expected(bunches_per_shoot_cv_pct=some(sure)).high <= expected(bunches_per_shoot_cv_pct=some(unsure)).high


def test_the_interval_is_a_normal_one_on_the_log_scale():
    """Variances ln(1 + cv^2) and (ln 0.75 / z)^2 add up; z is the two-sided 90 % quantile (scipy)."""
    result = expected(bunches_per_shoot_cv_pct=some(20), bunch_weight_cv_pct=some(10))
    z = norm.ppf(0.95)
    spread = math.sqrt(math.log(1.04) + math.log(1.01) + (math.log(0.75) / z) ** 2)
    assert result.high / result.t_per_ha == pytest.approx(math.exp(z * spread), rel=1e-12)


def test_the_followed_quantile_belongs_to_the_followed_level(rulebook):
    """interval_z is the normal quantile of interval_level_pct (scipy)."""
    level = rulebook.values["interval_level_pct"].number
    assert rulebook.values["interval_z"].number == pytest.approx(norm.ppf(0.5 + level / 200), rel=1e-15)


def test_the_range_of_nodes_turns_the_interval_of_the_crop_around():
    """With the low end of the nodes the high end of the forecast just reaches the crop wanted."""
    low = wanted(bunch_weight_cv_pct=some(15)).low
    assert expected(nodes=low, bunch_weight_cv_pct=some(15)).high == pytest.approx(9.0)


@pytest.mark.parametrize(("nodes", "extrapolated"), [(30, False), (50, False), (29.9, True), (50.1, True)])
def test_more_than_a_quarter_from_where_it_was_counted_is_extrapolated(nodes, extrapolated):
    """Counted at 40 nodes: 30 and 50 still hold, beyond them it is extrapolated and said so."""
    result = expected(nodes=nodes, nodes_left=some(40))
    assert result.extrapolated is extrapolated
    assert ("yield_chain.extrapolated" in ids(result.notes)) is extrapolated


def test_not_knowing_where_it_was_counted_is_said():
    """Without last winter's nodes nothing is called extrapolated, but a note says what it hangs on."""
    result = expected()
    assert not result.extrapolated and "yield_chain.measured_where" in ids(result.notes)


def test_the_note_says_whether_counts_are_in_the_interval():
    """Only with an uncertainty given does the interval cover the counts."""
    assert "yield_chain.covers_season" in ids(expected().notes)
    assert "yield_chain.covers_both" in ids(expected(budburst_cv_pct=some(5)).notes)


def test_other_shoots_bear_beside_the_nodes():
    """Z u0 w0 is added once, and is no multiple of the nodes: 6 x 0.5 x 60 g = 0.18 kg."""
    extra = dict(noncount_shoots_kept=some(6), bunches_per_noncount_shoot=some(0.5), noncount_bunch_weight_g=some(60))
    assert expected(**extra).kg_per_vine - expected().kg_per_vine == pytest.approx(0.18)


def test_shoots_without_a_bunch_count_bear_nothing():
    """Other shoots kept, bunches on them not counted: no crop is made up for them."""
    assert expected(noncount_shoots_kept=some(6)).kg_per_vine == expected().kg_per_vine


def test_a_crop_that_the_other_shoots_bear_needs_no_node():
    """Nodes stop at zero, with a note."""
    result = wanted(target_yield_t_ha=0.5, noncount_shoots_kept=some(20), bunches_per_noncount_shoot=some(1))
    assert result.nodes == 0 and "nodes_for_yield.others_bear_it" in ids(result.notes)


def test_budburst_over_a_hundred_is_refused():
    """Published 112.5 % is shoots per node; as budburst it is refused and belongs into shoots per burst node."""
    with pytest.raises(ValueError, match="at most 100"):
        expected(budburst_pct=112.5)


def test_barren_shoots_have_no_node_number():
    """With no bunches no number of nodes gives a crop."""
    with pytest.raises(ValueError, match="next to nothing"):
        wanted(bunches_per_shoot=some(0))


def test_the_fruit_view_says_that_it_is_no_ceiling():
    """A small crop wish must not prune a strong vine harder."""
    assert ids(wanted().notes)[-1] == "nodes_for_yield.no_ceiling"


@pytest.mark.parametrize(("number", "whole"), [(2.5, 3), (2.4999, 2), (0.5, 1), (3.0, 3), (0.49999999999999994, 0)])
def test_a_half_goes_up(number, whole):
    """Nearest whole number, a half up, and not to the even one."""
    assert half_up(number) == whole
