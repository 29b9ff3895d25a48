"""Balanced pruning: the nodes that a vine's prunings stand for, by the rule followed and by every other rule side by side.

nodes = first + further x (prunings / unit - 1); named formulas fill the three numbers, the user's own come first. For whoever reconciles the
three views of the node number, capacity.py has

    capacity_view(pruning_weight_kg: float, grape: Grape, rules: CapacityRules, chosen: str) -> CapacityView(low, high, low_who,
        high_who, formula, below_first_unit)

with Grape(grape_type, use, canopy_form, climate: all Maybe) and rules_of(values) here. Evidence: bp-01 to bp-28.
"""

from dataclasses import dataclass

from generator.calculators.balanced_words import compared_rules, headline_of, notes_of, working_of
from generator.calculators.capacity import CapacityRules, Formula, Grape, capacity_view, chosen_notes, followed, formula_of, named, nodes_by
from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, Figure
from generator.calculators.say import Say

OWN: str = "own"


@dataclass(frozen=True)
class BalancedNodesInputs:
    """Prunings of one vine (kg); a rule by name, or the user's own three numbers (nodes, nodes, kg); what rules are made for (choices);
    and the nodes left last winter."""

    pruning_weight_kg: float
    grape_type: Maybe
    use: Maybe
    canopy_form: Maybe
    climate: Maybe
    balanced_formula: Maybe
    first_nodes: Maybe
    further_nodes: Maybe
    unit_weight_kg: Maybe
    nodes_left: Maybe


@dataclass(frozen=True)
class BalancedNodesValues:
    """Every author's figures, see CapacityRules; nodes beyond which nothing is gained; and how many groups of how many vines to weigh."""

    balanced_first_nodes: list[Figure]
    balanced_further_nodes: list[Figure]
    balanced_unit_kg: list[Figure]
    balanced_vine_least_kg: list[Figure]
    balanced_vine_most_kg: list[Figure]
    nodes_per_kg: list[Figure]
    balanced_cap_nodes: float
    prunings_sample_groups: float
    prunings_sample_vines: float


@dataclass(frozen=True)
class BalancedNodesResult:
    """Nodes by the rule followed, exact and whole (nearest, half up), left open where none is made for this grape; whether the vine gave
    less than the rule's first unit; low and high of the rules followed; look_back: nodes by the prunings for each node left last winter;
    and all rules."""

    nodes_exact: Maybe
    nodes: Maybe
    below_first_unit: bool
    capacity_low: float
    capacity_high: float
    look_back: Maybe
    compared: list[Compared]
    headline: Say
    working: list[Say]
    notes: list[Say]


def balanced_nodes(inputs: BalancedNodesInputs, values: BalancedNodesValues) -> BalancedNodesResult:
    """Nodes by weight. Raises ValueError when only a part of the user's own rule is given, or a named rule is not there."""
    rules = rules_of(values)
    grape = Grape(inputs.grape_type, inputs.use, inputs.canopy_form, inputs.climate)
    name = chosen(inputs, rules, grape)
    view = capacity_view(inputs.pruning_weight_kg, grape, rules, "" if name == OWN else name)
    exact = Maybe(False, 0.0)
    nodes = Maybe(False, 0.0)
    look_back = Maybe(False, 0.0)
    below = False
    working: list[Say] = []
    if name != "":
        rule = own_rule(inputs) if name == OWN else formula_of(rules, name)
        exact = Maybe(True, nodes_by(rule, inputs.pruning_weight_kg))
        nodes = Maybe(True, float(half_up(exact.number)))
        below = inputs.pruning_weight_kg < rule.unit_kg
        working = working_of(rule, inputs.pruning_weight_kg, exact.number)
        if inputs.nodes_left.ok and inputs.nodes_left.number > 0.0:
            look_back = Maybe(True, exact.number / inputs.nodes_left.number)
    return BalancedNodesResult(
        exact,
        nodes,
        below,
        view.low,
        view.high,
        look_back,
        compared_rules(rules, grape, inputs.pruning_weight_kg, name),
        headline_of(rules, name, nodes, below, inputs.pruning_weight_kg),
        working + [Say("balanced_nodes.view", [view.low, view.high], [view.low_who, view.high_who])],
        chosen_notes(rules, grape, inputs.pruning_weight_kg, named(rules, inputs.balanced_formula) if name != OWN else "")
        + notes_of(look_back, inputs.nodes_left, exact, values.balanced_cap_nodes)
        + [Say("balanced_nodes.sample", [values.prunings_sample_groups, values.prunings_sample_vines], [])],
    )


def rules_of(values: BalancedNodesValues) -> CapacityRules:
    """The rules as capacity_view wants them."""
    return CapacityRules(
        values.balanced_first_nodes,
        values.balanced_further_nodes,
        values.balanced_unit_kg,
        values.balanced_vine_least_kg,
        values.balanced_vine_most_kg,
        values.nodes_per_kg,
    )


def chosen(inputs: BalancedNodesInputs, rules: CapacityRules, grape: Grape) -> str:
    """The rule to go by: OWN, the id of the one named, or of the one followed for this vine; "" for none. Raises ValueError when a part of
    an own rule is given, or a rule is named that is not there."""
    given = [number for number in [inputs.first_nodes, inputs.further_nodes, inputs.unit_weight_kg] if number.ok]
    if inputs.first_nodes.ok and inputs.further_nodes.ok and inputs.unit_weight_kg.ok:
        return OWN
    if len(given) > 0:
        raise ValueError("an own rule needs its first number, its second number and its weight")
    by_hand = named(rules, inputs.balanced_formula)
    return by_hand if by_hand != "" else followed(rules, grape, inputs.pruning_weight_kg)


def own_rule(inputs: BalancedNodesInputs) -> Formula:
    """The user's own three numbers."""
    return Formula(inputs.first_nodes.number, inputs.further_nodes.number, inputs.unit_weight_kg.number)
