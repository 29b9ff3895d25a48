"""Vines that the checks of the decisions share, and what the guide says of them."""

from generator.answers.compute import compute
from generator.answers.tables import base_facts, feeding_order
from generator.reading.rulebook import Rulebook

CORDON = {
    "present_structure": "spur_cordon",
    "pruning_method": "hand",
    "use": "wine",
    "dark_stain_in_trunk": "not_cut",
    "signs_seen_when": "in_leaf",
    "trunk_disease_vines_pct": 0,
    "sound_cordon_pct": 95,
    "spur_positions_missing_pct": 5,
    "good_canes_per_vine": 3,
    "canes_wanted_per_vine": 2,
    "cane_diameter_mm": 9,
    "crop_made_in_two_of_three_years": "yes",
    "buds_cut": "no",
    "variety": "other",
    "climate": "warm",
}
HEAD = {name: value for name, value in CORDON.items() if "cordon" not in name and "spur" not in name} | {"present_structure": "cane_head"}
FAILED = {"crop_made_in_two_of_three_years": "no"}


def reach(low: float, high: float) -> dict[str, object]:
    """Buds were cut open, and the spurs reach so far."""
    return {"buds_cut": "yes", "spur_reach_low": low, "spur_reach_high": high}


def outcome(rulebook: Rulebook, decision: str, **facts: object) -> str:
    """The settled outcome of a decision."""
    answer = compute(rulebook, decision, facts)
    assert answer["settled"], answer["possible"]
    return answer["outcome"]


def of_those(rulebook: Rulebook, decision: str, facts: dict[str, object]) -> dict[str, object]:
    """Of the facts of a vine those that a decision asks."""
    asked = base_facts(rulebook, feeding_order(rulebook, decision))
    return {name: facts[name] for name in asked if name in facts}


def target(rulebook: Rulebook, **facts: object) -> str:
    """The form that pruning_system aims for."""
    found = outcome(rulebook, "pruning_system", **(CORDON | facts))
    return next(one.target for one in rulebook.decisions["pruning_system"].outcomes if one.id == found)


def printed(rulebook: Rulebook, evidence: str) -> dict:
    """The figures of a piece of evidence as its source prints them."""
    return rulebook.evidence[evidence].outputs
