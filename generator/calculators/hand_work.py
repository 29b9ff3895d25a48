"""The hand work of a layout on one vine: cuts with the shears or the saw, and ties."""

from dataclasses import dataclass

from generator.calculators.layout_records import CANE, NEW_ARM, VineLayoutResult

SPUR_CORDON: int = 0
CANE_HEAD: int = 1


@dataclass(frozen=True)
class HandWork:
    """Cuts and ties of one vine."""

    cuts: int
    ties: int


def hand_work(layout: VineLayoutResult, arms: int) -> HandWork:
    """Cuts and ties of a vine that has so many arms with spurs now, or none where it is a head with canes.

    A kept spur position takes two cuts: the upper cane off with the wood it stands on, the lower one to its nodes; a position given
    up takes one. A cane takes one cut to its length and one for its renewal spur; last year's wood behind it goes with one more:
    the old cane on a head, each arm where a cordon is given up or the one that is laid new. A cane is tied at two places, the bend and the tip.
    """
    given_up = max(0, layout.positions - len(layout.spurs))
    cuts = 2 * len(layout.spurs) + given_up + len(layout.canes) + len(layout.renewals)
    if layout.target == CANE and arms > 0:
        cuts = cuts + arms
    elif layout.target == CANE:
        cuts = cuts + len(layout.canes)
    elif layout.target == NEW_ARM:
        cuts = cuts + 1
    return HandWork(cuts, 2 * len(layout.canes))
