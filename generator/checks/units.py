"""The unit that a value or fact is given in is the unit that its id names, and a default has the unit of its fact.

The unit is in the id (`tip_gap_m`, `budburst_pct`), and calculators reckon with what the id says. A value in
centimetres under an id in metres would be wrong a hundredfold without any number looking odd.

Wrong:

    # facts/tip_gap_m.yml
    label: Gap between tips
    ask: How wide is the gap between the tips of two arms?
    observe: Measure from tip to tip.
    kind: number
    unit: cm
    range: [0, 100]
    step: 1
    lifetime: block
    code: TG
    stage: assess

Right:

    # facts/tip_gap_m.yml
    label: Gap between tips
    ask: How wide is the gap between the tips of two arms?
    observe: Measure from tip to tip.
    kind: number
    unit: m
    range: [0, 1]
    step: 0.01
    lifetime: block
    code: TG
    stage: assess
"""

from collections.abc import Iterator

from generator.checks.shape import Check, at
from generator.problems import Problem
from generator.reading.items import Fact, Value
from generator.reading.rulebook import Rulebook


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each value and fact whose id names another unit, and each default in another unit than its fact."""
    for item in (*rulebook.facts.values(), *rulebook.values.values()):
        named = named_unit(item.id, list(rulebook.units))
        if named and item.unit != named and _is_number(item):
            had = f"`{item.unit}`" if item.unit else "no unit"
            yield at(
                item,
                f"The id `{item.id}` names the unit `{named}`, but it has {had}.",
                f"Write `unit: {named}`, or choose another id.",
            )
    for fact in rulebook.facts.values():
        value = rulebook.values.get(fact.default_value)
        if value and value.unit != fact.unit:
            sentence = f"The default of `{fact.id}` is in `{value.unit}`, the fact in `{fact.unit}`."
            yield at(fact, sentence, f"Give the value `{value.id}` the unit of the fact.")


def named_unit(name: str, units: list[str]) -> str:
    """The unit at the end of an id (the longest that fits), or empty text; `t_ha` stands for `t_per_ha`.

    A `_default` at the end is passed over; `shoots_per_m` counts shoots on a metre and `canes_under_7_mm` canes of a size, so they name
    no unit.
    """
    short = {unit.replace("_per_", "_"): unit for unit in units} | {unit: unit for unit in units}
    parts = name.removesuffix("_default").split("_")
    for start in range(1, len(parts)):
        unit = short.get("_".join(parts[start:]))
        if unit:
            return "" if parts[start - 1] == "per" or parts[start - 1].isdigit() else unit
    return ""


def _is_number(item: Fact | Value) -> bool:
    """True for values and for facts that are numbers."""
    return isinstance(item, Value) or item.kind in ("number", "whole")


CHECK = Check("units", "Values, facts and defaults have the unit that their ids name.", check)
