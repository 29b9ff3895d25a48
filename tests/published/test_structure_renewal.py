"""The renewal of arms and trunks, and the change of form, against what is published. Figures come from the evidence of each check."""

import pytest

from generator.answers.compute import compute
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Outcome, Winter
from tests.published.printed import NUMBER, numbers_in, prints, rules
from tests.published.vines import of_those, outcome, printed

SOUND = {
    "stain_reach": "none",
    "arms_with_signs": "none",
    "signs_seen_when": "in_leaf",
    "present_structure": "spur_cordon",
    "sound_cordon_pct": 95,
    "spur_positions_missing_pct": 5,
    "missing_in_a_row": 0,
    "good_canes_per_vine": 3,
    "canes_wanted_per_vine": 2,
    "cane_diameter_mm": 10,
    "cane_section": "round",
    "low_shoot": "yes",
    "head_below_wire_cm": 12,
}
NO_CANE = {"good_canes_per_vine": 0}


def renewal(rulebook: Rulebook, **facts: object) -> str:
    """What the guide renews on a vine."""
    return outcome(rulebook, "structure_renewal", **of_those(rulebook, "structure_renewal", SOUND | facts))


def change(rulebook: Rulebook, to: str, **facts: object) -> str:
    """The way from one form to the other."""
    return outcome(rulebook, "change_over", change_to=to, **of_those(rulebook, "change_over", SOUND | facts))


def told(rulebook: Rulebook, table: str, name: str) -> Outcome:
    """One outcome as it is written."""
    return next(one for one in rulebook.decisions[table].outcomes if one.id == name)


def first(rulebook: Rulebook, table: str, name: str) -> Winter:
    """This winter's work of an outcome."""
    return told(rulebook, table, name).winters[0]


def row(rulebook: Rulebook, table: str, name: str):
    """A row as it is written."""
    return next(one for one in rulebook.decisions[table].rows if one.id == name)


def test_a_clean_full_cordon_is_kept(rulebook: Rulebook) -> None:
    """cr-01: a cordon is renewed when yield drops, parts are dead or spur places are few; else it stays."""
    assert renewal(rulebook) == "keep"


@pytest.mark.parametrize(("arms", "answer"), [("one", "retrain cordon"), ("more", "retrain vine from sucker")])
@pytest.mark.parametrize("evidence", ["cr-02", "D24"])
def test_one_arm_or_the_trunk(rulebook: Rulebook, evidence: str, arms: str, answer: str) -> None:
    """cr-02, D24: signs on one cordon, that cordon; on more, the vine from a trunk sucker."""
    action = dict(zip((1, 2), printed(rulebook, "cr-02")["action"], strict=True))[1 if arms == "one" else 2]
    assert action == answer and set(printed(rulebook, "D24-surgery-decision")) == {"n==1", "n>1", "lower_trunk"}
    assert renewal(rulebook, arms_with_signs=arms) == {"retrain cordon": "replace_arm"}.get(answer, "new_trunk")


@pytest.mark.parametrize(
    ("when", "stain", "answer"),
    [("dormant", "none", "keep"), ("in_leaf", "none", "replace_arm"), ("dormant", "arm", "replace_arm"), ("dormant", "not_cut", "replace_arm")],
)
def test_dead_spurs_alone_over_clean_faces_cost_no_arm(rulebook: Rulebook, when: str, stain: str, answer: str) -> None:
    """cr-02: the sign is dead spurs and sick shoots; shoots show in leaf alone, so an arm that is clean in every face is marked and looked at again."""
    assert "dead spurs, sick shoots" in " ".join(rulebook.evidence["cr-02"].statement.split())
    facts = of_those(rulebook, "structure_renewal", SOUND | {"arms_with_signs": "one", "signs_seen_when": when, "stain_reach": stain, "clean_trunk_cm": 60})
    found = compute(rulebook, "structure_renewal", facts)
    assert found["outcome"] == answer and any("early summer" in one for one in found["also"]) == (answer == "keep")


