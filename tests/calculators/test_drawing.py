"""Drawings of the vine before and after pruning, to scale."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.cane_path import path_to_right
from generator.calculators.drawing_before import draw_before
from generator.calculators.drawing_shapes import length_mm
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.facts import ENTERED, NOT_ASKED, Facts
from generator.calculators.hand_work import hand_work
from generator.calculators.vine_layout import vine_layout
from generator.calculators.vine_stand import Stand, nodes_at, slots_of, slots_on, stand_of
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, OPEN, but, ids, some

TARGETS = ["spur", "long_spurs", "spurs_with_canes", "lay_new_arm", "cane"]
CORDON = Stand(known=True, on_cordon=True, arms=2, arm_mm=700, positions=10, missing=2, assumed=False)
HEAD = Stand(known=True, on_cordon=False, arms=2, arm_mm=700, positions=0, missing=0, assumed=False)
LETTER = 0.55
ROOM_FOR_WORDS = 1.4


def stands(target):
    """The stand of a vine that such a layout is for."""
    return HEAD if target == "cane" else CORDON


def drawn(draw, stand=None, wire_mm=900, **changes):
    """The plain vine with some inputs changed, drawn before or after."""
    inputs = but(LAYOUT, **changes)
    layout = vine_layout(inputs, LAYOUT_LIMITS)
    space, gap = round(inputs.vine_spacing_m * 1000), round(inputs.tip_gap_m * 1000)
    return draw(layout, stand or stands(inputs.target), wire_mm, space, gap)


def after(**changes):
    """The drawing after pruning."""
    return drawn(draw_vine, **changes)


def before(**changes):
    """The drawing before pruning."""
    return drawn(draw_before, **changes)


def of_class(drawing, css):
    """The shapes of a class."""
    return [shape for shape in drawing.shapes if shape.css == css]


def counts(drawing, *css):
    """How many shapes there are of each class."""
    return [len(of_class(drawing, one)) for one in css]


def test_a_cordon_shows_every_spur_node_and_missing_position():
    """Ten spurs of two nodes, two positions missing: a cross has two strokes."""
    assert counts(after(), "spur", "node", "missing", "arm") == [10, 20, 4, 2]


def test_a_head_shows_cane_renewal_spur_and_their_nodes():
    """One cane of ten and a renewal spur of two, whose nodes are open rings: told apart without colour."""
    assert counts(after(target="cane", nodes=12, vine_spacing_m=1.1), "cane", "renewal", "node", "open", "head") == [1, 1, 10, 2, 1]


def test_a_new_arm_is_a_cane_in_the_place_of_the_arm():
    """The old arm to the left is not there, a cane runs along its wire, and the spurs stand to the right."""
    shown = after(target="lay_new_arm", nodes=20)
    assert counts(shown, "arm", "cane", "renewal") == [1, 1, 1]
    assert all(point.x <= 0 for point in of_class(shown, "cane")[0].points)
    assert all(spur.points[0].x > 0 for spur in of_class(shown, "spur"))


def test_four_canes_stand_on_two_wires():
    """Two canes each way: the second pair has a wire of its own over the first."""
    assert counts(after(target="cane", nodes=40, canes_wanted_per_vine=some(4)), "cane", "wire") == [4, 2]


def test_nodes_stand_an_internode_apart():
    """Dots on the flat part of a cane are 80 mm apart."""
    dots = of_class(after(target="cane", nodes=12, vine_spacing_m=1.1), "node")
    assert dots[-1].points[0].x - dots[-2].points[0].x == 80


def test_the_tip_stays_half_a_gap_from_the_middle():
    """Arms of a 1.5 m vine with a gap of 0.1 m end at 700 mm each way; the neighbours begin at 800."""
    shown = after()
    assert max(point.x for arm in of_class(shown, "arm") for point in arm.points) == 700
    assert min(point.x for arm in of_class(shown, "neighbour") for point in arm.points if point.x > 0) == 800


def test_a_single_arm_goes_to_the_right_and_meets_the_next_head():
    """One cane each: the neighbour's trunk stands at the spacing."""
    shown = after(target="cane", nodes=12, vine_spacing_m=1.1)
    assert 1100 in [one.points[0].x for one in of_class(shown, "neighbour")]


