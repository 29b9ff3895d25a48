"""The start page: the hand-written docs/index.md with its generated parts put where its marks stand."""

import re
from collections.abc import Callable

from generator.answers.tables import asked_by_others, feeding_order
from generator.pages.jinja import render
from generator.pages.paths import Links
from generator.reading.rulebook import Rulebook

MARK = re.compile(r"<!-- guide: (\w+) -->")
HERE = "index.md"


def home_page(rulebook: Rulebook, text: str) -> str:
    """The start page. A mark `<!-- guide: NAME -->` in the text is replaced by the part of that name."""
    parts: dict[str, Callable[[Rulebook], str]] = {"stages": _stages, "answers": _answers}
    return MARK.sub(lambda mark: parts[mark[1]](rulebook) if mark[1] in parts else mark[0], text)


def _stages(rulebook: Rulebook) -> str:
    """The stages that exist, in the order of the work."""
    return render("home_stages.md.jinja", links=Links(HERE), stages=by_number(rulebook))


def _answers(rulebook: Rulebook) -> str:
    """The questions by stage, those that rest on fewer others first. What only answers for another stands on the page of its stage."""
    behind = asked_by_others(rulebook)
    tables = [table for table in rulebook.decisions.values() if not table.generated and table.id not in behind]
    groups = []
    for stage in by_number(rulebook):
        own = sorted((table for table in tables if table.stage == stage.id), key=lambda table: len(feeding_order(rulebook, table.id)))
        entries = [("decision", table) for table in own] + [("calculator", form) for form in rulebook.calculators.values() if form.stage == stage.id]
        groups += [(stage, entries)] if entries else []
    return render("home_answers.md.jinja", links=Links(HERE), groups=groups)


def by_number(rulebook: Rulebook) -> list:
    """The stages in the order of the work."""
    return sorted(rulebook.stages.values(), key=lambda stage: stage.number)
