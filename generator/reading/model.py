"""The rulebook, typed: what the rest of the generator sees of rules/. Every item knows the file and line it came from."""

from dataclasses import dataclass, field

STANDINGS = (
    "published",
    "abstract",
    "second_hand",
    "common_practice",
    "from_memory",
    "our_arithmetic",
    "our_judgement",
)
LIFETIMES = ("block", "winter", "today")
FACT_KINDS = ("number", "whole", "choice", "yes_no", "date", "text")
POLICIES = ("one_row", "first_row", "collect")


@dataclass(frozen=True)
class Where:
    """A place in a file: path relative to the project's root (or to the edition's parent), line from 1."""

    path: str
    line: int


@dataclass(frozen=True)
class Replaced:
    """What an edition replaced: the original node as plain data, and its digest (first 12 hex digits of sha256)."""

    original: dict
    digest: str
    edition: str


@dataclass(frozen=True)
class Item:
    """What every item of the rulebook has. id is unique within its kind."""

    id: str
    where: Where
    replaced: Replaced | None = field(default=None, kw_only=True)


@dataclass(frozen=True)
class Cite:
    """A reference to evidence or to a source by id, with the place in it (page, table) as far as it was read."""

    id: str
    place: str = ""


@dataclass(frozen=True)
class Choice:
    """One choice of a fact; its ordinal is its place in the list, from 0."""

    id: str
    label: str
    note: str = ""


@dataclass(frozen=True)
class Fact(Item):
    """A shared question. low, high and step are in the fact's SI unit; default_value is the id of a value or empty."""

    label: str
    ask: str
    observe: str
    kind: str
    lifetime: str
    code: str
    stage: str
    unit: str = ""
    low: float = 0.0
    high: float = 0.0
    step: float = 1.0
    choices: tuple[Choice, ...] = ()
    default_value: str = ""
    computed_by: str = ""


@dataclass(frozen=True)
class Figure:
    """One author's figure for a value."""

    id: str
    number: float
    standing: str
    who: str
    cites: tuple[Cite, ...] = ()
    note: str = ""


@dataclass(frozen=True)
class Value(Item):
    """A number of the trade. figures holds every author's; follow names the one used, because says why."""

    label: str
    unit: str
    holds: str
    figures: tuple[Figure, ...]
    follow: str
    because: str
    reviewed_on: str
    reviewed_by: str
    low: float
    high: float

    @property
    def followed(self) -> Figure:
        """The figure that the guide uses."""
        return next(figure for figure in self.figures if figure.id == self.follow)

    @property
    def number(self) -> float:
        """The number that the guide uses, in the value's unit."""
        return self.followed.number


@dataclass(frozen=True)
class Source(Item):
    """A published source. read is `published`, `abstract`, `second_hand` or `from_memory`: what was seen of it."""

    author: str
    title: str
    publisher: str
    year: int | None = None
    address: str = ""
    strength: str = ""


@dataclass(frozen=True)
class Evidence(Item):
    """A published value or fact, in our words, with the figures as the source prints them."""

    topic: str
    kind: str
    statement: str
    standing: str
    cites: tuple[Cite, ...]
    inputs: dict
    outputs: dict
    our_arithmetic: dict
    strength: str = ""
    note: str = ""


@dataclass(frozen=True)
class Argument:
    """A number or word that a message takes. Numbers have a unit and digits after the point."""

    name: str
    unit: str = ""
    digits: int = 0


@dataclass(frozen=True)
class Message(Item):
    """A whole sentence. text has {name} for each argument; one is the singular form, chosen when the number `count` is 1."""

    text: str
    one: str = ""
    count: str = ""
    numbers: tuple[Argument, ...] = ()
    words: tuple[Argument, ...] = ()


@dataclass(frozen=True)
class Term(Item):
    """A word of the trade: synonyms, the standard it belongs to, a definition, related terms by id."""

    term: str
    definition: str
    synonyms: tuple[str, ...] = ()
    standard: str = ""
    see: tuple[str, ...] = ()
    standing: str = "common_practice"
    cites: tuple[Cite, ...] = ()


@dataclass(frozen=True)
class Caution(Item):
    """A caution shown where the hands are; defer says whose word decides (local code, licensed person)."""

    label: str
    text: str
    defer: str


@dataclass(frozen=True)
class Unit(Item):
    """A unit: symbol, pint expression of its dimension, and how it is shown in SI and in US customary.

    us_number = si_number * us_factor, exactly as us_factor is written.
    """

    symbol: str
    name: str
    pint: str
    us_symbol: str
    us_factor: float
    us_digits: int
    digits: int


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
    """A row of a decision table; when holds only the facts that it restricts (no cell means any)."""

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


@dataclass(frozen=True)
class Outcome:
    """One outcome of a table. says is a whole sentence; action, target and years serve the main decision."""

    id: str
    label: str
    says: str
    target: str = ""
    action: str = ""
    years: str = ""


@dataclass(frozen=True)
class Example:
    """A worked example: facts as an author writes them, and what must come out."""

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


@dataclass(frozen=True)
class Input:
    """An input of a calculator: a fact's id; optional inputs may be left out, others need a number or a default."""

    fact: str
    optional: bool = False


@dataclass(frozen=True)
class Output:
    """A named output of a calculator, with its unit and the digits it is shown with."""

    id: str
    label: str
    unit: str
    digits: int


@dataclass(frozen=True)
class CalculatorForm(Item):
    """The form of a calculator: what it asks, which values it uses, what comes out, and worked examples."""

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


@dataclass(frozen=True)
class Stage(Item):
    """A stage of the work: number from 1, its question, and what to look at."""

    number: int
    title: str
    question: str
    intro: str
    look: str = ""


@dataclass(frozen=True)
class Listing:
    """What one source's list says of a variety: spur, cane, either."""

    says: str
    standing: str
    cites: tuple[Cite, ...]


@dataclass(frozen=True)
class Variety(Item):
    """A variety: names, use, and what the lists say of it. Their verdicts become the generated table `variety_lists`."""

    name: str
    use: str
    synonyms: tuple[str, ...] = ()
    lists: tuple[Listing, ...] = ()
    note: str = ""


@dataclass(frozen=True)
class Block(Item):
    """An invented block for demos and golden plans: facts as an author writes them (`unknown` where it was asked in vain)."""

    name: str
    note: str
    facts: dict


@dataclass(frozen=True)
class LedgerEntry(Item):
    """An entry of ids.yml. state is live, moved or retired; to and reason go with the last two."""

    kind: str
    since: str
    state: str = "live"
    to: str = ""
    reason: str = ""


@dataclass(frozen=True)
class Edition:
    """Which edition of the rules this is: the guide's own (`base`) or a local one laid over it."""

    id: str
    name: str
    by: str


BASE_EDITION = Edition("base", "The guide's own edition", "the guide's authors")


@dataclass(frozen=True)
class Rulebook:
    """Everything that rules/ says, typed; dictionaries keep the order in which pages and plans show things.

    version is the first 10 hex digits of the sha256 over the merged plain data of all files.
    """

    facts: dict[str, Fact]
    values: dict[str, Value]
    sources: dict[str, Source]
    evidence: dict[str, Evidence]
    messages: dict[str, Message]
    terms: dict[str, Term]
    cautions: dict[str, Caution]
    units: dict[str, Unit]
    decisions: dict[str, Decision]
    calculators: dict[str, CalculatorForm]
    stages: dict[str, Stage]
    varieties: dict[str, Variety]
    blocks: dict[str, Block]
    ids: tuple[LedgerEntry, ...]
    edition: Edition
    version: str
