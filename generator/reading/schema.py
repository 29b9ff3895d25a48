"""The one door to jsonschema: is the plain data of an item of the right shape?

Each kind has a JSON Schema (2020-12) in schemas/. Our own keywords in it: `x-message` completes the sentence "`field` ..." when
something is wrong with the field; `x-one` names one entry of a list; `x-unique` names the field in which entries must differ.
"""

import json
from collections.abc import Iterator
from datetime import date
from functools import cache
from pathlib import Path

from jsonschema import Draft202012Validator, FormatChecker, ValidationError, validators

from generator.problems import Problem
from generator.reading.documents import FOLDERS, Document
from generator.reading.faults import Fault, worded

FOLDER = Path(__file__).parent / "schemas"
WHOLE_FILES = {"message": "messages", "unit": "units"}


@cache
def schema(kind: str) -> dict:
    """The schema of one item of a kind, with what it shares with others written out in place."""
    return _inline(_load(kind))


def file_schema(kind: str) -> dict:
    """The schema of a whole file of a kind, for editors: files of messages and of units hold many items."""
    return schema(WHOLE_FILES.get(kind, kind))


def check_shape(document: Document) -> list[Problem]:
    """What is wrong with the shape of an item, at the lines where it is wrong."""
    elsewhere = _meant_for(document)
    if elsewhere:
        sentence = f"This has the fields of a {elsewhere}, and stands where a {document.kind} should."
        folder = next(folder for folder, kind in FOLDERS.items() if kind == elsewhere)
        return [document.problem((), sentence, f"Move it to the folder {folder}/.")]
    problems = []
    for error in _validator(document.kind).iter_errors(document.data):
        for precise in _precise(error):
            problems += worded(document, schema(document.kind), _fault(precise))
    return list(dict.fromkeys(problems))


def _meant_for(document: Document) -> str:
    """The kind whose fields an item has when it has not those of its own: a file saved in the wrong folder."""
    if (
        document.kind not in FOLDERS.values()
        or not isinstance(document.data, dict)
        or _has_fields(document.kind, document.data)
    ):
        return ""
    others = (kind for kind in FOLDERS.values() if kind != "message" and _has_fields(kind, document.data))
    return next(others, "")


def _has_fields(kind: str, data: dict) -> bool:
    """True when every field that a kind needs is there, and there is none that it does not know."""
    return set(schema(kind).get("required", ())) <= data.keys() <= schema(kind).get("properties", {}).keys()


def _precise(error: ValidationError) -> Iterator[ValidationError]:
    """Of a choice between shapes, the errors of the shape that the author meant; else the error itself."""
    if error.validator != "anyOf":
        yield error
        return
    for index, branch in enumerate(error.validator_value):
        if "type" in branch and Draft202012Validator({"type": branch["type"]}).is_valid(error.instance):
            for inner in error.context:
                if inner.relative_schema_path[0] == index:
                    yield from _precise(inner)
            return
    yield error


def _fault(error: ValidationError) -> Fault:
    """The error as plain data, so that wording it needs no jsonschema."""
    return Fault(
        rule=error.validator,
        asked=error.validator_value,
        found=error.instance,
        schema=error.schema,
        place=tuple(error.absolute_path),
        steps=tuple(error.absolute_schema_path),
    )


def _unique(_validator: object, field: str, entries: object, _schema: dict) -> Iterator[ValidationError]:
    """The keyword `x-unique`: no two entries of a list have the same text in this field."""
    seen = set()
    for index, entry in enumerate(entries if isinstance(entries, list) else []):
        name = entry.get(field) if isinstance(entry, dict) else None
        if isinstance(name, str) and name in seen:
            yield ValidationError(name, path=[index, field], instance=name)
        elif isinstance(name, str):
            seen.add(name)


formats = FormatChecker(formats=())


@formats.checks("date")
def _is_date(found: object) -> bool:
    """The format `date`: year-month-day and a day of the calendar. (Anything but text is the business of `type`.)"""
    if not isinstance(found, str):
        return True
    try:
        return date.fromisoformat(found).isoformat() == found
    except ValueError:
        return False


Validator = validators.extend(Draft202012Validator, {"x-unique": _unique})


@cache
def _validator(kind: str) -> Validator:
    """The validator of a kind, made once."""
    return Validator(schema(kind), format_checker=formats)


@cache
def _load(name: str) -> dict:
    """A schema file as it is written."""
    return json.loads((FOLDER / f"{name}.json").read_text(encoding="utf-8"))


def _inline(part: object) -> object:
    """The schema with every reference to a neighbouring file replaced by what it points to; words beside a reference win."""
    if isinstance(part, list):
        return [_inline(entry) for entry in part]
    if not isinstance(part, dict):
        return part
    found = _target(part["$ref"]) if "$ref" in part else {}
    return {**found, **{key: _inline(value) for key, value in part.items() if key != "$ref"}}


def _target(reference: str) -> dict:
    """What `common.json#/$defs/cites` or `message.json` points to, without the dialect (which only a whole file names)."""
    file, _, place = reference.partition("#/$defs/")
    whole = _load(file.removesuffix(".json"))
    found = _inline(whole["$defs"][place] if place else whole)
    return {key: value for key, value in found.items() if key != "$schema"}
