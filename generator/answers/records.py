"""Records to plain data and back, so that pages and Python work on the same dictionaries."""

from dataclasses import fields, is_dataclass
from typing import Any, get_args, get_origin, get_type_hints

from generator.calculators.facts import Maybe


def plain(thing: Any) -> Any:
    """A record as a dictionary by field name, lists as lists, everything else as it is: ready for JSON."""
    if is_dataclass(thing):
        return {field.name: plain(getattr(thing, field.name)) for field in fields(thing)}
    if isinstance(thing, (list, tuple)):
        return [plain(one) for one in thing]
    return thing


def opened(thing: Any) -> Any:
    """The same for people and other programs: a number that may be left out is that number, and what was left out is not there."""
    if isinstance(thing, list):
        return [opened(one) for one in thing]
    if not is_dataclass(thing):
        return thing
    if isinstance(thing, Maybe):
        return thing.number
    named = {field.name: getattr(thing, field.name) for field in fields(thing)}
    return {name: opened(x) for name, x in named.items() if not isinstance(x, Maybe) or x.ok}


def record(kind: Any, data: Any) -> Any:
    """The record of the given class (or list[class]) from plain data. Raises KeyError for a missing field."""
    if get_origin(kind) is list:
        return [record(get_args(kind)[0], one) for one in data]
    if is_dataclass(kind):
        hints = get_type_hints(kind)
        return kind(**{field.name: record(hints[field.name], data[field.name]) for field in fields(kind)})
    return float(data) if kind is float else data
