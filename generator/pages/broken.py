"""Pages while a rule is broken: the last sound ones stay, and say on top what is wrong and where."""

from generator.pages.jinja import render
from generator.pages.paths import page_of_rule
from generator.problems import Problem

HOME = "index.md"


def with_problems(pages: dict[str, str | bytes], problems: list[Problem]) -> dict[str, str | bytes]:
    """The pages, with the problems told on the start page and each on the page of the broken item, if it has one."""
    told: dict[str, list[Problem]] = {HOME: problems}
    for problem in problems:
        page = page_of_rule(problem.path)
        if page:
            told.setdefault(page, []).append(problem)
    return {**pages, **{path: _told(pages.get(path), found) for path, found in told.items()}}


def _told(page: str | bytes | None, problems: list[Problem]) -> str:
    """A page with its problems after its heading; a page that was never sound is made of its problems alone."""
    text = page if isinstance(page, str) else "# This page cannot be made yet\n"
    heading, _, rest = text.partition("\n")
    count = len(problems)
    title = "One thing in the rules is not right." if count == 1 else f"{count} things in the rules are not right."
    return f"{heading}\n\n{render('problems.md.jinja', title=title, problems=problems, sound=page is not None)}\n{rest}"
