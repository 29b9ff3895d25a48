"""A second host, so that the first can be replaced: renders what `write` gives with Python-Markdown and nothing else."""

import re
from html import escape
from pathlib import Path

import markdown

PAGE = """<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>{title}</title><link rel="stylesheet" href="{root}assets/guide/guide.css"></head>
<body><main class="page">{body}</main></body>
</html>
"""
MARKDOWN_LINK = re.compile(r'(<a href="[^":?#]*)\.md([#"])')


def render(text: str, depth: int) -> str:
    """One Markdown page as HTML; depth is how many folders it lies below the root."""
    title = text.partition("\n")[0].lstrip("# ")
    body = markdown.markdown(text, extensions=["tables", "toc"])
    return PAGE.format(title=escape(title), root="../" * depth, body=MARKDOWN_LINK.sub(r"\1.html\2", body))


def build(pages: dict[str, str | bytes], folder: Path) -> None:
    """The site of the other host in a folder: pages rendered, everything else copied."""
    for path, content in pages.items():
        place = folder / path
        place.parent.mkdir(parents=True, exist_ok=True)
        if path.endswith(".md"):
            place.with_name(place.name.removesuffix(".md") + ".html").write_text(render(content, path.count("/")), encoding="utf-8")
        else:
            place.write_bytes(content.encode() if isinstance(content, str) else content)
