"""The statistics of a tally against numpy and scipy to 1e-9, and what must hold of the chain and of the facts that go on."""

from dataclasses import replace

import numpy as np
import pytest
from scipy import stats

from generator.answers.compute import compute
from generator.calculators.bearer_reach import bearer_reach
from generator.calculators.bud_fruitfulness import as_reach, bud_fruitfulness
from generator.calculators.tally_counts import by_cane
from generator.calculators.tally_means import over_nodes
from tests.calculators.cases import OPEN, some
from tests.calculators.tallies import BLOCK, LIMITS, at, bud, canes, found, held
from tests.calculators.test_bearer_reach import VALUES

TALLIES = [(count, nodes, seed) for seed, (count, nodes) in enumerate([(2, 3), (3, 8), (8, 4), (20, 10), (50, 15), (120, 2)])]
LEVELS = [50.0, 90.0, 95.0, 99.9]
MAY_BE_LEFT_OUT = ("dead_primary_pct", "dead_primary_inner_pct", "dead_primary_outer_pct", "canes_dissected", "spur_fruit_se_pct")
near = pytest.approx


def close(x):
    """Equal to 1e-9."""
    return pytest.approx(x, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("level", LEVELS)
@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES)
def test_a_node_is_its_buds(count, nodes, seed, level):
    """Mean, standard error and Student's interval of the live primaries at each node; mean of all buds read; share fruitful and share with a
    dead primary with Wilson's interval."""
    rows = canes(count, nodes, seed)
    for one in found(rows, confidence_pct=level).rows:
        here = [row for row in rows if row.node == one.node]
        x = np.array(at(rows, one.node, one.node))
        dead = sum(row.dead_primary for row in here)
        read = len(x) + dead + sum(row.dead_node for row in here)
        assert (one.buds, one.live) == (read, len(x))
        assert one.mean_live.ok == (len(x) > 0)
        if read:
            fruitful = stats.binomtest(int((x > 0).sum()), read).proportion_ci(level / 100, "wilson")
            in_dead = stats.binomtest(dead, read).proportion_ci(level / 100, "wilson")
            assert one.mean.number == close(x.sum() / read)
            assert one.fruitful_pct.number == close(100 * (x > 0).sum() / read)
            assert [one.fruitful_low_pct.number, one.fruitful_high_pct.number] == close([100 * fruitful.low, 100 * fruitful.high])
            assert [one.dead_primary_low_pct.number, one.dead_primary_high_pct.number] == close([100 * in_dead.low, 100 * in_dead.high])
        if len(x) > 1:
            se = x.std(ddof=1) / np.sqrt(len(x))
            half = stats.t.ppf(0.5 + level / 200, len(x) - 1) * se
            assert [one.mean_live.number, one.se.number] == close([x.mean(), se])
            assert [one.low.number, one.high.number] == close([max(0.0, x.mean() - half), x.mean() + half])
        else:
            assert not one.se.ok


@pytest.mark.parametrize("level", LEVELS)
@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES[1:5])
def test_basal_against_distal_is_a_paired_t(count, nodes, seed, level):
    """Within each cane that has both: scipy's paired t gives the same difference and the same interval."""
    rows = canes(count, nodes, seed)
    own = [[row for row in rows if row.cane == cane] for cane in range(1, count + 1)]
    both = [(at(cane, 1, 2), at(cane, 3, 8)) for cane in own if at(cane, 1, 2) and at(cane, 3, 8)]
    basal, distal = [np.mean(b) for b, _ in both], [np.mean(d) for _, d in both]
    test = stats.ttest_rel(distal, basal)
    ends = test.confidence_interval(level / 100)
    result = found(rows, confidence_pct=level)
    assert result.paired.canes == len(both) == test.df + 1
    assert [result.difference.number, result.difference_low.number, result.difference_high.number] == close(
        [np.mean(distal) - np.mean(basal), ends.low, ends.high]
    )


def left_out(rows, statistic):
    """The jackknife by hand: the statistic of all rows, a number or several, and its standard error from leaving each cane out."""
    numbers = sorted({row.cane for row in rows if held(row) or row.dead_primary or row.dead_node})
    rest = np.array([statistic([row for row in rows if row.cane != cane]) for cane in numbers])
    n = len(numbers)
    return statistic(rows), np.sqrt((n - 1) / n * ((rest - rest.mean(axis=0)) ** 2).sum(axis=0)), n


