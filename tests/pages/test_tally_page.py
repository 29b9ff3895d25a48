"""The tally page: buds counted by touch and by key, kept and undone, read from and written to files, reckoned as the command line does."""

import json
import random
from gzip import compress as packed
from urllib.parse import parse_qs, urlsplit

import pytest
from py_mini_racer import MiniRacer

from generator.answers.catalogue import catalogue
from generator.answers.compute import compute
from generator.answers.rows_csv import read_sheet
from generator.calculators.wording import number_text
from generator.pages.scripts import asset
from generator.pages.slimming import slim
from tests.pages.test_keeping import DENIED, FULL

NAME = "bud_fruitfulness"
PAGE = f"c/{NAME}.html"
BOARD = "#pad .keys:not([hidden]) [data-key='{}']"
CROP = {"target_yield_t_ha": "9", "bearing_vines_per_ha": "3000", "bunch_weight_g": "130", "vine_spacing_m": "1.2", "noncount_shoots_kept": "0"}
COLUMNS = "cane,node,buds_0,buds_1,buds_2,buds_3,dead_primary,dead_node,secondary_1,secondary_2,unreadable".split(",")
# What the buttons make of a bud, in the order of the columns after cane and node.
PRESSES = {"0": [1], "1": [0, 1], "2": [0, 0, 1], "3": [0, 0, 0, 1], "D0": [0] * 4 + [1], "D1": [0] * 4 + [1, 0, 1], "D2": [0] * 4 + [1, 0, 0, 1], "X": [0] * 5 + [1], "R": [0] * 8 + [1]}


def sheet(canes=12, nodes=8, seed=5):
    """An invented tally as CSV: more fruit further out, some dead, some unreadable."""
    draw = random.Random(seed)
    lines = [",".join(COLUMNS)]
    for cane in range(1, canes + 1):
        for node in range(1, nodes + 1):
            what = draw.choices([*"0123", "D0", "D1", "X", "R"], [9 - node, 6, node, 1, 1, 1, 1, 0.3])[0]
            lines.append(",".join(map(str, [cane, node, *(PRESSES[what] + [0] * 9)[:9]])))
    return "\n".join(lines) + "\n"


@pytest.fixture
def tally(page, served):
    """The page, fresh."""
    page.goto(served + PAGE)
    return page


def press(page, keys):
    """Presses buttons on the board, one after the other."""
    for key in keys:
        page.locator(BOARD.format(key)).click()


def take(page, text):
    """Pastes a text into the list and takes it over; what reads it comes when the fold is opened."""
    if not page.locator("#tally-files").evaluate("one => one.open"):
        page.click("#tally-files summary")
    page.fill("#tally-text", text)
    page.click("#tally-take")


def kept(page):
    """The rows that the device keeps of this block and winter."""
    return page.evaluate("JSON.parse(localStorage.getItem(Object.keys(localStorage).filter((key) => key.endsWith('/tally')).sort().pop())).rows")


def row(cane, node, what):
    """A row as the store has it."""
    return [cane, node, *(PRESSES[what] + [0] * 9)[:9]]


def place(page):
    """The bud that the board asks for."""
    return page.locator("#tally-place").inner_text()


def work_out(page, **facts):
    """Fills in facts and asks for the answer."""
    page.locator("#tally-more").evaluate("one => { one.open = true; one.querySelectorAll('details').forEach((fold) => { fold.open = true; }); }")
    for fact, text in facts.items():
        page.fill(f"#{fact}", text)
    page.click("button[type=submit]")
    page.wait_for_selector(".found")


def test_touch_counts_bud_after_bud_and_cane_after_cane(new_page, served):
    """One touch a bud, two where the primary is dead; after the last node of a cane comes the next cane."""
    page = new_page(390, 844, has_touch=True)
    page.goto(served + PAGE)
    page.fill("#tally-nodes", "4")
    page.keyboard.press("Tab")
    for key in ("1", "D", "2", "X", "0", "3", "R"):
        page.locator(BOARD.format(key)).tap()
    assert kept(page) == [row(1, 1, "1"), row(1, 2, "D2"), row(1, 3, "X"), row(1, 4, "0"), row(2, 1, "3"), row(2, 2, "R")]
    assert place(page) == "Cane 2, node 3"
    assert page.locator("#tally-total").inner_text() == "6 buds from 2 canes."


