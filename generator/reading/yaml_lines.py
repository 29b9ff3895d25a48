"""The one door to PyYAML: YAML text to plain data, with the line of every node and of every key.

Scalars follow the YAML 1.2 core schema (`010` excepted), so `no`, `on`, `yes`, `1:30`, `010` and ISO dates stay the text that the author wrote.
Anchors, aliases, merge keys, tags and a second document are refused: a rule file says everything once and in place.
Every fault is a `Problem` in plain words; nothing is raised for bad text.
"""

import re
from dataclasses import dataclass, field
from pathlib import Path

import yaml

from generator.problems import Problem
from generator.reading.yaml_faults import broken

Lines = dict[tuple, int]

LOADER = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
DEEPEST = 24
LONGEST_WHOLE = 15
WHOLE = re.compile(r"[-+]?(0|[1-9][0-9]*)")
DECIMAL = re.compile(r"[-+]?(\.[0-9]+|(0|[1-9][0-9]*)(\.[0-9]*)?)([eE][-+]?[0-9]{1,3})?")
WORDS = {
    "": None, "~": None, "null": None, "Null": None, "NULL": None,
    "true": True, "True": True, "TRUE": True, "false": False, "False": False, "FALSE": False,
}  # fmt: skip
NOT_DATA = object()


@dataclass
class _Open:
    """A list or mapping that is still being read: its data, its place, and the key or index that comes next."""

    data: dict | list
    path: tuple
    key: str | None = None
    keys: dict = field(default_factory=dict)


@dataclass
class _Reading:
    """The state of reading one file: what was found so far."""

    path: str
    lines: Lines = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    stack: list[_Open] = field(default_factory=list)
    root: object = NOT_DATA
    documents: int = 0

    def problem(self, line: int, sentence: str, next_step: str = "") -> None:
        """Notes a fault at a line."""
        self.problems.append(Problem(self.path, line, sentence, next_step))


def read_file(path: Path, shown: str) -> tuple[object, Lines, list[Problem]]:
    """The data of a YAML file, its lines and its problems; shown is the path that problems carry."""
    try:
        text = path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as error:
        return None, {}, [_not_utf8(error, shown)]
    except OSError as error:
        sentence = f"The file cannot be read ({error.strerror or 'unknown reason'})."
        return None, {}, [Problem(shown, 0, sentence, "Look at its name and its permissions.")]
    return read_text(text, shown)


def read_text(text: str, shown: str) -> tuple[object, Lines, list[Problem]]:
    """The data of a YAML text (None when it is broken or empty), the line of each place in it, and its problems.

    A place is the tuple of keys and indices that leads to it; for a field the line is that of its key.
    """
    reading = _Reading(shown)
    try:
        for event in yaml.parse(text, Loader=LOADER):
            _take(reading, event)
    except yaml.MarkedYAMLError as error:
        reading.problems.append(broken(error, text, shown))
        return None, {}, reading.problems
    except yaml.reader.ReaderError as error:
        line = text.count("\n", 0, error.position) + 1 if LOADER is yaml.SafeLoader else _control_line(text)
        sentence = "There is a sign that is not text (a control character)."
        return None, {}, [Problem(shown, line, sentence, "Delete it, or write the line again.")]
    except _Stop:
        return None, {}, reading.problems
    if reading.root is NOT_DATA and not reading.problems:
        reading.problem(1, "The file is empty.", "Write its fields, or remove the file.")
    root = None if reading.root is NOT_DATA else reading.root
    return root, reading.lines, reading.problems


class _Stop(Exception):
    """Reading cannot sensibly go on; the problem is noted already."""


def _take(reading: _Reading, event: yaml.Event) -> None:
    """Takes one event of the parser into the data."""
    line = event.start_mark.line + 1
    if isinstance(event, yaml.DocumentStartEvent):
        reading.documents += 1
        if reading.documents > 1:
            reading.problem(line, "The line `---` starts a second thing in this file.", "Put one thing in a file.")
            raise _Stop
    elif isinstance(event, yaml.AliasEvent):
        reading.problem(
            line,
            f"`*{event.anchor}` copies from another place, which rules do not do.",
            "Write it out; text is quoted.",
        )
        if _waits_for_key(reading):
            _key(reading, f"*{event.anchor}", line)
        else:
            _put(reading, None, line)
    elif isinstance(event, yaml.ScalarEvent):
        _refuse_marks(reading, event, line)
        _scalar(reading, event, line)
    elif isinstance(event, (yaml.MappingStartEvent, yaml.SequenceStartEvent)):
        _refuse_marks(reading, event, line)
        _open(reading, {} if isinstance(event, yaml.MappingStartEvent) else [], line)
    elif isinstance(event, (yaml.MappingEndEvent, yaml.SequenceEndEvent)):
        reading.stack.pop()


