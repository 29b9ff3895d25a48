"""How many buds to cut open, and what the printed sampling schemes really give.

Buds needed = (q x spread / nearness)^2 x design effect, and n / (1 + n / N) where the block holds only N such buds. For a mean the
spread is its coefficient of variation and q is Student's t for canes - 1, since canes are drawn and their buds come along; for a
share p the spread is the root of p (1 - p) and q the normal quantile. Design effect = 1 + (m - 1) x likeness for m buds a cane.
(Evidence es-02, es-14, es-18, bd-11, dis-09.)
"""

import math
from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.figures import FITS, Compared, Figure, compared, figure_of
from generator.calculators.quantiles import normal_quantile, t_quantile
from generator.calculators.say import Say
from generator.calculators.units import MIN_PER_H, PER_CENT, share

COUNTABLE: int = 1000000000000  # buds; whole numbers stay exact far beyond it


@dataclass(frozen=True)
class BudSampleSizeInputs:
    """The spread from bud to bud (coefficient of variation in %), or the share looked for (%, then the spread is not used); how near
    the sample should come (% of the mean, or percentage points of a share); level (%); buds cut of one cane; how alike they are, as a
    correlation; buds of such wood in the block."""

    cv_pct: float
    share_pct: Maybe
    precision_pct: float
    confidence_pct: float
    buds_per_cane: int
    likeness: float
    buds_in_block: Maybe


@dataclass(frozen=True)
class BudSampleSizeValues:
    """Canes or spurs and buds of each in every printed scheme; buds that a practised eye reads in a minute; canes that anybody cuts."""

    bud_scheme_units: list[Figure]
    bud_scheme_buds_each: list[Figure]
    buds_per_minute_slow: float
    buds_per_minute_fast: float
    canes_cut_most: float


@dataclass(frozen=True)
class BudSampleSizeResult:
    """Buds (exact, and rounded up) and canes that hold them; canes for a figure of one node by itself; hours under the lens."""

    buds_exact: float
    buds: int
    canes: int
    design_effect: float
    canes_for_one_node: int
    hours_low: float
    hours_high: float
    headline: Say
    compared: list[Compared]
    working: list[Say]
    notes: list[Say]


@dataclass(frozen=True)
class Wanted:
    """What is looked for: a share or a mean; the variance of one bud (of a mean relative to its square), the half width (as a share),
    the probability that the upper end is kept, the buds of the block."""

    of_share: bool
    variance: float
    near: float
    below: float
    block: Maybe


def bud_sample_size(inputs: BudSampleSizeInputs, values: BudSampleSizeValues) -> BudSampleSizeResult:
    """The sample. Raises ValueError when more buds are needed than can be cut."""
    wanted = wanted_of(inputs)
    effect = design_effect(inputs.buds_per_cane, inputs.likeness)
    canes = canes_needed(wanted, inputs.buds_per_cane, effect)
    exact = buds_needed(wanted, effect, canes)
    buds = math.ceil(exact)
    one_node = canes_needed(wanted, 1, 1.0)
    slow = float(buds) / values.buds_per_minute_slow / MIN_PER_H
    fast = float(buds) / values.buds_per_minute_fast / MIN_PER_H
    headline = "bud_sample_size.headline_share" if wanted.of_share else "bud_sample_size.headline_mean"
    return BudSampleSizeResult(
        exact,
        buds,
        canes,
        effect,
        one_node,
        fast,
        slow,
        Say(headline, [float(buds), float(canes), inputs.precision_pct, inputs.confidence_pct], []),
        [scheme(wanted, inputs, units, values.bud_scheme_buds_each) for units in values.bud_scheme_units],
        working_of(wanted, inputs, effect, canes) + [Say("bud_sample_size.hours", [float(buds), fast, slow], [])],
        notes_of(wanted, inputs, values, canes, one_node),
    )


def wanted_of(inputs: BudSampleSizeInputs) -> Wanted:
    """The inputs as shares of one. A share, where one is given, goes before the spread of a mean."""
    near = share(inputs.precision_pct)
    below = (1.0 + share(inputs.confidence_pct)) / 2.0
    if inputs.share_pct.ok:
        p = share(inputs.share_pct.number)
        return Wanted(True, p * (1.0 - p), near, below, inputs.buds_in_block)
    cv = share(inputs.cv_pct)
    return Wanted(False, cv * cv, near, below, inputs.buds_in_block)


def design_effect(buds_per_cane: int, likeness: float) -> float:
    """How many times more buds it takes when several come from one cane and are alike."""
    return 1.0 + float(buds_per_cane - 1) * likeness


def quantile(wanted: Wanted, canes: int) -> float:
    """Student's t for canes - 1 where a mean is looked for, the normal quantile for a share."""
    return normal_quantile(wanted.below) if wanted.of_share else t_quantile(wanted.below, float(canes - 1))


def buds_without_end(wanted: Wanted, effect: float, q: float) -> float:
    """Buds needed of a block without end, by a quantile."""
    steps = q / wanted.near
    return steps * steps * wanted.variance * effect


