"""A spur position: tables and facts that belong together, a walk through the winters, and what holds for every position."""

import itertools

import pytest

from generator.answers.calculators import run, taken
from generator.answers.compute import compute
from generator.calculators.drawing_spur import PANEL

SOUND = {"spur_height_cm": 4, "lower_cane_state": "sound", "lower_cane_mm": 9, "upper_cane_state": "sound", "upper_cane_mm": 10}
CANES = ("lower", "upper", "top", "low")


def position(rulebook, **facts) -> dict:
    """The guide's answer for a position."""
    return compute(rulebook, "spur_position", facts)


def test_a_cane_is_sorted_into_the_choices_of_the_next_table(rulebook):
    """The outcomes of the table on one cane are the choices of every fact that takes its answer, in the same order."""
    outcomes = [outcome.id for outcome in rulebook.decisions["spur_cane"].outcomes]
    for fact in ("lower_cane", "upper_cane", "low_cane", "kept_cane"):
        assert [choice.id for choice in rulebook.facts[fact].choices] == outcomes
    states = [choice.id for choice in rulebook.facts["spur_cane_state"].choices]
    ways = [choice.id for choice in rulebook.facts["spur_cane_points"].choices]
    for cane in CANES:
        assert [choice.id for choice in rulebook.facts[f"{cane}_cane_state"].choices] == states
        if cane != "low":
            assert [choice.id for choice in rulebook.facts[f"{cane}_cane_points"].choices] == ways
    assert [outcome.id for outcome in rulebook.decisions["spur_nodes"].outcomes] == ["one", "two", "three"]


def test_a_crept_position_comes_down_in_three_winters_and_bears_in_each(rulebook):
    """14 cm high with nothing low: each winter's answer is carried out, the tagged shoot grows a little thicker, and the end is a low
    spur. No winter leaves the place without a node."""
    winter = SOUND | {"spur_height_cm": 14}
    found = []
    # What the tag brings: nothing from the arm yet, then a thin cane where the shoot was held, then a pencil on its one-node spur.
    for tagged in ({}, {"low_cane_state": "sound", "low_cane_mm": 7}, {"low_cane_state": "sound", "low_cane_mm": 9}):
        answer = position(rulebook, **winter | tagged)
        found.append((next(one["outcome"] for one in answer["work"] if one["table"] == "spur_choice"), answer["outputs"]))
        assert answer["outputs"]["nodes_position"] >= 1
        if not answer["outputs"]["nodes_low"] or answer["outputs"]["nodes_lower"]:
            assert any("Tag it" in one.get("spring", "") for one in answer["work"])
    assert [outcome for outcome, _ in found] == ["coax_low_shoot", "low_in_two", "low_takes_over"]
    assert [outputs["nodes_low"] for _, outputs in found] == [0, 1, 2]
    low = position(rulebook, **SOUND | {"spur_height_cm": 1, "winters_tried": 0})
    assert low["outputs"]["nodes_lower"] == 2 and low["outputs"]["height_ratio"] <= 0.1


def test_a_position_that_nothing_grows_beside_is_filled_from_its_neighbour(rulebook):
    """Three winters of waiting; in each the place bears on top, and it bears in the winter in which the short cane is laid too."""
    outcomes = []
    for tried in range(4):
        answer = position(rulebook, **SOUND | {"spur_height_cm": 14, "winters_tried": tried})
        outcomes.append(answer["work"][0]["outcome"])
        assert answer["outputs"]["nodes_position"] == 2
    assert outcomes == ["coax_low_shoot"] * 3 + ["short_cane"]


def test_a_twin_is_not_taken_off_beside_an_emptied_place(rulebook):
    """Never a position and its neighbour in one winter."""
    twin = SOUND | {"nearest_position_spacings": 0.4, "lower_of_pair": False}
    assert position(rulebook, **twin)["outputs"]["nodes_position"] == 0
    held = position(rulebook, **twin, neighbour_emptied=True)
    assert held["outputs"]["nodes_position"] == 2 and any("neighbour was emptied" in note for note in held["notes"])


