"""From plain data of the right shape to the records of items.py and rulebook.py. Each builder takes one document.

A builder may raise BadItem with everything that keeps the item from being built; shapes were checked before.
"""

from generator.problems import Problem
from generator.reading.assuming import BadAssumption, assumption
from generator.reading.cells import BadCell, day_number
from generator.reading.documents import Document
from generator.reading.items import (
    Argument,
    Assumption,
    Caution,
    Choice,
    Cite,
    Evidence,
    Fact,
    Figure,
    Message,
    Source,
    Term,
    Unit,
    Value,
)
from generator.reading.near import suggestion
from generator.reading.rulebook import Block, LedgerEntry, Stage


class BadItem(Exception):
    """An item that cannot be built; carries why (no problem when it only rests on another bad item)."""

    def __init__(self, problems: list[Problem]) -> None:
        super().__init__()
        self.problems = problems


def common(document: Document) -> dict:
    """The fields that every item has."""
    return {"id": document.id, "where": document.where, "replaced": document.replaced}


def cites(data: dict) -> tuple[Cite, ...]:
    """The `sources` of anything: ids, or ids with their places."""
    return tuple(
        Cite(entry) if isinstance(entry, str) else Cite(entry["id"], entry.get("place", ""))
        for entry in data.get("sources", ())
    )


def fact(document: Document, varieties: tuple[Choice, ...]) -> Fact:
    """A fact; `choices: varieties` becomes the given choices."""
    data = document.data
    low, high = _range(document)
    choices = (
        varieties if data.get("choices") == "varieties" else tuple(_choice(entry) for entry in data.get("choices", ()))
    )
    if data["kind"] == "choice":
        low, high = 0.0, float(len(choices) - 1)
    elif data["kind"] == "yes_no":
        low, high = 0.0, 1.0
    return Fact(
        **common(document),
        **{name: data[name] for name in ("label", "ask", "observe", "kind", "lifetime", "code", "stage")},
        unit=data.get("unit", ""),
        low=low,
        high=high,
        step=float(data.get("step", 1)),
        choices=choices,
        default_value=data.get("default", ""),
        assumed=_assumed(document, choices),
        computed_by=data.get("computed_by", ""),
    )


def _assumed(document: Document, choices: tuple[Choice, ...]) -> Assumption | None:
    """What is assumed of the fact, if it says so itself."""
    try:
        return assumption(document, tuple(choice.id for choice in choices), cites(document.data.get("assume", {})))
    except BadAssumption as bad:
        raise BadItem([document.problem(("assume", bad.key), f"`assume`: `{bad.key}` {bad.sentence}.", bad.next_step)]) from None


def _choice(entry: dict) -> Choice:
    """One choice of a fact."""
    return Choice(entry["id"], entry["label"], entry.get("note", ""))


def _range(document: Document) -> tuple[float, float]:
    """The ends of `range` as numbers (dates as days), 0 and 0 when there is none."""
    ends = document.data.get("range")
    if ends is None:
        return 0.0, 0.0
    dates = document.data.get("kind") == "date"
    if any(isinstance(end, str) != dates for end in ends):
        step = "Write two dates." if dates else "Write two numbers."
        raise BadItem([document.problem(("range",), "`range` does not fit the kind of the fact.", step)])
    try:
        low, high = (float(day_number(end)) if dates else float(end) for end in ends)
    except BadCell as bad:
        raise BadItem([document.problem(("range",), f"`range` {bad.sentence}.", bad.next_step)]) from None
    if low >= high:
        raise BadItem(
            [document.problem(("range",), "`range` is the wrong way round or empty.", "Write the lowest first.")]
        )
    return low, high


def value(document: Document) -> Value:
    """A value with every author's figure."""
    data = document.data
    low, high = _range(document)
    figures = tuple(map(_figure, data["figures"]))
    ids = [figure.id for figure in figures]
    if data["follow"] not in ids:
        sentence = f"`follow` names `{data['follow']}`, and no figure has that id."
        raise BadItem([document.problem(("follow",), sentence, suggestion(data["follow"], ids))])
    return Value(
        **common(document),
        **{name: data[name] for name in ("label", "unit", "holds", "follow", "because")},
        figures=figures,
        reviewed_on=data["reviewed"]["on"],
        reviewed_by=data["reviewed"]["by"],
        low=low,
        high=high,
    )


def _figure(entry: dict) -> Figure:
    """One author's figure."""
    scope = {fact: tuple(choices) for fact, choices in entry.get("for", {}).items()}
    given = (entry["id"], float(entry["number"]), entry["standing"], entry["who"], cites(entry), entry.get("note", ""))
    return Figure(*given, scope)


def source(document: Document) -> Source:
    """A published source."""
    return Source(**common(document), **document.data)


def evidence(document: Document) -> Evidence:
    """A published value or fact."""
    data = document.data
    return Evidence(
        **common(document),
        **{name: data[name] for name in ("topic", "kind", "statement", "standing")},
        cites=cites(data),
        inputs=data.get("inputs", {}),
        outputs=data.get("outputs", {}),
        our_arithmetic=data.get("our_arithmetic", {}),
        table=data.get("table", []),
        strength=data.get("strength", ""),
        note=data.get("note", ""),
    )


def message(document: Document) -> Message:
    """A message; plain text is a message without arguments."""
    data = document.data if isinstance(document.data, dict) else {"text": document.data}
    numbers = tuple(Argument(entry["name"], entry["unit"], entry.get("digits", 0)) for entry in data.get("numbers", ()))
    words = tuple(Argument(entry["name"]) for entry in data.get("words", ()))
    names = [argument.name for argument in numbers]
    if data.get("count") and data["count"] not in names:
        sentence = f"`count` names `{data['count']}`, which is not one of the numbers."
        raise BadItem([document.problem(("count",), sentence, suggestion(data["count"], names))])
    return Message(
        **common(document),
        text=data["text"],
        one=data.get("one", ""),
        count=data.get("count", ""),
        numbers=numbers,
        words=words,
    )


def term(document: Document) -> Term:
    """A word of the trade."""
    data = document.data
    return Term(
        **common(document),
        term=data["term"],
        definition=data["definition"],
        synonyms=tuple(data.get("synonyms", ())),
        standard=data.get("standard", ""),
        see=tuple(data.get("see", ())),
        standing=data.get("standing", "common_practice"),
        cites=cites(data),
    )


def caution(document: Document) -> Caution:
    """A caution."""
    return Caution(**common(document), **document.data)


def unit(document: Document) -> Unit:
    """A unit; without `us` it is shown alike everywhere."""
    data = document.data
    us = data.get("us") or {"symbol": data["symbol"], "factor": 1, "digits": data["digits"]}
    return Unit(
        **common(document),
        **{name: data[name] for name in ("symbol", "name", "pint", "digits")},
        us_symbol=us["symbol"],
        us_factor=float(us["factor"]),
        us_digits=us["digits"],
    )


def stage(document: Document) -> Stage:
    """A stage of the work."""
    return Stage(**common(document), **{**document.data, "asks": tuple(document.data.get("asks", ()))})


def block(document: Document) -> Block:
    """An invented block."""
    return Block(**common(document), **document.data)


def ledger(document: Document) -> list[LedgerEntry]:
    """The entries of a ledger of ids."""
    return [
        LedgerEntry(
            id=name,
            where=type(document.where)(document.path, document.line(kind, name)),
            kind=kind,
            **{key: str(entry[key]) for key in entry},
        )
        for kind, entries in document.data.items()
        for name, entry in entries.items()
    ]