def test_retraining_takes_about_two_years(rulebook: Rulebook) -> None:
    """D24: retraining the whole vine from a trunk sucker takes about two years."""
    assert 2 in prints(rulebook, "D24-surgery-decision") & set(numbers_in(told(rulebook, "structure_renewal", "new_trunk").years))


@pytest.mark.parametrize("evidence", ["cr-06", "D24"])
def test_stain_in_the_lower_trunk_is_lost(rulebook: Rulebook, evidence: str) -> None:
    """cr-06, D24: where dark wedges reach the lower trunk, renovation fails and replanting is left."""
    assert renewal(rulebook, stain_reach="trunk", clean_trunk_cm=0) == "replant"
    assert printed(rulebook, "D24-surgery-decision")["lower_trunk"] == "replant"


@pytest.mark.parametrize(
    ("evidence", "figure", "below", "from_it_on"), [("D22", "sosnowski", "replant", "new_trunk"), ("D23", "smart", "new_trunk", "new_trunk")]
)
def test_each_author_s_margin_is_a_boundary(rulebook: Rulebook, evidence: str, figure: str, below: str, from_it_on: str) -> None:
    """D22, 10 cm: cut that much below the stain, and if that would be below the graft, replant. D23, 8 inches, 20 cm."""
    margin = next(one.number for one in rulebook.values["stain_clearance_cm"].figures if one.id == figure)
    assert margin in prints(rulebook, next(name for name in rulebook.evidence if name.startswith(f"{evidence}-")))
    assert renewal(rulebook, stain_reach="trunk", clean_trunk_cm=margin - 1) == below
    assert renewal(rulebook, stain_reach="trunk", clean_trunk_cm=margin) == from_it_on


@pytest.mark.parametrize(("cm", "cut", "evidence"), [(10, "short", "D22"), (20, "low", "D23"), (19, "short", "X04"), (10, "short", "cr-03"), (20, "low", "cr-03")])
def test_the_margin_that_the_trunk_has_room_for(rulebook: Rulebook, cm: int, cut: str, evidence: str) -> None:
    """X04: 10 cm at least, 20 cm where the trunk allows; cr-03 prints both ends."""
    assert outcome(rulebook, "stain_cut", stain_reach="trunk", clean_trunk_cm=cm) == cut
    assert {10.0, 20.0} <= prints(rulebook, "cr-03") and {10.0, 20.0} <= prints(rulebook, "X04-surgery-clearance")


def test_both_margins_are_shown_with_their_authors(rulebook: Rulebook) -> None:
    """X04: the ranges are shown and never averaged; the 20 cm are followed."""
    value = rulebook.values["stain_clearance_cm"]
    assert {one.number for one in value.figures} == set(map(float, printed(rulebook, "X04-surgery-clearance")["cm"]))
    assert next(one for one in value.figures if one.id == value.follow).number == 20


def test_a_trunk_without_a_shoot_may_still_send_one(rulebook: Rulebook) -> None:
    """D22: between 42 and 100 in 100 vines sent out watershoots after the cut."""
    winters = told(rulebook, "structure_renewal", "grow_trunk").winters
    assert renewal(rulebook, arms_with_signs="more", low_shoot="no") == "grow_trunk"
    assert set(printed(rulebook, "D22-surgery-10-cm")["watershoot_percent"]) <= set(numbers_in(winters[1].do))


@pytest.mark.parametrize(
    ("table", "name", "winter"),
    [
        ("structure_renewal", "replace_arm", 0),
        ("structure_renewal", "cut_arm_grow", 1),
        ("change_over", "spurs_now", 0),
        ("change_over", "spurs_grow", 1),
    ],
)
def test_a_cordon_laid_from_a_cane_costs_no_crop(rulebook: Rulebook, table: str, name: str, winter: int) -> None:
    """sys-05: no crop is lost in the year of renewal."""
    lost = numbers_in(printed(rulebook, "sys-05")["crop lost in cordon renewal year"])[0]
    each = told(rulebook, table, name).winters[winter]
    assert each.crop_pct == (100 - lost, 100 - lost) and each.standing == "published"


