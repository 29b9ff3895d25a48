"""Sentences of balanced_nodes: the answer, its working, every rule side by side, and what to mind."""

from generator.calculators.capacity import CapacityRules, Formula, Grape, by_weight, formula_of, nodes_by, place_in_size, place_of
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, compared
from generator.calculators.say import Say


def headline_of(rules: CapacityRules, name: str, nodes: Maybe, below: bool, weight_kg: float) -> Say:
    """The answer in one line."""
    if not nodes.ok:
        return Say("balanced_nodes.open", [weight_kg], [])
    said = [nodes.number, weight_kg]
    for figure in rules.first:
        if figure.id == name:
            return Say("balanced_nodes.at_most" if below else "balanced_nodes.headline", said, [figure.word])
    return Say("balanced_nodes.own_at_most" if below else "balanced_nodes.own", said, [])


def working_of(rule: Formula, weight_kg: float, exact: float) -> list[Say]:
    """The formula in words and with the numbers."""
    units = weight_kg / rule.unit_kg
    numbers = [rule.first_nodes, rule.further_nodes, units, exact]
    lines = [Say("balanced_nodes.formula", [], []), Say("balanced_nodes.units", [weight_kg, rule.unit_kg, units], [])]
    if weight_kg < rule.unit_kg:
        return lines + [
            Say("balanced_nodes.below", [rule.first_nodes, units], []),
            Say("balanced_nodes.in_proportion", [rule.first_nodes, units, by_weight(rule, weight_kg)], []),
        ]
    return lines + [Say("balanced_nodes.nodes", numbers, [])]


def compared_rules(rules: CapacityRules, grape: Grape, weight_kg: float, name: str) -> list[Compared]:
    """Every printed rule for this weight, in the order of the rules: by a first and a further weight, then by the kilogram."""
    balanced = [
        compared(
            Say("balanced_nodes.by_units", [], []),
            figure,
            says_of(formula_of(rules, figure.id), weight_kg, figure.id == name),
            place_in_size(rules, figure, grape, weight_kg),
        )
        for figure in rules.first
    ]
    by_kg = [
        compared(
            Say("balanced_nodes.by_kg", [], []), figure, Say("balanced_nodes.result", [figure.number * weight_kg], []), place_of(figure, grape)
        )
        for figure in rules.per_kg
    ]
    return balanced + by_kg


def says_of(rule: Formula, weight_kg: float, here: bool) -> Say:
    """What one rule gives; whether it is the one gone by, and whether the vine is below its first unit."""
    nodes = nodes_by(rule, weight_kg)
    if weight_kg < rule.unit_kg:
        return Say("balanced_nodes.result_at_most_here" if here else "balanced_nodes.result_at_most", [nodes, by_weight(rule, weight_kg)], [])
    return Say("balanced_nodes.result_here" if here else "balanced_nodes.result", [nodes], [])


def notes_of(look_back: Maybe, left: Maybe, exact: Maybe, cap: float) -> list[Say]:
    """How last winter's number looks now, and a number that leads too far."""
    notes: list[Say] = []
    if look_back.ok:
        key = "balanced_nodes.left_few" if look_back.number > 1.0 else "balanced_nodes.left_many"
        notes.append(Say(key, [left.number, exact.number, look_back.number], []))
    if exact.ok and exact.number > cap:
        notes.append(Say("balanced_nodes.over_cap", [exact.number, cap], []))
    return notes
