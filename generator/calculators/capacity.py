"""What a vine of a given weight of prunings can carry, by every printed rule of balanced pruning and by the kilogram.

One formula serves the rules with a first and a further weight: nodes = first + further x (weight / unit - 1). No source says what a vine
below the first unit gets: the rule's first number then stands as the most, and by_weight takes it in proportion (our judgement).
Evidence: bp-01 to bp-28.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.figures import FITS, OTHER, Figure, figure_of, number_of, standing_of
from generator.calculators.say import Say


@dataclass(frozen=True)
class Grape:
    """What rules are made for: the facts grape_type, use, canopy_form and climate, each the place of its choice."""

    grape_type: Maybe
    use: Maybe
    canopy_form: Maybe
    climate: Maybe


@dataclass(frozen=True)
class Formula:
    """A rule of balanced pruning: nodes for the first unit of prunings and for each further one; the unit in kg."""

    first_nodes: float
    further_nodes: float
    unit_kg: float


@dataclass(frozen=True)
class CapacityRules:
    """Every author's figures: first and further nodes, unit (kg), smallest and largest vine (kg of prunings; some rules only), and
    nodes for each kilogram."""

    first: list[Figure]
    further: list[Figure]
    unit: list[Figure]
    vine_least: list[Figure]
    vine_most: list[Figure]
    per_kg: list[Figure]


@dataclass(frozen=True)
class CapacityView:
    """Nodes per vine that the vine's growth stands for, low to high, by the rules followed; the words of the two rules (name them with
    `figures.who`); formula is the id of the balanced rule, "" where none is made for this grape; below_first_unit: the vine gave
    less prunings than that rule's first unit, and its number was taken in proportion."""

    low: float
    high: float
    low_who: str
    high_who: str
    formula: str
    below_first_unit: bool


def named(rules: CapacityRules, formula: Maybe) -> str:
    """The id of the rule that was chosen by hand (the place of its choice), "" for none. Raises ValueError when it is not there."""
    if not formula.ok:
        return ""
    place = int(formula.number)
    if place >= len(rules.first):
        raise ValueError("the rule that was named is not among the printed ones")
    return rules.first[place].id


def capacity_view(pruning_weight_kg: float, grape: Grape, rules: CapacityRules, chosen: str) -> CapacityView:
    """Two rules, from the smaller to the larger number: the one chosen ("" for the one made for this vine), and the one by the kilogram.
    Raises ValueError when a rule lacks a number or no rule by the kilogram is for all."""
    by_kg = followed_by_kg(rules, grape)
    kg_nodes = by_kg.number * pruning_weight_kg
    name = chosen if chosen != "" else followed(rules, grape, pruning_weight_kg)
    if name == "":
        return CapacityView(kg_nodes, kg_nodes, by_kg.word, by_kg.word, "", False)
    rule = formula_of(rules, name)
    word = figure_of(rules.first, name).word
    nodes = by_weight(rule, pruning_weight_kg)
    below = pruning_weight_kg < rule.unit_kg
    if nodes < kg_nodes:
        return CapacityView(nodes, kg_nodes, word, by_kg.word, name, below)
    return CapacityView(kg_nodes, nodes, by_kg.word, word, name, below)


def chosen_notes(rules: CapacityRules, grape: Grape, weight_kg: float, chosen: str) -> list[Say]:
    """That a rule chosen by hand is made for other vines, or for vines of another size."""
    if chosen == "":
        return []
    figure = figure_of(rules.first, chosen)
    if place_in_size(rules, figure, grape, weight_kg) != OTHER:
        return []
    return [Say("capacity.for_others", [], [figure.word])]


def nodes_by(rule: Formula, weight_kg: float) -> float:
    """Nodes by a rule; below its first unit the first number, which is then the most."""
    if weight_kg <= rule.unit_kg:
        return rule.first_nodes
    return rule.first_nodes + rule.further_nodes * (weight_kg / rule.unit_kg - 1.0)


def by_weight(rule: Formula, weight_kg: float) -> float:
    """The same, but below the first unit in proportion to the weight."""
    return min(1.0, weight_kg / rule.unit_kg) * nodes_by(rule, weight_kg)


def formula_of(rules: CapacityRules, name: str) -> Formula:
    """The three numbers of a rule. Raises ValueError when one is lacking."""
    return Formula(figure_of(rules.first, name).number, figure_of(rules.further, name).number, figure_of(rules.unit, name).number)


def followed(rules: CapacityRules, grape: Grape, weight_kg: float) -> str:
    """The id of the first rule that is made for this vine, "" for none."""
    for figure in rules.first:
        if place_of(figure, grape) == FITS and in_size(rules, figure.id, weight_kg):
            return figure.id
    return ""


def followed_by_kg(rules: CapacityRules, grape: Grape) -> Figure:
    """The first rule by the kilogram that is made for this vine. Raises ValueError when there is none."""
    for figure in rules.per_kg:
        if place_of(figure, grape) == FITS:
            return figure
    raise ValueError("no rule by the kilogram is for all")


def place_of(figure: Figure, grape: Grape) -> int:
    """Whether a rule is made for this grape, may be, or is not: the least of its facts counts."""
    place = max(standing_of(figure, "grape_type", grape.grape_type), standing_of(figure, "use", grape.use))
    place = max(place, standing_of(figure, "canopy_form", grape.canopy_form))
    return max(place, standing_of(figure, "climate", grape.climate))


def place_in_size(rules: CapacityRules, figure: Figure, grape: Grape, weight_kg: float) -> int:
    """The same, where a vine outside the size that a rule is made for is another vine."""
    return place_of(figure, grape) if in_size(rules, figure.id, weight_kg) else OTHER


def in_size(rules: CapacityRules, name: str, weight_kg: float) -> bool:
    """Whether the vine is of the size that a rule is made for, both ends included."""
    least = number_of(rules.vine_least, name)
    most = number_of(rules.vine_most, name)
    return (not least.ok or least.number <= weight_kg) and (not most.ok or weight_kg <= most.number)
