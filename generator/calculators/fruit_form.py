"""Which counts the fruit of a vine stands on: spring counts, buds cut open node by node, or spring counts scaled to a new winter.

The forms are never mixed. The short form has bunches per shoot u as counted in spring. By node the bearer's own burst nodes B, count
shoots C and bunches I1 + I2 take the place of the spring counts: N = nodes, burst = B / N, h = C / B, v = (I1 + I2) / C (see
bearers.py). A new winter of the same block is u_now = u_past v_now / v_past: dissection then tells the ratio of two winters and
nothing else, and primordia per bud never multiply a spring count. (Evidence yc-29, nf-06, yc-26.)
"""

from dataclasses import dataclass

from generator.calculators.bearer_sampling import Bearers, CaneSample, sampled_cv_pct
from generator.calculators.bearers import Buds, Tally, bearer, bunches_at, buds_counted, burst_at, counted, is_whole, void
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT
from generator.calculators.yield_chain import Counts

SPRING: int = 0
BY_NODE: int = 1
SCALED: int = 2
CANES: int = 0


@dataclass(frozen=True)
class Dissection:
    """Buds cut open this winter: the tally; whether all was known that a tally needs beside primordia and dead buds; its dates and
    canes, the spread of primordia from bud to bud, the likeness of buds of one cane; the fruiting wood (0 canes, 1 spurs) and the nodes on each; bunches per shoot that dissection promises now, and promised
    before the spring of the spring counts."""

    tally: Tally
    complete: bool
    tally_date: Maybe
    last_freeze_date: Maybe
    canes_dissected: Maybe
    bud_spread: Maybe
    likeness: Maybe
    fruiting_wood: Maybe
    bearer_nodes: Maybe
    promised_now: Maybe
    promised_before: Maybe


@dataclass(frozen=True)
class BearerLimits:
    """Usual nodes on a cane, on a spur and on a renewal spur."""

    cane_nodes: float
    spur_nodes: float
    renewal_nodes: float


@dataclass(frozen=True)
class Unit:
    """One bearer: a spur, or a cane with its renewal spur (0 nodes for none); what all of it gives in spring, and the spread of its
    bunches for the canes cut open (%)."""

    on_cane: bool
    length: int
    renewal: int
    bunches: float
    shoots: float
    burst_nodes: float
    cv_pct: Maybe
    buds: Buds


@dataclass(frozen=True)
class Form:
    """The form that is used; the chain's counts by it; by the other form that could be reckoned, at most one, told and never used; the
    bearer, at most one; bunches per shoot that the buds promise; what there is to say."""

    used: int
    counts: Counts
    other: list[Counts]
    units: list[Unit]
    promised: Maybe
    working: list[Say]
    notes: list[Say]


def form_of(chosen: Maybe, spring: Counts, bunches_per_shoot: Maybe, cut: Dissection, limits: BearerLimits) -> Form:
    """The form to reckon with. spring holds the spring counts; its bunches per shoot hold only where bunches_per_shoot is ok. Raises
    ValueError when the chosen form, or every form, lacks its counts."""
    units = units_of(cut, limits)
    used = used_form(chosen, bunches_per_shoot, cut, len(units) > 0)
    if used == BY_NODE:
        return form_by_node(spring, bunches_per_shoot, units[0])
    promised = Maybe(True, units[0].bunches / units[0].shoots) if len(units) > 0 else Maybe(False, 0.0)
    none: list[Unit] = []
    if used == SCALED:
        now = cut.promised_now if cut.promised_now.ok else promised
        bunches = bunches_per_shoot.number * now.number / cut.promised_before.number
        working = [Say("fruit_form.scaling", [bunches_per_shoot.number, now.number, cut.promised_before.number, bunches], [])]
        nothing: list[Counts] = []
        return Form(used, with_bunches(spring, bunches), nothing, none, promised, working, [Say("fruit_form.scaled", [], [])])
    others = [by_node(spring, unit) for unit in units]
    return Form(used, spring, others, none, promised, [], spring_notes(cut, len(units) > 0))


