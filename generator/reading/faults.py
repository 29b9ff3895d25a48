"""Faults of shape in the words of an author: which field of which row, what it should be, and what is near."""

import re
from dataclasses import dataclass

from generator.problems import Problem
from generator.reading.documents import Document
from generator.reading.near import nearest, suggestion

SHORT = 40
CALLED = {"ids": "ledger of ids", "hands": "page for the hands"}
COMMA = "A comma parts fields: write decimals with a point."
DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
TYPES = {
    "string": ("should be text", 'Put it in quotes if it is meant as text: "{found}".'),
    "number": ("should be a number", "Write it plainly, with a point for decimals and without unit or quotes."),
    "integer": ("should be a whole number", "Write it plainly, without unit or quotes."),
    "boolean": ("should be true or false", ""),
    "array": ("should be a list", "Write `[{found}]`, or start each entry on a line of its own with `- `."),
    "object": ("should hold fields (`name: ...`)", "Write its fields below it, indented by two spaces more."),
}


@dataclass(frozen=True)
class Fault:
    """What a schema found: the rule that was broken, what it asked, what it found, at which place, by which steps."""

    rule: str
    asked: object
    found: object
    schema: dict
    place: tuple
    steps: tuple


def worded(document: Document, schema: dict, fault: Fault) -> list[Problem]:
    """The fault as problems at their lines; schema is the whole schema of the item."""
    nouns = _nouns(schema, fault)
    problems = []
    for place, said, step in _say(document, schema, fault, nouns):
        crumbs, field = _crumbs(document, place, nouns)
        owner = crumbs or ("" if field else f"This {CALLED.get(document.kind, document.kind)}")
        subject = ": ".join(filter(None, (owner, field and f"`{field}`")))
        problems.append(document.problem(place, f"{subject[0].upper()}{subject[1:]} {said}.", step))
    return problems


def _say(document: Document, schema: dict, fault: Fault, nouns: list[str]) -> list[tuple[tuple, str, str]]:
    """For each thing wrong: its place, the words after the subject, and the next step."""
    place = fault.place
    if fault.rule == "additionalProperties":
        return _extra(fault, _owner(document, fault, nouns))
    if fault.rule == "required":
        return _needed(schema, fault)
    if fault.rule == "dependentRequired":
        first, missing = _dependent(fault)
        return [((*place, first), f"needs `{missing}` beside it", f"Write `{missing}`, or take `{first}` away.")]
    if fault.rule == "x-unique":
        return [(place, f"is `{fault.found}` a second time", "Give each its own; what was published first keeps it.")]
    if fault.rule == "uniqueItems":
        twice = next(index for index, entry in enumerate(fault.found) if entry in fault.found[:index])
        return [((*place, twice), f"names `{fault.found[twice]}` a second time", "Name each once.")]
    return [(place, *_wrong(fault))]


def _wrong(fault: Fault) -> tuple[str, str]:
    """The words and the next step for a field whose content is wrong."""
    help_text = fault.schema.get("description", "")
    if fault.found is None or fault.rule == "minLength":
        return "is empty", help_text
    if fault.rule == "enum":
        return f"cannot be {_shown(fault.found)}", suggestion(str(fault.found), [str(word) for word in fault.asked])
    message = fault.schema.get("x-message", "")
    if fault.rule == "not":
        return message, "Take it away, or look at the field it goes with."
    if fault.rule == "format" and DAY.fullmatch(str(fault.found)):
        return f"is no day of the calendar ({_shown(fault.found)})", help_text
    if message:
        found = "" if isinstance(fault.found, (dict, list)) else f"; it is {_shown(fault.found)}"
        return f"{message}{found}", help_text
    if fault.rule == "type":
        return _type(fault)
    if fault.rule == "minItems":
        few = "is empty" if not fault.found else f"needs at least {fault.asked} entries"
        return few, help_text
    return "is not as it should be", help_text


