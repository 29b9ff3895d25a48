"""lock: renew guide.lock and test.lock from pyproject.toml, with hashes, for every system and Python that is supported.

Standard library only, so that it works when the locks are spoilt.
"""

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from generator.setting_up.environment import ROOT
from generator.setting_up.pythons import OLDEST
from generator.setting_up.telling import Stop, last_line, run as tell_run, say

UV = "uv==0.13.9"
# Extras of pyproject.toml that each lock holds; the guide's comes first, for the test lock follows its versions.
EXTRAS = {"guide.lock": ("environment",), "test.lock": ("environment", "test")}
# One version a package for all Pythons: a fork would give two contributors different pages.
TERMS = ("--universal", "--fork-strategy", "fewest", "--generate-hashes", "--no-emit-index-url", "--quiet")


def run(options: argparse.Namespace) -> int:
    """Renew both locks. Raises Stop when uv cannot be had or cannot resolve; the locks are then left as they were."""
    with tempfile.TemporaryDirectory() as workshop:
        uv = shutil.which("uv") or _fetch_uv(workshop)
        fresh = {name: Path(workshop, name) for name in EXTRAS}
        for name, path in fresh.items():
            if options.keep:
                shutil.copy(Path(ROOT, name), path)
            _resolve(uv, name, path, fresh["guide.lock"])
        for name, path in fresh.items():
            beside = Path(ROOT, f".{name}")
            # The workshop has another name each time; a lock names its neighbour as it lies in the project.
            beside.write_text(path.read_text(encoding="utf-8").replace(f"{workshop}{os.sep}", ""), encoding="utf-8")
            os.replace(beside, Path(ROOT, name))
    print("guide.lock and test.lock are renewed. The next command sets the environment up from them.")
    return 0


def _resolve(uv: str, name: str, path: Path, guide: Path) -> None:
    """Write the lock called name to path; every lock but the guide's own keeps to the versions in guide."""
    say(f"Resolving {name}.")
    words = [uv, "pip", "compile", "pyproject.toml", "--python-version", f"{OLDEST[0]}.{OLDEST[1]}", *TERMS]
    words += ["--custom-compile-command", "python3 -m generator lock", "--output-file", str(path)]
    words += [word for extra in EXTRAS[name] for word in ("--extra", extra)]
    if path != guide:
        words += ["--constraints", str(guide)]
    done = subprocess.run(words, cwd=ROOT, stdin=subprocess.DEVNULL, stderr=subprocess.PIPE, stdout=subprocess.DEVNULL)
    if done.returncode:
        reason = last_line(done.stderr.decode("utf-8", "replace").splitlines())
        raise Stop(f"{name} could not be resolved ({reason}). Mend pyproject.toml or the network, then try again.")


def _fetch_uv(workshop: str) -> str:
    """Fetch uv into the folder workshop; return its path. Raises Stop when it cannot be fetched."""
    say("Fetching uv, which resolves the locks.")
    where = Path(workshop, "uv")
    pip = [sys.executable, "-m", "pip", "install", "--disable-pip-version-check", "--no-input", "--target", str(where)]
    status, lines = tell_run([*pip, UV])
    if status:
        raise Stop(f"uv could not be fetched ({last_line(lines)}). Install uv, then run the same command again.")
    return shutil.which("uv", path=str(where / "bin")) or ""
