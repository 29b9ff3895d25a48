"""Calculators ask decision tables about what they work out: what is known, what is not, and what feeds."""

from generator.answers.tables import table
from generator.calculators.facts import Maybe
from generator.calculators.table_answers import ask, given, given_yes, joined, maybe_given, no_facts, worked_out
from generator.calculators.tables import Table
from tests import made_tables as made

FROST, CANE = made.fact("frost", "yes_no"), made.fact("cane", "choice", 3)
YES, NO = made.cell(FROST, 1.0, True, 1.0, True), made.cell(FROST, 0.0, True, 0.0, True)
SORTED = made.decision("sorted", "first_row", ["frost"], [made.row("A1", [YES], "o2"), made.row("A2", [], "o0")], 3)
CHOSEN = made.decision("chosen", "first_row", ["cane"], [made.row("B1", [made.cell(CANE, 2.0, True, 2.0, True)], "o1"), made.row("B2", [], "o0")], 2)
BOOK = made.rulebook({"frost": FROST, "cane": CANE}, {"sorted": SORTED, "chosen": CHOSEN})


def tables() -> list[Table]:
    """Both tables as the engine has them."""
    return [table(BOOK, SORTED), table(BOOK, CHOSEN)]


def test_a_table_says_outcome_and_row():
    """Of a fact that is known."""
    told = ask(tables(), "sorted", given_yes(no_facts(), "frost", True))
    assert (told.settled, told.place, told.outcome, told.row, told.says.id) == (True, 2, "o2", "A1", "sorted.says.o2")
    assert [(one.table, one.row) for one in told.reasons] == [("sorted", "A1")]


def test_what_was_left_out_is_named():
    """A fact that was never given and one that may be left out are both not known."""
    for facts in (no_facts(), maybe_given(no_facts(), "frost", Maybe(False, 1.0))):
        told = ask(tables(), "sorted", facts)
        assert (told.settled, told.place, told.outcome, told.lacks, told.reasons) == (False, -1, "", ["frost"], [])


def test_an_answer_is_a_fact_of_the_next_table():
    """Its place among the outcomes is the place of the choice; an open one stays unknown."""
    known = ask(tables(), "sorted", given(no_facts(), "frost", 1.0))
    assert ask(tables(), "chosen", worked_out(no_facts(), "cane", known)).outcome == "o1"
    unknown = ask(tables(), "sorted", no_facts())
    assert ask(tables(), "chosen", worked_out(no_facts(), "cane", unknown)).lacks == ["cane"]


def test_a_row_that_spoke_twice_is_told_once():
    """A table may be asked of each of several things."""
    frost = ask(tables(), "sorted", given_yes(no_facts(), "frost", True))
    none = ask(tables(), "sorted", given_yes(no_facts(), "frost", False))
    reasons = joined(joined(joined([], frost), none), frost)
    assert [one.row for one in reasons] == ["A1", "A2"]
