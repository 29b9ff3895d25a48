"""write: the pages as plain Markdown, scripts and data, for any host of Markdown."""

import argparse
from pathlib import Path

from generator.build import build_pages
from generator.cli import folders
from generator.cli.places import RULES, edition_of


def run(options: argparse.Namespace) -> int:
    """Write every page into the folder. Raises ProblemsFound when the rules have faults."""
    target = folders.named(options.out)
    pages = build_pages(RULES, edition_of(options))

    def fill(folder: Path) -> None:
        """Write the pages into folder."""
        for path, content in pages.items():
            place = folder / path
            place.parent.mkdir(parents=True, exist_ok=True)
            place.write_bytes(content.encode("utf-8") if isinstance(content, str) else content)

    folders.replace(target, fill)
    print(f"{len(pages)} files are in {options.out}.")
    return 0
