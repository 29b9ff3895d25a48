"""The plan's weak, normal and strong vines: three numbers whose mean over the block is the plan's, in bearers that can be left.

No single vine passes the room on its wire, the law, or the places that it has. Where canes of one length are laid the numbers differ by
whole canes, if that tells the vines apart at all; else by nodes. See vine_classes.py. (Agronomy, section 1; evidence bp-03, bp-16, bp-20.)
"""

from dataclasses import dataclass

from generator.calculators.bearers import buds_of
from generator.calculators.changes import with_number
from generator.calculators.facts import Facts, Maybe, missing, number
from generator.calculators.layout_records import NEW_ARM, VineLayoutResult
from generator.calculators.plan_bearers import nodes_known, steps_of
from generator.calculators.plan_by_buds import longest_of, reckons_by_buds
from generator.calculators.plan_records import BlockPlanValues, Named, Part, found
from generator.calculators.plan_vine import can_be_laid, vine_of
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT
from generator.calculators.vine_classes import Mix, VineClasses, fewer_on_weak, vine_classes
from generator.calculators.views import Views, most_of_a_vine

MIX: list[str] = ["weak_vines_pct", "strong_vines_pct", "weak_vine_nodes_pct", "strong_vine_nodes_pct"]
WEAK: str = "fact.weak_vines_pct"
STRONG: str = "fact.strong_vines_pct"


@dataclass(frozen=True)
class Kinds:
    """Nodes of a weak, a normal and a strong vine and their mean over the block, and what is said of them; no numbers while the mix is
    not known."""

    numbers: list[Named]
    notes: list[Say]


def kinds_of(facts: Facts, values: BlockPlanValues, target: str, nodes: float, views: Views) -> Kinds:
    """The three numbers for so many whole nodes, which have their places on an ordinary vine."""
    if len(missing(facts, MIX)) > 0:
        return Kinds([], [Say("plan.weak_and_strong", [], [])])
    mix = Mix(
        number(facts, "weak_vines_pct"),
        number(facts, "strong_vines_pct"),
        number(facts, "weak_vine_nodes_pct"),
        number(facts, "strong_vine_nodes_pct"),
    )
    if mix.weak_pct + mix.strong_pct > PER_CENT:
        return Kinds([], [Say("plan.mix_over_all", [mix.weak_pct, mix.strong_pct], [])])
    step = step_of(facts, values, target)
    three = on_places(facts, values, target, nodes, mix, most_of_a_vine(views))
    numbers = [
        Named("weak_nodes", three.weak_whole),
        Named("normal_nodes", three.normal_whole),
        Named("strong_nodes", three.strong_whole),
        Named("mean_nodes", three.mean_whole),
    ]
    return Kinds(numbers, notes_of(values, mix, three, float(step)))


def placed_of(facts: Facts, values: BlockPlanValues, target: str, nodes: float) -> float:
    """Of so many nodes those that find a place on the vine; all where it cannot be laid out yet."""
    if not can_be_laid(facts, target):
        return nodes
    return min(nodes, float(vine_of(facts, values, target, int(nodes), longest_of(facts, values, target)).nodes))


def on_places(facts: Facts, values: BlockPlanValues, target: str, nodes: float, mix: Mix, most: Maybe) -> VineClasses:
    """The numbers on the places that a vine has, of which a strong vine has no more than the others."""
    step = step_of(facts, values, target)
    three = in_steps(nodes, mix, most, step)
    if not can_be_laid(facts, target):
        return three
    strong = laid_of(facts, values, target, three.strong_whole)
    if strong.short_nodes == 0:
        return three
    return in_steps(nodes, mix, Maybe(True, max(nodes, float(strong.nodes))), step)


def step_of(facts: Facts, values: BlockPlanValues, target: str) -> int:
    """The nodes of a cane and its renewal spur where canes of one length are laid, else one."""
    if not reckons_by_buds(facts, target):
        return 1
    return steps_of(facts, values, target, nodes_known(buds_of(facts))).step


