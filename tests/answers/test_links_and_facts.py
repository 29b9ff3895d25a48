"""What an answer's data says of its facts, what stands behind it, and the link that reproduces it."""

from urllib.parse import parse_qsl

import pytest

from generator.answers.compute import compute, plan
from generator.answers.tables import base_facts, feeding_order

SPACING = {"row_spacing_m": 2.2, "vine_spacing_m": 1.1, "missing_vines_pct": 3}
CORDON = {"present_structure": "spur_cordon", "sound_cordon_pct": 80, "spur_positions_missing_pct": "unknown"}


def test_unknown_is_a_status_and_never_a_number(rulebook):
    """Unknown has no value; what was not asked is not there; choices, yes and no are words; a default is assumed."""
    block = {"climate": "unknown", "area_ha": "unknown", "use": "wine", "row_spacing_m": 2.4, "severe_winters": True}
    facts = plan(rulebook, {name: value for name, value in block.items() if name in rulebook.facts})["facts"]
    assert facts["climate"] == facts["area_ha"] == {"status": "unknown"}
    assert facts["use"] == {"status": "entered", "value": "wine"}
    assert facts["row_spacing_m"] == {"status": "entered", "value": 2.4}
    assert facts["shoots_per_m_low"]["status"] == "assumed"
    assert "vine_spacing_m" not in facts


@pytest.mark.parametrize(
    ("name", "inputs", "page"), [("vine_density", SPACING, "c/vine_density.html"), ("cordon_state", CORDON, "d/cordon_state.html")]
)
def test_the_link_of_an_answer_holds_what_was_given(rulebook, name, inputs, page):
    """Edition, rules and the facts given, unknown included, in SI; no default."""
    address, _, fragment = compute(rulebook, name, inputs)["link"].partition("#")
    assert address == page
    assert dict(parse_qsl(fragment)) == {"v": "1", "e": "base", "r": rulebook.version, **{fact: str(x) for fact, x in inputs.items()}}


def test_the_link_computes_the_same_plan(rulebook):
    """A plan's link, read again, gives the plan."""
    for block in rulebook.blocks.values():
        found = plan(rulebook, block.facts)
        pairs = dict(parse_qsl(found["link"].partition("#")[2]))
        facts = {name: value for name, value in pairs.items() if name not in ("v", "e", "r")}
        assert plan(rulebook, facts) == found


def test_a_plan_carries_the_cautions_and_sources_of_what_decided(rulebook):
    """By id and text, those of the rows that fired before those of the decisions; each source with its standing."""
    found = plan(rulebook, rulebook.blocks["demo"].facts)
    of_rows = [name for part in found["plan"]["parts"] for name in part["cautions"]]
    ids = [caution["id"] for caution in found["cautions"]]
    assert of_rows and ids[: len(of_rows)] == of_rows
    assert set(rulebook.decisions["pruning_system"].cautions) <= set(ids)
    assert all(caution["text"] == rulebook.cautions[caution["id"]].text for caution in found["cautions"])
    cited = {name for part in found["plan"]["parts"] for name in part["sources"]}
    assert cited <= {source["id"] for source in found["sources"]}
    assert all(source["standing"] and source["by"] for source in found["sources"])


def test_a_calculator_names_its_values_and_their_sources(rulebook):
    """Each value with its standing, and its sources among those of the answer."""
    block = rulebook.blocks["demo"].facts
    wanted = {one.fact for one in rulebook.calculators["yield_forecast"].inputs}
    inputs = {name: value for name, value in block.items() if name in wanted} | {"nodes": 18, "bearing_vines_per_ha": 2667}
    answer = compute(rulebook, "yield_forecast", {name: value for name, value in inputs.items() if name in wanted})
    assert answer["values"] and all(value["standing"] for value in answer["values"])
    ids = {source["id"] for source in answer["sources"]}
    assert {name for value in answer["values"] for name in value["sources"]} <= ids


@pytest.mark.parametrize(("name", "inputs", "numbers"), [
    ("balanced_nodes", {"grape_type": "american"}, {"balanced_first_nodes": [30], "balanced_further_nodes": [10], "nodes_per_kg": [30]}),
    ("balanced_nodes", {"grape_type": "vinifera"}, {"balanced_first_nodes": [20], "balanced_further_nodes": [20], "nodes_per_kg": [30]}),
    ("balanced_nodes", {"grape_type": "vinifera", "balanced_formula": "lake_erie_60"}, {"balanced_first_nodes": [60], "balanced_vine_most_kg": []}),
    ("node_number", {"grape_type": "american"}, {"balanced_first_nodes": [30], "nodes_per_kg": [30]}),
    ("node_number", {"grape_type": "american", "capacity_nodes_high": 20}, {"balanced_first_nodes": [], "nodes_per_kg": []}),
])
def test_of_several_authors_the_figures_used_are_named(rulebook, name, inputs, numbers):
    """The rule made for the grape, or the one chosen by hand, with its sources; none where the answer rests on none."""
    answer = compute(rulebook, name, {"pruning_weight_kg": 1, **inputs})
    found = {value: [one["number"] for one in answer["values"] if one["id"] == value] for value in numbers}
    assert found == numbers
    cited = {source for one in answer["values"] for source in one["sources"]}
    assert cited <= {source["id"] for source in answer["sources"]}
    assert ("bp-13" in cited) == (numbers["balanced_first_nodes"] == [20])


def test_authors_held_side_by_side_are_all_named(rulebook):
    """Where the answer follows none, each author whose line is shown is among the values."""
    arms = {"curtains": 1, "cordon_arms": 2, "arm_length_m": 0.7, "budburst_pct": 90, "shoots_per_burst_node": 1}
    answer = compute(rulebook, "canopy_space", {**arms, "shoots_per_m_low": 10, "shoots_per_m_high": 15})
    named = {one["who"] for one in answer["values"] if one["id"] in ("shoots_per_m_low", "shoots_per_m_high")}
    assert {line["who"]["text"] for line in answer["compared"]} <= named


def test_a_decision_says_what_its_answer_means_for_the_work(rulebook):
    """Target, action and years of the outcome; nothing while it is open."""
    asked = base_facts(rulebook, feeding_order(rulebook, "pruning_system"))
    block = {name: value for name, value in rulebook.blocks["demo"].facts.items() if name in asked}
    answer = compute(rulebook, "pruning_system", block)
    outcome = next(one for one in rulebook.decisions["pruning_system"].outcomes if one.id == answer["outcome"])
    assert answer["work"] == {"action": outcome.action, "target": outcome.target, "years": outcome.years}
    assert compute(rulebook, "pruning_system", {})["work"] == {}
