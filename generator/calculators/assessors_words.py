"""What is said of two assessors: how far they agree, what to do, the working, and how little ten vines tell."""

from dataclasses import dataclass

from generator.calculators.agreement import Kappa, Limits, MeanRange
from generator.calculators.facts import Maybe
from generator.calculators.say import Say

CLASSES: list[str] = ["none", "untidy", "crop", "vine"]
# The words of Landis and Koch 1977, from the lowest; the first is for what chance would beat.
WORDS: list[str] = [
    "assessors_compared.poor",
    "assessors_compared.slight",
    "assessors_compared.fair",
    "assessors_compared.moderate",
    "assessors_compared.substantial",
    "assessors_compared.almost_perfect",
]


@dataclass(frozen=True)
class VinePair:
    """One vine as both judged it: its number, whether they differ on it, their verdicts and their counts in words."""

    number: int
    differs: bool
    says: Say
    use_says: Say


@dataclass(frozen=True)
class Counts:
    """Nodes counted by the first less those by the second: on how many vines, mean and range, limits of agreement, and how many standard
    deviations the limits lie off."""

    vines: int
    mean: MeanRange
    limits: Limits
    times: float


@dataclass(frozen=True)
class Both:
    """The verdicts crossed (first down, second across), vines with the same one and all, the range of that share (%), kappa plain and for
    ordered grades, vines needed in all, kappa wanted, above what each word of WORDS from the third is used, and the level of the ranges (%)."""

    table: list[list[int]]
    same: int
    vines: int
    same_low_pct: float
    same_high_pct: float
    plain: Kappa
    ordered: Kappa
    needed: Maybe
    wanted: float
    words_above: list[float]
    confidence_pct: float


def grade_of(place: int) -> float:
    """The number of the grade, 1 for the worst, of a place in CLASSES that is not none."""
    return float(len(CLASSES) - place)


def pair_says(first: int, second: int) -> Say:
    """Both verdicts on a vine."""
    if first == second:
        return Say("assessors_compared.both_none", [], []) if first == 0 else Say("assessors_compared.both_grade", [grade_of(first)], [])
    if first == 0:
        return Say("assessors_compared.second_only", [grade_of(second)], [])
    if second == 0:
        return Say("assessors_compared.first_only", [grade_of(first)], [])
    return Say("assessors_compared.grades", [grade_of(first), grade_of(second)], [])


def headline_of(both: Both) -> Say:
    """The agreement in one line."""
    counts = [float(both.same), float(both.vines)]
    if not both.ordered.kappa.ok:
        return Say("assessors_compared.headline_alike", counts, [])
    if not both.ordered.low.ok:
        return Say("assessors_compared.headline_no_range", counts + [both.ordered.kappa.number], [])
    kappa = both.ordered
    return Say("assessors_compared.headline", counts + [kappa.kappa.number, kappa.low.number, kappa.high.number], [])


def steps_of(both: Both, differing: int) -> list[Say]:
    """What to do next."""
    steps: list[Say] = []
    if differing > 0:
        steps.append(Say("assessors_compared.together", [float(differing)], []))
    if not both.ordered.kappa.ok:
        return steps + [Say("assessors_compared.other_vines", [], [])]
    if both.ordered.kappa.number < both.wanted:
        return steps + [Say("assessors_compared.repeat", [both.wanted], [])]
    if not both.ordered.low.ok:
        return steps + [Say("assessors_compared.so_far", [both.same_low_pct], [])]
    if both.ordered.low.number < both.wanted:
        return steps + [Say("assessors_compared.not_sure", [both.wanted, both.ordered.low.number], [])]
    return steps + [Say("assessors_compared.alone", [both.wanted], [])]


def working_of(both: Both, counts: Counts) -> list[Say]:
    """The sums line by line."""
    lines = [Say("assessors_compared.share", [float(both.same), float(both.vines), both.same_low_pct, both.same_high_pct], [])]
    for place, row in enumerate(both.table):
        if sum(row) > 0:
            told = [float(row[k]) for k in range(len(row) - 1, -1, -1)]
            lines.append(Say("assessors_compared.row_none", told, []) if place == 0 else Say("assessors_compared.row", [grade_of(place)] + told, []))
    lines = lines + kappa_lines(both.plain, "assessors_compared.plain", "assessors_compared.plain_range")
    lines = lines + kappa_lines(both.ordered, "assessors_compared.ordered", "assessors_compared.ordered_range")
    if both.needed.ok:
        lines.append(Say("assessors_compared.needed", [float(both.vines), both.needed.number], []))
    if counts.mean.sd.ok:
        mean = counts.mean
        lines.append(Say("assessors_compared.mean", [float(counts.vines), mean.mean, mean.sd.number, mean.low.number, mean.high.number], []))
        lines.append(Say("assessors_compared.limits", [counts.times, counts.limits.low, counts.limits.high, counts.limits.unsure], []))
    return lines


def kappa_lines(found: Kappa, sums: str, ends: str) -> list[Say]:
    """A kappa and its range; nothing where there is none."""
    if not found.kappa.ok:
        return []
    lines = [Say(sums, [found.observed, found.expected, found.kappa.number], [])]
    if found.low.ok:
        lines.append(Say(ends, [found.error, found.low.number, found.high.number], []))
    return lines


def notes_of(both: Both, counts: Counts) -> list[Say]:
    """How much this tells, and what the words mean."""
    notes: list[Say] = []
    if both.ordered.kappa.ok:
        found = both.ordered.kappa.number
        place = 0 if found < 0.0 else 1 + len([1 for above in both.words_above if found > above])
        notes.append(Say(WORDS[place], [found], []))
    if both.needed.ok and both.needed.number > float(both.vines):
        notes.append(Say("assessors_compared.wide", [float(both.vines), both.needed.number - float(both.vines)], []))
    if not both.ordered.low.ok:
        notes.append(Say("assessors_compared.no_error", [float(both.vines), both.same_low_pct], []))
    if counts.mean.sd.ok:
        notes.append(Say("assessors_compared.differ_by", [counts.limits.low, counts.limits.high], []))
    if counts.vines < both.vines:
        notes.append(Say("assessors_compared.uncounted", [float(both.vines - counts.vines)], []))
    return notes + [Say("assessors_compared.prevalence", [], []), Say("assessors_compared.few", [], []), Say("assessors_compared.apart", [], [])]
