"""All layouts of a node number on one vine, ranked with reasons. What the rank weighs stands in the rules as our judgement."""

from dataclasses import dataclass

from generator.calculators.bearers import Buds, Tally, buds_counted, is_whole
from generator.calculators.drawing_before import draw_before
from generator.calculators.drawing_shapes import Drawing
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.facts import Maybe
from generator.calculators.layout_records import SPUR, VineLayoutInputs, VineLayoutValues
from generator.calculators.option_records import Asked, LayoutOption, Limits, Weights
from generator.calculators.option_search import ranked_options
from generator.calculators.say import Say
from generator.calculators.spur_layout import positions_on_new_arms
from generator.calculators.units import mm, share
from generator.calculators.vine_stand import Told, stand_taken


@dataclass(frozen=True)
class LayoutOptionsInputs:
    """Nodes of one vine; its lengths (m; cm for head and internode; the wire's height is for the drawings), arms, live positions, good canes, present form; burst in % and
    shoots per burst node; and, where buds were cut, primordia and burst by node and what is dead, see bearers.Tally."""

    nodes: float
    curtains: int
    vine_spacing_m: float
    tip_gap_m: float
    first_spur_from_head_m: float
    head_below_wire_cm: float
    internode_cm: float
    wire_height_m: float
    budburst_pct: float
    shoots_per_burst_node: float
    cordon_arms: Maybe
    arm_length_m: Maybe
    live_spur_positions_per_vine: Maybe
    good_canes_per_vine: Maybe
    spur_positions_missing_pct: Maybe
    canes_wanted_per_vine: Maybe
    nodes_per_cane_wanted: Maybe
    canes_well_ripe: Maybe
    present_structure: Maybe
    primordia_node: list[Maybe]
    cane_budburst_node: list[Maybe]
    spur_budburst_pct: float
    dead_primary_pct: Maybe
    dead_primary_inner_pct: Maybe
    dead_primary_outer_pct: Maybe
    inner_zone_nodes: int
    dead_node_pct: Maybe
    secondary_share: float
    dissection_to_spring: float


@dataclass(frozen=True)
class LayoutOptionsValues:
    """The limits of every layout (see layout_records), the fewest nodes that make a cane, the most canes that are tried, and the points of
    the rank (see Weights)."""

    nodes_per_spur_most: float
    nodes_per_long_spur_most: float
    nodes_per_cane_most: float
    nodes_per_unripe_cane_most: float
    canes_per_vine_most: float
    canes_beside_spurs: float
    nodes_per_renewal_spur: float
    spur_spacing_m: float
    nodes_per_cane_least: float
    canes_per_vine_tried: float
    layout_points_uneven: float
    layout_points_work: float
    layout_points_change: float
    layout_points_bunches: float
    layout_points_no_spare: float
    layout_points_empty: float
    layout_points_unrenewed: float


@dataclass(frozen=True)
class LayoutOptionsResult:
    """The ranked options, the best first; for each that can be built the vine drawn before and after pruning; how many can be built and how many cannot; the numbers of
    the best one."""

    options: list[LayoutOption]
    before: list[Drawing]
    drawings: list[Drawing]
    options_built: int
    options_not_built: int
    cane_nodes: int
    spur_nodes: int
    renewal_nodes: int
    base_buds: int
    canes: int
    spurs: int
    short_nodes: int
    spacing_mm: int
    bunches: Maybe
    barest: float
    densest: float
    cuts: int
    ties: int
    headline: Say
    working: list[Say]
    notes: list[Say]


