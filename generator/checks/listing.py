"""All checks in one place, in the order in which an author wants to hear of them."""

import inspect
import sys
from dataclasses import replace

from generator.checks import (
    calculator_examples,
    calculators,
    circles,
    citing,
    completeness,
    examples,
    known_gaps,
    ledger,
    messages,
    overlap,
    ranges,
    reachability,
    references,
    says,
    scopes,
    standings,
    starters,
    units,
    weighing,
)
from generator.checks.shape import Check
from generator.problems import Problem
from generator.reading.rulebook import Rulebook

FIRST = (references, circles, calculators)
THEN = (
    starters,
    ranges,
    scopes,
    units,
    messages,
    says,
    completeness,
    overlap,
    reachability,
    known_gaps,
    weighing,
    examples,
    calculator_examples,
    standings,
    citing,
    ledger,
)
CHECKS: tuple[Check, ...] = tuple(module.CHECK for module in (*FIRST, *THEN))


def check_rulebook(rulebook: Rulebook) -> list[Problem]:
    """Every problem that any check finds, sorted, each with the name of its check.

    When something named is not there, or waits for itself, only that is told: the other checks reckon with what is named.
    """
    return _found(rulebook, CHECKS[: len(FIRST)]) or _found(rulebook, CHECKS[len(FIRST) :])


def manual() -> dict[str, str]:
    """The manual page of every check by name, in the order of the checks; the first line says what must hold."""
    return {check.name: inspect.getdoc(sys.modules[check.check.__module__]) or "" for check in CHECKS}


def _found(rulebook: Rulebook, checks: tuple[Check, ...]) -> list[Problem]:
    """The problems that the checks find, sorted."""
    found = {replace(problem, check=check.name) for check in checks for problem in check.check(rulebook)}
    return sorted(found)
