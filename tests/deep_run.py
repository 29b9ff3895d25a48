"""The record of the deep run, tests/deep_run.json: what it was a run of, how much it proved, and whether it still holds.

Only a whole deep run in which everything passed writes it. Pages, set-up and command line are no part of what it is a
run of: no proof of the deep run goes through them.
"""

import hashlib
import json
import os
import platform
from collections.abc import Iterable
from datetime import date
from importlib.metadata import version
from pathlib import Path

from tests.measured import Measured
from tests.seed import SEED

RECORD = "tests/deep_run.json"
COMMAND = "python3 -m generator test --deep"
LEAST = 10_000_000
ENGINES = {"V8": "mini-racer", "QuickJS-ng": "quickjs-ng"}
READ = (".py", ".js", ".json", ".jsonl", ".yml")
PARTS = {
    "rules": ("rules",),
    "generator": tuple(f"generator/{room}" for room in ("problems.py", "reading", "answers", "checks", "compiler", "calculators")),
    "proofs": ("tests/made_tables.py", "tests/parity", "tests/engine", "tests/compiler", "tests/reading"),
}


def digests(project: Path) -> dict[str, str]:
    """A digest of each part that the deep run is a run of, over the names and the bytes of its files."""
    return {part: _digest(project, places) for part, places in PARTS.items()}


def _digest(project: Path, places: Iterable[str]) -> str:
    """The first digits of the sha256 over all source files in some places."""
    whole = hashlib.sha256()
    for place in places:
        top = project / place
        for path in [top] if top.is_file() else sorted(path for path in top.rglob("*") if path.suffix in READ):
            name = path.relative_to(project).as_posix()
            whole.update(f"{name}\n{hashlib.sha256(path.read_bytes()).hexdigest()}\n".encode())
    return whole.hexdigest()[:16]


def standing(project: Path) -> str:
    """One sentence: the record is of what is here, or what has changed since, or there is none."""
    path = project / RECORD
    if not path.exists():
        return f"No deep run is recorded. `{COMMAND}` makes one."
    record = json.loads(path.read_text(encoding="utf-8"))
    run = f"The deep run of {record['date']} ({record['evaluations']['all']:,} evaluations, {record['mismatches']} mismatches)"
    changed = [part for part, digest in digests(project).items() if record["of"].get(part) != digest]
    if not changed:
        return f"{run} is of these rules, this generator and these proofs."
    return f"{run} is stale: changed since: {', '.join(changed)}. `{COMMAND}` makes a new one."


def refusal(measured: Measured, passed: bool, whole: bool) -> str:
    """Why a deep run is not recorded; empty when it is."""
    if not passed:
        return "something failed"
    if not whole:
        return "it was a part or a share of the deep run"
    if measured.differing or measured.evaluations < LEAST or not set(ENGINES) <= set(measured.calls):
        return f"{LEAST:,} evaluations in {' and '.join(ENGINES)} without a mismatch are asked"
    return ""


def write(project: Path, measured: Measured, cases: dict[str, int], seconds: float) -> None:
    """Write the record, all at once. cases: for each proof that has a number of cases, that number."""
    record = {
        "date": date.today().isoformat(),
        "of": digests(project),
        "seed": SEED,
        "seconds": round(seconds),
        "python": platform.python_version(),
        "engines": {name: f"{package} {version(package)}" for name, package in ENGINES.items()},
        "evaluations": {**measured.calls, "all": measured.evaluations},
        "mismatches": measured.differing,
        "cases": dict(sorted(cases.items())),
        "measured": {folder: {what: str(counts[what]) for what in sorted(counts)} for folder, counts in sorted(measured.counts.items())},
    }
    unfinished = project / f"{RECORD}.new"
    unfinished.write_text(json.dumps(record, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    os.replace(unfinished, project / RECORD)
