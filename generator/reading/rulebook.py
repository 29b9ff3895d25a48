"""The rulebook: everything that rules/ says, typed; what the rest of the generator sees of it."""

from collections.abc import Callable
from dataclasses import dataclass, field
from functools import wraps
from typing import TypeVar

from generator.reading.hands import Hands
from generator.reading.items import Caution, Evidence, Fact, Item, Message, Source, Term, Unit, Value
from generator.reading.looks import Look
from generator.reading.tables import CalculatorForm, Decision
from generator.reading.varieties import Variety
from generator.reading.work_faults import WorkFault


@dataclass(frozen=True)
class Stage(Item):
    """A stage of the work: number from 1, its question, what to look at, and the facts that the plan asks, in the order of a walk."""

    number: int
    title: str
    question: str
    intro: str
    look: str = ""
    asks: tuple[str, ...] = ()


@dataclass(frozen=True)
class Block(Item):
    """An invented block for demos and golden plans: facts as an author writes them (`unknown` where it was asked in vain)."""

    name: str
    note: str
    facts: dict


@dataclass(frozen=True)
class LedgerEntry(Item):
    """An entry of ids.yml. state is live, moved or retired; to and reason go with the last two; code is a fact's letters."""

    kind: str
    since: str
    state: str = "live"
    to: str = ""
    reason: str = ""
    code: str = ""


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

    facts holds a fact for each node of those that are asked by node; by_node holds these once, as pages and lists show them.

    version is the first 10 hex digits of the sha256 over the merged plain data of all files.
    """

    facts: dict[str, Fact]
    by_node: dict[str, Fact]
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
    looks: dict[str, Look] = field(default_factory=dict)
    hands: dict[str, Hands] = field(default_factory=dict)
    faults: dict[str, WorkFault] = field(default_factory=dict)


KEPT = "_kept"
Answer = TypeVar("Answer")


def kept(work: Callable[..., Answer]) -> Callable[..., Answer]:
    """work(rulebook, *words), done once for each rulebook and words and kept with the rulebook, which never changes. Nor may the
    answer be changed."""

    @wraps(work)
    def answer(rulebook: Rulebook, *words: str) -> Answer:
        """What was kept, or is worked out now."""
        key = (work, *words)
        if key not in vars(rulebook).get(KEPT, {}):
            found = work(rulebook, *words)
            vars(rulebook).setdefault(KEPT, {})[key] = found
        return vars(rulebook)[KEPT][key]

    return answer
