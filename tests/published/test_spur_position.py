"""What sources print of spur positions, against what the guide does with one. The source stands beside each check."""

import math

import pytest

from generator.answers.compute import compute
from generator.reading.rulebook import Rulebook
from tests.published.printed import numbers_in, prints, rules

LOW = {"spur_height_cm": 4, "spur_height_limit_cm": 10, "lower_cane_state": "sound", "lower_cane_mm": 9, "upper_cane_state": "sound", "upper_cane_mm": 10}
HIGH = LOW | {"spur_height_cm": 14}
STEP = 0.05  # mm, under what a gauge shows
WINDOWS = [row for row in rules().evidence["cs-01"].outputs["table"] if row["min_mm"] and "cuttings" not in row["source"]]


def position(rulebook: Rulebook, before: dict = LOW, **changes) -> dict:
    """The guide's answer for a position that differs from the one before."""
    return compute(rulebook, "spur_position", before | changes)


def kept(answer: dict) -> list[str]:
    """Which canes stay."""
    return [cane for cane in ("lower", "upper", "top", "low") if answer["outputs"][f"nodes_{cane}"] > 0]


def rows(answer: dict) -> list[str]:
    """The rows that spoke."""
    return [reason["row"] for reason in answer["reasons"]]


def sort_of(rulebook: Rulebook, mm: float) -> str:
    """What the guide calls a sound cane of a thickness."""
    facts = {"spur_cane_state": "sound", "spur_cane_mm": mm, "spur_cane_points": "level", "canopy_form": "upright"}
    return compute(rulebook, "spur_cane", facts)["outcome"]


@pytest.mark.parametrize("window", WINDOWS, ids=lambda row: row["source"][:24])
def test_wood_in_a_printed_window_is_never_called_thin(rulebook, window):
    """cs-01: at every printed lower limit a cane is worth keeping; at every printed upper limit it is not yet bull wood."""
    assert sort_of(rulebook, window["min_mm"]) in ("reserve", "good")
    if window["max_mm"]:
        assert sort_of(rulebook, window["max_mm"]) == "good" and sort_of(rulebook, window["max_mm"] + STEP) == "thick"


def test_wood_under_every_printed_limit_is_thin(rulebook):
    """cs-01: thinner than the smallest printed lower limit is thin, and from the greatest one on wood is good."""
    lowest = [row["min_mm"] for row in WINDOWS]
    assert sort_of(rulebook, min(lowest) - STEP) == "thin" and sort_of(rulebook, max(lowest)) == "good"
    assert sort_of(rulebook, max(lowest) - STEP) == "reserve"


def test_the_pencil_parts_good_from_slim(rulebook):
    """Q03: nothing under 8 mm is left by a British page, Westover begins at 7.9: between the two the guide keeps wood in reserve."""
    printed = rulebook.evidence["Q03-wood-diameter"].outputs
    assert sort_of(rulebook, printed["reject_below_mm"]) == "good" and sort_of(rulebook, printed["accept"][0]) == "reserve"
    assert sort_of(rulebook, printed["accept"][1]) == "good"


@pytest.mark.parametrize(
    ("evidence", "lower", "upper", "stays"),
    [
        ("dis-06", 8.0, 10.0, ["lower"]),  # the nearer to the cordon, though the other is thicker
        ("dis-06", 6.0, 9.0, ["upper"]),  # out-of-range wood is thrown out first
        ("sl-06", 9.0, 12.0, ["lower"]),  # Wimmer and others: the spur from the cane nearest to the cordon
        ("sl-06", 9.0, 14.0, ["lower"]),  # the same: prevent bull canes
        ("sl-07", 14.0, 9.0, ["lower"]),  # a pruning school's forum: with long internodes the lower one
        ("sl-08", 6.0, 9.0, ["upper"]),  # Skinkis: the thicker and sounder one
        ("cs-03", 6.0, 9.0, ["upper"]),  # Westover: the commonest fault is keeping thin wood
    ],
)
def test_the_cane_that_sources_keep(rulebook, evidence, lower, upper, stays):
    """Two sound canes on a low position; the evidence is that of the case."""
    answer = position(rulebook, lower_cane_mm=lower, upper_cane_mm=upper)
    assert kept(answer) == stays
    assert evidence in [source["id"] for source in answer["sources"]]