@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES[1:5])
def test_over_several_nodes_each_cane_is_left_out(count, nodes, seed):
    """All nodes, basal and distal: scipy's t about the pooled mean with the standard error of the jackknife."""
    rows = canes(count, nodes, seed, dead=0.05)
    for one in found(rows).groups:
        mean, se, n = left_out(rows, lambda some_rows: np.mean(at(some_rows, one.node, one.last_node)))
        assert [one.mean_live.number, one.se.number] == close([mean, se])
        assert one.high.number == close(mean + stats.t.ppf(0.95, n - 1) * se)


def wilson_of(p, n, level):
    """The score interval of a share from n single buds, which need not be whole, in %."""
    z = stats.norm.ppf(0.5 + level / 200)
    middle, half = (p + z * z / 2 / n) / (1 + z * z / n), z * np.sqrt(p * (1 - p) / n + z * z / 4 / n / n) / (1 + z * z / n)
    return 100 * np.array([middle - half, middle + half])


@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES[1:5])
def test_shares_over_several_nodes_count_canes(count, nodes, seed):
    """The variance from leaving out each cane over that of single buds is the design effect, at least 1; Student's t takes the place of z."""
    rows = canes(count, nodes, seed, dead=0.2)
    whole = found(rows).groups[0]
    read = lambda some_rows: sum(len(held(row)) + row.dead_primary + row.dead_node for row in some_rows)  # noqa: E731
    p, se, n = left_out(rows, lambda some_rows: sum(row.dead_primary for row in some_rows) / read(some_rows))
    effect = max(1.0, se**2 * read(rows) / (p * (1 - p)))
    effective = read(rows) / effect * (stats.norm.ppf(0.95) / stats.t.ppf(0.95, n - 1)) ** 2
    assert whole.dead_effective.number == close(effective)
    assert [whole.dead_primary_low_pct.number, whole.dead_primary_high_pct.number] == close(wilson_of(p, effective, 90))


def test_canes_that_die_as_a_whole_count_for_one_bud_each():
    """Six canes of 30 with every primary dead: 300 buds tell as much as 29 single ones would, less what t takes."""
    rows = [bud(cane, node, **{"dead_primary" if cane <= 6 else "buds_1": 1}) for cane in range(1, 31) for node in range(1, 11)]
    whole = found(rows).groups[0]
    assert whole.dead_effective.number == close(29 * (stats.norm.ppf(0.95) / stats.t.ppf(0.95, 29)) ** 2)
    alone = stats.binomtest(60, 300).proportion_ci(0.9, "wilson")
    assert whole.dead_primary_low_pct.number < 100 * alone.low - 5 and whole.dead_primary_high_pct.number > 100 * alone.high + 5


def test_the_range_of_a_share_holds_where_canes_differ():
    """400 tallies of 25 canes of eight buds; on a cane every primary dies with the same chance, which is 2 % or 32 %. A range of 90 % holds the
    true 17 % in 86 to 94 of a hundred; taking each bud by itself it would in fewer than 75."""
    rng = np.random.default_rng(3)
    held_in = alone = 0
    for _ in range(400):
        chance = rng.choice([0.02, 0.32], 25)
        dead = rng.random((25, 8)) < chance[:, None]
        rows = [bud(cane + 1, node + 1, **{"dead_primary" if dead[cane, node] else "buds_1": 1}) for cane in range(25) for node in range(8)]
        whole = over_nodes(rows, by_cane(rows), 1, 8, 0.95)
        held_in += whole.dead_primary_low_pct.number <= 17 <= whole.dead_primary_high_pct.number
        low, high = wilson_of(dead.mean(), dead.size, 90)
        alone += low <= 17 <= high
    assert 0.86 <= held_in / 400 <= 0.94
    assert alone / 400 < 0.75


