"""explain: the manual page of one check, or the names of all."""

import argparse

from generator.checks import manual
from generator.reading.near import suggestion
from generator.setting_up.telling import Stop


def run(options: argparse.Namespace) -> int:
    """Print the manual page. Raises Stop (status 2) when there is no such check."""
    pages = manual()
    if not options.check:
        print("\n".join(f"{name}: {page.splitlines()[0]}" for name, page in pages.items()))
        return 0
    if options.check not in pages:
        otherwise = f"The checks are: {', '.join(pages)}."
        raise Stop(f"There is no check {options.check}. {suggestion(options.check, list(pages), otherwise)}", 2)
    print(pages[options.check])
    return 0
