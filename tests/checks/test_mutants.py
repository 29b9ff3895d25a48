"""Every small mistake in a table of the guide is caught by a worked example or by a proof."""

from dataclasses import replace

from generator.reading.rulebook import Rulebook
from generator.reading.tables import Example, Span
from tests import made_tables as made
from tests.checks import mutants

# Mistakes that nothing catches, each with the reason; one that is caught after all must be taken out.
SURVIVE: dict[str, str] = {}


def test_every_mistake_is_caught(rulebook, told):
    """Boundaries moved a step, choices, outcomes and weights changed, rows taken away: what changes nothing that can be is no
    mistake."""
    planted = list(mutants.mutants(rulebook))
    alive = [one for one in planted if mutants.survives(rulebook, one)]
    survivors = {one.name for one in alive if not mutants.is_no_mistake(rulebook, one)}
    told(len(planted) - len(alive), "mistakes made in the guide's tables, caught", of=len(planted) - len(alive) + len(survivors))
    told(len(alive) - len(survivors), "changes of them that change no answer")
    told(len(SURVIVE), "mistakes excused, with the reason")
    assert survivors == set(SURVIVE)


def test_there_are_mistakes_to_catch(rulebook):
    """Every row of every written table has at least two."""
    rows = sum(len(decision.rows) for decision in rulebook.decisions.values() if not decision.generated)
    assert len(list(mutants.mutants(rulebook))) >= 2 * rows


FROST, LABOUR = made.fact("frost", "yes_no"), made.fact("labour", "choice", 3)
ROWS = [
    made.row("W1", [made.cell(FROST, 1.0, True, 1.0, True)], "", 2.0),
    made.row("W2", [made.cell(LABOUR, 1.0, True, 1.0, True)], "", -1.0),
]
BANDS = [(Span(-made.FAR, True, 1.0, False),), (Span(1.0, True, 2.0, False),), (Span(2.0, True, made.FAR, True),)]
EXAMPLES = [
    ("yes", "labour_0", {"row": "W1", "outcome": "o2"}),
    ("yes", "labour_1", {"row": "W2", "outcome": "o1"}),
    ("no", "labour_0", {"outcome": "o0"}),
    ("yes", "labour_2", {"outcome": "o2"}),
    ("no", "labour_1", {"row": "W2", "outcome": "o0"}),
]


def weighed(examples: list[tuple]) -> Rulebook:
    """A rulebook of one table that weighs two facts, with these worked examples."""
    worked = tuple(
        Example(str(k), {"frost": frost, "labour": labour}, expect, 1) for k, (frost, labour, expect) in enumerate(examples)
    )
    table = made.decision("weighed", "collect", ["frost", "labour"], ROWS, 3, BANDS)
    return made.rulebook({"frost": FROST, "labour": LABOUR}, {"weighed": replace(table, examples=worked)})


def test_mistakes_where_rows_are_weighed_are_made_and_caught():
    """Weights and sums moved by one, signs turned, cells changed, rows taken away: examples on both sides of each sum see it."""
    book = weighed(EXAMPLES)
    planted = list(mutants.mutants(book))
    kinds = ("removed", "weighs 1", "weighs 3", "weighs -2", "frost made with no", "labour made with labour_2", "sum 1 +1", "sum 2 -1")
    assert all(any(one.name.endswith(kind) for one in planted) for kind in kinds)
    assert [one.name for one in planted if mutants.survives(book, one) and not mutants.is_no_mistake(book, one)] == []


def test_a_weight_that_no_example_tries_is_told():
    """Without the examples in which it counts, a row may speak for the other side."""
    book = weighed([one for one in EXAMPLES if one[1] != "labour_1"])
    alive = [one for one in mutants.mutants(book) if mutants.survives(book, one) and not mutants.is_no_mistake(book, one)]
    assert "weighed.W2: weighs 1" in [one.name for one in alive]
