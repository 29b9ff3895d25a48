"""Every worked example of a calculator comes out as printed.

The numbers under `expect` are compared as a reader compares print: half a unit of the last digit given. So `4132.2`
holds for anything from 4132.15 to 4132.25, and a whole number for what rounds to it. Name the source when the example
is published.

Wrong:

    # calculators/vine_density.yml
    title: Vines per hectare
    question: How many vines stand on a hectare?
    why: Every figure of the plan is for one vine.
    stage: assess
    inputs: [row_spacing_m, vine_spacing_m, {fact: area_ha, optional: true}, missing_vines_pct]
    outputs:
      - {id: vines_per_ha, label: Vines on a hectare, unit: per_ha, digits: 1}
    examples:
      - name: Vines a metre apart in rows of 3 m
        inputs: {row_spacing_m: 3, vine_spacing_m: 1, missing_vines_pct: 0}
        expect: {vines_per_ha: 3333.4}

Right:

    # calculators/vine_density.yml
    title: Vines per hectare
    question: How many vines stand on a hectare?
    why: Every figure of the plan is for one vine.
    stage: assess
    inputs: [row_spacing_m, vine_spacing_m, {fact: area_ha, optional: true}, missing_vines_pct]
    outputs:
      - {id: vines_per_ha, label: Vines on a hectare, unit: per_ha, digits: 1}
    examples:
      - name: Vines a metre apart in rows of 3 m
        inputs: {row_spacing_m: 3, vine_spacing_m: 1, missing_vines_pct: 0}
        expect: {vines_per_ha: 3333.3}
"""

from collections.abc import Iterator
from typing import Any

from generator.answers.calculators import outputs, run, taken
from generator.answers.given import BadInput
from generator.answers.specs import digits_of
from generator.checks.calculator_code import code_path, line_of, words_of
from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Example

SLACK = 1e-9  # so that 0.5 is half of 1 also after a rounding in the last bit


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each number that comes out otherwise, and for each calculator without an example."""
    for form in rulebook.calculators.values():
        if not form.examples and form.outputs:
            yield at(
                form, f"The calculator `{form.id}` has no worked example.", "Write one, from a printed source if there is one."
            )
        for example in form.examples:
            for sentence, step in _faults(rulebook, form, example):
                yield at(form, f"Worked example “{example.name}”: {sentence}", step, example.line)


def _faults(rulebook: Rulebook, form: CalculatorForm, example: Example) -> Iterator[tuple[str, str]]:
    """What is wrong with one example."""
    if example.source and example.source not in rulebook.evidence and example.source not in rulebook.sources:
        yield f"there is no source `{example.source}`.", suggestion(example.source, [*rulebook.evidence, *rulebook.sources])
    try:
        came = outputs(form, run(rulebook, form, taken(rulebook, form, example.facts)))
    except BadInput as bad:
        for fault in bad.faults:
            yield f"{fault.removesuffix('.')}.", "Write the inputs as they would be entered."
        return
    except Exception as fault:  # noqa: BLE001  (whatever half-written sums do)
        line = line_of(fault, form.id)
        where = f"{code_path(form.id)}:{line}" if line else code_path(form.id)
        yield f"Python stops in {where}: {words_of(fault)}.", "Mend the code; where the inputs cannot be, let it raise ValueError."
        return
    for name, wanted in example.expect.items():
        if name not in came and name in [output.id for output in form.outputs]:
            yield f"`{name}` should be {wanted}, but is left open.", "Give the inputs that it needs, or leave it out."
        elif name not in came:
            yield f"there is no output `{name}`.", suggestion(name, came)
        elif not same(wanted, came[name]):
            yield f"`{name}` should be {wanted}, but is {_shown(came[name])}.", "Correct the example, or the calculator."


def same(wanted: Any, came: Any) -> bool:
    """True when what came out agrees with what is printed, to half a unit of the last printed digit."""
    if isinstance(wanted, bool) or not isinstance(came, (int, float)) or isinstance(came, bool):
        return wanted == came
    half = 0.5 * 10.0 ** -digits_of(1 if isinstance(wanted, int) else 10.0 ** -_printed_digits(wanted))
    return abs(wanted - came) <= half + SLACK


def _shown(came: Any) -> str:
    """What came out, without the noise of its last digits."""
    return f"{came:.10g}" if isinstance(came, float) else str(came)


def _printed_digits(wanted: float) -> int:
    """Digits after the point, as the number is written."""
    return digits_of(wanted) or 1


CHECK = Check("calculator_examples", "Every worked example of a calculator comes out as printed.", check)