def used_form(chosen: Maybe, bunches_per_shoot: Maybe, cut: Dissection, has_unit: bool) -> int:
    """The form that was chosen; else the one that everything is given for: scaled, by node, spring. Raises ValueError when it lacks
    its counts."""
    promised = cut.promised_now.ok or has_unit
    scales = bunches_per_shoot.ok and promised and cut.promised_before.ok and cut.promised_before.number > 0.0
    wanted = SPRING
    if chosen.ok:
        wanted = int(chosen.number)
    elif scales:
        wanted = SCALED
    elif has_unit:
        wanted = BY_NODE
    if wanted == BY_NODE and not has_unit:
        raise ValueError(
            "by node it needs the bunch beginnings of every node of the bearer, what is dead there, and whether canes or spurs fruit; "
            "buds cut before the last hard frost do not count"
        )
    if wanted == SCALED and not scales:
        raise ValueError("to scale, give the bunches per shoot of a spring, what the buds promised before it, and what they promise now")
    if wanted == SPRING and not bunches_per_shoot.ok:
        raise ValueError("give the bunches per shoot counted in spring, or what was found in buds cut open this winter")
    return wanted


def units_of(cut: Dissection, limits: BearerLimits) -> list[Unit]:
    """The bearer that the buds are reckoned on; none where the tally is void or not whole, where nobody said what fruits, where the
    bearer is longer than the nodes cut open, or where nothing would push."""
    found: list[Unit] = []
    if void(cut.tally_date, cut.last_freeze_date) or not cut.complete or not cut.fruiting_wood.ok or not is_whole(cut.tally):
        return found
    buds = buds_counted(cut.tally)
    known = len(buds.primordia)
    on_cane = int(cut.fruiting_wood.number) == CANES
    length = min(known, int(limits.cane_nodes if on_cane else limits.spur_nodes))
    if cut.bearer_nodes.ok:
        length = int(cut.bearer_nodes.number)
    if length > known:
        return found
    unit = unit_of(buds, on_cane, length, min(known, int(limits.renewal_nodes)), CaneSample(cut.canes_dissected, cut.bud_spread, cut.likeness))
    return [unit] if unit.shoots > 0.0 else found


def unit_of(buds: Buds, on_cane: bool, length: int, renewal: int, sample: CaneSample) -> Unit:
    """A spur, or a cane with its renewal spur, which bears like a spur. Raises ValueError when it is longer than the nodes known."""
    main = bearer(buds, length, on_cane)
    if not on_cane:
        spread = sampled_cv_pct(sample, buds, Bearers([], [length], 0))
        return Unit(on_cane, length, 0, main.bunches, main.shoots, main.burst_nodes, spread, buds)
    spur = bearer(buds, renewal, False)
    spread = sampled_cv_pct(sample, buds, Bearers([length], [renewal], 0))
    return Unit(
        on_cane, length, renewal, main.bunches + spur.bunches, main.shoots + spur.shoots, main.burst_nodes + spur.burst_nodes, spread, buds
    )


def nodes_of(unit: Unit) -> int:
    """The nodes of a bearer with those of its renewal spur."""
    return unit.length + unit.renewal


def form_by_node(spring: Counts, bunches_per_shoot: Maybe, unit: Unit) -> Form:
    """The form by node; the spring counts, where there are any, are told beside it."""
    promised = unit.bunches / unit.shoots
    others: list[Counts] = []
    notes = [Say("fruit_form.by_node", [float(len(unit.buds.primordia))], [])]
    if bunches_per_shoot.ok:
        others.append(spring)
        notes.append(Say("fruit_form.spring_not_used", [bunches_per_shoot.number, promised], []))
    return Form(BY_NODE, by_node(spring, unit), others, [unit], Maybe(True, promised), working_by_node(unit), notes)


