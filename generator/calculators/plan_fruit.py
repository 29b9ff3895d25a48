"""The plan's second part: where the fruit is, by the buds that were cut open."""

from generator.calculators.facts import Facts
from generator.calculators.plan_records import BlockPlanValues, Part

FIND: str = "find_fruit"


def with_fruit(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Facts:
    """The facts with what the buds tell of each bearer, before the tables are decided."""
    return facts
