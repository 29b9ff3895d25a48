"""The plan's choice of the system: the decision `pruning_system` and all that feeds it."""

from generator.calculators.answer import also_of, chain_of, main_first, reasons_of, step
from generator.calculators.asking import ask_next
from generator.calculators.engine import decide_all
from generator.calculators.facts import Facts
from generator.calculators.plan_records import BlockPlanValues, Part, choice_of, is_settled, status_of
from generator.calculators.say import Say
from generator.calculators.tables import Decided, Outcome, Table, decided_of, table_of

SYSTEM: str = "choose_system"
DECISION: str = "pruning_system"
FORMING: str = "forming"
NONE: str = "none"
MOST_SHOWN: int = 6


def choose_system(facts: Facts, values: BlockPlanValues, earlier: list[Part], tables: list[Table]) -> Part:
    """The target system. choice is the layout that this winter's answer asks for, where all answers still possible ask for the
    same; lines give the main answer with its reasons before what led to it, in the order of the walk. Raises ValueError when the
    tables lack the decision."""
    decided = decide_all(tables, facts)
    table = table_of(tables, DECISION)
    one = decided_of(decided, DECISION)
    asked = "" if one.settled else ask_next(tables, facts, decided, DECISION)
    chain = chain_of(tables, decided, DECISION)
    lines: list[Say] = []
    sources: list[str] = []
    cautions: list[str] = []
    for name in main_first(chain):
        lines.append(step(table_of(tables, name), decided_of(decided, name)))
        for reason in reasons_of(table_of(tables, name), decided):
            lines.append(reason.says)
            sources = joined(sources, reason.sources)
            cautions = joined(cautions, reason.cautions)
    return Part(
        id=SYSTEM,
        stage=SYSTEM,
        ready=one.settled,
        settled=one.settled,
        choice=layout_of(table, one),
        possible=[table.outcomes[k].id for k in one.possible],
        uses=chain,
        needs=[] if asked == "" else [asked],
        ask_next=asked,
        rests_on=one.rests_on,
        status=status_of(facts, one.rests_on),
        headline=headline_of(table, one),
        numbers=[],
        lines=lines,
        notes=work_of(table.outcomes[one.outcome], also_of(tables, decided, DECISION)) if one.settled else open_answers(table, one),
        sources=sources,
        cautions=cautions,
    )


def target_of(parts: list[Part]) -> str:
    """The layout that an earlier answer on the system asks for: `none` where it is settled and asks for none, "" while it is open."""
    target = choice_of(parts, SYSTEM)
    if target == "" and is_settled(parts, SYSTEM):
        return NONE
    return target


def outcome_of_system(parts: list[Part]) -> str:
    """The id of the one answer on the system that an earlier part left, or ""."""
    for one in parts:
        if one.id == SYSTEM and one.settled:
            return one.possible[0]
    return ""


def joined(names: list[str], more: list[str]) -> list[str]:
    """The names and those of the others that are not among them."""
    return names + [name for name in more if name not in names]


def open_answers(table: Table, one: Decided) -> list[Say]:
    """The answers still possible, where they are few enough to read."""
    if len(one.possible) > MOST_SHOWN:
        return []
    return [Say("plan.still_possible", [], [table.outcomes[k].word]) for k in one.possible]


def work_of(outcome: Outcome, also: list[Say]) -> list[Say]:
    """What the answer means for the work: what to do this winter and what besides, what to aim for, how long it takes."""
    lines: list[Say] = []
    if outcome.action != "":
        lines.append(Say("plan.action", [], [outcome.action]))
    lines = lines + also
    if outcome.target != "":
        lines.append(Say("plan.target", [], [outcome.target]))
    if outcome.years != "":
        lines.append(Say("plan.years", [], [outcome.years]))
    return lines


def headline_of(table: Table, one: Decided) -> Say:
    """The outcome's sentence, or that it is open, or that the table does not cover it."""
    if one.settled:
        return Say(table.outcomes[one.outcome].says, [], [])
    if one.gap:
        return Say("answers.not_covered", [], [table.word])
    return Say("plan.system_open", [float(len(one.possible))], [])


def layout_of(table: Table, one: Decided) -> str:
    """The layout that all possible outcomes ask for, or ""."""
    if one.gap or len(one.possible) == 0:
        return ""
    layout = table.outcomes[one.possible[0]].layout
    if all(table.outcomes[k].layout == layout for k in one.possible):
        return layout
    return ""
