"""The engine: decides tables on facts of which some may be unknown.

A table is decided by looking at all that is still possible: a known fact stands for itself, an unknown one for one
point of every stretch that the table tells apart, a derived fact for the outcomes its own table still allows. The
table is settled when one outcome remains. A table that collects is looked at by the sums that its weights can come to, so
that many unknown facts stay little work. The records are in tables.py, the next question in asking.py.
"""

import math
from dataclasses import dataclass

from generator.calculators.facts import ASSUMED, Facts, place, weakest
from generator.calculators.tables import COLLECT, FIRST_ROW, NO_OUTCOME, ONE_ROW, Cell, Decided, Row, Table, decided_of, within


@dataclass(frozen=True)
class State:
    """What is possible after some columns: the rows that fit so far, as ascending places. In a table that collects, rows that
    ask nothing more have left them, and their weights are in total (0 in every other table)."""

    rows: list[int]
    total: float


def decide_all(tables: list[Table], facts: Facts) -> list[Decided]:
    """Decides every table; a table that feeds another stands before it. Raises ValueError when the order is wrong."""
    decided: list[Decided] = []
    for table in tables:
        decided.append(decide(table, facts, decided))
    return decided


def decide_again(tables: list[Table], facts: Facts, before: list[Decided], fact: str) -> list[Decided]:
    """Decides again what one changed fact can move: the tables that ask it or ask one decided again. The others stand as before."""
    moved = [fact]
    decided: list[Decided] = []
    for k, table in enumerate(tables):
        if any(column.fact in moved for column in table.columns):
            moved.append(table.id)
            decided.append(decide(table, facts, decided))
        else:
            decided.append(before[k])
    return decided


def decide(table: Table, facts: Facts, earlier: list[Decided]) -> Decided:
    """Decides one table on the facts and on the tables that feed it."""
    points = candidates(table, facts, earlier)
    states = states_of(table, points)
    outcomes = [outcome_of(table, state) for state in states]
    bare = [c for c, column in enumerate(table.columns) if column.derived and decided_of(earlier, column.fact).gap]
    gap = NO_OUTCOME in outcomes or len(bare) > 0
    possible = [k for k in range(len(table.outcomes)) if k in outcomes]
    settled = len(possible) == 1 and not gap
    rows = _rows_left(table, points, states)
    columns = _resting_columns(table, points, rows, bare, gap)
    rests_on = _base_facts(table, columns, facts, earlier)
    return Decided(
        table=table.id,
        settled=settled,
        outcome=possible[0] if settled else NO_OUTCOME,
        possible=possible,
        gap=gap,
        rows=rows,
        rests_on=rests_on,
        uses=[table.columns[c].fact for c in columns if table.columns[c].derived],
        open=_open_facts(table, facts, earlier),
        status=weakest(facts, rests_on),
    )


def states_of(table: Table, points: list[list[float]]) -> list[State]:
    """The different states possible at the end, when column c may take any of points[c].

    They are grown column by column and equal ones kept once, so that the work does not grow with the number of combinations.
    """
    states = [State([r for r in range(len(table.rows))], 0.0)]
    for column in range(len(table.columns)):
        grown: list[State] = []
        for point in points[column]:
            out = [r for r, row in enumerate(table.rows) if not _fits(row, column, point)]
            for state in states:
                left = _after(table, column, [r for r in state.rows if r not in out], state.total)
                if not any(_same(one, left) for one in grown):
                    grown.append(left)
        states = grown
    return states


def outcome_of(table: Table, state: State) -> int:
    """The outcome's place for a state at the end; -1 when no row (no sum) covers it."""
    if table.policy == COLLECT:
        for k, outcome in enumerate(table.outcomes):
            if within(outcome.sums, state.total):
                return k
        return NO_OUTCOME
    return table.rows[state.rows[0]].outcome if len(state.rows) > 0 else NO_OUTCOME


def candidates(table: Table, facts: Facts, earlier: list[Decided]) -> list[list[float]]:
    """For each column the points it may still take."""
    found: list[list[float]] = []
    for column in table.columns:
        if column.derived:
            found.append([float(k) for k in decided_of(earlier, column.fact).possible])
        else:
            index = place(facts, column.fact)
            known = facts.statuses[index] >= ASSUMED
            found.append([facts.numbers[index]] if known else column.points)
    return found


def cell_on(row: Row, column: int) -> int:
    """The place of the row's cell on a column; -1 when the row takes any."""
    for index, cell in enumerate(row.cells):
        if cell.column == column:
            return index
    return NO_OUTCOME


