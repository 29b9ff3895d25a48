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
from generator.calculators.layout_options import layout_options
from generator.calculators.vine_layout import vine_layout
from generator.calculators.vine_stand import Stand
from generator.calculators.wording import worded
from generator.pages.svg import figure, markup, tree
from py_mini_racer import MiniRacer
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, OPEN, OPTION_VALUES, OPTIONS, some

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
# Vines whose every layout that can be built is drawn before and after, as on the page of layouts.
LAID = {
    "cordon": {},
    "cordon with gaps": {"spur_positions_missing_pct": some(25), "nodes": 18.0},
    "one arm": {"cordon_arms": some(1), "arm_length_m": some(1.0), "vine_spacing_m": 1.1, "nodes": 16.0, "live_spur_positions_per_vine": some(8)},
    "four arms, two curtains": {"curtains": 2, "cordon_arms": some(4), "vine_spacing_m": 2.4, "nodes": 60.0, "live_spur_positions_per_vine": some(28), "wire_height_m": 1.6},
    "four arms on two wires": {"cordon_arms": some(4), "vine_spacing_m": 1.8, "nodes": 50.0, "live_spur_positions_per_vine": some(20), "wire_height_m": 1.4},
    "narrow head": {"present_structure": some(1), "live_spur_positions_per_vine": OPEN, "vine_spacing_m": 1.1, "nodes": 12.0},
    "wide head": {"present_structure": some(1), "live_spur_positions_per_vine": OPEN, "vine_spacing_m": 2.4, "nodes": 64.0, "good_canes_per_vine": some(12)},
    "head over the wire, unripe wood": {"present_structure": some(1), "live_spur_positions_per_vine": OPEN, "head_below_wire_cm": -15.0, "canes_well_ripe": some(0), "nodes": 30.0, "vine_spacing_m": 1.8},
    "nothing told": {"present_structure": OPEN, "live_spur_positions_per_vine": OPEN, "good_canes_per_vine": OPEN, "nodes": 24.0},
    "cordon, positions not counted": {"live_spur_positions_per_vine": OPEN, "nodes": 24.0},
    "low head, high wire": {"head_below_wire_cm": 55.0, "wire_height_m": 1.5, "nodes": 30.0, "vine_spacing_m": 1.8, "live_spur_positions_per_vine": some(14)},
    "wide vine": {"vine_spacing_m": 4.0, "nodes": 70.0, "live_spur_positions_per_vine": some(30)},
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


def laid(name):
    """A vine of the other list: every layout that can be built, before and after."""
    found = layout_options(replace(OPTIONS, **LAID[name]), OPTION_VALUES)
    assert found.options_built == len(found.before) == len(found.drawings) > 0
    return [drawing for pair in zip(found.before, found.drawings, strict=True) for drawing in pair]


def words_of(rulebook, longer=0.0):
    """The words of a label, made longer."""
    words = catalogue(rulebook)

    def word(say):
        text = worded(words, say, "si")
        return text + "n" * round(len(text) * longer)

    return word


@pytest.fixture(scope="module")
def sheet(built, rulebook):
    """sheet(drawings, longer): a page with these drawings under the guide's own style, their words made longer."""
    style = built["assets/guide/guide.css"]

    def page_of(shown, longer):
        figures = "".join(figure(drawing, words_of(rulebook, longer)) for drawing in shown)
        return f'<!doctype html><html lang="en"><title>Vines</title><style>{style}</style><body style="margin:16px">{figures}</body></html>'

    return page_of


def apart(a, b):
    """Two boxes that do not touch."""
    return a[2] <= b[0] or b[2] <= a[0] or a[3] <= b[1] or b[3] <= a[1]


def check_labels(page, count):
    """All words of so many pictures keep apart from each other and from the ground, and inside the picture, and are large enough."""
    pictures = page.evaluate(MEASURE)
    assert len(pictures) == count
    for picture in pictures:
        words, whole = picture["words"], picture["whole"]
        assert words and all(apart(a, b) for place, a in enumerate(words) for b in [*words[:place], picture["ground"]])
        assert all(whole[0] - 1 <= box[0] and box[2] <= whole[2] + 1 and whole[1] - 1 <= box[1] for box in words)
        assert picture["size"] >= 12.5


@pytest.mark.parametrize(("width", "longer"), [(390, 0.0), (390, 0.4), (810, 0.0)])
def test_labels_never_overlap(new_page, sheet, width, longer):
    """Every vine, before and after: on a phone too, and there with texts 40 % longer."""
    page = new_page(width, 844)
    shown = [drawing for name in VINES for drawing in drawings(name)]
    page.set_content(sheet(shown, longer))
    check_labels(page, len(shown))


@pytest.mark.parametrize("name", LAID)
def test_labels_of_every_layout_keep_apart_on_a_phone(new_page, sheet, name):
    """Each layout that can be built on a vine, before and after, with texts a fifth longer; in print as well."""
    page = new_page(390, 844)
    page.set_content(sheet(laid(name), 0.2))
    check_labels(page, len(laid(name)))
    page.emulate_media(media="print")
    check_labels(page, len(laid(name)))


@pytest.mark.parametrize("name", LAID)
def test_every_layout_states_its_cuts(rulebook, name):
    """The words under each picture before pruning tell the cuts of its layout, as the reasons do."""
    found = layout_options(replace(OPTIONS, **LAID[name]), OPTION_VALUES)
    for option, before in zip((one for one in found.options if one.built), found.before, strict=True):
        assert f"About {option.cuts} cuts on a vine." in figure(before, words_of(rulebook))


@pytest.mark.parametrize("name", VINES)
def test_a_drawing_says_in_words_what_it_shows(rulebook, name):
    """Each picture is one image to a screen reader, with whole sentences; the picture before tells the cuts."""
    before, after = (tree(drawing, words_of(rulebook))[1] for drawing in drawings(name))
    assert before["role"] == after["role"] == "img"
    assert before["aria-label"].startswith("Before pruning.") and "cuts on a vine" in before["aria-label"]
    assert after["aria-label"].startswith("After pruning.") and after["aria-label"].endswith(".")


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_what_stays_and_what_goes_differ_without_colour(new_page, sheet, dark):
    """Wood that goes is dashed, wood that stays is not; a renewal spur's nodes are rings: in light, dark and on paper."""
    page = new_page(390, 844, dark=dark)
    page.set_content(sheet([drawing for name in VINES for drawing in drawings(name)], 0.0))
    for media in ("screen", "print"):
        page.emulate_media(media=media)
        dash = "(css) => getComputedStyle(document.querySelector(css)).strokeDasharray"
        assert page.evaluate(dash, ".v-cane.off") != "none" and page.evaluate(dash, ".v-spur") == "none"
        fill = "(css) => getComputedStyle(document.querySelector(css)).fill"
        assert page.evaluate(fill, ".v-open") != page.evaluate(fill, ".v-node")