def test_without_cane_numbers_a_share_is_of_single_buds_and_that_is_said():
    """One bud without the number of its cane: scipy's Wilson of all buds, and a line says that it is too narrow."""
    rows = [replace(row, cane=0) for row in canes(20, 6, 3, dead=0.2)]
    result = found(rows)
    dead, read = sum(row.dead_primary for row in rows), result.buds
    alone = stats.binomtest(dead, read).proportion_ci(0.9, "wilson")
    assert [result.dead_primary_low_pct.number, result.dead_primary_high_pct.number] == close([100 * alone.low, 100 * alone.high])
    assert "bud_fruitfulness.dead_alone" in [line.id for line in result.working]


def test_each_printed_share_is_reckoned_with(rulebook):
    """A line for each author of the share of a secondary shoot: the two-node spur as it is when that share is typed in."""
    rows = [vars(row) for row in canes(20, 6, 3, dead=0.2)]
    asked = {"rows": rows, "target_yield_t_ha": 6, "bearing_vines_per_ha": 4000, "bunch_weight_g": 120, "vine_spacing_m": 1.2}
    lines = compute(rulebook, "bud_fruitfulness", asked)["compared"]
    assert [line["says"]["numbers"][0] for line in lines] == [one.number for one in rulebook.values["secondary_share_usual"].figures]
    for line in lines:
        share, per_node, reach = line["says"]["numbers"]
        there = compute(rulebook, "bud_fruitfulness", asked | {"secondary_share": share})["outputs"]
        assert [per_node, reach] == near([there["spur_bunches_per_node"], there["spur_reach"]], rel=1e-12)


def test_more_canes_stand_with_each_bearer():
    """None where its range leaves 1 out, some where it does not; the two-node spur's are the tally's."""
    result = found(canes(20, 10, 3))
    for one in result.bearers:
        if one.more_canes.ok:
            assert (one.more_canes.number == 0.0) == (one.reach_low.number >= 1.0 or one.reach_high.number < 1.0)
    assert result.bearers[1].more_canes == result.more_canes
    assert {True, False} == {one.more_canes.number == 0.0 for one in found(canes(20, 10, 3), target_yield_t_ha=some(8)).bearers}


@pytest.mark.parametrize("wish", [2, 4, 6, 8, 12])
def test_the_headline_leads_with_the_bearers(wish):
    """Where a crop is wanted, the reach of two-node spurs with its range and whether that is settled (dis-09); never single nodes."""
    told = found(canes(20, 10, 3), target_yield_t_ha=some(wish))
    low, high = told.bearers[1].reach_low.number, told.bearers[1].reach_high.number
    settled = "enough" if low >= 1 else "short" if high < 1 else "unsettled"
    assert told.headline.id == f"bud_fruitfulness.headline_{settled}"
    assert told.headline.numbers == [told.bearers[1].reach.number, low, high]


def test_the_headline_says_when_the_sample_cannot_tell_the_nodes_apart():
    """Without a crop wanted basal and distal stand side by side; that they cannot be told apart is said where the paired range holds zero."""
    for seed in range(8):
        told = found(canes(12, 8, seed), target_yield_t_ha=OPEN)
        open_ = told.difference_low.number <= 0 <= told.difference_high.number
        assert told.headline.id == ("bud_fruitfulness.headline_open" if open_ else "bud_fruitfulness.headline")


def test_with_one_bud_a_cane_the_jackknife_is_the_plain_standard_error():
    """Nobody can tell the two apart where each cane gives one bud."""
    rows = [bud(cane, 1, **{f"buds_{cane % 4}": 1}) for cane in range(1, 12)]
    result = found(rows)
    assert result.groups[1].se.number == close(result.rows[0].se.number)


@pytest.mark.parametrize(("count", "nodes", "seed"), [(20, 10, 3), (30, 7, 4), (12, 4, 5)])
def test_bearers_are_the_chain_reckoned_again_without_each_cane(count, nodes, seed):
    """Bunches a node and reach of the two-node spur, and the difference to the best cane, against the calculator itself on fewer canes."""
    rows = canes(count, nodes, seed, dead=0.05)
    result = found(rows)
    quantile = stats.t.ppf(0.95, count - 1)
    values, errors, n = left_out(rows, lambda some_rows: [(one.per_node, one.reach.number) for one in found(some_rows).bearers])
    assert n == count
    for one, (value, reach), (se, reach_se) in zip(result.bearers, values, errors, strict=True):
        assert [one.per_node, one.per_node_high.number] == close([value, value + quantile * se])
        assert [one.reach.number, one.reach_high.number] == close([reach, reach + quantile * reach_se])
        assert one.reach_low.number == close(max(0.0, reach - quantile * reach_se))


