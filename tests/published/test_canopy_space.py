"""Room in the canopy and nodes on the wire against what is printed."""

import pytest

from generator.answers.compute import compute
from generator.calculators.cane_layout import wire_for
from generator.calculators.cane_path import nodes_on, path_to_right
from generator.calculators.spur_layout import even_spurs, positions_on_new_arms
from generator.calculators.vine_layout import vine_layout
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, but, some

FOOT = 0.3048


def room(rulebook, canopy_m: float, low: float, high: float, **more) -> dict:
    """The outputs of canopy_space for two arms of a canopy; every node bursts with one shoot, unless given."""
    inputs = {
        "curtains": 1,
        "cordon_arms": 2,
        "arm_length_m": canopy_m / 2,
        "shoots_per_m_low": low,
        "shoots_per_m_high": high,
        "budburst_pct": 100,
        "shoots_per_burst_node": 1,
        "noncount_shoots_kept": 0,
        **more,
    }
    return compute(rulebook, "canopy_space", inputs)["outputs"]


@pytest.mark.parametrize(
    ("evidence", "value", "figure", "number"),
    [
        ("sl-03", "shoots_per_m_high", "smart", 15),  # Smart, Practical Winery and Vineyard, July 2013
        ("vb-17", "shoots_per_m_high", "michigan", 15),  # Sabbatini, Wine and Craft Beverage News
        ("vb-19", "shoots_per_m_high", "adelaide_hills", 15),  # DJs Growers, May 2012
        ("vb-18", "shoots_per_m_high", "riesling_bc", 26),  # Reynolds and others, J. Amer. Soc. Hort. Sci. 119(5):874, abstract
        ("vb-19", "shoots_per_m_low", "adelaide_hills", 10),
        ("vb-18", "shoots_per_m_low", "riesling_bc", 16),
        ("vb-19", "shoots_per_m_high", "semi_sprawl", 30),
        ("vb-18", "shoots_per_m_in_print", "riesling_bc", 36),
        ("vb-16", "shoots_per_m_high", "smart_robinson", 15),  # Smart and Robinson, Sunlight into Wine, from memory
        ("B04-shoots-per-metre", "shoots_per_m_high", "michigan", 15),
        ("sl-04", "shoots_per_m_low", "dpird_cane", 5),  # DPIRD Western Australia, page 3: a shoot every 10 to 20 cm
        ("sl-04", "shoots_per_m_high", "dpird_spur", 20),  # the same: two shoots every 10 to 20 cm
    ],
)
def test_every_author_s_limit_is_kept(rulebook, evidence, value, figure, number):
    """Each side of the disagreement stands in the value by name, with the number that its source prints."""
    found = next(one for one in rulebook.values[value].figures if one.id == figure)
    assert found.number == number and evidence in [cite.id for cite in found.cites]
    assert evidence in rulebook.evidence


@pytest.mark.parametrize(
    ("evidence", "who", "form", "place", "says"),
    [
        ("sl-03", "R. Smart", "upright", 0, "At most 15 shoots on a metre: 15 nodes."),
        ("vb-17", "Michigan State University", "upright", 0, "At most 15 shoots on a metre: 15 nodes."),
        ("vb-17", "Michigan State University", "divided", 2, "At most 15 shoots on a metre: 15 nodes."),  # printed for a metre of row
        ("vb-19", "Adelaide Hills, upright", "upright", 0, "10 to 15 shoots on a metre: 10 to 15 nodes."),
        ("vb-19", "Adelaide Hills, half sprawling", "upright", 2, "At most 30 shoots on a metre: 30 nodes."),
        ("vb-19", "Adelaide Hills, half sprawling", "hanging", 0, "At most 30 shoots on a metre: 30 nodes."),
        ("vb-18", "British Columbia, Riesling", "upright", 0, "16 to 26 shoots on a metre: 16 to 26 nodes."),
    ],
)
def test_every_author_answers_for_the_vine_he_wrote_for(rulebook, evidence, who, form, place, says):
    """On a metre of wall where each node gives one shoot, nodes are the printed shoots; figures for other vines stand apart."""
    assert evidence in rulebook.evidence
    inputs = {"curtains": 1, "cordon_arms": 2, "arm_length_m": 0.5, "shoots_per_m_low": 10, "shoots_per_m_high": 15, "budburst_pct": 100}
    vine = {"shoots_per_burst_node": 1, "noncount_shoots_kept": 0, "canopy_form": form, "use": "wine", "grape_type": "vinifera"}
    lines = compute(rulebook, "canopy_space", {**inputs, **vine})["compared"]
    line = next(one for one in lines if one["who"]["text"] == who)
    assert (line["says"]["text"], line["place"]) == (says, place)


def test_divided_walls_take_their_shoots_on_each(rulebook):
    """vb-20, Kliewer and Dokoozlian 2005: divided canopies need 5-8 cm2 of leaf a gram, single ones 8-12; the limit holds for each wall."""
    leaf = rulebook.evidence["vb-20"].outputs["cm2_per_g"]
    assert max(leaf["divided_2005"]) <= min(leaf["single_2005"])
    one, two = (room(rulebook, 1.8 * walls, 10, 15, curtains=walls, cordon_arms=2 * walls, arm_length_m=0.9) for walls in (1, 2))
    assert two["nodes_high_exact"] == pytest.approx(2 * one["nodes_high_exact"])


