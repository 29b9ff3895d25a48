"""plan: the pruning plan of a block from a file of its facts, to read or as JSON."""

import argparse
import json
import textwrap
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from generator.answers.compute import BadInput, plan
from generator.calculators.plan_system import SYSTEM
from generator.cli.rules import read_readable
from generator.problems import Problem, ProblemsFound
from generator.reading.rulebook import Rulebook
from generator.reading.yaml_lines import Lines, read_file
from generator.setting_up.telling import say

WIDTH = 100
INDENT = "   "


def run(options: argparse.Namespace) -> int:
    """Print the plan. One line a fault of the block's file, with its line, and status 2 when it will not do."""
    rulebook = read_readable(options)
    try:
        facts, name, lines = _read(options.block)
        found = plan(rulebook, facts)
    except ProblemsFound as faults:
        say(str(faults))
        return 2
    except BadInput as bad:
        for fault in bad.faults:
            say(f"{options.block}:{_line(lines, fault.split(':')[0])}: {fault}")
        return 2
    if options.json:
        print(json.dumps(found, indent=2, ensure_ascii=False))
    else:
        print("\n".join(_sheet(rulebook, name, found)))
    return 0


def _read(file: str) -> tuple[dict[str, Any], str, Lines]:
    """The facts of a block's file, its name, and the lines of what it says. Raises ProblemsFound.

    A file is like those in rules/blocks/, or holds the facts alone.
    """
    data, lines, problems = read_file(Path(file), file)
    facts = data.get("facts", data) if isinstance(data, dict) else None
    if not problems and not isinstance(facts, dict):
        example = "Write a fact a line, like `row_spacing_m: 2.4`; `unknown` where it was looked for in vain."
        problems = [Problem(file, 1, "There are no facts in this file.", example)]
    if problems:
        raise ProblemsFound(problems)
    return facts, str(data.get("name") or Path(file).stem), lines


def _line(lines: Lines, fact: str) -> int:
    """The line on which a fact stands; 1 when it stands nowhere."""
    return lines.get(("facts", fact)) or lines.get((fact,)) or 1


def _sheet(rulebook: Rulebook, name: str, found: dict[str, Any]) -> Iterator[str]:
    """The lines of the plan for a terminal: the parts in the order of the work, what to find out, what was assumed."""
    yield name
    yield from _wrapped(found["plan"]["headline"]["text"], "")
    yield from _parts(rulebook, found["plan"]["parts"], found["would_change"])
    yield ""
    if found["plan"]["ask_next"]:
        yield f"Find out next: {rulebook.facts[found['plan']['ask_next']].ask}"
    if found["plan"]["assumed"]:
        yield from _wrapped("Assumed, because nobody gave it: " + _labels(rulebook, found["plan"]["assumed"]), "")
    if found["cautions"]:
        yield ""
        yield "Take care"
        for caution in found["cautions"]:
            yield from _wrapped(f"{caution['label']}. {caution['text']} {caution['defer']}".rstrip(), INDENT + "- ")
    if found["sources"]:
        yield ""
        yield from _wrapped("Sources: " + _sources(found["sources"]), "")
    yield ""
    yield f"The same on the page: {found['link']}"
    yield f"Rules {rulebook.version}, edition {rulebook.edition.id}."


def _parts(rulebook: Rulebook, parts: list[dict[str, Any]], changes: list[dict[str, Any]]) -> Iterator[str]:
    """The parts under the stages of the work, numbered as on the page: the answer and what to mind first, then why; under the
    system what would change it."""
    number, stage = 0, ""
    for part in parts:
        yield ""
        if part["stage"] != stage:
            number, stage = number + 1, part["stage"]
            yield f"{number}. {rulebook.stages[stage].title}"
        yield from _wrapped(part["headline"]["text"], INDENT)
        for note in part["notes"]:
            yield from _wrapped(note["text"], INDENT + "- ")
        if part["needs"]:
            yield from _wrapped("Still needed: " + _labels(rulebook, part["needs"]), INDENT)
        if part["lines"]:
            yield INDENT + "Why, and how it was worked out:"
        for line in part["lines"]:
            yield from _wrapped(line["text"], INDENT * 2 + "- ")
        if part["id"] == SYSTEM and changes:
            yield INDENT + "What would change it:"
            for change in changes:
                yield from _wrapped(change["text"], INDENT * 2 + "- ")


def _labels(rulebook: Rulebook, facts: list[str]) -> str:
    """The labels of facts, in a row."""
    return ", ".join(rulebook.facts[fact].label for fact in facts) + "."


def _sources(sources: list[dict[str, Any]]) -> str:
    """The ids of sources by standing; the data (`--json`) says who printed each."""
    by_standing: dict[str, list[str]] = {}
    for source in sources:
        by_standing.setdefault(source["standing"].replace("_", " "), []).append(source["id"])
    return "; ".join(f"{standing}: {', '.join(ids)}" for standing, ids in by_standing.items()) + "."


def _wrapped(text: str, first: str) -> list[str]:
    """A sentence as lines of a terminal's width; the first begins with `first`, the others are set in as far."""
    return textwrap.wrap(text, WIDTH, initial_indent=first, subsequent_indent=" " * len(first))
