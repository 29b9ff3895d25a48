"""A link checker for a folder of HTML: every file and every anchor that a page points to must be there."""

from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urlsplit

LEADING = {"a": "href", "link": "href", "script": "src", "img": "src"}


class Page(HTMLParser):
    """The ids of a page and where it points."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.ids: set[str] = set()
        self.targets: list[str] = []
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Takes an element's id and its link."""
        given = {name: value or "" for name, value in attrs}
        if given.get("id"):
            self.ids.add(given["id"])
        if given.get(LEADING.get(tag, "")):
            self.targets.append(given[LEADING[tag]])


def dead_links(site: Path, but: tuple[str, ...] = ("404.html",)) -> list[str]:
    """Every link that leads nowhere, as `page: link`. Links to other hosts count as dead: the site needs none.

    A fragment with `=` in it carries facts and is no anchor. Pages named in `but` are not read.
    """
    pages = {path.relative_to(site).as_posix(): Page(path.read_text(encoding="utf-8")) for path in site.rglob("*.html")}
    dead = []
    for name, page in sorted(pages.items()):
        if name not in but:
            dead += [f"{name}: {target}" for target in page.targets if not leads_somewhere(site, name, target, pages)]
    return dead


def leads_somewhere(site: Path, page: str, target: str, pages: dict[str, Page]) -> bool:
    """True when the file is there, and the anchor on it."""
    parts = urlsplit(target)
    if parts.scheme or parts.netloc:
        return False
    place = (site / page).parent / unquote(parts.path) if parts.path else site / page
    if not place.is_file():
        return False
    name = place.resolve().relative_to(site.resolve()).as_posix()
    anchor = unquote(parts.fragment)
    return not anchor or "=" in anchor or name not in pages or anchor in pages[name].ids
