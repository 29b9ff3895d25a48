"""Tables of the policy `collect`: every row that fits adds its weight, and the sum of the weights gives the outcome."""

from collections.abc import Iterator

from generator.problems import Problem
from generator.reading.cells import BadCell, Column, parse_cell
from generator.reading.documents import Document
from generator.reading.tables import Span

SUM = Column("number")
MOST_FACTS = 6  # that a person can follow from row to row; evidence is weighed one row at a time, so that a table may ask more


def policy_faults(document: Document) -> list[Problem]:
    """What does not fit the policy: weights and sums where rows are weighed; `then`, few facts and gaps everywhere else."""
    weighed = document.data["policy"] == "collect"
    return [*_whole(document, weighed), *_faults(document, weighed)]


def sums(document: Document, index: int, entry: dict) -> tuple[tuple[Span, ...], list[Problem]]:
    """The sums of weights that give an outcome (none without `sum`), and what is wrong with them."""
    if "sum" not in entry:
        return (), []
    try:
        return parse_cell(SUM, str(entry["sum"])), []
    except BadCell as bad:
        sentence = f"Outcome {entry['id']}: the sum `{entry['sum']}` {bad.sentence}."
        return (), [document.problem(("outcomes", index, "sum"), sentence, bad.next_step)]


def _whole(document: Document, weighed: bool) -> Iterator[Problem]:
    """What the table as a whole may not have: many facts where rows are read one after the other, gaps where they are weighed."""
    policy, facts = document.data["policy"], document.data["facts"]
    if len(facts) > MOST_FACTS and not weighed:
        sentence = f"A table of the policy `{policy}` asks six facts at most, and this one asks {len(facts)}."
        yield document.problem(("facts",), sentence, "Let a table of its own join some of them, and ask that table here.")
    if weighed and document.data.get("gaps"):
        sentence = "A table of the policy `collect` has no gaps: where no row fits, the sum is 0."
        yield document.problem(("gaps",), sentence, "Take `gaps` out; the outcome with the sum 0 answers.")


def _faults(document: Document, weighed: bool) -> Iterator[Problem]:
    """What a row or an outcome lacks, and what it has too much."""
    wanted, other = ("weight", "then") if weighed else ("then", "weight")
    why = "rows of the policy `collect` are weighed" if weighed else "only rows of the policy `collect` are weighed"
    rows = document.data["rows"] if isinstance(document.data["rows"], list) else []
    for index, row in enumerate(rows):
        place = ("rows", index)
        if wanted not in row:
            yield document.problem(place, f"Row {row['id']} lacks `{wanted}`: {why}.", f"Write `{wanted}` in it.")
        if other in row:
            yield document.problem((*place, other), f"Row {row['id']} has `{other}`: {why}.", f"Take `{other}` out.")
    for index, outcome in enumerate(document.data["outcomes"]):
        place = ("outcomes", index)
        if weighed and "sum" not in outcome:
            step = "Write the sums of weights that give it, such as `sum: 3 or more`."
            yield document.problem(place, f"Outcome {outcome['id']} lacks `sum`: {why}.", step)
        if not weighed and "sum" in outcome:
            yield document.problem((*place, "sum"), f"Outcome {outcome['id']} has `sum`: {why}.", "Take `sum` out.")
