"""Spread and likeness of the buds of a tally: against numpy, against tallies made with a known likeness, and what becomes of them elsewhere."""

from itertools import permutations

import numpy as np
import pytest

from generator.calculators.bearer_reach import tally_in
from generator.calculators.bearer_sampling import Bearers, CaneSample, sampled_cv_pct
from generator.calculators.bearers import buds_counted
from generator.calculators.bud_fruitfulness import as_reach
from generator.calculators.tally_bearers import tally_from
from generator.calculators.tally_counts import by_cane, by_node
from generator.calculators.tally_spread import bud_spread, likeness
from tests.calculators.cases import some
from tests.calculators.tallies import BLOCK, bud, canes, found, held
from tests.calculators.test_bud_fruitfulness import left_out, reach_with

TALLIES = [(5, 3, 0), (20, 10, 1), (30, 15, 2), (120, 2, 3)]


def apart(rows):
    """Of each cane its living buds' differences from the mean of their node, and the degrees of freedom of all."""
    at_node = {node: [x for row in rows if row.node == node for x in held(row)] for node in {row.node for row in rows}}
    means = {node: np.mean(xs) for node, xs in at_node.items() if xs}
    own = [[x - means[row.node] for row in cane for x in held(row)] for cane in by_cane(rows)]
    return own, sum(len(xs) - 1 for xs in at_node.values() if xs)


@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES)
def test_the_spread_is_pooled_over_nodes(count, nodes, seed):
    """Squares within nodes over buds less nodes, as numpy has them."""
    rows = canes(count, nodes, seed)
    own, free = apart(rows)
    assert bud_spread(rows).number == pytest.approx(np.sqrt(sum(x * x for xs in own for x in xs) / free), rel=1e-9)


@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES)
def test_likeness_is_the_correlation_of_all_pairs_of_a_cane(count, nodes, seed):
    """Every pair of two buds of one cane, both ways round, against the mean square of all buds."""
    rows = canes(count, nodes, seed)
    own, _ = apart(rows)
    pairs = [x * y for xs in own for x, y in permutations(xs, 2)]
    expected = np.mean(pairs) / np.mean([x * x for xs in own for x in xs])
    assert likeness(rows, by_cane(rows), 2).number == pytest.approx(min(1.0, max(0.0, expected)), rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("true", [0.0, 0.2, 0.5])
def test_a_likeness_that_was_put_in_comes_out(true):
    """2000 canes of eight buds, each 1 or 2 with even chances; a bud follows its cane with the root of the likeness."""
    rng = np.random.default_rng(7)
    rows = []
    for cane in range(1, 2001):
        of_cane = rng.integers(1, 3)
        rows += [bud(cane, node, **{f"buds_{of_cane if rng.random() < np.sqrt(true) else rng.integers(1, 3)}": 1}) for node in range(1, 9)]
    assert likeness(rows, by_cane(rows), 20).number == pytest.approx(true, abs=0.03)
    assert bud_spread(rows).number == pytest.approx(0.5, abs=0.01)


def test_few_canes_and_buds_that_are_all_the_same_tell_nothing():
    """Nineteen canes leave the assumed likeness in place, and so does a tally without any spread; the spread itself needs no canes."""
    assert not likeness(canes(19, 6, 1), by_cane(canes(19, 6, 1)), 20).ok
    same = [bud(cane, node, buds_1=1) for cane in range(1, 31) for node in (1, 2)]
    assert not likeness(same, by_cane(same), 20).ok and not bud_spread(same).ok
    given = [one.fact for one in found(canes(10, 6, 1)).facts]
    assert "bud_spread" in given and "likeness" not in given


@pytest.mark.parametrize(("count", "seed"), [(30, 3), (12, 4), (40, 8)])
def test_bearer_reach_is_as_sure_as_the_tally(count, seed):
    """Low end, high end and canes still to cut, to the last digits; for another crop wanted as well, for which the tally did not know."""
    result = found(canes(count, 10, seed))
    there = reach_with(result.facts)
    assert [there.spur_reach_low.number, there.spur_reach_high.number] == pytest.approx([result.spur_reach_low.number, result.spur_reach_high.number], rel=1e-12)
    assert there.more_canes == result.more_canes
    assert [said.id for said in there.working if "interval" in said.id] == ["bearer_reach.interval_counted"]
    other = {"target_yield_t_ha": some(8.5), "shoots_per_m_high": 12.0}
    again, elsewhere = found(canes(count, 10, seed), **other), reach_with(result.facts, **other)
    assert elsewhere.spur_reach_high.number == pytest.approx(again.spur_reach_high.number, rel=1e-9)


def test_the_formula_with_the_counted_figures_comes_near_the_canes_themselves():
    """A cane of ten nodes from 200 canes: spread and likeness of the tally give the standard error that leaving out each cane gives, within a
    tenth, where no bud is dead."""
    rows = canes(200, 10, 6, dead=0.0)
    result = found(rows)
    bunches, se, _ = left_out(rows, lambda some_rows: found(some_rows).bearers[-1].bunches)
    buds = result_buds(rows)
    formula = sampled_cv_pct(CaneSample(some(200), bud_spread(rows), likeness(rows, by_cane(rows), 20)), buds, Bearers([10], [], 0))
    assert formula.number == pytest.approx(100 * se / bunches, rel=0.1)


def result_buds(rows):
    """The buds of a tally as the chain takes them."""
    return buds_counted(tally_from(by_node(rows, 10), tally_in(as_reach(BLOCK))))