def test_the_keyboard_does_the_same(tally):
    """Digits, D, X and R say what is there, U takes back; what happened is said politely."""
    tally.focus("#pad")
    for key in "2d1x3u":
        tally.keyboard.press(key)
    assert kept(tally) == [row(1, 1, "2"), row(1, 2, "D1"), row(1, 3, "X")]
    told = tally.locator("#tally-told")
    assert (told.get_attribute("aria-live"), told.inner_text()) == ("polite", "Undone. Again: cane 1, node 4.")
    tally.keyboard.press("1")
    assert told.inner_text() == "Cane 1, node 4: 1 bunch. Next: cane 1, node 5."


def test_keys_count_only_on_the_board_and_never_in_a_field(tally):
    """Who types a number into a field, or a letter anywhere else, counts no bud."""
    tally.locator("details.jump summary").click()
    tally.fill("#tally-cane", "")
    tally.focus("#tally-cane")
    tally.keyboard.type("12")
    tally.focus("#clear")
    tally.keyboard.press("x")
    assert tally.locator("#tally-total").inner_text() == "No bud is counted yet."
    assert tally.input_value("#tally-cane") == "12"


def test_undo_reaches_back_over_a_reload(tally):
    """Nothing is lost when the tablet sleeps or the page is loaded anew, undo included."""
    press(tally, ["1", "2", "D"])
    tally.reload()
    assert (kept(tally), place(tally)) == ([row(1, 1, "1"), row(1, 2, "2")], "Cane 1, node 3")
    press(tally, ["U", "U"])
    assert (kept(tally), place(tally)) == ([], "Cane 1, node 1")
    press(tally, ["U"])
    assert tally.locator("#tally-told").inner_text() == "There is nothing to undo."


def test_any_bud_can_be_gone_to_and_is_replaced(tally):
    """The board says what stands there; undo brings it back; the next empty place is one press away."""
    press(tally, ["1", "1"])
    tally.locator("details.jump summary").click()
    tally.fill("#tally-cane", "1")
    tally.fill("#tally-node", "2")
    tally.keyboard.press("Enter")
    assert tally.locator("#pad .holds").inner_text() == "Counted already: 1 bunch. A press replaces it."
    press(tally, ["3"])
    assert kept(tally)[-1] == row(1, 2, "3")
    press(tally, ["U"])
    assert kept(tally)[-1] == row(1, 2, "1")
    tally.get_by_role("button", name="Next empty place").click()
    assert place(tally) == "Cane 1, node 3"
    tally.fill("#tally-node", "99")
    tally.get_by_role("button", name="Go", exact=True).click()
    assert "node from 0 to 15" in tally.locator(".jump .error").inner_text()


def test_running_counts_by_node(tally):
    """Buds of each state, and the mean of the living primaries."""
    take(tally, "cane,node,buds_0,buds_2,dead_primary\n1,1,1,0,0\n2,1,0,1,0\n3,1,0,0,1\n")
    assert tally.locator(".counts tbody tr").inner_text().split() == ["1", "1", "0", "1", "0", "1", "0", "0", "1.00"]


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_buttons_are_large_and_stand_out(new_page, served, dark):
    """At least 60 pixels each way, 7:1 between words and ground (WCAG 2.2, contrast ratio)."""
    page = new_page(390, 844, dark)
    page.goto(served + PAGE)
    boxes = [one.bounding_box() for one in page.locator("#pad .keys:not([hidden]) button").all()]
    assert len(boxes) == 8 and all(min(box["width"], box["height"]) >= 60 for box in boxes)
    colours = page.locator(BOARD.format("1")).evaluate("one => [getComputedStyle(one).color, getComputedStyle(one).backgroundColor]")
    assert contrast(*colours) >= 7


def contrast(one, other):
    """The contrast ratio of two colours as the browser computes them, rgb(r, g, b)."""
    lights = []
    for colour in (one, other):
        parts = [int(part) / 255 for part in colour[4:-1].split(",")]
        red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
        lights.append(0.2126 * red + 0.7152 * green + 0.0722 * blue)
    return (max(lights) + 0.05) / (min(lights) + 0.05)


def test_the_buttons_change_hands(tally):
    """On the side of the hand that presses; the choice is kept."""
    side = lambda: tally.locator("#pad .side").bounding_box()["x"] - tally.locator("#pad .board").bounding_box()["x"]  # noqa: E731
    assert side() > 0
    tally.get_by_label("Left").check()
    assert side() < 0
    tally.reload()
    assert side() < 0


