"""What one layout is worth: whether it can be built, its bunches, how even it is, its hand work, its points."""

from generator.calculators.bearers import Buds, bearer
from generator.calculators.facts import Maybe
from generator.calculators.hand_work import SPUR_CORDON, HandWork, hand_work
from generator.calculators.layout_places import Evenness, Ground, evenness, ground_for, spacing_mm, standing_beside
from generator.calculators.layout_records import CANE, VineLayoutResult, arms_of, gap_of, space_of
from generator.calculators.option_faults import faults_of
from generator.calculators.option_records import Asked, LayoutOption, Limits, Points, Weighed, Weights
from generator.calculators.option_spread import arranged, level_of
from generator.calculators.option_words import merits_of
from generator.calculators.say import Say


def weighed(layout: VineLayoutResult, asked: Asked, limits: Limits, shared: Ground) -> Weighed:
    """A layout with all that its rank needs but the points for bunches. `shared` is the ground of most layouts of this vine."""
    inputs = asked.layout
    space = space_of(inputs)
    ground = ground_for(layout, space, shared)
    beside = standing_beside(layout, ground.reached, space)
    level = level_of(layout, beside.loads, ground.room)
    even = evenness(layout, beside, level.loads, space, gap_of(inputs), inputs.curtains, asked.shoots_per_node)
    work = hand_work(layout, arms_of(inputs) if stands_on_cordon(asked) else 0)
    unrenewed = unrenewed_of(layout, int(limits.layout.nodes_per_spur_most))
    off = points_off(layout, asked, limits.weights, even, work, unrenewed)
    return Weighed(layout, ground, level, faults_of(layout, asked, limits), bunches_of(layout, asked.buds), even, work, unrenewed, off)


def option_of(one: Weighed, asked: Asked, limits: Limits) -> LayoutOption:
    """A weighed layout as an option, with its spurs in their places and its reasons."""
    layout = arranged(one.layout, one.level, one.ground)
    reasons = one.faults
    score = score_of(one.off)
    if len(one.faults) == 0:
        reasons = merits_of(layout, asked, limits, one.bunches, one.even, one.work, gives_up(layout, asked), one.unrenewed)
        off = one.off
        reasons = reasons + [Say("layout_options.points", [score, off.uneven, off.work, off.change, off.next_winter, off.bunches], [])]
    return LayoutOption(
        layout=layout,
        built=len(one.faults) == 0,
        short_nodes=layout.short_nodes,
        nodes_per_spur=longest_of(layout.spurs),
        nodes_per_cane=longest_of(layout.canes),
        spacing_mm=spacing_mm(layout),
        bunches=one.bunches,
        densest=one.even.densest,
        barest=one.even.barest,
        evenness=one.even.share,
        bare_mm=one.even.bare_mm,
        cuts=one.work.cuts,
        ties=one.work.ties,
        score=score,
        off=one.off,
        reasons=reasons,
    )


def longest_of(bearers: list[int]) -> int:
    """The nodes of the longest bearer; 0 where there is none."""
    return max(bearers) if len(bearers) > 0 else 0


def stands_on_cordon(asked: Asked) -> bool:
    """True when the vine is a cordon with spurs now: as was said, else as its live positions tell."""
    if asked.structure.ok:
        return int(asked.structure.number) == SPUR_CORDON
    return asked.layout.live_spur_positions_per_vine.ok and asked.layout.live_spur_positions_per_vine.number > 0.0


def gives_up(layout: VineLayoutResult, asked: Asked) -> bool:
    """True when the layout takes the cordon away. A head with canes has no cordon to take its place this winter."""
    return layout.target == CANE and stands_on_cordon(asked)


def bunches_of(layout: VineLayoutResult, buds: list[Buds]) -> Maybe:
    """Bunches of one vine before thinning; open where no buds were cut, or a bearer is longer than the nodes that are known."""
    if len(buds) == 0:
        return Maybe(False, 0.0)
    spurs = layout.spurs + layout.renewals
    if max(longest_of(spurs), longest_of(layout.canes)) > len(buds[0].primordia):
        return Maybe(False, 0.0)
    bunches = 0.0
    for nodes in spurs:
        bunches += bearer(buds[0], nodes, False).bunches
    for nodes in layout.canes:
        bunches += bearer(buds[0], nodes, True).bunches
    return Maybe(True, bunches)


def unrenewed_of(layout: VineLayoutResult, short: int) -> int:
    """Long spurs, and canes beside spurs, that have no spur of up to `short` nodes to take their place from next winter. Canes that are laid
    with renewal spurs have theirs."""
    shorts = len([nodes for nodes in layout.spurs if nodes <= short])
    return max(0, len(layout.spurs) - shorts + len(layout.canes) - len(layout.renewals) - shorts)


def points_off(layout: VineLayoutResult, asked: Asked, weights: Weights, even: Evenness, work: HandWork, unrenewed: int) -> Points:
    """What is taken off for what the layout alone shows; for bunches nothing yet."""
    later = weights.empty * float(max(0, layout.positions - len(layout.spurs))) + weights.unrenewed * float(unrenewed)
    if len(layout.canes) > 0 and asked.good_canes.ok and int(asked.good_canes.number) <= len(layout.canes):
        later = later + weights.no_spare
    change = weights.change if gives_up(layout, asked) else 0.0
    return Points(weights.uneven * (1.0 - even.share), weights.work * float(work.cuts + work.ties), change, later, 0.0)


def score_of(off: Points) -> float:
    """What is left of a hundred points."""
    return 100.0 - off.uneven - off.work - off.change - off.next_winter - off.bunches


def scored(one: Weighed, most_bunches: float, weights: Weights) -> Weighed:
    """The same with the points off for bunches that the best layout has and this one has not."""
    lacking = 0.0
    if one.bunches.ok and most_bunches > 0.0:
        lacking = max(0.0, 1.0 - one.bunches.number / most_bunches)
    off = Points(one.off.uneven, one.off.work, one.off.change, one.off.next_winter, weights.bunches * lacking)
    return Weighed(one.layout, one.ground, one.level, one.faults, one.bunches, one.even, one.work, one.unrenewed, off)
