"""The varieties on the page beside their table: each list by itself, and the note with what it rests on."""

from generator.pages.decisions import decision_page, more_page
from generator.pages.varieties import named


def test_lists_that_differ_stand_side_by_side(rulebook):
    """var-01 spurs Muscat Gordo and var-02 canes it: both are shown, none is averaged away."""
    one = next(one for one in named(rulebook, rulebook.decisions["variety_lists"]) if one.id == "muscat_gordo")
    assert one.verdict == "Lists differ"
    assert [(told.says, told.standing, told.rests[0].id) for told in one.told] == [
        ("spurs", "published", "var-01"),
        ("canes", "published", "var-02"),
    ]


def test_every_row_leads_to_its_variety(rulebook):
    """The table stays short; what was found of each variety stands beside it, under the row's id."""
    table = rulebook.decisions["variety_lists"]
    page, beside = decision_page(rulebook, table), more_page(rulebook, table)
    for variety in rulebook.varieties:
        assert f'href="variety_lists.more.html#{variety}"' in page
        assert f'<div id="{variety}">' in beside


def test_a_table_that_a_person_wrote_names_no_variety(rulebook):
    """Only the made table has varieties beside it."""
    assert named(rulebook, rulebook.decisions["fruit_from_lists"]) == []
