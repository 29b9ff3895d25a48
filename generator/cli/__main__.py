"""`python -m generator.cli COMMAND`: the command line, inside an environment that is taken to be whole."""

import importlib
import os
import sys

from generator.cli import arguments
from generator.problems import ProblemsFound
from generator.setting_up.telling import Stop, say

READER_GONE = 141  # what a shell shows for a program that the closed pipe ended


def main(words: list[str]) -> int:
    """Run the command in words; return its exit status. Faults are lines on stderr, never a traceback."""
    options = arguments.read(words)
    # Only the one command is imported: `serve` needs no test library, `lock` nothing at all.
    command = importlib.import_module(f"generator.cli.{options.command}")
    try:
        status = command.run(options)
        sys.stdout.flush()
        return status
    except BrokenPipeError:
        # Whoever reads has enough (`| head`). What is still held back goes nowhere, or Python would complain when it ends.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return READER_GONE
    except Stop as stop:
        say(f"error: {stop}")
        return stop.status
    except ProblemsFound as found:
        say(str(found))
        return 1
    except KeyboardInterrupt:
        return 130


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
