"""Python's side of the comparison: arguments and answers as text, numbers as the 16 hex digits of their 8 bytes."""

import json
import struct
from collections.abc import Callable, Collection
from functools import cache
from typing import Any, get_args

from tests.parity.numbers import LARGEST, fields

Encode = Callable[[Any], Any]


def number(value: float) -> str:
    """The 8 bytes of a number; every nan is the same; an int that JavaScript cannot hold is written out."""
    if isinstance(value, int) and abs(value) > LARGEST:
        return f"int {value}"
    return "nan" if value != value else "n" + struct.pack(">d", value).hex()


@cache
def encoder(wanted: Any) -> Encode:
    """What turns a value of the annotated type into what the driver wants.

    It raises TypeError for a value of another type: an int where a float is written would be told apart nowhere else.
    """
    if wanted is bool:
        encode: Encode = bool
    elif wanted is str:
        encode = "s".__add__
    elif wanted in (int, float):
        encode = number
    elif items := get_args(wanted):
        part = encoder(items[0])
        return lambda value: [part(item) for item in value]
    else:
        parts = [(name, encoder(part)) for name, part in fields(wanted).items()]
        encode = lambda value: {name: part(getattr(value, name)) for name, part in parts}  # noqa: E731

    def checked(value: Any) -> Any:
        if type(value) is not wanted:
            raise TypeError(f"{value!r} is {type(value).__name__}, {wanted.__name__} is written")
        return encode(value)

    return checked


def answer(function: Callable[..., object], arguments: list, encode: Encode, raised: Collection[str]) -> str:
    """What the Python function answers, as the driver writes it; an error as its name, and its text where our code raised it."""
    try:
        value = function(*arguments)
    except (ValueError, ArithmeticError, IndexError) as error:
        return shorten(f"!{type(error).__name__}: {error}", raised)
    return json.dumps(encode(value), ensure_ascii=False, separators=(",", ":"))


def shorten(text: str, raised: Collection[str]) -> str:
    """An error's text counts where it stands in a raise of a calculator; Python's own texts change between its versions."""
    name, _, said = text.partition(": ")
    return text if not text.startswith("!") or said in raised else name
