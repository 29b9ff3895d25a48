"""What is said of the canes of one vine: what to do with each, the headline, the work in its order, the working, and what to know."""

from dataclasses import dataclass

from generator.calculators.answer import Reason
from generator.calculators.cane_judging import KEEP, REJECT, Judged, Wire, above_wire, can_be_laid
from generator.calculators.cane_picking import MIDDLE, Picked, Wanted
from generator.calculators.cane_windows import Windows, inside_of
from generator.calculators.facts import Maybe
from generator.calculators.say import Say
from generator.calculators.table_answers import Told

SUSPECT: str = "suspect"
SHORTEN: str = "shorten"
ARCH: str = "arch"
MARK: str = "marked_vine"  # said first, since such a vine is pruned last
LEAVE: str = "leave"  # the reserve cane has a step of its own
USE: list[str] = ["cane_choice.use_left", "cane_choice.use_right", "cane_choice.use_either"]
FLAT: list[str] = ["cane_choice.lay_left", "cane_choice.lay_right", "cane_choice.lay_either"]
ARCHED: list[str] = ["cane_choice.arch_left", "cane_choice.arch_right", "cane_choice.arch_either"]


@dataclass(frozen=True)
class Laid:
    """All canes, the choice among them, how each laid one is bent, the nodes of a renewal spur, and what the tables say of the vine."""

    canes: list[Judged]
    picked: Picked
    bends: list[Told]
    spur_nodes: int
    told: list[Told]


@dataclass(frozen=True)
class CaneAnswer:
    """What to do with one cane: its number, its verdict (`keep`, `reserve`, `spur_only`, `reject`) in words, its use (`lay`, `spur`,
    `instead`, `reserve`, `off`) in words, the nodes it keeps, its points, and every row that spoke."""

    number: int
    verdict: str
    says: Say
    use: str
    use_says: Say
    nodes: int
    points: float
    reasons: list[Reason]


def answers_of(laid: Laid) -> list[CaneAnswer]:
    """What to do with each cane, in the order entered."""
    return [answer_of(laid, k) for k in range(len(laid.canes))]


def answer_of(laid: Laid, k: int) -> CaneAnswer:
    """What to do with one cane."""
    one = laid.canes[k]
    picked = laid.picked
    nodes = 0
    use = "off"
    says = Say("cane_choice.use_off", [], [])
    if k in picked.laid:
        nodes = one.nodes
        use = "lay"
        says = Say(USE[side_of(picked, k)], [float(nodes)], [])
    if k in picked.spurs or k in picked.others:
        nodes = min(laid.spur_nodes, one.cane.cane_ripe_nodes)
        use = "spur" if k in picked.spurs else "instead"
        says = Say("cane_choice.use_spur" if k in picked.spurs else "cane_choice.use_instead", [float(nodes)], [])
    if k in picked.spare:
        use = "reserve"
        says = Say("cane_choice.use_reserve", [], [])
    return CaneAnswer(one.number, one.verdict.outcome, one.verdict.says, use, says, nodes, one.points, one.reasons)


def side_of(picked: Picked, k: int) -> int:
    """The side to which a laid cane goes: left, right, or either."""
    for place, other in enumerate(picked.laid):
        if other == k:
            return picked.sides[place]
    return MIDDLE


def headline_of(laid: Laid, wanted: int, nodes: int) -> Say:
    """The choice in one line."""
    canes = float(len(laid.picked.laid))
    spurs = float(len(laid.picked.spurs) + len(laid.picked.others))
    if len(laid.picked.laid) == 0:
        return Say("cane_choice.headline_none", [spurs, float(nodes)], [])
    if len(laid.picked.laid) < wanted:
        return Say("cane_choice.headline_fewer", [canes, float(wanted), spurs, float(nodes)], [])
    return Say("cane_choice.headline", [canes, spurs, float(nodes)], [])


