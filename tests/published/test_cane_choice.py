"""The choice of canes against what is printed: windows of thickness and internodes, height, length, laterals, light, spurs, reach.

Evidence cs-01 to cs-18, dis-04, dis-06, dis-07, nf-18, nf-19, pbn-01, hg-01, hg-02, hg-05, bp-30, bp-32, sys-12, Q03, Y11. What the trade does
and nobody prints is tested at the end, as common practice.
"""

import re

import pytest

from generator.answers.compute import compute
from generator.reading.rulebook import Rulebook
from tests.published.printed import numbers_in, prints, rules

GOOD = {"cane_diameter_mm": 9, "cane_ripe_nodes": 14, "cane_origin": "renewal_spur", "cane_base_below_wire_cm": 12, "internode_cm": 8}
VINE = {"canes_wanted_per_vine": 1, "vine_spacing_m": 1.8, "tip_gap_m": 0.1, "head_below_wire_cm": 12}
AUTHORS = {
    "Hellman, eXtension (cs-02)": "hellman",
    "Westover, Wines & Vines 2016 (cs-03)": "westover",
    "Yuma Sun 2022": "yuma_sun",
    "Winegrowers Supplies (UK)": "winegrowers",
    "Growing Fruit (mature vines)": "growing_fruit",
}
PRINTED = [row for row in rules().evidence["cs-01"].outputs["table"] if row["source"] in AUTHORS]


def choose(rulebook: Rulebook, *rows: dict, **vine: object) -> dict:
    """The answer on some canes, each a good one but for what is said, at one vine."""
    return compute(rulebook, "cane_choice", {"rows": [GOOD | row for row in rows], **VINE, **vine})


def verdict(rulebook: Rulebook, **cane: object) -> str:
    """What is said of one cane alone."""
    return choose(rulebook, cane)["canes"][0]["verdict"]


def points(rulebook: Rulebook, cane: dict, **vine: object) -> float:
    """The rank of one cane."""
    return choose(rulebook, cane, **vine)["canes"][0]["points"]


def laid(answer: dict) -> list[int]:
    """The numbers of the canes that are laid."""
    return [one["number"] for one in answer["canes"] if one["use"] == "lay"]


def spurs(answer: dict) -> list[int]:
    """The nodes on each spur."""
    return [one["nodes"] for one in answer["canes"] if one["use"] in ("spur", "instead")]


def inside(rulebook: Rulebook, value: str, author: str, *rows: dict) -> int:
    """How many canes lie inside the window of one author."""
    word = f"figure.{value}.{author}"
    line = next(one for one in choose(rulebook, *rows)["compared"] if one["who"]["words"] == [word])
    return int(line["says"]["numbers"][-2])


@pytest.mark.parametrize(("evidence", "row"), [("cs-01", row) for row in PRINTED])
def test_each_author_s_window_is_the_printed_one(rulebook: Rulebook, evidence: str, row: dict) -> None:
    """A cane at each printed end is inside, one beyond it is not; without an upper end none is too thick."""
    low, high = row["min_mm"], row["max_mm"]
    assert low in prints(rulebook, evidence)
    tried = [low, low - 0.01, 12.7, 12.71, 20]
    expected = [x for x in tried if low <= x and (high is None or x <= high)]
    canes = [{"cane_diameter_mm": x} for x in tried]
    assert inside(rulebook, "cane_diameter_least_mm", AUTHORS[row["source"]], *canes) == len(expected)


def test_every_author_with_a_lower_end_is_there(rulebook: Rulebook) -> None:
    """cs-01: all printed ranges for bearing canes, none left out; cuttings are not bearers."""
    bearing = [row for row in rulebook.evidence["cs-01"].outputs["table"] if row["min_mm"] is not None and "not bearers" not in row["source"]]
    assert sorted(figure.number for figure in rulebook.values["cane_diameter_least_mm"].figures) == sorted(row["min_mm"] for row in bearing)
    highest = [row["max_mm"] for row in bearing if row["max_mm"] is not None]
    assert sorted(figure.number for figure in rulebook.values["cane_diameter_most_mm"].figures) == sorted(highest)


