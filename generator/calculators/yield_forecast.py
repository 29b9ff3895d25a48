"""What crop a node number should give: the yield chain forwards.

kg per vine = N x burst x h x u x w + Z x u0 x w0; t per hectare = kg per vine x bearing vines per hectare / 1000; see
yield_chain. Nothing is taken off for losses after set: the bunch weight is the weight at harvest.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import KG_PER_T
from generator.calculators.yield_chain import Chain, Counts, chain, chain_working, covers_note, cvs_of, is_extrapolated, measured_note
from generator.calculators.yield_spread import Interval, Limits, interval_of, spread_of


@dataclass(frozen=True)
class YieldForecastInputs:
    """Nodes per bearing vine (a block mean need not be whole), bearing vines per hectare, the components from spring counts,
    what the non-count shoots add, the node number at which the counts were made, and the spread (cv in %) of each component."""

    nodes: float
    bearing_vines_per_ha: float
    budburst_pct: float
    shoots_per_burst_node: float
    bunches_per_shoot: float
    bunch_weight_g: float
    noncount_shoots_kept: Maybe
    bunches_per_noncount_shoot: Maybe
    noncount_bunch_weight_g: Maybe
    nodes_left: Maybe
    budburst_cv_pct: Maybe
    shoots_per_burst_node_cv_pct: Maybe
    bunches_per_shoot_cv_pct: Maybe
    bunch_weight_cv_pct: Maybe


@dataclass(frozen=True)
class YieldForecastValues:
    """The level of the interval (%) with its normal quantile, the swing of the season (%), and how far the components hold (%)."""

    interval_level_pct: float
    interval_z: float
    season_spread_pct: float
    extrapolation_limit_pct: float


@dataclass(frozen=True)
class YieldForecastResult:
    """Per bearing vine: count shoots, bunches, kg. Per hectare: t, with the ends of its interval in t/ha: by the counts alone
    (sampling), by the season alone, and by both (low and high)."""

    count_shoots: float
    bunches: float
    kg_per_vine: float
    t_per_ha: float
    sampling_low: Maybe
    sampling_high: Maybe
    season_low: float
    season_high: float
    low: float
    high: float
    extrapolated: bool
    headline: Say
    working: list[Say]
    notes: list[Say]


def yield_forecast(inputs: YieldForecastInputs, values: YieldForecastValues) -> YieldForecastResult:
    """The crop of a node number, with its interval. Raises ValueError when budburst is over 100 %."""
    limits = Limits(values.interval_level_pct, values.interval_z, values.season_spread_pct, values.extrapolation_limit_pct)
    return crop_of_nodes(inputs.nodes, counts_of(inputs), limits)


def counts_of(inputs: YieldForecastInputs) -> Counts:
    """The inputs without the nodes."""
    return Counts(
        inputs.bearing_vines_per_ha,
        inputs.budburst_pct,
        inputs.shoots_per_burst_node,
        inputs.bunches_per_shoot,
        inputs.bunch_weight_g,
        inputs.noncount_shoots_kept,
        inputs.bunches_per_noncount_shoot,
        inputs.noncount_bunch_weight_g,
        inputs.nodes_left,
        inputs.budburst_cv_pct,
        inputs.shoots_per_burst_node_cv_pct,
        inputs.bunches_per_shoot_cv_pct,
        inputs.bunch_weight_cv_pct,
    )


def crop_of_nodes(nodes: float, counts: Counts, limits: Limits) -> YieldForecastResult:
    """The crop of a node number, for whoever has the counts together. Raises ValueError when budburst is over 100 %."""
    links = chain(counts)
    kg = nodes * links.kg_per_node + links.other_kg
    tonnes = kg * counts.bearing_vines_per_ha / KG_PER_T
    interval = interval_of(tonnes, spread_of(cvs_of(counts), limits))
    return YieldForecastResult(
        nodes * links.shoots_per_node,
        nodes * links.bunches_per_node + links.other_bunches,
        kg,
        tonnes,
        interval.sampling_low,
        interval.sampling_high,
        interval.season_low,
        interval.season_high,
        interval.low,
        interval.high,
        is_extrapolated(nodes, counts.nodes_left, limits.extrapolation_limit_pct),
        Say("yield_forecast.headline", [nodes, tonnes, kg], []),
        working_of(nodes, counts, links, kg, tonnes),
        interval_notes(interval, limits) + [measured_note(nodes, counts.nodes_left, limits.extrapolation_limit_pct)],
    )


def working_of(nodes: float, counts: Counts, links: Chain, kg: float, tonnes: float) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [Say("yield_forecast.formula", [], [])] + chain_working(links, counts)
    if links.other_bunches > 0.0:
        lines.append(Say("yield_forecast.kg_with_others", [nodes, links.kg_per_node, links.other_kg, kg], []))
    else:
        lines.append(Say("yield_forecast.kg", [nodes, links.kg_per_node, kg], []))
    lines.append(Say("yield_forecast.tonnes", [kg, counts.bearing_vines_per_ha, tonnes], []))
    return lines


def interval_notes(interval: Interval, limits: Limits) -> list[Say]:
    """The interval, each of its causes alone where there are two, and what is in it."""
    notes = [Say("yield_forecast.interval", [interval.low, interval.high, limits.interval_level_pct], [])]
    if interval.sampling_low.ok:
        notes.append(Say("yield_forecast.season_alone", [interval.season_low, interval.season_high], []))
        notes.append(Say("yield_forecast.counts_alone", [interval.sampling_low.number, interval.sampling_high.number], []))
    return notes + [covers_note(interval.sampling_low.ok, limits)]
