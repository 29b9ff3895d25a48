"""The page of canes: one card with a cane at a time on a telephone, kept and undone, answered as the command line does; canes in true size."""

from gzip import compress as packed

import pytest

from generator.answers.compute import compute
from generator.pages.scripts import asset
from generator.pages.slimming import slim

PAGE = "c/cane_choice.html"
GOOD = {"cane_diameter_mm": "9", "cane_ripe_nodes": "14", "cane_origin": "renewal_spur"}
VINE = {"canes_wanted_per_vine": "1", "vine_spacing_m": "1.2"}
WIDTH = "document.querySelector('.true svg').getBoundingClientRect().width"


@pytest.fixture
def canes(new_page, served):
    """The page on a telephone, fresh."""
    page = new_page(390, 844)
    page.goto(served + PAGE)
    return page


def put(page, **cane):
    """Answers for the cane that is shown."""
    for name, x in cane.items():
        if page.locator(f"#cane-{name}").count():
            page.fill(f"#cane-{name}", x)
            page.locator(f"#cane-{name}").blur()
        else:
            page.locator(f"#canes input[name=cane-{name}][value={x}]").check(force=True)


def press(page, name):
    """A button of the card."""
    page.locator("#canes").get_by_role("button", name=name, exact=True).click()


def work_out(page, **vine):
    """Fills in the vine and asks."""
    for name, x in (VINE | vine).items():
        page.fill(f"#{name}", x)
    page.locator("#form button[type=submit]").click()
    page.wait_for_selector("#each")


def test_the_page_says_what_the_command_line_says(canes, rulebook):
    """A good cane, its copy, and a thin one: headline, steps and every cane in the same words."""
    put(canes, **GOOD)
    press(canes, "Copy this one")
    press(canes, "Add a cane")
    put(canes, **GOOD | {"cane_diameter_mm": "6"})
    work_out(canes)
    rows = [{name: float(x) if x.isdigit() else x for name, x in cane.items()} for cane in (GOOD, GOOD, GOOD | {"cane_diameter_mm": "6"})]
    answer = compute(rulebook, "cane_choice", {"rows": rows, "canes_wanted_per_vine": 1, "vine_spacing_m": 1.2})
    assert canes.inner_text("#headline") == answer["headline"]
    shown = canes.inner_text("#answer")
    assert all(step in shown for step in answer["steps"])
    said = canes.locator("#each li > p").all_inner_texts()
    assert [one["says"]["text"] in text and one["use_says"]["text"] in text for one, text in zip(answer["canes"], said, strict=True)] == [True] * 3


def test_nothing_is_lost_on_reload_and_undo_takes_it_back(canes):
    """Every press is kept; removed canes come back."""
    put(canes, **GOOD)
    press(canes, "Copy this one")
    press(canes, "Thickness of the canes: more")
    canes.reload()
    assert canes.inner_text("#canes .place") == "Cane 2 of 2"
    assert canes.input_value("#cane-cane_diameter_mm") == "9.5"
    press(canes, "Remove it")
    assert canes.inner_text("#canes .place") == "Cane 1 of 1"
    press(canes, "Undo")
    assert canes.inner_text("#canes .place") == "Cane 2 of 2" and canes.input_value("#cane-cane_diameter_mm") == "9.5"
    press(canes, "Undo")
    assert canes.input_value("#cane-cane_diameter_mm") == "9"


def test_a_cane_that_lacks_something_is_named(canes):
    """And so is a number that cannot be."""
    put(canes, **GOOD)
    press(canes, "Add a cane")
    put(canes, cane_diameter_mm="90")
    assert "from 2 to 25" in canes.inner_text("#cane-cane_diameter_mm-error")
    for name, x in VINE.items():
        canes.fill(f"#{name}", x)
    canes.locator("#form button[type=submit]").click()
    canes.wait_for_function("document.getElementById('headline').textContent.includes('cane 2')")


def test_no_more_canes_than_can_be_compared(canes, rulebook):
    """The ninth is refused in words."""
    most = round(rulebook.values["candidate_canes_most"].number)
    for _ in range(most):
        press(canes, "Add a cane")
    assert canes.inner_text("#canes .place") == f"Cane {most} of {most}"
    assert f"No more than {most}" in canes.inner_text("#cane-told")


def test_the_card_fits_a_thumb_and_its_script_is_small(canes):
    """Nothing runs out of a telephone; every button is 44 pixels high at least; the scripts of the card are 3 KB on the wire at most."""
    assert canes.evaluate("document.documentElement.scrollWidth") <= 390
    assert min(box["height"] for box in (one.bounding_box() for one in canes.locator("#canes button").all()) if box) >= 44
    assert len(packed(slim(asset("card_board.js") + asset("card_result.js")).encode(), 6)) <= 3 * 1024


def test_pictures_are_as_large_as_they_say(new_page, served):
    """In the browser's own millimetres at first, then as the slider was set, and kept."""
    page = new_page(390, 844)
    page.goto(served + "look/cane_sizes.html")
    nominal = page.evaluate(WIDTH)
    assert nominal == pytest.approx(56 * 96 / 25.4, abs=0.5)
    page.locator("#true-size").fill("1.5")
    assert page.evaluate(WIDTH) == pytest.approx(nominal * 1.5, abs=0.5)
    assert page.evaluate("document.documentElement.scrollWidth") <= 390
    page.reload()
    assert page.evaluate(WIDTH) == pytest.approx(nominal * 1.5, abs=0.5)
