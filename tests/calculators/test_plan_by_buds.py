"""The plan of a block of which buds were cut open: fruit by bearer, room by bearer, interval by canes cut."""

import pytest

from generator.answers.compute import compute, plan
from tests.calculators.tallies import canes


def made(rulebook, block="worked_cool_cane", **changes):
    """The plan of a stored block with some facts changed; None takes a fact out."""
    facts = {**rulebook.blocks[block].facts, **changes}
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


def test_buds_cut_open_and_spring_counts_are_never_mixed(rulebook):
    """With buds the bunches counted in spring change nothing, and the plan says on which it stands."""
    with_spring, without = made(rulebook, bunches_per_shoot=2.5), made(rulebook)
    assert numbers(with_spring, "node_number") == numbers(without, "node_number")
    assert "plan.by_buds" in notes(without, "node_number")
    short = made(rulebook, buds_cut=False, bunches_per_shoot=1.2, budburst_pct=90)
    assert "plan.by_spring_counts" in notes(short, "node_number")


def test_without_buds_the_part_says_so_and_asks_nothing(rulebook):
    """No, not known and not answered come to the same; the last is assumed and listed as such."""
    for answer in (False, "unknown", None):
        found = part(made(rulebook, buds_cut=answer), "find_fruit")
        assert (found["headline"]["id"], found["settled"], found["needs"]) == ("plan.buds_not_cut", True, [])
    assert "buds_cut" in made(rulebook, buds_cut=None)["assumed"]


def test_a_tally_older_than_the_last_freeze_is_void(rulebook):
    """What was alive then may be dead now; nothing is worked out from it."""
    found = made(rulebook, tally_date="2026-01-10", last_freeze_date="2026-02-01")
    assert part(found, "find_fruit")["headline"]["id"] == "plan.tally_void"
    assert "fruit_nodes" not in numbers(found, "node_number")


def test_what_the_buds_tell_is_a_computed_fact(rulebook):
    """The answer shows the reach it rests on, with its status."""
    found = plan(rulebook, rulebook.blocks["worked_cool_cane"].facts)["facts"]
    assert found["spur_reach_low"]["status"] == "computed" and 0.7 < found["spur_reach_low"]["value"] < 0.94


def test_more_canes_cut_open_narrow_the_counts_and_not_the_season(rulebook):
    """The interval of the sampling shrinks with the root of the canes; that of the season stays."""
    few, many = (numbers(made(rulebook, canes_dissected=canes), "forecast") for canes in (20, 80))
    width = [one["sampling_high"] / one["t_per_ha"] - 1 for one in (few, many)]
    assert width[0] == pytest.approx(2 * width[1], rel=0.1)
    assert few["season_low"] == many["season_low"] and few["t_per_ha_high"] > many["t_per_ha_high"] > many["season_high"]


def test_no_number_of_canes_no_interval_of_the_counts(rulebook):
    """Nothing is made up for a sample nobody described."""
    assert "sampling_low" not in numbers(made(rulebook, canes_dissected=None), "forecast")


def test_the_layout_is_the_one_that_was_reckoned(rulebook):
    """The nodes laid are the nodes of the number, renewal spurs among them, and the crop is that of these bearers."""
    for crop in (4.5, 6, 7):
        found = made(rulebook, target_yield_t_ha=crop)
        laid = numbers(found, "lay_out")
        assert laid["nodes_laid"] == numbers(found, "node_number")["nodes"] and laid["short_nodes"] == 0
        assert laid["t_per_ha_laid"] == numbers(found, "forecast")["t_per_ha"]


@pytest.mark.parametrize("crops", [(3, 6), (6, 9), (9, 20)])
def test_more_yield_wanted_never_means_fewer_nodes_by_buds(rulebook, crops):
    """Nodes rise with the crop wanted, up to the room."""
    few, many = (numbers(made(rulebook, target_yield_t_ha=crop), "node_number")["nodes"] for crop in crops)
    assert few <= many


def test_a_small_wish_does_not_prune_harder_by_buds(rulebook):
    """The nodes stay at what fills the canopy; bunches are thinned, and the plan says so."""
    found = made(rulebook, target_yield_t_ha=2)
    assert numbers(found, "node_number")["nodes"] >= numbers(found, "node_number")["room_low"]
    assert "node_number.keep_and_thin" in notes(found, "node_number")


def test_a_wish_that_no_bearer_carries_is_said(rulebook):
    """Fruit and wish in conflict: the most that the bearers carry, and what would help."""
    found = made(rulebook, target_yield_t_ha=40, shoots_per_m_high=40)
    assert "plan.buds_fall_short" in notes(found, "node_number")


