"""Plain inputs of the calculators, to be changed one at a time."""

from dataclasses import asdict, replace
from typing import Any

from generator.calculators.canopy_space import CanopySpaceInputs
from generator.calculators.facts import Maybe
from generator.calculators.layout_options import LayoutOptionsInputs, LayoutOptionsValues
from generator.calculators.layout_records import VineLayoutInputs, VineLayoutValues
from generator.calculators.nodes_records import NodesForYieldInputs, NodesForYieldValues
from generator.calculators.option_records import Asked, Limits, Weights
from generator.calculators.vine_density import VineDensityInputs
from generator.calculators.forecast_records import YieldForecastInputs, YieldForecastValues

OPEN = Maybe(False, 0.0)


def some(number: float) -> Maybe:
    """A number that may be left out, given."""
    return Maybe(True, float(number))


DENSITY = VineDensityInputs(row_spacing_m=2.4, vine_spacing_m=1.5, area_ha=some(2), missing_vines_pct=4.0)
COUNTS = [2666.0, 92.0, 1.0, some(1.6), 130.0]
BESIDE = [OPEN] * 11
NO_TALLY = [[OPEN] * 15, [OPEN] * 15, *[OPEN] * 11, some(0.7), some(0.3), *[OPEN] * 2]
NODES = NodesForYieldInputs(*COUNTS, *BESIDE, *NO_TALLY, 9.0, OPEN, OPEN)
FORECAST = YieldForecastInputs(*COUNTS, *BESIDE, *NO_TALLY, 18.0)
FORECAST_LIMITS = YieldForecastValues(
    interval_level_pct=90.0,
    interval_z=1.6448536269514722,
    season_spread_pct=25.0,
    extrapolation_limit_pct=25.0,
    nodes_per_cane_most=12.0,
    nodes_per_spur_most=2.0,
    nodes_per_renewal_spur=2.0,
    coverage_compensating_pct=95.7,
    coverage_together_pct=77.6,
    coverage_normal_pct=89.7,
)
LIMITS = NodesForYieldValues(**asdict(FORECAST_LIMITS), nodes_per_vine_in_print=300.0, shoots_per_m_in_print=36.0)
SPACE = CanopySpaceInputs(
    curtains=1,
    arm_length_m=0.7,
    cordon_arms=2,
    vine_spacing_m=OPEN,
    tip_gap_m=OPEN,
    shoots_per_m_low=10.0,
    shoots_per_m_high=15.0,
    budburst_pct=90.0,
    shoots_per_burst_node=1.0,
    noncount_shoots_kept=OPEN,
    canopy_form=some(0),
    use=some(0),
    grape_type=some(0),
)
LAYOUT = VineLayoutInputs(
    nodes=20,
    target="spur",
    curtains=1,
    vine_spacing_m=1.5,
    tip_gap_m=0.1,
    first_spur_from_head_m=0.15,
    head_below_wire_cm=12.0,
    internode_cm=8.0,
    cordon_arms=OPEN,
    arm_length_m=OPEN,
    live_spur_positions_per_vine=some(10),
    canes_wanted_per_vine=OPEN,
    nodes_per_cane_wanted=OPEN,
    canes_well_ripe=OPEN,
)
LAYOUT_LIMITS = VineLayoutValues(2.0, 6.0, 12.0, 8.0, 6.0, 2.0, 2.0, 0.1)
WEIGHTS = Weights(uneven=40.0, work=0.3, change=25.0, bunches=60.0, no_spare=5.0, empty=0.5, unrenewed=2.0)
OPTIONS = LayoutOptionsInputs(
    nodes=26.0,
    curtains=1,
    vine_spacing_m=1.5,
    tip_gap_m=0.1,
    first_spur_from_head_m=0.15,
    head_below_wire_cm=12.0,
    internode_cm=8.0,
    wire_height_m=0.9,
    budburst_pct=90.0,
    shoots_per_burst_node=1.0,
    cordon_arms=OPEN,
    arm_length_m=OPEN,
    live_spur_positions_per_vine=some(10),
    good_canes_per_vine=some(8),
    spur_positions_missing_pct=OPEN,
    canes_wanted_per_vine=OPEN,
    nodes_per_cane_wanted=OPEN,
    canes_well_ripe=OPEN,
    present_structure=some(0),
    primordia_node=[OPEN] * 15,
    cane_budburst_node=[OPEN] * 15,
    spur_budburst_pct=90.0,
    dead_primary_pct=OPEN,
    dead_primary_inner_pct=OPEN,
    dead_primary_outer_pct=OPEN,
    inner_zone_nodes=4,
    dead_node_pct=OPEN,
    secondary_share=0.1,
    dissection_to_spring=1.0,
)
OPTION_VALUES = LayoutOptionsValues(**asdict(LAYOUT_LIMITS), nodes_per_cane_least=6.0, canes_per_vine_tried=8.0, **{f"layout_points_{name}": points for name, points in asdict(WEIGHTS).items()})
ASKED = Asked(LAYOUT, good_canes=some(8), structure=some(0), shoots_per_node=0.9, buds=[])
OPTION_LIMITS = Limits(LAYOUT_LIMITS, 6.0, 8.0, WEIGHTS)


def but(inputs: Any, **changes: Any) -> Any:
    """The same inputs with some of them changed."""
    return replace(inputs, **changes)


def ids(says: list) -> list[str]:
    """The ids of what is said."""
    return [say.id for say in says]
