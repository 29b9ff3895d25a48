"""Pages for the hands: one piece of work at the vine, step by step."""

from dataclasses import dataclass

from generator.reading.items import Item
from generator.reading.looks import Said


@dataclass(frozen=True)
class Hands(Item):
    """One piece of work: its place in the winter's work, when it is done, what to take along, how the wood looks, the steps in order,
    what is never done, how to see that it is right.

    hours are ids of values, the rest ids of what the page leads to; stages, decisions and calculators lead back to it."""

    number: int
    title: str
    question: str
    stages: tuple[str, ...]
    when: tuple[Said, ...]
    take: tuple[str, ...]
    signs: tuple[Said, ...]
    steps: tuple[Said, ...]
    never: tuple[Said, ...]
    check: tuple[Said, ...]
    hours: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    looks: tuple[str, ...] = ()
    decisions: tuple[str, ...] = ()
    calculators: tuple[str, ...] = ()
    see: tuple[str, ...] = ()

    @property
    def says(self) -> tuple[Said, ...]:
        """Everything that the page claims, in its order."""
        return (*self.when, *self.signs, *self.steps, *self.never, *self.check)
