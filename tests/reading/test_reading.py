"""read_rulebook: everything that can be read is there, the rest is told once, and nothing is raised."""

from collections.abc import Callable
from pathlib import Path

import pytest

from generator.problems import Problem
from generator.reading.cells import FAR
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Input, Span

Edit = Callable[[str, str, str], list[Problem]]


def test_the_small_good_rules_are_read_whole(good: Rulebook) -> None:
    """One of each kind is there."""
    empty = [name for name, items in vars(good).items() if items in ({}, "")]
    assert empty == []


def test_items_know_their_place(good: Rulebook) -> None:
    """Path from the folder that holds rules/, and the line where the item starts in its file."""
    assert (good.facts["climate"].where.path, good.facts["climate"].where.line) == ("rules/facts/climate.yml", 1)
    assert (good.messages["layout.plain"].where.path, good.messages["layout.plain"].where.line) == (
        "rules/messages/layout.yml",
        7,
    )
    assert good.decisions["wood"].rows[1].when[0].line == 19


def test_ranges_of_facts_are_numbers(good: Rulebook) -> None:
    """A choice runs over the places of its list, yes or no over 0 and 1."""
    ends = {
        name: (good.facts[name].low, good.facts[name].high)
        for name in ("sound_cordon_pct", "climate", "severe_winters")
    }
    assert ends == {"sound_cordon_pct": (0.0, 100.0), "climate": (0.0, 2.0), "severe_winters": (0.0, 1.0)}


def test_the_choices_of_the_variety_are_the_files_and_other(good: Rulebook) -> None:
    """In the order of the files, `other` last."""
    assert [choice.id for choice in good.facts["variety"].choices] == [
        "alba_prova",
        "nera_prova",
        "rosa_prova",
        "other",
    ]


def test_cells_of_derived_facts_are_outcomes(good: Rulebook) -> None:
    """A table's outcome is a choice for the tables that ask it."""
    assert good.decisions["system"].rows[0].when[0].spans == (Span(0.0, True, 0.0, True),)


def test_cells_stand_in_the_order_of_the_facts(good: Rulebook) -> None:
    """However the author orders a row."""
    assert [[cell.fact for cell in row.when] for row in good.decisions["wood"].rows] == [
        ["sound_cordon_pct", "severe_winters"],
        ["sound_cordon_pct", "last_freeze_date"],
        ["sound_cordon_pct"],
    ]
    assert good.decisions["wood"].rows[0].when[0].spans == (Span(80.0, True, FAR, False),)


def test_optional_inputs_say_so(good: Rulebook) -> None:
    """An input is the id of a fact, or that with `optional`."""
    assert good.calculators["vine_density"].inputs[1:3] == (Input("vine_spacing_m"), Input("area_ha", True))


def test_an_expected_outcome_alone_is_put_under_its_name(good: Rulebook) -> None:
    """So that everyone after reading finds the same shape."""
    assert good.decisions["wood"].examples[0].expect == {"outcome": "usable"}


def test_stages_come_in_the_order_of_the_work(good: Rulebook) -> None:
    """By number; what belongs to a stage follows that order, by id within it."""
    assert list(good.stages) == ["assess", "choose_system"]
    assert list(good.decisions) == ["system", "variety_lists", "wood"]


def test_a_bad_item_is_left_out_and_the_rest_is_there(edit: Edit, rules: Path) -> None:
    """One bad value takes away that value, nothing else."""
    edit("values/tip_gap_m.yml", "follow: ours", "follow: nobody")
    book, problems = read_rulebook(rules)
    assert len(problems) == 1
    assert book.values == {}
    assert len(book.facts) == 24


@pytest.mark.parametrize(("old", "new"), [("kind: choice", "kind: chioce"), ("label: Cool}", "label: Cool")])
def test_a_bad_fact_is_told_once_and_not_again_by_the_tables_that_ask_it(edit: Edit, old: str, new: str) -> None:
    """What rests on it is left out silently: the author mends one thing, not five."""
    problems = edit("facts/climate.yml", old, new)
    assert {problem.path for problem in problems} == {"rules/facts/climate.yml"}
    assert len(problems) == 1


def test_a_bad_table_is_told_once_and_not_again_by_the_tables_that_ask_it(edit: Edit) -> None:
    """The same for a derived fact whose outcomes cannot be read."""
    problems = edit("decisions/wood.yml", "outcomes:", "outcome:")
    assert {problem.path for problem in problems} == {"rules/decisions/wood.yml"}


def test_all_mistakes_of_all_files_are_told_at_once(edit: Edit) -> None:
    """Sorted by path and line."""
    edit("values/tip_gap_m.yml", "follow: ours", "follow: nobody")
    problems = edit("facts/climate.yml", "code: CL", "code: C")
    assert [problem.path for problem in problems] == ["rules/facts/climate.yml", "rules/values/tip_gap_m.yml"]


def test_a_missing_folder_is_a_problem(tmp_path: Path) -> None:
    """Not a traceback, and an empty rulebook."""
    book, problems = read_rulebook(tmp_path / "nowhere")
    assert book.facts == {}
    assert [problem.sentence for problem in problems] == ["There is no such folder."]


def test_hidden_files_are_passed_over(rules: Path) -> None:
    """Editors leave such files; they are not rules."""
    (rules / "facts" / ".climate.yml.swp").write_bytes(b"\x00\x01")
    assert read_rulebook(rules)[1] == []


def test_rules_without_their_units_are_told_in_one_problem(rules: Path) -> None:
    """The file that is gone, not every number that has a unit in it."""
    (rules / "units.yml").unlink()
    _, problems = read_rulebook(rules)
    assert [str(problem).splitlines()[0] for problem in problems] == ["rules/units.yml: rules/units.yml is missing."]
