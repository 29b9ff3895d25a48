"""A table that collects has an outcome for every sum that its weights can come to.

Every row that fits adds its weight; the sign is the side it speaks for. The outcomes' `sum` cells say which sums give
which answer. They must not overlap and must leave no possible sum without an answer, so that the evidence always says
something, if only "either"; and each must have a sum that is possible. A row of weight 0 is said and counts for neither side;
some row must count. In the example, no row speaks of a cane of 7 mm, so its sum is 0.

Wrong:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: collect
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down., sum: under 0}
      - {id: good, label: Good, says: The cane can be laid down., sum: over 0}
    rows:
      - {id: K1, when: {cane_diameter_mm: under 6}, weight: -1, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: 8 or more}, weight: 1, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}

Right:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: collect
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down., sum: under 0}
      - {id: good, label: Good, says: The cane can be laid down., sum: 0 or more}
    rows:
      - {id: K1, when: {cane_diameter_mm: under 6}, weight: -1, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: 8 or more}, weight: 1, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}
"""

from collections.abc import Iterator
from itertools import combinations

from generator.answers.tables import table
from generator.calculators.engine import outcome_of, states_of
from generator.calculators.tables import NO_OUTCOME, within
from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """Problems of every table that collects."""
    for decision in rulebook.decisions.values():
        if decision.policy == "collect":
            if any(row.weight for row in decision.rows):
                yield from _sums(rulebook, decision)
            else:
                yield at(decision, "No row counts for either side: all weights are 0.", "Give what speaks for a side a weight.")


def _sums(rulebook: Rulebook, decision: Decision) -> Iterator[Problem]:
    """Sums without an outcome, outcomes without a sum, and sums with two."""
    made = table(rulebook, decision)
    states = states_of(made, [column.points for column in made.columns])
    totals = {state.total: outcome_of(made, state) for state in states}
    bare = sorted(total for total, outcome in totals.items() if outcome == NO_OUTCOME)
    if bare:
        words = ", ".join(f"{total:g}" for total in bare)
        yield at(decision, f"The weights can come to {words}, and no outcome has that sum.", "Widen the `sum` of an outcome.")
    for outcome in made.outcomes:
        if not any(within(outcome.sums, total) for total in totals):
            sentence = f"No sum that the weights can come to gives `{outcome.id}`."
            yield at(decision, sentence, "Widen its `sum`, or take the outcome away.")
    for first, second in combinations(made.outcomes, 2):
        both = sorted(total for total in totals if within(first.sums, total) and within(second.sums, total))
        if both:
            yield at(
                decision, f"The sum {both[0]:g} gives both `{first.id}` and `{second.id}`.", "Narrow the `sum` of one of them."
            )


CHECK = Check("weighing", "In a table that collects, every possible sum of weights has exactly one outcome.", check)
