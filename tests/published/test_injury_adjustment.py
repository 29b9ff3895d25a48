"""Winter injury against what is printed: the rules, their gaps and their slip, the samples and the shares."""

import math

import pytest

from generator.answers.compute import compute
from generator.calculators.injury_records import InjuryAdjustmentInputs
from generator.calculators.injury_sample import living_value, replacement, sample_of
from generator.answers.encode import values_record
from generator.calculators.facts import Maybe
from tests.published.printed import prints

OUT = Maybe(False, 0.0)


def answer(rulebook, dead: int, cut: int = 100, wanted: float = 40, secondary: int = 0, s: float = 0) -> dict:
    """The answer for so many primaries dead."""
    inputs = {"wanted_nodes": wanted, "deaths_in_wanted_nodes": "none", "buds_cut": cut, "buds_primary_alive": cut - dead, "buds_secondary_only": secondary, "secondary_share": s}
    return compute(rulebook, "injury_adjustment", inputs)


def says(found: dict, who: str) -> dict:
    """The line of one source in the comparison."""
    return next(line for line in found["compared"] if line["who"]["id"] == f"injury_adjustment.{who}")


def extra_pct(found: dict, who: str, wanted: float = 40) -> float | None:
    """Nodes that a source adds, in whole per cent; None where it gives no number."""
    nodes = found["outputs"].get(f"nodes_{who}")
    return None if nodes is None else round(100 * (nodes / wanted - 1))


# bi-01: Martinson, Northern New York grape update of 28 February 2014, Cornell: under 20 % none, from 20 to 80 % that same percentage more.
# bi-17, our arithmetic on it: for 40 wanted the additive rule leaves fewer living nodes than full replacement.
@pytest.mark.parametrize(
    ("evidence", "dead", "additive", "living", "inverse"),
    [("bi-17", 20, 48.0, 38.4, 50.0), ("bi-01", 35, 54, 35.1, 61.5), ("bi-17", 50, 60.0, 30.0, 80.0), ("bi-17", 80, 72.0, 14.4, 200.0)],
)
def test_adding_and_replacing(rulebook, evidence, dead, additive, living, inverse):
    """Nodes by Cornell, the living among them, and full replacement, each beside the other."""
    assert {additive, living, inverse} <= prints(rulebook, evidence)
    found = answer(rulebook, dead)
    assert found["outputs"]["nodes_cornell"] == additive
    assert says(found, "cornell")["note"]["numbers"][-1] == pytest.approx(living)
    assert replacement(40, 1.0, 100 - dead, 100, severe=False).number == pytest.approx(inverse, abs=0.05)


@pytest.mark.parametrize(("dead", "more"), [(19, 0), (20, 20), (80, 80), (81, None)])
def test_the_ends_of_cornell_s_rule(rulebook, dead, more):
    """bi-01, Martinson 2014, Cornell: nothing under 20 %, nothing said over 80 %."""
    assert extra_pct(answer(rulebook, dead, wanted=100), "cornell", 100) == more


@pytest.mark.parametrize(("dead", "more"), [(10, 0), (20, 35), (40, 50), (60, None)])
def test_purdue_s_bands(rulebook, dead, more):
    """bi-03, Purdue Extension, Facts for Fancy Fruit, double pruning: 0, 35, 50 % more, then minimal pruning."""
    assert more is None or more in prints(rulebook, "bi-03")
    found = answer(rulebook, dead)
    assert extra_pct(found, "purdue") == more
    assert (says(found, "purdue")["note"]["id"] == "injury_adjustment.purdue_minimal") == (more is None)


@pytest.mark.parametrize("dead", [26, 30, 35])
def test_purdue_s_overlap_is_not_reproduced(rulebook, dead):
    """bi-03 prints 15-35 and 25-50: the second is a slip for 35-50, so one number (35 % more) holds, and the overlap is told."""
    found = answer(rulebook, dead)
    assert extra_pct(found, "purdue") == 35
    assert says(found, "purdue")["note"]["id"] == "injury_adjustment.purdue_overlap"
    assert {25.0, 50.0} <= set(says(found, "purdue")["note"]["numbers"])


@pytest.mark.parametrize(("dead", "more"), [(15, 0), (16, 35), (36, 50), (50, 50), (51, None)])
def test_edges_belong_to_the_band_that_they_close(rulebook, dead, more):
    """bi-03: 15 and 35 stand in two printed bands each; the guide takes the lower one and says so in its value."""
    assert extra_pct(answer(rulebook, dead), "purdue") == more


