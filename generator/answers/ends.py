"""Where assumed facts are tried to see how much they matter: at the lowest and highest figure that is printed for them."""

from decimal import Decimal

from generator.answers.specs import fact_specs
from generator.calculators.plan_influence import Ends
from generator.calculators.specs import FactSpec
from generator.reading.rulebook import Rulebook, kept


@kept
def ends(rulebook: Rulebook) -> list[Ends]:
    """For every fact with a default the numbers worth trying: the lowest and the highest figure of its value, as far as the fact
    allows them; both ends of the range where one figure is all there is; of a choice all others."""
    specs = [spec for spec in fact_specs(rulebook) if spec.default.ok]
    return [Ends(spec.id, _worth_trying(spec, _figures(rulebook, spec.id))) for spec in specs]


def _figures(rulebook: Rulebook, fact: str) -> list[float]:
    """The figures printed for a fact's default; none when it has no value of its own."""
    value = rulebook.values.get(rulebook.facts[fact].default_value)
    return [] if value is None else [float(figure.number) for figure in value.figures]


def _worth_trying(spec: FactSpec, figures: list[float]) -> list[float]:
    """The numbers to try, ascending, on the fact's step."""
    if spec.kind in ("choice", "yes_no"):
        return [float(k) for k in range(len(spec.choices)) if k != spec.default.number]
    allowed = sorted({_on_step(spec, x) for x in figures if spec.low <= x <= spec.high})
    return [allowed[0], allowed[-1]] if len(allowed) > 1 else [spec.low, spec.high]


def _on_step(spec: FactSpec, x: float) -> float:
    """The nearest number that can be entered."""
    step = Decimal(repr(spec.step or 1.0))
    return float(round(Decimal(repr(x)) / step) * step)
