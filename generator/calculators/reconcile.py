"""The views of the node number held against each other: one function for the plan and for the calculator.

hi = the lowest of what the vine carries, what the canopy has room for and what the law allows; lo = min(room's low end, hi);
N = clamp(crop, lo, hi). The crop is no ceiling and no floor: a small wish never takes a strong vine below the room's low end (the
nodes stay, bunches are thinned), and a large one never takes it over hi. (Agronomy, section 1; evidence hg-08.)
"""

from dataclasses import dataclass

FRUIT: str = "fruit"
CAPACITY: str = "capacity"
ROOM_HIGH: str = "room_high"
ROOM_LOW: str = "room_low"
LEGAL: str = "legal"


@dataclass(frozen=True)
class Ceiling:
    """The most nodes by one view."""

    view: str
    nodes: float


@dataclass(frozen=True)
class Held:
    """The number that stays, lo and hi, and the view that limits it: FRUIT where the crop's own number stands."""

    nodes: float
    low: float
    high: float
    limit: str


def lowest(ceilings: list[Ceiling]) -> Ceiling:
    """The ceiling that is met first; of equals the one named first. Raises ValueError when there is none."""
    if len(ceilings) == 0:
        raise ValueError("no view says how many nodes are too many")
    found = ceilings[0]
    for one in ceilings:
        if one.nodes < found.nodes:
            found = one
    return found


def hold(fruit: float, low: float, ceilings: list[Ceiling], least: float) -> Held:
    """The crop's number held between the room's low end and the lowest ceiling, and never under `least`. Raises ValueError without a
    ceiling."""
    high = lowest(ceilings)
    floor = min(low, high.nodes)
    nodes = max(least, min(max(fruit, floor), high.nodes))
    return Held(nodes, floor, high.nodes, limit_of(fruit, nodes, high.view))


def limit_of(fruit: float, nodes: float, ceiling: str) -> str:
    """Which view limits, by what became of the crop's number: it was cut at the ceiling, raised to the low end, or left as it is."""
    if fruit > nodes:
        return ceiling
    if fruit < nodes:
        return ROOM_LOW
    return FRUIT
