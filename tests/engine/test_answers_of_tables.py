"""What an answer shows: headline, reasons, what it rests on, what to ask next, what would change it."""

from dataclasses import replace

from generator.answers.specs import fact_specs
from generator.answers.tables import candidates_for, tables_for
from generator.calculators.answer import answer
from generator.calculators.changes import would_change
from generator.calculators.facts import ASSUMED, ENTERED, NOT_ASKED, UNKNOWN, Facts
from generator.calculators.guard import faults
from generator.calculators.say import Say
from generator.reading.tables import Span
from tests import made_tables as made

ALPHA, BETA, GAMMA = made.fact("alpha", "number"), made.fact("beta", "choice", 3), made.fact("gamma", "yes_no")


def over(fact, low: float):
    """The cell `low or more`."""
    return made.cell(fact, low, True, made.FAR, False)


def is_(fact, k: int):
    """The cell of one choice."""
    return made.cell(fact, float(k), True, float(k), True)


FEED = made.decision("feed", "first_row", ["alpha"], [made.row("F1", [over(ALPHA, 3.0)], "o1"), made.row("F2", [], "o0")], 2)
TOP_ROWS = [made.row("T1", [is_(made.derived(FEED), 1), is_(BETA, 2)], "o1"), made.row("T2", [], "o0")]
TOP = made.decision("top", "first_row", ["feed", "beta", "gamma"], TOP_ROWS, 2)
BOOK = made.rulebook({one.id: one for one in (ALPHA, BETA, GAMMA)}, {"feed": FEED, "top": TOP})
SPECS, TABLES = fact_specs(BOOK), tables_for(BOOK, "top")


def facts(alpha: float | None, beta: float | None, alpha_status: int = ENTERED) -> Facts:
    """Facts of which None are unknown; gamma is never asked."""
    numbers = [alpha or 0.0, beta or 0.0, 0.0]
    return Facts(
        ["alpha", "beta", "gamma"],
        numbers,
        [UNKNOWN if alpha is None else alpha_status, UNKNOWN if beta is None else ENTERED, NOT_ASKED],
    )


def test_a_settled_answer_gives_its_reasons_its_own_first():
    """The row of the table stands before the row of the table that feeds it; steps run the other way."""
    found = answer(TABLES, SPECS, facts(4.0, 2.0), "top")
    assert [(one.table, one.row) for one in found.reasons] == [("top", "T1"), ("feed", "F1")]
    assert found.headline == Say("top.says.o1", [], [])
    assert [step.words[0] for step in found.steps] == ["decision.feed", "decision.top"]


def test_the_status_is_the_weakest_of_what_it_rests_on():
    """An assumed fact makes the whole answer an assumed one, and is worded as such."""
    found = answer(TABLES, SPECS, facts(4.0, 2.0, ASSUMED), "top")
    assert found.status == "assumed"
    assert [(rest.fact, rest.status, rest.says.id) for rest in found.rests_on] == [
        ("alpha", "assumed", "answers.assumed"),
        ("beta", "entered", "answers.rests_on"),
    ]


def test_one_fact_that_rules_a_row_out_is_enough():
    """With the wrong choice the feeding table does not matter, known or not."""
    found = answer(TABLES, SPECS, facts(None, 1.0), "top")
    assert (found.outcome, [rest.fact for rest in found.rests_on]) == ("o0", ["beta"])


def test_an_open_answer_names_the_fact_to_find_out():
    """A derived fact passes the question on to the fact that decides it; one that changes nothing is not asked."""
    found = answer(TABLES, SPECS, facts(None, 2.0), "top")
    assert (found.settled, found.possible, found.ask_next, found.status) == (False, ["o0", "o1"], "alpha", "unknown")
    assert found.headline == Say("answers.unsettled", [], ["fact.alpha"])


def test_a_fact_that_settles_nothing_is_asked_last():
    """Asked in vain, a fact that would settle it still comes before one that was not asked and changes no outcome."""
    rows = [made.row("S1", [is_(GAMMA, 1)], "o1"), made.row("S2", [over(ALPHA, 3.0)], "o0"), made.row("S3", [], "o0")]
    book = made.rulebook(BOOK.facts, {"shadow": made.decision("shadow", "first_row", ["alpha", "gamma"], rows, 2)})
    asked = Facts(["alpha", "beta", "gamma"], [0.0] * 3, [NOT_ASKED, NOT_ASKED, UNKNOWN])
    assert answer(tables_for(book, "shadow"), SPECS, asked, "shadow").ask_next == "gamma"


