"""The plan's fruit view by buds cut open: bearer by bearer, on the layout that the vine would get.

Bunches and shoots of a layout are those of its spurs and canes, renewal spurs at spur value, by dissection (see bearers.py). The
node number is the one whose layout comes nearest to the crop wanted (halves up), on the fewest canes that carry it; where the
length of a cane is fixed it goes up cane by cane until the crop is carried. Grapes that dry on canes cut through in
summer: only the nodes beyond the cut count. Nothing of the spring counts enters here.
"""

import math
from dataclasses import dataclass

from generator.calculators.bearers import Buds, bearer, bunches_at
from generator.calculators.facts import Facts, Maybe, known, maybe, number
from generator.calculators.layout_records import CANE, VineLayoutResult
from generator.calculators.plan_counts import bearing_vines
from generator.calculators.plan_records import BlockPlanValues, Part
from generator.calculators.plan_vine import vine_of
from generator.calculators.units import PER_CENT
from generator.calculators.yield_chain import Counts

DRIED: int = 2
SEVERED: int = 0


@dataclass(frozen=True)
class Steps:
    """The node numbers to look at: from the first, step by step; fixed where the length of a cane is."""

    first: int
    step: int
    fixed: bool


@dataclass(frozen=True)
class Borne:
    """What the bearers of one vine give in spring: nodes kept, those on canes, bunches that are cropped, those of its canes, count
    shoots, burst nodes."""

    nodes: int
    cane_nodes: int
    bunches: float
    on_canes: float
    shoots: float
    burst_nodes: float


def nodes_known(buds: Buds) -> int:
    """The longest bearer that can be reckoned."""
    return len(buds.primordia)


def lost_at_base(facts: Facts, values: BlockPlanValues) -> int:
    """The lowest nodes of a cane whose fruit is not cropped: those below the cut where canes are cut through to dry, else none."""
    dried = known(facts, "use") and int(number(facts, "use")) == DRIED
    if dried and known(facts, "drying") and int(number(facts, "drying")) == SEVERED:
        return int(values.severed_at_node)
    return 0


def borne_on(layout: VineLayoutResult, buds: Buds, lost: int) -> Borne:
    """The layout's fruit. With `lost` nodes at the base of each cane nothing is cropped from them, nor from spurs."""
    bunches = 0.0
    on_canes = 0.0
    shoots = 0.0
    burst = 0.0
    for length in layout.canes:
        one = bearer(buds, length, True)
        base = [bunches_at(buds, node, buds.cane_burst[node - 1]) for node in range(1, min(lost, length) + 1)]
        on_canes += max(0.0, one.bunches - math.fsum(base))
        shoots += one.shoots
        burst += one.burst_nodes
    for length in layout.spurs + layout.renewals:
        one = bearer(buds, length, False)
        if lost == 0:
            bunches += one.bunches
        shoots += one.shoots
        burst += one.burst_nodes
    return Borne(layout.nodes, layout.cane_nodes, bunches + on_canes, on_canes, shoots, burst)


def steps_of(facts: Facts, values: BlockPlanValues, target: str, longest: int) -> Steps:
    """Node by node; cane by cane where canes of a wanted length are laid."""
    wanted = maybe(facts, "nodes_per_cane_wanted")
    if target != CANE or not wanted.ok:
        return Steps(1, 1, False)
    each = max(1, min(int(wanted.number), longest)) + int(values.nodes_per_renewal_spur)
    canes = maybe(facts, "canes_wanted_per_vine")
    return Steps(each * max(1, int(canes.number)) if canes.ok else each, each, True)


def layouts_of(facts: Facts, values: BlockPlanValues, target: str, buds: Buds) -> list[Borne]:
    """What each node number bears that the vine has places for, rising; the first alone where it has too few places even for that."""
    longest = nodes_known(buds)
    lost = lost_at_base(facts, values)
    steps = steps_of(facts, values, target, longest)
    found: list[Borne] = []
    nodes = steps.first
    layout = vine_of(facts, values, target, nodes, longest)
    while len(found) == 0 or layout.short_nodes == 0:
        if layout.nodes > 0 and (len(found) == 0 or layout.nodes > found[len(found) - 1].nodes):
            found.append(borne_on(layout, buds, lost))
        nodes += steps.step
        layout = vine_of(facts, values, target, nodes, longest)
    return found


def nearest(choices: list[Borne], wish: float, fixed: bool) -> Borne:
    """The choice whose bunches come nearest to the wish (of two as near the larger), looked for up to the first that carries it; where
    lengths are fixed that first one; the one with most bunches where none carries it."""
    below = choices[0]
    for one in choices:
        if one.bunches >= wish:
            nearer = below.bunches < wish and wish - below.bunches < one.bunches - wish
            return below if nearer and not fixed else one
        if one.bunches > below.bunches:
            below = one
    return below


def most_of(choices: list[Borne]) -> Borne:
    """The choice with most bunches."""
    best = choices[0]
    for one in choices:
        if one.bunches > best.bunches:
            best = one
    return best


def borne_with(choices: list[Borne], nodes: int) -> Borne:
    """The choice with so many nodes. Raises ValueError when there is none."""
    for one in choices:
        if one.nodes == nodes:
            return one
    raise ValueError("no such choice")


def up_to(choices: list[Borne], most: float) -> list[Borne]:
    """The choices with at most so many nodes; the smallest alone where none has so few."""
    found = [one for one in choices if float(one.nodes) <= most]
    return found if len(found) > 0 else choices[:1]


def within_room(choices: list[Borne], chosen: Borne, low: float, high: float) -> Borne:
    """The chosen number held inside the room, whose ends are in shoots: where it is over it the one with most bunches that fits, where
    it is under it the first that fills it; half a node either way counts as inside. The first or last choice where none does."""
    half = chosen.shoots / float(chosen.nodes) / 2.0
    if chosen.shoots > high + half:
        best = choices[0]
        for one in choices:
            if one.shoots <= high + half and one.bunches > best.bunches:
                best = one
        return best
    if chosen.shoots < low - half:
        for one in choices:
            if one.shoots >= low - half:
                return one
        return choices[len(choices) - 1]
    return chosen


def counts_by_buds(facts: Facts, earlier: list[Part], borne: Borne, sampling_cv_pct: Maybe) -> Counts:
    """The chain's links as these bearers give them: burst, shoots per burst node and bunches per shoot of their own nodes, by
    dissection. sampling_cv_pct is the spread of the bunches for the canes cut open."""
    return Counts(
        bearing_vines_per_ha=bearing_vines(facts, earlier).number,
        budburst_pct=min(PER_CENT, borne.burst_nodes * PER_CENT / float(borne.nodes)),
        shoots_per_burst_node=borne.shoots / borne.burst_nodes,
        bunches_per_shoot=borne.bunches / borne.shoots,
        bunch_weight_g=number(facts, "bunch_weight_g"),
        noncount_shoots_kept=maybe(facts, "noncount_shoots_kept"),
        bunches_per_noncount_shoot=maybe(facts, "bunches_per_noncount_shoot"),
        noncount_bunch_weight_g=maybe(facts, "noncount_bunch_weight_g"),
        nodes_left=maybe(facts, "nodes_left"),
        budburst_cv_pct=maybe(facts, "budburst_cv_pct"),
        shoots_per_burst_node_cv_pct=maybe(facts, "shoots_per_burst_node_cv_pct"),
        bunches_per_shoot_cv_pct=sampling_cv_pct,
        bunch_weight_cv_pct=maybe(facts, "bunch_weight_cv_pct"),
    )