def test_seven_millimetres_divide_the_authors(rulebook: Rulebook) -> None:
    """dis-04: 7 mm lies in a quarter to half an inch and not in five sixteenths to half an inch, so that it is neither kept nor rejected."""
    text = rulebook.evidence["dis-04"].statement
    low, pencil = float(re.search(r"([\d.]+) mm \(1/4 in\)", text)[1]), float(re.search(r"or ([\d.]+)-8 mm", text)[1])
    assert low < 7 < pencil
    authors = [row["min_mm"] <= 7 for row in PRINTED]
    line = next(one for one in choose(rulebook, {"cane_diameter_mm": 7})["working"] if "printed ranges" in one)
    assert f"inside {sum(authors)} of {len(authors)}" in line
    assert verdict(rulebook, cane_diameter_mm=7) == "reserve"


@pytest.mark.parametrize(("evidence", "mm", "said"), [("dis-04", 6.35, "reserve"), ("dis-04", 12.7, "keep")])
def test_the_ends_of_all_windows(rulebook: Rulebook, evidence: str, mm: float, said: str) -> None:
    """What no author takes is rejected or held back, what some take is in reserve, what all take is kept."""
    assert mm in prints(rulebook, evidence)
    assert verdict(rulebook, cane_diameter_mm=mm) == said
    beyond = mm - 0.01 if said == "reserve" else mm + 0.01
    assert verdict(rulebook, cane_diameter_mm=beyond) == ("reject" if said == "reserve" else "reserve")


def test_a_pencil_is_kept(rulebook: Rulebook) -> None:
    """Q03-wood-diameter: eight millimetres are the least for any cane left, half an inch the most."""
    outputs = rulebook.evidence["Q03-wood-diameter"].outputs
    assert verdict(rulebook, cane_diameter_mm=outputs["reject_below_mm"]) == "keep"
    assert verdict(rulebook, cane_diameter_mm=outputs["reject_below_mm"] - 0.1) != "keep"
    assert verdict(rulebook, cane_diameter_mm=outputs["accept"][1]) == "keep"


def test_thin_wood_is_never_laid(rulebook: Rulebook) -> None:
    """cs-03: keeping thin wood is the commonest fault; thinner than the range it stays off even where canes are short."""
    low = numbers_in(str(rulebook.evidence["cs-03"].inputs["diameter"]))[0]
    answer = choose(rulebook, {"cane_diameter_mm": 6}, {"cane_diameter_mm": low}, canes_wanted_per_vine=2)
    assert laid(answer) == [2]
    assert "never lay thin wood" in " ".join(answer["steps"])


@pytest.mark.parametrize("end", [0, 1])
def test_printed_internodes_are_no_fault(rulebook: Rulebook, end: int) -> None:
    """cs-02: internodes of 76 to 102 mm, at either end, leave a cane kept, and lie inside Hellman's window."""
    cm = numbers_in(str(rulebook.evidence["cs-02"].inputs["internode"]))[end] / 10
    assert verdict(rulebook, internode_cm=cm) == "keep"
    assert inside(rulebook, "cane_internode_least_cm", "hellman", {"internode_cm": cm}) == 1
    beyond = cm - 0.1 if end == 0 else cm + 0.1
    assert inside(rulebook, "cane_internode_least_cm", "hellman", {"internode_cm": beyond}) == 0


def test_one_site_stands_alone_with_long_internodes(rulebook: Rulebook) -> None:
    """dis-04: about 150 mm are good to one home-fruit site alone; the guide holds such a cane back and shows that site."""
    cm = float(re.search(r"about (\d+) mm", rulebook.evidence["dis-04"].statement)[1]) / 10
    assert verdict(rulebook, internode_cm=cm) == "reserve"
    assert inside(rulebook, "cane_internode_most_cm", "growing_fruit", {"internode_cm": cm}) == 1
    assert inside(rulebook, "cane_internode_least_cm", "hellman", {"internode_cm": cm}) == 0


