"""How far the bunches of bearers may be out because only some canes were cut open.

As for the reach of a spur (reach_sums.py): n canes give one bud at each node, primordia spread by sd among buds, buds of one cane are
alike by `likeness`; var = sd2 / n (SUM k2 / P + likeness SUM k k'), with k the bunches that one primordium of a node becomes on all
bearers together. (Evidence bd-11, dis-09.)
"""

import math
from dataclasses import dataclass

from generator.calculators.bearers import Buds, burst_at, grown
from generator.calculators.facts import Maybe
from generator.calculators.units import PER_CENT


@dataclass(frozen=True)
class Bearers:
    """The bearers of a vine by their nodes: canes; spurs, renewal spurs among them; and how many nodes at the base of each cane lose
    their fruit (then spurs bear nothing that is cropped)."""

    canes: list[int]
    spurs: list[int]
    lost: int


@dataclass(frozen=True)
class CaneSample:
    """Canes cut open, the spread of primordia from bud to bud, the likeness of buds of one cane (0 to 1), each where it is known."""

    canes: Maybe
    sd: Maybe
    likeness: Maybe


def sampled_cv_pct(sample: CaneSample, buds: Buds, bearers: Bearers) -> Maybe:
    """The spread of the bearers' bunches, as a coefficient of variation in %; left out where the sample is not known,
    where nothing is borne, or where hardly a living primary was seen at a node."""
    weights = [weight_at(buds, node, bearers) for node in range(1, len(buds.primordia) + 1)]
    bunches = math.fsum([weight * primordia for weight, primordia in zip(weights, buds.primordia)])
    canes = sample.canes.number
    if not sample.canes.ok or not sample.sd.ok or not sample.likeness.ok or canes <= 0.0 or bunches <= 0.0:
        return Maybe(False, 0.0)
    if any(weight > 0.0 and canes * alive < 1.0 for weight, alive in zip(weights, buds.primary)):
        return Maybe(False, 0.0)
    apart = math.fsum([weight * weight / alive for weight, alive in zip(weights, buds.primary) if weight > 0.0])
    squares = math.fsum([weight * weight for weight in weights])
    together = math.fsum(weights) * math.fsum(weights) - squares
    spread = sample.sd.number * math.sqrt((apart + sample.likeness.number * max(0.0, together)) / canes)
    return Maybe(True, spread * PER_CENT / bunches)


def weight_at(buds: Buds, node: int, bearers: Bearers) -> float:
    """The bunches that one primordium at a node becomes on all bearers together."""
    total = 0.0
    for length in bearers.canes:
        if bearers.lost < node and node <= length:
            total += grown(buds, node, burst_at(buds, node, length, True))
    for length in bearers.spurs:
        if bearers.lost == 0 and node <= length:
            total += grown(buds, node, burst_at(buds, node, length, False))
    return total
