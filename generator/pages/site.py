"""All pages of the site, and the schemas of what they are made from: {path: text}."""

from pathlib import Path

from generator.pages.calculators import calculator_pages
from generator.pages.decisions import decision_pages
from generator.pages.hands import hands_pages
from generator.pages.home import home_page
from generator.pages.items import item_pages
from generator.pages.lists import list_pages
from generator.pages.looks import look_pages
from generator.pages.plan import plan_page
from generator.pages.schemas import schema_files
from generator.pages.trainers import trainer_pages
from generator.pages.varieties import variety_pages
from generator.reading.rulebook import Rulebook

FOR_CONTRIBUTORS = {"design", "performance.md"}


def site_pages(rulebook: Rulebook, docs: Path) -> dict[str, str]:
    """Every page as Markdown and every published schema, by path from the root of the site."""
    written = hand_written(docs)
    return {
        **written,
        "index.md": home_page(rulebook, written["index.md"]),
        "plan.md": plan_page(rulebook),
        **item_pages(rulebook),
        **decision_pages(rulebook),
        **calculator_pages(rulebook),
        **list_pages(rulebook),
        **variety_pages(rulebook),
        **look_pages(rulebook),
        **hands_pages(rulebook),
        **trainer_pages(rulebook),
        **schema_files(),
    }


def hand_written(docs: Path) -> dict[str, str]:
    """The hand-written pages of the site; what is for contributors stays off it."""
    paths = sorted(path for path in docs.rglob("*.md") if path.relative_to(docs).parts[0] not in FOR_CONTRIBUTORS)
    return {path.relative_to(docs).as_posix(): path.read_text(encoding="utf-8") for path in paths}
