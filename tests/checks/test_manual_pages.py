"""The manual page of every check holds what `explain` shows, and its wrong and right examples do what they say."""

import re
import shutil
from pathlib import Path

import pytest

from generator.checks import CHECKS, manual
from generator.reading.read import read_rulebook

SMALL = Path(__file__).parent / "small_rules"
EXAMPLE = re.compile(r"^(Wrong|Right):\n\n((?:    .*\n|\n)+)", re.MULTILINE)
FILE = re.compile(r"^# (\S+\.yml)$", re.MULTILINE)
GROWS = "ids.yml"


def examples(page: str) -> dict[str, dict[str, str]]:
    """`Wrong` and `Right`, each as its files by path."""
    found = {}
    for name, body in EXAMPLE.findall(page + "\n"):
        pieces = FILE.split("\n".join(line[4:] for line in body.splitlines()))
        found[name] = dict(zip(pieces[1::2], pieces[2::2]))
    return found


def problems_of(check, files: dict[str, str], folder: Path) -> list[str]:
    """What the check says of the small rules with these files laid over them; the files must read without a problem.

    The ledger is not laid over but grows, as it does for an author: what the page shows of it comes below what is there.
    """
    rules = folder / "rules"
    shutil.copytree(SMALL, rules)
    for path, text in files.items():
        (rules / path).parent.mkdir(exist_ok=True)
        before = (rules / path).read_text(encoding="utf-8") if path == GROWS else ""
        (rules / path).write_text(before + text, encoding="utf-8")
    rulebook, problems = read_rulebook(rules)
    assert problems == []
    return [str(problem) for problem in check.check(rulebook)]


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.name)
def test_the_wrong_example_is_caught(check, tmp_path):
    """What the manual page calls wrong is reported by the check."""
    assert problems_of(check, examples(manual()[check.name])["Wrong"], tmp_path)


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.name)
def test_the_right_example_is_silent(check, tmp_path):
    """What the manual page calls right is not reported by the check."""
    assert problems_of(check, examples(manual()[check.name])["Right"], tmp_path) == []


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.name)
def test_a_manual_page_begins_with_what_must_hold(check):
    """The first line is one sentence, and the description of the check is another."""
    first = manual()[check.name].splitlines()[0]
    assert first.endswith(".") and check.description.endswith(".")
