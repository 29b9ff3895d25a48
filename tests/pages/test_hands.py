"""Pages for the hands: found from where they are wanted, in order, with every standing, and readable in one hand."""

import re

import pytest

from generator.pages.cites import resolve

WANTED = (
    "wires_first",
    "old_ties",
    "after_hail",
    "after_frost",
    "after_mildew",
    "after_drought",
    "suckers",
    "dry_stubs",
    "reserve_cane",
    "replants_and_layers",
    "tying_and_bending",
)
PHONE = (390, 844)
SMALLEST_STEP = 20  # pixels of the letters that are read at arm's length
LONGEST_LINE = 45  # letters in a line, so that the eye finds the next one

works = pytest.mark.parametrize("work", WANTED)


def test_the_work_of_the_winter_is_there(rulebook):
    """In the order in which it is done: wires before ties, ties before the new tying, which comes last."""
    assert tuple(rulebook.hands) == WANTED
    assert [work.number for work in rulebook.hands.values()] == list(range(1, len(WANTED) + 1))


@works
def test_a_page_tells_it_in_the_order_of_the_hands(built, rulebook, work):
    """When, what to take along, how the wood looks, the steps, what never, how one sees it, how long; the steps as they are written."""
    page = built[f"h/{work}.md"]
    heads = ["When", "Take along", "Do it in this order", "Never", "It is right when", "How long it takes"]
    places = [page.index(f"## {head}\n") for head in heads]
    assert places == sorted(places)
    steps = page[places[2] : places[3]]
    assert re.findall(r"<li><p>(.*?) <span", steps) == [escaped(step.text) for step in rulebook.hands[work].steps]


def escaped(text):
    """Text as it stands in HTML."""
    return text.replace("'", "&#39;")


@works
def test_every_sentence_has_its_standing_and_sources(built, rulebook, work):
    """And so has every figure of hours; a source tells the page that rests on it."""
    one, page = rulebook.hands[work], built[f"h/{work}.md"]
    figures = [figure for name in one.hours for figure in rulebook.values[name].figures]
    assert page.count('class="standing ') == len(one.says) + len(figures)
    sources = {cited.source.id for said in one.says for cited in resolve(rulebook, said.cites)}
    assert [name for name in sources if f"h/{work}.md" not in built[f"src/{name}.md"] or f"src/{name}.html" not in page] == []


@works
def test_hours_are_printed_ones_or_yours(built, rulebook, work):
    """Where no time was found in print the page says so, and shows none."""
    page, hours = built[f"h/{work}.md"], rulebook.hands[work].hours
    assert ("No printed time was found. It is yours" in page) == (not hours)
    assert [name for name in hours if f"v/{name}.html" not in page or f"h/{work}.md" not in built[f"v/{name}.md"]] == []
    assert ("\u00a0h/ha</b>" in page) == bool(hours)


def test_everything_that_wants_it_leads_to_it_and_back(built, rulebook):
    """Stages, decisions, calculators, drawings and the list of all; other pages for the hands as well."""
    for work in rulebook.hands.values():
        named = [("s", work.stages), ("d", work.decisions), ("c", work.calculators), ("look", work.looks)]
        pages = [f"{folder}/{name}" for folder, names in named for name in names]
        assert [page for page in pages if f"h/{work.id}." not in built[f"{page}.md"]] == []
        ahead = [*pages, *(f"h/{name}" for name in work.see)]
        assert [page for page in ahead if f"{page.rpartition('/')[2]}.html" not in built[f"h/{work.id}.md"]] == []
        assert f"h/{work.id}.html" in built["hands.md"]


def test_the_list_stands_in_the_order_of_the_work(built):
    """And is found from the stages' drawings and from every page."""
    assert tuple(re.findall(r'href="h/(\w+)\.html"', built["hands.md"])) == WANTED
    assert "hands.md" in built["looks.md"]


def test_answers_that_ask_for_such_work_lead_to_it(built):
    """From the cane to lay, the spur to cut, the cane in reserve, the bend, the renewal and the young vine."""
    wanted = {
        "c/spur_position": "dry_stubs",
        "c/cane_choice": "tying_and_bending",
        "c/injury_adjustment": "after_frost",
        "d/reserve_cane_left": "reserve_cane",
        "d/cane_bend": "tying_and_bending",
        "d/structure_renewal": "suckers",
        "d/young_vine": "replants_and_layers",
        "s/pick_wood": "suckers",
        "s/lay_out": "wires_first",
    }
    assert [page for page, work in wanted.items() if f"h/{work}." not in built[f"{page}.md"]] == []


@works
def test_it_reads_in_one_hand(new_page, served, axe, work):
    """On a phone: big letters, short lines, nothing over anything else, no table, no sideways scroll; in light and dark axe finds nothing."""
    page = new_page(*PHONE)
    page.goto(f"{served}h/{work}.html")
    for width in (PHONE[0], 810):
        page.set_viewport_size({"width": width, "height": PHONE[1]})
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        steps = page.evaluate(
            """() => [...document.querySelectorAll(".hands > li > p")].map((step) => { const box = step.getBoundingClientRect(),
                size = parseFloat(getComputedStyle(step).fontSize); return [box.top, box.bottom, size, box.width / (size * 0.5)]; })"""
        )
        assert all(size >= SMALLEST_STEP and letters <= LONGEST_LINE * 1.2 for _, _, size, letters in steps)
        assert all(below[0] >= above[1] for above, below in zip(steps, steps[1:], strict=False))
    assert page.locator("article table").count() == 0
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)
        assert axe(page) == []


def test_numbers_of_steps_stand_beside_them(new_page, served):
    """Also from ten on, and on paper: the number has room, and does not break or lie over the words."""
    page = new_page(*PHONE)
    page.goto(f"{served}h/tying_and_bending.html")
    for media in ("screen", "print"):
        page.emulate_media(media=media)
        widths = page.evaluate(
            """() => { const steps = [...document.querySelectorAll(".steps > li")], one = steps[steps.length - 1];
                const room = parseFloat(getComputedStyle(one).gridTemplateColumns), font = getComputedStyle(one, "::before").font;
                const pen = document.createElement("canvas").getContext("2d"); pen.font = font;
                return [steps.length, pen.measureText(String(steps.length)).width, room]; }"""
        )
        assert widths[0] >= 10 and widths[1] <= widths[2]


def test_paper_leaves_out_where_it_leads(new_page, served):
    """What goes into the pocket is the work; links are of no use there."""
    page = new_page()
    page.goto(f"{served}h/tying_and_bending.html")
    assert page.locator("#where-it-leads").is_visible()
    page.emulate_media(media="print")
    assert not page.locator("#where-it-leads").is_visible()
    assert page.locator(".steps > li").last.is_visible()
