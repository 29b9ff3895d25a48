"""What the growth of a vine stands for: rules by weight, by the kilogram, by the thickness of canes; and its balance."""

import pytest

from generator.answers.compute import compute
from generator.answers.encode import values_record
from generator.answers.given import BadInput
from generator.calculators.balance_bands import INSIDE, OVER, UNDER, Band, verdict
from generator.calculators.balanced_nodes import rules_of
from generator.calculators.capacity import Formula, Grape, by_weight, capacity_view, nodes_by
from generator.calculators.effective_shoots import cane_counts
from generator.calculators.figures import FITS, OPEN, OTHER, Figure, Scope, figure_of, standing_of
from tests.calculators.cases import some
from tests.calculators.cases import OPEN as LEFT_OUT

VINIFERA, AMERICAN, NEW_HYBRID = some(0), some(1), some(3)
RULE = Formula(30.0, 10.0, 0.5)


def view_of(rulebook, kg: float, grape_type=LEFT_OUT, use=LEFT_OUT, chosen=""):
    """The capacity view by the guide's own rules."""
    return capacity_view(kg, Grape(grape_type, use, LEFT_OUT, LEFT_OUT), rules_of(values_record(rulebook, "balanced_nodes")), chosen)


@pytest.mark.parametrize(("kg", "nodes", "proportion"), [(0.25, 30, 15), (0.5, 30, 30), (0.75, 35, 35), (1.0, 40, 40)])
def test_below_the_first_weight_the_first_number_is_the_most(kg, nodes, proportion):
    """From the first weight on both agree; below it the first number stands, and in proportion to the weight it is less."""
    assert (nodes_by(RULE, kg), by_weight(RULE, kg)) == pytest.approx((nodes, proportion))


def test_a_heavier_vine_never_keeps_fewer_nodes(rulebook):
    """Over the whole range of prunings, for every rule and for both ends of the view."""
    weights = [0.01 * 1.07**step for step in range(110)]
    rules = [Formula(first, further, unit) for first in (1, 30, 100) for further in (0, 10, 20) for unit in (0.3, 0.45359237)]
    runs = [[find(rule, kg) for kg in weights] for rule in rules for find in (nodes_by, by_weight)]
    views = [view_of(rulebook, kg, VINIFERA) for kg in weights]
    runs += [[view.low for view in views], [view.high for view in views]]
    assert all(lower <= higher for run in runs for lower, higher in zip(run, run[1:]))


def test_the_view_of_a_cool_wine_vine(rulebook):
    """0.62 kg of vinifera: 30 a kilogram from below, 20 + 20 a pound from above, each by its word."""
    view = view_of(rulebook, 0.62, VINIFERA)
    assert (view.low, view.high) == pytest.approx((18.6, 27.337), abs=0.001)
    assert (view.low_who, view.high_who) == ("figure.nodes_per_kg.smart_robinson", "figure.balanced_first_nodes.ohio_vinifera")
    assert (view.formula, view.below_first_unit) == ("ohio_vinifera", False)


def test_the_two_rules_change_places(rulebook):
    """On a large American vine 30 a kilogram is more than 30 + 10 a pound."""
    view = view_of(rulebook, 3.0, AMERICAN)
    assert view.low_who.endswith("ohio_american") and view.high == pytest.approx(90)


def test_without_the_kind_of_grape_the_kilogram_alone_speaks(rulebook):
    """No balanced rule is followed for a grape that nobody named."""
    view = view_of(rulebook, 1.0)
    assert (view.low, view.high, view.formula) == (30, 30, "")


@pytest.mark.parametrize(("grape", "use", "rule"), [(NEW_HYBRID, some(0), "ohio_french_hybrid"), (VINIFERA, some(1), "ohio_seedless"), (VINIFERA, some(2), "ohio_vinifera")])
def test_the_rule_is_made_for_grape_and_use(rulebook, grape, use, rule):
    """Newer crosses go by the older ones; table grapes by their own row; dried ones by the vine's."""
    assert view_of(rulebook, 1.0, grape, use).formula == rule


