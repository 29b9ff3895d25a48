"""Gaps, overlaps and unreachable rows planted in random tables are found, and sound tables raise no problem."""

import random
from dataclasses import replace

import pytest

from generator.checks import completeness, known_gaps, overlap, reachability
from generator.checks.axes import axes_of, box_of, common, everything, uncovered
from generator.reading.tables import Gap
from tests import made_tables as made
from tests.checks import partitions

TABLES = 1_000


def tables(seed: int, policy: str, count: int = TABLES):
    """Random sound tables with at least two rows: (rng, facts, table)."""
    rng = random.Random(seed)
    while count:
        asked = partitions.facts(rng)
        table = partitions.sound_table(rng, asked, policy, rng.randint(2, 14))
        if len(table.rows) > 1:
            count -= 1
            yield rng, asked, table


@pytest.mark.parametrize("policy", ["one_row", "first_row"])
def test_sound_tables_are_silent(policy, told):
    """A table whose rows part everything has no gap, no overlap and no row that cannot be reached."""
    for _, asked, table in tables(1, policy):
        book = partitions.book(asked, table)
        rows = [problem for problem in reachability.check(book) if "Row" in problem.sentence]
        assert [*completeness.check(book), *overlap.check(book), *known_gaps.check(book), *rows] == []
        told(1, "sound random tables, silent")


def test_a_row_taken_away_leaves_a_gap_that_is_found_in_full(told):
    """The sets of facts reported share nothing with the rows and, together with them, leave nothing uncovered."""
    for rng, asked, table in tables(2, "one_row"):
        gone = rng.choice(table.rows)
        holed = replace(table, rows=tuple(row for row in table.rows if row != gone))
        axes = axes_of(partitions.book(asked, holed), holed)
        rows = [box_of(axes, row.when) for row in holed.rows]
        gaps = completeness.gaps_of(axes, holed)
        told(int(bool(gaps)), "planted gaps, found in full", of=1)
        assert gaps and not any(common(gap, row) for gap in gaps for row in rows)
        assert len(gaps) > completeness.MOST_SHOWN or uncovered(everything(axes), [*rows, *gaps]) is None


def test_a_listed_gap_is_honoured_and_reported_once_it_is_covered():
    """The same hole under `gaps` is silent; with the row back the entry is no longer needed."""
    for rng, asked, table in tables(3, "one_row", TABLES // 4):
        gone = rng.choice(table.rows)
        gap = Gap(gone.when, "Nobody knows.", 7)
        holed = replace(table, rows=tuple(row for row in table.rows if row != gone), gaps=(gap,))
        book = partitions.book(asked, holed)
        assert [*completeness.check(book), *known_gaps.check(book)] == []
        book = partitions.book(asked, replace(table, gaps=(gap,)))
        assert [problem.line for problem in known_gaps.check(book)] == [7]


def test_a_row_widened_over_its_neighbour_is_found(told):
    """A row that loses one of its cells overlaps some other row of the table."""
    for rng, asked, table in tables(4, "one_row"):
        place = rng.choice([k for k, row in enumerate(table.rows) if row.when])
        row = table.rows[place]
        dropped = rng.choice(row.when)
        rows = list(table.rows)
        rows[place] = replace(row, when=tuple(cell for cell in row.when if cell != dropped))
        problems = list(overlap.check(partitions.book(asked, replace(table, rows=tuple(rows)))))
        told(int(bool(problems)), "planted overlaps, found", of=1)
        assert problems and all(f"{row.id} " in problem.sentence for problem in problems)


def test_a_row_repeated_behind_itself_is_found(told):
    """In a first-row table a copy of an earlier row can never apply."""
    for rng, asked, table in tables(5, "first_row"):
        copy = replace(rng.choice(table.rows[:-1]), id="COPY")
        shadowed = replace(table, rows=(*table.rows[:-1], copy, table.rows[-1]))
        found = [problem for problem in reachability.check(partitions.book(asked, shadowed)) if "COPY" in problem.sentence]
        told(len(found), "planted rows out of reach, found", of=1)
        assert len(found) == 1


def test_a_cell_outside_the_range_is_found():
    """No value of a fact from 0 to 6 is over 6."""
    fact = made.fact("alpha", "number")
    rows = [made.row("R0", [], "o0"), made.row("R1", [made.cell(fact, 6.0, False, made.FAR, False)], "o1")]
    table = made.decision("table", "collect", ["alpha"], rows, 2)
    problems = list(reachability.check(partitions.book([fact], table)))
    assert problems[0].sentence == "Row R1 can never apply: no value of `alpha` fits `made`."
