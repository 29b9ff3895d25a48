"""A fact that is asked by node is one compact group: a box for each node, not known said once, links as for any other fact."""

import pytest

REACH = "c/bearer_reach.html"


@pytest.fixture
def reach(page, served):
    """The page of a calculator that asks by node."""
    page.goto(served + REACH)
    return page


def boxes(page):
    """The boxes of the first series."""
    return page.locator("details.series").first.locator(".node input[type=text]")


def test_each_node_has_its_box_under_its_number(reach):
    """Fifteen boxes, named by their node, in one group named by the question."""
    group = reach.get_by_role("group", name="bunch beginnings").first
    assert group.get_by_label("Node 3", exact=True).is_visible()
    assert boxes(reach).count() == 15


def test_the_keyboard_goes_from_node_to_node(reach):
    """Tab leads from one box to the next, past no hidden field."""
    reach.focus("#primordia_node_1")
    reach.keyboard.type("0,4")
    reach.keyboard.press("Tab")
    assert reach.evaluate("document.activeElement.id") == "primordia_node_2"


def test_an_error_names_its_node(reach):
    """The box is marked and the sentence stands below all of them, with the node before it."""
    reach.fill("#primordia_node_2", "9")
    reach.keyboard.press("Tab")
    error = reach.locator("#primordia_node_2-error")
    assert "out of range" in error.inner_text() and error.get_attribute("data-node") == "Node 2: "
    assert reach.get_attribute("#primordia_node_2", "aria-invalid") == "true"


def test_not_known_is_said_once_for_all_nodes(reach):
    """One tick stands for each of them, and takes it back."""
    tick = reach.get_by_label("I do not know any of them").first
    tick.check()
    assert all(box.is_disabled() for box in boxes(reach).all())
    tick.uncheck()
    assert not any(box.is_disabled() for box in boxes(reach).all())


def test_a_link_fills_the_boxes(page, served):
    """As for any other fact, under the names that links have always had."""
    page.goto(f"{served}{REACH}#v=1&primordia_node_1=0.5&primordia_node_2=unknown")
    assert page.input_value("#primordia_node_1") == "0.5"
    assert page.locator("#primordia_node_2").is_disabled()


def test_what_may_be_left_out_is_folded_and_says_how_much_is_filled(page, served):
    """Closed on an empty form; filled by a link it stays closed and says so, so that a short form stays short."""
    page.goto(served + REACH)
    fold = page.locator("details.more", has=page.locator("#canes_dissected"))
    assert not page.locator("#canes_dissected").is_visible() and fold.locator(".count").first.text_content() == ""
    page.goto(f"{served}{REACH}#v=1&canes_dissected=12")
    assert fold.locator(".count").first.text_content() == "1 filled in"
    fold.locator("summary").first.click()
    assert page.locator("#canes_dissected").input_value() == "12"


def test_axe_finds_nothing_in_a_series(reach, axe):
    """Also with a fault in it."""
    reach.fill("#primordia_node_2", "9")
    reach.keyboard.press("Tab")
    assert axe(reach) == []
