"""The only door to Jinja: renders a template of generator/pages/templates/ to Markdown text.

Everything put into a template is escaped for HTML; `|md` escapes it for Markdown as well. HTML inside a page stands in
`{% filter block %}`, which makes it one block without blank lines, so that every Markdown renderer passes it through.
"""

import re
from functools import cache
from pathlib import Path

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup, escape

from generator.pages.wording import capital

TEMPLATES = Path(__file__).parent / "templates"
_MARKS = re.compile(r"([\\`*_\[\]])")
_START = re.compile(r"^(\s*\d*)([#+\-]|\.(?=\s|$))", re.MULTILINE)


def markdown(text: str) -> Markup:
    """Plain text as Markdown: no character of it is taken for a mark."""
    return Markup(_START.sub(r"\1\\\2", _MARKS.sub(r"\\\1", str(escape(text)))))


def block(text: str) -> Markup:
    """One block of HTML: no blank line in it, no indent, a blank line around it."""
    lines = [line.strip() for line in str(text).splitlines()]
    return Markup("\n" + "\n".join(line for line in lines if line) + "\n")


@cache
def environment(templates: Path = TEMPLATES) -> Environment:
    """The environment of the templates: a missing name is an error, not an empty word."""
    made = Environment(
        loader=FileSystemLoader(templates, encoding="utf-8"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    made.filters.update(md=markdown, block=block, sentence=capital)
    return made


def render(template: str, **context) -> str:
    """The Markdown of one page; runs of blank lines are closed up."""
    text = environment().get_template(template).render(**context)
    return re.sub(r"\n{3,}", "\n\n", text).strip() + "\n"
