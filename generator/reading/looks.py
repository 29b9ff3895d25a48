"""Looks: drawings with numbered marks that show how to look at a part of the vine, and what is said beside them."""

from dataclasses import dataclass

from generator.reading.items import Cite, Item


@dataclass(frozen=True)
class Scene:
    """One picture of a look: its id (the name its drawing has for it), a caption, and what it shows for those who do not see it."""

    id: str
    caption: str
    described: str


@dataclass(frozen=True)
class Mark:
    """A numbered place in the pictures: its id (the name the drawing has for the place), a term of the glossary, what to see there.

    Its number is its place in the list, from 1; line is where it stands in its file."""

    id: str
    term: str
    text: str
    line: int


@dataclass(frozen=True)
class Said:
    """A sentence or two of the page, how sure we are of it, and what it rests on."""

    text: str
    standing: str
    cites: tuple[Cite, ...]
    line: int


@dataclass(frozen=True)
class Look(Item):
    """How to look at something: pictures drawn by generator/pages/anatomy/<id>.py, numbered marks, plain text.

    stages, decisions and see are ids of stages, decisions and other looks that the page leads to and that lead to it."""

    title: str
    question: str
    intro: str
    stages: tuple[str, ...]
    scenes: tuple[Scene, ...]
    marks: tuple[Mark, ...]
    says: tuple[Said, ...]
    decisions: tuple[str, ...] = ()
    see: tuple[str, ...] = ()

    def number(self, mark: str) -> int:
        """The number of a mark, 0 when the look does not name it."""
        return next((place for place, one in enumerate(self.marks, 1) if one.id == mark), 0)