def of_block(wanted: Wanted, buds: float) -> float:
    """The same of the block: in a small one fewer, never more than it has."""
    return buds / (1.0 + buds / wanted.block.number) if wanted.block.ok else buds


def buds_needed(wanted: Wanted, effect: float, canes: int) -> float:
    """Buds needed from so many canes."""
    return of_block(wanted, buds_without_end(wanted, effect, quantile(wanted, canes)))


def canes_needed(wanted: Wanted, each: int, effect: float) -> int:
    """The fewest canes that hold the buds they need; at least two for a mean, since one cane shows no spread. Raises ValueError when
    they are too many to count."""
    z = normal_quantile(wanted.below)
    if wanted.of_share:
        return max(1, canes_for(of_block(wanted, buds_without_end(wanted, effect, z)), each))
    # t is above z and falls with the canes: by z there are too few or just enough, and what those few ask for is enough.
    few = max(2, canes_for(of_block(wanted, buds_without_end(wanted, effect, z)), each))
    asked = buds_needed(wanted, effect, few)
    if asked <= float(few * each):
        return few
    many = max(few + 1, canes_for(asked, each))
    while many - few > 1:
        middle = (few + many) // 2
        if buds_needed(wanted, effect, middle) <= float(middle * each):
            many = middle
        else:
            few = middle
    return many


def canes_for(buds: float, each: int) -> int:
    """Canes that hold so many buds, rounded up. Raises ValueError when the buds are too many to count."""
    if buds > float(COUNTABLE):
        raise ValueError("so near a mark needs more buds than can be cut: allow more, or a lower level")
    return math.ceil(buds / float(each))


def half_width(wanted: Wanted, canes: int, each: int, effect: float) -> float:
    """How near a sample comes, in % of the mean or in percentage points; 0 where it takes the whole block."""
    one_by_buds = 1.0 / float(canes * each)
    if wanted.block.ok:
        one_by_buds = max(0.0, one_by_buds - 1.0 / wanted.block.number)
    return quantile(wanted, canes) * math.sqrt(wanted.variance * effect * one_by_buds) * PER_CENT


def scheme(wanted: Wanted, inputs: BudSampleSizeInputs, units: Figure, each: list[Figure]) -> Compared:
    """What a printed scheme gives here: for all its buds together, and for the buds of one node."""
    canes = int(units.number)
    buds = int(figure_of(each, units.id).number)
    together = half_width(wanted, canes, buds, design_effect(buds, inputs.likeness))
    one_node = half_width(wanted, canes, 1, 1.0)
    says = "bud_sample_size.scheme_share" if wanted.of_share else "bud_sample_size.scheme_mean"
    line = Say(says, [units.number, float(buds), float(canes * buds), together, one_node], [])
    return compared(Say("bud_sample_size.scheme", [], []), units, line, FITS)


def working_of(wanted: Wanted, inputs: BudSampleSizeInputs, effect: float, canes: int) -> list[Say]:
    """The formula, the design effect, the buds, the block, the canes."""
    each = float(inputs.buds_per_cane)
    q = quantile(wanted, canes)
    free = buds_without_end(wanted, effect, q)
    buds = of_block(wanted, free)
    lines = [Say("bud_sample_size.effect", [each, inputs.likeness, effect], [])]
    if wanted.of_share:
        lines = [Say("bud_sample_size.formula_share", [], [])] + lines
        lines.append(Say("bud_sample_size.buds_share", [q, inputs.share_pct.number, inputs.precision_pct, effect, free, inputs.confidence_pct], []))
    else:
        lines = [Say("bud_sample_size.formula_mean", [], [])] + lines
        t = [q, float(canes - 1), inputs.cv_pct, inputs.precision_pct, effect, free, inputs.confidence_pct]
        lines.append(Say("bud_sample_size.buds_mean", t, []))
    if wanted.block.ok:
        lines.append(Say("bud_sample_size.block", [wanted.block.number, free, buds], []))
    lines.append(Say("bud_sample_size.canes", [buds, each, float(canes)], []))
    return lines


def notes_of(wanted: Wanted, inputs: BudSampleSizeInputs, values: BudSampleSizeValues, canes: int, one_node: int) -> list[Say]:
    """What the sample does not tell, and what to do where it is too large."""
    notes = [Say("bud_sample_size.one_node", [float(one_node)], [])]
    if float(canes) > values.canes_cut_most:
        most = int(values.canes_cut_most)
        effect = design_effect(inputs.buds_per_cane, inputs.likeness)
        too_many = "bud_sample_size.too_many_share" if wanted.of_share else "bud_sample_size.too_many_mean"
        notes.append(Say(too_many, [values.canes_cut_most, half_width(wanted, most, inputs.buds_per_cane, effect)], []))
    if wanted.of_share and inputs.precision_pct >= min(inputs.share_pct.number, PER_CENT - inputs.share_pct.number):
        notes.append(Say("bud_sample_size.near_none_or_all", [], []))
    notes.append(Say("bud_sample_size.sample_only", [], []))
    return notes