def test_the_bend_takes_as_much_wire_as_the_head_is_low():
    """A head 150 mm low: a bend of about 243 mm takes 150 mm of wire."""
    assert length_mm(path_to_right(150, 850, 0)) == pytest.approx(850 + 93, abs=2)


def test_canes_come_down_from_a_head_above_the_wire():
    """A head 200 mm over a wire at 900 mm: the canes begin at 1100 mm and end on the wire."""
    cane = of_class(after(target="cane", nodes=20, head_below_wire_cm=-20.0), "cane")[0]
    assert (cane.points[0].y, cane.points[-1].y) == (-1100, -900)


@pytest.mark.parametrize("target", TARGETS)
def test_the_cuts_drawn_are_the_cuts_counted(target):
    """Each cut in the picture of a vine whose arms are all in sight is one of those that the caption counts."""
    shown = before(target=target)
    counted = hand_work(vine_layout(but(LAYOUT, target=target), LAYOUT_LIMITS), 0 if target == "cane" else 2).cuts
    assert counts(shown, "cut") == [counted]
    assert [say.numbers for say in shown.describe if say.id == "drawing.describe_cuts"] == [[float(counted)]]


def test_before_shows_two_canes_on_each_live_position():
    """Ten positions: twenty canes of last summer, each with its break mark; the same two crosses as after."""
    shown = before()
    assert counts(shown, "cane off", "break", "missing") == [20, 20, 4]


def test_a_cordon_that_is_given_up_is_dashed():
    """Canes on a cordon: both arms go, and two canes near the head stay."""
    assert counts(before(stand=CORDON, target="cane", nodes=24), "arm", "arm off", "cane", "renewal") == [0, 2, 2, 2]


def test_a_form_that_is_not_known_is_not_drawn():
    """Goblets, hedges and arbours have no picture before pruning."""
    assert before(stand=but(CORDON, known=False)).shapes == []


def facts_of(**known):
    """Facts of a stand; what is not given is not asked."""
    names = ["live_spur_positions_per_vine", "present_structure", "cordon_arms", "arm_length_m", "spur_positions_missing_pct", "curtains", "vine_spacing_m"]
    numbers = {"curtains": 1.0, "vine_spacing_m": 1.5, **known}
    return Facts(names, [numbers.get(name, 0.0) for name in names], [ENTERED if name in numbers else NOT_ASKED for name in names])


def test_missing_positions_come_from_their_share():
    """Ten live positions with 20 % missing: 2.5 are missing, two when rounded (a tie goes to the even one)."""
    stand = stand_of(facts_of(live_spur_positions_per_vine=10.0, spur_positions_missing_pct=20.0), vine_layout(LAYOUT, LAYOUT_LIMITS))
    assert (stand.on_cordon, stand.positions, stand.missing) == (True, 10, 2)


def test_there_are_no_more_missing_positions_than_an_arm_has_nodes():
    """All but a hair of the positions missing: no more crosses than two arms of 700 mm have nodes 80 mm apart."""
    stand = stand_of(facts_of(live_spur_positions_per_vine=10.0, spur_positions_missing_pct=99.9999999999), vine_layout(LAYOUT, LAYOUT_LIMITS))
    assert stand.missing == 2 * 700 // 80


def test_a_head_stays_a_head_whatever_was_counted():
    """Who says head with canes (1) gets no cordon drawn."""
    stand = stand_of(facts_of(live_spur_positions_per_vine=10.0, present_structure=1.0), vine_layout(but(LAYOUT, target="cane"), LAYOUT_LIMITS))
    assert stand.known and not stand.on_cordon


@given(st.integers(1, 4), st.integers(0, 40), st.integers(0, 20), st.integers(1, 120))
def test_every_spur_finds_a_live_position(arms, live, missing, nodes):
    """All spurs are placed, none on a missing position, and each arm reads from the head to its tip."""
    layout = vine_layout(but(LAYOUT, nodes=nodes, cordon_arms=some(arms), live_spur_positions_per_vine=some(live)), LAYOUT_LIMITS)
    slots = slots_of(layout, but(CORDON, arms=arms, positions=live, missing=missing))
    placed = nodes_at(slots, layout.spurs)
    assert [number for number in placed if number] == layout.spurs
    assert all(slot.live for slot, number in zip(slots, placed) if number)
    assert len(slots) == live + missing == len(slots_on(arms, 0, live, missing, 150, 700))


