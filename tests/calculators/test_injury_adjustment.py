"""Nodes after winter injury: the chain, where a death is counted once, and what is refused."""

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.answers.encode import values_record
from generator.calculators.bearers import Tally, buds_counted, bunches_at
from generator.calculators.facts import Maybe
from generator.calculators.injury_adjustment import InjuryAdjustmentInputs, injury_adjustment
from generator.calculators.yield_forecast import crop_of_nodes
from generator.calculators.yield_chain import Counts
from generator.calculators.yield_spread import Limits
from generator.reading.read import read_rulebook
from tests.calculators.cases import ids, some
from tests.published.printed import PROJECT

VALUES = values_record(read_rulebook(PROJECT / "rules")[0], "injury_adjustment")
OUT = Maybe(False, 0.0)
BLOCK = InjuryAdjustmentInputs(30.0, 100, 58, 30, 0.3, 0, OUT, OUT, 95.0, 1, OUT, 15.0, OUT)
NONE, ORDINARY, THIS_WINTER = 0, 1, 2


def adjusted(**changes):
    """The worked block with some inputs changed."""
    return injury_adjustment(replace(BLOCK, **changes), VALUES)


def test_the_worked_block():
    """Thirty wanted, 58 primaries alive and 30 secondaries alone of 100: 52 without, 45 with s .3; Cornell 43, Purdue 45; 37.6 shoots."""
    found = adjusted()
    assert (found.mortality_pct, found.mortality_low_pct, found.mortality_high_pct) == pytest.approx((42, 32.8, 51.8), abs=0.05)
    assert (found.nodes_replacing.number, found.nodes_replacing_with_secondaries.number) == (52, 45)
    assert (found.nodes_cornell.number, found.nodes_purdue.number) == (43, 45)
    assert found.shoots.number == pytest.approx(37.6, abs=0.05)


def test_secondaries_that_bear_little_take_more_nodes():
    """The same buds with s .1: 50 nodes."""
    assert adjusted(secondary_share=0.1).nodes_replacing_with_secondaries.number == 50


def test_no_number_for_84_of_100():
    """84 dead are 75.6 to 89.9 %: no number from anybody; wait and finish after burst."""
    found = adjusted(buds_primary_alive=16)
    assert (found.mortality_low_pct, found.mortality_high_pct) == pytest.approx((75.6, 89.9), abs=0.05)
    assert not any(one.ok for one in (found.nodes_replacing, found.nodes_replacing_with_secondaries, found.nodes_cornell, found.nodes_purdue))
    assert found.headline.id == "injury_adjustment.wait" and "injury_adjustment.severe" in ids(found.notes)


def test_wilson_is_scipy_s():
    """The interval is that of scipy's binomtest."""
    from scipy.stats import binomtest

    for dead in (0, 1, 42, 84, 100):
        found, right = adjusted(buds_primary_alive=100 - dead, buds_secondary_only=0), binomtest(dead, 100).proportion_ci(0.95, method="wilson")
        assert (found.mortality_low_pct, found.mortality_high_pct) == pytest.approx((100 * right.low, 100 * right.high), abs=1e-9)


def test_floats_do_not_add_a_node():
    """21 wanted with 70 of 100 alive are 30 (as floats 21 / 0.7 is a hair more)."""
    assert adjusted(wanted_nodes=21.0, buds_primary_alive=70, buds_secondary_only=0).nodes_replacing.number == 30


def test_more_alive_than_cut_is_refused():
    """A bud is counted once."""
    with pytest.raises(ValueError, match="more buds are alive than were cut"):
        adjusted(buds_primary_alive=80, buds_secondary_only=30)


def test_an_ordinary_winter_must_be_given():
    """A number that holds an ordinary winter's deaths cannot be reckoned on without them."""
    with pytest.raises(ValueError, match="ordinary winter"):
        adjusted(deaths_in_wanted_nodes=ORDINARY)


def test_shoots_stand_against_the_room():
    """37.6 shoots do not fit on 1.8 m at 15, and do on 3 m."""
    assert "injury_adjustment.room_short" in ids(adjusted(vine_spacing_m=some(1.8)).notes)
    assert "injury_adjustment.room_enough" in ids(adjusted(vine_spacing_m=some(3.0)).notes)


