"""From the microscope or the scales to the number and the layout: each page hands its figures to the next, by keyboard and by touch, and
each says what the command line says."""

from urllib.parse import parse_qsl, urlsplit

import pytest

from generator.answers.compute import compute, plan
from tests.pages.test_plan_page import data
from tests.pages.test_tally_page import BOARD

# Four canes of three nodes: the fruit lies further out, and one primary is dead.
BUDS = "012" + "012" + "122" + "0D11"
CROP = {"target_yield_t_ha": "9", "bearing_vines_per_ha": "3000", "bunch_weight_g": "130", "vine_spacing_m": "1.2"}
# What a decision asks besides the buds, as a grower of vines with canes would tick it.
BLOCK = {"present_structure": "cane_head", "pruning_method": "hand", "use": "wine", "crop_made_in_two_of_three_years": "yes", "dark_stain_in_trunk": "not_cut", "signs_seen_when": "in_leaf"}
NUMBERS = {"trunk_disease_vines_pct": "0", "good_canes_per_vine": "3", "canes_wanted_per_vine": "2", "cane_diameter_mm": "9"}


class Keyboard:
    """Someone who touches nothing but keys."""

    def __init__(self, page):
        self.page = page

    def press(self, place):
        """A link, a button or a fold."""
        place.focus()
        self.page.keyboard.press("Enter")

    def tick(self, place):
        """One of several answers."""
        place.focus()
        self.page.keyboard.press("Space")

    def write(self, place, text):
        """Replaces what stands in a field."""
        place.focus()
        self.page.keyboard.press("Control+A")
        self.page.keyboard.type(text)
        self.page.keyboard.press("Tab")

    def count(self, buds):
        """Buds on the board, one key each; the secondary of a dead primary one more."""
        self.page.focus("#pad")
        for bud in buds:
            self.page.keyboard.press(bud.lower())


class Finger:
    """Someone with a tablet; the letters come from its own keyboard."""

    def __init__(self, page):
        self.page = page

    def press(self, place):
        """A link, a button or a fold."""
        place.tap()

    def tick(self, place):
        """One of several answers."""
        place.tap()

    def write(self, place, text):
        """Replaces what stands in a field."""
        place.tap()
        place.fill(text)
        place.blur()

    def count(self, buds):
        """Buds on the board, one touch each; the secondary of a dead primary one more."""
        for bud in buds:
            self.page.locator(BOARD.format(bud)).tap()


@pytest.fixture(params=[Keyboard, Finger], ids=["keyboard", "touch"])
def hand(request, new_page):
    """A person at a fresh page."""
    return request.param(new_page(has_touch=request.param is Finger))


def unfolded(hand, fact):
    """The field or the group of a fact; the folds around it are opened first."""
    place = hand.page.locator(f"#{fact}")
    for fold in hand.page.locator(f"details:has(#{fact})").all():
        if fold.get_attribute("open") is None:
            hand.press(fold.locator("summary").first)
    return place


def write(hand, numbers):
    """Numbers into their fields."""
    for fact, text in numbers.items():
        hand.write(unfolded(hand, fact), text)


def tick(hand, choices):
    """Answers among those offered."""
    for fact, choice in choices.items():
        hand.tick(unfolded(hand, fact).locator(f"input[value={choice}]"))


def work_out(hand):
    """Asks for the answer; gives it in one line, and what it rests on is on the screen."""
    hand.press(hand.page.locator("button[type=submit]"))
    hand.page.locator("#rest section").first.wait_for()
    return hand.page.locator("#headline").inner_text()


def go_on(hand, label):
    """Follows the way to the next page."""
    hand.press(hand.page.get_by_role("link", name=label, exact=True))
    hand.page.locator("#link-told:not([hidden])").wait_for()
    assert hand.page.locator("#link-told li").all_inner_texts() == []


def told(hand, rulebook, name):
    """What the command line says to the facts that stand in the form, as the page's own link carries them."""
    pairs = parse_qsl(urlsplit(hand.page.input_value("#link")).fragment)
    kinds = {fact.id: fact.kind for fact in rulebook.facts.values()}
    facts = {fact: float(text) if kinds[fact] == "number" else int(text) if kinds[fact] == "whole" else text for fact, text in pairs if fact in kinds}
    return compute(rulebook, name, facts)


def value(hand, fact):
    """What a field holds, as a number."""
    return float(hand.page.input_value(f"#{fact}"))


def counted(hand, served):
    """A small tally, counted and worked out."""
    hand.page.goto(served + "c/bud_fruitfulness.html")
    hand.write(hand.page.locator("#tally-nodes"), "3")
    hand.count(BUDS)
    write(hand, CROP)
    work_out(hand)
    assert hand.page.locator("#tally-total").inner_text() == "12 buds from 4 canes."


