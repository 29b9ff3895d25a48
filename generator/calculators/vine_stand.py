"""The vine as it stands in winter: a cordon with its live and missing spur positions, or a head with last year's canes."""

from dataclasses import dataclass

from generator.calculators.facts import Facts, Maybe, maybe, number
from generator.calculators.hand_work import CANE_HEAD, SPUR_CORDON
from generator.calculators.layout_places import distance_of, first_arm_with_spurs
from generator.calculators.layout_records import CANE, VineLayoutResult
from generator.calculators.spur_layout import one_more
from generator.calculators.units import PER_CENT, mm


@dataclass(frozen=True)
class Stand:
    """How a vine stands: whether that is known; a cordon or a head; arms, their length, live and missing positions where it is a
    cordon (0 where they are not counted); whether all that is taken as such vines stand, because nobody said it."""

    known: bool
    on_cordon: bool
    arms: int
    arm_mm: int
    positions: int
    missing: int
    assumed: bool


@dataclass(frozen=True)
class Told:
    """What was said of a vine: the ordinal of its form, live positions, missing ones in %, arms and their length in m; curtains, spacing in mm."""

    form: Maybe
    positions: Maybe
    missing_pct: Maybe
    arms: Maybe
    arm_length_m: Maybe
    curtains: int
    space_mm: int


@dataclass(frozen=True)
class Slot:
    """A spur position: its arm (0 is the first to the left, or the only one), mm from the head along the wire, live or missing."""

    arm: int
    distance_mm: int
    live: bool


def stand_of(facts: Facts, layout: VineLayoutResult) -> Stand:
    """The vine as the facts tell. Without its form it is taken for a cordon where positions were counted; other forms are not drawn.
    curtains and vine_spacing_m must be known."""
    told = Told(
        maybe(facts, "present_structure"),
        maybe(facts, "live_spur_positions_per_vine"),
        maybe(facts, "spur_positions_missing_pct"),
        maybe(facts, "cordon_arms"),
        maybe(facts, "arm_length_m"),
        int(number(facts, "curtains")),
        mm(number(facts, "vine_spacing_m")),
    )
    return stand_told(told, layout)


def stand_told(told: Told, layout: VineLayoutResult) -> Stand:
    """The same from what was said of the vine."""
    live = int(told.positions.number) if told.positions.ok else 0
    on_cordon = int(told.form.number) == SPUR_CORDON if told.form.ok else live > 0
    on_head = told.form.ok and int(told.form.number) == CANE_HEAD
    arms = layout.arms
    if on_cordon and told.arms.ok:
        arms = max(1, int(told.arms.number))
    elif on_cordon and layout.target == CANE:
        arms = 2 * told.curtains
    arm_mm = layout.arm_mm
    if on_cordon and told.arm_length_m.ok:
        arm_mm = min(mm(told.arm_length_m.number), told.space_mm)
    missing = 0
    if on_cordon and told.missing_pct.ok and told.missing_pct.number < PER_CENT:
        gone = float(live) * told.missing_pct.number / (PER_CENT - told.missing_pct.number)
        # No two positions stand closer than the nodes of the cane that the arm once was.
        missing = round(min(gone, float(arms * arm_mm // max(1, layout.internode_mm))))
    return Stand(on_cordon or on_head, on_cordon, arms, arm_mm, live, missing, False)


def stand_taken(told: Told, layout: VineLayoutResult, on_new_arm: int) -> Stand:
    """The vine as it was told, and where its form or its positions were not told as vines stand that get this layout: a head for canes, arms
    with the layout's positions for spurs; `on_new_arm` positions on each arm of a cordon that goes for canes."""
    stand = stand_told(told, layout)
    if told.form.ok and not stand.on_cordon or stand.positions > 0:
        return stand
    if not told.form.ok:
        return Stand(True, layout.target != CANE, layout.arms, layout.arm_mm, layout.positions, 0, True)
    live = stand.arms * on_new_arm if layout.target == CANE else layout.positions
    return Stand(True, True, stand.arms, stand.arm_mm, live, 0, True)


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
