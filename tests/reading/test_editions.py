"""A local edition replaces or adds items by kind and id; the original stays beside what replaced it."""

import shutil
from pathlib import Path

import pytest

from generator.reading.digest import digest
from generator.reading.read import read_rulebook

TINY = Path(__file__).parent.parent / "editions" / "tiny"


@pytest.fixture
def tiny(tmp_path: Path) -> Path:
    """A copy of the tiny edition that a test may change."""
    return shutil.copytree(TINY, tmp_path / "tiny")


def test_a_value_is_replaced_and_both_are_kept(rules: Path) -> None:
    """The edition's number is used; the base's whole item and its digest stand beside it."""
    base, _ = read_rulebook(rules)
    book, problems = read_rulebook(rules, TINY)
    value = book.values["tip_gap_m"]
    assert problems == []
    assert (value.number, value.where.path) == (0.15, "tiny/values/tip_gap_m.yml")
    assert value.replaced.original["follow"] == base.values["tip_gap_m"].follow
    assert value.replaced.digest == digest(value.replaced.original)
    assert value.replaced.edition == "tiny"


def test_what_is_not_replaced_stays(rules: Path) -> None:
    """Every other item is the base's, untouched."""
    base, _ = read_rulebook(rules)
    book, _ = read_rulebook(rules, TINY)
    assert book.facts == base.facts
    assert base.values["tip_gap_m"].replaced is None


def test_the_edition_names_itself(rules: Path) -> None:
    """Answers carry the id of the edition; without one it is the base."""
    assert read_rulebook(rules, TINY)[0].edition.id == "tiny"
    assert read_rulebook(rules)[0].edition.id == "base"


def test_the_version_tells_editions_apart(rules: Path) -> None:
    """Answers under other numbers carry another version."""
    assert read_rulebook(rules)[0].version != read_rulebook(rules, TINY)[0].version


def test_one_message_is_replaced_by_its_key(rules: Path, tiny: Path) -> None:
    """The other messages of the file stay; a message that was plain text is kept as its `text`."""
    (tiny / "messages").mkdir()
    (tiny / "messages" / "layout.yml").write_text("plain: Tie the arm down in winter.\n")
    book, problems = read_rulebook(rules, tiny)
    assert problems == []
    assert book.messages["layout.plain"].text == "Tie the arm down in winter."
    assert book.messages["layout.plain"].replaced.original == {"text": "Tie the arm down before budburst."}
    assert book.messages["layout.tips"].replaced is None


def test_an_edition_may_add(rules: Path, tiny: Path) -> None:
    """A new item has nothing beside it."""
    (tiny / "terms").mkdir()
    (tiny / "terms" / "gap.yml").write_text("term: gap\ndefinition: Room between two tips.\n")
    book, problems = read_rulebook(rules, tiny)
    assert problems == []
    assert book.terms["gap"].replaced is None


def test_the_editions_own_ids_are_added_to_the_ledger(rules: Path, tiny: Path) -> None:
    """The base's ledger is not replaced."""
    (rules / "ids.yml").write_text("term:\n  cordon: {since: 2026-11-25}\n")
    (tiny / "ids.yml").write_text("term:\n  gap: {since: 2026-11-26}\n")
    book, problems = read_rulebook(rules, tiny)
    assert problems == []
    assert [entry.id for entry in book.ids] == ["cordon", "gap"]


def test_a_broken_replacement_does_not_bring_the_original_back(rules: Path, tiny: Path) -> None:
    """A local number that cannot be read must not be answered silently with the guide's own."""
    path = tiny / "values" / "tip_gap_m.yml"
    path.write_text(path.read_text().replace("follow: local", "follow: nobody"))
    book, problems = read_rulebook(rules, tiny)
    assert [problem.path for problem in problems] == ["tiny/values/tip_gap_m.yml"]
    assert "tip_gap_m" not in book.values
