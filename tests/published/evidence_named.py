"""Which published rows a check is held against: the ids of evidence that its cases or its docstring name.

A case that names its evidence itself counts for that alone; otherwise the docstring speaks for every case of the test.
Long ids are known by their beginning too: `B06` is `B06-node-load-response-marlborough`.
"""

import re
from functools import cache
from pathlib import Path

import pytest

EVIDENCE = Path(__file__).resolve().parents[2] / "rules" / "evidence"
HERE = "tests/published/"
NO_CHECKS = ("test_worked_blocks.py", "test_evidence_named.py")  # worked out by hand, not printed anywhere; the counting itself
ID = re.compile(r"\b(?:[a-z]{2,3}-\d\d|[A-Z]\d\d(?:-[a-z0-9-]+)?)\b")


def is_check(item: pytest.Item) -> bool:
    """Whether a test holds the guide against print."""
    return item.nodeid.startswith(HERE) and not any(name in item.nodeid for name in NO_CHECKS)


def evidence_of(item: pytest.Item) -> list[str]:
    """The evidence that a test case names, each once."""
    cases = item.callspec.params.values() if hasattr(item, "callspec") else ()
    named = [one for value in cases if isinstance(value, str) for one in ids_in(value)]
    return named or ids_in(item.function.__doc__ or "")


def ids_in(text: str) -> list[str]:
    """The ids of evidence in a text, in full, each once."""
    found = (by_any_name().get(name) for name in ID.findall(text))
    return list(dict.fromkeys(name for name in found if name))


@cache
def by_any_name() -> dict[str, str]:
    """Every piece of evidence by its id and by the short form of a long one."""
    ids = [path.stem for path in EVIDENCE.glob("*.yml")]
    return {name.split("-")[0]: name for name in ids if name[0].isupper()} | {name: name for name in ids}
