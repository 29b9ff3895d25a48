"""The whole way of the data in one function: read, check, compile, make pages."""

from pathlib import Path

from generator.checks import check_rulebook
from generator.pages.parts import parts_files
from generator.pages.scripts import script_files
from generator.pages.site import site_pages
from generator.problems import ProblemsFound
from generator.reading.read import read_rulebook

ROOT = Path(__file__).parent.parent
RULES = ROOT / "rules"
DOCS = ROOT / "docs"


def build_pages(rules: Path = RULES, edition: Path | None = None, docs: Path = DOCS, parts: bool = False) -> dict[str, str | bytes]:
    """Every file of the site, by its path: Markdown pages, scripts, the style sheet.

    rules is the folder of the guide's own rules, edition a folder of local ones laid over them, docs the folder of the
    hand-written pages; with parts, the page of all parts for contributors is among them. Raises ProblemsFound with every problem when the rules are not sound.
    """
    rulebook, problems = read_rulebook(rules, edition)
    # Checks of half a rulebook would only say again what the reading has said.
    problems = problems or check_rulebook(rulebook)
    if problems:
        raise ProblemsFound(problems)
    scripts = script_files(rulebook)
    pages = site_pages(rulebook, docs)
    return {**pages, **scripts, **(parts_files(rulebook) if parts else {})}