def steps_of(laid: Laid, wanted: int, crop: Maybe) -> list[Say]:
    """The work at the vine in its order."""
    picked = laid.picked
    steps = [Say("answers.also", [], [told.action]) for told in laid.told if told.table == MARK and told.action != ""]
    for place, k in enumerate(picked.laid):
        one = laid.canes[k]
        messages = ARCHED if laid.bends[place].outcome == ARCH else FLAT
        steps.append(Say(messages[picked.sides[place]], [float(one.number), float(one.nodes)], []))
        if one.told[0].outcome == SHORTEN:
            steps.append(Say("cane_choice.before_damage", [float(one.number)], []))
    for k in picked.spurs + picked.others:
        message = "cane_choice.spur" if k in picked.spurs else "cane_choice.instead"
        steps.append(Say(message, [float(laid.canes[k].number), float(min(laid.spur_nodes, laid.canes[k].cane.cane_ripe_nodes))], []))
    for k in picked.spare:
        steps.append(Say("cane_choice.reserve", [float(laid.canes[k].number)], []))
    used = len(picked.laid) + len(picked.spurs) + len(picked.others) + len(picked.spare)
    if 0 < used < len(laid.canes):
        steps.append(Say("cane_choice.off", [float(len(laid.canes) - used)], []))
    for told in laid.told:
        if told.action != "" and told.outcome != LEAVE and told.table != MARK:
            steps.append(Say("answers.also", [], [told.action]))
    if crop.ok and crop.number > 0.0:
        steps.append(Say("cane_choice.crop", [float(len(picked.laid)), float(wanted), crop.number], []))
    return steps


def working_of(laid: Laid, wire: Wire, windows: Windows) -> list[Say]:
    """How each cane was reckoned."""
    lines = [Say("cane_choice.wire", [float(wire.length_mm)], [])]
    for one in laid.canes:
        thick = float(inside_of(windows.thin, windows.thick, one.cane.cane_diameter_mm))
        lines.append(Say("cane_choice.reckoned", [float(one.number), one.cane.cane_diameter_mm, thick, float(len(windows.thin)), one.points], []))
        if one.verdict.outcome != REJECT:
            lines.append(Say("cane_choice.room", [float(one.number), float(one.cane.cane_ripe_nodes), float(one.fit), float(one.nodes)], []))
    return lines


def notes_of(laid: Laid, deaths_known: bool, wanted: Wanted) -> list[Say]:
    """What to know besides: suspect canes, wire left bare, sides, what was not looked at, and what has no weight."""
    picked = laid.picked
    notes: list[Say] = []
    for one in laid.canes:
        if one.told[1].outcome == SUSPECT:
            notes.append(Say("cane_choice.test", [float(one.number)], []))
    for k in picked.laid:
        if laid.canes[k].nodes < laid.canes[k].fit:
            notes.append(Say("cane_choice.bare", [float(laid.canes[k].number), float(laid.canes[k].fit - laid.canes[k].nodes)], []))
    if len(picked.laid) < wanted.canes and any(one.verdict.outcome == KEEP and k not in picked.laid and k not in picked.spurs for k, one in enumerate(laid.canes)):
        notes.append(Say("cane_choice.side", [], []))
    notes = notes + notes_of_height(laid, wanted)
    if any(laid.canes[k].verdict.outcome == REJECT for k in picked.others):
        notes.append(Say("cane_choice.last_resort", [], []))
    if wanted.reserve and len(picked.spare) == 0:
        notes.append(Say("cane_choice.no_reserve", [], []))
    if not deaths_known:
        notes.append(Say("cane_choice.no_buds_cut", [], []))
    unmeasured = len([one for one in laid.canes if not one.cane.internode_cm.ok])
    if unmeasured > 0:
        notes.append(Say("cane_choice.unmeasured", [float(unmeasured)], []))
    return notes + [Say("cane_choice.last_crop", [], []), Say("cane_choice.looks", [], [])]


def notes_of_height(laid: Laid, wanted: Wanted) -> list[Say]:
    """Canes from above the wire that are not laid for want of a lower spur, and spurs that themselves begin above it."""
    picked = laid.picked
    cut = picked.spurs + picked.others
    notes: list[Say] = []
    for k, one in enumerate(laid.canes):
        if above_wire(one) and can_be_laid(one) and k not in picked.laid and len(picked.laid) < wanted.canes:
            notes.append(Say("cane_choice.no_lower_spur", [float(one.number)], []))
        if above_wire(one) and k in cut:
            notes.append(Say("cane_choice.high_spur", [float(one.number)], []))
    return notes
