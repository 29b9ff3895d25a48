"""Drawings of the pruned vine, to scale."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.cane_path import path_to_right
from generator.calculators.drawing_shapes import length_mm
from generator.calculators.drawing_vine import draw_vine
from generator.calculators.vine_layout import vine_layout
from tests.calculators.cases import LAYOUT, LAYOUT_LIMITS, but, ids, some

TARGETS = ["spur", "long_spurs", "spurs_with_canes", "cane"]
LETTER = 0.55
ROOM_FOR_WORDS = 1.4


def drawing(**changes):
    """The drawing of the plain vine with some inputs changed."""
    inputs = but(LAYOUT, **changes)
    return draw_vine(vine_layout(inputs, LAYOUT_LIMITS), 900, round(inputs.vine_spacing_m * 1000), round(inputs.tip_gap_m * 1000))


def of_class(shapes, css):
    """The shapes of a class."""
    return [shape for shape in shapes if shape.css == css]


def test_a_cordon_shows_every_spur_and_node():
    """Ten spurs of two nodes: ten strokes and twenty dots."""
    shapes = drawing().shapes
    assert (len(of_class(shapes, "spur")), len(of_class(shapes, "node"))) == (10, 20)


def test_a_head_shows_cane_renewal_spur_and_their_nodes():
    """One cane of ten and a renewal spur of two."""
    shapes = drawing(target="cane", nodes=12, vine_spacing_m=1.1).shapes
    assert [len(of_class(shapes, css)) for css in ("cane", "renewal", "node", "head")] == [1, 1, 12, 1]


def test_nodes_stand_an_internode_apart():
    """Dots on the flat part of a cane are 80 mm apart."""
    dots = of_class(drawing(target="cane", nodes=12, vine_spacing_m=1.1).shapes, "node")[:10]
    assert dots[-1].points[0].x - dots[-2].points[0].x == 80


def test_the_tip_stays_half_a_gap_from_the_middle():
    """Arms of a 1.5 m vine with a gap of 0.1 m end at 700 mm each way; the neighbours begin at 800."""
    shapes = drawing().shapes
    assert max(point.x for arm in of_class(shapes, "arm") for point in arm.points) == 700
    assert min(point.x for arm in of_class(shapes, "neighbour") for point in arm.points if point.x > 0) == 800


def test_a_single_arm_goes_to_the_right_and_meets_the_next_head():
    """One cane each: the neighbour's trunk stands at the spacing."""
    shapes = drawing(target="cane", nodes=12, vine_spacing_m=1.1).shapes
    assert [one.points[0].x for one in of_class(shapes, "neighbour")][1] == 1100


def test_the_bend_takes_as_much_wire_as_the_head_is_low():
    """A head 150 mm low: a bend of about 243 mm takes 150 mm of wire."""
    assert length_mm(path_to_right(150, 850, 0)) == pytest.approx(850 + 93, abs=2)


@given(st.sampled_from(TARGETS), st.integers(1, 60), st.floats(0.6, 4.0), st.floats(4.0, 15.0), st.integers(0, 30), st.integers(-30, 60))
def test_everything_lies_inside_the_window(target, nodes, spacing, internode, positions, head):
    """No shape leaves the drawing's window, and its size is above zero."""
    shown = drawing(
        target=target,
        nodes=nodes,
        vine_spacing_m=spacing,
        internode_cm=internode,
        live_spur_positions_per_vine=some(positions),
        head_below_wire_cm=float(head),
    )
    points = [point for shape in shown.shapes for point in shape.points]
    assert all(shown.left <= point.x <= shown.left + shown.width for point in points)
    assert all(shown.top <= point.y <= shown.top + shown.height for point in points)


@pytest.mark.parametrize("target", TARGETS)
def test_labels_stand_on_lines_of_their_own_and_fit_when_longer(target, rulebook):
    """No two labels share a line; a text 40 % longer than the English one still fits on a screen of 390 pixels."""
    shown = drawing(target=target)
    texts = [shape for shape in shown.shapes if shape.kind == "text"]
    assert len({shape.points[0].y for shape in texts}) == len(texts)
    for shape in texts:
        letters = len(rulebook.messages[shape.label.id].text)
        assert ROOM_FOR_WORDS * letters * LETTER * shown.text_mm <= shown.width


@pytest.mark.parametrize("target", TARGETS)
def test_text_is_legible_on_a_phone(target):
    """At 358 pixels of width (390 less the margins) text is at least 13 pixels high."""
    shown = drawing(target=target)
    assert shown.text_mm * 358 / shown.width >= 13


def test_the_description_tells_what_the_drawing_shows():
    """For those who do not see it: arms, spurs and their nodes."""
    shown = drawing()
    assert ids(shown.describe) == ["drawing.describe_arms", "drawing.describe_spurs_alike"]
    assert shown.describe[1].numbers == [10.0, 2.0]


def test_what_stands_behind_is_said():
    """Four canes: two are drawn, and the description says that there are more."""
    assert "drawing.behind" in ids(drawing(target="cane", nodes=40).describe)
