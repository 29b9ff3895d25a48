"""What the calculator of winter injury says: the answer, the working, and what to mind."""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class Sample:
    """The buds of a block: cut, primary alive, only a secondary alive, and primary + s x secondary, all in buds; what the number wanted
    counts on (shares); primaries dead with the ends of their interval (%); whether that is severe, and the limit (%); the buds of
    the first step and in all; the interval's level (%)."""

    cut: float
    primary: float
    secondary: float
    value: float
    plan_primary: float
    plan_value: float
    dead_pct: float
    low_pct: float
    high_pct: float
    severe: bool
    severe_pct: float
    first_buds: float
    full_buds: float
    level_pct: float


def headline_of(sample: Sample, nodes: Maybe, wanted: float) -> Say:
    """The answer in one line."""
    if not nodes.ok:
        return Say("injury_adjustment.wait", [sample.dead_pct, sample.severe_pct], [])
    return Say("injury_adjustment.headline", [nodes.number, wanted, sample.dead_pct], [])


def working_of(sample: Sample, wanted: float, secondary_share: float, plain: Maybe, with_secondaries: Maybe) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [
        Say("injury_adjustment.mortality", [sample.cut, sample.primary, sample.dead_pct], []),
        Say("injury_adjustment.interval", [sample.low_pct, sample.high_pct, sample.level_pct], []),
    ]
    if not plain.ok:
        return lines
    value = [sample.primary, secondary_share, sample.secondary, sample.cut, sample.value / sample.cut]
    lines = lines + [Say("injury_adjustment.formula", [], []), Say("injury_adjustment.value", value, [])]
    if sample.plan_value < 1.0:
        lines.append(Say("injury_adjustment.planned", [sample.plan_primary, sample.plan_value], []))
    without = [wanted, sample.plan_primary, sample.primary / sample.cut, plain.number]
    having = [wanted, sample.plan_value, sample.value / sample.cut, with_secondaries.number]
    return lines + [Say("injury_adjustment.without", without, []), Say("injury_adjustment.having", having, [])]


def notes_of(sample: Sample, wanted: float, nodes: Maybe, shoots: Maybe, most: Maybe) -> list[Say]:
    """What to mind, the most urgent first."""
    notes: list[Say] = []
    if sample.severe:
        notes.append(Say("injury_adjustment.severe", [], []))
    elif sample.high_pct > sample.severe_pct:
        notes.append(Say("injury_adjustment.may_be_severe", [sample.high_pct, sample.severe_pct], []))
    elif sample.dead_pct > 0.0:
        ends = [wanted * sample.plan_primary / (1.0 - sample.low_pct / PER_CENT), wanted * sample.plan_primary / (1.0 - sample.high_pct / PER_CENT)]
        notes.append(Say("injury_adjustment.nodes_between", ends, []))
    notes = notes + sampling_notes(sample)
    if nodes.ok and shoots.ok and most.ok:
        fits = shoots.number <= most.number
        notes.append(Say("injury_adjustment.room_enough" if fits else "injury_adjustment.room_short", [shoots.number, most.number], []))
    if nodes.ok and nodes.number > wanted:
        notes.append(Say("injury_adjustment.once", [nodes.number, wanted], []))
    return notes


def sampling_notes(sample: Sample) -> list[Say]:
    """Where the sample stands in its two steps: too few, mixed and not yet full, all dead, or enough, unless more are asked for already."""
    dead = sample.cut - sample.primary
    if dead >= sample.cut:
        return [Say("injury_adjustment.all_dead", [], [])]
    if sample.cut < sample.first_buds:
        return [Say("injury_adjustment.first_step", [sample.cut, sample.first_buds], [])]
    if dead > 0.0 and sample.cut < sample.full_buds:
        return [Say("injury_adjustment.second_step", [sample.cut, sample.full_buds], [])]
    if sample.high_pct > sample.severe_pct and not sample.severe:
        return []
    return [Say("injury_adjustment.sample_full", [sample.cut], [])]