def by_node(spring: Counts, unit: Unit) -> Counts:
    """The chain's counts as the nodes of a bearer give them; bunch weight and other shoots as they were counted."""
    nodes = float(nodes_of(unit))
    return Counts(
        bearing_vines_per_ha=spring.bearing_vines_per_ha,
        budburst_pct=min(PER_CENT, unit.burst_nodes * PER_CENT / nodes),
        shoots_per_burst_node=unit.shoots / unit.burst_nodes,
        bunches_per_shoot=unit.bunches / unit.shoots,
        bunch_weight_g=spring.bunch_weight_g,
        noncount_shoots_kept=spring.noncount_shoots_kept,
        bunches_per_noncount_shoot=spring.bunches_per_noncount_shoot,
        noncount_bunch_weight_g=spring.noncount_bunch_weight_g,
        nodes_left=spring.nodes_left,
        budburst_cv_pct=spring.budburst_cv_pct,
        shoots_per_burst_node_cv_pct=spring.shoots_per_burst_node_cv_pct,
        bunches_per_shoot_cv_pct=unit.cv_pct,
        bunch_weight_cv_pct=spring.bunch_weight_cv_pct,
    )


def with_bunches(spring: Counts, bunches_per_shoot: float) -> Counts:
    """The spring counts with other bunches per shoot."""
    return Counts(
        bearing_vines_per_ha=spring.bearing_vines_per_ha,
        budburst_pct=spring.budburst_pct,
        shoots_per_burst_node=spring.shoots_per_burst_node,
        bunches_per_shoot=bunches_per_shoot,
        bunch_weight_g=spring.bunch_weight_g,
        noncount_shoots_kept=spring.noncount_shoots_kept,
        bunches_per_noncount_shoot=spring.bunches_per_noncount_shoot,
        noncount_bunch_weight_g=spring.noncount_bunch_weight_g,
        nodes_left=spring.nodes_left,
        budburst_cv_pct=spring.budburst_cv_pct,
        shoots_per_burst_node_cv_pct=spring.shoots_per_burst_node_cv_pct,
        bunches_per_shoot_cv_pct=spring.bunches_per_shoot_cv_pct,
        bunch_weight_cv_pct=spring.bunch_weight_cv_pct,
    )


def working_by_node(unit: Unit) -> list[Say]:
    """The bearer node by node, the renewal spur, and what they come to."""
    lines = [Say("fruit_form.by_node_formula", [], [])]
    for node in range(1, unit.length + 1):
        lines.append(node_line(unit.buds, node, burst_at(unit.buds, node, unit.length, unit.on_cane)))
    if unit.renewal > 0:
        spur = bearer(unit.buds, unit.renewal, False)
        lines.append(Say("fruit_form.renewal", [float(unit.renewal), spur.bunches, spur.shoots], []))
    lines.append(Say("fruit_form.bearer", [float(nodes_of(unit)), unit.bunches, unit.shoots, unit.burst_nodes], []))
    return lines


def node_line(buds: Buds, node: int, burst: float) -> Say:
    """What one node bears, with the numbers put in."""
    alive = buds.primary[node - 1]
    numbers = [float(node), PER_CENT * burst, PER_CENT * alive, PER_CENT * buds.secondary[node - 1], buds.primordia[node - 1]]
    return Say("fruit_form.node", numbers + [bunches_at(buds, node, burst)], [])


def spring_notes(cut: Dissection, able: bool) -> list[Say]:
    """Why buds that were cut open are not used beside spring counts; nothing where none were cut."""
    if len(counted(cut.tally.primordia)) == 0:
        return []
    if void(cut.tally_date, cut.last_freeze_date):
        return [Say("fruit_form.buds_void", [], [])]
    if able:
        return [Say("fruit_form.buds_not_chosen", [], [])]
    return [Say("fruit_form.buds_not_whole", [], [])]
