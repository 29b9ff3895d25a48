"""How many nodes to leave when winter has killed buds: what is dead is replaced, once.

N_cut = N_plan x V_plan / V_now; see injury_sample for V and for the deaths that the number wanted holds already. Above the severe limit there
is no number. (Evidence bi-01 to bi-20, pbn-06; sampling in two steps: bi-13.)
"""

from generator.calculators.counting import up
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared
from generator.calculators.injury_bands import Bands, Ruled, adds_nothing, by_cornell, by_northern, by_purdue, by_sheet, least_of, line_of
from generator.calculators.injury_records import InjuryAdjustmentInputs, InjuryAdjustmentResult, InjuryAdjustmentValues, bands_of
from generator.calculators.injury_sample import THIS_WINTER, Sample, living_value, replacement, sample_of
from generator.calculators.injury_words import headline_of, notes_of, working_of
from generator.calculators.say import Say
from generator.calculators.units import share


def injury_adjustment(inputs: InjuryAdjustmentInputs, values: InjuryAdjustmentValues) -> InjuryAdjustmentResult:
    """The nodes to leave. Raises ValueError when more buds are alive than were cut, or when it is not known which deaths the number holds."""
    sample = sample_of(inputs, values)
    wanted = inputs.wanted_nodes
    # Where secondaries count as primaries there is no "as if they bore nothing".
    no_plain = sample.severe or inputs.deaths_in_wanted_nodes > THIS_WINTER
    plain = replacement(wanted, sample.planned.primary, sample.primary, sample.cut, no_plain)
    with_secondaries = replacement(wanted, sample.planned.value, living_value(sample), sample.cut, sample.severe)
    bands = bands_of(values)
    rules = rules_of(inputs, sample, plain, bands)
    shoots = shoots_on(inputs, with_secondaries)
    most = shoots_most(inputs)
    unchanged = Maybe(len(rules) > 0 and all(adds_nothing(wanted, one) for one in rules), least_of(bands))
    return InjuryAdjustmentResult(
        sample.dead_pct,
        sample.low_pct,
        sample.high_pct,
        plain,
        whole(plain),
        with_secondaries,
        whole(with_secondaries),
        nodes_by(rules, 0),
        nodes_by(rules, 1),
        nodes_by(rules, 2),
        shoots,
        most,
        headline_of(sample, whole(with_secondaries), wanted, unchanged),
        lines_of(rules, values),
        working_of(sample, wanted, plain, with_secondaries) + shoots_lines(inputs, whole(with_secondaries), shoots, most),
        notes_of(sample, wanted, whole(with_secondaries), shoots, most),
    )


def rules_of(inputs: InjuryAdjustmentInputs, sample: Sample, plain: Maybe, bands: Bands) -> list[Ruled]:
    """Cornell, Purdue, the sheet and Northern Grapes; none where the number holds deaths of this winter, which they would count again."""
    none: list[Ruled] = []
    if inputs.deaths_in_wanted_nodes >= THIS_WINTER:
        return none
    wanted = inputs.wanted_nodes
    sheet = by_sheet(wanted, sample.dead_pct, plain, bands)
    return [by_cornell(wanted, sample.dead_pct, bands), by_purdue(wanted, sample.dead_pct, bands), sheet, by_northern(wanted, sample.dead_pct, bands)]


def nodes_by(rules: list[Ruled], place: int) -> Maybe:
    """The nodes of one rule; left out where the rules are not asked."""
    return rules[place].nodes if len(rules) > 0 else Maybe(False, 0.0)


def lines_of(rules: list[Ruled], values: InjuryAdjustmentValues) -> list[Compared]:
    """The rules as lines of the comparison, in the order of rules_of."""
    limits = [values.injury_cornell_from_pct, values.injury_purdue_normal_pct, values.injury_sheet_normal_pct, values.injury_northern_above_pct]
    names = ["injury_adjustment.cornell", "injury_adjustment.purdue", "injury_adjustment.sheet", "injury_adjustment.northern"]
    return [line_of(Say(names[place], [], []), one, limits[place]) for place, one in enumerate(rules)]


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
