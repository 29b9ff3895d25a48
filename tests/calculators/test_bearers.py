"""What a bearer carries by dissection: the worked blocks 1 and 2 by hand arithmetic, and the rules of the tally."""

from dataclasses import replace

import pytest

from generator.calculators.bearers import Tally, bearer, buds_counted, burst_at, is_whole, void
from tests.calculators.cases import OPEN, some

COOL = Tally(
    primordia=[some(x) for x in (0.70, 0.85, 1.25, 1.4, 1.5, 1.5, 1.5, 1.5, 1.45, 1.4)] + [OPEN] * 5,
    cane_burst_pct=[some(x) for x in (55, 75, 90, 97)] + [OPEN] * 11,
    burst_pct=90.0,
    spur_burst_pct=95.0,
    dead_primary_pct=some(4),
    dead_primary_inner_pct=OPEN,
    dead_primary_outer_pct=OPEN,
    inner_nodes=4,
    dead_node_pct=1.0,
    secondary_share=0.3,
    shoots_per_burst_node=1.03,
    spring=1.0,
)
BARREN = replace(
    COOL,
    primordia=[some(x) for x in (0.08, 0.15, 0.35, 0.5, 0.65, 0.75, 0.85, 0.9, 0.95, 0.95, 0.9, 0.9, 0.85, 0.85)],
    cane_burst_pct=[some(x) for x in (45, 55, 65, 75, 80, 85)],
    dead_primary_pct=some(0),
    dead_node_pct=5.0,
    secondary_share=0.0,
    shoots_per_burst_node=1.0,
)


def per_node(tally, length, on_cane):
    """Bunches on each node of a bearer."""
    return bearer(buds_counted(tally), length, on_cane).bunches / length


def test_first_worked_block():
    """The cool cane block: a two-node spur 0.7146 bunches a node, a ten-node cane 11.73, both together on 11.09 shoots."""
    buds = buds_counted(COOL)
    spur, cane = bearer(buds, 2, on_cane=False), bearer(buds, 10, on_cane=True)
    assert spur.bunches / 2 == pytest.approx(0.7146, abs=5e-5)
    assert (cane.bunches, spur.bunches) == (pytest.approx(11.73, abs=5e-3), pytest.approx(1.43, abs=5e-3))
    assert spur.shoots + cane.shoots == pytest.approx(11.09, abs=5e-3)


def test_second_worked_block():
    """The barren base: 0.54 bunches on each node of a 14-node cane, 0.10 on spurs, 45.3 on six canes (the block's own tolerance is 1)."""
    assert per_node(BARREN, 14, on_cane=True) == pytest.approx(0.54, abs=5e-3)
    assert per_node(BARREN, 2, on_cane=False) == pytest.approx(0.10, abs=5e-3)
    assert 6 * bearer(buds_counted(BARREN), 14, on_cane=True).bunches == pytest.approx(45.3, abs=0.3)


def test_only_the_top_two_nodes_of_a_spur_burst_like_a_spur():
    """A four-node spur: its first two nodes burst as on a cane, the third and fourth as end nodes."""
    buds = buds_counted(COOL)
    assert [burst_at(buds, node, 4, on_cane=False) for node in (1, 2, 3, 4)] == [0.55, 0.75, 0.95, 0.95]


def test_a_node_that_was_not_counted_bursts_like_the_last_one_counted():
    """Counted up to node 4, the rest bursts like node 4; with nothing counted all burst like the block."""
    assert buds_counted(COOL).cane_burst[3:] == [0.97] * 7
    assert buds_counted(replace(COOL, cane_burst_pct=[OPEN] * 15)).cane_burst == [0.9] * 10


def test_a_zone_counted_apart_replaces_the_whole():
    """Dead primaries of 4 % up to node 4 and 30 % beyond it: P falls from 0.95 to 0.69 between nodes 4 and 5."""
    buds = buds_counted(replace(COOL, dead_primary_outer_pct=some(30)))
    assert buds.primary[3:5] == pytest.approx([0.95, 0.69])


def test_the_states_of_a_node_exclude_each_other():
    """60 % with the primary dead and 50 % with nothing alive cannot be; 50 and 50 leave no primary."""
    assert not is_whole(replace(COOL, dead_primary_pct=some(60), dead_node_pct=50.0))
    assert buds_counted(replace(COOL, dead_primary_pct=some(50), dead_node_pct=50.0)).primary == [0.0] * 10


def test_a_gap_ends_what_is_known():
    """Nodes 1 to 3 and 5 dissected: three are known, and a four-node spur cannot be reckoned."""
    buds = buds_counted(replace(COOL, primordia=COOL.primordia[:3] + [OPEN] + COOL.primordia[4:]))
    with pytest.raises(ValueError, match="as many as are known"):
        bearer(buds, 4, on_cane=False)


def test_q_raises_every_node_alike():
    """Half again as many inflorescences in spring as were seen in winter: half again as many bunches."""
    assert per_node(replace(COOL, spring=1.5), 10, True) == pytest.approx(1.5 * per_node(COOL, 10, True))


def test_a_tally_from_before_the_freeze_is_void():
    """Cut on the day of the freeze or before it, the buds say nothing of what is alive now; without dates nothing is void."""
    assert void(some(100), some(100)) and void(some(99), some(100))
    assert not void(some(101), some(100)) and not void(some(100), OPEN)
