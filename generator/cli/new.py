"""new: begin an item of the rules, with every key that its kind needs and its line in ids.yml."""

import argparse

from generator.cli.places import RULES
from generator.reading.scaffold import new_item, what_next
from generator.setting_up.telling import Stop


def run(options: argparse.Namespace) -> int:
    """Write the new item and say where it is. Raises Stop (status 2) when the kind or the id will not do."""
    try:
        paths = new_item(RULES, options.kind, options.id)
    except ValueError as fault:
        raise Stop(str(fault), 2) from None
    for path in paths:
        print(path)
    print(what_next(options.kind, options.id))
    return 0
