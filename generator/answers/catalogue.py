"""Messages and words of the rulebook as the records that the formatter works with."""

import re
from collections.abc import Iterable

from generator.answers.figures import figure_words
from generator.answers.specs import fact_specs, unit_specs
from generator.calculators.wording import Catalogue, MessageForm, NumberForm, Part, Word
from generator.reading.items import Message
from generator.reading.rulebook import Rulebook, kept

WORK = ("action", "target", "years")  # what an outcome means for the work, where its table says so
PLACE = re.compile(r"\{([a-z0-9_]+)\}")


@kept
def catalogue(rulebook: Rulebook) -> Catalogue:
    """Everything that can be said and named."""
    return Catalogue(message_forms(rulebook), words(rulebook), unit_specs(rulebook), fact_specs(rulebook))


def messages(rulebook: Rulebook) -> dict[str, Message]:
    """All messages by id: the written ones, and those ready-made from tables (`<decision>.<row>`,
    `<decision>.says.<outcome>`)."""
    found = dict(rulebook.messages)
    for decision in rulebook.decisions.values():
        texts = {f"{decision.id}.{row.id}": row.because for row in decision.rows}
        texts |= {f"{decision.id}.says.{outcome.id}": outcome.says for outcome in decision.outcomes}
        found |= {name: Message(name, decision.where, text) for name, text in texts.items()}
    return found


def message_forms(rulebook: Rulebook, prefixes: Iterable[str] = ("",)) -> list[MessageForm]:
    """The messages whose id begins with one of the prefixes, cut into parts; in the order of their ids."""
    starts = tuple(prefixes)
    return [message_form(message) for name, message in sorted(messages(rulebook).items()) if name.startswith(starts)]


def message_form(message: Message) -> MessageForm:
    """One message cut into parts. A {name} that is not declared stays as text (a check reports it)."""
    numbers = [argument.name for argument in message.numbers]
    names = [argument.name for argument in message.words]
    return MessageForm(
        id=message.id,
        parts=_parts(message.text, numbers, names),
        one=_parts(message.one, numbers, names),
        count=numbers.index(message.count) if message.count in numbers else -1,
        numbers=[NumberForm(argument.unit, argument.digits) for argument in message.numbers],
        words=len(names),
    )


def words(rulebook: Rulebook, prefixes: Iterable[str] = ("",)) -> list[Word]:
    """The words whose id begins with one of the prefixes: `fact.`, `choice.<fact>.`, `decision.`, `outcome.<decision>.`,
    `action.<decision>.`, `target.<decision>.`, `years.<decision>.`, `calculator.`, `column.<calculator>.`, `stage.`, `term.`, `value.`, `figure.<value>.`."""
    starts = tuple(prefixes)
    return [Word(name, text) for name, text in _all_words(rulebook).items() if name.startswith(starts)]


def _all_words(rulebook: Rulebook) -> dict[str, str]:
    """Every word by id."""
    found = {f"fact.{fact.id}": fact.label for fact in rulebook.facts.values()}
    found |= {f"choice.{fact.id}.{choice.id}": choice.label for fact in rulebook.facts.values() for choice in fact.choices}
    for decision in rulebook.decisions.values():
        found[f"decision.{decision.id}"] = decision.title
        found |= {f"outcome.{decision.id}.{outcome.id}": outcome.label for outcome in decision.outcomes}
        works = [(kind, outcome, getattr(outcome, kind)) for kind in WORK for outcome in decision.outcomes]
        found |= {f"{kind}.{decision.id}.{outcome.id}": text for kind, outcome, text in works if text}
    found |= {f"calculator.{form.id}": form.title for form in rulebook.calculators.values()}
    found |= {f"column.{form.id}.{one.id}": one.label for form in rulebook.calculators.values() for one in form.rows if not one.fact}
    found |= {f"stage.{stage.id}": stage.title for stage in rulebook.stages.values()}
    found |= {f"term.{term.id}": term.term for term in rulebook.terms.values()}
    for value in rulebook.values.values():
        found |= {f"value.{value.id}": value.label, **figure_words(value)}
    return found


def _parts(text: str, numbers: list[str], names: list[str]) -> list[Part]:
    """The pieces of a text: what stands between the places, and the places."""
    found: list[Part] = []
    pieces = PLACE.split(text)
    for index, piece in enumerate(pieces):
        if index % 2 == 0:
            found += [Part(piece, -1, -1)] if piece else []
        elif piece in numbers:
            found.append(Part("", numbers.index(piece), -1))
        elif piece in names:
            found.append(Part("", -1, names.index(piece)))
        else:
            found.append(Part("{" + piece + "}", -1, -1))
    return found