def test_fifteen_shoots_a_metre_are_four_and_a_half_a_foot(rulebook):
    """B04 and vb-17: 15 a metre; the sources round 4.57 a foot to 4 (canopy in whole millimetres)."""
    assert room(rulebook, FOOT, 10, 15)["nodes_high_exact"] == pytest.approx(4.57, abs=0.02)


@pytest.mark.parametrize(("spacing_ft", "end", "buds"), [(5, "nodes_low", 20), (8, "nodes_high", 48)])
def test_buds_a_foot(rulebook, spacing_ft, end, buds):
    """bp-14, Smith, 2023 Grape Pruning Primer, Ohio State: 4 to 6 buds a foot, 20 to 48 on 5 to 8 ft (printed rounded: 50)."""
    assert room(rulebook, spacing_ft * FOOT, 4 / FOOT, 6 / FOOT)[end] == buds


@pytest.mark.parametrize(("spacing_cm", "nodes_per_m"), [(7.6, 26.3), (10, 20.0), (15, 13.3), (20.3, 9.85)])
def test_two_node_spurs_on_a_metre(rulebook, spacing_cm, nodes_per_m):
    """sl-02 (our arithmetic on sl-01's spacings): only from 13.3 cm on (sl-03, Smart) do two-node spurs stay under 15 shoots a metre."""
    most = room(rulebook, 1, 10, 15)["nodes_high_exact"]
    assert 2 * 100 / spacing_cm == pytest.approx(nodes_per_m, abs=0.05)
    assert (nodes_per_m <= most) == (spacing_cm >= 13.3)


def test_other_shoots_on_lightly_and_heavily_loaded_vines(rulebook):
    """B06/cs-11, Epee and others, OENO One 56(4), summary: 29.5 non-count shoots at 10 nodes, 2.8 at 50; they take room."""
    light = room(rulebook, 1.8, 10, 15, noncount_shoots_kept=29.5)["nodes_high_exact"]
    heavy = room(rulebook, 1.8, 10, 15, noncount_shoots_kept=2.8)["nodes_high_exact"]
    assert (light, heavy) == pytest.approx((0, 27 - 2.8))


@pytest.mark.parametrize(("internode_mm", "fit"), [(76, 11), (102, 8)])
def test_nodes_that_fit_on_half_the_spacing(internode_mm, fit):
    """hg-05 (our arithmetic on cs-02's internodes): 1.8 m less a gap of 0.1 m is 0.85 m each way; 11 or 8 nodes."""
    assert nodes_on(path_to_right(0, wire_for(2, 1800, 100), 0), internode_mm) == fit


@pytest.mark.parametrize(("spacing_mm", "spurs", "nodes"), [(100, 8, 32), (150, 5, 20)])
def test_spurs_that_fit_on_an_arm(spacing_mm, spurs, nodes):
    """hg-06 (our arithmetic): 0.85 m arm, first spur at 0.15 m; (0.85 - 0.15) / 0.10 is 7 and not 6.999."""
    assert positions_on_new_arms(850, 150, spacing_mm) == spurs
    assert sum(even_spurs(1000, 2 * spurs, 2)) == nodes


@pytest.mark.parametrize(("spurs", "most"), [(8, 32), (15, 60)])
def test_high_wire_spurs(spurs, most):
    """hg-07, NC State Extension Gardener Handbook, figure 14-33: 8 to 15 two-bud spurs on each of two cordons."""
    assert sum(even_spurs(1000, 2 * spurs, 2)) == most


@pytest.mark.parametrize(
    ("evidence", "target", "nodes", "changes", "bearers"),
    [
        ("ll-03", "cane", 8, {}, ([6], [2], [])),  # French order on Gamay: Guyot of 6 eyes on the cane and 2 on the spur
        ("ll-03", "spur", 10, {"live_spur_positions_per_vine": some(5)}, ([], [], [2] * 5)),  # the same: five spurs of two eyes
        ("ll-05", "cane", 12, {}, ([10], [2], [])),  # Muscadet, decree of 1994, art. 7: ten eyes and a spur of two
        ("sys-03", "cane", 12, {}, ([10], [2], [])),  # Ulmer and Skinkis, Catalyst 4:10-20, summary: 10 + 2 nodes
        ("sys-03", "spur", 12, {"live_spur_positions_per_vine": some(6)}, ([], [], [2] * 6)),  # the same: six spurs of two
    ],
)
def test_printed_layouts(rulebook, evidence, target, nodes, changes, bearers):
    """The layouts that sources print for their node numbers."""
    assert evidence in rulebook.evidence
    found = vine_layout(but(LAYOUT, target=target, nodes=nodes, **changes), LAYOUT_LIMITS)
    assert (found.canes, found.renewals, found.spurs) == bearers


@pytest.mark.parametrize(("canes", "on_each"), [(2, 12), (3, 12), (4, 12)])
def test_canes_of_twelve(canes, on_each):
    """yc-10, Greven and others, Aust. J. Grape Wine Res., abstract: canes of 12 nodes; with two-node renewal spurs beside them."""
    nodes = canes * (on_each + 2)
    found = vine_layout(but(LAYOUT, target="cane", nodes=nodes, vine_spacing_m=2.4, canes_wanted_per_vine=some(canes)), LAYOUT_LIMITS)
    assert found.canes == [on_each] * canes
