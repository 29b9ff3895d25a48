"""The printed windows of thickness and internodes, author by author, and how many of the canes lie in each (cs-01, cs-02, dis-04).

An author may print only one end. Nothing is averaged: of a cane it is said inside how many of the windows it lies.
"""

from dataclasses import dataclass

from generator.calculators.cane_judging import CandidateCane
from generator.calculators.facts import Maybe
from generator.calculators.figures import FITS, Compared, Figure, compared, number_of
from generator.calculators.say import Say

THICKNESS: list[str] = ["cane_choice.of_thickness", "cane_choice.thickness", "cane_choice.thickness_from", "cane_choice.thickness_to"]
INTERNODES: list[str] = ["cane_choice.of_internodes", "cane_choice.internodes", "cane_choice.internodes_from", "cane_choice.internodes_to"]


@dataclass(frozen=True)
class Windows:
    """Every author's least and most thickness (mm), and least and most internode (cm)."""

    thin: list[Figure]
    thick: list[Figure]
    short: list[Figure]
    long: list[Figure]


def windows_of(canes: list[CandidateCane], windows: Windows) -> list[Compared]:
    """A line for each author's window; canes whose internodes were not measured count for none."""
    thickness = [cane.cane_diameter_mm for cane in canes]
    internodes = [cane.internode_cm.number for cane in canes if cane.internode_cm.ok]
    return lines_of(THICKNESS, windows.thin, windows.thick, thickness) + lines_of(INTERNODES, windows.short, windows.long, internodes)


def lines_of(messages: list[str], least: list[Figure], most: list[Figure], numbers: list[float]) -> list[Compared]:
    """The lines of one measure: authors of a lower end, then those who print an upper one alone. messages: the topic, both ends, a lower
    end alone, an upper one alone."""
    found: list[Compared] = []
    for figure in least + [one for one in most if not number_of(least, one.id).ok]:
        low = number_of(least, figure.id)
        high = number_of(most, figure.id)
        inside = float(len([x for x in numbers if within_ends(low, high, x)]))
        all_of = float(len(numbers))
        says = Say(messages[1], [low.number, high.number, inside, all_of], [])
        if not high.ok:
            says = Say(messages[2], [low.number, inside, all_of], [])
        if not low.ok:
            says = Say(messages[-1], [high.number, inside, all_of], [])
        found.append(compared(Say(messages[0], [], []), figure, says, FITS))
    return found


def inside_of(least: list[Figure], most: list[Figure], x: float) -> int:
    """Inside how many of the windows with a lower end a number lies."""
    return len([one for one in least if within_ends(Maybe(True, one.number), number_of(most, one.id), x)])


def within_ends(low: Maybe, high: Maybe, x: float) -> bool:
    """True when a number lies between the ends that are there."""
    return (not low.ok or low.number <= x) and (not high.ok or x <= high.number)
