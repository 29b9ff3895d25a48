"""Putting a folder in its place as a whole: filled beside it first, then moved, so that nothing is half-written."""

import os
import shutil
import tempfile
from collections.abc import Callable
from pathlib import Path

from generator.setting_up.telling import Stop

# Tells a folder that this guide wrote, and may replace, from one that it must not touch.
MARK = ".pruning-guide"
MARK_TEXT = "Written by the pruning guide. The whole folder is replaced the next time; keep nothing of your own in it.\n"


def named(words: str) -> Path:
    """The folder that a person names. Raises Stop when the name is empty: a script's unset variable names no folder."""
    if not words.strip():
        raise Stop("The name of the folder to write into is empty. Give one, such as `out`.", 2)
    return Path(words).absolute()


def replace(target: Path, fill: Callable[[Path], None], ours: bool = False) -> None:
    """Have fill(folder) write into a new folder, then put that folder at target.

    A folder at target is replaced only if this guide wrote it, it is empty, or `ours` says that it is the guide's.
    Raises Stop otherwise, and when the place or the disk will not have the folder. When fill raises, target is left as it was.
    """
    try:
        _refuse_foreign(target, ours)
        target.parent.mkdir(parents=True, exist_ok=True)
        workshop = Path(tempfile.mkdtemp(prefix=".making-", dir=target.parent))
        try:
            _make(target, workshop, fill)
        finally:
            shutil.rmtree(workshop, ignore_errors=True)
    except OSError as fault:
        reason = fault.strerror or str(fault)
        raise Stop(f"{target} cannot be written ({reason}). Give a folder that you may write into, with room left.", 2) from None


def _make(target: Path, workshop: Path, fill: Callable[[Path], None]) -> None:
    """Fill a folder in the workshop, then put it at target; what was there goes into the workshop."""
    fresh = workshop / "fresh"
    fresh.mkdir()
    fill(fresh)
    (fresh / MARK).write_text(MARK_TEXT, encoding="utf-8")
    if target.exists():
        os.replace(target, workshop / "old")
    os.replace(fresh, target)


def _refuse_foreign(target: Path, ours: bool) -> None:
    """Raise Stop when there is something at target that this guide did not write, or a file where a folder above it should be."""
    above = next((folder for folder in target.parents if folder.exists()), target.parent)
    if above.is_file():
        raise Stop(f"{target} cannot be written ({above} is a file). Give a folder below a folder.", 2)
    if not target.exists() or (ours and target.is_dir()):
        return
    if not target.is_dir():
        raise Stop(f"{target} is a file. Give a folder.", 2)
    if any(target.iterdir()) and not (target / MARK).exists():
        raise Stop(f"{target} holds files that this guide did not write. Give an empty or a new folder.", 2)
