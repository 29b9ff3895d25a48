"""From plain data of the right shape to decision tables and calculators' forms."""

from dataclasses import dataclass

from generator.problems import Problem
from generator.reading.build_items import BadItem, cites, common
from generator.reading.cells import BadCell, Column, parse_cell
from generator.reading.documents import Document
from generator.reading.near import suggestion
from generator.reading.varieties import Variety
from generator.reading.tables import CalculatorForm, Cell, Decision, Each, Example, Gap, Input, Outcome, Output, Row, RowColumn, UsedIn
from generator.reading.variety_lists import variety_rows
from generator.reading.weighed import policy_faults, sums
from generator.reading.winters import faults as winter_faults, winters


@dataclass(frozen=True)
class Columns:
    """What tables may ask: the columns of facts and of derived facts by id; lost ids are there but could not be read."""

    known: dict[str, Column]
    lost: frozenset[str]

    def __contains__(self, name: str) -> bool:
        """True when a fact or decision of this id was written, readable or not."""
        return name in self.known or name in self.lost


def derived_column(data: dict) -> Column:
    """A decision's outcomes as the choices of the derived fact that it becomes."""
    return Column("choice", tuple(outcome["id"] for outcome in data["outcomes"]), 0.0, float(len(data["outcomes"]) - 1))


def decision(document: Document, columns: Columns, varieties: dict[str, Variety]) -> Decision:
    """A decision table with its cells as spans. Raises BadItem."""
    data = document.data
    outcomes, problems = _outcomes(document)
    generated = data["rows"] == "varieties"
    lost = _facts_there(document, columns)
    problems += [*lost, *policy_faults(document)]
    cells = _Cells(document, columns, all_there=not lost)
    rows: tuple[Row, ...] = ()
    if generated:
        problems += _outcomes_of_lists(document, data)
        rows = () if problems else variety_rows(varieties, outcomes, document.line("rows"))
    else:
        problems += _thens(document, data)
        rows = tuple(_row(document, index, entry, cells) for index, entry in enumerate(data["rows"]))
    gaps = tuple(_gap(document, index, entry, cells) for index, entry in enumerate(data.get("gaps", ())))
    if problems or cells.problems or any(name in columns.lost for name in data["facts"]):
        raise BadItem(problems + cells.problems)
    return Decision(
        **common(document),
        **{name: data[name] for name in ("title", "question", "why", "stage", "policy")},
        facts=tuple(data["facts"]),
        outcomes=outcomes,
        rows=rows,
        examples=examples(document),
        gaps=gaps,
        cautions=tuple(data.get("cautions", ())),
        terms=tuple(data.get("terms", ())),
        generated=generated,
        sides=tuple(data.get("sides", ())),
    )


def calculator(document: Document) -> CalculatorForm:
    """The form of a calculator."""
    data = document.data
    return CalculatorForm(
        **common(document),
        **{name: data[name] for name in ("title", "question", "why", "stage")},
        inputs=tuple(
            Input(entry) if isinstance(entry, str) else _input(entry)
            for entry in data["inputs"]
        ),
        values=tuple(data.get("values", ())),
        outputs=tuple(Output(entry["id"], entry["label"], entry["unit"], entry["digits"], entry.get("needs", "")) for entry in data["outputs"]),
        examples=examples(document),
        cites=cites(data),
        cautions=tuple(data.get("cautions", ())),
        terms=tuple(data.get("terms", ())),
        rows=tuple(_column(entry) for entry in data.get("rows", ())),
        used_in=tuple(_use(entry) for entry in data.get("used_in", ())),
        tables=tuple(data.get("tables", ())),
        each=Each(**data["each"]) if "each" in data else None,
    )


def _use(entry: dict) -> UsedIn:
    """A way to another calculator."""
    return UsedIn(entry["calculator"], entry.get("gives", {}), tuple(entry.get("where", ())), tuple(entry.get("anew", ())))


def _input(entry: dict) -> Input:
    """An input that has more to it than its fact."""
    fold, in_view = entry.get("fold", ""), entry.get("in_view", False)
    return Input(entry["fact"], entry.get("optional", False), also=entry.get("also", ""), fold=fold, in_view=in_view)


def _column(entry: str | dict) -> RowColumn:
    """A column of the rows that a calculator takes: a fact by its id, or one of its own."""
    if isinstance(entry, str):
        return RowColumn(entry, fact=True)
    low, high = entry["range"]
    return RowColumn(entry["id"], entry["label"], entry["observe"], low, high, entry.get("needed", False), begin=entry.get("begin", ""))


def examples(document: Document) -> tuple[Example, ...]:
    """Worked examples; an outcome that stands alone becomes {outcome: ...}."""
    return tuple(
        Example(
            name=entry["name"],
            facts=entry.get("facts", entry.get("inputs", {})) | ({"rows": entry["rows"]} if "rows" in entry else {}),
            expect=entry["expect"] if isinstance(entry["expect"], dict) else {"outcome": entry["expect"]},
            line=document.line("examples", index),
            source=entry.get("source", ""),
        )
        for index, entry in enumerate(document.data["examples"])
    )