def test_bunches_on_spurs_are_smaller(rulebook: Rulebook) -> None:
    """sys-05: spurs done well yield like canes; clusters run 10 to 20 % smaller."""
    after = told(rulebook, "change_over", "spurs_now").winters[1]
    least, most = sorted(numbers_in(printed(rulebook, "sys-05")["cluster size change"]))
    assert after.crop_pct == (100 - most, 100) and {least, most} <= set(numbers_in(told(rulebook, "change_over", "spurs_now").winters[2].do))


def test_half_a_cordon_bears_half(rulebook: Rulebook) -> None:
    """cr-02: with one of two arms off and no cane to lay, half of the vine is left to bear."""
    each = first(rulebook, "structure_renewal", "cut_arm_grow")
    assert each.crop_pct[0] == 100 / len(printed(rulebook, "cr-02")["action"]) and each.standing == "our_arithmetic"


def test_a_change_over_saves_nothing_at_first(rulebook: Rulebook) -> None:
    """sys-09: no saving in the year of conversion, which can take over two years."""
    one = row(rulebook, "change_over", "D13_spurs")
    assert "not in the year of the change" in one.because and "over two years" in one.note
    assert len(told(rulebook, "change_over", "spurs_now").winters) > 2


def test_both_sites_of_the_long_trial_are_told(rulebook: Rulebook) -> None:
    """sys-09: no loss at one site, a loss for the fourth year running at another."""
    last = told(rulebook, "change_over", "spurs_now").winters[-1].do
    assert "no loss at one site" in last and "four years at another" in last


@pytest.mark.parametrize(("to", "answer"), [("to_spurs", "spurs"), ("to_canes", "canes")])
def test_the_crew_has_to_learn(rulebook: Rulebook, to: str, answer: str) -> None:
    """sys-05: training crews is one of the two hard parts of a change-over; it is said with the answer."""
    facts = of_those(rulebook, "change_over", SOUND) | {"change_to": to, "skilled_pruners": "plenty"}
    also = compute(rulebook, "change_over", facts)["also"]
    assert any(told(rulebook, "crew_learns", answer).action in one for one in also)


def test_canes_ask_for_more_skill(rulebook: Rulebook) -> None:
    """sys-18: cane systems need more skilled labour; with few who can, only so many rows change."""
    assert outcome(rulebook, "crew_learns", change_to="to_canes", skilled_pruners="short") == "canes_few"
    assert outcome(rulebook, "crew_learns", change_to="to_spurs", skilled_pruners="short") == "spurs"


@pytest.mark.parametrize("name", ["replace_arm", "cut_arm_grow", "rebuild_arms", "rebuild_grow"])
def test_the_old_arm_is_cut_from_its_end_or_its_shoot_is_held(rulebook: Rulebook, name: str) -> None:
    """cr-01: plan ahead and hold a shoot at the head; cut from the far end inward to look for cankers; keep a renewal spur."""
    one = told(rulebook, "structure_renewal", name)
    assert "Tag" in one.spring and "head" in one.spring
    assert "end inward" in one.winters[0].do or "spur" in one.winters[0].do


@pytest.mark.parametrize(("table", "name"), [("structure_renewal", "replace_arm"), ("change_over", "spurs_now")])
def test_a_new_arm_is_wound_once_and_unwound(rulebook: Rulebook, table: str, name: str) -> None:
    """Y06, cr-01: wrap at most once, unwrap the next winter, renewal spur at the head."""
    this, after = told(rulebook, table, name).winters[:2]
    assert "once round the wire at most" in this.do and "renewal spur at the head" in this.do and after.do.startswith("Unwind")


def test_the_low_cane_bears_while_it_becomes_the_trunk(rulebook: Rulebook) -> None:
    """cr-09, Y11: a basal cane is cut below the top wire and counted as one of the fruiting canes; weak, two or three two-node spurs."""
    this, after, _ = told(rulebook, "structure_renewal", "new_trunk").winters
    assert "into the node number" in this.do and "hand below the wire" in this.do
    assert {2.0, 3.0} <= set(numbers_in(after.do)) & prints(rulebook, "cr-09")


