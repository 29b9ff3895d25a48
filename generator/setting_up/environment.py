"""The project's own virtual environment, `.venv`: made once from a lock, known to be whole by a stamp file.

The stamp is the last thing written. Its name carries the lock's hash and its text the project's folder, so a
set-up that was broken off, a renewed lock and a moved folder all show, and the environment is made anew.
"""

import contextlib
import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys

from generator.setting_up import packages, telling

try:
    import fcntl
except ImportError:  # Windows: two set-ups at the same moment are not held apart there.
    fcntl = None

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))

# The test lock holds all that the guide's lock holds, so an environment made from it serves both.
INCLUDES = {"guide.lock": ("guide.lock",), "test.lock": ("test.lock", "guide.lock")}


def prepare(root, lock):
    """Make the environment that lock (`guide.lock` or `test.lock`) describes, unless it is there; return its Python.

    Raises telling.Stop when it cannot be made.
    """
    if not is_ready(root, lock):
        with _alone(root):
            if not is_ready(root, lock):
                _set_up(root, lock)
    return python_of(root)


def python_of(root):
    """The path of the environment's Python, whether it exists or not."""
    folder, name = ("Scripts", "python.exe") if os.name == "nt" else ("bin", "python")
    return os.path.join(root, ".venv", folder, name)


def stamp_of(root, lock):
    """The path of the stamp for lock: its name changes when the lock or pyproject.toml does. Stops without either."""
    digest = hashlib.sha256()
    for name in (lock, "pyproject.toml"):
        try:
            with open(os.path.join(root, name), "rb") as content:
                digest.update(content.read())
        except IOError:
            raise telling.Stop("%s cannot be read. Bring it back: `git checkout %s`." % (name, name))
    return os.path.join(root, ".venv", "ready-%s-%s" % (lock.split(".")[0], digest.hexdigest()[:16]))


def is_ready(root, lock):
    """Whether the environment is whole, made from this lock, and made where it now stands."""
    path = stamp_of(root, lock)
    if not os.path.exists(python_of(root)) or not os.path.exists(path):
        return False
    with open(path) as stamp:
        return stamp.read() == root


def mark_ready(root, lock):
    """Write the stamps that say: this environment is whole."""
    for included in INCLUDES[lock]:
        with open(stamp_of(root, included), "w") as stamp:
            stamp.write(root)


def hand_over(command):
    """Become command (a list of strings): nothing of this process is left to wait or to be stopped separately.

    Where the system cannot do that (Windows), run it to its end and return its exit status. Raises telling.Stop when
    the program cannot be started, as after a move to another kind of machine.
    """
    try:
        if os.name != "nt":
            os.execv(command[0], command)
        return subprocess.call(command)
    except OSError as fault:
        line = "%s cannot be started (%s). Remove the folder .venv, then run the same command again."
        raise telling.Stop(line % (command[0], fault.strerror))
    except KeyboardInterrupt:
        return 130


def _set_up(root, lock):
    """Make the environment and fill it from lock, or add to one that is whole but smaller.

    What was begun afresh and fails is removed. Adding never harms: both locks pin the same versions.
    """
    folder = os.path.join(root, ".venv")
    afresh = not is_ready(root, "guide.lock")
    if afresh and os.path.lexists(folder):
        telling.say("The environment in .venv is half-made or out of date: removing it and making it anew.")
        _remove(folder)
    try:
        if afresh:
            telling.say("Setting up the guide's own environment in .venv (once, about half a minute).")
            _make(folder)
        packages.install(python_of(root), root, lock)
    except BaseException:
        if afresh:
            _remove(folder)
        raise
    mark_ready(root, lock)
    telling.say("The environment is ready.")


def _make(folder):
    """Make an empty virtual environment with pip in it, by the standard library or, without its parts, by uv."""
    base = getattr(sys, "_base_executable", "") or sys.executable
    uv = shutil.which("uv")
    if importlib.util.find_spec("venv") and importlib.util.find_spec("ensurepip"):
        command = [base, "-m", "venv", folder]
    elif uv:
        command = [uv, "venv", "--quiet", "--seed", "--python", base, folder]
    else:
        version = "%d.%d" % sys.version_info[:2]
        raise telling.Stop(
            "This Python %s cannot make virtual environments (no venv or no ensurepip). On Debian or Ubuntu: "
            "`sudo apt-get install python%s-venv`; elsewhere install uv; then run the same command again."
            % (version, version)
        )
    status, lines = telling.run(command, lambda lines: "making it")
    if status:
        raise telling.Stop(
            "The environment in .venv could not be made (%s). Mend that, then run the same command again."
            % telling.last_line(lines)
        )


def _remove(folder):
    """Remove the environment, whatever stands in its place."""
    try:
        if os.path.isdir(folder) and not os.path.islink(folder):
            shutil.rmtree(folder)
        elif os.path.lexists(folder):
            os.remove(folder)
    except OSError as fault:
        raise telling.Stop("%s could not be removed (%s). Remove it by hand, then try again." % (folder, fault.strerror))


@contextlib.contextmanager
def _alone(root):
    """Hold off other set-ups of the same project: two commands started together in a fresh clone must not meet."""
    if fcntl is None:
        yield
        return
    held = os.open(root, os.O_RDONLY)
    try:
        try:
            fcntl.flock(held, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            telling.say("Another command is setting up the environment: waiting for it.")
            fcntl.flock(held, fcntl.LOCK_EX)
        yield
    finally:
        os.close(held)
