"""For trainers: the sheet on one side of paper, the list by grade, and the card of vines for one hand, which answers as the command line does."""

import re

import pytest

from generator.answers.compute import compute
from generator.pages.trainers import GRADE

TEST, PAIR = "c/ten_vine_test.html", "c/assessors_compared.html"
# An A4 page between its margins, in CSS pixels.
WIDE, TALL = round(190 * 96 / 25.4), round(279 * 96 / 25.4)


@pytest.fixture
def vines(new_page, served):
    """vines(path): a page with a card of vines on a telephone, fresh."""

    def opened(path=TEST):
        page = new_page(390, 844)
        page.goto(served + path)
        return page

    return opened


def press(page, name):
    """A button of the card."""
    page.locator("#vines").get_by_role("button", name=name, exact=True).click()


def work_out(page):
    """Asks."""
    page.locator("#form button[type=submit]").click()
    page.wait_for_selector("#each")


def test_the_sheet_fills_one_side_of_paper(new_page, served, rulebook):
    """One page of A4, every fault a line that is not cut off, a column for each of ten vines and one for all."""
    page = new_page(WIDE, TALL)
    page.goto(served + "sheet.html")
    page.emulate_media(media="print")
    rows = page.locator(".sheet th[scope=row]")
    assert [one.label for one in rulebook.faults.values() if one.label not in rows.all_inner_texts()] == []
    assert page.evaluate("[...document.querySelectorAll('.sheet th')].filter((one) => one.scrollWidth > one.clientWidth).length") == 0
    assert page.locator(".sheet thead th").all_inner_texts() == ["Vine", *map(str, range(1, 11)), "All"]
    assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(prefer_css_page_size=True))) == 1


def test_the_list_has_three_grades_and_every_fault(built, rulebook):
    """Each under its grade and its id, so that a source can lead to it; unsafe work is marked."""
    text = built["train.md"]
    assert re.findall(r"^## (Grade \w+)", text, re.MULTILINE) == [name for name, _ in GRADE.values()]
    assert [one.id for one in rulebook.faults.values() if f'<details class="more" id="{one.id}">' not in text] == []
    assert text.count("(unsafe)") == len([one for one in rulebook.faults.values() if one.unsafe])
    assert "train.md#position_climbs" in built["src/extension_spur_page.md"] + "".join(page for path, page in built.items() if path.startswith("src/"))


def test_the_page_says_what_the_command_line_says(vines, rulebook):
    """Two vines by button and by hand: headline, steps and each vine in the same words."""
    page = vines()
    page.fill("#target_nodes", "20")
    press(page, "Nodes counted: more")
    press(page, "Faults of grade two: cost a crop: more")
    press(page, "Copy this one")
    press(page, "Nodes counted: more")
    page.fill("#vine-seconds", "240")
    page.locator("#vine-seconds").blur()
    work_out(page)
    rows = [{"nodes_counted": 20, "faults_crop": 1}, {"nodes_counted": 21, "faults_crop": 1, "seconds": 240}]
    answer = compute(rulebook, "ten_vine_test", {"rows": rows, "target_nodes": 20})
    assert page.inner_text("#headline") == answer["headline"]
    shown = page.inner_text("#answer")
    assert all(step in shown for step in answer["steps"])
    said = page.locator("#each li > p").all_inner_texts()
    assert [one["says"]["text"] in text for one, text in zip(answer["vines"], said, strict=True)] == [True, True]


def test_vines_are_kept_and_undone(vines):
    """On reload the second vine is still there; undo brings a removed one back. The canes of another page are not touched."""
    page = vines()
    page.fill("#target_nodes", "20")
    press(page, "Nodes counted: more")
    press(page, "Add a vine")
    page.reload()
    assert page.inner_text("#vines .place") == "Vine 2 of 2"
    press(page, "Remove it")
    press(page, "Undo")
    assert page.inner_text("#vines .place") == "Vine 2 of 2"
    page.goto(page.url.replace("ten_vine_test", "assessors_compared"))
    assert page.inner_text("#vines .place") == "Vine 1 of 1"


def test_two_assessors_are_compared_on_the_page(vines, rulebook):
    """One vine alike, one not: the same answer as on the command line, and the vine that differs is named."""
    page = vines(PAIR)
    press(page, "Add a vine")
    press(page, "Second: faults of grade three: more")
    work_out(page)
    answer = compute(rulebook, "assessors_compared", {"rows": [{}, {"untidy_second": 1}]})
    assert page.inner_text("#headline") == answer["headline"]
    assert page.locator("#each li > p").all_inner_texts()[1].startswith("Vine 2. The first finds none, the second a fault of grade 3")


@pytest.mark.parametrize("path", [TEST, PAIR])
def test_the_card_fits_a_glove(vines, path):
    """Nothing runs out of a telephone; every button is 44 pixels high at least, those that count 56."""
    page = vines(path)
    assert page.evaluate("document.documentElement.scrollWidth") <= 390
    heights = page.locator("#vines button").evaluate_all("(all) => all.map((one) => one.getBoundingClientRect().height)")
    assert min(heights) >= 44
    assert min(page.locator("#vines .given button").evaluate_all("(all) => all.map((one) => one.getBoundingClientRect().height)")) >= 56


@pytest.mark.parametrize("path", ["train.html", "sheet.html", TEST, PAIR])
@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_everybody_can_use_it(new_page, served, axe, path, dark):
    """Axe finds nothing, by day and by night."""
    page = new_page(810, 1080, dark)
    page.goto(served + path)
    assert axe(page) == []
