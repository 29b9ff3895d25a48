"""Layouts that sources print, against how the guide lays the same nodes out. The source stands beside each row."""

import pytest

from generator.calculators.layout_forms import lay_canes
from generator.calculators.option_records import LayoutOption
from generator.calculators.option_search import ranked_options
from generator.calculators.spur_layout import even_spurs
from generator.reading.rulebook import Rulebook
from tests.calculators.cases import ASKED, LAYOUT, LAYOUT_LIMITS, OPEN, OPTION_LIMITS, but, some
from tests.published.printed import prints

RENEWAL = 2  # nodes of a renewal spur: the guide counts them, the sources that print canes alone do not


@pytest.mark.parametrize(
    ("evidence", "nodes", "bearers", "on_each"),
    [
        ("bp-06", 30, 10, 3),  # Odneal: thirty as five spurs of three on each of two arms
        ("sys-11", 100, 50, 2),  # Badr and others: Concord at 100 nodes on spurs of two
        ("sys-11", 100, 20, 5),
        ("sys-11", 100, 10, 10),
        ("sys-11", 80, 40, 2),  # the same: Niagara at 80
        ("sys-11", 80, 16, 5),
        ("sys-11", 80, 8, 10),
        ("sys-12", 36, 9, 4),  # Rosner and Cook: nine bearers of four
        ("sys-12", 32, 4, 8),
        ("sys-12", 30, 2, 15),
        ("sys-12", 68, 4, 17),
        ("sys-12", 40, 20, 2),  # the cordon beside them
        ("sys-20", 24, 12, 2),  # Robertson and others: twelve spurs of two, or of one
        ("sys-20", 12, 12, 1),
        ("yc-01", 48, 24, 2),  # Kliewer and Dokoozlian, Table 4: 24 two-node spurs
    ],
)
def test_nodes_fall_evenly_on_the_printed_bearers(rulebook: Rulebook, evidence: str, nodes: int, bearers: int, on_each: int) -> None:
    """As many nodes on as many bearers give what the source prints for each."""
    assert {nodes, bearers, on_each} <= prints(rulebook, evidence)
    assert even_spurs(nodes, bearers, on_each) == [on_each] * bearers


@pytest.mark.parametrize(
    ("evidence", "canes", "on_each"),
    [
        ("bp-33", 4, 10),  # Washington Post 1978: four or five canes of ten buds on a strong vine
        ("bp-33", 5, 10),
        ("cs-12", 2, 12),  # Greven and others, abstract: two to six canes of 12 nodes
        ("cs-12", 3, 12),
        ("cs-12", 4, 12),
        ("cs-12", 5, 12),
        ("cs-12", 6, 12),
        ("cs-14", 6, 14),  # Baldwin and others, abstract: Sultana on 6, about 8 and about 10 canes of 14
        ("cs-14", 8, 14),
        ("cs-14", 10, 14),
        ("bp-18", 3, 15),  # Thompson Seedless, abstract: three to five canes of 15 nodes on equal vines
        ("bp-18", 5, 15),
        ("cs-10", 6, 12),  # pergola in Egypt, abstract
        ("cs-10", 6, 14),
        ("yc-13", 3, 10),  # Epee and others, abstract: one to four canes of ten
    ],
)
def test_canes_as_printed(rulebook: Rulebook, evidence: str, canes: int, on_each: int) -> None:
    """So many canes carry what the source prints, each with its renewal spur beside it, where the wire and the limit for a cane allow it."""
    assert {canes, on_each} <= prints(rulebook, evidence)
    lengths = but(LAYOUT, nodes=canes * (on_each + RENEWAL), vine_spacing_m=3.0, live_spur_positions_per_vine=OPEN)
    layout = lay_canes(lengths, but(LAYOUT_LIMITS, nodes_per_cane_most=15.0), canes, canes)
    assert (layout.canes, layout.renewals, layout.short_nodes) == ([on_each] * canes, [RENEWAL] * canes, 0)
    assert layout.cane_nodes in prints(rulebook, evidence)


def test_fifty_nodes_on_four_canes(rulebook: Rulebook) -> None:
    """yc-13, Epee and others: 50 cane nodes are four canes of 12.5 in the mean; the guide's differ by one node."""
    lengths = but(LAYOUT, nodes=50 + 4 * RENEWAL, vine_spacing_m=2.4, live_spur_positions_per_vine=OPEN, nodes_per_cane_wanted=some(13))
    layout = lay_canes(lengths, LAYOUT_LIMITS, 4, 4)
    assert {50, 12.5} <= prints(rulebook, "yc-13") and (sum(layout.canes) / 4, sorted(layout.canes)) == (12.5, [12, 12, 13, 13])


def ranked(nodes: int, positions: int, **changes: object) -> list[LayoutOption]:
    """The layouts of so many nodes on a cordon that can be built."""
    lengths = but(LAYOUT, nodes=nodes, live_spur_positions_per_vine=some(positions), **{"vine_spacing_m": 2.4, **changes})
    return [one for one in ranked_options(but(ASKED, layout=lengths), OPTION_LIMITS) if one.built]


