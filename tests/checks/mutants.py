"""Rule mutants: a rulebook with one small mistake in one table, as a tired author might make it."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import product

from generator.answers.tables import column_spec, feeding_order
from generator.calculators.specs import FactSpec
from generator.checks import completeness, examples, known_gaps, overlap, reachability, weighing
from generator.checks.axes import axes_of
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Cell, Decision, Outcome, Row, Span
from tests.engine import reference

FAR = 1e299
PROOFS = (examples, completeness, overlap, reachability, known_gaps, weighing)


@dataclass(frozen=True)
class Mutant:
    """One mistake: a name that stays the same while the table does, and the table with the mistake in it."""

    name: str
    decision: Decision


def mutants(rulebook: Rulebook) -> Iterator[Mutant]:
    """Every boundary moved a step either way, every choice changed for the next, every outcome swapped for the next, every row
    taken away; where rows are weighed, every weight and every sum moved by one, and every sign turned."""
    for decision in rulebook.decisions.values():
        if not decision.generated:
            for place, row in enumerate(decision.rows):
                for name, changed in [("removed", None), *_swapped(decision, row), *_moved(rulebook, row)]:
                    rows = decision.rows[:place] + ((changed,) if changed else ()) + decision.rows[place + 1 :]
                    yield Mutant(f"{decision.id}.{row.id}: {name}", replace(decision, rows=rows))
            for name, outcomes in _other_sums(decision):
                yield Mutant(f"{decision.id}: {name}", replace(decision, outcomes=outcomes))


def survives(rulebook: Rulebook, mutant: Mutant) -> bool:
    """True when no worked example and no proof objects to the mistake."""
    own = mutant.decision.id
    feeding = {name: rulebook.decisions[name] for name in feeding_order(rulebook, own) if name != own}
    # The table itself first: most mistakes are told at its first examples.
    book = replace(rulebook, decisions={own: mutant.decision, **feeding})
    return not any(True for proof in PROOFS for _ in proof.check(book))


def is_no_mistake(rulebook: Rulebook, mutant: Mutant) -> bool:
    """True when the table says the same of everything its facts can be: the same outcome by the row of the same id; where rows
    are weighed, the same rows of the same weights."""
    before, after = rulebook.decisions[mutant.decision.id], mutant.decision
    if before.outcomes != after.outcomes:
        return False
    if before.policy == "collect":
        # What the rows add that both have is the same: only the others can make a difference.
        before, after = _without(before, after), _without(after, before)
    both = replace(before, rows=before.rows + after.rows)
    asked = [axis for axis in axes_of(rulebook, both) if any(cell.fact == axis.spec.id for row in both.rows for cell in row.when)]
    points = product(*([tried[0] for tried in axis.tried] for axis in asked))
    named = ({axis.spec.id: x for axis, x in zip(asked, values)} for values in points)
    return all(_says(before, point) == _says(after, point) for point in named)


def _without(decision: Decision, other: Decision) -> Decision:
    """The table with only those rows that the other has not."""
    return replace(decision, rows=tuple(row for row in decision.rows if row not in other.rows))


def _says(decision: Decision, point: dict[str, float]) -> list[tuple]:
    """Row, outcome and weight of what counts at a point."""
    rows = reference.applying(decision, point)
    return [(row.id, row.then, row.weight) for row in (rows if decision.policy == "collect" else rows[:1])]


def _swapped(decision: Decision, row: Row) -> Iterator[tuple[str, Row]]:
    """The row with the outcome that comes next in the table, or with another weight."""
    ids = [outcome.id for outcome in decision.outcomes]
    if decision.policy == "collect":
        for weight in sorted({row.weight - 1, row.weight + 1, -row.weight} - {row.weight}):
            yield f"weighs {weight:g}", replace(row, weight=weight)
    elif len(ids) > 1:
        then = ids[(ids.index(row.then) + 1) % len(ids)]
        yield f"gives {then}", replace(row, then=then)


def _other_sums(decision: Decision) -> Iterator[tuple[str, tuple[Outcome, ...]]]:
    """The outcomes with one boundary between their sums moved by one, on both its sides."""
    ends = {end for one in decision.outcomes for span in one.sums for end in (span.low, span.high) if abs(end) < FAR}
    for end in sorted(ends):
        for step in (-1, 1):
            at = {end: end + step}
            moved = [
                replace(one, sums=tuple(replace(s, low=at.get(s.low, s.low), high=at.get(s.high, s.high)) for s in one.sums))
                for one in decision.outcomes
            ]
            yield f"sum {end:g} {step:+g}", tuple(moved)


def _moved(rulebook: Rulebook, row: Row) -> Iterator[tuple[str, Row]]:
    """The row with one end of one span moved by the fact's step, or with one choice changed for the next."""
    for cell in row.when:
        spec = column_spec(rulebook, cell.fact)
        for k, span in enumerate(cell.spans):
            for name, other in _next_choice(spec, cell, span) if spec.choices else _ends_moved(spec, span):
                yield f"{cell.fact} {cell.text} {name}", _with_span(row, cell, k, other)


def _next_choice(spec: FactSpec, cell: Cell, span: Span) -> Iterator[tuple[str, Span]]:
    """The span of one choice as that of the next choice, unless the cell has it already."""
    other = (span.low + 1) % len(spec.choices)
    if not any(one.low == other for one in cell.spans):
        yield f"with {spec.choices[int(other)]}", Span(other, True, other, True)


def _ends_moved(spec: FactSpec, span: Span) -> Iterator[tuple[str, Span]]:
    """The span with one end moved by the fact's step."""
    for end in ("low", "high"):
        for step in (-spec.step, spec.step):
            if abs(getattr(span, end)) < FAR:
                yield f"{end} {step:+g}", replace(span, **{end: getattr(span, end) + step})


def _with_span(row: Row, cell: Cell, place: int, span: Span) -> Row:
    """The row with one span of one cell replaced."""
    spans = cell.spans[:place] + (span,) + cell.spans[place + 1 :]
    return replace(row, when=tuple(replace(one, spans=spans) if one is cell else one for one in row.when))