def reach_with(facts, **changes):
    """bearer_reach on the facts that the tally gave."""
    known = {one.fact: one.number for one in facts}
    spread = {name: known[name] for name in ("bud_spread", "likeness") if name in known}
    by_node = [some(known[name]) if (name := f"primordia_node_{node}") in known else some(0) for node in range(1, 16)]
    last = max(node for node in range(1, 16) if f"primordia_node_{node}" in known)
    taken = replace(
        as_reach(replace(BLOCK, **changes)),
        primordia_node=by_node[:last],
        dead_node_pct=known["dead_node_pct"],
        **spread,
        **{name: some(known[name]) for name in MAY_BE_LEFT_OUT if name in known},
    )
    return bearer_reach(taken, VALUES)


@pytest.mark.parametrize(("count", "nodes", "seed"), TALLIES[3:])
def test_the_facts_give_the_plan_the_same_bearers(count, nodes, seed):
    """What goes on is what was reckoned with here, to the last digit."""
    result = found(canes(count, nodes, seed, dead=0.2))
    there = reach_with(result.facts)
    assert there.spur_bunches_per_node == result.spur_bunches_per_node.number
    assert (there.spur_reach, there.cane_nodes, there.cane_reach) == (result.spur_reach, result.cane_nodes, result.cane_reach)


@pytest.mark.parametrize("share", [0.0, 0.3, 1.0])
@pytest.mark.parametrize("seed", range(6))
def test_a_death_is_counted_once(seed, share):
    """With every bud bursting and no doubles, bunches of the spurs' nodes are the primordia seen alive plus what the secondaries bring, over
    all buds read. Where primordia were per bud read as well as times P, the dead would be taken off twice."""
    rows = canes(40, 2, seed, dead=0.3)
    result = found(rows, secondary_share=share, shoots_per_burst_node=1.0, dissection_to_spring=1.0, spur_budburst_pct=100.0)
    one, two = (np.mean(at(rows, node, node)) for node in (1, 2))
    read = sum(len(held(row)) + row.dead_primary + row.dead_node for row in rows)
    alive, secondary = sum(len(held(row)) for row in rows) / read, sum(row.dead_primary for row in rows) / read
    assert result.bearers[1].bunches == close((alive + share * secondary) * (one + two))


def test_dead_buds_leave_the_mean_of_the_living_alone():
    """Ten more dead primaries change what is dead and the mean of all buds, not that of a living primary."""
    rows = canes(10, 4, 1, dead=0.0)
    more = found(rows + [bud(cane, 1, dead_primary=1) for cane in range(11, 21)])
    assert more.mean_live == found(rows).mean_live
    assert more.mean.number < found(rows).mean.number
    assert more.dead_primary_pct.number > 0.0


def ids(result):
    """The ids of the notes."""
    return [note.id.split(".")[1] for note in result.notes]


def test_a_frost_after_the_count_voids_the_dead_and_not_the_fruit():
    """Primordia go on; what is dead, and every bearer, waits for a new count."""
    result = found(canes(10, 4, 1), tally_date=some(20000), last_freeze_date=some(20010))
    named = [one.fact for one in result.facts]
    assert "primordia_node_1" in named and not [name for name in named if name.startswith("dead")]
    assert (result.bearers, result.spur_reach.ok) == ([], False)
    assert "void" in ids(result)


def test_without_cane_numbers_nothing_is_said_of_canes():
    """One bud without the number of its cane is enough: no pair, no range of bearers, no count of canes; means by node stay."""
    rows = canes(10, 4, 1)
    result = found([*rows, bud(0, 1, buds_1=1)])
    assert not result.canes.ok and not result.difference.ok and not result.spur_reach_low.ok
    assert "canes_dissected" not in [one.fact for one in result.facts]
    assert result.rows[0].se.ok and result.spur_reach.ok
    assert {"no_pairs", "no_canes"} <= set(ids(result))


def test_a_node_that_one_cane_alone_has_gives_bearers_no_range():
    """Node 3 of one cane: bearers that reach it are reckoned and have no range, the shorter ones have."""
    rows = [row for row in canes(12, 3, 2, dead=0.0) if row.node < 3 or row.cane == 1]
    spurs = found(rows).bearers
    assert [one.per_node_low.ok for one in spurs] == [True, True, False]


