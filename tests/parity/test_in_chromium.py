"""The very bytes that ship, in Chromium under the strict policy, give the same answers as Python, bit for bit."""

import importlib

from tests.parity.compare import compare, sample
from tests.parity.engines import DRIVER, Run
from tests.parity.inputs import a_case

NORMAL, DEEP = 1_000, 30_000


def test_calculators_of_the_site(page, served, rulebook, raised, rng, amount, expect_same):
    """Each calculator's page answers as the module does."""
    count = amount(NORMAL, DEEP)
    for name in rulebook.calculators:
        function = getattr(importlib.import_module(f"generator.calculators.{name}"), name)
        cases = [a_case(rng, function, rulebook, edge=bool(turn % 2)) for turn in range(count)]
        page.goto(f"{served}c/{name}.html")
        page.evaluate("() => new Promise(loaded => Guide.page.reckon(document.body, loaded))")
        page.evaluate(f"() => {{ {DRIVER} window.parity = parity; }}")
        run = Run("Chromium", lambda *given: page.evaluate("given => window.parity(...given)", list(given)))
        expect_same([compare(sample(function, cases, raised), run)])
