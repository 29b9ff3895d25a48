"""The vine as it stands in winter: a cordon with its live and missing spur positions, or a head with last year's canes."""

from dataclasses import dataclass

from generator.calculators.facts import Facts, known, maybe, number
from generator.calculators.hand_work import CANE_HEAD, SPUR_CORDON
from generator.calculators.layout_places import distance_of, first_arm_with_spurs
from generator.calculators.layout_records import CANE, VineLayoutResult
from generator.calculators.spur_layout import one_more
from generator.calculators.units import PER_CENT, mm


@dataclass(frozen=True)
class Stand:
    """How a vine stands: whether that is known; a cordon or a head; arms, their length, live and missing positions where it is a
    cordon (0 where they are not counted)."""

    known: bool
    on_cordon: bool
    arms: int
    arm_mm: int
    positions: int
    missing: int


@dataclass(frozen=True)
class Slot:
    """A spur position: its arm (0 is the first to the left, or the only one), mm from the head along the wire, live or missing."""

    arm: int
    distance_mm: int
    live: bool


def stand_of(facts: Facts, layout: VineLayoutResult) -> Stand:
    """The vine as the facts tell. Without its form it is taken for a cordon where positions were counted; other forms are not drawn.
    curtains must be known."""
    positions = maybe(facts, "live_spur_positions_per_vine")
    live = int(positions.number) if positions.ok else 0
    form = maybe(facts, "present_structure")
    on_cordon = int(form.number) == SPUR_CORDON if form.ok else live > 0
    on_head = form.ok and int(form.number) == CANE_HEAD
    arms = layout.arms
    if on_cordon and known(facts, "cordon_arms"):
        arms = max(1, int(number(facts, "cordon_arms")))
    elif on_cordon and layout.target == CANE:
        arms = 2 * int(number(facts, "curtains"))
    arm_mm = layout.arm_mm
    if on_cordon and known(facts, "arm_length_m"):
        arm_mm = min(mm(number(facts, "arm_length_m")), mm(number(facts, "vine_spacing_m")))
    gone = maybe(facts, "spur_positions_missing_pct")
    missing = 0
    if on_cordon and gone.ok and gone.number < PER_CENT:
        missing = round(float(live) * gone.number / (PER_CENT - gone.number))
    return Stand(on_cordon or on_head, on_cordon, arms, arm_mm, live, missing)


def slots_on(arms: int, first_arm: int, live: int, missing: int, first_mm: int, arm_mm: int) -> list[Slot]:
    """Positions shared out over the arms from `first_arm` on, evenly along each; which are missing is not known, so they are spread."""
    slots: list[Slot] = []
    bearing = arms - first_arm
    for k in range(bearing):
        here = (live + missing) * (k + 1) // bearing - (live + missing) * k // bearing
        gaps = missing * (k + 1) // bearing - missing * k // bearing
        for s in range(here):
            slots.append(Slot(k + first_arm, distance_of(first_mm, arm_mm, s, here), mid_one(s, gaps, here) == 0))
    return slots


def mid_one(place: int, extra: int, places: int) -> int:
    """1 where one of `extra` falls when they are spread over the places, each in the middle of its share, else 0."""
    return (2 * (place + 1) * extra + places) // (2 * places) - (2 * place * extra + places) // (2 * places)


def slots_of(layout: VineLayoutResult, stand: Stand) -> list[Slot]:
    """The positions of the arms that carry the layout's spurs; on new arms one for each spur."""
    if layout.target == CANE:
        return []
    live = len(layout.spurs)
    missing = 0
    if stand.on_cordon and not layout.positions_assumed:
        live = max(layout.positions, live)
        missing = stand.missing * (layout.arms - first_arm_with_spurs(layout)) // max(1, layout.arms)
    return slots_on(layout.arms, first_arm_with_spurs(layout), live, missing, layout.first_spur_mm, layout.arm_mm)


def nodes_at(slots: list[Slot], spurs: list[int]) -> list[int]:
    """The nodes of the spur at each position, 0 where there is none: the spurs in order, spread evenly over the live positions."""
    live = len([slot for slot in slots if slot.live])
    nodes: list[int] = []
    seen = 0
    given = 0
    for slot in slots:
        if slot.live and given < len(spurs) and one_more(seen, len(spurs), live) > 0:
            nodes.append(spurs[given])
            given += 1
        else:
            nodes.append(0)
        if slot.live:
            seen += 1
    return nodes
