"""The one formatter: turns what a calculator says into a sentence, for command line, pages and plan alike.

A message is cut into parts at build. The digits shown are fixed by the message, never by the number; a number carries its
unit's symbol. A number whose unit is `fact` is shown as a value of the fact that the first word names: with that fact's
unit and digits, or as the label of its choice, or as a date. A word that the catalogue does not know is shown as it is.
"""

import math
from dataclasses import dataclass

from generator.calculators.dates import civil
from generator.calculators.numbertext import fixed, join
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, UnitSpec, spec_of_word

OF_THE_FACT: str = "fact"
US: str = "us"
NONE: int = -1
TWO_FIGURES: int = 10


@dataclass(frozen=True)
class Part:
    """A piece of a message: a number's place among the arguments, or else a word's place, or else (both -1) the text."""

    text: str
    number: int
    word: int


@dataclass(frozen=True)
class NumberForm:
    """How a number argument is shown: the id of its unit (or `fact`) and its digits after the point in SI."""

    unit: str
    digits: int


@dataclass(frozen=True)
class MessageForm:
    """A message: its parts, the parts of the singular (empty: none), the place of the number that decides between
    them (-1: none), the forms of its numbers, and how many words it takes."""

    id: str
    parts: list[Part]
    one: list[Part]
    count: int
    numbers: list[NumberForm]
    words: int


@dataclass(frozen=True)
class Word:
    """A word by id (`choice.climate.cool`, `fact.row_spacing_m`, ...) and its text."""

    id: str
    text: str


@dataclass(frozen=True)
class Catalogue:
    """All that is needed to word a Say."""

    forms: list[MessageForm]
    words: list[Word]
    units: list[UnitSpec]
    facts: list[FactSpec]


def worded(catalogue: Catalogue, say: Say, system: str) -> str:
    """The sentence, with numbers in `si` or `us` units.

    Raises ValueError when the message or a unit is unknown or the arguments are not as many as it declares.
    """
    form = form_of(catalogue.forms, say.id)
    if len(form.numbers) != len(say.numbers) or form.words != len(say.words):
        raise ValueError("the message takes other arguments")
    parts = form.parts
    if form.count != NONE and len(form.one) > 0:
        if say.numbers[form.count] == 1:
            parts = form.one
    return join([_piece(catalogue, form, say, part, system) for part in parts])


def form_of(forms: list[MessageForm], message: str) -> MessageForm:
    """The form of a message by id. Raises ValueError when there is none."""
    for form in forms:
        if form.id == message:
            return form
    raise ValueError("no such message")


def word_text(words: list[Word], word: str) -> str:
    """The text of a word; a word that is not in the list is the text itself."""
    for one in words:
        if one.id == word:
            return one.text
    return word


def number_text(units: list[UnitSpec], x: float, unit: str, digits: int, system: str) -> str:
    """A number in SI, shown in the system's unit. Raises ValueError when the unit is unknown."""
    for one in units:
        if one.id == unit:
            if system == US:
                return join([fixed(x * one.us_factor, max(0, digits + one.us_digits - one.digits)), one.us_after])
            return join([fixed(x, digits), one.after])
    raise ValueError("no such unit")


def fact_text(units: list[UnitSpec], spec: FactSpec, x: float, system: str) -> str:
    """A value of a fact: its choice's label, its date as year-month-day, or its number with the unit."""
    if spec.kind == "choice" or spec.kind == "yes_no":
        return spec.labels[int(x)]
    if spec.kind == "date":
        return date_text(math.floor(x))
    return number_text(units, x, spec.unit, spec.digits, system)


def date_text(days: int) -> str:
    """A day number as year-month-day."""
    date = civil(days)
    return join([fixed(float(date.year), 0), "-", _two_figures(date.month), "-", _two_figures(date.day)])


def _two_figures(n: int) -> str:
    """A month or day with two figures."""
    return join(["0" if n < TWO_FIGURES else "", fixed(float(n), 0)])


def _piece(catalogue: Catalogue, form: MessageForm, say: Say, part: Part, system: str) -> str:
    """The text of one part."""
    if part.number != NONE:
        x = say.numbers[part.number]
        shown = form.numbers[part.number]
        if shown.unit == OF_THE_FACT:
            return fact_text(catalogue.units, spec_of_word(catalogue.facts, say.words[0]), x, system)
        return number_text(catalogue.units, x, shown.unit, shown.digits, system)
    if part.word != NONE:
        return word_text(catalogue.words, say.words[part.word])
    return part.text
