"""The engine against a slow, separately written reference on random tables, and its promises as properties."""

import random

import pytest

from generator.answers.tables import candidates_for, tables_for
from generator.calculators.asking import ask_next
from generator.calculators.changes import with_number
from generator.calculators.engine import decide, decide_again, decide_all, states_of
from generator.calculators.facts import ASSUMED, UNKNOWN, Facts
from generator.calculators.tables import decided_of
from generator.reading.tables import Decision, Span
from tests import made_tables as made
from tests.engine import reference

TABLES = 2_000
BATCHES = 10
WIDE = 40


def known_of(facts: Facts) -> dict[str, float]:
    """The known facts as the reference takes them."""
    return {fact: x for fact, x, status in zip(facts.ids, facts.numbers, facts.statuses) if status >= ASSUMED}


def cases(seed: int, count: int):
    """Random chains with random facts: (rng, chain, tables, facts)."""
    rng = random.Random(seed)
    for _ in range(count):
        chain = made.random_chain(rng)
        yield rng, chain, tables_for(chain.book, chain.top), made.random_facts(
            rng, chain.book, rng.choice((0.0, 0.5, 0.8, 1.0))
        )


@pytest.mark.parametrize("batch", range(BATCHES))
def test_the_engine_says_what_the_reference_says(batch, amount, told):
    """Outcomes left, what is not covered and the rows that may apply are the same for every table of the chain."""
    for _, chain, tables, facts in cases(batch, amount(TABLES, 3 * TABLES)):
        for table, one in zip(tables, decide_all(tables, facts)):
            said = reference.say(chain.book, table.id, known_of(facts))
            assert {table.outcomes[k].id for k in one.possible} == said.outcomes
            assert (one.gap, one.settled) == (said.gap, said.settled)
            assert {table.rows[r].id for r in one.rows} == said.rows
            told(1, "random tables, decided as the slow reference decides them")


@pytest.mark.parametrize("known", [0.0, 0.3, 0.7])
def test_many_facts_are_weighed_as_the_reference_weighs_them(known, told):
    """Nine facts, of which most may be unknown: the sums that the engine keeps are those of every combination."""
    rng = random.Random(f"weighing {known}")
    for _ in range(WIDE):
        book = made.rulebook(made.small_facts(9), {"weighing": made.weighing(rng, 9)})
        facts = made.random_facts(rng, book, known)
        (table,) = tables_for(book, "weighing")
        one, said = decide(table, facts, []), reference.say(book, "weighing", known_of(facts))
        assert ({table.outcomes[k].id for k in one.possible}, one.gap) == (said.outcomes, said.gap)
        assert {table.rows[r].id for r in one.rows} == said.rows
        told(1, "random tables of many weights, decided as the slow reference decides them")


def test_sixteen_unknown_facts_stay_little_work():
    """The states kept for a table of single cells are its sums: never more than they can be, however many facts are unknown."""
    facts = made.small_facts(16)
    (table,) = tables_for(made.rulebook(facts, {"weighing": lone(facts)}), "weighing")
    states = states_of(table, [column.points for column in table.columns])
    assert sorted(state.total for state in states) == [float(k) for k in range(17)]


def lone(facts: dict) -> Decision:
    """A table that gives each fact one row of weight 1."""
    rows = [made.row(f"R{k}", [made.cell(one, 1.0, True, 1.0, True)], "", 1.0) for k, one in enumerate(facts.values())]
    return made.decision("weighing", "collect", list(facts), rows, 1, [(Span(-made.FAR, True, made.FAR, True),)])


def test_what_an_answer_rests_on_is_enough_for_it():
    """Forgetting every other fact leaves the same outcomes possible, as long as every table covers what is then possible."""
    for _, chain, tables, facts in cases(100, 2000):
        one = decided_of(decide_all(tables, facts), chain.top)
        statuses = [status if fact in one.rests_on else UNKNOWN for fact, status in zip(facts.ids, facts.statuses)]
        again = decided_of(decide_all(tables, Facts(facts.ids, facts.numbers, statuses)), chain.top)
        overlapping = any(decision.policy == "one_row" for decision in chain.book.decisions.values())
        assert overlapping or again.gap or again.possible == one.possible


def test_asking_what_is_named_always_comes_to_an_end():
    """Answering each question settles the table or shows that it is not covered; no known fact is ever asked."""
    for rng, chain, tables, facts in cases(200, 500):
        for _ in range(len(facts.ids) + 1):
            decided = decide_all(tables, facts)
            one = decided_of(decided, chain.top)
            asked = ask_next(tables, facts, decided, chain.top)
            if one.settled or asked == "":
                break
            assert asked in one.open
            index = facts.ids.index(asked)
            facts = with_number(facts, asked, made.random_number(rng, chain.book.facts[asked]))
            facts.statuses[index] = ASSUMED
        assert one.settled or one.gap


def test_deciding_again_after_one_fact_is_deciding_all():
    """Whatever the fact becomes, also where it was unknown: tables that do not rest on it need no second look."""
    for rng, chain, tables, facts in cases(BATCHES + 3, WIDE * 10):
        fact = rng.choice(facts.ids)
        changed = with_number(facts, fact, rng.choice(reference.grid(chain.book, fact)))
        assert decide_again(tables, changed, decide_all(tables, facts), fact) == decide_all(tables, changed)


def test_the_values_tried_find_the_nearest_flip_on_the_grid():
    """No half step nearer than the nearest flip among the candidates gives another settled outcome."""
    for _, chain, tables, facts in cases(300, 500):
        before = decided_of(decide_all(tables, facts), chain.top)
        for fact in before.rests_on if before.settled else ():
            tried = next(one.numbers for one in candidates_for(chain.book, chain.top) if one.fact == fact)
            assert nearest(tables, facts, chain.top, fact, tried) == nearest(
                tables, facts, chain.top, fact, reference.grid(chain.book, fact)
            )


def nearest(tables, facts: Facts, top: str, fact: str, numbers: list[float]) -> float | None:
    """How far away the nearest flip among the numbers is."""
    now = facts.numbers[facts.ids.index(fact)]
    before = decided_of(decide_all(tables, facts), top).outcome
    others = [(x, decided_of(decide_all(tables, with_number(facts, fact, x)), top)) for x in numbers]
    return min((abs(x - now) for x, one in others if one.settled and one.outcome != before), default=None)
