"""Which positions get the longer spurs, so that the shoots stand as evenly along the wire as these lengths allow.

The wire has four quarters, and within a quarter it makes no difference where a longer spur stands. Every spur gets the shortest length first;
each further lump of nodes goes to the quarter that has least and a spur left to lengthen. Lumps of one size laid like that give the fullest barest
quarter and the emptiest densest one at once; a lump of another size, of which there is one at most, is tried in every quarter.
"""

from dataclasses import dataclass

from generator.calculators.layout_places import QUARTERS, Ground, how_many
from generator.calculators.layout_records import VineLayoutResult
from generator.calculators.spur_layout import one_more


@dataclass(frozen=True)
class Level:
    """How the lengths of spurs are shared out over the quarters: how many of the long ones each gets, the quarter of the odd one (-1 for none),
    and the nodes that stand in each quarter at last, with all else that stands there."""

    given: list[int]
    odd_quarter: int
    loads: list[int]


def level_of(layout: VineLayoutResult, beside: list[int], room: list[int]) -> Level:
    """The lengths of a layout's spurs, of which each quarter has `room`, shared out so that the nodes, with those that stand `beside` in each
    quarter, are as level as they can be."""
    if len(layout.spurs) == 0:
        return Level([0] * QUARTERS, -1, beside)
    short = min(layout.spurs)
    more = max(layout.spurs) - short
    lumps = how_many(layout.spurs, short + more) if more > 0 else 0
    odd = [nodes - short for nodes in layout.spurs if nodes != short and nodes != short + more]
    loads = [beside[k] + short * room[k] for k in range(QUARTERS)]
    if len(odd) == 0:
        return filled(lumped(loads, room, lumps, more), -1, loads, more)
    tried: list[Level] = []
    for k in range(QUARTERS):
        if room[k] > 0:
            with_odd = plus(loads, k, odd[0])
            tried.append(filled(lumped(with_odd, plus(room, k, -1), lumps, more), k, with_odd, more))
    return sorted(tried, key=lambda level: -share_of(level.loads))[0]


def filled(given: list[int], odd_quarter: int, loads: list[int], more: int) -> Level:
    """A way to share the lengths out, with what it makes of the loads."""
    return Level(given, odd_quarter, [loads[k] + given[k] * more for k in range(QUARTERS)])


def plus(numbers: list[int], place: int, more: int) -> list[int]:
    """The same numbers with one of them larger."""
    return [one + more if k == place else one for k, one in enumerate(numbers)]


def lumped(loads: list[int], room: list[int], lumps: int, size: int) -> list[int]:
    """How many lumps each quarter gets: one after the other to the least loaded quarter that has room for one."""
    given = [0] * QUARTERS
    full = loads
    for lump in range(lumps):
        least = -1
        for k in range(QUARTERS):
            if given[k] < room[k] and (least < 0 or full[k] < full[least]):
                least = k
        if least < 0:
            return given
        given = plus(given, least, 1)
        full = plus(full, least, size)
    return given


def share_of(loads: list[int]) -> float:
    """The barest quarter over the densest."""
    return float(min(loads)) / float(max(1, max(loads)))


def arranged(layout: VineLayoutResult, level: Level, ground: Ground) -> VineLayoutResult:
    """The same layout with its spurs where they level the shoots: within a quarter the longer ones spread, the odd one on the first place left."""
    if len(layout.spurs) == 0 or min(layout.spurs) == max(layout.spurs):
        return layout
    short = min(layout.spurs)
    long = max(layout.spurs)
    odd = [nodes for nodes in layout.spurs if nodes != short and nodes != long]
    lengths: list[int] = []
    seen = [0] * QUARTERS
    odd_left = len(odd)
    for quarter in ground.quarters:
        length = short
        if one_more(seen[quarter], level.given[quarter], ground.room[quarter]) > 0:
            length = long
        elif quarter == level.odd_quarter and odd_left > 0:
            length = odd[0]
            odd_left = 0
        lengths.append(length)
        seen = plus(seen, quarter, 1)
    return with_spurs(layout, lengths)


def with_spurs(layout: VineLayoutResult, spurs: list[int]) -> VineLayoutResult:
    """The same layout with other spurs."""
    return VineLayoutResult(
        layout.target,
        layout.nodes,
        layout.cane_nodes,
        layout.spur_nodes,
        layout.renewal_nodes,
        spurs,
        layout.canes,
        layout.renewals,
        layout.short_nodes,
        layout.wire_short_mm,
        layout.arms,
        layout.arm_mm,
        layout.first_spur_mm,
        layout.positions,
        layout.wire_mm,
        layout.internode_mm,
        layout.rise_mm,
        layout.positions_assumed,
        layout.headline,
        layout.working,
        layout.notes,
    )
