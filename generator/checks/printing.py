"""Problems for people, for the annotations of a code host, and as JSON."""

import json

from generator.problems import Problem


def as_text(problems: list[Problem]) -> str:
    """One paragraph for each problem: `path:line: sentence`, then the next step, indented; the check that can be
    explained last."""
    return "\n".join(f"{problem}{f'  [{problem.check}]' if problem.check else ''}" for problem in problems)


def as_annotations(problems: list[Problem]) -> str:
    """One line for each problem in the form that code hosts turn into a note beside the line."""
    return "\n".join(_annotation(problem) for problem in problems)


def as_json(problems: list[Problem]) -> str:
    """A JSON list of {path, line, sentence, next_step, check}."""
    found = [
        {"path": one.path, "line": one.line, "sentence": one.sentence, "next_step": one.next_step, "check": one.check}
        for one in problems
    ]
    return json.dumps(found, indent=2, ensure_ascii=False)


def _annotation(problem: Problem) -> str:
    """One problem; what the form reserves is escaped. Without a line a code host shows it nowhere."""
    place = f"file={_property(problem.path)},line={max(1, problem.line)}"
    title = f",title={_property(problem.check)}" if problem.check else ""
    return f"::error {place}{title}::{_data(' '.join(filter(None, (problem.sentence, problem.next_step))))}"


def _data(text: str) -> str:
    """Text after the colons."""
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def _property(text: str) -> str:
    """Text between the commas."""
    return _data(text).replace(":", "%3A").replace(",", "%2C")
