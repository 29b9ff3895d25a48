"""Random rulebooks of decision tables for tests: facts on small grids, tables that may feed one another."""

import random
from dataclasses import dataclass, fields, replace

from generator.calculators.facts import ENTERED, NOT_ASKED, UNKNOWN, Facts
from generator.reading.items import Choice, Fact, Where
from generator.reading.rulebook import BASE_EDITION, Rulebook
from generator.reading.tables import Cell, Decision, Outcome, Row, Span

HERE = Where("made.yml", 1)
FAR = 1e300
KINDS = ("number", "whole", "choice", "yes_no", "date")
TOP = 6
WEIGHTS = (-2.0, -1.0, 0.0, 0.5, 1.0, 2.0)


def rulebook(facts: dict[str, Fact], decisions: dict[str, Decision]) -> Rulebook:
    """A rulebook of these facts and decisions and nothing else."""
    given = {"facts": facts, "decisions": decisions, "ids": (), "edition": BASE_EDITION, "version": "0" * 10}
    return Rulebook(**{one.name: given.get(one.name, {}) for one in fields(Rulebook)})


def fact(name: str, kind: str, size: int = TOP) -> Fact:
    """A fact from 0 to TOP, or with `size` choices."""
    high = {"choice": size - 1, "yes_no": 1}.get(kind, TOP)
    choices = tuple(Choice(f"{name}_{k}", f"Choice {k}") for k in range(size)) if kind == "choice" else ()
    step = 0.5 if kind == "number" else 1.0
    return Fact(
        name, HERE, name.title(), "?", "", kind, "block", name[:2].upper(), "assess", "", 0.0, float(high), step, choices
    )


def cell(fact: Fact, low: float, low_in: bool, high: float, high_in: bool) -> Cell:
    """A cell of one span."""
    return Cell(fact.id, (Span(low, low_in, high, high_in),), "made", 1)


def any_cell(rng: random.Random, fact: Fact) -> Cell:
    """A random cell of one or two spans on the fact's grid; it may be one that nothing fits."""
    if fact.kind in ("choice", "yes_no"):
        size = len(fact.choices) or 2
        wanted = sorted(rng.sample(range(size), rng.randint(1, size)))
        return Cell(fact.id, tuple(Span(float(k), True, float(k), True) for k in wanted), "made", 1)
    cuts = sorted(rng.sample(range(TOP + 1), rng.choice((2, 4))))
    spans = [Span(float(a), rng.random() < 0.5, float(b), rng.random() < 0.5) for a, b in zip(cuts[::2], cuts[1::2])]
    if rng.random() < 0.3:
        spans[0] = replace(spans[0], low=-FAR)
    if rng.random() < 0.3:
        spans[-1] = replace(spans[-1], high=FAR)
    return Cell(fact.id, tuple(spans), "made", 1)


def decision(
    name: str, policy: str, facts: list[str], rows: list[Row], outcomes: int, sums: list[tuple[Span, ...]] | None = None
) -> Decision:
    """A decision of these rows with outcomes o0, o1, ..."""
    bands = sums or [()] * outcomes
    made = tuple(Outcome(f"o{k}", f"Outcome {k}", f"Outcome {k}.", sums=bands[k]) for k in range(outcomes))
    return Decision(name, HERE, name, "?", "", "assess", policy, tuple(facts), made, tuple(rows), ())


def row(name: str, cells: list[Cell], outcome: str, weight: float = 0.0) -> Row:
    """A row with a standing of ours."""
    return Row(name, tuple(cells), outcome, f"Because {name}.", "our_judgement", 1, weight=weight)


def derived(decision: Decision) -> Fact:
    """The outcome of a decision as a fact that cells can be made on."""
    return fact(decision.id, "choice", len(decision.outcomes))


def random_decision(rng: random.Random, name: str, asked: list[Fact]) -> Decision:
    """A table of a random policy with random rows on the facts."""
    policy = rng.choice(("one_row", "first_row", "first_row", "collect"))
    outcomes = rng.randint(2, 4)
    rows = []
    for k in range(rng.randint(1, 7)):
        cells = [any_cell(rng, fact) for fact in asked if rng.random() < 0.6]
        weight = rng.choice(WEIGHTS) if policy == "collect" else 0.0
        rows.append(row(f"R{k}", cells, "" if policy == "collect" else f"o{rng.randrange(outcomes)}", weight))
    if policy == "first_row" and rng.random() < 0.7:
        rows.append(row("R9", [], f"o{rng.randrange(outcomes)}"))
    return decision(
        name, policy, [fact.id for fact in asked], rows, outcomes, _bands(outcomes) if policy == "collect" else None
    )


def _bands(outcomes: int) -> list[tuple[Span, ...]]:
    """The sums of weights cut into as many bands as there are outcomes."""
    cuts = [-FAR, *[float(k) for k in range(outcomes - 1)], FAR]
    return [(Span(low, low != -FAR, high, False),) for low, high in zip(cuts, cuts[1:])]


def weighing(rng: random.Random, size: int) -> Decision:
    """A table that weighs many small facts, `fact_0` and so on, in rows of one or two cells; as small_facts has them."""
    asked = list(small_facts(size).values())
    rows = []
    for k in range(size + rng.randint(0, 4)):
        cells = [any_cell(rng, asked[c]) for c in sorted(rng.sample(range(size), rng.choice((1, 1, 2))))]
        rows.append(row(f"R{k}", cells, "", rng.choice(WEIGHTS)))
    return decision("weighing", "collect", list(small_facts(size)), rows, 4, _bands(4))


def small_facts(size: int) -> dict[str, Fact]:
    """Facts of two and three choices in turn."""
    kinds = (("yes_no", 2), ("choice", 3))
    return {f"fact_{k}": fact(f"fact_{k}", *kinds[k % 2]) for k in range(size)}


@dataclass(frozen=True)
class Chain:
    """A rulebook of up to three tables of which the last, `top`, may ask the others."""

    book: Rulebook
    top: str


def random_chain(rng: random.Random) -> Chain:
    """A random chain of tables over two to four base facts."""
    facts = [
        fact(name, rng.choice(KINDS), rng.randint(2, 4)) for name in ("alpha", "beta", "gamma", "delta")[: rng.randint(2, 4)]
    ]
    decisions: dict[str, Decision] = {}
    for name in ("first", "second", "third")[: rng.randint(1, 3)]:
        pool = [*facts, *(derived(one) for one in decisions.values())]
        asked = rng.sample(pool, rng.randint(1, min(4, len(pool))))
        decisions[name] = random_decision(rng, name, asked)
    return Chain(rulebook({one.id: one for one in facts}, decisions), list(decisions)[-1])


def random_number(rng: random.Random, fact: Fact) -> float:
    """A value of the fact: on its grid, at its boundaries or between them."""
    if fact.kind == "number":
        return rng.randint(0, 2 * TOP) / 2
    return float(rng.randint(0, int(fact.high)))


def random_facts(rng: random.Random, book: Rulebook, known: float) -> Facts:
    """Each fact known with the given chance, else not asked or asked in vain."""
    numbers, statuses = [], []
    for one in book.facts.values():
        is_known = rng.random() < known
        numbers.append(random_number(rng, one) if is_known else 0.0)
        statuses.append(ENTERED if is_known else rng.choice((NOT_ASKED, UNKNOWN)))
    return Facts(list(book.facts), numbers, statuses)
