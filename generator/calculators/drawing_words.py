"""What a drawing of a vine shows, in sentences, for those who do not see it and as its caption."""

from generator.calculators.hand_work import HandWork
from generator.calculators.layout_records import CANE, NEW_ARM, VineLayoutResult
from generator.calculators.say import Say
from generator.calculators.units import MM_PER_M
from generator.calculators.vine_stand import Stand


def describe_pruned(layout: VineLayoutResult, missing: int) -> list[Say]:
    """The vine after pruning."""
    says = [Say("drawing.after", [], [])]
    if layout.target == CANE and layout.rise_mm < 0:
        says.append(Say("drawing.describe_head_above", [float(-layout.rise_mm) / MM_PER_M], []))
    elif layout.target == CANE:
        says.append(Say("drawing.describe_head", [float(max(0, layout.rise_mm)) / MM_PER_M], []))
    elif layout.target == NEW_ARM:
        says.append(Say("drawing.describe_new_arm", [float(layout.arms), float(layout.arm_mm) / MM_PER_M], []))
    else:
        says.append(Say("drawing.describe_arms", [float(layout.arms), float(layout.arm_mm) / MM_PER_M], []))
    if len(layout.spurs) > 0 and max(layout.spurs) == min(layout.spurs):
        says.append(Say("drawing.describe_spurs_alike", [float(len(layout.spurs)), float(layout.spurs[0])], []))
    elif len(layout.spurs) > 0:
        says.append(Say("drawing.describe_spurs", [float(len(layout.spurs)), float(min(layout.spurs)), float(max(layout.spurs))], []))
    if len(layout.canes) > 0:
        says.append(Say("drawing.describe_canes", [float(len(layout.canes)), float(max(layout.canes))], []))
    if len(layout.renewals) > 0:
        says.append(Say("drawing.describe_renewals", [float(len(layout.renewals)), float(layout.renewals[0])], []))
    return says + spread(missing) + behind(layout.arms > 2 or len(layout.renewals) > 2)


def describe_standing(layout: VineLayoutResult, stand: Stand, missing: int, canes: int, work: HandWork) -> list[Say]:
    """The vine before pruning, and how many cuts it takes."""
    says = [Say("drawing.before", [], [])]
    if stand.on_cordon:
        says.append(Say("drawing.describe_cordon_before", [float(stand.positions), float(stand.arms)], []))
    else:
        says.append(Say("drawing.describe_head_before", [float(canes)], []))
    says.append(Say("drawing.describe_cuts", [float(work.cuts)], []))
    if stand.assumed:
        says.append(Say("drawing.assumed", [], []))
    return says + spread(missing) + behind(stand.arms > 2 or canes > 2)


def spread(missing: int) -> list[Say]:
    """That it is not known which positions are missing."""
    if missing > 0:
        return [Say("drawing.describe_missing", [float(missing)], [])]
    return []


def behind(more: bool) -> list[Say]:
    """That more stands behind what is drawn."""
    if more:
        return [Say("drawing.behind", [], [])]
    return []