def test_a_renewal_spur_has_one_or_two_buds(rulebook: Rulebook) -> None:
    """cs-02: one or two; as many canes laid as the source keeps."""
    outputs = rulebook.evidence["cs-02"].outputs
    most = max(numbers_in(str(outputs["renewal spur"])))
    for canes in outputs["canes kept"]:
        answer = choose(rulebook, *[{}] * 4, canes_wanted_per_vine=canes)
        assert len(laid(answer)) == canes
        assert all(1 <= nodes <= most for nodes in spurs(answer))


def test_a_spur_never_has_the_node_that_blinds_its_base(rulebook: Rulebook) -> None:
    """cs-11: three-node spurs had more blind nodes than those of one or two."""
    tried = rulebook.evidence["cs-11"].inputs["nodes per spur"]
    assert max(spurs(choose(rulebook, {}, {}))) < max(tried)


def test_laterals_rank_as_in_sultana(rulebook: Rulebook) -> None:
    """cs-04: nodes with persistent laterals beat those with shed ones, which beat those without."""
    names = {"persistent lateral": "persistent", "deciduous lateral": "shed", "no lateral": "none"}
    order = [names[one] for one in rulebook.evidence["cs-04"].outputs["node rank"]]
    found = [points(rulebook, {"cane_laterals": one}) for one in order]
    assert found == sorted(found, reverse=True) and len(set(found)) == 3


def test_the_age_of_the_parent_wood_has_no_weight(rulebook: Rulebook) -> None:
    """cs-04: old wood is said, with no weight of its own (dis-07: who disagrees is named)."""
    answer = choose(rulebook, {"cane_origin": "old_wood"})
    row = next(one for one in answer["canes"][0]["reasons"] if one["row"] == "K11_old" and one["table"] == "cane_rank")
    assert row["weight"] == 0
    assert "cs-18" in " ".join(answer["notes"]) and "dis-07" in " ".join(answer["notes"])


def test_no_column_asks_whether_the_wood_has_borne(rulebook: Rulebook) -> None:
    """dis-07: it is not scored."""
    assert not [one.id for one in rulebook.calculators["cane_choice"].rows if "bore" in one.id or "fruit" in one.id]


def test_thickness_has_a_window_and_not_a_direction(rulebook: Rulebook) -> None:
    """cs-05: more fruitful when thicker, more dead buds when thicker: from thin to thick the verdict rises and falls again."""
    worth = {"reject": 0, "reserve": 1, "keep": 2}
    found = [worth[verdict(rulebook, cane_diameter_mm=mm)] for mm in (6, 7, 9, 12, 14)]
    assert found == [0, 1, 2, 2, 1]
    few = {"dead_primary_pct": 5}
    assert points(rulebook, {"cane_diameter_mm": 12}, **few) > points(rulebook, {"cane_diameter_mm": 9}, **few)


@pytest.mark.parametrize(("evidence", "pct"), [("pbn-01", 20), ("pbn-01", 38)])
def test_where_buds_die_the_large_canes_rank_behind(rulebook: Rulebook, evidence: str, pct: float) -> None:
    """Necrosis was worst on large canes, from about a fifth of the buds upwards; below it the order turns round."""
    assert pct in prints(rulebook, evidence)
    fine, large = {"cane_diameter_mm": 9}, {"cane_diameter_mm": 12}
    assert points(rulebook, fine, dead_primary_pct=pct) > points(rulebook, large, dead_primary_pct=pct)
    below = min(prints(rulebook, evidence) & {20.0, 38.0}) - 0.1
    assert points(rulebook, fine, dead_primary_pct=below) < points(rulebook, large, dead_primary_pct=below)


@pytest.mark.parametrize(("evidence", "word"), [("nf-18", "light on the subtending"), ("nf-19", "light at the bud zone")])
def test_exposed_canes_rank_before_shaded_ones(rulebook: Rulebook, evidence: str, word: str) -> None:
    """Light at the bud in the year before drove its fruit."""
    assert word in " ".join(rulebook.evidence[evidence].statement.split())
    answer = choose(rulebook, {"cane_light": "shaded"}, {"cane_light": "exposed"})
    assert laid(answer) == [2]
    assert evidence in next(one for one in answer["canes"][0]["reasons"] if one["row"] == "K14_shaded")["sources"]


