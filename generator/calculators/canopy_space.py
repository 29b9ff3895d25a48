"""How many nodes the canopy has room for: the shoots that a metre of canopy takes, turned into nodes.

N = (shoots per metre x metres of canopy per vine - Z) / (burst x h): kept non-count shoots Z take room too. Metres of
canopy: two arms a curtain at most count (one each way), since a second wire with its canes feeds the same curtain; arms
that reach their neighbours within the tip gap fill the whole spacing. (Evidence B04-shoots-per-metre, vb-19, hg-05.)
A limit on shoots is for a metre of leaf wall: on a divided canopy it holds for each wall.
"""

from dataclasses import dataclass

from generator.calculators.canopy_authors import Bands, MadeFor, Wall, by_author, room, wall_notes
from generator.calculators.counting import half_up
from generator.calculators.facts import Maybe
from generator.calculators.figures import Compared, Figure
from generator.calculators.say import Say
from generator.calculators.units import MM_PER_M, PER_CENT, mm, share


@dataclass(frozen=True)
class Space:
    """Curtains and arms per vine, metres per arm, the spacing and the tip gap where known (m), shoots per metre of canopy,
    budburst in %, count shoots per burst node, and the non-count shoots kept per vine."""

    curtains: int
    arm_length_m: float
    cordon_arms: int
    vine_spacing_m: Maybe
    tip_gap_m: Maybe
    shoots_per_m_low: float
    shoots_per_m_high: float
    budburst_pct: float
    shoots_per_burst_node: float
    noncount_shoots_kept: Maybe


@dataclass(frozen=True)
class Room:
    """Metres of canopy per vine; nodes per vine at the low and the high shoot density, exact and whole (nearest, half up)."""

    canopy_m: float
    nodes_low_exact: float
    nodes_low: int
    nodes_high_exact: float
    nodes_high: int
    headline: Say
    working: list[Say]
    notes: list[Say]


@dataclass(frozen=True)
class CanopySpaceInputs(Space):
    """The space (see Space), and what authors made their figures for: the form of the canopy, the use, the type of grape."""

    canopy_form: Maybe
    use: Maybe
    grape_type: Maybe


@dataclass(frozen=True)
class CanopySpaceValues:
    """Fewest and most shoots on a metre of leaf wall, by every author; figures of the same id are the two ends of one band."""

    shoots_per_m_low: list[Figure]
    shoots_per_m_high: list[Figure]


@dataclass(frozen=True)
class CanopySpaceResult(Room):
    """The room (see Room), and the nodes that every author's shoots per metre leave room for."""

    compared: list[Compared]


def canopy_space(inputs: CanopySpaceInputs, values: CanopySpaceValues) -> CanopySpaceResult:
    """Room for nodes, by the limits given and by every author. Raises ValueError as room_of does."""
    found = room_of(inputs)
    wall = wall_of(inputs, found.canopy_m)
    bands = Bands(values.shoots_per_m_low, values.shoots_per_m_high)
    return CanopySpaceResult(
        found.canopy_m,
        found.nodes_low_exact,
        found.nodes_low,
        found.nodes_high_exact,
        found.nodes_high,
        found.headline,
        found.working,
        found.notes + wall_notes(wall, bands, made_for(inputs)),
        by_author(wall, bands, made_for(inputs)),
    )


def made_for(inputs: CanopySpaceInputs) -> MadeFor:
    """What authors made their figures for, as it is on this vine."""
    return MadeFor(inputs.canopy_form, inputs.use, inputs.grape_type)


