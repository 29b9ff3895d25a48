"""ids: add every id that the ledger, rules/ids.yml, does not list yet."""

import argparse
from datetime import date

from generator.cli.places import RULES
from generator.reading.ledger import add_missing
from generator.setting_up.telling import Stop


def run(_options: argparse.Namespace) -> int:
    """Add what is missing and print it, one `kind id` a line. Raises Stop when the ledger cannot be read."""
    try:
        added = add_missing(RULES, date.today().isoformat())
    except ValueError as fault:
        raise Stop(str(fault), 1) from None
    print("\n".join(added) if added else "Nothing is missing: every id is listed.")
    return 0
