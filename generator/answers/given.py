"""The facts a caller gives, by id, become the numbers and statuses that calculators take."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from generator.answers.border import UNKNOWN_WORD, BadValue, to_number, to_text
from generator.answers.catalogue import catalogue
from generator.answers.specs import fact_specs
from generator.calculators.facts import ENTERED, NOT_ASKED, UNKNOWN, Facts
from generator.calculators.guard import faults
from generator.calculators.specs import FactSpec, with_defaults
from generator.calculators.wording import worded
from generator.reading.near import nearest
from generator.reading.rulebook import Rulebook


class BadInput(ValueError):
    """What is wrong with the input: one line for each fault, `input_id: what is wrong, what is allowed`."""

    def __init__(self, faults: list[str]) -> None:
        self.faults = faults
        super().__init__("\n".join(faults))


@dataclass(frozen=True)
class Given:
    """The facts of a question: their specs, the numbers with statuses (defaults filled in), and the texts by id; and the rows, for a
    calculator that takes some."""

    specs: list[FactSpec]
    facts: Facts
    texts: dict[str, str]
    rows: tuple[Any, ...] = ()


def given(rulebook: Rulebook, asked: list[str], inputs: dict[str, Any], required: Iterable[str] = (), listed: str = "") -> Given:
    """Reads the inputs of the facts that are asked. A value given is entered, `unknown` is unknown, a default is assumed.
    `listed` says what is allowed where the ids are too many to name.

    Raises BadInput with every fault: names that are not asked, values that do not fit, numbers out of range, required facts
    without a value.
    """
    wrong = [_not_asked(name, asked, listed) for name in inputs if name not in asked]
    specs = fact_specs(rulebook, asked)
    numbers, texts = [spec for spec in specs if spec.kind != "text"], {}
    facts = Facts([spec.id for spec in numbers], [0.0] * len(numbers), [NOT_ASKED] * len(numbers))
    for spec in specs:
        if spec.id in inputs:
            try:
                _take(spec, inputs[spec.id], facts, texts)
            except BadValue as bad:
                wrong.append(f"{spec.id}: {bad}")
    facts = with_defaults(numbers, facts)
    out_of_bounds = faults(numbers, facts)
    if out_of_bounds:
        words = catalogue(rulebook)
        wrong += [f"{fault.fact}: {worded(words, fault.says, 'si')}" for fault in out_of_bounds]
    wrong += _without_value(rulebook, facts, inputs, required)
    if wrong:
        raise BadInput(wrong)
    return Given(numbers, facts, texts)


def _take(spec: FactSpec, raw: Any, facts: Facts, texts: dict[str, str]) -> None:
    """Puts one value where it belongs. Raises BadValue."""
    if spec.kind == "text":
        if raw != UNKNOWN_WORD:
            texts[spec.id] = to_text(raw)
        return
    index = facts.ids.index(spec.id)
    if raw == UNKNOWN_WORD:
        facts.statuses[index] = UNKNOWN
        return
    facts.numbers[index] = to_number(spec, raw)
    facts.statuses[index] = ENTERED


def _without_value(rulebook: Rulebook, facts: Facts, inputs: dict[str, Any], required: Iterable[str]) -> Iterator[str]:
    """The faults of required facts that are left out or unknown; of an unknown one also how to find it out."""
    status = dict(zip(facts.ids, facts.statuses))
    for fact in required:
        if status.get(fact) == UNKNOWN:
            observe = " ".join(rulebook.facts[fact].observe.split())
            yield f"{fact}: is unknown, but this calculator needs it. {observe}".rstrip()
        elif status.get(fact) == NOT_ASKED and fact not in inputs:
            yield f"{fact}: is missing, this calculator needs it"


def _not_asked(name: str, asked: list[str], listed: str) -> str:
    """The fault of a name that is not asked here, with the nearest that is, or what is allowed."""
    near, name = nearest(name, asked), " ".join(name.split()) or '""'
    meant = f"did you mean {near}?" if near else ""
    if not listed:
        return f"{name}: is not asked here, {meant or 'allowed are ' + ', '.join(asked)}"
    return f"{name}: is not asked here, {meant + ' Allowed is' if meant else 'allowed is'} {listed}"
