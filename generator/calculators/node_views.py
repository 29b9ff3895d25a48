"""The three views of the node number and the law, each with its range, as far as they can be taken.

A view that somebody worked out elsewhere is entered and stands as it is; else it is reckoned here: the crop by the short form
of the chain (nodes_for_yield), the vine by its prunings (capacity), the room by the canopy (canopy_space). A limit of the
law is per vine, per hectare, or both: then the lower one holds. (Agronomy, section 1; evidence ll-01 to ll-06.)
"""

from generator.calculators.canopy_space import Room, Space, room_of
from generator.calculators.capacity import CapacityRules, Grape
from generator.calculators.facts import Maybe
from generator.calculators.node_records import NodeNumberInputs, NodeNumberValues
from generator.calculators.nodes_for_yield import nodes_for_crop
from generator.calculators.units import M2_PER_HA, share
from generator.calculators.views import Bearing, View, Weighed, bearing_of, by_law, by_prunings, no_bearing, no_view
from generator.calculators.yield_chain import Counts
from generator.calculators.yield_spread import Limits


def entered(low: Maybe, nodes: Maybe, high: Maybe) -> View:
    """A view worked out elsewhere: an end that is left out is the number. Raises ValueError when the ends are the wrong way round."""
    view = View(True, nodes.number, nodes.number, nodes.number, [])
    if low.ok:
        view = View(True, low.number, view.nodes, view.high, [])
    if high.ok:
        view = View(True, view.low, view.nodes, high.number, [])
    if view.low > view.nodes or view.nodes > view.high:
        raise ValueError("the low end of a view must not be over its high end, and its number lies between")
    return view


def vines_per_ha(inputs: NodeNumberInputs) -> Maybe:
    """Planting places on a hectare, by the spacing; left out where that is not known."""
    if not inputs.row_spacing_m.ok or not inputs.vine_spacing_m.ok:
        return Maybe(False, 0.0)
    if inputs.row_spacing_m.number <= 0.0 or inputs.vine_spacing_m.number <= 0.0:
        raise ValueError("both spacings must be above zero")
    return Maybe(True, M2_PER_HA / (inputs.row_spacing_m.number * inputs.vine_spacing_m.number))


def bearing_vines(inputs: NodeNumberInputs) -> Maybe:
    """Bearing vines on a hectare: as given, or by the spacing less the missing ones."""
    places = vines_per_ha(inputs)
    if inputs.bearing_vines_per_ha.ok or not places.ok:
        return inputs.bearing_vines_per_ha
    return Maybe(True, places.number * (1.0 - share(inputs.missing_vines_pct)))


def counts_of(inputs: NodeNumberInputs, vines: float) -> Counts:
    """The counts of the short form."""
    nothing = Maybe(False, 0.0)
    return Counts(
        vines,
        inputs.budburst_pct,
        inputs.shoots_per_burst_node,
        inputs.bunches_per_shoot.number,
        inputs.bunch_weight_g.number,
        inputs.noncount_shoots_kept,
        inputs.bunches_per_noncount_shoot,
        inputs.noncount_bunch_weight_g,
        inputs.nodes_left,
        nothing,
        nothing,
        nothing,
        nothing,
    )


def bearing_here(inputs: NodeNumberInputs) -> Bearing:
    """What a node gives; not ok where a count is not known."""
    vines = bearing_vines(inputs)
    if not vines.ok or not inputs.bunches_per_shoot.ok or not inputs.bunch_weight_g.ok:
        return no_bearing(inputs.nodes_left)
    return bearing_of(counts_of(inputs, vines.number))


def fruit_view(inputs: NodeNumberInputs, values: NodeNumberValues) -> View:
    """The nodes that the crop asks for, with the swing of the seasons. Raises ValueError when a node would give nothing."""
    if inputs.fruit_nodes.ok:
        return entered(inputs.fruit_nodes_low, inputs.fruit_nodes, inputs.fruit_nodes_high)
    vines = bearing_vines(inputs)
    if not inputs.target_yield_t_ha.ok or not bearing_here(inputs).ok:
        return no_view()
    limits = Limits(values.interval_level_pct, values.interval_z, values.season_spread_pct, values.extrapolation_limit_pct)
    found = nodes_for_crop(inputs.target_yield_t_ha.number, counts_of(inputs, vines.number), limits)
    return View(True, found.low, found.nodes_exact, found.high, found.working)


def capacity_of(inputs: NodeNumberInputs, values: NodeNumberValues) -> View:
    """The nodes that the vine carries, by its prunings and the rules followed for its grape."""
    if inputs.capacity_nodes_high.ok:
        return entered(inputs.capacity_nodes_low, inputs.capacity_nodes_high, inputs.capacity_nodes_high)
    return by_prunings(weighed(inputs, values))


def weighed(inputs: NodeNumberInputs, values: NodeNumberValues) -> Weighed:
    """What the vine's view is taken from."""
    rules = CapacityRules(
        values.balanced_first_nodes,
        values.balanced_further_nodes,
        values.balanced_unit_kg,
        values.balanced_vine_least_kg,
        values.balanced_vine_most_kg,
        values.nodes_per_kg,
    )
    grape = Grape(inputs.grape_type, inputs.use, inputs.canopy_form, inputs.climate)
    return Weighed(inputs.pruning_weight_kg, inputs.balanced_formula, grape, rules)


def space_view(inputs: NodeNumberInputs) -> View:
    """The nodes that the canopy has room for: on the arms there are, or on canes or arms that fill the spacing."""
    if inputs.space_nodes_high.ok:
        return entered(inputs.space_nodes_low, inputs.space_nodes_high, inputs.space_nodes_high)
    if not inputs.vine_spacing_m.ok:
        return no_view()
    found = canopy_of(inputs)
    return View(True, found.nodes_low_exact, found.nodes_high_exact, found.nodes_high_exact, found.working)


def canopy_of(inputs: NodeNumberInputs) -> Room:
    """The room in the canopy of one vine. Raises ValueError when the gap takes the whole spacing."""
    spacing = inputs.vine_spacing_m.number
    if inputs.tip_gap_m >= spacing:
        raise ValueError("the gap between the tips must be smaller than the vine spacing")
    arms = 2 * inputs.curtains
    arm_m = (spacing - inputs.tip_gap_m) / 2.0
    if inputs.cordon_arms.ok and inputs.arm_length_m.ok:
        arms = int(inputs.cordon_arms.number)
        arm_m = inputs.arm_length_m.number
    return room_of(
        Space(
            inputs.curtains,
            arm_m,
            arms,
            Maybe(True, spacing),
            Maybe(True, inputs.tip_gap_m),
            inputs.shoots_per_m_low,
            inputs.shoots_per_m_high,
            inputs.budburst_pct,
            inputs.shoots_per_burst_node,
            inputs.noncount_shoots_kept,
        )
    )


def legal_of(inputs: NodeNumberInputs) -> View:
    """The most nodes of a vine by law, where a limit was entered. Raises ValueError when one per hectare stands without the spacing."""
    return by_law(inputs.legal_nodes_per_vine_most, inputs.legal_nodes_per_ha_most, vines_per_ha(inputs))
