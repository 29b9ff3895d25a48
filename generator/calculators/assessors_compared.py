"""The same vines judged by two assessors: how far they agree on the worst fault of each vine and on its nodes, and what to do about it.

The verdict on a vine is its worst fault: none, untidy, costs a crop, costs the vine. See agreement.py for the sums and their sources,
assessors_words.py for what is said.
"""

import math
from dataclasses import dataclass

from generator.calculators.agreement import Kappa, Limits, MeanRange, crossed, kappa_of, limits_of, mean_range, ordered_weights, plain_weights
from generator.calculators.assessors_words import CLASSES, Both, Counts, VinePair, headline_of, notes_of, pair_says, steps_of, working_of
from generator.calculators.counting import up
from generator.calculators.facts import Maybe
from generator.calculators.proportions import wilson
from generator.calculators.quantiles import normal_quantile, tail_of
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class JudgedVine:
    """One vine, by the first assessor and by the second: nodes counted, and faults by grade from the worst."""

    nodes_first: Maybe
    vine_first: int
    crop_first: int
    untidy_first: int
    nodes_second: Maybe
    vine_second: int
    crop_second: int
    untidy_second: int


@dataclass(frozen=True)
class AssessorsComparedInputs:
    """The vines, the nodes by which two counts may differ, the kappa wanted and how exact it is to be (to either side), and the level of the
    ranges (%)."""

    rows: list[JudgedVine]
    tolerance_nodes: int
    kappa_wanted: float
    kappa_precision: float
    confidence_pct: float


@dataclass(frozen=True)
class AssessorsComparedValues:
    """Vines at most, standard deviations to the limits of agreement, and the kappas above which Landis and Koch use a better word."""

    test_vines_most: float
    limits_of_agreement_sd: float
    kappa_fair_above: float
    kappa_moderate_above: float
    kappa_substantial_above: float
    kappa_almost_perfect_above: float


@dataclass(frozen=True)
class AssessorsComparedResult:
    """Vines with the same verdict (%) and the range of that; kappa and weighted kappa with their ranges; vines needed in all for the precision
    wanted; difference of counts (first less second) with its range and the limits of agreement; vines that differ; each vine."""

    same_pct: float
    same_low_pct: float
    same_high_pct: float
    kappa: Maybe
    kappa_low: Maybe
    kappa_high: Maybe
    weighted_kappa: Maybe
    weighted_low: Maybe
    weighted_high: Maybe
    vines_needed: Maybe
    mean_difference: Maybe
    difference_low: Maybe
    difference_high: Maybe
    limit_low: Maybe
    limit_high: Maybe
    vines_differing: int
    vines: list[VinePair]
    headline: Say
    steps: list[Say]
    working: list[Say]
    notes: list[Say]


def row_faults(row: JudgedVine) -> list[Say]:
    """What is wrong between the columns of a row: nothing, since every vine can be."""
    return []


def assessors_compared(inputs: AssessorsComparedInputs, values: AssessorsComparedValues) -> AssessorsComparedResult:
    """The comparison. Raises ValueError when there is no vine, or more than are taken."""
    if len(inputs.rows) == 0:
        raise ValueError("enter at least one vine")
    if len(inputs.rows) > math.floor(values.test_vines_most):
        raise ValueError("more vines than a test takes were entered")
    first = [worst(row.vine_first, row.crop_first, row.untidy_first) for row in inputs.rows]
    second = [worst(row.vine_second, row.crop_second, row.untidy_second) for row in inputs.rows]
    table = crossed(first, second, len(CLASSES))
    z = normal_quantile(tail_of(inputs.confidence_pct))
    plain = kappa_of(table, plain_weights(len(CLASSES)), z)
    ordered = kappa_of(table, ordered_weights(len(CLASSES)), z)
    vines = [pair_of(k + 1, inputs.rows[k], first[k], second[k], inputs.tolerance_nodes) for k in range(len(first))]
    counted = [row.nodes_first.number - row.nodes_second.number for row in inputs.rows if row.nodes_first.ok and row.nodes_second.ok]
    counts = counts_of(counted, values.limits_of_agreement_sd, inputs.confidence_pct)
    same = len([1 for a, b in zip(first, second) if a == b])
    spans = wilson(float(same), float(len(first)), z)
    needed = needed_for(ordered, len(first), z, inputs.kappa_precision)
    steps_up = [values.kappa_fair_above, values.kappa_moderate_above, values.kappa_substantial_above, values.kappa_almost_perfect_above]
    both = Both(table, same, len(first), PER_CENT * spans.low, PER_CENT * spans.high, plain, ordered, needed, inputs.kappa_wanted, steps_up, inputs.confidence_pct)
    return result_of(vines, both, counts)


def worst(vine: int, crop: int, untidy: int) -> int:
    """The place in CLASSES of the worst fault."""
    found = [untidy > 0, crop > 0, vine > 0]
    place = 0
    for k, there in enumerate(found):
        if there:
            place = k + 1
    return place


def pair_of(number: int, row: JudgedVine, first: int, second: int, tolerance: int) -> VinePair:
    """One vine as both judged it: it differs by its verdict, or by counts further apart than is let pass."""
    counted = row.nodes_first.ok and row.nodes_second.ok
    apart = abs(row.nodes_first.number - row.nodes_second.number)
    differs = first != second or (counted and apart > float(tolerance))
    return VinePair(number, differs, pair_says(first, second), Say("assessors_compared.counts", [row.nodes_first.number, row.nodes_second.number], []) if counted else Say("assessors_compared.not_counted", [], []))


def counts_of(counted: list[float], times: float, confidence_pct: float) -> Counts:
    """The differences of the counts; open where fewer than two vines were counted by both."""
    if len(counted) == 0:
        empty = Maybe(False, 0.0)
        return Counts(0, MeanRange(0.0, empty, empty, empty), Limits(0.0, 0.0, 0.0), times)
    mean = mean_range(counted, confidence_pct)
    limits = limits_of(mean.mean, mean.sd.number, times, len(counted), confidence_pct) if mean.sd.ok else Limits(0.0, 0.0, 0.0)
    return Counts(len(counted), mean, limits, times)


def needed_for(found: Kappa, vines: int, z: float, precision: float) -> Maybe:
    """Vines in all that would bring the range down to the precision, if they agree as these do; open where these leave no error."""
    times = z * found.error / precision
    return Maybe(found.error > 0.0, float(up(times * times * float(vines))))


def result_of(vines: list[VinePair], both: Both, counts: Counts) -> AssessorsComparedResult:
    """The outputs."""
    known = counts.mean.sd.ok
    return AssessorsComparedResult(
        same_pct=PER_CENT * float(both.same) / float(both.vines),
        same_low_pct=both.same_low_pct,
        same_high_pct=both.same_high_pct,
        kappa=both.plain.kappa,
        kappa_low=both.plain.low,
        kappa_high=both.plain.high,
        weighted_kappa=both.ordered.kappa,
        weighted_low=both.ordered.low,
        weighted_high=both.ordered.high,
        vines_needed=both.needed,
        mean_difference=Maybe(counts.vines > 0, counts.mean.mean),
        difference_low=counts.mean.low,
        difference_high=counts.mean.high,
        limit_low=Maybe(known, counts.limits.low),
        limit_high=Maybe(known, counts.limits.high),
        vines_differing=len([one for one in vines if one.differs]),
        vines=vines,
        headline=headline_of(both),
        steps=steps_of(both, len([one for one in vines if one.differs])),
        working=working_of(both, counts),
        notes=notes_of(both, counts),
    )
