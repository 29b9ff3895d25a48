"""What may be left out stands folded away under its heading, unless it shall stand in view."""

from generator.pages.questions import MORE, of_calculator, of_plan


def folds(groups) -> dict[str, str]:
    """The fold of every question."""
    return {question.id: question.fold for group in groups for question in group.questions}


def test_a_form_names_its_folds(rulebook):
    """Each node of a series is in the fold of the first; what is needed is in none."""
    found = folds(of_calculator(rulebook, rulebook.calculators["nodes_for_yield"]))
    assert found["primordia_node_1"] == found["primordia_node_15"] == "Buds cut open this winter"
    assert found["bunch_weight_cv_pct"] == "How far your counts may be out"
    assert found["bunch_weight_g"] == ""


def test_the_usual_heading_stands_where_none_is_named(rulebook):
    """As for every form before."""
    assert folds(of_calculator(rulebook, rulebook.calculators["vine_density"]))["area_ha"] == MORE


def test_what_shall_be_in_view_is_in_view(rulebook):
    """A count that another form can replace is asked in sight, in the calculator and in the plan."""
    calculator, plan = folds(of_calculator(rulebook, rulebook.calculators["yield_forecast"])), folds(of_plan(rulebook))
    assert (calculator["bunches_per_shoot"], plan["bunches_per_shoot"]) == ("", "")
    assert plan["bunch_weight_cv_pct"] == MORE
