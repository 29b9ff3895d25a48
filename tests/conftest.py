"""What tests share: the rulebook read once, the site built once and served under the strict policy, and a browser.

A test that asks for a browser is marked `browser` by itself. A missing browser fails such tests; `--no-browser`
leaves them out and says so. `amount(normal, deep)` gives the number of cases, and the summary says what was left.
`told(number, "what it is a number of")` says what a proof measured. Tests that use one of the two are the proofs: the deep
run has them and no others.
"""

import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests import deep_run, summary
from tests.measured import MEASURED, Told
from tests.seed import SEED
from tests.summary import CASES

pytest_plugins = ["tests.workers", "tests.browsing", "tests.sites"]

PROJECT = Path(__file__).resolve().parent.parent
BEGAN = pytest.StashKey[float]()
# Where several processes run the tests, each takes the next file: what takes minutes comes first, so that none is left
# alone with it at the end. The first needs the site, the second does not: nobody waits while the site is built.
LONGEST_FIRST = (
    "tests/pages/test_strict_pages.py",
    "tests/pages/test_serve.py",
    "tests/parity/",
    "tests/test_developers_page.py",
    "tests/checks/test_mutants.py",
    "tests/compiler/test_planted_faults.py",
    "tests/reading/test_spoiled_files.py",
    "tests/calculators/test_plan_by_buds.py",
    "tests/calculators/test_block_plan.py",
    "tests/pages/",
)


def pytest_addoption(parser: pytest.Parser) -> None:
    """The two choices of `python3 -m generator test`, a way to try the deep run out, and what re-records expected files."""
    parser.addoption("--no-browser", action="store_true", help="leave the browser tests out, and say which")
    parser.addoption("--deep", action="store_true", help="the proofs only, with far more cases each")
    parser.addoption("--deep-divided-by", type=int, default=1, metavar="N", help="try the deep run out with one case in N")
    parser.addoption("--record-golden", action="store_true", help="write tests/golden/*.json anew")
    parser.addoption("--record-bad-rules", action="store_true", help="write tests/bad_rules/*/expected.txt anew")


def pytest_configure(config: pytest.Config) -> None:
    """Note when the run began."""
    config.stash[BEGAN] = time.monotonic()


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Put the longest files first; mark the tests that ask for a browser; leave them out when told to; keep the proofs alone
    in a deep run."""
    items.sort(key=_turn)
    left = config.stash[summary.LEFT]
    for item in items:
        if "browser" in getattr(item, "fixturenames", ()):
            item.add_marker(pytest.mark.browser)
    if config.getoption("--deep"):
        out = [item for item in items if item.get_closest_marker("browser") or not _is_proof(item)]
        left.plain += len(out)
    elif config.getoption("--no-browser"):
        out = [item for item in items if item.get_closest_marker("browser")]
        left.browser += [item.nodeid for item in out]
    else:
        return
    config.hook.pytest_deselected(items=out)
    items[:] = [item for item in items if item not in out]


def _turn(item: pytest.Item) -> int:
    """The place of a test's file among those that come first; all others share the last."""
    return next((place for place, start in enumerate(LONGEST_FIRST) if item.nodeid.startswith(start)), len(LONGEST_FIRST))


def _is_proof(item: pytest.Item) -> bool:
    """True for a test that has a number of cases or says what it measured, by the fixtures of those names."""
    given = item.callspec.params if hasattr(item, "callspec") else {}
    return any(name in getattr(item, "fixturenames", ()) and name not in given for name in ("amount", "told"))


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter, exitstatus: int, config: pytest.Config) -> None:
    """Say what this run measured, how the deep run stands and what was left out, before pytest's closing line."""
    measured = config.stash[MEASURED].lines()
    deep = _record(config, exitstatus) if config.getoption("--deep") else deep_run.standing(PROJECT)
    parts = {
        f"measured in this run (seed {SEED})": measured,
        "deep run": [deep] if measured else [],
        "left out of this run": config.stash[summary.LEFT].lines(),
    }
    for title, lines in parts.items():
        if lines:
            terminalreporter.section(title)
            terminalreporter.write_line("\n".join(lines))


def _record(config: pytest.Config, exitstatus: int) -> str:
    """Record a whole deep run that passed; otherwise say why it is not recorded."""
    measured = config.stash[MEASURED]
    chosen = config.option.keyword or config.option.markexpr or config.args_source != pytest.Config.ArgsSource.TESTPATHS
    whole = not chosen and config.getoption("--deep-divided-by") == 1
    refused = deep_run.refusal(measured, exitstatus == pytest.ExitCode.OK, whole)
    if refused:
        return f"Not recorded, because {refused}."
    deep_run.write(PROJECT, measured, config.stash[CASES], time.monotonic() - config.stash[BEGAN])
    return f"Recorded in {deep_run.RECORD}; keep it with the change that it proves."


@pytest.fixture
def amount(request: pytest.FixtureRequest) -> Callable[[int, int], int]:
    """amount(normal, deep): how many cases this test runs; the deep number with `--deep`, and what is left is told."""
    config, test = request.config, request.node.nodeid

    def choose(normal: int, deep: int) -> int:
        if not config.getoption("--deep"):
            config.stash[summary.LEFT].deep[test] = (normal, deep)
            return normal
        config.stash[CASES][test] = max(1, deep // config.getoption("--deep-divided-by"))
        return config.stash[CASES][test]

    return choose


@pytest.fixture
def told(request: pytest.FixtureRequest) -> Told:
    """told(number, what, of=0): what this test measured; told.compared(engine, calls, differing): answers of an engine."""
    return Told(request.config.stash[MEASURED], request.path.parent.name)


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
