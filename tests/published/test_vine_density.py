"""Vines per hectare against what is printed. The evidence stands in each row; author and place are in rules/evidence/."""

import pytest

from generator.answers.compute import compute

FOOT = 0.3048
ACRE_HA = 0.40468564224


def density(rulebook, row_m: float, vine_m: float, **more) -> dict:
    """The outputs of vine_density for a spacing, without missing vines unless given."""
    inputs = {"row_spacing_m": row_m, "vine_spacing_m": vine_m, "missing_vines_pct": 0, **more}
    return compute(rulebook, "vine_density", inputs)["outputs"]


@pytest.mark.parametrize(
    ("evidence", "row_m", "vine_m", "vines", "tolerance"),
    [
        ("du-01", 8 * FOOT, 4 * FOOT, 3364, 1),  # British Columbia Wine Grape Council, Crop estimation: number of vines
        ("du-02", 2.45, 1.22, 3345.6, 1),  # the same page, in rounded metres; what it prints (3 364, 2.94 m2) does not close
        ("du-07", 1, 1, 10000, 2),  # Robinson, Oxford Companion to Wine: vine density
        ("du-09", 4, 4, 625, 2),  # Robinson, Oxford Companion to Wine: vine density
        ("ll-02", 2.5, 0.9, 4444.4, 0.1),  # Cotes d'Auvergne, order of 3 November 2008, article 4 (our arithmetic on its spacings)
        ("ll-03", 1.5, 1, 6666.7, 0.1),  # French order on Gamay layouts: at least 6 000 vines at 1.50 m rows (our arithmetic)
        ("ll-05", 1.45, 0.90, 7663, 1),  # Muscadet Cotes de Grand Lieu, decree of 29 December 1994, art. 7 (our arithmetic)
        ("ll-05", 1.45, 1.10, 6270, 1),  # the widest spacing it names is outside its own 6 500 to 7 500
        ("ll-09", 1.25, 1.25, 6400, 0.1),  # Coteaux champenois, decree: the two spacings sum to 2.50 m at most (our arithmetic)
        ("yc-22", 2.4, 1.8, 2314.8, 0.1),  # Eltom, Winefield and Trought, Wines & Vines, February 2015, p. 56 (our arithmetic)
    ],
)
def test_vines_on_a_hectare(rulebook, evidence, row_m, vine_m, vines, tolerance):
    """10 000 m2 over the ground of one vine."""
    assert evidence in rulebook.evidence
    assert density(rulebook, row_m, vine_m)["vines_per_ha"] == pytest.approx(vines, abs=tolerance)


@pytest.mark.parametrize(
    ("evidence", "row_ft", "vine_ft", "vines"),
    [
        ("du-01", 8, 4, 1361),  # British Columbia Wine Grape Council, Crop estimation: number of vines
        ("du-04", 9, 8, 605),  # wine-grape-growing.com, chapter 30: number of producing vines
        ("du-06", 8, 4, 1361),  # Apical Texas, Mistake Monday
    ],
)
def test_vines_on_an_acre(rulebook, evidence, row_ft, vine_ft, vines):
    """The same in acres and feet, as whole vines."""
    assert evidence in rulebook.evidence
    per_ha = density(rulebook, row_ft * FOOT, vine_ft * FOOT)["vines_per_ha"]
    assert round(per_ha * ACRE_HA) == vines


def test_thirty_acres_hold_a_little_over_40_000_vines(rulebook):
    """du-06, Apical Texas, Mistake Monday: 8 x 4 ft on 30 acres."""
    vines = density(rulebook, 8 * FOOT, 4 * FOOT, area_ha=30 * ACRE_HA)["vines_in_block"]
    assert vines == 40838


def test_five_per_cent_missing_of_807(rulebook):
    """du-20, Dami, How to estimate grape yields, Ohio State University, section 1: 5 % off 807."""
    found = density(rulebook, 2.5, 1, area_ha=807 / 4000, missing_vines_pct=5)
    assert (found["vines_in_block"], found["bearing_vines"]) == (807, 767)
    assert found["bearing_vines_exact"] == pytest.approx(766.65)


@pytest.mark.parametrize(
    ("evidence", "row_ft", "row_in_a_hundredth"),
    [
        ("du-11", 7.5, 58.1),  # Lake Erie Regional Grape Program, Using the Concord estimation chart: row spacing
        ("du-12", 10, 43.56),  # the same page prints 45.9, which belongs to 9.5 ft
        ("du-12", 9.5, 45.85),
    ],
)
def test_row_in_a_hundredth_of_an_acre(rulebook, evidence, row_ft, row_in_a_hundredth):
    """Feet of row on 1/100 acre are 435.6 over the row spacing."""
    assert evidence in rulebook.evidence
    row_m_per_ha = density(rulebook, row_ft * FOOT, 1)["row_m_per_ha"]
    assert row_m_per_ha / FOOT * ACRE_HA / 100 == pytest.approx(row_in_a_hundredth, abs=0.05)


def test_row_on_a_hectare_at_two_and_a_half_metres(rulebook):
    """du-19, Commonwealth Forestry Association, Forestry handbook: 10 000 / 2.5 m = 4 000 m."""
    assert density(rulebook, 2.5, 1)["row_m_per_ha"] == 4000


@pytest.mark.parametrize(
    ("evidence", "unit", "us", "si", "tolerance"),
    [
        ("du-13", "t_per_ha", 1, 2.2418, 0.0002),  # NDSU Extension, Metric conversion card, ProCrop: yield
        ("yc-18", "t_per_ha", 3.835, 8.6, 0.01),  # Dami; Kurtural and O'Daniel HO-86: tons per acre (our example)
    ],
)
def test_conversions(rulebook, evidence, unit, us, si, tolerance):
    """US customary numbers turn into SI as the sources print it."""
    assert us / rulebook.units[unit].us_factor == pytest.approx(si, abs=tolerance)
