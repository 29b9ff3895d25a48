"""Facts and units of the rulebook as the records that calculators work with."""

from decimal import Decimal

from generator.calculators.facts import Maybe
from generator.calculators.specs import FactSpec, UnitSpec
from generator.reading.items import Fact, Unit
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, RowColumn

NO_BREAK = "\u00a0"
LAST_DATE = 73049.0  # 2170-01-01: no date of a block lies beyond it


def fact_specs(rulebook: Rulebook, ids: list[str] | None = None) -> list[FactSpec]:
    """The specs of the facts, in the order of the rulebook; of all of them when no ids are given."""
    wanted = list(rulebook.facts) if ids is None else [fact for fact in rulebook.facts if fact in ids]
    return [fact_spec(rulebook, rulebook.facts[fact]) for fact in wanted]


def fact_spec(rulebook: Rulebook, fact: Fact) -> FactSpec:
    """The spec of one fact. A default that names no value is no default (the checker reports it)."""
    low, high = _range(fact)
    choices, labels = _choices(fact)
    return FactSpec(
        id=fact.id,
        word=f"fact.{fact.id}",
        label=fact.label,
        kind=fact.kind,
        unit=fact.unit,
        low=low,
        high=high,
        step=float(fact.step),
        digits=digits_of(fact.step) if fact.kind == "number" else 0,
        choices=choices,
        labels=labels,
        lifetime=fact.lifetime,
        code=fact.code,
        default=_default(rulebook, fact),
    )


def column_specs(rulebook: Rulebook, form: CalculatorForm) -> list[FactSpec]:
    """The columns of the rows that a calculator takes: the specs of facts; one of its own as the spec of a whole number, so that what
    reads, guards and words facts does so for it too. A fact that is not there is left out (the checker reports it)."""
    return [
        fact_spec(rulebook, rulebook.facts[one.id]) if one.fact else _counted(form, one)
        for one in form.rows
        if not one.fact or one.id in rulebook.facts
    ]


def _counted(form: CalculatorForm, one: RowColumn) -> FactSpec:
    """A column that only this calculator has."""
    return FactSpec(
        id=one.id,
        word=f"column.{form.id}.{one.id}",
        label=one.label,
        kind="whole",
        unit="count",
        low=float(one.low),
        high=float(one.high),
        step=1.0,
        digits=0,
        choices=[],
        labels=[],
        lifetime="winter",
        code="",
        default=Maybe(not one.needed, 0.0),
    )


def unit_specs(rulebook: Rulebook) -> list[UnitSpec]:
    """The units; the first, with the id "", is that of facts without one."""
    return [UnitSpec("", "", 0, "", 1.0, 0), *(unit_spec(unit) for unit in rulebook.units.values())]


def unit_spec(unit: Unit) -> UnitSpec:
    """One unit, its symbol with the space that does not break."""
    return UnitSpec(unit.id, _after(unit.symbol), unit.digits, _after(unit.us_symbol), float(unit.us_factor), unit.us_digits)


def digits_of(step: float) -> int:
    """Digits after the point that a step needs: 0.01 needs two, 5 none."""
    exponent = Decimal(repr(float(step))).normalize().as_tuple().exponent
    return max(0, -int(exponent))


def _after(symbol: str) -> str:
    """What is put after a number."""
    return NO_BREAK + symbol if symbol else ""


def _range(fact: Fact) -> tuple[float, float]:
    """The range as numbers: choices from 0 to the last, yes_no from 0 to 1, dates without a range over all dates."""
    if fact.kind == "choice":
        return 0.0, float(max(0, len(fact.choices) - 1))
    if fact.kind == "yes_no":
        return 0.0, 1.0
    if fact.kind == "date" and fact.low == fact.high:
        return 0.0, LAST_DATE
    return float(fact.low), float(fact.high)


def _choices(fact: Fact) -> tuple[list[str], list[str]]:
    """Ids and labels of what can be chosen."""
    if fact.kind == "yes_no":
        return ["no", "yes"], ["no", "yes"]
    return [choice.id for choice in fact.choices], [choice.label for choice in fact.choices]


def _default(rulebook: Rulebook, fact: Fact) -> Maybe:
    """The number of the fact's default, if it has one: that of its value, or what it says itself is assumed."""
    if fact.assumed:
        return Maybe(True, fact.assumed.number)
    value = rulebook.values.get(fact.default_value)
    return Maybe(False, 0.0) if value is None else Maybe(True, float(value.number))
