"""The pruning of young vines against what is published. The source stands beside each check; figures come from its evidence."""

import pytest

from generator.answers.compute import compute
from generator.reading.rulebook import Rulebook
from tests.published.printed import numbers_in, prints
from tests.published.vines import of_those, outcome, printed

CANE = {
    "shoot_origin": "above_graft",
    "cane_section": "round",
    "young_cane_mm": 9.5,
    "young_stand": "no_trunk",
    "young_cane_reaches": "yes",
    "arm_wood_cm": 80,
    "severe_winters": "no",
    "next_leaf": 2,
}
STEP_MM = 0.1


def work(rulebook: Rulebook, **facts: object) -> dict:
    """What the guide has done at a young vine this winter."""
    return compute(rulebook, "young_vine", CANE | facts)["work"]


def done(rulebook: Rulebook, **facts: object) -> str:
    """The action of this winter."""
    return work(rulebook, **facts)["action"]


def young(rulebook: Rulebook, **facts: object) -> str:
    """The answer for a young vine."""
    return outcome(rulebook, "young_vine", **(CANE | facts))


def crop(rulebook: Rulebook, **facts: object) -> str:
    """The answer on its first crop."""
    return outcome(rulebook, "first_crop", **of_those(rulebook, "first_crop", CANE | facts))


def test_thinner_than_a_pencil_is_cut_back(rulebook: Rulebook) -> None:
    """Q03, Y02: a trunk cane is kept from a pencil's thickness; thinner, the vine goes back to two buds."""
    pencil = printed(rulebook, "Q03-wood-diameter")["reject_below_mm"]
    assert printed(rulebook, "Y02-pencil-rule") == {f"d>={pencil}": "keep as trunk", f"d<{pencil}": "two buds"}
    assert young(rulebook, young_cane_mm=pencil) == "trunk_and_arm"
    assert young(rulebook, young_cane_mm=pencil - STEP_MM) == "cut_back"


@pytest.mark.parametrize("evidence", ["Y01", "Y02", "Y03"])
def test_cut_back_is_to_two_nodes(rulebook: Rulebook, evidence: str) -> None:
    """Each source that cuts back leaves two buds on a trunk to be."""
    assert 2 in numbers_in(done(rulebook, young_cane_mm=5.5))
    assert 2 in prints(rulebook, next(name for name in rulebook.evidence if name.startswith(f"{evidence}-")))


def test_two_trunks_are_kept_where_winters_kill(rulebook: Rulebook) -> None:
    """Y01: two future trunks are kept, each cut to two buds."""
    two = printed(rulebook, "Y01-two-bud-reset")
    action = next(one.action for one in rulebook.decisions["young_trunks"].outcomes if one.id == "two")
    assert outcome(rulebook, "young_trunks", severe_winters="yes") == "two"
    assert (two["trunks"], two["buds_each"]) == (2, 2) and numbers_in(action).count(2) == 3


def test_bull_canes_are_not_trusted_where_winters_kill(rulebook: Rulebook) -> None:
    """Y02: thick bull canes are not hardy."""
    assert young(rulebook, young_cane_mm=15, severe_winters="yes") == "bull_cane"
    assert young(rulebook, young_cane_mm=15, severe_winters="no") == "trunk_and_arm"


def test_what_is_wanted_ends_at_a_marker(rulebook: Rulebook) -> None:
    """Q03: 8 to 13 mm, pencil to marker; thicker wood bursts less reliably."""
    most = next(x for x in prints(rulebook, "Q03-wood-diameter") if x == round(printed(rulebook, "Q03-wood-diameter")["accept"][1]))
    found = [outcome(rulebook, "young_wood", **of_those(rulebook, "young_wood", CANE | {"young_cane_mm": mm})) for mm in (most, most + STEP_MM)]
    assert found == ["fit", "bull"]


def test_one_cane_gives_the_whole_trunk(rulebook: Rulebook) -> None:
    """Y03: cut to two buds in the first and often the second winter, until one cane gives the whole trunk."""
    assert young(rulebook, young_cane_reaches="no") == "cut_back"
    assert "2 buds or trunk cane" in printed(rulebook, "Y03-hedrick-bioletti-progression")["buds_or_spurs"]


@pytest.mark.parametrize("stand", ["no_trunk", "trunk", "part"])
def test_a_whole_cane_is_never_laid_in_one_go(rulebook: Rulebook, stand: str) -> None:
    """Y05: canes taper and the outer half is weak: cut back to strong wood and extend in the following years."""
    assert "8 mm" in done(rulebook, young_stand=stand, arm_wood_cm=200)
    assert printed(rulebook, "Y05-cordon-not-whole-cane")["lay_down"] == "only the thick part"


@pytest.mark.parametrize("stand", ["no_trunk", "trunk", "part"])
def test_the_length_of_one_winter(rulebook: Rulebook, stand: str) -> None:
    """Y10: 10 to 12 nodes or 60 to 90 cm in one season, of wood of at least 8 mm."""
    own = printed(rulebook, "Y10-cordon-length-per-year")
    wanted = {8.0, *map(float, own["length_cm_max"]), *map(float, own["nodes_max"])}
    assert wanted <= set(numbers_in(done(rulebook, young_stand=stand)))


