"""A grape variety as a record: its names, what lists say of it, and what was found of its fruit by node."""

from dataclasses import dataclass

from generator.reading.items import Cite, Item


@dataclass(frozen=True)
class Synonym:
    """Another name; cites say where it is printed, without any it is told from memory."""

    name: str
    cites: tuple[Cite, ...] = ()


@dataclass(frozen=True)
class Listing:
    """What one source's list says of a variety: spur, cane, either."""

    says: str
    standing: str
    cites: tuple[Cite, ...]


@dataclass(frozen=True)
class Finding:
    """What one source found of the fruit by node.

    nodes are counted from the base: `9`, `1 to 2`, `beyond 10`, or `base`, `tip`, `all`. measure is the id of what was
    counted; says tells it in words; numbers are the figures of it as the source prints them; place is where the vines stood.
    """

    nodes: str
    measure: str
    says: str
    place: str
    standing: str
    cites: tuple[Cite, ...]
    numbers: tuple[float, ...] = ()


@dataclass(frozen=True)
class Variety(Item):
    """A variety: names, uses (the main one first), what the lists say of it, what was found of its fruit by node, and a note
    with what that rests on.

    The verdicts of the lists become the generated table `variety_lists`; no findings mean that nothing published was found.
    """

    name: str
    use: str
    also: tuple[str, ...] = ()
    synonyms: tuple[Synonym, ...] = ()
    lists: tuple[Listing, ...] = ()
    fruitfulness: tuple[Finding, ...] = ()
    note: str = ""
    cites: tuple[Cite, ...] = ()

    @property
    def other_names(self) -> tuple[str, ...]:
        """Its synonyms as they are written."""
        return tuple(synonym.name for synonym in self.synonyms)

    @property
    def resting(self) -> tuple[tuple[Cite, ...], ...]:
        """What each part of it cites."""
        return tuple(one.cites for one in (*self.lists, *self.fruitfulness, *self.synonyms, self))
