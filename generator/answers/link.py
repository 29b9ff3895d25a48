"""The link that reproduces an answer on its page: the form of pages/assets/link.js, written by the same rules.

The facts stand after the # sign, in SI, as authors write them, so that they never reach a server; what ends with the day stays out.
"""

from decimal import Decimal
from typing import Any
from urllib.parse import quote

from generator.answers.border import UNKNOWN_WORD, from_number
from generator.answers.given import Given
from generator.calculators.facts import ASSUMED, NOT_ASKED, UNKNOWN
from generator.calculators.specs import FactSpec
from generator.reading.rulebook import Rulebook

VERSION = "1"
UNESCAPED = "!*'()"  # what the page's encodeURIComponent leaves as it is, beside letters, digits and -._~


def link(rulebook: Rulebook, page: str, facts: Given) -> str:
    """The page's address from the root of the site, with the facts that somebody gave: neither defaults nor facts of today."""
    head = {"v": VERSION, "e": rulebook.edition.id, "r": rulebook.version}
    pairs = {**head, **_texts(rulebook, facts)}
    return f"{page}#" + "&".join(f"{name}={quote(text, safe=UNESCAPED)}" for name, text in pairs.items())


def _texts(rulebook: Rulebook, facts: Given) -> dict[str, str]:
    """The facts given, as a link writes them, in the order of the rulebook."""
    place = {fact: index for index, fact in enumerate(facts.facts.ids)}
    specs = {spec.id: spec for spec in facts.specs}
    found: dict[str, str] = {}
    for fact in rulebook.facts.values():
        if fact.lifetime == "today":
            continue
        if fact.id in facts.texts:
            found[fact.id] = facts.texts[fact.id]
        elif fact.id in place and facts.facts.statuses[place[fact.id]] not in (NOT_ASKED, ASSUMED):
            index = place[fact.id]
            unknown = facts.facts.statuses[index] == UNKNOWN
            found[fact.id] = UNKNOWN_WORD if unknown else _text(specs[fact.id], facts.facts.numbers[index])
    return found


def _text(spec: FactSpec, x: float) -> str:
    """A number as a link writes it: its shortest digits, without .0 and without an exponent."""
    value: Any = from_number(spec, x)
    if isinstance(value, float):
        return format(Decimal(int(value)) if value.is_integer() else Decimal(repr(value)), "f")
    return str(value)
