"""Drawings that show how to look: every number has its words, no number covers another on a phone, nothing depends on colour or sight."""

import re
from dataclasses import replace

import pytest

from generator.pages.cites import resolve
from generator.pages.drawing.geometry import Point, Spine
from generator.pages.drawing.wood import cane
from generator.pages.looks import drawn, look_page, look_pages, undrawn
from generator.problems import ProblemsFound
from tests.pages.test_colours import contrast

WANTED = (
    "vine_parts",
    "spur_cordon",
    "cane_head",
    "spur_position",
    "compound_bud",
    "cutting_drives_growth",
    "what_pruning_is_for",
    "cane_section",
    "bud_sampling",
    "young_vine",
    "arm_in_decline",
    "cane_sizes",
    "choosing_canes",
    "tying_and_bending",
)
# Where each number is on the screen: [left, top, right, bottom] of its disc, its picture, and the height of its digits.
DISCS = """() => [...document.querySelectorAll(".look svg")].map((svg) => {
    const box = (one) => { const r = one.getBoundingClientRect(); return [r.left, r.top, r.right, r.bottom]; };
    return {frame: box(svg), discs: [...svg.querySelectorAll(".k-disc")].map(box),
        digits: [...svg.querySelectorAll(".k-number")].map((text) => parseFloat(getComputedStyle(text).fontSize) * svg.getScreenCTM().a)}; })"""

SMALLEST = 9.5  # pixels of a digit

looks = pytest.mark.parametrize("look", WANTED)


def test_the_drawings_are_there(rulebook):
    """What a pruner has to know by sight has its page."""
    assert set(WANTED) <= rulebook.looks.keys()


@looks
def test_every_number_has_its_words(rulebook, look):
    """Each place that a drawing can name is in the list, and each line of the list is in a picture."""
    places = {pin.mark for picture in drawn(look).values() for pin in picture.pins}
    assert places == {mark.id for mark in rulebook.looks[look].marks}
    assert list(drawn(look)) == [scene.id for scene in rulebook.looks[look].scenes]


@looks
def test_the_list_leads_to_the_glossary(built, rulebook, look):
    """Each number stands beside its term, which has a page and leads back to the number."""
    page = built[f"look/{look}.md"]
    for number, mark in enumerate(rulebook.looks[look].marks, 1):
        assert f'<li id="mark-{number}"><b>{number}</b><span><a href="../t/{mark.term}.html">' in page
        assert f"(../look/{look}.md#mark-" in built[f"t/{mark.term}.md"]


@looks
def test_the_picture_comes_first_and_is_told_in_words(built, rulebook, look):
    """A caption and a description that a screen reader finds; before the text."""
    page = built[f"look/{look}.md"]
    for scene in rulebook.looks[look].scenes:
        assert f'aria-describedby="said-{scene.id}"' in page and f'<p id="said-{scene.id}">' in page
        assert len(scene.described) > len(scene.caption)
    assert page.index("<svg") < page.index('class="marks"') < page.index("## How to look")


def test_stages_and_decisions_lead_to_their_drawings(built, rulebook):
    """Where hands or eye matter, the drawing is one touch away; so it is from the list of all."""
    for look in rulebook.looks.values():
        pages = [f"s/{name}.md" for name in look.stages] + [f"d/{name}.md" for name in look.decisions] + ["looks.md"]
        assert [page for page in pages if f"look/{look.id}." not in built[page]] == []


def test_what_is_said_stands_with_its_standing_and_sources(built, rulebook):
    """Every sentence, and a source is told on whose page it can be read."""
    for look in rulebook.looks.values():
        assert built[f"look/{look.id}.md"].count('class="standing ') == len(look.says)
        sources = {cited.source.id for said in look.says for cited in resolve(rulebook, said.cites)}
        assert [name for name in sources if f"look/{look.id}.md" not in built[f"src/{name}.md"]] == []


