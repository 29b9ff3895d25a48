"""Every source and every piece of evidence is cited by something.

What is taken in but never used tells a reader that the guide rests on it, and it does not. Take it in with the row or
the value that needs it.

Wrong:

    # evidence/zz-01.yml
    topic: spurs
    kind: fact
    statement: A spur has a few nodes.
    standing: published
    sources: [{id: miller_2001, place: page 3}]

Right:

    # evidence/zz-01.yml
    topic: spurs
    kind: fact
    statement: A spur has a few nodes.
    standing: published
    sources: [{id: miller_2001, place: page 3}]
    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    standing: published
    sources: [zz-01]
"""

from collections.abc import Iterator

from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each piece of evidence and each source that nothing cites."""
    cited = set(_cited(rulebook))
    for evidence in rulebook.evidence.values():
        if evidence.id not in cited:
            yield at(evidence, f"The evidence `{evidence.id}` is never cited.", "Cite it where it is used, or take it away.")
    behind = {cite.id for evidence in rulebook.evidence.values() for cite in evidence.cites}
    for source in rulebook.sources.values():
        if source.id not in cited | behind:
            yield at(source, f"The source `{source.id}` is never cited.", "Cite it where it is used, or take it away.")


def _cited(rulebook: Rulebook) -> Iterator[str]:
    """Every id that rows, figures, assumptions, terms, varieties, calculators, drawings, pages for the hands, faults and worked examples cite."""
    groups = [
        *(row.cites for decision in rulebook.decisions.values() for row in decision.rows),
        *(one.cites for decision in rulebook.decisions.values() for outcome in decision.outcomes for one in outcome.winters),
        *(figure.cites for value in rulebook.values.values() for figure in value.figures),
        *(fact.assumed.cites for fact in rulebook.facts.values() if fact.assumed),
        *(term.cites for term in rulebook.terms.values()),
        *(cites for variety in rulebook.varieties.values() for cites in variety.resting),
        *(form.cites for form in rulebook.calculators.values()),
        *(fault.cites for fault in rulebook.faults.values()),
        *(said.cites for page in (*rulebook.looks.values(), *rulebook.hands.values()) for said in page.says),
    ]
    yield from (cite.id for group in groups for cite in group)
    for item in (*rulebook.decisions.values(), *rulebook.calculators.values()):
        yield from (example.source for example in item.examples)


CHECK = Check("citing", "Every source and every piece of evidence is cited.", check)