def _refuse_marks(reading: _Reading, event: yaml.Event, line: int) -> None:
    """Anchors and tags are refused, kindly."""
    if event.anchor is not None:
        reading.problem(
            line, f"`&{event.anchor}` marks this for copying, which rules do not do.", "Take it away; text is quoted."
        )
    if event.tag not in (None, "!"):
        tag = event.tag.replace("tag:yaml.org,2002:", "!!")
        reading.problem(line, f"`{tag}` is a YAML tag, and rules have none.", "Take it away; text is quoted.")


def _open(reading: _Reading, data: dict | list, line: int) -> None:
    """Starts a list or a mapping."""
    if len(reading.stack) >= DEEPEST:
        reading.problem(line, f"Lists and fields are nested more than {DEEPEST} deep.", "Write it flatter.")
        raise _Stop
    if _waits_for_key(reading):
        reading.problem(
            line,
            "A list or a group of fields stands where the name of a field should be.",
            "Put text with [ or { in quotes.",
        )
        raise _Stop
    reading.stack.append(_Open(data, _put(reading, data, line)))


def _scalar(reading: _Reading, event: yaml.ScalarEvent, line: int) -> None:
    """Takes a key (always text) or a value."""
    if _waits_for_key(reading):
        _key(reading, event.value, line)
        return
    plain = event.implicit[0] and event.tag is None
    _put(reading, core_value(event.value) if plain else event.value, line)


def _waits_for_key(reading: _Reading) -> bool:
    """True inside a mapping when the next scalar is the name of a field."""
    return bool(reading.stack) and isinstance(reading.stack[-1].data, dict) and reading.stack[-1].key is None


def _key(reading: _Reading, key: str, line: int) -> None:
    """Notes the name of a field; a name given twice is a problem and the second is read past."""
    inside = reading.stack[-1]
    if key == "<<":
        reading.problem(line, "`<<` copies fields from elsewhere, which rules do not do.", "Write them out.")
    if key in inside.keys:
        first = inside.keys[key]
        reading.problem(line, f"`{key}` is given twice; the first is on line {first}.", "Keep one of the two.")
    inside.keys.setdefault(key, line)
    inside.key = key


def _put(reading: _Reading, value: object, line: int) -> tuple:
    """Puts a value in its place; gives the place."""
    if not reading.stack:
        reading.root = value
        reading.lines[()] = line
        return ()
    inside = reading.stack[-1]
    if isinstance(inside.data, list):
        path = (*inside.path, len(inside.data))
        inside.data.append(value)
        reading.lines[path] = line
        return path
    path = (*inside.path, inside.key)
    if inside.key not in inside.data:
        inside.data[inside.key] = value
        reading.lines[path] = inside.keys[inside.key]
    inside.key = None
    return path


def core_value(text: str) -> object:
    """A plain scalar by the YAML 1.2 core schema; .inf, .nan, 010 and wholes too long to be exact stay text."""
    if text in WORDS:
        return WORDS[text]
    if WHOLE.fullmatch(text):
        return int(text) if len(text) <= LONGEST_WHOLE else text
    if DECIMAL.fullmatch(text):
        number = float(text)
        return number if abs(number) != float("inf") else text
    return text


def _not_utf8(error: UnicodeDecodeError, shown: str) -> Problem:
    """A file in another encoding, with the line of the first byte that does not fit."""
    line = error.object.count(b"\n", 0, error.start) + 1
    return Problem(shown, line, "The file is not in UTF-8.", "Save it as UTF-8 (every text editor offers it).")


def _control_line(text: str) -> int:
    """The line of the first control character (the fast parser tells only that there is one)."""
    match = re.search(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff\ufffe\uffff]", text)
    return text.count("\n", 0, match.start()) + 1 if match else 1
