"""What the calculator of winter injury says: the answer, the working, and what to mind."""

from generator.calculators.counting import up
from generator.calculators.facts import Maybe
from generator.calculators.injury_sample import THIS_WINTER, Sample, living_value, nodes_at
from generator.calculators.say import Say


def headline_of(sample: Sample, nodes: Maybe, wanted: float, unchanged: Maybe) -> Say:
    """The answer in one line, no surer than the sample is. unchanged: the dead (%) up to which every published rule leaves the number, ok
    where they all do."""
    if sample.severe and (sample.low_pct > sample.severe_pct or sample.holds == THIS_WINTER):
        return Say("injury_adjustment.wait", [sample.dead_pct, sample.severe_pct], [])
    if sample.holds == THIS_WINTER:
        return Say("injury_adjustment.nothing_to_add", [nodes.number], [])
    few = sample.cut < sample.first_buds
    dead = [sample.low_pct, sample.high_pct]
    ends = ends_of(sample, wanted)
    if sample.high_pct > sample.severe_pct:
        told = dead + ends + [sample.severe_pct]
        if few:
            return Say("injury_adjustment.few_or_severe", [sample.cut] + told, [])
        if sample.severe:
            return Say("injury_adjustment.severe_or_not", [sample.dead_pct] + told, [])
        return Say("injury_adjustment.may_be_none", [nodes.number] + told, [])
    if few:
        return Say("injury_adjustment.few", [sample.cut] + dead + ends, [])
    if unchanged.ok and nodes.number > float(up(wanted)):
        return Say("injury_adjustment.unchanged", [wanted, nodes.number, unchanged.number, sample.dead_pct], [])
    return Say("injury_adjustment.headline", [nodes.number, wanted, sample.dead_pct], [])


def ends_of(sample: Sample, wanted: float) -> list[float]:
    """Whole nodes for the low and the high end of the dead, but for no more than the severe limit."""
    ends = [sample.low_pct, min(sample.high_pct, sample.severe_pct)]
    return [float(up(nodes_at(sample, wanted, end))) for end in ends]


def working_of(sample: Sample, wanted: float, plain: Maybe, with_secondaries: Maybe) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [
        Say("injury_adjustment.mortality", [sample.cut, sample.primary, sample.dead_pct], []),
        Say("injury_adjustment.interval", [sample.low_pct, sample.high_pct, sample.level_pct], []),
    ]
    if not with_secondaries.ok:
        return lines
    now = living_value(sample) / sample.cut
    value = [sample.primary, sample.secondary_share, sample.secondary, sample.cut, now]
    lines = lines + [Say("injury_adjustment.formula", [], []), Say("injury_adjustment.value", value, [])]
    if sample.planned.value < 1.0:
        lines.append(Say("injury_adjustment.planned", [sample.planned.primary, sample.planned.value], []))
    if plain.ok:
        without = [wanted, sample.planned.primary, sample.primary / sample.cut, plain.number]
        lines.append(Say("injury_adjustment.without", without, []))
    return lines + [Say("injury_adjustment.having", [wanted, sample.planned.value, now, with_secondaries.number], [])]


def notes_of(sample: Sample, wanted: float, nodes: Maybe, shoots: Maybe, most: Maybe) -> list[Say]:
    """What to mind, the most urgent first."""
    notes: list[Say] = []
    if sample.severe:
        notes.append(Say("injury_adjustment.severe", [], []))
        times = [sample.wait_least, sample.wait_most]
        notes.append(Say("injury_adjustment.until_burst", times + [wanted * sample.wait_least, wanted * sample.wait_most], []))
    elif sample.high_pct > sample.severe_pct:
        notes.append(Say("injury_adjustment.may_be_severe", [sample.high_pct, sample.severe_pct], []))
    elif sample.dead_pct > 0.0 and sample.holds != THIS_WINTER:
        notes.append(Say("injury_adjustment.nodes_between", ends_of(sample, wanted), []))
    if sample.holds >= THIS_WINTER:
        notes.append(Say("injury_adjustment.scaled" if sample.holds > THIS_WINTER else "injury_adjustment.rules_left_out", [], []))
    notes = notes + sampling_notes(sample)
    if nodes.ok and shoots.ok and most.ok:
        fits = shoots.number <= most.number
        notes.append(Say("injury_adjustment.room_enough" if fits else "injury_adjustment.room_short", [shoots.number, most.number], []))
    if nodes.ok and nodes.number > float(up(wanted)):
        notes.append(Say("injury_adjustment.once", [nodes.number, wanted], []))
    return notes


def sampling_notes(sample: Sample) -> list[Say]:
    """Where the sample stands in its two steps: too few, mixed and not yet full, all dead, or enough, unless more are asked for already."""
    dead = sample.cut - sample.primary
    if sample.cut < sample.first_buds:
        return [Say("injury_adjustment.first_step", [sample.cut, sample.first_buds], [])]
    if dead >= sample.cut:
        return [Say("injury_adjustment.all_dead", [], [])]
    if dead > 0.0 and sample.cut < sample.full_buds:
        return [Say("injury_adjustment.second_step", [sample.cut, sample.full_buds], [])]
    if sample.low_pct <= sample.severe_pct and sample.high_pct > sample.severe_pct:
        return []
    return [Say("injury_adjustment.sample_full", [sample.cut], [])]
