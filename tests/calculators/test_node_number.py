"""The node number: one rule for plan and calculator, weak and strong vines whose mean is the plan, what a conflict says, the drawing."""

from dataclasses import fields, replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.answers.encode import values_record
from generator.calculators.drawing_views import ACROSS, EDGE
from generator.calculators.facts import Maybe
from generator.calculators.node_number import node_number
from generator.calculators.node_records import NodeNumberInputs
from generator.calculators.reconcile import CAPACITY, FRUIT, LEGAL, ROOM_HIGH, ROOM_LOW, Ceiling, hold
from generator.calculators.vine_classes import Mix, mean_of, vine_classes
from generator.reading.read import read_rulebook
from tests.calculators.cases import ids, some
from tests.published.printed import PROJECT

VALUES = values_record(read_rulebook(PROJECT / "rules")[0], "node_number")
OPEN = Maybe(False, 0.0)
PLAIN = {
    "budburst_pct": 90.0, "shoots_per_burst_node": 1.0, "missing_vines_pct": 0.0, "curtains": 1, "tip_gap_m": 0.1, "shoots_per_m_low": 10.0,
    "shoots_per_m_high": 15.0, "weak_vines_pct": 20.0, "strong_vines_pct": 20.0, "weak_vine_nodes_pct": 80.0, "strong_vine_nodes_pct": 120.0,
}
EMPTY = NodeNumberInputs(**{field.name: PLAIN.get(field.name, OPEN) for field in fields(NodeNumberInputs)})
WIRE = {"capacity_nodes_low": some(18), "capacity_nodes_high": some(27), "space_nodes_low": some(11), "space_nodes_high": some(17)}
SPRING = {"target_yield_t_ha": some(8), "bunches_per_shoot": some(1.5), "bunch_weight_g": some(120), "bearing_vines_per_ha": some(4000)}
nodes = st.floats(0.0, 200.0)


def number(**changes):
    """The number of the empty form with some inputs given."""
    return node_number(replace(EMPTY, **changes), VALUES)


@given(nodes, nodes, nodes, nodes, nodes)
def test_the_rule_is_that_of_the_agronomy(fruit, low, capacity, room, law):
    """hi = min(capacity_hi, space_hi, legal); lo = min(space_lo, hi); N = clamp(fruit, lo, hi)."""
    held = hold(fruit, low, [Ceiling(CAPACITY, capacity), Ceiling(ROOM_HIGH, room), Ceiling(LEGAL, law)], 0.0)
    hi = min(capacity, room, law)
    lo = min(low, hi)
    assert (held.low, held.high, held.nodes) == (lo, hi, sorted([lo, fruit, hi])[1])
    assert (held.limit == FRUIT) == (held.nodes == fruit) and (held.limit == ROOM_LOW) == (held.nodes > fruit)


@given(st.floats(0.0, 100.0), st.floats(0.0, 100.0))
def test_a_smaller_wish_never_keeps_more_and_never_goes_under_the_room(a, b):
    """The number follows the wish between the limits and stops at both."""
    small, large = sorted([a, b])
    found = [number(fruit_nodes=some(wish), **WIRE).nodes.number for wish in (small, large)]
    assert 11 <= found[0] <= found[1] <= 17


@pytest.mark.parametrize(
    ("wish", "changes", "limit", "nodes", "note"),
    [
        (14, {}, "fruit", 14, "agree"),
        (22, {}, "room_high", 17, "over_room"),
        (6, {}, "room_low", 11, "keep_and_thin"),
        (16, {"capacity_nodes_low": some(8), "capacity_nodes_high": some(12)}, "capacity", 12, "over_capacity"),
        (16, {"legal_nodes_per_vine_most": some(12)}, "legal", 12, "over_law"),
    ],
)
def test_which_view_limits_and_what_it_means(wish, changes, limit, nodes, note):
    """Every limit has its number and its own words."""
    found = number(fruit_nodes=some(wish), **{**WIRE, **changes})
    assert (found.limits, found.nodes.number) == (limit, nodes) and f"node_number.{note}" in ids(found.notes)


