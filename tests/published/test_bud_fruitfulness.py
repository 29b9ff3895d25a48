"""What a tally gives, against what is printed of sampling schemes, fruit by node, dead primaries and secondaries."""

import numpy as np
import pytest

from generator.calculators.tally_counts import TallyRow
from generator.reading.rulebook import Rulebook
from tests.calculators.cases import OPEN, some
from tests.calculators.tallies import at, bud, found
from tests.published.printed import prints

NO_BURST = [OPEN] * 15
PLAIN = {"cane_budburst_node": NO_BURST, "budburst_pct": 100.0, "spur_budburst_pct": 100.0, "shoots_per_burst_node": 1.0, "dissection_to_spring": 1.0}


def everywhere(nodes: int, **counts: int) -> list[TallyRow]:
    """The same counts at every node from 1, without numbers of canes."""
    return [bud(0, node, **counts) for node in range(1, nodes + 1)]


def scheme(units: int, nodes: list[int]) -> list[TallyRow]:
    """So many canes or spurs with one bud at each of the nodes."""
    return [bud(unit, node, **{f"buds_{(unit + node) % 3}": 1}) for unit in range(1, units + 1) for node in nodes]


@pytest.mark.parametrize(
    ("evidence", "units", "nodes", "total"),
    [
        ("bd-02", 50, list(range(16)), 800),
        ("bd-02", 100, [1, 2], 200),
        ("bd-03", 20, [3, 6, 9, 12], 80),
        ("bd-04", 30, [1, 2, 3, 4, 5], 150),
    ],
)
def test_a_printed_scheme_fits_into_a_tally(rulebook: Rulebook, evidence: str, units: int, nodes: list[int], total: int) -> None:
    """Units times positions are the buds in the rows, one row for each position, the base bud among them."""
    rows = found(scheme(units, nodes)).rows
    assert units in prints(rulebook, evidence)
    assert [row.node for row in rows] == nodes
    assert sum(row.buds for row in rows) == total
    if evidence != "bd-03":
        assert total in prints(rulebook, evidence)


def test_the_rows_of_a_tally_reach_as_far_as_the_longest_scheme(rulebook: Rulebook) -> None:
    """bd-02: canes are cut from node 0 to node 15."""
    (column,) = [one for one in rulebook.calculators["bud_fruitfulness"].rows if one.id == "node"]
    assert [column.low, column.high] == rulebook.evidence["bd-02"].inputs["nodes"]


def test_buds_3_6_9_and_12_settle_no_bearer() -> None:
    """bd-03: a laboratory takes buds 3, 6, 9 and 12 of a cane. What they hold is told; a spur needs nodes 1 and 2, so none is reckoned."""
    result = found(scheme(20, [3, 6, 9, 12]))
    assert result.bearers == [] and result.distal_mean.ok
    assert "bud_fruitfulness.no_bearers" in [note.id for note in result.notes]


@pytest.mark.parametrize(("buds", "printed"), [(20, 0.307), (30, 0.25), (100, 0.137)])
def test_the_standard_error_is_that_of_the_planners_table(rulebook: Rulebook, buds: int, printed: float) -> None:
    """bd-11: 1.96 standard errors of a mean of buds that spread by 0.7. Ours, for buds that spread by sd, is 0.7 / sd times as wide."""
    rows = scheme(buds, [1])
    result = found(rows)
    assert printed in prints(rulebook, "bd-11")
    assert 1.96 * result.rows[0].se.number * 0.7 / np.std(at(rows, 1, 1), ddof=1) == pytest.approx(printed, abs=0.0006)


