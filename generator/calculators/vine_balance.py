"""Is a vine in balance: crop for its prunings, prunings and shoots for its canopy, weight of a cane; each classed by each author.

Ravaz index = crop of summer Y / prunings of the winter after it; prunings per metre = prunings / canopy; mean cane = prunings / shoots; shoots
per metre = shoots / canopy. The same vine may be in balance by one author and too strong by another: each is named, with what the
figures were made for, and nothing is averaged. Evidence: vb-01 to vb-23, B09.
"""

from dataclasses import dataclass

from generator.calculators.balance_bands import GRAPE, INSIDE, UNDER, Measure, Vine, band_of, classed, conflicts, depends_on, possible, verdict
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, Figure
from generator.calculators.say import Say
from generator.calculators.units import G_PER_KG

LIGHT: list[str] = ["vine_balance.little_crop", "vine_balance.little_wood", "vine_balance.light_canes", "vine_balance.few_shoots"]
BALANCED: list[str] = ["vine_balance.crop_fits", "vine_balance.wood_fits", "vine_balance.canes_fit", "vine_balance.shoots_fit"]
DEPENDS: list[str] = ["vine_balance.ravaz_depends", "vine_balance.per_m_depends", "vine_balance.cane_depends", "vine_balance.density_depends"]
WAITS: list[str] = ["vine_balance.ravaz_waits", "vine_balance.per_m_waits", "vine_balance.cane_waits", "vine_balance.density_waits"]
HEAVY: list[str] = ["vine_balance.much_crop", "vine_balance.much_wood", "vine_balance.heavy_canes", "vine_balance.many_shoots"]


@dataclass(frozen=True)
class VineBalanceInputs:
    """Per bearing vine: prunings of this winter (kg), crop of the summer before (kg), metres of canopy (all curtains), shoots of that
    summer; and what the figures are made for (choices)."""

    pruning_weight_kg: float
    last_yield_kg: Maybe
    canopy_length_m: Maybe
    shoots_per_vine: Maybe
    grape_type: Maybe
    use: Maybe
    canopy_form: Maybe
    climate: Maybe


@dataclass(frozen=True)
class VineBalanceValues:
    """Every author's low and high end of each measure: index, kg per m, g, shoots per m."""

    ravaz_low: list[Figure]
    ravaz_high: list[Figure]
    pruning_per_m_low: list[Figure]
    pruning_per_m_high: list[Figure]
    mean_cane_low_g: list[Figure]
    mean_cane_high_g: list[Figure]
    shoots_per_m_low: list[Figure]
    shoots_per_m_high: list[Figure]


@dataclass(frozen=True)
class VineBalanceResult:
    """The four measures, left open where a fact is lacking; how many of them authors disagree on whose bands hold or may hold for this vine; and each measure
    classed by each author."""

    ravaz_index: Maybe
    pruning_kg_per_m: Maybe
    mean_cane_g: Maybe
    shoots_per_m: Maybe
    disputed: int
    compared: list[Compared]
    headline: Say
    working: list[Say]
    notes: list[Say]


def vine_balance(inputs: VineBalanceInputs, values: VineBalanceValues) -> VineBalanceResult:
    """The balance of one vine. Raises ValueError when the vine has no prunings, or an author's low end lies over the high one."""
    if inputs.pruning_weight_kg <= 0.0:
        raise ValueError("a vine without prunings cannot be weighed up")
    ravaz = over(inputs.last_yield_kg, Maybe(True, inputs.pruning_weight_kg), 1.0)
    per_m = over(Maybe(True, inputs.pruning_weight_kg), inputs.canopy_length_m, 1.0)
    cane = over(Maybe(True, inputs.pruning_weight_kg), inputs.shoots_per_vine, G_PER_KG)
    density = over(inputs.shoots_per_vine, inputs.canopy_length_m, 1.0)
    vine = Vine(inputs.grape_type, inputs.use, inputs.canopy_form, inputs.climate)
    known = measures_of([ravaz, per_m, cane, density], values)
    lines: list[Compared] = []
    for measure in known:
        lines = lines + classed(measure, vine)
    disputes = conflicts(known, vine)
    told = verdicts(known, vine)
    return VineBalanceResult(
        ravaz,
        per_m,
        cane,
        density,
        len(disputes),
        lines,
        told[0] if len(told) > 0 else Say("vine_balance.nothing", [], []),
        working_of(inputs, ravaz, per_m, cane, density),
        told[1:] + disputes + [Say("vine_balance.seasons", [], [])],
    )


def measures_of(numbers: list[Maybe], values: VineBalanceValues) -> list[Measure]:
    """Those of the four measures that are known, with every author's band."""
    lows = [values.ravaz_low, values.pruning_per_m_low, values.mean_cane_low_g, values.shoots_per_m_low]
    highs = [values.ravaz_high, values.pruning_per_m_high, values.mean_cane_high_g, values.shoots_per_m_high]
    return [Measure(kind, number.number, lows[kind], highs[kind]) for kind, number in enumerate(numbers) if number.ok]


def over(part: Maybe, whole: Maybe, factor: float) -> Maybe:
    """part / whole x factor where both are known and there is something to divide by."""
    if not part.ok or not whole.ok or whole.number <= 0.0:
        return Maybe(False, 0.0)
    return Maybe(True, part.number / whole.number * factor)


def verdicts(known: list[Measure], vine: Vine) -> list[Say]:
    """Each measure by the author that leads, or what a verdict waits for."""
    found: list[Say] = []
    for measure in known:
        may = possible(measure, vine)
        if len(may) > 0:
            waits = depends_on(measure, may, vine)
            place = verdict(band_of(measure, may[0].id), measure.number)
            heads = LIGHT if place == UNDER else BALANCED if place == INSIDE else HEAVY
            if waits != "":
                heads = DEPENDS if waits == GRAPE else WAITS
                found.append(Say(heads[measure.kind], [measure.number], []))
            else:
                found.append(Say(heads[measure.kind], [measure.number], [may[0].word]))
    return found


def working_of(inputs: VineBalanceInputs, ravaz: Maybe, per_m: Maybe, cane: Maybe, density: Maybe) -> list[Say]:
    """Each measure with its numbers."""
    prunings = inputs.pruning_weight_kg
    lines: list[Say] = []
    if ravaz.ok:
        lines.append(Say("vine_balance.ravaz", [inputs.last_yield_kg.number, prunings, ravaz.number], []))
    if per_m.ok:
        lines.append(Say("vine_balance.per_m", [prunings, inputs.canopy_length_m.number, per_m.number], []))
    if cane.ok:
        lines.append(Say("vine_balance.cane", [prunings, inputs.shoots_per_vine.number, cane.number], []))
    if density.ok:
        lines.append(Say("vine_balance.density", [inputs.shoots_per_vine.number, inputs.canopy_length_m.number, density.number], []))
    return lines
