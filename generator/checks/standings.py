"""Every row, figure, assumption, term, list, drawing, page for the hands and fault says how sure we are, and has the sources that this needs.

`published`, `abstract` and `second_hand` need a source; `common_practice` is what has none: where a source prints it,
the standing is the source's. What is shown must never look surer than what it rests on: a row that cites evidence of
which only the abstract was read is not `published`.

Wrong:

    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    standing: published

Right:

    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    standing: common_practice
"""

from collections.abc import Iterator
from dataclasses import dataclass

from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.items import Cite, Item
from generator.reading.rulebook import Rulebook

NEEDS_SOURCE = ("published", "abstract", "second_hand")
SUREST_FIRST = ("published", "abstract", "second_hand")
WEAKER = len(SUREST_FIRST)


@dataclass(frozen=True)
class Stands:
    """Something with a standing: the item it belongs to, how to name it, and its line."""

    item: Item
    named: str
    standing: str
    cites: tuple[Cite, ...]
    line: int = 0


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each standing without its source, each practice with one, and each that looks surer than its evidence."""
    for one in _all(rulebook):
        if one.standing in NEEDS_SOURCE and not one.cites:
            yield at(
                one.item,
                f"{one.named} is `{one.standing}` and names no source.",
                "Name the source, or give it the standing it has.",
                one.line,
            )
        elif one.standing == "common_practice" and one.cites:
            step = "Give it the standing of its source, or leave the source out."
            yield at(one.item, f"{one.named} is `common_practice` and yet names a source.", step, one.line)
        elif one.standing in SUREST_FIRST and rank(one.standing) < _best(rulebook, one.cites):
            best = min((_evidence_standing(rulebook, cite) for cite in one.cites), key=rank)
            yield at(
                one.item,
                f"{one.named} is `{one.standing}`, but what it cites is `{best}` at best.",
                f"Write `standing: {best}`.",
                one.line,
            )


def rank(standing: str) -> int:
    """0 for the surest; everything that is not read from print comes last."""
    return SUREST_FIRST.index(standing) if standing in SUREST_FIRST else WEAKER


def _best(rulebook: Rulebook, cites: tuple[Cite, ...]) -> int:
    """The rank of the surest evidence cited."""
    return min((rank(_evidence_standing(rulebook, cite)) for cite in cites), default=WEAKER)


def _evidence_standing(rulebook: Rulebook, cite: Cite) -> str:
    """The standing of the evidence; a source cited by itself was read."""
    evidence = rulebook.evidence.get(cite.id)
    return evidence.standing if evidence else "published"


def _all(rulebook: Rulebook) -> Iterator[Stands]:
    """Everything with a standing."""
    for decision in rulebook.decisions.values():
        if not decision.generated:
            yield from (Stands(decision, f"Row {row.id}", row.standing, row.cites, row.line) for row in decision.rows)
            winters = [(outcome.id, place, one) for outcome in decision.outcomes for place, one in enumerate(outcome.winters)]
            yield from (Stands(decision, f"Winter {k + 1} of `{name}`", one.standing, one.cites, one.line) for name, k, one in winters)
    for fact in rulebook.facts.values():
        if fact.assumed:
            yield Stands(fact, f"What `{fact.id}` assumes", fact.assumed.standing, fact.assumed.cites)
    for value in rulebook.values.values():
        yield from (Stands(value, f"Figure `{figure.id}`", figure.standing, figure.cites) for figure in value.figures)
    for variety in rulebook.varieties.values():
        yield from (Stands(variety, f"The list that says `{one.says}`", one.standing, one.cites) for one in variety.lists)
        yield from (Stands(variety, f"What was found on nodes `{one.nodes}`", one.standing, one.cites) for one in variety.fruitfulness)
    for term in rulebook.terms.values():
        yield Stands(term, f"The term “{term.term}”", term.standing, term.cites)
    for page in (*rulebook.looks.values(), *rulebook.hands.values()):
        yield from (Stands(page, f"What is said with “{said.text[:30]}…”", said.standing, said.cites, said.line) for said in page.says)
    for fault in rulebook.faults.values():
        yield Stands(fault, f"The fault `{fault.id}`", fault.standing, fault.cites)
    for evidence in rulebook.evidence.values():
        yield Stands(evidence, f"The evidence `{evidence.id}`", evidence.standing, evidence.cites)


CHECK = Check("standings", "Every standing has the sources it needs and is no surer than they are.", check)
