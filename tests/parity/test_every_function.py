"""Every function of every calculator's module, fed by its types alone, gives the same answer in each engine."""

import pytest

from tests.parity.compare import compare, sample
from tests.parity.numbers import Maker, signature
from tests.parity.scripts import calculators, own_functions

NORMAL, DEEP = 300, 1_500
# Tries up to a hundred layouts at every call, most of them on vines that nobody has: so many times fewer.
SEARCHES = {"generator.calculators.layout_options": 10}


@pytest.mark.parametrize("module", calculators(), ids=lambda module: module.__name__.rsplit(".", 1)[-1])
def test_same_answers(module, calculators_run, raised, rng, amount, expect_same):
    """No difference for arguments that nobody would give, errors and their texts included."""
    count = amount(NORMAL, DEEP) // SEARCHES.get(module.__name__, 1)
    for function in own_functions(module):
        cases = Maker(rng, endless=False, largest=1_000.0).arguments(signature(function)[0], count)
        calls = sample(function, cases, raised)
        expect_same([compare(calls, run) for run in calculators_run.values()])
