"""The worked blocks, opened by their links: what stands on the page is what the command line says and what was reckoned by hand."""

import json

import pytest

from generator.answers.compute import plan

# Block: the layout's sentence, and its numbers with the tolerance of the hand reckoning.
WORKED = {
    "worked_cool_cane": ("one cane of 10 nodes", {"nodes": (12, 1), "shoots_per_m": (10.1, 0.2), "t_per_ha": (6.07, 0.12)}),
    "worked_barren_base": ("6 canes of up to 14 nodes", {"cane_nodes": (84, 14), "bunches": (46.6, 1), "bunches_wanted": (40, 0.5)}),
}


@pytest.mark.parametrize("block", WORKED)
def test_a_worked_block_comes_out_on_the_page(page, served, rulebook, block):
    """Numbers within their tolerances, equal to those of the command line; canes, in words, under the layout."""
    layout, expected = WORKED[block]
    page.goto(served + "plan.html")
    page.locator(".list a", has_text=rulebook.blocks[block].name).click()
    shown = json.loads(page.locator("#data:not(:empty)").text_content())["plan"]
    ours = plan(rulebook, rulebook.blocks[block].facts)["plan"]
    assert [part["numbers"] for part in shown["parts"]] == json.loads(json.dumps([part["numbers"] for part in ours["parts"]]))
    numbers = {one["id"]: one["number"] for part in shown["parts"] for one in part["numbers"]}
    for name, (number, tolerance) in expected.items():
        assert numbers[name] == pytest.approx(number, abs=tolerance)
    assert page.locator(".says", has_text=layout).count() == 1


def test_the_drawings_before_and_after_stand_side_by_side(page, served, rulebook):
    """On a tablet both are seen at once."""
    page.goto(served + "plan.html")
    page.locator(".list a", has_text=rulebook.blocks["worked_cool_cane"].name).click()
    page.locator("#answer svg").nth(1).wait_for()
    boxes = [page.locator("#answer svg").nth(k).bounding_box() for k in (0, 1)]
    assert boxes[0]["x"] + boxes[0]["width"] <= boxes[1]["x"] and abs(boxes[0]["y"] - boxes[1]["y"]) < 40
