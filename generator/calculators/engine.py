"""The engine: decides tables on facts of which some may be unknown.

A table is decided by looking at all that is still possible: a known fact stands for itself, an unknown one for one
point of every stretch that the table tells apart, a derived fact for the outcomes its own table still allows. The
table is settled when one outcome remains. The records are in tables.py, the next question in asking.py.
"""

import math

from generator.calculators.facts import ASSUMED, Facts, place, weakest
from generator.calculators.tables import COLLECT, FIRST_ROW, NO_OUTCOME, ONE_ROW, Cell, Decided, Row, Table, decided_of, within


def decide_all(tables: list[Table], facts: Facts) -> list[Decided]:
    """Decides every table; a table that feeds another stands before it. Raises ValueError when the order is wrong."""
    decided: list[Decided] = []
    for table in tables:
        decided.append(decide(table, facts, decided))
    return decided


def decide(table: Table, facts: Facts, earlier: list[Decided]) -> Decided:
    """Decides one table on the facts and on the tables that feed it."""
    points = candidates(table, facts, earlier)
    states = row_sets(table, points)
    outcomes = [outcome_of(table, rows) for rows in states]
    bare = [c for c, column in enumerate(table.columns) if column.derived and decided_of(earlier, column.fact).gap]
    gap = NO_OUTCOME in outcomes or len(bare) > 0
    possible = [k for k in range(len(table.outcomes)) if k in outcomes]
    settled = len(possible) == 1 and not gap
    rows = _rows_left(table, states)
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


def row_sets(table: Table, points: list[list[float]]) -> list[list[int]]:
    """The different sets of rows that can apply together, as ascending places, when column c may take any of points[c].

    A set that no row fits is the empty list. Sets are grown column by column and equal ones kept once, so that the
    work does not grow with the number of combinations.
    """
    states = [[r for r in range(len(table.rows))]]
    for column in range(len(table.columns)):
        grown: list[list[int]] = []
        for rows in states:
            for point in points[column]:
                kept = _cut(table, [r for r in rows if _fits(table.rows[r], column, point)], column)
                if not _has(grown, kept):
                    grown.append(kept)
        states = grown
    return states


def outcome_of(table: Table, rows: list[int]) -> int:
    """The outcome's place for a set of rows that apply together; -1 when no row (no sum) covers it."""
    if table.policy == COLLECT:
        total = math.fsum([table.rows[r].weight for r in rows])
        for k, outcome in enumerate(table.outcomes):
            if within(outcome.sums, total):
                return k
        return NO_OUTCOME
    return table.rows[rows[0]].outcome if len(rows) > 0 else NO_OUTCOME


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


def _cut(table: Table, rows: list[int], column: int) -> list[int]:
    """The rows without those that a first-row table cannot reach any more: all after one that asks nothing beyond the
    column."""
    if table.policy != FIRST_ROW:
        return rows
    kept: list[int] = []
    for r in rows:
        kept.append(r)
        if all(cell.column <= column for cell in table.rows[r].cells):
            return kept
    return kept


def _has(sets: list[list[int]], wanted: list[int]) -> bool:
    """True when the set is among the sets."""
    for one in sets:
        if len(one) == len(wanted) and all(a == b for a, b in zip(one, wanted)):
            return True
    return False


def _rows_left(table: Table, states: list[list[int]]) -> list[int]:
    """The rows that may apply: all that count in a table that collects, else the first of each set."""
    found: list[int] = []
    for rows in states:
        counting = rows if table.policy == COLLECT else rows[:1]
        for r in counting:
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
    one already there if possible. Rows behind the last that may apply need no ruling out, unless something is not covered.
    """
    used = [c for c in bare]
    for r in rows:
        used = used + [cell.column for cell in table.rows[r].cells if cell.column not in used]
    behind = len(table.rows)
    if not gap and table.policy == ONE_ROW:
        behind = 0
    elif not gap and table.policy == FIRST_ROW and len(rows) > 0:
        behind = rows[-1]
    for r in range(behind):
        if r not in rows:
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
