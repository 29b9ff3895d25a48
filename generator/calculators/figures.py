"""The figures of a value side by side: one for each author, with what each was made for.

A calculator that shows every author's rule takes the whole list of a value's figures instead of the one number that the guide
follows: in its Values record such a field is a `list[Figure]`. Rules with more than one number stand in several values; figures
of the same id belong together. Within a list the order is the file's.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say

FITS: int = 0  # made for this vine, or for every vine
OPEN: int = 1  # made for some, and not known whether for this one
OTHER: int = 2  # made for others


@dataclass(frozen=True)
class Scope:
    """The choices of one fact that a figure is made for: the places of the choices from 0 (yes is 1)."""

    fact: str
    choices: list[float]


@dataclass(frozen=True)
class Figure:
    """One author's number, in the value's unit. word names the author, note what to know about the figure ("" for nothing); standing
    is how sure it is; scope is empty where the figure is for all."""

    id: str
    word: str
    note: str
    standing: str
    number: float
    scope: list[Scope]


@dataclass(frozen=True)
class Compared:
    """What one author's figures say of this vine: the topic, who, the result, the note, the standing ("" where several figures
    make the rule); place is FITS, OPEN or OTHER."""

    topic: Say
    who: Say
    says: Say
    note: Say
    standing: str
    place: int


def figure_of(figures: list[Figure], name: str) -> Figure:
    """The figure with that id. Raises ValueError when there is none."""
    for figure in figures:
        if figure.id == name:
            return figure
    raise ValueError("a rule lacks one of its numbers")


def number_of(figures: list[Figure], name: str) -> Maybe:
    """The number of the figure with that id; not ok when that author gives none."""
    for figure in figures:
        if figure.id == name:
            return Maybe(True, figure.number)
    return Maybe(False, 0.0)


def standing_of(figure: Figure, fact: str, answer: Maybe) -> int:
    """Whether a figure is made for the answer to one fact: FITS, OPEN while the answer is not known, or OTHER."""
    for scope in figure.scope:
        if scope.fact == fact:
            if not answer.ok:
                return OPEN
            return FITS if any(choice == answer.number for choice in scope.choices) else OTHER
    return FITS


def compared(topic: Say, figure: Figure, says: Say, place: int) -> Compared:
    """The line of one figure."""
    note = Say("", [], [])
    if figure.note != "":
        note = Say("figures.note", [], [figure.note])
    return Compared(topic, Say("figures.who", [], [figure.word]), says, note, figure.standing, place)
