"""Items of the rulebook that stand for themselves: facts, values, sources, evidence, messages, terms, cautions, units.

Every item knows the file and line it came from.
"""

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
class Assumption:
    """What is assumed of a fact until somebody answers, where no value stands behind it: its number (the place of a choice,
    1 for yes), how sure that is, and why."""

    number: float
    standing: str
    because: str
    cites: tuple[Cite, ...] = ()


@dataclass(frozen=True)
class Fact(Item):
    """A shared question. low, high and step are in the fact's SI unit; default_value is the id of a value or empty; assumed is
    the default of a fact that has none, such as a choice. Of a fact that is asked by node, series is the stem of its file, which it
    shares with the other nodes, and node its number from 1 (else "" and 0)."""

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
    assumed: Assumption | None = None
    computed_by: str = ""
    series: str = ""
    node: int = 0


@dataclass(frozen=True)
class Figure:
    """One author's figure for a value. scope names, for some facts, the choices that it is made for; without it is for all."""

    id: str
    number: float
    standing: str
    who: str
    cites: tuple[Cite, ...] = ()
    note: str = ""
    scope: dict[str, tuple[str, ...]] = field(default_factory=dict)


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
    table: list | dict = field(default_factory=list)


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
