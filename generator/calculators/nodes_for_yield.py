"""How many nodes to keep on each bearing vine for the crop that is wanted: the yield chain backwards.

N = (kg wanted per vine - Z x u0 x w0) / (burst x h x u x w); see yield_chain. This is the fruit's view alone: it neither
asks what the vine can carry nor what the canopy has room for, and it is no ceiling.
"""

from dataclasses import dataclass

from generator.calculators.counting import half_up, up
from generator.calculators.facts import Maybe
from generator.calculators.fruit_form import BY_NODE, Form, form_of, nodes_of
from generator.calculators.fruit_records import bearers_of, coverage_of, dissection_of, limits_of, spring_of
from generator.calculators.nodes_records import NodesForYieldInputs, NodesForYieldResult, NodesForYieldValues, most_of
from generator.calculators.say import Say
from generator.calculators.units import G_PER_KG, KG_PER_T
from generator.calculators.yield_chain import Chain, Counts, amount, chain, chain_working, covers_note, cvs_of, is_extrapolated, measured_note
from generator.calculators.yield_spread import Interval, Limits, interval_of, season_share_pct, share_pct, spread_of
from generator.calculators.yield_told import absurd_notes, spread_notes


@dataclass(frozen=True)
class CropNodes:
    """Nodes per bearing vine for a crop by the chain, whatever form it stands on: exact, whole, the ends of the range (exact), what was
    worked out and what there is to know."""

    kg_per_vine: float
    nodes_exact: float
    nodes: int
    sampling_low: Maybe
    sampling_high: Maybe
    season_low: float
    season_high: float
    low: float
    high: float
    extrapolated: bool
    headline: Say
    working: list[Say]
    notes: list[Say]


def nodes_for_yield(inputs: NodesForYieldInputs, values: NodesForYieldValues) -> NodesForYieldResult:
    """Nodes for the crop wanted. Raises ValueError when no vine bears, when a node would give nothing, or when the form that is to be
    used lacks its counts."""
    limits = limits_of(values)
    form = form_of(inputs.fruit_from, spring_of(inputs), inputs.bunches_per_shoot, dissection_of(inputs), bearers_of(values))
    if not bears(form.counts):
        raise ValueError("a node would give next to nothing: look again at budburst, shoots, bunches and bunch weight")
    found = nodes_for_crop(inputs.target_yield_t_ha, form.counts, limits)
    cvs = cvs_of(form.counts)
    shares = [share_pct(cv, cvs, limits) for cv in cvs]
    absurd = absurd_notes(float(found.nodes), shoots_of(float(found.nodes), form.counts), canopy_m(inputs), most_of(values))
    told = form.notes + other_notes(inputs.target_yield_t_ha, form, limits) + bearer_notes(found, form)
    counted = [note for note in found.notes if form.used != BY_NODE or note.id != "yield_chain.measured_where"]
    return NodesForYieldResult(
        found.kg_per_vine,
        found.nodes_exact,
        found.nodes,
        bearers_for(found.nodes_exact, form),
        found.sampling_low,
        found.sampling_high,
        found.season_low,
        found.season_high,
        found.low,
        found.high,
        found.extrapolated,
        shares[0],
        shares[1],
        shares[2],
        shares[-1],
        season_share_pct(cvs, limits),
        form.promised,
        absurd[0] if len(absurd) > 0 else found.headline,
        form.working + found.working,
        told + counted + spread_notes(cvs, limits, coverage_of(values)),
    )


def bears(counts: Counts) -> bool:
    """True when a node gives a milligram or more; less is a slip, and asks for more nodes than can be counted."""
    return chain(counts).kg_per_node * G_PER_KG * G_PER_KG >= 1.0


def shoots_of(nodes: float, counts: Counts) -> float:
    """The shoots of so many nodes, with the others kept on the vine."""
    return nodes * chain(counts).shoots_per_node + amount(counts.noncount_shoots_kept)


def canopy_m(inputs: NodesForYieldInputs) -> Maybe:
    """Metres of leaf wall that one vine can have at most; left out where the spacing is not known."""
    walls = inputs.curtains.number if inputs.curtains.ok else 1.0
    return Maybe(inputs.vine_spacing_m.ok, walls * inputs.vine_spacing_m.number)


def other_notes(target_yield_t_ha: float, form: Form, limits: Limits) -> list[Say]:
    """What the form that is not used would ask for, where it can be reckoned."""
    able = [counts for counts in form.other if bears(counts)]
    return [Say("nodes_for_yield.other_form", [float(nodes_for_crop(target_yield_t_ha, counts, limits).nodes)], []) for counts in able]


def bearers_for(nodes: float, form: Form) -> Maybe:
    """The whole bearers whose nodes carry the crop, rounded up, since people lay whole canes; left out where none are reckoned."""
    if len(form.units) == 0:
        return Maybe(False, 0.0)
    return Maybe(True, float(up(nodes / float(nodes_of(form.units[0])))))