def layout_options(inputs: LayoutOptionsInputs, values: LayoutOptionsValues) -> LayoutOptionsResult:
    """All layouts of the nodes, ranked. Raises ValueError when the nodes are fewer than one or a length leaves no wire."""
    asked = Asked(
        lengths_of(inputs),
        inputs.good_canes_per_vine,
        inputs.present_structure,
        share(inputs.budburst_pct) * inputs.shoots_per_burst_node,
        buds_given(inputs),
    )
    options = ranked_options(asked, limits_of(values))
    best = options[0]
    built = len([option for option in options if option.built])
    bearers = len(best.layout.spurs) + len(best.layout.canes) + len(best.layout.renewals)
    return LayoutOptionsResult(
        options=options,
        before=[drawn(option, inputs, values, True) for option in options if option.built],
        drawings=[drawn(option, inputs, values, False) for option in options if option.built],
        options_built=built,
        options_not_built=len(options) - built,
        cane_nodes=best.layout.cane_nodes,
        spur_nodes=best.layout.spur_nodes,
        renewal_nodes=best.layout.renewal_nodes,
        base_buds=bearers,
        canes=len(best.layout.canes),
        spurs=len(best.layout.spurs),
        short_nodes=best.short_nodes,
        spacing_mm=best.spacing_mm,
        bunches=best.bunches,
        barest=best.barest,
        densest=best.densest,
        cuts=best.cuts,
        ties=best.ties,
        headline=best.layout.headline if built > 0 else Say("layout_options.none", [inputs.nodes], []),
        working=best.layout.working + [Say("layout_options.counted", [float(bearers)], [])] + best.reasons,
        notes=best.layout.notes,
    )


def drawn(option: LayoutOption, inputs: LayoutOptionsInputs, values: LayoutOptionsValues, before: bool) -> Drawing:
    """The vine of an option, before pruning or after."""
    layout = option.layout
    told = Told(
        inputs.present_structure,
        inputs.live_spur_positions_per_vine,
        inputs.spur_positions_missing_pct,
        inputs.cordon_arms,
        inputs.arm_length_m,
        inputs.curtains,
        mm(inputs.vine_spacing_m),
    )
    new = positions_on_new_arms(layout.arm_mm, mm(inputs.first_spur_from_head_m), mm(values.spur_spacing_m))
    stand = stand_taken(told, layout, new)
    if before:
        return draw_before(layout, stand, mm(inputs.wire_height_m), told.space_mm, mm(inputs.tip_gap_m))
    return draw_vine(layout, stand, mm(inputs.wire_height_m), told.space_mm, mm(inputs.tip_gap_m))


def lengths_of(inputs: LayoutOptionsInputs) -> VineLayoutInputs:
    """The lengths of the vine; the target is not read."""
    return VineLayoutInputs(
        int(inputs.nodes),
        SPUR,
        inputs.curtains,
        inputs.vine_spacing_m,
        inputs.tip_gap_m,
        inputs.first_spur_from_head_m,
        inputs.head_below_wire_cm,
        inputs.internode_cm,
        inputs.cordon_arms,
        inputs.arm_length_m,
        inputs.live_spur_positions_per_vine,
        inputs.canes_wanted_per_vine,
        inputs.nodes_per_cane_wanted,
        inputs.canes_well_ripe,
    )


def buds_given(inputs: LayoutOptionsInputs) -> list[Buds]:
    """The buds where they were cut: one record, or none."""
    if not inputs.dead_node_pct.ok:
        return []
    tally = Tally(
        inputs.primordia_node,
        inputs.cane_budburst_node,
        inputs.budburst_pct,
        inputs.spur_budburst_pct,
        inputs.dead_primary_pct,
        inputs.dead_primary_inner_pct,
        inputs.dead_primary_outer_pct,
        inputs.inner_zone_nodes,
        inputs.dead_node_pct.number,
        inputs.secondary_share,
        inputs.shoots_per_burst_node,
        inputs.dissection_to_spring,
    )
    if not is_whole(tally):
        return []
    return [buds_counted(tally)]


def limits_of(values: LayoutOptionsValues) -> Limits:
    """The values as limits and weights."""
    layout = VineLayoutValues(
        values.nodes_per_spur_most,
        values.nodes_per_long_spur_most,
        values.nodes_per_cane_most,
        values.nodes_per_unripe_cane_most,
        values.canes_per_vine_most,
        values.canes_beside_spurs,
        values.nodes_per_renewal_spur,
        values.spur_spacing_m,
    )
    weights = Weights(
        values.layout_points_uneven,
        values.layout_points_work,
        values.layout_points_change,
        values.layout_points_bunches,
        values.layout_points_no_spare,
        values.layout_points_empty,
        values.layout_points_unrenewed,
    )
    return Limits(layout, values.nodes_per_cane_least, values.canes_per_vine_tried, weights)
