"""What the tests of reading share: good rules in small, copies of them that may be spoilt, and re-recording."""

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from generator.problems import Problem
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook

GOOD = Path(__file__).parent / "rules"


@pytest.fixture(scope="session")
def good() -> Rulebook:
    """The small good rulebook; not to be changed."""
    book, problems = read_rulebook(GOOD)
    assert problems == []
    return book


@pytest.fixture
def rules(tmp_path: Path) -> Path:
    """A copy of the small good rules that a test may change."""
    return shutil.copytree(GOOD, tmp_path / "rules")


@pytest.fixture
def edit(rules: Path) -> Callable[[str, str, str], list[Problem]]:
    """edit(file, old, new): replaces text in a file of the copy, reads it, and gives the problems."""

    def change(file: str, old: str, new: str) -> list[Problem]:
        text = (rules / file).read_text()
        assert old in text
        (rules / file).write_text(text.replace(old, new, 1))
        return read_rulebook(rules)[1]

    return change
