"""Running the host of the pages, MkDocs, as a program of its own."""

import os
import sys
from pathlib import Path

# How the plugin learns which edition to lay over the rules; mkdocs.yml reads it.
EDITION = "PRUNING_GUIDE_EDITION"


def command(*words: str) -> list[str]:
    """The command line that runs MkDocs with words in this environment."""
    return [sys.executable, "-m", "mkdocs", *words]


def environment(edition: Path | None) -> dict[str, str]:
    """The environment variables for MkDocs: no advertising of other versions, and the edition, if any."""
    variables = dict(os.environ, NO_MKDOCS_2_WARNING="1", DISABLE_MKDOCS_2_WARNING="true")
    if edition:
        variables[EDITION] = str(edition)
    return variables
