"""Seeded inputs of a calculator from what its facts and values allow: half ordinary, half at the edges of the declared ranges."""

import math
import random
from dataclasses import replace
from typing import Any

from generator.answers.encode import TABLES, asked_tables
from generator.answers.figures import figures
from generator.answers.rows import ROWS, record_of
from generator.calculators.facts import Maybe
from generator.calculators.figures import Figure
from generator.reading.items import Fact, Value
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, RowColumn
from tests.parity.numbers import Maker, fields, signature


FEW = 20


def a_number(rng: random.Random, low: float, high: float, step: float, edge: bool) -> float:
    """A number from low to high: on a step or anywhere; at the edge an end, its neighbour, a half, zero, a tie."""
    anywhere = rng.uniform(low, high)
    if not edge:
        return min(high, max(low, round(anywhere / step) * step)) if rng.random() < 0.7 else anywhere
    ends = [low, high, low + step, high - step, math.nextafter(low, high), math.nextafter(high, low)]
    inner = [math.floor(anywhere) + 0.5, math.floor(anywhere * 8.0) / 8.0, float(round(anywhere)), 0.0, -0.0, 1.0, 100.0, 5e-324]
    near = math.nextafter(math.floor(anywhere) + 0.5, rng.choice([low, high]))
    return min(high, max(low, rng.choice([*ends, *inner, near, anywhere])))


def of_fact(rng: random.Random, fact: Fact, wanted: Any, edge: bool) -> Any:
    """A value of a fact as a calculator takes it: a number, a whole number (an ordinal, a day), yes or no, or left out."""
    if wanted is Maybe:
        left_out = rng.random() < 0.25
        return Maybe(False, 0.0) if left_out else Maybe(True, float(of_fact(rng, fact, float, edge)))
    if wanted is bool:
        return rng.random() < 0.5
    low, high = limits(fact)
    x = a_number(rng, low, high, fact.step or 1.0, edge)
    return int(x) if wanted is int else float(math.floor(x)) if fact.kind in ("choice", "whole", "date", "yes_no") else x


def limits(fact: Fact) -> tuple[float, float]:
    """The ends of what a fact may be; a date is a day from 1970 to 2069."""
    if fact.kind == "choice":
        return 0.0, float(max(len(fact.choices), 1) - 1)
    return {"yes_no": (0.0, 1.0), "date": (0.0, 36_500.0)}.get(fact.kind, (fact.low, fact.high))


def of_value(rng: random.Random, value: Value, edge: bool) -> float:
    """A number for a rule value: the followed one in half of the cases, else any that is allowed."""
    if rng.random() < 0.5:
        return value.number
    return a_number(rng, value.low, value.high, (value.high - value.low) / 100 or 1.0, edge)


def of_series(rng: random.Random, facts: list[Fact], edge: bool) -> list[Maybe]:
    """A fact that is asked by node: known from node 1 up to some node, now and then with a gap."""
    last = rng.randint(0, len(facts))
    whole = rng.random() < 0.8
    return [
        Maybe(True, float(of_fact(rng, fact, float, edge))) if fact.node <= last and (whole or rng.random() < 0.9) else Maybe(False, 0.0)
        for fact in facts
    ]


def of_input(rng: random.Random, function: Any, rulebook: Rulebook, name: str, wanted: Any, edge: bool) -> Any:
    """A value of a fact; of what is no fact by its type alone, a text mostly one that the calculator's module names."""
    series = [fact for fact in rulebook.facts.values() if fact.series == name]
    if series:
        return of_series(rng, series, edge)
    form = rulebook.calculators.get(function.__name__)
    if form and form.rows and name == ROWS:
        return of_each(rng, rulebook, form, edge) if form.each else of_rows(rng, function, form, edge)
    if name in rulebook.facts:
        return of_fact(rng, rulebook.facts[name], wanted, edge)
    named = [text for name, text in function.__globals__.items() if name.isupper() and isinstance(text, str)]
    if wanted is str and named and rng.random() < 0.95:
        return rng.choice(named)
    return Maker(rng, endless=False, largest=100.0).value(wanted, edge)


