"""The Content-Security-Policy of a built site: everything from the site itself, inline code only by its hash.

No page of ours has inline code but 404.html, which must stand alone; whatever a host theme adds is found and hashed too.
"""

import base64
import hashlib
from html.parser import HTMLParser
from pathlib import Path

POLICY_FILE = "content-security-policy.txt"
DATA = ("application/json", "application/ld+json")


class _Inline(HTMLParser):
    """Collects the text of inline scripts and styles."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=False)
        self.found: dict[str, list[str]] = {"script": [], "style": []}
        self._inside = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Notes that the text of an inline element begins."""
        given = dict(attrs)
        if tag in self.found and "src" not in given and given.get("type") not in DATA:
            self._inside = tag
            self.found[tag].append("")

    def handle_endtag(self, tag: str) -> None:
        """Notes that it ends."""
        self._inside = ""

    def handle_data(self, data: str) -> None:
        """Takes the text between."""
        if self._inside:
            self.found[self._inside][-1] += data


def _sources(texts: set[str]) -> str:
    """`'self'` and the hash of each text, sorted."""
    hashes = [base64.b64encode(hashlib.sha256(text.encode()).digest()).decode() for text in texts]
    return " ".join(["'self'", *(f"'sha256-{one}'" for one in sorted(hashes))])


def policy(site: Path) -> str:
    """The policy for all pages of the built site in a folder, on one line."""
    inline: dict[str, set[str]] = {"script": set(), "style": set()}
    for path in sorted(site.rglob("*.html")):
        parser = _Inline()
        parser.feed(path.read_text(encoding="utf-8"))
        for tag, texts in parser.found.items():
            inline[tag].update(texts)
    return (
        f"default-src 'self'; script-src {_sources(inline['script'])}; style-src {_sources(inline['style'])}; "
        "object-src 'none'; base-uri 'none'; form-action 'none'"
    )