def test_fifteen_to_a_metre_make_room_for_27_on_1_8_m():
    """Twenty wanted, 80 primaries and 10 secondaries alone of 100, s .1: 25 nodes, 21.4 shoots at b .95, and 1.8 m hold 27."""
    found = adjusted(wanted_nodes=20.0, buds_primary_alive=80, buds_secondary_only=10, secondary_share=0.1, vine_spacing_m=some(1.8), noncount_shoots_kept=some(0))
    assert found.nodes_replacing_with_secondaries.number == 25
    assert (found.shoots.number, found.shoots_most.number) == pytest.approx((21.4, 27), abs=0.05)


buds = st.integers(20, 200).flatmap(lambda cut: st.integers((cut + 1) // 2, cut).flatmap(
    lambda alive: st.tuples(st.just(cut), st.just(alive), st.integers(0, cut - alive))))
shares = st.floats(0.0, 1.0)
wanted = st.floats(1.0, 100.0)


def bunches(primary: float, secondary: float, s: float) -> float:
    """Bunches of one node by dissection, as the plan reckons them."""
    dead_node = max(0.0, 100.0 * (1.0 - primary - secondary))
    tally = Tally([some(1.4), some(1.4)], [], 90.0, 90.0, some(100.0 * secondary), OUT, OUT, 1, dead_node, s, 1.0, 1.0)
    return bunches_at(buds_counted(tally), 1, 0.9)


def changes(nodes: float, counted: tuple[int, int, int], s: float) -> dict:
    """The sample as inputs."""
    return dict(zip(("buds_cut_for_injury", "buds_primary_alive", "buds_secondary_only"), counted), wanted_nodes=nodes, secondary_share=s)


@given(wanted, buds, shares)
def test_a_death_is_counted_once_by_buds(nodes, counted, s):
    """The crop of N_cut nodes with this winter's deaths is that of N_plan nodes without any, by the chain of dissection."""
    found = adjusted(**changes(nodes, counted, s))
    cut, alive, secondary = counted
    now = bunches(alive / cut, secondary / cut, s)
    assert found.nodes_replacing_with_secondaries_exact.number * now == pytest.approx(nodes * bunches(1.0, 0.0, s))


@given(wanted, buds, shares, st.floats(0.5, 1.0), shares)
def test_a_death_is_counted_once_from_one_winter_to_another(nodes, counted, s, primary, part):
    """The same where the number wanted holds the deaths of an ordinary winter: N_cut V_now = N_plan V_plan."""
    secondary = (1.0 - primary) * part
    assume(primary + secondary <= 1.0)
    ordinary = {"ordinary_primary_alive_pct": some(100.0 * primary), "ordinary_secondary_only_pct": some(100.0 * secondary)}
    assume(100.0 * primary / 100.0 + 100.0 * secondary / 100.0 <= 1.0)
    found = adjusted(**changes(nodes, counted, s), deaths_in_wanted_nodes=ORDINARY, **ordinary)
    cut, alive, only = counted
    now = bunches(alive / cut, only / cut, s)
    assert found.nodes_replacing_with_secondaries_exact.number * now == pytest.approx(nodes * bunches(primary, secondary, s))


@given(wanted, buds, shares)
def test_a_death_is_counted_once_by_spring_counts(nodes, counted, s):
    """By the short form: the deaths lower what a node bears, and the nodes make up for exactly that."""
    found = adjusted(**changes(nodes, counted, s))
    cut, alive, secondary = counted
    value = (alive + s * secondary) / cut
    counts = Counts(2000.0, 90.0, 1.1, 1.6, 120.0, OUT, OUT, OUT, OUT, OUT, OUT, OUT, OUT)
    limits = Limits(90.0, 1.6448536269514722, 25.0, 25.0)
    plan = crop_of_nodes(nodes, counts, limits)
    cropped = crop_of_nodes(found.nodes_replacing_with_secondaries_exact.number, replace(counts, bunches_per_shoot=1.6 * value), limits)
    assert cropped.t_per_ha == pytest.approx(plan.t_per_ha)


@given(wanted, buds, shares)
def test_deaths_fed_both_ways_are_refused(nodes, counted, s):
    """A number that was reckoned with this winter's deaths is not adjusted for them again."""
    with pytest.raises(ValueError, match="holds the deaths of this winter already"):
        adjusted(**changes(nodes, counted, s), deaths_in_wanted_nodes=THIS_WINTER)


@given(wanted, st.integers(50, 100), st.integers(50, 100))
def test_more_dead_never_takes_fewer_nodes(nodes, a, b):
    """Replacement rises with the dead."""
    worse, better = sorted([a, b])
    many, few = (adjusted(wanted_nodes=nodes, buds_primary_alive=alive, buds_secondary_only=0) for alive in (worse, better))
    assert many.nodes_replacing.number >= few.nodes_replacing.number >= nodes - 1e-6
