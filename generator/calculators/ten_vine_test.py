"""The timed field test: vines that one learner pruned, judged vine by vine; points, verdict, and what to practise next.

Weights, tolerance, time and pass mark are the organisation's own. Unsafe work fails a test whatever the points, and so do more faults of
grade one than are let pass. The range of the mean count is Student's t over vines. See vine_marks.py for the words.
"""

import math
from dataclasses import dataclass

from generator.calculators.agreement import MeanRange, mean_range
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT, S_PER_MIN
from generator.calculators.vine_marks import Costs, Marked, VineMark, headline_of, notes_of, steps_of, working_of


@dataclass(frozen=True)
class PrunedVine:
    """One vine of the test: nodes counted on it, faults by grade from the worst, unsafe acts, and the seconds it took."""

    nodes_counted: int
    faults_vine: int
    faults_crop: int
    faults_untidy: int
    unsafe_acts: int
    seconds: Maybe


@dataclass(frozen=True)
class TenVineTestInputs:
    """The vines, and what the organisation sets: nodes and tolerance, time (s), points of a vine, points off for each thing, points to pass
    (%), faults of grade one let pass, and the level of the range (%)."""

    rows: list[PrunedVine]
    target_nodes: int
    tolerance_nodes: int
    seconds_allowed_per_vine: int
    points_per_vine: float
    points_off_vine_fault: float
    points_off_crop_fault: float
    points_off_untidy_fault: float
    points_off_node: float
    points_off_minute: float
    points_to_pass_pct: float
    vine_faults_allowed: int
    confidence_pct: float


@dataclass(frozen=True)
class TenVineTestValues:
    """Vines that a test takes at most."""

    test_vines_most: float


@dataclass(frozen=True)
class TenVineTestResult:
    """Passed or not; points in all, of how many, in %; vines outside the tolerance; the mean difference of nodes from the wanted with its
    range (two vines or more); minutes used and allowed for the vines that were timed; counts by grade; each vine's points."""

    passed: bool
    points: float
    points_full: float
    points_pct: float
    vines_outside: int
    mean_difference: float
    difference_low: Maybe
    difference_high: Maybe
    minutes_used: Maybe
    minutes_allowed: Maybe
    faults_vine: int
    faults_crop: int
    faults_untidy: int
    unsafe_acts: int
    vines: list[VineMark]
    headline: Say
    steps: list[Say]
    working: list[Say]
    notes: list[Say]


def row_faults(row: PrunedVine) -> list[Say]:
    """What is wrong between the columns of a row: nothing, since every vine can be."""
    return []


def ten_vine_test(inputs: TenVineTestInputs, values: TenVineTestValues) -> TenVineTestResult:
    """The verdict on one learner's vines. Raises ValueError when there is no vine, or more than a test takes."""
    if len(inputs.rows) == 0:
        raise ValueError("enter at least one vine")
    if len(inputs.rows) > math.floor(values.test_vines_most):
        raise ValueError("more vines than a test takes were entered")
    vines = [mark_of(inputs, k) for k in range(len(inputs.rows))]
    timed = [row.seconds.number for row in inputs.rows if row.seconds.ok]
    used = math.fsum(timed) / S_PER_MIN
    allowed = float(inputs.seconds_allowed_per_vine) * float(len(timed)) / S_PER_MIN
    costs = costs_of(inputs, vines, max(0.0, used - allowed))
    full = inputs.points_per_vine * float(len(vines))
    points = max(0.0, math.fsum([one.points for one in vines]) - costs.minutes)
    unsafe = sum([row.unsafe_acts for row in inputs.rows])
    grave = sum([row.faults_vine for row in inputs.rows])
    crop = sum([row.faults_crop for row in inputs.rows])
    untidy = sum([row.faults_untidy for row in inputs.rows])
    enough = PER_CENT * points >= inputs.points_to_pass_pct * full
    differences = [float(row.nodes_counted - inputs.target_nodes) for row in inputs.rows]
    mean = mean_range(differences, inputs.confidence_pct)
    marked = Marked(unsafe, grave, crop, untidy, inputs.vine_faults_allowed, points, full, inputs.points_to_pass_pct, enough, Maybe(len(timed) > 0, used), allowed)
    return result_of(inputs, vines, marked, mean, costs)


def mark_of(inputs: TenVineTestInputs, place: int) -> VineMark:
    """The points of one vine."""
    row = inputs.rows[place]
    outside = max(0, abs(row.nodes_counted - inputs.target_nodes) - inputs.tolerance_nodes)
    grave = float(row.faults_vine) * inputs.points_off_vine_fault
    crop = float(row.faults_crop) * inputs.points_off_crop_fault
    untidy = float(row.faults_untidy) * inputs.points_off_untidy_fault
    nodes = float(outside) * inputs.points_off_node
    points = max(0.0, inputs.points_per_vine - math.fsum([grave, crop, untidy, nodes]))
    numbers = [float(place + 1), float(row.nodes_counted), float(outside), inputs.points_per_vine, grave, crop, untidy, nodes, points]
    return VineMark(place + 1, outside, points, Say("ten_vine_test.vine", [float(outside), points], []), Say("ten_vine_test.reckoned", numbers, []))


def costs_of(inputs: TenVineTestInputs, vines: list[VineMark], over: float) -> Costs:
    """What each thing would take off, over all vines; over is minutes beyond the time allowed."""
    return Costs(
        float(sum([row.faults_vine for row in inputs.rows])) * inputs.points_off_vine_fault,
        float(sum([row.faults_crop for row in inputs.rows])) * inputs.points_off_crop_fault,
        float(sum([row.faults_untidy for row in inputs.rows])) * inputs.points_off_untidy_fault,
        float(sum([one.outside for one in vines])) * inputs.points_off_node,
        over * inputs.points_off_minute,
    )


def result_of(inputs: TenVineTestInputs, vines: list[VineMark], marked: Marked, mean: MeanRange, costs: Costs) -> TenVineTestResult:
    """The outputs."""
    return TenVineTestResult(
        passed=marked.enough and marked.unsafe == 0 and marked.grave <= marked.grave_allowed,
        points=marked.points,
        points_full=marked.full,
        points_pct=PER_CENT * marked.points / marked.full,
        vines_outside=len([one for one in vines if one.outside > 0]),
        mean_difference=mean.mean,
        difference_low=mean.low,
        difference_high=mean.high,
        minutes_used=marked.used,
        minutes_allowed=Maybe(marked.used.ok, marked.allowed),
        faults_vine=marked.grave,
        faults_crop=marked.crop,
        faults_untidy=marked.untidy,
        unsafe_acts=marked.unsafe,
        vines=vines,
        headline=headline_of(marked),
        steps=steps_of(marked, costs),
        working=working_of(marked, vines, mean, costs),
        notes=notes_of(marked, len(vines), len([row for row in inputs.rows if not row.seconds.ok]), mean),
    )
