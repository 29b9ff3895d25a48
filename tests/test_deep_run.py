"""The record of the deep run: written by a whole run alone, and told to be stale as soon as what it proved has changed."""

import json
from pathlib import Path

import pytest

from tests import deep_run
from tests.measured import Measured

HALF = deep_run.LEAST // 2


def measured(calls: int = HALF, differing: int = 0) -> Measured:
    """What a run measured: so many calls by each engine."""
    return Measured(calls=dict.fromkeys(deep_run.ENGINES, calls), differing=differing)


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A small project with a record."""
    for path in ("rules/facts/a.yml", "generator/calculators/a.py", "tests/parity/a.py", "generator/pages/a.py"):
        (tmp_path / path).parent.mkdir(parents=True)
        (tmp_path / path).write_text("one\n")
    (tmp_path / "generator/problems.py").write_text("one\n")
    (tmp_path / "tests/made_tables.py").write_text("one\n")
    deep_run.write(tmp_path, measured(), {"tests/parity/a.py::test": 7}, 61.4)
    return tmp_path


def test_a_record_holds_while_nothing_has_changed(project):
    """Pages are no part of what was proved."""
    (project / "generator/pages/a.py").write_text("two\n")
    assert deep_run.standing(project).endswith(
        "(10,000,000 evaluations, 0 mismatches) is of these rules, this generator and these proofs."
    )


@pytest.mark.parametrize(
    ("path", "part"),
    [("rules/facts/a.yml", "rules"), ("generator/calculators/a.py", "generator"), ("tests/parity/a.py", "proofs")],
)
def test_what_has_changed_is_named(project, path, part):
    """A changed file, or the same bytes under another name."""
    (project / path).write_text("two\n")
    assert f"is stale: changed since: {part}." in deep_run.standing(project)
    (project / path).write_text("one\n")
    (project / path).rename((project / path).with_stem("b"))
    assert f"is stale: changed since: {part}." in deep_run.standing(project)


def test_a_record_says_what_was_run(project):
    """Cases of each proof, evaluations of each engine, versions, seed, seconds; nothing unfinished is left beside it."""
    record = json.loads((project / deep_run.RECORD).read_text())
    assert record["cases"] == {"tests/parity/a.py::test": 7}
    assert record["evaluations"] == {"V8": HALF, "QuickJS-ng": HALF, "all": 2 * HALF}
    assert record["engines"]["V8"].startswith("mini-racer ") and record["seconds"] == 61
    assert [path.name for path in (project / "tests").glob("deep_run*")] == ["deep_run.json"]


def test_no_record_is_said(tmp_path):
    """With the command that makes one."""
    assert deep_run.standing(tmp_path) == "No deep run is recorded. `python3 -m generator test --deep` makes one."


@pytest.mark.parametrize(
    ("run", "passed", "whole", "why"),
    [
        (measured(), True, True, ""),
        (measured(), False, True, "something failed"),
        (measured(), True, False, "it was a part or a share of the deep run"),
        (measured(HALF - 1), True, True, "10,000,000 evaluations in V8 and QuickJS-ng without a mismatch are asked"),
        (measured(differing=1), True, True, "10,000,000 evaluations in V8 and QuickJS-ng without a mismatch are asked"),
        (Measured(calls={"V8": 2 * HALF}), True, True, "10,000,000 evaluations in V8 and QuickJS-ng without a mismatch are asked"),
    ],
)
def test_only_a_whole_run_without_a_mismatch_is_recorded(run, passed, whole, why):
    """Everything else says why it is not."""
    assert deep_run.refusal(run, passed, whole) == why
