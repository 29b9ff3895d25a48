"""The same arguments through Python and a JavaScript engine, compared bit for bit; no tolerance anywhere."""

import ast
import inspect
from collections.abc import Callable
from dataclasses import dataclass, field
from types import ModuleType
from typing import Any

from tests.parity.encoding import Encode, answer, encoder, shorten
from tests.parity.engines import Run, answers
from tests.parity.numbers import signature

TOO_LARGE = "!OverflowError: whole number beyond 2**53"


@dataclass
class Sample:
    """Calls of one function: its arguments as values and encoded, and what Python answers to each."""

    module: str
    name: str
    cases: list[list]
    encoded: list[Any]
    ours: list[str]
    raised: set[str]


@dataclass
class Report:
    """What a comparison found: the engine; cases run; those that differ (encoded arguments, Python, JavaScript); those where JavaScript stops at a whole
    number beyond 2**53, where Python goes on (but Python's own ValueError, such as for int(nan), must be told by both)."""

    function: str
    engine: str
    cases: int
    wrong: list[tuple[list, str, str]] = field(default_factory=list)
    stopped: list[list] = field(default_factory=list)

    def __str__(self) -> str:
        """One line of numbers, then the first few that differ."""
        first = f"{self.function} in {self.engine}: {self.cases:,} cases, {len(self.wrong)} wrong, {len(self.stopped)} stopped at 2**53"
        rows = [f"  {given}\n    Python     {ours:.400}\n    JavaScript {theirs:.400}" for given, ours, theirs in self.wrong[:3]]
        return "\n".join([first, *rows])


def raised_texts(modules: list[ModuleType]) -> set[str]:
    """The texts of all ValueErrors that the modules raise themselves."""
    trees = [ast.parse(inspect.getsource(module)) for module in modules]
    raises = [node.exc for tree in trees for node in ast.walk(tree) if isinstance(node, ast.Raise)]
    return {call.args[0].value for call in raises if isinstance(call, ast.Call) and isinstance(call.args[0], ast.Constant)}


def sample(function: Callable[..., object], cases: list[list], raised: set[str]) -> Sample:
    """The calls and Python's answers. Raises TypeError where an answer is not of the annotated type."""
    types, result = signature(function)
    encode = [encoder(part) for part in types]
    once: dict[tuple[int, int], Any] = {}
    encoded = [[_encoded(once, place, encode, part) for place, part in enumerate(case)] for case in cases]
    ours = [answer(function, case, encoder(result), raised) for case in cases]
    return Sample(function.__module__.rsplit(".", 1)[-1], function.__name__, cases, encoded, ours, raised)


def _encoded(once: dict[tuple[int, int], Any], place: int, encode: list[Encode], part: Any) -> Any:
    """An encoded argument; the same object gives the same one, so that it travels once."""
    key = (place, id(part))
    if key not in once:
        once[key] = encode[place](part)
    return once[key]


def compare(calls: Sample, run: Run) -> Report:
    """Run the same calls in JavaScript and tell what differs."""
    report = Report(f"{calls.module}.{calls.name}", run.engine, len(calls.cases))
    came = answers(run, calls.module, calls.name, calls.encoded)
    for case, ours, theirs in zip(calls.encoded, calls.ours, came, strict=True):
        if ours == shorten(theirs, calls.raised):
            continue
        if theirs == TOO_LARGE and ours != "!ValueError":
            report.stopped.append(case)
        else:
            report.wrong.append((case, ours, theirs))
    return report
