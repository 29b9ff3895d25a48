"""Decision tables and the forms of calculators, typed."""

from dataclasses import dataclass, field

from generator.reading.items import Cite, Item


@dataclass(frozen=True)
class Span:
    """A stretch of the number line; an end belongs to it where *_in is true. Infinite ends are +-1e300."""

    low: float
    low_in: bool
    high: float
    high_in: bool


@dataclass(frozen=True)
class Cell:
    """The condition on one fact: disjoint spans in ascending order, and the words as the author wrote them."""

    fact: str
    spans: tuple[Span, ...]
    text: str
    line: int


@dataclass(frozen=True)
class Row:
    """A row of a decision table; when holds only the facts that it restricts (no cell means any).

    In a table that collects, a row has a weight (its sign is the side it speaks for; 0: said, counts for neither) and then is
    empty.
    A row made from a variety has note_cites: what its note rests on, apart from cites, which is what the outcome rests on.
    """

    id: str
    when: tuple[Cell, ...]
    then: str
    because: str
    standing: str
    line: int
    cites: tuple[Cite, ...] = ()
    cautions: tuple[str, ...] = ()
    note: str = ""
    weight: float = 0.0
    note_cites: tuple[Cite, ...] = ()


@dataclass(frozen=True)
class Winter:
    """One winter of work that takes several: what to do, and the crop of the summer after it in % of a full one, from low to high
    (crop_pct is empty where no figure is given). standing and cites are those of both."""

    do: str
    standing: str
    line: int
    crop_pct: tuple[float, ...] = ()
    cites: tuple[Cite, ...] = ()


@dataclass(frozen=True)
class Outcome:
    """One outcome of a table. says is a whole sentence; target, years and layout serve the main decision: layout is what the
    plan lays out this winter (`spur`, `long_spurs`, `spurs_with_canes`, `cane`; `lay_new_arm`: a cane in the place of one arm;
    `forming`: a vine not cropped as a whole; `none`: nothing is laid out). action is what to do this winter, there or besides.

    winters is the work winter by winter, beginning with this one; spring is what has to be spared and what rubbed off after it.
    onward is the id of the decision or calculator that goes on from here at the vine.
    sums (YAML `sum: 3 or more`) is only for a table that collects: the sums of its rows' weights that give this outcome.
    """

    id: str
    label: str
    says: str
    target: str = ""
    action: str = ""
    years: str = ""
    layout: str = ""
    onward: str = ""
    spring: str = ""
    winters: tuple[Winter, ...] = ()
    sums: tuple[Span, ...] = ()


@dataclass(frozen=True)
class Example:
    """A worked example: facts as an author writes them, `rows` among them where a calculator takes some, and what must come out."""

    name: str
    facts: dict
    expect: dict
    line: int
    source: str = ""


@dataclass(frozen=True)
class Gap:
    """A known gap of a table: the facts as cells, and the reason why no row covers them."""

    when: tuple[Cell, ...]
    reason: str
    line: int


@dataclass(frozen=True)
class Decision(Item):
    """A decision table. gives is the id of the derived fact that its outcome becomes (equal to the table's id)."""

    title: str
    question: str
    why: str
    stage: str
    policy: str
    facts: tuple[str, ...]
    outcomes: tuple[Outcome, ...]
    rows: tuple[Row, ...]
    examples: tuple[Example, ...]
    gaps: tuple[Gap, ...] = ()
    cautions: tuple[str, ...] = ()
    terms: tuple[str, ...] = ()
    generated: bool = False
    sides: tuple[str, ...] = ()


@dataclass(frozen=True)
class Input:
    """An input of a calculator: a fact's id; optional inputs may be left out, others need a number or a default. series is the name
    under which the form lists a fact that is asked by node ("" for others); also is a second name that callers may give it by, where
    the name that the calculator is known for is taken by another fact ("" for none). What may be left out is folded away under
    the usual heading, unless `fold` names another or it shall stand in view; with `fold` any input is folded away."""

    fact: str
    optional: bool = False
    series: str = ""
    also: str = ""
    fold: str = ""
    in_view: bool = False


@dataclass(frozen=True)
class RowColumn:
    """A column of the rows that a calculator takes: a fact that is asked of each row (then all but id and fact is the fact's), or whole
    numbers from low to high. One of these that is not `needed` counts 0 where it is left out; on a card its buttons begin at the answer of the
    fact `begin`, where there is one."""

    id: str
    label: str = ""
    observe: str = ""
    low: int = 0
    high: int = 0
    needed: bool = False
    fact: bool = False
    begin: str = ""


@dataclass(frozen=True)
class Each:
    """What a row stands for, entered one at a time on a card: the noun for one and for many, which is also the name of the list in the
    result, and the value that says how many there may be."""

    one: str
    many: str
    most: str


@dataclass(frozen=True)
class Output:
    """A named output of a calculator, with its unit and the digits it is shown with. One that `needs` a fact that may be left out says
    nothing where that is not known."""

    id: str
    label: str
    unit: str
    digits: int
    needs: str = ""


@dataclass(frozen=True)
class UsedIn:
    """A calculator that goes on from another's answer: it opens with what both ask, and `gives` fills facts (by id) from outputs. With
    `where` it is shown only where one of those facts is known of the block and is not no; the facts `anew` are asked there again."""

    calculator: str
    gives: dict[str, str] = field(default_factory=dict)
    where: tuple[str, ...] = ()
    anew: tuple[str, ...] = ()


@dataclass(frozen=True)
class CalculatorForm(Item):
    """The form of a calculator: what it asks, which values it uses, what comes out, and worked examples. rows are the columns of a list of
    records that it takes under the name `rows` (none for most), each what a row stands for; used_in are the calculators that its answer leads to; tables are the
    decisions that it asks about what it works out itself."""

    title: str
    question: str
    why: str
    stage: str
    inputs: tuple[Input, ...]
    values: tuple[str, ...]
    outputs: tuple[Output, ...]
    examples: tuple[Example, ...]
    cites: tuple[Cite, ...] = ()
    cautions: tuple[str, ...] = ()
    terms: tuple[str, ...] = ()
    rows: tuple[RowColumn, ...] = ()
    used_in: tuple[UsedIn, ...] = ()
    tables: tuple[str, ...] = ()
    each: Each | None = None
