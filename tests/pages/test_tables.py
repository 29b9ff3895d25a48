"""Tables are sent bare, to be light, and are whole again before the engine sees them."""

import json

from generator.answers.encode import encode_tables, encode_words
from generator.pages.scripts import add, bare


def test_tables_are_whole_again_in_the_page(core, rulebook):
    """Field for field what Python has, for every decision, where the page has the words."""
    words = encode_words(rulebook)
    for decision in rulebook.decisions:
        tables = encode_tables(rulebook, decision)
        core(add({"tables": bare(tables), "catalogue": {"words": words}}))
        whole = json.loads(core("JSON.stringify(Guide.page.tables(Guide.page.data.tables))"))
        assert whole == json.loads(json.dumps(tables))