@pytest.mark.parametrize(
    ("evidence", "on_each"),
    [
        ("bp-31", 2),  # Washington State University: vinifera two to three, labrusca four to five buds on a spur
        ("bp-31", 3),
        ("bp-31", 4),
        ("bp-31", 5),
        ("sl-05", 2),  # Hellman: fruiting spurs of two to four buds
        ("sl-05", 4),
        ("sl-08", 1),  # Oregon State University: one to three
        ("sl-08", 3),
        ("sys-09", 4),  # Ando and Wardle: spurs of four or five buds on two cordons
        ("sys-09", 5),
        ("sys-08", 6),  # May and others, abstract: six-node spurs
    ],
)
def test_spurs_as_printed_are_among_the_layouts(rulebook: Rulebook, evidence: str, on_each: int) -> None:
    """Ten positions at the printed length: the search offers spurs alike of just that length."""
    assert on_each in prints(rulebook, evidence)
    assert [on_each] * 10 in [one.layout.spurs for one in ranked(10 * on_each, 10)]


@pytest.mark.parametrize(("evidence", "canes"), [("sys-14", 1), ("sys-14", 2), ("sys-08", 2)])
def test_kicker_canes_are_offered_beside_spurs(rulebook: Rulebook, evidence: str, canes: int) -> None:
    """After Sanchez, and May and others: one or two canes beside the spurs where these are unfruitful; canes of at most twelve nodes."""
    assert canes in prints(rulebook, evidence)
    found = [one for one in ranked(36, 12) if one.layout.spurs and len(one.layout.canes) == canes and not one.layout.renewals]
    assert found and all(one.nodes_per_cane <= 12 for one in found)


def test_the_three_ways_of_table_grape_growers_are_all_offered() -> None:
    """sys-13, Progressive Crop Consultant: cane, spur, and spur with a few kicker canes."""
    targets = {one.layout.target for one in ranked(40, 20)}
    assert {"cane", "spur", "spurs_with_canes"} <= targets


@pytest.mark.parametrize(("ripe", "most"), [(1, 12), (0, 8)])
def test_poorly_ripened_canes_are_laid_shorter(rulebook: Rulebook, ripe: int, most: int) -> None:
    """bp-30: well ripened canes carry 10 to 12 nodes, poorly ripened ones only 6 to 8."""
    assert most in prints(rulebook, "bp-30")
    found = [one.nodes_per_cane for one in ranked(44, 12, canes_well_ripe=some(ripe)) if one.layout.target == "cane"]
    assert max(found) <= most and min(found) >= 6
    assert rulebook.values["nodes_per_unripe_cane_most" if ripe == 0 else "nodes_per_cane_most"].number == most


@pytest.mark.parametrize(("canes", "on_each", "nodes"), [(4, 8, 32), (3, 10, 30)])
def test_thirty_to_thirty_five_nodes_either_way(rulebook: Rulebook, canes: int, on_each: int, nodes: int) -> None:
    """bp-30: a medium vine's 30 to 35 nodes as four canes of eight or three of ten; both can be built here on 1.8 m. (That four spread better it
    says without a wire; by the quarters of one wire they do not.)"""
    assert {canes, on_each, nodes} <= prints(rulebook, "bp-30")
    found = ranked(nodes + canes * RENEWAL, 12, vine_spacing_m=1.8)
    assert [on_each] * canes in [one.layout.canes for one in found] and sum([on_each] * canes) == nodes


@pytest.mark.parametrize(("evidence", "value", "most"), [("cs-17", "nodes_per_spur_most", 2), ("cs-11", "nodes_per_renewal_spur", 2), ("cs-14", "canes_per_vine_tried", 8)])
def test_the_guide_keeps_within_what_print_allows(rulebook: Rulebook, evidence: str, value: str, most: int) -> None:
    """The third bud of a spur often fails (Robinson), so spurs keep two; renewal spurs of three had more blind nodes (Epee and others); canes up to
    the about eight of a wide trellis (Baldwin and others) are tried."""
    assert most in prints(rulebook, evidence) and rulebook.values[value].number == most


def test_more_canes_than_seven_are_said_to_crowd_the_head(rulebook: Rulebook) -> None:
    """cs-13, Antcliff and others: more than seven canes overloaded in a very fruitful year. The guide lays fewer by itself and warns of eight."""
    assert rulebook.values["canes_per_vine_most"].number < 7 in prints(rulebook, "cs-13")
    lengths = but(LAYOUT, nodes=8 * 9, vine_spacing_m=2.4, live_spur_positions_per_vine=OPEN)
    found = ranked_options(but(ASKED, layout=lengths, structure=some(1), good_canes=some(12)), OPTION_LIMITS)
    eight = next(one for one in found if len(one.layout.canes) == 8)
    assert eight.built and "layout_options.head_crowded" in [say.id for say in eight.reasons]