def bearer_notes(found: CropNodes, form: Form) -> list[Say]:
    """How many canes or spurs that is, and what they bear."""
    bearers = bearers_for(found.nodes_exact, form)
    if not bearers.ok or bearers.number < 1.0:
        return []
    unit = form.units[0]
    numbers = [bearers.number, float(unit.length), bearers.number * float(nodes_of(unit)), bearers.number * unit.bunches]
    if unit.on_cane:
        return [Say("nodes_for_yield.on_canes", numbers + [float(unit.renewal)], [])]
    return [Say("nodes_for_yield.on_spurs", numbers, [])]


def nodes_for_crop(target_yield_t_ha: float, counts: Counts, limits: Limits) -> CropNodes:
    """Nodes for the crop wanted, for whoever has the counts together. Raises ValueError when no vine bears or when a node
    would give nothing."""
    if counts.bearing_vines_per_ha <= 0.0:
        raise ValueError("there must be bearing vines")
    links = chain(counts)
    if links.kg_per_node <= 0.0:
        raise ValueError("budburst, shoots, bunches and bunch weight must all be above zero")
    kg_wanted = target_yield_t_ha * KG_PER_T / counts.bearing_vines_per_ha
    exact = nodes_to_bear(kg_wanted, links)
    nodes = half_up(exact)
    swing = interval_of(kg_wanted, spread_of(cvs_of(counts), limits))
    ends = in_nodes(swing, links)
    return CropNodes(
        kg_wanted,
        exact,
        nodes,
        ends.sampling_low,
        ends.sampling_high,
        ends.season_low,
        ends.season_high,
        ends.low,
        ends.high,
        is_extrapolated(float(nodes), counts.nodes_left, limits.extrapolation_limit_pct),
        Say("nodes_for_yield.headline", [float(nodes), target_yield_t_ha], []),
        working_of(target_yield_t_ha, counts, links, kg_wanted, exact),
        notes_of(counts, limits, kg_wanted, links, float(nodes), ends),
    )


def nodes_to_bear(kg: float, links: Chain) -> float:
    """Nodes that bear kg on one vine beside its other shoots; 0 when those bear it alone."""
    return max(0.0, (kg - links.other_kg) / links.kg_per_node)


def in_nodes(swing: Interval, links: Chain) -> Interval:
    """An interval of kg on one vine as the nodes that bear it."""
    low = Maybe(False, 0.0)
    high = Maybe(False, 0.0)
    if swing.sampling_low.ok:
        low = Maybe(True, nodes_to_bear(swing.sampling_low.number, links))
        high = Maybe(True, nodes_to_bear(swing.sampling_high.number, links))
    return Interval(
        low,
        high,
        nodes_to_bear(swing.season_low, links),
        nodes_to_bear(swing.season_high, links),
        nodes_to_bear(swing.low, links),
        nodes_to_bear(swing.high, links),
    )


def working_of(target_yield_t_ha: float, counts: Counts, links: Chain, kg_wanted: float, exact: float) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [
        Say("nodes_for_yield.formula", [], []),
        Say("nodes_for_yield.kg_wanted", [target_yield_t_ha, counts.bearing_vines_per_ha, kg_wanted], []),
    ]
    lines = lines + chain_working(links, counts)
    if links.other_kg > 0.0:
        lines.append(Say("nodes_for_yield.left_to_bear", [kg_wanted, links.other_kg, max(0.0, kg_wanted - links.other_kg)], []))
    lines.append(Say("nodes_for_yield.exact", [max(0.0, kg_wanted - links.other_kg), links.kg_per_node, exact], []))
    lines.append(Say("nodes_for_yield.whole", [exact, float(half_up(exact))], []))
    return lines


def notes_of(counts: Counts, limits: Limits, kg_wanted: float, links: Chain, nodes: float, ends: Interval) -> list[Say]:
    """The range and what it covers, whether the counts hold at this number, and what this view leaves out."""
    notes = [Say("nodes_for_yield.range", [ends.low, ends.high, limits.interval_level_pct], [])]
    if ends.sampling_low.ok:
        notes.append(Say("nodes_for_yield.season_alone", [ends.season_low, ends.season_high], []))
        notes.append(Say("nodes_for_yield.counts_alone", [ends.sampling_low.number, ends.sampling_high.number], []))
    notes.append(covers_note(ends.sampling_low.ok, limits))
    notes.append(measured_note(nodes, counts.nodes_left, limits.extrapolation_limit_pct))
    if kg_wanted <= links.other_kg:
        notes.append(Say("nodes_for_yield.others_bear_it", [links.other_kg, kg_wanted], []))
    notes.append(Say("nodes_for_yield.no_ceiling", [], []))
    return notes
