"""Where the commands find the rules, and how a sound rulebook is had from them."""

import argparse
from pathlib import Path

from generator.checks import check_rulebook
from generator.problems import Problem, ProblemsFound
from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook
from generator.setting_up.environment import ROOT
from generator.setting_up.telling import Stop

PROJECT = Path(ROOT)
RULES = PROJECT / "rules"


def edition_of(options: argparse.Namespace) -> Path | None:
    """The folder of the edition that --edition names, or None. Raises Stop when there is no such folder."""
    if not options.edition:
        return None
    folder = Path(options.edition).absolute()
    if not folder.is_dir():
        raise Stop(f"--edition: there is no folder {options.edition}. Give the folder that holds edition.yml.", 2)
    return folder


def read_all(options: argparse.Namespace) -> tuple[Rulebook, list[Problem]]:
    """The rulebook with the edition laid over it, and every problem of reading and checking, sorted."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    # Half a rulebook would only make the checks repeat what the reading has said.
    return rulebook, sorted(set(problems)) if problems else sorted(set(check_rulebook(rulebook)))


def read_readable(options: argparse.Namespace) -> Rulebook:
    """The rulebook for an answer: what could not be read raises ProblemsFound; checks are left to `check`."""
    rulebook, problems = read_rulebook(RULES, edition_of(options))
    if problems:
        raise ProblemsFound(problems)
    return rulebook