def of_rows(rng: random.Random, function: Any, form: CalculatorForm, edge: bool) -> list[Any]:
    """Rows of a few groups (the first column: canes) at a few places (the second: nodes), now and then none; the other columns mostly 0
    or 1, at the edge anything allowed. Nine cases of ten hold no row that the calculator calls wrong."""
    (group, place, *others), wrong = form.rows, function.__globals__["row_faults"]
    groups, places = rng.randint(0, 5), rng.randint(1, min(9, place.high))
    first, start, sound = rng.choice([1, 1, 1, group.low]), rng.choice([1, 1, 1, place.low]), rng.random() < 0.9
    record, rows = record_of(form), []
    for where in [(g + first, p + start) for g in range(groups) for p in range(places) if rng.random() < 0.9]:
        ends = {group.id: where[0], place.id: min(place.high, where[1])}
        row = record(**ends, **{one.id: of_column(rng, one, edge) for one in others})
        while sound and wrong(row):
            row = replace(row, **{one.id: of_column(rng, one, edge) for one in others})
        rows.append(row)
    return rows


def of_each(rng: random.Random, rulebook: Rulebook, form: CalculatorForm, edge: bool) -> list[Any]:
    """Rows that stand for canes or vines: mostly a few, now and then none or too many."""
    record = record_of(form)
    wanted, own = fields(record), {one.id: one for one in form.rows if not one.fact}
    amount = rng.choice([0, 1, 2, 2, 3, 3, 4, 5, 6, 8, 9])

    def cell(name: str, kind: Any) -> Any:
        """A fact, or a column of the calculator's own."""
        return of_own(rng, own[name], kind, edge) if name in own else of_fact(rng, rulebook.facts[name], kind, edge)

    return [record(**{name: cell(name, kind) for name, kind in wanted.items()}) for _ in range(amount)]


def of_own(rng: random.Random, column: RowColumn, kind: Any, edge: bool) -> Any:
    """A count of a column: any that is allowed where every row has one or may lack it, else mostly none."""
    x = rng.randint(column.low, column.high) if column.needed or kind is Maybe else of_column(rng, column, edge)
    return Maybe(True, float(x)) if kind is Maybe and rng.random() < 0.8 else Maybe(False, 0.0) if kind is Maybe else x


def of_column(rng: random.Random, column: RowColumn, edge: bool) -> int:
    """A whole number that the column allows."""
    if edge and rng.random() < 0.1:
        return rng.choice([column.low, column.high, rng.randint(column.low, column.high)])
    return column.low if rng.random() < 0.75 else min(column.high, column.low + rng.choice([1, 1, 1, 2, 5]))


def a_case(rng: random.Random, function: Any, rulebook: Rulebook, edge: bool) -> list:
    """The arguments of a calculator: its inputs and its values."""
    (inputs, values), _ = signature(function)
    asked = {name: of_input(rng, function, rulebook, name, wanted, edge) for name, wanted in fields(inputs).items()}
    return [inputs(**asked), values_of(rng, rulebook, values, edge, function.__name__)]


def some_cases(rng: random.Random, function: Any, rulebook: Rulebook, count: int) -> list[list]:
    """So many calls, every second one at the edge. A calculator that asks tables gets one of a few records of values again and again, so
    that its tables, which travel with them, travel a few times only."""
    cases = [a_case(rng, function, rulebook, edge=bool(turn % 2)) for turn in range(count)]
    if TABLES in fields(signature(function)[0][1]):
        return [[inputs, cases[turn % FEW][1]] for turn, (inputs, _) in enumerate(cases)]
    return cases


def values_of(rng: random.Random, rulebook: Rulebook, values: Any, edge: bool, calculator: str = "") -> Any:
    """A Values record: a number for each rule value, or its list of figures with other numbers in them; the tables of the calculator as they are written."""
    tables = {TABLES: asked_tables(rulebook, calculator)} if TABLES in fields(values) else {}
    made = {
        name: of_value(rng, rulebook.values[name], edge) if wanted is float else of_figures(rng, rulebook, rulebook.values[name], edge)
        for name, wanted in fields(values).items()
        if name not in tables
    }
    return values(**made, **tables)


def of_figures(rng: random.Random, rulebook: Rulebook, value: Value, edge: bool) -> list[Figure]:
    """A value's figures: as written in half of the cases, else with any numbers that are allowed."""
    written = figures(rulebook, value)
    if rng.random() < 0.5:
        return written
    return [replace(one, number=a_number(rng, value.low, value.high, (value.high - value.low) / 100 or 1.0, edge)) for one in written]
