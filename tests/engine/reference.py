"""A slow engine, written apart from the real one and straight from the rules in words. Shares no code with it.

Unknown facts are tried at every half step of their range; a derived fact at every outcome that its own table still allows.
"""

from dataclasses import dataclass
from itertools import product

from generator.reading.rulebook import Rulebook
from generator.reading.tables import Cell, Decision, Row


@dataclass
class Said:
    """What a table says: the outcomes still possible (ids), whether something is not covered, the rows that may apply."""

    outcomes: set[str]
    gap: bool
    rows: set[str]

    @property
    def settled(self) -> bool:
        """One outcome and nothing uncovered."""
        return len(self.outcomes) == 1 and not self.gap


def grid(book: Rulebook, fact: str) -> list[float]:
    """Every value worth trying: halves for numbers, whole steps for everything else."""
    one = book.facts[fact]
    steps = 2 if one.kind == "number" else 1
    return [k / steps for k in range(int(one.high) * steps + 1)]


def fits(cell: Cell, x: float) -> bool:
    """True when x is in the cell."""
    for span in cell.spans:
        if span.low <= x <= span.high and (x != span.low or span.low_in) and (x != span.high or span.high_in):
            return True
    return False


def applying(decision: Decision, point: dict[str, float]) -> list[Row]:
    """The rows whose every cell fits."""
    return [row for row in decision.rows if all(fits(cell, point[cell.fact]) for cell in row.when)]


def one_outcome(decision: Decision, rows: list[Row]) -> tuple[str | None, list[Row]]:
    """The outcome of the rows that apply, and the rows that count for it."""
    if decision.policy == "collect":
        total = sum(row.weight for row in rows)
        for outcome in decision.outcomes:
            if any(
                s.low <= total <= s.high and (total != s.low or s.low_in) and (total != s.high or s.high_in)
                for s in outcome.sums
            ):
                return outcome.id, rows
        return None, rows
    return (rows[0].then, rows[:1]) if rows else (None, [])


def say(book: Rulebook, name: str, known: dict[str, float]) -> Said:
    """What the table says when these facts are known."""
    decision = book.decisions[name]
    choices: list[list[float]] = []
    said = Said(set(), False, set())
    for fact in decision.facts:
        if fact in book.decisions:
            fed = say(book, fact, known)
            said.gap = said.gap or fed.gap
            ids = [outcome.id for outcome in book.decisions[fact].outcomes]
            choices.append([float(ids.index(outcome)) for outcome in sorted(fed.outcomes)])
        else:
            choices.append([known[fact]] if fact in known else grid(book, fact))
    for values in product(*choices):
        outcome, rows = one_outcome(decision, applying(decision, dict(zip(decision.facts, values))))
        said.rows |= {row.id for row in rows}
        if outcome is None:
            said.gap = True
        else:
            said.outcomes.add(outcome)
    return said
