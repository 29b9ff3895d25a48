"""Every figure lies in its value's range, and every default in its fact's range.

A range is the first net against a slip of the pen: a spacing of 24 m instead of 2.4 m. It must hold for the guide's own
numbers too. A step must be above zero, or nothing could be rounded to it.

Wrong:

    # values/tip_gap_m.yml
    label: Gap between the tips of neighbouring arms
    unit: m
    range: [0, 1]
    holds: Everywhere.
    figures:
      - {id: ours, number: 10, standing: common_practice, who: Common practice}
    follow: ours
    because: It is the only one.
    reviewed: {on: 2026-11-25, by: the guide's authors}

Right:

    # values/tip_gap_m.yml
    label: Gap between the tips of neighbouring arms
    unit: m
    range: [0, 1]
    holds: Everywhere.
    figures:
      - {id: ours, number: 0.1, standing: common_practice, who: Common practice}
    follow: ours
    because: It is the only one.
    reviewed: {on: 2026-11-25, by: the guide's authors}
"""

from collections.abc import Iterator

from generator.answers.specs import fact_spec
from generator.calculators.guard import faults_of
from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each number outside its range and each range or step that cannot be."""
    for value in rulebook.values.values():
        if not value.low <= value.high:
            yield at(value, f"The range of `{value.id}` ends before it begins.", "Write the smaller number first.")
        for figure in value.figures:
            if value.low <= value.high and not value.low <= figure.number <= value.high:
                sentence = f"Figure `{figure.id}` is {figure.number:g}, outside the range {value.low:g} to {value.high:g}."
                yield at(value, sentence, "Correct the figure, or widen the range.")
    for fact in rulebook.facts.values():
        spec = fact_spec(rulebook, fact)
        if fact.kind == "number" and not fact.step > 0:
            yield at(
                fact,
                f"The step of `{fact.id}` is not above zero.",
                "Write the smallest difference that can be told, such as 0.01.",
            )
        if fact.kind in ("number", "whole") and not spec.low < spec.high:
            yield at(fact, f"The range of `{fact.id}` ends before it begins.", "Write the smaller number first.")
        elif spec.default.ok and faults_of(spec, spec.default.number):
            yield at(
                fact,
                f"The default of `{fact.id}`, {spec.default.number:g}, is not one it may be.",
                f"Look at the value `{fact.default_value}`." if fact.default_value else "Correct what it assumes.",
            )


CHECK = Check("ranges", "Every figure and every default lies in its range.", check)
