"""The site from a folder on disk, and the page for addresses that are not there."""

from tests.pages.conftest import DENSITY


def test_a_calculator_works_from_a_folder(page, site, fill_density):
    """No server: scripts, answers and links all work from file://."""
    page.goto((site / DENSITY).as_uri())
    fill_density(page)
    assert "per ha" in page.locator("#headline").inner_text()
    page.goto(page.input_value("#link"))
    assert page.input_value("#row_spacing_m") == "2.4"


def test_the_plan_works_from_a_folder(page, site, rulebook):
    """The invented block's link fills it."""
    page.goto((site / "plan.html").as_uri())
    page.locator(".list a", has_text=rulebook.blocks["demo"].name).click()
    page.locator("#answer svg").first.wait_for()


def test_an_unknown_address_leads_home_from_any_depth(page, served):
    """Under a sub-path, in the root and in a folder of the site."""
    for path in ("nothing.html", "d/nothing.html"):
        page.goto(served + path)
        page.click("#start")
        assert page.url == served + "index.html"