def test_an_unsound_cane_goes_before_thickness_is_asked(rulebook):
    """dis-06: discard unsound wood first; sl-08: the sounder one stays."""
    for state in ("dead", "split", "unripe"):
        assert kept(position(rulebook, lower_cane_state=state, lower_cane_mm="unknown")) == ["upper"]


def test_keeping_the_upper_cane_is_called_climbing(rulebook):
    """sl-06: old spurs stack year on year; the guide says so and has the base tagged."""
    answer = position(rulebook, lower_cane_mm=6)
    assert "climbs" in answer["headline"] and any("Tag" in one["spring"] for one in answer["work"] if "spring" in one)


def test_a_shoot_from_the_cordon_takes_over_and_the_old_spur_goes(rulebook):
    """sl-06: let some non-count shoots grow where old spurs stand; then cut the old spur out."""
    answer = position(rulebook, HIGH, low_cane_state="sound", low_cane_mm=9)
    assert kept(answer) == ["low"] and "S10" in rows(answer)
    assert any("old position off" in winter["do"] and "sl-06" in winter["sources"] for one in answer["work"] for winter in one.get("winters", []))


def test_without_a_low_shoot_none_is_rubbed_off(rulebook):
    """sl-06: over-thinning of non-count shoots on the cordon makes creeping worse."""
    springs = [one["spring"] for one in position(rulebook, HIGH)["work"] if "spring" in one]
    assert any("rub nothing off the arm" in spring for spring in springs)


def test_the_printed_rise_gives_the_winters_until_the_limit(rulebook):
    """sl-07: 2 cm a year; 20 cm after ten years."""
    printed = rulebook.evidence["sl-07"]
    rise = numbers_in(printed.inputs["rise"])[0]
    (height,) = {number for number in numbers_in(str(printed.outputs)) if number > 10}
    assert position(rulebook, spur_height_cm=0, spur_height_limit_cm=height)["outputs"]["winters_to_limit"] == height / rise == 10
    assert rise in prints(rulebook, "sl-07")


def test_the_default_limit_is_nobody_s_figure(rulebook):
    """sl-06, sl-07: creeping and its rise are printed, a limit is not; the default says so."""
    followed = rulebook.values["spur_height_limit_cm"].followed
    assert followed.standing == "our_judgement" and not followed.cites
    assert float(followed.number) not in prints(rulebook, "sl-06")


@pytest.mark.parametrize("thick", [8, 12, 15])
def test_the_dry_stub_is_once_to_twice_as_long_as_thick(rulebook, thick):
    """D29: about as long as it is thick; sl-07: at least twice the diameter."""
    outputs = position(rulebook, two_year_wood_mm=thick)["outputs"]
    assert outputs["stub_low_mm"] == rulebook.evidence["D29-stub-rule"].outputs["stub in times of the diameter"] * thick
    assert "twice the diameter" in rulebook.evidence["sl-07"].statement and outputs["stub_high_mm"] == 2 * thick


def test_the_stub_is_said_to_be_disputed(rulebook):
    """D28: dead wood followed the distance from the node and not the diameter."""
    printed = rulebook.evidence["D28-necrosis-diameter"].outputs
    assert (printed["necrosis_vs_diameter"], printed["necrosis_vs_distance"]) == ("not significant", "strong")
    answer = position(rulebook, two_year_wood_mm=12)
    assert any("distance of the cut from the node and not the thickness" in note for note in answer["notes"])
    assert "D28-necrosis-diameter" in [source["id"] for source in answer["sources"]]


