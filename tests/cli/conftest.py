"""Runs the command line as a person would, inside the environment that the tests run in."""

import subprocess
import sys
from collections.abc import Callable

import pytest

Command = Callable[..., subprocess.CompletedProcess[str]]


@pytest.fixture(scope="session")
def command(project_root) -> Command:
    """command(*words, given=""): the finished run of a command, with `given` on its standard input."""

    def run(*words: str, given: str = "") -> subprocess.CompletedProcess[str]:
        line = [sys.executable, "-m", "generator.cli", *words]
        return subprocess.run(line, cwd=project_root, input=given, capture_output=True, text=True, check=False)

    return run
