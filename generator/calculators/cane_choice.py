"""Up to eight canes of one vine: keep, reserve or reject each; which to lay down, which to cut to a spur, so that next winter has its wood.

Agronomy, section 4 (K1 to K24). Rows are decision tables (rules/decisions/cane_verdict.yml and those beside it). See cane_judging.py for
one cane, cane_picking.py for the choice among them, cane_words.py for what is said. Evidence: cs-01 to cs-18, dis-04, bp-30, hg-01, hg-05.
"""

import math
from dataclasses import dataclass

from generator.calculators.answer import Reason
from generator.calculators.cane_judging import KEEP, REJECT, CandidateCane, Judged, Wire, judged, room_for
from generator.calculators.cane_layout import wire_for
from generator.calculators.cane_picking import Picked, Wanted, has_spur, low_one_is_better, pick
from generator.calculators.cane_words import LEAVE, CaneAnswer, Laid, answers_of, headline_of, notes_of, steps_of, working_of
from generator.calculators.cane_windows import Windows, windows_of
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, Figure
from generator.calculators.say import Say
from generator.calculators.table_answers import Told, ask, given, given_yes, joined, no_facts
from generator.calculators.tables import Table
from generator.calculators.units import PER_CENT, mm


@dataclass(frozen=True)
class CaneChoiceInputs:
    """The canes, and of the vine: canes and renewal spurs wanted, nodes wanted on a cane, spacing and gap (m), head under the wire and
    internode (cm) for canes that were not measured, dead primaries and blind nodes in the middle of canes (%), dangers, and a mark."""

    rows: list[CandidateCane]
    canes_wanted_per_vine: int
    vine_spacing_m: float
    tip_gap_m: float
    head_below_wire_cm: float
    internode_cm: float
    renewal_spurs_wanted: Maybe
    nodes_per_cane_wanted: Maybe
    dead_primary_pct: Maybe
    blind_mid_cane_pct: float
    spring_frost_risk: int
    severe_winters: bool
    vine_marked: bool


@dataclass(frozen=True)
class CaneChoiceValues:
    """Nodes at most on a ripe and on a poor cane, nodes of a renewal spur, spurs in the place of canes that are lacking, canes compared at
    most, every author's limits of thickness (mm) and internodes (cm), and the tables."""

    nodes_per_cane_most: float
    nodes_per_cane_poor: float
    nodes_per_renewal_spur: float
    spurs_for_missing_canes: float
    candidate_canes_most: float
    cane_diameter_least_mm: list[Figure]
    cane_diameter_most_mm: list[Figure]
    cane_internode_least_cm: list[Figure]
    cane_internode_most_cm: list[Figure]
    tables: list[Table]


@dataclass(frozen=True)
class CaneChoiceResult:
    """Counts of canes by verdict and by use, nodes, and the crop in % of the planned one by its nodes (left open while all
    of these are there); canes: what to do with each, in the order entered; steps are the work at the vine."""

    canes_kept: int
    canes_in_reserve: int
    canes_rejected: int
    canes_laid: int
    renewal_spurs: int
    other_spurs: int
    reserve_canes: int
    cane_nodes: int
    spur_nodes: int
    nodes: int
    planned_nodes: int
    crop_pct: Maybe
    canes: list[CaneAnswer]
    compared: list[Compared]
    headline: Say
    steps: list[Say]
    reasons: list[Reason]
    working: list[Say]
    notes: list[Say]


def row_faults(row: CandidateCane) -> list[Say]:
    """What is wrong between the columns of a row: nothing, since every cane can be."""
    return []


def cane_choice(inputs: CaneChoiceInputs, values: CaneChoiceValues) -> CaneChoiceResult:
    """The choice at one vine. Raises ValueError when there are no canes or too many, or when lengths leave no wire."""
    if len(inputs.rows) == 0:
        raise ValueError("enter at least one cane")
    if len(inputs.rows) > math.floor(values.candidate_canes_most):
        raise ValueError("more canes than can be compared at one vine were entered")
    tables = values.tables
    most = inputs.nodes_per_cane_wanted.number if inputs.nodes_per_cane_wanted.ok else values.nodes_per_cane_most
    length = wire_for(inputs.canes_wanted_per_vine, mm(inputs.vine_spacing_m), mm(inputs.tip_gap_m))
    poor = min(most, values.nodes_per_cane_poor)
    on_spur = math.floor(values.nodes_per_renewal_spur)
    wire = Wire(length, inputs.head_below_wire_cm, inputs.internode_cm, inputs.dead_primary_pct.number, most, poor, on_spur)
    canes = [judged(tables, place + 1, cane, wire) for place, cane in enumerate(inputs.rows)]
    danger = given_yes(given(no_facts(), "spring_frost_risk", float(inputs.spring_frost_risk)), "severe_winters", inputs.severe_winters)
    reserve = ask(tables, "reserve_cane_left", danger)
    spurs = math.floor(inputs.renewal_spurs_wanted.number) if inputs.renewal_spurs_wanted.ok else inputs.canes_wanted_per_vine
    wanted = Wanted(inputs.canes_wanted_per_vine, spurs, math.floor(values.spurs_for_missing_canes), reserve.outcome == LEAVE)
    picked = pick(canes, wanted)
    told = told_of(tables, inputs, canes, picked, wanted, reserve)
    planned = wanted.canes * min(math.floor(most), room_for(length, wire.head_cm, 0.0, wire.internode_cm)) + spurs * on_spur
    laid = Laid(canes, picked, [bend_of(tables, canes[k].nodes, inputs.blind_mid_cane_pct) for k in picked.laid], on_spur, told)
    return result_of(inputs, values, laid, wanted, wire, planned)


