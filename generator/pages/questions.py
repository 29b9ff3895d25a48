"""The questions of a form: the facts that a decision, a calculator or the plan asks, grouped in the order of asking."""

from dataclasses import dataclass

from generator.pages.wording import STANDING, allowed, with_unit
from generator.reading.items import Fact
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm, Decision


@dataclass(frozen=True)
class Question:
    """One question as a form shows it. unit is a symbol; default is worded with its unit, or empty."""

    fact: Fact
    unit: str
    allowed: str
    default: str
    default_standing: str
    optional: bool


@dataclass(frozen=True)
class Group:
    """Questions that belong together, with a heading or none."""

    title: str
    questions: tuple[Question, ...]


def question(rulebook: Rulebook, fact: Fact, optional: bool = False) -> Question:
    """A fact as a question of a form."""
    unit = rulebook.units.get(fact.unit)
    default = rulebook.values.get(fact.default_value)
    return Question(
        fact,
        unit.symbol if unit else "",
        allowed(fact, unit),
        with_unit(default.number, unit) if default else "",
        STANDING[default.followed.standing] if default else "",
        optional,
    )


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
    """The base facts of a table and of the tables that feed it; a fact that two tables ask is asked once."""
    groups, asked = [], set()
    for asking in [table, *feeding(rulebook, table)]:
        new = [name for name in asking.facts if name in rulebook.facts and name not in asked]
        asked.update(new)
        title = "" if asking is table else asking.title
        if new:
            groups.append(Group(title, tuple(question(rulebook, rulebook.facts[name]) for name in new)))
    return groups


def of_calculator(rulebook: Rulebook, form: CalculatorForm) -> list[Group]:
    """The inputs of a calculator in the order of its form."""
    asked = [needed for needed in form.inputs if needed.fact in rulebook.facts]
    return [Group("", tuple(question(rulebook, rulebook.facts[n.fact], n.optional) for n in asked))]


def of_plan(rulebook: Rulebook) -> list[Group]:
    """Every fact, stage by stage."""
    groups = []
    for stage in rulebook.stages.values():
        facts = [fact for fact in rulebook.facts.values() if fact.stage == stage.id]
        if facts:
            groups.append(Group(stage.title, tuple(question(rulebook, fact) for fact in facts)))
    return groups
