"""How many nodes to leave when winter has killed buds: what is dead is replaced, once.

N_cut = N_plan x V_plan / V_now with V = P + s S: P the share of nodes whose primary lives, S the share where only a
secondary lives, s the crop of its shoot as a share of a primary's. V_plan is 1 where the number wanted holds no deaths; a number
that holds the deaths of this winter already is refused, so that a death is counted once. Above the severe limit there is no
number. (agronomy: evidence bi-01 to bi-20, pbn-06; sampling in two steps: bi-13. Interval: Wilson.)
"""

from dataclasses import dataclass

from generator.calculators.counting import up
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared
from generator.calculators.injury_bands import Bands, by_cornell, by_northern, by_purdue, by_sheet, line_of
from generator.calculators.injury_words import Sample, headline_of, notes_of, working_of
from generator.calculators.proportions import wilson
from generator.calculators.quantiles import normal_quantile
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT, share

NO_DEATHS: int = 0
ORDINARY: int = 1


@dataclass(frozen=True)
class InjuryAdjustmentInputs:
    """Nodes wanted per vine and which deaths they hold; buds cut, and of these primaries alive and secondaries alone; s; what lives
    after an ordinary winter (%); for the room: burst of living nodes (%), curtains, spacing (m), shoots per metre, non-count shoots."""

    wanted_nodes: float
    buds_cut_for_injury: int
    buds_primary_alive: int
    buds_secondary_only: int
    secondary_share: float
    deaths_in_wanted_nodes: int
    ordinary_primary_alive_pct: Maybe
    ordinary_secondary_only_pct: Maybe
    living_budburst_pct: float
    curtains: int
    vine_spacing_m: Maybe
    shoots_per_m_high: float
    noncount_shoots_kept: Maybe


@dataclass(frozen=True)
class InjuryAdjustmentValues:
    """The severe limit (%), the published bands (%; see injury_bands), the two steps of sampling (buds), the interval's level (%)."""

    severe_injury_pct: float
    injury_cornell_from_pct: float
    injury_cornell_to_pct: float
    injury_northern_above_pct: float
    injury_purdue_normal_pct: float
    injury_purdue_light_pct: float
    injury_purdue_heavy_printed_pct: float
    injury_purdue_heavy_pct: float
    injury_purdue_light_extra_pct: float
    injury_purdue_heavy_extra_pct: float
    injury_sheet_normal_pct: float
    injury_sheet_from_pct: float
    injury_sheet_to_pct: float
    injury_first_buds: float
    injury_full_buds: float
    injury_level_pct: float


@dataclass(frozen=True)
class Planned:
    """What the number wanted counts on: the share of primaries alive, and V."""

    primary: float
    value: float


@dataclass(frozen=True)
class InjuryAdjustmentResult:
    """Primaries dead in % with Wilson's interval; nodes that replace them, exact and rounded up, without and with the crop of
    secondaries; nodes by each published rule; shoots on the last of the guide's own, and the most that the canopy takes. What has no
    number is left out. `compared` are the published rules, side by side."""

    mortality_pct: float
    mortality_low_pct: float
    mortality_high_pct: float
    nodes_replacing_exact: Maybe
    nodes_replacing: Maybe
    nodes_replacing_with_secondaries_exact: Maybe
    nodes_replacing_with_secondaries: Maybe
    nodes_cornell: Maybe
    nodes_purdue: Maybe
    nodes_table_grapes: Maybe
    shoots: Maybe
    shoots_most: Maybe
    headline: Say
    compared: list[Compared]
    working: list[Say]
    notes: list[Say]


def injury_adjustment(inputs: InjuryAdjustmentInputs, values: InjuryAdjustmentValues) -> InjuryAdjustmentResult:
    """The nodes to leave. Raises ValueError when more buds are alive than were cut, or a death would be counted twice."""
    sample = sample_of(inputs, values)
    plain = replacement(inputs.wanted_nodes, sample.plan_primary, sample.primary, sample.cut, sample.severe)
    with_secondaries = replacement(inputs.wanted_nodes, sample.plan_value, sample.value, sample.cut, sample.severe)
    bands = bands_of(values)
    cornell = by_cornell(inputs.wanted_nodes, sample.dead_pct, bands)
    purdue = by_purdue(inputs.wanted_nodes, sample.dead_pct, bands)
    sheet = by_sheet(inputs.wanted_nodes, sample.dead_pct, plain, bands)
    shoots = shoots_on(inputs, with_secondaries)
    most = shoots_most(inputs)
    return InjuryAdjustmentResult(
        sample.dead_pct,
        sample.low_pct,
        sample.high_pct,
        plain,
        whole(plain),
        with_secondaries,
        whole(with_secondaries),
        cornell.nodes,
        purdue.nodes,
        sheet.nodes,
        shoots,
        most,
        headline_of(sample, whole(with_secondaries), inputs.wanted_nodes),
        [
            line_of(Say("injury_adjustment.cornell", [], []), cornell),
            line_of(Say("injury_adjustment.purdue", [], []), purdue),
            line_of(Say("injury_adjustment.sheet", [], []), sheet),
            line_of(Say("injury_adjustment.northern", [], []), by_northern(inputs.wanted_nodes, sample.dead_pct, bands)),
        ],
        working_of(sample, inputs.wanted_nodes, inputs.secondary_share, plain, with_secondaries)
        + shoots_lines(inputs, whole(with_secondaries), shoots, most),
        notes_of(sample, inputs.wanted_nodes, whole(with_secondaries), shoots, most),
    )


