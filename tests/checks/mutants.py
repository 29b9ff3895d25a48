"""Rule mutants: a rulebook with one small mistake in one table, as a tired author might make it."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import product

from generator.answers.tables import feeding_order
from generator.checks import completeness, examples, known_gaps, overlap, reachability
from generator.checks.axes import axes_of
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Cell, Decision, Row, Span
from tests.engine import reference

FAR = 1e299
PROOFS = (examples, completeness, overlap, reachability, known_gaps)


@dataclass(frozen=True)
class Mutant:
    """One mistake: a name that stays the same while the table does, and the table with the mistake in it."""

    name: str
    decision: Decision


def mutants(rulebook: Rulebook) -> Iterator[Mutant]:
    """Every boundary moved a step either way, every outcome swapped for the next, every row taken away."""
    for decision in rulebook.decisions.values():
        if not decision.generated:
            for place, row in enumerate(decision.rows):
                for name, changed in [("removed", None), *_swapped(decision, row), *_moved(rulebook, row)]:
                    rows = decision.rows[:place] + ((changed,) if changed else ()) + decision.rows[place + 1 :]
                    yield Mutant(f"{decision.id}.{row.id}: {name}", replace(decision, rows=rows))


def survives(rulebook: Rulebook, mutant: Mutant) -> bool:
    """True when no worked example and no proof objects to the mistake."""
    changed = {**rulebook.decisions, mutant.decision.id: mutant.decision}
    needed = {name: changed[name] for name in feeding_order(rulebook, mutant.decision.id)}
    book = replace(rulebook, decisions=needed)
    return not any(True for proof in PROOFS for _ in proof.check(book))


def is_no_mistake(rulebook: Rulebook, mutant: Mutant) -> bool:
    """True when the table says the same of everything its facts can be: the same outcome by the row of the same id."""
    before = rulebook.decisions[mutant.decision.id]
    both = replace(before, rows=before.rows + mutant.decision.rows)
    points = [[tried[0] for tried in axis.tried] for axis in axes_of(rulebook, both)]
    return all(_says(before, point) == _says(mutant.decision, point) for point in product(*points))


def _says(decision: Decision, values: tuple[float, ...]) -> tuple[str, str] | None:
    """Row and outcome at a point."""
    rows = reference.applying(decision, dict(zip(decision.facts, values)))
    return (rows[0].id, rows[0].then) if rows else None


def _swapped(decision: Decision, row: Row) -> Iterator[tuple[str, Row]]:
    """The row with the outcome that comes next in the table."""
    ids = [outcome.id for outcome in decision.outcomes]
    if len(ids) > 1 and row.then:
        then = ids[(ids.index(row.then) + 1) % len(ids)]
        yield f"gives {then}", replace(row, then=then)


def _moved(rulebook: Rulebook, row: Row) -> Iterator[tuple[str, Row]]:
    """The row with one end of one span moved by the fact's step."""
    for cell in row.when:
        fact = rulebook.facts.get(cell.fact)
        if fact and fact.kind in ("number", "whole", "date"):
            for k, span in enumerate(cell.spans):
                for end in ("low", "high"):
                    for step in (-fact.step, fact.step):
                        if abs(getattr(span, end)) < FAR:
                            yield f"{cell.fact} {cell.text} {end} {step:+g}", _with_span(
                                row, cell, k, replace(span, **{end: getattr(span, end) + step})
                            )


def _with_span(row: Row, cell: Cell, place: int, span: Span) -> Row:
    """The row with one span of one cell replaced."""
    spans = cell.spans[:place] + (span,) + cell.spans[place + 1 :]
    return replace(row, when=tuple(replace(one, spans=spans) if one is cell else one for one in row.when))