def test_only_fruit_beyond_the_cut_dries(rulebook):
    """Severed canes bear less than the same canes picked fresh: neither their lowest nodes nor the spurs count."""
    severed, fresh = (made(rulebook, "drying_on_the_vine", drying=way) for way in ("severed_on_vine", "trays"))
    assert "plan.dries_beyond_cut" in notes(severed, "node_number") and "plan.dries_beyond_cut" not in notes(fresh, "node_number")
    per_node = [numbers(one, "forecast")["bunches"] / numbers(one, "node_number")["nodes"] for one in (severed, fresh)]
    assert per_node[0] < per_node[1]


def test_canes_of_a_wanted_length_go_up_cane_by_cane(rulebook):
    """Five canes of fourteen nodes carry less than the wish, six carry it: no cane is cut shorter to come nearer."""
    found = made(rulebook, "worked_barren_base")
    assert numbers(found, "lay_out")["canes"] == 6 and "plan.thin_to_wish" in notes(found, "node_number")
    assert numbers(made(rulebook, "worked_barren_base", target_yield_t_ha=23), "lay_out")["canes"] == 5


def test_the_fewest_canes_from_those_wanted_upwards(rulebook):
    """One cane carries 6 t/ha; who wants two lays two shorter ones."""
    found = made(rulebook, canes_wanted_per_vine=2)
    assert numbers(found, "lay_out")["canes"] == 2 and numbers(made(rulebook), "lay_out")["canes"] == 1


def test_whole_layouts_are_held_to_vine_and_law(rulebook):
    """Twelve nodes are wanted: with eleven or eight allowed the layout of most bunches within that is kept, and every node of it is laid."""
    for most in (11, 8):
        found = made(rulebook, legal_nodes_per_vine_most=most)
        assert (numbers(found, "node_number")["nodes"], part(found, "node_number")["choice"]) == (most, "legal")
        assert numbers(found, "lay_out")["nodes_laid"] == most and "node_number.honest_crop" in notes(found, "node_number")
    weak = made(rulebook, pruning_weight_kg=0.3, grape_type=None)
    assert (numbers(weak, "node_number")["nodes"], part(weak, "node_number")["choice"]) == (9, "capacity")


def test_the_honest_crop_by_buds_is_the_crop_of_the_layout(rulebook):
    """One number for the crop: that of the bearers which are laid."""
    found = made(rulebook, legal_nodes_per_vine_most=8)
    honest = next(one for one in part(found, "node_number")["notes"] if one["id"] == "node_number.honest_crop")
    assert honest["numbers"][0] == pytest.approx(numbers(found, "forecast")["t_per_ha"], rel=1e-12)


def test_vine_and_wire_of_worked_block_1_are_in_conflict(rulebook):
    """0.62 kg: 18.6 (bp-28) to 27 nodes by the prunings, 12 to 18 on the wire: the vine could carry more, and none is added."""
    found = made(rulebook, pruning_weight_kg=0.62, grape_type="vinifera")
    got = numbers(found, "node_number")
    assert (round(got["capacity_low"], 1), round(got["capacity_high"])) == (18.6, 27) and got["nodes"] == 12
    assert "node_number.more_than_wire" in notes(found, "node_number")


def test_a_law_under_the_smallest_layout_is_told(rulebook):
    """One cane and its renewal spur are three nodes; where two are allowed the plan says that these bearers cannot keep to it."""
    found = made(rulebook, legal_nodes_per_vine_most=2)
    assert numbers(found, "node_number")["nodes"] == 3
    assert "plan.smallest_layout" in notes(found, "node_number") and "plan.laid_over_law" in notes(found, "lay_out")


def test_a_wish_over_both_room_and_law_is_held_by_the_lower(rulebook):
    """The room limits where the law leaves more, and the law where the room does."""
    for most, limit in ((60, "room_high"), (13, "legal")):
        found = made(rulebook, target_yield_t_ha=12, canes_wanted_per_vine=2, legal_nodes_per_vine_most=most)
        assert part(found, "node_number")["choice"] == limit and numbers(found, "node_number")["nodes"] <= most


TALLIED = ["target_yield_t_ha", "bunch_weight_g", "vine_spacing_m", "curtains", "shoots_per_m_high", "noncount_shoots_kept", "spur_budburst_pct", "secondary_share",
           "dissection_to_spring", "shoots_per_burst_node", *(f"cane_budburst_node_{node}" for node in range(1, 5))]  # fmt: skip