def test_two_new_trunks_are_better_than_one(rulebook: Rulebook) -> None:
    """cr-03: two new trunks per vine."""
    assert "Two new trunks" in row(rulebook, "structure_renewal", "D24_trunk").note and 2 in prints(rulebook, "cr-03")


@pytest.mark.parametrize(("share", "answer"), [(20, "marked"), (21, "in_turns")])
def test_not_every_vine_is_renewed_at_once(rulebook: Rulebook, share: int, answer: str) -> None:
    """cr-03: renewing every vine at once loses crop without need; 20 % is the largest share that the article names."""
    assert 20 in prints(rulebook, "cr-03")
    assert outcome(rulebook, "renewal_pace", trunk_disease_vines_pct=share) == answer


def test_what_renewing_is_good_for_is_said(rulebook: Rulebook) -> None:
    """cr-07: very well against Eutypa, partly against esca and Botryosphaeria; renewed vines crop sooner than replants."""
    one = row(rulebook, "structure_renewal", "D24_trunk")
    assert "Eutypa" in one.note and "esca" in one.note and "sooner" in one.because


def test_a_renewed_vine_bears_sooner_than_a_replant(rulebook: Rulebook) -> None:
    """cr-07: in the second and third summer the renewed vine is ahead."""
    new, young = (told(rulebook, "structure_renewal", name).winters for name in ("new_trunk", "replant"))
    assert all(new[k].crop_pct[0] > young[k].crop_pct[1] for k in (1, 2))


def test_a_replant_bears_as_young_vines_do(rulebook: Rulebook) -> None:
    """Y09: nothing in the first two leaves, a part in the third, a full crop in the fourth."""
    crops = [one.crop_pct for one in told(rulebook, "structure_renewal", "replant").winters[1:]]
    own = printed(rulebook, "Y09-young-crop-removal")["crop_fraction"]
    assert [(0, 0) if x == 0 else (100, 100) if x == 1 else x for x in own] == [crops[0], crops[1], "partial", crops[3]]
    assert 0 < crops[2][0] < crops[2][1] < 100


def test_a_sick_arm_does_not_wait(rulebook: Rulebook) -> None:
    """cr-04: a canker edge advances 5 to 13 cm a year."""
    assert renewal(rulebook, arms_with_signs="one", **NO_CANE) == "cut_arm_grow"
    assert set(numbers_in(row(rulebook, "structure_renewal", "B5_no_cane").because)) >= {5.0, 13.0}
    assert {5.0, 13.0} <= prints(rulebook, "cr-04")


@pytest.mark.parametrize("missing", [2, 3, 9])
def test_shoots_from_the_arm_fill_gaps(rulebook: Rulebook, missing: int) -> None:
    """sl-06: let some non-count shoots grow from the cordon; over-thinning them makes it worse."""
    assert renewal(rulebook, missing_in_a_row=missing, **NO_CANE) == "grow_for_gap"
    assert "rub none of them off" in told(rulebook, "structure_renewal", "grow_for_gap").spring


def test_a_gap_longer_than_a_short_cane_is_a_new_piece_of_arm(rulebook: Rulebook) -> None:
    """cs-02: internodes from 7.6 cm: six of them span four positions of 10 cm and not five."""
    six_nodes = 6 * min(x for x in prints(rulebook, "cs-02") if x > 70) / 10
    assert int(six_nodes / 10) == 4
    assert renewal(rulebook, missing_in_a_row=4) == "fill_gap" and renewal(rulebook, missing_in_a_row=5) == "renew_end"


@pytest.mark.parametrize(("evidence", "below", "answer"), [("hg-01", 12, "canes_now"), ("hg-01", 0, "canes_new_head")])
def test_the_head_comes_below_the_wire_before_canes(rulebook: Rulebook, evidence: str, below: int, answer: str) -> None:
    """hg-01: the head sits 10 to 13 cm below the wire."""
    assert change(rulebook, "to_canes", head_below_wire_cm=below) == answer
    assert {10.0, 13.0} <= set(numbers_in(first(rulebook, "change_over", "canes_new_head").do)) & prints(rulebook, "hg-01")