def test_a_vine_that_could_carry_more_than_the_wire_holds_is_told():
    """Capacity 18 to 27 over a room of 17: lay more wire, divide, or accept; and the other way round."""
    assert "node_number.more_than_wire" in ids(number(fruit_nodes=some(14), **WIRE).notes)
    weak = {**WIRE, "capacity_nodes_low": some(5), "capacity_nodes_high": some(8)}
    assert "node_number.less_than_wire" in ids(number(fruit_nodes=some(14), **weak).notes)


def test_more_wire_is_no_advice_where_the_law_binds():
    """Twelve nodes by law: that the vine could carry 18 to 27 is told against the law and not against the wire; one number is no range."""
    bound = {**WIRE, "legal_nodes_per_vine_most": some(12)}
    told = [note for note in number(fruit_nodes=some(16), **bound).notes if note.id.startswith("node_number.more_than")]
    assert [(note.id, list(note.numbers)) for note in told] == [("node_number.more_than_law", [18, 27, 12])]
    one = number(fruit_nodes=some(16), **{**bound, "capacity_nodes_low": OPEN, "capacity_nodes_high": some(20)}).notes
    assert [list(note.numbers) for note in one if note.id == "node_number.more_than_law_one"] == [[20, 12]]


def test_a_vine_too_weak_for_its_wire_is_not_said_to_need_its_nodes():
    """The vine carries 8 where the wire needs 11, and 6 are wanted: 8 stay at the most, and no hole in the canopy is threatened."""
    weak = {**WIRE, "capacity_nodes_low": some(5), "capacity_nodes_high": some(8)}
    notes = ids(number(fruit_nodes=some(6), **weak).notes)
    assert "node_number.keep_on_weak" in notes and "node_number.keep_and_thin" not in notes


def test_fewer_nodes_on_weak_vines_are_told_where_strong_ones_are_bound():
    """Twelve by law for all: ten on one vine in five leave 11.6 on average."""
    bound = number(fruit_nodes=some(16), **WIRE, legal_nodes_per_vine_most=some(12)).notes
    assert [list(note.numbers) for note in bound if note.id == "node_number.alike"] == [[12, 10, pytest.approx(11.6)]]


def test_an_honest_crop_is_named_where_the_wish_is_cut():
    """8 t/ha ask for 12.3 nodes at 2 kg a vine; where the vine carries 8 the crop of eight nodes is said, and it is theirs by the chain."""
    found = number(**SPRING, capacity_nodes_high=some(8), space_nodes_low=some(6), space_nodes_high=some(20))
    assert found.nodes.number == 8 and "node_number.honest_crop" in ids(found.notes)
    assert found.t_per_ha.number == pytest.approx(8 * 0.9 * 1.5 * 0.120 * 4000 / 1000)


def test_a_small_wish_says_how_much_to_thin():
    """At the room's low end the bunches over the wish are named."""
    found = number(**{**SPRING, "target_yield_t_ha": some(4)}, space_nodes_low=some(11), space_nodes_high=some(17))
    over = (11 - 4 * 1000 / 4000 / (0.9 * 1.5 * 0.120)) * 0.9 * 1.5
    assert [note.numbers[0] for note in found.notes if note.id == "node_number.thin"] == [pytest.approx(over)]


def test_without_a_crop_there_is_a_range_and_no_number():
    """Vine and wire alone do not make a number."""
    found = number(**WIRE)
    assert not found.nodes.ok and (found.low.number, found.high.number) == (11, 17) and found.headline.id == "node_number.no_crop"


def test_a_view_that_is_not_taken_is_named():
    """The crop alone gives a number and names what is lacking."""
    found = number(**SPRING)
    assert found.nodes.number == 12 and not found.high.ok
    assert {"node_number.lacks_capacity", "node_number.lacks_room"} <= set(ids(found.notes))


def test_nothing_known_is_refused():
    """One view at least must be taken."""
    with pytest.raises(ValueError, match="one view at least"):
        number()


def test_ends_the_wrong_way_round_are_refused():
    """A low end over the number is a slip of the pen."""
    with pytest.raises(ValueError, match="low end"):
        number(fruit_nodes=some(10), fruit_nodes_low=some(12))


