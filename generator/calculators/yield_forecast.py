"""What crop a node number should give: the yield chain forwards.

kg per vine = N x burst x h x u x w + Z x u0 x w0; t per hectare = kg per vine x bearing vines per hectare / 1000; see
yield_chain. Nothing is taken off for losses after set: the bunch weight is the weight at harvest.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import KG_PER_T
from generator.calculators.yield_chain import Chain, any_given, chain, chain_working, is_extrapolated, measured_note, spread_factor


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
    """Per bearing vine: count shoots, bunches, kg. Per hectare: t, with the low and high end of the interval in t/ha."""

    count_shoots: float
    bunches: float
    kg_per_vine: float
    t_per_ha: float
    low: float
    high: float
    extrapolated: bool
    headline: Say
    working: list[Say]
    notes: list[Say]


def yield_forecast(inputs: YieldForecastInputs, values: YieldForecastValues) -> YieldForecastResult:
    """The crop of a node number, with its interval. Raises ValueError when budburst is over 100 %."""
    links = chain(
        inputs.budburst_pct,
        inputs.shoots_per_burst_node,
        inputs.bunches_per_shoot,
        inputs.bunch_weight_g,
        inputs.noncount_shoots_kept,
        inputs.bunches_per_noncount_shoot,
        inputs.noncount_bunch_weight_g,
    )
    cvs = [
        inputs.budburst_cv_pct,
        inputs.shoots_per_burst_node_cv_pct,
        inputs.bunches_per_shoot_cv_pct,
        inputs.bunch_weight_cv_pct,
    ]
    factor = spread_factor(cvs, values.season_spread_pct, values.interval_z)
    kg = inputs.nodes * links.kg_per_node + links.other_kg
    tonnes = kg * inputs.bearing_vines_per_ha / KG_PER_T
    return YieldForecastResult(
        inputs.nodes * links.shoots_per_node,
        inputs.nodes * links.bunches_per_node + links.other_bunches,
        kg,
        tonnes,
        tonnes / factor,
        tonnes * factor,
        is_extrapolated(inputs.nodes, inputs.nodes_left, values.extrapolation_limit_pct),
        Say("yield_forecast.headline", [inputs.nodes, tonnes, kg], []),
        working_of(inputs, links, kg, tonnes),
        notes_of(inputs, values, tonnes / factor, tonnes * factor, any_given(cvs)),
    )


def working_of(inputs: YieldForecastInputs, links: Chain, kg: float, tonnes: float) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [Say("yield_forecast.formula", [], [])]
    lines = lines + chain_working(
        links, inputs.budburst_pct, inputs.shoots_per_burst_node, inputs.bunches_per_shoot, inputs.bunch_weight_g
    )
    if links.other_bunches > 0.0:
        lines.append(Say("yield_forecast.kg_with_others", [inputs.nodes, links.kg_per_node, links.other_kg, kg], []))
    else:
        lines.append(Say("yield_forecast.kg", [inputs.nodes, links.kg_per_node, kg], []))
    lines.append(Say("yield_forecast.tonnes", [kg, inputs.bearing_vines_per_ha, tonnes], []))
    return lines


def notes_of(inputs: YieldForecastInputs, values: YieldForecastValues, low: float, high: float, sampled: bool) -> list[Say]:
    """The interval, what it covers, and whether the components hold at this number."""
    notes: list[Say] = [Say("yield_forecast.interval", [low, high, values.interval_level_pct], [])]
    if sampled:
        notes.append(Say("yield_chain.covers_both", [values.interval_level_pct, values.season_spread_pct], []))
    else:
        notes.append(Say("yield_chain.covers_season", [values.interval_level_pct, values.season_spread_pct], []))
    notes.append(measured_note(inputs.nodes, inputs.nodes_left, values.extrapolation_limit_pct))
    return notes
