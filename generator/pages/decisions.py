"""Decision pages: the question, its form, the whole table with row ids, worked examples and known gaps."""

from dataclasses import dataclass

from generator.pages import looks, wording
from generator.pages.cites import Rest, Use, is_long, rests
from generator.pages.hands import asked_by
from generator.pages.jinja import render
from generator.pages.paths import Links, page_path
from generator.pages.questions import of_decision
from generator.reading.rulebook import Rulebook
from generator.reading.tables import Decision, Example, Outcome, Row

POLICY = {
    "one_row": "Exactly one row fits any block.",
    "first_row": "The rows are read from the top; the first one that fits gives the answer.",
    "collect": "Every row that fits counts with its weight; the sum gives the answer.",
}

# A decision page has to stay light: a few worked examples on it, none on that of a long table; all stand on the page beside it.
SHOWN_BESIDE = 3


@dataclass(frozen=True)
class Line:
    """A row of the table as shown: the words of its cells in the order of the columns (empty for any), its outcome, what it cites."""

    row: Row
    cells: tuple[str, ...]
    outcome: Outcome
    rests: list[Rest]


@dataclass(frozen=True)
class Column:
    """A column: a base fact, or the answer of another decision."""

    kind: str
    id: str
    label: str


@dataclass(frozen=True)
class Shown:
    """A worked example in words."""

    name: str
    known: str
    comes_out: str


def decision_pages(rulebook: Rulebook) -> dict[str, str]:
    """Two pages for each table: the decision, and beside it what would make that page heavy."""
    pages = {}
    for table in rulebook.decisions.values():
        pages[page_path("decision", table.id)] = decision_page(rulebook, table)
        pages[more_path(table)] = more_page(rulebook, table)
    return pages


def more_path(table: Decision) -> str:
    """Where the answers of a table stand in full, with its evidence and all worked examples."""
    return page_path("decision", f"{table.id}.more")


def more_page(rulebook: Rulebook, table: Decision) -> str:
    """A long table, the answers in full, what the rows rest on, all worked examples."""
    return render(
        "more.md.jinja",
        words=wording,
        links=Links(more_path(table)),
        table=table,
        policy=POLICY[table.policy],
        rests=all_rests(rulebook, table),
        examples=[shown(rulebook, table, example) for example in table.examples],
        **table_context(rulebook, table, is_long(table), ""),
    )


def all_rests(rulebook: Rulebook, table: Decision) -> list[Rest]:
    """What the rows of a table rest on, and the winters of its outcomes, each once."""
    cites = [row.cites + row.note_cites for row in table.rows] + [one.cites for outcome in table.outcomes for one in outcome.winters]
    return list({rest.id: rest for each in cites for rest in rests(rulebook, each)}.values())


def decision_page(rulebook: Rulebook, table: Decision) -> str:
    """The page of one table."""
    beside = () if is_long(table) else table.examples[:SHOWN_BESIDE]
    cautions = dict.fromkeys([*table.cautions, *(name for row in table.rows for name in row.cautions)])
    return render(
        "decision.md.jinja",
        words=wording,
        links=Links(page_path("decision", table.id)),
        table=table,
        stage=rulebook.stages[table.stage],
        groups=of_decision(rulebook, table),
        policy=POLICY[table.policy],
        cautions=[rulebook.cautions[name] for name in cautions if name in rulebook.cautions],
        examples=[shown(rulebook, table, example) for example in beside],
        more_path=more_path(table),
        brief=is_long(table),
        feeds=[Use("decision", t.id, t.title) for t in rulebook.decisions.values() if table.id in t.facts],
        terms=[rulebook.terms[name] for name in table.terms if name in rulebook.terms],
        replaced_note=replaced_note(table.replaced),
        looks=looks.of_decision(rulebook, table.id),
        hands=asked_by(rulebook, "decisions", table.id),
        scripts=["assets/guide/core.js", f"assets/guide/d/{table.id}.js"],
        **table_context(rulebook, table, not is_long(table), f"{table.id}.more.html"),
    )


