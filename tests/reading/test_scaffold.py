"""`new KIND ID`: a starter that can be read as it is, its line in the ledger, and no id given twice."""

from pathlib import Path

import pytest

from generator.checks import check_rulebook
from generator.reading.ledger import live_ids
from generator.reading.read import read_rulebook
from generator.reading.scaffold import KINDS, free_code, new_item

NAMES = {"message": "layout.new_line", "evidence": "zz-01", "unit": "kg_per_m"}


@pytest.mark.parametrize("kind", KINDS)
def test_a_new_item_can_be_read_and_is_listed(rules: Path, kind: str) -> None:
    """Nothing is wrong with the rules after it; the item is there and in the ledger."""
    name = NAMES.get(kind, "new_thing_pct")
    new_item(rules, kind, name)
    book, problems = read_rulebook(rules)
    assert problems == []
    assert name in live_ids(book)[kind]
    assert (kind, name) in {(entry.kind, entry.id) for entry in book.ids}


@pytest.mark.parametrize("kind", KINDS)
def test_the_checks_can_look_at_a_new_item(rules: Path, kind: str) -> None:
    """Whatever they say is a problem in a file that is there, with a next step, and never stops the check."""
    new_item(rules, kind, NAMES.get(kind, "new_thing_pct"))
    for problem in check_rulebook(read_rulebook(rules)[0]):
        assert (rules.parent / problem.path).is_file() and problem.next_step, problem


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind not in ("message", "unit")])
def test_a_starter_shows_every_field(rules: Path, kind: str) -> None:
    """Each field of the schema stands in it, filled in or as a comment."""
    from generator.reading.schema import schema

    text = new_item(rules, kind, NAMES.get(kind, "new_thing_pct"))[0].read_text()
    assert [name for name in schema(kind)["properties"] if f"{name}:" not in text] in ([], ["table"])


def test_a_fact_gets_a_unit_and_a_code_from_its_id(rules: Path) -> None:
    """The unit stands in the id; the code is from the initials, or the next that is free."""
    new_item(rules, "fact", "sound_cane_m")
    fact = read_rulebook(rules)[0].facts["sound_cane_m"]
    assert (fact.unit, fact.code) == ("m", "SO")


def test_codes_run_through_the_alphabet_when_letters_are_taken() -> None:
    """The last resort is the first free pair."""
    assert free_code("ab", {"AB"}) == "AA"


@pytest.mark.parametrize(
    ("kind", "name", "told"),
    [
        ("fact", "climate", "There is a fact `climate` already"),
        ("decision", "climate", "There is a fact `climate` already"),
        ("fact", "Row Spacing", "such as `row_spacing`"),
        ("fact", "a" * 300, "It has 300 letters, and an id has at most 60"),
        ("message", f"layout.{'a' * 61}", "It has 61 letters, and an id has at most 60"),
        ("fcat", "soil", "Did you mean `fact`"),
        ("message", "layout", "is file.key"),
        ("message", "layout.plain", "There is a message `layout.plain` already"),
    ],
)
def test_an_id_that_will_not_do_is_refused(rules: Path, kind: str, name: str, told: str) -> None:
    """Nothing is written, and the reason is one line."""
    before = sorted(rules.rglob("*"))
    with pytest.raises(ValueError, match=told) as refused:
        new_item(rules, kind, name)
    assert "\n" not in str(refused.value)
    assert sorted(rules.rglob("*")) == before


def test_an_id_that_was_retired_is_refused(rules: Path) -> None:
    """It is never used again, and the line where it is listed is named."""
    (rules / "ids.yml").write_text("term:\n  arm: {since: 2026-11-25, state: retired, reason: Gone.}\n")
    with pytest.raises(ValueError, match=r"`arm` was a term once \(rules/ids.yml:2\)"):
        new_item(rules, "term", "arm")


def test_a_file_that_is_there_is_not_overwritten(rules: Path) -> None:
    """Even when it cannot be read."""
    (rules / "terms" / "arm.yml").write_text("term: [\n")
    with pytest.raises(ValueError, match="There is a file arm.yml already"):
        new_item(rules, "term", "arm")
