"""Drawings are the same tree on both sides: shapes in, SVG out, colours left to the style sheet."""

import json

import pytest

from generator.answers.plans import plan
from generator.answers.records import record
from generator.calculators.drawing_shapes import Drawing
from generator.pages.svg import figure, markup, tree
from py_mini_racer import MiniRacer


@pytest.fixture(scope="module")
def both(built, rulebook):
    """both(block): the tree of a block's drawing from Python and from the page's script, texts replaced by their ids."""
    engine = MiniRacer()
    engine.eval(built["assets/guide/core.js"])
    script = built["assets/guide/plan.js"].removesuffix("Guide.page.plan();\n")
    engine.eval(script)

    def trees(block):
        data = plan(rulebook, block.facts)["plan"]["drawing"]
        ours = tree(record(Drawing, data), lambda say: say.id)
        theirs = engine.eval(f"JSON.stringify(Guide.page.drawing.tree({json.dumps(data)}, (say) => say.id))")
        return ours, json.loads(theirs)

    return trees


def test_both_sides_draw_the_same(rulebook, both):
    """For every invented block, tag by tag and attribute by attribute."""
    for block in rulebook.blocks.values():
        ours, theirs = both(block)
        assert ours == theirs


def test_text_in_a_drawing_is_escaped():
    """A sign that means something in SVG stays a sign."""
    assert markup(["text", {"class": 'a"b'}, ["1 < 2 & 3"]]) == '<text class="a&#34;b">1 &lt; 2 &amp; 3</text>'


def test_nothing_to_draw_gives_nothing():
    """A plan that is open has no picture."""
    assert figure(Drawing([], 0, 0, 0, 0, 0, []), str) == ""
