"""The rows of the table that is made from rules/varieties/: one row a variety, by what the published lists say of it."""

from generator.reading.items import STANDINGS, Choice, Cite
from generator.reading.tables import Cell, Outcome, Row, Span
from generator.reading.varieties import Variety

FACT = "variety"
OTHER = Choice("other", "Another variety")


def variety_choices(varieties: dict[str, Variety]) -> tuple[Choice, ...]:
    """The choices of the fact `variety`: every variety in the order of the files, and `other` last."""
    named = (Choice(variety.id, variety.name, ", ".join(variety.other_names)) for variety in varieties.values())
    return (*named, OTHER)


def variety_rows(varieties: dict[str, Variety], outcomes: tuple[Outcome, ...], line: int) -> tuple[Row, ...]:
    """One row for each variety and for `other`; the reason of a row is the sentence of its outcome."""
    says = {outcome.id: outcome.says for outcome in outcomes}
    rows = []
    for place, choice in enumerate(variety_choices(varieties)):
        variety = varieties.get(choice.id)
        then = verdict(variety)
        rows.append(
            Row(
                id=choice.id,
                when=(Cell(FACT, (Span(float(place), True, float(place), True),), choice.id, line),),
                then=then,
                because=says[then],
                standing=_weakest(variety),
                line=variety.where.line if variety else line,
                cites=_cites(variety),
                note=variety.note if variety else "",
                note_cites=variety.cites if variety else (),
            )
        )
    return tuple(rows)


def verdict(variety: Variety | None) -> str:
    """`spur` or `cane` when every list says just that, `conflict` when they differ or one allows either (as dis-02 counts
    them), `nothing_published` when no list names the variety."""
    if variety is None or not variety.lists:
        return "nothing_published"
    said = {listing.says for listing in variety.lists}
    return said.pop() if len(said) == 1 and "either" not in said else "conflict"


def _weakest(variety: Variety | None) -> str:
    """The weakest standing among the lists; that no list was found is our own judgement."""
    if variety is None or not variety.lists:
        return "our_judgement"
    return max((listing.standing for listing in variety.lists), key=STANDINGS.index)


def _cites(variety: Variety | None) -> tuple[Cite, ...]:
    """What the lists cite, each once."""
    found = (cite for listing in (variety.lists if variety else ()) for cite in listing.cites)
    return tuple(dict.fromkeys(found))
