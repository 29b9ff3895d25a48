"""What the tests of a run measured, so that a proof says how much it proved.

`told(2_000, "random tables")` counts; `told(7, "planted gaps found", of=7)` counts of how many. What tests of one folder
tell in the same words is added up. Where every case is a test of its own, CASES names the tests and pytest's reports count.
"""

from collections import Counter
from dataclasses import dataclass, field
from textwrap import wrap

import pytest

CASES = {
    "tests/compiler/test_planted_faults.py::test_a_planted_fault_is_caught": "faults planted in the compiler and caught",
    "tests/compiler/test_refusals.py::test_expression_is_refused": "snippets outside the subset, refused at their place",
    "tests/compiler/test_refusals.py::test_statement_is_refused": "snippets outside the subset, refused at their place",
    "tests/compiler/test_refusals.py::test_module_is_refused": "snippets outside the subset, refused at their place",
    "tests/reading/test_bad_rules.py::test_a_mistake_is_told_in_these_words": "mistakes of authors, told to the letter",
    "tests/checks/test_manual_pages.py::test_the_wrong_example_is_caught": "wrong examples of manual pages, caught",
    "tests/golden/test_golden_plans.py::test_the_plan_is_the_stored_one": "stored plans, come out the same",
    "tests/pages/test_plan_page.py::test_page_and_command_line_agree": "plans in the browser, the same as on the command line",
    "tests/published/test_worked_blocks.py": "cases of invented blocks, worked out by hand",
    "tests/published/": "cases held against what is printed",
}

PUBLISHED = "published"
PROPERTY = "evidence"  # what a check against print carries: the published row it is held against
WIDTH = 110


@dataclass
class Count:
    """How many, and of how many where that is known before (0: it is not)."""

    number: int = 0
    of: int = 0

    def __str__(self) -> str:
        """`1,000` or `998 of 1,000`."""
        return f"{self.number:,} of {self.of:,}" if self.of else f"{self.number:,}"


@dataclass(eq=False)  # pytest keeps its plugins in a set
class Measured:
    """counts: by folder of the tests and by what was counted. calls: answers of each JavaScript engine that were compared
    with Python's. differing: how many of them differed. printed: checks against print that passed, by published row."""

    counts: dict[str, dict[str, Count]] = field(default_factory=dict)
    calls: dict[str, int] = field(default_factory=dict)
    differing: int = 0
    printed: Counter[str] = field(default_factory=Counter)

    @property
    def evaluations(self) -> int:
        """Calls answered by one engine and compared, all engines together."""
        return sum(self.calls.values())

    def add(self, folder: str, what: str, number: int, of: int = 0) -> None:
        """Add to what was counted before in the same words."""
        count = self.counts.setdefault(folder, {}).setdefault(what, Count())
        count.number += number
        count.of += of

    def compared(self, engine: str, calls: int, differing: int) -> None:
        """Add calls that an engine answered and that were compared with Python's answers."""
        self.calls[engine] = self.calls.get(engine, 0) + calls
        self.differing += differing

    def add_all(self, other: "Measured") -> None:
        """Add what another process counted."""
        for folder, counts in other.counts.items():
            for what, count in counts.items():
                self.add(folder, what, count.number, count.of)
        for engine, calls in other.calls.items():
            self.compared(engine, calls, 0)
        self.differing += other.differing
        self.printed.update(other.printed)

    def lines(self) -> list[str]:
        """What to print, a line each; empty when nothing was measured."""
        found = []
        for folder, counts in sorted(self.counts.items()):
            found += [folder, *(f"    {str(count):>18}  {what}" for what, count in counts.items())]
            found += self._by_source() if folder == PUBLISHED else []
        if self.calls:
            engines = [f"    {number:>18,}  calls answered by {engine}" for engine, number in self.calls.items()]
            found += ["both languages", *engines]
            found += [f"    {self.evaluations:>18,}  evaluations in all, compared bit for bit: {self.differing:,} mismatches"]
        return found

    def _by_source(self) -> list[str]:
        """How many checks rest on which published row; those with the same number together."""
        numbers = sorted(set(self.printed.values()), reverse=True)
        groups = [f"{number} on {' '.join(sorted(self._short(number)))}" for number in numbers]
        return [f"    {'':18}  {line}" for group in groups for line in wrap(group, WIDTH)]

    def _short(self, number: int) -> list[str]:
        """The rows on which so many checks rest, long ids by their beginning."""
        return [name.split("-")[0] if name[0].isupper() else name for name, held in self.printed.items() if held == number]

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Counts the tests of CASES: of all that were run, those that passed."""
        what = next((words for start, words in CASES.items() if report.nodeid.startswith(start)), "")
        if what and (report.when == "call" or report.failed):
            self.add(report.nodeid.split("/")[1], what, int(report.passed), 1)
        if report.when == "call" and report.passed:
            self.printed.update(value for name, value in getattr(report, "user_properties", ()) if name == PROPERTY)


@dataclass(frozen=True)
class Told:
    """What the fixture `told` gives: the counts of the run, and the folder that the test stands in."""

    measured: Measured
    folder: str

    def __call__(self, number: int, what: str, of: int = 0) -> None:
        """Count something; `of` says of how many, where that is known."""
        self.measured.add(self.folder, what, number, of)

    def compared(self, engine: str, calls: int, differing: int) -> None:
        """Count the calls that an engine answered and that were compared with Python's answers."""
        self.measured.compared(engine, calls, differing)


MEASURED = pytest.StashKey[Measured]()
