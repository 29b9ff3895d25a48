"""From the plain data of a variety to its record."""

from generator.reading.build_items import cites, common
from generator.reading.documents import Document
from generator.reading.varieties import Finding, Listing, Synonym, Variety


def variety(document: Document) -> Variety:
    """A variety, what lists say of it and what was found of its fruit."""
    data = document.data
    return Variety(
        **common(document),
        name=data["name"],
        use=data["use"],
        also=tuple(data.get("also", ())),
        synonyms=tuple(_synonym(entry) for entry in data.get("synonyms", ())),
        lists=tuple(Listing(entry["says"], entry["standing"], cites(entry)) for entry in data.get("lists", ())),
        fruitfulness=tuple(_finding(entry) for entry in data.get("fruitfulness", ())),
        note=data.get("note", ""),
        cites=cites(data),
    )


def _synonym(entry: str | dict) -> Synonym:
    """Another name: plain text is one told from memory."""
    return Synonym(entry) if isinstance(entry, str) else Synonym(entry["name"], cites(entry))


def _finding(entry: dict) -> Finding:
    """What one source found of the fruit by node."""
    return Finding(
        **{name: entry[name] for name in ("nodes", "measure", "says", "place", "standing")},
        cites=cites(entry),
        numbers=tuple(float(number) for number in entry.get("numbers", ())),
    )
