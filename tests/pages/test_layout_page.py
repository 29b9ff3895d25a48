"""The page of ranked layouts: its sums come with the first answer, and it shows what the command gives."""

import re
from gzip import compress
from urllib.parse import urlencode

from generator.answers.compute import compute
from generator.pages.questions import fold_of

PAGE = "c/layout_options.html"
VINE = {
    "nodes": 26, "curtains": 1, "vine_spacing_m": 1.5, "tip_gap_m": 0.1, "first_spur_from_head_m": 0.15, "head_below_wire_cm": 12, "internode_cm": 8,
    "present_structure": "spur_cordon", "live_spur_positions_per_vine": 10, "good_canes_per_vine": 6, "budburst_pct": 90, "shoots_per_burst_node": 1,
}  # fmt: skip


def test_the_page_ranks_as_the_command_does(page, served, rulebook):
    """Every layout that can be built with its place, its headline, both drawings and its reasons, in the same order; the others are folded."""
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(served + PAGE)
    assert not any("sums" in url for url in asked)
    page.goto("about:blank")
    page.goto(f"{served}{PAGE}#v=1&{urlencode(VINE)}")
    page.wait_for_selector(".option")
    given = compute(rulebook, "layout_options", VINE)["options"]
    built = [option for option in given if option["built"]]
    shown = page.locator(".option")
    assert 2 * shown.count() == page.locator(".option svg[role=img]").count() == 2 * len(built) > 2
    assert shown.locator(".says").all_inner_texts() == [f"{place}. {one['layout']['headline']['text']}" for place, one in enumerate(built, 1)]
    for one, option in zip(shown.all(), built, strict=True):
        before, after = one.locator("figcaption").all_inner_texts()
        assert f"About {option['cuts']} cuts on a vine." in before and after.startswith("After pruning.")
    assert shown.first.locator("li").all_inner_texts() == [reason["text"] for reason in built[0]["reasons"]]


def test_each_layout_prints_as_a_field_card(page, served, rulebook):
    """On paper stand that layout, its two drawings, its cuts, the cautions' names and room for row, name and day; then the page is as before."""
    page.add_init_script("window.print = () => {};")
    page.goto(f"{served}{PAGE}#v=1&{urlencode(VINE)}")
    page.locator(".option").nth(1).get_by_role("button", name="Print the field card").click()
    page.emulate_media(media="print")
    card = page.locator(".field-card")
    second = [option for option in compute(rulebook, "layout_options", VINE)["options"] if option["built"]][1]
    text = card.inner_text()
    assert f"2. {second['layout']['headline']['text']}" in text and f"About {second['cuts']} cuts on a vine." in text
    assert [reason["text"] for reason in second["reasons"] if reason["text"] not in text] == []
    assert [name for name in ("Take care: Shears and saws", "Rows", "Name", "Day") if name not in text] == []
    assert card.locator("svg").count() == 2 and page.locator(".page > *:visible").count() == 1 and not page.locator(".top").is_visible()
    assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(format="A4"))) == 1
    page.evaluate("window.dispatchEvent(new Event('afterprint'))")
    assert card.count() == 0 and page.locator(".option").first.is_visible()


def test_what_has_a_usual_figure_waits_folded(page, served, rulebook):
    """Open stand the nodes, the vine and its wood, as the form's rules say; the gap between tips can be found in the fold."""
    page.goto(served + PAGE)
    asked = page.locator("#questions > .ask").evaluate_all("all => all.map((one) => one.dataset.fact)")
    assert asked == [one.fact for one in rulebook.calculators["layout_options"].inputs if not fold_of(one)]
    assert {"nodes", "live_spur_positions_per_vine", "good_canes_per_vine"} < set(asked)
    assert page.locator("details.more [data-fact=tip_gap_m]").count() == 1


def test_what_cannot_be_built_says_what_is_short(page, served):
    """26 nodes of two each ask for 13 positions."""
    page.goto(f"{served}{PAGE}#v=1&{urlencode(VINE)}")
    page.get_by_text("Layouts that cannot be built").click()
    assert page.get_by_text("ask for 13 live positions, and the vine has 10").is_visible()


def test_the_page_stays_within_its_budget(page, served, site):
    """What a first visit loads, before an answer is asked for, is at most 35 KB on the wire (the sums come later)."""
    loaded = []
    page.on("response", lambda response: loaded.append(response.url))
    page.goto(served + PAGE)
    files = {site / url.split("/course/guide/")[1] for url in loaded}
    assert sum(len(compress(path.read_bytes(), 6)) for path in files) <= 35 * 1024 and len(files) <= 6
