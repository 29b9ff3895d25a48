"""What the tests of the pages share: one page of every kind, the core script in an engine, axe in a page."""

from collections.abc import Callable
from functools import cache
from importlib.resources import files
from pathlib import Path

import pytest
from playwright.sync_api import Page
from py_mini_racer import MiniRacer

from generator.build import build_pages

# One page of every kind; the heaviest decision and calculator among them.
KINDS = {
    "home": "index.html",
    "stage": "s/lay_out.html",
    "decision": "d/pruning_system.html",
    "decision, more": "d/cordon_state.more.html",
    "calculator": "c/yield_forecast.html",
    "tally": "c/bud_fruitfulness.html",
    "fact": "f/climate.html",
    "value": "v/tip_gap_m.html",
    "source": "src/skinkis_undated.html",
    "term": "t/spur.html",
    "variety": "y/cabernet_sauvignon.html",
    "plan": "plan.html",
    "facts": "facts.html",
    "values": "values.html",
    "sources": "sources.html",
    "words": "glossary.html",
    "varieties": "varieties.html",
    "drawing": "look/what_pruning_is_for.html",
    "drawings": "looks.html",
    "by hand": "h/tying_and_bending.html",
    "all by hand": "hands.html",
    "trainers": "train.html",
    "sheet": "sheet.html",
    "standings": "how-sure-we-are.html",
    "changes": "changes.html",
    "not there": "404.html",
}
DENSITY = "c/vine_density.html"


@pytest.fixture(scope="session")
def built() -> dict[str, str | bytes]:
    """Every file of the site as the generator makes it, before any host."""
    return build_pages()


@pytest.fixture(scope="session")
def core(built) -> Callable[[str], object]:
    """core(expression): the value of a JavaScript expression after the shipped scripts that all forms and all answers share."""
    engine = MiniRacer()
    engine.eval(built["assets/guide/core.js"])
    engine.eval(built["assets/guide/answers.js"])
    return engine.eval


@cache
def _axe() -> str:
    """The source of axe-core, as its test package carries it."""
    return Path(str(files("axe_playwright_python") / "axe.min.js")).read_text(encoding="utf-8")


@pytest.fixture
def axe() -> Callable[[Page], list[str]]:
    """axe(page): what axe finds on the page, as `rule: element`; the policy of the page stays in force."""

    def run(page: Page) -> list[str]:
        page.evaluate(_axe())
        found = page.evaluate("axe.run()")["violations"]
        return [f"{one['id']}: {node['html'][:120]}" for one in found for node in one["nodes"]]

    return run


@pytest.fixture
def fill_density() -> Callable[[Page], None]:
    """fill_density(page): two spacings typed and the answer asked for, and there, on the page of vines per hectare."""

    def fill(page: Page) -> None:
        page.fill("#row_spacing_m", "2.4")
        page.fill("#vine_spacing_m", "1,5")
        page.click("button[type=submit]")
        page.locator("#rest > *").first.wait_for()

    return fill
