"""Nodes for weak, normal and strong vines whose mean over the block is the plan.

With the shares a, b, c of weak, normal and strong vines and r_w, r_s the nodes of a weak and a strong vine for each node of a normal
one: a r_w n + b n + c r_s n = N. No vine may pass the limit of the wire or of the law: where the strong ones would, the three are
drawn together by one factor until they do not, so that the mean stays. (Agronomy, section 1; evidence bp-03, bp-16, bp-20.)
"""

import math
from dataclasses import dataclass

from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.units import PER_CENT, share


@dataclass(frozen=True)
class Mix:
    """Weak and strong vines in % of all; their nodes in % of a normal vine's."""

    weak_pct: float
    strong_pct: float
    weak_nodes_pct: float
    strong_nodes_pct: float


@dataclass(frozen=True)
class VineClasses:
    """Nodes of a weak, a normal and a strong vine, exact and whole; the mean of the whole ones; whether they were drawn together."""

    weak: float
    normal: float
    strong: float
    weak_whole: float
    normal_whole: float
    strong_whole: float
    mean_whole: float
    together: bool


def mean_of(mix: Mix, weak: float, normal: float, strong: float) -> float:
    """The mean over the block."""
    middle = PER_CENT - mix.weak_pct - mix.strong_pct
    return math.fsum([mix.weak_pct * weak, middle * normal, mix.strong_pct * strong]) / PER_CENT


def apart(mix: Mix, nodes: float, most: Maybe) -> float:
    """The part of the difference that the limit leaves: 1 where strong vines stay under it, 0 where the plan is at the limit itself."""
    down = 1.0 - share(mix.weak_nodes_pct)
    up = share(mix.strong_nodes_pct) - 1.0
    rise = share(mix.strong_pct) * up - share(mix.weak_pct) * down
    if not most.ok or nodes * (1.0 + up) <= most.number * (1.0 + rise):
        return 1.0
    room = nodes * up - most.number * rise
    if room <= 0.0:
        return 0.0
    return min(1.0, max(0.0, (most.number - nodes) / room))


def vine_classes(nodes: float, mix: Mix, most: Maybe) -> VineClasses:
    """The three numbers. `most` is the limit of any single vine. Raises ValueError when weak and strong vines are over 100 %."""
    if mix.weak_pct + mix.strong_pct > PER_CENT:
        raise ValueError("weak and strong vines together are at most 100 % of the block")
    part = apart(mix, nodes, most)
    weak_ratio = 1.0 - part * (1.0 - share(mix.weak_nodes_pct))
    strong_ratio = 1.0 + part * (share(mix.strong_nodes_pct) - 1.0)
    normal = nodes / mean_of(mix, weak_ratio, 1.0, strong_ratio)
    return counted(VineClasses(normal * weak_ratio, normal, normal * strong_ratio, 0.0, 0.0, 0.0, 0.0, part < 1.0), nodes, mix, most)


def fewer_on_weak(mix: Mix, three: VineClasses, step: float) -> list[float]:
    """Where strong vines cannot have their share: the nodes that weak vines would keep beside normal ones, in whole steps, and the mean of
    the block then. Empty where weak vines have no more than that already, or there are none."""
    fewer = max(1.0, float(half_up(three.normal_whole * share(mix.weak_nodes_pct) / step)) * step)
    if not three.together or mix.weak_pct <= 0.0 or fewer >= three.weak_whole:
        return []
    return [fewer, mean_of(mix, fewer, three.normal_whole, three.strong_whole)]


def counted(exact: VineClasses, nodes: float, mix: Mix, most: Maybe) -> VineClasses:
    """With whole numbers: of the neighbours of the exact ones those whose mean is nearest to the plan, then those nearest to the exact."""
    best = VineClasses(
        exact.weak, exact.normal, exact.strong, float(half_up(exact.weak)), float(half_up(exact.normal)), float(half_up(exact.strong)), 0.0, exact.together
    )
    best_miss = -1.0
    best_off = 0.0
    for weak in neighbours(exact.weak, most):
        for normal in neighbours(exact.normal, most):
            for strong in neighbours(exact.strong, most):
                miss = abs(mean_of(mix, weak, normal, strong) - nodes)
                off = math.fsum([abs(weak - exact.weak), abs(normal - exact.normal), abs(strong - exact.strong)])
                if weak <= normal and normal <= strong and (best_miss < 0.0 or miss < best_miss or (miss == best_miss and off < best_off)):
                    best_miss = miss
                    best_off = off
                    best = VineClasses(exact.weak, exact.normal, exact.strong, weak, normal, strong, mean_of(mix, weak, normal, strong), exact.together)
    return best


def neighbours(exact: float, most: Maybe) -> list[float]:
    """The whole numbers on either side, at least one node, the upper one only where the limit allows it."""
    below = max(1.0, float(math.floor(exact)))
    if most.ok and below + 1.0 > most.number:
        return [below]
    return [below, below + 1.0]
