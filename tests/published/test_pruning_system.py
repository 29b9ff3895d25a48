"""The tables behind spur or cane against what is published. The source stands beside each check; figures come from its evidence."""

import pytest

from generator.reading.rulebook import Rulebook
from generator.reading.variety_lists import verdict
from tests.published.vines import CORDON, outcome, printed, target

VARIETY_OF = {
    "Sultana / Thompson Seedless": "sultana",
    "Crimson Seedless": "crimson_seedless",
    "Red Globe": "red_globe",
    "Flame Seedless": "flame_seedless",
    "Italia": "italia",
    "Cardinal": "cardinal",
    "Muscat Gordo": "muscat_gordo",
    "Cornichon": "cornichon",
    "Waltham Cross": "waltham_cross",
    "Chardonnay": "chardonnay",
    "Cabernet Sauvignon": "cabernet_sauvignon",
}


@pytest.mark.parametrize(("group", "says"), [("firm_spur", "spur"), ("firm_cane", "cane"), ("conflict", "conflict")])
def test_lists_agree_and_differ_as_their_comparison_says(rulebook: Rulebook, group: str, says: str) -> None:
    """dis-02: which varieties all lists spur, all lists cane, and on which they differ."""
    for name in printed(rulebook, "dis-02")["table"][group]:
        assert verdict(rulebook.varieties[VARIETY_OF[name]]) == says, name


@pytest.mark.parametrize("entry", ["Flame Seedless", "Cardinal", "Red Globe", "Italia", "Sultana", "Muscat Gordo", "Crimson Seedless"])
def test_the_western_australian_list_is_kept(rulebook: Rulebook, entry: str) -> None:
    """var-01, page 3: each variety's listing is what the page prints."""
    row = next(row for row in printed(rulebook, "var-01")["table"] if row["variety"] == entry)
    variety = next(one for one in rulebook.varieties.values() if one.name == entry)
    said = [listing.says for listing in variety.lists if any(cite.id == "var-01" for cite in listing.cites)]
    assert said == [row["pruning"]]


def test_scarlet_royal_may_go_either_way_and_autumn_king_to_canes(rulebook: Rulebook) -> None:
    """sys-02: two seasons at Kearney; the yield of one variety did not differ, that of the other did."""
    assert printed(rulebook, "sys-02")["Autumn King"] == "cane" == verdict(rulebook.varieties["autumn_king"])
    assert verdict(rulebook.varieties["scarlet_royal"]) == "conflict"


@pytest.mark.parametrize("crop", ["yes", "no"])
def test_a_cool_climate_alone_forces_no_pinot_noir_to_canes(rulebook: Rulebook, crop: str) -> None:
    """sys-03, sys-04: with equal nodes Pinot noir bore the same on spurs in a cool climate."""
    facts = {"variety": "pinot_noir", "climate": "cool", "crop_made_in_two_of_three_years": crop}
    assert target(rulebook, **facts) != "Canes from a head"


@pytest.mark.parametrize(("climate", "side"), [("cool", "climate_not"), ("warm", "climate_enough"), ("hot", "climate_enough")])
def test_where_lists_differ_the_climate_speaks(rulebook: Rulebook, climate: str, side: str) -> None:
    """sys-06: cool, canes; warm or hot, spurs."""
    assert outcome(rulebook, "fruit_from_lists", variety="chardonnay", climate=climate) == side


def test_where_lists_agree_the_climate_is_not_asked(rulebook: Rulebook) -> None:
    """dis-02: Crimson Seedless is caned on every list, Italia spurred, whatever the climate."""
    assert outcome(rulebook, "fruit_from_lists", variety="crimson_seedless") == "listed_not"
    assert outcome(rulebook, "fruit_from_lists", variety="italia") == "listed_enough"


def test_wood_under_every_printed_limit_is_not_laid(rulebook: Rulebook) -> None:
    """cs-01: the least diameter that any source prints for a bearing cane is 6.35 mm."""
    limits = [row["min_mm"] for row in printed(rulebook, "cs-01")["table"] if row["min_mm"] and "not bearers" not in row["source"]]
    assert min(limits) == 6.35
    facts = {"good_canes_per_vine": 4, "canes_wanted_per_vine": 2}
    assert outcome(rulebook, "cane_wood", cane_diameter_mm=min(limits) - 0.05, **facts) == "none"
    assert outcome(rulebook, "cane_wood", cane_diameter_mm=min(limits), **facts) == "some"


def test_wood_over_every_printed_limit_is_good(rulebook: Rulebook) -> None:
    """cs-01, Q03: the greatest of the printed lower limits is 8 mm, a pencil."""
    limits = [row["min_mm"] for row in printed(rulebook, "cs-01")["table"] if row["min_mm"]]
    assert max(limits) == printed(rulebook, "Q03-wood-diameter")["reject_below_mm"] == 8
    facts = {"good_canes_per_vine": 4, "canes_wanted_per_vine": 2}
    assert outcome(rulebook, "cane_wood", cane_diameter_mm=max(limits), **facts) == "enough"
    assert outcome(rulebook, "cane_wood", cane_diameter_mm=7.94, **facts) == "some"


