"""The one shape of all checks, and how they write problems.

A check is a module of its own whose docstring is its manual page: a first line that says what must hold, why and how, then a
`Wrong:` and a `Right:` example. An example is YAML, indented by four spaces, that starts with `# <path under rules/>`.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from generator.problems import Problem
from generator.reading.items import Item
from generator.reading.rulebook import Rulebook


@dataclass(frozen=True)
class Check:
    """A check: the name by which `explain` knows it, one line on what must hold, and the function that finds what does not."""

    name: str
    description: str
    check: Callable[[Rulebook], Iterator[Problem]]


def at(item: Item, sentence: str, next_step: str = "", line: int = 0) -> Problem:
    """A problem of an item, at a line of its file or else where the item begins."""
    return Problem(item.where.path, line or item.where.line, sentence, next_step)


def listed(names: list[str], last: str = "and") -> str:
    """`a`, `a and b`, `a, b and c`."""
    return f" {last} ".join([", ".join(names[:-1]), names[-1]] if len(names) > 1 else names)