@pytest.mark.parametrize(
    ("dead", "note", "nodes"),
    [(10, "sheet_none", 40), (15, "sheet_none", 40), (18, "sheet_gap", None), (20, "sheet_more", 50), (50, "sheet_more", 80), (60, "sheet_wait", None)],
)
def test_the_table_grape_sheet(rulebook, dead, note, nodes):
    """bi-04, Pruning vines for table grape production, second paragraph: usual, a gap from 15 to 20, the dead share made up for, wait."""
    found = answer(rulebook, dead)
    assert found["outputs"].get("nodes_table_grapes") == nodes
    assert says(found, "sheet")["note"]["id"] == f"injury_adjustment.{note}"


@pytest.mark.parametrize(("dead", "adjusts"), [(20, False), (21, True)])
def test_northern_grapes_adjust_above_a_fifth(rulebook, dead, adjusts):
    """bi-06, Particka 2014, Northern Grapes Project: adjust when more than 20 % are dead."""
    assert (says(answer(rulebook, dead), "northern")["note"]["id"] == "injury_adjustment.northern_adjust") == adjusts


@pytest.mark.parametrize(("who", "row"), [("cornell", [0, 30, 60]), ("purdue", [35, 35, None]), ("table_grapes", [None, 42.86, None])])
def test_one_mortality_many_answers(rulebook, who, row):
    """bi-20 (our arithmetic on bi-01, bi-03, bi-04): 18, 30 and 60 % dead by each rule; to make up for 30 % is 1 / 0.7."""
    found = [answer(rulebook, dead, wanted=1000 / 10) for dead in (18, 30, 60)]
    assert [extra_pct(one, who, 100) for one in found] == [None if x is None else math.ceil(x) for x in row]


@pytest.mark.parametrize(
    ("variety", "alive", "survival"),
    [("Brianna", 30, 94), ("Frontenac", 27, 84), ("Frontenac gris", 31, 97), ("Frontenac blanc", 27, 84), ("La Crescent", 29, 91), ("Marquette", 28, 88), ("St. Croix", 29, 91)],
)
def test_minnesota_saw_no_need(rulebook, variety, alive, survival):
    """bi-07, University of Minnesota Enology, 19 February 2016: 32 buds a variety; survival as printed, no change, as Cornell and Northern Grapes say too."""
    assert {float(alive), float(survival)} <= prints(rulebook, "bi-07")
    found = answer(rulebook, 32 - alive, cut=32)
    assert math.floor(100 - found["outputs"]["mortality_pct"] + 0.5) == survival
    assert found["outputs"]["nodes_cornell"] == 40 and says(found, "northern")["note"]["id"] == "injury_adjustment.northern_none"


@pytest.mark.parametrize(
    ("name", "mean"),
    [("all", 21), ("Chambourcin", 41), ("Vignoles", 13), ("Norton", 11)],
)
def test_missouri_means(rulebook, name, mean):
    """bi-08, Vinews 1, 18 March 2019, Table 1: samples of 100 buds; the mean mortality as printed (all: 20.9, so 21)."""
    deaths = rulebook.evidence["bi-08"].inputs[name]
    assert mean in prints(rulebook, "bi-08")
    found = [answer(rulebook, dead)["outputs"]["mortality_pct"] for dead in deaths]
    assert round(sum(found) / len(found)) == mean


@pytest.mark.parametrize(
    ("where", "dead", "number"),
    [("Lake Erie Concord", 50, True), ("Ohio vinifera", 98, False), ("Ohio hybrids", 60, False), ("Ohio American", 30, True), ("New York vinifera", 67, False), ("Pinot noir, best", 18, True), ("Pinot noir, worst", 100, False)],
)
def test_no_absurd_numbers_in_the_worst_winters(rulebook, where, dead, number):
    """bi-16, LERGP Winter damage and Sabbatini 2014: at 98 % the inverse would be fifty times; there is no number above half."""
    assert dead in prints(rulebook, "bi-16")
    assert ("nodes_replacing" in answer(rulebook, dead)["outputs"]) == number


def test_norton_loses_half(rulebook):
    """bi-10, Missouri, Viticulture Information News 1, 2023: no fruit on secondaries, so 50 % dead is 50 % lost, made up by twice the nodes."""
    found = answer(rulebook, 50, secondary=40, s=0)
    assert found["outputs"]["nodes_replacing_with_secondaries"] == 80