@pytest.mark.parametrize(("arms", "action"), [("one", "renew_arms"), ("more", "renew_trunks")])
def test_signs_on_one_arm_renew_the_arm_and_on_more_the_trunk(rulebook: Rulebook, arms: str, action: str) -> None:
    """cr-02 and D24: one cordon, retrain that cordon; more than one, retrain the vine from a sucker."""
    assert printed(rulebook, "D24-surgery-decision")["n>1"] == "retrain trunk"
    facts = {"dark_stain_in_trunk": "none_seen", "signs_seen_when": "in_leaf", "trunk_disease_vines_pct": 40}
    assert outcome(rulebook, "trunk_state", arms_with_signs=arms, **facts) == action


def test_stain_in_the_lower_trunk_means_replanting(rulebook: Rulebook) -> None:
    """cr-06 and D24: where stain reaches the lower trunk, renovation fails."""
    assert printed(rulebook, "D24-surgery-decision")["lower_trunk"] == "replant"
    assert outcome(rulebook, "pruning_system", **(CORDON | {"dark_stain_in_trunk": "most_vines"})) == "replant"


def test_no_published_share_stands_behind_a_lost_cordon(rulebook: Rulebook) -> None:
    """cr-08: no source prints a share of dead positions, so these rows may not claim one."""
    for row in rulebook.decisions["cordon_state"].rows:
        if row.then != "no_cordon":
            assert row.standing == "from_memory", row.id


def test_no_published_share_stands_behind_renewing_a_whole_block(rulebook: Rulebook) -> None:
    """cr-03, D23: the article asks whether 10 or 20 in a hundred is the point, and does not answer."""
    assert printed(rulebook, "D23-surgery-20-cm-smart")["incidence_thresholds_discussed_percent"] == [10, 20]
    row = next(row for row in rulebook.decisions["trunk_state"].rows if row.id == "B5_many_more")
    assert row.standing == "our_judgement"


@pytest.mark.parametrize("inches", [4, 5])
def test_the_printed_height_of_the_head_is_right(rulebook: Rulebook, inches: int) -> None:
    """hg-01: the head sits 4 to 5 inches below the wire."""
    assert outcome(rulebook, "head_height", present_structure="cane_head", head_below_wire_cm=round(inches * 2.54)) == "right"


@pytest.mark.parametrize("centimetres", [15, 20])
def test_the_height_heard_in_the_trade_is_right_as_well(rulebook: Rulebook, centimetres: int) -> None:
    """hg-02: 15 to 20 cm or a fist and thumb below the wire."""
    assert outcome(rulebook, "head_height", present_structure="cane_head", head_below_wire_cm=centimetres) == "right"


def test_fruit_dried_on_cut_canes_asks_for_canes_whatever_the_list_says(rulebook: Rulebook) -> None:
    """sys-15: fruit below the cut does not dry, so barren base buds are no fault there."""
    facts = {"use": "dried", "drying": "severed_on_vine", "variety": "italia"}
    assert target(rulebook, **facts) == "Canes from a head"


def test_a_lost_arm_is_laid_from_a_cane(rulebook: Rulebook) -> None:
    """cr-01, sys-05: a new one-year cane is laid; the year of renewal costs no crop."""
    assert printed(rulebook, "sys-05")["crop lost in cordon renewal year"] == "0 %"
    facts = CORDON | {"sound_cordon_pct": 40, "variety": "barbera", "climate": "warm"}
    assert outcome(rulebook, "pruning_system", **facts) == "lay_new_arm"


def test_barbera_that_bore_on_either_form_keeps_it(rulebook: Rulebook) -> None:
    """sys-10: Barbera bore and ripened the same on spurs and on canes, so the form stays unless cost speaks against it."""
    facts = {"variety": "barbera", "climate": "warm"}
    assert outcome(rulebook, "pruning_system", **(CORDON | facts)) == "keep_spurs"
    assert outcome(rulebook, "pruning_system", **(CORDON | facts | {"present_structure": "cane_head"})) == "keep_canes"


@pytest.mark.parametrize(("crop", "answer"), [("yes", "keep_hedge"), ("no", "hedge_not_covered")])
def test_a_hedge_is_not_judged_by_rules_for_hand_pruning(rulebook: Rulebook, crop: str, answer: str) -> None:
    """L15: a hedge carries 70 to 150 nodes where a hand-pruned vine carries 20 to 25, and fewer burst."""
    by_hand, hedge = printed(rulebook, "L15-hedge-pruning-france")["buds_per_vine"]
    assert min(hedge) > max(by_hand)
    facts = CORDON | {"present_structure": "machine_hedge", "crop_made_in_two_of_three_years": crop}
    assert outcome(rulebook, "pruning_system", **facts) == answer


def test_a_hedge_that_stays_is_counted_every_year(rulebook: Rulebook) -> None:
    """L19: a box left as many buds as hand pruning in the first season, 88 and 100 % more in the second and third."""
    assert printed(rulebook, "L19-box-pruning-compensation")["extra_buds_percent_MP2"] == [0, 88, 100]
    hedge = next(one for one in rulebook.decisions["pruning_system"].outcomes if one.id == "keep_hedge")
    assert "each year" in hedge.action and hedge.layout == "none"