def test_a_dead_node_ends_the_bearers():
    """No living primary at node 3: spurs of one and two nodes are left, and node 4 is in the rows all the same."""
    rows = [replace(row, buds_0=0, buds_1=0, buds_2=0, buds_3=0, dead_primary=1, dead_node=0, unreadable=0) if row.node == 3 else row for row in canes(20, 6, 3)]
    result = found(rows)
    assert [one.nodes for one in result.bearers] == [1, 2]
    assert [row.node for row in result.rows] == [1, 2, 3, 4, 5, 6]
    assert not result.rows[2].mean_live.ok


def test_the_base_bud_is_shown_and_enters_nothing():
    """Node 0 has a row of its own; the figures of the whole tally and the facts begin at node 1."""
    rows = canes(10, 3, 4)
    with_base = found([*rows, *(bud(cane, 0, dead_node=1) for cane in range(1, 11))])
    assert with_base.rows[0].node == 0
    assert (with_base.buds, with_base.facts, with_base.bearers) == (found(rows).buds, found(rows).facts, found(rows).bearers)


def paired_canes(distals):
    """Canes with one primordium at node 1 and so many at node 3."""
    return [row for cane, x in enumerate(distals, 1) for row in (bud(cane, 1, buds_1=1), bud(cane, 2, buds_1=1), bud(cane, 3, **{f"buds_{x}": 1}))]


@pytest.mark.parametrize(
    ("distals", "note"),
    [
        ([2] * 9 + [1], "pairs_more"),
        ([0] * 9 + [1], "pairs_less"),
        ([2] * 3 + [1] * 2 + [0], "pairs_unsettled"),
        ([2] * 5 + [0] * 5, "pairs_too_close"),
    ],
)
def test_the_words_say_what_the_interval_says(distals, note):
    """More or less where the interval leaves 0 out; else not yet; where the two are equal, never."""
    assert note in ids(found(paired_canes(distals)))


def test_the_canes_still_to_cut_would_settle_it():
    """With that many canes more of the same kind the interval, by its own width, no longer holds 0; with four fewer it still does."""
    result = found(paired_canes([2] * 3 + [1] * 2 + [0]))
    said = next(note for note in result.notes if note.id.endswith("pairs_unsettled"))
    n, more = 6, said.numbers[-1]
    half = result.difference_high.number - result.difference.number
    assert half * np.sqrt(n / (n + more)) <= result.difference.number < half * np.sqrt(n / (n + more - 1))


@pytest.mark.parametrize(("rows", "said"), [([bud(1, 1, buds_1=1), bud(2, 1, buds_1=1)], True), ([bud(1, 1, buds_1=1), bud(2, 1, buds_2=1)], False)])
def test_a_range_without_width_is_not_taken_for_certainty(rows, said):
    """Two buds that hold the same number say nothing of the third."""
    assert ("alike" in ids(found(rows))) is said


def test_secondaries_beside_dead_primaries_or_at_every_bud():
    """Five with one beginning beside ten dead primaries are 0.5 each; counted at every bud, the same five over thirty buds are 1/6."""
    dead_only = [bud(0, 1, buds_2=20, dead_primary=10, secondary_1=5)]
    everywhere = [bud(0, 1, buds_2=20, secondary_1=4), bud(0, 1, dead_primary=10, secondary_1=1)]
    assert found(dead_only).secondary_counted_share.number == near(0.5 / 2)
    assert found(everywhere).secondary_counted_share.number == near(5 / 30 / 2)


@pytest.mark.parametrize(
    ("rows", "said"),
    [
        ([], "no bud of node 1"),
        ([bud(1, 0, buds_1=1)], "no bud of node 1"),
        ([bud(1, 1, unreadable=3)], "no bud of node 1"),
        ([bud(1, 1, dead_node=1, secondary_1=1)], "more secondaries"),
    ],
)
def test_a_tally_that_cannot_be_is_refused(rows, said):
    """With a sentence."""
    with pytest.raises(ValueError, match=said):
        bud_fruitfulness(replace(BLOCK, rows=rows), LIMITS)