def test_from_the_tally_to_spur_or_cane(hand, served, rulebook):
    """How far spurs reach stands in the decision's form; with what is seen in the block it gives a form to aim for."""
    counted(hand, served)
    go_on(hand, "Use in spur or cane")
    low, high = value(hand, "spur_reach_low"), value(hand, "spur_reach_high")
    assert 0 < low < high and hand.page.locator("#buds_cut input[value=yes]").is_checked()
    tick(hand, BLOCK)
    write(hand, NUMBERS)
    said = work_out(hand)
    expected = told(hand, rulebook, "pruning_system")
    assert said == expected["headline"] and expected["outcome"]


# What the plan asks besides: 3000 bearing vines on a hectare, as the tally was told, and where the head stands.
ROWS = {"row_spacing_m": "2.5", "missing_vines_pct": "10", "head_below_wire_cm": "15"}


def test_from_the_tally_to_system_number_and_layout_in_one_plan(hand, served, rulebook):
    """One link fills the plan: it is as sure of the spur as the tally is, and goes on from fruit to system, number and layout as the command
    line does."""
    counted(hand, served)
    tally = {id: hand.page.locator(f"#output-{id}").text_content() for id in ("spur_reach", "spur_reach_low", "spur_reach_high")}
    go_on(hand, "Use in the plan")
    assert value(hand, "bud_spread") > 0 and value(hand, "spur_fruit_se_pct") > 0
    tick(hand, BLOCK)
    write(hand, NUMBERS | ROWS)
    hand.press(hand.page.locator("button[type=submit]").first)
    shown = data(hand.page)
    facts = {fact: one["value"] for fact, one in shown["facts"].items() if one["status"] in ("entered", "from_link") and "value" in one}
    expected = plan(rulebook, facts)["plan"]
    parts = {part["id"]: part for part in shown["plan"]["parts"]}
    assert [part["headline"]["text"] for part in shown["plan"]["parts"]] == [part["headline"]["text"] for part in expected["parts"]]
    reach = {one["id"]: f"{one['number']:.2f}" for one in parts["find_fruit"]["numbers"]}
    assert {id: reach[id] for id in tally} == tally
    assert parts["choose_system"]["choice"] and all(parts[name]["settled"] for name in ("node_number", "lay_out"))


def test_from_the_tally_over_the_number_to_the_layout(hand, served, rulebook):
    """Twelve buds become nodes for the crop, a number held against the room in the canopy, and a layout; no figure is typed twice."""
    counted(hand, served)
    go_on(hand, "Use in nodes for the crop")
    # Of the four buds at node 1 one holds a bunch.
    assert value(hand, "primordia_node_1") == 0.25 and value(hand, "canes_dissected") == 4
    tick(hand, {"fruiting_wood": "canes"})
    write(hand, {"bearer_nodes": "3"})
    said = work_out(hand)
    fruit = told(hand, rulebook, "nodes_for_yield")
    assert said == fruit["headline"]

    go_on(hand, "Use in: The node number")
    assert value(hand, "fruit_nodes") == pytest.approx(fruit["outputs"]["nodes_exact"], abs=0.05)
    assert value(hand, "fruit_nodes_low") == pytest.approx(fruit["outputs"]["low"], abs=0.05)
    said = work_out(hand)
    number = told(hand, rulebook, "node_number")
    assert said == number["headline"]

    go_on(hand, "Use in: Ways to lay the nodes out")
    assert value(hand, "nodes") == number["outputs"]["nodes"] and value(hand, "vine_spacing_m") == 1.2
    write(hand, {"head_below_wire_cm": "20"})
    said = work_out(hand)
    assert said == told(hand, rulebook, "layout_options")["headline"]


def test_from_weighed_prunings_to_the_number(hand, served, rulebook):
    """What the vine can carry goes along with the weight itself: first two ends, and with the crop that is wanted a number."""
    hand.page.goto(served + "c/balanced_nodes.html")
    write(hand, {"pruning_weight_kg": "0.62"})
    tick(hand, {"grape_type": "vinifera", "use": "wine"})
    said = work_out(hand)
    carried = told(hand, rulebook, "balanced_nodes")
    assert said == carried["headline"]

    go_on(hand, "Use in: The node number")
    assert value(hand, "pruning_weight_kg") == 0.62
    assert value(hand, "capacity_nodes_low") == pytest.approx(carried["outputs"]["capacity_low"], abs=0.05)
    assert value(hand, "capacity_nodes_high") == pytest.approx(carried["outputs"]["capacity_high"], abs=0.05)
    write(hand, {"vine_spacing_m": "1.2"})
    said = work_out(hand)
    number = told(hand, rulebook, "node_number")
    assert said == number["headline"] and "nodes" not in number["outputs"] and number["outputs"]["low"]
    assert "Nodes per vine;" in hand.page.locator("#left-open").inner_text()
    assert hand.page.locator("#uses").count() == 0, "a number that is open goes nowhere"

    write(hand, {"target_yield_t_ha": "8", "row_spacing_m": "2", "bunches_per_shoot": "1.6", "bunch_weight_g": "120"})
    said = work_out(hand)
    number = told(hand, rulebook, "node_number")
    assert said == number["headline"]
    assert hand.page.locator("#output-nodes").inner_text() == str(int(number["outputs"]["nodes"]))
    assert "Legal limit on a vine" in hand.page.locator("#left-open").inner_text()
