"""compute: one calculator, decision or plan from a JSON file of facts, and from a CSV file of rows; JSON out, notes on stderr."""

import argparse
import json
import sys
from dataclasses import replace
from pathlib import Path
from typing import Any

from generator.answers import compute as answers
from generator.answers.border import written
from generator.answers.rows import ROWS
from generator.answers.rows_csv import Sheet, read_sheet
from generator.cli.rules import read_readable
from generator.reading.near import suggestion
from generator.reading.rulebook import Rulebook
from generator.setting_up.telling import Stop, say


SHEET = ".csv"


def run(options: argparse.Namespace) -> int:
    """Print the answer as JSON. One line a fault on stderr and status 2 when the input will not do."""
    if not options.list and not options.name:
        raise Stop("Give a NAME; `python3 -m generator compute --list` shows them.", 2)
    rulebook = read_readable(options)
    names = answers.names(rulebook)
    if options.list:
        print("\n".join(names))
        return 0
    if options.name not in names:
        shown = suggestion(options.name, names, "`python3 -m generator compute --list` shows the names.")
        raise Stop(f"There is nothing called {options.name}. {shown}", 2)
    if options.describe:
        _print(answers.describe(rulebook, options.name))
        return 0
    return _answer(rulebook, options.name, options.input)


def _answer(rulebook: Rulebook, name: str, files: list[str]) -> int:
    """Print the answer to what the files hold. Lines of a CSV file that will not do are told and left out: the answer is for the others,
    and the status is 2, so that nobody takes a part of a tally for the whole."""
    facts, sheet = _given(rulebook, name, files)
    for fault in sheet.faults if sheet else []:
        say(fault)
    if sheet and not sheet.rows:
        return 2
    try:
        answer = answers.compute(rulebook, name, facts)
    except answers.BadInput as bad:
        for fault in bad.faults:
            say(fault)
        return 2
    _print(answer | ({"lines_left_out": sheet.left_out} if sheet else {}))
    say(f"rules {rulebook.version}, edition {rulebook.edition.id}")
    return 2 if sheet and sheet.faults else 0


def _given(rulebook: Rulebook, name: str, files: list[str]) -> tuple[dict[str, Any], Sheet | None]:
    """The facts of a JSON file and the rows of a CSV file, of each at most one. Raises Stop (status 2)."""
    sheets = [file for file in files if file.lower().endswith(SHEET)]
    others = [file for file in files if file not in sheets]
    if len(sheets) > 1 or len(others) > 1:
        raise Stop(f"--input takes one JSON file and one {SHEET} file, not {', '.join(files)}.", 2)
    facts = _facts(others[0]) if others else {}
    if not sheets:
        return facts, None
    form = rulebook.calculators.get(name)
    if form is None or not form.rows:
        raise Stop(f"{sheets[0]}: {name} takes no rows. Give its facts as JSON.", 2)
    if ROWS in facts:
        raise Stop(f"{others[0]} holds rows, and so does {sheets[0]}. Keep one of the two.", 2)
    sheet = read_sheet(rulebook, form, _text(sheets[0]))
    sheet = replace(sheet, faults=[f"{sheets[0]}:{fault}" for fault in sheet.faults])
    return facts | {ROWS: sheet.rows}, sheet


def _text(name: str) -> str:
    """The text of the file called name (`-`: standard input). Raises Stop (status 2) when there is none."""
    shown = "standard input" if name == "-" else name
    try:
        return sys.stdin.read() if name == "-" else Path(name).read_text(encoding="utf-8")
    except OSError as fault:
        raise Stop(f"{shown} cannot be read: {fault.strerror}.", 2) from None
    except UnicodeDecodeError:
        raise Stop(f"{shown} is not UTF-8 text.", 2) from None


def _facts(name: str) -> dict[str, Any]:
    """The facts in the JSON file called name (`-`: standard input). Raises Stop (status 2) when there are none."""
    shown = "standard input" if name == "-" else name
    try:
        facts = json.loads(_text(name), object_pairs_hook=_once)
    except json.JSONDecodeError as fault:
        raise Stop(f"{shown}:{fault.lineno}:{fault.colno}: this is not JSON ({fault.msg}).", 2) from None
    except RecursionError:
        raise Stop(f"{shown}: brackets are nested too deep. Give one object of facts, a value each.", 2) from None
    except _Twice as key:
        raise Stop(f"{shown}: {key} is given twice. Keep one of the two.", 2) from None
    except ValueError:
        # Python does not read whole numbers of thousands of digits.
        raise Stop(f"{shown}: a number has too many digits. Round it.", 2) from None
    if not isinstance(facts, dict):
        raise Stop(f'{shown}: give one object of facts, like {{"row_spacing_m": 2.4}}.', 2)
    return facts


class _Twice(ValueError):
    """A key that one object holds twice; its text shows the key. JSON would take the last in silence."""


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """An object from its pairs of key and value. Raises _Twice."""
    found: dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise _Twice(written(key))
        found[key] = value
    return found


def _print(answer: dict[str, Any]) -> None:
    """Write answer to stdout as JSON that a person can read too."""
    print(json.dumps(answer, indent=2, ensure_ascii=False))
