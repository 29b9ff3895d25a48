"""What tests share: the rulebook read once, the site built once and served under the strict policy, and a browser.

A test that asks for a browser is marked `browser` by itself. A missing browser fails such tests; `--no-browser`
leaves them out and says so. `amount(normal, deep)` gives the number of cases, and the summary says what was left.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests import summary

pytest_plugins = ["tests.browsing", "tests.sites"]

PROJECT = Path(__file__).resolve().parent.parent


def pytest_addoption(parser: pytest.Parser) -> None:
    """The two choices of `python3 -m generator test`, and what re-records expected files."""
    parser.addoption("--no-browser", action="store_true", help="leave the browser tests out, and say which")
    parser.addoption("--deep", action="store_true", help="the same tests with far more cases each")
    parser.addoption("--record-golden", action="store_true", help="write tests/golden/*.json anew")
    parser.addoption("--record-bad-rules", action="store_true", help="write tests/bad_rules/*/expected.txt anew")


def pytest_configure(config: pytest.Config) -> None:
    """Begin this run's list of what is left out."""
    config.stash[summary.LEFT] = summary.Left()


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Mark the tests that ask for a browser; leave them out when told to."""
    for item in items:
        if "browser" in getattr(item, "fixturenames", ()):
            item.add_marker(pytest.mark.browser)
    if not config.getoption("--no-browser"):
        return
    out = [item for item in items if item.get_closest_marker("browser")]
    config.stash[summary.LEFT].browser += [item.nodeid for item in out]
    config.hook.pytest_deselected(items=out)
    items[:] = [item for item in items if not item.get_closest_marker("browser")]


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter, config: pytest.Config) -> None:
    """Say what this run left out, before pytest's closing line."""
    lines = config.stash[summary.LEFT].lines()
    if lines:
        terminalreporter.section("left out of this run")
        for line in lines:
            terminalreporter.line(line)


@pytest.fixture
def amount(request: pytest.FixtureRequest) -> Callable[[int, int], int]:
    """amount(normal, deep): how many cases this test runs; the deep number with `--deep`, and what is left is told."""

    def choose(normal: int, deep: int) -> int:
        if request.config.getoption("--deep"):
            return deep
        request.config.stash[summary.LEFT].deep[request.node.nodeid] = (normal, deep)
        return normal

    return choose


@pytest.fixture(scope="session")
def project_root() -> Path:
    """The folder that holds rules/, generator/ and tests/."""
    return PROJECT


@pytest.fixture(scope="session")
def rulebook(project_root: Path) -> Iterator[object]:
    """The guide's own rulebook, read once; it is the same for all tests and must not be changed."""
    from generator.reading.read import read_rulebook

    book, problems = read_rulebook(project_root / "rules")
    assert not problems, "\n".join(str(problem) for problem in problems)
    return book