def test_a_wound_of_five_eighths_is_large(rulebook):
    """D16: keep wounds below 16 mm; twice the diameter is four times the area."""
    printed = rulebook.evidence["D16-wound-size"]
    limit, double = printed.inputs["diameter_mm"]
    assert "S20" in rows(position(rulebook, two_year_wood_mm=limit - 1)) and "S20_large" in rows(position(rulebook, two_year_wood_mm=limit))
    assert math.isclose((double / limit) ** 2, printed.outputs["area_ratio"])
    assert "four times the area" in rulebook.decisions["stub_cut"].rows[0].because
    assert 15 in printed.outputs["large_wound_mm"] and "15 mm" in rulebook.decisions["stub_cut"].rows[0].note


def test_the_length_over_the_last_node_is_called_practice(rulebook):
    """D30: a longer piece of internode kept a fungus away; no length is printed in what was read."""
    over = [rulebook.values[f"cut_over_node_{end}_cm"].followed for end in ("low", "high")]
    assert {one.standing for one in over} == {"common_practice"}
    assert not {float(one.number) for one in over} & prints(rulebook, "D30-long-internode-stub")
    assert "S19" in rows(position(rulebook))


def test_the_cut_slants_away_from_the_bud(rulebook):
    """T24: cut at a slant so that sap does not run over the buds."""
    assert "slant" in rulebook.evidence["T24-bleeding-harmless"].statement
    assert any("slanted away from the bud" in step for step in position(rulebook)["steps"])


@pytest.mark.parametrize("changes", [{}, {"position_growth": "weak"}, {"position_lags": True}, {"long_spurs_planned": True}, {"lower_cane_mm": 6, "upper_cane_mm": 6}])
def test_spurs_have_as_many_nodes_as_printed(rulebook, changes):
    """sl-08: one to three by system."""
    least, most = rulebook.evidence["sl-08"].outputs["nodes per spur"]
    assert least <= position(rulebook, **changes)["outputs"]["nodes_lower"] <= most


@pytest.mark.parametrize(("evidence", "changes"), [("sl-05", {}), ("sl-05", {"long_spurs_planned": True}), ("sys-14", {"long_spurs_planned": True})])
def test_a_fruiting_spur_is_within_the_printed_range(rulebook, evidence, changes):
    """sl-05 and sys-14: a fruiting spur of two to four buds."""
    ends = {"sl-05": numbers_in(str(rulebook.evidence["sl-05"].inputs["fruiting spur"])), "sys-14": numbers_in("two to four")}[evidence]
    assert ends == [2, 4] and set(ends) <= prints(rulebook, evidence)
    assert ends[0] <= position(rulebook, **changes)["outputs"]["nodes_lower"] <= ends[1]


def test_a_renewal_spur_has_one_node(rulebook):
    """sl-05: a renewal spur of one bud."""
    printed = numbers_in(rulebook.evidence["sl-05"].inputs["renewal spur"])
    assert printed == [position(rulebook, lower_cane_mm=7)["outputs"]["nodes_lower"]]


@pytest.mark.parametrize("evidence", ["cs-11", "cs-17"])
def test_a_third_node_is_not_left_without_need(rulebook, evidence):
    """cs-11: spurs of three nodes had more blind ones; cs-17: the third, lowest bud often fails."""
    assert 3 in prints(rulebook, evidence)
    answer = position(rulebook)
    assert answer["outputs"]["nodes_lower"] == 2 and evidence in [source["id"] for source in answer["sources"]]
    longer = next(reason for reason in position(rulebook, long_spurs_planned=True)["reasons"] if reason["row"] == "S17_long")
    assert evidence in longer["note"]


def test_the_lagging_middle_gets_the_shorter_of_the_printed_spurs(rulebook):
    """sys-20: spurs of one bud gave longer shoots than spurs of two."""
    short, usual = rulebook.evidence["sys-20"].inputs["nodes per spur"]
    assert [position(rulebook, position_lags=lags)["outputs"]["nodes_lower"] for lags in (True, False)] == [short, usual]


