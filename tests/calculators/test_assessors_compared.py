"""Two assessors: verdicts by the worst fault, the words that go with the figures, and what holds when they change places."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.calculators.assessors_compared import AssessorsComparedInputs, AssessorsComparedValues, JudgedVine, assessors_compared, worst
from generator.calculators.assessors_words import CLASSES
from generator.calculators.facts import Maybe

VALUES = AssessorsComparedValues(60.0, 1.96, 0.2, 0.4, 0.6, 0.8)
few = st.integers(0, 2)
nodes = st.builds(Maybe, st.booleans(), st.integers(10, 30).map(float))
rows = st.lists(st.builds(JudgedVine, nodes, few, few, few, nodes, few, few, few), min_size=1, max_size=15)


def vine(first, second, counted=(20.0, 20.0)):
    """A vine whose worst fault is of these classes."""
    faults = [[int(found == place) for place in (3, 2, 1)] for found in (first, second)]
    return JudgedVine(Maybe(True, counted[0]), *faults[0], Maybe(True, counted[1]), *faults[1])


def compared(found, **more):
    """The comparison with what the guide begins with, at 95 %."""
    return assessors_compared(replace(AssessorsComparedInputs(found, 2, 0.6, 0.2, 95.0), **more), VALUES)


def said(found):
    """The notes by their keys."""
    return [one.id.partition(".")[2] for one in found.notes]


@pytest.mark.parametrize(("faults", "place"), [((0, 0, 0), "none"), ((0, 0, 3), "untidy"), ((0, 1, 9), "crop"), ((1, 0, 0), "vine"), ((1, 5, 5), "vine")])
def test_the_verdict_is_the_worst_fault(faults, place):
    """However many lesser ones there are."""
    assert CLASSES[worst(*faults)] == place


@given(rows)
def test_changing_places_changes_nothing_but_the_sign(found):
    """Agreement and its ranges to the last bit; the difference of counts turns over."""
    turned = [JudgedVine(one.nodes_second, one.vine_second, one.crop_second, one.untidy_second, one.nodes_first, one.vine_first, one.crop_first, one.untidy_first) for one in found]
    here, there = compared(found), compared(turned)
    for name in ("same_pct", "same_low_pct", "kappa", "kappa_low", "kappa_high", "weighted_kappa", "weighted_low", "weighted_high", "vines_needed", "vines_differing"):
        assert getattr(here, name) == getattr(there, name), name
    assert here.mean_difference.number == -there.mean_difference.number
    assert here.limit_low.number == -there.limit_high.number


@given(st.lists(st.integers(0, 3), min_size=1, max_size=20))
def test_identical_verdicts(found):
    """All the same: kappa 1 where there are two verdicts or more, no range, and a word of warning with the lowest share that fits."""
    answer = compared([vine(one, one) for one in found])
    assert (answer.same_pct, answer.vines_differing, answer.weighted_low.ok, answer.vines_needed.ok) == (100.0, 0, False, False)
    assert answer.weighted_kappa == (Maybe(True, 1.0) if len(set(found)) > 1 else Maybe(False, 0.0))
    assert "no_error" in said(answer) and answer.same_low_pct < 100.0


def test_ten_vines_tell_little_and_it_is_said_how_many_would_tell():
    """Four times as many vines that agree alike halve the range; the number needed is where it is as narrow as wanted."""
    ten = [vine(*pair) for pair in ((0, 0), (0, 0), (0, 1), (1, 1), (1, 1), (1, 2), (2, 2), (2, 2), (3, 3), (0, 1))]
    answer = compared(ten)
    half = (answer.weighted_high.number - answer.weighted_low.number) / 2
    assert half > 0.2 and "wide" in said(answer)
    again = compared(ten * 4)
    assert again.weighted_kappa.number == pytest.approx(answer.weighted_kappa.number)
    assert again.weighted_low.number == pytest.approx(answer.weighted_kappa.number - (answer.weighted_kappa.number - answer.weighted_low.number) / 2)
    needed = answer.vines_needed.number
    assert needed == pytest.approx(10 * ((answer.weighted_kappa.number - answer.weighted_low.number) / 0.2) ** 2, abs=1.0)
    assert compared(ten, kappa_precision=0.4).vines_needed.number < needed


def test_where_they_differ_is_shown():
    """By verdict, or by counts further apart than is let pass; 2 nodes apart are let pass, 3 are not."""
    answer = compared([vine(0, 0, (20, 22)), vine(0, 0, (20, 23)), vine(1, 2), vine(3, 0)])
    assert [one.differs for one in answer.vines] == [False, True, True, True]
    assert [one.says.id.partition(".")[2] for one in answer.vines] == ["both_none", "both_none", "grades", "first_only"]
    assert answer.vines[2].says.numbers == [3.0, 2.0]


@pytest.mark.parametrize(
    ("pairs", "step"),
    [
        ([(0, 0), (1, 1), (2, 2)] * 3 + [(0, 2), (2, 0), (1, 0)], "repeat"),
        ([(0, 0), (1, 1), (2, 2)] * 2 + [(0, 1), (1, 2)], "not_sure"),
        ([(0, 0), (1, 1), (2, 2)] * 3, "so_far"),
        ([(0, 0), (1, 1), (2, 2), (3, 3)] * 14 + [(0, 1)], "alone"),
        ([(0, 0)] * 10, "other_vines"),
    ],
)
def test_what_to_do(pairs, step):
    """Repeat under the kappa wanted; more vines where the range falls under it; alone above it; other vines where all are alike."""
    assert compared([vine(*pair) for pair in pairs]).steps[-1].id == f"assessors_compared.{step}"


def test_vines_that_one_did_not_count_are_left_out_of_the_counts():
    """And said; without any there is no difference at all."""
    row = replace(vine(0, 0), nodes_second=Maybe(False, 0.0))
    assert "uncounted" in said(compared([row, vine(1, 1)])) and not compared([row]).mean_difference.ok
