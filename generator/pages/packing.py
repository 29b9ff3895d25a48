"""The data of a page as it is sent: without what follows from the rest, and like records as rows. assets/data.js makes it whole.

Sentences and words of a table travel in the table, each beside the id that it would only repeat.
"""

import json
from typing import Any

from generator.answers.catalogue import WORK
from generator.reading.rulebook import Rulebook

SAFE = 2.0**53
Record = dict[str, Any]


def add(data: Record) -> str:
    """The call that gives a page its data."""
    return f"Guide.add({json.dumps(packed(data), ensure_ascii=False, separators=(',', ':'))});"


def bare_tables(rulebook: Rulebook, tables: list[Record], told: set[str], sourced: bool = True) -> list[Record]:
    """The engine's tables with their texts. told are those whose sentences the page says; the others bring only what their
    outcomes are called and ask to be done besides. sourced: with the sources and cautions of their rows."""
    return [_table(rulebook, table, table["id"] in told, sourced) for table in tables]


def _table(rulebook: Rulebook, table: Record, told: bool, sourced: bool) -> Record:
    """One table."""
    decision = rulebook.decisions[table["id"]]
    because = {row.id: row.because if told else "" for row in decision.rows}
    left_out = () if sourced else ("sources", "cautions")
    outcomes = {one.id: {"says": one.says if told else "", "label": one.label} | _work(one, told) for one in decision.outcomes}
    return {
        **_without(table, "word"),
        "title": decision.title,
        "columns": [_column(column) for column in table["columns"]],
        "rows": [_without(row, *left_out) | _row(row, because[row["id"]]) for row in table["rows"]],
        "outcomes": [_without(one, "word") | outcomes[one["id"]] | {"sums": list(map(_span, one["sums"]))} for one in table["outcomes"]],
    }


def _column(column: Record) -> Record:
    """A column: kind is 1 where it is derived, 2 where it is computed, else 0."""
    kind = 1 if column["derived"] else 2 if column["computed"] else 0
    return {"fact": column["fact"], "kind": kind, "points": _counted(column["points"])}


def bare_candidates(candidates: list[Record]) -> list[Record]:
    """The values worth trying of each fact."""
    return [one | {"numbers": _counted(one["numbers"])} for one in candidates]


def _counted(numbers: list[float]) -> list[float] | int:
    """Numbers that only count up from 0, as those of a choice do, as how many they are."""
    return len(numbers) if numbers == [float(k) for k in range(len(numbers))] else numbers


def _work(outcome: Any, told: bool) -> Record:
    """What an outcome means for the work, as texts: the action always, the rest where the table is told."""
    return {kind: getattr(outcome, kind) if told or kind == "action" else "" for kind in WORK}


def _row(row: Record, because: str) -> Record:
    """What is sent of a row in another way than the engine has it; nothing leads to a row whose sentence is not said."""
    return {"id": row["id"] if because else "", "because": because, "cells": _cells(row)}


def _cells(row: Record) -> list[list]:
    """The cells of a row as [column, spans]."""
    return [[cell["column"], list(map(_span, cell["spans"]))] for cell in row["cells"]]


def _span(span: Record) -> float | list:
    """A span as its number where it is one point, else as [low, low_in, high, high_in]."""
    return span["low"] if span["low"] == span["high"] else list(span.values())


def bare_catalogue(catalogue: Record) -> Record:
    """The catalogue with the units that its facts and sentences use, and each sentence as texts, numbers (0, 1, ...) and words
    (-1, -2, ...) in their order."""
    used = {fact["unit"] for fact in catalogue["facts"]} | {""}
    used |= {number["unit"] for form in catalogue["forms"] for number in form["numbers"]}
    return {
        **catalogue,
        "units": [unit for unit in catalogue["units"] if unit["id"] in used],
        "facts": [_fact(fact) for fact in catalogue["facts"]],
        "forms": [form | {"parts": list(map(_part, form["parts"])), "one": list(map(_part, form["one"]))} for form in catalogue["forms"]],
    }


def _fact(fact: Record) -> Record:
    """A fact without its word and letters; its default as a number, or nothing; a label that its choice's id spells left out."""
    labels = ["" if label == spelt(choice) else label for choice, label in zip(fact["choices"], fact["labels"])]
    default = fact["default"]["number"] if fact["default"]["ok"] else None
    return _without(fact, "word", "code") | {"labels": labels, "default": default}


def spelt(choice: str) -> str:
    """The id of a choice as a name: `pinot_noir` is Pinot Noir."""
    return " ".join(word[:1].upper() + word[1:] for word in choice.split("_"))


def _part(part: Record) -> str | int:
    """A part of a sentence."""
    if part["number"] >= 0:
        return part["number"]
    return -1 - part["word"] if part["word"] >= 0 else part["text"]


def _without(record: Record, *names: str) -> Record:
    """The record without some of its fields."""
    return {name: part for name, part in record.items() if name not in names}


def packed(data: Any) -> Any:
    """The data with each list of like records as one list of names and, for each name, the list of its values; what is equal in all of
    them stands once, in the place of the list (a list itself does not, so that the two are told apart); `Guide.add` unpacks it. A whole number is written without its `.0`, which JavaScript does not tell from it."""
    if isinstance(data, float) and data.is_integer() and abs(data) < SAFE:
        return int(data)
    if isinstance(data, dict):
        return {name: packed(part) for name, part in data.items()}
    if not isinstance(data, list):
        return data
    if len(data) > 1 and all(isinstance(one, dict) for one in data) and len({tuple(one) for one in data}) == 1:
        columns = [[packed(one[name]) for one in data] for name in data[0]]
        return {"$": list(data[0]), "_": columns[:1] + [_once(column) for column in columns[1:]]}
    return [packed(one) for one in data]


def _once(column: list) -> Any:
    """A column of values, or the one text, number or nothing that all of them are."""
    first = column[0]
    return first if not isinstance(first, (list, dict)) and all(type(one) is type(first) and one == first for one in column) else column
