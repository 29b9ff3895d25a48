"""The ranked layouts of one vine, against trying everything by hand."""

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.bearers import Buds
from generator.calculators.option_search import candidates, ranked_options
from tests.calculators.cases import ASKED, LAYOUT, OPEN, OPTION_LIMITS, but, ids, some

ON_SPURS = ["spur", "long_spurs", "spurs_with_canes", "long_spurs_with_canes", "lay_new_arm"]
BARREN_BASE = Buds([0.1, 0.2] + [1.0] * 13, [0.9] * 15, 0.9, [0.95] * 15, [0.0] * 15, 0.0, 0.0, 1.0)


def options(asked=None, **changes):
    """The ranked options of the plain vine with some of its lengths changed, and the rest of what is asked as given."""
    return ranked_options(but(ASKED, layout=but(LAYOUT, **changes), **(asked or {})), OPTION_LIMITS)


def of(found, target):
    """The options with a target, in rank order."""
    return [option for option in found if option.layout.target == target]


def test_spurs_on_all_positions_come_first_where_they_fit():
    """20 nodes on a cordon with ten live positions: two each, no node without a place."""
    best = options()[0]
    assert (best.layout.target, best.layout.spurs, best.built) == ("spur", [2] * 10, True)


def test_what_cannot_be_built_stands_behind_what_can():
    """No built option follows one that is not built."""
    built = [option.built for option in options(nodes=26)]
    assert built == sorted(built, reverse=True) and not all(built)


def test_positions_that_are_short_are_counted():
    """26 nodes ask for 13 positions of two nodes, and the vine has ten: six nodes find no place."""
    fault = of(options(nodes=26), "spur")[0].reasons[0]
    assert (fault.id, fault.numbers) == ("layout_options.too_few_positions", [6.0, 26.0, 2.0, 13.0, 10.0])


def test_canes_that_are_short_are_counted():
    """Two canes on a vine with one good cane: one is short."""
    two = next(option for option in of(options(asked={"good_canes": some(1)}), "cane") if len(option.layout.canes) == 2)
    assert [(say.id, say.numbers) for say in two.reasons] == [("layout_options.too_few_canes", [1.0, 2.0, 1.0])]


def test_wire_that_is_short_is_measured():
    """60 nodes on 1 m: each of six canes lacks 300 mm (as vine_layout says)."""
    six = options(nodes=60, vine_spacing_m=1.0, internode_cm=10.0, live_spur_positions_per_vine=OPEN, canes_wanted_per_vine=some(6))
    faults = [say for option in of(six, "cane") if len(option.layout.canes) == 6 for say in option.reasons]
    assert ("layout_options.wire_too_short", [18.0, 300.0, 6.0]) in [(say.id, say.numbers) for say in faults]


def test_a_short_cane_is_no_cane():
    """20 nodes on three canes are four each beside the renewal spurs: said, not built."""
    three = next(option for option in of(options(), "cane") if len(option.layout.canes) == 3)
    assert "layout_options.cane_too_short" in ids(three.reasons) and not three.built


def test_a_head_has_no_cordon_for_spurs():
    """A vine with canes on a head and no positions: only canes can be built."""
    found = options(asked={"structure": some(1)}, live_spur_positions_per_vine=OPEN)
    assert {option.layout.target for option in found if option.built} == {"cane"}


def test_a_sound_cordon_is_not_given_up_for_little():
    """The same canes are worth fewer points on a cordon than on a head, and the reason says why."""
    on_cordon, on_head = (of(options(asked={"structure": some(form)}), "cane")[0] for form in (0, 1))
    assert on_cordon.score < on_head.score and "layout_options.cordon_goes" in ids(on_cordon.reasons)


def test_bearers_decide_where_the_base_is_barren():
    """Nodes 1 and 2 bear next to nothing: the first place goes to a layout with canes or long spurs, and bunches are said."""
    best = options(asked={"buds": [BARREN_BASE]}, nodes=24)[0]
    assert best.layout.target != "spur" and best.bunches.ok and "layout_options.bunches" in ids(best.reasons)


