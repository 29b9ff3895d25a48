"""check: every problem of the rules, with file and line and the next step."""

import argparse

from generator.checks import check_rulebook
from generator.cli.places import RULES, edition_of
from generator.reading.read import read_rulebook


def run(options: argparse.Namespace) -> int:
    """Print every problem and their number; status 1 when there is any."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    # Checks of half a rulebook would only say again what the reading has said.
    problems = sorted(set(problems or check_rulebook(rulebook)))
    for problem in problems:
        print(problem)
    if problems:
        files = len({problem.path for problem in problems})
        print(f"{_count(len(problems), 'problem')} in {_count(files, 'file')}.")
        return 1
    print(f"The rules are sound: no problem found (rules {rulebook.version}, edition {rulebook.edition.id}).")
    return 0


def _count(number: int, noun: str) -> str:
    """`1 file`, `2 files`."""
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
