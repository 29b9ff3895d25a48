"""What every answer carries besides its own content: sources with standing, cautions, rules version and edition."""

from typing import Any

from generator.answers.border import from_number
from generator.answers.records import plain
from generator.calculators.answer import STATUS_NAMES, Rest
from generator.calculators.facts import NOT_ASKED, UNKNOWN, Facts
from generator.calculators.say import Say
from generator.calculators.specs import FactSpec, spec_of
from generator.calculators.wording import Catalogue, worded
from generator.reading.items import Figure
from generator.reading.rulebook import Rulebook


def stamp(rulebook: Rulebook) -> dict:
    """Under which rules and edition an answer was given."""
    return {"rules": rulebook.version, "edition": plain(rulebook.edition)}


def with_texts(catalogue: Catalogue, data: Any, system: str = "si") -> Any:
    """The plain data with `text` added to every Say in it; the page does the same walk. A Say without an id says nothing."""
    if isinstance(data, list):
        return [with_texts(catalogue, one, system) for one in data]
    if not isinstance(data, dict):
        return data
    if set(data) == {"id", "numbers", "words"}:
        if data["id"] == "":
            return {**data, "text": ""}
        return {**data, "text": worded(catalogue, Say(**data), system)}
    return {name: with_texts(catalogue, one, system) for name, one in data.items()}


def shown(specs: list[FactSpec], facts: Facts) -> dict[str, dict[str, Any]]:
    """Facts by id as authors write them, each with its status. Not asked: not there. Unknown: a status and no value."""
    found: dict[str, dict[str, Any]] = {}
    for fact, x, status in zip(facts.ids, facts.numbers, facts.statuses):
        if status != NOT_ASKED:
            value = {} if status == UNKNOWN else {"value": from_number(spec_of(specs, fact), x)}
            found[fact] = {"status": STATUS_NAMES[status], **value}
    return found


def rests(catalogue: Catalogue, specs: list[FactSpec], rests_on: list[Rest]) -> list[dict]:
    """The facts an answer rests on: as an author writes them, with status and sentence."""
    return [
        {
            "fact": rest.fact,
            "label": spec_of(specs, rest.fact).label,
            "value": from_number(spec_of(specs, rest.fact), rest.number),
            "status": rest.status,
            "text": worded(catalogue, rest.says, "si"),
        }
        for rest in rests_on
    ]


def sources(rulebook: Rulebook, ids: list[str]) -> list[dict]:
    """Evidence and sources by id, each once, in the given order, with standing and what is known of the publication."""
    return [_source(rulebook, name) for name in dict.fromkeys(ids)]


def _source(rulebook: Rulebook, name: str) -> dict:
    """One piece of evidence with the sources behind it, or one source."""
    evidence = rulebook.evidence.get(name)
    if evidence is not None:
        behind = [{**publication(rulebook, cite.id), "place": cite.place} for cite in evidence.cites]
        return {"id": name, "kind": "evidence", "standing": evidence.standing, "says": evidence.statement, "from": behind}
    return {**publication(rulebook, name), "kind": "source"}


def publication(rulebook: Rulebook, name: str) -> dict:
    """Author, year and title of a source; its id alone when the rulebook does not have it (a check reports that)."""
    source = rulebook.sources.get(name)
    if source is None:
        return {"id": name}
    return {"id": name, "author": source.author, "year": source.year, "title": source.title, "publisher": source.publisher}


def value_used(rulebook: Rulebook, name: str, used: Figure | None = None) -> dict[str, Any]:
    """A value that an answer reckoned with: the number used (that of the figure followed, unless another is named), whose it is, its
    standing and sources."""
    value = rulebook.values[name]
    figure = used or value.followed
    return {
        "id": name,
        "label": value.label,
        "number": figure.number,
        "unit": value.unit,
        "standing": figure.standing,
        "who": figure.who,
        "sources": [cite.id for cite in figure.cites],
    }


def cautions(rulebook: Rulebook, ids: list[str]) -> list[dict]:
    """Cautions by id, each once, in the given order."""
    found = [rulebook.cautions[name] for name in dict.fromkeys(ids) if name in rulebook.cautions]
    return [{"id": one.id, "label": one.label, "text": one.text, "defer": one.defer} for one in found]
