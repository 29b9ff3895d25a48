"""The plan's last parts: the crop to expect from the node number, and where the nodes go."""

from generator.calculators.drawing_shapes import Drawing, no_drawing
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.facts import Facts, known, maybe, missing, number
from generator.calculators.layout_records import TARGETS, VineLayoutInputs, VineLayoutResult, VineLayoutValues
from generator.calculators.plan_counts import limits_of, spring_counts
from generator.calculators.plan_nodes import FORMING, NODES
from generator.calculators.plan_records import BlockPlanValues, Named, Part, choice_of, first_of, found, is_settled, known_of, rests_of, status_of, waiting
from generator.calculators.plan_system import SYSTEM
from generator.calculators.say import Say
from generator.calculators.units import mm
from generator.calculators.vine_layout import vine_layout
from generator.calculators.yield_forecast import YieldForecastResult, crop_of_nodes

FORECAST: str = "forecast"
LAYOUT: str = "lay_out"
LAYOUT_FACTS: list[str] = ["vine_spacing_m", "curtains", "tip_gap_m", "internode_cm", "head_below_wire_cm", "first_spur_from_head_m", "wire_height_m"]
MEASURED: list[str] = ["live_spur_positions_per_vine", "cordon_arms", "arm_length_m"]


def forecast(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """The crop that the chosen number should give."""
    nodes = found(earlier, "nodes")
    if not nodes.ok:
        return waiting(FORECAST, NODES, facts, [], Say("plan.forecast_open", [], []))
    result = crop_of(facts, values, earlier, nodes.number)
    rests_on = rests_of(earlier, NODES)
    return Part(
        id=FORECAST,
        stage=NODES,
        ready=True,
        settled=True,
        choice="",
        possible=[],
        uses=["yield_forecast"],
        needs=[],
        ask_next="",
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=result.headline,
        numbers=[
            Named("kg_per_vine", result.kg_per_vine),
            Named("t_per_ha", result.t_per_ha),
            Named("t_per_ha_low", result.low),
            Named("t_per_ha_high", result.high),
            Named("count_shoots", result.count_shoots),
            Named("bunches", result.bunches),
        ],
        lines=result.working,
        notes=result.notes,
        sources=[],
        cautions=[],
    )


def crop_of(facts: Facts, values: BlockPlanValues, earlier: list[Part], nodes: float) -> YieldForecastResult:
    """The forecast for a node number."""
    return crop_of_nodes(nodes, spring_counts(facts, earlier), limits_of(values))


def layout_of(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> VineLayoutResult:
    """The layout of the chosen number for the chosen target; all that it asks must be known."""
    inputs = VineLayoutInputs(
        int(found(earlier, "nodes").number),
        choice_of(earlier, SYSTEM),
        int(number(facts, "curtains")),
        number(facts, "vine_spacing_m"),
        number(facts, "tip_gap_m"),
        number(facts, "first_spur_from_head_m"),
        number(facts, "head_below_wire_cm"),
        number(facts, "internode_cm"),
        maybe(facts, "cordon_arms"),
        maybe(facts, "arm_length_m"),
        maybe(facts, "live_spur_positions_per_vine"),
        maybe(facts, "canes_wanted_per_vine"),
        maybe(facts, "nodes_per_cane_wanted"),
    )
    return vine_layout(
        inputs,
        VineLayoutValues(
            values.nodes_per_spur_most,
            values.nodes_per_long_spur_most,
            values.nodes_per_cane_most,
            values.canes_per_vine_most,
            values.canes_beside_spurs,
            values.nodes_per_renewal_spur,
            values.spur_spacing_m,
        ),
    )


def can_lay_out(facts: Facts, earlier: list[Part]) -> bool:
    """True when target, node number and all lengths are known and leave a wire."""
    if choice_of(earlier, SYSTEM) not in TARGETS or not found(earlier, "nodes").ok:
        return False
    return len(missing(facts, LAYOUT_FACTS)) == 0 and number(facts, "tip_gap_m") < number(facts, "vine_spacing_m")


def lay_out(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Part:
    """Where the nodes go. Live spur positions are asked for, but a layout on new arms is shown without them. An answer on the system
    that asks for no layout (new vines, new trunks) gives none, whatever else is known."""
    target = choice_of(earlier, SYSTEM)
    if target == FORMING:
        return waiting(LAYOUT, LAYOUT, facts, [], Say("plan.layout_forming", [], []))
    if target == "" and is_settled(earlier, SYSTEM):
        return waiting(LAYOUT, LAYOUT, facts, [], Say("plan.layout_none", [], []))
    if not can_lay_out(facts, earlier):
        asked = LAYOUT_FACTS if target in TARGETS and found(earlier, "nodes").ok else []
        return waiting(LAYOUT, LAYOUT, facts, asked, Say("plan.layout_open", [], []))
    layout = layout_of(facts, values, earlier)
    needs: list[str] = []
    if layout.positions_assumed:
        needs = ["live_spur_positions_per_vine"]
    rests_on = rests_of(earlier, SYSTEM) + rests_of(earlier, NODES)
    for fact in known_of(facts, LAYOUT_FACTS + MEASURED + ["canes_wanted_per_vine", "nodes_per_cane_wanted", "good_canes_per_vine"]):
        if fact not in rests_on:
            rests_on = rests_on + [fact]
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
        numbers=numbers_of(layout),
        lines=layout.working,
        notes=notes_of(facts, values, earlier, layout),
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
    good = maybe(facts, "good_canes_per_vine")
    if good.ok and good.number < float(len(layout.canes)):
        notes = notes + [Say("plan.too_few_good_canes", [float(len(layout.canes)), good.number], [])]
    if layout.rise_mm < 0 and len(layout.renewals) > 0:
        notes = notes + [Say("plan.head_above_wire", [-number(facts, "head_below_wire_cm")], [])]
    if known(facts, "arm_length_m") and mm(number(facts, "arm_length_m")) > mm(number(facts, "vine_spacing_m")):
        notes = notes + [Say("plan.arm_too_long", [number(facts, "arm_length_m"), number(facts, "vine_spacing_m")], [])]
    return notes


def drawing_of(facts: Facts, values: BlockPlanValues, earlier: list[Part]) -> Drawing:
    """The pruned vine to scale, or no drawing while the layout is open."""
    if not can_lay_out(facts, earlier):
        return no_drawing()
    layout = layout_of(facts, values, earlier)
    return draw_vine(layout, mm(number(facts, "wire_height_m")), mm(number(facts, "vine_spacing_m")), mm(number(facts, "tip_gap_m")))
