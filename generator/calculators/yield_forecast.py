"""What crop a node number should give: the yield chain forwards.

kg per vine = N x burst x h x u x w + Z x u0 x w0; t per hectare = kg per vine x bearing vines per hectare / 1000; see
yield_chain. Nothing is taken off for losses after set: the bunch weight is the weight at harvest.
"""

from dataclasses import dataclass

from generator.calculators.facts import Maybe
from generator.calculators.forecast_records import YieldForecastInputs, YieldForecastResult, YieldForecastValues
from generator.calculators.fruit_form import BY_NODE, form_of
from generator.calculators.fruit_records import bearers_of, coverage_of, dissection_of, limits_of, spring_of
from generator.calculators.say import Say
from generator.calculators.units import KG_PER_T
from generator.calculators.yield_chain import Chain, Counts, chain, chain_working, covers_note, cvs_of, is_extrapolated, measured_note
from generator.calculators.yield_spread import Interval, Limits, interval_of, season_share_pct, share_pct, spread_of
from generator.calculators.yield_told import spread_notes


@dataclass(frozen=True)
class Crop:
    """The crop of a node number by the chain, whatever form it stands on: per bearing vine and per hectare with its interval, what was
    worked out and what there is to know."""

    count_shoots: float
    bunches: float
    kg_per_vine: float
    t_per_ha: float
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


def yield_forecast(inputs: YieldForecastInputs, values: YieldForecastValues) -> YieldForecastResult:
    """The crop of a node number, with its interval. Raises ValueError when budburst is over 100 %, or when the form that is to be used
    lacks its counts."""
    limits = limits_of(values)
    form = form_of(inputs.fruit_from, spring_of(inputs), inputs.bunches_per_shoot, dissection_of(inputs), bearers_of(values))
    found = crop_of_nodes(inputs.nodes, form.counts, limits)
    cvs = cvs_of(form.counts)
    shares = [share_pct(cv, cvs, limits) for cv in cvs]
    others = [Say("yield_forecast.other_form", [crop_of_nodes(inputs.nodes, counts, limits).t_per_ha], []) for counts in form.other]
    counted = [note for note in found.notes if form.used != BY_NODE or note.id != "yield_chain.measured_where"]
    return YieldForecastResult(
        found.count_shoots,
        found.bunches,
        found.kg_per_vine,
        found.t_per_ha,
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
        found.headline,
        form.working + found.working,
        form.notes + others + counted + spread_notes(cvs, limits, coverage_of(values)),
    )


def crop_of_nodes(nodes: float, counts: Counts, limits: Limits) -> Crop:
    """The crop of a node number, for whoever has the counts together. Raises ValueError when budburst is over 100 %."""
    links = chain(counts)
    kg = nodes * links.kg_per_node + links.other_kg
    tonnes = kg * counts.bearing_vines_per_ha / KG_PER_T
    interval = interval_of(tonnes, spread_of(cvs_of(counts), limits))
    return Crop(
        nodes * links.shoots_per_node,
        nodes * links.bunches_per_node + links.other_bunches,
        kg,
        tonnes,
        interval.sampling_low,
        interval.sampling_high,
        interval.season_low,
        interval.season_high,
        interval.low,
        interval.high,
        is_extrapolated(nodes, counts.nodes_left, limits.extrapolation_limit_pct),
        Say("yield_forecast.headline", [nodes, tonnes, kg], []),
        working_of(nodes, counts, links, kg, tonnes),
        interval_notes(interval, limits) + [measured_note(nodes, counts.nodes_left, limits.extrapolation_limit_pct)],
    )


def working_of(nodes: float, counts: Counts, links: Chain, kg: float, tonnes: float) -> list[Say]:
    """The formula in words and with the numbers, line by line."""
    lines = [Say("yield_forecast.formula", [], [])] + chain_working(links, counts)
    if links.other_bunches > 0.0:
        lines.append(Say("yield_forecast.kg_with_others", [nodes, links.kg_per_node, links.other_kg, kg], []))
    else:
        lines.append(Say("yield_forecast.kg", [nodes, links.kg_per_node, kg], []))
    lines.append(Say("yield_forecast.tonnes", [kg, counts.bearing_vines_per_ha, tonnes], []))
    return lines


def interval_notes(interval: Interval, limits: Limits) -> list[Say]:
    """The interval, each of its causes alone where there are two, and what is in it."""
    notes = [Say("yield_forecast.interval", [interval.low, interval.high, limits.interval_level_pct], [])]
    if interval.sampling_low.ok:
        notes.append(Say("yield_forecast.season_alone", [interval.season_low, interval.season_high], []))
        notes.append(Say("yield_forecast.counts_alone", [interval.sampling_low.number, interval.sampling_high.number], []))
    return notes + [covers_note(interval.sampling_low.ok, limits)]
