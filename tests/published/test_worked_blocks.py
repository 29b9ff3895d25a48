"""The invented blocks with which the agronomy was worked out by hand, as far as these calculators go. Ours, not published."""

import pytest

from generator.answers.compute import compute, plan
from generator.calculators.vine_layout import vine_layout
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, but, some
from tests.published.printed import numbers_in

PRIMORDIA = [0.70, 0.85, 1.25, 1.4, 1.5, 1.5, 1.5, 1.5, 1.45, 1.4]
ALIVE, SECONDARY, SHARE, DOUBLE = 0.95, 0.04, 0.3, 0.03
BURST = [0.55, 0.75, 0.9] + [0.97] * 7
ON_A_SPUR = 0.95


def cool_wine_vine() -> tuple[float, float, float]:
    """Burst nodes, count shoots and bunches of a cane of ten nodes and a spur of two, by the long chain."""
    bearers = [*zip(PRIMORDIA, BURST), *((fruit, ON_A_SPUR) for fruit in PRIMORDIA[:2])]
    burst = sum(b * (ALIVE + SECONDARY) for _, b in bearers)
    shoots = sum(b * (ALIVE * (1 + DOUBLE) + SECONDARY) for _, b in bearers)
    bunches = sum(b * (ALIVE * fruit + (ALIVE * DOUBLE + SECONDARY) * SHARE * fruit) for fruit, b in bearers)
    return burst, shoots, bunches


def bearing(rulebook, row: float, vine: float, missing: float) -> float:
    """Bearing vines on a hectare."""
    inputs = {"row_spacing_m": row, "vine_spacing_m": vine, "missing_vines_pct": missing}
    return compute(rulebook, "vine_density", inputs)["outputs"]["bearing_vines_per_ha"]


def short_form(rulebook) -> dict:
    """The first block's vine as its spring counts would show it."""
    burst, shoots, bunches = cool_wine_vine()
    return {
        "bearing_vines_per_ha": bearing(rulebook, 2.2, 1.1, 3),
        "budburst_pct": 100 * burst / 12,
        "shoots_per_burst_node": shoots / burst,
        "bunches_per_shoot": bunches / shoots,
        "bunch_weight_g": 115,
    }


def test_the_short_form_agrees_with_the_long_chain(rulebook):
    """Cool wine cane: 12 nodes give 6.07 t/ha by the long chain, and so they do by spring counts; nothing is counted twice."""
    found = compute(rulebook, "yield_forecast", {"nodes": 12, **short_form(rulebook)})["outputs"]
    assert found["t_per_ha"] == pytest.approx(6.07, rel=0.02)
    assert found["count_shoots"] / 1.1 == pytest.approx(10.1, abs=0.2)


def test_six_tonnes_ask_for_twelve_nodes(rulebook):
    """Cool wine cane: 6 t/ha are 12 nodes, one more or less."""
    found = compute(rulebook, "nodes_for_yield", {"target_yield_t_ha": 6, **short_form(rulebook)})["outputs"]
    assert found["nodes"] == pytest.approx(12, abs=1)


def test_twelve_nodes_are_ten_and_two(rulebook):
    """Cool wine cane: one cane of ten nodes and a renewal spur of two on 1.1 m."""
    found = vine_layout(but(LAYOUT, target="cane", nodes=12, vine_spacing_m=1.1), LAYOUT_LIMITS)
    assert (found.cane_nodes, found.renewal_nodes) == (10, 2)


def test_room_for_ten_to_fifteen_shoots_a_metre(rulebook):
    """Cool wine cane: 1.1 m takes 11 to 16.5 shoots, so 12 nodes are inside the room."""
    chain = short_form(rulebook)
    inputs = {"curtains": 1, "cordon_arms": 2, "arm_length_m": 0.5, "vine_spacing_m": 1.1, "tip_gap_m": 0.1}
    limits = {"shoots_per_m_low": 10, "shoots_per_m_high": 15, "noncount_shoots_kept": 0}
    parts = {name: chain[name] for name in ("budburst_pct", "shoots_per_burst_node")}
    found = compute(rulebook, "canopy_space", {**inputs, **limits, **parts})["outputs"]
    assert found["canopy_m"] == 1.1 and found["nodes_low"] <= 12 <= found["nodes_high"]


def test_twenty_five_tonnes_are_forty_bunches(rulebook):
    """Table, barren base: 25 t/ha at 550 g on 3.6 x 2.4 m with 2 % missing are 40 bunches a vine."""
    inputs = {"target_yield_t_ha": 25, "bearing_vines_per_ha": bearing(rulebook, 3.6, 2.4, 2), "budburst_pct": 100}
    found = compute(rulebook, "nodes_for_yield", {**inputs, "shoots_per_burst_node": 1, "bunches_per_shoot": 1, "bunch_weight_g": 550})
    assert found["outputs"]["nodes"] == 40


