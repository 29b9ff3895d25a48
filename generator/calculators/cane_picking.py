"""Which canes are laid, which make the renewal spurs, and which is the reserve cane.

Agronomy, section 4 (K17 to K23). All sets of canes that can be laid together are tried: none crosses the head, and each side gets half at
most, and one from above the wire has a lower spur under it. The best lays the most canes up to those wanted; then it has a renewal spur below
one of them at least, lays the most of good wood, has the most spurs, and takes the best canes. Evidence: cs-02, cs-15, hg-01.
"""

from dataclasses import dataclass

from generator.calculators.cane_judging import KEEP, Judged, above_wire, better, can_be_laid, can_be_spur, good_wood, last_resort, low_enough

LEFT: int = 0
RIGHT: int = 1
MIDDLE: int = 2


@dataclass(frozen=True)
class Picked:
    """Places among the canes: those laid with the side of each (MIDDLE: it is the only one, and may go either way), renewal spurs, spurs in
    the place of canes that are lacking, and the reserve cane (at most one)."""

    laid: list[int]
    sides: list[int]
    spurs: list[int]
    others: list[int]
    spare: list[int]


@dataclass(frozen=True)
class Wanted:
    """Canes and renewal spurs wanted, spurs at most in the place of a cane that is lacking, and whether a reserve cane is."""

    canes: int
    spurs: int
    instead: int
    reserve: bool


def pick(canes: list[Judged], wanted: Wanted) -> Picked:
    """The choice. canes are in the order in which they were entered."""
    best: list[int] = []
    spurs: list[int] = spurs_for(canes, best, wanted)
    sets = 1
    for _ in canes:
        sets = sets * 2
    for choice in range(1, sets):
        laid = places_of(canes, choice)
        if len(laid) <= wanted.canes and all(can_be_laid(canes[k]) for k in laid) and fits_sides(canes, laid, wanted.canes):
            low = spurs_for(canes, laid, wanted)
            if all(not above_wire(canes[k]) or served(canes, low, k, wanted) for k in laid) and beats(canes, laid, low, best, spurs):
                best = laid
                spurs = low
    for k in best:
        near = [s for s in range(len(canes)) if s not in best and s not in spurs and stands_in(canes[s], canes[k], wanted)]
        if len(near) > 0 and len(spurs) < wanted.spurs and not served(canes, spurs, k, wanted):
            spurs = spurs + lowest_of(canes, near)[:1]
    left = [k for k in range(len(canes)) if k not in best and k not in spurs]
    spare = best_of(canes, [k for k in left if can_be_laid(canes[k])])[:1] if wanted.reserve else []
    rest = [k for k in left if k not in spare and can_be_spur(canes[k])]
    # Spurs that serve no laid cane stand in the place of a missing one already.
    instead = wanted.instead * (wanted.canes - len(best)) - max(0, len(spurs) - len(best))
    others = lowest_of(canes, rest)[: max(0, instead)]
    if len(best + spurs + others + spare) == 0:
        # What is thin or suspect is not laid; cut off altogether it would leave the vine without a node.
        others = lowest_of(canes, [k for k in left if last_resort(canes[k])])[: wanted.instead]
    return Picked(best, sides_of(canes, best, wanted.canes), spurs, others, spare)


def places_of(canes: list[Judged], choice: int) -> list[int]:
    """The set of canes that a number stands for: the first cane is its last binary digit."""
    found: list[int] = []
    rest = choice
    for k in range(len(canes)):
        if rest % 2 == 1:
            found.append(k)
        rest = rest // 2
    return found


def fits_sides(canes: list[Judged], laid: list[int], wanted: int) -> bool:
    """True when no cane has to cross the head: of those that begin left or right, no more than half of the canes wanted. A single cane
    may go either way."""
    half = (wanted + 1) // 2
    return wanted == 1 or (count_at(canes, laid, LEFT) <= half and count_at(canes, laid, RIGHT) <= half)


def count_at(canes: list[Judged], places: list[int], side: int) -> int:
    """How many of them begin on a side."""
    return len([k for k in places if canes[k].cane.cane_side == side])


def sides_of(canes: list[Judged], laid: list[int], wanted: int) -> list[int]:
    """The side to which each is laid: its own, and canes from the middle to the side that has fewer, the left first."""
    if wanted == 1:
        return [canes[k].cane.cane_side for k in laid]
    left = count_at(canes, laid, LEFT)
    right = count_at(canes, laid, RIGHT)
    found: list[int] = []
    for k in laid:
        side = canes[k].cane.cane_side
        if side == MIDDLE:
            side = LEFT if left <= right else RIGHT
            left = left + (1 if side == LEFT else 0)
            right = right + (1 if side == RIGHT else 0)
        found.append(side)
    return found


