"""Every message shows all it is given, and names nothing that it is not given.

A message declares its numbers, each with unit and digits, and its words. A name in braces that is not declared would be
printed as it stands; one that is declared and not shown is a number nobody sees. Of a number whose unit is `fact`, the
first word must name the fact.

Wrong:

    # messages/spacing.yml
    rows:
      text: "The rows are {distance} apart."
      numbers: [{name: spacing, unit: m, digits: 2}]

Right:

    # messages/spacing.yml
    rows:
      text: "The rows are {spacing} apart."
      numbers: [{name: spacing, unit: m, digits: 2}]
"""

from collections.abc import Iterator

from generator.answers.catalogue import PLACE
from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.items import Message
from generator.reading.near import nearest
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """Problems of every written message."""
    for message in rulebook.messages.values():
        for sentence, step in _faults(message):
            yield at(message, f"Message `{message.id}`: {sentence}", step)


def _faults(message: Message) -> Iterator[tuple[str, str]]:
    """What is wrong with one message."""
    declared = [one.name for one in (*message.numbers, *message.words)]
    shown = set(PLACE.findall(message.text))
    for name in sorted((shown | set(PLACE.findall(message.one))) - set(declared)):
        yield f"`{{{name}}}` is not declared.", _meant(name, declared) or "Declare it under `numbers` or `words`."
    for name in declared:
        if name not in shown:
            yield f"`{name}` is declared and never shown.", "Show it in the text, or take it out."
    for name in sorted({name for name in declared if declared.count(name) > 1}):
        yield f"`{name}` is declared twice.", "Give each argument a name of its own."
    if message.count and message.count not in [one.name for one in message.numbers]:
        yield f"`count` names `{message.count}`, which is not one of its numbers.", "Name the number that decides between one and many."
    if bool(message.one) != bool(message.count):
        yield "`one` and `count` go together.", "Write both, or neither."
    if any(one.unit == "fact" for one in message.numbers) and not message.words:
        yield "a number with the unit `fact` needs a word that names the fact.", "Declare the fact as the first of its `words`."


def _meant(name: str, declared: list[str]) -> str:
    """The declared name that was probably meant, as a next step."""
    near = nearest(name, declared)
    return f"Did you mean `{near}`?" if near else ""


CHECK = Check("messages", "Every argument of a message is declared and shown.", check)
