"""What to ask next: the unknown fact that leaves the fewest outcomes."""

from generator.calculators.engine import candidates, cell_on, counts, outcome_of, ruled_out_by, states_of
from generator.calculators.facts import ASSUMED, NOT_ASKED, Facts, place
from generator.calculators.tables import NO_OUTCOME, Column, Decided, Table, decided_of, table_of


def ask_next(tables: list[Table], facts: Facts, decided: list[Decided], table: str) -> str:
    """The unknown base fact that leaves the fewest outcomes of the table on average; "" when there is none to ask.

    A fact that alone leaves no outcome out comes last; then what was asked already and is not known comes after what was not
    asked yet; ties go to the fact the table names first. A derived fact passes the question on to its own table.
    """
    name = table
    for _ in range(len(tables)):
        asked = _best_column(table_of(tables, name), facts, decided)
        if asked == NO_OUTCOME:
            return ""
        column = table_of(tables, name).columns[asked]
        if not column.derived:
            return column.fact
        name = column.fact
    return ""


def _best_column(table: Table, facts: Facts, decided: list[Decided]) -> int:
    """The place of the open column with the smallest mean number of outcomes over its points; -1 when none is open."""
    points = candidates(table, facts, decided)
    alive = [row for row in table.rows if counts(table, row) and ruled_out_by(row, points) == NO_OUTCOME]
    now = _outcomes_left(table, points)
    best = NO_OUTCOME
    smallest = 0.0
    fresh = False
    telling = False
    for c, column in enumerate(table.columns):
        matters = any(cell_on(row, c) != NO_OUTCOME for row in alive)
        if matters and _is_open(column, facts, decided):
            mean = _mean_left(table, points, c)
            tells = mean < now
            new = _not_asked_yet(column, facts, decided)
            equal = tells == telling and new == fresh
            if best == NO_OUTCOME or (tells and not telling) or (tells == telling and new and not fresh) or (equal and mean < smallest):
                best = c
                smallest = mean
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


def _is_open(column: Column, facts: Facts, earlier: list[Decided]) -> bool:
    """True when asking could still narrow the column."""
    if column.derived:
        feeder = decided_of(earlier, column.fact)
        return not feeder.settled and len(feeder.open) > 0
    return facts.statuses[place(facts, column.fact)] < ASSUMED


def _not_asked_yet(column: Column, facts: Facts, earlier: list[Decided]) -> bool:
    """True when the fact, or one behind the derived fact, was not asked yet."""
    if column.derived:
        return any(facts.statuses[place(facts, name)] == NOT_ASKED for name in decided_of(earlier, column.fact).open)
    return facts.statuses[place(facts, column.fact)] == NOT_ASKED
