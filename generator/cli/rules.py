"""How the commands read the rules: all of their problems, or a rulebook that can be answered from."""

import argparse

from generator.checks import check_rulebook
from generator.cli.places import RULES, edition_of
from generator.problems import Problem, ProblemsFound
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook


def read_all(options: argparse.Namespace) -> tuple[Rulebook, list[Problem]]:
    """The rulebook with the edition laid over it, and every problem of reading and checking, sorted."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    # Checks of half a rulebook would only say again what the reading has said.
    return rulebook, sorted(set(problems or check_rulebook(rulebook)))


def read_readable(options: argparse.Namespace) -> Rulebook:
    """The rulebook for an answer: what could not be read raises ProblemsFound; checks are left to `check`."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    if problems:
        raise ProblemsFound(problems)
    return rulebook
