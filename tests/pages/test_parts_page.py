"""The page of all parts, for contributors: it shows every class of the style sheet and every macro, and is in no site that is built."""

import re

import pytest

from generator.pages.jinja import TEMPLATES
from generator.pages.parts import parts_files
from generator.pages.scripts import asset

# What the page's frame and its scripts make; the rest has to stand on the page itself.
FRAME = {"md-dialog", "md-main", "md-overlay", "md-skip", "md-toggle", "top", "top-links", "top-name", "foot", "page"}
SCRIPTS = ["ask.js", "series.js", "show.js", "reasons.js", "decision.js"]


@pytest.fixture(scope="session")
def parts(rulebook) -> str:
    """The page as Markdown."""
    return parts_files(rulebook)["parts.md"]


def test_every_class_of_the_style_sheet_is_shown(parts):
    """Who changes a rule sees what it does; a rule that nothing uses is found here."""
    rules = re.sub(r"/\*.*?\*/|\{[^{}]*\}", "", asset("guide.css"), flags=re.DOTALL)
    shown = " ".join(re.findall(r'class="([^"]*)"', parts) + re.findall(r'"class": "([^"]*)"', "".join(map(asset, SCRIPTS)))).split()
    assert set(re.findall(r"\.([a-z][\w-]*)", rules)) - set(shown) - FRAME == set()


def test_every_macro_is_used():
    """Except the two that name sources, which stand inside other parts."""
    macros = set(re.findall(r"macro (\w+)\(", (TEMPLATES / "_parts.jinja").read_text(encoding="utf-8")))
    used = set(re.findall(r"parts\.(\w+)\(", (TEMPLATES / "parts.md.jinja").read_text(encoding="utf-8")))
    assert macros - used == {"cited", "named"}


def test_no_built_site_has_it(built):
    """It is for contributors: only `serve` adds it."""
    assert [path for path in built if path.rsplit("/")[-1].startswith("parts.")] == []
