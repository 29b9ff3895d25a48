"""Where the commands find things: the project, its rules, and the edition that a person names."""

import argparse
from pathlib import Path

from generator.setting_up.environment import ROOT
from generator.setting_up.telling import Stop

PROJECT = Path(ROOT)
RULES = PROJECT / "rules"


def edition_of(options: argparse.Namespace) -> Path | None:
    """The folder of the edition that --edition names, or None. Raises Stop when there is no such folder."""
    if not options.edition:
        return None
    folder = Path(options.edition).absolute()
    if not folder.is_dir():
        raise Stop(f"--edition: there is no folder {options.edition}. Give the folder that holds edition.yml.", 2)
    return folder
