"""For trainers: the faults of the pruner's work by grade, and the assessor's sheet for paper, both from the same list."""

from dataclasses import dataclass

from generator.pages import wording
from generator.pages.cites import Rest, rests, rows_page
from generator.pages.jinja import render
from generator.pages.paths import Links
from generator.reading.items import Caution
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision
from generator.reading.work_faults import GRADES, NAMED, WorkFault

PAGE, SHEET = "train.md", "sheet.md"
STYLE = "assets/guide/sheet.css"
CALCULATORS = ("ten_vine_test", "assessors_compared")
VINES = range(1, 11)
# The first word of a grade, and what it means.
GRADE = {"vine": ("Grade one", "costs the vine, or somebody's hand"), "crop": ("Grade two", "costs a crop"), "untidy": ("Grade three", "untidy")}
# The fact that says how many points a fault of a grade takes off.
POINTS = {"vine": "points_off_vine_fault", "crop": "points_off_crop_fault", "untidy": "points_off_untidy_fault"}


@dataclass(frozen=True)
class Row:
    """A row of a decision that says what a fault rests on, and the page on which it stands."""

    table: Decision
    id: str
    page: str


@dataclass(frozen=True)
class Shown:
    """A fault with its numbers put in, and what says so."""

    item: WorkFault
    texts: dict[str, str]
    rows: list[Row]
    rests: list[Rest]


def trainer_pages(rulebook: Rulebook) -> dict[str, str]:
    """The page for trainers, and the sheet."""
    return {PAGE: trainer_page(rulebook), SHEET: sheet(rulebook)}


def trainer_page(rulebook: Rulebook) -> str:
    """How to train and test with the list, and the list itself."""
    return render(
        "train.md.jinja",
        words=wording,
        links=Links(PAGE),
        grades=[(grade, *GRADE[grade], [shown(rulebook, one) for one in of_grade(rulebook, grade)]) for grade in GRADES],
        forms=[rulebook.calculators[name] for name in CALCULATORS if name in rulebook.calculators],
        cautions=cautions(rulebook),
        values=rulebook.values,
        looks=rulebook.looks,
    )


def sheet(rulebook: Rulebook) -> str:
    """The assessor's sheet: one side of paper, ten vines across, the faults down."""
    faults = [one for grade in GRADES for one in of_grade(rulebook, grade)]
    groups = [("Unsafe work", "one stroke, and the test is not passed", "", [one for one in faults if one.unsafe])]
    groups += [(*GRADE[grade], assumed(rulebook, POINTS[grade]), [one for one in faults if one.grade == grade and not one.unsafe]) for grade in GRADES]
    return render("sheet.md.jinja", links=Links(SHEET), style=Links(SHEET).to(STYLE), groups=groups, vines=VINES)


def assumed(rulebook: Rulebook, fact: str) -> str:
    """What a fact assumes, in words; "" where there is no such fact."""
    one = rulebook.facts.get(fact)
    return wording.assumed(one, rulebook.units.get(one.unit)) if one else ""


def of_grade(rulebook: Rulebook, grade: str) -> list[WorkFault]:
    """The faults of a grade, in the order of the rulebook."""
    return [one for one in rulebook.faults.values() if one.grade == grade]


def shown(rulebook: Rulebook, fault: WorkFault) -> Shown:
    """One fault with all that it names."""
    texts = {name: filled(rulebook, getattr(fault, name)) for name in ("what", "see", "why", "do")}
    named = [(rulebook.decisions[one.partition(".")[0]], one.partition(".")[2]) for one in fault.rows]
    return Shown(fault, texts, [Row(table, row, rows_page(table)) for table, row in named], rests(rulebook, fault.cites))


def filled(rulebook: Rulebook, text: str) -> str:
    """A text with the numbers of the values that it names."""

    def number(name: str) -> str:
        """The number of a value with its unit."""
        value = rulebook.values[name]
        return wording.with_unit(value.number, rulebook.units.get(value.unit))

    return NAMED.sub(lambda named: number(named[1]), text)


def cautions(rulebook: Rulebook) -> list[Caution]:
    """Every caution that a fault names, once."""
    names = dict.fromkeys(name for fault in rulebook.faults.values() for name in fault.cautions)
    return [rulebook.cautions[name] for name in names]
