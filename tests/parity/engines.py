"""The JavaScript engines that the tests run the shipped scripts in: V8 (mini-racer) and QuickJS-ng, unrelated to each other."""

import json
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import quickjs
from py_mini_racer import MiniRacer

DRIVER = (Path(__file__).parent / "driver.js").read_text(encoding="utf-8")
BATCH = 2_000


@dataclass(frozen=True)
class Run:
    """An engine with scripts loaded: its name, and what answers a batch of calls (module, function, arguments as JSON)."""

    engine: str
    call: Callable[[str, str, str], str]


def v8(script: str) -> Run:
    """V8 with the script and the driver loaded: parity(module, function, batch)."""
    engine = MiniRacer()
    engine.eval(script)
    engine.eval(DRIVER)
    return Run("V8", lambda *given: engine.call("parity", *given))


def quickjs_ng(script: str) -> Run:
    """QuickJS-ng with the same."""
    engine = quickjs.Context()
    engine.eval(script)
    engine.eval(DRIVER)
    return Run("QuickJS-ng", engine.get("parity"))


ENGINES: dict[str, Callable[[str], Run]] = {"V8": v8, "QuickJS-ng": quickjs_ng}


def answers(run: Run, module: str, function: str, cases: list[list]) -> list[str]:
    """What the engine answers to each list of encoded arguments, in batches."""
    found: list[str] = []
    for start in range(0, len(cases), BATCH):
        found += json.loads(run.call(module, function, as_batch(cases[start : start + BATCH])))
    return found


def as_batch(cases: list[list]) -> str:
    """Calls as the driver takes them: an argument that is the very same object in several calls, such as a table, travels once.

    Were a function to change such an argument, later calls would differ from Python's."""
    times = Counter(id(part) for case in cases for part in case if isinstance(part, (list, dict)))
    parts = {id(part): part for case in cases for part in case if times[id(part)] > 1}
    places = {key: place for place, key in enumerate(parts)}
    short = [[{"$": places[id(part)]} if id(part) in places else part for part in case] for case in cases]
    return json.dumps({"shared": list(parts.values()), "cases": short})
