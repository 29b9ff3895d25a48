"""Fruit, method, leaning and rare forms in spur or cane against what is published. The source stands beside each check."""

import pytest

from generator.answers.compute import compute
from generator.reading.rulebook import Rulebook
from tests.published.vines import CORDON, FAILED, HEAD, outcome, printed, reach, target

ENOUGH, NEARLY, TOO_LITTLE = reach(1.1, 1.3), reach(0.8, 0.9), reach(0.2, 0.3)
MACHINE = {"pruning_method": "machine_then_hand"}
PLAIN = {name: CORDON[name] for name in ("present_structure", "climate", "buds_cut", "trunk_disease_vines_pct")}
SICK = {"trunk_disease_vines_pct": 40}


def notes(rulebook: Rulebook) -> dict[str, str]:
    """What stands against each row of pruning_system, by the row's id."""
    return {row.id: row.note for row in rulebook.decisions["pruning_system"].rows}


def test_fruitful_basal_buds_are_what_spurs_ask_for(rulebook: Rulebook) -> None:
    """sys-01: short spurs are for varieties whose lowest buds can carry the crop; otherwise canes."""
    assert target(rulebook, **ENOUGH) == "Spurs on a cordon"
    assert target(rulebook, **TOO_LITTLE, **FAILED) == "Canes from a head"


@pytest.mark.parametrize("variety", ["crimson_seedless", "pinot_noir", "italia"])
def test_buds_of_the_block_outweigh_the_list_and_the_climate(rulebook: Rulebook, variety: str) -> None:
    """sys-03, dis-01: where measured basal buds bear, the custom of canes is no reason to leave spurs."""
    assert target(rulebook, **ENOUGH, variety=variety, climate="cool") == "Spurs on a cordon"


@pytest.mark.parametrize("short", [{}, {"good_canes_per_vine": 0}, {"skilled_pruners": "short", "bunches_wanted": "smaller_or_looser"}])
def test_a_little_too_little_is_met_with_longer_spurs_or_a_few_canes(rulebook: Rulebook, short: dict) -> None:
    """sys-14: if the buds of a spur prove unfruitful, lengthen the spurs or add one or two kicker canes."""
    found = outcome(rulebook, "pruning_system", **(CORDON | NEARLY | short))
    assert found == ("long_spurs" if short else "spurs_few_canes")


def test_the_drawback_of_longer_spurs_is_told_beside_them(rulebook: Rulebook) -> None:
    """sys-14: each extra node can suppress the burst of the base node, and longer spurs lift the bearing surface."""
    assert "lowest from bursting" in notes(rulebook)["D10_long"] and "lifts" in notes(rulebook)["D10_long"]


@pytest.mark.parametrize(
    ("vine", "fruit", "answer"),
    [(CORDON, ENOUGH, "keep_spurs_machine"), (CORDON, TOO_LITTLE, "method_conflict"), (HEAD, TOO_LITTLE, "method_conflict")],
)
def test_a_machine_prunes_spurs_and_no_canes(rulebook: Rulebook, vine: dict, fruit: dict, answer: str) -> None:
    """sys-07: unlike cane pruning, spur pruning can be mechanised."""
    assert outcome(rulebook, "pruning_system", **(vine | MACHINE | fruit)) == answer


def test_long_spurs_are_the_machine_s_way_to_better_buds(rulebook: Rulebook) -> None:
    """sys-08: six-node spurs with two canes matched canes over seven years; the conflict says so as well."""
    assert outcome(rulebook, "pruning_system", **(CORDON | MACHINE | NEARLY)) == "long_spurs_machine"
    assert "seven years" in notes(rulebook)["D7"] and "seven years" in notes(rulebook)["D7_head"]


def test_both_sides_of_long_spurs_under_a_machine_are_told(rulebook: Rulebook) -> None:
    """sys-09: at one site no difference from four canes, at another significantly less for the fourth year."""
    assert "clearly less" in notes(rulebook)["D6"] and "as much at another" in notes(rulebook)["D13_machine"]


