"""Room for nodes in the canopy."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.canopy_space import CanopySpaceValues, canopy_space
from generator.calculators.figures import FITS, OPEN, OTHER, Figure, Scope
from tests.calculators.cases import OPEN as LEFT_OUT
from tests.calculators.cases import SPACE, but, ids, some


LOW = [Figure("hills", "hills", "", "published", 10.0, [Scope("canopy_form", [0.0])]), Figure("table", "table", "", "published", 5.0, [Scope("use", [1.0])])]
HIGH = [
    Figure("shade", "shade", "", "published", 15.0, []),
    Figure("hills", "hills", "", "published", 15.0, [Scope("canopy_form", [0.0])]),
    Figure("sprawl", "sprawl", "", "published", 30.0, [Scope("canopy_form", [1.0])]),
    Figure("weak", "weak", "", "published", 26.0, [Scope("grape_type", [0.0])]),
]


def room(**changes):
    """The room of the plain vine with some inputs changed."""
    return canopy_space(but(SPACE, **changes), CanopySpaceValues(LOW, HIGH))


def test_a_second_wire_of_the_same_curtain_brings_no_room():
    """Four arms feed one curtain: two count, and a note says so."""
    result = room(cordon_arms=4)
    assert result.canopy_m == room(cordon_arms=2).canopy_m == 1.4
    assert "canopy_space.same_curtain" in ids(result.notes)


def test_a_second_curtain_brings_room():
    """Four arms on two curtains all count."""
    assert room(curtains=2, cordon_arms=4).canopy_m == 2.8


def test_arms_that_reach_their_neighbours_fill_the_spacing():
    """0.7 m each way with a gap of 0.1 m fill 1.5 m; shoots lean into the gap."""
    assert room(vine_spacing_m=some(1.5), tip_gap_m=some(0.1)).canopy_m == 1.5


def test_short_arms_leave_wire_empty():
    """0.5 m each way on 1.5 m is 1 m of canopy, and half a metre stays empty."""
    result = room(arm_length_m=0.5, vine_spacing_m=some(1.5), tip_gap_m=some(0.1))
    assert result.canopy_m == 1.0
    assert [say.numbers for say in result.notes if say.id == "canopy_space.wire_empty"] == [[0.5]]


def test_lengths_are_whole_millimetres():
    """0.85 + 0.85 + 0.10 is 1.80 exactly, so the row is filled (as floats it falls short)."""
    assert room(arm_length_m=0.85, vine_spacing_m=some(1.8), tip_gap_m=some(0.1)).canopy_m == 1.8


def test_both_ends_are_given_exact_and_whole():
    """10 to 15 shoots on 1.4 m at 90 %: 15.6 to 23.3 nodes, cut as 16 and 23."""
    result = room()
    assert (result.nodes_low, result.nodes_high) == (16, 23)
    assert (result.nodes_low_exact, result.nodes_high_exact) == pytest.approx((15.5556, 23.3333), abs=1e-4)


def test_other_shoots_can_fill_the_canopy_alone():
    """29.5 non-count shoots on a ten-node vine (cs-11) leave no room on 1.4 m."""
    result = room(noncount_shoots_kept=some(29.5))
    assert result.nodes_high == 0 and "canopy_space.no_room" in ids(result.notes)


@given(st.floats(0.0, 60.0), st.floats(0.0, 60.0))
def test_more_other_shoots_never_make_room(a, b):
    """Room falls as non-count shoots rise."""
    few, many = sorted([a, b])
    assert room(noncount_shoots_kept=some(many)).nodes_high_exact <= room(noncount_shoots_kept=some(few)).nodes_high_exact


@given(st.floats(10.0, 100.0), st.floats(10.0, 100.0))
def test_better_budburst_never_makes_room_for_more_nodes(a, b):
    """More shoots a node fill the same canopy with fewer nodes."""
    poor, good = sorted([a, b])
    assert room(budburst_pct=good).nodes_high_exact <= room(budburst_pct=poor).nodes_high_exact


@given(st.floats(0.1, 4.0), st.floats(0.1, 4.0))
def test_longer_arms_never_have_less_room(a, b):
    """Room grows with the arm."""
    short, long = sorted([a, b])
    assert room(arm_length_m=short).nodes_low_exact <= room(arm_length_m=long).nodes_low_exact


def test_limits_the_wrong_way_round_are_refused():
    """The fewest shoots must not be over the most."""
    with pytest.raises(ValueError, match="low shoot number"):
        room(shoots_per_m_low=16.0)


def lines(**changes) -> dict:
    """What each author says and whether it is made for this vine."""
    return {one.who.words[0]: (one.says.id.split(".")[1], one.says.numbers, one.place) for one in room(**changes).compared}


def test_every_author_stands_side_by_side_with_his_nodes():
    """1.4 m at 0.9 shoots a node: 15 shoots a metre are 23 nodes, 26 are 40, 30 are 47; a band has both its ends, a least alone one."""
    found = lines()
    assert found["shade"] == ("author_most", [15.0, 23.0], FITS)
    assert found["hills"] == ("author_band", [10.0, 15.0, 16.0, 23.0], FITS)
    assert found["weak"] == ("author_most", [26.0, 40.0], FITS)
    assert found["sprawl"] == ("author_most", [30.0, 47.0], OTHER)
    assert found["table"] == ("author_least", [5.0, 8.0], OTHER)


def test_a_figure_for_other_vines_is_set_apart():
    """Hanging shoots take the sprawling figure and not the upright one; an unknown grape leaves it open."""
    found = lines(canopy_form=some(1), grape_type=LEFT_OUT)
    assert [found[name][2] for name in ("hills", "sprawl", "weak", "shade")] == [OTHER, FITS, OPEN, FITS]


@given(st.floats(0.0, 60.0))
def test_other_shoots_take_room_from_every_author(others):
    """They stand in the wall whoever limits it."""
    bare, full = lines(noncount_shoots_kept=some(0)), lines(noncount_shoots_kept=some(others))
    assert all(full[name][1][-1] <= bare[name][1][-1] for name in bare)


def test_each_wall_of_a_divided_canopy_counts():
    """Two walls take twice the shoots, by every author, and a note says why."""
    one, two = lines(), lines(curtains=2, cordon_arms=4)
    assert two["shade"][1][1] == pytest.approx(2 * one["shade"][1][1], abs=1)
    assert "canopy_space.divided" in ids(room(curtains=2, cordon_arms=4).notes) and "canopy_space.divided" not in ids(room().notes)


def test_it_is_said_how_far_authors_lie_apart():
    """15 to 26 for this vine; those for others do not count."""
    told = {note.id: note.numbers for note in room().notes}
    assert told["canopy_space.authors_apart"] == [15.0, 26.0, 23.0, 40.0]
    assert "canopy_space.authors_apart" not in ids(room(grape_type=LEFT_OUT).notes)
