"""The plan in the page is the plan of the command line, to the last digit."""

import json
from pathlib import Path

import pytest

from generator.answers.compute import plan

BLOCKS = sorted(path.stem for path in (Path(__file__).parents[2] / "rules" / "blocks").glob("*.yml"))


def data(page):
    """The data under the plan; it is there once what would change the plan has been worked out."""
    return json.loads(page.locator("#data:not(:empty)").text_content())


def fill(page, block, rulebook):
    """Types a block into the form as a person would who has opened every fold."""
    page.locator("#questions details").evaluate_all("all => all.forEach((one) => { one.open = true; })")
    for name, value in block.items():
        field = page.locator(f"[data-fact={name}]")
        text = {True: "yes", False: "no"}.get(value, str(value)) if isinstance(value, bool) else str(value)
        radio = field.locator(f'input[type=radio][value="{text}"]')
        if radio.count():
            radio.check()
        elif text == "unknown" and field.locator("input[type=checkbox]").count():
            field.locator("input[type=checkbox]").check()
        elif field.locator("select").count():
            field.locator("select").select_option(text)
        else:
            field.locator("input").first.fill(text)
    page.click("button[type=submit]")


@pytest.mark.parametrize("name", BLOCKS)
def test_page_and_command_line_agree_to_the_last_digit(page, served, rulebook, name):
    """The data under the plan equals `plan --json`, statuses and sentences included."""
    block = rulebook.blocks[name].facts
    page.goto(served + "plan.html")
    fill(page, block, rulebook)
    shown = data(page)
    assert shown == json.loads(json.dumps(plan(rulebook, block)))


@pytest.mark.parametrize("name", BLOCKS)
def test_the_link_of_a_block_gives_the_same_plan(page, served, rulebook, name):
    """Only the status says that the facts came from a link."""
    page.goto(served + "plan.html")
    page.locator(".list a", has_text=rulebook.blocks[name].name).click()
    shown = data(page)["plan"]
    expected = plan(rulebook, rulebook.blocks[name].facts)["plan"]
    assert shown["headline"] == expected["headline"]
    assert [part["numbers"] for part in shown["parts"]] == json.loads(json.dumps([part["numbers"] for part in expected["parts"]]))


def test_the_data_can_be_saved(page, served, rulebook):
    """As a file that other programs read."""
    page.goto(served + "plan.html")
    page.locator(".list a").first.click()
    data(page)
    with page.expect_download() as download:
        page.click("#save-data")
    saved = json.loads(Path(download.value.path()).read_text(encoding="utf-8"))
    assert (saved["name"], saved["rules"], saved["edition"]["id"]) == ("block_plan", rulebook.version, "base")


def test_what_would_change_it_stands_under_an_answer_on_the_system_only(page, served, rulebook):
    """The sentences are those of the command line; an open system shows none."""
    for name in ("demo", "much_unknown"):
        page.goto(served + "plan.html")
        page.locator(".list a", has_text=rulebook.blocks[name].name).click()
        data(page)
        folded = page.locator("details:not([hidden])", has=page.locator("summary", has_text="What would change it"))
        expected = [one["text"] for one in plan(rulebook, rulebook.blocks[name].facts)["would_change"]]
        assert [text.strip() for text in folded.locator("li").all_text_contents()] == expected
        assert folded.count() == bool(expected)


def test_print_opens_the_reasons(page, served):
    """Paper cannot be clicked."""
    page.goto(served + "plan.html")
    page.locator(".list a").first.click()
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    assert page.locator(".part details:not([open])").count() == 0
