"""How many nodes to keep on each bearing vine for the crop that is wanted: the yield chain backwards.

N = (kg wanted per vine - Z x u0 x w0) / (burst x h x u x w); see yield_chain. This is the fruit's view alone: it neither
asks what the vine can carry nor what the canopy has room for, and it is no ceiling.
"""

from dataclasses import dataclass

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import KG_PER_T
from generator.calculators.yield_chain import Chain, Counts, chain, chain_working, covers_note, cvs_of, is_extrapolated, measured_note
from generator.calculators.yield_spread import Interval, Limits, interval_of, spread_of


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
    """Nodes per bearing vine: exact, whole (nearest, half up), and the ends of the range (exact): by the counts alone (sampling),
    by the season alone, and by both (low and high)."""

    kg_per_vine: float
    nodes_exact: float
    nodes: int
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


def nodes_for_yield(inputs: NodesForYieldInputs, values: NodesForYieldValues) -> NodesForYieldResult:
    """Nodes for the crop wanted. Raises ValueError when no vine bears or when a node would give nothing."""
    limits = Limits(values.interval_level_pct, values.interval_z, values.season_spread_pct, values.extrapolation_limit_pct)
    return nodes_for_crop(inputs.target_yield_t_ha, counts_of(inputs), limits)


def counts_of(inputs: NodesForYieldInputs) -> Counts:
    """The inputs without the crop wanted."""
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


def nodes_for_crop(target_yield_t_ha: float, counts: Counts, limits: Limits) -> NodesForYieldResult:
    """Nodes for the crop wanted, for whoever has the counts together. Raises ValueError when no vine bears or when a node
    would give nothing."""
    if counts.bearing_vines_per_ha <= 0.0:
        raise ValueError("there must be bearing vines")
    links = chain(counts)
    if links.kg_per_node <= 0.0:
        raise ValueError("budburst, shoots, bunches and bunch weight must all be above zero")
    kg_wanted = target_yield_t_ha * KG_PER_T / counts.bearing_vines_per_ha
    exact = nodes_to_bear(kg_wanted, links)
    nodes = half_up(exact)
    swing = interval_of(kg_wanted, spread_of(cvs_of(counts), limits))
    ends = in_nodes(swing, links)
    return NodesForYieldResult(
        kg_wanted,
        exact,
        nodes,
        ends.sampling_low,
        ends.sampling_high,
        ends.season_low,
        ends.season_high,
        ends.low,
        ends.high,
        is_extrapolated(float(nodes), counts.nodes_left, limits.extrapolation_limit_pct),
        Say("nodes_for_yield.headline", [float(nodes), target_yield_t_ha], []),
        working_of(target_yield_t_ha, counts, links, kg_wanted, exact),
        notes_of(counts, limits, kg_wanted, links, float(nodes), ends),
    )


def nodes_to_bear(kg: float, links: Chain) -> float:
    """Nodes that bear kg on one vine beside its other shoots; 0 when those bear it alone."""
    return max(0.0, (kg - links.other_kg) / links.kg_per_node)


def in_nodes(swing: Interval, links: Chain) -> Interval:
    """An interval of kg on one vine as the nodes that bear it."""
    low = Maybe(False, 0.0)
    high = Maybe(False, 0.0)
    if swing.sampling_low.ok:
        low = Maybe(True, nodes_to_bear(swing.sampling_low.number, links))
        high = Maybe(True, nodes_to_bear(swing.sampling_high.number, links))
    return Interval(
        low,
        high,
        nodes_to_bear(swing.season_low, links),
        nodes_to_bear(swing.season_high, links),
        nodes_to_bear(swing.low, links),
        nodes_to_bear(swing.high, links),
    )


def working_of(target_yield_t_ha: float, counts: Counts, links: Chain, kg_wanted: float, exact: float) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [
        Say("nodes_for_yield.formula", [], []),
        Say("nodes_for_yield.kg_wanted", [target_yield_t_ha, counts.bearing_vines_per_ha, kg_wanted], []),
    ]
    lines = lines + chain_working(links, counts)
    if links.other_kg > 0.0:
        lines.append(Say("nodes_for_yield.left_to_bear", [kg_wanted, links.other_kg, max(0.0, kg_wanted - links.other_kg)], []))
    lines.append(Say("nodes_for_yield.exact", [max(0.0, kg_wanted - links.other_kg), links.kg_per_node, exact], []))
    lines.append(Say("nodes_for_yield.whole", [exact, float(half_up(exact))], []))
    return lines


def notes_of(counts: Counts, limits: Limits, kg_wanted: float, links: Chain, nodes: float, ends: Interval) -> list[Say]:
    """The range and what it covers, whether the counts hold at this number, and what this view leaves out."""
    notes = [Say("nodes_for_yield.range", [ends.low, ends.high, limits.interval_level_pct], [])]
    if ends.sampling_low.ok:
        notes.append(Say("nodes_for_yield.season_alone", [ends.season_low, ends.season_high], []))
        notes.append(Say("nodes_for_yield.counts_alone", [ends.sampling_low.number, ends.sampling_high.number], []))
    notes.append(covers_note(ends.sampling_low.ok, limits))
    notes.append(measured_note(nodes, counts.nodes_left, limits.extrapolation_limit_pct))
    if kg_wanted <= links.other_kg:
        notes.append(Say("nodes_for_yield.others_bear_it", [links.other_kg, kg_wanted], []))
    notes.append(Say("nodes_for_yield.no_ceiling", [], []))
    return notes
