"""The answer of a decision with all that every answer shows: reasons, what it rests on, what to find out next."""

from dataclasses import dataclass

from generator.calculators.asking import ask_next, to_work_out
from generator.calculators.engine import decide_all
from generator.calculators.facts import ASSUMED, UNKNOWN, Facts, place
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, spec_of
from generator.calculators.tables import COLLECT, NO_OUTCOME, Decided, Row, Table, decided_of, table_of

STATUS_NAMES: list[str] = ["not_asked", "unknown", "assumed", "from_link", "entered", "computed"]


@dataclass(frozen=True)
class Reason:
    """A row that speaks for the answer: its table and id, its sentence, the outcome it gives ("" in a table that collects), its
    weight there, and what stands behind it."""

    table: str
    row: str
    says: Say
    outcome: str
    weight: float
    standing: str
    sources: list[str]
    cautions: list[str]


@dataclass(frozen=True)
class Rest:
    """A known fact that the answer rests on: its number (SI), the name of its status, and the sentence that shows it."""

    fact: str
    number: float
    status: str
    says: Say


@dataclass(frozen=True)
class Answer:
    """What a decision answers.

    outcome is an outcome's id, "" when not settled; possible are the ids of the outcomes left; covered is false when
    something is possible that no row covers; ask_next is the id of a fact or ""; status is the weakest status the
    answer rests on (`unknown` while it is open); also is what has to be done besides; reasons stand strongest first, this
    decision's before those of the tables that feed it, those in the order of the walk; steps say what each of those tables
    gave."""

    decision: str
    settled: bool
    covered: bool
    outcome: str
    possible: list[str]
    headline: Say
    also: list[Say]
    ask_next: str
    status: str
    reasons: list[Reason]
    rests_on: list[Rest]
    steps: list[Say]


def answer(tables: list[Table], specs: list[FactSpec], facts: Facts, decision: str) -> Answer:
    """The answer of one decision. tables are it and all that feed it, feeding tables first; facts hold every fact they ask.

    Raises ValueError when a table or fact is missing.
    """
    decided = decide_all(tables, facts)
    table = table_of(tables, decision)
    one = decided_of(decided, decision)
    asked = "" if one.settled else ask_next(tables, facts, decided, decision)
    chain = chain_of(tables, decided, decision)
    reasons: list[Reason] = []
    for name in main_first(chain):
        reasons = reasons + reasons_of(table_of(tables, name), decided)
    return Answer(
        decision=decision,
        settled=one.settled,
        covered=not one.gap,
        outcome=table.outcomes[one.outcome].id if one.settled else "",
        possible=[table.outcomes[k].id for k in one.possible],
        headline=headline(table, specs, one, asked, to_work_out(tables, one)),
        also=also_of(tables, decided, decision),
        ask_next=asked,
        status=STATUS_NAMES[one.status if one.settled else UNKNOWN],
        reasons=reasons,
        rests_on=[rest(specs, facts, fact) for fact in one.rests_on],
        steps=[step(table_of(tables, name), decided_of(decided, name)) for name in chain],
    )


def headline(table: Table, specs: list[FactSpec], one: Decided, asked: str, lacking: str) -> Say:
    """The answer in one line: the outcome's sentence, or what to find out, or what has to be worked out (lacking), or that the table
    does not cover this."""
    if one.settled:
        return Say(table.outcomes[one.outcome].says, [], [])
    if asked == "" and not one.gap and lacking != "":
        return Say("answers.to_work_out", [], [spec_of(specs, lacking).word])
    if asked == "":
        return Say("answers.not_covered", [], [table.word])
    return Say("answers.unsettled", [], [spec_of(specs, asked).word])


def also_of(tables: list[Table], decided: list[Decided], decision: str) -> list[Say]:
    """What the other tables say has to be done this winter besides, each by its settled outcome, in the order of the walk;
    nothing while the decision itself is open."""
    if not decided_of(decided, decision).settled:
        return []
    found: list[Say] = []
    for table in tables:
        one = decided_of(decided, table.id)
        if one.settled and table.id != decision and table.outcomes[one.outcome].action != "":
            found.append(Say("answers.also", [], [table.outcomes[one.outcome].action]))
    return found


def chain_of(tables: list[Table], decided: list[Decided], decision: str) -> list[str]:
    """The tables that the decision's answer rests on and the decision itself, feeding tables first."""
    used = [decision]
    chain: list[str] = []
    for k in range(len(tables)):
        name = tables[len(tables) - 1 - k].id
        if name in used:
            chain = [name] + chain
            used = used + decided_of(decided, name).uses
    return chain


def main_first(chain: list[str]) -> list[str]:
    """A chain with the decision itself before the tables that feed it, which stay in the order of the walk."""
    last = len(chain) - 1
    return chain[last:] + chain[:last]


def reasons_of(table: Table, decided: list[Decided]) -> list[Reason]:
    """The rows that speak for a table's answer; none while several rows may still apply. In a table that collects, the rows
    that are known to count, for either side, heaviest first; those of weight 0 come last."""
    one = decided_of(decided, table.id)
    if not one.settled and table.policy != COLLECT:
        return []
    rows = [table.rows[r] for r in one.rows if table.policy != COLLECT or _is_known(table, table.rows[r], decided)]
    return [_reason(table, row) for row in sorted(rows, key=lambda row: -abs(row.weight))]


def rest(specs: list[FactSpec], facts: Facts, fact: str) -> Rest:
    """A fact that an answer rests on, with the sentence that shows it."""
    index = place(facts, fact)
    x = facts.numbers[index]
    word = spec_of(specs, fact).word
    shown = "answers.assumed" if facts.statuses[index] == ASSUMED else "answers.rests_on"
    return Rest(fact, x, STATUS_NAMES[facts.statuses[index]], Say(shown, [x], [word]))


def step(table: Table, one: Decided) -> Say:
    """What a table gave, in one line."""
    if one.settled:
        return Say("answers.step", [], [table.word, table.outcomes[one.outcome].word])
    return Say("answers.step_open", [], [table.word])


def _is_known(table: Table, row: Row, decided: list[Decided]) -> bool:
    """True when every fact that the row asks is known, or settled by its own table: then a row that may count does."""
    unknown = decided_of(decided, table.id).open
    for cell in row.cells:
        column = table.columns[cell.column]
        if column.derived and not decided_of(decided, column.fact).settled:
            return False
        if not column.derived and column.fact in unknown:
            return False
    return True


def _reason(table: Table, row: Row) -> Reason:
    """One row as a reason."""
    outcome = "" if row.outcome == NO_OUTCOME else table.outcomes[row.outcome].id
    return Reason(table.id, row.id, Say(row.because, [], []), outcome, row.weight, row.standing, row.sources, row.cautions)
