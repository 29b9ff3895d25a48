"""A fact that is asked by node: one file, a fact for each node."""

from dataclasses import replace

from generator.reading.by_node import form_of, once, stage_of
from generator.reading.rulebook import Rulebook, Stage
from generator.reading.tables import Input

NODES = [f"primordia_node_{node}" for node in range(1, 13)]


def test_one_file_stands_for_a_fact_at_each_node(good: Rulebook) -> None:
    """Twelve facts in the order of the nodes (10 after 9), side by side in the rulebook."""
    assert [name for name in good.facts if name.startswith("primordia_node")] == NODES
    place = list(good.facts).index(NODES[0])
    assert list(good.facts)[place : place + 12] == NODES


def test_each_has_its_own_code_and_words(good: Rulebook) -> None:
    """The file's letter and that of the node; {node} is its number."""
    third = good.facts["primordia_node_3"]
    assert (third.series, third.node, third.code, third.label) == ("primordia_node", 3, "JC", "Primordia at node 3")
    assert third.ask.endswith("of node 3?")


def test_as_a_whole_it_names_all_nodes(good: Rulebook) -> None:
    """Lists and pages show it once, in the place of its first node."""
    whole = once(good)["primordia_node"]
    assert (whole.label, whole.code) == ("Primordia at nodes 1 to 12", "JA to JL")
    assert not set(NODES) & set(once(good))


def test_a_form_names_it_once(good: Rulebook) -> None:
    """Of an input that may not be left out, node 1 is needed and no other."""
    form = next(iter(good.calculators.values()))
    inputs = form_of(replace(form, inputs=(Input("primordia_node"), Input("climate"))), good.facts).inputs
    assert [one.fact for one in inputs] == [*NODES, "climate"]
    assert [one.fact for one in inputs if not one.optional] == ["primordia_node_1", "climate"]
    assert {one.series for one in inputs} == {"primordia_node", ""}


def test_a_stage_names_it_once(good: Rulebook) -> None:
    """The plan asks all nodes where the stage names the file."""
    stage = Stage("find", good.facts["climate"].where, number=2, title="", question="", intro="", asks=("climate", "primordia_node"))
    assert list(stage_of(stage, good.facts).asks) == ["climate", *NODES]
