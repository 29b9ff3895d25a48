"""A table's facts as axes cut into stretches, and rows as boxes of stretches: what the proofs about tables work on.

A box is one bit mask for each axis: bit k is set when the box allows stretch k.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from generator.answers.cutting import inside, stretches
from generator.answers.tables import column_spec
from generator.calculators.specs import FactSpec
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Cell, Decision

Box = tuple[int, ...]


@dataclass(frozen=True)
class Axis:
    """One fact of a table and the points tried in each of its stretches, ascending."""

    spec: FactSpec
    tried: list[list[float]]

    @property
    def whole(self) -> int:
        """The mask that allows everything."""
        return (1 << len(self.tried)) - 1

    def mask(self, cells: Iterable[Cell]) -> int:
        """The stretches that the cell on this fact allows; all of them when there is none."""
        for cell in cells:
            if cell.fact == self.spec.id:
                return sum(1 << k for k, points in enumerate(self.tried) if inside(cell.spans, points[0]))
        return self.whole


def axes_of(rulebook: Rulebook, decision: Decision) -> list[Axis]:
    """The axes of a table, cut wherever one of its rows or known gaps cuts."""
    cells = [cell for row in decision.rows for cell in row.when] + [cell for gap in decision.gaps for cell in gap.when]
    found = []
    for fact in decision.facts:
        spec = column_spec(rulebook, fact)
        found.append(Axis(spec, stretches(spec, [cell for cell in cells if cell.fact == fact])))
    return found


def box_of(axes: list[Axis], cells: Iterable[Cell]) -> Box:
    """The box of a row or a known gap."""
    kept = list(cells)
    return tuple(axis.mask(kept) for axis in axes)


def everything(axes: list[Axis]) -> Box:
    """The box of all that is possible."""
    return tuple(axis.whole for axis in axes)


def common(a: Box, b: Box) -> Box | None:
    """What two boxes share, or None."""
    shared = tuple(x & y for x, y in zip(a, b))
    return shared if all(shared) else None


def uncovered(region: Box, covers: list[Box]) -> Box | None:
    """One combination of stretches in the region that none of the covers holds, as a box; None when all is covered.

    Goes axis by axis; of the ways that leave the same covers only one is kept, so that the work does not grow with the
    number of combinations."""
    states: dict[int, tuple[int, ...]] = {(1 << len(covers)) - 1: ()}
    for axis, allowed in enumerate(region):
        restricted_later = sum(
            1 << k for k, cover in enumerate(covers) if any(r & ~c for r, c in zip(region[axis + 1 :], cover[axis + 1 :]))
        )
        grown: dict[int, tuple[int, ...]] = {}
        for bit in _bits(allowed):
            fitting = sum(1 << k for k, cover in enumerate(covers) if cover[axis] & bit)
            for alive, path in states.items():
                left = alive & fitting
                # A cover that asks nothing more holds everything from here on.
                if not left & ~restricted_later:
                    grown.setdefault(left, (*path, bit))
        states = grown
    return states.get(0)


def grown(start: Box, region: Box, axes: list[Axis], covers: list[Box]) -> Box:
    """The start widened within the region, axis by axis, as far as no cover is touched; on number lines only to neighbours."""
    box = list(start)
    for axis, line in enumerate(axes):
        wanted = [bit for bit in _bits(region[axis]) if not bit & box[axis]]
        jumps = line.spec.kind in ("choice", "yes_no")
        changed = True
        while changed:
            changed = False
            for bit in wanted:
                near = jumps or (box[axis] << 1 | box[axis] >> 1) & bit
                wider = (*box[:axis], box[axis] | bit, *box[axis + 1 :])
                if near and not bit & box[axis] and not any(common(wider, cover) for cover in covers):
                    box[axis] |= bit
                    changed = True
    return tuple(box)


def _bits(mask: int) -> list[int]:
    """The single bits of a mask, lowest first."""
    return [1 << k for k in range(mask.bit_length()) if mask >> k & 1]
