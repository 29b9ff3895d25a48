"""The timed field test: more faults never give more points, safety comes before points, and the sums are those of a sheet."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.answers.compute import compute
from generator.calculators.facts import Maybe
from generator.calculators.ten_vine_test import PrunedVine, TenVineTestInputs, TenVineTestValues, ten_vine_test

VALUES = TenVineTestValues(60.0)
FAULTS = ("faults_vine", "faults_crop", "faults_untidy", "unsafe_acts")
counts = st.integers(0, 4)
vines = st.builds(PrunedVine, st.integers(10, 30), counts, counts, counts, st.integers(0, 1), st.builds(Maybe, st.booleans(), st.integers(0, 900).map(float)))
tests = st.lists(vines, min_size=1, max_size=10)
GOOD = PrunedVine(20, 0, 0, 0, 0, Maybe(True, 120.0))


def asked(rows, **more):
    """The inputs with what the guide begins with."""
    begins = TenVineTestInputs(rows, 20, 2, 180, 10.0, 5.0, 2.0, 0.5, 1.0, 1.0, 80.0, 0, 90.0)
    return replace(begins, **more)


def judged(rows, **more):
    """The answer for vines."""
    return ten_vine_test(asked(rows, **more), VALUES)


def by_hand(rows):
    """Points in all as somebody adds them on a sheet."""
    total, used, timed = 0.0, 0.0, 0
    for row in rows:
        off = 5 * row.faults_vine + 2 * row.faults_crop + row.faults_untidy / 2
        off += max(0, abs(row.nodes_counted - 20) - 2)
        total += max(0, 10 - off)
        used, timed = used + row.seconds.number * row.seconds.ok, timed + row.seconds.ok
    return max(0.0, total - max(0.0, used - 180 * timed) / 60)


@given(tests)
def test_points_are_those_of_the_sheet(rows):
    """Added up in another way; never under none, never over all."""
    found = judged(rows)
    assert found.points == pytest.approx(by_hand(rows), abs=1e-9)
    assert 0.0 <= found.points <= found.points_full == 10.0 * len(rows)
    assert found.points_pct == pytest.approx(100 * found.points / found.points_full)


@given(tests, st.integers(0, 9), st.sampled_from(FAULTS))
def test_a_fault_more_never_gives_more_points(rows, place, fault):
    """Nor does it turn a fail into a pass."""
    place %= len(rows)
    worse = [replace(row, **{fault: getattr(row, fault) + 1}) if k == place else row for k, row in enumerate(rows)]
    before, after = judged(rows), judged(worse)
    assert after.points <= before.points
    assert before.passed or not after.passed


@given(tests, st.floats(0, 30).map(round))
def test_a_node_further_out_never_gives_more_points(rows, more):
    """On either side of the number wanted."""
    out = [replace(row, nodes_counted=row.nodes_counted + more * (1 if row.nodes_counted >= 20 else -1)) for row in rows]
    assert judged(out).points <= judged(rows).points


@given(tests)
def test_a_slower_learner_never_gets_more_points(rows):
    """A minute more on each vine that was timed."""
    slower = [replace(row, seconds=Maybe(row.seconds.ok, row.seconds.number + 60.0)) for row in rows]
    assert judged(slower).points <= judged(rows).points


@given(tests)
def test_the_gates_stand_before_the_points(rows):
    """No test with an unsafe act or a fault of grade one is passed, however many points it has."""
    found = judged(rows, points_to_pass_pct=1.0)
    if found.unsafe_acts or found.faults_vine:
        assert not found.passed and found.headline.id.removeprefix("ten_vine_test.headline_") in ("unsafe", "grave")


def test_unsafe_work_fails_a_faultless_test():
    """Full points, and not passed; what is to be practised first says so."""
    found = judged([GOOD, replace(GOOD, unsafe_acts=1)])
    assert (found.passed, found.points_pct) == (False, 100.0)
    assert [one.id for one in found.steps] == ["ten_vine_test.practise_safety"]


def test_faults_of_grade_one_may_be_let_pass():
    """As many as the organisation says, and not one more."""
    rows = [replace(GOOD, faults_vine=1), *[GOOD] * 9]
    assert (judged(rows).passed, judged(rows, vine_faults_allowed=1).passed) == (False, True)


@pytest.mark.parametrize(("untidy", "passed"), [(4, True), (5, False)])
def test_the_pass_mark_is_reached_at_the_mark(untidy, passed):
    """8.0 of 10 points pass at 80 %, 7.5 do not."""
    assert judged([replace(GOOD, faults_untidy=untidy)]).passed is passed


def test_what_cost_most_is_practised_first():
    """Two nodes outside (2) before an untidy cut (0.5), and time (a minute over: 1) between them."""
    found = judged([replace(GOOD, nodes_counted=24, faults_untidy=1, seconds=Maybe(True, 240.0))])
    assert [one.id.rpartition("_")[2] for one in found.steps] == ["nodes", "time", "untidy"]
    assert [one.numbers for one in found.steps] == [[2.0], [1.0], [0.5]]


def test_untimed_vines_are_judged_without_time():
    """No minutes at all where none was timed; the others count where some were."""
    found = judged([replace(GOOD, seconds=Maybe(False, 0.0))])
    assert (found.minutes_used.ok, found.minutes_allowed.ok, found.points) == (False, False, 10.0)
    some = judged([replace(GOOD, seconds=Maybe(False, 0.0)), replace(GOOD, seconds=Maybe(True, 300.0))])
    assert (some.minutes_used.number, some.minutes_allowed.number, some.points) == (5.0, 3.0, 18.0)


def test_the_working_can_be_followed(rulebook):
    """A line for each vine, then time, sum, mark, gates and count; the last points stand in the headline."""
    rows = [{"nodes_counted": 23, "faults_crop": 1, "seconds": 200}, {"nodes_counted": 20, "seconds": 220}]
    answer = compute(rulebook, "ten_vine_test", {"rows": rows, "target_nodes": 20})
    assert len(answer["working"]) == 7
    assert "Vine 1: 23 nodes, 1 outside the tolerance. 10.0 less 0.0 (grade one), 2.0 (grade two)" in answer["working"][0]
    assert "16.0 points of 20" in answer["headline"] and [vine["points"] for vine in answer["vines"]] == [7.0, 10.0]


def test_none_and_too_many_vines_are_refused():
    """In words."""
    for rows, words in (([], "at least one vine"), ([GOOD] * 61, "more vines")):
        with pytest.raises(ValueError, match=words):
            judged(rows)
