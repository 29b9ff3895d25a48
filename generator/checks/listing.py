"""All checks in one place, in the order in which an author wants to hear of them."""

import inspect
import sys

from generator.checks import (
    calculator_examples,
    calculators,
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
    standings,
    units,
    weighing,
)
from generator.checks.shape import Check
from generator.problems import Problem
from generator.reading.rulebook import Rulebook

CHECKS: tuple[Check, ...] = tuple(
    module.CHECK
    for module in (
        references,
        ranges,
        units,
        messages,
        says,
        calculators,
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
)


def check_rulebook(rulebook: Rulebook) -> list[Problem]:
    """Every problem that any check finds, sorted, each with the name of its check. When references lead nowhere, only those."""
    for group in (CHECKS[:1], CHECKS[1:]):
        found = [_named(problem, check.name) for check in group for problem in check.check(rulebook)]
        if found:
            break
    return sorted(set(found))


def manual() -> dict[str, str]:
    """The manual page of every check by name, in the order of the checks; the first line says what must hold."""
    return {check.name: inspect.getdoc(sys.modules[check.check.__module__]) or "" for check in CHECKS}


def _named(problem: Problem, check: str) -> Problem:
    """The problem, carrying the name of the check that found it."""
    return Problem(problem.path, problem.line, problem.sentence, problem.next_step, check)