def spurs_for(canes: list[Judged], laid: list[int], wanted: Wanted) -> list[int]:
    """Renewal spurs: for each laid cane in turn, and again while more are wanted, the lowest sound cane under it; where nothing is laid, the
    lowest ones."""
    if len(laid) == 0:
        return lowest_of(canes, [k for k in range(len(canes)) if can_be_spur(canes[k])])[: wanted.spurs]
    found: list[int] = []
    for _ in range(wanted.spurs):
        for k in laid:
            under = [s for s in range(len(canes)) if s not in laid and s not in found and serves(canes[s], canes[k], wanted)]
            if len(under) > 0 and len(found) < wanted.spurs:
                found.append(lowest_of(canes, under)[0])
    return found


def serves(spur: Judged, laid: Judged, wanted: Wanted) -> bool:
    """True when a cane makes the renewal spur of a laid one: sound and on its side, no higher and no farther out; or, beside good wood, nearer
    to the middle and itself low enough."""
    one = spur.cane
    other = laid.cane
    under = spur.base_cm >= laid.base_cm and one.cane_base_out_cm <= other.cane_base_out_cm
    nearer = good_wood(laid) and low_enough(spur) and one.cane_base_out_cm < other.cane_base_out_cm
    return can_be_spur(spur) and beside(spur, laid, wanted) and (under or nearer)


def stands_in(spur: Judged, laid: Judged, wanted: Wanted) -> bool:
    """True when a cane is better than waiting for a watershoot: sound, on the side of the laid one, low enough and no farther out, though it
    may stand higher."""
    near = low_enough(spur) and spur.cane.cane_base_out_cm <= laid.cane.cane_base_out_cm
    return can_be_spur(spur) and beside(spur, laid, wanted) and near


def beside(spur: Judged, laid: Judged, wanted: Wanted) -> bool:
    """True for two canes of one side. Canes from the middle go with either, and where the vine has one cane the spur may stand across."""
    one = spur.cane.cane_side
    other = laid.cane.cane_side
    return wanted.canes == 1 or one == other or one == MIDDLE or other == MIDDLE


def served(canes: list[Judged], spurs: list[int], laid: int, wanted: Wanted) -> bool:
    """True when one of the spurs makes the renewal spur of a laid cane."""
    return any(serves(canes[s], canes[laid], wanted) for s in spurs)


def has_spur(canes: list[Judged], spurs: list[int], laid: int, wanted: Wanted) -> bool:
    """True when one of the spurs makes the renewal spur of a laid cane, or stands in for it."""
    return served(canes, spurs, laid, wanted) or any(stands_in(canes[s], canes[laid], wanted) for s in spurs)


def lowest_of(canes: list[Judged], places: list[int]) -> list[int]:
    """The lowest first; of equally low ones the nearest to the middle, then those that cannot be laid, then the first."""
    by_use = sorted(places, key=lambda k: canes[k].nodes)
    by_reach = sorted(by_use, key=lambda k: canes[k].cane.cane_base_out_cm)
    return sorted(by_reach, key=lambda k: -canes[k].base_cm)


def best_of(canes: list[Judged], places: list[int]) -> list[int]:
    """Those to be laid first in front; of equals the first."""
    by_points = sorted(places, key=lambda k: -canes[k].points)
    return [k for k in by_points if canes[k].verdict.outcome == KEEP] + [k for k in by_points if canes[k].verdict.outcome != KEEP]


def beats(canes: list[Judged], laid: list[int], spurs: list[int], before: list[int], spurs_before: list[int]) -> bool:
    """True when a choice is better than the best so far: more canes laid, a spur under them, more of good wood, more spurs, more of the
    kept, more points; the first of these that differs counts."""
    one = worth_of(canes, laid, spurs)
    other = worth_of(canes, before, spurs_before)
    for k in range(len(one)):
        if one[k] != other[k]:
            return one[k] > other[k]
    return False


def worth_of(canes: list[Judged], laid: list[int], spurs: list[int]) -> list[float]:
    """What a choice is measured by, the weightiest first."""
    good = len([k for k in laid if good_wood(canes[k])])
    kept = len([k for k in laid if canes[k].verdict.outcome == KEEP])
    return [float(len(laid)), float(min(1, len(spurs))), float(good), float(len(spurs)), float(kept), points_of(canes, laid)]


def points_of(canes: list[Judged], places: list[int]) -> float:
    """The points of a set (halves and wholes, so any order gives the same)."""
    total = 0.0
    for k in places:
        total = total + canes[k].points
    return total


def low_one_is_better(canes: list[Judged], picked: Picked) -> bool:
    """True when some renewal spur is cut from a cane that would have been laid before one of those that are."""
    return any(any(can_be_laid(canes[s]) and better(canes[s], canes[k]) for k in picked.laid) for s in picked.spurs)
