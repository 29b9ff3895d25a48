"""The plan of a block, part by part."""

import random

import pytest

from generator.answers.compute import compute, plan
from generator.answers.tables import base_facts, feeding_order

PARTS = ["assess", "find_fruit", "choose_system", "node_number", "forecast", "lay_out"]


def made(rulebook, **changes):
    """The plan of the demo block with some facts changed; None takes a fact out."""
    facts = {**rulebook.blocks["demo"].facts, **changes}
    return plan(rulebook, {name: value for name, value in facts.items() if value is not None})["plan"]


def part(found, name):
    """A part of a plan by id."""
    return next(one for one in found["parts"] if one["id"] == name)


def numbers(found, name):
    """The numbers of a part by id."""
    return {one["id"]: one["number"] for one in part(found, name)["numbers"]}


def notes(found, name):
    """The ids of a part's notes."""
    return [one["id"] for one in part(found, name)["notes"]]


def test_a_block_with_all_facts_gives_the_whole_plan(rulebook):
    """Every part is ready and settled, in the order of the work, and nothing is asked."""
    found = made(rulebook)
    assert [one["id"] for one in found["parts"]] == PARTS
    assert found["settled"] and found["ask_next"] == "" and all(one["ready"] for one in found["parts"])


def test_assumed_facts_are_listed(rulebook):
    """What nobody gave and a default filled in stands in the list, and weakens the status."""
    found = made(rulebook, budburst_pct=None)
    assert "budburst_pct" in found["assumed"] and found["status"] == "assumed"


def test_the_crop_wanted_decides_inside_the_room(rulebook):
    """17.6 nodes for the crop, room for 16 to 24: the crop's number is kept."""
    found = made(rulebook)
    assert (numbers(found, "node_number")["nodes"], part(found, "node_number")["choice"]) == (18, "fruit")


def test_the_canopy_is_a_ceiling(rulebook):
    """A crop that asks for more nodes than there is room for is cut to the room, and the forecast says what it becomes."""
    found = made(rulebook, target_yield_t_ha=20)
    assert numbers(found, "node_number")["nodes"] == numbers(found, "node_number")["room_high"] == 24
    assert part(found, "node_number")["choice"] == "room_high"
    assert numbers(found, "forecast")["t_per_ha"] < 20


def test_a_small_crop_wish_does_not_prune_harder(rulebook):
    """The fruit view is no ceiling: the nodes stay at the fewest for a closed canopy, and bunches are thinned."""
    found = made(rulebook, target_yield_t_ha=3)
    assert numbers(found, "node_number")["nodes"] == numbers(found, "node_number")["room_low"] == 16
    assert "plan.keep_and_thin" in notes(found, "node_number")


def test_a_canopy_filled_by_other_shoots_has_no_node_number(rulebook):
    """60 other shoots on 1.5 m leave no room: no number is made up."""
    found = made(rulebook, noncount_shoots_kept=60)
    assert part(found, "node_number")["headline"]["id"] == "plan.no_room" and not found["settled"]


def test_the_view_not_taken_is_named(rulebook):
    """Capacity is not asked yet, and the plan says so."""
    assert "plan.capacity_not_taken" in notes(made(rulebook), "node_number")


def test_missing_vines_asked_and_unknown_leave_places_only(rulebook):
    """Not counted is not none missing: bearing vines stay open and are asked for."""
    found = made(rulebook, missing_vines_pct="unknown")
    assert "bearing_vines_per_ha" not in numbers(found, "assess")
    assert found["ask_next"] == "missing_vines_pct"


def test_bearing_vines_counted_by_hand_replace_the_reckoning(rulebook):
    """A count of bearing vines is used as it is, and missing vines are not asked."""
    found = made(rulebook, missing_vines_pct="unknown", bearing_vines_per_ha=2000)
    assert found["settled"] and numbers(found, "node_number")["fruit_nodes"] == 24


def test_without_a_crop_the_room_is_still_shown(rulebook):
    """One view is taken where only one can be; the number waits."""
    found = made(rulebook, target_yield_t_ha="unknown")
    assert numbers(found, "node_number") == {"room_low": 16, "room_high": 24, "canopy_m": 1.5}
    assert found["ask_next"] == "target_yield_t_ha" and not part(found, "forecast")["ready"]


def test_positions_not_counted_are_asked_but_a_layout_is_shown(rulebook):
    """New arms stand in for positions nobody counted."""
    found = made(rulebook, live_spur_positions_per_vine="unknown")
    assert part(found, "lay_out")["ready"] and found["ask_next"] == "live_spur_positions_per_vine"


def test_a_young_vine_has_no_node_number(rulebook):
    """System and node number are not asked of a vine that is being formed."""
    found = made(rulebook, present_structure="young")
    assert part(found, "node_number")["headline"]["id"] == "plan.nodes_not_asked"
    assert numbers(found, "node_number") == {} and found["drawing"]["shapes"] == []


SICK = {"replant": {"dark_stain_in_trunk": "most_vines"}, "renew_trunks": {"trunk_disease_vines_pct": 30, "arms_with_signs": "more"}}


