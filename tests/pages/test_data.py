"""The data of a page is sent bare, to be light, and is whole again before anything sees it."""

import json

from generator.answers.encode import encode_catalogue, encode_tables
from generator.pages.packing import add, bare_catalogue, bare_tables


def given(core, rulebook, decision, told):
    """What the page has of a decision whose tables are told, and what Python has."""
    tables = encode_tables(rulebook, decision)
    core(add({"tables": bare_tables(rulebook, tables, told), "catalogue": bare_catalogue(encode_catalogue(rulebook, ["answers.", "guard."], [], []))}))
    return json.loads(core("JSON.stringify(Guide.page.data)")), json.loads(json.dumps(tables))


def test_tables_are_whole_again_in_the_page(core, rulebook):
    """Field for field what Python has, for every decision."""
    for decision in rulebook.decisions:
        data, tables = given(core, rulebook, decision, set(rulebook.decisions))
        assert data["tables"] == tables


def test_what_a_told_table_says_is_whole_again(core, rulebook):
    """Every sentence and word that Python has of a table, and no other."""
    for decision in rulebook.decisions:
        data, _ = given(core, rulebook, decision, {decision})
        names = ("decision", "outcome", "action", "target", "years")
        expected = encode_catalogue(rulebook, [f"{decision}.", "answers.", "guard."], [f"{kind}.{decision}." for kind in names[1:]] + [f"decision.{decision}"], [])
        own = [word for word in data["catalogue"]["words"] if word["id"].split(".")[1] == decision]
        assert sorted(own, key=lambda word: word["id"]) == sorted((word for word in expected["words"] if word["id"].split(".")[1] == decision), key=lambda word: word["id"])
        assert sorted(data["catalogue"]["forms"], key=lambda form: form["id"]) == sorted(expected["forms"], key=lambda form: form["id"])


def test_a_table_that_only_feeds_brings_what_has_to_be_done(core, rulebook):
    """Its outcomes' names and actions; not its sentences."""
    data, _ = given(core, rulebook, "pruning_system", {"pruning_system"})
    assert any(word["id"].startswith("action.trunk_state.") for word in data["catalogue"]["words"])
    assert not any(form["id"].startswith("trunk_state.") for form in data["catalogue"]["forms"])
