"""The pages of the varieties: each list by itself, the fruit by node, what follows, and all of them from A to Z."""

import re
from dataclasses import replace

import pytest

from generator.pages.decisions import decision_page, more_page
from generator.pages.varieties import group, lists_table, nodes_words, variety_page, variety_pages, what_follows
from generator.reading.variety_lists import verdict


@pytest.fixture(scope="module")
def pages(rulebook):
    """Every page of a variety, and the list."""
    return variety_pages(rulebook)


def test_lists_that_differ_stand_side_by_side(pages):
    """var-01 spurs Muscat Gordo and var-02 canes it: both are shown, none is averaged away."""
    page = pages["y/muscat_gordo.md"]
    assert "do not agree" in page and "stand side by side" in page
    assert re.findall(r'<b>(\w+)</b>: <a href="#(var-\d+)">', page) == [("Spurs", "var-01"), ("Canes", "var-02")]


def test_what_was_found_stands_with_its_nodes_place_and_standing(pages):
    """yc-28: Glera on its first two nodes and on its first ten."""
    page = pages["y/glera.md"]
    assert "<dt>Nodes 1 to 2: inflorescences in a bud</dt>" in page and "<dt>Nodes 1 to 10: inflorescences in a bud</dt>" in page
    assert page.count("Veneto, Italy.") == 2 and '<div id="yc-28">' in page


def test_that_nothing_was_found_is_said_in_words(rulebook, pages):
    """An honest cell: no dash, no empty place, on the page and in the list."""
    nothing = [one for one in rulebook.varieties.values() if not one.fruitfulness]
    assert nothing and all("Nothing published was found of where on the cane it bears" in pages[f"y/{one.id}.md"] for one in nothing)
    assert pages["varieties.md"].count("<td>Nothing found</td></tr>") >= len(nothing)


def test_a_name_says_whether_it_was_read(pages):
    """Thompson Seedless stands in a list that was read; Syrah comes from memory."""
    assert re.search(r'Thompson Seedless <span class="quiet">\(printed in <a href="#var-04">', pages["y/sultana.md"])
    assert 'Syrah <span class="quiet">(from memory)' in pages["y/shiraz.md"]


@pytest.mark.parametrize("variety", ["pinot_noir", "flame_seedless", "bobal"])
def test_the_decision_is_a_link_with_the_variety_filled_in(pages, variety):
    """The main question, the one from lists, and the plan."""
    targets = re.findall(r'href="([^"#]+)#v=1&amp;variety=(\w+)"', pages[f"y/{variety}.md"])
    assert [target for target, _ in targets] == ["../d/pruning_system.html", "../d/fruit_from_lists.html", "../plan.html"]
    assert {filled for _, filled in targets} == {variety}


def test_what_follows_is_what_the_decision_says(rulebook, pages):
    """Where all lists agree the climate plays no part; where they differ each climate has its own sentence."""
    assert [climate for climate, _ in what_follows(rulebook, "spur")] == [""]
    assert [climate for climate, _ in what_follows(rulebook, "conflict")] == ["cool", "warm or hot"]
    says = {one.id: one.says for one in rulebook.decisions["fruit_from_lists"].outcomes}
    assert says["listed_enough"] in pages["y/flame_seedless.md"]
    assert says["climate_not"] in pages["y/pinot_noir.md"] and says["climate_enough"] in pages["y/pinot_noir.md"]


def test_the_list_names_every_variety_under_its_uses(rulebook, pages):
    """By use, from A to Z; one with two uses stands twice."""
    rows = re.findall(r'<th scope="row"><a href="y/(\w+)\.html">', pages["varieties.md"])
    uses = [one.id for one in rulebook.varieties.values() for _ in (one.use, *one.also)]
    assert sorted(rows) == sorted(uses)
    assert len(rulebook.varieties) >= 40


def test_every_letter_leads_to_a_row(pages):
    """Plain anchors, no script; no anchor twice."""
    page = pages["varieties.md"]
    ids = re.findall(r' id="([\w-]+)"', page)
    assert len(ids) == len(set(ids))
    assert set(re.findall(r'href="#([\w-]+)"', page)) == set(ids)


def test_accents_do_not_change_the_order(rulebook):
    """Nero d'Avola before Norton, Melon before Müller-Thurgau."""
    names = [line.name for line in group(rulebook, "wine", {}).lines]
    assert names.index("Merlot") < names.index("Montepulciano") < names.index("Müller-Thurgau") < names.index("Nebbiolo")


@pytest.mark.parametrize(("nodes", "words"), [("9", "node 9"), ("1 to 2", "nodes 1 to 2"), ("beyond 10", "nodes beyond 10"), ("base", "the lowest nodes")])
def test_nodes_are_said_in_words(nodes, words):
    """A number alone is one node."""
    assert nodes_words(nodes) == words


def test_every_row_of_the_made_table_leads_to_its_variety(rulebook):
    """The table stays short; what was found stands on the variety's own page."""
    table = lists_table(rulebook)
    shown = decision_page(rulebook, table) + more_page(rulebook, table)  # a long table stands beside its page
    assert [one for one in rulebook.varieties if f'href="../y/{one}.html"' not in shown] == []


def test_rules_without_a_made_table_still_have_pages(rulebook):
    """The page then says nothing of what the lists come to."""
    page = variety_page(rulebook, rulebook.varieties["italia"], None, [])
    assert "Every list" not in page and "What lists and trials say" in page
    assert lists_table(replace(rulebook, decisions={})) is None


def test_chardonnay_is_said_to_rest_on_a_ranking(rulebook, pages):
    """var-08 compared no spurs with canes: its `either` is an inference, and the note says so."""
    assert verdict(rulebook.varieties["chardonnay"]) == "conflict"
    assert "rests on a ranking of fruitfulness alone" in pages["y/chardonnay.md"]
