"""Every calculator gives the same answer in Python, V8 and QuickJS-ng, bit for bit, for all that its facts and values allow."""

import importlib

import pytest

from generator.compiler.modules import CALCULATORS
from tests.parity.compare import compare, sample
from tests.parity.engines import ENGINES
from tests.parity.inputs import some_cases
from tests.parity.rows import decode, kept
from tests.parity.numbers import signature

NAMES = sorted(path.stem for path in CALCULATORS.glob("*.py") if f"{path.stem.title().replace('_', '')}Inputs" in path.read_text())
NORMAL, DEEP = 20_000, 100_000
# Tries up to a hundred layouts and draws a dozen twice, reckons every bearer again without each cane, asks a dozen tables, or has
# answers of many lines: so many times fewer inputs.
SEARCHES = {
    "layout_options": 80, "bud_fruitfulness": 10, "balanced_nodes": 10, "vine_balance": 10, "node_number": 5, "nodes_for_yield": 2, "yield_forecast": 2,
    "bud_sample_size": 4, "cane_choice": 40, "spur_position": 10,
}  # fmt: skip


@pytest.mark.parametrize("name", NAMES)
def test_same_answers(name, rulebook, calculators_run, raised, rng, amount, expect_same):
    """No difference, and no stop at 2**53, within the declared ranges."""
    function = getattr(importlib.import_module(f"generator.calculators.{name}"), name)
    cases = some_cases(rng, function, rulebook, amount(NORMAL, DEEP) // SEARCHES.get(name, 1))
    calls = sample(function, cases, raised)
    reports = [compare(calls, calculators_run[engine]) for engine in ENGINES]
    expect_same(reports)
    assert not any(report.stopped for report in reports), "\n".join(map(str, reports))


@pytest.mark.parametrize("engine", ENGINES)
def test_rows_that_once_failed(engine, calculators_run, raised, expect_same):
    """Every row of rows.jsonl gives the same answer."""
    reports = []
    for function, arguments in kept():
        module, name = function.split(".")
        python = getattr(importlib.import_module(f"generator.calculators.{module}"), name)
        case = [decode(part, wanted) for part, wanted in zip(arguments, signature(python)[0])]
        reports.append(compare(sample(python, [case], raised), calculators_run[engine]))
    expect_same(reports)
