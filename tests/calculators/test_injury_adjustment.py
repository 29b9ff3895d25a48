"""Nodes after winter injury: the worked block, how sure the answer is, and what is refused. That a death is counted once: test_injury_chain.py."""

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from generator.answers.encode import values_record
from generator.calculators.facts import Maybe
from generator.calculators.injury_adjustment import injury_adjustment
from generator.calculators.injury_records import InjuryAdjustmentInputs
from generator.reading.read import read_rulebook
from tests.calculators.cases import ids, some
from tests.published.printed import PROJECT

VALUES = values_record(read_rulebook(PROJECT / "rules")[0], "injury_adjustment")
OUT = Maybe(False, 0.0)
BLOCK = InjuryAdjustmentInputs(30.0, 100, 58, 30, 0.3, 0, OUT, OUT, 95.0, 1, OUT, 15.0, OUT)
ORDINARY, THIS_WINTER = 1, 2
COUNTED = ("buds_cut_for_injury", "buds_primary_alive", "buds_secondary_only")
buds = st.integers(20, 200).flatmap(lambda cut: st.integers((cut + 1) // 2, cut).flatmap(
    lambda alive: st.tuples(st.just(cut), st.just(alive), st.integers(0, cut - alive))))
shares = st.floats(0.0, 1.0)
wanted = st.floats(1.0, 100.0)


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


@pytest.mark.parametrize(
    ("cut", "alive", "said", "numbers"),
    [
        (100, 75, "headline", [39, 30, 25]),  # 17.5 to 34.3 % dead: one number
        (100, 58, "may_be_none", [49]),  # 32.8 to 51.8 %: over half it would be none
        (100, 48, "severe_or_not", [52]),  # 42.3 to 61.5 %: no number, but not surely none
        (100, 16, "wait", [84, 50]),
        (20, 12, "few_or_severe", [20]),  # 21.9 to 61.3 %
        (20, 18, "few", [20]),  # 2.8 to 30.1 %
        (100, 90, "unchanged", [30, 34, 15, 10]),  # nobody adds nodes for 10 % dead
        (100, 100, "headline", [30, 30, 0]),
    ],
)
def test_the_headline_is_no_surer_than_the_sample(cut, alive, said, numbers):
    """A number stands alone only where the sample is large enough, its interval ends under the severe limit, and somebody's rule adds nodes."""
    found = adjusted(buds_cut_for_injury=cut, buds_primary_alive=alive, buds_secondary_only=(cut - alive) // 3)
    assert found.headline.id == f"injury_adjustment.{said}"
    assert list(found.headline.numbers)[: len(numbers)] == pytest.approx(numbers)


def test_the_range_of_the_headline():
    """8 of 20 dead are 21.9 to 61.3 % (scipy); none has a secondary: 30 / (1 - .219) is 39 nodes, and half dead are 60."""
    from scipy.stats import binomtest

    right = binomtest(8, 20).proportion_ci(0.95, method="wilson")
    told = list(adjusted(buds_cut_for_injury=20, buds_primary_alive=12, buds_secondary_only=0).headline.numbers)
    assert told[1:3] == pytest.approx([100 * right.low, 100 * right.high])
    assert told[3:] == [math.ceil(30 / (1 - right.low)), 60, 50]


@given(wanted, buds, shares)
def test_the_number_lies_in_its_range(nodes, counted, s):
    """Whatever the sample, the number by the count lies between the ends of the range that is told beside it."""
    found = adjusted(**dict(zip(COUNTED, counted)), wanted_nodes=nodes, secondary_share=s)
    ends = [list(note.numbers) for note in found.notes if note.id == "injury_adjustment.nodes_between"]
    assume(ends)
    assert ends[0][0] <= found.nodes_replacing_with_secondaries.number <= ends[0][1]


@given(wanted, buds, shares)
def test_deaths_that_are_inside_are_not_added(nodes, counted, s):
    """A number that holds this winter's deaths stays, is said to, and no printed rule counts them again."""
    found = adjusted(**dict(zip(COUNTED, counted)), wanted_nodes=nodes, secondary_share=s, deaths_in_wanted_nodes=THIS_WINTER)
    assert found.nodes_replacing_with_secondaries_exact.number == pytest.approx(nodes)
    assert found.headline.id == "injury_adjustment.nothing_to_add"
    assert not found.compared and not found.nodes_cornell.ok
    assert "injury_adjustment.once" not in ids(found.notes)


def test_severe_stays_severe_whatever_is_inside():
    """84 of 100 dead: wait, by cut buds too; and the extra wood of double pruning is named, two to three times 30."""
    found = adjusted(buds_primary_alive=16, buds_secondary_only=0, deaths_in_wanted_nodes=THIS_WINTER)
    assert found.headline.id == "injury_adjustment.wait" and not found.nodes_replacing_with_secondaries.ok
    assert [list(note.numbers) for note in found.notes if note.id == "injury_adjustment.until_burst"] == [[2, 3, 60, 90]]


@given(wanted, st.integers(50, 100), st.integers(50, 100))
def test_more_dead_never_takes_fewer_nodes(nodes, a, b):
    """Replacement rises with the dead."""
    worse, better = sorted([a, b])
    many, few = (adjusted(wanted_nodes=nodes, buds_primary_alive=alive, buds_secondary_only=0) for alive in (worse, better))
    assert many.nodes_replacing.number >= few.nodes_replacing.number >= nodes - 1e-6
