"""The long form of the plan: a fold for each stage, counted, opened where a question is asked, the plan always in reach."""


def folds(page):
    """The folds of the stages: name, count and whether open."""
    return page.locator("details.stage").evaluate_all("all => all.map((one) => [one.querySelector('span').textContent, one.querySelector('.count').textContent, one.open])")


def test_each_stage_folds_with_a_count_of_answers(page, served, rulebook):
    """Every stage that asks something; the first one open, nothing answered yet."""
    page.goto(served + "plan.html")
    found = folds(page)
    assert [one[0] for one in found] == [stage.title for stage in rulebook.stages.values() if stage.asks]
    assert [one[2] for one in found] == [True] + [False] * (len(found) - 1)
    assert all(one[1].startswith("0 of ") for one in found)


def test_answers_are_counted_as_they_come(page, served):
    """Not known is an answer too."""
    page.goto(served + "plan.html")
    page.fill("#row_spacing_m", "2.4")
    page.locator("[data-fact=climate] input[value=unknown]").check()
    assert folds(page)[0][1].startswith("2 of ")


def test_the_way_to_the_plan_is_in_reach_at_once(page, served):
    """The button stands in the window without scrolling, on an empty form with a fold open."""
    page.goto(served + "plan.html")
    box = page.locator("button[type=submit]").bounding_box()
    assert box["y"] + box["height"] <= page.viewport_size["height"]


def test_the_next_question_opens_its_fold(page, served):
    """The field has the focus and can be seen."""
    page.goto(served + "plan.html")
    page.locator("details.stage").first.evaluate("one => { one.open = false; }")
    page.click("button[type=submit]")
    page.get_by_role("button", name="Answer this next").first.click()
    assert page.evaluate("document.activeElement.closest('[data-fact]') !== null && document.activeElement.getClientRects().length > 0")


def test_folds_open_by_keyboard(page, served):
    """A summary takes the focus and Enter opens it; its first question comes next."""
    page.goto(served + "plan.html")
    page.locator("details.stage > summary").nth(1).focus()
    page.keyboard.press("Enter")
    assert folds(page)[1][2]
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.closest('details.stage') === document.querySelectorAll('details.stage')[1]")


def test_what_may_be_left_out_is_folded_inside(page, served):
    """The spreads of the counts are asked, but not of everybody."""
    page.goto(served + "plan.html")
    assert page.locator("details.stage details.more [data-fact=budburst_cv_pct]").count() == 1
    assert page.locator("details.more [data-fact=row_spacing_m]").count() == 0


def test_the_plan_says_first_which_assumption_matters_most(page, served, rulebook):
    """In the order of the command line, each leading to its question."""
    from generator.answers.compute import plan

    page.goto(served + "plan.html")
    page.locator(".list a", has_text=rulebook.blocks["gappy_cordon"].name).click()
    page.locator("#data:not(:empty)").wait_for(state="attached")
    shown = page.locator("#answer section:has(> h3:text('Assumed')) li .assumed").all_text_contents()
    assert shown == [one["text"] for one in plan(rulebook, rulebook.blocks["gappy_cordon"].facts)["assumed"]]
