"""Canes on the wire of one vine: how many, how long, and what the wire lacks."""

from dataclasses import dataclass

from generator.calculators.cane_path import nodes_on, path_to_right
from generator.calculators.drawing_shapes import length_mm
from generator.calculators.spur_layout import one_more


@dataclass(frozen=True)
class CanePlace:
    """Canes of one vine, the nodes on all of them, the wire that each has (mm), the nodes that fit on one, the nodes that found
    no place, the mm that the shortest cane leaves bare, and the mm that each cane's wire is too short (0 when it is the cane and not the wire that ends)."""

    canes: int
    cane_nodes: int
    wire_mm: int
    fit: int
    short_nodes: int
    bare_mm: int
    wire_short_mm: int


def wire_for(canes: int, space_mm: int, gap_mm: int) -> int:
    """The wire of one cane or arm in mm (evidence hg-05): one alone has the whole spacing less the gap, two or more have half of that.
    Raises ValueError when the gap leaves no wire."""
    if gap_mm >= space_mm:
        raise ValueError("the gap between the tips must be smaller than the spacing")
    if canes == 1:
        return space_mm - gap_mm
    return (space_mm - gap_mm) // 2


def place_canes(
    nodes: int, first: int, most_canes: int, renewal: int, most_nodes: int, space_mm: int, gap_mm: int, rise_mm: int, internode_mm: int
) -> CanePlace:
    """The fewest canes, from `first` upwards, that carry the nodes beside a renewal spur for each; else what `most_canes` carry."""
    placed = try_canes(nodes, first, renewal, most_nodes, space_mm, gap_mm, rise_mm, internode_mm)
    for canes in range(first + 1, most_canes + 1):
        if placed.short_nodes > 0:
            placed = try_canes(nodes, canes, renewal, most_nodes, space_mm, gap_mm, rise_mm, internode_mm)
    return placed


def try_canes(
    nodes: int, canes: int, renewal: int, most_nodes: int, space_mm: int, gap_mm: int, rise_mm: int, internode_mm: int
) -> CanePlace:
    """A number of canes: what they carry, and what is missing. Each cane keeps at least one node."""
    wire = wire_for(canes, space_mm, gap_mm)
    path = path_to_right(rise_mm, wire, 0)
    on_wire = max(1, nodes_on(path, internode_mm))
    fit = min(on_wire, most_nodes)
    wanted = max(canes, nodes - canes * renewal)
    laid = min(wanted, canes * fit)
    longest = (wanted + canes - 1) // canes
    lacks = 0
    if longest > on_wire:
        lacks = (longest - on_wire) * internode_mm
    bare = max(0, round(length_mm(path)) - laid // canes * internode_mm)
    return CanePlace(canes, laid, wire, fit, wanted - laid, bare, lacks)


def canes_of(placed: CanePlace) -> list[int]:
    """The nodes on each cane, as alike as they can be."""
    base = placed.cane_nodes // placed.canes
    extra = placed.cane_nodes % placed.canes
    return [base + one_more(k, extra, placed.canes) for k in range(placed.canes)]