class _Cells:
    """Reads the cells of one table and gathers what is wrong with them."""

    def __init__(self, document: Document, columns: Columns, all_there: bool) -> None:
        self.document = document
        self.columns = columns
        self.all_there = all_there
        self.problems: list[Problem] = []

    def read(self, place: tuple, named: str, when: dict) -> tuple[Cell, ...]:
        """The cells at a place, in the order of the table's facts; named says whose they are, for problems."""
        asked = self.document.data["facts"]
        for fact in when:
            # A misspelt fact in `facts` is told once, not again at every row that spells it right.
            if fact not in asked and self.all_there:
                step = f"Add `{fact}` to `facts`." if fact in self.columns else suggestion(fact, asked)
                self._problem((*place, fact), f"{named} tests `{fact}`, which is not one of the table's facts.", step)
        return tuple(cell for fact in asked if fact in when for cell in self._cell(place, named, fact, str(when[fact])))

    def _cell(self, place: tuple, named: str, fact: str, text: str) -> list[Cell]:
        """The cell of one fact; none for `any`, for a bad cell, and for a fact that could not be read."""
        column = self.columns.known.get(fact)
        if column is None:
            return []
        try:
            spans = parse_cell(column, text)
        except BadCell as bad:
            self._problem((*place, fact), f"{named}, `{fact}`: the cell `{text}` {bad.sentence}.", bad.next_step)
            return []
        return [Cell(fact, spans, text, self.document.line(*place, fact))] if spans else []

    def _problem(self, place: tuple, sentence: str, step: str) -> None:
        """Notes a problem at a place of the table."""
        self.problems.append(self.document.problem(place, sentence, step))


def _facts_there(document: Document, columns: Columns) -> list[Problem]:
    """Every fact of a table exists, as a fact or as another decision."""
    problems = []
    for index, name in enumerate(document.data["facts"]):
        if name == document.id:
            problems.append(
                document.problem(("facts", index), "The table asks itself.", "Take its own id out of `facts`.")
            )
        elif name not in columns:
            step = suggestion(name, [*columns.known, *columns.lost], "Write rules/facts/ or rules/decisions/ first.")
            problems.append(document.problem(("facts", index), f"There is no fact or decision `{name}`.", step))
    return problems


def _thens(document: Document, data: dict) -> list[Problem]:
    """Every row's outcome is one of the table's outcomes."""
    known = [outcome["id"] for outcome in data["outcomes"]]
    return [
        document.problem(
            ("rows", index, "then"),
            f"Row {row['id']} gives `{row['then']}`, which is not one of the outcomes.",
            suggestion(row["then"], known),
        )
        for index, row in enumerate(data["rows"])
        if "then" in row and row["then"] not in known
    ]


def _outcomes_of_lists(document: Document, data: dict) -> list[Problem]:
    """A table made from the varieties asks `variety` and has the four outcomes that lists can give."""
    wanted = ["spur", "cane", "conflict", "nothing_published"]
    have = [outcome["id"] for outcome in data["outcomes"]]
    problems = []
    if data["facts"] != ["variety"]:
        problems.append(
            document.problem(("facts",), "A table with `rows: varieties` asks `variety` alone.", "Write [variety].")
        )
    if sorted(have) != sorted(wanted):
        step = f"Its outcomes are {', '.join(wanted)}."
        problems.append(
            document.problem(("outcomes",), "A table with `rows: varieties` has outcomes of its own.", step)
        )
    return problems


def _outcomes(document: Document) -> tuple[tuple[Outcome, ...], list[Problem]]:
    """All outcomes, and what is wrong with their sums of weights."""
    found, problems = [], []
    for index, entry in enumerate(document.data["outcomes"]):
        given, faults = sums(document, index, entry)
        problems += faults + winter_faults(document, index, entry)
        plain = {name: entry[name] for name in entry if name not in ("sum", "winters")}
        found.append(Outcome(**plain, sums=given, winters=winters(document, index, entry)))
    return tuple(found), problems


def _row(document: Document, index: int, entry: dict, cells: _Cells) -> Row:
    """One row."""
    return Row(
        id=entry["id"],
        when=cells.read(("rows", index, "when"), f"Row {entry['id']}", entry["when"]),
        then=entry.get("then", ""),
        because=entry["because"],
        standing=entry["standing"],
        line=document.line("rows", index),
        cites=cites(entry),
        cautions=tuple(entry.get("cautions", ())),
        note=entry.get("note", ""),
        weight=float(entry.get("weight", 0)),
    )


def _gap(document: Document, index: int, entry: dict, cells: _Cells) -> Gap:
    """One known gap."""
    when = cells.read(("gaps", index, "when"), f"Gap {index + 1}", entry["when"])
    return Gap(when, entry["reason"], document.line("gaps", index))