def test_a_rule_chosen_by_hand_makes_the_view(rulebook):
    """60 + 10 a pound (bp-24) stands beside 30 a kilogram, whatever the grape; two pounds are 70 nodes."""
    view = view_of(rulebook, 0.90718474, VINIFERA, chosen="lake_erie_60")
    assert (view.high, view.formula) == (pytest.approx(70), "lake_erie_60") and view.low == pytest.approx(30 * 0.90718474)


@pytest.mark.parametrize(("formula", "grape", "kg", "others"), [
    ("ohio_vinifera", "vinifera", 1, False), ("ohio_vinifera", "american", 1, True), ("ohio_vinifera", None, 1, False),
    ("lake_erie_100", "american", 1, False), ("lake_erie_100", "american", 0.3, True),
])
def test_a_rule_made_for_other_vines_is_told(rulebook, formula, grape, kg, others):
    """Another grape, or a vine outside the size that a rule is made for (bp-24: 1.5 to 2.5 pounds); nothing while the grape is not known."""
    inputs = {"pruning_weight_kg": kg, "balanced_formula": formula, **({"grape_type": grape} if grape else {})}
    answer = compute(rulebook, "balanced_nodes", inputs)
    assert any("made for other vines" in note for note in answer["notes"]) == others
    assert answer["outputs"]["capacity_high"] >= 30 * kg


def test_a_small_vine_counts_in_proportion(rulebook):
    """Less than a pound of prunings: the view takes the rule in proportion and says so."""
    view = view_of(rulebook, 0.2, VINIFERA)
    assert view.below_first_unit and view.high == pytest.approx(20 * 0.2 / 0.45359237)


def test_the_kind_of_grape_is_asked_for(rulebook):
    """Without it no number is given as the answer, and the rules stand side by side all the same."""
    answer = compute(rulebook, "balanced_nodes", {"pruning_weight_kg": 1})
    assert "nodes" not in answer["outputs"] and "Say what kind of grape" in answer["headline"]
    assert len(answer["compared"]) == len(rulebook.values["balanced_first_nodes"].figures) + len(rulebook.values["nodes_per_kg"].figures)


def test_own_numbers_come_before_a_named_rule(rulebook):
    """Three numbers put in by hand are the user's rule, whatever grape and name say."""
    inputs = {"pruning_weight_kg": 1, "grape_type": "american", "balanced_formula": "ohio_american"}
    own = {"first_nodes": 12, "further_nodes": 4, "unit_weight_kg": 0.5}
    answer = compute(rulebook, "balanced_nodes", {**inputs, **own})
    assert answer["outputs"]["nodes_exact"] == 16 and "your own rule" in answer["headline"]


@pytest.mark.parametrize("half", [{"first_nodes": 30}, {"further_nodes": 10}, {"unit_weight_kg": 0.5}, {"first_nodes": 30, "further_nodes": 10}])
def test_half_a_rule_is_refused(rulebook, half):
    """One number of three, or two, are no rule."""
    with pytest.raises(BadInput) as refused:
        compute(rulebook, "balanced_nodes", {"pruning_weight_kg": 1, **half})
    assert refused.value.faults == ["balanced_nodes: an own rule needs its first number, its second number and its weight"]


@pytest.mark.parametrize(("left", "said"), [(20, "has grown for more nodes"), (60, "did not grow for more")])
def test_last_winter_s_number_is_looked_back_at(rulebook, left, said):
    """Nodes by the prunings over nodes left: 40 for 20 and for 60."""
    answer = compute(rulebook, "balanced_nodes", {"pruning_weight_kg": 0.90718474, "grape_type": "american", "nodes_left": left})
    assert answer["outputs"]["look_back"] == pytest.approx(40 / left) and said in answer["notes"][0]


@pytest.mark.parametrize(
    ("diameter", "counts"), [(6.99, 0), (7, 0.5), (9.99, 0.5), (10, 0.5), (10.01, 1), (14.99, 1), (15, 1), (15.01, 2), (25, 2)]
)
def test_a_cane_at_the_border_of_a_class(rulebook, diameter, counts):
    """10 and 15 mm belong to the class they close, 7 mm to the class it opens; the note of the calculator says the same."""
    assert cane_counts(diameter, values_record(rulebook, "effective_shoots")) == counts
    none = dict.fromkeys(("canes_under_7_mm", "canes_7_to_10_mm", "canes_10_to_15_mm", "canes_over_15_mm"), 0)
    notes = compute(rulebook, "effective_shoots", {**none, "cane_diameter_mm": diameter})["notes"]
    assert any(note.endswith(f"counts {counts:.1f}.") for note in notes)


