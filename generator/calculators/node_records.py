"""The records of node_number."""

from dataclasses import dataclass

from generator.calculators.drawing_shapes import Drawing
from generator.calculators.facts import Maybe
from generator.calculators.figures import Figure
from generator.calculators.say import Say


@dataclass(frozen=True)
class NodeNumberInputs:
    """What each view is reckoned from (see nodes_for_yield, capacity and canopy_space; spacings in m, shares in %), the law's limits, the
    mix of weak and strong vines, and views that were worked out elsewhere (nodes per bearing vine)."""

    target_yield_t_ha: Maybe
    bunches_per_shoot: Maybe
    bunch_weight_g: Maybe
    bearing_vines_per_ha: Maybe
    budburst_pct: float
    shoots_per_burst_node: float
    noncount_shoots_kept: Maybe
    bunches_per_noncount_shoot: Maybe
    noncount_bunch_weight_g: Maybe
    nodes_left: Maybe
    pruning_weight_kg: Maybe
    grape_type: Maybe
    use: Maybe
    canopy_form: Maybe
    climate: Maybe
    balanced_formula: Maybe
    row_spacing_m: Maybe
    vine_spacing_m: Maybe
    missing_vines_pct: float
    curtains: int
    tip_gap_m: float
    cordon_arms: Maybe
    arm_length_m: Maybe
    shoots_per_m_low: float
    shoots_per_m_high: float
    legal_nodes_per_vine_most: Maybe
    legal_nodes_per_ha_most: Maybe
    weak_vines_pct: float
    strong_vines_pct: float
    weak_vine_nodes_pct: float
    strong_vine_nodes_pct: float
    fruit_nodes: Maybe
    fruit_nodes_low: Maybe
    fruit_nodes_high: Maybe
    capacity_nodes_low: Maybe
    capacity_nodes_high: Maybe
    space_nodes_low: Maybe
    space_nodes_high: Maybe


@dataclass(frozen=True)
class NodeNumberValues:
    """What the crop's range stands on (see yield_spread.Limits), every author's rule of balanced pruning (see capacity), where a load
    is called low or high and the most that vines in print carried (nodes per vine)."""

    interval_level_pct: float
    interval_z: float
    season_spread_pct: float
    extrapolation_limit_pct: float
    balanced_first_nodes: list[Figure]
    balanced_further_nodes: list[Figure]
    balanced_unit_kg: list[Figure]
    balanced_vine_least_kg: list[Figure]
    balanced_vine_most_kg: list[Figure]
    nodes_per_kg: list[Figure]
    load_low_below: float
    load_high_above: float
    nodes_per_vine_in_print: float


@dataclass(frozen=True)
class NodeNumberResult:
    """Nodes per bearing vine, whole and exact, between low and high (whole); limits: the view that limits, "" while the crop's is not
    known (see reconcile); each view's range, exact; nodes of weak, normal and strong vines, whole, and their mean; the crop of the
    number. What cannot be reckoned is left out. drawing: the ranges on one line."""

    nodes: Maybe
    nodes_exact: Maybe
    low: Maybe
    high: Maybe
    limits: str
    fruit: Maybe
    fruit_low: Maybe
    fruit_high: Maybe
    capacity_low: Maybe
    capacity_high: Maybe
    space_low: Maybe
    space_high: Maybe
    legal_most: Maybe
    weak_nodes: Maybe
    normal_nodes: Maybe
    strong_nodes: Maybe
    mean_nodes: Maybe
    t_per_ha: Maybe
    drawing: Drawing
    headline: Say
    working: list[Say]
    notes: list[Say]
