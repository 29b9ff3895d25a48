"""Layouts of one vine against what is printed, the source beside each."""

import pytest

from generator.answers.compute import compute
from generator.calculators.cane_layout import wire_for
from generator.calculators.cane_path import nodes_on, path_to_right
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.option_search import ranked_options
from generator.calculators.spur_layout import positions_on_new_arms
from generator.calculators.vine_layout import vine_layout
from generator.calculators.vine_stand import Stand
from tests.calculators.cases import ASKED, LAYOUT, LAYOUT_LIMITS, OPEN, OPTION_LIMITS, but, some

INCH = 0.0254


@pytest.mark.parametrize(("internode_mm", "nodes"), [(76, 11), (102, 8)])
def test_nodes_that_fit_on_a_cane(internode_mm, nodes):
    """hg-05, our arithmetic on Hellman's internodes (cs-02): 1.8 m less a hand between the tips is 850 mm each way: 11 and 8 nodes."""
    wire = wire_for(2, 1800, 100)
    assert (wire, nodes_on(path_to_right(0, wire, 0), internode_mm)) == (850, nodes)


@pytest.mark.parametrize(("spacing_mm", "an_arm", "a_vine"), [(100, 8, 32), (150, 5, 20)])
def test_spurs_on_one_arm(spacing_mm, an_arm, a_vine):
    """hg-06, our arithmetic: first spur at 150 mm of 850: 8 and 5 spurs; with two nodes each 32 and 20 on a bilateral vine."""
    assert positions_on_new_arms(850, 150, spacing_mm) == an_arm
    layout = vine_layout(but(LAYOUT, nodes=a_vine, vine_spacing_m=1.8, live_spur_positions_per_vine=some(2 * an_arm)), LAYOUT_LIMITS)
    assert layout.spurs == [2] * (2 * an_arm) and layout.short_nodes == 0


@pytest.mark.parametrize(("nodes", "each"), [(38, 8), (40, 8), (52, 11), (55, 12)])
def test_marlborough_vines_on_four_canes(nodes, each):
    """bp-32, Naylor: Sauvignon blanc 1.8 m apart with about 10 cm between the cane ends, mostly four canes; 36-40 buds on a weak site, 50-55 on
    a strong one. Four canes carry them; with two buds on each renewal spur no cane needs the printed 12-15."""
    layout = vine_layout(but(LAYOUT, target="cane", nodes=nodes, vine_spacing_m=1.8, internode_cm=7.0, canes_wanted_per_vine=some(4)), LAYOUT_LIMITS)
    assert (len(layout.canes), max(layout.canes), layout.short_nodes) == (4, each, 0)


def test_twelve_to_fifteen_buds_want_short_internodes():
    """bp-32, Naylor: 12 buds fit on the 850 mm of each cane with internodes of 7 cm, 15 only with 6 cm and a head 15 cm low."""
    path = path_to_right(150, wire_for(4, 1800, 100), 0)
    assert nodes_on(path, 70) >= 12 and nodes_on(path, 60) >= 15 > nodes_on(path, 70)


@pytest.mark.parametrize(("inches", "low", "high"), [(3, 8, 15), (8, 8, 15)])
def test_north_carolina_s_spurs_on_a_cordon(inches, low, high):
    """sl-01, NC State: a spur every 3 to 8 inches and 8 to 15 on a cordon; the two ranges meet on arms of 0.6 to 1.1 m at 3 inches and of
    1.5 m and more at 8."""
    spacing = round(inches * INCH * 1000)
    arms = [arm for arm in range(300, 4001, 10) if low <= positions_on_new_arms(arm, 0, spacing) <= high]
    assert arms[0] == pytest.approx((low - 1) * spacing, abs=10) and arms[-1] == pytest.approx(high * spacing, abs=10)


def test_six_spurs_a_hand_apart():
    """sl-01, Bowman: six spurs 10 cm apart on a new cordon: 0.5 m from the first to the last."""
    assert positions_on_new_arms(500, 0, 100) == 6


@pytest.mark.parametrize(("spacing_mm", "spurs", "nodes"), [(76, 13.2, 26.3), (100, 10.0, 20.0), (150, 6.67, 13.3), (203, 4.93, 9.85)])
def test_spurs_and_nodes_a_metre(spacing_mm, spurs, nodes):
    """sl-02, our arithmetic on sl-01: spurs a metre and nodes a metre of two-node spurs, over ten metres of arm."""
    found = (positions_on_new_arms(10_000, 0, spacing_mm) - 1) / 10
    assert found == pytest.approx(spurs, abs=0.11) and 2 * found == pytest.approx(nodes, abs=0.21)