def told_of(tables: list[Table], inputs: CaneChoiceInputs, canes: list[Judged], picked: Picked, wanted: Wanted, reserve: Told) -> list[Told]:
    """What the tables say of the vine: the mark, enough canes, wood for next winter, the reserve cane. What would be said of a cane that is
    not there is left out: where a reserve cane is wanted and none is left, and of the spurs of laid canes where none is laid."""
    laid = given(given(no_facts(), "canes_laid", float(len(picked.laid))), "canes_short", float(wanted.canes - len(picked.laid)))
    spurs = given(no_facts(), "renewal_spurs_wanted", float(wanted.spurs))
    spurs = given(spurs, "renewal_spurs_chosen", float(len(picked.spurs)))
    spurs = given(spurs, "canes_without_spur", float(len([k for k in picked.laid if not has_spur(canes, picked.spurs, k, wanted)])))
    spurs = given_yes(spurs, "low_cane_is_spur", low_one_is_better(canes, picked))
    marked = ask(tables, "marked_vine", given_yes(no_facts(), "vine_marked", inputs.vine_marked))
    told = [marked, ask(tables, "cane_shortage", given(laid, "spurs_cut", float(len(picked.spurs + picked.others))))]
    if len(picked.laid) > 0 or len(picked.spurs + picked.others) == 0:
        told.append(ask(tables, "renewal_wood", spurs))
    return told + ([reserve] if not wanted.reserve or len(picked.spare) > 0 else [])


def bend_of(tables: list[Table], nodes: int, blind_pct: float) -> Told:
    """Flat or arched."""
    return ask(tables, "cane_bend", given(given(no_facts(), "cane_nodes_left", float(nodes)), "blind_mid_cane_pct", blind_pct))


def result_of(inputs: CaneChoiceInputs, values: CaneChoiceValues, laid: Laid, wanted: Wanted, wire: Wire, planned: int) -> CaneChoiceResult:
    """The outputs."""
    answers = answers_of(laid)
    picked = laid.picked
    on_canes = sum([laid.canes[k].nodes for k in picked.laid])
    on_spurs = sum([answers[k].nodes for k in picked.spurs + picked.others])
    kept = len([one for one in laid.canes if one.verdict.outcome == KEEP])
    rejected = len([one for one in laid.canes if one.verdict.outcome == REJECT])
    crop = Maybe(on_canes + on_spurs < planned, min(PER_CENT, PER_CENT * float(on_canes + on_spurs) / float(max(1, planned))))
    reasons: list[Reason] = []
    for told in laid.told + laid.bends:
        reasons = joined(reasons, told)
    windows = Windows(values.cane_diameter_least_mm, values.cane_diameter_most_mm, values.cane_internode_least_cm, values.cane_internode_most_cm)
    return CaneChoiceResult(
        canes_kept=kept,
        canes_in_reserve=len(laid.canes) - kept - rejected,
        canes_rejected=rejected,
        canes_laid=len(picked.laid),
        renewal_spurs=len(picked.spurs),
        other_spurs=len(picked.others),
        reserve_canes=len(picked.spare),
        cane_nodes=on_canes,
        spur_nodes=on_spurs,
        nodes=on_canes + on_spurs,
        planned_nodes=planned,
        crop_pct=crop,
        canes=answers,
        compared=windows_of(inputs.rows, windows),
        headline=headline_of(laid, wanted.canes, on_canes + on_spurs),
        steps=steps_of(laid, wanted.canes, crop),
        reasons=reasons,
        working=working_of(laid, wire, windows),
        notes=notes_of(laid, inputs.dead_primary_pct.ok, wanted),
    )