def test_what_was_not_measured_is_asked_for_and_nothing_is_guessed(rulebook):
    """The first cane without a thickness is named; numbers stay open."""
    answer = position(rulebook, **{name: x for name, x in SOUND.items() if not name.endswith("mm")})
    assert "Lower cane, thickness" in answer["headline"] and "nodes_position" not in answer["outputs"] and answer["steps"] == []
    twin = position(rulebook, **SOUND, nearest_position_spacings=0.3)
    assert "Lower and straighter of the two" in twin["headline"]


def test_the_upper_cane_need_not_be_measured_beside_a_good_lower_one(rulebook):
    """The lower one stays whatever stands above it."""
    answer = position(rulebook, **{name: x for name, x in SOUND.items() if name != "upper_cane_mm"})
    assert answer["outputs"]["nodes_lower"] == 2


def test_a_third_cane_is_compared_where_the_second_is_unsound(rulebook):
    """The lowest fit cane above the lower one is the other."""
    answer = position(rulebook, **SOUND | {"lower_cane_state": "dead", "upper_cane_state": "split", "top_cane_state": "sound", "top_cane_mm": 9})
    assert [answer["outputs"][f"nodes_{cane}"] for cane in CANES] == [0, 0, 2, 0]
    lower = position(rulebook, **SOUND | {"lower_cane_mm": 7, "upper_cane_mm": 6, "top_cane_state": "sound", "top_cane_mm": 9})
    assert [lower["outputs"][f"nodes_{cane}"] for cane in CANES] == [1, 0, 2, 0]


def test_where_frost_comes_no_step_cuts_to_the_nodes_yet(rulebook):
    """The final cut comes later, so no step before it says cut to two nodes, and how much stays over them is told where the hands are."""
    late = position(rulebook, **SOUND, spring_frost_risk="high")["steps"]
    assert any("2 nodes after the final cut" in step for step in late) and not any("cut to 2 nodes" in step for step in late)
    assert any("25 to 45 cm" in step for step in late)
    assert any("cut to 2 nodes" in step for step in position(rulebook, **SOUND, spring_frost_risk="some")["steps"])


def test_one_cane_alone_is_kept_and_no_other_is_spoken_of(rulebook):
    """S4: nothing stands above it, so nothing above it is taken off. With a dead one above, that one goes with its wood."""
    one = position(rulebook, **SOUND | {"upper_cane_state": "none"})
    assert one["headline"] == "Keep the one cane that there is." and not any("comes off" in step for step in one["steps"])
    two = position(rulebook, **SOUND | {"upper_cane_state": "dead"})
    assert "take the upper one off" in two["headline"] and "Upper cane: comes off with the wood that it stands on." in two["steps"]


@pytest.mark.parametrize(("facts", "said"), [({}, "not needed here"), ({"low_cane_state": "dead"}, "comes off."), ({"lower_cane_state": "dead"}, "cut to 1 node")])
def test_the_cane_from_the_arm_is_never_left_without_a_word(rulebook, facts, said):
    """On a low position it goes; where the position would climb by its upper cane it is next winter's lower one."""
    answer = position(rulebook, **SOUND | {"low_cane_state": "sound", "low_cane_mm": 9} | facts)
    assert any(step.startswith("Cane from the arm") and said in step for step in answer["steps"])


def test_the_higher_of_two_that_stay_is_named_as_it_stands(rulebook):
    """With a third cane in the place of a dead second, no sentence says that the upper one bears and goes."""
    answer = position(rulebook, **SOUND | {"lower_cane_mm": 7, "upper_cane_state": "dead", "top_cane_state": "sound", "top_cane_mm": 9})
    assert "upper" not in answer["headline"] and any(step.startswith("Upper cane: comes off") for step in answer["steps"])


@pytest.mark.parametrize("low", [{}, {"low_cane_state": "sound", "low_cane_mm": 7}, {"low_cane_state": "sound", "low_cane_mm": 9}])
def test_long_spurs_wait_until_the_position_is_low(rulebook, low):
    """S10 to S12: one or two nodes on what comes down, though the block has three."""
    outputs = position(rulebook, **SOUND | low, long_spurs_planned=True)["outputs"]
    assert outputs["nodes_lower"] == 3
    crept = position(rulebook, **SOUND | low | {"spur_height_cm": 14}, long_spurs_planned=True)["outputs"]
    assert max(crept[f"nodes_{cane}"] for cane in CANES) == 2