def test_the_barren_base_needs_canes_that_long_values_allow():
    """Table, barren base: with 14 nodes on a cane allowed, 96 nodes are 6 x 14 and six two-node spurs on 2.4 m."""
    limits = but(LAYOUT_LIMITS, nodes_per_cane_most=14.0)
    found = vine_layout(but(LAYOUT, target="cane", nodes=96, vine_spacing_m=2.4, canes_wanted_per_vine=some(6)), limits)
    assert (found.canes, found.renewals) == ([14] * 6, [2] * 6)


def numbers_of_plan(rulebook, block: str) -> tuple[dict, dict[str, float]]:
    """The plan of a stored block, and every number of its parts by id."""
    found = plan(rulebook, rulebook.blocks[block].facts)["plan"]
    return found, {one["id"]: one["number"] for part in found["parts"] for one in part["numbers"]}


def layout_of_plan(found: dict) -> str:
    """The layout that the answer on the system asks for."""
    return next(part["choice"] for part in found["parts"] if part["id"] == "choose_system")


def test_the_plan_of_the_cool_wine_cane(rulebook):
    """Canes; 12 nodes = 10 + 2 (one more or less); 10.1 shoots a metre; 6.07 t/ha within 2 % of arithmetic, and at least 25 % of season."""
    found, numbers = numbers_of_plan(rulebook, "worked_cool_cane")
    assert layout_of_plan(found) == "cane" and found["settled"]
    assert numbers["nodes"] == pytest.approx(12, abs=1)
    assert (numbers["cane_nodes"], numbers["renewal_nodes"]) == (10, 2)
    assert numbers["shoots_per_m"] == pytest.approx(10.1, abs=0.2)
    assert numbers["t_per_ha"] == pytest.approx(6.07, rel=0.02)
    assert numbers["t_per_ha_low"] <= 0.75 * numbers["t_per_ha"] and numbers["t_per_ha_high"] >= 1.25 * numbers["t_per_ha"]


def test_the_cool_wine_vine_could_carry_more_than_its_wire(rulebook):
    """0.62 kg: 18.6 nodes by 30 a kilogram (bp-28) to 27 by 20 + 20 a pound (bp-13), more than the wire holds: none is added for that."""
    found, numbers = numbers_of_plan(rulebook, "worked_cool_cane")
    assert numbers["capacity_low"] == pytest.approx(18.6, abs=0.05) and numbers["capacity_high"] == pytest.approx(27, abs=0.5)
    assert numbers["capacity_low"] > numbers["room_high"] and numbers["nodes"] == 12
    notes = [note["text"] for part in found["parts"] for note in part["notes"]]
    assert any("could carry 19 to 27 nodes" in note and "Do not add nodes" in note for note in notes)


def test_the_balance_of_the_cool_wine_vine(rulebook):
    """2.0 kg of fruit from 0.62 kg of prunings: 3.2 times."""
    facts = rulebook.blocks["worked_cool_cane"].facts
    asked = {"last_yield_kg": 2.0} | {name: facts[name] for name in ("pruning_weight_kg", "grape_type")}
    assert compute(rulebook, "vine_balance", asked)["outputs"]["ravaz_index"] == pytest.approx(3.23, abs=0.01)


def test_the_reach_of_the_cool_wine_cane(rulebook):
    """At 15 shoots a metre a spur reaches 0.94 and a cane 1.62: spurs are not far off, and not impossible."""
    _, numbers = numbers_of_plan(rulebook, "worked_cool_cane")
    assert numbers["spur_reach"] == pytest.approx(0.94, abs=0.01)
    assert numbers["cane_reach"] == pytest.approx(1.62, abs=0.01)
    assert numbers["spur_reach_low"] < 1 < numbers["spur_reach_high"]


def test_the_plan_of_the_barren_base(rulebook):
    """Canes; 6 x 14 = 84 (one cane more or less) and as many two-node spurs; 40 bunches wanted; 45.3 on canes, 46.6 with the spurs."""
    found, numbers = numbers_of_plan(rulebook, "worked_barren_base")
    assert layout_of_plan(found) == "cane"
    assert numbers["canes"] == pytest.approx(6, abs=1) and numbers["cane_nodes"] == 14 * numbers["canes"]
    assert numbers["renewal_nodes"] == 2 * numbers["canes"]
    assert numbers["bunches_wanted"] == pytest.approx(40, abs=0.5)
    assert numbers["bunches"] == pytest.approx(46.6, abs=1)


def test_the_fruit_of_the_barren_base_by_bearer(rulebook):
    """0.54 bunches a node on canes, 0.10 on spurs: spurs reach not a quarter of the crop, whatever the sample."""
    _, numbers = numbers_of_plan(rulebook, "worked_barren_base")
    assert numbers["cane_bunches_per_node"] == pytest.approx(0.54, abs=0.01)
    assert numbers["cane_bunches_per_node"] * 84 == pytest.approx(45.3, abs=1)
    assert numbers["spur_bunches_per_node"] == pytest.approx(0.10, abs=0.01)
    assert numbers["spur_reach"] < 0.25 and numbers["spur_reach_high"] < 0.75