def _type(fault: Fault) -> tuple[str, str]:
    """Text where a number should be, a list where text should be, and so on."""
    said, step = TYPES[fault.asked if isinstance(fault.asked, str) else fault.asked[0]]
    if fault.asked == "object" and fault.schema.get("required"):
        step = f"Write its fields: {', '.join(fault.schema['required'])}."
    if isinstance(fault.found, (dict, list)):
        return said, step.replace("{found}", "...")
    return f"{said}; it is {_shown(fault.found)}", step.replace("{found}", str(fault.found))


def _extra(fault: Fault, owner: str) -> list[tuple[tuple, str, str]]:
    """Fields that do not exist, each with the nearest that does."""
    known = fault.schema.get("properties", {})
    free = [name for name in known if name not in fault.found]
    listed = f"Its fields are: {', '.join(known)}."
    return [
        (
            (*fault.place, extra),
            f"is not a field of {owner}",
            COMMA if extra.isdigit() else suggestion(extra, free, listed),
        )
        for extra in fault.found
        if extra not in known
    ]


def _owner(document: Document, fault: Fault, nouns: list[str]) -> str:
    """What a field was written in: a row, a figure, a fact, `reviewed`."""
    if fault.place and isinstance(fault.place[-1], str):
        return f"`{fault.place[-1]}`"
    noun = nouns[-1] if fault.place and nouns else CALLED.get(document.kind, document.kind)
    return f"{'an' if noun[0] in 'aeiou' else 'a'} {noun}"


def _needed(schema: dict, fault: Fault) -> list[tuple[tuple, str, str]]:
    """The fields that are missing, and what the first is for; those that are there misspelt are told where they stand."""
    fields = fault.schema.get("properties") or (schema.get("properties", {}) if not fault.place else {})
    misspelt = {nearest(name, fields) for name in fault.found if name not in fields}
    missing = [name for name in fault.asked if name not in fault.found and name not in misspelt]
    if not missing:
        return []
    told = fields.get(missing[0], {}).get("description", "")
    listed = ", ".join(f"`{name}`" for name in missing[:-1])
    listed = f"{listed} and `{missing[-1]}`" if listed else f"`{missing[-1]}`"
    return [(fault.place, f"needs {listed}", f"`{missing[0]}`: {told}" if told else f"Write `{missing[0]}`.")]


def _dependent(fault: Fault) -> tuple[str, str]:
    """The field that stands there and the one that is missing beside it."""
    for first, others in fault.asked.items():
        for other in others:
            if first in fault.found and other not in fault.found:
                return first, other
    return "", ""


def _crumbs(document: Document, place: tuple, nouns: list[str]) -> tuple[str, str]:
    """Where the fault is (`row B2, source 1`) and the field that it is about, empty when it is the entry itself."""
    called = iter(nouns)
    names, inside = [], document.data
    for step in place:
        if isinstance(step, int):
            inside = inside[step]
            names.append(f"{next(called, 'entry')} {_name(inside, step)}")
        else:
            inside = inside.get(step) if isinstance(inside, dict) else None
    field = place[-1] if place and isinstance(place[-1], str) else ""
    return ", ".join(names), field


def _nouns(schema: dict, fault: Fault) -> list[str]:
    """What one entry is called, for each list on the way to the fault."""
    part: object = schema
    nouns = []
    for step in fault.steps:
        if step == "items" and isinstance(part, dict):
            nouns.append(part.get("x-one", "entry"))
        if isinstance(part, list) or (isinstance(part, dict) and step in part):
            part = part[step]
    if fault.rule in ("x-unique", "uniqueItems"):
        nouns.append(fault.schema.get("x-one", "entry"))
    return nouns


def _name(entry: object, index: int) -> str:
    """What an entry of a list is called: its id or name, else its place from 1."""
    if isinstance(entry, dict):
        for field in ("id", "name"):
            if isinstance(entry.get(field), str) and entry[field]:
                return entry[field] if field == "id" else f"“{entry[field]}”"
    return str(index + 1)


def _shown(found: object) -> str:
    """What was found, short, as code."""
    if isinstance(found, (dict, list)):
        return "a list" if isinstance(found, list) else "a group of fields"
    text = str(found).lower() if isinstance(found, bool) else str(found)
    return f"`{text if len(text) <= SHORT else text[: SHORT - 1] + '…'}`"
