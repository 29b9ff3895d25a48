"""build: the whole site as a folder of files, for a web server, a course or a disk."""

import argparse
import subprocess
from pathlib import Path

from generator.cli import folders, host
from generator.cli.places import PROJECT, edition_of
from generator.setting_up.telling import Stop

SITE = PROJECT / "site"


def run(options: argparse.Namespace) -> int:
    """Build the site into --out. Raises Stop when MkDocs finds a fault; the folder is then left as it was."""
    edition = edition_of(options)
    target = SITE if options.out is None else folders.named(options.out)

    def fill(folder: Path) -> None:
        """Have MkDocs write the site into folder."""
        words = host.command("build", "--strict", "--quiet", "--site-dir", str(folder))
        if subprocess.run(words, cwd=PROJECT, env=host.environment(edition), check=False).returncode:
            raise Stop("The site was not built. Mend what stands above; `python3 -m generator check` shows all of it.")

    # `site` is where plain `mkdocs build` writes, and nobody keeps anything there.
    folders.replace(target, fill, ours=target == SITE)
    print(f"The site is in {target}: open index.html there, or put the folder on any web server.")
    return 0
