"""Every combination of facts has a row.

A grower with an unforeseen vine must not meet a blank page. Each number is cut at the boundaries that the table uses, and every
combination of the stretches is looked at. A combination that no row covers is shown as the largest set of facts like it, with
the row that comes nearest. A gap that is meant is listed under `gaps` with its reason; then it is not reported.
Tables that collect weigh whatever fits: there, every sum that the weights can come to needs an outcome.

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
      - {id: K1, when: {cane_diameter_mm: under 6}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: over 6}, then: good, because: Thick wood has reserves., standing: common_practice}
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

from generator.checks.axes import Axis, Box, axes_of, box_of, everything, grown, uncovered
from generator.checks.shape import Check, at, listed
from generator.checks.side_words import box_words, side_words
from generator.problems import Problem
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision

MOST_SHOWN = 5


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each set of facts that no row and no known gap covers; at most five for a table."""
    for decision in rulebook.decisions.values():
        if decision.policy != "collect":
            axes = axes_of(rulebook, decision)
            gaps = gaps_of(axes, decision)
            for gap in gaps[:MOST_SHOWN]:
                yield at(decision, f"No row of `{decision.id}` covers {box_words(axes, gap)}.", _edit(axes, decision, gap))
            if len(gaps) > MOST_SHOWN:
                yield at(decision, f"More sets of facts without a row were found in `{decision.id}`.", "Mend the others first.")


def gaps_of(axes: list[Axis], decision: Decision) -> list[Box]:
    """Sets of facts that neither rows nor known gaps cover, each as large as it can be, apart from each other; one more
    than is shown."""
    covers = [box_of(axes, one.when) for one in (*decision.rows, *decision.gaps)]
    found: list[Box] = []
    while len(found) <= MOST_SHOWN:
        start = uncovered(everything(axes), covers)
        if start is None:
            break
        found.append(grown(start, everything(axes), axes, covers))
        covers.append(found[-1])
    return found


def _edit(axes: list[Axis], decision: Decision, gap: Box) -> str:
    """The row that misses the gap on the fewest facts, and what it would have to read."""
    other = "add a row for these facts, or list them under `gaps` with the reason"
    if not decision.rows:
        return f"{other[0].upper()}{other[1:]}."
    rows = [(row, box_of(axes, row.when)) for row in decision.rows]
    row, box = min(rows, key=lambda pair: (len(_apart(pair[1], gap)), not _wider(axes, pair[1], gap)))
    wider = _wider(axes, box, gap)
    if not wider:
        names = listed([f"`{axes[k].spec.id}`" for k in _apart(box, gap)])
        return f"Row {row.id} comes nearest; it differs in {names}. Widen it, {other}."
    place = _apart(box, gap)[0]
    was = side_words(axes[place], box[place]) if box[place] else "a cell that nothing fits"
    return f"Row {row.id} comes nearest: write `{axes[place].spec.id}: {wider}` there instead of `{was}`, {other}."


def _wider(axes: list[Axis], box: Box, gap: Box) -> str:
    """The one cell of a row that would have to change to take the gap in, as it would read; empty when that is more than
    one cell, or not one stretch."""
    apart = _apart(box, gap)
    wider = side_words(axes[apart[0]], box[apart[0]] | gap[apart[0]]) if len(apart) == 1 else ""
    return "" if ";" in wider else wider


def _apart(box: Box, gap: Box) -> list[int]:
    """The axes on which a row and a gap share nothing."""
    return [k for k, (a, b) in enumerate(zip(box, gap)) if not a & b]


CHECK = Check("completeness", "Every combination of facts has a row, or is listed as a known gap.", check)
