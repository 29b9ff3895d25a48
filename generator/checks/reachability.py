"""Every row can be reached, and every outcome is given by a row.

A row that can never apply is advice nobody will read: the rows before it take everything, or one of its cells lies outside what
its fact can be. An outcome without a row is a promise that the table does not keep.

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
      - {id: K1, when: {cane_diameter_mm: under 8}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: under 6}, then: thin, because: This is a mere shoot., standing: common_practice}
      - {id: K3, when: {}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}

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
      - {id: K2, when: {cane_diameter_mm: under 6}, then: thin, because: This is a mere shoot., standing: common_practice}
      - {id: K1, when: {cane_diameter_mm: under 8}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K3, when: {}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A pencil is good, facts: {cane_diameter_mm: 8}, expect: good}
"""

from collections.abc import Iterator

from generator.checks.axes import Axis, Box, axes_of, box_of, common, uncovered
from generator.checks.shape import Check, at, listed
from generator.problems import Problem
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each row that can never apply and each outcome that no row gives."""
    for decision in rulebook.decisions.values():
        axes = axes_of(rulebook, decision)
        boxes = [box_of(axes, row.when) for row in decision.rows]
        yield from _empty(axes, decision, boxes)
        if decision.policy == "first_row":
            yield from _shadowed(decision, boxes)
        if decision.policy != "collect" and not decision.generated:
            given = {row.then for row in decision.rows}
            for outcome in decision.outcomes:
                if outcome.id not in given:
                    yield at(
                        decision,
                        f"No row gives the outcome `{outcome.id}`.",
                        "Take the outcome away, or write the row that gives it.",
                    )


def _empty(axes: list[Axis], decision: Decision, boxes: list[Box]) -> Iterator[Problem]:
    """Rows with a cell that lies outside what its fact can be."""
    for row, box in zip(decision.rows, boxes):
        for axis, mask in zip(axes, box):
            if not mask:
                cell = next(cell for cell in row.when if cell.fact == axis.spec.id)
                sentence = f"Row {row.id} can never apply: no value of `{cell.fact}` fits `{cell.text}`."
                yield at(decision, sentence, "Look at the range of the fact, and at this cell.", cell.line)


def _shadowed(decision: Decision, boxes: list[Box]) -> Iterator[Problem]:
    """Rows whose facts are all taken by rows before them."""
    for place, (row, box) in enumerate(zip(decision.rows, boxes)):
        before = [(earlier.id, other) for earlier, other in zip(decision.rows, boxes[:place]) if common(other, box)]
        if all(box) and before and uncovered(box, [other for _, other in before]) is None:
            takers = _enough(box, before)
            take = f"row {takers[0]} before it takes" if len(takers) == 1 else f"rows {listed(takers)} before it take"
            step = "Move it up, narrow what stands before it, or take it away."
            yield at(decision, f"Row {row.id} can never apply: {take} all its facts.", step, row.line)


def _enough(box: Box, before: list[tuple[str, Box]]) -> list[str]:
    """Of the rows before, only those that are needed to take everything."""
    kept = list(before)
    for one in before:
        without = [other for other in kept if other is not one]
        if without and uncovered(box, [other for _, other in without]) is None:
            kept = without
    return [name for name, _ in kept]


CHECK = Check("reachability", "Every row can apply, and every outcome is given by some row.", check)
