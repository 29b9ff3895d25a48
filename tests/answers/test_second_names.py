"""An input that has a second name: buds_cut asks yes or no elsewhere, and is how injury_adjustment is told how many."""

import pytest

from generator.answers.compute import compute
from generator.answers.describing import describe
from generator.answers.given import BadInput

COUNTED = {"wanted_nodes": 30, "deaths_in_wanted_nodes": "none", "buds_primary_alive": 58, "buds_secondary_only": 30}


def test_either_name_gives_the_same_answer(rulebook):
    """The fact's own id and the second name are the same input."""
    own, second = (compute(rulebook, "injury_adjustment", {**COUNTED, name: 100}) for name in ("buds_cut_for_injury", "buds_cut"))
    assert own == second and second["outputs"]["mortality_pct"] == 42


def test_both_names_at_once_are_refused(rulebook):
    """Two answers to one question: the second name is told as not asked."""
    with pytest.raises(BadInput, match="buds_cut: is not asked here"):
        compute(rulebook, "injury_adjustment", {**COUNTED, "buds_cut": 100, "buds_cut_for_injury": 90})


def test_the_second_name_is_described(rulebook):
    """`--describe` tells it beside the id."""
    assert [one.get("also") for one in describe(rulebook, "injury_adjustment")["inputs"] if one["id"] == "buds_cut_for_injury"] == ["buds_cut"]
