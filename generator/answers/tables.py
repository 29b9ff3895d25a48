"""Decisions of the rulebook as the engine's tables: feeding tables first, cut at the boundaries they use."""

from generator.answers.catalogue import WORK
from generator.answers.cutting import points, worth_trying
from generator.answers.specs import fact_spec
from generator.calculators import tables as engine
from generator.calculators.changes import Candidates
from generator.calculators.facts import Maybe
from generator.calculators.specs import FactSpec
from generator.reading.rulebook import Rulebook, kept
from generator.reading.tables import CalculatorForm, Cell, Decision, Outcome, Row, Span

POLICY_CODES = {"one_row": engine.ONE_ROW, "first_row": engine.FIRST_ROW, "collect": engine.COLLECT}


def feeding_order(rulebook: Rulebook, decision: str) -> list[str]:
    """The decision and every decision that feeds it, feeding ones first. A circle is left where it closes (a check
    reports it)."""
    order: list[str] = []
    begun: set[str] = set()

    def visit(name: str) -> None:
        """Puts what feeds a decision before it."""
        if name in rulebook.decisions and name not in begun:
            begun.add(name)
            for fact in rulebook.decisions[name].facts:
                visit(fact)
            order.append(name)

    visit(decision)
    return order


def asked_by_others(rulebook: Rulebook) -> set[str]:
    """The decisions that answer for another one or for a calculator: whoever asks that gets their answers with it."""
    feeding = {fact for table in rulebook.decisions.values() for fact in table.facts}
    return {name for name in rulebook.decisions if name in feeding} | {name for form in rulebook.calculators.values() for name in form.tables}


def base_facts(rulebook: Rulebook, decisions: list[str]) -> list[str]:
    """The facts (not decisions) that the tables ask, in the order of the rulebook."""
    asked = {fact for name in decisions for fact in rulebook.decisions[name].facts}
    return [fact for fact in rulebook.facts if fact in asked]


@kept
def tables_for(rulebook: Rulebook, decision: str) -> list[engine.Table]:
    """The engine's tables that a decision needs, feeding tables first. Raises KeyError when a fact or outcome is not there."""
    return [table(rulebook, rulebook.decisions[name]) for name in feeding_order(rulebook, decision)]


def tables_of_form(rulebook: Rulebook, form: CalculatorForm) -> list[engine.Table]:
    """The engine's tables that a calculator asks, in the order of its form, each behind those that feed it."""
    names = dict.fromkeys(name for asked in form.tables for name in feeding_order(rulebook, asked))
    return [table(rulebook, rulebook.decisions[name]) for name in names]


def table(rulebook: Rulebook, decision: Decision) -> engine.Table:
    """One decision as the engine's table."""
    places = {fact: index for index, fact in enumerate(decision.facts)}
    outcomes = {outcome.id: index for index, outcome in enumerate(decision.outcomes)}
    return engine.Table(
        id=decision.id,
        word=f"decision.{decision.id}",
        policy=POLICY_CODES[decision.policy],
        columns=[column(rulebook, decision, fact) for fact in decision.facts],
        rows=[_row(decision, row, places, outcomes) for row in decision.rows],
        outcomes=[_outcome(decision, outcome) for outcome in decision.outcomes],
    )


def column(rulebook: Rulebook, decision: Decision, fact: str) -> engine.Column:
    """One column; the points of a derived fact are the places of its outcomes."""
    found = points(column_spec(rulebook, fact), cells_on(decision, fact))
    base = rulebook.facts.get(fact)
    return engine.Column(fact, fact in rulebook.decisions, base is not None and base.computed_by != "", found)


def cells_on(decision: Decision, fact: str) -> list[Cell]:
    """All cells of the decision's rows that restrict the fact."""
    return [cell for row in decision.rows for cell in row.when if cell.fact == fact]


@kept
def candidates_for(rulebook: Rulebook, decision: str) -> list[Candidates]:
    """For each base fact that the decision reaches, the values worth trying for a flip."""
    names = feeding_order(rulebook, decision)
    found = []
    for fact in base_facts(rulebook, names):
        cells = [cell for name in names for cell in cells_on(rulebook.decisions[name], fact)]
        found.append(Candidates(fact, worth_trying(fact_spec(rulebook, rulebook.facts[fact]), cells)))
    return found


def column_spec(rulebook: Rulebook, fact: str) -> FactSpec:
    """The spec of a column: that of the base fact, or the outcomes of a decision as choices."""
    if fact in rulebook.facts:
        return fact_spec(rulebook, rulebook.facts[fact])
    decision = rulebook.decisions[fact]
    return FactSpec(
        id=fact,
        word=f"decision.{fact}",
        label=decision.title,
        kind="choice",
        unit="",
        low=0.0,
        high=float(max(0, len(decision.outcomes) - 1)),
        step=1.0,
        digits=0,
        choices=[outcome.id for outcome in decision.outcomes],
        labels=[outcome.label for outcome in decision.outcomes],
        lifetime="block",
        code="",
        default=Maybe(False, 0.0),
    )


def _row(decision: Decision, row: Row, places: dict[str, int], outcomes: dict[str, int]) -> engine.Row:
    """One row, its cells in the order of the columns."""
    cells = sorted(row.when, key=lambda cell: places[cell.fact])
    return engine.Row(
        id=row.id,
        cells=[engine.Cell(places[cell.fact], _spans(cell.spans)) for cell in cells],
        outcome=engine.NO_OUTCOME if decision.policy == "collect" else outcomes[row.then],
        weight=float(row.weight),
        because=f"{decision.id}.{row.id}",
        standing=row.standing,
        sources=[cite.id for cite in row.cites],
        cautions=list(row.cautions),
    )


def _outcome(decision: Decision, outcome: Outcome) -> engine.Outcome:
    """One outcome with its message and words."""
    word = f"outcome.{decision.id}.{outcome.id}"
    action, target, years = (f"{kind}.{decision.id}.{outcome.id}" if getattr(outcome, kind) else "" for kind in WORK)
    return engine.Outcome(outcome.id, f"{decision.id}.says.{outcome.id}", word, _spans(outcome.sums), outcome.layout, action, target, years)


def _spans(spans: tuple[Span, ...]) -> list[engine.Span]:
    """Spans of the rulebook as the engine's."""
    return [engine.Span(float(s.low), s.low_in, float(s.high), s.high_in) for s in spans]
