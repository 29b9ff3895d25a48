"""Sound random tables: all that is possible is split again and again, and every piece becomes a row."""

import random

from generator.reading.items import Fact
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Cell, Decision, Span
from tests import made_tables as made

Side = tuple[Span, ...]
Piece = dict[str, Side]


def facts(rng: random.Random) -> list[Fact]:
    """One to six facts of any kind."""
    names = ("alpha", "beta", "gamma", "delta", "epsilon", "zeta")[: rng.randint(1, 6)]
    return [made.fact(name, rng.choice(made.KINDS), rng.randint(2, 5)) for name in names]


def sound_table(rng: random.Random, asked: list[Fact], policy: str, splits: int) -> Decision:
    """A table whose rows part all that is possible among them; in a first-row table the last row asks nothing."""
    pieces: list[Piece] = [{fact.id: full(fact) for fact in asked}]
    for _ in range(splits):
        piece = rng.choice(pieces)
        fact = rng.choice(asked)
        halves = split(rng, fact, piece[fact.id])
        if halves:
            pieces.remove(piece)
            pieces += [{**piece, fact.id: half} for half in halves]
    rows = [made.row(f"R{k}", cells(asked, piece), f"o{k % 3}") for k, piece in enumerate(pieces)]
    if policy == "first_row":
        rows[-1] = made.row("R_last", [], rows[-1].then)
    return made.decision("table", policy, [fact.id for fact in asked], rows, 3)


def book(asked: list[Fact], decision: Decision) -> Rulebook:
    """A rulebook of the table and its facts."""
    return made.rulebook({fact.id: fact for fact in asked}, {decision.id: decision})


def full(fact: Fact) -> Side:
    """All that the fact can be."""
    if fact.kind in ("choice", "yes_no"):
        return tuple(Span(float(k), True, float(k), True) for k in range(int(fact.high) + 1))
    return (Span(-made.FAR, True, made.FAR, True),)


def split(rng: random.Random, fact: Fact, side: Side) -> tuple[Side, Side] | None:
    """The side in two parts that share nothing and leave nothing out; None when it cannot be parted."""
    if fact.kind in ("choice", "yes_no"):
        place = rng.randint(1, len(side) - 1) if len(side) > 1 else 0
        return (side[:place], side[place:]) if place else None
    return _split_line(rng, fact, side[0])


def _split_line(rng: random.Random, fact: Fact, span: Span) -> tuple[Side, Side] | None:
    """A span cut at a whole number inside it; of whole numbers each part keeps at least one."""
    whole = fact.kind != "number"
    cuts = [
        float(k)
        for k in range(1, made.TOP)
        if (span.low + 1 if whole else span.low) < k < (span.high - 1 if whole else span.high)
    ]
    if not cuts:
        return None
    cut = rng.choice(cuts)
    upper = rng.random() < 0.5
    return (Span(span.low, span.low_in, cut, not upper),), (Span(cut, upper, span.high, span.high_in),)


def cells(asked: list[Fact], piece: Piece) -> list[Cell]:
    """The piece as cells; a fact that may be anything has none."""
    return [Cell(fact.id, piece[fact.id], "made", 1) for fact in asked if piece[fact.id] != full(fact)]
