"""compute, describe and plan on the guide's own rules: the shape of answers, statuses, and every fault in its exact words."""

import json

import pytest

from generator.answers.compute import BadInput, compute, describe, names, plan

SPACING = {"row_spacing_m": 2.2, "vine_spacing_m": 1.1, "missing_vines_pct": 3}
ALWAYS = {
    "name",
    "kind",
    "headline",
    "settled",
    "ask_next",
    "status",
    "reasons",
    "rests_on",
    "assumed",
    "would_change",
    "working",
}
ALWAYS |= {"sources", "cautions", "rules", "edition", "link"}
CORDON = {"present_structure": "spur_cordon", "sound_cordon_pct": 80, "spur_positions_missing_pct": 14}


def faults_of(rulebook, name: str, inputs: dict) -> list[str]:
    """What compute says is wrong with the inputs."""
    with pytest.raises(BadInput) as caught:
        compute(rulebook, name, inputs)
    return caught.value.faults


def test_everything_named_can_be_described(rulebook):
    """Inputs with type, unit and range; values; outputs; ready for JSON."""
    for name in names(rulebook):
        described = describe(rulebook, name)
        assert described["inputs"] and described["outputs"]
        json.dumps(described, allow_nan=False)


def test_a_default_is_described_with_its_value_and_how_sure_it_is(rulebook):
    """Nobody takes an assumed number for a measured one; the value is listed with the others."""
    described = describe(rulebook, "vine_density")
    missing = next(one for one in described["inputs"] if one["id"] == "missing_vines_pct")
    value = rulebook.values[missing["default_value"]]
    assert (missing["default"], missing["default_standing"]) == (value.number, value.followed.standing)
    assert value.id in [one["id"] for one in described["values"]]


def test_a_fact_that_the_plan_has_not_is_told_without_all_their_names(rulebook):
    """How many there are and how to list them fits on a line; fifty ids do not."""
    with pytest.raises(BadInput) as caught:
        plan(rulebook, {"row_spacng_m": 2.4, "zzz": 1})
    listed = f"llowed is one of the {len(rulebook.facts)} facts; `python3 -m generator compute block_plan --describe` lists them"
    near = "row_spacng_m: is not asked here, did you mean row_spacing_m? A"
    assert caught.value.faults == [near + listed, "zzz: is not asked here, a" + listed]


@pytest.mark.parametrize(("name", "inputs"), [("vine_density", SPACING), ("cordon_state", CORDON)])
def test_every_answer_shows_what_every_answer_shows(rulebook, name, inputs):
    """The keys of guide.md are there, and the answer is one line."""
    answer = compute(rulebook, name, inputs)
    assert set(answer) >= ALWAYS
    assert answer["headline"] and "\n" not in answer["headline"]
    assert (answer["rules"], answer["edition"]["id"]) == (rulebook.version, "base")
    json.dumps(answer, allow_nan=False)


def test_what_is_left_open_is_left_out(rulebook):
    """Without the area nothing is said of the block's vines: no null, no zero."""
    open_area = compute(rulebook, "vine_density", SPACING)["outputs"]
    assert set(open_area) == {"vines_per_ha", "row_m_per_ha", "bearing_vines_per_ha"}
    assert compute(rulebook, "vine_density", SPACING | {"area_ha": 1})["outputs"]["vines_in_block"] == 4132


def test_a_decision_shows_why_and_what_would_change_it(rulebook):
    """80 % sound and 14 % missing is usable; a point less or more is not."""
    answer = compute(rulebook, "cordon_state", CORDON)
    assert (answer["settled"], answer["outcome"], answer["status"]) == (True, "usable", "entered")
    assert answer["reasons"][0]["row"] == "B2"
    flips = {change["fact"]: (change["value"], change["outcome"]) for change in answer["would_change"]}
    assert flips["sound_cordon_pct"] == (79.0, "repair")
    assert flips["spur_positions_missing_pct"] == (15.0, "repair")


def test_an_open_decision_names_what_to_find_out(rulebook):
    """`unknown` is asked and not known; the answer is open, with status unknown."""
    answer = compute(rulebook, "cordon_state", {**CORDON, "spur_positions_missing_pct": "unknown"})
    assert (answer["settled"], answer["outcome"], answer["status"]) == (False, "", "unknown")
    assert answer["ask_next"] == "spur_positions_missing_pct"
    assert set(answer["possible"]) == {"usable", "repair", "rebuild"}


def test_a_default_is_assumed_and_says_so(rulebook):
    """The height of the head has a default; an answer that rests on it is an assumed one, until it is unknown on purpose."""
    canes = {"present_structure": "cane_head", "canopy_form": "upright"}
    answer = compute(rulebook, "head_height", canes)
    assert (answer["status"], answer["assumed"]) == ("assumed", ["head_below_wire_cm"])
    assert answer["rests_on"][-1]["status"] == "assumed" and answer["rests_on"][-1]["text"].endswith("(assumed)")
    assert compute(rulebook, "head_height", canes | {"head_below_wire_cm": "unknown"})["settled"] is False


def test_names_that_are_not_asked(rulebook):
    """The nearest name is suggested."""
    assert faults_of(rulebook, "vine_density", {**SPACING, "row_spacing": 2}) == [
        "row_spacing: is not asked here, did you mean row_spacing_m?"
    ]


def test_values_out_of_range(rulebook):
    """The range is said in the fact's unit."""
    assert faults_of(rulebook, "vine_density", {**SPACING, "row_spacing_m": 22}) == [
        "row_spacing_m: Row spacing is out of range; allowed is 0.50\u00a0m to 6.00\u00a0m."
    ]


def test_required_inputs_that_are_missing_or_unknown(rulebook):
    """One line for each, with the way to find out what is unknown, and range faults beside them; an optional input may be either."""
    wrong = {"row_spacing_m": "unknown", "missing_vines_pct": 3, "area_ha": "unknown"}
    observe = " ".join(rulebook.facts["row_spacing_m"].observe.split())
    needed = [
        f"row_spacing_m: is unknown, but this calculator needs it. {observe}",
        "vine_spacing_m: is missing, this calculator needs it",
    ]
    assert faults_of(rulebook, "vine_density", wrong) == needed
    assert faults_of(rulebook, "vine_density", {**wrong, "missing_vines_pct": 300})[1:] == needed


def test_all_faults_are_told_at_once(rulebook):
    """A wrong name, a wrong value and a number out of range, in one run."""
    faults = faults_of(rulebook, "cordon_state", {"present": 1, "present_structure": "cordon", "sound_cordon_pct": 180})
    assert [fault.partition(":")[0] for fault in faults] == ["present", "present_structure", "sound_cordon_pct"]


def test_every_block_has_a_plan_that_words_all_it_says(rulebook):
    """Every Say with an id in a plan has its sentence beside it, and the plan is ready for JSON without NaN."""
    for block in rulebook.blocks.values():
        found = plan(rulebook, block.facts)
        assert all(say["text"] for say in says(found["plan"]) if say["id"])
        json.dumps(found, allow_nan=False)


def test_a_name_that_is_unknown_is_no_name(rulebook):
    """`unknown` means asked and not known for every fact, texts included."""
    assert plan(rulebook, {"block_name": "unknown"})["texts"] == {}


def says(data):
    """Every Say in plain data."""
    if isinstance(data, dict):
        if {"id", "numbers", "words"} <= set(data):
            yield data
        for one in data.values():
            yield from says(one)
    elif isinstance(data, list):
        for one in data:
            yield from says(one)