@pytest.mark.parametrize(("count", "seed"), [(30, 3), (30, 11), (12, 5)])
def test_the_plan_is_as_sure_of_the_spur_as_the_tally_is(rulebook, count, seed):
    """Rows become figures of the tally, and these the facts of the plan: the reach of the two-node spur, its interval and the canes still to
    cut are the same on both pages, whatever number of canes the block's own file had."""
    block = {name: value for name, value in rulebook.blocks["worked_cool_cane"].facts.items() if not name.startswith("primordia")}
    vines = 10000 / 2.2 / 1.1 * 0.97
    rows = [vars(row) for row in canes(count, 10, seed)]
    tally = compute(rulebook, "bud_fruitfulness", {"rows": rows, "bearing_vines_per_ha": vines, **{name: block[name] for name in TALLIED}})
    there = numbers(plan(rulebook, {**block, **tally["facts"]})["plan"], "find_fruit")
    names = ["spur_reach", "spur_reach_low", "spur_reach_high", *(["more_canes"] if "more_canes" in tally["outputs"] else [])]
    assert [there[name] for name in names] == pytest.approx([tally["outputs"][name] for name in names], rel=1e-9)


def test_a_layout_that_was_cut_is_not_to_be_thinned(rulebook):
    """Six canes carry more than the wish; the vine carries four. What stays is short of it: an honest crop, whole canes, and no thinning."""
    found = made(rulebook, "worked_barren_base", pruning_weight_kg=2.5, grape_type="vinifera")
    told = notes(found, "node_number")
    assert numbers(found, "lay_out")["canes"] == 4 and numbers(found, "forecast")["t_per_ha"] < 25
    assert {"node_number.honest_crop", "plan.whole_bearers"} <= set(told) and "plan.thin_to_wish" not in told


def test_bearers_that_fall_short_have_an_honest_crop(rulebook):
    """No bearer carries 30 t/ha to dry: the crop of what is laid is named, and nobody says that the crop decides."""
    found = made(rulebook, "drying_on_the_vine", target_yield_t_ha=30)
    honest = next(one for one in part(found, "node_number")["notes"] if one["id"] == "node_number.honest_crop")
    assert honest["numbers"][0] == pytest.approx(numbers(found, "forecast")["t_per_ha"])
    assert "node_number.agree" not in notes(found, "node_number")


@pytest.mark.parametrize("dead", [0, 10, 25, 45])
@pytest.mark.parametrize(("secondary", "doubles"), [(0, 1.0), (10, 1.1)])
def test_a_death_is_counted_once_through_the_whole_plan(rulebook, dead, secondary, doubles):
    """Eight nodes by law whatever is dead: the crop of the plan falls by V now / V with all alive and by nothing else, V = P (1 + d s) + S s by
    the tally made after the freeze. Taken on to winter injury, the number holds these deaths and nothing is added."""
    second = min(dead, secondary)
    tallied = {"dead_node_pct": dead - second, "dead_primary_pct": second, "shoots_per_burst_node": doubles}
    pinned = {"legal_nodes_per_vine_most": 8, "target_yield_t_ha": 12, "pruning_weight_kg": None}
    sound = made(rulebook, **pinned, dead_primary_pct=0, dead_node_pct=0, shoots_per_burst_node=doubles)
    now = made(rulebook, **pinned, **tallied, tally_date="2026-12-20", last_freeze_date="2026-12-10")
    assert numbers(sound, "node_number")["nodes"] == numbers(now, "node_number")["nodes"] == 8
    s, d = 0.3, doubles - 1
    value = (1 - dead / 100) * (1 + d * s) + second / 100 * s
    assert numbers(now, "forecast")["t_per_ha"] / numbers(sound, "forecast")["t_per_ha"] == pytest.approx(value / (1 + d * s))
    buds = {"buds_cut_for_injury": 100, "buds_primary_alive": 100 - dead, "buds_secondary_only": second, "secondary_share": s}
    injury = {"wanted_nodes": 8, "deaths_in_wanted_nodes": "this_winter", "living_budburst_pct": 95, **buds}
    assert compute(rulebook, "injury_adjustment", injury)["outputs"]["nodes_replacing_with_secondaries"] == 8


@pytest.mark.parametrize("dead", [10, 25, 45])
def test_the_plan_after_the_freeze_agrees_with_replacing_by_hand(rulebook, dead):
    """Buds cut after the freeze ask for more nodes, and for no more than replacing asks for from a number without deaths; less where longer
    canes bear better further out. Deaths counted twice would ask for more."""
    room = {"shoots_per_m_high": 40, "canes_wanted_per_vine": 2, "pruning_weight_kg": None, "target_yield_t_ha": 5}
    sound = numbers(made(rulebook, **room, dead_primary_pct=0, dead_node_pct=0), "node_number")["fruit_nodes"]
    now = numbers(made(rulebook, **room, dead_primary_pct=0, dead_node_pct=dead), "node_number")["fruit_nodes"]
    buds = {"buds_cut_for_injury": 100, "buds_primary_alive": 100 - dead, "buds_secondary_only": 0, "secondary_share": 0.3}
    injury = {"wanted_nodes": sound, "deaths_in_wanted_nodes": "none", "living_budburst_pct": 95, **buds}
    by_hand = compute(rulebook, "injury_adjustment", injury)["outputs"]["nodes_replacing_with_secondaries"]
    assert sound <= now <= by_hand