@pytest.mark.parametrize(("evidence", "cm"), [("hg-01", 10), ("hg-01", 13), ("hg-02", 15), ("hg-02", 20)])
def test_canes_from_a_head_at_the_printed_height_are_right(rulebook: Rulebook, evidence: str, cm: float) -> None:
    """No cane from a printed height under the wire is held back for it; one from over the wire is."""
    assert cm in prints(rulebook, evidence)
    assert verdict(rulebook, cane_base_below_wire_cm=cm) == "keep"
    assert verdict(rulebook, cane_base_below_wire_cm=-1) == "reserve"


@pytest.mark.parametrize(("evidence", "place"), [("hg-05", 0), ("hg-05", 1)])
def test_the_nodes_that_fit_are_the_printed_ones(rulebook: Rulebook, evidence: str, place: int) -> None:
    """Half the spacing less half the gap is 0.85 m; from a head level with the wire 11 nodes of 76 mm fit, and 8 of 102 mm."""
    one = rulebook.evidence[evidence]
    mm = numbers_in(str(one.inputs["internode"]))[place]
    answer = choose(rulebook, {"internode_cm": mm / 10, "cane_base_below_wire_cm": 0}, canes_wanted_per_vine=2)
    assert f"{float(str(one.outputs['arm']).split()[0]) * 1000:.0f}\u00a0mm of wire" in answer["working"][0]
    assert answer["canes"][0]["nodes"] == one.outputs["nodes"][place]


@pytest.mark.parametrize(("evidence", "place"), [("bp-32", 0), ("bp-32", 1)])
def test_four_canes_carry_what_marlborough_counts(rulebook: Rulebook, evidence: str, place: int) -> None:
    """Vines 1.8 m apart, 10 cm between tips, four canes of 12 or 15 buds: 48 or 60 on the vine, two canes to each side."""
    one = rulebook.evidence[evidence]
    each = one.inputs["buds_per_cane"][place]
    cane = {"internode_cm": 5.5, "cane_ripe_nodes": each}
    four = [cane | {"cane_side": side} for side in ("left", "right", "left", "right")]
    vine = {"vine_spacing_m": one.inputs["vine_spacing_m"], "tip_gap_m": one.inputs["gap_m"], "nodes_per_cane_wanted": each}
    answer = choose(rulebook, *four, canes_wanted_per_vine=one.inputs["canes"], **vine)
    assert answer["outputs"]["cane_nodes"] == one.our_arithmetic["four_cane_buds"][place]


@pytest.mark.parametrize(("evidence", "place"), [("bp-30", 0), ("bp-30", 1)])
def test_four_short_canes_or_three_longer_ones(rulebook: Rulebook, evidence: str, place: int) -> None:
    """Four canes of 8 nodes are 32, three of 10 are 30, and both lie within 30 to 35."""
    one = rulebook.evidence[evidence]
    option = one.inputs["options"][place]
    answer = choose(rulebook, *[{"cane_ripe_nodes": option["nodes"]}] * option["canes"], canes_wanted_per_vine=option["canes"])
    low, high = one.inputs["nodes_needed"]
    assert answer["outputs"]["cane_nodes"] == one.our_arithmetic["nodes_laid"][place]
    assert low <= answer["outputs"]["cane_nodes"] <= high


def test_length_follows_ripeness(rulebook: Rulebook) -> None:
    """cs-06: well ripened canes carry 10 to 12 nodes, poorly ripened ones 6 to 8; fewer ripe nodes are a spur."""
    assert {6, 8, 10, 12} <= prints(rulebook, "cs-06")
    wide = {"vine_spacing_m": 3}
    nodes = {ripe: choose(rulebook, {"cane_ripe_nodes": ripe}, **wide)["canes"][0]["nodes"] for ripe in (6, 7, 9, 10, 12, 20)}
    assert nodes == {6: 6, 7: 7, 9: 8, 10: 10, 12: 12, 20: 12}
    assert verdict(rulebook, cane_ripe_nodes=5) == "spur_only"


