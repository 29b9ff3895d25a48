"""What a run of the tests left out, told at its end: browser tests, and the cases that only a deep run has."""

from collections import Counter
from dataclasses import dataclass, field

import pytest


@dataclass
class Left:
    """browser: the ids of tests left out by --no-browser. deep: for a test's id, its cases now and in a deep run."""

    browser: list[str] = field(default_factory=list)
    deep: dict[str, tuple[int, int]] = field(default_factory=dict)

    def lines(self) -> list[str]:
        """What to print, a line each; empty when nothing was left out."""
        return self._browser_lines() + self._deep_lines()

    def _browser_lines(self) -> list[str]:
        """How many browser tests were left out, and how many in which file."""
        if not self.browser:
            return []
        files = Counter(test.split("::")[0] for test in self.browser)
        return [f"{len(self.browser)} browser tests, because of --no-browser:"] + [
            f"    {number:3} in {name}" for name, number in sorted(files.items())
        ]

    def _deep_lines(self) -> list[str]:
        """How many cases were left to the deep run, and of which tests."""
        if not self.deep:
            return []
        left = sum(deep - normal for normal, deep in self.deep.values())
        return [f"{left:,} cases, left to a deep run (`python3 -m generator test --deep`):"] + [
            f"    {normal:,} of {deep:,} in {test}" for test, (normal, deep) in sorted(self.deep.items())
        ]


LEFT = pytest.StashKey[Left]()
