"""What is said of a field test: the verdict and why, what to practise, the working line by line, and what to know."""

import math
from dataclasses import dataclass

from generator.calculators.agreement import MeanRange
from generator.calculators.facts import Maybe
from generator.calculators.say import Say

PRACTISE: list[str] = [
    "ten_vine_test.practise_vine",
    "ten_vine_test.practise_crop",
    "ten_vine_test.practise_untidy",
    "ten_vine_test.practise_nodes",
    "ten_vine_test.practise_time",
]


@dataclass(frozen=True)
class VineMark:
    """One vine: its number, nodes outside the tolerance, points, both in words, and how they were reckoned."""

    number: int
    outside: int
    points: float
    says: Say
    reckoned: Say


@dataclass(frozen=True)
class Costs:
    """Points that each thing takes off over all vines, as if no vine could go below none: grades from the worst, nodes, time."""

    vine: float
    crop: float
    untidy: float
    nodes: float
    minutes: float


@dataclass(frozen=True)
class Marked:
    """The test in all: unsafe acts, faults by grade from the worst and how many of grade one are let pass, points, of how many, the part needed (%), whether that is
    reached, and minutes used and allowed."""

    unsafe: int
    grave: int
    crop: int
    untidy: int
    grave_allowed: int
    points: float
    full: float
    needed_pct: float
    enough: bool
    used: Maybe
    allowed: float


@dataclass(frozen=True)
class Cost:
    """What one thing took off, and the message that says how to practise it."""

    points: float
    message: str


def headline_of(marked: Marked) -> Say:
    """The verdict in one line; the gravest reason against it."""
    if marked.unsafe > 0:
        return Say("ten_vine_test.headline_unsafe", [float(marked.unsafe), marked.points, marked.full], [])
    if marked.grave > marked.grave_allowed:
        return Say("ten_vine_test.headline_grave", [float(marked.grave), float(marked.grave_allowed), marked.points, marked.full], [])
    needed = marked.needed_pct
    return Say("ten_vine_test.headline_passed" if marked.enough else "ten_vine_test.headline_points", [marked.points, marked.full, needed], [])


def steps_of(marked: Marked, costs: Costs) -> list[Say]:
    """What to practise: safe work first, then what cost most."""
    steps: list[Say] = []
    if marked.unsafe > 0:
        steps.append(Say("ten_vine_test.practise_safety", [], []))
    taken = [costs.vine, costs.crop, costs.untidy, costs.nodes, costs.minutes]
    found = [Cost(points, message) for points, message in zip(taken, PRACTISE) if points > 0.0]
    for one in sorted(found, key=lambda cost: -cost.points):
        steps.append(Say(one.message, [one.points], []))
    if len(steps) == 0:
        steps.append(Say("ten_vine_test.practise_more", [], []))
    return steps


def working_of(marked: Marked, vines: list[VineMark], mean: MeanRange, costs: Costs) -> list[Say]:
    """Vine by vine, then the sum, the time, the count and the verdict."""
    lines = [one.reckoned for one in vines]
    if marked.used.ok:
        lines.append(Say("ten_vine_test.time", [marked.used.number, marked.allowed, costs.minutes], []))
    lines.append(Say("ten_vine_test.sum", [math.fsum([one.points for one in vines]), costs.minutes, marked.points, marked.full], []))
    lines.append(Say("ten_vine_test.needed", [marked.needed_pct, marked.full, marked.needed_pct * marked.full / 100.0], []))
    lines.append(Say("ten_vine_test.gates", [float(marked.unsafe), float(marked.grave), float(marked.grave_allowed)], []))
    if mean.low.ok:
        lines.append(Say("ten_vine_test.mean", [mean.mean, mean.sd.number, mean.low.number, mean.high.number], []))
    return lines


def notes_of(marked: Marked, vines: int, untimed: int, mean: MeanRange) -> list[Say]:
    """What to know besides."""
    notes = [Say("ten_vine_test.counted", [float(marked.unsafe), float(marked.grave), float(marked.crop), float(marked.untidy)], [])]
    if mean.low.ok:
        for_all = "ten_vine_test.more" if mean.low.number > 0.0 else "ten_vine_test.fewer" if mean.high.number < 0.0 else "ten_vine_test.either"
        notes.append(Say(for_all, [mean.low.number, mean.high.number], []))
    if untimed > 0:
        notes.append(Say("ten_vine_test.untimed", [float(untimed)], []))
    if vines == 1:
        notes.append(Say("ten_vine_test.single", [], []))
    return notes + [Say("ten_vine_test.yours", [], []), Say("ten_vine_test.local", [], [])]
