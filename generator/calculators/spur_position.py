"""A spur position in winter: which cane stays, where to cut, how many nodes, and how a position that has crept comes down again.

Agronomy, section 3 (S1 to S21). The rows are decision tables (rules/decisions/spur_choice.yml and those beside it); here canes are
sorted one by one, the height is divided by the grower's limit, and the answers become nodes, steps and a drawing. See spur_canes.py,
spur_choosing.py, spur_words.py and drawing_spur.py. Evidence: sl-06, sl-07, dis-06, cs-17, D16, D28 to D30.
"""

from dataclasses import dataclass

from generator.calculators.answer import Reason
from generator.calculators.drawing_shapes import Drawing
from generator.calculators.drawing_spur import draw_spur
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.spur_canes import LEVEL, LOW, LOWER, TOP, UPPER, Cane, cane_reasons, sorted_canes, told_lines
from generator.calculators.spur_choosing import Place, chosen_of
from generator.calculators.spur_cuts import Cuts, cuts_of
from generator.calculators.spur_words import headline_of, height_lines, notes_of, reasons_of_choice, steps_of
from generator.calculators.tables import Table


@dataclass(frozen=True)
class SpurPositionInputs:
    """One position: height and limit in cm, the state of each cane and the way it points (places of their choices), thickness in mm
    where it was measured, what stands beside it in times of the spacing of positions, and how it grew."""

    spur_height_cm: float
    spur_height_limit_cm: float
    lower_cane_state: int
    lower_cane_mm: Maybe
    upper_cane_state: int
    upper_cane_mm: Maybe
    low_cane_state: int
    low_cane_mm: Maybe
    arm_beneath: int
    position_growth: int
    two_year_wood_mm: Maybe
    lower_cane_points: int
    upper_cane_points: int
    canopy_form: int
    top_cane_state: int
    top_cane_mm: Maybe
    top_cane_points: int
    winters_tried: int
    creeping_positions_pct: float
    neighbour_emptied: bool
    nearest_position_spacings: float
    lower_of_pair: Maybe
    gap_beside_spacings: float
    position_lags: bool
    long_spurs_planned: bool
    spring_frost_risk: int


@dataclass(frozen=True)
class SpurPositionValues:
    """Rise of a position in a year, cut over the last node (all cm), dry stub in times of the thickness, and the tables."""

    spur_rise_cm: float
    cut_over_node_low_cm: float
    cut_over_node_high_cm: float
    stub_times_low: float
    stub_times_high: float
    tables: list[Table]


@dataclass(frozen=True)
class SpurPositionResult:
    """Nodes on each cane (0: it goes; left open while a fact is missing or the arm comes first), the height in times of the limit,
    winters until the limit, and the dry stub in mm where older wood comes off. steps are the work of this winter."""

    nodes_lower: Maybe
    nodes_upper: Maybe
    nodes_top: Maybe
    nodes_low: Maybe
    nodes_position: Maybe
    height_ratio: float
    winters_to_limit: Maybe
    stub_low_mm: Maybe
    stub_high_mm: Maybe
    drawing: Drawing
    headline: Say
    steps: list[Say]
    reasons: list[Reason]
    working: list[Say]
    notes: list[Say]


def spur_position(inputs: SpurPositionInputs, values: SpurPositionValues) -> SpurPositionResult:
    """What to do with one position. Raises ZeroDivisionError when the limit is 0."""
    canes = sorted_canes(values.tables, canes_of(inputs), inputs.canopy_form)
    place = place_of(inputs)
    chosen = chosen_of(values.tables, place, canes)
    cuts = cuts_of(values.tables, inputs.spring_frost_risk, inputs.two_year_wood_mm, chosen, canes)
    over = Cuts(values.cut_over_node_low_cm, values.cut_over_node_high_cm, values.stub_times_low, values.stub_times_high)
    room = (inputs.spur_height_limit_cm - inputs.spur_height_cm) / values.spur_rise_cm
    stub = Maybe(cuts.old and inputs.two_year_wood_mm.ok, inputs.two_year_wood_mm.number)
    return SpurPositionResult(
        Maybe(chosen.known, chosen.nodes[LOWER]),
        Maybe(chosen.known, chosen.nodes[UPPER]),
        Maybe(chosen.known, chosen.nodes[TOP]),
        Maybe(chosen.known, chosen.nodes[LOW]),
        Maybe(chosen.known, chosen.nodes[LOWER] + chosen.nodes[UPPER] + chosen.nodes[TOP] + chosen.nodes[LOW]),
        place.height_ratio,
        Maybe(room >= 0.0, room),
        Maybe(stub.ok, stub.number * values.stub_times_low),
        Maybe(stub.ok, stub.number * values.stub_times_high),
        draw_spur(canes, chosen, inputs.spur_height_cm),
        headline_of(canes, chosen),
        steps_of(canes, chosen, cuts, over, inputs.two_year_wood_mm),
        reasons_of_choice(chosen, cuts, cane_reasons(canes)),
        height_lines(inputs.spur_height_cm, inputs.spur_height_limit_cm, chosen, Maybe(room >= 0.0, room), values.spur_rise_cm) + told_lines(canes),
        notes_of(canes, chosen, cuts, place),
    )


def canes_of(inputs: SpurPositionInputs) -> list[Cane]:
    """The canes: lower, upper, third, and the one from the arm, which may point anywhere, since it is led up from where it stands."""
    return [
        Cane(inputs.lower_cane_state, inputs.lower_cane_mm, inputs.lower_cane_points, "fact.lower_cane_state", "fact.lower_cane_mm"),
        Cane(inputs.upper_cane_state, inputs.upper_cane_mm, inputs.upper_cane_points, "fact.upper_cane_state", "fact.upper_cane_mm"),
        Cane(inputs.top_cane_state, inputs.top_cane_mm, inputs.top_cane_points, "fact.top_cane_state", "fact.top_cane_mm"),
        Cane(inputs.low_cane_state, inputs.low_cane_mm, LEVEL, "fact.low_cane_state", "fact.low_cane_mm"),
    ]


def place_of(inputs: SpurPositionInputs) -> Place:
    """The position itself."""
    return Place(
        inputs.arm_beneath,
        inputs.spur_height_cm / inputs.spur_height_limit_cm,
        inputs.creeping_positions_pct,
        inputs.winters_tried,
        inputs.neighbour_emptied,
        inputs.nearest_position_spacings,
        inputs.lower_of_pair,
        inputs.gap_beside_spacings,
        inputs.position_growth,
        inputs.position_lags,
        inputs.long_spurs_planned,
    )