@pytest.mark.parametrize(("spacing_mm", "too_dense"), [(130, True), (134, False)])
def test_the_shading_limit_is_a_spur_every_thirteen_centimetres(rulebook, spacing_mm, too_dense):
    """sl-03, Smart, Practical Winery and Vineyard, July 2013: under 15 shoots a metre; two-bud spurs that all burst stand 13.3 cm apart at least."""
    nodes_a_metre = 2 * (positions_on_new_arms(100_000, 0, spacing_mm) - 1) / 100
    assert (nodes_a_metre > rulebook.values["shoots_per_m_high"].number) == too_dense


@pytest.mark.parametrize(("spacing_cm", "on_canes", "on_spurs"), [(10, 10, 20), (20, 5, 10)])
def test_home_table_grapes(spacing_cm, on_canes, on_spurs):
    """sl-04, DPIRD Western Australia: one shoot every 10-20 cm on canes (5-10 a metre), two on spurs (10-20): the densest quarter of two canes
    that fill the wire, and of two-node spurs at that distance, comes to the printed number within a node a quarter."""
    quarter = 0.5
    asked = but(ASKED, shoots_per_node=1.0, structure=some(1))
    lengths = but(LAYOUT, vine_spacing_m=2.0, tip_gap_m=0.01, head_below_wire_cm=0.0, internode_cm=float(spacing_cm), nodes=4 + 2 * (99 // spacing_cm))
    options = ranked_options(but(asked, layout=but(lengths, live_spur_positions_per_vine=OPEN)), OPTION_LIMITS)
    cane = next(one for one in options if one.layout.target == "cane" and len(one.layout.canes) == 2)
    assert cane.barest == pytest.approx(on_canes, abs=1 / quarter)
    assert 2 * (positions_on_new_arms(10_000, 0, 10 * spacing_cm) - 1) / 10 == on_spurs


def test_renewal_spurs_stand_below_the_canes_and_nearer_the_head():
    """cs-15, Zabadal, Growing Table Grapes in a Temperate Climate (E-2774): the renewal spur sits below the cane and inside it."""
    layout = vine_layout(but(LAYOUT, target="cane", nodes=24, vine_spacing_m=1.8, canes_wanted_per_vine=some(2)), LAYOUT_LIMITS)
    shapes = draw_vine(layout, Stand(True, False, 2, 850, 0, 0, False), 900, 1800, 100).shapes
    tips = {css: [shape.points[-1] for shape in shapes if shape.css == css] for css in ("cane", "renewal")}
    assert len(tips["renewal"]) == len(tips["cane"]) == 2
    assert all(spur.y > cane.y and abs(spur.x) < abs(cane.x) for spur, cane in zip(tips["renewal"], tips["cane"]))


def test_six_node_spurs_and_two_canes_of_twelve():
    """sys-08, May, Clingeleffer and Brien 1982 (abstract): six-node spurs plus two twelve-node canes at the same node number as canes
    alone. The guide finds that layout for 60 nodes on a vine 2.4 m apart with twelve positions."""
    lengths = but(LAYOUT, nodes=60, vine_spacing_m=2.4, live_spur_positions_per_vine=some(12))
    found = [one for one in ranked_options(but(ASKED, layout=lengths), OPTION_LIMITS) if one.built]
    mixed = next(one for one in found if one.layout.target == "long_spurs_with_canes" and len(one.layout.canes) == 2)
    assert max(mixed.layout.spurs) <= 6 and mixed.nodes_per_cane <= 12 and mixed.layout.nodes == 60


def test_the_limits_of_that_trial_are_the_guide_s(rulebook):
    """sys-08, the same abstract: six nodes on a long spur, twelve on a cane, two canes beside the spurs."""
    followed = [rulebook.values[name].number for name in ("nodes_per_long_spur_most", "nodes_per_cane_most", "canes_beside_spurs")]
    assert followed == [6, 12, 2]


def test_the_page_computes_the_printed_vine(rulebook):
    """hg-06 through the command: sixteen spurs of two nodes, 100 mm apart."""
    inputs = {"nodes": 32, "curtains": 1, "vine_spacing_m": 1.8, "tip_gap_m": 0.1, "first_spur_from_head_m": 0.15, "head_below_wire_cm": 0, "internode_cm": 8}
    more = {"present_structure": "spur_cordon", "cordon_arms": 2, "arm_length_m": 0.85, "live_spur_positions_per_vine": 16, "good_canes_per_vine": 0}
    found = compute(rulebook, "layout_options", inputs | more)
    assert (found["outputs"]["spurs"], found["outputs"]["spacing_mm"]) == (16, 100)
    assert found["options"][0]["built"] and found["options"][0]["reasons"][0]["text"].startswith("It fits the node number")