def test_a_cane_is_wound_once_and_unwound_next_winter(rulebook: Rulebook) -> None:
    """Y06: at most one turn round the wire, unwrapped next winter so that it does not girdle; a renewal spur at the head."""
    assert printed(rulebook, "Y06-cordon-wrap-once") == {"max_turns": 1, "unwrap_next_winter": True}
    assert "once at most" in done(rulebook)
    assert all("nwind" in done(rulebook, young_stand=stand) for stand in ("trunk", "part", "whole"))
    assert "two-node spur at the head" in done(rulebook, young_stand="trunk")


def test_a_trunk_with_weak_canes_gets_spurs_near_its_top(rulebook: Rulebook) -> None:
    """Y11, cr-09: two or three two-node spurs near the top force stronger canes."""
    own = printed(rulebook, "Y11-weak-trunk-renewal")
    assert numbers_in(done(rulebook, young_stand="trunk", young_cane_mm=6))[:3] == [*own["spurs"], own["nodes_each"]]


@pytest.mark.parametrize("evidence", ["hg-01", "Y11"])
def test_the_trunk_ends_below_the_wire(rulebook: Rulebook, evidence: str) -> None:
    """hg-01: 10 to 13 cm below the wire; Y11: a new trunk cane is cut about 10 cm below it. Both stand with the row."""
    row = next(one for one in rulebook.decisions["young_vine"].rows if one.id == "Y05_trunk")
    full = next(name for name in rulebook.evidence if name == evidence or name.startswith(f"{evidence}-"))
    assert full in [cite.id for cite in row.cites]
    assert set(numbers_in(row.note)) & prints(rulebook, full) >= {10.0}


def test_a_new_trunk_must_be_alive_at_the_cut(rulebook: Rulebook) -> None:
    """Y11: the cane must be alive where it is cut."""
    assert "must be alive" in done(rulebook, arm_wood_cm=0)


@pytest.mark.parametrize(("leaf", "answer"), [(1, "none"), (2, "none"), (3, "few"), (4, "by_shoot")])
def test_fruit_of_the_first_four_leaves(rulebook: Rulebook, leaf: int, answer: str) -> None:
    """Y09: none in the first and second leaf, a reduced crop in the third, a full one in the fourth."""
    own = printed(rulebook, "Y09-young-crop-removal")["crop_fraction"][leaf - 1]
    assert {"none": 0, "few": "partial", "by_shoot": 1}[answer] == own
    assert crop(rulebook, next_leaf=leaf, young_stand="trunk") == answer


@pytest.mark.parametrize("leaf", [3, 4])
def test_weak_vines_wait_one_more_year(rulebook: Rulebook, leaf: int) -> None:
    """Y09: weak vines are one year behind."""
    weak = crop(rulebook, next_leaf=leaf, young_stand="trunk", young_cane_mm=6)
    assert weak == crop(rulebook, next_leaf=leaf - 1, young_stand="trunk", young_cane_mm=10)


def test_the_first_crop_is_ten_bunches(rulebook: Rulebook) -> None:
    """Y07: at most about ten bunches, the lower one on each shoot, decided after flowering."""
    few = next(one for one in rulebook.decisions["first_crop"].outcomes if one.id == "few")
    assert printed(rulebook, "Y07-first-crop-limit")["bunches_per_vine_max"] in numbers_in(few.action)
    assert "after flowering" in few.action and "lower bunch" in few.action


def test_later_crops_go_by_the_shoot(rulebook: Rulebook) -> None:
    """Y08: two bunches on shoots of 36 inches, one from 30 inches, none on shorter ones; said in rounded centimetres."""
    own = rulebook.evidence["Y08-crop-by-shoot-length"]
    two, one, _ = (inches * 2.54 for inches in own.inputs["shoot_inches"])
    action = next(each.action for each in rulebook.decisions["first_crop"].outcomes if each.id == "by_shoot")
    assert own.outputs["bunches"] == [2, 1, 0]
    assert numbers_in(action) == [pytest.approx(two, abs=2), pytest.approx(one, abs=2), 2, 1]


def test_rootstock_is_never_a_trunk(rulebook: Rulebook) -> None:
    """Y06: a renewal is chosen above the graft union."""
    assert young(rulebook, shoot_origin="below_graft", young_cane_mm=12) == "rootstock_off"
    assert young(rulebook, shoot_origin="own_roots", young_cane_mm=12) == "trunk_and_arm"


@pytest.mark.parametrize("stand", ["part", "whole"])
def test_first_spurs_stand_a_hand_apart(rulebook: Rulebook, stand: str) -> None:
    """Q04: spur positions a hand's width apart, with two to three buds."""
    assert "hand apart" in done(rulebook, young_stand=stand) and 2 in numbers_in(done(rulebook, young_stand=stand))


def test_every_young_vine_has_a_line_for_the_spring(rulebook: Rulebook) -> None:
    """Y01: the shoots that become the trunks are trained up in the coming leaf; so each answer says which are spared."""
    stands = ["no_trunk", "trunk", "part", "whole"]
    assert all(work(rulebook, young_stand=stand, young_cane_mm=mm)["spring"] for stand in stands for mm in (6, 10))
