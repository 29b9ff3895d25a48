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
    assert "node_number.keep_and_thin" in notes(found, "node_number")


def test_a_canopy_filled_by_other_shoots_has_no_node_number(rulebook):
    """60 other shoots on 1.5 m leave no room: no number is made up."""
    found = made(rulebook, noncount_shoots_kept=60)
    assert part(found, "node_number")["headline"]["id"] == "plan.no_room" and not found["settled"]


def test_prunings_not_weighed_are_said_and_ask_nothing(rulebook):
    """The view of the vine is open: the plan says so, is settled all the same, and has no number for it."""
    for answer in (None, "unknown"):
        found = made(rulebook, pruning_weight_kg=answer)
        assert "node_number.lacks_capacity" in notes(found, "node_number") and found["settled"]
        assert "capacity_high" not in numbers(found, "node_number")


def test_the_vine_is_a_ceiling(rulebook):
    """0.35 kg of prunings: 10.5 nodes at 30 a kilogram (bp-28), 15.4 by 20 + 20 a pound (bp-13), taken in proportion below a pound. The
    crop's 18 come down to 15, though the wire needs 16."""
    found = made(rulebook, pruning_weight_kg=0.35, grape_type="vinifera")
    got = numbers(found, "node_number")
    assert (got["capacity_low"], got["capacity_high"]) == (pytest.approx(0.35 * 30), pytest.approx(0.35 / 0.45359237 * 20))
    assert (got["nodes"], got["low"], got["high"], part(found, "node_number")["choice"]) == (15, 15, 15, "capacity")
    assert {"node_number.over_capacity", "node_number.honest_crop", "node_number.less_than_wire"} <= set(notes(found, "node_number"))
    assert "node_number.lacks_capacity" not in notes(found, "node_number")


def test_what_the_prunings_say_rests_on_the_grape_and_brings_its_sources(rulebook):
    """Without prunings the kind of grape moves nothing and no rule of balanced pruning is named; with them it is."""
    facts = {**rulebook.blocks["demo"].facts, "grape_type": "vinifera"}
    without, weighed = plan(rulebook, facts), plan(rulebook, {**facts, "pruning_weight_kg": 0.35})
    rests = [part(one["plan"], "node_number")["rests_on"] for one in (without, weighed)]
    assert "grape_type" not in rests[0] and {"pruning_weight_kg", "grape_type", "use", "climate"} <= set(rests[1])
    sources = [{source["id"] for source in one["sources"]} for one in (without, weighed)]
    assert {"bp-13", "bp-28"} <= sources[1] - sources[0] and without["values"] == weighed["values"]


def test_a_rule_of_balanced_pruning_may_be_chosen_by_hand(rulebook):
    """0.35 kg of vinifera are 15.4 by 20 + 20 a pound and 23.1 by 30 + 10 (bp-09), each in proportion: with the second the crop's 18 stand,
    and the plan says that the rule is made for other vines."""
    facts = {"pruning_weight_kg": 0.35, "grape_type": "vinifera"}
    by_hand = made(rulebook, **facts, balanced_formula="ohio_american")
    assert numbers(by_hand, "node_number")["capacity_high"] == pytest.approx(0.35 / 0.45359237 * 30)
    assert (numbers(made(rulebook, **facts), "node_number")["nodes"], numbers(by_hand, "node_number")["nodes"]) == (15, 18)
    assert "capacity.for_others" in notes(by_hand, "node_number") and "balanced_formula" in part(by_hand, "node_number")["rests_on"]
    assert "capacity.for_others" not in notes(made(rulebook, **facts, balanced_formula="ohio_vinifera"), "node_number")


def test_a_vine_that_could_carry_more_than_the_wire_holds_gets_no_more(rulebook):
    """0.9 kg are 27 nodes at 30 a kilogram (bp-28), over the wire's 24: the number stays the crop's."""
    found = made(rulebook, pruning_weight_kg=0.9, grape_type="vinifera")
    assert numbers(found, "node_number")["capacity_low"] == pytest.approx(27)
    assert (numbers(found, "node_number")["nodes"], part(found, "node_number")["choice"]) == (18, "fruit")
    assert "node_number.more_than_wire" in notes(found, "node_number")


def test_the_law_is_a_ceiling(rulebook):
    """Fourteen a vine (ll-01) cut the crop's 18 and the wire's 16; that it is no advice is said."""
    found = made(rulebook, legal_nodes_per_vine_most=14)
    assert (numbers(found, "node_number")["nodes"], part(found, "node_number")["choice"]) == (14, "legal")
    assert {"node_number.over_law", "node_number.not_advice"} <= set(notes(found, "node_number"))


def test_a_legal_limit_of_the_hectare_is_shared_by_its_places(rulebook):
    """40 000 on 10 000 m2 / (2.4 m x 1.5 m) places are 14.4 a vine: fourteen whole nodes, never fifteen. Missing vines leave no more."""
    found = made(rulebook, legal_nodes_per_ha_most=40000, missing_vines_pct=30)
    got = numbers(found, "node_number")
    assert (got["legal_most"], got["nodes"], got["nodes_exact"]) == (pytest.approx(14.4), 14, pytest.approx(14.4))
    both = made(rulebook, legal_nodes_per_ha_most=40000, legal_nodes_per_vine_most=12)
    assert numbers(both, "node_number")["nodes"] == 12


