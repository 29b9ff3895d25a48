"""Facts that are asked by node: each by its own id in what is given, in links and in descriptions."""

import pytest

from generator.answers.compute import BadInput, compute, describe
from generator.answers.given import given
from generator.pages.questions import of_calculator

PLAIN = {"primordia_node_1": 1.0, "primordia_node_2": 1.2, "dead_primary_pct": 0, "dead_node_pct": 0}


def faults(rulebook, **inputs) -> list[str]:
    """What is wrong with these inputs of bearer_reach."""
    with pytest.raises(BadInput) as bad:
        compute(rulebook, "bearer_reach", {**PLAIN, **inputs})
    return bad.value.faults


def test_each_node_is_an_input_of_its_own(rulebook):
    """Fifteen numbers with range and unit, of which the first is needed."""
    inputs = [one for one in describe(rulebook, "bearer_reach")["inputs"] if one["id"].startswith("primordia_node_")]
    assert [one["id"] for one in inputs] == [f"primordia_node_{node}" for node in range(1, 16)]
    assert [one["id"] for one in inputs if not one["optional"]] == ["primordia_node_1"]
    assert {tuple(one["range"]) for one in inputs} == {(0.0, 4.0)}


def test_a_fault_names_its_node(rulebook):
    """Out of range at node 3; node 1 left out; the file's own name, which is no fact."""
    assert faults(rulebook, primordia_node_3=9)[0].startswith("primordia_node_3: ")
    without = {name: value for name, value in PLAIN.items() if name != "primordia_node_1"}
    with pytest.raises(BadInput, match="primordia_node_1: is missing"):
        compute(rulebook, "bearer_reach", without)
    assert faults(rulebook, primordia_node=[1.0, 1.2])[0].startswith("primordia_node: is not asked here, did you mean primordia_node_")


def test_a_gap_ends_what_is_known(rulebook):
    """Node 3 unknown and node 4 given: two nodes are known, as without node 4."""
    gap = compute(rulebook, "bearer_reach", {**PLAIN, "primordia_node_3": "unknown", "primordia_node_4": 2.0})
    assert gap["outputs"] == compute(rulebook, "bearer_reach", PLAIN)["outputs"]


def test_the_link_carries_each_node(rulebook):
    """In the order of the nodes, so that the page reproduces the answer."""
    link = compute(rulebook, "bearer_reach", {**PLAIN, "primordia_node_10": 1.1})["link"]
    carried = [part.split("=")[0] for part in link.split("#")[1].split("&") if "primordia" in part]
    assert carried == ["primordia_node_1", "primordia_node_2", "primordia_node_10"]


def test_a_block_holds_each_node(rulebook):
    """All facts of the rulebook take them; those of one series stand side by side."""
    facts = given(rulebook, list(rulebook.facts), PLAIN).facts
    place = facts.ids.index("primordia_node_1")
    assert facts.numbers[place : place + 3] == [1.0, 1.2, 0.0]


def test_a_form_says_the_words_once(rulebook):
    """The first question speaks for all nodes; the others have their label and no text of their own."""
    asked = [one for one in of_calculator(rulebook, rulebook.calculators["bearer_reach"])[0].questions if one.series == "primordia_node"]
    assert [one.node for one in asked] == list(range(1, 16))
    assert "nodes 1 to 15" in asked[0].ask and asked[0].observe
    assert asked[2].ask == "Bunch beginnings at node 3" and not any(one.observe for one in asked[1:])
