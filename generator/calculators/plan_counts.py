"""What the plan's yield chain stands on: the counts among the facts, gathered once for the node number and for the crop."""

from generator.calculators.facts import Facts, Maybe, known, maybe, number
from generator.calculators.plan_records import BlockPlanValues, Part, found
from generator.calculators.yield_chain import Counts
from generator.calculators.yield_spread import Limits

LINKS: list[str] = ["budburst_pct", "shoots_per_burst_node", "bunches_per_shoot", "bunch_weight_g"]
BESIDE: list[str] = [
    "noncount_shoots_kept",
    "bunches_per_noncount_shoot",
    "noncount_bunch_weight_g",
    "nodes_left",
    "budburst_cv_pct",
    "shoots_per_burst_node_cv_pct",
    "bunches_per_shoot_cv_pct",
    "bunch_weight_cv_pct",
]


def bearing_vines(facts: Facts, earlier: list[Part]) -> Maybe:
    """Bearing vines per hectare: as counted by the grower, else as worked out from spacing and missing vines."""
    if known(facts, "bearing_vines_per_ha"):
        return maybe(facts, "bearing_vines_per_ha")
    return found(earlier, "bearing_vines_per_ha")


def spring_counts(facts: Facts, earlier: list[Part]) -> Counts:
    """The short form: spring counts of the block itself. Raises ValueError when a link is not known."""
    return Counts(
        bearing_vines_per_ha=bearing_vines(facts, earlier).number,
        budburst_pct=number(facts, "budburst_pct"),
        shoots_per_burst_node=number(facts, "shoots_per_burst_node"),
        bunches_per_shoot=number(facts, "bunches_per_shoot"),
        bunch_weight_g=number(facts, "bunch_weight_g"),
        noncount_shoots_kept=maybe(facts, "noncount_shoots_kept"),
        bunches_per_noncount_shoot=maybe(facts, "bunches_per_noncount_shoot"),
        noncount_bunch_weight_g=maybe(facts, "noncount_bunch_weight_g"),
        nodes_left=maybe(facts, "nodes_left"),
        budburst_cv_pct=maybe(facts, "budburst_cv_pct"),
        shoots_per_burst_node_cv_pct=maybe(facts, "shoots_per_burst_node_cv_pct"),
        bunches_per_shoot_cv_pct=maybe(facts, "bunches_per_shoot_cv_pct"),
        bunch_weight_cv_pct=maybe(facts, "bunch_weight_cv_pct"),
    )


def limits_of(values: BlockPlanValues) -> Limits:
    """The values that every interval of the plan stands on."""
    return Limits(values.interval_level_pct, values.interval_z, values.season_spread_pct, values.extrapolation_limit_pct)