def test_bunches_are_those_of_every_bearer():
    """Ten two-node spurs: 10 * 0.9 * 0.95 * (0.1 + 0.2) bunches."""
    assert of(options(asked={"buds": [BARREN_BASE]}), "spur")[0].bunches.number == pytest.approx(10 * 0.9 * 0.95 * 0.3)


def test_bunches_beyond_the_nodes_that_were_cut_are_left_open():
    """Buds cut to node 4: canes are longer, so what they bear is not known, and that is said."""
    short = Buds([1.0] * 4, [0.9] * 4, 0.9, [0.95] * 4, [0.0] * 4, 0.0, 0.0, 1.0)
    cane = of(options(asked={"buds": [short]}), "cane")
    assert not cane[0].bunches.ok and "layout_options.bunches_open" in ids([say for one in cane for say in one.reasons])


def buildable(nodes, positions, most, canes=(0,), room=0):
    """Whether any spurs of one to `most` nodes on up to `positions` places, beside some number of canes of 6 to `room` nodes, make up the nodes."""
    loads = {sum(spurs) for number in range(1, positions + 1) for spurs in product(range(1, most + 1), repeat=number)}
    on_canes = {count * each for count in canes for each in (range(6, room + 1) if count else [0])}
    return any(nodes - laid in loads for laid in on_canes)


@pytest.mark.parametrize("positions", range(5))
@pytest.mark.parametrize("nodes", range(1, 34))
def test_exactly_what_can_be_built_is_built(nodes, positions):
    """Every way to spread the nodes over the positions and canes is tried by hand: an option is built if and only if there is one.
    (Long spurs count from the first that is longer than two nodes; a cane has room for eight on 0.7 m.)"""
    found = [option for option in options(nodes=nodes, live_spur_positions_per_vine=some(positions)) if option.built]
    built = {(option.layout.target, len(option.layout.canes)) for option in found}
    assert (("spur", 0) in built) == buildable(nodes, positions, 2)
    assert (("long_spurs", 0) in built) == (buildable(nodes, positions, 6) and nodes > positions + 1 and positions > 0)
    for canes in (1, 2):
        assert (("spurs_with_canes", canes) in built) == buildable(nodes, positions, 2, (canes,), 8)


@given(
    st.integers(1, 150), st.integers(0, 40), st.floats(0.6, 4.0), st.floats(3.0, 20.0), st.integers(-30, 60), st.integers(1, 2), st.integers(0, 8),
    st.one_of(st.just(OPEN), st.integers(2, 25).map(some)),
)  # fmt: skip
def test_no_option_breaks_a_constraint(nodes, positions, spacing, internode, head, curtains, good, per_cane):
    """Built options hold all nodes, no spur or cane over its limit, no more canes than there are, nothing beyond the vine's own tips."""
    found = options(
        asked={"good_canes": some(good)}, nodes=nodes, live_spur_positions_per_vine=some(positions), vine_spacing_m=spacing,
        internode_cm=internode, head_below_wire_cm=float(head), curtains=curtains, nodes_per_cane_wanted=per_cane,
    )  # fmt: skip
    for option in found:
        layout = option.layout
        assert layout.nodes == sum(layout.spurs) + sum(layout.canes) + sum(layout.renewals)
        assert layout.nodes + option.short_nodes >= nodes and 0.0 <= option.evenness <= 1.0
        if option.built:
            assert layout.nodes == nodes and option.short_nodes == 0 and len(layout.canes) <= good
            assert len(layout.spurs) <= positions and max(layout.spurs, default=0) <= (6 if "long" in layout.target else 2)
            assert max(layout.canes, default=0) <= (int(per_cane.number) if per_cane.ok else 12)
            assert layout.target in ON_SPURS or min(layout.canes) >= 6


def test_the_work_of_the_search_is_small():
    """60 nodes on 3 m are answered from fewer than a hundred layouts tried."""
    assert len(candidates(but(ASKED, layout=but(LAYOUT, nodes=60, vine_spacing_m=3.0)), OPTION_LIMITS)) < 100