@pytest.mark.parametrize(("evidence", "points", "canopy", "stays"), [
    ("sl-05", "down", "upright", ["upper"]),
    ("sl-05", "up", "upright", ["lower"]),
    ("sl-05", "up", "hanging", ["upper"]),
    ("sl-05", "down", "hanging", ["lower"]),
])  # fmt: skip
def test_spurs_point_up_or_down_by_system(rulebook, evidence, points, canopy, stays):
    """Hellman: pointing the right way, up or down by system."""
    assert "up or down by system" in rulebook.evidence[evidence].statement
    assert kept(position(rulebook, lower_cane_points=points, canopy_form=canopy)) == stays


@pytest.mark.parametrize("evidence", ["Q04-spur-spacing", "sl-01"])
def test_positions_at_a_printed_distance_are_no_twins(rulebook, evidence):
    """Q04, sl-01: 7.6 cm is the least distance printed; at the guide's spacing it is no pair of which one goes."""
    spacing = float(rulebook.values["spur_spacing_m"].number) * 100
    assert 7.6 in prints(rulebook, evidence)
    answer = position(rulebook, nearest_position_spacings=7.6 / spacing, lower_of_pair=False)
    assert kept(answer) == ["lower"]


def test_twins_would_pass_the_shading_limit(rulebook):
    """sl-03, Smart: 15 shoots a metre; two-node spurs at half a spacing stand at more than twice that, so one goes."""
    limit = numbers_in(rulebook.evidence["sl-03"].inputs["limit"])[0]
    shoots = 2 / (0.5 * float(rulebook.values["spur_spacing_m"].number))
    assert shoots > 2 * limit
    assert kept(position(rulebook, nearest_position_spacings=0.4, lower_of_pair=False)) == []
    assert kept(position(rulebook, nearest_position_spacings=0.4, lower_of_pair=True)) == ["lower"]


@pytest.mark.parametrize("evidence", ["D22-surgery-10-cm", "D23-surgery-20-cm-smart"])
def test_stain_stops_the_work_and_both_clearances_are_said(rulebook, evidence):
    """D22: 10 cm of healthy wood besides; D23: 8 inches, 20 cm."""
    answer = position(rulebook, arm_beneath="stained")
    said = {number for step in answer["steps"] for number in numbers_in(step)}
    assert "nodes_lower" not in answer["outputs"] and said & prints(rulebook, evidence) & {10, 20}
    assert evidence in answer["reasons"][0]["sources"]


def test_an_arm_is_renewed_from_the_head_or_above_the_graft(rulebook):
    """cr-01: renew where spur places are poor; hold a shoot at the head or a sucker on the trunk above the graft."""
    answer = position(rulebook, spur_height_cm=21, creeping_positions_pct=34)
    spring = next(one["spring"] for one in answer["work"] if one["outcome"] == "renew_arm")
    assert all(part in spring and part in rulebook.evidence["cr-01"].statement for part in ("at the head", "above the graft"))


def test_a_gap_takes_the_outer_cane_and_the_lower_one_is_the_spur(rulebook):
    """cs-15: a good low cane as spur and the outer ones as bearers, so that no bare gap forms."""
    answer = position(rulebook, gap_beside_spacings=2)
    assert kept(answer) == ["lower"] and any("Upper cane" in step and "laid into the gap" in step for step in answer["steps"])


@pytest.mark.parametrize(("evidence", "end"), [("D14-double-prune-usda-uc", 25.4), ("D12-weber-preprune-margin", 45)])
def test_where_frost_comes_often_the_spur_is_left_long(rulebook, evidence, end):
    """D14: 10 to 12 inches; D12: 30 to 45 cm: the guide says the whole span."""
    row = next(row for row in rulebook.decisions["spur_cut"].rows if row.id == "S21")
    assert end in prints(rulebook, evidence) and float(math.floor(end)) in numbers_in(row.because)
    assert "S21" in rows(position(rulebook, spring_frost_risk="high")) and "S21" not in rows(position(rulebook, spring_frost_risk="some"))
