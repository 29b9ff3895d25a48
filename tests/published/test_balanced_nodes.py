"""Balanced pruning, nodes by the kilogram and effective shoots against what is printed."""

import pytest

from generator.answers.compute import compute
from tests.published.printed import prints

POUND = 0.45359237  # exact by definition
ACRE_FT2 = 43560


def by_weight(rulebook, kg: float, **more) -> dict:
    """The whole answer of balanced_nodes for a vine."""
    return compute(rulebook, "balanced_nodes", {"pruning_weight_kg": kg, **more})


def line(answer: dict, value: str, figure: str) -> dict:
    """The line of one rule in the comparison."""
    return next(one for one in answer["compared"] if one["who"]["words"] == [f"figure.{value}.{figure}"])


@pytest.mark.parametrize(
    ("evidence", "grape", "pounds", "nodes"),
    [
        ("bp-01", "american", 1, 30),  # University of Illinois Extension, Pruning and training grape vines: section on American hybrids
        ("bp-02", "american", 3, 50),  # the same
        ("bp-04", "american", 3, 50),  # West Virginia Department of Agriculture, Growing Grapes in WV, page 14
        ("bp-09", "american", 1, 30),  # Smith, 2023 Grape Pruning Primer, Ohio State, Table 1, adapted from the Midwest guide
        ("bp-09", "american", 2, 40),
        ("bp-09", "american", 3, 50),
        ("bp-10", "french_hybrid", 1, 20),  # the same table
        ("bp-10", "french_hybrid", 2, 30),
        ("bp-10", "french_hybrid", 3, 40),
        ("bp-13", "vinifera", 1, 20),  # the same table
        ("bp-13", "vinifera", 2, 40),
        ("bp-13", "vinifera", 3, 60),
        ("B11-balanced-pruning-30-10", "american", 2, 40),  # garden advice page, Pruning third-year grapevines
        ("B11-balanced-pruning-30-10", "american", 4, 60),
    ],
)
def test_the_rule_followed_gives_the_printed_nodes(rulebook, evidence, grape, pounds, nodes):
    """Pounds of prunings turned into kilograms exactly give the number of the printed rule."""
    assert nodes in prints(rulebook, evidence)
    found = by_weight(rulebook, pounds * POUND, grape_type=grape, use="wine")["outputs"]
    assert found["nodes_exact"] == pytest.approx(nodes, abs=1e-9) and found["nodes"] == nodes


@pytest.mark.parametrize(("pounds", "nodes"), [(1, 30), (2, 40), (3, 50)])
def test_seedless_table_grapes(rulebook, pounds, nodes):
    """bp-12, Smith, 2023 Grape Pruning Primer, Ohio State, Table 1: seedless table grapes, 30 + 10."""
    assert nodes in prints(rulebook, "bp-12")
    assert by_weight(rulebook, pounds * POUND, grape_type="vinifera", use="table")["outputs"]["nodes"] == nodes


@pytest.mark.parametrize(
    ("evidence", "rule", "kg", "nodes"),
    [
        ("bp-15", "keller_concord", 0.5, 55),  # Trought and others quoting Keller, Wines & Vines, June 2017, page 58
        ("bp-15", "keller_concord", 1.5, 77),
        ("bp-15", "keller_concord", 2.5, 99),
        ("bp-15", "ohio_american", 1.5, 53.1),  # the same page against 30 + 10, our arithmetic
        ("bp-21", "ohio_american", 2 * POUND, 40),  # Morris and Cawthon, J. Amer. Soc. Hort. Sci. 109(5):676-683, abstract
        ("bp-21", "arkansas_50", 2 * POUND, 60),
        ("bp-21", "arkansas_70", 2 * POUND, 80),
        ("bp-24", "lake_erie_60", 2 * POUND, 70),  # Bates, Cornell Lake Erie laboratory, Vine size, pruning severity and vine balance
        ("bp-24", "ohio_american", 2 * POUND, 40),
        ("bp-24", "lake_erie_100", 2 * POUND, 100),
    ],
)
def test_a_rule_taken_by_name(rulebook, evidence, rule, kg, nodes):
    """Whoever names a rule gets its number, and the comparison says the same of it."""
    assert nodes in prints(rulebook, evidence)
    answer = by_weight(rulebook, kg, balanced_formula=rule)
    assert answer["outputs"]["nodes_exact"] == pytest.approx(nodes, abs=0.05)
    assert line(answer, "balanced_first_nodes", rule)["says"]["numbers"] == [answer["outputs"]["nodes_exact"]]


