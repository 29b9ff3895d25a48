"""The rows of a calculator from the text of a CSV file: what a spreadsheet saves, or what somebody types beside a microscope.

The first line names the columns, in any order and in small or capital letters; cells are parted by commas, semicolons or tabs. A column
or a cell that is not there counts 0, unless every row needs it. A line is read by itself, so one bad line spoils no other.
"""

import csv
import re
from dataclasses import dataclass

from generator.answers.border import written
from generator.answers.rows import Reader
from generator.reading.rulebook import Rulebook
from generator.reading.tables import CalculatorForm

PARTED_BY = (",", ";", "\t")
LINE_END = re.compile(r"\r\n|\r|\n")


@dataclass(frozen=True)
class Sheet:
    """What a CSV file holds: the rows that will do, column by name; and of the others `line number: what is wrong, what is allowed`,
    with how many lines were left out."""

    rows: list[dict[str, str]]
    faults: list[str]
    left_out: int


def read_sheet(rulebook: Rulebook, form: CalculatorForm, text: str) -> Sheet:
    """The rows in the text of a CSV file, for a calculator that takes rows."""
    lines = [(number, line) for number, line in enumerate(LINE_END.split(text.removeprefix("\ufeff")), 1) if line.strip(" \t,;")]
    if not lines:
        return Sheet([], [f"1: nothing is in it, the first line names the columns: {', '.join(one.id for one in form.rows)}"], 0)
    reader = Reader(rulebook, form)
    (at, head), *body = lines
    parted_by = max(PARTED_BY, key=head.count)
    names, faults = _names(reader, _cells(head, parted_by))
    faults = [f"{at}: {fault}" for fault in faults]
    lacking = [name for name in reader.needed() if name not in names]
    if lacking:
        return Sheet([], [*faults, *(f"{at}: the column {name} is missing, every row needs it" for name in lacking)], len(body))
    rows, left_out = [], 0
    for number, line in body:
        row, wrong = _row(reader, names, _cells(line, parted_by))
        faults += [f"{number}: {fault}" for fault in wrong]
        left_out += 1 if wrong else 0
        rows += [] if wrong else [row]
    return Sheet(rows, faults, left_out)


def _cells(line: str, parted_by: str) -> list[str]:
    """The cells of one line, without the blanks around them."""
    return [cell.strip() for cell in next(csv.reader([line], delimiter=parted_by))]


def _names(reader: Reader, cells: list[str]) -> tuple[list[str], list[str]]:
    """The column of each place, "" for one that is not read, and what is wrong with the names."""
    names: list[str] = []
    faults: list[str] = []
    for cell in cells:
        name = re.sub(r"[ -]+", "_", cell.lower())
        if name and name not in reader.specs:
            faults.append(f"{reader.unknown(cell)} The column is left out.")
        elif name and name in names:
            faults.append(f"the column {name} is there twice; the first one counts")
        names.append(name if name in reader.specs and name not in names else "")
    return names, faults


def _row(reader: Reader, names: list[str], cells: list[str]) -> tuple[dict[str, str], list[str]]:
    """One row, column by name, and what is wrong with it."""
    spare = [cell for cell in cells[len(names) :] if cell]
    if spare:
        return {}, [f"{written(spare[0])} stands beyond the last column, allowed are {len(names)} cells"]
    row = {name: cell for name, cell in zip(names, cells) if name}
    return row, reader.record(row)[1]
