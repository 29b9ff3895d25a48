"""What each printed share of a secondary shoot would make of the two-node spur, so that everyone sees how much the choice decides."""

from generator.calculators.bearers import Buds
from generator.calculators.figures import FITS, Compared, Figure, compared
from generator.calculators.reach_sums import SPUR, Wish, carried
from generator.calculators.say import Say


def by_share(buds: list[Buds], wish: Wish, shares: list[Figure]) -> list[Compared]:
    """A line for each author's share; none where the bearers cannot be reckoned (no buds)."""
    if len(buds) == 0:
        return []
    return [compared(Say("bud_fruitfulness.shares", [], []), one, says_of(buds[0], wish, one.number), FITS) for one in shares]


def says_of(buds: Buds, wish: Wish, share: float) -> Say:
    """Bunches on each node of the two-node spur with a share, and its reach where a crop is wanted."""
    spur = carried(with_share(buds, share), wish, SPUR, False)
    if spur.reach.ok:
        return Say("bud_fruitfulness.share_reach", [share, spur.bunches / SPUR, spur.reach.number], [])
    return Say("bud_fruitfulness.share", [share, spur.bunches / SPUR], [])


def with_share(buds: Buds, share: float) -> Buds:
    """The buds with another crop on a secondary shoot."""
    return Buds(
        primordia=buds.primordia,
        cane_burst=buds.cane_burst,
        spur_burst=buds.spur_burst,
        primary=buds.primary,
        secondary=buds.secondary,
        share=share,
        double=buds.double,
        spring=buds.spring,
    )
