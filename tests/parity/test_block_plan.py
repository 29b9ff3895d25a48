"""The whole plan is the same in Python, V8 and QuickJS-ng, bit for bit: numbers, sentences' ids, drawing and the next question."""

import random

from generator.answers.given import given
from generator.answers.plans import plan_tables
from generator.answers.specs import fact_specs
from generator.calculators.block_plan import block_plan
from generator.calculators.facts import ENTERED, NOT_ASKED, UNKNOWN, Facts
from generator.calculators.plan_records import BlockPlanValues
from generator.calculators.specs import with_defaults
from generator.reading.rulebook import Rulebook
from tests.parity.compare import compare, sample
from tests.parity.engines import ENGINES
from tests.parity.inputs import of_fact, values_of

NORMAL, DEEP = 500, 5_000
BATCH = 100


def some_facts(rng: random.Random, rulebook: Rulebook, edge: bool) -> Facts:
    """A block: a stored one of which some facts are other or unknown, or one of which every fact is random."""
    stored = given(rulebook, list(rulebook.facts), rng.choice(list(rulebook.blocks.values())).facts).facts
    kept = rng.choice((0.0, 0.6, 0.95))
    numbers, statuses = list(stored.numbers), list(stored.statuses)
    for index, name in enumerate(stored.ids):
        if rng.random() >= kept:
            numbers[index] = float(of_fact(rng, rulebook.facts[name], float, edge))
            statuses[index] = rng.choice((ENTERED, ENTERED, ENTERED, ENTERED, UNKNOWN, NOT_ASKED))
    return with_defaults(fact_specs(rulebook), Facts(stored.ids, numbers, statuses))


def test_same_plans(rulebook, calculators_run, raised, rng, amount, expect_same, told):
    """No difference over blocks with much and little known, ordinary and at the edges; one plan in ten or more comes to its drawing."""
    tables = plan_tables(rulebook)
    total = amount(NORMAL, DEEP)
    drawn = 0
    for start in range(0, total, BATCH):
        cases = [plan_case(rng, rulebook, tables, turn) for turn in range(start, min(total, start + BATCH))]
        calls = sample(block_plan, cases, raised)
        reports = [compare(calls, calculators_run[engine]) for engine in ENGINES]
        expect_same(reports)
        assert not any(report.stopped for report in reports)
        told(len(cases), "whole plans of random blocks, the same in both languages")
        drawn += sum('"scircle"' in one for one in calls.ours)
    assert drawn > total // 10


def plan_case(rng: random.Random, rulebook: Rulebook, tables: list, turn: int) -> list:
    """The arguments of one plan."""
    edge = bool(turn % 2)
    values = values_of(rng, rulebook, BlockPlanValues, edge)
    return [some_facts(rng, rulebook, edge), values, tables]
