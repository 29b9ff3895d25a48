"""`python3 -m generator COMMAND`: sees to the environment, then hands over to the command line inside it.

Only the standard library is imported here, and this file parses under old Pythons, so that "Python too old" is a
message and not a syntax error. The command line itself is `generator.cli`.
"""

import sys

from generator.setting_up import pythons


def main(words):
    """Run the command in words (a list of strings) inside the prepared environment; return an exit status.

    Bad usage is said before any set-up; a set-up that cannot be finished is one line on stderr and status 1.
    """
    complaint = pythons.complaint(sys.version_info, sys.executable)
    if complaint:
        sys.stderr.write("error: %s\n" % complaint)
        return 1
    # These need the Python that was just checked, so they cannot stand at the top.
    from generator.cli import arguments
    from generator.setting_up import environment, telling

    options = arguments.read(words)
    lock = arguments.LOCKS.get(options.command, "guide.lock")
    try:
        python = environment.prepare(environment.ROOT, lock) if lock else sys.executable
        return environment.hand_over([python, "-m", "generator.cli"] + words)
    except telling.Stop as stop:
        telling.say("error: %s" % stop)
        return stop.status
    except KeyboardInterrupt:
        telling.say("Stopped. The set-up starts afresh the next time.")
        return 130


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
