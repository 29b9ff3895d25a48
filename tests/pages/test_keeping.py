"""What the device keeps, and what happens where it keeps nothing."""

from tests.pages.conftest import DENSITY

DENIED = "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }});"
FULL = "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };"


def kept(page):
    """The keys of what the device keeps."""
    return page.evaluate("Object.keys(localStorage).sort()")


def name_block(page, name):
    """Types the name of the block into the plan and leaves the field."""
    page.fill("#block_name", name)
    page.keyboard.press("Tab")


def test_answers_are_kept_over_a_reload(page, served, fill_density):
    """As they were typed into the form, and on other pages that ask them."""
    page.goto(served + DENSITY)
    fill_density(page)
    page.reload()
    assert (page.input_value("#row_spacing_m"), page.input_value("#vine_spacing_m")) == ("2.4", "1.5")
    page.goto(served + "plan.html")
    assert page.input_value("#row_spacing_m") == "2.4"


def test_keys_carry_version_edition_block_and_winter(page, served, fill_density):
    """So that a later guide can read or move what is kept, and editions do not mix."""
    page.goto(served + DENSITY)
    fill_density(page)
    winter, block, last = kept(page)
    assert (block, last) == ("pruning-guide/1/base/block/block", "pruning-guide/1/base/last")
    assert winter.rpartition("/")[0] == "pruning-guide/1/base/block" and winter[-4:].isdigit()


def test_each_block_is_kept_by_its_name(page, served):
    """A second block does not overwrite the first, whose name brings its answers back."""
    page.goto(served + "plan.html")
    for name, spacing in (("South slope", "2.4"), ("Brook side", "3")):
        name_block(page, name)
        page.fill("#row_spacing_m", spacing)
        page.keyboard.press("Tab")
    name_block(page, "south  Slope")
    assert page.input_value("#row_spacing_m") == "2.4"
    assert "back in the form" in page.locator("#kept").inner_text()
    assert {key.split("/")[3] for key in kept(page)} == {"south-slope", "brook-side", "last"}


def test_the_block_used_last_is_found_again(page, served, fill_density):
    """After a reload, and on pages that do not ask its name."""
    page.goto(served + "plan.html")
    name_block(page, "Über uns")
    page.goto(served + DENSITY)
    fill_density(page)
    page.goto(served + "plan.html")
    assert (page.input_value("#block_name"), page.input_value("#row_spacing_m")) == ("Über uns", "2.4")
    assert {key.split("/")[3] for key in kept(page)} == {"über-uns", "last"}


def test_naming_a_block_keeps_its_answers(page, served, fill_density):
    """What was answered before the name was typed belongs to the named block too."""
    page.goto(served + DENSITY)
    fill_density(page)
    page.goto(served + "plan.html")
    name_block(page, "South slope")
    page.reload()
    assert (page.input_value("#block_name"), page.input_value("#row_spacing_m")) == ("South slope", "2.4")


def test_one_button_clears_everything(page, served, fill_density):
    """The form, the answer and the device."""
    page.goto(served + DENSITY)
    fill_density(page)
    page.click("#clear")
    assert kept(page) == []
    assert page.input_value("#row_spacing_m") == "" and not page.locator("#answer").is_visible()


def test_a_link_leaves_what_is_kept_alone(page, served, fill_density):
    """Values of a client's link do not overwrite one's own block, until one says so."""
    page.goto(served + DENSITY)
    fill_density(page)
    page.goto("about:blank")
    page.goto(f"{served}{DENSITY}#v=1&row_spacing_m=3&vine_spacing_m=1")
    page.goto("about:blank")
    page.goto(served + DENSITY)
    assert page.input_value("#row_spacing_m") == "2.4"


def test_a_link_is_kept_when_the_reader_says_so(page, served):
    """One button takes the link's values over."""
    page.goto(f"{served}{DENSITY}#v=1&row_spacing_m=3&vine_spacing_m=1")
    page.click("#keep")
    page.goto("about:blank")
    page.goto(served + DENSITY)
    assert page.input_value("#row_spacing_m") == "3"


def test_a_browser_that_denies_storage_is_told_of_and_nothing_breaks(page, served, fill_density):
    """The answer comes all the same."""
    page.add_init_script(DENIED)
    page.goto(served + DENSITY)
    fill_density(page)
    assert "does not let the page keep anything" in page.locator("#kept").inner_text()
    assert page.locator("#headline").inner_text() != ""
    page.click("#clear")
    assert "The form is empty" in page.locator("#kept").inner_text()


def test_a_full_device_is_told_of_and_nothing_breaks(page, served, fill_density):
    """The reader learns that a link keeps what the device cannot."""
    page.add_init_script(FULL)
    page.goto(served + DENSITY)
    fill_density(page)
    assert "no room left" in page.locator("#kept").inner_text()
    assert page.locator("#headline").inner_text() != ""


def test_what_is_kept_but_broken_is_passed_over(page, served):
    """A torn record from another program does not stop the page."""
    page.goto(served + DENSITY)
    page.evaluate("localStorage.setItem('pruning-guide/1/base/block/block', '{torn')")
    page.reload()
    assert page.locator("#form").is_visible() and page.input_value("#row_spacing_m") == ""


def test_a_winter_is_named_after_the_year_it_began_in(core):
    """Late in one year and early in the next are one winter."""
    winter = "Guide.page.store.winter(new Date({}, {}, 15))"
    assert [core(winter.format(*when)) for when in [(2026, 10), (2027, 1), (2027, 6)]] == ["2026", "2026", "2027"]
