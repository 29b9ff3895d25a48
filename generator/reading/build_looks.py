"""From plain data of the right shape to a Look, or to a page for the hands."""

from generator.reading.build_items import BadItem, cites, common
from generator.reading.documents import Document
from generator.reading.hands import Hands
from generator.reading.looks import Look, Mark, Said, Scene


def look(document: Document) -> Look:
    """A look. Raises BadItem when a mark or a picture has the id of another."""
    data = document.data
    _refuse_doubles(document, "marks")
    _refuse_doubles(document, "pictures")
    return Look(
        **common(document),
        **{name: data[name] for name in ("title", "question", "intro")},
        stages=tuple(data["stages"]),
        scenes=tuple(Scene(one["id"], one["caption"], one["described"]) for one in data["pictures"]),
        marks=tuple(
            Mark(one["id"], one["term"], one["text"], document.line("marks", place)) for place, one in enumerate(data["marks"])
        ),
        says=_said(document, "says"),
        decisions=tuple(data.get("decisions", ())),
        see=tuple(data.get("see", ())),
    )


def hands(document: Document) -> Hands:
    """A page for the hands."""
    data = document.data
    lists = ("stages", "take", "hours", "cautions", "looks", "decisions", "calculators", "see")
    return Hands(
        **common(document),
        **{name: data[name] for name in ("number", "title", "question")},
        **{name: tuple(data.get(name, ())) for name in lists},
        **{name: _said(document, name) for name in ("when", "signs", "steps", "never", "check")},
    )


def _said(document: Document, part: str) -> tuple[Said, ...]:
    """What a part of a page claims, each with the line on which it stands."""
    entries = enumerate(document.data.get(part, ()))
    return tuple(Said(one["text"], one["standing"], cites(one), document.line(part, place)) for place, one in entries)


def _refuse_doubles(document: Document, part: str) -> None:
    """Ids are unique among the marks, and among the pictures."""
    seen: set[str] = set()
    for place, one in enumerate(document.data[part]):
        if one["id"] in seen:
            sentence = f"`{one['id']}` stands twice in `{part}`."
            raise BadItem([document.problem((part, place), sentence, "Each number belongs to one line: put the two together.")])
        seen.add(one["id"])
