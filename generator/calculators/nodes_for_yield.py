"""How many nodes to keep on each bearing vine for the crop that is wanted: the yield chain backwards.

N = (kg wanted per vine - Z x u0 x w0) / (burst x h x u x w); see yield_chain. This is the fruit's view alone: it neither
asks what the vine can carry nor what the canopy has room for, and it is no ceiling.
"""

from dataclasses import dataclass

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import KG_PER_T
from generator.calculators.yield_chain import Chain, any_given, chain, chain_working, is_extrapolated, measured_note, spread_factor


@dataclass(frozen=True)
class NodesForYieldInputs:
    """The crop wanted, bearing vines per hectare, the components from spring counts of the block (per bearing vine), what
    the non-count shoots add, the node number at which the counts were made, and the spread (cv in %) of each component."""

    target_yield_t_ha: float
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
class NodesForYieldValues:
    """The level of the interval (%) with its normal quantile, the swing of the season (%), and how far the components hold (%)."""

    interval_level_pct: float
    interval_z: float
    season_spread_pct: float
    extrapolation_limit_pct: float


@dataclass(frozen=True)
class NodesForYieldResult:
    """Nodes per bearing vine: exact, whole (nearest, half up), and the low and high end of the range (exact)."""

    kg_per_vine: float
    nodes_exact: float
    nodes: int
    low: float
    high: float
    extrapolated: bool
    headline: Say
    working: list[Say]
    notes: list[Say]


def nodes_for_yield(inputs: NodesForYieldInputs, values: NodesForYieldValues) -> NodesForYieldResult:
    """Nodes for the crop wanted. Raises ValueError when no vine bears or when a node would give nothing."""
    if inputs.bearing_vines_per_ha <= 0.0:
        raise ValueError("there must be bearing vines")
    links = chain_of(inputs)
    if links.kg_per_node <= 0.0:
        raise ValueError("budburst, shoots, bunches and bunch weight must all be above zero")
    cvs = cvs_of(inputs)
    factor = spread_factor(cvs, values.season_spread_pct, values.interval_z)
    kg_wanted = inputs.target_yield_t_ha * KG_PER_T / inputs.bearing_vines_per_ha
    exact = nodes_to_bear(kg_wanted, links)
    low = nodes_to_bear(kg_wanted / factor, links)
    high = nodes_to_bear(kg_wanted * factor, links)
    nodes = half_up(exact)
    limit = values.extrapolation_limit_pct
    return NodesForYieldResult(
        kg_wanted,
        exact,
        nodes,
        low,
        high,
        is_extrapolated(float(nodes), inputs.nodes_left, limit),
        Say("nodes_for_yield.headline", [float(nodes), inputs.target_yield_t_ha], []),
        working_of(inputs, links, kg_wanted, exact),
        notes_of(inputs, values, kg_wanted, links, float(nodes), low, high, any_given(cvs)),
    )


def chain_of(inputs: NodesForYieldInputs) -> Chain:
    """The chain for the inputs' components."""
    return chain(
        inputs.budburst_pct,
        inputs.shoots_per_burst_node,
        inputs.bunches_per_shoot,
        inputs.bunch_weight_g,
        inputs.noncount_shoots_kept,
        inputs.bunches_per_noncount_shoot,
        inputs.noncount_bunch_weight_g,
    )


def cvs_of(inputs: NodesForYieldInputs) -> list[Maybe]:
    """The spreads of the four components, in the chain's order."""
    return [
        inputs.budburst_cv_pct,
        inputs.shoots_per_burst_node_cv_pct,
        inputs.bunches_per_shoot_cv_pct,
        inputs.bunch_weight_cv_pct,
    ]


def nodes_to_bear(kg: float, links: Chain) -> float:
    """Nodes that bear kg on one vine beside its other shoots; 0 when those bear it alone."""
    return max(0.0, (kg - links.other_kg) / links.kg_per_node)


def working_of(inputs: NodesForYieldInputs, links: Chain, kg_wanted: float, exact: float) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [
        Say("nodes_for_yield.formula", [], []),
        Say("nodes_for_yield.kg_wanted", [inputs.target_yield_t_ha, inputs.bearing_vines_per_ha, kg_wanted], []),
    ]
    lines = lines + chain_working(
        links, inputs.budburst_pct, inputs.shoots_per_burst_node, inputs.bunches_per_shoot, inputs.bunch_weight_g
    )
    if links.other_kg > 0.0:
        lines.append(Say("nodes_for_yield.left_to_bear", [kg_wanted, links.other_kg, max(0.0, kg_wanted - links.other_kg)], []))
    lines.append(Say("nodes_for_yield.exact", [max(0.0, kg_wanted - links.other_kg), links.kg_per_node, exact], []))
    lines.append(Say("nodes_for_yield.whole", [exact, float(half_up(exact))], []))
    return lines


def notes_of(
    inputs: NodesForYieldInputs,
    values: NodesForYieldValues,
    kg_wanted: float,
    links: Chain,
    nodes: float,
    low: float,
    high: float,
    sampled: bool,
) -> list[Say]:
    """What the range covers, whether the components hold at this number, and what this view leaves out."""
    notes: list[Say] = [Say("nodes_for_yield.range", [low, high, values.interval_level_pct], [])]
    if sampled:
        notes.append(Say("yield_chain.covers_both", [values.interval_level_pct, values.season_spread_pct], []))
    else:
        notes.append(Say("yield_chain.covers_season", [values.interval_level_pct, values.season_spread_pct], []))
    notes.append(measured_note(nodes, inputs.nodes_left, values.extrapolation_limit_pct))
    if kg_wanted <= links.other_kg:
        notes.append(Say("nodes_for_yield.others_bear_it", [links.other_kg, kg_wanted], []))
    notes.append(Say("nodes_for_yield.no_ceiling", [], []))
    return notes