def table_context(rulebook: Rulebook, table: Decision, here: bool, sources: str) -> dict:
    """What the templates of a table need: its columns and, where it is shown here, its rows; sources is the page that has them."""
    return {
        "columns": [column(rulebook, name) for name in table.facts],
        "rows": [line(rulebook, table, row) for row in table.rows] if here else [],
        "varieties": {one.id: one.name for one in rulebook.varieties.values()} if table.generated else {},
        "names": {name: column(rulebook, name).label for name in table.facts},
        "sources": sources,
    }


def column(rulebook: Rulebook, name: str) -> Column:
    """The column of a base fact or of another table's answer."""
    if name in rulebook.decisions:
        return Column("decision", name, rulebook.decisions[name].title)
    return Column("fact", name, rulebook.facts[name].label if name in rulebook.facts else name)


def line(rulebook: Rulebook, table: Decision, row: Row) -> Line:
    """A row of the table, in words."""
    words = {cell.fact: cell_words(rulebook, cell.fact, cell.text) for cell in row.when}
    weighed = f"{abs(row.weight):g} for {table.sides[row.weight < 0]}" if row.weight and table.sides else f"{row.weight:+g}"
    outcome = next((one for one in table.outcomes if one.id == row.then), Outcome(row.then, weighed, ""))
    return Line(row, tuple(words.get(name, "") for name in table.facts), outcome, rests(rulebook, row.cites))


def choice_labels(rulebook: Rulebook, name: str) -> dict[str, str]:
    """The labels of a choice fact, or of another table's outcomes, by id."""
    if name in rulebook.decisions:
        return {outcome.id: outcome.label for outcome in rulebook.decisions[name].outcomes}
    fact = rulebook.facts.get(name)
    return {choice.id: choice.label for choice in fact.choices} if fact else {}


def cell_words(rulebook: Rulebook, name: str, text: str) -> str:
    """A cell as a reader reads it: labels in the place of ids, numbers with their unit."""
    labels = choice_labels(rulebook, name)
    if labels:
        return " ".join(labels.get(word.strip(","), word).lower() for word in text.split())
    unit = rulebook.units.get(rulebook.facts[name].unit) if name in rulebook.facts else None
    return f"{text}\u00a0{unit.symbol}" if unit and unit.symbol else text


def shown(rulebook: Rulebook, table: Decision, example: Example) -> Shown:
    """A worked example: what is known and what comes out, in words."""
    expect = example.expect
    labels = {outcome.id: outcome.label for outcome in table.outcomes}
    if "unsettled" in expect:
        left = " or ".join(labels.get(name, name) for name in expect["unsettled"])
        next_fact = known_name(rulebook, expect["ask_next"]) if expect.get("ask_next") else ""
        out = f"Not settled: {left}." + (f" Find out next: {next_fact}." if next_fact else "")
    else:
        out = labels.get(expect.get("outcome", ""), str(expect.get("outcome", "")))
        out += f" (row {expect['row'].replace('_', ' ')})" if "row" in expect else ""
    return Shown(example.name, known_words(rulebook, example.facts), out)


def known_name(rulebook: Rulebook, name: str) -> str:
    """What a fact or another decision's answer is called."""
    return column(rulebook, name).label


def known_words(rulebook: Rulebook, facts: dict) -> str:
    """Facts of an example in words: `Row spacing: 2.4 m; Climate: cool`; what is asked by node is named once, from node 1 on."""
    said: dict[str, list[str]] = {}
    for name, value in facts.items():
        series = rulebook.facts[name].series if name in rulebook.facts else ""
        called = f"{known_name(rulebook, f'{series}_1')} and on" if series else known_name(rulebook, name)
        said.setdefault(called, []).append(value_words(rulebook, name, value))
    return "; ".join(f"{called}: {', '.join(values)}" for called, values in said.items())


def value_words(rulebook: Rulebook, name: str, value: object) -> str:
    """An author's value of a fact in words."""
    if value == "unknown":
        return "not known"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str):
        return choice_labels(rulebook, name).get(value, value)
    unit = rulebook.units.get(rulebook.facts[name].unit) if name in rulebook.facts else None
    return wording.with_unit(float(value), unit) if isinstance(value, (int, float)) else str(value)


def replaced_note(replaced) -> str:
    """A line for an item that an edition put in the place of the guide's own; empty for all others."""
    if replaced is None:
        return ""
    return f"The edition `{replaced.edition}` put this in the place of the guide's own (digest of the original: `{replaced.digest}`)."