def sample_of(inputs: InjuryAdjustmentInputs, values: InjuryAdjustmentValues) -> Sample:
    """The buds as counted, with their interval and value. Raises ValueError when they do not add up or are counted twice."""
    if inputs.buds_primary_alive + inputs.buds_secondary_only > inputs.buds_cut_for_injury:
        raise ValueError("more buds are alive than were cut: a bud counts as primary alive or as secondary only, never as both")
    cut = float(inputs.buds_cut_for_injury)
    dead = float(inputs.buds_cut_for_injury - inputs.buds_primary_alive)
    span = wilson(dead, cut, normal_quantile((1.0 + share(values.injury_level_pct)) / 2.0))
    primary = float(inputs.buds_primary_alive)
    planned = in_plan(inputs)
    dead_pct = dead * PER_CENT / cut
    return Sample(
        cut,
        primary,
        float(inputs.buds_secondary_only),
        primary + inputs.secondary_share * float(inputs.buds_secondary_only),
        planned.primary,
        planned.value,
        dead_pct,
        span.low * PER_CENT,
        span.high * PER_CENT,
        dead_pct > values.severe_injury_pct or primary <= 0.0,
        values.severe_injury_pct,
        values.injury_first_buds,
        values.injury_full_buds,
        values.injury_level_pct,
    )


def in_plan(inputs: InjuryAdjustmentInputs) -> Planned:
    """What the number wanted counts on: the share of primaries alive, and V. Raises ValueError when it holds this winter's
    deaths, or an ordinary winter's that nobody gives."""
    if inputs.deaths_in_wanted_nodes == NO_DEATHS:
        return Planned(1.0, 1.0)
    if inputs.deaths_in_wanted_nodes > ORDINARY:
        raise ValueError("the number wanted holds the deaths of this winter already: leave that number, nothing is added")
    if not inputs.ordinary_primary_alive_pct.ok:
        raise ValueError("the number wanted holds the deaths of an ordinary winter: give the primaries alive after one")
    primary = share(inputs.ordinary_primary_alive_pct.number)
    secondary = share(inputs.ordinary_secondary_only_pct.number) if inputs.ordinary_secondary_only_pct.ok else 0.0
    if primary <= 0.0 or primary + secondary > 1.0:
        raise ValueError("after an ordinary winter some primaries live, and with the secondaries alone they are at most 100 %")
    return Planned(primary, primary + inputs.secondary_share * secondary)


def replacement(wanted: float, planned: float, living: float, cut: float, severe: bool) -> Maybe:
    """N_plan x V_plan / V_now, where V_now = living / cut; no number for a severe injury."""
    if severe:
        return Maybe(False, 0.0)
    return Maybe(True, wanted * planned * cut / living)


def whole(exact: Maybe) -> Maybe:
    """Rounded up, as a replacement is; left out where there is none."""
    return Maybe(True, float(up(exact.number))) if exact.ok else exact


def shoots_per_node(inputs: InjuryAdjustmentInputs) -> float:
    """(P + S) b: the shoots of a node, one on each node that lives and pushes."""
    living = float(inputs.buds_primary_alive + inputs.buds_secondary_only)
    return living / float(inputs.buds_cut_for_injury) * share(inputs.living_budburst_pct)


def shoots_on(inputs: InjuryAdjustmentInputs, exact: Maybe) -> Maybe:
    """Shoots on the nodes that are left; left out where there is no number."""
    nodes = whole(exact)
    return Maybe(True, nodes.number * shoots_per_node(inputs)) if nodes.ok else nodes


def shoots_most(inputs: InjuryAdjustmentInputs) -> Maybe:
    """Shoots that the canopy of one vine takes beside the non-count shoots; left out where the spacing is not known."""
    if not inputs.vine_spacing_m.ok:
        return Maybe(False, 0.0)
    others = inputs.noncount_shoots_kept.number if inputs.noncount_shoots_kept.ok else 0.0
    return Maybe(True, max(0.0, inputs.shoots_per_m_high * float(inputs.curtains) * inputs.vine_spacing_m.number - others))


def shoots_lines(inputs: InjuryAdjustmentInputs, nodes: Maybe, shoots: Maybe, most: Maybe) -> list[Say]:
    """How shoots and room were reckoned, as far as they were."""
    lines: list[Say] = []
    if shoots.ok:
        living = float(inputs.buds_primary_alive + inputs.buds_secondary_only)
        counted = [nodes.number, living, float(inputs.buds_cut_for_injury), inputs.living_budburst_pct, shoots.number]
        lines.append(Say("injury_adjustment.shoots", counted, []))
    if most.ok:
        room = [inputs.shoots_per_m_high, float(inputs.curtains), inputs.vine_spacing_m.number, most.number]
        lines.append(Say("injury_adjustment.room", room, []))
    return lines


def bands_of(values: InjuryAdjustmentValues) -> Bands:
    """The published limits together."""
    return Bands(
        values.injury_cornell_from_pct,
        values.injury_cornell_to_pct,
        values.injury_northern_above_pct,
        values.injury_purdue_normal_pct,
        values.injury_purdue_light_pct,
        values.injury_purdue_heavy_printed_pct,
        values.injury_purdue_heavy_pct,
        values.injury_purdue_light_extra_pct,
        values.injury_purdue_heavy_extra_pct,
        values.injury_sheet_normal_pct,
        values.injury_sheet_from_pct,
        values.injury_sheet_to_pct,
    )