@pytest.mark.parametrize(
    ("source", "facts", "row", "sign"),
    [
        ("sys-18", {"skilled_pruners": "short"}, "E_skill", 1),
        ("sys-04", {"buds_cut": "no", "variety": "flame_seedless"}, "E_cost", 1),
        ("sys-09", {"present_structure": "cane_head"}, "E_change", -1),
        ("sys-05", {"bunches_wanted": "larger"}, "E_larger", -1),
        ("sys-13", {"use": "table"}, "C5", -1),
        ("sys-05", {"bunches_wanted": "smaller_or_looser"}, "E_smaller", 1),
        ("sys-06", {"climate": "cool"}, "E_cool", -1),
        ("sys-19", {"dead_primary_rise_pct": 30}, "E_necrosis", 1),
        ("sys-12", {"blind_mid_cane_pct": 20}, "E_blind", 1),
        ("sys-18", {"trunk_disease_vines_pct": 12}, "E_disease", -1),
        ("sys-20", {"mid_cordon_lags": "yes"}, "E_lag", -1),
        ("sys-03", {"shoot_thinning_labour": "no"}, "E_thinning", -1),
        ("T17", {"spring_frost_risk": "high"}, "E_frost", 0),
    ],
)
def test_what_else_counts_pushes_the_way_its_source_says(rulebook: Rulebook, source: str, facts: dict, row: str, sign: int) -> None:
    """The direction in which each factor pushes is its source's; the size is our own."""
    found = [one for one in compute(rulebook, "leaning", PLAIN | facts)["reasons"] if one["row"] == row]
    assert len(found) == 1 and (found[0]["weight"] > 0) - (found[0]["weight"] < 0) == sign
    assert any(cite.startswith(source) for cite in found[0]["sources"])


def test_frost_is_told_for_both_sides_and_weighs_for_neither(rulebook: Rulebook) -> None:
    """T10, T17: late cutting raised the crop of Merlot in Marlborough, and cost 21 to 26 % in Georgia without frost."""
    gain = printed(rulebook, "T10-friend-trought-yield-gain")["max_yield_increase_percent"]
    loss = rulebook.evidence["T17-uga-thesis-frost-payoff"].inputs["loss_no_frost_percent"].values()
    assert min(gain) > 0 and 20 < min(loss) < max(loss) < 27
    row = next(row for row in rulebook.decisions["leaning"].rows if row.id == "E_frost")
    assert row.weight == 0 and "raised the crop" in row.note and "cost a fifth to a quarter" in row.note


@pytest.mark.parametrize("form", [CORDON, HEAD], ids=["spurs", "canes"])
def test_frost_and_hard_winters_are_said_with_the_main_answer(rulebook: Rulebook, form: dict) -> None:
    """T17, cr-03: a late cut for spurs and a reserve cane for canes, both to either form; a second trunk where winters kill vines; neither elsewhere."""
    mild = compute(rulebook, "pruning_system", form)["also"]
    hard = compute(rulebook, "pruning_system", form | {"spring_frost_risk": "high", "severe_winters": "yes"})["also"]
    told = [line for line in hard if line not in mild]
    assert len(told) == 2 and any("second trunk" in line for line in told)
    assert any("late" in line and "reserve cane" in line for line in told)
    lost = {"spring_frost_risk": "high", "severe_winters": "yes", "dark_stain_in_trunk": "most_vines"}
    assert not any("second trunk" in line for line in compute(rulebook, "pruning_system", form | lost)["also"])


@pytest.mark.parametrize("canes", [0, 1, 3])
def test_a_machine_wanted_on_canes_has_to_wait(rulebook: Rulebook, canes: int) -> None:
    """sys-07, sys-18: unlike spurs, canes cannot be left to a machine, so whatever the wood the machine waits for a cordon."""
    found = compute(rulebook, "pruning_system", HEAD | MACHINE | {"good_canes_per_vine": canes})["also"]
    assert any("wait until a cordon stands" in line and "cannot choose and lay canes" in line for line in found)
    assert not any("machine" in line for line in compute(rulebook, "pruning_system", HEAD | {"good_canes_per_vine": canes})["also"])


@pytest.mark.parametrize(("reach", "counts"), [((1.1, 1.4), True), ((0.9, 1.4), False), ((0.8, 0.9), False), ((0.1, 0.2), False)])
def test_cost_counts_only_at_the_same_crop(rulebook: Rulebook, reach: tuple[float, float], counts: bool) -> None:
    """sys-04, sys-10: less labour was found where spurs reached the target crop, so it says nothing where they may not."""
    low, high = reach
    found = compute(rulebook, "leaning", PLAIN | {"buds_cut": "yes", "spur_reach_low": low, "spur_reach_high": high})["reasons"]
    assert ("E_cost" in [one["row"] for one in found]) is counts


def test_every_weight_is_our_own(rulebook: Rulebook) -> None:
    """sys-21: the sources give directions only, so no weight may pass for published."""
    assert {row.standing for row in rulebook.decisions["leaning"].rows} <= {"our_judgement", "from_memory"}


