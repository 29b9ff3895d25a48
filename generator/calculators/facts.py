"""The facts of one block as parallel lists, each with a status. Unknown is a status, never a number that pretends."""

from dataclasses import dataclass

NOT_ASKED: int = 0
UNKNOWN: int = 1
ASSUMED: int = 2
FROM_LINK: int = 3
ENTERED: int = 4
COMPUTED: int = 5


@dataclass(frozen=True)
class Maybe:
    """An input that may be left out: number counts only where ok is true."""

    ok: bool
    number: float


@dataclass(frozen=True)
class Facts:
    """All facts that are numbers: ids, numbers (SI; a choice is its place in the list of choices from 0, yes is 1, a
    date is days since 1970-01-01) and statuses, one entry a fact, in the order of the rulebook."""

    ids: list[str]
    numbers: list[float]
    statuses: list[int]


def place(facts: Facts, fact: str) -> int:
    """The index of a fact. Raises ValueError when there is no such fact."""
    for index, name in enumerate(facts.ids):
        if name == fact:
            return index
    raise ValueError("no such fact")


def known(facts: Facts, fact: str) -> bool:
    """True when the fact has a number: assumed, from a link, entered or computed."""
    return facts.statuses[place(facts, fact)] >= ASSUMED


def number(facts: Facts, fact: str) -> float:
    """The number of a known fact, in SI. Raises ValueError when the fact is not known."""
    index = place(facts, fact)
    if facts.statuses[index] < ASSUMED:
        raise ValueError("the fact is not known")
    return facts.numbers[index]


def maybe(facts: Facts, fact: str) -> Maybe:
    """The fact as an input that may be left out."""
    return _maybe_at(facts, place(facts, fact))


def _maybe_at(facts: Facts, index: int) -> Maybe:
    """The fact at a place as an input that may be left out."""
    if facts.statuses[index] < ASSUMED:
        return Maybe(False, 0.0)
    return Maybe(True, facts.numbers[index])


def series(facts: Facts, first: str, last: str) -> list[Maybe]:
    """The facts from the first to the last named one, as they follow each other: those that a fact asked by node stands for.
    Raises ValueError when there is no such fact."""
    return [_maybe_at(facts, index) for index in range(place(facts, first), place(facts, last) + 1)]


def weakest(facts: Facts, names: list[str]) -> int:
    """The weakest status among the named facts (COMPUTED when none is named): what a result that rests on them carries."""
    status = COMPUTED
    for name in names:
        status = min(status, facts.statuses[place(facts, name)])
    return status


def missing(facts: Facts, names: list[str]) -> list[str]:
    """Those of the named facts that have no number, in the given order."""
    return [name for name in names if not known(facts, name)]
