"""How far bearers reach: the room, the interval, the canes still to cut, and what is said where something is missing."""

import pytest

from generator.calculators.bearer_reach import BearerReachValues, bearer_reach
from generator.calculators.bud_fruitfulness import as_reach
from tests.calculators.cases import OPEN, but, ids, some
from tests.calculators.tallies import BLOCK as TALLIED
from tests.calculators.test_bearers import COOL

VALUES = BearerReachValues(
    nodes_per_long_spur_most=6.0,
    interval_level_pct=90.0,
    interval_z=1.6448536269514722,
    canes_cut_most=200.0,
)
BLOCK = but(
    as_reach(TALLIED),
    primordia_node=COOL.primordia,
    dead_primary_pct=some(4),
    dead_node_pct=1.0,
    bud_spread=0.7,
    likeness=0.2,
    dissection_to_spring=1.0,
)


def reach(**changes):
    """The reach of the plain block with some inputs changed."""
    return bearer_reach(but(BLOCK, **changes), VALUES)


def test_reach_is_the_crop_that_fits_over_the_crop_wanted():
    """16.5 shoots at 0.968 a node are 17.05 nodes; at 0.7146 bunches they carry 12.18 of the 13.02 wanted: 0.94."""
    result = reach()
    assert result.spur_reach.number == pytest.approx(0.7145674 * 16.5 / (0.95 * 1.0185) / (6000 / 4008.264 / 0.115))
    assert result.cane_reach.number == pytest.approx(1.62, abs=0.005)


def test_other_shoots_take_room():
    """Five other shoots of the 16.5 that fit take 5 / 16.5 of the reach; as many as fit leave none."""
    assert reach(noncount_shoots_kept=some(5)).spur_reach.number == pytest.approx(reach().spur_reach.number * 11.5 / 16.5)
    assert reach(noncount_shoots_kept=some(30)).cane_reach.number == 0.0


@pytest.mark.parametrize("missing", ["target_yield_t_ha", "bearing_vines_per_ha", "bunch_weight_g", "vine_spacing_m"])
def test_without_a_crop_wish_bearers_are_compared(missing):
    """Their bunches stay, reach and interval are open, and a note says what is needed."""
    result = reach(**{missing: OPEN}, canes_dissected=some(50))
    assert result.spur_bunches_per_node == reach().spur_bunches_per_node
    assert not result.spur_reach.ok and not result.spur_reach_low.ok and not result.more_canes.ok
    assert "bearer_reach.no_wish" in ids(result.notes)


def test_without_the_number_of_canes_there_is_no_interval():
    """The reach is there, its interval is not, and the number is asked for."""
    result = reach()
    assert result.spur_reach.ok and not result.spur_reach_high.ok
    assert "bearer_reach.no_canes" in ids(result.notes)


def test_four_times_the_canes_halve_the_interval():
    """The interval lies evenly round the reach and shrinks with the root of the number of canes."""
    few, many = reach(canes_dissected=some(30)), reach(canes_dissected=some(120))
    half = few.spur_reach_high.number - few.spur_reach.number
    assert few.spur_reach.number - few.spur_reach_low.number == pytest.approx(half)
    assert many.spur_reach_high.number - many.spur_reach.number == pytest.approx(half / 2)


def test_alike_buds_widen_the_interval():
    """Were buds of a cane all the same, the second bud would tell nothing: wider than with no likeness at all."""
    width = [reach(canes_dissected=some(50), likeness=likeness).spur_reach_high.number for likeness in (0.0, 0.2, 1.0)]
    assert width == sorted(width) and len(set(width)) == 3


def test_so_many_more_canes_settle_it():
    """Where spurs straddle the crop, cutting the canes named moves the interval off 1, and one cane fewer does not."""
    wish = {"target_yield_t_ha": some(6.8)}
    asked = reach(**wish, canes_dissected=some(20)).more_canes
    assert asked.ok and asked.number > 0
    enough, short = (reach(**wish, canes_dissected=some(20 + asked.number - less)).more_canes.number for less in (0, 1))
    assert (enough, short) == (0.0, 1.0)


def test_where_no_reasonable_number_tells_it_says_so():
    """At 0.94 of the crop more than 200 canes would be needed."""
    result = reach(canes_dissected=some(50))
    assert not result.more_canes.ok
    assert "bearer_reach.too_close" in ids(result.notes)


def test_a_barren_base_has_an_interval_from_nothing():
    """Reach 0 from 30 canes: the low end is 0 and not below, the high end well above."""
    result = reach(primordia_node=[some(0)] * 8 + [OPEN] * 7, canes_dissected=some(30))
    assert result.spur_reach_low.number == 0.0 and result.spur_reach_high.number > 0.1


def test_dead_primaries_further_out_lower_the_cane_alone():
    """30 % dead beyond node 4 against 4 % before it: the two-node spur stays, the cane falls, and the rise is 26 points."""
    result = reach(dead_primary_inner_pct=some(4), dead_primary_outer_pct=some(30))
    assert result.spur_reach == reach().spur_reach
    assert result.cane_reach.number < reach().cane_reach.number
    assert result.dead_primary_rise_pct.number == 26.0


def test_buds_from_before_the_frost_are_refused():
    """What was alive then may be dead now."""
    with pytest.raises(ValueError, match="before the last hard frost"):
        reach(tally_date=some(100), last_freeze_date=some(110))


def test_too_few_nodes_for_a_cane_leave_it_open():
    """With five nodes known, canes are left open and a note says how many to cut."""
    result = reach(primordia_node=COOL.primordia[:5] + [OPEN] * 10)
    assert not result.cane_reach.ok and not result.cane_nodes.ok
    assert "bearer_reach.no_cane" in ids(result.notes)