def test_more_nodes_than_last_season_come_with_a_warning():
    """Nodes never mend a poor crop (hg-08); as many as before need no warning."""
    assert "node_number.never_raise" in ids(number(fruit_nodes=some(14), nodes_left=some(12), **WIRE).notes)
    assert "node_number.never_raise" not in ids(number(fruit_nodes=some(14), nodes_left=some(14), **WIRE).notes)


shares = st.tuples(st.integers(0, 100), st.integers(0, 100)).filter(lambda two: sum(two) <= 100)
ratios = st.tuples(st.floats(20.0, 100.0), st.floats(100.0, 300.0))


@given(st.integers(1, 150), shares, ratios)
def test_the_mean_of_weak_normal_and_strong_is_the_plan(plan, share, ratio):
    """The mean is exact in exact nodes; weak vines never get more than strong ones; in whole nodes it misses by half a node at most."""
    mix = Mix(float(share[0]), float(share[1]), *ratio)
    found = vine_classes(float(plan), mix, OPEN)
    assert mean_of(mix, found.weak, found.normal, found.strong) == pytest.approx(plan)
    assert found.weak <= found.normal + 1e-9 and found.normal <= found.strong + 1e-9
    assert found.weak_whole <= found.normal_whole <= found.strong_whole
    if found.weak >= 1:
        assert abs(found.mean_whole - plan) <= 0.5 + 1e-9


@given(st.integers(1, 100), st.integers(0, 60), shares, ratios)
def test_no_vine_passes_the_limit_of_wire_and_law(plan, room, share, ratio):
    """Where strong vines would pass it the three draw together; the mean stays."""
    mix, most = Mix(float(share[0]), float(share[1]), *ratio), float(plan + room)
    found = vine_classes(float(plan), mix, some(most))
    assert mean_of(mix, found.weak, found.normal, found.strong) == pytest.approx(plan)
    assert found.strong <= most * (1 + 1e-9) or share[1] == 0
    assert found.strong_whole <= most or share[1] == 0


def test_weak_and_strong_vines_over_all_are_refused():
    """Two shares over 100 % cannot be."""
    with pytest.raises(ValueError, match="at most 100 %"):
        number(fruit_nodes=some(14), weak_vines_pct=60.0, strong_vines_pct=60.0)


@given(st.lists(nodes, min_size=4, max_size=4), st.floats(0.0, 2000.0))
def test_the_drawing_stays_inside_its_window(ends, wish):
    """Every shape and label lies inside, whatever the numbers; each view has a bar or a dot, its words, and the number a stroke through each."""
    low, high = sorted(ends[:2]), sorted(ends[2:])
    views = {"capacity_nodes_low": some(low[0]), "capacity_nodes_high": some(low[1]), "space_nodes_low": some(high[0]), "space_nodes_high": some(high[1])}
    drawing = number(fruit_nodes=some(min(wish, 1000.0)), **views).drawing
    for shape in drawing.shapes:
        assert all(EDGE - 5 <= point.x <= ACROSS - EDGE + 5 and 0 <= point.y <= drawing.height for point in shape.points)
    words = [shape.label.id for shape in drawing.shapes if shape.kind == "text"]
    assert [word.removesuffix("_one") for word in words[-4:]] == [f"node_number.{name}" for name in ("row_fruit", "row_capacity", "row_room", "mark")]
    assert [shape.css for shape in drawing.shapes].count("chosen") == 4 and len(drawing.describe) == 5


@pytest.mark.parametrize(("wish", "room", "first", "headline"), [(300, 300, False, False), (301, 300, True, False), (32000, 40, True, False), (301, 400, True, True), (None, 400, False, False)])
def test_numbers_that_no_vine_carried_are_called_that(wish, room, first, headline):
    """Beyond 300 nodes, the most in print: the first note says so where the crop asks for them, and the headline where they would be kept."""
    fruit = {} if wish is None else {"fruit_nodes": some(wish)}
    found = number(**fruit, space_nodes_low=some(1), space_nodes_high=some(room))
    assert (found.notes[0].id == "yield_told.nodes_absurd") is first
    assert (found.headline.id == "yield_told.nodes_absurd") is headline