def test_long_canes_are_arched(rulebook: Rulebook) -> None:
    """sys-12: canes of 15 nodes left blind ones that arching woke."""
    long = max(row["nodes_each"] for row in rulebook.evidence["sys-12"].outputs["table"] if row["treatment"] == "T3")
    vine = {"vine_spacing_m": 3, "nodes_per_cane_wanted": long}
    assert "arch" in choose(rulebook, {"cane_ripe_nodes": 20}, **vine)["steps"][0]
    assert "flat" in choose(rulebook, {"cane_ripe_nodes": 20}, vine_spacing_m=3)["steps"][0]


def test_the_one_good_low_cane_is_the_spur(rulebook: Rulebook) -> None:
    """cs-15: a good low cane makes the spur, the outer one is the bearer; the spur is lower and nearer the centre."""
    low, outer = {}, {"cane_origin": "last_cane_farther", "cane_base_below_wire_cm": 8, "cane_base_out_cm": 15}
    answer = choose(rulebook, low, outer)
    assert laid(answer) == [2] and answer["canes"][0]["use"] == "spur"
    assert [one["row"] for one in answer["reasons"] if "cs-15" in one["sources"]] == ["K20_low"]


def test_without_a_low_cane_the_arm_would_creep(rulebook: Rulebook) -> None:
    """cs-16: without a spur arms creep outward; cs-02: then a watershoot nearer the trunk is kept, and told for the spring."""
    answer = choose(rulebook, {"cane_base_out_cm": 30})
    assert next(one for one in answer["reasons"] if one["table"] == "renewal_wood")["row"] == "K23_none"
    assert any("watershoot" in one.get("spring", "") for one in answer["work"])


@pytest.mark.parametrize(("spur", "used"), [({}, "spur"), ({"cane_base_below_wire_cm": -8}, "lay")])
def test_a_cane_from_above_the_wire_is_laid_over_a_lower_spur_only(rulebook: Rulebook, spur: dict, used: str) -> None:
    """hg-01: the head belongs 10 to 13 cm below the wire, so a cane from above it is laid where a lower spur brings the head down, and not else."""
    high = {"cane_base_below_wire_cm": -5}
    alone = choose(rulebook, high)
    assert laid(alone) == [] and alone["canes"][0]["use"] == "spur" and any("above the wire" in note for note in alone["notes"])
    below = min(numbers_in(rules().evidence["hg-01"].statement.split("(")[1]))
    both = choose(rulebook, high | {"cane_ripe_nodes": 14}, {"cane_ripe_nodes": 5, "cane_base_below_wire_cm": below} if not spur else spur)
    assert both["canes"][1]["use"] == used and len(laid(both)) == 1
    assert any("makes its spur above the wire" in note for note in both["notes"]) == bool(spur)


@pytest.mark.parametrize(("evidence", "side", "out"), [("cs-15", "middle", 30), ("cs-15", "left", 30), ("cs-02", "right", 15)])
def test_nearer_the_centre_makes_the_spur_though_the_outer_one_hangs_lower(rulebook: Rulebook, evidence: str, side: str, out: float) -> None:
    """Renewal spurs sit nearer the centre, and the outer ones bear; a watershoot is waited for only where no cane stands near enough."""
    assert "nearer the" in " ".join(rulebook.evidence[evidence].statement.split())
    outer = {"cane_origin": "last_cane_farther", "cane_base_below_wire_cm": 15, "cane_base_out_cm": out, "cane_side": side}
    answer = choose(rulebook, {}, outer)
    assert laid(answer) == [2] and answer["canes"][0]["use"] == "spur"
    bull = choose(rulebook, {}, outer | {"cane_diameter_mm": 15})
    assert laid(bull) == [1] and bull["canes"][1]["use"] == "off"


@pytest.mark.parametrize(("evidence", "wanted", "row"), [("cs-02", 0, "K19_unwanted"), ("cs-16", 1, "K23_side"), ("cs-02", 2, "K23_side")])
def test_the_side_without_a_spur_is_told_for_the_spring(rulebook: Rulebook, evidence: str, wanted: int, row: str) -> None:
    """cs-02: some growers keep no spur, and a watershoot is kept where one is lacking; cs-16: without a spur arms creep outwards."""
    canes = [{"cane_side": "left"}, {"cane_side": "right"}, {"cane_side": "left", "cane_base_below_wire_cm": 16}]
    answer = choose(rulebook, *canes, canes_wanted_per_vine=2, renewal_spurs_wanted=wanted)
    told = next(one for one in answer["reasons"] if one["table"] == "renewal_wood")
    assert told["row"] == row and evidence in told["sources"] and len(laid(answer)) == 2
    assert ("lowest shoot of a laid cane" if wanted == 0 else "on the side that has none") in " ".join(one.get("spring", "") for one in answer["work"])