@pytest.mark.parametrize(("left", "said"), [(100.2, "blind"), (100, "About"), (82, "About"), (81.8, "elsewhere")])
def test_the_look_back_at_its_limits(rulebook, left, said):
    """90 effective shoots: under 0.9 a node nodes are blind, from 0.9 to 1.1 it was about right, over it shoots came from elsewhere."""
    canes = {"canes_under_7_mm": 3, "canes_7_to_10_mm": 4, "canes_10_to_15_mm": 78, "canes_over_15_mm": 5}
    answer = compute(rulebook, "effective_shoots", {**canes, "nodes_left": left})
    assert answer["outputs"]["look_back"] == pytest.approx(90 / left) and said in answer["notes"][0]


@pytest.mark.parametrize(
    ("low", "high", "number", "found"),
    [(4, 10, 3.999, UNDER), (4, 10, 4, INSIDE), (4, 10, 10, INSIDE), (4, 10, 10.001, OVER), (None, 10, 0, INSIDE), (None, 10, 11, OVER), (5, None, 99, INSIDE), (5, None, 4, UNDER)],
)
def test_both_ends_belong_to_the_band(low, high, number, found):
    """An end that is not printed keeps nothing out."""
    ends = [LEFT_OUT if end is None else some(end) for end in (low, high)]
    assert verdict(Band(*ends), number) == found


def test_what_is_not_known_is_left_open(rulebook):
    """Prunings alone tell of no balance; each further fact brings its measures, and shoots with canopy two."""
    measures = {"ravaz_index": {"last_yield_kg": 6}, "pruning_kg_per_m": {"canopy_length_m": 2}, "mean_cane_g": {"shoots_per_vine": 20}}
    bare = compute(rulebook, "vine_balance", {"pruning_weight_kg": 1})
    assert set(bare["outputs"]) == {"disputed"} and bare["compared"] == []
    for measure, facts in measures.items():
        assert set(compute(rulebook, "vine_balance", {"pruning_weight_kg": 1, **facts})["outputs"]) == {"disputed", measure}
    every = {name: x for facts in measures.values() for name, x in facts.items()}
    found = compute(rulebook, "vine_balance", {"pruning_weight_kg": 1, **every})["outputs"]
    assert (found["ravaz_index"], found["pruning_kg_per_m"], found["mean_cane_g"], found["shoots_per_m"]) == (6, 0.5, 50, 10)


def test_a_vine_without_a_crop_is_weighed_too(rulebook):
    """No fruit is a crop of 0 and an index of 0, not a missing number."""
    answer = compute(rulebook, "vine_balance", {"pruning_weight_kg": 1, "last_yield_kg": 0})
    assert answer["outputs"]["ravaz_index"] == 0 and "little crop" in answer["headline"]


@pytest.mark.parametrize(("answer", "place"), [(LEFT_OUT, OPEN), (some(1), FITS), (some(0), OTHER)])
def test_what_a_figure_is_made_for(answer, place):
    """A figure made for one choice fits it alone, and is open while the choice is not known; of other facts it says nothing."""
    figure = Figure("a", "figure.v.a", "", "published", 1.0, [Scope("grape_type", [1.0])])
    assert standing_of(figure, "grape_type", answer) == place
    assert standing_of(figure, "climate", answer) == FITS


def test_a_rule_that_lacks_a_number_is_refused():
    """Three values hold the numbers of a rule; one that is not there is not taken for 0."""
    with pytest.raises(ValueError, match="lacks one of its numbers"):
        figure_of([Figure("a", "figure.v.a", "", "published", 1.0, [])], "b")


def test_an_author_without_a_low_end_is_no_voice_against_too_little(rulebook):
    """At an index of 1 every band with a low end says too little; the two of Israel print a high end alone and dispute nothing. At 11 one of them does."""
    vine = {"pruning_weight_kg": 1, "grape_type": "vinifera", "climate": "warm"}
    low, high = (compute(rulebook, "vine_balance", {**vine, "last_yield_kg": crop})["outputs"]["disputed"] for crop in (1, 11))
    assert (low, high) == (0, 1)
