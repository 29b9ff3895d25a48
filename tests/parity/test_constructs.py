"""Every construct of the subset, fed with extreme arguments, gives the same answer in each engine, bit for bit."""

import random

import pytest

from tests.parity.compare import Sample, compare, raised_texts, sample
from tests.parity.engines import ENGINES
from tests.parity.numbers import Maker, signature
from tests.parity.scripts import constructs, constructs_compiled, constructs_script, own_functions

NORMAL, DEEP = 1_000, 65_000
FUNCTIONS = own_functions(constructs())


def calls_of(function, rng: random.Random, count: int) -> Sample:
    """Seeded calls of a sample function; nan is not sorted, since where it ends up is nobody's promise."""
    types, _ = signature(function)
    return sample(function, Maker(rng, endless="sorted" not in function.__name__).arguments(types, count), raised_texts([constructs()]))


@pytest.fixture(scope="module")
def runs():
    """Each engine with the sample loaded."""
    script = constructs_script()
    return {name: make(script) for name, make in ENGINES.items()}


@pytest.mark.parametrize("function", FUNCTIONS, ids=lambda function: function.__name__)
def test_same_answers(function, runs, rng, amount, told):
    """No difference; JavaScript may stop at 2**53, but then with that error."""
    calls = calls_of(function, rng, amount(NORMAL, DEEP))
    reports = [compare(calls, run) for run in runs.values()]
    for report in reports:
        told.compared(report.engine, report.cases, len(report.wrong))
    assert not any(report.wrong for report in reports), "\n".join(map(str, reports))


def test_the_subset_is_covered():
    """Each helper of helpers.js is used by the sample, so that none ships untested."""
    from generator.compiler.script import HELPERS

    defined = {line.split("(")[0].removeprefix("function ") for line in HELPERS.read_text().splitlines() if line.startswith("function ")}
    script = constructs_compiled()
    assert {name for name in defined if f"function {name}(" in script} == defined
