"""Where each page stands. A path is made of the kind's folder and the item's id, never of a title, so links never break."""

from dataclasses import dataclass
from posixpath import dirname, relpath

from generator.reading.documents import FOLDERS as KINDS

FOLDERS = {
    "stage": "s",
    "decision": "d",
    "calculator": "c",
    "fact": "f",
    "value": "v",
    "source": "src",
    "term": "t",
    "variety": "y",
    "look": "look",
    "hands": "h",
}
# Kinds whose items stand together on one page, each under its id.
TOGETHER = {"fault": "train.md"}
LISTS = {"fact": "facts.md", "value": "values.md", "source": "sources.md", "term": "glossary.md", "look": "looks.md", "hands": "hands.md", "variety": "varieties.md"}


def page_path(kind: str, item: str) -> str:
    """The path of an item's Markdown page, from the root of the site."""
    return TOGETHER.get(kind) or f"{FOLDERS[kind]}/{item}.md"


def page_of_rule(path: str) -> str | None:
    """The page that shows what the rule file says (`rules/facts/x.yml` is shown on `f/x.md`); None when no page does."""
    parts = path.split("/")
    kind = KINDS.get(parts[-2], "") if len(parts) > 1 else ""
    return page_path(kind, parts[-1].removesuffix(".yml")) if kind in FOLDERS or kind in TOGETHER else None


@dataclass(frozen=True)
class Links:
    """Relative links from one page. `md` is for Markdown (`../f/x.md`), `html` for HTML in the page (`../f/x.html`)."""

    here: str

    def to(self, path: str) -> str:
        """The relative address of a file of the site."""
        return relpath(path, dirname(self.here) or ".")

    def md(self, kind: str, item: str) -> str:
        """The relative path of an item's Markdown page."""
        return self.to(page_path(kind, item))

    def html(self, kind: str, item: str) -> str:
        """The relative address of an item's page as built."""
        return self.md(kind, item).removesuffix(".md") + ".html"
