"""What the choice between layouts takes and gives."""

from dataclasses import dataclass

from generator.calculators.bearers import Buds
from generator.calculators.facts import Maybe
from generator.calculators.hand_work import HandWork
from generator.calculators.layout_places import Evenness, Ground
from generator.calculators.layout_records import VineLayoutInputs, VineLayoutResult, VineLayoutValues
from generator.calculators.option_spread import Level
from generator.calculators.say import Say

LONG_SPURS_WITH_CANES: str = "long_spurs_with_canes"


@dataclass(frozen=True)
class Asked:
    """One vine: the node number and lengths (the target in them does not count), good canes counted, the ordinal of the present
    structure, shoots that a node gives, and the buds where they were cut (an empty list where they were not)."""

    layout: VineLayoutInputs
    good_canes: Maybe
    structure: Maybe
    shoots_per_node: float
    buds: list[Buds]


@dataclass(frozen=True)
class Weights:
    """What the rank weighs, in points off a hundred: for the barest quarter being bare, for each cut or tie, for giving up the
    present form, for bearing no bunches where the best layout has them, for no spare cane, for each position given up, for each long
    bearer that has no short spur to renew it."""

    uneven: float
    work: float
    change: float
    bunches: float
    no_spare: float
    empty: float
    unrenewed: float


@dataclass(frozen=True)
class Limits:
    """The limits of every layout, the fewest nodes that make a cane, the most canes that are tried, and what the rank weighs."""

    layout: VineLayoutValues
    nodes_per_cane_least: float
    canes_tried: float
    weights: Weights


@dataclass(frozen=True)
class Points:
    """The points taken off a hundred: for an uneven wall of leaves, hand work, the present form given up, what is left to next winter (no
    spare cane, positions given up, long bearers without a short spur), bunches that another layout bears."""

    uneven: float
    work: float
    change: float
    next_winter: float
    bunches: float


@dataclass(frozen=True)
class Weighed:
    """One layout that was tried: where its nodes can stand, how its spurs level the shoots, what it is short of (nothing where it can be built), its bunches, evenness
    and hand work, long bearers without a short spur, and the points off."""

    layout: VineLayoutResult
    ground: Ground
    level: Level
    faults: list[Say]
    bunches: Maybe
    even: Evenness
    work: HandWork
    unrenewed: int
    off: Points


@dataclass(frozen=True)
class LayoutOption:
    """One layout: whether it can be built; nodes without a place; its longest spur and cane; mm from spur to spur; bunches before
    thinning; shoots per metre of the densest and the barest quarter, one over the other; bare wire in mm; cuts and ties;
    points and what was taken off them; the reasons in order."""

    layout: VineLayoutResult
    built: bool
    short_nodes: int
    nodes_per_spur: int
    nodes_per_cane: int
    spacing_mm: int
    bunches: Maybe
    densest: float
    barest: float
    evenness: float
    bare_mm: int
    cuts: int
    ties: int
    score: float
    off: Points
    reasons: list[Say]
