"""Drawings are the same tree on both sides, and their labels keep apart on a phone, whatever the vine."""

import json
from dataclasses import replace

import pytest

from generator.answers.catalogue import catalogue
from generator.answers.plans import plan
from generator.answers.records import record
from generator.calculators.drawing_before import draw_before
from generator.calculators.drawing_shapes import Drawing
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.vine_layout import vine_layout
from generator.calculators.vine_stand import Stand
from generator.calculators.wording import worded
from generator.pages.svg import figure, markup, tree
from py_mini_racer import MiniRacer
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, some

CORDON = Stand(known=True, on_cordon=True, arms=2, arm_mm=700, positions=10, missing=2, assumed=False)
HEAD = replace(CORDON, on_cordon=False, positions=0, missing=0)
# What a vine man would tell apart: the layout's own inputs, how the vine stands, the height of the wire in mm.
VINES = {
    "spurs, two arms": ({}, CORDON, 900),
    "spurs, one arm": ({"cordon_arms": some(1), "vine_spacing_m": 1.2}, replace(CORDON, arms=1, arm_mm=1100, missing=1), 900),
    "spurs, two curtains": ({"curtains": 2, "cordon_arms": some(4), "live_spur_positions_per_vine": some(24), "nodes": 40, "vine_spacing_m": 2.4}, replace(CORDON, arms=4, arm_mm=1150, positions=24), 1500),
    "long spurs": ({"target": "long_spurs", "nodes": 36}, CORDON, 1000),
    "spurs with canes": ({"target": "spurs_with_canes", "nodes": 40, "vine_spacing_m": 2.0}, replace(CORDON, arm_mm=950), 1000),
    "one arm laid new": ({"target": "lay_new_arm", "nodes": 24, "vine_spacing_m": 1.8}, replace(CORDON, arm_mm=850), 900),
    "one cane": ({"target": "cane", "nodes": 12, "vine_spacing_m": 1.1}, HEAD, 900),
    "two canes": ({"target": "cane", "nodes": 24, "canes_wanted_per_vine": some(2), "vine_spacing_m": 1.8}, HEAD, 900),
    "four canes": ({"target": "cane", "nodes": 46, "canes_wanted_per_vine": some(4), "vine_spacing_m": 1.8}, HEAD, 900),
    "six canes": ({"target": "cane", "nodes": 84, "canes_wanted_per_vine": some(6), "vine_spacing_m": 2.4}, HEAD, 1400),
    "head above the wire": ({"target": "cane", "head_below_wire_cm": -20.0, "canes_wanted_per_vine": some(2)}, HEAD, 800),
    "low head": ({"target": "cane", "head_below_wire_cm": 50.0, "canes_wanted_per_vine": some(2)}, HEAD, 900),
    "very short spacing": ({"nodes": 8, "live_spur_positions_per_vine": some(4), "vine_spacing_m": 0.6}, replace(CORDON, arm_mm=250, positions=4), 1100),
    "very long spacing": ({"nodes": 100, "live_spur_positions_per_vine": some(50), "vine_spacing_m": 6.0}, replace(CORDON, arm_mm=2950, positions=50), 700),
    "from a cordon to canes": ({"target": "cane", "nodes": 24, "vine_spacing_m": 1.8}, replace(CORDON, arm_mm=850), 900),
}  # fmt: skip
# The boxes of all words in a picture, and those of what they must not touch: other words, and the ground; and the picture's own box.
MEASURE = """() => [...document.querySelectorAll("svg")].map((svg) => {
  const box = (one) => { const b = one.getBoundingClientRect(); return [b.left, b.top, b.right, b.bottom]; };
  return { size: parseFloat(getComputedStyle(svg.querySelector("text")).fontSize) * svg.getScreenCTM().a,
    words: [...svg.querySelectorAll("text")].map(box), ground: box(svg.querySelector(".v-ground")), whole: box(svg) };
})"""


@pytest.fixture(scope="module")
def both(built, rulebook):
    """both(block, which): the tree of a block's drawing from Python and from the page's script, texts replaced by their ids."""
    engine = MiniRacer()
    engine.eval(built["assets/guide/core.js"])
    engine.eval(built["assets/guide/plan.js"].rstrip().removesuffix("Guide.page.planForm();"))
    engine.eval(built["assets/guide/answers.js"])
    engine.eval(built["assets/guide/plan.answer.js"].rstrip().removesuffix("Guide.page.plan();"))

    def trees(block, which):
        data = plan(rulebook, block.facts)["plan"][which]
        ours = tree(record(Drawing, data), lambda say: say.id)
        theirs = engine.eval(f"JSON.stringify(Guide.page.drawing.tree({json.dumps(data)}, (say) => say.id))")
        return ours, json.loads(theirs)

    return trees