@pytest.mark.parametrize("cm", [4, 14])
def test_where_older_wood_is_cut_the_stub_is_told(rulebook, cm):
    """The upper cane goes with two-year wood on a crept position as on a low one."""
    outputs = position(rulebook, **SOUND | {"spur_height_cm": cm, "two_year_wood_mm": 12})["outputs"]
    assert (outputs["stub_low_mm"], outputs["stub_high_mm"]) == (12, 24)


STATES = ["none", "dead", 6, 7, 9, 13]


def every_position():
    """Facts of positions of every kind of lower, upper and low cane, low and crept, tried or not, with a twin or a gap or not."""
    for lower, upper, low in itertools.product(STATES, STATES, STATES):
        canes = {}
        for name, one in (("lower", lower), ("upper", upper), ("low", low)):
            canes[f"{name}_cane_state"] = one if isinstance(one, str) else "sound"
            canes |= {} if isinstance(one, str) else {f"{name}_cane_mm": one}
        for height, more in ((6, {}), (14, {}), (14, {"winters_tried": 3}), (6, {"gap_beside_spacings": 2}), (25, {"creeping_positions_pct": 50})):
            yield canes | {"spur_height_cm": height} | more


def test_what_holds_for_every_position(rulebook, told):
    """No node on a cane that is not there or not sound; a place with sound wood is never emptied; the low cane is used only where it is
    needed; the drawing stays in its window, and no two of its words share a panel's line."""
    form, looked = rulebook.calculators["spur_position"], 0
    for facts in every_position():
        result = run(rulebook, form, taken(rulebook, form, facts))
        alive = [name for name in CANES if facts.get(f"{name}_cane_state") == "sound"]
        nodes = {name: getattr(result, f"nodes_{name}") for name in CANES}
        assert all(one.ok for one in nodes.values())
        assert all(name in alive for name in CANES if nodes[name].number > 0)
        assert (result.nodes_position.number > 0) == bool(alive)
        if facts["spur_height_cm"] <= 10 and {"lower", "upper"} & set(alive):
            # Beside an upper cane that is kept because nothing lower is fit, the cane from the arm is next winter's wood.
            only_upper = nodes["upper"].number > 0 and nodes["lower"].number == 0
            assert nodes["low"].number == (1 if only_upper and "low" in alive else 0)
        in_its_window(result.drawing)
        looked += 1
    told(looked, "spur positions of every kind, looked at one by one")


def in_its_window(drawing) -> None:
    """Every point lies in the window, and of the words two stand over and two under, each at the left edge of its panel."""
    for shape in drawing.shapes:
        for point in shape.points:
            assert 0 <= point.x <= drawing.width and drawing.top <= point.y <= drawing.top + drawing.height
    words = [shape.points[0] for shape in drawing.shapes if shape.kind == "text"]
    assert sorted((point.x // PANEL, point.y) for point in words) == sorted({(point.x // PANEL, point.y) for point in words})
    assert len(words) == 4 and all(point.x % PANEL < drawing.text_mm for point in words)


@pytest.mark.parametrize(
    ("facts", "cuts"),
    [
        (SOUND, 2),  # through the two-year wood, and over the last node
        (SOUND | {"lower_cane_mm": 6}, 2),  # the lower one at its base, the upper one over its node
        (SOUND | {"lower_cane_mm": 7}, 2),  # both over their nodes
        (SOUND | {"spur_height_cm": 14, "low_cane_state": "sound", "low_cane_mm": 9}, 2),  # the whole old position, and the low cane
        (SOUND | {"upper_cane_state": "none"}, 1),
        (SOUND | {"gap_beside_spacings": 2}, 1),
    ],
)
def test_the_drawing_marks_the_cuts(rulebook, facts, cuts):
    """One stroke for each cut of the shears."""
    form = rulebook.calculators["spur_position"]
    drawing = run(rulebook, form, taken(rulebook, form, facts)).drawing
    assert len([shape for shape in drawing.shapes if shape.css == "cut"]) == cuts