def room_of(inputs: Space) -> Room:
    """Room for nodes. Raises ValueError when nodes give no shoots, or when low is over high."""
    if inputs.budburst_pct > PER_CENT:
        raise ValueError("budburst is the share of kept nodes with a shoot: at most 100 %")
    if inputs.shoots_per_m_low > inputs.shoots_per_m_high:
        raise ValueError("the low shoot number per metre must not be over the high one")
    shoots_per_node = share(inputs.budburst_pct) * inputs.shoots_per_burst_node
    if shoots_per_node <= 0.0:
        raise ValueError("budburst and shoots per burst node must be above zero")
    canopy_mm = canopy_length_mm(inputs)
    canopy_m = float(canopy_mm) / MM_PER_M
    wall = wall_of(inputs, canopy_m)
    low = room(wall, inputs.shoots_per_m_low)
    high = room(wall, inputs.shoots_per_m_high)
    working = [
        Say("canopy_space.formula", [], []),
        Say("canopy_space.shoots_per_node", [inputs.budburst_pct, inputs.shoots_per_burst_node, shoots_per_node], []),
        Say("canopy_space.low", [inputs.shoots_per_m_low, canopy_m, wall.others, shoots_per_node, low], []),
        Say("canopy_space.high", [inputs.shoots_per_m_high, canopy_m, wall.others, shoots_per_node, high], []),
    ]
    return Room(
        canopy_m,
        low,
        half_up(low),
        high,
        half_up(high),
        Say("canopy_space.headline", [float(half_up(low)), float(half_up(high)), canopy_m], []),
        [length_line(inputs, canopy_mm)] + working,
        notes_of(inputs, high),
    )


def wall_of(inputs: Space, canopy_m: float) -> Wall:
    """The leaf wall of one vine; non-count shoots that nobody counted take no room."""
    others = inputs.noncount_shoots_kept.number if inputs.noncount_shoots_kept.ok else 0.0
    return Wall(inputs.curtains, canopy_m, others, share(inputs.budburst_pct) * inputs.shoots_per_burst_node)


def feeding_arms(inputs: Space) -> int:
    """The arms that give canopy of their own: at most two a curtain, one each way."""
    return min(inputs.cordon_arms, 2 * inputs.curtains)


def canopy_length_mm(inputs: Space) -> int:
    """Whole millimetres of canopy for one vine, all curtains: the arms' length, or the spacing where they fill it."""
    arms_mm = feeding_arms(inputs) * mm(inputs.arm_length_m)
    if not inputs.vine_spacing_m.ok:
        return arms_mm
    row_mm = inputs.curtains * mm(inputs.vine_spacing_m.number)
    gap_mm = 0
    if inputs.tip_gap_m.ok:
        gap_mm = inputs.curtains * mm(inputs.tip_gap_m.number)
    if arms_mm + gap_mm >= row_mm:
        return row_mm
    return arms_mm


def length_line(inputs: Space, canopy_mm: int) -> Say:
    """How the metres of canopy were reckoned: from the spacing, or from the arms."""
    canopy_m = float(canopy_mm) / MM_PER_M
    arms = float(feeding_arms(inputs))
    if inputs.vine_spacing_m.ok and canopy_mm == inputs.curtains * mm(inputs.vine_spacing_m.number):
        return Say("canopy_space.row_filled", [float(inputs.curtains), inputs.vine_spacing_m.number, canopy_m], [])
    return Say("canopy_space.arms_length", [arms, inputs.arm_length_m, canopy_m], [])


def notes_of(inputs: Space, high: float) -> list[Say]:
    """What was counted once only, what stays empty, and what takes room."""
    notes: list[Say] = []
    if inputs.cordon_arms > feeding_arms(inputs):
        notes.append(Say("canopy_space.same_curtain", [float(inputs.cordon_arms), float(inputs.curtains)], []))
    if inputs.vine_spacing_m.ok:
        empty_mm = inputs.curtains * mm(inputs.vine_spacing_m.number) - canopy_length_mm(inputs)
        if empty_mm > 0:
            notes.append(Say("canopy_space.wire_empty", [float(empty_mm) / MM_PER_M], []))
    if inputs.noncount_shoots_kept.ok and inputs.noncount_shoots_kept.number > 0.0:
        notes.append(Say("canopy_space.others_take_room", [inputs.noncount_shoots_kept.number], []))
    if high <= 0.0:
        notes.append(Say("canopy_space.no_room", [], []))
    return notes
