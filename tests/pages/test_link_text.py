"""Links carry facts behind the # sign, in SI and by id; nothing in them is swallowed."""

import json

import pytest

from generator.pages.plan import block_link


@pytest.fixture
def parse(core):
    """parse(fragment): what the page reads from a fragment."""
    return lambda fragment: json.loads(core(f"JSON.stringify(Guide.page.link.parse({json.dumps(fragment)}))"))


def test_a_link_is_read_with_its_edition_and_rules(parse):
    """Head first, then facts in their order."""
    link = parse("#v=1&e=base&r=abc&row_spacing_m=2.4&climate=unknown")
    assert (link["version"], link["edition"], link["rules"]) == ("1", "base", "abc")
    assert link["given"] == [["row_spacing_m", "2.4"], ["climate", "unknown"]]


def test_an_anchor_is_no_link(parse):
    """A row's anchor leaves the form alone."""
    assert parse("#B2") is None


def test_torn_pieces_are_named(parse):
    """What cannot be read is kept to be told."""
    assert parse("#v=1&=3&row%ZZ=1&half")["torn"] == ["=3", "row%ZZ=1", "half"]


@pytest.mark.parametrize("text", ["a&b=c", "50 %", "naïve #1", "über"])
def test_text_survives_a_link(parse, core, text):
    """Signs that mean something in a link are escaped."""
    made = core(f"Guide.page.link.make('base', 'abc', [['block_name', {json.dumps(text)}]])")
    assert parse(made)["given"] == [["block_name", text]]


def test_python_writes_links_as_the_page_does(rulebook, core):
    """The links to the invented blocks are made at build by the same rules."""
    for block in rulebook.blocks.values():
        link = block_link(rulebook, block)
        given = json.dumps(json.loads(core(f"JSON.stringify(Guide.page.link.parse({json.dumps(link)}).given)")))
        assert core(f"Guide.page.link.make('{rulebook.edition.id}', '{rulebook.version}', {given})") == link