WORKED_OUT = made.rulebook(BOOK.facts | {"alpha": replace(ALPHA, computed_by="some_sum")}, BOOK.decisions)


def test_what_is_worked_out_is_never_asked():
    """Where it alone is missing, the answer says what to work out; where something else would settle it, that is asked instead."""
    tables, specs = tables_for(WORKED_OUT, "top"), fact_specs(WORKED_OUT)
    found = answer(tables, specs, facts(None, 2.0), "top")
    assert (found.settled, found.covered, found.ask_next) == (False, True, "")
    assert found.headline == Say("answers.to_work_out", [], ["fact.alpha"])
    assert answer(tables, specs, facts(None, None), "top").ask_next == "beta"


def test_less_than_a_whole_outcome_does_not_change_the_order_of_the_walk():
    """Beta leaves 2, 1 and 1 outcomes, gamma 1 and 2: on average 1.33 and 1.5. Neither is a whole one better, so the table's order holds."""
    rows = [made.row("O1", [is_(BETA, 0), is_(GAMMA, 1)], "o1"), made.row("O2", [], "o0")]
    for order in (["beta", "gamma"], ["gamma", "beta"]):
        book = made.rulebook(BOOK.facts, {"walk": made.decision("walk", "first_row", order, rows, 2)})
        nothing = Facts(["alpha", "beta", "gamma"], [0.0] * 3, [NOT_ASKED] * 3)
        assert answer(tables_for(book, "walk"), SPECS, nothing, "walk").ask_next == order[0]


def test_what_would_change_it_really_flips():
    """Of a number the nearest value on its step, of a choice the choice: just under 3 is 2.5 with a step of a half."""
    found = would_change(TABLES, SPECS, facts(4.0, 2.0), candidates_for(BOOK, "top"), "top")
    assert [(one.fact, one.number, one.outcome) for one in found] == [("beta", 0.0, "o0"), ("alpha", 2.5, "o0")]
    assert found[1].says == Say("answers.would_change", [2.5, 4.0], ["fact.alpha", "outcome.top.o0"])


def test_what_stays_with_the_block_would_change_it_last():
    """What holds for one winter comes first; of what stays, the fact that the walk begins with is the very last."""
    rows = [made.row("L1", [over(ALPHA, 3.0), is_(BETA, 2), is_(GAMMA, 1)], "o1"), made.row("L2", [], "o0")]
    book = made.rulebook(BOOK.facts | {"beta": replace(BETA, lifetime="winter")}, {"last": made.decision("last", "first_row", ["alpha", "beta", "gamma"], rows, 2)})
    known = Facts(["alpha", "beta", "gamma"], [4.0, 2.0, 1.0], [ENTERED] * 3)
    found = would_change(tables_for(book, "last"), fact_specs(book), known, candidates_for(book, "last"), "last")
    assert [one.fact for one in found] == ["beta", "gamma", "alpha"]


def test_nothing_would_change_what_is_open():
    """While the answer is open the question is what to find out, not what to change."""
    assert would_change(TABLES, SPECS, facts(None, 2.0), candidates_for(BOOK, "top"), "top") == []


def test_what_no_row_covers_is_said():
    """All facts known and no row: not settled, nothing to ask, not covered."""
    table = made.decision("hole", "one_row", ["alpha"], [made.row("H1", [over(ALPHA, 3.0)], "o0")], 1)
    book = made.rulebook({"alpha": ALPHA}, {"hole": table})
    found = answer(tables_for(book, "hole"), fact_specs(book), Facts(["alpha"], [1.0], [ENTERED]), "hole")
    assert (found.settled, found.covered, found.ask_next) == (False, False, "")
    assert found.headline == Say("answers.not_covered", [], ["decision.hole"])


