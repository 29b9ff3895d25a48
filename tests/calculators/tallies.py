"""Invented tallies: random canes bud by bud, and the plain inputs of bud_fruitfulness, to be changed one at a time."""

import random
from dataclasses import replace
from typing import Any

from generator.calculators.bud_fruitfulness import BudFruitfulnessInputs, BudFruitfulnessResult, BudFruitfulnessValues, bud_fruitfulness
from generator.calculators.tally_counts import TallyRow
from tests.calculators.cases import OPEN, some

LIVE = ("buds_0", "buds_1", "buds_2", "buds_3")
LIMITS = BudFruitfulnessValues(
    basal_node_last=2.0, distal_node_last=8.0, nodes_per_long_spur_most=6.0, canes_cut_most=200.0, primordia_low=1.0, canes_for_likeness_least=20.0, secondary_share_usual=[]
)
BLOCK = BudFruitfulnessInputs(
    rows=[],
    confidence_pct=90.0,
    secondary_share=0.3,
    cane_budburst_node=[some(55), some(75), some(90), some(97), *[OPEN] * 11],
    budburst_pct=90.0,
    spur_budburst_pct=95.0,
    inner_zone_nodes=4,
    shoots_per_burst_node=1.03,
    dissection_to_spring=0.9,
    tally_date=OPEN,
    last_freeze_date=OPEN,
    target_yield_t_ha=some(6),
    bearing_vines_per_ha=some(4008.264),
    bunch_weight_g=some(115),
    vine_spacing_m=some(1.1),
    curtains=1,
    shoots_per_m_high=15.0,
    noncount_shoots_kept=OPEN,
)


def bud(cane: int, node: int, **counts: int) -> TallyRow:
    """A row in which only what is named was counted."""
    empty = dict.fromkeys(("buds_0", "buds_1", "buds_2", "buds_3", "dead_primary", "dead_node", "secondary_1", "secondary_2", "unreadable"), 0)
    return TallyRow(cane, node, **{**empty, **counts})


def canes(count: int, nodes: int, seed: int, dead: float = 0.1) -> list[TallyRow]:
    """So many canes with one bud at each node, some of them stronger than others; a part of the buds dead, lost or not to be read."""
    rng = random.Random(seed)
    rows = []
    for cane in range(1, count + 1):
        strength = rng.gauss(1.2, 0.3)
        for node in range(1, nodes + 1):
            if rng.random() < 0.97:
                rows.append(bud(cane, node, **{_state(rng, strength + 0.05 * node, dead): 1}))
    return rows


def _state(rng: random.Random, mean: float, dead: float) -> str:
    """The state of one bud."""
    if rng.random() < dead:
        return rng.choice(["dead_primary", "dead_primary", "dead_node", "unreadable"])
    return LIVE[min(3, max(0, round(rng.gauss(mean, 0.6))))]


def found(rows: list[TallyRow], **changes: Any) -> BudFruitfulnessResult:
    """What the calculator says of the rows in the plain block, with some inputs changed."""
    return bud_fruitfulness(replace(BLOCK, rows=rows, **changes), LIMITS)


def held(row: TallyRow) -> list[int]:
    """The primordia of each live primary of a row."""
    return [number for number, name in enumerate(LIVE) for _ in range(getattr(row, name))]


def at(rows: list[TallyRow], first: int, last: int) -> list[int]:
    """The primordia of each live primary at some nodes."""
    return [x for row in rows if first <= row.node <= last for x in held(row)]