@pytest.mark.parametrize(("buds", "printed"), [(20, 0.1753), (30, 0.1431), (100, 0.0784)])
def test_the_share_of_fruitful_buds_is_as_sure_as_in_print(rulebook: Rulebook, buds: int, printed: float) -> None:
    """bd-11: half the width at 95 % with four buds of five fruitful, by the plain formula. Wilson's is a little narrower here, by a
    hundredth at most, and leans to the middle."""
    row = found([bud(0, 1, buds_0=buds // 5, buds_1=buds - buds // 5)], confidence_pct=95.0).rows[0]
    half = (row.fruitful_high_pct.number - row.fruitful_low_pct.number) / 200
    assert printed in prints(rulebook, "bd-11")
    assert printed - 0.01 < half < printed
    assert 80 - row.fruitful_low_pct.number > row.fruitful_high_pct.number - 80


def test_a_barren_bud_is_no_dead_bud() -> None:
    """bd-08: a laboratory's classes keep `no primordium` apart from `primary bud dead`. Barren ones lower the mean of the living, dead ones
    do not."""
    fruitful, barren, dead = [bud(0, 1, buds_2=4)], [bud(0, 1, buds_0=4)], [bud(0, 1, dead_primary=4)]
    assert found(fruitful + barren).mean_live.number == 1.0
    assert found(fruitful + dead).mean_live.number == 2.0


@pytest.mark.parametrize(("low", "said"), [(25, False), (26, True)])
def test_too_little_fruit_is_said_below_the_printed_limit(rulebook: Rulebook, low: int, said: bool) -> None:
    """bd-04: below one primordium for each bud the pruning is to be changed. A hundred buds with one on average are not below it."""
    notes = [note.id for note in found([bud(0, 1, buds_0=low, buds_1=100 - low - 25, buds_2=25)]).notes]
    assert 1.0 in prints(rulebook, "bd-04")
    assert ("bud_fruitfulness.low_fruit" in notes) is said


def test_basal_and_distal_are_the_printed_nodes(rulebook: Rulebook) -> None:
    """nf-05: nodes 1 and 2 usually little fertile, nodes 3 to 8 most."""
    printed = rulebook.evidence["nf-05"].outputs
    _, basal, distal = found(scheme(4, list(range(1, 13)))).groups
    assert [basal.node, basal.last_node] == printed["low nodes"]
    assert [distal.node, distal.last_node] == printed["best nodes"]
    assert [rulebook.values["basal_node_last"].number, rulebook.values["distal_node_last"].number] == [basal.last_node, distal.last_node]


def sultana() -> list[TallyRow]:
    """Forty canes of thirteen nodes: the share of fruitful buds rises to node 9 and falls again, below half of it at the base."""
    shares = [8, 12, 16, 20, 24, 27, 30, 32, 34, 32, 29, 26, 23]
    return [bud(cane, node, **{f"buds_{int(cane <= share)}": 1}) for node, share in enumerate(shares, 1) for cane in range(1, 41)]


def test_sultana_peaks_beyond_the_distal_nodes(rulebook: Rulebook) -> None:
    """nf-01: its most fruitful node is the ninth, so the comparison of basal and distal buds misses it and the bearers do not."""
    result = found(sultana(), **PLAIN)
    (peak,) = [rulebook.evidence["nf-01"].outputs["node of greatest fruitfulness"]]
    assert max(result.rows, key=lambda row: row.fruitful_pct.number).node == peak
    assert peak > result.groups[2].last_node
    assert result.cane_nodes.number > peak


def test_even_along_the_cane_but_for_the_first_two() -> None:
    """nf-06: Pinot noir, fruitfulness even along the cane except the first two nodes, which are clearly lower: said, with a range."""
    rows = [bud(cane, node, **{f"buds_{(cane + node) % 2 + (node > 2)}": 1}) for cane in range(1, 21) for node in range(1, 11)]
    result = found(rows)
    assert result.difference_low.number > 0.0
    assert "bud_fruitfulness.pairs_more" in [note.id for note in result.notes]


def test_none_to_three(rulebook: Rulebook) -> None:
    """nf-20: a bud holds none to three clusters, so the tally has a column for each, and more than three count as three."""
    assert [found([bud(0, 1, **{f"buds_{number}": 7})]).mean_live.number for number in range(4)] == [0.0, 1.0, 2.0, 3.0]
    assert {0.0, 4.0} <= prints(rulebook, "nf-20")


@pytest.mark.parametrize(("burst", "fruitful", "printed"), [(55.0, 56, 0.308), (60.0, 75, 0.45)])
def test_fruitful_shoots_for_a_bud_kept(burst: float, fruitful: int, printed: float) -> None:
    """nf-02: 55 to 60 % of Sultana's buds shoot, and 56 to 75 % of those bear: 0.308 to 0.45 fruitful shoots for each bud kept."""
    rows = everywhere(6, buds_0=100 - fruitful, buds_1=fruitful)
    cane = [one for one in found(rows, **PLAIN | {"budburst_pct": burst}).bearers if one.on_cane]
    assert cane[0].per_node == pytest.approx(printed)


@pytest.mark.parametrize(("share", "printed"), [(0.0, 0.9), (0.33, 1.098)])
def test_an_allowance_for_secondary_buds(share: float, printed: float) -> None:
    """pbn-06: 40 % necrotic at 1.5 bunches a bud leave 0.9 without secondaries and 1.098 with a third of a crop on them."""
    rows = everywhere(2, buds_1=30, buds_2=30, dead_primary=40)
    assert found(rows, secondary_share=share, **PLAIN).spur_bunches_per_node.number == pytest.approx(printed)


def test_howells_weighted_potential() -> None:
    """bi-11: of a hundred nodes 20 blind, 40 with a dead primary and 40 alive are worth 0.54 where a secondary alone counts 35 %."""
    rows = everywhere(2, buds_1=40, dead_primary=40, dead_node=20)
    assert found(rows, secondary_share=0.35, **PLAIN).spur_bunches_per_node.number == pytest.approx(0.54)


def test_norton_loses_what_its_primaries_lose() -> None:
    """bi-10: without crop on secondaries half the primaries dead is half the crop lost, whatever the living ones hold."""
    half, whole = (found(everywhere(2, buds_1=20, buds_2=20, dead_primary=dead), secondary_share=0.0, **PLAIN) for dead in (40, 0))
    assert half.spur_bunches_per_node.number == pytest.approx(whole.spur_bunches_per_node.number / 2)


def test_the_primary_holds_its_printed_part(rulebook: Rulebook) -> None:
    """bi-12: a primary holds 70 to 75 % of a bud's crop; a tally whose secondaries hold a third to 0.43 of a primary's beginnings says the same."""
    shares = [found([bud(0, 1, buds_1=300, dead_primary=300, secondary_1=one)]).secondary_counted_share.number for one in (129, 100)]
    assert [round(100 / (1 + share)) for share in shares] == [70, 75]
    assert {70.0, 75.0} <= prints(rulebook, "bi-12")


def test_shiraz_at_its_worst(rulebook: Rulebook) -> None:
    """pbn-05: up to 60 % of primaries dead, two primordia in the others: 0.8 for each bud, 2 for each living primary, 60 % dead."""
    result = found([bud(0, 1, buds_2=40, dead_primary=60)])
    assert [result.dead_primary_pct.number, result.mean_live.number] == [60.0, 2.0]
    assert result.mean.number == pytest.approx(0.8)
    assert {60.0, 2.0} <= prints(rulebook, "pbn-05")


@pytest.mark.parametrize(("dead", "low", "high"), [(38, 30.4, 46.2), (72, 64.1, 78.7), (100, 97.4, 100.0), (20, 14.3, 27.3)])
def test_necrosis_with_its_interval(rulebook: Rulebook, dead: int, low: float, high: float) -> None:
    """pbn-01: 38 % and 72 % of primaries dead in Riesling, and vineyards from 20 to nearly 100 %. A hundred buds tell the first two apart,
    and of all dead the high end is 100 %, never more. (Ends worked out by hand with z = 1.6449.)"""
    result = found([bud(0, 1, buds_1=100 - dead, dead_primary=dead)])
    assert dead in prints(rulebook, "pbn-01")
    assert result.dead_primary_pct.number == dead
    assert [result.dead_primary_low_pct.number, result.dead_primary_high_pct.number] == pytest.approx([low, high], abs=0.06)


def test_dead_primaries_are_told_apart_where_print_parts_the_cane(rulebook: Rulebook) -> None:
    """pbn-02: necrosis rises from nodes 1 to 4 outwards. One dead in ten up to node 4 and four in ten beyond it go on as two figures."""
    rows = [bud(0, node, buds_1=9 if node <= 4 else 6, dead_primary=1 if node <= 4 else 4) for node in range(1, 11)]
    known = {one.fact: one.number for one in found(rows).facts}
    assert [known["dead_primary_inner_pct"], known["dead_primary_outer_pct"]] == pytest.approx([10.0, 40.0])
    assert rulebook.values["inner_zone_nodes"].number in prints(rulebook, "pbn-02")


def test_a_longer_spur_reaches_what_the_base_lacks() -> None:
    """sys-08: Sultana, barren at the base, on six-node spurs cropped like canes: by its buds six nodes are worth more a node than two."""
    spurs = [one for one in found(sultana(), **PLAIN).bearers if not one.on_cane]
    assert spurs[5].per_node > 1.25 * spurs[1].per_node


def test_an_end_node_bursts_better_than_on_a_cane() -> None:
    """nf-08: nodes 2 and 3 are more fruitful as end nodes than on a longer bearer: a two-node spur beats the same two nodes of a cane."""
    changed = PLAIN | {"cane_budburst_node": [some(55), some(75), *[OPEN] * 13], "spur_budburst_pct": 95.0}
    spurs = found(everywhere(6, buds_1=50), **changed).bearers
    assert spurs[1].per_node > spurs[3].per_node
