"""The canes on a spur position: each sorted by the same table, and the two of them that the tables on the position compare."""

from dataclasses import dataclass

from generator.calculators.answer import Reason
from generator.calculators.facts import Facts, Maybe
from generator.calculators.say import Say
from generator.calculators.table_answers import Told, ask, given, joined, maybe_given, no_facts
from generator.calculators.tables import Table

CANE: str = "spur_cane"
NONE: str = "none"
UNSOUND: str = "unsound"
FIT: list[str] = ["reserve", "good", "thick"]
LOWER: int = 0
UPPER: int = 1
TOP: int = 2
LOW: int = 3
NO_CANE: int = -1
LEVEL: int = 1


@dataclass(frozen=True)
class Cane:
    """A cane as it was looked at: state and the way it points as places of their choices, thickness in mm, and the ids of its facts as words."""

    state: int
    mm: Maybe
    points: int
    name: str
    measure: str


@dataclass(frozen=True)
class Canes:
    """All four places of a position: lower, upper, third, and the cane from the arm; what the table said of each, and which of the upper
    two is compared with the lower (-1: there is none)."""

    told: list[Told]
    names: list[str]
    measures: list[str]
    other: int


def sorted_canes(tables: list[Table], canes: list[Cane], canopy_form: int) -> Canes:
    """Each cane asked of the table; canes are lower, upper, third and the one from the arm."""
    told = [ask(tables, CANE, cane_facts(cane, canopy_form)) for cane in canes]
    return Canes(told, [one.name for one in canes], [one.measure for one in canes], other_of(told))


def cane_facts(cane: Cane, canopy_form: int) -> Facts:
    """One cane as the table asks it."""
    facts = given(no_facts(), "spur_cane_state", float(cane.state))
    facts = maybe_given(facts, "spur_cane_mm", cane.mm)
    facts = given(facts, "spur_cane_points", float(cane.points))
    return given(facts, "canopy_form", float(canopy_form))


def other_of(told: list[Told]) -> int:
    """Which of the canes above the lower one is compared with it: the lowest that is fit, or that has still to be measured; else the
    lowest that is alive; -1 without one."""
    for k in [UPPER, TOP]:
        if not told[k].settled or told[k].outcome in FIT:
            return k
    for k in [UPPER, TOP]:
        if told[k].outcome != NONE and told[k].outcome != UNSOUND:
            return k
    return NO_CANE


def other_told(canes: Canes) -> Told:
    """What the table said of the cane that is compared with the lower one; of the upper one where none is alive."""
    return canes.told[max(UPPER, canes.other)]


def stands(canes: Canes, place: int) -> bool:
    """True where there is a cane, sound or not."""
    return not canes.told[place].settled or canes.told[place].outcome != NONE


def told_lines(canes: Canes) -> list[Say]:
    """How each cane that stands was sorted."""
    lines: list[Say] = []
    for k in range(len(canes.told)):
        if stands(canes, k):
            one = canes.told[k]
            lines.append(Say("spur_position.sorted", [], [canes.names[k], one.word]) if one.settled else Say("spur_position.not_sorted", [], [canes.names[k]]))
    return lines


def cane_reasons(canes: Canes) -> list[Reason]:
    """The rows that sorted the canes that stand, each once."""
    found: list[Reason] = []
    for k in range(len(canes.told)):
        if stands(canes, k):
            found = joined(found, canes.told[k])
    return found
