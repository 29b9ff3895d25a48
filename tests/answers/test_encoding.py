"""What pages are given is what Python reckons with: plain data that makes the same records again."""

import json

from generator.answers import encode
from generator.answers.catalogue import catalogue
from generator.answers.records import plain, record
from generator.answers.specs import fact_specs
from generator.answers.tables import candidates_for, tables_for
from generator.calculators.changes import Candidates
from generator.calculators.specs import FactSpec
from generator.calculators.tables import Table
from generator.calculators.wording import Catalogue


def through_json(data):
    """The data as a page gets it."""
    return json.loads(json.dumps(data, allow_nan=False))


def test_tables_come_through_json_unchanged(rulebook):
    """Every decision with all that feed it, feeding tables first, and the values worth trying."""
    for name in rulebook.decisions:
        assert record(list[Table], through_json(encode.encode_tables(rulebook, name))) == tables_for(rulebook, name)
        assert record(list[Candidates], through_json(encode.encode_candidates(rulebook, name))) == candidates_for(
            rulebook, name
        )


def test_facts_and_sentences_come_through_json_unchanged(rulebook):
    """Specs of all facts and the whole catalogue."""
    assert record(list[FactSpec], through_json(encode.encode_facts(rulebook))) == fact_specs(rulebook)
    assert record(Catalogue, through_json(encode.encode_whole_catalogue(rulebook))) == catalogue(rulebook)


def test_only_what_was_asked_for_is_given(rulebook):
    """Prefixes choose messages and words; ids choose facts, in the order of the rulebook."""
    assert {form["id"].partition(".")[0] for form in encode.encode_messages(rulebook, ["guard."])} == {"guard"}
    assert {word["id"].split(".")[1] for word in encode.encode_words(rulebook, ["choice.climate."])} == {"climate"}
    asked = ["climate", "area_ha"]
    assert sorted(fact["id"] for fact in encode.encode_facts(rulebook, asked)) == sorted(asked)


def test_a_message_is_cut_where_its_arguments_stand(rulebook):
    """Parts are text, a number's place or a word's place."""
    form = encode.encode_form(rulebook, "answers.would_change")
    places = [(part["word"], part["number"]) for part in form["parts"] if part["text"] == ""]
    assert places == [(0, -1), (-1, 0), (-1, 1), (1, -1)]
    assert plain(form) == form
