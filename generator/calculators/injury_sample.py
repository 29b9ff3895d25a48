"""The buds that were cut, and what the number wanted counts on.

V = P + s S is the value of a node: P the share whose primary lives, S where only a secondary lives, s the crop of its shoot. V_plan says which
deaths the number wanted holds, so that each is counted once: none (1); those of an ordinary winter, as spring counts do; those of this
winter, as buds cut open do (V now: nothing is added); or, where spring counts were scaled to this winter, the poorer fruit of
this winter's secondaries but not its dead nodes, so that s is 1. Interval: Wilson.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.injury_records import InjuryAdjustmentInputs, InjuryAdjustmentValues
from generator.calculators.proportions import wilson
from generator.calculators.quantiles import normal_quantile
from generator.calculators.units import PER_CENT, share

# Places among the choices of deaths_in_wanted_nodes; beyond this winter's stands the number that was scaled to it.
NO_DEATHS: int = 0
THIS_WINTER: int = 2


@dataclass(frozen=True)
class Planned:
    """What the number wanted counts on: the share of primaries alive, and V."""

    primary: float
    value: float


@dataclass(frozen=True)
class Sample:
    """The buds of a block: cut, primary alive, only a secondary alive, and s; which deaths the number wanted holds and what it counts on;
    primaries dead with the ends of their interval (%); whether that is severe, and the limit (%); the buds of the first step and in all;
    the interval's level (%); how many times the nodes wanted are left until burst where that is severe, least and most."""

    cut: float
    primary: float
    secondary: float
    secondary_share: float
    holds: int
    planned: Planned
    dead_pct: float
    low_pct: float
    high_pct: float
    severe: bool
    severe_pct: float
    first_buds: float
    full_buds: float
    level_pct: float
    wait_least: float
    wait_most: float


def sample_of(inputs: InjuryAdjustmentInputs, values: InjuryAdjustmentValues) -> Sample:
    """The buds as counted, with their interval. Raises ValueError when they do not add up, or nobody says what the number wanted holds."""
    if inputs.buds_primary_alive + inputs.buds_secondary_only > inputs.buds_cut_for_injury:
        raise ValueError("more buds are alive than were cut: a bud counts as primary alive or as secondary only, never as both")
    cut = float(inputs.buds_cut_for_injury)
    primary = float(inputs.buds_primary_alive)
    secondary = float(inputs.buds_secondary_only)
    span = wilson(cut - primary, cut, normal_quantile((1.0 + share(values.injury_level_pct)) / 2.0))
    dead_pct = (cut - primary) * PER_CENT / cut
    holds = inputs.deaths_in_wanted_nodes
    s = 1.0 if holds > THIS_WINTER else inputs.secondary_share
    now = Planned(primary / cut, (primary + s * secondary) / cut)
    return Sample(
        cut,
        primary,
        secondary,
        s,
        holds,
        now if holds == THIS_WINTER else in_plan(inputs, s),
        dead_pct,
        span.low * PER_CENT,
        span.high * PER_CENT,
        dead_pct > values.severe_injury_pct or primary <= 0.0,
        values.severe_injury_pct,
        values.injury_first_buds,
        values.injury_full_buds,
        values.injury_level_pct,
        values.injury_wait_least_times,
        values.injury_wait_most_times,
    )


def in_plan(inputs: InjuryAdjustmentInputs, s: float) -> Planned:
    """What a number counts on that holds no deaths, or those of an ordinary winter. Raises ValueError when nobody gives the latter."""
    if inputs.deaths_in_wanted_nodes == NO_DEATHS:
        return Planned(1.0, 1.0)
    if not inputs.ordinary_primary_alive_pct.ok:
        raise ValueError(
            "the number wanted holds the deaths of an ordinary winter: give the primaries alive after one; "
            "who never counted them says that none are inside, and reads the answer as the most"
        )
    primary = share(inputs.ordinary_primary_alive_pct.number)
    secondary = share(inputs.ordinary_secondary_only_pct.number) if inputs.ordinary_secondary_only_pct.ok else 0.0
    if primary <= 0.0 or primary + secondary > 1.0:
        raise ValueError("after an ordinary winter some primaries live, and with the secondaries alone they are at most 100 %")
    return Planned(primary, primary + s * secondary)


def living_value(sample: Sample) -> float:
    """Primaries alive and s x the secondaries alone, in buds."""
    return sample.primary + sample.secondary_share * sample.secondary


def replacement(wanted: float, planned: float, living: float, cut: float, severe: bool) -> Maybe:
    """N_plan x V_plan / V_now, where V_now = living / cut; no number for a severe injury."""
    if severe:
        return Maybe(False, 0.0)
    return Maybe(True, wanted * planned * cut / living)


def nodes_at(sample: Sample, wanted: float, dead_pct: float) -> float:
    """Nodes with the crop of secondaries were so many primaries dead (%, under 100) and as many of these left with a secondary as in the sample."""
    dead = sample.cut - sample.primary
    kept = sample.secondary_share * sample.secondary / dead if dead > 0.0 else 0.0
    return wanted * sample.planned.value / (1.0 - share(dead_pct) * (1.0 - kept))
