"""What would change a decision: each fact it rests on, changed alone to the nearest value that flips the answer.

The values to try are made at build: both sides of every boundary of every reachable table, on the fact's step and inside its
range, so that what is shown really flips. Every flip is verified by deciding again. Facts that the answer does not rest on
cannot flip it.
"""

from dataclasses import dataclass

from generator.calculators.engine import decide_again, decide_all
from generator.calculators.facts import Facts, place
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, spec_of
from generator.calculators.tables import NO_OUTCOME, Decided, Table, decided_of, table_of

LASTING: str = "block"


@dataclass(frozen=True)
class Candidates:
    """The values of one base fact worth trying, ascending."""

    fact: str
    numbers: list[float]


@dataclass(frozen=True)
class Change:
    """A fact, the number (SI) it would need, the id of the outcome that this would give, and the sentence that says so."""

    fact: str
    number: float
    outcome: str
    says: Say


def would_change(
    tables: list[Table], specs: list[FactSpec], facts: Facts, candidates: list[Candidates], decision: str
) -> list[Change]:
    """The flips of a settled decision; none while it is not settled.

    What holds for one winter can still be found out or chosen, so it comes first, in the order in which the answer rests on it. What
    stays with the block comes after it, the other way round: the walk begins with what can be changed least, the form of the vines.
    A number or date brings its nearest flip; a choice brings one flip for each other outcome it can give.
    """
    now = decide_all(tables, facts)
    one = decided_of(now, decision)
    found: list[Change] = []
    if one.settled:
        for fact in _in_reach_first(specs, one.rests_on):
            found = found + _flips(tables, spec_of(specs, fact), facts, numbers_of(candidates, fact), now, decision)
    return found


def _in_reach_first(specs: list[FactSpec], names: list[str]) -> list[str]:
    """The facts that do not stay with the block, in their order, then those that do, in the reverse of it."""
    lasting: list[str] = []
    for name in names:
        if spec_of(specs, name).lifetime == LASTING:
            lasting = [name] + lasting
    return [name for name in names if name not in lasting] + lasting


def numbers_of(candidates: list[Candidates], fact: str) -> list[float]:
    """The values worth trying for a fact; none when it has no entry."""
    for one in candidates:
        if one.fact == fact:
            return one.numbers
    return []


def with_number(facts: Facts, fact: str, x: float) -> Facts:
    """The facts with another number for one of them, its status kept."""
    index = place(facts, fact)
    return Facts(facts.ids, facts.numbers[:index] + [x] + facts.numbers[index + 1 :], facts.statuses)


def _flips(
    tables: list[Table], spec: FactSpec, facts: Facts, numbers: list[float], decided: list[Decided], decision: str
) -> list[Change]:
    """The flips of one fact: the nearest value first; for a choice one for each outcome in the order of the choices."""
    table = table_of(tables, decision)
    now = facts.numbers[place(facts, spec.id)]
    chosen = spec.kind == "choice" or spec.kind == "yes_no"
    tried = numbers if chosen else sorted(numbers, key=lambda x: abs(x - now))
    found: list[Change] = []
    seen = [NO_OUTCOME, decided_of(decided, decision).outcome]
    for x in tried:
        if chosen or len(found) == 0:
            again = decide_again(tables, with_number(facts, spec.id, x), decided, spec.id)
            other = decided_of(again, decision).outcome
            if other not in seen:
                seen.append(other)
                says = Say("answers.would_change", [x, now], [spec.word, table.outcomes[other].word])
                found.append(Change(spec.id, x, table.outcomes[other].id, says))
    return found
