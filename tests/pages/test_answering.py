"""From facts to an answer in the browser: typed by keyboard, told when wrong, carried by a link."""

import pytest

from generator.answers.compute import compute
from tests.pages.conftest import DENSITY

CORDON = "d/cordon_state.html"


def headline(page):
    """The answer in one line; what answers comes with the first touch, so it is waited for."""
    shown = page.locator("#headline:not(:empty)")
    shown.wait_for()
    return shown.inner_text()


def test_keyboard_alone_is_enough(page, served, rulebook):
    """Tab, digits and Enter fill a calculator; the answer is announced and takes the focus."""
    page.goto(served + DENSITY)
    page.focus("#row_spacing_m")
    page.keyboard.type("2.4")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.type("1,5")
    page.keyboard.press("Enter")
    expected = compute(rulebook, "vine_density", {"row_spacing_m": 2.4, "vine_spacing_m": 1.5})
    assert headline(page) == expected["headline"]
    assert page.locator("#headline").get_attribute("role") == "status"
    assert page.evaluate("document.activeElement.id") == "answer"


def test_the_answer_shows_its_working(page, served, rulebook, fill_density):
    """Line by line, the same sentences as on the command line."""
    page.goto(served + DENSITY)
    fill_density(page)
    expected = compute(rulebook, "vine_density", {"row_spacing_m": 2.4, "vine_spacing_m": 1.5})
    page.locator("details.fold", has_text="The working").click()
    text = page.locator("#rest").inner_text()
    assert [line for line in expected["working"] + expected["notes"] if line not in text] == []


def test_a_missing_answer_is_told_beside_its_field(page, served):
    """The first empty field that is needed gets the focus and says so."""
    page.goto(served + DENSITY)
    page.click("button[type=submit]")
    assert page.locator("#row_spacing_m-error:not(:empty)").inner_text() == "“Row spacing” is needed here."
    assert page.evaluate("document.activeElement.id") == "row_spacing_m"
    assert "row_spacing_m-error" in page.get_attribute("#row_spacing_m", "aria-describedby")


@pytest.mark.parametrize(
    ("typed", "told"),
    [("1,500", "can be read in two ways. Write 1500 or 1.5000."), ("two", "is not a number"), ("60", "is out of range")],
)
def test_what_is_typed_wrong_is_told(page, served, typed, told):
    """Before the answer is asked for, as soon as the field is left."""
    page.goto(served + DENSITY)
    page.fill("#row_spacing_m", typed)
    page.keyboard.press("Tab")
    assert told in page.locator("#row_spacing_m-error").inner_text()
    assert page.get_attribute("#row_spacing_m", "aria-invalid") == "true"


def test_a_link_gives_the_same_answer_elsewhere(new_page, served, fill_density):
    """The link of an answer, opened where nothing is kept, shows that answer."""
    page = new_page()
    page.goto(served + DENSITY)
    fill_density(page)
    other = new_page()
    other.goto(page.input_value("#link"))
    assert headline(other) == headline(page)
    assert other.locator("#row_spacing_m-state").inner_text() == "From the link."


def test_a_second_link_on_the_same_page_counts(page, served):
    """Only the fragment changes, so nothing is loaded again."""
    page.goto(f"{served}{DENSITY}#v=1&row_spacing_m=2&vine_spacing_m=1")
    first = headline(page)
    page.goto(f"{served}{DENSITY}#v=1&row_spacing_m=4&vine_spacing_m=1")
    page.wait_for_function("(first) => document.querySelector('#headline').innerText !== first", arg=first)
    assert "per ha" in headline(page)


def test_a_link_may_use_the_name_that_callers_use(page, served, rulebook):
    """`buds_cut` is the calculator's own name for what the form asks as `buds_cut_for_injury`; worked block 3."""
    given = {"wanted_nodes": 30, "buds_cut": 100, "buds_primary_alive": 58, "buds_secondary_only": 30, "deaths_in_wanted_nodes": "none"}
    page.goto(f"{served}c/injury_adjustment.html#v=1&" + "&".join(f"{name}={value}" for name, value in given.items()))
    assert headline(page) == compute(rulebook, "injury_adjustment", given)["headline"]


