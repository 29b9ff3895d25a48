"""The records of a block plan, and what its stages share."""

from dataclasses import dataclass

from generator.calculators.answer import STATUS_NAMES
from generator.calculators.drawing_shapes import Drawing
from generator.calculators.facts import ASSUMED, COMPUTED, Facts, Maybe, known, missing, place, weakest
from generator.calculators.figures import Figure
from generator.calculators.say import Say


@dataclass(frozen=True)
class Named:
    """A number that a stage gives, by name, in SI and unrounded unless it is counted."""

    id: str
    number: float


@dataclass(frozen=True)
class Part:
    """One part of the plan.

    id names the part and stage the stage of the work it belongs to; ready: it has something to say; settled: nothing that
    is still unknown would change it; choice: what was chosen, as an id ("" for nothing); possible: ids of the outcomes of a
    decision that are left; uses: the calculators and decisions behind it; needs: facts still needed, in the
    order to ask them; ask_next: the first of them ("" for none); rests_on: known facts it used; status: the weakest
    among theirs; lines: reasons and working in order; notes: what to mind; sources and cautions: those of the rows that decided.
    """

    id: str
    stage: str
    ready: bool
    settled: bool
    choice: str
    possible: list[str]
    uses: list[str]
    needs: list[str]
    ask_next: str
    rests_on: list[str]
    status: str
    headline: Say
    numbers: list[Named]
    lines: list[Say]
    notes: list[Say]
    sources: list[str]
    cautions: list[str]


@dataclass(frozen=True)
class Fruit:
    """The fruit's view of the node number: whole, exact, the ends when the crop swings; the calculators behind it; what it says."""

    nodes: int
    exact: float
    low: float
    high: float
    uses: list[str]
    headline: Say
    numbers: list[Named]
    lines: list[Say]
    notes: list[Say]


@dataclass(frozen=True)
class BlockPlanValues:
    """The values of the parts' calculators: see there. Of what the vine carries every author's rule (see capacity)."""

    interval_level_pct: float
    interval_z: float
    season_spread_pct: float
    extrapolation_limit_pct: float
    nodes_per_spur_most: float
    nodes_per_long_spur_most: float
    nodes_per_cane_most: float
    nodes_per_unripe_cane_most: float
    canes_per_vine_most: float
    canes_beside_spurs: float
    nodes_per_renewal_spur: float
    spur_spacing_m: float
    severed_at_node: float
    canes_cut_most: float
    balanced_first_nodes: list[Figure]
    balanced_further_nodes: list[Figure]
    balanced_unit_kg: list[Figure]
    balanced_vine_least_kg: list[Figure]
    balanced_vine_most_kg: list[Figure]
    nodes_per_kg: list[Figure]
    effective_thin_from_mm: float
    effective_thick_over_mm: float


@dataclass(frozen=True)
class Plan:
    """The plan: its parts in the order of the work; settled when all are; the fact to find out next on a walk through the block
    ("" for none); the weakest status; the facts that were assumed; drawings of the vine before and after (no shapes while open)."""

    settled: bool
    ask_next: str
    status: str
    headline: Say
    parts: list[Part]
    assumed: list[str]
    before: Drawing
    drawing: Drawing


def waiting(part: str, stage: str, facts: Facts, asked: list[str], headline: Say) -> Part:
    """A part that cannot say anything yet; asked are the facts it needs, known or not."""
    needs = missing(facts, asked)
    rests_on = [fact for fact in asked if known(facts, fact)]
    return Part(
        id=part,
        stage=stage,
        ready=False,
        settled=False,
        choice="",
        possible=[],
        uses=[],
        needs=needs,
        ask_next=first_of(needs),
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=headline,
        numbers=[],
        lines=[],
        notes=[],
        sources=[],
        cautions=[],
    )


def not_asked(part: str, stage: str, facts: Facts, rests_on: list[str], headline: Say) -> Part:
    """A part that an earlier answer makes needless: nothing is open in it."""
    return Part(
        id=part,
        stage=stage,
        ready=True,
        settled=True,
        choice="",
        possible=[],
        uses=[],
        needs=[],
        ask_next="",
        rests_on=rests_on,
        status=status_of(facts, rests_on),
        headline=headline,
        numbers=[],
        lines=[],
        notes=[],
        sources=[],
        cautions=[],
    )


def first_of(names: list[str]) -> str:
    """The first name, or ""."""
    if len(names) > 0:
        return names[0]
    return ""


def status_of(facts: Facts, names: list[str]) -> str:
    """The name of the weakest status among known facts."""
    return STATUS_NAMES[weakest(facts, names)]


def known_of(facts: Facts, names: list[str]) -> list[str]:
    """Those of the facts that are known."""
    return [fact for fact in names if known(facts, fact)]


def found(parts: list[Part], number: str) -> Maybe:
    """A number that an earlier part gave."""
    for part in parts:
        for one in part.numbers:
            if one.id == number:
                return Maybe(True, one.number)
    return Maybe(False, 0.0)


def choice_of(parts: list[Part], part: str) -> str:
    """What an earlier part chose; "" when it chose nothing or is not there."""
    for one in parts:
        if one.id == part:
            return one.choice
    return ""


def is_settled(parts: list[Part], part: str) -> bool:
    """True when an earlier part is there and settled."""
    return any(one.id == part and one.settled for one in parts)


def part_named(parts: list[Part], part: str) -> Part:
    """An earlier part by its id. Raises ValueError when it is not there."""
    for one in parts:
        if one.id == part:
            return one
    raise ValueError("no such part")


def rests_of(parts: list[Part], part: str) -> list[str]:
    """The facts that an earlier part rests on."""
    for one in parts:
        if one.id == part:
            return one.rests_on
    return []


def assumed_of(parts: list[Part], facts: Facts) -> list[str]:
    """The facts that some part used and nobody gave, each once."""
    names: list[str] = []
    for part in parts:
        for fact in part.rests_on:
            if fact not in names and facts.statuses[place(facts, fact)] == ASSUMED:
                names.append(fact)
    return names


def weakest_of(parts: list[Part]) -> str:
    """The weakest status among the parts that say something."""
    weak = COMPUTED
    for part in parts:
        for k, name in enumerate(STATUS_NAMES):
            if part.ready and part.status == name:
                weak = min(weak, k)
    return STATUS_NAMES[weak]