def test_michigan_potential(rulebook):
    """bi-11, Howell 2002: 100 nodes, 20 blind, 40 frosted with a secondary at 0.35, 40 alive have a potential of 0.54."""
    inputs = InjuryAdjustmentInputs(40.0, 100, 40, 40, 0.35, 0, OUT, OUT, 95.0, 1, OUT, 15.0, OUT)
    assert living_value(sample_of(inputs, values_record(rulebook, "injury_adjustment"))) / 100 == pytest.approx(0.54)


@pytest.mark.parametrize(("s", "per_node"), [(0, 0.9), (0.33, 1.098)])
def test_secondaries_of_necrotic_buds(rulebook, s, per_node):
    """pbn-06, practice note from Brazil: 40 % necrotic, 1.5 bunches on a primary, secondaries at 0 to 0.33: 0.9 to 1.098 bunches a node."""
    found = answer(rulebook, 40, secondary=40, s=s, wanted=100)["outputs"]["nodes_replacing_with_secondaries_exact"]
    assert 1.5 * 100 / found == pytest.approx(per_node)


@pytest.mark.parametrize(
    ("evidence", "cut", "dead", "note"),
    [
        ("bi-13", 45, 20, "first_step"),  # Wines & Vines, October 2015, page 76: 40-50 first (the guide asks the upper end)
        ("bi-13", 50, 20, "second_step"),  # the same: if mixed, go to 100
        ("bi-13", 50, 50, "all_dead"),  # the same: if all are dead, stop
        ("bi-15", 49, 0, "first_step"),  # Growing Produce 2014, steps 1-3: at least 50
        ("bi-15", 100, 20, "sample_full"),  # the same: 100 is better
        ("bi-14", 100, 0, "sample_full"),  # Fiola 2018, Maryland: about 100
    ],
)
def test_sampling_in_two_steps(rulebook, evidence, cut, dead, note):
    """Where the sample stands: the first step, the second, or the end."""
    notes = compute(rulebook, "injury_adjustment", {"wanted_nodes": 30, "deaths_in_wanted_nodes": "none", "buds_cut": cut, "buds_primary_alive": cut - dead, "buds_secondary_only": 0})["notes"]
    words = {"first_step": "are too few", "second_step": "go on to 100", "all_dead": "Stop cutting", "sample_full": "are enough"}[note]
    assert any(words in line for line in notes)


@pytest.mark.parametrize(("value", "evidence", "number"), [("injury_first_buds", "bi-15", 50), ("injury_full_buds", "bi-13", 100), ("injury_first_buds", "bi-02", 50), ("injury_full_buds", "bi-14", 100)])
def test_the_steps_are_those_of_print(rulebook, value, evidence, number):
    """The buds of each step stand in the value by author, with the number that the source prints."""
    figures = [one for one in rulebook.values[value].figures if evidence in [cite.id for cite in one.cites]]
    assert [one.number for one in figures] == [number] and number in prints(rulebook, evidence)


@pytest.mark.parametrize(("evidence", "figure", "limit"), [("bi-03", "purdue", 50), ("bi-04", "sheet", 50), ("bi-01", "cornell", 80)])
def test_who_stops_where(rulebook, evidence, figure, limit):
    """The limits above which each source gives no number, all kept; two of three stop at half."""
    found = next(one for one in rulebook.values["severe_injury_pct"].figures if one.id == figure)
    assert found.number == limit and limit in prints(rulebook, evidence)


@pytest.mark.parametrize(("dead", "added"), [(10, 0), (14, 0), (18, 35)])
def test_below_the_first_band_nobody_adds(rulebook, dead, added):
    """bi-20 and bi-03: up to 15 % no rule adds a node, and the headline says so before our own sum; at 18 % Purdue does."""
    found = answer(rulebook, dead)
    assert max(extra_pct(found, who) or 0 for who in ("cornell", "purdue", "table_grapes")) == added
    assert ("by every published rule" in found["headline"]) == (added == 0)


def test_two_to_three_times_until_burst(rulebook):
    """bi-18, Purdue Extension, double pruning: for 40 wanted the first pass leaves 80 to 120 nodes; told where there is no number."""
    assert {2, 3, 40, 80, 120} <= prints(rulebook, "bi-18")
    assert any("2 to 3 times" in note and "80 to 120" in note for note in answer(rulebook, 84)["notes"])
    assert not any("2 to 3 times" in note for note in answer(rulebook, 30)["notes"])
