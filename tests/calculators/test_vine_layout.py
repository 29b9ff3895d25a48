"""Where the nodes of one vine go."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.answers.catalogue import catalogue
from generator.calculators.hand_work import hand_work
from generator.calculators.vine_layout import vine_layout
from generator.calculators.wording import worded
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, OPEN, but, ids, some


def layout(**changes):
    """The layout of the plain vine with some inputs changed."""
    return vine_layout(but(LAYOUT, **changes), LAYOUT_LIMITS)


def canes(**changes):
    """The same for canes."""
    return layout(target="cane", **changes)


def test_nodes_go_on_the_live_positions():
    """20 nodes on ten positions are two each."""
    assert layout().spurs == [2] * 10


def test_uneven_numbers_are_spread_along_the_arms():
    """16 nodes on ten positions: six twos, never bunched at one end."""
    spurs = layout(nodes=16).spurs
    assert sorted(spurs) == [1] * 4 + [2] * 6 and sum(spurs[:5]) == sum(spurs[5:])


def test_too_few_positions_are_said_and_spurs_not_lengthened():
    """26 nodes on ten positions: two each, six find no place."""
    result = layout(nodes=26)
    assert (max(result.spurs), result.short_nodes) == (2, 6)
    assert "vine_layout.too_few_positions" in ids(result.notes)


def test_positions_without_a_spur_are_said():
    """Seven nodes on ten positions: three positions stay empty, never two neighbours."""
    result = layout(nodes=7)
    assert result.spurs == [1] * 7 and "vine_layout.positions_left" in ids(result.notes)


def test_a_new_arm_has_as_many_positions_as_the_nodes_ask_for():
    """Positions not counted: 12 nodes want six positions, and a note says that they are assumed."""
    result = layout(nodes=12, live_spur_positions_per_vine=OPEN)
    assert result.spurs == [2] * 6 and result.positions_assumed


def test_one_cane_where_one_is_enough():
    """Twelve nodes on 1.1 m are ten on a cane and two on its renewal spur (agronomy's first worked block; ours)."""
    result = canes(nodes=12, vine_spacing_m=1.1)
    assert (result.canes, result.renewals, result.cane_nodes, result.renewal_nodes, result.nodes) == ([10], [2], 10, 2, 12)


def test_canes_wanted_are_the_least_laid():
    """Who wants two canes gets two, even where one would do."""
    assert canes(nodes=12, canes_wanted_per_vine=some(2)).canes == [4, 4]


def test_a_wire_too_short_says_by_how_much():
    """1.0 m spacing, nodes every 10 cm, six canes: 450 mm of wire each carry five nodes; 60 nodes lack 300 mm a cane."""
    result = canes(nodes=60, vine_spacing_m=1.0, internode_cm=10.0, head_below_wire_cm=12.0)
    assert (result.short_nodes, result.wire_short_mm) == (18, 300)
    assert "vine_layout.wire_too_short" in ids(result.notes)


def test_canes_too_long_are_not_the_wire_s_fault():
    """84 cane nodes on 2.4 m: the wire has room, the guide lays twelve on a cane, 96 nodes leave 12 over."""
    result = canes(nodes=96, vine_spacing_m=2.4)
    assert (result.canes, result.short_nodes, result.wire_short_mm) == ([12] * 6, 12, 0)
    assert "vine_layout.canes_too_long" in ids(result.notes)


def test_a_head_below_the_wire_gives_the_cane_its_first_nodes():
    """Between head and wire sit one to two nodes more than on the flat (15 cm, nodes every 8 cm)."""
    flat = canes(nodes=60, vine_spacing_m=1.0, head_below_wire_cm=0.0).canes[0]
    assert canes(nodes=60, vine_spacing_m=1.0, head_below_wire_cm=15.0).canes[0] == flat + 1


def test_long_spurs_stand_among_short_ones():
    """24 nodes on twelve positions: long spurs of six, the rest short, none without a node."""
    spurs = layout(target="long_spurs", nodes=24, live_spur_positions_per_vine=some(12)).spurs
    assert sum(spurs) == 24 and max(spurs) == 6 and min(spurs) == 1


def test_spurs_with_canes_share_the_nodes():
    """Half of 40 nodes on two canes of ten, half on the spurs."""
    result = layout(target="spurs_with_canes", nodes=40, vine_spacing_m=2.0, live_spur_positions_per_vine=some(12))
    assert (result.canes, result.spur_nodes) == ([10, 10], 20)


@given(st.integers(1, 150), st.integers(0, 60), st.sampled_from(["spur", "long_spurs", "spurs_with_canes"]))
def test_no_node_is_lost_or_made_up_on_spurs(nodes, positions, target):
    """Nodes laid and nodes without a place are the nodes asked for; no spur is without a node."""
    result = layout(nodes=nodes, target=target, live_spur_positions_per_vine=some(positions))
    assert result.nodes + result.short_nodes == nodes
    assert result.nodes == sum(result.spurs) + sum(result.canes)
    assert len(result.spurs) <= positions and min(result.spurs, default=1) >= 1


@given(st.integers(1, 150), st.floats(0.5, 4.0), st.floats(3.0, 20.0), st.integers(1, 6))
def test_canes_are_alike_and_fit_the_wire(nodes, spacing, internode, wanted):
    """Canes differ by one node at most, none passes the limits, and nothing is lost."""
    result = canes(nodes=nodes, vine_spacing_m=spacing, internode_cm=internode, canes_wanted_per_vine=some(wanted))
    assert max(result.canes) - min(result.canes) <= 1 and 1 <= max(result.canes) <= 12
    assert result.cane_nodes + result.short_nodes == max(len(result.canes), nodes - result.renewal_nodes)


@given(st.integers(1, 100), st.integers(1, 100))
def test_more_nodes_never_lay_fewer(a, b):
    """The nodes laid rise with the nodes asked for."""
    few, many = sorted([a, b])
    assert layout(nodes=few).nodes <= layout(nodes=many).nodes


def test_an_unknown_target_is_refused():
    """There is a layout for four targets only."""
    with pytest.raises(ValueError, match="no layout"):
        layout(target="arbour")


def test_nodes_on_a_cane_as_wanted_replace_the_limit():
    """Fourteen on a cane where that is wanted: 96 nodes are six canes of fourteen and six renewal spurs (the second worked block; ours)."""
    result = canes(nodes=96, vine_spacing_m=2.4, head_below_wire_cm=15.0, nodes_per_cane_wanted=some(14))
    assert (result.canes, result.renewals, result.short_nodes) == ([14] * 6, [2] * 6, 0)


def test_shorter_canes_as_wanted_make_more_of_them():
    """24 nodes on canes of six: three of them, with two nodes on each renewal spur."""
    assert canes(nodes=24, nodes_per_cane_wanted=some(6)).canes == [6, 6, 6]


def test_one_arm_laid_new_keeps_the_other_s_spurs():
    """24 nodes, 14 positions on two arms of 0.85 m: a cane of eleven reaches the tip, two nodes renew it, eleven stand on seven positions."""
    result = layout(target="lay_new_arm", nodes=24, vine_spacing_m=1.8, live_spur_positions_per_vine=some(14))
    assert (result.canes, result.renewals, len(result.spurs), sum(result.spurs), result.positions) == ([11], [2], 7, 11, 7)


def test_the_only_arm_laid_new_has_no_spurs():
    """One arm, laid new: a cane and its renewal spur, and what they cannot carry is said."""
    result = layout(target="lay_new_arm", nodes=24, cordon_arms=some(1))
    assert result.spurs == [] and result.short_nodes == 24 - result.nodes and "vine_layout.too_few_positions" in ids(result.notes)


def test_poorly_ripe_canes_are_kept_short():
    """Canes that are not well ripe get eight nodes at most, whatever length is wanted, and a note says so; ripe ones are as before."""
    unripe = canes(nodes=40, vine_spacing_m=2.4, canes_well_ripe=some(0), nodes_per_cane_wanted=some(12))
    assert max(unripe.canes) <= 8 and unripe.short_nodes == 0 and "vine_layout.unripe" in ids(unripe.notes)
    ripe = canes(nodes=40, vine_spacing_m=2.4, canes_well_ripe=some(1))
    assert max(ripe.canes) > 8 and "vine_layout.unripe" not in ids(ripe.notes)


@pytest.mark.parametrize(("nodes", "number", "fewer"), [(12, 1, False), (24, 2, True)])
def test_one_cane_is_not_told_to_become_fewer(rulebook, nodes, number, fewer):
    """A single cane that leaves wire bare wants longer internodes; only of several could there be fewer and longer ones."""
    found = canes(nodes=nodes, vine_spacing_m=2.4, canes_wanted_per_vine=some(number))
    note = next(say for say in found.notes if say.id == "vine_layout.wire_bare")
    assert len(found.canes) == number and ("fewer" in worded(catalogue(rulebook), note, "si")) == fewer


@pytest.mark.parametrize(("arms", "cuts"), [(0, 3), (2, 4), (4, 6)])
def test_every_arm_that_goes_is_a_cut(arms, cuts):
    """One cane with its renewal spur: two cuts, and one for the old cane of a head or for each arm of a cordon that is taken away."""
    assert hand_work(canes(nodes=12, vine_spacing_m=1.1), arms).cuts == cuts
