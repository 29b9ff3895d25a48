"""Weak, normal and strong vines in the plan: the mean is the plan, no vine passes wire or law, a small wish takes no node off a strong vine."""

import pytest
from hypothesis import given as for_all
from hypothesis import settings
from hypothesis import strategies as st

from generator.answers.encode import values_record
from generator.answers.given import given
from generator.answers.plans import plan_tables
from generator.calculators.block_plan import block_plan
from generator.calculators.vine_classes import Mix, mean_of
from generator.reading.read import read_rulebook
from tests.published.printed import PROJECT

RULEBOOK = read_rulebook(PROJECT / "rules")[0]
VALUES, TABLES = values_record(RULEBOOK, "block_plan"), plan_tables(RULEBOOK)
BLOCKS = ["american_juice", "cool_canes", "demo", "gappy_cordon", "legal_limit", "long_spurs", "strong_small_wish", "weak_terrace", "worked_barren_base", "worked_cool_cane"]
MIX = ["weak_vines_pct", "strong_vines_pct", "weak_vine_nodes_pct", "strong_vine_nodes_pct"]


def planned(block, **changes):
    """The plan's parts of a stored block with some facts changed; None takes a fact out."""
    facts = {name: value for name, value in {**RULEBOOK.blocks[block].facts, **changes}.items() if value is not None}
    taken = given(RULEBOOK, list(RULEBOOK.facts), facts).facts
    return block_plan(taken, VALUES, TABLES).parts


def numbers(parts) -> dict[str, float]:
    """Every number of the parts by id."""
    return {one.id: one.number for part in parts for one in part.numbers}


def notes(parts) -> dict[str, list]:
    """The notes of all parts by id, each with its numbers."""
    return {note.id: note.numbers for part in parts for note in part.notes}


mixes = st.tuples(st.integers(0, 60), st.integers(0, 40), st.integers(20, 100), st.integers(100, 300))
crops = st.sampled_from([1, 2, 4, 6, 9, 14])


@settings(deadline=None, max_examples=30)
@for_all(block=st.sampled_from(BLOCKS), mix=mixes, crop=crops)
def test_the_mean_is_the_plan_and_no_vine_passes_wire_and_law(block, mix, crop):
    """By any mix: the weighted mean is that of the plan's nodes (those that find a place) within half a step of whole bearers, weak vines have
    no more than strong ones, and strong ones stay under the room and the law wherever the plan itself does."""
    got = numbers(planned(block, target_yield_t_ha=crop, **dict(zip(MIX, mix))))
    three = [got[f"{kind}_nodes"] for kind in ("weak", "normal", "strong")]
    assert mean_of(Mix(*map(float, mix)), *three) == pytest.approx(got["mean_nodes"])
    step = 16 if block == "worked_barren_base" else 1  # canes of fourteen nodes, each with a spur of two
    assert abs(got["mean_nodes"] - min(got["nodes"], got["nodes_laid"])) <= step / 2 + 1e-9
    assert three == sorted(three)
    most = max(got["nodes"], min(got["room_high"], got.get("legal_most", got["room_high"])))
    assert three[2] <= most


@settings(deadline=None, max_examples=20)
@for_all(block=st.sampled_from(BLOCKS), crop=st.floats(1.0, 14.0))
def test_a_small_wish_never_prunes_a_strong_vine_harder(block, crop):
    """Whatever the wish, a strong vine keeps at least what fills the wire, as far as vine and law allow it and the vine has places."""
    got = numbers(planned(block, target_yield_t_ha=crop))
    assert got["strong_nodes"] >= min(got["low"], got["nodes_laid"])


def test_the_kinds_are_told_with_how_to_tell_them():
    """17 on average are 14, 17 and 20: the words say so, and the thickness of canes that parts the vines is bp-16's."""
    found = notes(planned("strong_small_wish"))
    assert found["plan.three_kinds"] == [14, 17, 20, 20, 20, 17]
    assert found["plan.tell_apart"] == [7, 15]


def test_the_kinds_are_told_in_bearers():
    """Twelve nodes on one cane: a weak vine has a shorter one, a strong vine two nodes on a spur more and no short second cane."""
    found = notes(planned("worked_cool_cane"))
    assert found["plan.kind_canes"] == [1, 8, 2, 10] and found["plan.kind_more_spurs"] == [2, 14]


def test_canes_of_one_length_differ_by_whole_canes():
    """Five canes of fourteen and their spurs are the plan: weak vines keep four and strong ones six, none is cut shorter."""
    got = numbers(planned("worked_barren_base", target_yield_t_ha=23))
    assert [got[f"{kind}_nodes"] for kind in ("weak", "normal", "strong")] == [64, 80, 96]
    found = [note for part in planned("worked_barren_base", target_yield_t_ha=23) for note in part.notes if note.id == "plan.kind_canes"]
    assert [note.numbers[:2] for note in found] == [[4, 14], [6, 14]]


def test_a_law_that_binds_says_what_fewer_on_weak_vines_would_do():
    """Twelve by law for all: with ten on one vine in five the mean is 11.6."""
    assert notes(planned("legal_limit"))["node_number.alike"] == [12, 10, pytest.approx(11.6)]


def test_places_bind_strong_vines_too():
    """Ten positions of two nodes: with 18 on average no vine gets more than 20."""
    got = numbers(planned("demo"))
    assert got["strong_nodes"] == 20 and got["mean_nodes"] == 18


def test_a_mix_that_is_unknown_or_over_all_gives_no_numbers():
    """The plan says what it can: a rule without numbers, or that the count is off."""
    unknown = planned("demo", weak_vines_pct="unknown")
    assert "weak_nodes" not in numbers(unknown) and "plan.weak_and_strong" in notes(unknown)
    over = planned("demo", weak_vines_pct=70, strong_vines_pct=70)
    assert "weak_nodes" not in numbers(over) and notes(over)["plan.mix_over_all"] == [70, 70]


def test_a_block_of_like_vines_has_one_number():
    """No weak and no strong vines: nothing is said of them."""
    alike = planned("demo", weak_vines_pct=0, strong_vines_pct=0)
    assert not {"plan.three_kinds", "plan.weak_and_strong", "node_number.alike"} & set(notes(alike))
