"""The choice of canes: what is told agrees with what is done, and comes in the order of the hand."""

from generator.answers.compute import compute

GOOD = {"cane_diameter_mm": 9, "cane_ripe_nodes": 14, "cane_origin": "renewal_spur", "cane_base_below_wire_cm": 12, "internode_cm": 8}
VINE = {"canes_wanted_per_vine": 2, "vine_spacing_m": 1.8, "tip_gap_m": 0.1, "head_below_wire_cm": 12}
PAIR = [{"cane_side": "left"}, {"cane_side": "right"}]
LOW = [one | {"cane_base_below_wire_cm": 16} for one in PAIR]


def choose(rulebook, *rows: dict, **vine) -> dict:
    """The answer on some canes, each a good one but for what is said."""
    return compute(rulebook, "cane_choice", {"rows": [GOOD | row for row in rows], **VINE, **vine})


def springs(answer: dict) -> str:
    """All that is said for the spring."""
    return " ".join(one.get("spring", "") for one in answer["work"])


def test_a_reserve_cane_is_spoken_of_only_where_one_is_left(rulebook):
    """A note says that none is left, and then no line for the spring has it cut off."""
    kept = choose(rulebook, *PAIR, *LOW, {}, spring_frost_risk="high")
    assert kept["outputs"]["reserve_canes"] == 1 and "cut off the reserve cane" in springs(kept)
    none = choose(rulebook, *PAIR, *LOW, spring_frost_risk="high")
    assert none["outputs"]["reserve_canes"] == 0 and "reserve cane" not in springs(none) and any("no cane is left" in note for note in none["notes"])


def test_a_marked_vine_is_told_before_the_first_cut(rulebook):
    """It is pruned last, so the first step says so."""
    assert "last" in choose(rulebook, *PAIR, *LOW, vine_marked=True)["steps"][0]
    assert "Cane 1" in choose(rulebook, *PAIR, *LOW)["steps"][0]


def test_what_the_crop_becomes_is_said_wherever_nodes_are_lacking(rulebook):
    """All canes are there, but slim ones are cut short: the part of the nodes planned is told. With all nodes nothing is."""
    slim = choose(rulebook, *[one | {"cane_diameter_mm": 7} for one in PAIR], *LOW)
    assert slim["outputs"]["canes_laid"] == 2 and slim["outputs"]["crop_pct"] == 100 * slim["outputs"]["nodes"] / slim["outputs"]["planned_nodes"] < 100
    assert any("of the nodes planned" in step for step in slim["steps"])
    assert "crop_pct" not in choose(rulebook, *PAIR, *LOW)["outputs"]


def test_one_cane_may_have_its_spur_on_the_other_side(rulebook):
    """The vine has one cane, which goes either way, so a good low cane across the head is its spur and is not cut off."""
    left, right = {"cane_side": "left", "cane_base_below_wire_cm": 8}, {"cane_side": "right", "cane_base_below_wire_cm": 16}
    assert [one["use"] for one in choose(rulebook, left, right, canes_wanted_per_vine=1)["canes"]] == ["lay", "spur"]


def test_a_cane_with_room_for_a_spur_is_not_laid(rulebook):
    """Far out on close vines a cane has room for one or two nodes: laid it would be no more than a spur, so it makes one."""
    near = {"vine_spacing_m": 0.8, "canes_wanted_per_vine": 2}
    for out, used in ((10, "lay"), (20, "spur")):
        answer = choose(rulebook, {"cane_base_out_cm": out, "cane_side": "left"}, **near)
        assert [one["use"] for one in answer["canes"]] == [used], answer["steps"]


def test_a_sound_cane_at_the_right_height_is_no_worse_than_a_watershoot(rulebook):
    """The laid cane is the lower one; a short one beside it that stands right is its spur all the same, and is not cut off for a shoot to come."""
    low, short = {"cane_base_below_wire_cm": 16}, {"cane_base_below_wire_cm": 8, "cane_ripe_nodes": 4}
    answer = choose(rulebook, low, short, canes_wanted_per_vine=1)
    assert [one["use"] for one in answer["canes"]] == ["lay", "spur"] and "watershoot" not in springs(answer)
    near_wire = choose(rulebook, low, short | {"cane_base_below_wire_cm": 2}, canes_wanted_per_vine=1)
    assert near_wire["canes"][1]["use"] == "off" and "watershoot" in springs(near_wire)