@pytest.mark.parametrize("system", SICK)
def test_an_answer_without_a_layout_says_so_and_asks_nothing_for_it(rulebook, system):
    """New vines or new trunks come first: the layout does not wait for facts that are known, and nothing is drawn."""
    found = made(rulebook, **SICK[system])
    assert part(found, "choose_system")["possible"] == [system]
    layout = part(found, "lay_out")
    assert (layout["headline"]["id"], layout["needs"]) == ("plan.layout_none", []) and found["drawing"]["shapes"] == []


def test_what_would_change_the_system_is_what_the_decision_says(rulebook):
    """Each fact changed alone, as in the decision's own answer; nothing while the system is open."""
    facts = rulebook.blocks["demo"].facts
    asked = base_facts(rulebook, feeding_order(rulebook, "pruning_system"))
    answer = compute(rulebook, "pruning_system", {name: facts[name] for name in asked if name in facts})
    assert plan(rulebook, facts)["would_change"] == answer["would_change"] != []
    assert plan(rulebook, {})["would_change"] == []


def test_what_would_change_the_system_really_does(rulebook):
    """The fact put at the value named gives the plan the system named (guide, what every answer shows)."""
    for change in plan(rulebook, rulebook.blocks["demo"].facts)["would_change"]:
        found = made(rulebook, **{change["fact"]: change["value"]})
        assert part(found, "choose_system")["possible"] == [change["outcome"]]


def test_too_few_positions_tell_the_crop_that_they_bear(rulebook):
    """Six positions carry 12 of 18 nodes: the crop of 12 is told."""
    found = made(rulebook, live_spur_positions_per_vine=6)
    assert numbers(found, "lay_out")["short_nodes"] == 6 and "plan.crop_as_laid" in notes(found, "lay_out")


def test_counts_from_canes_do_not_hold_for_spurs(rulebook):
    """Spring counts on a cordon say little about canes: where the form changes a note says so."""
    found = made(rulebook, use="dried", drying="severed_on_vine")
    assert part(found, "lay_out")["choice"] == "cane" and "plan.counts_of_other_form" in notes(found, "node_number")
    assert "plan.counts_of_other_form" not in notes(made(rulebook), "node_number")


def test_the_structures_that_the_plan_knows_stand_where_it_expects_them(rulebook):
    """plan_nodes names two choices of present_structure by their place."""
    from generator.calculators.plan_nodes import CANE_HEAD, SPUR_CORDON

    choices = [choice.id for choice in rulebook.facts["present_structure"].choices]
    assert (choices[SPUR_CORDON], choices[CANE_HEAD]) == ("spur_cordon", "cane_head")


@pytest.mark.parametrize("block", ["demo", "cool_canes"])
def test_answering_what_is_asked_leads_to_a_settled_plan(rulebook, block):
    """From nothing, each question answered from the block's facts: no question twice, and the plan settles."""
    answers = rulebook.blocks[block].facts
    facts: dict = {}
    while (asked := plan(rulebook, facts)["plan"]["ask_next"]) != "":
        assert asked not in facts
        facts[asked] = answers[asked]
    assert plan(rulebook, facts)["plan"]["settled"]


@pytest.mark.parametrize("seed", range(30))
def test_any_facts_unknown_still_give_a_plan(rulebook, seed):
    """Whatever is unknown, the plan stands; it asks for something unknown or not asked, and for nothing once it is settled."""
    facts = rulebook.blocks["demo"].facts
    rng = random.Random(seed)
    unknown = set(rng.sample(sorted(facts), rng.randint(1, 12)))
    found = made(rulebook, **{name: "unknown" for name in unknown})
    asked = found["ask_next"]
    assert asked == "" or asked in unknown or asked not in facts
    assert not (found["settled"] and asked)


def test_the_system_says_what_to_do_this_winter_what_to_aim_for_and_how_long_it_takes(rulebook):
    """The answer of the main decision is a target, an action and the years between, in the words of its table (agronomy, section 1)."""
    for block in ("demo", "cool_canes"):
        found = part(plan(rulebook, rulebook.blocks[block].facts)["plan"], "choose_system")
        outcome = next(one for one in rulebook.decisions["pruning_system"].outcomes if one.id == found["possible"][0])
        texts = [note["text"] for note in found["notes"] if note["id"] != "answers.also"]
        assert texts == [f"This winter: {outcome.action}.", f"The aim: {outcome.target}.", f"How long it takes: {outcome.years}."]


def test_an_open_system_says_nothing_of_the_work(rulebook):
    """While the answer is open nobody is told what to cut."""
    found = part(made(rulebook, present_structure="unknown"), "choose_system")
    assert not found["settled"]
    assert {note["id"] for note in found["notes"]} <= {"plan.still_possible"}


def test_reasons_stand_with_the_main_answer_first_then_in_the_order_of_the_walk(rulebook):
    """What fed the main decision follows in the order in which it asks."""
    steps = [line["words"][0] for line in part(made(rulebook), "choose_system")["lines"] if line["id"] == "answers.step"]
    decision = rulebook.decisions["pruning_system"]
    asked = [f"decision.{name}" for name in ("pruning_system", *decision.facts)]
    assert [step for step in steps if step in asked] == [name for name in asked if name in steps]
    assert steps[0] == "decision.pruning_system" and len(steps) > 2
