"""Installing what a lock names into an environment, and saying in plain words why it could not be done."""

import os
import re

from generator.setting_up import telling

# What pip writes when the fault is the network and not the package. Every version that a lock pins was seen in an
# index, so a package of which none is to be seen means that no index was reached.
NETWORK_SIGNS = (
    "(from versions: none)",
    "connection broken by",
    "could not fetch url",
    "max retries exceeded",
    "failed to establish a new connection",
    "name resolution",
    "timed out",
    "connection error",
    "network is unreachable",
)


def install(python, root, lock):
    """Install into the environment of python what root/lock names, hashes checked, then the project itself.

    Raises telling.Stop when it fails.
    """
    path = os.path.join(root, lock)
    total = _count(path)
    telling.say("Fetching and checking %d packages (%s)." % (total, lock))
    # Modules are compiled when they are first used: compiling all of them takes as long as the rest.
    pip = [python, "-m", "pip", "install", "--disable-pip-version-check", "--no-input", "--no-compile"]
    _run(pip + ["--require-hashes", "-r", path], _counter(total), lock)
    # The project is installed in place, so that its MkDocs plugin is found and every edit counts at once. All that
    # this needs came with the lock: it asks no index.
    itself = pip + ["--no-index", "--no-deps", "--no-build-isolation", "--editable", root]
    _run(itself, lambda lines: "installing the guide itself", lock)


def explain(lines, lock):
    """One line with the next step for a pip run that failed; lines is pip's output, lock the name of the lock."""
    text = "\n".join(lines).lower()
    if "do not match the hashes" in text:
        return (
            "A package that was fetched does not match its hash in %s, so nothing of it was installed. Run the same "
            "command again on another network; if it fails again, `python3 -m generator lock` renews the locks." % lock
        )
    if any(sign in text for sign in NETWORK_SIGNS):
        return (
            "No network: the packages in %s could not be fetched. Run the same command again when this machine can "
            "reach a package index, or set PIP_NO_INDEX=1 and PIP_FIND_LINKS to a folder that holds them." % lock
        )
    faults = [line[len("ERROR:") :] for line in lines if line.startswith("ERROR:")] or lines
    return "The packages in %s could not be installed (%s). Mend that, then run the same command again." % (
        lock,
        telling.last_line(faults[:1]) or "pip said nothing",
    )


def _run(command, describe, lock):
    """Run pip; raise telling.Stop with one line when it fails."""
    # A person's own pip settings must not send the packages elsewhere; unbuffered, so that the progress is the truth.
    settings = dict(os.environ, PIP_USER="0", PIP_REQUIRE_VIRTUALENV="0", PYTHONUNBUFFERED="1")
    # Its own five tries with growing pauses let a person without a network wait for half a minute.
    settings.setdefault("PIP_RETRIES", "2")
    status, lines = telling.run(command, describe, settings)
    if status:
        raise telling.Stop(explain(lines, lock))


def _count(path):
    """How many packages the lock at path names."""
    with open(path) as lock:
        return sum(1 for line in lock if re.match(r"[A-Za-z0-9].*==", line))


def _counter(total):
    """A description of pip's progress: the package it has come to, and how many of the total that makes."""

    def describe(lines):
        if any(line.startswith("Installing collected") for line in lines):
            return "installing them"
        collected = [line.split()[1] for line in lines if line.startswith("Collecting ")]
        if not collected:
            return "asking the package index"
        return "%d of %d: %s" % (len(collected), total, collected[-1])

    return describe