ANY_VINE = {
    "target": st.sampled_from(TARGETS), "nodes": st.integers(1, 60), "vine_spacing_m": st.floats(0.6, 4.0), "internode_cm": st.floats(4.0, 15.0),
    "positions": st.integers(0, 30), "head": st.integers(-30, 60), "arms": st.sampled_from([OPEN, some(1), some(2), some(4)]), "on_cordon": st.booleans(),
}  # fmt: skip


@given(st.fixed_dictionaries(ANY_VINE))
def test_everything_lies_inside_the_window(any_vine):
    """No shape leaves the window of either drawing, and every coordinate is a whole millimetre."""
    vine = dict(any_vine)
    positions, head, arms, on_cordon = vine.pop("positions"), vine.pop("head"), vine.pop("arms"), vine.pop("on_cordon")
    vine |= {"live_spur_positions_per_vine": some(positions), "head_below_wire_cm": float(head), "cordon_arms": arms}
    number = int(arms.number) if arms.ok else 2
    stand = Stand(True, on_cordon, number, round(vine["vine_spacing_m"] * 1000) // 2 - 50, positions, 3, False)
    for draw in (draw_before, draw_vine):
        shown = drawn(draw, stand=stand, **vine)
        points = [point for shape in shown.shapes for point in shape.points]
        assert all(shown.left <= point.x <= shown.left + shown.width for point in points)
        assert all(shown.top <= point.y <= shown.top + shown.height for point in points)
        assert all(isinstance(point.x, int) and isinstance(point.y, int) for point in points)


@pytest.mark.parametrize("draw", [before, after])
@pytest.mark.parametrize("target", TARGETS)
def test_labels_fit_when_longer(draw, target, rulebook):
    """Two labels stand on one line only at opposite ends, and texts 40 % longer than the English ones leave room between them."""
    shown = draw(target=target)
    lines = {}
    for shape in shown.shapes:
        if shape.kind == "text":
            letters = ROOM_FOR_WORDS * len(rulebook.messages[shape.label.id].text.replace("{nodes}", "9"))
            lines.setdefault(shape.points[0].y, []).append(letters * LETTER * shown.text_mm)
    assert lines and all(sum(widths) + shown.text_mm <= shown.width for widths in lines.values())


@pytest.mark.parametrize("draw", [before, after])
@pytest.mark.parametrize("target", TARGETS)
def test_no_leader_crosses_the_ground(draw, target):
    """Every label stands over the ground, and so does its leader."""
    shown = draw(target=target)
    words = of_class(shown, "leader") + of_class(shown, "label")
    assert words and all(point.y < 0 for shape in words for point in shape.points)


@pytest.mark.parametrize("spacing", [0.6, 1.5, 6.0])
@pytest.mark.parametrize("draw", [before, after])
def test_text_is_legible_on_a_phone(draw, spacing):
    """At 358 pixels of width (390 less the margins) and 512 of height text is at least 12.5 pixels high, for narrow and wide vines."""
    shown = draw(vine_spacing_m=spacing)
    assert shown.text_mm * min(358 / shown.width, 512 / shown.height) >= 12.5


def test_the_description_tells_what_the_drawing_shows():
    """For those who do not see it: arms, spurs and their nodes, and that the crosses are spread."""
    shown = after()
    assert ids(shown.describe) == ["drawing.after", "drawing.describe_arms", "drawing.describe_spurs_alike", "drawing.describe_missing"]
    assert shown.describe[2].numbers == [10.0, 2.0]


def test_the_caption_says_that_canes_go_on():
    """The picture before says that canes are drawn short, what is dashed, and how many cuts it takes."""
    assert ids(before().describe)[:3] == ["drawing.before", "drawing.describe_cordon_before", "drawing.describe_cuts"]


def test_what_stands_behind_is_said():
    """Four arms on two curtains: two are drawn, and the description says that there are more."""
    assert "drawing.behind" in ids(after(curtains=2, cordon_arms=some(4)).describe)
