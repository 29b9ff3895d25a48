"""How far the bunches of a layout may be out because only some canes were cut open.

As for the reach of a spur (reach_sums.py): n canes give one bud at each node, primordia spread by sd among buds, buds of one cane are
alike by `likeness`; var = sd2 / n (SUM k2 / P + likeness SUM k k'), with k the bunches that one primordium of a node becomes on the
whole layout. (Evidence bd-11, dis-09.)
"""

import math

from generator.calculators.bearers import Buds, burst_at, grown
from generator.calculators.facts import Facts, Maybe, known, number
from generator.calculators.layout_records import VineLayoutResult
from generator.calculators.plan_records import BlockPlanValues
from generator.calculators.units import PER_CENT


def sampling_cv_pct(facts: Facts, values: BlockPlanValues, buds: Buds, layout: VineLayoutResult, lost: int) -> Maybe:
    """The spread of the layout's bunches, as a coefficient of variation in %; left out where nobody said how many canes were cut open,
    where nothing is borne, or where hardly a living primary was seen at a node."""
    if not known(facts, "canes_dissected"):
        return Maybe(False, 0.0)
    canes = number(facts, "canes_dissected")
    weights = weights_of(buds, layout, lost)
    bunches = math.fsum([weight * primordia for weight, primordia in zip(weights, buds.primordia)])
    if bunches <= 0.0 or any(weight > 0.0 and canes * alive < 1.0 for weight, alive in zip(weights, buds.primary)):
        return Maybe(False, 0.0)
    apart = math.fsum([weight * weight / alive for weight, alive in zip(weights, buds.primary) if weight > 0.0])
    squares = math.fsum([weight * weight for weight in weights])
    together = math.fsum(weights) * math.fsum(weights) - squares
    spread = values.primordia_sd * math.sqrt((apart + values.bud_likeness * max(0.0, together)) / canes)
    return Maybe(True, spread * PER_CENT / bunches)


def weights_of(buds: Buds, layout: VineLayoutResult, lost: int) -> list[float]:
    """For each node the bunches that one primordium there becomes on all bearers together; `lost` as in borne_on."""
    return [weight_at(buds, node, layout, lost) for node in range(1, len(buds.primordia) + 1)]


def weight_at(buds: Buds, node: int, layout: VineLayoutResult, lost: int) -> float:
    """The bunches that one primordium at a node becomes on all bearers together."""
    total = 0.0
    for length in layout.canes:
        if lost < node and node <= length:
            total += grown(buds, node, burst_at(buds, node, length, True))
    for length in layout.spurs + layout.renewals:
        if lost == 0 and node <= length:
            total += grown(buds, node, burst_at(buds, node, length, False))
    return total
