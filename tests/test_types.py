"""A second reader of the types: what the compiler takes on trust, mypy has read strictly."""

import subprocess
import sys


def test_the_calculators_types_are_sound(project_root):
    """mypy, strict, on every calculator; its settings stand in pyproject.toml."""
    words = [sys.executable, "-m", "mypy", "--no-error-summary"]
    done = subprocess.run(words, cwd=project_root, capture_output=True, text=True, check=False)
    assert (done.stdout, done.returncode) == ("", 0), done.stdout + done.stderr