def test_bad_lines_are_named_and_the_rest_is_kept(tally):
    """With the number of the line and what is allowed; one undo takes the whole list back."""
    take(tally, "cane,node,buds_1,dead_primary\n1,1,1,0\n1,x,1,0\n1,2,1.5,0\n1,3,-1,0\n2,1,0,1\n")
    faults = tally.locator("#tally-faults li").all_inner_texts()
    assert [fault.split(":")[0] for fault in faults] == ["Line 3", "Line 4", "Line 5"]
    assert faults[0] == "Line 3: node is “x”. Allowed is a whole number from 0 to 15."
    assert kept(tally) == [row(1, 1, "1"), row(2, 1, "D0")]
    assert "2 lines taken over. Faults: 3." in tally.locator("#tally-told").inner_text()
    press(tally, ["U"])
    assert kept(tally) == []


ODD = {
    "plain": "cane,node,buds_0,buds_1\n1,1,0,1\n1,2,1,0\n",
    "a mark of the encoding, semicolons, line ends of Windows": "\ufeffCane;Node;Buds 1\r\n1;1;1\r\n1;2;1\r\n",
    "copied out of a spreadsheet": "node\tbuds-1\tcane\n1\t1\t7\n\n2\t\t7\n",
    "old line ends, quoted cells and blanks": 'cane,node,buds_0\r"1", 2 ,"1"\r "1",3,1\r',
    "empty lines and cells": "\n ,, \ncane,node,buds_0,buds_3\n,,,\n,4,,2\n5,,1,\n",
    "numbers that are none": "node,buds_1\n1,1.0\n2,1.5\n3,-1\n4,1e2\n5,+1\n6,0x1\n7,99999\n16,1\n0,1\n",
    "short and long lines": "cane,node,buds_1,buds_2\n1,1,1\n1,2\n1,3,1,0,\n1,4,1,0,9\n",
    "strange and repeated columns": "cane,node,buds_1,buds_1,vine\n1,1,1,7,3\n",
    "no column for the node": "cane,buds_1\n1,1\n",
    "secondaries": "node,buds_1,dead_primary,secondary_1,secondary_2\n1,1,1,1,1\n2,0,1,1,1\n3,1,0,1,0\n",
    "a quote left open": 'node,buds_1\n"1,1\n2,1\n3,"1\n4,""1""\n',
    "nothing": " \n;;\n",
}


@pytest.mark.parametrize("text", ODD.values(), ids=ODD)
def test_the_page_and_the_command_line_read_the_same_files(rulebook, text):
    """The same rows, and a fault at the same lines; a row that counts no bud is nothing on the page."""
    form = rulebook.calculators[NAME]
    engine = MiniRacer()
    engine.eval("var Guide = {};" + slim(asset("tally_rows.js") + asset("tally_csv.js")))
    most = {column.id: column.high for column in form.rows}
    read = json.loads(engine.eval(f"JSON.stringify(Guide.tally.read({json.dumps(text)}, {json.dumps(most)}))"))
    given = read_sheet(rulebook, form, text)
    rows = [{name: int(float(line.get(name) or 0)) for name in COLUMNS} for line in given.rows]
    assert read["rows"] == [line for line in rows if sum(list(line.values())[2:])]
    assert {fault.split(":")[0] for fault in read["faults"]} == {f"Line {fault.split(':')[0]}" for fault in given.faults}


def test_a_bud_that_stands_twice_in_a_file_is_named(tally):
    """Its counts are added, as in a list of several buds a line; on a numbered cane, which has one bud at a node, that is told once."""
    take(tally, "cane,node,buds_1\n4,5,1\n4,5,1\n4,5,1\n4,6,1\n0,5,1\n0,5,1\n")
    assert tally.locator("#tally-faults li").all_text_contents() == [
        "Cane 4, node 5 stands in more than one line. The counts were added; if the bud is one and the same, undo."
    ]


def test_a_saved_list_comes_back_the_same(tally, tmp_path):
    """Saved, emptied, opened again: every row is there, and the command line reads it too."""
    take(tally, sheet(3, 4))
    press(tally, ["D", "2"])
    before = sorted(kept(tally))
    with tally.expect_download() as download:
        tally.click("#tally-save")
    path = tmp_path / "saved.csv"
    download.value.save_as(path)
    assert download.value.suggested_filename.startswith("tally-block-")
    tally.click("#tally-clear")
    assert kept(tally) == []
    tally.set_input_files("#tally-file", path)
    tally.get_by_text("taken over from saved.csv").wait_for()
    assert sorted(kept(tally)) == before