@looks
def test_a_drawing_is_legible_and_usable_by_everybody(new_page, served, axe, look):
    """On phone and tablet no number covers another or leaves the picture; light and dark, axe finds nothing; no page scrolls sideways."""
    page = new_page(390, 844)
    page.goto(f"{served}look/{look}.html")
    for width in (390, 810):
        page.set_viewport_size({"width": width, "height": 844})
        assert [fault for picture in page.evaluate(DISCS) for fault in ill_placed(picture)] == []
        assert page.evaluate("document.documentElement.scrollWidth") <= width
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)
        assert axe(page) == []


def ill_placed(picture):
    """The numbers of a picture that cover others or its edge, or are too small to be read at arm's length."""
    left, top, right, bottom = picture["frame"]
    for k, disc in enumerate(picture["discs"]):
        if left > disc[0] or top > disc[1] or disc[2] > right or disc[3] > bottom:
            yield f"disc {k} leaves the picture"
        if any(covers(disc, other) for other in picture["discs"][:k]) or picture["digits"][k] < SMALLEST:
            yield f"disc {k} covers another or is too small"


def covers(disc, other):
    """Whether two discs touch: their middles are nearer than their width."""
    across = (disc[0] + disc[2] - other[0] - other[2]) / 2
    down = (disc[1] + disc[3] - other[1] - other[3]) / 2
    return (across**2 + down**2) ** 0.5 < disc[2] - disc[0]


def test_paper_tells_the_kinds_of_wood_apart(built):
    """Printed in black and white, old wood, one-year wood and buds are three different greys."""
    printed = built["assets/guide/look.css"].split("@media print", 1)[1]
    grey = {name: "#" + "".join(2 * c for c in colour) for name, colour in re.findall(r"--(\w+): ?#(\w{3})\b", printed)}
    for one, other in (("old", "year"), ("year", "bud"), ("old", "bud"), ("soft", "dead")):
        assert contrast(grey[one], grey[other]) >= 1.5


@looks
def test_a_drawing_page_is_no_heavier_than_it_must_be(built, look):
    """Pages of drawings stay under 90 KB raw; their style is a file of its own, so that no other page pays for it."""
    assert len(built[f"look/{look}.md"]) <= 90 * 1024
    assert ".k-" not in built["assets/guide/guide.css"]


def test_buds_stand_left_and_right_in_turn():
    """As they do on every cane."""
    grown = cane(Spine(Point(0, 0), Point(0, -50), Point(0, -100)), [20, 40, 60, 80], 8, 8)
    sides = [tip.x - node.x > 0 for tip, node in zip(grown.tips, grown.nodes, strict=True)]
    assert sides == [False, True, False, True]


def test_a_look_that_nobody_drew_is_told(rulebook):
    """With the file to write; the pages are not made."""
    lost = replace(rulebook.looks["cane_head"], id="never_drawn")
    book = replace(rulebook, looks={"never_drawn": lost})
    assert [problem.sentence for problem in undrawn(book)] == ["Nobody has drawn `never_drawn` yet."]
    with pytest.raises(ProblemsFound, match="generator/pages/anatomy/never_drawn.py"):
        look_pages(book)


def test_a_mark_without_a_place_is_told_at_its_line(rulebook):
    """With the place that was probably meant."""
    look = rulebook.looks["cane_head"]
    wrong = replace(look, marks=(replace(look.marks[0], id="haed"), *look.marks[1:]))
    (problem,) = undrawn(replace(rulebook, looks={look.id: wrong}))
    assert (problem.line, problem.sentence) == (look.marks[0].line, "The pictures shown have no place `haed`.")
    assert "`head`" in problem.next_step


def test_numbers_follow_the_list(rulebook):
    """An edition that leaves a mark out loses its number in the picture, and the others close up."""
    look = rulebook.looks["cane_section"]
    fewer = replace(look, marks=look.marks[1:])
    page = look_page(replace(rulebook, looks={**rulebook.looks, look.id: fewer}), fewer)
    numbers = [int(number) for number in re.findall(r'class="k-number"[^>]*>(\d+)<', page)]
    assert sorted(numbers) == list(range(1, len(look.marks)))