def test_evidence_is_weighed_by_its_sum():
    """+2 and -1 come to +1, which is `for`; every row that counts is a reason, the heaviest first."""
    rows = [made.row("W1", [over(ALPHA, 3.0)], "", -1.0), made.row("W2", [is_(BETA, 2)], "", 2.0)]
    bands = [(Span(-made.FAR, False, 0.0, True),), (Span(0.0, False, made.FAR, False),)]
    table = made.decision("weigh", "collect", ["alpha", "beta"], rows, 2, bands)
    book = made.rulebook({"alpha": ALPHA, "beta": BETA}, {"weigh": table})
    found = answer(
        tables_for(book, "weigh"), fact_specs(book), Facts(["alpha", "beta"], [4.0, 2.0], [ENTERED, ENTERED]), "weigh"
    )
    assert (found.outcome, [(one.row, one.weight) for one in found.reasons]) == ("o1", [("W2", 2.0), ("W1", -1.0)])


WEIGHING_ROWS = [
    made.row("W0", [is_(GAMMA, 1)], "", 0.0),
    made.row("W1", [over(ALPHA, 3.0)], "", -1.0),
    made.row("W2", [is_(BETA, 2)], "", 2.0),
]
BANDS = [(Span(-made.FAR, False, 0.0, True),), (Span(0.0, False, made.FAR, False),)]
WEIGHING = made.decision("weigh", "collect", ["alpha", "beta", "gamma"], WEIGHING_ROWS, 2, BANDS)
WEIGHING_TABLES = tables_for(made.rulebook(BOOK.facts, {"weigh": WEIGHING}), "weigh")


def test_a_row_of_no_weight_is_said_last_and_neither_rested_on_nor_asked():
    """It speaks for neither side, so nothing about it can change the answer."""
    all_known = Facts(["alpha", "beta", "gamma"], [4.0, 2.0, 1.0], [ENTERED] * 3)
    found = answer(WEIGHING_TABLES, SPECS, all_known, "weigh")
    assert [one.row for one in found.reasons] == ["W2", "W1", "W0"]
    assert [one.fact for one in found.rests_on] == ["alpha", "beta"]
    assert answer(WEIGHING_TABLES, SPECS, facts(None, 2.0), "weigh").ask_next == ""
    assert answer(WEIGHING_TABLES, SPECS, facts(4.0, None), "weigh").ask_next == "beta"


def test_only_what_is_known_to_count_is_a_reason_where_rows_are_weighed():
    """With alpha unknown +2 is enough either way; the row on alpha may count, and is no reason yet."""
    found = answer(WEIGHING_TABLES, SPECS, facts(None, 2.0), "weigh")
    assert (found.outcome, [one.row for one in found.reasons]) == ("o1", ["W2"])


def test_what_has_to_be_done_besides_is_said_with_a_settled_answer():
    """The action of a settled table that feeds it, whether or not the answer rests on it; nothing while the answer is open."""
    work = replace(FEED, outcomes=tuple(replace(one, action="Do it" if one.id == "o1" else "") for one in FEED.outcomes))
    tables = tables_for(made.rulebook(BOOK.facts, {"feed": work, "top": TOP}), "top")
    assert answer(tables, SPECS, facts(4.0, 2.0), "top").also == [Say("answers.also", [], ["action.feed.o1"])]
    assert answer(tables, SPECS, facts(4.0, 1.0), "top").also == [Say("answers.also", [], ["action.feed.o1"])]
    assert answer(tables, SPECS, facts(1.0, 2.0), "top").also == []
    assert answer(tables, SPECS, facts(4.0, None), "top").also == []
    assert answer(tables, SPECS, facts(4.0, 2.0), "feed").also == []


def test_the_guard_says_what_is_wrong_and_what_is_allowed():
    """Out of range, not whole, no such choice; what is unknown is not looked at; infinity is out of range."""
    wrong = Facts(["alpha", "beta", "gamma"], [float("inf"), 3.0, 0.5], [ENTERED, ENTERED, ENTERED])
    assert [fault.says for fault in faults(SPECS, wrong)] == [
        Say("guard.range", [0.0, 6.0], ["fact.alpha"]),
        Say("guard.choice", [], ["fact.beta"]),
        Say("guard.whole", [0.0, 1.0], ["fact.gamma"]),
    ]
    assert faults(SPECS, Facts(["alpha"], [99.0], [UNKNOWN])) == []