def test_what_a_link_says_wrong_is_named(page, served):
    """Unknown names, values out of range, other rules: all told, nothing swallowed."""
    page.goto(f"{served}{DENSITY}#v=1&e=other&r=0000000000&row_spacing_m=99&colour=blue&vine_spacing_m=abc&half")
    text = page.locator("#link-told").inner_text()
    for told in ["“colour”", "“99” for “Row spacing”", "“abc” for “Vine spacing”", "“half”", "0000000000", "edition “other”"]:
        assert told in text
    assert "the advice may have changed since" in text
    page.locator("#link-told a", has_text="What has changed").click()
    assert page.locator("h1").inner_text() == "What has changed"


def test_a_decision_tells_what_would_change_it(page, served, rulebook):
    """The nearest flips, in the words of the command line."""
    page.goto(f"{served}{CORDON}#v=1&present_structure=spur_cordon&sound_cordon_pct=90&spur_positions_missing_pct=8")
    facts = {"present_structure": "spur_cordon", "sound_cordon_pct": 90, "spur_positions_missing_pct": 8}
    expected = compute(rulebook, "cordon_state", facts)
    page.locator("text=What would change it").wait_for()
    text = page.locator("#rest").inner_text()
    assert headline(page) == expected["headline"]
    assert expected["would_change"] and [one["text"] for one in expected["would_change"] if one["text"] not in text] == []


def test_the_row_that_fits_is_marked(page, served):
    """The reader finds the row in the whole table."""
    page.goto(f"{served}{CORDON}#v=1&present_structure=spur_cordon&sound_cordon_pct=90&spur_positions_missing_pct=8")
    assert [row.get_attribute("id") for row in page.locator("tr.fits").all()] == ["B2"]


def test_an_open_decision_names_the_next_question(page, served):
    """Nothing answered: the page says what to find out, and takes the reader there."""
    page.goto(served + CORDON)
    page.click("button[type=submit]")
    assert "Find out next" in headline(page)
    page.get_by_role("button", name="Answer this next").click()
    assert page.evaluate("document.activeElement.name") == "present_structure"


def test_unknown_is_an_answer_of_its_own(page, served):
    """A number that nobody knows leaves the field empty and is carried by the link as `unknown`."""
    page.goto(served + CORDON)
    page.get_by_role("radiogroup").first.get_by_label("Cordon with spurs").check()
    page.locator("[data-fact=sound_cordon_pct]").get_by_label("I do not know").check()
    page.click("button[type=submit]")
    assert page.locator("#sound_cordon_pct").is_disabled()
    headline(page)
    assert "sound_cordon_pct=unknown" in page.input_value("#link")


def test_the_link_can_be_copied_by_hand(new_page, served, fill_density):
    """Where the browser does not let the page copy, the link is marked in its field."""
    page = new_page()
    page.add_init_script("Object.defineProperty(navigator, 'clipboard', {value: undefined}); document.execCommand = () => false;")
    page.goto(served + DENSITY)
    fill_density(page)
    page.click("#copy")
    page.get_by_text("copy it by hand").wait_for()
    assert page.evaluate("document.activeElement.id") == "link"


@pytest.mark.parametrize(
    ("given", "told"),
    [
        ("row_spacing_m=%2B2", "“+2” for “Row spacing”, which was left out: it is not a number."),
        ("row_spacing_m=1E0", "“1E0” for “Row spacing”, which was left out: it is not a number."),
        ("row_spacing_m=", "“” for “Row spacing”, which was left out: it is not a number."),
        ("block_name=", "“” for “Block name”, which was left out: it is empty."),
        ("row_spacing_m=99", "is out of range"),
    ],
)
def test_a_link_tells_what_is_no_number_from_what_is_out_of_range(page, served, given, told):
    """The reader sees what to mend."""
    page.goto(f"{served}plan.html#v=1&{given}")
    assert told in page.locator("#link-told").inner_text()
