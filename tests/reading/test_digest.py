"""The version of the rules changes when advice may change, and only then."""

from pathlib import Path

import pytest

from generator.reading.digest import digest
from generator.reading.read import read_rulebook


def version(rules: Path) -> str:
    """The version of a rules folder."""
    return read_rulebook(rules)[0].version


def test_comments_order_of_fields_and_the_look_of_numbers_change_nothing(rules: Path) -> None:
    """The digest is over data, not over text."""
    before = version(rules)
    path = rules / "values" / "tip_gap_m.yml"
    lines = path.read_text().replace("number: 0.1,", "number: 0.10,").replace("[0, 1]", "[0.0, 1]").splitlines()
    path.write_text("# a comment\n" + "\n".join([*lines[1:], lines[0]]) + "\n")
    assert version(rules) == before


@pytest.mark.parametrize(
    ("file", "old", "new"),
    [
        ("values/tip_gap_m.yml", "number: 0.1,", "number: 0.11,"),
        ("decisions/wood.yml", "80 or more", "75 or more"),
        ("messages/layout.yml", "before budburst", "after budburst"),
        ("units.yml", "3.280839895013123", "3.28"),
    ],
)
def test_a_changed_rule_changes_the_version(rules: Path, file: str, old: str, new: str) -> None:
    """A number, a cell, a sentence, a unit."""
    before = version(rules)
    path = rules / file
    path.write_text(path.read_text().replace(old, new))
    assert version(rules) != before


def test_the_ledger_and_demo_blocks_are_no_advice(rules: Path) -> None:
    """Listing an id or adding a demo block leaves old links good."""
    before = version(rules)
    (rules / "ids.yml").write_text("term:\n  cordon: {since: 2026-11-25}\n")
    (rules / "blocks" / "second.yml").write_text("name: Second\nnote: Invented.\nfacts: {}\n")
    assert version(rules) == before


def test_the_order_in_a_list_counts() -> None:
    """Rows and choices are read in order."""
    assert digest([1, 2]) != digest([2, 1])
    assert digest({"a": 1, "b": 2.0}) == digest({"b": 2, "a": 1.0})