@pytest.fixture
def answered(tally):
    """The page with a tally and the crop wanted, and its answer on the screen."""
    take(tally, sheet())
    work_out(tally, **CROP)
    return tally


@pytest.fixture
def computed(rulebook):
    """The same on the command line."""
    rows = read_sheet(rulebook, rulebook.calculators[NAME], sheet()).rows
    return compute(rulebook, NAME, {"rows": rows} | {name: float(text) for name, text in CROP.items()})


def test_the_page_reckons_as_the_command_does(answered, computed, rulebook):
    """Headline, every figure, every sentence."""
    units = catalogue(rulebook).units
    assert answered.locator("#headline").inner_text() == computed["headline"]
    for output in rulebook.calculators[NAME].outputs:
        shown = answered.locator(f"#output-{output.id}").text_content()
        number = computed["outputs"].get(output.id)
        assert shown == ("left open" if number is None else number_text(units, float(number), output.unit, output.digits, "si"))
    known = answered.locator("section", has=answered.get_by_role("heading", name="What to know about it", exact=True)).last
    assert known.locator("li").all_text_contents() == computed["notes"]
    working = answered.locator("#rest details", has=answered.locator("summary", has_text="The working"))
    assert working.locator("li").all_text_contents() == computed["working"]


def test_the_tables_and_the_chart_show_every_node(answered, computed):
    """A row and a dot with its range for each node; the chart is described in words."""
    table = answered.get_by_role("region", name="Fruit by node").locator("tbody tr")
    assert table.count() == len(computed["rows"])
    first = computed["rows"][0]
    assert f"{first['mean_live']:.2f} ({first['low']:.2f}\u00a0to\u00a0{first['high']:.2f})" in table.first.locator("td").nth(2).text_content()
    chart = answered.locator(".chart svg[role=img]")
    assert chart.locator("circle.v-node").count() == len(computed["rows"])
    assert f"node 1 {first['mean_live']:.2f} ({first['low']:.2f} to {first['high']:.2f})" in chart.get_attribute("aria-label")
    bearers = answered.get_by_role("region", name="Spurs and canes").locator("tbody tr")
    assert bearers.count() == len(computed["bearers"])
    assert bearers.locator("td:last-child").all_text_contents() == [means(line) for line in computed["bearers"]]


def means(line):
    """What a bearer's range says of the crop wanted, and where it says nothing yet, how many more canes would."""
    if line["reach_low"] >= 1 or line["reach_high"] < 1:
        return "Makes the crop." if line["reach_low"] >= 1 else "Falls short of the crop."
    more = line.get("more_canes")
    return f"The sample cannot tell yet; about {more:.0f} more {'cane' if more == 1 else 'canes'} would." if more else "Too close to be told by cutting."


def test_an_answer_follows_the_next_press(answered):
    """What is on the screen is never older than the tally."""
    before = answered.locator("#output-buds").text_content()
    press(answered, ["1"])
    assert int(answered.locator("#output-buds").text_content()) == int(before) + 1


USES = {
    "Use in spur or cane": "spur_reach_low",
    "Use in the plan": "primordia_node_8",
    "Use in nodes for the crop": "dead_primary_pct",
    "Use in layout options": "primordia_node_8",
}


@pytest.mark.parametrize(("label", "filled"), USES.items(), ids=USES)
def test_the_figures_go_on_without_retyping(answered, computed, label, filled):
    """The link fills the other page, which asks for everything that it carries; what the form held of the block goes along."""
    wanted = computed["facts"] | {"spur_reach_low": computed["outputs"]["spur_reach_low"]}
    answered.get_by_role("link", name=label).click()
    answered.locator(f"#{filled}").wait_for(state="attached")
    assert float(answered.input_value(f"#{filled}")) == pytest.approx(wanted[filled], rel=1e-12)
    assert "left out" not in answered.locator("#link-told").text_content()
    carried = parse_qs(urlsplit(answered.url).fragment)
    assert set(computed["facts"]) - set(carried) == set(computed["facts"]) - asked_by(answered)
    assert carried.get("vine_spacing_m", [CROP["vine_spacing_m"]]) == [CROP["vine_spacing_m"]]


