"""Kappa, its error, and limits of agreement: against code of another kind, and what must hold for any two judges.

The other code is numpy on whole matrices, and for the errors a resampling that knows nothing of the formula.
"""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from generator.calculators.agreement import crossed, kappa_of, limits_of, mean_range, ordered_weights, plain_weights

CLASSES = 4
Z = float(stats.norm.ppf(0.975))
verdicts = st.lists(st.integers(0, CLASSES - 1), min_size=1, max_size=40)
pairs = st.lists(st.tuples(st.integers(0, CLASSES - 1), st.integers(0, CLASSES - 1)), min_size=1, max_size=40)
WEIGHTS = (plain_weights(CLASSES), ordered_weights(CLASSES))


def judged(found, weights=WEIGHTS[0]):
    """Kappa of pairs of verdicts."""
    first, second = [list(side) for side in zip(*found, strict=True)]
    return kappa_of(crossed(first, second, CLASSES), weights, Z)


def by_matrices(table, weights):
    """Kappa and its error from outer products (observed, expected, kappa, error)."""
    shares, weights = np.asarray(table, float) / np.sum(table), np.asarray(weights)
    rows, columns = shares.sum(1), shares.sum(0)
    observed, expected = float((weights * shares).sum()), float((weights * np.outer(rows, columns)).sum())
    kappa = (observed - expected) / (1 - expected)
    middles = np.add.outer(weights @ columns, weights.T @ rows)
    inside = (shares * (weights - middles * (1 - kappa)) ** 2).sum() - (kappa - expected * (1 - kappa)) ** 2
    return observed, expected, kappa, float(np.sqrt(max(0.0, inside) / np.sum(table)) / (1 - expected))


@pytest.mark.parametrize("weights", WEIGHTS, ids=["plain", "ordered"])
def test_it_is_what_matrices_give(weights):
    """On 300 random tables, small and large."""
    rng = np.random.default_rng(7)
    for _ in range(300):
        table = rng.integers(0, rng.integers(2, 40), (CLASSES, CLASSES)).tolist()
        table[0][0], table[1][2] = table[0][0] + 1, table[1][2] + 1
        found, wanted = kappa_of(table, weights, Z), by_matrices(table, weights)
        assert (found.observed, found.expected, found.kappa.number) == pytest.approx(wanted[:3], abs=1e-12)
        assert found.error == pytest.approx(wanted[3], abs=1e-9)


@pytest.mark.parametrize("weights", WEIGHTS, ids=["plain", "ordered"])
def test_the_error_is_how_far_resampled_kappas_scatter(weights):
    """4000 tables of 400 things drawn again: their standard deviation is the error, within 8 %."""
    rng = np.random.default_rng(11)
    table = [[70, 20, 6, 1], [18, 90, 25, 5], [4, 22, 80, 12], [0, 6, 11, 30]]
    shares = np.asarray(table, float).ravel() / np.sum(table)
    drawn = [by_matrices(rng.multinomial(400, shares).reshape(CLASSES, CLASSES), weights)[2] for _ in range(4000)]
    assert kappa_of(table, weights, Z).error == pytest.approx(float(np.std(drawn, ddof=1)), rel=0.08)


@given(pairs)
def test_who_is_first_does_not_matter(found):
    """To the last bit, plain and ordered."""
    for weights in WEIGHTS:
        assert judged(found, weights) == judged([(second, first) for first, second in found], weights)


@given(verdicts)
def test_identical_verdicts_are_full_agreement(found):
    """Kappa is 1 where the verdicts are not all the same; else it says nothing. There is no range: agreement so far is no certainty."""
    for weights in WEIGHTS:
        kappa = judged([(one, one) for one in found], weights)
        assert (kappa.kappa.ok, kappa.low.ok) == (len(set(found)) > 1, False)
        assert kappa.kappa.number == (1.0 if kappa.kappa.ok else 0.0) and kappa.observed == 1.0


@given(pairs)
def test_kappa_lies_between_minus_one_and_one(found):
    """And its range around it."""
    for weights in WEIGHTS:
        one = judged(found, weights)
        assert -1.0 <= one.kappa.number <= 1.0 and 0.0 <= one.expected <= 1.0
        assert not one.low.ok or -1.0 <= one.low.number <= one.kappa.number <= one.high.number <= 1.0


@given(pairs)
def test_near_misses_weigh_less(found):
    """Ordered grades never agree less than plain ones."""
    assert judged(found, WEIGHTS[1]).observed >= judged(found, WEIGHTS[0]).observed


@given(st.lists(st.integers(-30, 30).map(float), min_size=2, max_size=30), st.sampled_from([80.0, 90.0, 95.0]))
def test_the_range_of_a_mean_is_students(numbers, level):
    """As scipy gives it; limits lie 1.96 deviations off, each as unsure as three means."""
    found, sd = mean_range(numbers, level), float(np.std(numbers, ddof=1))
    half = float(stats.t.ppf(0.5 + level / 200, len(numbers) - 1)) * sd / np.sqrt(len(numbers))
    assert (found.mean, found.low.number, found.high.number) == pytest.approx((np.mean(numbers), np.mean(numbers) - half, np.mean(numbers) + half), abs=1e-9)
    limits = limits_of(found.mean, found.sd.number, 1.96, len(numbers), level)
    assert (limits.low, limits.high) == pytest.approx((np.mean(numbers) - 1.96 * sd, np.mean(numbers) + 1.96 * sd), abs=1e-9)
    assert limits.unsure == pytest.approx(half * np.sqrt(3), abs=1e-9)


def test_one_number_has_no_range():
    """Nothing tells how far the next would be."""
    found = mean_range([3.0], 90.0)
    assert (found.mean, found.sd.ok, found.low.ok, found.high.ok) == (3.0, False, False, False)


def test_nothing_to_compare_is_refused():
    """No things, or not as many by both."""
    for first, second in (([], []), ([1], [1, 2])):
        with pytest.raises(ValueError, match="the same things"):
            crossed(first, second, CLASSES)
