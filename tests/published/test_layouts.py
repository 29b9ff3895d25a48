"""Layouts that sources print, against how the guide lays the same nodes out. The source stands beside each row."""

import pytest

from generator.calculators.spur_layout import even_spurs
from generator.reading.rulebook import Rulebook
from tests.published.printed import prints


@pytest.mark.parametrize(
    ("evidence", "nodes", "bearers", "on_each"),
    [
        ("bp-06", 30, 10, 3),  # Odneal: thirty as five spurs of three on each of two arms
        ("sys-11", 100, 50, 2),  # Badr and others: Concord at 100 nodes on spurs of two
        ("sys-11", 100, 20, 5),
        ("sys-11", 100, 10, 10),
        ("sys-11", 80, 40, 2),  # the same: Niagara at 80
        ("sys-11", 80, 16, 5),
        ("sys-11", 80, 8, 10),
        ("sys-12", 36, 9, 4),  # Rosner and Cook: nine bearers of four
        ("sys-12", 32, 4, 8),
        ("sys-12", 30, 2, 15),
        ("sys-12", 68, 4, 17),
        ("sys-12", 40, 20, 2),  # the cordon beside them
        ("sys-20", 24, 12, 2),  # Robertson and others: twelve spurs of two, or of one
        ("sys-20", 12, 12, 1),
        ("yc-01", 48, 24, 2),  # Kliewer and Dokoozlian, Table 4: 24 two-node spurs
    ],
)
def test_nodes_fall_evenly_on_the_printed_bearers(rulebook: Rulebook, evidence: str, nodes: int, bearers: int, on_each: int) -> None:
    """As many nodes on as many bearers give what the source prints for each."""
    assert {nodes, bearers, on_each} <= prints(rulebook, evidence)
    assert even_spurs(nodes, bearers, on_each) == [on_each] * bearers
