"""The plan page as an outline, and what of it goes on paper."""

import re

import pytest


@pytest.fixture
def plan(page, served, rulebook):
    """The page with the plan of an invented block on it."""
    page.goto(served + "plan.html")
    page.locator(".list a", has_text=rulebook.blocks["demo"].name).click()
    page.locator("#answer svg").first.wait_for()
    return page


def test_the_parts_of_the_plan_stand_below_its_own_heading(plan):
    """The form asks under the same names, so the plan's parts are one level down."""
    assert plan.locator("#answer h2").first.inner_text() == "Your plan"
    assert plan.locator(".part h3").count() > 3 and plan.locator(".part h2").count() == 0


def test_no_heading_level_is_left_out(plan):
    """From one heading to the next it goes at most one level down."""
    levels = plan.evaluate("[...document.querySelectorAll('h1, h2, h3, h4')].map((one) => Number(one.tagName[1]))")
    assert [pair for pair in zip(levels, levels[1:]) if pair[1] > pair[0] + 1] == []


@pytest.mark.parametrize("text", ["What the plan covers", "A block to try it with", "Keep or send it", "Whoever opens this link", "As data"])
def test_what_only_the_screen_needs_stays_off_paper(plan, text):
    """A crew gets the plan alone."""
    place = plan.locator(".page").get_by_text(text).first
    assert place.is_visible()
    plan.emulate_media(media="print")
    assert not place.is_visible() and plan.locator("#headline").is_visible()


def test_the_crew_gets_a_card(plan):
    """One side of paper: block, number, the vine before and after with its cuts, what to do with the form, the nodes and where they go."""
    shown = plan.locator("#answer")
    wanted = [shown.locator("#headline").inner_text()]
    wanted += shown.locator(".part", has=plan.locator("a[href='s/lay_out.html']")).locator(".says, li").all_inner_texts()[:2]
    wanted += [text for text in shown.locator(".part li").all_inner_texts() if text.startswith(("Vine by vine", "Tell them"))]
    plan.evaluate("window.print = () => {}")
    plan.get_by_role("button", name="Print the field card").click()
    plan.emulate_media(media="print")
    card = plan.locator(".field-card")
    assert [text for text in wanted if text not in card.inner_text()] == [] and "cuts on a vine" in card.inner_text()
    assert card.locator("svg").count() == 2 and not plan.locator("#headline").is_visible() and card.locator("details, button").count() == 0
    assert len(re.findall(rb"/Type\s*/Page\b", plan.pdf(format="A4"))) == 1
    plan.evaluate("window.dispatchEvent(new Event('afterprint'))")
    assert card.count() == 0
