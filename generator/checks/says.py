"""Every message that a calculator says is written, and takes as many numbers and words as the calculator gives.

Calculators make no text: they say `Say("canopy_space.room", [metres], [])`, and the sentence stands in
rules/messages/canopy_space.yml. The check reads the calculators' source. In the example, the calculators say
`guard.choice` with one word.

Wrong:

    # messages/guard.yml
    choice: "Take one of the choices."
    range:
      text: "{fact} is out of range; allowed is {low} to {high}."
      numbers: [{name: low, unit: fact}, {name: high, unit: fact}]
      words: [{name: fact}]
    whole:
      text: "{fact} takes whole numbers only; allowed is {low} to {high}."
      numbers: [{name: low, unit: fact}, {name: high, unit: fact}]
      words: [{name: fact}]

Right:

    # messages/guard.yml
    choice:
      text: "{fact} takes one of its choices only."
      words: [{name: fact}]
    range:
      text: "{fact} is out of range; allowed is {low} to {high}."
      numbers: [{name: low, unit: fact}, {name: high, unit: fact}]
      words: [{name: fact}]
    whole:
      text: "{fact} takes whole numbers only; allowed is {low} to {high}."
      numbers: [{name: low, unit: fact}, {name: high, unit: fact}]
      words: [{name: fact}]
"""

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from generator.answers.catalogue import messages
from generator.checks.shape import Check
from generator.problems import Problem
from generator.reading.items import Message
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook

CALCULATORS = Path(__file__).parent.parent / "calculators"


@dataclass(frozen=True)
class Said:
    """One Say in a calculator's source: the message, how many numbers and words (-1: only known when it runs), and where."""

    message: str
    numbers: int
    words: int
    path: str
    line: int


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each message that is missing or takes other arguments, where its file stands.

    Only files of messages that the rulebook has are looked at, and those of its calculators.
    """
    written = messages(rulebook)
    files = {name: f"rules/messages/{name}.yml" for name in rulebook.calculators}
    files |= {name.partition(".")[0]: message.where.path for name, message in rulebook.messages.items()}
    for said in said_in_calculators():
        message, file = written.get(said.message), said.message.partition(".")[0]
        if message:
            yield from _arguments(said, message)
        elif file in files:
            near = suggestion(said.message, [name for name in written if name.partition(".")[0] == file], "Write it.")
            there = any(message.where.path == files[file] for message in rulebook.messages.values())
            yield Problem(files[file], int(there), f"There is no message `{said.message}`, which {said.path}:{said.line} says.", near)


def _arguments(said: Said, message: Message) -> Iterator[Problem]:
    """Where a message takes more or fewer arguments than it is given."""
    for kind, given, takes in (("number", said.numbers, len(message.numbers)), ("word", said.words, len(message.words))):
        if given not in (-1, takes):
            sentence = f"The message `{said.message}` takes {_count(takes, kind)}, but is given {given}."
            step = f"It is said in {said.path}:{said.line}."
            yield Problem(message.where.path, message.where.line, sentence, step)


@cache
def said_in_calculators() -> tuple[Said, ...]:
    """Every Say with a written id in the calculators."""
    return tuple(
        said for path in sorted(CALCULATORS.glob("*.py")) for said in said_in(path.read_text(encoding="utf-8"), path.name)
    )


def said_in(source: str, name: str) -> Iterator[Said]:
    """Every Say with a written id in a source; either branch of `a if c else b` counts."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "Say" and len(node.args) == 3:
            ids = [one.value for one in _branches(node.args[0]) if isinstance(one, ast.Constant) and isinstance(one.value, str)]
            numbers, words = (len(one.elts) if isinstance(one, ast.List) else -1 for one in node.args[1:])
            yield from (Said(message, numbers, words, f"generator/calculators/{name}", node.lineno) for message in ids)


def _branches(node: ast.expr) -> list[ast.expr]:
    """The values that an expression can take, as far as they are written out."""
    return [*_branches(node.body), *_branches(node.orelse)] if isinstance(node, ast.IfExp) else [node]


def _count(number: int, noun: str) -> str:
    """`no number`, `1 number`, `2 numbers`."""
    return f"{number or 'no'} {noun}" if number < 2 else f"{number} {noun}s"


CHECK = Check("says", "Every message that calculators say is written and takes what they give.", check)
