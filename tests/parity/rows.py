"""Rows that once failed, kept in rows.jsonl: a line each, with the function and its encoded arguments."""

import json
import struct
from pathlib import Path
from typing import Any, get_args

from tests.parity.numbers import fields

ROWS = Path(__file__).parent / "rows.jsonl"


def keep(function: str, cases: list[list]) -> None:
    """Add encoded arguments of a function (`module.name`) to the rows, unless they are there."""
    known = set(ROWS.read_text(encoding="utf-8").splitlines())
    lines = [json.dumps({"function": function, "arguments": case}) for case in cases]
    with ROWS.open("a", encoding="utf-8") as file:
        file.writelines(line + "\n" for line in lines if line not in known)


def kept() -> list[tuple[str, list]]:
    """All rows: function, encoded arguments."""
    rows = [json.loads(line) for line in ROWS.read_text(encoding="utf-8").splitlines()]
    return [(row["function"], row["arguments"]) for row in rows]


def decode(value: Any, wanted: Any) -> Any:
    """An encoded value as a value of the annotated type."""
    if wanted is bool:
        return value
    if wanted is str:
        return value[1:]
    if wanted in (int, float):
        return wanted("nan" if value == "nan" else struct.unpack(">d", bytes.fromhex(value[1:]))[0])
    if items := get_args(wanted):
        return [decode(item, items[0]) for item in value]
    return wanted(**{name: decode(value[name], part) for name, part in fields(wanted).items()})