@pytest.mark.parametrize(("unit", "nodes"), [(0.45, 64.4), (POUND, 64.1)])
def test_the_rounded_pound_of_the_journals(rulebook, unit, nodes):
    """bp-26, form used in journals, from memory: on 2 kg a pound of 0.45 kg gives 64.4 of 64.1 nodes. The guide's own pound is exact."""
    assert nodes in prints(rulebook, "bp-26")
    own = {"first_nodes": 30, "further_nodes": 10, "unit_weight_kg": unit}
    assert by_weight(rulebook, 2, **own)["outputs"]["nodes_exact"] == pytest.approx(nodes, abs=0.05)


def test_ten_a_pound_are_twenty_two_a_kilogram(rulebook):
    """bp-26, bp-09: 10 nodes for each further pound are 22.05 for each further kilogram."""
    one, two = (by_weight(rulebook, kg, grape_type="american")["outputs"]["nodes_exact"] for kg in (1, 2))
    assert two - one == pytest.approx(22.05, abs=0.005)


@pytest.mark.parametrize(
    ("evidence", "rule", "kg", "nodes"),
    [
        ("bp-28", "smart_robinson", 1, 30),  # Smart and Robinson, Sunlight into Wine, from memory
        ("bp-28", "handbooks_most", 1, 40),
        ("B10-smart-pruning-mass", "smart_robinson", 1, 30),
        ("bp-18", "lider_fewest", 3, 27),  # Lider, Kasimatis and Kliewer, Am. J. Enol. Vitic. 26(4):175-178, abstract
        ("bp-18", "lider_middle", 3, 45),
        ("bp-18", "lider_most", 3, 66),
        ("bp-19", "wineskills_fewest", 1, 25),  # WineSkills, Factors to be taken into account when pruning: section on charge
        ("bp-19", "wineskills_most", 1, 33.3),
        ("bp-19", "wineskills_fewest", 0.6, 15),
        ("bp-19", "wineskills_most", 0.6, 20),
    ],
)
def test_nodes_by_the_kilogram(rulebook, evidence, rule, kg, nodes):
    """Every author's nodes for the weight stand beside each other by name."""
    assert nodes in prints(rulebook, evidence)
    assert line(by_weight(rulebook, kg), "nodes_per_kg", rule)["says"]["numbers"] == pytest.approx([nodes], abs=0.05)


@pytest.mark.parametrize(("pounds", "fits"), [(1.4, False), (1.5, True), (2.5, True), (2.6, False)])
def test_a_fixed_number_holds_for_the_size_it_was_made_for(rulebook, pounds, fits):
    """bp-24, Bates, Cornell Lake Erie laboratory: 100 nodes suit vines of 1.5 to 2.5 pounds."""
    answer = by_weight(rulebook, round(pounds * POUND, 12), grape_type="american")
    assert (line(answer, "balanced_first_nodes", "lake_erie_100")["place"] == 0) == fits


@pytest.mark.parametrize(
    ("evidence", "value", "figure", "note"),
    [
        ("bp-24", "balanced_first_nodes", "ohio_american", "undercrops"),  # what Lake Erie researchers said of 30 + 10 later
        ("bp-21", "balanced_first_nodes", "arkansas_70", "not acceptable"),  # its own authors, by the sixth year
        ("bp-20", "nodes_per_kg", "wineskills_fewest", "5 to 15 %"),  # raise the charge for buds that do not burst
    ],
)
def test_what_was_said_of_a_rule_stands_beside_it(rulebook, evidence, value, figure, note):
    """The note of a rule tells what its authors, or others, found later."""
    assert evidence in rulebook.evidence
    answer = by_weight(rulebook, 1, grape_type="american")
    assert note in line(answer, value, figure)["note"]["text"]


