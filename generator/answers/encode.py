"""The rulebook as plain data for the pages: dictionaries with exactly the field names of the calculators' records.

Python makes records of the same dictionaries with `record(cls, data)` of records.py. Every function returns data that
json.dumps takes; lists keep the order that pages show.
"""

from collections.abc import Iterable
from dataclasses import fields
from importlib import import_module
from typing import Any, get_type_hints

from generator.answers.catalogue import catalogue, message_form, message_forms, messages, words
from generator.answers.figures import figures
from generator.answers.records import plain, record
from generator.answers.specs import fact_specs, unit_specs
from generator.answers.tables import base_facts, candidates_for, feeding_order, tables_for, tables_of_form
from generator.calculators.tables import Table
from generator.reading.items import Value
from generator.reading.rulebook import Rulebook

TABLES = "tables"  # the field of a Values record that holds the decision tables a calculator asks


def encode_facts(rulebook: Rulebook, ids: Iterable[str] | None = None) -> list[dict]:
    """specs.FactSpec of the facts (all when no ids are given), in the order of the rulebook."""
    return plain(fact_specs(rulebook, None if ids is None else list(ids)))


def encode_tables(rulebook: Rulebook, decision: str) -> list[dict]:
    """tables.Table of the decision and of all that feed it, feeding tables first."""
    return plain(tables_for(rulebook, decision))


def encode_candidates(rulebook: Rulebook, decision: str) -> list[dict]:
    """changes.Candidates of every base fact that the decision reaches: the last argument but one of would_change."""
    return plain(candidates_for(rulebook, decision))


def decision_facts(rulebook: Rulebook, decision: str) -> list[str]:
    """Ids of the base facts that the decision and its feeding tables ask, in the order of the rulebook."""
    return base_facts(rulebook, feeding_order(rulebook, decision))


def encode_messages(rulebook: Rulebook, prefixes: Iterable[str]) -> list[dict]:
    """wording.MessageForm of the messages whose ids begin so (`vine_density.`, `guard.`, `answers.`, `pruning_wood.`)."""
    return plain(message_forms(rulebook, prefixes))


def encode_form(rulebook: Rulebook, message: str) -> dict:
    """wording.MessageForm of one message. Raises KeyError when there is none."""
    return plain(message_form(messages(rulebook)[message]))


def encode_words(rulebook: Rulebook, prefixes: Iterable[str] = ("",)) -> list[dict]:
    """wording.Word of the words whose ids begin so (`fact.`, `choice.climate.`, `outcome.pruning_wood.`, `decision.`,
    `term.`)."""
    return plain(words(rulebook, prefixes))


def encode_units(rulebook: Rulebook) -> list[dict]:
    """specs.UnitSpec of all units; the first has the id ""."""
    return plain(unit_specs(rulebook))


def encode_catalogue(rulebook: Rulebook, messages: Iterable[str], words: Iterable[str], facts: Iterable[str]) -> dict:
    """wording.Catalogue with the messages and words of those prefixes and the facts of those ids."""
    return {
        "forms": encode_messages(rulebook, messages),
        "words": encode_words(rulebook, words),
        "units": encode_units(rulebook),
        "facts": encode_facts(rulebook, facts),
    }


def encode_whole_catalogue(rulebook: Rulebook) -> dict:
    """wording.Catalogue with everything in it."""
    return plain(catalogue(rulebook))


def encode_values(rulebook: Rulebook, calculator: str) -> dict[str, Any]:
    """The calculator's Values record: for each value that its record names the number followed, or every figure where the record
    wants the list; under `tables` the decision tables that it asks. Raises KeyError for an unknown value."""
    return encode_numbers(rulebook, calculator) | ({TABLES: plain(asked_tables(rulebook, calculator))} if asks_tables(calculator) else {})


def encode_numbers(rulebook: Rulebook, calculator: str) -> dict[str, Any]:
    """The same without the tables."""
    hints = get_type_hints(calculator_class(calculator, "Values"))
    return {name: _value(rulebook, rulebook.values[name], wanted) for name, wanted in hints.items() if name != TABLES}


def asked_tables(rulebook: Rulebook, calculator: str) -> list[Table]:
    """The tables that a calculator asks, feeding ones first."""
    return tables_of_form(rulebook, rulebook.calculators[calculator])


def asks_tables(calculator: str) -> bool:
    """True when the code of a calculator takes decision tables with its values."""
    return TABLES in get_type_hints(calculator_class(calculator, "Values"))


def _value(rulebook: Rulebook, value: Value, wanted: Any) -> float | list[dict]:
    """One field of a Values record."""
    return float(value.number) if wanted is float else plain(figures(rulebook, value))


def values_record(rulebook: Rulebook, calculator: str) -> Any:
    """The same as a record. Raises KeyError for an unknown value."""
    return record(calculator_class(calculator, "Values"), encode_values(rulebook, calculator))


def value_ids(calculator: str) -> list[str]:
    """The ids of the values that a calculator uses: the fields of its Values record, in order, without its tables."""
    return [field.name for field in fields(calculator_class(calculator, "Values")) if field.name != TABLES]


def compared_values(calculator: str) -> list[str]:
    """Those of which the calculator takes every author's figure."""
    hints = get_type_hints(calculator_class(calculator, "Values"))
    return [name for name in value_ids(calculator) if hints[name] is not float]


def calculator_module(calculator: str) -> Any:
    """The module of a calculator. Raises ModuleNotFoundError when there is none."""
    return import_module(f"generator.calculators.{calculator}")


def calculator_class(calculator: str, suffix: str) -> Any:
    """The record `<Camel><suffix>` of a calculator: suffix is Inputs, Values or Result."""
    return getattr(calculator_module(calculator), camel(calculator) + suffix)


def camel(calculator: str) -> str:
    """The id of a calculator as the names of its records begin: `VineDensity` of `vine_density`."""
    return "".join(part.capitalize() for part in calculator.split("_"))
