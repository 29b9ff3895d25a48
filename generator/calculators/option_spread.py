"""Which positions get the longer spurs, so that the shoots stand as evenly along the wire as these lengths allow.

The wire has four quarters, and within a quarter it makes no difference where a longer spur stands. Every spur gets the shortest length first;
each further lump of nodes goes to the quarter that has least and a spur left to lengthen. Lumps of one size laid like that give the fullest barest
quarter and the emptiest densest one at once; a lump of another size, of which there is one at most, is tried in every quarter.
"""

from generator.calculators.layout_places import QUARTERS, distance_of, first_arm_with_spurs, goes_left, node_places, quarter_of
from generator.calculators.layout_records import VineLayoutResult
from generator.calculators.spur_layout import one_more


def levelled(layout: VineLayoutResult, space_mm: int) -> VineLayoutResult:
    """The same layout with its spurs where they level the shoots along the wire; as it is where all spurs are alike."""
    if len(layout.spurs) == 0 or min(layout.spurs) == max(layout.spurs):
        return layout
    quarters = quarters_of_spurs(layout, space_mm)
    room = [len([one for one in quarters if one == k]) for k in range(QUARTERS)]
    short = min(layout.spurs)
    long = max(layout.spurs)
    odd = [nodes for nodes in layout.spurs if nodes != short and nodes != long]
    others = [quarter_of(x, layout.arms, space_mm) for x in node_places(with_spurs(layout, []))]
    loads = [len([one for one in others if one == k]) + short * room[k] for k in range(QUARTERS)]
    lumps = len([nodes for nodes in layout.spurs if nodes == long])
    given = lumped(loads, room, lumps, long - short)
    place = -1
    for k in range(QUARTERS):
        if len(odd) > 0 and room[k] > 0:
            tried = lumped(plus(loads, k, odd[0] - short), plus(room, k, -1), lumps, long - short)
            if place < 0 or share_of(plus(loads, k, odd[0] - short), tried, long - short) > share_of(plus(loads, place, odd[0] - short), given, long - short):
                place = k
                given = tried
    return with_spurs(layout, lengths_at(quarters, room, given, place, short, long, odd))


def quarters_of_spurs(layout: VineLayoutResult, space_mm: int) -> list[int]:
    """The quarter of each spur, in the order of the list of spurs: on arms to the left from the tip to the head."""
    first = first_arm_with_spurs(layout)
    arms = layout.arms - first
    quarters: list[int] = []
    for k in range(arms):
        own = (k + 1) * len(layout.spurs) // arms - k * len(layout.spurs) // arms
        left = goes_left(layout.arms, k + first)
        for s in range(own):
            away = distance_of(layout.first_spur_mm, layout.arm_mm, own - 1 - s if left else s, own)
            quarters.append(quarter_of(-away if left else away, layout.arms, space_mm))
    return quarters


def plus(numbers: list[int], place: int, more: int) -> list[int]:
    """The same numbers with one of them larger."""
    return [one + more if k == place else one for k, one in enumerate(numbers)]


def lumped(loads: list[int], room: list[int], lumps: int, size: int) -> list[int]:
    """How many lumps each quarter gets: one after the other to the least loaded quarter that has room for one."""
    given = [0] * QUARTERS
    for lump in range(lumps):
        least = -1
        for k in range(QUARTERS):
            if given[k] < room[k] and (least < 0 or loads[k] + given[k] * size < loads[least] + given[least] * size):
                least = k
        if least >= 0:
            given = plus(given, least, 1)
    return given


def share_of(loads: list[int], given: list[int], size: int) -> float:
    """The barest quarter over the densest."""
    full = [loads[k] + given[k] * size for k in range(QUARTERS)]
    return float(min(full)) / float(max(1, max(full)))


def lengths_at(quarters: list[int], room: list[int], given: list[int], place: int, short: int, long: int, odd: list[int]) -> list[int]:
    """The length of each spur: within a quarter the longer ones spread, and the odd one on the first place that is left in its quarter."""
    lengths: list[int] = []
    seen = [0] * QUARTERS
    odd_given = False
    for quarter in quarters:
        longer = one_more(seen[quarter], given[quarter], room[quarter]) > 0
        seen = plus(seen, quarter, 1)
        if longer:
            lengths.append(long)
        elif quarter == place and not odd_given:
            lengths.append(odd[0])
            odd_given = True
        else:
            lengths.append(short)
    return lengths


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