@pytest.mark.parametrize("which", ["before", "drawing"])
def test_both_sides_draw_the_same(rulebook, both, which):
    """For every invented block, tag by tag and attribute by attribute."""
    for block in rulebook.blocks.values():
        ours, theirs = both(block, which)
        assert ours == theirs


def test_text_in_a_drawing_is_escaped():
    """A sign that means something in SVG stays a sign."""
    assert markup(["text", {"class": 'a"b'}, ["1 < 2 & 3"]]) == '<text class="a&#34;b">1 &lt; 2 &amp; 3</text>'


def test_nothing_to_draw_gives_nothing():
    """A plan that is open has no picture."""
    assert figure(Drawing([], 0, 0, 0, 0, 0, []), str) == ""


def drawings(name):
    """A vine of the list, before and after."""
    changes, stand, wire_mm = VINES[name]
    inputs = replace(LAYOUT, **changes)
    layout = vine_layout(inputs, LAYOUT_LIMITS)
    lengths = (wire_mm, round(inputs.vine_spacing_m * 1000), round(inputs.tip_gap_m * 1000))
    return [draw_before(layout, stand, *lengths), draw_vine(layout, stand, *lengths)]


@pytest.fixture(scope="module")
def sheet(built, rulebook):
    """sheet(longer): a page with all vines before and after under the guide's own style, their words made longer."""
    words = catalogue(rulebook)
    style = built["assets/guide/guide.css"]

    def page_of(longer):
        def word(say):
            text = worded(words, say, "si")
            return text + "n" * round(len(text) * longer)

        figures = "".join(figure(drawing, word) for name in VINES for drawing in drawings(name))
        return f'<!doctype html><html lang="en"><title>Vines</title><style>{style}</style><body style="margin:16px">{figures}</body></html>'

    return page_of


def apart(a, b):
    """Two boxes that do not touch."""
    return a[2] <= b[0] or b[2] <= a[0] or a[3] <= b[1] or b[3] <= a[1]


@pytest.mark.parametrize(("width", "longer"), [(390, 0.0), (390, 0.4), (810, 0.0)])
def test_labels_never_overlap(new_page, sheet, width, longer):
    """All words of every vine, before and after, keep apart from each other and from the ground, and inside the picture; on a phone too,
    and there with texts 40 % longer."""
    page = new_page(width, 844)
    page.set_content(sheet(longer))
    pictures = page.evaluate(MEASURE)
    assert len(pictures) == 2 * len(VINES)
    for picture in pictures:
        words, whole = picture["words"], picture["whole"]
        assert words and all(apart(a, b) for place, a in enumerate(words) for b in [*words[:place], picture["ground"]])
        assert all(whole[0] - 1 <= box[0] and box[2] <= whole[2] + 1 and whole[1] - 1 <= box[1] for box in words)
        assert picture["size"] >= 12.5


@pytest.mark.parametrize("name", VINES)
def test_a_drawing_says_in_words_what_it_shows(rulebook, name):
    """Each picture is one image to a screen reader, with whole sentences; the picture before tells the cuts."""
    words = catalogue(rulebook)
    before, after = (tree(drawing, lambda say: worded(words, say, "si"))[1] for drawing in drawings(name))
    assert before["role"] == after["role"] == "img"
    assert before["aria-label"].startswith("Before pruning.") and "cuts on a vine" in before["aria-label"]
    assert after["aria-label"].startswith("After pruning.") and after["aria-label"].endswith(".")


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_what_stays_and_what_goes_differ_without_colour(new_page, sheet, dark):
    """Wood that goes is dashed, wood that stays is not; a renewal spur's nodes are rings: in light, dark and on paper."""
    page = new_page(390, 844, dark=dark)
    page.set_content(sheet(0.0))
    for media in ("screen", "print"):
        page.emulate_media(media=media)
        dash = "(css) => getComputedStyle(document.querySelector(css)).strokeDasharray"
        assert page.evaluate(dash, ".v-cane.off") != "none" and page.evaluate(dash, ".v-spur") == "none"
        fill = "(css) => getComputedStyle(document.querySelector(css)).fill"
        assert page.evaluate(fill, ".v-open") != page.evaluate(fill, ".v-node")
