"""What a run says it measured is what its tests told, and no test that is counted has gone by another name."""

from types import SimpleNamespace

import pytest

from tests.measured import CASES, Count, Measured, Told
from tests.summary import Left


@pytest.mark.parametrize("start", CASES)
def test_what_is_counted_is_there(project_root, start):
    """A file or a folder, and in it the function."""
    path, _, name = start.partition("::")
    assert (project_root / path).exists()
    assert not name or f"def {name}" in (project_root / path).read_text(encoding="utf-8")


def test_tests_that_are_cases_are_counted_by_what_came_of_them():
    """One that failed before it began is one of how many, too; what comes after a test is not counted."""
    measured = Measured()
    for passed, when in ((True, "setup"), (True, "call"), (False, "setup"), (False, "call"), (True, "teardown")):
        report = SimpleNamespace(nodeid="tests/published/test_x.py::test_y", passed=passed, failed=not passed, when=when)
        measured.pytest_runtest_logreport(report)
    assert measured.lines() == ["published", "                1 of 3  cases held against what is printed"]


def test_evaluations_are_the_answers_of_all_engines():
    """Each answer of each engine is one; what differs is counted beside them."""
    measured = Measured()
    told = Told(measured, "parity")
    told.compared("V8", 1_000, 0)
    told.compared("QuickJS-ng", 500, 2)
    assert measured.evaluations == 1_500
    assert measured.lines()[-1] == "                 1,500  evaluations in all, compared bit for bit: 2 mismatches"


def test_what_two_processes_measured_is_added_up():
    """Numbers told in the same words, answers of the same engine, what differs, and checks of the same published row."""
    both, other = Measured(), Measured()
    for process, share in ((both, 1), (other, 2)):
        process.add("engine", "random tables", share, 2)
        process.compared("V8", 10 * share, share)
        process.printed.update({"du-01": share})
    other.add("parity", "cells", 4)
    other.compared("QuickJS-ng", 5, 0)
    both.add_all(other)
    assert both.counts == {"engine": {"random tables": Count(3, 4)}, "parity": {"cells": Count(4)}}
    assert (both.calls, both.differing) == ({"V8": 30, "QuickJS-ng": 5}, 3)
    assert both.printed == {"du-01": 3}


def test_what_every_process_leaves_out_counts_once():
    """Each collects every test; the cases left to the deep run are told by the one that ran the test."""
    left = Left()
    for test in ("tests/a.py::test_a", "tests/b.py::test_b"):
        left.add_all(Left(browser=["tests/c.py::test_c"], plain=5, deep={test: (1, 10)}))
    assert left == Left(["tests/c.py::test_c"], 5, {"tests/a.py::test_a": (1, 10), "tests/b.py::test_b": (1, 10)})


def test_checks_against_print_are_counted_by_published_row():
    """Those that passed, each for every row it rests on; rows with as many checks stand together, long ids in short."""
    measured = Measured()
    for row, passed in (("du-01", True), ("du-01", True), ("B06-node-load", True), ("du-02", False)):
        report = SimpleNamespace(
            nodeid="tests/published/test_x.py::test_y", passed=passed, failed=not passed, when="call", user_properties=[("evidence", row)]
        )
        measured.pytest_runtest_logreport(report)
    assert [line.strip() for line in measured.lines()[2:]] == ["2 on du-01", "1 on B06"]
