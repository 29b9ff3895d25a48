"""The search for layouts against an enumeration that knows nothing of it: every way to put the nodes on a small vine is tried, laid and weighed here anew.

What is laid here on a plain vine (head level with the wire, two arms, one curtain): every list of spur lengths on the positions, not only the lists that
the search makes, and every number and length of canes. A family of the search is a rule that such a list obeys.
"""

from collections import Counter
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators import option_scores
from generator.calculators.cane_path import path_to_right
from generator.calculators.drawing_shapes import along
from generator.calculators.option_search import candidates, ranked_options
from tests.calculators.cases import ASKED, LAYOUT, OPEN, OPTION_LIMITS, but, some

SPACING, GAP, FIRST, INTERNODE = 1200, 100, 150, 80
ARM = (SPACING - GAP) // 2
USUAL, LONGEST, CANE_MOST, CANE_LEAST, RENEWAL = 2, 6, 12, 6, 2
GOOD = 4


def vine(nodes, positions):
    """The plain vine as the search is asked."""
    lengths = {"vine_spacing_m": SPACING / 1000, "tip_gap_m": GAP / 1000, "head_below_wire_cm": 0.0, "internode_cm": INTERNODE / 10}
    return but(ASKED, layout=but(LAYOUT, nodes=nodes, live_spur_positions_per_vine=some(positions), **lengths), good_canes=some(GOOD))