def in_steps(nodes: float, mix: Mix, most: Maybe, step: int) -> VineClasses:
    """The numbers in whole steps, where these tell weak from strong vines; else in nodes."""
    each = float(step)
    three = vine_classes(nodes / each, mix, Maybe(most.ok, most.number / each))
    if step == 1 or three.weak_whole == three.strong_whole:
        return vine_classes(nodes, mix, most)
    return VineClasses(
        three.weak * each,
        three.normal * each,
        three.strong * each,
        three.weak_whole * each,
        three.normal_whole * each,
        three.strong_whole * each,
        three.mean_whole * each,
        three.together,
    )


def notes_of(values: BlockPlanValues, mix: Mix, three: VineClasses, step: float) -> list[Say]:
    """The three numbers, and how to tell the vines apart. Where strong vines cannot have their share, weak ones may do better with fewer
    than the mean leaves them: what that makes of the mean is said."""
    if mix.weak_pct + mix.strong_pct <= 0.0:
        return []
    fewer = fewer_on_weak(mix, three, step)
    if three.weak_whole == three.strong_whole:
        return [Say("node_number.alike", [three.normal_whole] + fewer, []), told_by(values)] if len(fewer) > 0 else []
    whole = [three.weak_whole, three.normal_whole, three.strong_whole, mix.weak_pct, mix.strong_pct, three.mean_whole]
    notes = [Say("plan.three_kinds", whole, []), told_by(values)]
    return notes + [Say("node_number.together", fewer, [])] if len(fewer) > 0 else notes


def told_by(values: BlockPlanValues) -> Say:
    """How to tell the vines apart."""
    return Say("plan.tell_apart", [values.effective_thin_from_mm, values.effective_thick_over_mm], [])


def laid_of(facts: Facts, values: BlockPlanValues, target: str, nodes: float) -> VineLayoutResult:
    """The layout of one kind of vine. Canes of one length are as many as carry the nodes, and not as many as an ordinary vine has."""
    asked = with_number(facts, "canes_wanted_per_vine", 1.0) if step_of(facts, values, target) > 1 else facts
    return vine_of(asked, values, target, int(nodes), longest_of(facts, values, target))


def laid_notes(facts: Facts, values: BlockPlanValues, target: str, earlier: list[Part]) -> list[Say]:
    """What is left on weak and on strong vines. A strong vine that would need a short cane more gets its nodes on spurs. can_be_laid must be
    true."""
    weak = found(earlier, "weak_nodes")
    strong = found(earlier, "strong_nodes")
    if target == NEW_ARM or not weak.ok or weak.number == strong.number:
        return []
    normal = laid_of(facts, values, target, found(earlier, "normal_nodes").number)
    notes = kind_says(WEAK, laid_of(facts, values, target, weak.number))
    many = laid_of(facts, values, target, strong.number)
    if step_of(facts, values, target) == 1 and len(many.canes) > len(normal.canes):
        return notes + [Say("plan.kind_more_spurs", [float(many.nodes - normal.nodes), float(many.nodes)], [STRONG])]
    return notes + kind_says(STRONG, many)


def kind_says(vines: str, layout: VineLayoutResult) -> list[Say]:
    """One kind of vine in bearers."""
    nodes = float(layout.nodes)
    spurs = float(len(layout.spurs))
    canes = float(len(layout.canes))
    if len(layout.canes) > 0 and len(layout.spurs) > 0:
        return [Say("plan.kind_both", [spurs, float(layout.spur_nodes), canes, float(max(layout.canes)), nodes], [vines])]
    if len(layout.canes) > 0:
        return [Say("plan.kind_canes", [canes, float(max(layout.canes)), float(layout.renewal_nodes), nodes], [vines])]
    if len(layout.spurs) > 0:
        return [Say("plan.kind_spurs", [spurs, float(max(layout.spurs)), nodes], [vines])]
    return []
