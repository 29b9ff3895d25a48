"""No decision waits for its own answer.

The outcome of one table may be asked by the next. When two tables ask each other, directly or by way of others, neither
can be decided.

Wrong:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: first_row
    facts: [cane_use]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down.}
      - {id: good, label: Good, says: The cane can be laid down.}
    rows:
      - {id: K1, when: {cane_use: spur}, then: thin, because: Spurs take what is thin., standing: common_practice}
      - {id: K2, when: {}, then: good, because: What is laid is good., standing: common_practice}
    examples:
      - {name: Nothing is known, facts: {}, expect: {unsettled: [thin, good]}}
    # decisions/cane_use.yml
    title: Use of the cane
    question: What is the cane for?
    why: Each cane has one use.
    stage: assess
    policy: first_row
    facts: [cane_thickness]
    outcomes:
      - {id: spur, label: Spur, says: Cut it to a spur.}
      - {id: lay, label: Lay down, says: Lay it down.}
    rows:
      - {id: U1, when: {cane_thickness: thin}, then: spur, because: Thin wood is short of reserves., standing: common_practice}
      - {id: U2, when: {}, then: lay, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: Nothing is known, facts: {}, expect: {unsettled: [spur, lay]}}

Right:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: first_row
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down.}
      - {id: good, label: Good, says: The cane can be laid down.}
    rows:
      - {id: K1, when: {cane_diameter_mm: under 6}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}
    # decisions/cane_use.yml
    title: Use of the cane
    question: What is the cane for?
    why: Each cane has one use.
    stage: assess
    policy: first_row
    facts: [cane_thickness]
    outcomes:
      - {id: spur, label: Spur, says: Cut it to a spur.}
      - {id: lay, label: Lay down, says: Lay it down.}
    rows:
      - {id: U1, when: {cane_thickness: thin}, then: spur, because: Thin wood is short of reserves., standing: common_practice}
      - {id: U2, when: {}, then: lay, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is laid down, facts: {cane_diameter_mm: 8}, expect: lay}
"""

from collections.abc import Iterator

from generator.answers.tables import feeding_order
from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each decision that, by way of what feeds it, asks itself."""
    feeds = {name: set(feeding_order(rulebook, name)) - {name} for name in rulebook.decisions}
    for decision in rulebook.decisions.values():
        for fact in decision.facts:
            if decision.id in feeds.get(fact, ()):
                sentence = f"`{decision.id}` asks `{fact}`, which itself waits for the answer of `{decision.id}`."
                yield at(decision, sentence, "Let one of the two ask the facts behind the other.")


CHECK = Check("circles", "No decision waits for its own answer.", check)