def _fits(row: Row, column: int, point: float) -> bool:
    """True when the row allows the point on the column."""
    index = cell_on(row, column)
    return True if index == NO_OUTCOME else within(row.cells[index].spans, point)


def _after(table: Table, column: int, rows: list[int], total: float) -> State:
    """The state after a column with the rows that fit it. A first-row table cannot reach the rows behind one that asks nothing
    beyond the column; a table that collects counts such rows at once."""
    if table.policy == COLLECT:
        counted = [table.rows[r].weight for r in rows if _asks_no_more(table.rows[r], column)]
        return State([r for r in rows if not _asks_no_more(table.rows[r], column)], total + math.fsum(counted))
    if table.policy == FIRST_ROW:
        for k, r in enumerate(rows):
            if _asks_no_more(table.rows[r], column):
                return State(rows[: k + 1], total)
    return State(rows, total)


def _asks_no_more(row: Row, column: int) -> bool:
    """True when the row has no cell beyond the column."""
    return all(cell.column <= column for cell in row.cells)


def _same(a: State, b: State) -> bool:
    """True when two states are equal."""
    return a.total == b.total and len(a.rows) == len(b.rows) and all(x == y for x, y in zip(a.rows, b.rows))


def counts(table: Table, row: Row) -> bool:
    """True when the row can move the answer: in a table that collects, not without weight."""
    return table.policy != COLLECT or row.weight != 0.0


def _rows_left(table: Table, points: list[list[float]], states: list[State]) -> list[int]:
    """The rows that may apply: in a table that collects all that their columns allow, else the first of each state."""
    if table.policy == COLLECT:
        return [r for r, row in enumerate(table.rows) if len(states) > 0 and ruled_out_by(row, points) == NO_OUTCOME]
    found: list[int] = []
    for state in states:
        for r in state.rows[:1]:
            if r not in found:
                found.append(r)
    return sorted(found, key=lambda r: r)


def ruled_out_by(row: Row, points: list[list[float]]) -> int:
    """The first column on which none of the points fits the row; -1 when every column alone allows it."""
    for cell in row.cells:
        if _fails(cell, points):
            return cell.column
    return NO_OUTCOME


def _fails(cell: Cell, points: list[list[float]]) -> bool:
    """True when none of the column's points fits the cell."""
    return not any(within(cell.spans, point) for point in points[cell.column])


def _resting_columns(table: Table, points: list[list[float]], rows: list[int], bare: list[int], gap: bool) -> list[int]:
    """The columns that are enough for the answer, ascending. bare are the columns whose own table does not cover everything.

    Every row that may apply brings all its columns; every row that had to be ruled out brings one column that rules it out,
    one already there if possible; rows that count for nothing bring none. Rows behind the last that may apply need no ruling out, unless something is not covered.
    """
    used = [c for c in bare]
    for r in rows:
        if counts(table, table.rows[r]):
            used = used + [cell.column for cell in table.rows[r].cells if cell.column not in used]
    behind = len(table.rows)
    if not gap and table.policy == ONE_ROW:
        behind = 0
    elif not gap and table.policy == FIRST_ROW and len(rows) > 0:
        behind = rows[-1]
    for r in range(behind):
        if r not in rows and counts(table, table.rows[r]):
            out = ruled_out_by(table.rows[r], points)
            already = any(cell.column in used and _fails(cell, points) for cell in table.rows[r].cells)
            if out != NO_OUTCOME and not already:
                used.append(out)
    return sorted(used, key=lambda c: c)


def _base_facts(table: Table, columns: list[int], facts: Facts, earlier: list[Decided]) -> list[str]:
    """The known base facts behind the columns, each once, in the order of the columns."""
    found: list[str] = []
    for c in columns:
        column = table.columns[c]
        names = [column.fact]
        if column.derived:
            names = decided_of(earlier, column.fact).rests_on
        for name in names:
            if name not in found and facts.statuses[place(facts, name)] >= ASSUMED:
                found.append(name)
    return found


def _open_facts(table: Table, facts: Facts, earlier: list[Decided]) -> list[str]:
    """The unknown base facts that the table and the tables feeding it ask, each once, in the order of the columns."""
    found: list[str] = []
    for column in table.columns:
        names = [column.fact]
        if column.derived:
            names = decided_of(earlier, column.fact).open
        for name in names:
            if name not in found and facts.statuses[place(facts, name)] < ASSUMED:
                found.append(name)
    return found