def test_a_vigorous_and_a_weak_vine_lie_in_the_bands_for_unweighed_vines(rulebook):
    """bp-03, University of Illinois Extension: 45 to 60 buds on a vigorous vine, 30 to 40 on a weak one; 50 at three pounds, 30 at one."""
    strong, weak = (by_weight(rulebook, pounds * POUND, grape_type="american")["outputs"]["nodes"] for pounds in (3, 1))
    bands = rulebook.evidence["bp-03"].outputs
    assert bands["buds_vigorous"][0] <= strong <= bands["buds_vigorous"][1]
    assert bands["buds_low"][0] <= weak <= bands["buds_low"][1]


def test_a_little_over_a_pound_is_thirty(rulebook):
    """bp-06, Odneal, Missouri State University, 8 November 2012: Catawba of a little over one pound kept 30 buds."""
    assert rulebook.evidence["bp-06"].outputs["buds"] == 30
    found = by_weight(rulebook, 1.04 * POUND, grape_type="american")["outputs"]
    assert found["nodes"] == 30 and not found["below_first_unit"]


def test_beyond_260_nodes_a_warning(rulebook):
    """bp-23, Bates, Am. J. Enol. Vitic. 59(3):276, abstract: over 260 nodes Concord gained no more crop."""
    own = {"first_nodes": 200, "further_nodes": 60, "unit_weight_kg": POUND}
    notes = by_weight(rulebook, 2.01 * POUND, **own)["notes"], by_weight(rulebook, 2 * POUND, **own)["notes"]
    assert [any("260" in note for note in some) for some in notes] == [True, False]


def test_the_acre_is_not_the_misprinted_one(rulebook):
    """du-18, FAO, Appendix 4: prints 43 450 square feet to the acre; right is 43 560. A short ton is 907.184 kg, which is right."""
    ha, m2 = rulebook.units["ha"].us_factor, rulebook.units["m2"].us_factor
    acre = 10_000 / ha * m2
    assert acre == pytest.approx(ACRE_FT2, abs=1e-6) and ACRE_FT2 in prints(rulebook, "du-18")
    assert abs(acre - rulebook.evidence["du-18"].inputs["acre_ft2_printed"]) > 100
    assert 2000 / rulebook.units["kg"].us_factor == pytest.approx(907.184, abs=0.001)


def test_a_pound_is_exact_in_both_ways(rulebook):
    """bp-26: a pound is 0.45359237 kg; a value in pounds, shown, reckoned and shown again, is the same."""
    assert 1 / rulebook.units["kg"].us_factor == pytest.approx(POUND, rel=1e-15)
    assert {one.number for one in rulebook.values["balanced_unit_kg"].figures} == {POUND, 0.5, 0.45}


@pytest.mark.parametrize(("evidence", "value", "number"), [("es-03", "prunings_sample_groups", 23), ("es-03", "prunings_sample_vines", 3)])
def test_how_many_vines_to_weigh(rulebook, evidence, value, number):
    """Taylor and Bates, Am. J. Enol. Vitic. 63(4):559-563, abstract: 23 groups of three neighbouring vines."""
    assert number in prints(rulebook, evidence) and rulebook.values[value].number == number
    assert any("23 groups of 3" in note for note in by_weight(rulebook, 1)["notes"])


def graded(rulebook, **canes) -> dict:
    """The whole answer of effective_shoots; classes that are not given hold none."""
    none = dict.fromkeys(("canes_under_7_mm", "canes_7_to_10_mm", "canes_10_to_15_mm", "canes_over_15_mm"), 0)
    return compute(rulebook, "effective_shoots", {**none, **canes})


