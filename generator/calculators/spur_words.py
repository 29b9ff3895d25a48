"""What is said of a spur position: the headline, the work of this winter, the working, and what to know about it."""

from generator.calculators.answer import Reason
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.spur_canes import LOW, LOWER, TOP, UNSOUND, UPPER, Canes, stands
from generator.calculators.spur_choosing import EMPTY, KEEP_LOWER, LOW_ROW, STOP, Chosen, Place, highest_kept
from generator.calculators.spur_cuts import Cuts, CutsTold
from generator.calculators.table_answers import joined

WAIT: str = "wait"
FREE: str = "free"
LARGE: str = "large"
HOLD: str = "hold"
BULL: str = "thick"
OVER_NODE: str = "over_node"


def headline_of(canes: Canes, chosen: Chosen) -> Say:
    """The choice, or which fact is missing for it."""
    if chosen.laid > LOWER:
        return Say("spur_position.lay", [], [])
    if lone(canes, chosen):
        return Say("spur_position.only", [], [])
    if chosen.choice.settled and (chosen.known or chosen.choice.outcome == STOP):
        return chosen.choice.says
    return Say("spur_position.open", [], [missing_of(canes, chosen)])


def lone(canes: Canes, chosen: Chosen) -> bool:
    """True where the lower cane is kept and none stands above it."""
    return chosen.known and chosen.choice.outcome == KEEP_LOWER and not stands(canes, UPPER) and not stands(canes, TOP)


def missing_of(canes: Canes, chosen: Chosen) -> str:
    """The word of the fact to find out: the cane that was not measured, the lower one first, else which of two positions is the lower."""
    for k in [LOWER, UPPER, TOP, LOW]:
        if not canes.told[k].settled:
            return canes.measures[k]
    return "fact.lower_of_pair"


def steps_of(canes: Canes, chosen: Chosen, cuts: CutsTold, by: Cuts, old_mm: Maybe) -> list[Say]:
    """The work of this winter in the order in which it is done; nothing while the choice is open."""
    steps: list[Say] = []
    if lone(canes, chosen):
        steps.append(Say("spur_position.dry_end", [], []))
    elif chosen.choice.action != "" and chosen.laid < UPPER and (chosen.known or chosen.choice.outcome == STOP):
        steps.append(Say("spur_position.do", [], [chosen.choice.action]))
    if not chosen.known:
        return steps
    for k in [LOW, LOWER, UPPER, TOP]:
        if chosen.nodes[k] > 0.0:
            steps.append(Say("spur_position.nodes" if cuts.node.outcome == OVER_NODE else "spur_position.nodes_later", [chosen.nodes[k]], [canes.names[k]]))
        elif k == chosen.laid:
            steps.append(Say("spur_position.laid", [], [canes.names[k]]))
        elif stands(canes, k):
            steps.append(Say(goes(canes, chosen, k), [], [canes.names[k]]))
    if any(nodes > 0.0 for nodes in chosen.nodes):
        steps.append(Say("spur_position.cut", [by.over_low_cm, by.over_high_cm], []) if cuts.node.outcome == OVER_NODE else cuts.node.says)
    if cuts.old:
        steps.append(stub_step(by, old_mm))
        steps.append(cuts.stub.says if cuts.stub.settled else Say("spur_position.one_side", [], []))
    return steps


def goes(canes: Canes, chosen: Chosen, place: int) -> str:
    """The message for a cane that goes: by itself, with the wood that it stands on, or as one from the arm that is not needed here."""
    if place == LOW:
        plain = canes.told[LOW].outcome == UNSOUND or chosen.choice.outcome in EMPTY
        return "spur_position.goes" if plain else "spur_position.spare_low"
    highest = highest_kept(chosen)
    return "spur_position.goes_with_wood" if LOWER <= highest < place else "spur_position.goes"


def stub_step(by: Cuts, old_mm: Maybe) -> Say:
    """How long the dry stub is, in mm where the wood was measured."""
    if old_mm.ok:
        return Say("spur_position.stub", [old_mm.number * by.stub_low, old_mm.number * by.stub_high, by.stub_low, by.stub_high], [])
    return Say("spur_position.stub_times", [by.stub_low, by.stub_high], [])


def reasons_of_choice(chosen: Chosen, cuts: CutsTold, sorting: list[Reason]) -> list[Reason]:
    """The rows that spoke, the choice first; those of cuts and gap only where they come to something."""
    found = joined(joined(joined([], chosen.choice), chosen.wood), chosen.height)
    if chosen.beside.outcome != FREE:
        found = joined(found, chosen.beside)
    if chosen.laid > LOWER or waits(chosen):
        found = joined(found, chosen.gap)
    for told in chosen.counts:
        found = joined(found, told)
    if any(nodes > 0.0 for nodes in chosen.nodes):
        found = joined(found, cuts.node)
    if cuts.old:
        found = joined(found, cuts.stub)
    return found + sorting


def waits(chosen: Chosen) -> bool:
    """True where a gap wants a cane and there is none here to lay."""
    return chosen.known and chosen.gap.outcome == WAIT


def height_lines(height_cm: float, limit_cm: float, chosen: Chosen, room: Maybe, rise_cm: float) -> list[Say]:
    """The height against the limit, and how long the position keeps within it; then what was made of height and canes."""
    lines = [Say("spur_position.height", [height_cm, limit_cm, height_cm / limit_cm], [])]
    if room.ok:
        lines.append(Say("spur_position.room", [limit_cm, height_cm, rise_cm, room.number], []))
    for told in [chosen.height, chosen.wood]:
        if told.settled:
            lines.append(told.says)
    return lines


def notes_of(canes: Canes, chosen: Chosen, cuts: CutsTold, place: Place) -> list[Say]:
    """What to know: sources that part, a neighbour that was emptied, a gap, what no source prints."""
    notes: list[Say] = []
    if chosen.choice.outcome in EMPTY and place.neighbour_emptied:
        notes.append(Say("spur_position.two_empty", [], []))
    elif chosen.beside.outcome == HOLD:
        notes.append(chosen.beside.says)
    if waits(chosen):
        notes.append(chosen.gap.says)
    if canes.told[LOWER].outcome == BULL and chosen.nodes[LOWER] > 0.0:
        notes.append(Say("spur_position.bull_disputed", [], []))
    if cuts.old:
        notes.append(Say("spur_position.stub_disputed", [], []))
    if chosen.height.outcome != LOW_ROW:
        notes.append(Say("spur_position.limit_is_yours", [], []))
    return notes
