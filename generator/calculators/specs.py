"""What the guide knows about the facts it asks and the units it shows: the same records on both sides."""

from dataclasses import dataclass

from generator.calculators.facts import ASSUMED, NOT_ASKED, Facts, Maybe


@dataclass(frozen=True)
class FactSpec:
    """A fact as forms, guards and sentences need it.

    word is `fact.<id>`; kind is number, whole, choice, yes_no, date or text; unit is the id of a UnitSpec ("" for
    none); low, high and step are in that unit (a choice runs from 0 to the last choice, yes_no from 0 to 1, a date in
    days since 1970-01-01); digits are shown after the point; choices are ids and labels their words, in step (yes_no:
    `no`, `yes`); default is the number assumed when nobody was asked; code is the two letters of printed links.
    """

    id: str
    word: str
    label: str
    kind: str
    unit: str
    low: float
    high: float
    step: float
    digits: int
    choices: list[str]
    labels: list[str]
    lifetime: str
    code: str
    default: Maybe


@dataclass(frozen=True)
class UnitSpec:
    """A unit: what is put after a number (a space that does not break, and the symbol; "" for counts) and its digits, in SI;
    the same in US customary, with us = si * us_factor."""

    id: str
    after: str
    digits: int
    us_after: str
    us_factor: float
    us_digits: int


def spec_of(specs: list[FactSpec], fact: str) -> FactSpec:
    """The spec of a fact by its id. Raises ValueError when there is none."""
    for spec in specs:
        if spec.id == fact:
            return spec
    raise ValueError("no such fact")


def spec_of_word(specs: list[FactSpec], word: str) -> FactSpec:
    """The spec of a fact by its word `fact.<id>`. Raises ValueError when there is none."""
    for spec in specs:
        if spec.word == word:
            return spec
    raise ValueError("no such fact")


def with_defaults(specs: list[FactSpec], facts: Facts) -> Facts:
    """The facts, where every fact that was not asked and has a default is assumed. A fact that is unknown stays unknown."""
    numbers: list[float] = []
    statuses: list[int] = []
    for index, fact in enumerate(facts.ids):
        default = spec_of(specs, fact).default
        assume = facts.statuses[index] == NOT_ASKED and default.ok
        numbers.append(default.number if assume else facts.numbers[index])
        statuses.append(ASSUMED if assume else facts.statuses[index])
    return Facts(facts.ids, numbers, statuses)
