"""Each thing that stops a set-up is one line with the next step, and leaves nothing half-made. Started for real."""

import fcntl
import os
import signal
import sys

NO_NETWORK = {
    "PIP_NO_INDEX": "",
    "PIP_FIND_LINKS": "",
    # Nothing listens on this port.
    "PIP_INDEX_URL": "http://127.0.0.1:1/simple",
    "PIP_RETRIES": "0",
}


def error_of(done) -> str:
    """The error of a start that failed: its last line, the only one that begins with `error:`; no traceback."""
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert [line.startswith("error: ") for line in done.stderr.splitlines()].count(True) == 1
    return done.stderr.splitlines()[-1]


def test_without_ensurepip_the_package_is_named(copy, no_way):
    """The line can be pasted into a terminal."""
    line = error_of(copy.start("serve", **no_way))
    assert f"sudo apt-get install python3.{sys.version_info.minor}-venv" in line
    assert "run the same command again" in line
    assert not copy.environment.exists()


def test_without_ensurepip_uv_makes_the_environment(copy, no_way, program, tmp_path):
    """uv is used when it is there; its --seed puts pip into the environment."""
    path = program("uv", f'echo "$@" > {tmp_path}/asked\nunset PYTHONPATH\n"$5" -m venv "$6"')
    done = copy.start("check", **{**no_way, "PATH": str(path)})
    assert done.stdout == f"at work in {copy.environment} check\n"
    assert (tmp_path / "asked").read_text().split()[:4] == ["venv", "--quiet", "--seed", "--python"]


def test_an_environment_that_cannot_be_made_is_said_with_the_reason(copy, no_way, program):
    """The last word of what should have made it is quoted."""
    path = program("uv", 'echo "disk is full"; exit 1')
    line = error_of(copy.start("check", **{**no_way, "PATH": str(path)}))
    assert "could not be made (disk is full)" in line
    assert not copy.environment.exists()


def test_without_a_network_the_line_says_so(copy):
    """The reason and both ways out; what was begun is removed."""
    line = error_of(copy.start("serve", **NO_NETWORK))
    assert line.startswith("error: No network: the packages in guide.lock could not be fetched.")
    assert "PIP_NO_INDEX=1" in line
    assert not copy.environment.exists()


def test_without_a_network_an_environment_without_the_tests_packages_stays(copy):
    """Failing to add them does not cost the grower the pages."""
    copy.start("serve")
    assert "No network: the packages in test.lock" in error_of(copy.start("test", **NO_NETWORK))
    assert copy.start("serve", **NO_NETWORK).stderr == ""


def test_a_package_that_is_not_the_locked_one_is_refused(copy):
    """The hashes are checked, and the line says what to do."""
    wheel = copy.wheels / "leaf-1.0-py3-none-any.whl"
    wheel.write_bytes(wheel.read_bytes() + b"tampered")
    assert "does not match its hash in guide.lock" in error_of(copy.start("serve"))
    assert not copy.environment.exists()


def test_any_other_fault_of_the_packages_is_quoted(copy):
    """As the installer put it."""
    with (copy.folder / "guide.lock").open("a") as lock:
        lock.write("twig==1.0\n")
    line = error_of(copy.start("serve"))
    assert "could not be installed (Hashes are required" in line


def test_what_takes_longer_than_two_seconds_tells_how_far_it_is(copy, no_way, program):
    """Nobody likes a terminal that seems to hang."""
    path = program("uv", "/bin/sleep 3; exit 1")
    done = copy.start("check", **{**no_way, "PATH": str(path)})
    assert any(line.strip().startswith("2 s") for line in done.stderr.splitlines())


def test_a_set_up_waits_for_another_one(copy, no_way):
    """Two commands started together in a fresh clone do not meet in one folder."""
    held = os.open(copy.folder, os.O_RDONLY)
    fcntl.flock(held, fcntl.LOCK_EX)
    waiting = copy.begin("check", **no_way)
    assert "waiting for it" in waiting.stderr.readline()
    assert not copy.environment.exists()
    os.close(held)
    assert "cannot make virtual environments" in waiting.communicate()[1]


def test_a_missing_lock_is_said(copy):
    """With the command that brings it back."""
    (copy.folder / "guide.lock").unlink()
    assert error_of(copy.start("check")) == "error: guide.lock cannot be read. Bring it back: `git checkout guide.lock`."


def test_a_python_that_cannot_be_started_is_said(whole):
    """As when the folder came from another kind of machine."""
    (whole.environment / "bin/python").chmod(0o644)
    line = error_of(whole.start("check"))
    assert "cannot be started (Permission denied). Remove the folder .venv" in line


def test_a_set_up_that_is_broken_off_leaves_nothing(copy, no_way, program):
    """Ctrl+C is no traceback; the next start begins afresh."""
    path = program("uv", '/bin/mkdir -p "$6"; echo begun >&2; exec /bin/sleep 60')
    started = copy.begin("check", **{**no_way, "PATH": str(path)})
    while not copy.environment.exists():
        assert started.poll() is None
    started.send_signal(signal.SIGINT)
    told = started.communicate()[1]
    assert started.returncode == 130
    assert told.endswith("Stopped. The set-up starts afresh the next time.\n") and "Traceback" not in told
    assert not copy.environment.exists()
