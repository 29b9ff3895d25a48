"""What a run of the tests left out, told at its end: browser tests, what is no proof, and cases that only a deep run has."""

from collections import Counter
from dataclasses import dataclass, field

import pytest

from tests.deep_run import COMMAND


@dataclass
class Left:
    """browser: the ids of tests left out by --no-browser. plain: how many tests a deep run leaves out. deep: for a test's id,
    its cases now and in a deep run."""

    browser: list[str] = field(default_factory=list)
    plain: int = 0
    deep: dict[str, tuple[int, int]] = field(default_factory=dict)

    def add_all(self, other: "Left") -> None:
        """Add what another process of the run left out. Each collects every test and leaves the same out, so those count once;
        the cases are of the tests that it ran."""
        self.browser, self.plain = other.browser, other.plain
        self.deep |= other.deep

    def lines(self) -> list[str]:
        """What to print, a line each; empty when nothing was left out."""
        plain = [f"{self.plain:,} tests that are no proofs by number: a deep run has none of them."] if self.plain else []
        return plain + self._browser_lines() + self._deep_lines()

    def _browser_lines(self) -> list[str]:
        """How many browser tests were left out, and how many in which file."""
        if not self.browser:
            return []
        files = Counter(test.split("::")[0] for test in self.browser)
        return [f"{len(self.browser)} browser tests, because of --no-browser:"] + [
            f"    {number:3} in {name}" for name, number in sorted(files.items())
        ]

    def _deep_lines(self) -> list[str]:
        """How many cases were left to the deep run, and of which tests; those of one function together."""
        now, deep = Counter(), Counter()
        for test, (few, many) in self.deep.items():
            now[test.split("[")[0]] += few
            deep[test.split("[")[0]] += many
        left = deep.total() - now.total()
        if not left:
            return []
        return [f"{left:,} cases, left to a deep run (`{COMMAND}`):"] + [
            f"    {now[test]:,} of {deep[test]:,} in {test}" for test in sorted(deep) if deep[test] > now[test]
        ]


LEFT = pytest.StashKey[Left]()
CASES = pytest.StashKey[dict[str, int]]()  # of each proof of a deep run, its cases
