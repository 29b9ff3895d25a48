"""Decision tables as data, and what a table says: the records that the engine works on, equal on both sides."""

from dataclasses import dataclass

ONE_ROW: int = 0
FIRST_ROW: int = 1
COLLECT: int = 2
NO_OUTCOME: int = -1


@dataclass(frozen=True)
class Span:
    """A stretch of the number line; an end belongs to it where *_in is true."""

    low: float
    low_in: bool
    high: float
    high_in: bool


@dataclass(frozen=True)
class Cell:
    """The condition of a row on one column, by the column's place in the table."""

    column: int
    spans: list[Span]


@dataclass(frozen=True)
class Row:
    """A row: cells in the order of the columns (no cell on a column: any), the outcome's place in the table (-1 in a
    table that collects), the weight (only there; its sign is the side it speaks for, 0: for neither), the message id of its
    reason, and what stands behind it."""

    id: str
    cells: list[Cell]
    outcome: int
    weight: float
    because: str
    standing: str
    sources: list[str]
    cautions: list[str]


@dataclass(frozen=True)
class Column:
    """A fact that a table asks. derived: it is the outcome of the table of that id, as a place among its outcomes;
    else a base fact, with one point for each stretch of its range that the table tells apart, ascending. computed: it is worked out
    from other facts, so that nobody is asked for it."""

    fact: str
    derived: bool
    computed: bool
    points: list[float]


@dataclass(frozen=True)
class Outcome:
    """An outcome: its message id, its word, (in a table that collects) the sums of weights that give it, and the layout of
    nodes that it asks for this winter (`spur`, `long_spurs`, `spurs_with_canes`, `cane`, `lay_new_arm`, `forming`, `none`; ""
    where a table has no layouts). action, target and years are the words for what to do this winter, what to aim for and how
    long it takes ("" for none)."""

    id: str
    says: str
    word: str
    sums: list[Span]
    layout: str
    action: str
    target: str
    years: str


@dataclass(frozen=True)
class Table:
    """A decision table. policy is ONE_ROW, FIRST_ROW or COLLECT; word is `decision.<id>`."""

    id: str
    word: str
    policy: int
    columns: list[Column]
    rows: list[Row]
    outcomes: list[Outcome]


@dataclass(frozen=True)
class Decided:
    """What a table says of the facts.

    outcome is the place of the one outcome left, or -1; possible are the places of all outcomes left, ascending; gap is
    true when something is possible that no row of this table, or of a table that feeds it, covers; rows are the places
    of the rows that may apply, ascending; rests_on are the known base facts that are enough for this answer; uses are
    the derived facts among them; open are the unknown base facts that this table and its feeding tables ask; status is
    the weakest status of rests_on."""

    table: str
    settled: bool
    outcome: int
    possible: list[int]
    gap: bool
    rows: list[int]
    rests_on: list[str]
    uses: list[str]
    open: list[str]
    status: int


def within(spans: list[Span], x: float) -> bool:
    """True when x lies in one of the spans."""
    for span in spans:
        above = span.low < x or (span.low_in and span.low == x)
        below = x < span.high or (span.high_in and x == span.high)
        if above and below:
            return True
    return False


def decided_of(decided: list[Decided], table: str) -> Decided:
    """The answer of a table by its id. Raises ValueError when the table was not decided."""
    for one in decided:
        if one.table == table:
            return one
    raise ValueError("the table was not decided")


def table_of(tables: list[Table], table: str) -> Table:
    """A table by its id. Raises ValueError when it is not among them."""
    for one in tables:
        if one.id == table:
            return one
    raise ValueError("no such table")
