"""One author's or JSON value of a fact becomes a number, and back. The only place in Python where the two meet.

A choice becomes its place among the choices, yes and no become 1 and 0, an ISO date whole days since 1970-01-01.
"""

import re
from datetime import date, timedelta
from typing import Any

from generator.calculators.specs import FactSpec
from generator.reading.near import MOST_LISTED, nearest

UNKNOWN_WORD = "unknown"
EPOCH = date(1970, 1, 1)
# As JSON prints numbers (1e-05, 1e+16); the page's border.js has the same.
NUMBER = re.compile(r"-?[0-9]+(\.[0-9]+)?(e[-+]?[0-9]{1,3})?")
TOO_LARGE = 1e300
LONGEST = 40  # signs of a value that a fault repeats
YES = {True: 1.0, "yes": 1.0, "true": 1.0, False: 0.0, "no": 0.0, "false": 0.0}


class BadValue(ValueError):
    """A value that does not fit its fact: the sentence says what is wrong and what is allowed, without the fact's id."""


def to_number(spec: FactSpec, raw: Any) -> float:
    """The number of a written value. Raises BadValue; ranges are checked later, by the guard that both sides share."""
    if spec.kind == "choice":
        return _choice(spec, raw)
    if spec.kind == "yes_no":
        if isinstance(raw, (bool, str)) and raw in YES:
            return YES[raw]
        raise BadValue(f"{written(raw)} is neither yes nor no, allowed are yes and no")
    return _date(raw) if spec.kind == "date" else _number(raw)


def from_number(spec: FactSpec, x: float) -> Any:
    """The value as an author writes it: a choice's id, yes or no, an ISO date, a whole number, a number."""
    if spec.kind in ("choice", "yes_no"):
        return spec.choices[int(x)]
    if spec.kind == "date":
        return (EPOCH + timedelta(days=int(x))).isoformat()
    return int(x) if spec.kind == "whole" else x


def to_text(raw: Any) -> str:
    """A value of a text fact. Raises BadValue for anything that is not text."""
    if isinstance(raw, str) and raw.strip():
        return raw
    raise BadValue(f"{written(raw)} is not text, allowed is a line of text in quotes")


def _choice(spec: FactSpec, raw: Any) -> float:
    """The place of a choice. YAML reads a bare yes or no as true or false, so these count as the words."""
    word = {True: "yes", False: "no"}.get(raw, raw) if isinstance(raw, bool) else raw
    if isinstance(word, str) and word in spec.choices:
        return float(spec.choices.index(word))
    near = nearest(word, spec.choices) if isinstance(word, str) else ""
    listed = ", ".join(spec.choices) if len(spec.choices) <= MOST_LISTED else f"the ids of the {len(spec.choices)} choices"
    meant = f" (did you mean {near}?)" if near else ""
    raise BadValue(f"{written(raw)} is not one of its choices, allowed are {listed}{meant}")


def _number(raw: Any) -> float:
    """A finite number, written as a number or as its text."""
    if isinstance(raw, str) and NUMBER.fullmatch(raw):
        raw = float(raw)
    if isinstance(raw, (int, float)) and not isinstance(raw, bool):
        if abs(raw) < TOO_LARGE:
            return float(raw)
        if raw == raw:  # not a number that is none
            raise BadValue("the number is too large, allowed is a number such as 2.5")
    raise BadValue(f"{written(raw)} is not a number, allowed is a number such as 2.5")


def _date(raw: Any) -> float:
    """Days since 1970-01-01 of an ISO date."""
    if type(raw) is date:
        return float((raw - EPOCH).days)
    try:
        if isinstance(raw, str) and re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", raw):
            return float((date.fromisoformat(raw) - EPOCH).days)
    except ValueError:
        pass
    raise BadValue(f"{written(raw)} is not a date, allowed is a date such as 2026-03-01")


def written(raw: Any) -> str:
    """A value in a fault, as its author wrote it and never in Python's words: short, on one line, in backticks."""
    if isinstance(raw, (list, tuple, dict)):
        return "a mapping" if isinstance(raw, dict) else "a list"
    if isinstance(raw, str):
        text = " ".join(raw.split())
    elif raw is None or isinstance(raw, bool):
        text = "null" if raw is None else str(raw).lower()
    else:
        text = "NaN" if raw != raw else str(raw)
    return f"`{text if len(text) <= LONGEST else text[: LONGEST - 1] + '…'}`" if text else "nothing"
