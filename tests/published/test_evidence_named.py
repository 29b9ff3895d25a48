"""Every check against print names the published row it is held against, so that they can be counted by source."""

from collections import Counter
from types import SimpleNamespace

import pytest

from generator.reading.rulebook import Rulebook
from tests.published.count import Passed, lines
from tests.published.evidence_named import evidence_of, ids_in, is_check


def test_every_check_names_its_evidence(request: pytest.FixtureRequest) -> None:
    """A check without a source could be a copy of our own number; those of this file check the counting alone."""
    checks = [item for item in request.session.items if is_check(item)]
    assert [item.nodeid for item in checks if not evidence_of(item)] == []


def test_a_case_that_names_its_evidence_counts_for_that_alone() -> None:
    """The docstring speaks for cases that name none."""
    named = SimpleNamespace(callspec=SimpleNamespace(params={"evidence": "du-01", "row": 2.4}), function=SimpleNamespace(__doc__="du-02"))
    silent = SimpleNamespace(function=SimpleNamespace(__doc__="du-01 and B06: as printed."))
    assert evidence_of(named) == ["du-01"]
    assert evidence_of(silent) == ["du-01", "B06-node-load-response-marlborough"]


def test_what_is_no_evidence_is_not_counted() -> None:
    """Words that look like an id and are none."""
    assert ids_in("zz-99 of table A-12, HO-86") == []


def test_the_count_names_who_prints_a_row(rulebook: Rulebook) -> None:
    """A line for each row, most checks first, and the sum in the end."""
    told = lines(Passed(Counter({"bp-14": 1, "sl-03": 2}), 3), rulebook)
    assert [line.split()[:2] for line in told[:2]] == [["2", "sl-03"], ["1", "bp-14"]]
    assert told[-1] == "3 checks, held against 2 published rows of 2 publications."
