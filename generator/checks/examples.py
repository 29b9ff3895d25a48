"""Every worked example of a table comes out as its author says.

Worked examples are the author's own test: facts as they would be entered, and what must come out. Give them in pairs on
both sides of a boundary. `expect` is an outcome; or the row with the outcome; or, where the facts leave it open, the
outcomes left and the fact to ask next. A fact that is left out was not asked; `unknown` was asked in vain. An example
may give the answer of a feeding table.

Wrong:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: one_row
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down.}
      - {id: good, label: Good, says: The cane can be laid down.}
    rows:
      - {id: K1, when: {cane_diameter_mm: under 6}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: 6 or more}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A cane of exactly 6 mm is too thin, facts: {cane_diameter_mm: 6}, expect: thin}

Right:

    # decisions/cane_thickness.yml
    title: Thickness of the cane
    question: Is the cane thick enough to lay down?
    why: Thin canes carry few bunches.
    stage: assess
    policy: one_row
    facts: [cane_diameter_mm]
    outcomes:
      - {id: thin, label: Too thin, says: The cane is too thin to lay down.}
      - {id: good, label: Good, says: The cane can be laid down.}
    rows:
      - {id: K1, when: {cane_diameter_mm: under 6}, then: thin, because: Thin wood is short of reserves., standing: common_practice}
      - {id: K2, when: {cane_diameter_mm: 6 or more}, then: good, because: Thick wood has reserves., standing: common_practice}
    examples:
      - {name: A cane of exactly 6 mm is good, facts: {cane_diameter_mm: 6}, expect: {row: K2, outcome: good}}
      - {name: Nobody measured, facts: {cane_diameter_mm: unknown}, expect: {unsettled: [thin, good], ask_next: cane_diameter_mm}}
"""

from collections.abc import Iterator
from dataclasses import dataclass

from generator.answers.border import BadValue, to_number
from generator.answers.given import BadInput, given
from generator.answers.tables import base_facts, column_spec, feeding_order, tables_for
from generator.calculators.asking import ask_next
from generator.calculators.engine import decide
from generator.calculators.facts import COMPUTED
from generator.calculators.tables import Decided, Table
from generator.checks.shape import Check, at, listed
from generator.problems import Problem
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision, Example


@dataclass(frozen=True)
class Came:
    """What came out of an example: outcomes left, the rows that may apply, and the fact to ask next."""

    outcomes: list[str]
    rows: list[str]
    settled: bool
    ask_next: str


def check(rulebook: Rulebook) -> Iterator[Problem]:
    """A problem for each example that comes out otherwise, and for each table without an example."""
    for decision in rulebook.decisions.values():
        if not decision.examples and not decision.generated:
            yield at(decision, f"The table `{decision.id}` has no worked example.", "Write one on each side of every boundary.")
        tables = tables_for(rulebook, decision.id)
        for example in decision.examples:
            for sentence, step in _faults(rulebook, decision, tables, example):
                yield at(decision, f"Worked example “{example.name}”: {sentence}", step, example.line)


def _faults(rulebook: Rulebook, decision: Decision, tables: list[Table], example: Example) -> Iterator[tuple[str, str]]:
    """What is wrong with one example."""
    try:
        came = _run(rulebook, decision, tables, example)
    except BadInput as bad:
        for fault in bad.faults:
            yield f"{fault.removesuffix('.')}.", "Write the facts as they would be entered."
        return
    except BadValue as bad:
        yield f"{bad}.", "Write the answer of a feeding table as one of its outcomes."
        return
    yield from _compare(decision, example.expect, came)


def _run(rulebook: Rulebook, decision: Decision, tables: list[Table], example: Example) -> Came:
    """Decides the example; feeding tables whose answer is given are not decided. Raises BadInput, BadValue."""
    fed = {name: raw for name, raw in example.facts.items() if name in rulebook.decisions}
    asked = base_facts(rulebook, feeding_order(rulebook, decision.id))
    facts = given(rulebook, asked, {name: raw for name, raw in example.facts.items() if name not in fed})
    decided: list[Decided] = []
    for table in tables:
        if table.id in fed and fed[table.id] != "unknown":
            place = int(to_number(column_spec(rulebook, table.id), fed[table.id]))
            decided.append(Decided(table.id, True, place, [place], False, [], [], [], [], COMPUTED))
        else:
            decided.append(decide(table, facts.facts, decided))
    one, table = decided[-1], tables[-1]
    return Came(
        [table.outcomes[k].id for k in one.possible],
        [table.rows[r].id for r in one.rows],
        one.settled,
        "" if one.settled else ask_next(tables, facts.facts, decided, decision.id),
    )


def _compare(decision: Decision, expect: dict, came: Came) -> Iterator[tuple[str, str]]:
    """Where an example and what came out differ."""
    outcomes = [outcome.id for outcome in decision.outcomes]
    for name in [expect.get("outcome"), *expect.get("unsettled", [])]:
        if name is not None and name not in outcomes:
            yield f"there is no outcome `{name}`.", suggestion(str(name), outcomes)
            return
    if "unsettled" in expect:
        if came.settled or set(expect["unsettled"]) != set(came.outcomes):
            yield f"it should be open between {listed(list(expect['unsettled']))}, but {_came(came)}.", _mend(came)
        elif expect.get("ask_next", came.ask_next) != came.ask_next:
            yield f"it should ask `{expect['ask_next']}` next, but asks `{came.ask_next}`.", _mend(came)
        return
    if not came.settled or came.outcomes != [expect.get("outcome", came.outcomes[0])]:
        yield f"it should give `{expect.get('outcome', expect.get('row'))}`, but {_came(came)}.", _mend(came)
    elif expect.get("row", came.rows[0] if came.rows else None) not in [*came.rows, None]:
        yield f"row {expect['row']} should give it, but {_came(came)}.", _mend(came)


def _came(came: Came) -> str:
    """What came out, in words."""
    by = f" by {'row' if len(came.rows) == 1 else 'rows'} {listed(came.rows)}" if came.rows else ""
    if came.settled:
        return f"it gives `{came.outcomes[0]}`{by}"
    if not came.outcomes:
        return "no row covers it"
    asked = f", asking `{came.ask_next}` next" if came.ask_next else " and is not covered altogether"
    return f"it is open between {listed(came.outcomes)}{asked}"


def _mend(came: Came) -> str:
    """What an author can do."""
    where = f"{'row' if len(came.rows) == 1 else 'rows'} {listed(came.rows)}" if came.rows else "the table"
    return f"Correct the example, or {where}."


CHECK = Check("examples", "Every worked example of a table comes out as its author says.", check)
