"""What happens to a spur position, and how many nodes stay where: the tables on it asked one after the other.

Agronomy, section 3 (S1 to S21). The rows with their sources stand in rules/decisions/, in the order in which they are tried.
"""

from dataclasses import dataclass

from generator.calculators.facts import Facts, Maybe
from generator.calculators.spur_canes import LOW, LOWER, TOP, UNSOUND, UPPER, Canes, other_told, stands
from generator.calculators.table_answers import Told, ask, given, given_yes, maybe_given, no_facts, worked_out
from generator.calculators.tables import Table

CHOICE: str = "spur_choice"
WOOD: str = "spur_wood"
HEIGHT: str = "spur_height"
BESIDE: str = "position_beside"
GAP: str = "gap_beside"
NODES: str = "spur_nodes"
STOP: str = "renew_structure"
TAKE_OFF: str = "take_off"
EMPTY: list[str] = [TAKE_OFF, "base_bud"]
ONLY_LOW: str = "low_takes_over"
LOW_TOO: str = "low_in_two"
BOTH: str = "keep_both"
KEEP_LOWER: str = "keep_lower"
KEEP_UPPER: str = "keep_upper"
LOW_ROW: str = "low"
LAY: str = "lay"
UPPER_ONE: str = "upper"
CROP: float = 0.0
RENEWAL: float = 1.0
LOWERING: float = 2.0


@dataclass(frozen=True)
class Place:
    """What is known of the position itself: the arm (place of its choice), height in times of the limit, what was tried, what stands
    beside it, and how it grew."""

    arm_beneath: int
    height_ratio: float
    creeping_pct: float
    winters_tried: int
    neighbour_emptied: bool
    nearest_spacings: float
    lower_of_pair: Maybe
    gap_spacings: float
    growth: int
    lags: bool
    long_spurs: bool


@dataclass(frozen=True)
class Chosen:
    """What the tables said, and the nodes on each cane (lower, upper, third, the one from the arm); 0 where a cane goes. known is false
    where the choice or a number is open, or the arm comes first; laid is the cane that goes into the gap (-1: none)."""

    choice: Told
    wood: Told
    height: Told
    beside: Told
    gap: Told
    counts: list[Told]
    nodes: list[float]
    known: bool
    laid: int


def chosen_of(tables: list[Table], place: Place, canes: Canes) -> Chosen:
    """The choice and the nodes."""
    facts = position_facts(place, canes)
    choice = ask(tables, CHOICE, facts)
    wood = ask(tables, WOOD, facts)
    gap = ask(tables, GAP, facts)
    height = ask(tables, HEIGHT, facts)
    kept = kept_of(choice, wood, canes)
    laid = canes.other if lays(choice, gap, canes) else -1
    counts: list[Told] = []
    nodes = [0.0, 0.0, 0.0, 0.0]
    for k in range(len(nodes)):
        if kept[k] and k != laid:
            told = ask(tables, NODES, node_facts(place, canes.told[k], role_of(choice, height, k)))
            counts.append(told)
            nodes = nodes[:k] + [float(told.place + 1)] + nodes[k + 1 :]
    known = choice.settled and choice.outcome != STOP and all(told.settled for told in counts)
    return Chosen(choice, wood, height, ask(tables, BESIDE, facts), gap, counts, nodes, known, laid)


def position_facts(place: Place, canes: Canes) -> Facts:
    """All that the tables on the position ask."""
    facts = given(no_facts(), "arm_beneath", float(place.arm_beneath))
    facts = given(facts, "spur_height_ratio", place.height_ratio)
    facts = given(facts, "creeping_positions_pct", place.creeping_pct)
    facts = given(facts, "winters_tried", float(place.winters_tried))
    facts = given_yes(facts, "neighbour_emptied", place.neighbour_emptied)
    facts = given(facts, "nearest_position_spacings", place.nearest_spacings)
    facts = maybe_given(facts, "lower_of_pair", place.lower_of_pair)
    facts = given(facts, "gap_beside_spacings", place.gap_spacings)
    facts = worked_out(facts, "lower_cane", canes.told[LOWER])
    facts = worked_out(facts, "upper_cane", other_told(canes))
    return worked_out(facts, "low_cane", canes.told[LOW])


def node_facts(place: Place, cane: Told, role: float) -> Facts:
    """All that the table of nodes asks of one cane that is kept."""
    facts = given(no_facts(), "spur_role", role)
    facts = worked_out(facts, "kept_cane", cane)
    facts = given(facts, "position_growth", float(place.growth))
    facts = given_yes(facts, "position_lags", place.lags)
    return given_yes(facts, "long_spurs_planned", place.long_spurs)


def kept_of(choice: Told, wood: Told, canes: Canes) -> list[bool]:
    """Which canes stay as spurs. On a position that is too high one stays on top, beside a thin one from the
    arm; and where only the upper one is fit, a cane from the arm is next winter's lower one."""
    none = [False, False, False, False]
    if not choice.settled or choice.outcome == STOP or choice.outcome in EMPTY:
        return none
    if choice.outcome == ONLY_LOW:
        return with_kept(none, LOW)
    way_back = choice.outcome == KEEP_UPPER and stands(canes, LOW) and canes.told[LOW].outcome != UNSOUND
    kept = with_kept(none, LOW) if choice.outcome == LOW_TOO or way_back else none
    if choice.outcome == BOTH:
        return with_kept(with_kept(kept, LOWER), canes.other)
    return with_kept(kept, canes.other if wood.outcome == UPPER_ONE else LOWER)


def with_kept(kept: list[bool], place: int) -> list[bool]:
    """The list with one more cane kept."""
    return kept[:place] + [True] + kept[place + 1 :]


def renews(choice: Told, place: int) -> bool:
    """True for a cane that is kept for next winter's wood beside one that bears."""
    return (choice.outcome == BOTH and place == LOWER) or (choice.outcome != ONLY_LOW and place == LOW)


def role_of(choice: Told, height: Told, place: int) -> float:
    """What a cane is kept for: next winter's wood, the crop of a position that comes down, or the crop."""
    if renews(choice, place):
        return RENEWAL
    return CROP if height.outcome == LOW_ROW and choice.outcome != ONLY_LOW else LOWERING


def highest_kept(chosen: Chosen) -> int:
    """The highest cane of last winter's spur that stays or is laid; -1 where none does."""
    for k in [TOP, UPPER, LOWER]:
        if chosen.nodes[k] > 0.0 or k == chosen.laid:
            return k
    return -1


def lays(choice: Told, gap: Told, canes: Canes) -> bool:
    """True where the cane above the lower one goes into the gap: only where the position itself stays as it is."""
    return gap.outcome == LAY and canes.other > LOWER and choice.outcome == KEEP_LOWER
