"""Fixtures of the browser tests: one Chromium for the run, a fresh context for each page."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Playwright, sync_playwright

from generator.setting_up import browser as resolver
from generator.setting_up.telling import Stop

# A tablet in the vineyard is what the pages are made for first.
TABLET = (810, 1080)
# No word to any host but ours, and no first-run work; a sandbox of its own is not to be had as root.
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]

# A bound for a machine that is busy with other things, not a measure of speed.
LONGEST_MS = 120_000

NewPage = Callable[..., Page]


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """The browser of the run: one that is on this machine. Missing: the test fails; only `test` installs one."""
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=_path(playwright), args=FLAGS)
        yield running
        running.close()


def _path(playwright: Playwright) -> str:
    """The path of a browser on this machine, the test library's own last. Fails the test when there is none."""
    own = playwright.chromium.executable_path
    try:
        path = resolver.find() or (own if Path(own).exists() else "")
    except Stop as stop:
        pytest.fail(str(stop), pytrace=False)
    return path or pytest.fail(resolver.MISSING, pytrace=False)


@pytest.fixture
def new_page(browser: Browser) -> Iterator[NewPage]:
    """new_page(width, height, dark): a page in a context of its own, closed after the test."""
    contexts = []

    def open_page(width: int = TABLET[0], height: int = TABLET[1], dark: bool = False, **more: object) -> Page:
        size = {"width": width, "height": height}
        context = browser.new_context(viewport=size, color_scheme="dark" if dark else "light", **more)
        context.set_default_timeout(LONGEST_MS)
        contexts.append(context)
        return context.new_page()

    yield open_page
    for context in contexts:
        context.close()


@pytest.fixture
def page(new_page: NewPage) -> Page:
    """A fresh page at tablet size in light colours."""
    return new_page()
