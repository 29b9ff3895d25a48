"""Agreement of two judges against printed tables: Cohen, Fleiss with Cohen and Everitt, Landis and Koch, Bland and Altman.

The papers' tables were read as statistics packages reprint them (rules/evidence/ag-01 to ag-05 say where); what is from memory says so.
"""

import math

import pytest

from generator.answers.compute import compute
from generator.calculators.agreement import kappa_of, limits_of, mean_range, ordered_weights, plain_weights
from tests.published.printed import prints

Z = 1.959963984540054


def counts(rulebook, evidence):
    """The printed shares as counts of the printed number of things."""
    given = rulebook.evidence[evidence].inputs
    return [[round(share * 200) for share in row] for row in given["shares"]]


def test_kappa_of_cohens_table(rulebook):
    """Cohen 1960, evidence ag-01: 200 things in three classes, 0.492."""
    assert {0.492, 200} <= prints(rulebook, "ag-01")
    assert kappa_of(counts(rulebook, "ag-01"), plain_weights(3), Z).kappa.number == pytest.approx(0.492, abs=0.0005)


def test_weighted_kappa_of_cohens_table(rulebook):
    """Cohen 1968, evidence ag-02: the same table with his own penalties, 0.348."""
    given = rulebook.evidence["ag-02"].inputs["penalties"]
    weights = [[1 - penalty / 6 for penalty in row] for row in given]
    assert 0.348 in prints(rulebook, "ag-02")
    assert kappa_of(counts(rulebook, "ag-02"), weights, Z).kappa.number == pytest.approx(0.348, abs=0.0005)


@pytest.mark.parametrize(
    ("evidence", "weights", "names"),
    [("ag-03", plain_weights(3), ("kappa", "error", "low", "high")), ("ag-03", ordered_weights(3), ("weighted_kappa", "weighted_error", "weighted_low", "weighted_high"))],
    ids=["plain", "ordered"],
)
def test_the_error_of_fleiss_cohen_and_everitt(rulebook, evidence, weights, names):
    """A printout of kappa, its error and its 95 % range for 19 things, plain and with linear weights."""
    one = rulebook.evidence[evidence]
    found = kappa_of(one.inputs["table"], weights, Z)
    assert [found.kappa.number, found.error, found.low.number, found.high.number] == pytest.approx([one.outputs[name] for name in names], abs=0.00005)


@pytest.mark.parametrize(
    ("evidence", "name", "above"),
    [
        ("ag-04", "fair", 0.20),
        ("ag-04", "moderate", 0.40),
        ("ag-04", "substantial", 0.60),
        ("ag-04", "almost_perfect", 0.80),
    ],
)
def test_the_words_of_landis_and_koch(rulebook, evidence, name, above):
    """Each word begins where their table has it."""
    assert above in prints(rulebook, evidence)
    assert rulebook.values[f"kappa_{name}_above"].number == above


def test_the_page_uses_their_word(rulebook):
    """Evidence ag-04, where 0.41 to 0.60 is moderate: nine vines of three grades, six alike and three a grade apart: 0.5."""
    pairs = [(0, 0), (0, 0), (0, 1), (1, 1), (1, 1), (1, 2), (2, 2), (2, 2), (2, 0)]
    names = (None, "untidy", "crop")
    rows = [{f"{names[place]}_{side}": 1 for side, place in zip(("first", "second"), pair, strict=True) if place} for pair in pairs]
    answer = compute(rulebook, "assessors_compared", {"rows": rows, "confidence_pct": 95})
    assert answer["outputs"]["weighted_kappa"] == pytest.approx(0.5) and 0.4 < 0.5 <= 0.6
    assert any("call 0.50 moderate" in note for note in answer["notes"])


def test_limits_of_agreement_of_two_meters(rulebook):
    """Bland and Altman 1986, evidence ag-05: 17 readings by two meters. From memory the paper gives -2.1 with a deviation of 38.8, limits of
    -79.7 and 75.5 with two deviations, and a standard error of a limit of 16.3 (t of 16 degrees is 2.12)."""
    one = rulebook.evidence["ag-05"]
    apart = [float(a - b) for a, b in zip(one.inputs["large_meter"], one.inputs["mini_meter"], strict=True)]
    assert len(apart) == 17 and 1.96 in prints(rulebook, "ag-05")
    found = mean_range(apart, 95.0)
    assert (found.mean, found.sd.number) == pytest.approx((-2.1, 38.8), abs=0.05)
    assert (found.low.number, found.high.number) == pytest.approx((-22.1, 17.8), abs=0.1)
    limits = limits_of(found.mean, found.sd.number, 2.0, 17, 95.0)
    assert (limits.low, limits.high) == pytest.approx((-79.7, 75.5), abs=0.1)
    assert limits.unsure == pytest.approx(2.12 * math.sqrt(3 * 38.8**2 / 17), rel=0.002)
    assert rulebook.values["limits_of_agreement_sd"].number == 1.96
