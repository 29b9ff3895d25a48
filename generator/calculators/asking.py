"""What to ask next: the unknown fact that leaves the fewest outcomes."""

import math

from generator.calculators.engine import candidates, cell_on, counts, outcome_of, ruled_out_by, states_of
from generator.calculators.facts import ASSUMED, NOT_ASKED, Facts, place
from generator.calculators.tables import NO_OUTCOME, Column, Decided, Table, decided_of


def ask_next(tables: list[Table], facts: Facts, decided: list[Decided], table: str) -> str:
    """The unknown base fact that leaves the fewest outcomes of the table on average; "" when there is none to ask.

    A fact that alone leaves no outcome out comes last; then what was asked already and is not known comes after what was not
    asked yet. Averages are compared in whole outcomes: the answers to a question are not equally likely, so less than one tells
    nothing. Ties go to the fact the table names first, in the order of a walk through the block. A derived fact stands for what its
    own table would ask. What is worked out from other facts is never asked.
    """
    asks: list[str] = []
    for one in tables:
        behind = [_asked_for(column, tables, facts, asks) for column in one.columns]
        best = NO_OUTCOME if decided_of(decided, one.id).settled else _best_column(one, facts, decided, behind)
        asks.append("" if best == NO_OUTCOME else behind[best])
        if one.id == table:
            return asks[len(asks) - 1]
    return ""


def to_work_out(tables: list[Table], one: Decided) -> str:
    """The first fact that a table lacks and that nobody can be asked for, since it is worked out from others; "" when there is none."""
    for fact in one.open:
        if any(any(column.computed and column.fact == fact for column in table.columns) for table in tables):
            return fact
    return ""


def _asked_for(column: Column, tables: list[Table], facts: Facts, asks: list[str]) -> str:
    """The fact to ask for a column: itself, or what its own table would ask; "" where asking cannot narrow it. asks holds what the
    first of the tables would ask."""
    if column.derived:
        for table, fact in zip(tables[: len(asks)], asks):
            if table.id == column.fact:
                return fact
        return ""
    asked = not column.computed and facts.statuses[place(facts, column.fact)] < ASSUMED
    return column.fact if asked else ""


def _best_column(table: Table, facts: Facts, decided: list[Decided], behind: list[str]) -> int:
    """The place of the open column with the smallest mean number of outcomes over its points; -1 when none is open. behind holds
    the fact to ask for each column, "" where it is not open."""
    points = candidates(table, facts, decided)
    alive = [row for row in table.rows if counts(table, row) and ruled_out_by(row, points) == NO_OUTCOME]
    now = _outcomes_left(table, points)
    best = NO_OUTCOME
    smallest = 0
    fresh = False
    telling = False
    for c, fact in enumerate(behind):
        if fact != "" and any(cell_on(row, c) != NO_OUTCOME for row in alive):
            mean = _mean_left(table, points, c)
            whole = math.floor(mean)
            tells = mean < float(now)
            new = facts.statuses[place(facts, fact)] == NOT_ASKED
            equal = tells == telling and new == fresh
            if best == NO_OUTCOME or (tells and not telling) or (tells == telling and new and not fresh) or (equal and whole < smallest):
                best = c
                smallest = whole
                fresh = new
                telling = tells
    return best


def _mean_left(table: Table, points: list[list[float]], column: int) -> float:
    """The mean number of different outcomes (a gap counts as one) when the column is fixed at each of its points in turn."""
    if len(points[column]) == 0:
        return 0.0
    left = 0
    for point in points[column]:
        left += _outcomes_left(table, points[:column] + [[point]] + points[column + 1 :])
    return left / len(points[column])


def _outcomes_left(table: Table, points: list[list[float]]) -> int:
    """How many different outcomes (a gap counts as one) are possible."""
    outcomes = [outcome_of(table, state) for state in states_of(table, points)]
    return len([k for k in range(NO_OUTCOME, len(table.outcomes)) if k in outcomes])
