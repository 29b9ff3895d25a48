"""A death is counted once from the buds to the crop: the real calculators one after the other, each fed with the answer before it.

A made block is known to the last bud: in an ordinary winter and in this one, so many primaries live and in so many buds only a secondary does; living buds
push alike, and a secondary shoot bears its share. Spring counts are what that block shows after ordinary winters; a tally is what the knife
shows in this one. Whatever the number was reckoned from, the crop forecast from the final nodes with this winter's tally is the crop wanted.
"""

from dataclasses import dataclass

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.answers.compute import compute
from generator.reading.read import read_rulebook
from tests.published.printed import PROJECT

RULEBOOK = read_rulebook(PROJECT / "rules")[0]
VINES, WEIGHT, BURST, NODES = 2000, 120, 90, 10
TURNS = settings(max_examples=12, deadline=None)


@dataclass(frozen=True)
class Winter:
    """Of a hundred buds: primaries alive, secondaries alone; bunch beginnings on a living primary."""

    primary: int
    secondary: int
    begun: float

    @property
    def dead(self) -> dict:
        """The same as the tally has it."""
        return {"dead_primary_pct": self.secondary, "dead_node_pct": 100 - self.primary - self.secondary}


def bunches_on_a_shoot(winter: Winter, s: float) -> float:
    """Bunches on each shoot that pushes: those of secondaries count as shoots and bear a share."""
    return winter.begun * (winter.primary + s * winter.secondary) / (winter.primary + winter.secondary)


def burst_pct(winter: Winter) -> float:
    """Nodes with a shoot, of all that were left: the living ones push alike."""
    return BURST * (winter.primary + winter.secondary) / 100


def outputs(name: str, facts: dict) -> dict:
    """What a calculator answers."""
    return compute(RULEBOOK, name, facts)["outputs"]


def tally(winter: Winter, s: float) -> dict:
    """The buds of this winter as they are entered."""
    facts = {f"primordia_node_{node}": winter.begun for node in range(1, NODES + 1)}
    return {
        **facts, **winter.dead, "secondary_share": s, "dissection_to_spring": 1, "fruiting_wood": "canes", "bearer_nodes": NODES,
        "budburst_pct": BURST, "spur_budburst_pct": BURST, "shoots_per_burst_node": 1, "fruit_from": "cut_buds",
    }


def spring(winter: Winter, s: float) -> dict:
    """What was counted in the spring after an ordinary winter."""
    return {"budburst_pct": burst_pct(winter), "shoots_per_burst_node": 1, "bunches_per_shoot": bunches_on_a_shoot(winter, s), "fruit_from": "spring_counts"}


def both_winters(before: Winter, now: Winter, s: float) -> dict:
    """The same, scaled by what the buds promised then and promise now."""
    promised = {"dissected_bunches_per_shoot": bunches_on_a_shoot(now, s), "dissected_bunches_per_shoot_before": bunches_on_a_shoot(before, s)}
    return {**spring(before, s), **promised, "fruit_from": "both_winters"}


def reckoned(counts: dict, target: float) -> float:
    """The node number for a crop: the fruit's view, held between a vine and a wire that would take any number."""
    fruit = outputs("nodes_for_yield", {**counts, "target_yield_t_ha": target, "bearing_vines_per_ha": VINES, "bunch_weight_g": WEIGHT})
    return outputs("node_number", {"fruit_nodes": fruit["nodes_exact"], "space_nodes_low": 1, "space_nodes_high": 300})["nodes"]


def replaced(wanted: float, inside: str, now: Winter, s: float, ordinary: Winter) -> float:
    """The nodes to leave, for a number that holds such deaths."""
    sample = {"buds_cut_for_injury": 100, "buds_primary_alive": now.primary, "buds_secondary_only": now.secondary, "secondary_share": s}
    usual = {"ordinary_primary_alive_pct": ordinary.primary, "ordinary_secondary_only_pct": ordinary.secondary}
    return outputs("injury_adjustment", {"wanted_nodes": wanted, "deaths_in_wanted_nodes": inside, **sample, **usual})["nodes_replacing_with_secondaries"]


def crop(nodes: float, now: Winter, s: float) -> float:
    """The crop of so many nodes by the buds of this winter, t/ha."""
    return outputs("yield_forecast", {**tally(now, s), "nodes": nodes, "bearing_vines_per_ha": VINES, "bunch_weight_g": WEIGHT})["t_per_ha"]


def assert_the_crop(target: float, wanted: float, final: float, now: Winter, s: float) -> None:
    """The crop of the final nodes is the crop wanted, but for half a node wanted and the rounding up of a replacement."""
    found = crop(final, now, s)
    a_node = found / final
    assert found == pytest.approx(target, abs=a_node * (1 + final / wanted / 2 + 1e-6))


@st.composite
def winters(draw, least: int) -> Winter:
    """A winter after which so many primaries live at least."""
    primary = draw(st.integers(least, 100))
    return Winter(primary, draw(st.integers(0, 100 - primary)), draw(st.floats(0.8, 2.0)))


shares = st.floats(0.0, 1.0)
targets = st.floats(5.0, 12.0)


@TURNS
@given(targets, winters(50), winters(80), shares)
def test_by_cut_buds_nothing_is_added(target, now, ordinary, s):
    """A tally of this winter holds its deaths."""
    wanted = reckoned(tally(now, s), target)
    final = replaced(wanted, "this_winter", now, s, ordinary)
    assert final == wanted
    assert_the_crop(target, wanted, final, now, s)


@TURNS
@given(targets, winters(50), winters(80), shares)
def test_by_spring_counts_ordinary_deaths_are_not_replaced(target, now, ordinary, s):
    """Spring counts hold an ordinary winter's deaths; the buds hold as much fruit as then."""
    now = Winter(now.primary, now.secondary, ordinary.begun)
    wanted = reckoned(spring(ordinary, s), target)
    assert_the_crop(target, wanted, replaced(wanted, "ordinary", now, s, ordinary), now, s)


@TURNS
@given(targets, winters(50), winters(80), shares)
def test_by_both_winters_only_dead_nodes_are_replaced(target, now, ordinary, s):
    """Bunches scaled to this winter hold its dead primaries; the push is that of an ordinary winter and holds ordinary dead nodes."""
    wanted = reckoned(both_winters(ordinary, now, s), target)
    assert_the_crop(target, wanted, replaced(wanted, "dead_primaries", now, s, ordinary), now, s)


@TURNS
@given(targets, winters(50), shares)
def test_without_deaths_all_are_replaced(target, now, s):
    """A number as if no bud were dead."""
    wanted = reckoned(tally(Winter(100, 0, now.begun), s), target)
    assert_the_crop(target, wanted, replaced(wanted, "none", now, s, now), now, s)


def test_the_wrong_answer_would_count_twice():
    """With 30 % dead primaries and 12 % dead nodes the same deaths add half as much again where the question is answered wrongly; so it has no default."""
    now = Winter(58, 30, 1.4)
    wanted = reckoned(tally(now, 0.1), 2.25)
    assert replaced(wanted, "none", now, 0.1, now) > 1.5 * wanted
    with pytest.raises(Exception, match="deaths_in_wanted_nodes"):
        outputs("injury_adjustment", {"wanted_nodes": wanted, "buds_cut_for_injury": 100, "buds_primary_alive": 58, "buds_secondary_only": 30})
