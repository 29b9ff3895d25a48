"""The two sides of a table that weighs: the reasons for each, and what they come to."""

import math
from dataclasses import dataclass

from generator.calculators.answer import Reason


@dataclass(frozen=True)
class Side:
    """The reasons for one side, heaviest first, and the sum of their weights, above nothing for either side."""

    reasons: list[Reason]
    sum: float


@dataclass(frozen=True)
class Sides:
    """The reasons of one table: for the side of the weights above nothing, for the side below it, for neither."""

    above: Side
    below: Side
    neither: list[Reason]


def sides_of(reasons: list[Reason], table: str) -> Sides:
    """The reasons of an answer that stand in the table, by side."""
    above = [one for one in reasons if one.table == table and one.weight > 0.0]
    below = [one for one in reasons if one.table == table and one.weight < 0.0]
    neither = [one for one in reasons if one.table == table and one.weight == 0.0]
    return Sides(Side(above, math.fsum([one.weight for one in above])), Side(below, math.fsum([0.0 - one.weight for one in below])), neither)
