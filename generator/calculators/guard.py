"""Checks numbers of facts against what the facts allow; one function for the command line, the pages and the plan."""

import math
from dataclasses import dataclass

from generator.calculators.facts import ASSUMED, Facts
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, spec_of


@dataclass(frozen=True)
class Fault:
    """A fact whose number is not allowed, and the sentence that says what is wrong and what is allowed."""

    fact: str
    says: Say


def faults(specs: list[FactSpec], facts: Facts) -> list[Fault]:
    """The faults of all known facts, in the order of the facts. Raises ValueError when a fact has no spec."""
    found: list[Fault] = []
    for index, fact in enumerate(facts.ids):
        if facts.statuses[index] >= ASSUMED:
            found = found + faults_of(spec_of(specs, fact), facts.numbers[index])
    return found


def faults_of(spec: FactSpec, x: float) -> list[Fault]:
    """The fault of one number, or none. A number that is not finite is outside every range."""
    if not spec.low <= x <= spec.high:
        if spec.kind == "choice" or spec.kind == "yes_no":
            return [Fault(spec.id, Say("guard.choice", [], [spec.word]))]
        return [Fault(spec.id, Say("guard.range", [spec.low, spec.high], [spec.word]))]
    if spec.kind != "number" and math.floor(x) != x:
        return [Fault(spec.id, Say("guard.whole", [spec.low, spec.high], [spec.word]))]
    return []