def test_the_worked_count_of_canes(rulebook):
    """bp-16, Trought and others, Wines & Vines, June 2017, page 58: 10, 20, 8 and 5 canes are 49 nodes."""
    counts = rulebook.evidence["bp-16"].our_arithmetic["example_counts"]
    found = graded(rulebook, **{f"canes_{name}": number for name, number in counts.items()})["outputs"]
    assert found["nodes_exact"] == rulebook.evidence["bp-16"].our_arithmetic["example_nodes"] == 49


@pytest.mark.parametrize(("name", "weight"), [("over_15_mm", 2), ("10_to_15_mm", 1), ("7_to_10_mm", 0.5), ("under_7_mm", 0)])
def test_what_one_cane_of_each_class_counts(rulebook, name, weight):
    """bp-16, the same page: 2, 1, 0.5 and 0, and 5 nodes on top."""
    assert rulebook.evidence["bp-16"].inputs["weights"][name] == weight
    assert graded(rulebook, **{f"canes_{name}": 1})["outputs"]["nodes_exact"] == weight + 5


@pytest.mark.parametrize(
    ("shoots", "ratio", "said"), [(42, 0.875, "blind"), (48, 1.0, "About the right number"), (54, 1.125, "elsewhere")]
)
def test_the_look_back(rulebook, shoots, ratio, said):
    """bp-17, the same page: effective shoots over nodes kept; under 0.9 blind, over 1.1 non-count, between them right."""
    assert ratio in prints(rulebook, "bp-17")
    answer = graded(rulebook, canes_10_to_15_mm=shoots, nodes_left=48)
    assert answer["outputs"]["look_back"] == ratio and said in answer["notes"][0]


@pytest.mark.parametrize(("value", "figure", "weight"), [("effective_thin", "wineskills", 0.5), ("effective_thick", "wineskills_least", 2), ("effective_thick", "wineskills_most", 3)])
def test_the_other_count_of_shoots_is_kept_by_name(rulebook, value, figure, weight):
    """bp-20, WineSkills: a weak shoot counts a half, a strong one 2 or even 3."""
    assert weight in prints(rulebook, "bp-20")
    assert next(one for one in rulebook.values[value].figures if one.id == figure).number == weight


def test_every_rule_that_can_be_named_is_a_figure_in_the_same_place(rulebook):
    """bp-09 to bp-24: the choices of a rule are the rules of the values, in their order."""
    choices = [choice.id for choice in rulebook.facts["balanced_formula"].choices]
    assert choices == [figure.id for figure in rulebook.values["balanced_first_nodes"].figures]


@pytest.mark.parametrize(("rule", "first", "nodes"), [("fredonia", 40, 50), ("niagara_catawba", 25, 35), ("delaware", 20, 30)])
def test_remembered_rules_are_named_and_never_followed(rulebook, rule, first, nodes):
    """bp-27, variety tables from memory: at two pounds Fredonia 50, Niagara and Catawba 35, Delaware 30; marked so, and taken only when named."""
    assert {first, nodes} <= prints(rulebook, "bp-27")
    own = by_weight(rulebook, 2 * POUND, grape_type="american", balanced_formula=rule)
    assert own["outputs"]["nodes_exact"] == pytest.approx(nodes)
    assert line(own, "balanced_first_nodes", rule)["standing"] == "from_memory"
    assert by_weight(rulebook, 2 * POUND, grape_type="american")["outputs"]["nodes"] == 40


def test_keller_begins_a_little_under_24_nodes_higher(rulebook):
    """bp-15 (our arithmetic): at half a kilogram 55 nodes less those of 30 + 10 are 23.98, which the value's note gives as 24."""
    rules = {name: by_weight(rulebook, 0.5, grape_type="american", balanced_formula=name)["outputs"]["nodes_exact"] for name in ("keller_concord", "ohio_american")}
    assert {55, 0.5} <= prints(rulebook, "bp-15")
    assert rules["keller_concord"] - rules["ohio_american"] == pytest.approx(23.98, abs=0.005)
    note = next(one.note for one in rulebook.values["balanced_first_nodes"].figures if one.id == "keller_concord")
    assert "24 nodes above" in note and "23.98" in note