def injured(rulebook, alive: int, secondary_only: int, secondary_share: float) -> dict:
    """Thirty nodes wanted with no deaths in them, and a hundred buds cut after the freeze."""
    buds = {"buds_cut_for_injury": 100, "buds_primary_alive": alive, "buds_secondary_only": secondary_only, "secondary_share": secondary_share}
    return compute(rulebook, "injury_adjustment", {"wanted_nodes": 30, "deaths_in_wanted_nodes": "none", "living_budburst_pct": 95, **buds})["outputs"]


def test_winter_injury(rulebook):
    """Winter injury: 42 % dead (Wilson 32.8 to 51.8); 52 nodes without secondaries, 45 with s .3 and 50 with s .1; 43 by Cornell (bi-01), 45 by
    Purdue (bi-03); 37.6 shoots at 45 nodes."""
    found = injured(rulebook, 58, 30, 0.3)
    rounded = [round(found[f"mortality{end}_pct"], 1) for end in ("", "_low", "_high")]
    assert rounded == [42, 32.8, 51.8]
    assert [found[name] for name in ("nodes_replacing", "nodes_replacing_with_secondaries", "nodes_cornell", "nodes_purdue")] == [52, 45, 43, 45]
    assert found["shoots"] == pytest.approx(37.6, abs=0.05)
    assert injured(rulebook, 58, 30, 0.1)["nodes_replacing_with_secondaries"] == 50


def test_winter_injury_over_the_severe_limit(rulebook):
    """84 of 100 dead (75.6 to 89.9 %): no number from anybody."""
    found = injured(rulebook, 16, 10, 0.3)
    assert [round(found[f"mortality{end}_pct"], 1) for end in ("", "_low", "_high")] == [84, 75.6, 89.9]
    assert not [name for name in found if name.startswith("nodes")]
YOUNG = {
    "shoot_origin": "above_graft",
    "cane_section": "round",
    "young_cane_reaches": "yes",
    "young_stand": "no_trunk",
    "severe_winters": "no",
    "next_leaf": 2,
}
WIRE_CM, RIPE_CM = 90, 170


def young(rulebook, **facts) -> dict:
    """The answer for a vine of the young block."""
    return compute(rulebook, "young_vine", YOUNG | facts)


def test_young_a_thick_ripe_cane_is_the_trunk_and_the_first_arm(rulebook):
    """Young (a): 9.5 mm at the wire, ripe to 1.7 m on a trunk of 0.9 m: the trunk, and of the 0.8 m beyond it only wood of 8 mm, at most
    60 to 90 cm or 10 to 12 nodes."""
    found = young(rulebook, young_cane_mm=9.5, arm_wood_cm=RIPE_CM - WIRE_CM)
    assert found["outcome"] == "trunk_and_arm"
    assert {8, 60, 90, 10, 12} <= set(numbers_in(found["work"]["action"]))
    assert young(rulebook, young_cane_mm=9.5, arm_wood_cm=10)["outcome"] == "form_trunk"


def test_young_b_a_thin_cane_goes_back_to_two_nodes(rulebook):
    """Young (b): 5.5 mm: back to two nodes, however far it is ripe."""
    found = young(rulebook, young_cane_mm=5.5, arm_wood_cm=0)
    assert found["outcome"] == "cut_back" and "two nodes" in found["work"]["action"]


def test_young_c_a_shoot_from_below_the_graft_is_no_trunk(rulebook):
    """Young (c): the strongest shoot of all, from below the graft: off, and never a trunk."""
    found = young(rulebook, shoot_origin="below_graft", young_cane_mm=12, arm_wood_cm=120)
    assert found["outcome"] == "rootstock_off" and "never becomes a trunk" in found["headline"]


@pytest.mark.parametrize(("leaf", "stand", "bunches"), [(2, "no_trunk", 0), (3, "no_trunk", 0), (3, "trunk", 10)])
def test_young_vines_bear_nothing_now_and_ten_bunches_in_the_third_leaf(rulebook, leaf, stand, bunches):
    """Young: no crop this year, in the third leaf at most ten bunches on a trunk that stands."""
    also = " ".join(young(rulebook, young_cane_mm=9.5, arm_wood_cm=80, next_leaf=leaf, young_stand=stand)["also"])
    assert ("at most about ten bunches" in also) == (bunches == 10) and ("no crop" in also) == (bunches == 0)


def test_young_vines_are_not_asked_for_system_and_node_number(rulebook):
    """Young: the plan asks neither spurs or canes nor how many nodes."""
    found, numbers = numbers_of_plan(rulebook, "young_vines")
    assert layout_of_plan(found) == "forming" and "nodes" not in numbers
