"""The engine decides tables alike in Python, V8 and QuickJS-ng: the guide's own at every stretch, and random chains."""

import random
from itertools import product

from generator.answers.specs import fact_specs
from generator.answers.tables import base_facts, candidates_for, feeding_order, table, tables_for
from generator.calculators.answer import answer
from generator.calculators.changes import would_change
from generator.calculators.engine import decide
from generator.calculators.facts import COMPUTED, ENTERED, Facts
from generator.calculators.tables import COLLECT, Decided, Table
from tests import made_tables as made
from tests.parity.compare import compare, sample

# Of tables of rows in order every cell is read; of those that collect, a part.
MOST_CELLS, PART = 20_000, 5_000


def combinations(one: Table, rng: random.Random) -> list[tuple[float, ...]]:
    """Every combination of the table's points; of a table that collects, whose rows add up each on its own, a part drawn by
    chance where there are too many (all of them are read in Python, tests/engine/test_real_tables.py)."""
    every = list(product(*(column.points for column in one.columns)))
    return rng.sample(every, PART) if one.policy == COLLECT and len(every) > PART else every


def at_stretches(one: Table, combinations: list[tuple[float, ...]]) -> list[list]:
    """The arguments of `decide` at combinations of the table's points, what feeds it taken as settled."""
    names = [column.fact for column in one.columns if not column.derived]
    cases = []
    for values in combinations:
        pairs = list(zip(one.columns, values))
        facts = Facts(names, [x for column, x in pairs if not column.derived], [ENTERED] * len(names))
        fed = [
            Decided(column.fact, True, int(x), [int(x)], False, [], [], [], [], COMPUTED)
            for column, x in pairs
            if column.derived
        ]
        cases.append([one, facts, fed])
    return cases


def test_every_cell_of_the_guide_s_tables(rulebook, calculators_run, raised, rng, expect_same, told):
    """All combinations of all tables, but for those that weigh many facts: a table of rows in order that has grown past the
    limit fails here and wants its limit thought over."""
    for decision in rulebook.decisions.values():
        made_table = table(rulebook, decision)
        cases = at_stretches(made_table, combinations(made_table, rng))
        assert len(cases) <= MOST_CELLS, f"{decision.id} has {len(cases)} cells, more than are read here"
        calls = sample(decide, cases, raised)
        expect_same([compare(calls, run) for run in calculators_run.values()])
        told(len(cases), "cells of the guide's tables, the same in both languages", of=len(cases))


def test_answers_of_the_guide_s_decisions(rulebook, calculators_run, raised, rng, amount, expect_same):
    """Whole answers and what would change them, on random facts of which some are unknown."""
    for name in rulebook.decisions:
        specs = fact_specs(rulebook, base_facts(rulebook, feeding_order(rulebook, name)))
        given = (tables_for(rulebook, name), specs, candidates_for(rulebook, name))
        compare_answers(
            [(*given, some_facts(rng, specs), name) for _ in range(amount(20, 300))], calculators_run, raised, expect_same
        )


def test_answers_of_random_chains(calculators_run, raised, rng, amount, expect_same):
    """The same on chains of tables of every policy and kind of fact."""
    cases = []
    for _ in range(amount(300, 4_000)):
        chain = made.random_chain(rng)
        book, facts = chain.book, made.random_facts(rng, chain.book, 0.7)
        cases.append((tables_for(book, chain.top), fact_specs(book), candidates_for(book, chain.top), facts, chain.top))
    compare_answers(cases, calculators_run, raised, expect_same)


def test_answers_where_many_facts_are_weighed(calculators_run, raised, rng, amount, expect_same):
    """Tables of nine facts that are weighed, from nothing known to nearly all."""
    cases = []
    for _ in range(amount(60, 600)):
        book = made.rulebook(made.small_facts(9), {"weighing": made.weighing(rng, 9)})
        facts = made.random_facts(rng, book, rng.choice((0.0, 0.3, 0.9)))
        cases.append((tables_for(book, "weighing"), fact_specs(book), candidates_for(book, "weighing"), facts, "weighing"))
    compare_answers(cases, calculators_run, raised, expect_same)


def compare_answers(cases: list[tuple], runs, raised, expect_same) -> None:
    """answer and would_change on cases of (tables, specs, candidates, facts, decision)."""
    answers = sample(answer, [[tables, specs, facts, name] for tables, specs, _, facts, name in cases], raised)
    changes = sample(would_change, [[tables, specs, facts, tried, name] for tables, specs, tried, facts, name in cases], raised)
    expect_same([compare(calls, run) for run in runs.values() for calls in (answers, changes)])


def some_facts(rng: random.Random, specs) -> Facts:
    """Three of four facts known, anywhere in their range on their step."""
    numbers = [min(spec.high, spec.low + spec.step * rng.randint(0, int((spec.high - spec.low) / spec.step))) for spec in specs]
    return Facts([spec.id for spec in specs], numbers, [rng.choice((0, 1, 4, 4, 4, 3, 2, 4)) for _ in specs])
