"""The ledger of ids lists every id, and nothing that was ever listed has vanished.

A link, a printed code and a worked exercise of a course may outlive the rule they name. So an id is never used for
something else and never dropped in silence: it is moved to another id, or retired, with the reason. `python3 -m
generator ids` adds what is new.

Wrong:

    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    standing: common_practice
    # ids.yml
    term:
      cane: {since: 2026-11-25}

Right:

    # terms/spur.yml
    term: spur
    definition: A cane cut to a few nodes.
    standing: common_practice
    # ids.yml
    term:
      cane: {since: 2026-11-25}
      spur: {since: 2026-11-25}
"""

from generator.checks.shape import Check
from generator.reading.ledger import ledger_faults

CHECK = Check(
    "ledger",
    "Every id is in the ledger, and none that was ever listed has vanished.",
    lambda rulebook: iter(ledger_faults(rulebook)),
)
