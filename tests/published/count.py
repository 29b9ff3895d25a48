"""How many checks hold the guide against which published row: `python -m tests.published.count`, in the environment of the tests.

Runs the checks and prints, for every piece of evidence, how many passed and where it was read. A check that rests on two
pieces counts for both, and once in the sum. Ends with status 1 when a check failed.
"""

import sys
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

import pytest

from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook
from tests.measured import PROPERTY
from tests.published.evidence_named import HERE

PROJECT = Path(__file__).resolve().parents[2]


@dataclass(eq=False)  # pytest keeps its plugins in a set
class Passed:
    """by_evidence: checks passed for each id; checks: how many checks those are."""

    by_evidence: Counter[str] = field(default_factory=Counter)
    checks: int = 0

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Counts each check that passed."""
        named = [value for name, value in report.user_properties if name == PROPERTY]
        if named and report.when == "call" and report.passed:
            self.by_evidence.update(named)
            self.checks += 1


def lines(passed: Passed, rulebook: Rulebook) -> list[str]:
    """What to print: a line for each piece of evidence, most checks first, and the sum."""
    found = sorted(passed.by_evidence.items(), key=lambda one: (-one[1], one[0]))
    publications = {cite.id for name in passed.by_evidence for cite in rulebook.evidence[name].cites}
    total = f"{passed.checks} checks, held against {len(found)} published rows of {len(publications)} publications."
    return [f"{number:4}  {name:36}  {_read_in(rulebook, name)}" for name, number in found] + ["", total]


def _read_in(rulebook: Rulebook, evidence: str) -> str:
    """Who prints a piece of evidence, and where."""
    first = rulebook.evidence[evidence].cites[0]
    source = rulebook.sources[first.id]
    year = f" {source.year}" if source.year else ""
    return f"{source.author}{year}{f', {first.place}' if first.place else ''}"


def main() -> int:
    """Run, count, print; the status of the run."""
    passed = Passed()
    status = pytest.main(["-q", "--no-header", "--no-summary", "-p", "no:cacheprovider", str(PROJECT / HERE)], plugins=[passed])
    rulebook, _ = read_rulebook(PROJECT / "rules")
    print("\n".join(lines(passed, rulebook)))
    return int(status != pytest.ExitCode.OK)


if __name__ == "__main__":
    sys.exit(main())
