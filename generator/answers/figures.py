"""The figures of a value as the calculators take them."""

from generator.calculators.figures import Figure, Scope
from generator.reading.items import Fact, Value
from generator.reading.items import Figure as Written
from generator.reading.rulebook import Rulebook


def figures(rulebook: Rulebook, value: Value) -> list[Figure]:
    """Every author's figure, in the order of the file. A scope that names no fact or choice is left out (a check reports it)."""
    return [_figure(rulebook, value, one) for one in value.figures]


def figure_words(value: Value) -> dict[str, str]:
    """The words of a value's figures: `figure.<value>.<figure>` is who says so, and with `.note` behind it the note."""
    names = {f"figure.{value.id}.{one.id}": one.who for one in value.figures}
    return names | {f"figure.{value.id}.{one.id}.note": one.note for one in value.figures if one.note}


def _figure(rulebook: Rulebook, value: Value, written: Written) -> Figure:
    """One figure."""
    word = f"figure.{value.id}.{written.id}"
    scope = [_scope(rulebook.facts[fact], choices) for fact, choices in written.scope.items() if fact in rulebook.facts]
    return Figure(written.id, word, f"{word}.note" if written.note else "", written.standing, float(written.number), scope)


def _scope(fact: Fact, choices: tuple[str, ...]) -> Scope:
    """The choices of one fact by their places; yes is 1."""
    ids = [choice.id for choice in fact.choices] or ["no", "yes"]
    return Scope(fact.id, [float(ids.index(choice)) for choice in choices if choice in ids])
