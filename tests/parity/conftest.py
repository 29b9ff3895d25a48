"""What parity tests share: the seed, the engines with the shipped scripts, and the rows that once failed."""

import random
from collections.abc import Callable

import pytest

from tests.measured import Told
from tests.parity import scripts
from tests.parity.compare import Report, raised_texts
from tests.parity.engines import ENGINES, Run
from tests.parity.rows import keep
from tests.seed import SEED


@pytest.fixture(scope="session")
def calculators_run() -> dict[str, Run]:
    """Each engine with helpers and all calculators loaded."""
    script = scripts.calculators_script()
    return {name: make(script) for name, make in ENGINES.items()}


@pytest.fixture(scope="session")
def raised() -> set[str]:
    """The texts that calculators raise."""
    return raised_texts(scripts.calculators())


@pytest.fixture
def rng(request: pytest.FixtureRequest) -> random.Random:
    """Random numbers of this test's own; PARITY_SEED in the environment changes them."""
    print(f"PARITY_SEED={SEED}")
    return random.Random(f"{SEED} {request.node.name}")


@pytest.fixture
def expect_same(told: Told) -> Callable[[list[Report]], None]:
    """Count what was compared and fail with what differs; the failing rows are kept in rows.jsonl and run ever after."""

    def check(reports: list[Report]) -> None:
        for report in reports:
            told.compared(report.engine, report.cases, len(report.wrong))
        bad = [report for report in reports if report.wrong]
        for report in bad:
            keep(report.function, [case for case, _, _ in report.wrong[:5]])
        assert not bad, "\n".join(map(str, bad))

    return check
