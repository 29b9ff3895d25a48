"""`lock` renews both locks with uv, needs no environment, and leaves the old locks when it fails."""

import shutil

import pytest

# Writes its words to a file, and something like a lock to where it was told.
UV = 'echo "$@" >> {asked}\nwhile [ $# -gt 1 ]; do [ "$1" = --output-file ] && out="$2"; shift; done\necho renewed > "$out"'


@pytest.fixture
def project(copy, project_root):
    """A copy with the lock command in it."""
    for name in ("problems.py", "cli/__main__.py", "cli/lock.py"):
        shutil.copy(project_root / "generator" / name, copy.folder / "generator" / name)
    return copy


def test_both_locks_are_renewed(project, program, tmp_path):
    """By uv, with hashes, for every system, the test lock bound to the versions of the guide's."""
    path = program("uv", UV.format(asked=tmp_path / "asked"))
    done = project.start("lock", PATH=str(path))
    assert done.returncode == 0, done.stderr
    assert [(project.folder / name).read_text() for name in ("guide.lock", "test.lock")] == ["renewed\n"] * 2
    guide, test = (tmp_path / "asked").read_text().splitlines()
    assert all(word in guide for word in ("--universal", "--generate-hashes", "--python-version 3.11"))
    assert "--constraints" in test and "--extra test" in test


def test_no_environment_is_needed(project, program, tmp_path):
    """It must work when the locks are spoilt."""
    (project.folder / "guide.lock").write_text("spoilt")
    project.start("lock", PATH=str(program("uv", UV.format(asked=tmp_path / "asked"))))
    assert (project.folder / "guide.lock").read_text() == "renewed\n"
    assert not project.environment.exists()


def test_when_nothing_fits_the_locks_stay(project, program):
    """The reason is quoted on one line."""
    before = (project.folder / "guide.lock").read_text()
    done = project.start("lock", PATH=str(program("uv", "echo no version fits >&2; exit 1")))
    assert done.returncode == 1
    assert "error: guide.lock could not be resolved (no version fits)." in done.stderr
    assert (project.folder / "guide.lock").read_text() == before


def test_without_uv_and_network_the_next_step_is_said(project, no_way):
    """uv is fetched when it is not there; when that fails, one line."""
    settings = {**no_way, "PIP_NO_INDEX": "1", "PIP_FIND_LINKS": ""}
    done = project.start("lock", **settings)
    assert done.returncode == 1
    assert done.stderr.splitlines()[-1].startswith("error: uv could not be fetched")
    assert done.stderr.endswith("Install uv, then run the same command again.\n")
