"""The plan's last part: where the nodes go, and the vine drawn."""

from generator.calculators.drawing_before import draw_before
from generator.calculators.drawing_shapes import Drawing, no_drawing
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.facts import Facts, known, maybe, number
from generator.calculators.layout_records import TARGETS, VineLayoutResult
from generator.calculators.plan_by_buds import longest_of
from generator.calculators.plan_forecast import crop_of
from generator.calculators.plan_kinds import laid_notes
from generator.calculators.plan_nodes import NODES
from generator.calculators.plan_records import BlockPlanValues, Named, Part, first_of, found, known_of, not_asked, rests_of, status_of, waiting
from generator.calculators.plan_system import FORMING, NONE, SYSTEM, target_of
from generator.calculators.plan_vine import LENGTHS, MEASURED, can_be_laid, vine_of
from generator.calculators.say import Say
from generator.calculators.units import mm
from generator.calculators.vine_stand import stand_of

LAYOUT: str = "lay_out"


def layout_of(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> VineLayoutResult:
    """The layout of the chosen number for the chosen target; all that it asks must be known."""
    target = target_of(earlier)
    return vine_of(facts, values, target, int(found(earlier, "nodes").number), longest_of(facts, values, target))


def can_lay_out(facts: Facts, earlier: list[Part]) -> bool:
    """True when target, node number and all lengths are known and leave a wire."""
    return can_be_laid(facts, target_of(earlier)) and found(earlier, "nodes").ok


def lay_out(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Where the nodes go. Live spur positions are asked for, but a layout on new arms is shown without them. An answer on the system
    that asks for no layout (new vines, new trunks) gives none, whatever else is known."""
    target = target_of(earlier)
    if target == FORMING or target == NONE:
        says = "plan.layout_forming" if target == FORMING else "plan.layout_none"
        return not_asked(LAYOUT, LAYOUT, facts, rests_of(earlier, SYSTEM), Say(says, [], []))
    if not can_lay_out(facts, earlier):
        asked = LENGTHS if target in TARGETS and found(earlier, "nodes").ok else []
        return waiting(LAYOUT, LAYOUT, facts, asked, Say("plan.layout_open", [], []))
    layout = layout_of(facts, values, earlier)
    needs: list[str] = []
    if layout.positions_assumed:
        needs = ["live_spur_positions_per_vine"]
    rests_on = rests_of(earlier, SYSTEM) + rests_of(earlier, NODES)
    for fact in known_of(facts, LENGTHS + MEASURED + ["good_canes_per_vine"]):
        if fact not in rests_on:
            rests_on = rests_on + [fact]
    notes = notes_of(facts, values, earlier, layout) + laid_notes(facts, values, target, earlier)
    return Part(
        id=LAYOUT,
        stage=LAYOUT,
        ready=True,
        settled=len(needs) == 0,
        choice=layout.target,
        possible=[],
        uses=[],
        needs=needs,
        ask_next=first_of(needs),
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=layout.headline,
        numbers=numbers_of(layout) + [Named("t_per_ha_laid", crop_of(facts, values, earlier, float(layout.nodes)).t_per_ha)],
        lines=layout.working,
        notes=notes,
        sources=[],
        cautions=[],
    )


def numbers_of(layout: VineLayoutResult) -> list[Named]:
    """What the crew counts and measures."""
    return [
        Named("cane_nodes", float(layout.cane_nodes)),
        Named("spur_nodes", float(layout.spur_nodes)),
        Named("renewal_nodes", float(layout.renewal_nodes)),
        Named("nodes_laid", float(layout.nodes)),
        Named("canes", float(len(layout.canes))),
        Named("spurs", float(len(layout.spurs))),
        Named("renewal_spurs", float(len(layout.renewals))),
        Named("wire_mm", float(layout.wire_mm)),
        Named("short_nodes", float(layout.short_nodes)),
        Named("wire_short_mm", float(layout.wire_short_mm)),
    ]


def notes_of(facts: Facts, values: BlockPlanValues, earlier: list[Part], layout: VineLayoutResult) -> list[Say]:
    """The layout's own notes; the crop as laid out where it differs from the plan; a head too high for canes."""
    notes = layout.notes
    planned = found(earlier, "nodes").number
    if float(layout.nodes) != planned:
        notes = notes + [Say("plan.crop_as_laid", [float(layout.nodes), crop_of(facts, values, earlier, float(layout.nodes)).t_per_ha], [])]
    law = found(earlier, "legal_most")
    if law.ok and float(layout.nodes) > law.number:
        notes = notes + [Say("plan.laid_over_law", [], [])]
    good = maybe(facts, "good_canes_per_vine")
    if good.ok and good.number < float(len(layout.canes)):
        notes = notes + [Say("plan.too_few_good_canes", [float(len(layout.canes)), good.number], [])]
    if layout.rise_mm < 0 and len(layout.renewals) > 0:
        notes = notes + [Say("plan.head_above_wire", [-number(facts, "head_below_wire_cm")], [])]
    if known(facts, "arm_length_m") and mm(number(facts, "arm_length_m")) > mm(number(facts, "vine_spacing_m")):
        notes = notes + [Say("plan.arm_too_long", [number(facts, "arm_length_m"), number(facts, "vine_spacing_m")], [])]
    return notes


def drawings_of(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> list[Drawing]:
    """The vine as it stands and as it is pruned, to scale; without shapes while the layout is open."""
    if not can_lay_out(facts, earlier):
        return [no_drawing(), no_drawing()]
    layout = layout_of(facts, values, earlier)
    stand = stand_of(facts, layout)
    wire = mm(number(facts, "wire_height_m"))
    space = mm(number(facts, "vine_spacing_m"))
    gap = mm(number(facts, "tip_gap_m"))
    return [draw_before(layout, stand, wire, space, gap), draw_vine(layout, stand, wire, space, gap)]
