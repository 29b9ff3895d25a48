"""The plan's views of the vine, by its prunings, and of the law. Both are taken where they are known and left open where not."""

from generator.calculators.canopy_space import Room
from generator.calculators.capacity import CapacityRules, Grape
from generator.calculators.facts import Facts, Maybe, known, maybe, missing, number
from generator.calculators.plan_records import BlockPlanValues, Fruit, Named, known_of
from generator.calculators.units import M2_PER_HA
from generator.calculators.views import Bearing, View, Views, Weighed, by_law, by_prunings

PRUNINGS: str = "pruning_weight_kg"
FORMULA: str = "balanced_formula"
PER_HA: str = "legal_nodes_per_ha_most"
MADE_FOR: list[str] = ["grape_type", "use", "canopy_form", "climate"]
SPACING: list[str] = ["row_spacing_m", "vine_spacing_m"]


def law_facts(facts: Facts) -> list[str]:
    """What a legal limit needs beside itself: the spacing, where the hectare is limited."""
    return SPACING if known(facts, PER_HA) else []


def beside_facts(facts: Facts) -> list[str]:
    """The known facts that the views of vine and law rest on."""
    grown = known_of(facts, [PRUNINGS, FORMULA] + MADE_FOR) if known(facts, PRUNINGS) else []
    return grown + known_of(facts, ["legal_nodes_per_vine_most", PER_HA])


def weighed(facts: Facts, values: BlockPlanValues) -> Weighed:
    """What the vine's view is taken from."""
    rules = CapacityRules(
        values.balanced_first_nodes,
        values.balanced_further_nodes,
        values.balanced_unit_kg,
        values.balanced_vine_least_kg,
        values.balanced_vine_most_kg,
        values.nodes_per_kg,
    )
    grape = Grape(maybe(facts, "grape_type"), maybe(facts, "use"), maybe(facts, "canopy_form"), maybe(facts, "climate"))
    return Weighed(maybe(facts, PRUNINGS), maybe(facts, FORMULA), grape, rules)


def vine_view(facts: Facts, values: BlockPlanValues) -> View:
    """The nodes that the vine carries by its prunings."""
    return by_prunings(weighed(facts, values))


def law_view(facts: Facts) -> View:
    """The most nodes by law; a limit per hectare waits for the spacing."""
    per_vine = maybe(facts, "legal_nodes_per_vine_most")
    if len(missing(facts, SPACING)) > 0:
        return by_law(per_vine, Maybe(False, 0.0), Maybe(False, 0.0))
    places = M2_PER_HA / (number(facts, "row_spacing_m") * number(facts, "vine_spacing_m"))
    return by_law(per_vine, maybe(facts, PER_HA), Maybe(True, places))


def views_of(facts: Facts, values: BlockPlanValues, fruit: Fruit, room: Room, bearing: Bearing) -> Views:
    """All views of the plan, in exact nodes."""
    space = View(True, room.nodes_low_exact, room.nodes_high_exact, room.nodes_high_exact, room.working)
    return Views(View(True, fruit.low, fruit.exact, fruit.high, fruit.lines), vine_view(facts, values), space, law_view(facts), bearing)


def beside_numbers(vine: View, law: View) -> list[Named]:
    """What the vine carries and what the law allows, as far as it is known."""
    numbers: list[Named] = []
    if vine.ok:
        numbers = [Named("capacity_low", vine.low), Named("capacity_high", vine.high)]
    if law.ok:
        numbers.append(Named("legal_most", law.high))
    return numbers


def beside_uses(vine: View) -> list[str]:
    """The calculators behind these views."""
    return ["balanced_nodes"] if vine.ok else []
