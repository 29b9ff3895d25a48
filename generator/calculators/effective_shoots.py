"""Effective shoots: every dormant cane counts by its thickness, and the sum with an allowance is the nodes to keep.

Sum = thin x (7 to 10 mm) + middle x (over 10 to 15 mm) + thick x (over 15 mm) + thinnest x (under 7 mm); nodes = sum + allowance. 10 and 15 mm
belong to the class they close, 7 mm to the class it opens. Looking back: sum / nodes left last winter. Evidence: bp-16, bp-17.
"""

from dataclasses import dataclass

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.say import Say


@dataclass(frozen=True)
class EffectiveShootsInputs:
    """Canes of one vine in each class of thickness (a block mean need not be whole), the allowance in nodes, the nodes left last winter,
    and the thickness (mm) of a cane in doubt."""

    canes_under_7_mm: float
    canes_7_to_10_mm: float
    canes_10_to_15_mm: float
    canes_over_15_mm: float
    allowance: float
    nodes_left: Maybe
    cane_diameter_mm: Maybe


@dataclass(frozen=True)
class EffectiveShootsValues:
    """What a cane of each class counts, the limits between the classes in mm, and the band of the look back."""

    effective_thinnest: float
    effective_thin: float
    effective_middle: float
    effective_thick: float
    effective_thin_from_mm: float
    effective_middle_over_mm: float
    effective_thick_over_mm: float
    look_back_low: float
    look_back_high: float


@dataclass(frozen=True)
class EffectiveShootsResult:
    """The sum of the canes; nodes to keep, exact and whole (nearest, half up); the canes counted; the sum for each node left last winter."""

    effective_shoots: float
    nodes_exact: float
    nodes: int
    canes: float
    look_back: Maybe
    headline: Say
    working: list[Say]
    notes: list[Say]


def effective_shoots(inputs: EffectiveShootsInputs, values: EffectiveShootsValues) -> EffectiveShootsResult:
    """The weighted count. Raises ValueError when the limits between the classes do not rise."""
    if not values.effective_thin_from_mm <= values.effective_middle_over_mm <= values.effective_thick_over_mm:
        raise ValueError("the limits between the classes of canes must rise")
    thin = inputs.canes_7_to_10_mm * values.effective_thin
    middle = inputs.canes_10_to_15_mm * values.effective_middle
    thick = inputs.canes_over_15_mm * values.effective_thick
    thinnest = inputs.canes_under_7_mm * values.effective_thinnest
    total = thinnest + thin + middle + thick
    nodes = total + inputs.allowance
    look_back = Maybe(False, 0.0)
    if inputs.nodes_left.ok and inputs.nodes_left.number > 0.0:
        look_back = Maybe(True, total / inputs.nodes_left.number)
    working = [
        Say("effective_shoots.formula", [], []),
        Say("effective_shoots.thinnest", [inputs.canes_under_7_mm, values.effective_thinnest, thinnest, values.effective_thin_from_mm], []),
        Say("effective_shoots.thin", [inputs.canes_7_to_10_mm, values.effective_thin, thin, values.effective_middle_over_mm], []),
        Say("effective_shoots.middle", [inputs.canes_10_to_15_mm, values.effective_middle, middle, values.effective_thick_over_mm], []),
        Say("effective_shoots.thick", [inputs.canes_over_15_mm, values.effective_thick, thick, values.effective_thick_over_mm], []),
        Say("effective_shoots.nodes", [total, inputs.allowance, nodes], []),
    ]
    return EffectiveShootsResult(
        total,
        nodes,
        half_up(nodes),
        inputs.canes_under_7_mm + inputs.canes_7_to_10_mm + inputs.canes_10_to_15_mm + inputs.canes_over_15_mm,
        look_back,
        Say("effective_shoots.headline", [float(half_up(nodes)), total, inputs.allowance], []),
        working,
        notes_of(inputs, values, look_back),
    )


def cane_counts(diameter_mm: float, values: EffectiveShootsValues) -> float:
    """What a cane of that thickness counts."""
    if diameter_mm < values.effective_thin_from_mm:
        return values.effective_thinnest
    if diameter_mm <= values.effective_middle_over_mm:
        return values.effective_thin
    if diameter_mm <= values.effective_thick_over_mm:
        return values.effective_middle
    return values.effective_thick


def notes_of(inputs: EffectiveShootsInputs, values: EffectiveShootsValues, look_back: Maybe) -> list[Say]:
    """The look back in words, the cane in doubt, and where the rule comes from."""
    notes: list[Say] = []
    if look_back.ok:
        if look_back.number < values.look_back_low:
            notes.append(Say("effective_shoots.blind", [look_back.number, values.look_back_low], []))
        elif look_back.number > values.look_back_high:
            notes.append(Say("effective_shoots.noncount", [look_back.number, values.look_back_high], []))
        else:
            notes.append(Say("effective_shoots.about_right", [look_back.number, values.look_back_low, values.look_back_high], []))
    if inputs.cane_diameter_mm.ok:
        notes.append(Say("effective_shoots.cane", [inputs.cane_diameter_mm.number, cane_counts(inputs.cane_diameter_mm.number, values)], []))
    return notes + [Say("effective_shoots.scope", [], [])]
