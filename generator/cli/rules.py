"""How the commands read the rules that they answer from."""

import argparse

from generator.cli.places import RULES, edition_of
from generator.problems import ProblemsFound
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook


def read_readable(options: argparse.Namespace) -> Rulebook:
    """The rulebook with the edition laid over it. What could not be read raises ProblemsFound; the rest is `check`'s."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    if problems:
        raise ProblemsFound(problems)
    return rulebook
