"""What decision tables say of things that a calculator works out itself.

A calculator gathers facts with `given` and `left_out`, and asks one table with `ask`. The table may be asked many times, each time of
another thing: of each cane in turn, say. Its rows stay in rules/decisions/, with their sources and worked examples.
"""

from dataclasses import dataclass

from generator.calculators.answer import Reason, reasons_of
from generator.calculators.engine import decide_all
from generator.calculators.facts import COMPUTED, ENTERED, NOT_ASKED, Facts, Maybe
from generator.calculators.say import Say
from generator.calculators.tables import NO_OUTCOME, Outcome, Table, decided_of, table_of


@dataclass(frozen=True)
class Told:
    """What a table said. settled is false while several outcomes are possible; then place is -1, outcome and row are "", says is
    empty, and lacks names the facts that would tell. reasons are the rows of this table alone; says is the outcome's sentence, word what
    it is called, action what to do ("" for none)."""

    table: str
    settled: bool
    place: int
    outcome: str
    row: str
    says: Say
    word: str
    action: str
    lacks: list[str]
    reasons: list[Reason]


def no_facts() -> Facts:
    """Nothing known yet."""
    return Facts([], [], [])


def given(facts: Facts, fact: str, x: float) -> Facts:
    """The facts and one more that is known: a number in SI, the place of a choice, or 1 for yes and 0 for no."""
    return Facts(facts.ids + [fact], facts.numbers + [x], facts.statuses + [ENTERED])


def given_yes(facts: Facts, fact: str, yes: bool) -> Facts:
    """The facts and a yes or no."""
    return given(facts, fact, 1.0 if yes else 0.0)


def maybe_given(facts: Facts, fact: str, x: Maybe) -> Facts:
    """The facts and one that may have been left out."""
    status = ENTERED if x.ok else NOT_ASKED
    return Facts(facts.ids + [fact], facts.numbers + [x.number], facts.statuses + [status])


def worked_out(facts: Facts, fact: str, told: Told) -> Facts:
    """The facts and one whose choices are the outcomes of a table, in their order: what the table said, unknown where that is open."""
    status = COMPUTED if told.settled else NOT_ASKED
    return Facts(facts.ids + [fact], facts.numbers + [float(max(0, told.place))], facts.statuses + [status])


def ask(tables: list[Table], name: str, facts: Facts) -> Told:
    """What a table says, after the tables that feed it. A fact that was not given counts as not known.

    Raises ValueError when the table, or one that feeds it, is not there, or the feeding one stands behind it.
    """
    needed = feeding(tables, name)
    decided = decide_all(needed, with_all(needed, facts))
    table = table_of(needed, name)
    one = decided_of(decided, name)
    if not one.settled:
        return Told(name, False, NO_OUTCOME, "", "", Say("", [], []), "", "", one.open, [])
    outcome: Outcome = table.outcomes[one.outcome]
    row = table.rows[one.rows[0]].id if len(one.rows) == 1 else ""
    return Told(name, True, one.outcome, outcome.id, row, Say(outcome.says, [], []), outcome.word, outcome.action, [], reasons_of(table, decided))


def joined(reasons: list[Reason], told: Told) -> list[Reason]:
    """The reasons and those of an answer whose rows are not among them."""
    return reasons + [one for one in told.reasons if not any(other.table == one.table and other.row == one.row for other in reasons)]


def feeding(tables: list[Table], name: str) -> list[Table]:
    """The table and those that feed it, in the order in which they are given."""
    wanted = [name]
    found: list[Table] = []
    for k in range(len(tables)):
        table = tables[len(tables) - 1 - k]
        if table.id in wanted:
            found = [table] + found
            wanted = wanted + [column.fact for column in table.columns if column.derived]
    return found


def with_all(tables: list[Table], facts: Facts) -> Facts:
    """The facts and, as not asked, every base fact that the tables ask and that is not among them."""
    filled = facts
    for table in tables:
        for column in table.columns:
            if not column.derived and column.fact not in filled.ids:
                filled = maybe_given(filled, column.fact, Maybe(False, 0.0))
    return filled
