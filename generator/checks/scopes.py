"""What a figure is made for is a fact that has choices, and choices that it has.

Authors make their figures for some grapes, canopies or uses. `for` says so, and a calculator that shows every author's rule
tells a reader which of them fit the vine in front of him. A name that leads nowhere would make a rule fit all vines.

Wrong:

    # facts/severe_winters.yml
    label: Severe winters
    ask: Do winters kill buds or trunks here?
    observe: Think of the last ten winters.
    kind: yes_no
    lifetime: block
    code: SV
    stage: assess
    # values/nodes_per_spur_most.yml
    label: Most nodes on a spur
    unit: count
    range: [1, 4]
    holds: Cordons
    figures:
      - {id: ours, number: 2, standing: our_judgement, who: Our judgement, for: {severe_winters: [often]}}
    follow: ours
    because: No source was read.
    reviewed: {on: 2026-11-25, by: the guide's authors}

Right:

    # facts/severe_winters.yml
    label: Severe winters
    ask: Do winters kill buds or trunks here?
    observe: Think of the last ten winters.
    kind: yes_no
    lifetime: block
    code: SV
    stage: assess
    # values/nodes_per_spur_most.yml
    label: Most nodes on a spur
    unit: count
    range: [1, 4]
    holds: Cordons
    figures:
      - {id: ours, number: 2, standing: our_judgement, who: Our judgement, for: {severe_winters: [yes]}}
    follow: ours
    because: No source was read.
    reviewed: {on: 2026-11-25, by: the guide's authors}
"""

from collections.abc import Iterator

from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.items import Fact, Value
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook

CHOOSING = ("choice", "yes_no")


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each fact or choice that a figure's `for` names and that is not there."""
    choosing = {fact.id: fact for fact in rulebook.facts.values() if fact.kind in CHOOSING}
    for value in rulebook.values.values():
        for figure in value.figures:
            for name, choices in figure.scope.items():
                if name in choosing:
                    yield from _choices(value, figure.id, choosing[name], choices)
                else:
                    sentence = f"Figure `{figure.id}` is made for `{name}`, which is no fact with choices."
                    yield at(value, sentence, suggestion(name, list(choosing)))


def _choices(value: Value, figure: str, fact: Fact, choices: tuple[str, ...]) -> Iterator[Problem]:
    """The choices that the fact does not have."""
    there = [choice.id for choice in fact.choices] or ["no", "yes"]
    for choice in choices:
        if choice not in there:
            sentence = f"Figure `{figure}` is made for `{choice}`, which is no choice of `{fact.id}`."
            yield at(value, sentence, suggestion(choice, there))


CHECK = Check("scopes", "What a figure is made for is a choice of a fact.", check)
