"""The environment: made once, known to be whole, made anew when it is not. Each test starts the real entry."""

import os
import shutil

import pytest

from tests.setting_up.conftest import small_copy

MAKING_ANEW = "half-made or out of date: removing it and making it anew"
LONGEST_SECOND_START = 0.5


@pytest.fixture(scope="module")
def first(project_root, tmp_path_factory):
    """A copy, and its first start: `serve --port 8123` with nothing set up."""
    copy = small_copy(project_root, tmp_path_factory.mktemp("first"))
    return copy, copy.start("serve", "--port", "8123")


def test_the_first_start_makes_the_environment_and_goes_to_work_in_it(first):
    """One command on a fresh machine: set up, then run, with what it was told."""
    copy, done = first
    assert done.stdout == f"at work in {copy.environment} serve --port 8123\n"
    assert "Setting up the guide's own environment" in done.stderr


def test_the_second_start_sets_nothing_up(first):
    """It says nothing and is at work within half a second, counted on the processor: others may be at work beside it."""
    copy, _ = first
    times = []
    for _ in range(5):
        start = os.times()
        done = copy.start("check")
        end = os.times()
        times.append(end.children_user + end.children_system - start.children_user - start.children_system)
        assert (done.stderr, done.returncode) == ("", 0)
    assert min(times) < LONGEST_SECOND_START


def test_the_tests_packages_come_only_with_the_tests(first):
    """`serve` does not wait for what only the tests need; `test` adds it, and `serve` needs no set-up after that."""
    copy, _ = first
    assert not list(copy.environment.glob("lib/*/site-packages/twig.py"))
    done = copy.start("test")
    assert MAKING_ANEW not in done.stderr
    assert list(copy.environment.glob("lib/*/site-packages/twig.py"))
    assert copy.start("serve").stderr == ""


def test_a_half_made_environment_is_removed_and_remade(copy):
    """A set-up that was broken off leaves no stamp; what it left is not trusted."""
    (copy.environment / "bin").mkdir(parents=True)
    (copy.environment / "bin/python").write_text("broken off here")
    done = copy.start("check")
    assert MAKING_ANEW in done.stderr
    assert done.stdout == f"at work in {copy.environment} check\n"


def test_a_whole_environment_is_used_as_it_is(whole):
    """The bed of the tests below: with a stamp, nothing is made."""
    done = whole.start("check")
    assert (done.stdout, done.stderr) == ("at work\n", "")


def lose_the_stamp(copy):
    """What a set-up leaves that was killed: the stamp is the last thing written."""
    for stamp in copy.environment.glob("ready-*"):
        stamp.unlink()


def renew_the_lock(copy):
    """What `lock`, or a pull, does."""
    with (copy.folder / "guide.lock").open("a") as lock:
        lock.write("# renewed\n")


def move_the_folder(copy):
    """An environment's scripts know where it was made; elsewhere they point to nothing."""
    copy.folder = copy.folder.rename(copy.folder.with_name("moved"))


def lose_its_python(copy):
    """An upgrade of the system can take away the Python that the environment points to."""
    python = copy.environment / "bin/python"
    python.unlink()
    python.symlink_to("/no/longer/here")


def put_a_file_in_its_place(copy):
    """Whatever stands there, the next start puts it right."""
    shutil.rmtree(copy.environment)
    copy.environment.write_text("not a folder")


@pytest.mark.parametrize("spoil", [lose_the_stamp, renew_the_lock, move_the_folder, lose_its_python, put_a_file_in_its_place])
def test_an_environment_that_is_not_whole_is_removed(whole, spoil, no_way):
    """It is not used and not mended. (Making it anew is another test's; here nothing can make one.)"""
    spoil(whole)
    assert MAKING_ANEW in whole.start("check", **no_way).stderr
    assert not whole.environment.exists()


def test_bad_usage_is_said_before_any_set_up(copy):
    """Nobody waits half a minute to read that a word was misspelt."""
    done = copy.start("sevre")
    assert done.returncode == 2
    assert done.stderr.startswith("error: argument COMMAND: invalid choice: 'sevre'")
    assert len(done.stderr.splitlines()) == 1
    assert not copy.environment.exists()