def places(number):
    """The x of so many positions, shared out over both arms from the first place to the tip, from left to right."""
    left = number // 2
    arms = [[FIRST + (ARM - FIRST) * k // (own - 1) if own > 1 else FIRST for k in range(own)] for own in (left, number - left)]
    return [-x for x in reversed(arms[0])] + arms[1]


def even(xs):
    """The barest quarter of the vine's wire over the densest, nodes standing at these x."""
    quarters = Counter(min(3, max(0, int((x + SPACING / 2) // (SPACING / 4)))) for x in xs)
    return min(quarters[k] for k in range(4)) / max(quarters.values())


def cane_nodes(canes, arms=2):
    """The x of the nodes of canes that go left and right in turn; on a vine that goes one way to the right."""
    for k, nodes in enumerate(canes):
        for node in range(nodes):
            along = (node + 1) * INTERNODE
            yield -along if arms > 1 and k % 2 == 0 else along


def rank(spurs, canes, positions, cordon_goes):
    """The points of a layout, reckoned from what the design record says of them."""
    xs = [x for x, nodes in zip(places(len(spurs)), spurs) for _ in range(nodes)] + list(cane_nodes(canes, len(canes) if cordon_goes else 2))
    weights = OPTION_LIMITS.weights
    if cordon_goes:
        xs += [-1 if len(canes) > 1 and k % 2 == 0 else 1 for k in range(len(canes)) for _ in range(RENEWAL)]
        start = 0 if len(canes) == 1 else -SPACING / 2
        quarters = Counter(min(3, max(0, int((x - start) // (SPACING / 4)))) for x in xs)
        share = min(quarters[k] for k in range(4)) / max(quarters.values())
        cuts, long = 2 * len(canes) + 2, 0
    else:
        share = even(xs)
        cuts = 2 * len(spurs) + (positions - len(spurs)) + len(canes)
        short = sum(nodes <= USUAL for nodes in spurs)
        long = max(0, len(spurs) - short + len(canes) - short)
        weights = but(weights, change=0.0)
    spare = weights.no_spare if canes and len(canes) >= GOOD else 0.0
    empty = 0 if cordon_goes else positions - len(spurs)
    off = weights.uneven * (1 - share) + weights.work * (cuts + 2 * len(canes)) + weights.change
    return 100 - off - spare - weights.empty * empty - weights.unrenewed * long


def families(spurs, canes):
    """The families that a list of spurs obeys: usual ones alike, longer ones alike, long ones of one length among ones with one odd one at most."""
    low, high = min(spurs), max(spurs)
    rest = sorted(nodes for nodes in spurs if nodes not in (1, high))
    if high <= USUAL:
        return ["usual"] if high - low <= 1 else []
    among = low <= USUAL and len(rest) <= 1
    if canes:
        return ["longer"] if high - low <= 1 or among else []
    return (["alike"] if high - low <= 1 else []) + (["among"] if among else [])


def everything(nodes, positions):
    """{family and number of canes: the points of its best layout}, from every list of spurs and every number and length of canes."""
    best = {}

    def keep(name, points):
        best[name] = max(points, best.get(name, points))

    for canes in [[], *([each] * number for number in (1, 2) for each in range(CANE_LEAST, ARM // INTERNODE + 1))]:
        left = nodes - sum(canes)
        for spurs in product(range(1, LONGEST + 1), repeat=min(left, positions)) if left > 0 else []:
            for family in families(spurs, canes) if sum(spurs) == left and spurs else []:
                keep((family, len(canes)), rank(spurs, canes, positions, cordon_goes=False))
    for number in range(1, GOOD + 1):
        room = (SPACING - GAP if number == 1 else ARM) // INTERNODE
        on_canes = nodes - number * RENEWAL
        if number * CANE_LEAST <= on_canes <= number * min(room, CANE_MOST):
            each = [on_canes * (k + 1) // number - on_canes * k // number for k in range(number)]
            keep(("canes", number), rank([], each, positions, cordon_goes=True))
    return best


def searched(nodes, positions):
    """The same from the search; one arm laid new is left out, which has a search of its own below."""
    found = {}
    for option in ranked_options(vine(nodes, positions), OPTION_LIMITS):
        layout = option.layout
        spurs, canes = layout.spurs, len(layout.canes)
        if not option.built or layout.target == "lay_new_arm":
            continue
        if layout.target == "cane":
            name = ("canes", canes)
        elif max(spurs) <= USUAL:
            name = ("usual", canes)
        else:
            name = ("longer", canes) if canes else ("among" if max(spurs) - min(spurs) > 1 or ("alike", 0) in found else "alike", 0)
        found[name] = option.score
    return found


@pytest.mark.parametrize("positions", range(1, 6))
@pytest.mark.parametrize("nodes", [1, 3, 5, 7, 9, 11, 12, 13, 14, 16, 17, 19, 20, 23, 24, 26, 28, 30])
def test_the_search_finds_what_trying_everything_finds(nodes, positions):
    """In every family that has a layout the best one has the same points, and there is no family more or less."""
    expected = everything(nodes, positions)
    found = searched(nodes, positions)
    both = {"alike", "among"}
    assert {name for name in expected if name[0] not in both} == {name for name in found if name[0] not in both}
    for name in expected.keys() - {("alike", 0), ("among", 0)}:
        assert found[name] == pytest.approx(expected[name])
    # A list such as 3, 2 is alike and long among short at once: the two families are compared together.
    pair = [sorted(one[name] for name in one if name[0] in both) for one in (expected, found)]
    assert pair[0] == pytest.approx(pair[1])


VINES = {
    "nodes": st.integers(1, 120), "positions": st.one_of(st.none(), st.integers(0, 40)), "spacing": st.integers(600, 4000), "gap": st.integers(0, 300),
    "internode": st.integers(30, 200), "head": st.integers(-30, 60), "curtains": st.integers(1, 2), "arms": st.sampled_from([None, 1, 2, 4]),
    "good": st.integers(0, 9), "ripe": st.sampled_from([None, 0, 1]), "structure": st.sampled_from([None, 0, 1]), "first": st.integers(0, 300),
}  # fmt: skip


def known(number):
    """A number that may be left out."""
    return OPEN if number is None else some(number)


@given(st.fixed_dictionaries(VINES))
def test_no_layout_breaks_a_constraint(any_vine):
    """Every layout, built or not: no cane past its wire and the tip gap, none longer than its wood is ripe, no spur off a live position or over its
    length, every node accounted for; built ones have the number asked, others say what is short."""
    v = any_vine
    lengths = but(
        LAYOUT, nodes=v["nodes"], live_spur_positions_per_vine=known(v["positions"]), vine_spacing_m=v["spacing"] / 1000, tip_gap_m=v["gap"] / 1000,
        internode_cm=v["internode"] / 10, head_below_wire_cm=float(v["head"]), curtains=v["curtains"], cordon_arms=known(v["arms"]),
        canes_well_ripe=known(v["ripe"]), first_spur_from_head_m=v["first"] / 1000,
    )  # fmt: skip
    found = ranked_options(but(ASKED, layout=lengths, good_canes=some(v["good"]), structure=known(v["structure"])), OPTION_LIMITS)
    assert [one.built for one in found] == sorted((one.built for one in found), reverse=True)
    for option in found:
        layout = option.layout
        sides = 1 if layout.arms == 1 else 2
        assert layout.arm_mm <= (v["spacing"] - v["gap"]) // sides and layout.wire_mm <= (v["spacing"] - v["gap"]) // sides
        assert layout.nodes == sum(layout.spurs) + sum(layout.canes) + sum(layout.renewals)
        assert max(layout.canes, default=0) <= (8 if v["ripe"] == 0 else 12) and max(layout.spurs, default=0) <= 6
        assert v["positions"] is None or len(layout.spurs) <= v["positions"]
        assert option.score == pytest.approx(100 - sum(vars(option.off).values())) and min(vars(option.off).values()) >= 0
        if option.built:
            assert layout.nodes == v["nodes"] and len(layout.canes) <= v["good"] and min(layout.canes, default=6) >= 6
            assert v["structure"] != 1 or layout.target == "cane"
        else:
            assert layout.nodes + layout.short_nodes >= v["nodes"] and option.reasons and any(say.numbers for say in option.reasons) or not_here(option)


def not_here(option):
    """Whether the form itself is not to be had on this vine, which no number tells."""
    return {say.id for say in option.reasons} & {"layout_options.no_cordon", "layout_options.no_second_arm"}


def test_canes_never_reach_past_their_wire():
    """On every spacing, drawn to scale, the last node of every cane stands on the vine's own side of the tip gap."""
    for spacing in range(700, 3000, 70):
        lengths = but(LAYOUT, nodes=40, vine_spacing_m=spacing / 1000, live_spur_positions_per_vine=some(6))
        for option in ranked_options(but(ASKED, layout=lengths), OPTION_LIMITS):
            way = path_to_right(option.layout.rise_mm, spacing, 0)
            reach = max((along(way, nodes * 80.0).x for nodes in option.layout.canes), default=0)
            assert reach <= (spacing - 100 if option.layout.arms == 1 else (spacing - 100) // 2)


@pytest.mark.parametrize(("nodes", "spacing", "positions"), [(60, 3.0, 28), (60, 3.0, 40), (120, 4.0, 60), (24, 1.2, 10)])
def test_the_work_of_the_search_is_counted(monkeypatch, nodes, spacing, positions):
    """60 nodes on 3 m of wire, and more than that: at most 120 layouts are tried, and each is weighed once."""
    calls = Counter()

    def counting(module, name):
        plain = getattr(module, name)
        monkeypatch.setattr(module, name, lambda *given: calls.update([name]) or plain(*given))

    for name in ("evenness", "level_of", "hand_work", "bunches_of"):
        counting(option_scores, name)
    asked = but(ASKED, layout=but(LAYOUT, nodes=nodes, vine_spacing_m=spacing, live_spur_positions_per_vine=some(positions)))
    tried = len(candidates(asked, OPTION_LIMITS))
    ranked_options(asked, OPTION_LIMITS)
    assert 0 < tried <= 120 and set(calls.values()) == {tried} and len(calls) == 4


def test_shoots_are_level_as_no_other_order_makes_them():
    """14 nodes on five positions beside two canes: no order of the same spurs has a fuller barest quarter over the densest."""
    found = ranked_options(vine(26, 5), OPTION_LIMITS)
    for option in found:
        layout = option.layout
        if option.built and layout.spurs and layout.target != "lay_new_arm":
            orders = {spurs for spurs in product(set(layout.spurs), repeat=len(layout.spurs)) if sorted(spurs) == sorted(layout.spurs)}
            shares = [even([x for x, nodes in zip(places(len(spurs)), spurs) for _ in range(nodes)] + list(cane_nodes(layout.canes))) for spurs in orders]
            assert option.evenness == pytest.approx(max(shares))