@pytest.mark.parametrize(("evidence", "low", "answer"), [("hg-01", "yes", "canes_new_head"), ("hg-01", "no", "canes_hold_shoot")])
def test_a_head_at_the_wire_comes_first_though_there_is_no_cane(rulebook: Rulebook, evidence: str, low: str, answer: str) -> None:
    """hg-01: canes grown at a head level with the wire would stand up from it; a spur on the low cane needs no cane to lay."""
    assert evidence in [cite.id for cite in row(rulebook, "change_over", "B11_low").cites]
    assert change(rulebook, "to_canes", head_below_wire_cm=0, low_shoot=low, **NO_CANE) == answer
    assert change(rulebook, "to_canes", **NO_CANE) == "canes_grow"


@pytest.mark.parametrize(("canes", "answer"), [(1, "spurs_by_side"), (2, "spurs_by_side"), (3, "spurs_now")])
def test_one_cane_makes_one_arm(rulebook: Rulebook, canes: int, answer: str) -> None:
    """cr-01: plan ahead, and hold a shoot at the head; with canes for one side the other is laid when its cane has grown."""
    assert change(rulebook, "to_spurs", good_canes_per_vine=canes) == answer
    assert "shoot at the head" in told(rulebook, "change_over", "spurs_by_side").spring and "at the head" in rulebook.evidence["cr-01"].statement


def test_cuts_that_count_as_large_are_named(rulebook: Rulebook) -> None:
    """D16: wounds under about 16 mm."""
    assert 16 in numbers_in(first(rulebook, "change_over", "canes_now").do) and 16 in prints(rulebook, "D16-wound-size")


@pytest.mark.parametrize("mm", [7.9, 12.7])
def test_an_arm_is_made_of_pencil_thick_wood(rulebook: Rulebook, mm: float) -> None:
    """Q03: 7.9 to 12.7 mm are kept; below 8 mm nothing is left, least of all a cordon."""
    assert mm in printed(rulebook, "Q03-wood-diameter")["accept"]
    ready = mm >= printed(rulebook, "Q03-wood-diameter")["reject_below_mm"]
    assert outcome(rulebook, "arm_cane", **of_those(rulebook, "arm_cane", SOUND | {"cane_diameter_mm": mm})) == ("ready" if ready else "none")


def test_every_renewal_has_its_line_for_the_spring(rulebook: Rulebook) -> None:
    """cr-01: plan ahead: hold a shoot at the head or a sucker on the trunk; so each answer says which shoots are spared."""
    tables = [rulebook.decisions[name] for name in ("structure_renewal", "change_over", "young_vine")]
    assert [one.id for table in tables for one in table.outcomes if not one.spring] == []


@pytest.mark.parametrize("table", ["structure_renewal", "change_over"])
def test_a_block_goes_on_bearing(rulebook: Rulebook, table: str) -> None:
    """cr-03: renewal that loses crop without need is what the article warns of: but for a replanted vine and a trunk cut without a low
    shoot, no winter's work leaves a vine without fruit."""
    bare = {one.id for one in rulebook.decisions[table].outcomes for each in one.winters if each.crop_pct and each.crop_pct[0] == 0}
    assert bare == ({"replant", "grow_trunk"} if table == "structure_renewal" else set())


SAID = [
    (look, one.text, " ".join(cite.id for cite in one.cites))
    for look in ("arm_in_decline", "young_vine")
    for one in rules().looks[look].says
    if one.cites and NUMBER.search(one.text)
]


@pytest.mark.parametrize(("look", "text", "evidence"), SAID)
def test_figures_beside_the_drawings_are_printed(rulebook: Rulebook, look: str, text: str, evidence: str) -> None:
    """Every figure that is said beside the drawings of a young vine and an arm in decline stands in what the sentence cites."""
    there = set().union(*(prints(rulebook, name) for name in evidence.split()))
    assert {float(number) for number in NUMBER.findall(text)} <= there, look
