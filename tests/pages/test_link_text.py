"""Links carry facts behind the # sign, in SI and by id; nothing in them is swallowed."""

import json

import pytest

from generator.answers.border import NUMBER
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


@pytest.mark.parametrize("text", ["2", "-2.5", "1e-05", "1e+16", "1e5", "+90", "1E1", "1e", ".5", "5.", " 5", "5\n", "1_0", "٣", "nan", "", "1e9999"])
def test_a_number_is_written_alike_in_links_and_in_files(core, text):
    """What Python takes for a number the page takes for one, and nothing else."""
    spec = {"kind": "number", "low": -1e17, "high": 1e17, "low_in": True, "high_in": True, "word": "x", "id": "x", "choices": []}
    found = core(f"Guide.page.border.read({json.dumps(spec)}, {json.dumps(text)}, 3).why || ''")
    assert (found == "") == bool(NUMBER.fullmatch(text))
