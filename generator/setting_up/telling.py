"""Telling the person at the terminal how a set-up goes: lines on stderr, and one-line errors with the next step."""

import subprocess
import sys
import threading
import time

SECONDS_BETWEEN_LINES = 2
SECONDS_BEFORE_REPEATING = 10


class Stop(Exception):
    """The command cannot go on. Its text is one line that ends with the next step; status is the exit status."""

    def __init__(self, line, status=1):
        super(Stop, self).__init__(line)
        self.status = status


def say(line):
    """Write one line to stderr at once."""
    sys.stderr.write(line + "\n")
    sys.stderr.flush()


def last_line(lines):
    """The last line that is not blank, shortened to fit a terminal; an empty string when there is none."""
    for line in reversed(lines):
        if line.strip():
            return line.strip()[:100]
    return ""


def run(command, describe=last_line, env=None):
    """Run command (a list of strings) to its end; return its exit status and its output as a list of lines.

    While it runs, lines on stderr, two seconds apart, say how far it is: describe(lines so far) returns that text.
    Raises OSError when the program cannot be started.
    """
    process = subprocess.Popen(
        command, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, env=env
    )
    lines = []
    ended = threading.Event()
    teller = threading.Thread(target=_tell, args=(describe, lines, ended))
    teller.daemon = True
    teller.start()
    try:
        for line in process.stdout:
            lines.append(line.decode("utf-8", "replace").rstrip())
        return process.wait(), lines
    finally:
        ended.set()
        if process.poll() is None:
            process.kill()
            process.wait()
        process.stdout.close()


def _tell(describe, lines, ended):
    """Say how far a command is until it has ended; what is said already is not said again for a while."""
    start, said, said_at = time.time(), None, 0
    while not ended.wait(SECONDS_BETWEEN_LINES):
        text, now = describe(list(lines)), time.time()
        if text != said or now - said_at >= SECONDS_BEFORE_REPEATING:
            say("  %3d s  %s" % (now - start, text))
            said, said_at = text, now
