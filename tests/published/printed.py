"""The numbers that a piece of evidence prints: in its figures and in its words, number words included."""

import re
from pathlib import Path

from generator.reading.read import read_rulebook
from generator.reading.rulebook import Rulebook

PROJECT = Path(__file__).resolve().parents[2]
WORDS = {
    **dict(zip("one two three four five six seven eight nine ten".split(), range(1, 11), strict=True)),
    **dict(zip("first second third fourth fifth sixth".split(), range(1, 7), strict=True)),
}
NUMBER = re.compile(r"\d+(?:\.\d+)?")


def rules() -> Rulebook:
    """The guide's own rulebook, for the lists of cases; what is wrong in it is told by other tests."""
    return read_rulebook(PROJECT / "rules")[0]


def prints(rulebook: Rulebook, evidence: str) -> set[float]:
    """Every number in the evidence as its source prints it, and the middle of every range of two."""
    one = rulebook.evidence[evidence]
    return set(_numbers([one.statement, one.inputs, one.outputs, one.our_arithmetic, one.table, one.note]))


def numbers_in(text: str) -> list[float]:
    """The numbers in a text, written in digits or as words."""
    digits = [float(number) for number in NUMBER.findall(text.replace(",", ""))]
    return digits + [float(WORDS[word]) for word in re.findall(r"[a-z]+", text.casefold()) if word in WORDS]


def _numbers(found: object) -> list[float]:
    """The numbers in plain data, however deep; keys count as text."""
    if isinstance(found, dict):
        return [number for pair in found.items() for part in pair for number in _numbers(part)]
    if isinstance(found, list):
        inner = [number for part in found for number in _numbers(part)]
        return inner + ([sum(inner) / 2] if len(inner) == 2 else [])
    if isinstance(found, (int, float)) and not isinstance(found, bool):
        return [float(found)]
    return numbers_in(found) if isinstance(found, str) else []
