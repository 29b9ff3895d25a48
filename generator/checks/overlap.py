"""In a table of the policy `one_row` no two rows fit the same facts.

Two rows that fit at once leave the answer to chance, or hide that one of them is wrong. Where the order of the rows is meant to
decide, the policy is `first_row`.

Wrong:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: one_row
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down.}
      - {id: good, label: Good, says: The cane can be laid down.}
    rows:
      - {id: K1, when: {cane_diameter_mm: up to 6}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: 6 or more}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}

Right:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: one_row
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down.}
      - {id: good, label: Good, says: The cane can be laid down.}
    rows:
      - {id: K1, when: {cane_diameter_mm: under 6}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: 6 or more}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}
"""

from collections.abc import Iterator
from itertools import combinations

from generator.checks.axes import axes_of, box_of, common
from generator.checks.shape import Check, at
from generator.checks.side_words import box_words
from generator.problems import Problem
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each pair of rows that share facts, at the later row."""
    for decision in rulebook.decisions.values():
        if decision.policy == "one_row" and not decision.generated:
            axes = axes_of(rulebook, decision)
            boxes = [(row, box_of(axes, row.when)) for row in decision.rows]
            for (first, a), (second, b) in combinations(boxes, 2):
                shared = common(a, b)
                if shared:
                    sentence = f"Rows {first.id} and {second.id} both fit {box_words(axes, shared)}."
                    step = "Narrow one of them; if the first that fits is to decide, write `policy: first_row`."
                    yield at(decision, sentence, step, second.line)


CHECK = Check("overlap", "In a table where one row decides, no two rows fit the same facts.", check)
