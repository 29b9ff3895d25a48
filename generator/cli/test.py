"""test: every check of the rules, then every test, with the 20 slowest, what was measured and what was left out at the end."""

import argparse
import os
import sys

from generator.cli import check
from generator.cli.places import PROJECT
from generator.setting_up import browser
from generator.setting_up.environment import hand_over
from generator.setting_up.telling import say

SLOWEST = 20
# A process a core, the files one by one to whichever is free, the long ones first as tests/conftest.py orders them. More
# than four would build the site and start a browser more often than they save.
SHARED_OUT = ("-n", "auto", "--maxprocesses", "4", "--dist", "loadfile", "--no-loadscope-reorder")


def run(options: argparse.Namespace) -> int:
    """See to a browser, check the rules, and become pytest, whose closing line is the last line of output.

    Returns 1 when the rules have problems. Raises Stop when a browser is wanted and cannot be had.
    """
    words = [f"--durations={SLOWEST}", *SHARED_OUT]
    if options.deep:
        words.append("--deep")  # has no browser tests
    elif options.no_browser:
        words.append("--no-browser")
    else:
        os.environ[browser.VARIABLE] = browser.find_or_install()
    if check.run(options):
        say("The tests were not run: mend the rules first.")
        return 1
    sys.stdout.flush()
    os.chdir(PROJECT)
    return hand_over([sys.executable, "-m", "pytest", *words, *options.extra])
