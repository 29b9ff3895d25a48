"""Every cell of every table of the guide: each combination of its stretches, decided by the engine and by the plain
reading of its rows."""

from itertools import islice, product

import pytest

from generator.answers.tables import table
from generator.calculators.engine import decide
from generator.calculators.facts import COMPUTED, ENTERED, Facts
from generator.calculators.tables import Decided, Table
from tests.engine import reference

MOST = 200_000


def combinations(made: Table):
    """Every combination of one point for each column, as numbers by fact."""
    names = [column.fact for column in made.columns]
    for values in islice(product(*(column.points for column in made.columns)), MOST):
        yield dict(zip(names, values))


def decided_at(made: Table, point: dict[str, float]) -> Decided:
    """The table decided at a point; what feeds it is taken as settled there."""
    base = [column.fact for column in made.columns if not column.derived]
    facts = Facts(base, [point[fact] for fact in base], [ENTERED] * len(base))
    feeding = [(column.fact, int(point[column.fact])) for column in made.columns if column.derived]
    fed = [Decided(name, True, place, [place], False, [], [], [], [], COMPUTED) for name, place in feeding]
    return decide(made, facts, fed)


def test_the_engine_reads_every_cell_as_the_rows_say(rulebook, told):
    """Outcome and row are those of the first row (of the sum, where rows are weighed) that fits."""
    looked = 0
    for decision in rulebook.decisions.values():
        made = table(rulebook, decision)
        for point in combinations(made):
            outcome, rows = reference.one_outcome(decision, reference.applying(decision, point))
            one = decided_at(made, point)
            assert (made.outcomes[one.outcome].id if one.settled else None) == outcome
            assert [made.rows[r].id for r in one.rows] == [row.id for row in rows]
            looked += 1
    told(looked, f"cells of the guide's {len(rulebook.decisions)} tables, read as their rows say")
    assert looked >= len(rulebook.decisions)


@pytest.mark.parametrize("side", [-1, 0, 1])
def test_points_stand_for_their_whole_stretch(rulebook, side):
    """At every boundary, and one step to either side of it, the engine says what it says at the stretch's own point."""
    for decision in rulebook.decisions.values():
        made = table(rulebook, decision)
        for column in (column for column in made.columns if not column.derived):
            fact = rulebook.facts[column.fact]
            for cell in (cell for row in decision.rows for cell in row.when if cell.fact == fact.id):
                for end in (end for span in cell.spans for end in (span.low, span.high)):
                    x = end + side * fact.step
                    if fact.low <= x <= fact.high:
                        assert any(alike(decision, fact.id, x, point) for point in column.points), (decision.id, fact.id, x)


def alike(decision, fact: str, x: float, point: float) -> bool:
    """True when every cell on the fact says the same of both."""
    cells = [cell for row in decision.rows for cell in row.when if cell.fact == fact]
    return all(reference.fits(cell, x) == reference.fits(cell, point) for cell in cells)
