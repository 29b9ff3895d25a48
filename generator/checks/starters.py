"""Nothing of a starter file is left in an item.

`new KIND ID` begins a file that can be read as it is, so that you can write it bit by bit. Its words that begin “Say here” are
for you and not for growers, and what stands beside them, such as the number 1 of a new value, means nothing yet.

Wrong:

    # terms/lag.yml
    term: lag
    definition: Say here in a sentence or two what it means.

Right:

    # terms/lag.yml
    term: lag
    definition: A shoot that starts late because those nearer to the tip take the sap.
"""

from collections.abc import Iterator
from dataclasses import fields, is_dataclass

from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.items import Item
from generator.reading.rulebook import Rulebook

MARK = "say here"


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each text of a starter file that still stands in an item, at its line as far as that is known."""
    kinds = (getattr(rulebook, field.name) for field in fields(rulebook))
    for item in (item for kind in kinds if isinstance(kind, dict) for item in kind.values()):
        for text, line in _texts(item, 0):
            if MARK in text.lower():
                yield at(item, f"Here the starter file still speaks: “{text}”", "Write it to the end, or take it away.", line)


def _texts(part: object, line: int) -> Iterator[tuple[str, int]]:
    """Every text in an item, with the line of what it stands in (0 where that is the item itself)."""
    if isinstance(part, str):
        yield part, line
    elif isinstance(part, dict):
        for inner in part.values():
            yield from _texts(inner, line)
    elif isinstance(part, (tuple, list)):
        for inner in part:
            yield from _texts(inner, line)
    elif is_dataclass(part):
        own = line if isinstance(part, Item) else getattr(part, "line", line)
        for field in fields(part):
            yield from _texts(getattr(part, field.name), own)


CHECK = Check("starters", "Nothing of a starter file is left in an item.", check)