def test_a_legal_limit_of_the_hectare_asks_the_spacing(rulebook):
    """Bearing vines counted by hand say nothing of the places: the row spacing is asked, and until then the limit is not told."""
    found = made(rulebook, legal_nodes_per_ha_most=40000, bearing_vines_per_ha=2667, row_spacing_m="unknown")
    assert "row_spacing_m" in part(found, "node_number")["needs"] and not part(found, "node_number")["settled"]
    assert "legal_most" not in numbers(found, "node_number")


def test_one_view_shows_vine_and_law_beside_it(rulebook):
    """Without a crop there is no number, but what vine and law say stands there."""
    found = made(rulebook, target_yield_t_ha="unknown", pruning_weight_kg=0.62, legal_nodes_per_vine_most=12)
    got = numbers(found, "node_number")
    assert got["capacity_low"] == pytest.approx(18.6) and got["legal_most"] == 12 and "nodes" not in got
    lines = [one["id"] for one in part(found, "node_number")["lines"]]
    assert {"node_number.by_prunings", "node_number.law_vine"} <= set(lines)


def test_more_prunings_never_mean_fewer_nodes(rulebook):
    """The number rises with the vine until the crop or the wire ends it."""
    got = [numbers(made(rulebook, target_yield_t_ha=20, pruning_weight_kg=kg), "node_number")["nodes"] for kg in (0.1, 0.3, 0.5, 0.7, 1, 3)]
    assert got == sorted(got) and got[0] == 3 and got[-1] == 24


@pytest.mark.parametrize("name", ["nodes", "high", "capacity_low", "capacity_high", "room_low", "room_high", "legal_most"])
def test_plan_and_calculator_hold_the_same_number(rulebook, name):
    """The plan's part and the page of the node number come to the same from the same facts."""
    weighed = {"pruning_weight_kg": 0.5, "grape_type": "american", "balanced_formula": "ohio_vinifera"}
    facts = {**rulebook.blocks["demo"].facts, **weighed, "legal_nodes_per_ha_most": 50000}
    asked = {one.fact for one in rulebook.calculators["node_number"].inputs}
    theirs = compute(rulebook, "node_number", {fact: value for fact, value in facts.items() if fact in asked})["outputs"]
    ours = numbers(plan(rulebook, facts)["plan"], "node_number")
    same = {"room_low": "space_low", "room_high": "space_high"}.get(name, name)
    assert ours[name] == (int(theirs[same] + 0.5) if name != same else theirs[same])


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


@pytest.mark.parametrize("changes", [SICK["replant"], SICK["renew_trunks"], {"present_structure": "spur_head"}, {"present_structure": "machine_hedge"}])
def test_a_block_without_a_number_is_told_what_to_leave(rulebook, changes):
    """Renewed vines, bush vines and hedges: last winter's nodes, or to count them; what the prunings carry, or to weigh them; the law."""
    told = made(rulebook, **changes, pruning_weight_kg=0.5, grape_type="vinifera", legal_nodes_per_vine_most=14)
    assert numbers(told, "node_number") == {"capacity_low": 15, "capacity_high": pytest.approx(22, abs=0.1), "legal_most": 14}
    assert {"plan.nodes_as_before", "plan.nodes_by_prunings", "node_number.law_vine", "node_number.not_advice"} <= set(notes(told, "node_number"))
    bare = made(rulebook, **changes, nodes_left=None)
    assert notes(bare, "node_number") == ["plan.nodes_to_count", "plan.nodes_weigh"] and bare["settled"] == told["settled"]


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


def test_an_honest_crop_is_that_of_the_places(rulebook):
    """24 nodes fit the wire and ten positions carry 20: the buyer is told the crop of twenty, as the plan's first line says."""
    found = made(rulebook, target_yield_t_ha=20)
    honest = next(one for one in part(found, "node_number")["notes"] if one["id"] == "node_number.honest_crop")
    assert honest["numbers"][1] == 20 and honest["numbers"][0] == pytest.approx(numbers(found, "lay_out")["t_per_ha_laid"])
    assert found["headline"]["numbers"][2] == pytest.approx(honest["numbers"][0])


def test_counts_from_canes_do_not_hold_for_spurs(rulebook):
    """Spring counts on a cordon say little about canes: where the form changes a note says so."""
    found = made(rulebook, use="dried", drying="severed_on_vine")
    assert part(found, "lay_out")["choice"] == "cane" and "plan.counts_of_other_form" in notes(found, "node_number")
    assert "plan.counts_of_other_form" not in notes(made(rulebook), "node_number")


def test_the_structures_that_the_plan_knows_stand_where_it_expects_them(rulebook):
    """plan_by_spring names two choices of present_structure by their place."""
    from generator.calculators.plan_by_spring import CANE_HEAD, SPUR_CORDON

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


@pytest.mark.parametrize(("dead", "said"), [({"dead_primary_pct": 30}, True), ({"dead_node_pct": 12}, True), ({"dead_primary_pct": 0, "dead_node_pct": 0}, False), ({}, False)])
def test_dead_buds_beside_spring_counts_lead_on_to_winter_injury(rulebook, dead, said):
    """Spring counts hold the deaths of ordinary winters only, so the plan names the way on; the number itself stays."""
    bare = {"dead_primary_pct": None, "dead_node_pct": None}
    found, without = made(rulebook, **{**bare, **dead}), made(rulebook, **bare)
    assert ("plan.injury_next" in notes(found, "node_number")) == said
    assert numbers(found, "node_number")["nodes"] == numbers(without, "node_number")["nodes"]