def asked_by(page):
    """The facts that a page has a field for."""
    return set(page.evaluate("[...document.querySelectorAll('[data-fact]')].map((one) => one.getAttribute('data-fact'))"))


def test_the_figures_are_kept_on_the_device_on_wish(answered, served, computed):
    """Then every page that asks them has them, without a link."""
    answered.click("#keep-figures")
    answered.goto(served + "c/bearer_reach.html")
    assert float(answered.input_value("#primordia_node_3")) == computed["facts"]["primordia_node_3"]


def test_other_winters_stand_beside_this_one(tally):
    """In a table, and as open dots in the chart; each winter has a tally of its own."""
    tally.select_option("#tally-winter", index=1)
    earlier = tally.input_value("#tally-winter")
    take(tally, sheet(6, 8, seed=9))
    tally.select_option("#tally-winter", index=0)
    assert tally.locator("#tally-total").inner_text() == "No bud is counted yet."
    take(tally, sheet())
    work_out(tally)
    heads = tally.get_by_role("region", name="winter by winter").locator("thead th").all_text_contents()
    assert heads == ["Node", f"Winter {int(earlier) + 1}", f"Winter {earlier}"]
    assert tally.locator(".chart circle.v-open").count() == 8
    assert "for comparison only" in tally.get_by_text("Where others found").inner_text()


def test_each_block_has_its_own_tally(tally):
    """What was counted before the block had a name goes with the name; another block begins empty, and the first comes back."""
    press(tally, ["1"])
    for name, total in (("South slope", "1 bud from 1 cane."), ("Brook side", "No bud is counted yet."), ("South slope", "1 bud from 1 cane.")):
        tally.fill("#block_name", name)
        tally.keyboard.press("Tab")
        assert tally.locator("#tally-total").inner_text() == total


@pytest.mark.parametrize(("broken", "said"), [(DENIED, "does not let the page keep anything"), (FULL, "no room left")])
def test_a_device_that_keeps_nothing_is_told_of(page, served, broken, said):
    """At the first press, with what to do; counting and the answer go on."""
    page.add_init_script(broken)
    page.goto(served + PAGE)
    press(page, ["1"])
    assert said in page.locator("#tally-kept").inner_text() and "save the tally as a file" in page.locator("#tally-kept").inner_text()
    take(page, sheet(3, 4))
    work_out(page)
    assert page.locator(".chart").is_visible()


def test_all_of_it_works_from_a_folder(page, site):
    """Count, reckon and save without a server, and without a request to anywhere."""
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto((site / PAGE).as_uri())
    take(page, sheet(4, 5))
    work_out(page)
    with page.expect_download() as download:
        page.click("#tally-save")
    assert len(download.value.path().read_text(encoding="utf-8").splitlines()) == 21
    assert {urlsplit(url).scheme for url in asked} <= {"file", "blob"}


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_axe_finds_nothing_on_a_full_page(new_page, served, axe, dark):
    """Board, bad lines, folds open, chart and tables."""
    page = new_page(dark=dark)
    page.goto(served + PAGE)
    take(page, sheet() + "1,x\n")
    work_out(page, **CROP)
    page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })")
    assert axe(page) == []


@pytest.mark.parametrize("room", [(390, 844), (810, 1080)], ids=lambda room: str(room[0]))
def test_a_full_page_does_not_scroll_sideways(new_page, served, room):
    """On phone and tablet; paper is about as wide as a tablet."""
    page = new_page(*room)
    page.goto(served + PAGE)
    take(page, sheet())
    work_out(page, **CROP)
    for media in ("screen", "print") if room[0] == 810 else ("screen",):
        page.emulate_media(media=media)
        assert page.evaluate("document.documentElement.scrollWidth") <= room[0]


def test_the_first_visit_is_light_and_the_sums_come_later(page, served, site):
    """At most 35 KB on the wire and six files before an answer is asked for."""
    loaded = []
    page.on("response", lambda response: loaded.append(response.url))
    page.goto(served + PAGE, wait_until="networkidle")
    files = {site / url.split("/course/guide/")[1] for url in loaded}
    assert not any("sums" in path.name for path in files) and len(files) <= 6
    assert sum(len(packed(path.read_bytes(), 6)) for path in files) <= 35 * 1024
