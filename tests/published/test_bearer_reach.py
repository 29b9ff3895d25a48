"""What bearers carry, and how sure that is, against what is printed of buds, secondaries and end nodes."""

import pytest

from generator.answers.compute import compute
from generator.calculators.bearers import Buds, bearer, bunches_at, burst_at
from generator.calculators.facts import Maybe
from generator.calculators.reach_sums import Sampling, Wish, carried, interval_of
from generator.reading.rulebook import Rulebook
from tests.published.printed import prints

# canes, treatment of nf-15: nodes a cane, shoots a node, bunches a shoot, bunches a cane (Sunmuscat on swing-arm trellis)
SUNMUSCAT = [(19.1, 1.0, 1.27, 24.2), (19.2, 0.96, 1.18, 21.7), (18.4, 0.94, 1.17, 20.0), (18.4, 0.99, 1.1, 20.7)]


def buds(primordia: list[float], **changes: object) -> Buds:
    """Buds that all live and burst, with some of that changed."""
    nodes = len(primordia)
    plain = {"primordia": primordia, "cane_burst": [1.0] * nodes, "spur_burst": 1.0, "primary": [1.0] * nodes}
    plain |= {"secondary": [0.0] * nodes, "share": 0.0, "double": 0.0, "spring": 1.0}
    return Buds(**plain | changes)


@pytest.mark.parametrize(("canes", "printed"), [(20, 0.307), (30, 0.25), (100, 0.137)])
def test_the_sampling_error_is_that_of_the_planners_table(canes: int, printed: float) -> None:
    """bd-11: 1.96 standard errors of a mean with a spread of 0.7. With two buds of a cane all alike, a spur is one such mean."""
    alive = buds([1.0, 1.0])
    wish = Wish(True, 1.0, 1.0)
    found = interval_of(alive, wish, carried(alive, wish, 2, False), Sampling(canes, 0.7, 1.0, Maybe(False, 0.0), 1.96, 200.0))
    assert found.high - 1.0 == pytest.approx(printed, abs=0.0006)


def test_the_spread_is_the_planners(rulebook: Rulebook) -> None:
    """bd-11: the standard deviation of 0.7 stands in the table and is the value that is followed."""
    assert rulebook.values["primordia_sd"].number in prints(rulebook, "bd-11")


def test_howells_weighted_potential() -> None:
    """bi-11: of a hundred nodes 20 blind, 40 with a dead primary and 40 alive are worth 0.54 where a secondary alone counts 35 %."""
    concord = buds([1.0], primary=[0.4], secondary=[0.4], share=0.35)
    assert bunches_at(concord, 1, 1.0) == pytest.approx(0.54)


def test_norton_loses_what_its_primaries_lose() -> None:
    """bi-10: without crop on secondaries half the primaries dead is half the crop lost."""
    half = buds([1.5], primary=[0.5], secondary=[0.5], share=0.0)
    assert bunches_at(half, 1, 1.0) == 0.5 * bunches_at(buds([1.5]), 1, 1.0)


@pytest.mark.parametrize(("share", "printed"), [(0.0, 0.9), (0.33, 1.098)])
def test_an_allowance_for_secondary_buds(share: float, printed: float) -> None:
    """pbn-06: 40 % necrotic at 1.5 bunches a bud leave 0.9 without secondaries and 1.098 with a third of a crop on them."""
    assert bunches_at(buds([1.5], primary=[0.6], secondary=[0.4], share=share), 1, 1.0) == pytest.approx(printed)


@pytest.mark.parametrize(("burst", "fruitful", "printed"), [(0.55, 0.56, 0.308), (0.6, 0.75, 0.45)])
def test_fruitful_shoots_for_a_bud_kept(burst: float, fruitful: float, printed: float) -> None:
    """nf-02: 55 to 60 % of Sultana's buds shoot, and 56 to 75 % of those bear: 0.308 to 0.45 fruitful shoots for each bud kept."""
    assert bunches_at(buds([fruitful]), 1, burst) == pytest.approx(printed)


@pytest.mark.parametrize(("nodes", "shoots", "fruit", "printed"), SUNMUSCAT)
def test_a_counted_cane_closes(nodes: float, shoots: float, fruit: float, printed: float) -> None:
    """nf-15: nodes, shoots and bunches of Sunmuscat canes were counted apart; a cane by the chain is within 4 % of its bunches."""
    whole = int(nodes)
    one = bearer(buds([fruit] * whole, cane_burst=[shoots] * whole), whole, True)
    assert one.bunches / whole * nodes == pytest.approx(printed, rel=0.04)


def test_the_primary_holds_its_printed_part() -> None:
    """bi-12: a primary holds 70 to 75 % of what both buds can bear; with Howell's 0.35 it is 74.1 %, as our arithmetic there says."""
    primary = bunches_at(buds([1.0]), 1, 1.0)
    secondary = bunches_at(buds([1.0], primary=[0.0], secondary=[1.0], share=0.35), 1, 1.0)
    assert 100 * primary / (primary + secondary) == pytest.approx(74.1, abs=0.05)


def test_a_longer_spur_of_even_buds_bears_less_on_a_node() -> None:
    """sys-14: each node more can suppress the burst of the base node, so where nodes 3 and 4 bear no more than 1 and 2, four nodes are
    worth less on a node than two."""
    even = buds([1.0] * 4, cane_burst=[0.55, 0.75, 0.9, 0.97], spur_burst=0.95)
    assert bearer(even, 4, False).bunches / 4 < bearer(even, 2, False).bunches / 2


@pytest.mark.parametrize("node", [2, 3])
def test_a_node_bears_more_as_an_end_node(node: int) -> None:
    """nf-08: nodes 2 and 3 are more fruitful when they are the end nodes than the same nodes on a longer bearer."""
    even = buds([1.0] * 10, cane_burst=[0.55, 0.75, 0.9] + [0.97] * 7, spur_burst=0.95)
    assert bunches_at(even, node, burst_at(even, node, node, False)) > bunches_at(even, node, burst_at(even, node, 10, True))


def test_necrosis_that_rises_outward_favours_short_bearers(rulebook: Rulebook) -> None:
    """sys-19: where dead buds rise from the basal four nodes outwards, a cane loses and a spur does not."""
    tally = {f"primordia_node_{node}": 1.3 for node in range(1, 11)} | {"dead_node_pct": 0}
    even = compute(rulebook, "bearer_reach", {**tally, "dead_primary_pct": 5})["outputs"]
    rising = compute(rulebook, "bearer_reach", {**tally, "dead_primary_inner_pct": 5, "dead_primary_outer_pct": 60})["outputs"]
    assert rising["spur_bunches_per_node"] == even["spur_bunches_per_node"]
    assert rising["cane_bunches_per_node"] < even["cane_bunches_per_node"]
    assert rising["dead_primary_rise_pct"] == 55
