"""Mistakes that real authors make, each with the exact message beside it.

Each folder of tests/bad_rules/ holds `rules/` (laid over the small good rules), perhaps `edition/`, perhaps `later/` (laid over
once every id is in the ledger), and expected.txt.
`pytest --record-bad-rules` writes every expected.txt anew; look at the difference before you keep it.
"""

import re
import shutil
from pathlib import Path

import pytest

from generator.checks import CHECKS, as_text, check_rulebook
from generator.reading.ledger import add_missing
from generator.reading.read import read_rulebook

GOOD = Path(__file__).parent / "rules"
FOLDER = Path(__file__).parent.parent / "bad_rules"
CASES = sorted(path.name for path in FOLDER.iterdir() if path.is_dir())


def told(case: Path, workspace: Path) -> str:
    """Everything that reading, and checking where reading finds nothing, says of the good rules with the case laid over; as
    `check` prints it."""
    rules = shutil.copytree(GOOD, workspace / "rules")
    if (case / "rules").is_dir():
        shutil.copytree(case / "rules", rules, dirs_exist_ok=True)
    edition = case / "edition" if (case / "edition").is_dir() else None
    book, problems = read_rulebook(rules, edition)
    if not problems:
        if not (rules / "ids.yml").exists():
            add_missing(rules, "2026-11-25")
        if (case / "later").is_dir():
            shutil.copytree(case / "later", rules, dirs_exist_ok=True)
        book, _ = read_rulebook(rules, edition)
        problems = sorted(set(check_rulebook(book)))
    return f"{as_text(problems)}\n" if problems else ""


def test_the_good_rules_are_good(tmp_path: Path) -> None:
    """Nothing is told of the rules over which the mistakes are laid, so all that is told is the mistake's."""
    assert told(tmp_path / "no mistake", tmp_path) == ""


@pytest.mark.parametrize("name", CASES)
def test_a_mistake_is_told_in_these_words(name: str, tmp_path: Path, request: pytest.FixtureRequest) -> None:
    """What is printed for a mistake is what expected.txt holds, to the letter."""
    found = told(FOLDER / name, tmp_path)
    expected = FOLDER / name / "expected.txt"
    if request.config.getoption("--record-bad-rules"):
        expected.write_text(found, encoding="utf-8")
    assert found, "the mistake was not noticed"
    assert found == expected.read_text(encoding="utf-8")


def test_there_are_sixty_mistakes() -> None:
    """The collection does not shrink below sixty."""
    assert len(CASES) >= 60


def test_every_check_has_its_mistake() -> None:
    """All but `says`, which names a line of the calculators' source; its words are held where the checks are tested."""
    told_by = {name for case in CASES for name in re.findall(r"\[(\w+)\]$", (FOLDER / case / "expected.txt").read_text(), re.MULTILINE)}
    assert {check.name for check in CHECKS} - told_by == {"says"}
