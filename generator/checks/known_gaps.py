"""A known gap is still a gap, and its reason still stands.

When rows have come to cover what was listed under `gaps`, the list would hide the next real gap. So a gap that is no
longer needed is reported.

Wrong:

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
    gaps:
      - {when: {cane_diameter_mm: over 20}, reason: Nobody has measured such canes.}

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
      - {id: K2, when: {cane_diameter_mm: 6 to 20}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}
    gaps:
      - {when: {cane_diameter_mm: over 20}, reason: Nobody has measured such canes.}
"""

from collections.abc import Iterator

from generator.checks.axes import axes_of, box_of, uncovered
from generator.checks.shape import Check, at
from generator.checks.side_words import box_words
from generator.problems import Problem
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each known gap that rows cover altogether."""
    for decision in rulebook.decisions.values():
        axes = axes_of(rulebook, decision)
        rows = [box_of(axes, row.when) for row in decision.rows]
        for gap in decision.gaps:
            if uncovered(box_of(axes, gap.when), rows) is None:
                sentence = f"The known gap {box_words(axes, box_of(axes, gap.when))} is no longer needed: rows cover all of it."
                yield at(decision, sentence, "Take it out of `gaps`.", gap.line)


CHECK = Check("known_gaps", "A known gap is not covered by rows.", check)