def test_a_vine_of_thin_wood_is_cut_back_and_not_stripped(rulebook: Rulebook) -> None:
    """Y02-pencil-rule: what is thinner than a pencil is cut back to two buds; the vine is never left without a node."""
    (buds,) = [number for number in prints(rulebook, "Y02-pencil-rule") if number == 2]
    for cane in ({"cane_diameter_mm": 6}, {"cane_section": "flat"}, {"cane_damage": "hail_half", "cane_ripe_nodes": 5}):
        answer = choose(rulebook, cane, cane)
        assert laid(answer) == [] and set(spurs(answer)) == {buds} and "Nothing better stands" in " ".join(answer["notes"])
    dead = choose(rulebook, {"cane_green": False}, {"cane_diameter_mm": 6, "cane_damage": "cracked_base"})
    assert spurs(dead) == [] and "bud at its base" in " ".join(dead["steps"])


def test_weak_wood_is_cut_to_two_or_three_spurs_of_two_nodes(rulebook: Rulebook) -> None:
    """Y11-weak-trunk-renewal: two or three two-node spurs force stronger canes."""
    outputs = rulebook.evidence["Y11-weak-trunk-renewal"].outputs
    answer = choose(rulebook, *[{"cane_ripe_nodes": 4}] * 6)
    assert laid(answer) == []
    assert len(spurs(answer)) in outputs["spurs"]
    assert set(spurs(answer)) == {outputs["nodes_each"]}


def test_unsound_wood_goes_before_place_counts(rulebook: Rulebook) -> None:
    """dis-06: out of range first, then the nearer cane: the low one of 6.0 mm gives way to the upper of 9.0 mm, one of 8 mm does not to 10 mm."""
    assert "first" in rulebook.evidence["dis-06"].statement
    upper = {"cane_base_below_wire_cm": 8}
    thin = choose(rulebook, {"cane_diameter_mm": 6.0}, {"cane_diameter_mm": 9.0} | upper)
    assert (thin["canes"][0]["verdict"], laid(thin)) == ("reject", [2])
    sound = choose(rulebook, {"cane_diameter_mm": 8}, {"cane_diameter_mm": 10} | upper)
    assert sound["canes"][0]["use"] == "spur"


@pytest.mark.parametrize("cm", [6, 8])
def test_the_trade_s_internodes(rulebook: Rulebook, cm: float) -> None:
    """Common practice: 6 to 8 cm; the upper end lies inside Hellman's window as well (cs-02), the lower one does not."""
    assert verdict(rulebook, internode_cm=cm) == "keep"
    assert inside(rulebook, "cane_internode_least_cm", "trade", {"internode_cm": cm}) == 1
    assert rulebook.values["cane_internode_least_cm"].figures[0].standing == "common_practice"
    low = numbers_in(str(rulebook.evidence["cs-02"].inputs["internode"]))[0] / 10
    assert inside(rulebook, "cane_internode_least_cm", "hellman", {"internode_cm": cm}) == int(cm >= low)


def test_flat_canes_are_set_aside_and_tested(rulebook: Rulebook) -> None:
    """Common practice: a flat cane is not laid, propagated or guessed about. That good canes are round is printed (cs-02)."""
    assert "round in section" in rulebook.evidence["cs-02"].statement
    answer = choose(rulebook, {"cane_section": "flat"}, {"cane_section": "oval"}, {"cane_section": "round"})
    assert [one["verdict"] for one in answer["canes"]] == ["reject", "keep", "keep"]
    assert any("laboratory" in note for note in answer["notes"])
    assert answer["canes"][1]["points"] < answer["canes"][2]["points"]
