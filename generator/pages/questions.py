"""The questions of a form: the facts that a decision, a calculator or the plan asks, grouped in the order of asking."""

from dataclasses import dataclass

from generator.pages.wording import STANDING
from generator.reading.items import Fact
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision, Input

MORE = "If you know more"


@dataclass(frozen=True)
class Question:
    """What a form says of a fact beside its spec: wording, how to find it out, the standing of its default, notes on choices.

    Questions of one series follow each other: one question asked by node, node 1 first. The first has the words for all of them;
    the others have their label alone. series is "" and node 0 for all other questions. fold is the heading under which a question is
    folded away, "" where it stands in view."""

    id: str
    ask: str
    observe: str
    standing: str
    notes: list[str]
    optional: bool
    series: str = ""
    node: int = 0
    fold: str = ""


@dataclass(frozen=True)
class Group:
    """Questions that belong together, with a heading or none."""

    title: str
    questions: list[Question]


def question(rulebook: Rulebook, fact: Fact, optional: bool = False, brief: bool = False, fold: str = "") -> Question:
    """A fact as a question of a form; a brief one leaves how to find it out, and the notes on its choices, to the fact's own page."""
    default = fact.assumed or rulebook.values.get(fact.default_value)
    standing = STANDING[default.standing if fact.assumed else default.followed.standing] if default else ""
    notes = [choice.note for choice in fact.choices] if not brief and any(choice.note for choice in fact.choices) else []
    if fact.node > 1:
        return Question(fact.id, fact.label, "", standing, notes, optional, fact.series, fact.node, fold)
    words = rulebook.by_node.get(fact.series, fact)
    return Question(fact.id, words.ask, "" if brief else words.observe, standing, notes, optional, fact.series, fact.node, fold)


def feeding(rulebook: Rulebook, table: Decision) -> list[Decision]:
    """The tables whose answers a table asks for, nearest first, each once."""
    found: dict[str, Decision] = {}
    waiting = [table]
    while waiting:
        for name in waiting.pop(0).facts:
            if name in rulebook.decisions and name not in found:
                found[name] = rulebook.decisions[name]
                waiting.append(found[name])
    return list(found.values())


def of_decision(rulebook: Rulebook, table: Decision) -> list[Group]:
    """The base facts of a table and of the tables that feed it; a fact that two tables ask is asked once.

    What feeding tables ask is asked briefly: a page that joins many tables would become too heavy and too long to fill in.
    """
    groups, asked = [], set()
    for asking in [table, *feeding(rulebook, table)]:
        new = [name for name in asking.facts if name in rulebook.facts and name not in asked]
        asked.update(new)
        title = "" if asking is table else asking.title
        if new:
            brief = asking is not table
            groups.append(Group(title, [question(rulebook, rulebook.facts[name], brief=brief) for name in new]))
    return groups


def of_calculator(rulebook: Rulebook, form: CalculatorForm) -> list[Group]:
    """The inputs of a calculator in the order of its form."""
    asked = [needed for needed in form.inputs if needed.fact in rulebook.facts]
    return [Group("", [question(rulebook, rulebook.facts[one.fact], one.optional, fold=fold_of(one)) for one in asked])]


def fold_of(one: Input) -> str:
    """The heading under which an input is folded away, "" for one that stands in view."""
    usual = MORE if one.optional else ""
    return "" if one.in_view else one.fold or usual


def of_plan(rulebook: Rulebook) -> list[Group]:
    """The facts that each stage asks, in the order of a walk through the block."""
    groups, optional = [], spare(rulebook)
    for stage in rulebook.stages.values():
        facts = [rulebook.facts[name] for name in stage.asks if name in rulebook.facts]
        if facts:
            groups.append(Group(stage.title, [question(rulebook, fact, fact.id in optional, fold=MORE if fact.id in optional else "") for fact in facts]))
    return groups


def spare(rulebook: Rulebook) -> list[str]:
    """The numbers that a plan can do without: no decision asks them, and every calculator that does lets them be left out."""
    decisions = {name for table in rulebook.decisions.values() for name in table.facts}
    inputs = [needed for form in rulebook.calculators.values() for needed in form.inputs]
    needed = decisions | {one.fact for one in inputs if not one.optional or one.in_view}
    optional = {one.fact for one in inputs if one.optional} - needed
    return [fact.id for fact in rulebook.facts.values() if {fact.id, fact.series} & optional]
