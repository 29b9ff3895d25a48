"""check: every problem of the rules, with file and line and the next step; for people, for a code host, or as JSON."""

import argparse
from dataclasses import replace

from generator.checks import as_annotations, as_json, as_text, check_rulebook
from generator.cli.places import RULES, edition_of
from generator.compiler.script import compile_module, module_order
from generator.pages.looks import undrawn
from generator.problems import Problem, ProblemsFound
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook


def run(options: argparse.Namespace) -> int:
    """Print every problem; status 1 when there is any."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    # Checks of half a rulebook would only say again what the reading has said.
    problems = sorted(set(problems or check_rulebook(rulebook) or [*refusals([*rulebook.calculators, "block_plan"]), *undrawn(rulebook)]))
    if options.json:
        print(as_json(problems))
    elif options.annotations:
        print(as_annotations(problems))
    else:
        _print_for_people(rulebook, problems)
    return 1 if problems else 0


def refusals(calculators: list[str]) -> list[Problem]:
    """What the compiler refuses of the calculators and of what they import: a build would stop at it."""
    found: list[Problem] = []
    try:
        modules = module_order(calculators)
    except ProblemsFound as refused:
        modules, found = [], refused.problems
    for module in modules:
        try:
            compile_module(module)
        except ProblemsFound as refused:
            found += refused.problems
    return [replace(problem, check="") for problem in found]


def _print_for_people(rulebook: Rulebook, problems: list[Problem]) -> None:
    """Every problem, then how many there are, or that there is none."""
    if not problems:
        print(f"The rules are sound: no problem found (rules {rulebook.version}, edition {rulebook.edition.id}).")
        return
    files = len({problem.path for problem in problems})
    print(as_text(problems))
    print(f"{_count(len(problems), 'problem')} in {_count(files, 'file')}.", end=" ")
    print("A name in brackets is a check: `python3 -m generator explain NAME` tells what it wants.")


def _count(number: int, noun: str) -> str:
    """`1 file`, `2 files`."""
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
