"""What yield_forecast and nodes_for_yield both take, and the parts of the chain that they make of it."""

from dataclasses import dataclass

from generator.calculators.bearers import Tally
from generator.calculators.facts import Maybe
from generator.calculators.fruit_form import BearerLimits, Dissection
from generator.calculators.yield_chain import Counts, amount
from generator.calculators.yield_spread import Limits
from generator.calculators.yield_told import Coverage


@dataclass(frozen=True)
class FruitInputs:
    """Bearing vines per hectare, and the components per bearing vine: budburst (%), count shoots per burst node, bunch weight (g), and
    bunches per shoot by spring counts, by buds cut open (the tally of bearers.Tally by node, what fruits and its nodes), or by both
    winters' buds; other shoots; the nodes and the spread (cv in %) of the counts."""

    bearing_vines_per_ha: float
    budburst_pct: float
    shoots_per_burst_node: float
    bunches_per_shoot: Maybe
    bunch_weight_g: float
    noncount_shoots_kept: Maybe
    bunches_per_noncount_shoot: Maybe
    noncount_bunch_weight_g: Maybe
    nodes_left: Maybe
    budburst_cv_pct: Maybe
    shoots_per_burst_node_cv_pct: Maybe
    bunches_per_shoot_cv_pct: Maybe
    bunch_weight_cv_pct: Maybe
    fruit_from: Maybe
    dissected_bunches_per_shoot: Maybe
    dissected_bunches_per_shoot_before: Maybe
    primordia_node: list[Maybe]
    cane_budburst_node: list[Maybe]
    fruiting_wood: Maybe
    bearer_nodes: Maybe
    dead_primary_pct: Maybe
    dead_node_pct: Maybe
    dead_primary_inner_pct: Maybe
    dead_primary_outer_pct: Maybe
    inner_zone_nodes: Maybe
    spur_budburst_pct: Maybe
    secondary_share: Maybe
    dissection_to_spring: Maybe
    canes_dissected: Maybe
    bud_spread: Maybe
    likeness: Maybe
    tally_date: Maybe
    last_freeze_date: Maybe


@dataclass(frozen=True)
class FruitValues:
    """The level of the interval (%) with its normal quantile, the swing of the season (%), how far the components hold (%); the usual
    nodes of bearers; how often ranges hold (%)."""

    interval_level_pct: float
    interval_z: float
    season_spread_pct: float
    extrapolation_limit_pct: float
    nodes_per_cane_most: float
    nodes_per_spur_most: float
    nodes_per_renewal_spur: float
    coverage_compensating_pct: float
    coverage_together_pct: float
    coverage_normal_pct: float


def spring_of(inputs: FruitInputs) -> Counts:
    """The spring counts among the inputs; bunches per shoot 0 where they were not counted."""
    return Counts(
        inputs.bearing_vines_per_ha,
        inputs.budburst_pct,
        inputs.shoots_per_burst_node,
        amount(inputs.bunches_per_shoot),
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


def dissection_of(inputs: FruitInputs) -> Dissection:
    """The buds cut open among the inputs."""
    asked = [inputs.dead_node_pct, inputs.inner_zone_nodes, inputs.spur_budburst_pct, inputs.secondary_share, inputs.dissection_to_spring]
    return Dissection(
        tally=Tally(
            primordia=inputs.primordia_node,
            cane_burst_pct=inputs.cane_budburst_node,
            burst_pct=inputs.budburst_pct,
            spur_burst_pct=amount(inputs.spur_budburst_pct),
            dead_primary_pct=inputs.dead_primary_pct,
            dead_primary_inner_pct=inputs.dead_primary_inner_pct,
            dead_primary_outer_pct=inputs.dead_primary_outer_pct,
            inner_nodes=int(amount(inputs.inner_zone_nodes)),
            dead_node_pct=amount(inputs.dead_node_pct),
            secondary_share=amount(inputs.secondary_share),
            shoots_per_burst_node=inputs.shoots_per_burst_node,
            spring=amount(inputs.dissection_to_spring),
        ),
        complete=all(one.ok for one in asked),
        tally_date=inputs.tally_date,
        last_freeze_date=inputs.last_freeze_date,
        canes_dissected=inputs.canes_dissected,
        bud_spread=inputs.bud_spread,
        likeness=inputs.likeness,
        fruiting_wood=inputs.fruiting_wood,
        bearer_nodes=inputs.bearer_nodes,
        promised_now=inputs.dissected_bunches_per_shoot,
        promised_before=inputs.dissected_bunches_per_shoot_before,
    )


def limits_of(values: FruitValues) -> Limits:
    """What the interval stands on."""
    return Limits(values.interval_level_pct, values.interval_z, values.season_spread_pct, values.extrapolation_limit_pct)


def bearers_of(values: FruitValues) -> BearerLimits:
    """What the bearers stand on."""
    return BearerLimits(values.nodes_per_cane_most, values.nodes_per_spur_most, values.nodes_per_renewal_spur)


def coverage_of(values: FruitValues) -> Coverage:
    """How often a range holds when its assumption does not."""
    return Coverage(values.coverage_compensating_pct, values.coverage_together_pct, values.coverage_normal_pct)