def test_going_over_to_spurs_needs_a_reason_beyond_the_fruit(rulebook: Rulebook) -> None:
    """sys-09: conversion can take over two years and saves nothing in its first."""
    assert outcome(rulebook, "pruning_system", **(HEAD | ENOUGH)) == "keep_canes"
    wanted = {"skilled_pruners": "short", "bunches_wanted": "smaller_or_looser", "blind_mid_cane_pct": 20}
    assert outcome(rulebook, "pruning_system", **(HEAD | ENOUGH | wanted)) == "change_to_spurs"


def test_bush_vines_are_spurred_and_half_long_where_the_base_is_barren(rulebook: Rulebook) -> None:
    """var-03, ll-03: spurs of two nodes on a head; Cornichon and Malaga on half-long canes of four to five internodes."""
    half = next(row for row in printed(rulebook, "var-03")["table"] if "Cornichon" in row["varieties"])
    assert half["internodes"] == [4, 5]
    bush = CORDON | {"present_structure": "spur_head"}
    assert outcome(rulebook, "pruning_system", **bush) == "keep_bush"
    assert outcome(rulebook, "pruning_system", **(bush | FAILED | TOO_LITTLE)) == "bush_half_long"


def test_canes_on_an_arbour_stay_and_get_no_node_number(rulebook: Rulebook) -> None:
    """var-07, sys-13: canes bear on arbours; growers choose by the fruit of the basal buds."""
    found = outcome(rulebook, "pruning_system", **(HEAD | {"canopy_form": "overhead"}))
    assert found == "keep_arbour"
    assert next(one.layout for one in rulebook.decisions["pruning_system"].outcomes if one.id == found) == "none"


def test_a_high_wire_cordon_is_decided_like_any_other(rulebook: Rulebook) -> None:
    """hg-07: cordons on a high wire are spur pruned; their head may stand at the wire."""
    hanging = {"canopy_form": "hanging", "head_below_wire_cm": 0}
    assert target(rulebook, **ENOUGH, **hanging) == "Spurs on a cordon"
    assert outcome(rulebook, "head_height", present_structure="cane_head", **hanging) == "not_judged"


def test_a_high_head_is_said_with_the_answer(rulebook: Rulebook) -> None:
    """hg-01: the head belongs below the wire, so a head at the wire is lowered first."""
    found = compute(rulebook, "pruning_system", HEAD | {"head_below_wire_cm": 0})
    assert any("Lower the head" in str(one) for one in found["also"])


def test_leaf_signs_are_said_with_the_answer(rulebook: Rulebook) -> None:
    """cr-06: look at cut faces first; leaf signs alone show no place to cut."""
    found = compute(rulebook, "pruning_system", CORDON | SICK | {"arms_with_signs": "none"})
    assert any("laboratory" in str(one) for one in found["also"])


def test_signs_on_one_side_of_a_head_leave_the_other_side(rulebook: Rulebook) -> None:
    """cr-02: signs on one cordon only, retrain that one from a healthy cane; a head is treated likewise."""
    assert outcome(rulebook, "pruning_system", **(HEAD | SICK | {"arms_with_signs": "one"})) == "canes_clean_side"
    assert outcome(rulebook, "pruning_system", **(CORDON | SICK | {"arms_with_signs": "one"})) == "lay_new_arm"


def test_drying_on_the_vine_counts_only_nodes_beyond_the_cut(rulebook: Rulebook) -> None:
    """sys-15: severed at node 3 or 4; 11 or 12 nodes of a 15-node cane dry."""
    assert rulebook.evidence["sys-15"].inputs["severing node"] == [3, 4]
    outcomes = {one.id: one for one in rulebook.decisions["pruning_system"].outcomes}
    assert "beyond the cut" in outcomes["canes_for_drying"].action


def test_drying_on_trays_changes_nothing(rulebook: Rulebook) -> None:
    """sys-15: only fruit that dries on the vine has to hang beyond a cut."""
    trays = {"use": "dried", "drying": "trays"}
    assert outcome(rulebook, "pruning_system", **(CORDON | trays)) == outcome(rulebook, "pruning_system", **CORDON)


ABSTRACTS = ["vb-01", "vb-18", "yc-09", "yc-10", "yc-13", "yc-15", "nf-02", "pbn-04", "T10-friend-trought-yield-gain", "sys-02"]


@pytest.mark.parametrize("evidence", ABSTRACTS)
def test_what_was_read_in_an_abstract_is_called_so(rulebook: Rulebook, evidence: str) -> None:
    """Of these only the abstract or summary was read, as their own place says."""
    assert rulebook.evidence[evidence].standing == "abstract"
